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
}

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
	return &card{
		word: word, mended: v.correct(word), stem: lexicon.Stem(word),
		kind: v.nouns.Kind(word), judges: v.lex.Reading.IsVague(word),
	}
}

// fnv1a adds a string to a hash (Fowler, Noll and Vo, 32 bits).
func fnv1a(h uint32, s string) uint32 {
	for i := range len(s) {
		h = (h ^ uint32(s[i])) * 16777619
	}
	return h
}

const fnvStart = 2166136261
