package lexicon_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/lexicon"
)

// published is a set of texture adjectives that a standard or paper gives
// together.
type published struct {
	name   string
	source string
	graded bool       // the levels rise; otherwise they are kinds side by side
	levels [][]string // low to high; the words of one level are equals
}

// Where the words come from, and whether they were read there or are from
// memory.
const (
	// Szczesniak 1963, J. Food Science 28:385-389, table of parameters and
	// nomenclature: the kinds and parameters were read in the abstract
	// (scilit.com), the popular terms and their order are from memory.
	szczesniak = "Szczesniak 1963, from memory"
	// ISO 5492:2008, entries of nlfnorm.cz and of GOST ISO 5492-2014, read.
	iso5492Read = "ISO 5492:2008, read"
	// ISO 5492:2008, from memory.
	iso5492Memory = "ISO 5492:2008, from memory"
	// ISO 11036:2020, extract at hfzbk.com, read.
	iso11036 = "ISO 11036:2020, read"
)

func publishedTexture() []published {
	return []published{
		{"hardness", szczesniak, true, [][]string{{"soft"}, {"firm"}, {"hard"}}},
		{"brittleness", szczesniak, true, [][]string{{"crumbly"}, {"crunchy"}, {"brittle"}}},
		{"chewiness", szczesniak, true, [][]string{{"tender"}, {"chewy"}, {"tough"}}},
		{"gumminess", szczesniak, true, [][]string{{"short"}, {"mealy"}, {"pasty"}, {"gummy"}}},
		{"viscosity", szczesniak, true, [][]string{{"thin"}, {"viscous"}}},
		{"elasticity", szczesniak, true, [][]string{{"plastic"}, {"elastic"}}},
		{"adhesiveness", szczesniak, true, [][]string{{"sticky"}, {"tacky"}, {"gooey"}}},
		{"particle size and shape", szczesniak, false, [][]string{{"gritty"}, {"grainy"}, {"coarse"}}},
		{"particle shape and orientation", szczesniak, false, [][]string{{"fibrous"}, {"cellular"}, {"crystalline"}}},
		{"moisture content", szczesniak, true, [][]string{{"dry"}, {"moist"}, {"wet"}, {"watery"}}},
		{"oiliness and greasiness", szczesniak, false, [][]string{{"oily"}, {"greasy"}}},

		// "powdery" was read in the Czech edition only.
		{"fracturability (3.44)", iso5492Read, true, [][]string{{"cohesive"}, {"crumbly"}, {"crunchy"}, {"brittle", "crispy", "crusty"}, {"pulverulent", "powdery"}}},
		// The last pair was half seen.
		{"adhesiveness (3.51)", iso5492Read, true, [][]string{{"tacky"}, {"clinging"}, {"gooey", "gluey"}, {"sticky", "adhesive"}}},
		{"moisture of a surface (3.57)", iso5492Read, true, [][]string{{"dry"}, {"moist"}, {"wet"}}},
		{"moisture of a body (3.57)", iso5492Read, true, [][]string{{"dry"}, {"moist"}, {"juicy", "succulent"}, {"watery"}}},
		{"hardness (3.42)", iso5492Memory, true, [][]string{{"soft"}, {"firm"}, {"hard"}}},
		{"chewiness (3.45)", iso5492Memory, true, [][]string{{"melting"}, {"tender"}, {"chewy"}, {"tough"}}},
		{"gumminess (3.47)", iso5492Memory, true, [][]string{{"short"}, {"mealy"}, {"pasty"}, {"gummy"}}},
		{"viscosity (3.48)", iso5492Memory, true, [][]string{{"fluid"}, {"thin"}, {"unctuous", "creamy"}, {"thick", "viscous"}}},
		{"springiness (3.50)", iso5492Memory, true, [][]string{{"plastic"}, {"malleable"}, {"elastic", "springy", "rubbery"}}},
		{"denseness", iso5492Memory, true, [][]string{{"light"}, {"heavy", "dense"}}},
		{"fattiness (3.59)", iso5492Memory, false, [][]string{{"oily"}, {"greasy"}, {"fatty"}}},
		{"granularity (6.2.3.2)", iso11036, true, [][]string{{"smooth"}, {"chalky"}, {"grainy"}, {"gritty"}, {"sandy"}, {"coarse"}}},
		{"conformation (6.2.3.3)", iso11036, false, [][]string{{"fibrous"}, {"cellular"}, {"crystalline"}, {"puffy"}, {"aerated"}}},
	}
}

func TestEveryPublishedTextureAdjectiveIsAWordOfTexture(t *testing.T) {
	words := load(t).Words()
	for _, p := range publishedTexture() {
		t.Run(p.source+" "+p.name, func(t *testing.T) {
			for _, level := range p.levels {
				for _, adjective := range level {
					_, ok := finds(words, lexicon.Touch, adjective)
					assert.True(t, ok, "%q is neither a word nor a form of texture", adjective)
				}
			}
		})
	}
}

