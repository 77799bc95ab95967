package lexicon

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestTypicalWords holds the list that a writer sees first to a length that
// can be read through, for each dish type.
func TestTypicalWords(t *testing.T) {
	lex, err := Builtin()
	require.NoError(t, err)
	fewest := map[Sense]int{"appearance": 14, "aroma": 8, "taste": 14, "texture": 14} // what the course asks of a list
	for _, d := range lex.Types() {
		for _, s := range Senses() {
			typical, other := d.Typical(s)
			t.Logf("%s %s: %d of %d", d.Name, s, len(typical), len(typical)+len(other))
			assert.GreaterOrEqual(t, len(typical), fewest[s], "%s %s", d.Name, s)
			assert.LessOrEqual(t, len(typical), 95, "%s %s", d.Name, s)
			assert.Len(t, d.BySense(s), len(typical)+len(other), "%s %s: none is lost", d.Name, s)
		}
	}
	all, none := lex.General().Typical("texture")
	require.NotEmpty(t, all)
	require.Empty(t, none)
}

// TestTypicalMeansTheFood checks that the noun of a row decides.
func TestTypicalMeansTheFood(t *testing.T) {
	lex, err := Builtin()
	require.NoError(t, err)
	for _, c := range []struct {
		dish, word string
		want       bool
	}{
		{"soups", "velvety", true}, {"soups", "slurpy", true}, {"soups", "crusty", false},
		{"cakes", "fudgy", true}, {"cakes", "gristly", false},
		{"roast-meat", "gristly", true}, {"roast-meat", "bouncy", false},
	} {
		d, err := lex.Find(c.dish)
		require.NoError(t, err)
		typical, _ := d.Typical("texture")
		found := false
		for _, w := range typical {
			found = found || w.Word == c.word
		}
		require.Equal(t, c.want, found, "%s of %s", c.word, c.dish)
	}
}
