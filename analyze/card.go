package analyze

import (
	"slices"
	"strings"

	"saywhy/analyze/perceptron"
	"saywhy/lexicon"
)

// card is what the lexicon says of a word by itself, whatever stands around it.
type card struct {
	word   string
	mended string // see vocabulary.correct
	stem   string // "" of a mark
	kind   lexicon.Kind
	judges bool
	adverb bool // see vocabulary.adverb

	judging    bool // it is a form that a one-word vague pattern takes
	stemJudges bool // so is its stem
	works      bool // its stem is that of a verb of working with food
	opens      bool // it is the first of a listed noun of several words
	mustCook   bool // it is a food that has to be cooked through

	sensed  []sensed              // its readings as a form of one word
	phrases map[string][]sensedAs // the forms that begin with it, or with what stands before its hyphen, by their second word
	looked  perceptron.Word
	begins  [patternSets][]opening // the patterns of each set that it can begin: itself, then by its stem
	fits    numbers                // the places of patterns that it fits
	meets   numbers                // those that patterns cannot do without
}

// card returns the card of a lower-case word.
func (v *vocabulary) card(word string) *card { return v.cards.get(word, v.newCard) }

func (v *vocabulary) newCard(word string) card {
	first := word
	if h := strings.IndexByte(word, '-'); h > 0 {
		first = word[:h]
	}
	c := card{
		word: word, mended: v.correct(word),
		kind: v.nouns.Kind(word), judges: v.lex.Reading.IsVague(word), adverb: v.adverb(word),
		sensed: v.singles[word], phrases: v.phrases[first],
	}
	meant := word
	if strings.ContainsFunc(word, wordRune) {
		c.stem = lexicon.Stem(word)
		meant = c.mended
	}
	if word == "i" {
		meant = "I"
	}
	c.judging, c.stemJudges, c.works = v.judging[word], v.judging[c.stem], v.works[c.stem]
	c.opens, c.mustCook = v.nouns.Opens(word), v.nouns.MustCook(word)
	c.looked = v.tagger.Look(meant)
	c.fits, c.meets = v.placing.fitting(word, c.stem, first), v.needs.fitting(word, c.stem, first)
	for _, p := range []*patterns{v.vague, v.unsensed, v.plain, v.cues, v.dangers} {
		c.begins[p.set] = slices.Concat(p.words[word], p.stems[c.stem])
	}
	return c
}
