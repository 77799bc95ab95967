package pages

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/browser"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The errands of the three people, each in every way in which they may come:
// with scripts, without, and on a phone.
func errandLooks() map[string]look {
	bare := phone()
	bare.noScripts = true
	return map[string]look{"desk": {}, "without scripts": {noScripts: true}, "phone": phone(), "phone without scripts": bare}
}

// TestLearnersErrand: paste, read, answer a question by changing the text, see
// it grow, ask for more.
func TestLearnersErrand(t *testing.T) {
	home := serveTest(t, handler(t))
	browser := chromium(t)
	for name, how := range errandLooks() {
		t.Run(name, func(t *testing.T) {
			on := open(t, browser, home, how)
			on.visit("/")
			on.write("#title", "fish pie")
			on.write("#text", draft)
			on.press("button.main")
			assert.Equal(t, "What you wrote: fish pie", on.text("h1"))
			assert.Contains(t, on.text("#s1 .margin"), "says little by itself: “nice”")
			assert.Equal(t, 3, get1[int](on, `document.querySelectorAll(".cards > li").length`))
			// A question leads to its sentence.
			on.run(chromedp.Click(chromedp.CSS(`#q1 a[href^="#s"]`)))
			assert.Equal(t, "#s1", get1[string](on, "location.hash"))
			on.write("#text", strings.Replace(draft, "it was nice", "it tasted salty because I put cheese in the sauce", 1))
			on.press("button.main")
			assert.Contains(t, on.text(".growth"), "taste")
			assert.Contains(t, on.text(".growth"), "with a reason")
			assert.Contains(t, on.text("#s1 .margin"), "changed")
			before := get1[int](on, `document.querySelectorAll(".cards > li").length`)
			on.press(`button[name=questions]:not(.main)`)
			assert.Greater(t, get1[int](on, `document.querySelectorAll(".cards > li").length`), before)
			assert.Contains(t, get1[string](on, "document.querySelector('#text').value"), "salty because", "the text is still there")
			assert.NotContains(t, get1[string](on, "location.href"), "salty", "no text in an address")
		})
	}
}

// TestAdultsErrand: find a word for what was felt, look at a page to print,
// write feedback and have it read.
func TestAdultsErrand(t *testing.T) {
	home := serveTest(t, handler(t))
	browser := chromium(t)
	for name, how := range errandLooks() {
		t.Run(name, func(t *testing.T) {
			on := open(t, browser, home, how)
			on.visit("/words")
			on.write("#noticed", "bits stick to my teeth")
			on.press("button.main")
			assert.Contains(t, on.text("#found"), "claggy")
			assert.NotContains(t, get1[string](on, "location.href"), "teeth")
			on.visit("/words/print?dish=breads")
			pdf, err := chromedp.Run(on.ctx, chromedp.PrintToPDF())
			require.NoError(t, err)
			assert.True(t, strings.HasPrefix(string(pdf), "%PDF"))
			on.visit("/feedback")
			assert.Contains(t, on.text(".brief"), "What did they do so that nobody was hurt?")
			on.write("#title", "fish pie")
			on.write("#text", "The top was golden. The fish was tasty. The fish was raw in the middle and we ate it.")
			on.press("button.main")
			assert.Contains(t, on.text(".caution"), "Guidance: Food Standards Agency")
			assert.Contains(t, on.text("#care + dl"), "Allergens often in it")
		})
	}
}

