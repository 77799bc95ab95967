package handout_test

import (
	"regexp"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/cmd/handout"
	"saywhy/lexicon"
)

func load(tb testing.TB, files map[string]string) *lexicon.Lexicon {
	tb.Helper()
	dir := fstest.MapFS{}
	for name, text := range files {
		dir[name] = &fstest.MapFile{Data: []byte(text)}
	}
	lex, _, err := lexicon.LoadCourse(dir)
	require.NoError(tb, err)
	return lex
}

func page(tb testing.TB, s handout.Sheet) string {
	tb.Helper()
	var b strings.Builder
	require.NoError(tb, s.WriteHTML(&b))
	return b.String()
}

// crammed is a course with a type that has as much of everything as a tutor may
// ever write, and words and a title that are far too long.
func crammed() map[string]string {
	long := strings.Repeat("w", 70)
	var rows strings.Builder
	for _, s := range lexicon.Senses() {
		rows.WriteString("  " + string(s) + ":\n    \"" + long + "\": {means: \"very long\"}\n")
	}
	return map[string]string{"dishes/feasts.yaml": `type: feasts
title: Feasts of many dishes that are carried to the table all at once and eaten by forty
family: food
dishes: [feast]
hazards: [` + strings.Join(lexicon.Hazards(), ", ") + `]
allergens: [` + strings.Join(lexicon.Allergens(), ", ") + `]
moments:
  appearance: when it is carried in and set down and everyone who has come leans over the table at once to look
  aroma: when the lids come off
  taste: when you take a little of each in turn and wait between them
  texture: when you chew
words:
` + rows.String()}
}

// sheets returns the sheet of every built-in type, of a dish by its own name,
// and of the crammed type.
func sheets(tb testing.TB) []handout.Sheet {
	tb.Helper()
	lex := load(tb, crammed())
	var out []handout.Sheet
	for _, d := range lex.Types() {
		out = append(out, handout.NewSheet(lex, d, ""))
	}
	soups, err := lex.Find("leek and potato soup")
	require.NoError(tb, err)
	return append(out, handout.NewSheet(lex, soups, "leek and potato soup"))
}

// TestEverySheetPrintsOnTwoSides prints the sheets of all types through
// Chromium, in the fonts of this machine and in a wide one: each takes two
// sides, everything stands on the right one, to the last line, and nothing is
// cut off, lies over something else or is smaller than 12 pt.
func TestEverySheetPrintsOnTwoSides(t *testing.T) {
	all := sheets(t)
	require.Greater(t, len(all), 24)
	var pages []string
	for _, s := range all {
		pages = append(pages, page(t, s))
	}
	for name, whole := range map[string]string{"usual": bound(pages), "wide": inWideFont(bound(pages))} {
		t.Run(name, func(t *testing.T) {
			assert.Empty(t, flaws(t, whole, ".side"))
			sides := printed(t, whole)
			require.Len(t, sides, 2*len(all))
			for i, s := range all {
				front, back := sides[2*i], sides[2*i+1]
				has := func(side, text string) {
					assert.True(t, strings.Contains(side, solid(text)), "%s: %q is not on its side", s.Title, text)
				}
				for _, text := range append(frontTexts(s), handout.SheetLead, "saywhy words "+s.Type) {
					has(front, text)
				}
				for _, w := range s.Watch {
					has(back, w.Ask)
					for _, h := range w.Hazards {
						has(back, h.Name)
					}
				}
				has(back, s.Notes[0].Text)
				assert.True(t, strings.HasSuffix(back, solid("responsible adult come first.")), "last line of %s", s.Title)
			}
		})
	}
}

// frontTexts lists what the front has of the dish.
func frontTexts(s handout.Sheet) []string {
	out := []string{s.Title}
	for _, sense := range s.Senses {
		out = append(out, sense.Moment)
		out = append(out, sense.Words...)
		for _, scale := range sense.Scales {
			out = append(out, scale.Name)
			out = append(out, scale.Steps...)
		}
	}
	return out
}

// TestOneSheetIsTwoPages prints one sheet by itself, as it will be printed.
func TestOneSheetIsTwoPages(t *testing.T) {
	assert.Len(t, printed(t, page(t, sheets(t)[0])), 2)
}

