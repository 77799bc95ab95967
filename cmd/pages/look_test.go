package pages

import (
	"fmt"
	"io"
	"net/http"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/cmd/grouppage"
	"saywhy/cmd/internal/demogroup"
	"saywhy/cmd/internal/needs"
)

// state is a page in one of its states, and how to come to it.
type state struct {
	name  string
	come  func(*tab)
	paper bool // made for A4, so that letters and widths are those of paper
	dense bool // a report of tables for a tutor, so that its letters may be smaller
}

const (
	// Two drafts of one evaluation, the second with a danger in it.
	draft  = "We made fish pie and it was nice.\nI washed my hands before I touched the fish so that no germs got in.\nI mashed the potato with a fork.\nThe sauce was lumpy.\nNext time I would do it better."
	draft2 = "We made fish pie and it tasted salty and creamy because I put cheese in the sauce.\nI washed my hands before I touched the fish so that no germs got in.\nThe fish was still raw in the middle and we ate it.\nI mashed the potato with a fork.\nThe sauce was lumpy because I put the milk in all at once.\nNext time I would pour the milk in slowly."
	bread  = "The soda bread was dark. Next time I would take the tin out sooner."
)

// states lists every page in every state that it can be in without a tutor.
func states() []state {
	answer := func(path string) func(*tab) {
		return func(t *tab) {
			t.visit(path)
			t.write("#title", "fish pie")
			t.write("#text", draft)
			t.press("button.main")
		}
	}
	again := func(text string) func(*tab) {
		return func(t *tab) {
			answer("/write")(t)
			t.write("#text", text)
			t.write("#last", bread)
			t.press("button.main")
		}
	}
	visit := func(path string) func(*tab) { return func(t *tab) { t.visit(path) } }
	return []state{
		{name: "write", come: visit("/")},
		{name: "answer", come: answer("/write")},
		{name: "grown", come: again(draft2)},
		{name: "same", come: again(draft)},
		{name: "nothing", come: func(t *tab) { t.visit("/write"); t.press("button.main") }},
		{name: "feedback", come: visit("/feedback")},
		{name: "feedback-answer", come: answer("/feedback")},
		{name: "words", come: visit("/words")},
		{name: "words-dish", come: visit("/words?dish=fish&sense=texture")},
		{name: "words-large", come: visit("/words?dish=fish&sense=taste&print=large")},
		{name: "words-found", come: func(t *tab) { t.visit("/words"); t.write("#noticed", "bits stick to my teeth"); t.press("button.main") }},
		{name: "words-none", come: func(t *tab) { t.visit("/words"); t.write("#noticed", "xyzzy plugh"); t.press("button.main") }},
		{name: "sheet", come: visit("/sheet")},
		{name: "sheet-print", paper: true, come: func(t *tab) {
			t.visit("/sheet")
			t.write("#title", "fish pie")
			t.do(`document.querySelector("form.card").removeAttribute("target")`)
			t.press("button.main")
		}},
		{name: "words-print", paper: true, come: visit("/words/print?dish=fish")},
		{name: "no-page", come: visit("/nowhere")},
	}
}

// zoomed is a window of 1200 by 900 at 200 %.
const zoomed = "desk-zoomed"

// looks are the ways in which every state is looked at.
func looks() map[string]look {
	return map[string]look{
		"desk-light":  {},
		zoomed:        {width: 600, height: 450},
		"phone-light": phone(),
		"phone-dark":  {width: 320, height: 640, dark: true},
	}
}

// TestEveryPageInEveryState asks axe-core for violations of WCAG 2.2 A and AA,
// and measures contrast (7:1: WCAG 2.2, success criterion 1.4.6), the size of
// what is pressed (44 px: 2.5.5) and whether anything sticks out sideways at
// 320 px (1.4.10).
func TestEveryPageInEveryState(t *testing.T) {
	checkStates(t, serveTest(t, handler(t)), states())
}