// TestTutorsErrand: come in by the link, add a word, see a learner's reading
// change, take it back.
func TestTutorsErrand(t *testing.T) {
	browser := chromium(t)
	for name, how := range errandLooks() {
		t.Run(name, func(t *testing.T) {
			c := newSchool(t)
			on := open(t, browser, serveTest(t, c.h), how)
			reading := func() string {
				on.visit("/")
				on.write("#title", "lentil soup")
				on.write("#text", "The soup was zonky.")
				on.press("button.main")
				return on.text("#s1")
			}
			assert.NotContains(t, reading(), "describes")
			on.visit("/tutor/open/ONCE")
			on.press("button.main")
			assert.Contains(t, on.text("h1"), "The tutor’s desk")
			on.press(`a[href="/tutor/dish/soups"]`)
			on.press(`.tabs a[href*="texture"]`)
			on.write("#new-word", "zonky")
			on.press(`#add + form button.main`)
			assert.Contains(t, on.text(".card [role=alert]"), "The meaning is missing")
			on.write("#new-means", "wobbles and then stops")
			on.press(`#add + form button.main`)
			assert.Contains(t, on.text(".notice"), "Saved")
			assert.Contains(t, reading(), "describes: zonky")
			on.visit("/tutor/dish/soups?sense=texture")
			on.press(`a[href*="word=slurpy"]`)
			on.write("#old-means", "drunk with a happy noise")
			on.press(`#row button.main`)
			assert.Contains(t, on.text(".roll"), "drunk with a happy noise")
			for range 2 {
				on.press(`button[value=undo]`)
			}
			assert.Equal(t, soups, c.folder.read("dishes/soups.yaml"))
			assert.NotContains(t, reading(), "describes")
		})
	}
}

// TestErrandByKeyboardAlone: a learner who uses no mouse.
func TestErrandByKeyboardAlone(t *testing.T) {
	on := open(t, chromium(t), serveTest(t, handler(t)), look{})
	on.visit("/")
	// The first stop leads past the navigation.
	on.keys(kb.Tab)
	assert.Equal(t, "Skip to the page", on.focused())
	on.keys(kb.Enter)
	on.tabTo("title")
	on.keys("fish pie")
	on.tabTo("text")
	on.keys("We made fish pie and it was nice.")
	on.tabTo("Read my text")
	on.enter(kb.Enter)
	assert.Contains(t, on.text("#s1"), "says little by itself")
	on.tabTo("sentence 1")
	on.keys(kb.Enter)
	assert.Equal(t, "#s1", get1[string](on, "location.hash"))
	on.tabTo("text")
	on.keys(kb.Control+kb.End, " The sauce was lumpy because I rushed.")
	on.tabTo("I have changed it: read again")
	on.enter(" ")
	assert.Contains(t, on.text(".growth"), "texture")
	on.tabTo("Clear everything")
	on.keys(kb.Enter)
	assert.Empty(t, get1[string](on, "document.querySelector('#text').value"))
	assert.Equal(t, "Bring it back", on.focused())
}

// keys types as a person does.
func (t *tab) keys(all ...string) {
	t.tb.Helper()
	for _, k := range all {
		t.run(chromedp.KeyEvent(k))
	}
}

// enter types a key that leads to another page, and waits for it.
func (t *tab) enter(key string) {
	t.tb.Helper()
	_, err := chromedp.RunResponse(t.ctx, chromedp.KeyEvent(key))
	require.NoError(t.tb, err)
}

// focused is the name of what has the focus: its id for a box, or its words.
func (t *tab) focused() string {
	return get1[string](t, `(e => e.matches("input, textarea, select") ? e.id : e.innerText.trim())(document.activeElement)`)
}

// tabTo presses Tab until something has the focus, and requires that where the
// focus is can be seen.
func (t *tab) tabTo(name string) {
	t.tb.Helper()
	for range 60 {
		t.keys(kb.Tab)
		if t.focused() == name {
			outline := get1[string](t, "getComputedStyle(document.activeElement).outlineStyle + getComputedStyle(document.activeElement).outlineWidth")
			require.Equal(t.tb, "solid3px", outline, "the focus on %s can be seen", name)
			return
		}
	}
	require.Fail(t.tb, "no way by keyboard to "+name)
}

