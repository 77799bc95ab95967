package lexicon

import "strings"

// Word is one row of a word list: a word for food as it is seen, smelt, tasted
// or felt.
type Word struct {
	Word  string   // the headword, lower case; several words are allowed
	Sense Sense    //
	Means string   // a plain meaning of at most 16 words
	Of    []string // nouns it usually describes
	Forms []string // other forms that mean the same here
	Scale string   // the scale the trade grades it on, or ""
	Step  int      // its place on that scale from 1, low to high; 0 without one
	From  string   // the type whose file the row stands in
}

// Graded returns the regular comparative and superlative of an adjective of
// one syllable or in -y, and its -ish form, as English spelling makes them:
// crispy crispier crispiest, flat flatter flattest, pale paler palest. A word
// that does not compare yields forms that nobody writes, which does no harm;
// the caller drops those that are other words (burn, burner).
func (w Word) Graded() []string {
	s := w.Word
	if strings.ContainsAny(s, " -'") || len(s) < 3 {
		return nil
	}
	last := s[len(s)-1]
	switch {
	case last == 'y' && !vowel(s[len(s)-2]):
		i := s[:len(s)-1] + "i"
		return []string{i + "er", i + "est", i + "ness", i + "sh"}
	case vowelGroups(s) > 1 && last != 'e':
		return []string{s + "ish", s + "ness"}
	case last == 'e':
		if vowelGroups(s) > 2 {
			return nil
		}
		return []string{s + "r", s + "st", s[:len(s)-1] + "ish", s + "ness"}
	case !vowel(last) && last != 'w' && last != 'x' && last != 'y' && vowel(s[len(s)-2]) && !vowel(s[len(s)-3]):
		d := s + string(last)
		return []string{d + "er", d + "est", d + "ish", s + "ness"}
	}
	return []string{s + "er", s + "est", s + "ish", s + "ness"}
}

func vowel(b byte) bool { return strings.IndexByte("aeiou", b) >= 0 }

func vowelGroups(s string) int {
	n := 0
	in := false
	for i := range len(s) {
		v := vowel(s[i]) || s[i] == 'y' && i > 0
		if v && !in {
			n++
		}
		in = v
	}
	return n
}