// orderLeftOpen are words that the sources do not place alike: sticky is the
// lowest adhesive word in 1963 and the highest in ISO 5492, powdery is a top level of fracturability and also a word for particles.
var orderLeftOpen = map[string]bool{"sticky": true, "powdery": true}

// orderAgainst compares the scales of one list of words with the published
// one. It returns how many pairs stand on a scale together in both.
func orderAgainst(tb testing.TB, words []lexicon.Word, p published, of string) int {
	tb.Helper()
	type placed struct {
		adjective string
		level     int
		word      lexicon.Word
	}
	var all []placed
	for level, adjectives := range p.levels {
		for _, a := range adjectives {
			if w, ok := finds(words, lexicon.Touch, a); ok && w.Scale != "" && !orderLeftOpen[a] {
				all = append(all, placed{a, level, w})
			}
		}
	}
	pairs := 0
	for i, low := range all {
		for _, high := range all[i+1:] {
			if low.word.Scale != high.word.Scale {
				continue
			}
			pairs++
			if low.level == high.level {
				assert.Equal(tb, low.word.Step, high.word.Step, "%s: %q and %q are one level of %s (%s) and two of our scale %q",
					of, low.adjective, high.adjective, p.name, p.source, low.word.Scale)
				continue
			}
			assert.Less(tb, low.word.Step, high.word.Step, "%s: %q stands below %q in %s (%s), not in our scale %q",
				of, low.adjective, high.adjective, p.name, p.source, low.word.Scale)
		}
	}
	return pairs
}

func TestScalesRiseAsThePublishedOnesDo(t *testing.T) {
	lex := load(t)
	for _, p := range publishedTexture() {
		if !p.graded {
			continue
		}
		t.Run(p.source+" "+p.name, func(t *testing.T) {
			require.NotZero(t, orderAgainst(t, lex.General().Words, p, "any dish"),
				"no two words of the published scale share a scale of ours: nothing was compared")
			for _, d := range lex.Types() {
				orderAgainst(t, d.Words, p, d.Name)
			}
		})
	}
}

func TestBasicTastesAndMetallicAreTasteWords(t *testing.T) {
	// The five of ISO 5492, 3.2 (read, docs2.cntd.ru/document/1200114256), with
	// the reference substances of ISO 3972 (the first four read as a published
	// series, PMC6567015, table 1; glutamate from memory); metallic as the
	// taste of iron(II) sulfate, ISO 3972 (read, din.de).
	words := load(t).Words()
	tests := []struct {
		taste, substance string
		any              []string
	}{
		{"sweet", "sucrose", []string{"sweet"}},
		{"acid", "citric acid", []string{"acid", "acidic", "sour"}},
		{"bitter", "caffeine", []string{"bitter"}},
		{"salty", "sodium chloride", []string{"salty"}},
		{"umami", "monosodium glutamate", []string{"umami"}},
		{"metallic", "iron(II) sulfate", []string{"metallic"}},
	}
	for _, tt := range tests {
		t.Run(tt.taste, func(t *testing.T) {
			found := false
			for _, name := range tt.any {
				_, ok := finds(words, lexicon.Tongue, name)
				found = found || ok
			}
			assert.True(t, found, "the taste of %s is not a taste word under any of %q", tt.substance, tt.any)
		})
	}
}

func TestSchoolAndConsumerWordsStandUnderTheirSense(t *testing.T) {
	words := load(t).Words()
	texture := []lexicon.Sense{lexicon.Touch}
	tests := []struct {
		name   string
		senses []lexicon.Sense // either will do
		words  []string
	}{
		// Glossary of a school curriculum, k10outline.scsa.wa.edu.au, sensory
		// properties: read. Its "noise" is texture here, as in ISO 5492, 3.41.
		{"school glossary, taste", []lexicon.Sense{lexicon.Tongue}, []string{"sweet", "sour", "salty"}},
		{"school glossary, texture", texture, []string{"smooth", "moist", "lumpy"}},
		{"school glossary, aroma", []lexicon.Sense{lexicon.Smell}, []string{"spicy", "sweet"}},
		{"school glossary, appearance", []lexicon.Sense{lexicon.Sight}, []string{"light", "dark", "golden", "glossy"}},
		{"school glossary, noise", texture, []string{"crunchy", "fizzy", "crackly"}},
		// Consumers' own English words, Foods 2019, 8:484 (PMC6835815), table 4:
		// read.
		{"consumers' words", texture, []string{"smooth", "juicy", "rough", "chewy", "gummy", "spongy", "crunchy", "oily", "gritty", "powdery", "grainy", "melts"}},
		// The glossary has it under aroma, ISO 5492 (from memory) under taste.
		{"pungent", []lexicon.Sense{lexicon.Tongue, lexicon.Smell}, []string{"pungent"}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			for _, word := range tt.words {
				found := false
				for _, sense := range tt.senses {
					_, ok := finds(words, sense, word)
					found = found || ok
				}
				assert.True(t, found, "%q is not a word of %v", word, tt.senses)
			}
		})
	}
}
