package handout_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/cmd/handout"
	"saywhy/lexicon"
)

func wordsPage(tb testing.TB, w handout.Words) string {
	tb.Helper()
	var b strings.Builder
	require.NoError(tb, w.WriteHTML(&b))
	return b.String()
}

// TestEveryWordListCanBePinnedUp prints the lists of all types through
// Chromium: none takes more than six pages, and nothing is lost or too small.
func TestEveryWordListCanBePinnedUp(t *testing.T) {
	lex := load(t, nil)
	var pages []string
	for _, d := range lex.Types() {
		pages = append(pages, wordsPage(t, handout.NewWords(d, "", lexicon.Senses())))
	}
	whole := strings.Replace(bound(pages), "</style>", "main + main { break-before: page; }</style>", 1)
	assert.Empty(t, flaws(t, whole, "main"))
	sides := printed(t, whole)
	at := 0
	for _, d := range lex.Types() {
		require.Less(t, at, len(sides), d.Name)
		require.True(t, strings.HasPrefix(sides[at], solid(d.Title+": words for what you notice")), "%s begins on a page of its own", d.Name)
		text := ""
		from := at
		for at++; at < len(sides) && !strings.Contains(sides[at], solid("words for what you notice")); at++ {
		}
		text = strings.Join(sides[from:at], "")
		t.Logf("%s: %d pages", d.Name, at-from)
		assert.LessOrEqual(t, at-from, 6, d.Name)
		for _, s := range lexicon.Senses() {
			typical, _ := d.Typical(s)
			for _, w := range typical {
				assert.True(t, strings.Contains(text, solid(w.Word+":")), "%s: %s", d.Name, w.Word)
			}
		}
		assert.True(t, strings.Contains(text, solid("--all --format html")), "the last line of %s", d.Name)
	}
	assert.Equal(t, len(sides), at)
}

func TestAWordListWithEveryWord(t *testing.T) {
	lex := load(t, nil)
	soups, err := lex.Find("soups")
	require.NoError(t, err)
	w := handout.NewAllWords(soups, "leek soup", lexicon.Senses())
	assert.Zero(t, w.More)
	n := 0
	for _, part := range w.Parts {
		n += len(part.Words)
	}
	assert.Len(t, soups.Words, n)
	w.Large = true
	html := wordsPage(t, w)
	assert.Contains(t, html, `<main class="large">`)
	assert.Contains(t, html, "For your leek soup.")
	assert.NotContains(t, html, "--all")
}