func TestBuiltInSheetsLeaveNoCautionOut(t *testing.T) {
	lex := load(t, nil)
	for _, d := range lex.Types() {
		s := handout.NewSheet(lex, d, "")
		html := page(t, s)
		n := 0
		for _, w := range s.Watch {
			for _, h := range w.Hazards {
				assert.True(t, strings.Contains(html, h.Watch), "%s: %s is only named", d.Name, h.Name)
				n++
			}
		}
		assert.Equal(t, len(d.Hazards)+1, n, "%s: its hazards and hands", d.Name)
	}
}

func TestTheWordsOfASheetAreAFairChoice(t *testing.T) {
	lex := load(t, nil)
	for _, d := range lex.Types() {
		s := handout.NewSheet(lex, d, "")
		total, own := 0, 0
		for _, sense := range s.Senses {
			inList := map[string]lexicon.Word{}
			for _, w := range d.BySense(sense.Sense) {
				inList[w.Word] = w
			}
			assert.NotEmpty(t, sense.Scales, "%s %s: a scale shows both ends", d.Name, sense.Sense)
			for _, scale := range sense.Scales {
				assert.GreaterOrEqual(t, len(scale.Steps), 2, "%s %s", d.Name, scale.Name)
				last := 0
				for _, w := range scale.Steps {
					total++
					assert.Equal(t, scale.Name, inList[w].Scale, "%s %s", d.Name, w)
					assert.Greater(t, inList[w].Step, last, "%s %s: low to high", d.Name, w)
					last = inList[w].Step
				}
			}
			for _, w := range sense.Words {
				total++
				assert.False(t, sense.Sense == lexicon.Tongue && regexp.MustCompile(`\braw\b`).MatchString(w), "%s: %s", d.Name, w)
				require.Contains(t, inList, w, "%s %s", d.Name, sense.Sense)
				if inList[w].From != lexicon.Root {
					own++
				}
			}
			assert.GreaterOrEqual(t, len(sense.Words), 4, "%s %s", d.Name, sense.Sense)
		}
		assert.GreaterOrEqual(t, total, 60, d.Name)
		assert.GreaterOrEqual(t, own, 10, "%s: words of such dishes", d.Name)
		assert.Equal(t, len(d.Words), total+s.MoreWords, d.Name)
	}
}

// TestASheetAsksAndNeverTells holds the sheet to the rules of every question:
// no word that judges, nothing raw tasted.
func TestASheetAsksAndNeverTells(t *testing.T) {
	lex := load(t, nil)
	for _, d := range lex.Types() {
		s := handout.NewSheet(lex, d, "")
		texts := append([]string{handout.SheetLead, handout.TasteLead, handout.WordsLead}, s.Test...)
		for _, w := range s.Watch {
			texts = append(texts, w.Ask)
		}
		for _, sense := range s.Senses {
			texts = append(texts, sense.Moment)
			if sense.Sense == lexicon.Tongue {
				assert.NotRegexp(t, `(?i)\b(raw|dough|batter|mixture|marinade|uncooked)\b`, sense.Moment, d.Name)
			}
		}
		for _, text := range texts {
			for _, w := range regexp.MustCompile(`[a-z]+`).FindAllString(strings.ToLower(text), -1) {
				assert.False(t, lex.Reading.IsVague(w), "%q in %q", w, text)
			}
		}
	}
}

func TestASheetHoldsNothingFromOutside(t *testing.T) {
	lex := load(t, map[string]string{"dishes/soups.yaml": "type: soups\nmoments: {taste: \"when <b>you</b> & I sip\"}\n"})
	d, err := lex.Find("soups")
	require.NoError(t, err)
	html := page(t, handout.NewSheet(lex, d, "<script>alert(1)</script> soup"))
	assert.NotRegexp(t, regexp.MustCompile(`(?i)https?:|<script|src=|@import|url\(`), html)
	assert.Contains(t, html, "when &lt;b&gt;you&lt;/b&gt; &amp; I sip")
	for _, c := range regexp.MustCompile(`#[0-9a-fA-F]{3,6}\b`).FindAllString(html[:strings.Index(html, "</style>")], -1) {
		assert.Contains(t, []string{"#fff", "#000"}, c, "black on white")
	}
}