// TestTheTutorsPagesInEveryState does the same for the tutor's desk.
func TestTheTutorsPagesInEveryState(t *testing.T) {
	c := newSchool(t)
	report := demogroup.Report(t)
	c.options.Tutor.Group = func(w io.Writer) error { return grouppage.Write(w, report) }
	c.address("http://192.168.1.20:8350/")
	home := serveTest(t, c.h)
	in := func(path string, more ...func(*tab)) func(*tab) {
		return func(on *tab) {
			on.visit("/tutor/open/" + c.invite())
			on.press("button.main")
			on.visit(path)
			for _, do := range more {
				do(on)
			}
		}
	}
	type rows = map[string]string
	fill := func(boxes rows, button string) func(*tab) {
		return func(on *tab) {
			for box, text := range boxes {
				on.write(box, text)
			}
			on.press(button)
		}
	}
	checkStates(t, home, []state{
		{name: "tutor-open", come: func(on *tab) { on.visit("/tutor/open/x") }},
		{name: "tutor-refused", come: func(on *tab) { on.visit("/tutor") }},
		{name: "tutor", come: in("/tutor")},
		{name: "tutor-invite", come: in("/tutor", fill(nil, `form[action="/tutor/invite"] button`))},
		{name: "tutor-words", come: in("/tutor/dish/soups?sense=texture")},
		{name: "tutor-row", come: in("/tutor/dish/soups?sense=texture&word=slurpy")},
		{name: "tutor-wrong", come: in("/tutor/dish/soups?sense=texture", fill(rows{"#new-word": "nice"}, "#add + form button.main"))},
		{name: "tutor-saved", come: in("/tutor/dish/soups?sense=texture", fill(rows{"#new-word": "zonky", "#new-means": "wobbles and then stops"}, "#add + form button.main"))},
		{name: "tutor-clash", come: in("/tutor/dish/soups?sense=texture&word=slurpy", func(*tab) {
			_ = c.folder.Write("dishes/soups.yaml", []byte(strings.Replace(soups, "sucked up with a noise", "what somebody else wrote", 1)))
		}, fill(rows{"#old-means": "what I wrote"}, "#row button.main"))},
		{name: "tutor-missing", come: in("/tutor/missing")},
		{name: "tutor-group", dense: true, come: in("/tutor/group")},
		{name: "tutor-mend", come: in("/tutor", func(on *tab) {
			_ = c.folder.Write("dishes/soups.yaml", []byte("type: soups\nwords:\n  texture:\n    slurpy: {maens: oops}\n"))
			require.NoError(on.tb, c.library.Reload())
			on.visit("/tutor")
		})},
	})
}

// TestTheMeasureFindsWhatFallsShort: a page made badly on purpose.
func TestTheMeasureFindsWhatFallsShort(t *testing.T) {
	axe, err := os.ReadFile(needs.Module(t, "axe-core/axe.min.js"))
	require.NoError(t, err)
	measure, err := os.ReadFile("testdata/measure.js")
	require.NoError(t, err)
	home := serveTest(t, http.HandlerFunc(func(w http.ResponseWriter, _ *http.Request) {
		_, _ = io.WriteString(w, `<!doctype html><html><body style="font-size:19px"><p style="color:#888">grey</p><p>a</p><p>b</p><p>c</p><p>d</p><p style="font-size:12px">small</p><a href="/">x</a><input><div style="width:2000px">wide</div></body></html>`)
	}))
	on := open(t, chromium(t), home, phone())
	on.visit("/")
	on.do(string(axe))
	assert.NotEmpty(t, get1[[]string](on, axeRun))
	wrong := strings.Join(get1[[]string](on, string(measure)), "\n")
	for _, want := range []string{"contrast 3.5", "letters of 12px", "to press", "the page is 20", "sticks out"} {
		assert.Contains(t, wrong, want)
	}
}

func checkStates(t *testing.T, home string, list []state) {
	axe, err := os.ReadFile(needs.Module(t, "axe-core/axe.min.js"))
	require.NoError(t, err)
	measure, err := os.ReadFile("testdata/measure.js")
	require.NoError(t, err)
	browser := chromium(t)
	for _, s := range list {
		t.Run(s.name, func(t *testing.T) {
			on := open(t, browser, home, look{})
			s.come(on)
			for name, how := range looks() {
				on.set(how)
				on.do(string(axe))
				if how == (look{}) || how.dark { // what axe-core asks about is the same in the others
					for _, v := range get1[[]string](on, axeRun) {
						assert.Fail(t, v, "%s, %s", s.name, name)
					}
				}
				if !s.paper {
					for _, v := range get1[[]string](on, string(measure)) {
						if !s.dense || !strings.HasPrefix(v, "letters of ") {
							assert.Fail(t, v, "%s, %s", s.name, name)
						}
					}
				}
				on.shoot(fmt.Sprintf("%s-%s", s.name, name))
			}
			on.set(look{print: true})
			on.shoot(s.name + "-print")
		})
	}
}

// axeRun lists violations, a line each.
const axeRun = `axe.run(document, {runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"]}).then(r =>
	r.violations.flatMap(v => v.nodes.map(n => v.id + ": " + n.html.slice(0, 200) + " " + (n.failureSummary || "").replace(/\s+/g, " "))))`
