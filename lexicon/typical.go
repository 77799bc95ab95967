package lexicon

import (
	"slices"
	"strings"
	"sync"
)

// Typical parts the words of one sense into those that people look at first
// for this dish type and those for any food. Typical is what stands in the
// type's own file or its families', and of the root's words those that usually
// describe one of the foods the type covers: "velvety" describes soup. For the
// root itself every word is typical.
func (d Dish) Typical(s Sense) (typical, other []Word) {
	if d.parted == nil {
		return d.part(s)
	}
	d.parted.once.Do(func() {
		d.parted.typical, d.parted.other = map[Sense][]Word{}, map[Sense][]Word{}
		for _, s := range Senses() {
			typical, other := d.part(s)
			d.parted.typical[s], d.parted.other[s] = slices.Clip(typical), slices.Clip(other)
		}
	})
	return d.parted.typical[s], d.parted.other[s]
}

// partedWords keeps what Typical returns: a tutor may ask it of a thousand
// texts about the same dish.
type partedWords struct {
	once           sync.Once
	typical, other map[Sense][]Word
}

func (d Dish) part(s Sense) (typical, other []Word) {
	foods := d.foods()
	for _, w := range d.BySense(s) {
		if d.Name == Root || w.From != Root || describes(w, foods) {
			typical = append(typical, w)
		} else {
			other = append(other, w)
		}
	}
	return typical, other
}

// foods returns the stems of what the type's dishes are: of "leek and potato
// soup" it is soup, for in English the last noun says what a thing is.
func (d Dish) foods() map[string]bool {
	out := map[string]bool{}
	for _, name := range d.Dishes {
		out[headStem(name)] = true
	}
	for _, word := range strings.Fields(d.Title) {
		out[headStem(word)] = true
	}
	return out
}

// describes reports whether the word usually describes one of the foods.
func describes(w Word, foods map[string]bool) bool {
	for _, of := range w.Of {
		if foods[headStem(of)] {
			return true
		}
	}
	return false
}

// headStem returns the stem of the last word of a name.
func headStem(name string) string {
	words := strings.Fields(strings.ToLower(name))
	if len(words) == 0 {
		return ""
	}
	return Stem(words[len(words)-1])
}
