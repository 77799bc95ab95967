package corpus

import (
	"fmt"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/analyze"
	"saywhy/lexicon"
)

// told is an evaluation whose sentences each hold one describing word that the
// list lacks, of texture.
func told(name, dish string, words int, unlisted ...string) Reported {
	r := &analyze.Report{Words: words}
	for i, w := range unlisted {
		r.Sentences = append(r.Sentences, analyze.Sentence{N: i + 1, Text: "The sauce was " + w + ".", Sensory: []analyze.Sensory{
			{Text: w, Sense: lexicon.Touch},
			{Text: "golden", Sense: lexicon.Sight, Word: "golden"},
		}})
	}
	return Reported{Name: name, Dish: dish, Report: r}
}

// onceBuiltin loads the lexicon once for all tests; it never changes.
var onceBuiltin = sync.OnceValues(lexicon.Builtin)

func builtin(tb testing.TB) *lexicon.Lexicon {
	tb.Helper()
	lex, err := onceBuiltin()
	require.NoError(tb, err)
	return lex
}

func TestSuggestRanksByLogLikelihood(t *testing.T) {
	// 20 in 10000 words against 10 in 10000; 5 against none.
	var all []Reported
	for i := range 20 {
		all = append(all, told(fmt.Sprintf("s%d", i), "soups", 500, "squimpy"))
	}
	for i := range 5 {
		all[i].Report.Sentences = append(all[i].Report.Sentences, told("", "", 0, "wibblish").Report.Sentences...)
	}
	all = append(all, told("s20", "soups", 0, "oftish"))
	for i := range 20 {
		e := told(fmt.Sprintf("c%d", i), "cakes", 500)
		if i < 10 {
			e = told(e.Name, "cakes", 500, "squimpy", "oftish")
		}
		all = append(all, e)
	}
	got := Suggest(builtin(t), all, "soups")
	require.Len(t, got, 3)
	assert.Equal(t, "wibblish", got[0].Word)
	assert.InDelta(t, 6.931, got[0].Keyness, 0.001)
	assert.Equal(t, "squimpy", got[1].Word)
	assert.InDelta(t, 3.398, got[1].Keyness, 0.001)
	assert.Equal(t, [3]int{20, 20, 10}, [3]int{got[1].Count, got[1].Texts, got[1].Others})
	assert.Equal(t, "oftish", got[2].Word)
	assert.Zero(t, got[2].Keyness, "it is more usual of cakes")
	for _, s := range got[:2] {
		assert.Equal(t, lexicon.Touch, s.Sense)
		assert.Equal(t, []string{"sauce"}, s.Of)
		require.Len(t, s.Examples, 2)
		assert.NotEqual(t, s.Examples[0].File, s.Examples[1].File)
	}
}

func TestSuggestFoldsSpellings(t *testing.T) {
	got := Suggest(builtin(t), []Reported{
		told("a", "soups", 10, "squimpy", "Squimpy", "squimpey"),
		told("b", "soups", 10, "squimpy", "qsuimpy"),
	}, "soups")
	require.Len(t, got, 2)
	assert.Equal(t, "squimpy", got[0].Word)
	assert.Equal(t, []string{"squimpey"}, got[0].Spelt)
	assert.Equal(t, 4, got[0].Count)
	// A slip in the first two letters is not folded: too many words differ there.
	assert.Equal(t, "qsuimpy", got[1].Word)
}

func TestSuggestKeepsWordsApart(t *testing.T) {
	got := Suggest(builtin(t), []Reported{
		told("a", "soups", 10, "sludgeful", "squidgeful", "marvy", "narvy", "like a wet sponge", "as flat as a plate", "golden", "warm olive oil", "blurfish soup", "very golden", "well blurfish"),
	}, "soups")
	var words []string
	for _, s := range got {
		words = append(words, s.Word)
		assert.Empty(t, s.Spelt)
	}
	assert.ElementsMatch(t, []string{"sludgeful", "squidgeful", "marvy", "narvy", "golden", "well blurfish"}, words)
}

func TestSuggestOfNothing(t *testing.T) {
	assert.Empty(t, Suggest(builtin(t), nil, "soups"))
	assert.Empty(t, Suggest(builtin(t), []Reported{told("c", "cakes", 10, "squimpy")}, "soups"), "a word of other dishes alone")
}
