package analyze

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestPraiseAndBlame asks of one judging word a sentence whether it praises.
// Common practice, no published source.
func TestPraiseAndBlame(t *testing.T) {
	a, lex := shared(t)
	for text, want := range map[string]bool{
		"It was lovely.":                    true,
		"It was not lovely.":                false,
		"It was pish.":                      false,
		"It was honkin.":                    false,
		"My chopping was ham-fisted.":       false,
		"The gravy was hellish.":            false,
		"The soup was edible.":              false,
		"The soup was passable.":            false,
		"The timing was shambolic.":         false,
		"It was not bad.":                   true,
		"It was gallus.":                    true,
		"You can't fault it.":               true,
		"It never disappoints.":             true,
		"It was a triumph.":                 true,
		"It was a fiasco.":                  false,
		"It made a decent breakfast.":       true,
		"It was decent.":                    false,
		"My planning went wrong.":           false,
		"It was peng.":                      true,
		"It was gash.":                      false,
		"The crumble was horribel.":         false,
		"The crumble was bewtiful.":         true,
		"The crumble was niiice.":           true,
		"The crumble was gooooood.":         true,
		"The stovies was rare.":             true,
		"The stovies were pure rare.":       true,
		"The sauce slaps.":                  true,
		"These absolutely slap.":            true,
		"The cheese was nothing special.":   false,
		"The peas were up to scratch.":      true,
		"The peas weren't up to scratch.":   false,
		"The flavour was a bit off.":        false,
		"The presentation was cack-handed.": false,
	} {
		r := a.reading(Input{Text: text, Role: Learner}, Brief{Dish: lex.General()})
		s := &r.sentences[0]
		if assert.NotEmpty(t, s.vague, text) {
			v := &s.vague[len(s.vague)-1]
			assert.Equal(t, want, praised(s.tokens, judgementOf(s.tokens, v)), text)
		}
	}
	for _, text := range []string{"The dough slapped on the board.", "The steak was rare.", "I cut a little off the end.", "I had a bit off school."} {
		r := a.reading(Input{Text: text, Role: Learner}, Brief{Dish: lex.General()})
		require.Len(t, r.sentences, 1)
		assert.Empty(t, r.sentences[0].vague, text)
	}
}
