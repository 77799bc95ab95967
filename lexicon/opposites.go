package lexicon

import "strings"

// apart is how far two words of one scale stand apart at least to be opposites,
// as a share of the scale's length: at two fifths, pale and golden brown are
// and golden and brown are not. Chosen on the scales of the built-in files.
const apart = 0.4

// Opposites knows which words cannot both be true of the same food: two words
// of one scale that stand far apart on it, or a pair that the file
// reading/opposites.yaml lists. It is built once, never changes and is safe for
// many goroutines.
type Opposites struct {
	graded map[wordKey]Word
	length map[string]int // steps between the ends of a scale
	pairs  map[string]map[string]bool
}

// Opposites returns the opposites among the words of the lexicon.
func (l *Lexicon) Opposites() *Opposites {
	o := &Opposites{graded: map[wordKey]Word{}, length: map[string]int{}, pairs: l.Reading.Opposites}
	lowest, highest := map[string]int{}, map[string]int{}
	for _, w := range l.all {
		if w.Scale == "" {
			continue
		}
		o.graded[wordKey{w.Sense, w.Word}] = w
		if n, ok := lowest[w.Scale]; !ok || w.Step < n {
			lowest[w.Scale] = w.Step
		}
		highest[w.Scale] = max(highest[w.Scale], w.Step)
	}
	for scale, high := range highest {
		o.length[scale] = high - lowest[scale]
	}
	return o
}

// Are reports whether two headwords, each under its sense, are opposites.
// Words that are not listed are never opposites.
func (o *Opposites) Are(a Sense, word string, b Sense, other string) bool {
	word, other = strings.TrimPrefix(word, "went "), strings.TrimPrefix(other, "went ") // "went soft" is soft
	if o.pairs[word][other] {
		return true
	}
	v, w := o.graded[wordKey{a, word}], o.graded[wordKey{b, other}]
	if v.Scale == "" || v.Scale != w.Scale {
		return false
	}
	return float64(max(v.Step-w.Step, w.Step-v.Step)) >= apart*float64(o.length[v.Scale]) && v.Step != w.Step
}