// TestTheDraftStaysInThisBrowser: it comes back, and one press clears it.
func TestTheDraftStaysInThisBrowser(t *testing.T) {
	b := chromium(t)
	home := serveTest(t, handler(t))
	on := open(t, b, home, look{})
	on.visit("/write")
	on.write("#text", draft)
	assert.Equal(t, "Your draft is kept in this browser until you clear it.", get1[string](on, soon(`document.querySelector("#status").innerText`)))
	on.visit("/feedback")
	assert.Empty(t, get1[string](on, "document.querySelector('#text').value"), "the adult's is another")
	on.visit("/write")
	assert.Equal(t, draft, get1[string](on, "document.querySelector('#text').value"))
	assert.Contains(t, on.text("#status"), "Here is your draft from before")
	other := open(t, b, home, look{})
	other.visit("/write")
	assert.Empty(t, get1[string](other, "document.querySelector('#text').value"), "another browser has none")
	on.run(chromedp.Click(chromedp.CSS("#clear")))
	assert.Contains(t, on.text("#status"), "Nothing is kept")
	assert.Zero(t, get1[int](on, "localStorage.length"))
	on.run(chromedp.Click(chromedp.CSS("#clear")))
	assert.Equal(t, draft, get1[string](on, "document.querySelector('#text').value"), "a second press brings it back")
	on.run(chromedp.Click(chromedp.CSS("#clear")))
	on.visit("/write")
	assert.Empty(t, get1[string](on, "document.querySelector('#text').value"))
	assert.Zero(t, get1[int](on, "document.cookie.length"))
}

// soon waits until an expression is not empty.
func soon(expression string) string {
	return `(async () => { for (let i = 0; i < 100; i++) { const v = ` + expression + `; if (v) return v; await new Promise(r => setTimeout(r, 50)); } return ""; })()`
}

// TestATextIsSavedAndOpenedInTheBrowser: with scripts and without, the file on
// the disk is the text, and comes back.
func TestATextIsSavedAndOpenedInTheBrowser(t *testing.T) {
	b := chromium(t)
	home := serveTest(t, handler(t))
	const text = "Crème caramel.\n\nIt was “wobbly”."
	for name, how := range map[string]look{"with scripts": {}, "without": {noScripts: true}} {
		t.Run(name, func(t *testing.T) {
			dir := t.TempDir()
			on := open(t, b, home, how)
			on.run(command(browser.SetDownloadBehavior, browser.SetDownloadBehaviorParams{Behavior: browser.SetDownloadBehaviorBehaviorAllowAndName, DownloadPath: dir, BrowserContextID: chromedp.FromContext(on.ctx).BrowserContextID}))
			on.visit("/write")
			on.write("#title", "Custard")
			on.write("#text", text)
			on.do(`document.querySelectorAll("details").forEach(d => d.open = true)`)
			on.run(chromedp.Click(chromedp.CSS("#save")))
			var saved []byte
			require.Eventually(t, func() bool {
				files, _ := filepath.Glob(filepath.Join(dir, "*"))
				if len(files) != 1 || strings.HasSuffix(files[0], ".crdownload") {
					return false
				}
				saved, _ = os.ReadFile(files[0])
				return len(saved) > 0
			}, waitLong, waitStep)
			assert.Equal(t, text, strings.ReplaceAll(string(saved), "\r\n", "\n"))
			kept := filepath.Join(dir, "kept.txt")
			require.NoError(t, os.WriteFile(kept, saved, 0o600))
			// Another tab: a navigation that turned into a download counts as
			// aborted, at times only once the next one has begun.
			on = open(t, b, home, how)
			on.visit("/feedback")
			on.do(`document.querySelectorAll("details").forEach(d => d.open = true)`)
			on.run(chromedp.SetUploadFiles(chromedp.CSS("#file"), []string{kept}))
			if how.noScripts {
				on.press("#open")
			} else {
				on.run(chromedp.Click(chromedp.CSS("#open")))
			}
			assert.Equal(t, text, get1[string](on, soon(`document.querySelector("#text").value`)))
		})
	}
}

// TestFirstVisitIsSmall: all that travels for the first page, headers included.
func TestFirstVisitIsSmall(t *testing.T) {
	on := open(t, chromium(t), serveTest(t, handler(t)), look{})
	on.visit("/")
	bytes := get1[int](on, `performance.getEntries().reduce((sum, e) => sum + (e.transferSize || 0), 0)`)
	files := get1[int](on, `performance.getEntriesByType("resource").length`)
	t.Logf("first visit: %d bytes in %d files", bytes, files+1)
	assert.Positive(t, files)
	assert.Less(t, bytes, 150<<10)
	for _, address := range get1[[]string](on, `performance.getEntries().map(e => e.name).filter(n => n.startsWith("http"))`) {
		assert.True(t, strings.HasPrefix(address, on.home), "%s is on another host", address)
	}
}
