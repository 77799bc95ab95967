package analyze

import (
	"bufio"
	"encoding/json"
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/lexicon"
)

// labelledText is what these tests need of a labelled text.
type labelledText struct {
	ID, Dish, Title, Text string
	Role                  Role
	Areas                 map[lexicon.Area]struct{ Said, Detail, Reason bool }
}

// labelledTexts reads the labelled texts that have labels for the three steps.
func labelledTexts(tb testing.TB) []labelledText {
	tb.Helper()
	f, err := os.Open("../testdata/labelled/settled.jsonl")
	require.NoError(tb, err)
	defer f.Close()
	var out []labelledText
	lines := bufio.NewScanner(f)
	lines.Buffer(nil, 1<<20)
	for lines.Scan() {
		var x labelledText
		require.NoError(tb, json.Unmarshal(lines.Bytes(), &x))
		if x.Areas != nil {
			out = append(out, x)
		}
	}
	require.NoError(tb, lines.Err())
	require.GreaterOrEqual(tb, len(out), 100)
	return out
}

// TestQuestionsOverLabelledTexts holds what the questions must show, with three
// asked at a time as a learner sees them and with all of them.
func TestQuestionsOverLabelledTexts(t *testing.T) {
	a, lex := shared(t)
	forms := sensoryForms(t)
	for _, asked := range []int{3, 0} {
		total, reached, steps, dangers, cautioned, open := 0, 0, 0, 0, 0, 0
		grade := 0.0
		area, wording := map[lexicon.Area]int{}, map[string]int{}
		for _, x := range labelledTexts(t) {
			dish, err := lex.Find(x.Dish)
			if err != nil {
				dish = lex.General()
			}
			r := a.Read(Input{Text: x.Text, Title: x.Title, Role: x.Role}, Brief{Dish: dish, Questions: asked})
			if openDanger(a, Input{Text: x.Text, Title: x.Title, Role: x.Role}, Brief{Dish: dish}) {
				require.NotEmpty(t, r.Questions[0].Danger, "%s: a danger comes first", x.ID)
				open++
			}
			if len(r.Cautions) > 0 {
				cautioned++
			}
			for _, q := range r.Questions {
				total++
				area[q.Area]++
				wording[q.form]++
				grade += lexicon.Grade(q.Text)
				requireReadable(t, q, x.ID)
				require.Empty(t, leaked(forms, lex.Reading.IsVague, x.Text, q.Text), "%s: %s", x.ID, q.Text)
				if q.Danger != "" {
					dangers++ // asks about no step
					continue
				}
				steps++
				l := x.Areas[q.Area]
				if (AreaRow{Said: l.Said, Detail: l.Detail, Reason: l.Reason}).Reached(q.Step) {
					reached++
				}
			}
			for _, line := range r.Praise {
				require.Empty(t, leaked(forms, lex.Reading.IsVague, x.Text, line), "%s: %s", x.ID, line)
			}
		}
		require.NotZero(t, steps)
		most := 0
		for _, n := range wording {
			most = max(most, n)
		}
		share := float64(reached) / float64(steps)
		t.Logf("%d at a time: %d questions (%d about a danger), step reached by the labels in %.1f %%, mean grade %.2f, most used wording %.1f %%, by area %v",
			asked, total, dangers, 100*share, grade/float64(total), 100*float64(most)/float64(total), area)
		assert.Greater(t, open, cautioned*2/3, "texts whose danger is asked about, of those with one")
		assert.LessOrEqual(t, share, 0.05, "questions about a step that the labels say is reached")
		assert.LessOrEqual(t, grade/float64(total), 4.0, "mean grade")
		assert.LessOrEqual(t, float64(most)/float64(total), 0.08, "share of the most used wording")
		for _, want := range lexicon.Areas() {
			assert.NotZero(t, area[want], "%s is never asked about", want)
		}
	}
}
