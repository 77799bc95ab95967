package analyze

import (
	"strings"
	"sync/atomic"

	"saywhy/lexicon"
)

// card is what the lexicon says of a word by itself, whatever stands around it.
type card struct {
	word   string
	mended string // see vocabulary.correct
	stem   string
	kind   lexicon.Kind
	judges bool

	sensed  []sensed   // its readings as a form of one word
	phrases []sensedAs // the forms that begin with it, or with what stands before its hyphen
	begins  [patternSets]opening
}

// opening is the patterns of a set that a word can begin: itself, and by its stem.
type opening struct{ word, stem []int }

// cards keeps the cards of words met lately, for texts of a kind share most of
// their words. A word that meets another in its slot takes its place, so that
// they never take more memory; two readings that write to the same slot write
// what is right for either.
type cards [1 << 13]atomic.Pointer[card]

// longestKept is the most bytes of a word whose card is kept.
const longestKept = 32

// card returns the card of a lower-case word.
func (v *vocabulary) card(word string) *card {
	if len(word) > longestKept {
		return v.newCard(word)
	}
	slot := &v.cards[fnv1a(fnvStart, word)%uint32(len(v.cards))]
	if c := slot.Load(); c != nil && c.word == word {
		return c
	}
	c := v.newCard(strings.Clone(word)) // not the text around it
	slot.Store(c)
	return c
}

func (v *vocabulary) newCard(word string) *card {
	first := word
	if h := strings.IndexByte(word, '-'); h > 0 {
		first = word[:h]
	}
	c := &card{
		word: word, mended: v.correct(word), stem: lexicon.Stem(word),
		kind: v.nouns.Kind(word), judges: v.lex.Reading.IsVague(word),
		sensed: v.singles[word], phrases: v.phrases[first],
	}
	for _, p := range []*patterns{v.vague, v.unsensed, v.plain, v.cues, v.dangers} {
		c.begins[p.set] = opening{p.words[word], p.stems[c.stem]}
	}
	return c
}

// fnv1a adds a string to a hash (Fowler, Noll and Vo, 32 bits).
func fnv1a(h uint32, s string) uint32 {
	for i := range len(s) {
		h = (h ^ uint32(s[i])) * 16777619
	}
	return h
}

const fnvStart = 2166136261
