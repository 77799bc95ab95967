package lexicon_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/lexicon"
)

func TestParsePatternReadsEveryElement(t *testing.T) {
	tests := []struct {
		name, text string
		want       []lexicon.Part
	}{
		{"a bare word stands for its stem", "washing", []lexicon.Part{{Stems: []string{"wash"}}}},
		{"a bare word in capitals", "Washing", []lexicon.Part{{Stems: []string{"wash"}}}},
		{"an exact word", "=washing", []lexicon.Part{{Words: []string{"washing"}}}},
		{"an exact word in capitals", "=Washing", []lexicon.Part{{Words: []string{"washing"}}}},
		{"words one after the other", "no_one", []lexicon.Part{{Phrases: [][]string{{"no", "one"}}}}},
		{"words one after the other, marked exact", "=in_the_end", []lexicon.Part{{Phrases: [][]string{{"in", "the", "end"}}}}},
		{"alternatives", "hand|=board|no_one", []lexicon.Part{{
			Stems: []string{"hand"}, Words: []string{"board"}, Phrases: [][]string{{"no", "one"}},
		}}},
		{"a noun by its kind", "@tool", []lexicon.Part{{Kinds: []lexicon.Kind{lexicon.Tool}}}},
		{"a noun of several kinds", "@tool|@place", []lexicon.Part{{Kinds: []lexicon.Kind{lexicon.Tool, lexicon.Place}}}},
		{"a word by its tag", "/VB", []lexicon.Part{{Tags: []string{"VB"}}}},
		{"a stem with a tag", "rolling+VB", []lexicon.Part{{Tagged: []lexicon.Tagged{{Stem: "roll", Tag: "VB"}}}}},
		{"a stem with a tag in capitals", "Rolling+VB", []lexicon.Part{{Tagged: []lexicon.Tagged{{Stem: "roll", Tag: "VB"}}}}},
		{"a gap with a number", "=wash ~3 =hands", []lexicon.Part{{Words: []string{"wash"}}, {Words: []string{"hands"}, Gap: 3}}},
		{"a gap without one is six", "=wash ~ =hands", []lexicon.Part{{Words: []string{"wash"}}, {Words: []string{"hands"}, Gap: 6}}},
		{"the widest gap", "=wash ~20 =hands", []lexicon.Part{{Words: []string{"wash"}}, {Words: []string{"hands"}, Gap: 20}}},
		{"a gap counts for one part only", "=a ~2 =b =c", []lexicon.Part{{Words: []string{"a"}}, {Words: []string{"b"}, Gap: 2}, {Words: []string{"c"}}}},
		{"a part that may be missing", "=really? =wash", []lexicon.Part{{Words: []string{"really"}, Optional: true}, {Words: []string{"wash"}}}},
		{"a part that must not stand here", "=stir !=fork", []lexicon.Part{{Words: []string{"stir"}}, {Words: []string{"fork"}, Not: true}}},
		{"a part that must not stand before", "!=dish =wash", []lexicon.Part{{Words: []string{"dish"}, Not: true}, {Words: []string{"wash"}}}},
		{"a mark holds for all alternatives", "!=fork|=whisk =stir", []lexicon.Part{{Words: []string{"fork", "whisk"}, Not: true}, {Words: []string{"stir"}}}},
		{"spaces do not count", "  =wash   =hands ", []lexicon.Part{{Words: []string{"wash"}}, {Words: []string{"hands"}}}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			p, err := lexicon.ParsePattern(tt.text)
			require.NoError(t, err)
			assert.Equal(t, tt.text, p.Text)
			assert.Equal(t, tt.want, p.Parts)
		})
	}
}

func TestParsePatternSaysWhatIsWrong(t *testing.T) {
	tests := []struct {
		name, text, tells string
	}{
		{"nothing", "", "without words"},
		{"spaces only", "   ", "without words"},
		{"a gap only", "~3", "without words"},
		{"a gap at the end", "wash ~", "ends in a gap"},
		{"a gap of none", "wash ~0 hands", `"~0"`},
		{"a gap too wide", "wash ~21 hands", "from 1 to 20"},
		{"a gap that is no number", "wash ~some hands", `"~some"`},
		{"a negative gap", "wash ~-2 hands", `"~-2"`},
		{"an empty alternative", "hand||board", "an empty word"},
		{"an alternative missing at the end", "hand|", "an empty word"},
		{"a lone exclamation mark", "wash !", "an empty word"},
		{"a lone question mark", "wash ?", "an empty word"},
		{"an unknown kind", "@spaceship", `"spaceship"`},
		{"no kind", "@", "no kind of noun"},
		{"an exact word missing", "wash =", "empty word"},
		{"a phrase with a word missing", "no__one", "empty word"},
		{"a stem missing before its tag", "+VB", "empty word"},
		{"nothing that must be there", "really?", "no word that must be there"},
		{"a refusal only", "!fork", "no word that must be there"},
		{"a refusal and a part that may be missing", "!fork really?", "no word that must be there"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			_, err := lexicon.ParsePattern(tt.text)
			require.Error(t, err)
			assert.ErrorContains(t, err, tt.tells)
		})
	}
}

func TestEveryKindOfNounCanBeNamedInAPattern(t *testing.T) {
	kinds := []lexicon.Kind{
		lexicon.DishNoun, lexicon.PartNoun, lexicon.Ingredient, lexicon.Protein, lexicon.Tool, lexicon.Body,
		lexicon.Cloth, lexicon.Place, lexicon.Person, lexicon.Time, lexicon.Other,
	}
	for _, kind := range kinds {
		t.Run(string(kind), func(t *testing.T) {
			p, err := lexicon.ParsePattern("@" + string(kind))
			require.NoError(t, err)
			assert.Equal(t, []lexicon.Kind{kind}, p.Parts[0].Kinds)
		})
	}
}
