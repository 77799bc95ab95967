package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// minTypo is the shortest word in which a slip is mended: in shorter ones
// nearly every slip is another word.
const minTypo = 5

// know adds a word that a slip is mended to.
func (v *vocabulary) know(w string) {
	if v.known[w] || len(w) < minTypo {
		return
	}
	v.known[w] = true
	v.initial[w[0]] = append(v.initial[w[0]], w)
}

// correct returns the word with a child's slip mended, if it has one.
func (v *vocabulary) correct(w string) string {
	if fixed, ok := v.spelling[w]; ok {
		return fixed
	}
	if len(w) < minTypo || v.known[w] || len(v.singles[w]) > 0 || v.nouns.Kind(w) != lexicon.NoKind || v.met != nil && v.met.Knows(w) || strings.ContainsAny(w, "-'0123456789") {
		return w
	}
	return v.mend(w)
}

// mend returns the known word that w is a misspelling of, or w itself. It is
// asked only of words that no list and no tagger knows. One slip is mended (a
// letter missing, added, changed or swapped), two in words of eight letters or
// more; the first letter must stand. Of several candidates the closest wins,
// then the alphabetically first; a vowel slip counts less than a consonant.
func (v *vocabulary) mend(w string) string {
	if len(w) < minTypo || len(w) > 20 || v.known[w] || v.lex.Reading.RealWords[w] {
		return w
	}
	limit := 1
	if len(w) >= 8 {
		limit = 2
	}
	best, bestCost := w, 100
	for _, c := range v.initial[w[0]] {
		if !oneSlip(w, c) {
			continue
		}
		d := lexicon.Distance(w, c, limit)
		if d > limit {
			continue
		}
		cost := d * 2
		if skeleton(w) == skeleton(c) {
			cost--
		}
		if cost < bestCost || cost == bestCost && c < best {
			best, bestCost = c, cost
		}
	}
	return best
}

// oneSlip reports whether two words are the same when at most one letter is taken
// out of each: a quick look before their distance is measured.
func oneSlip(a, b string) bool {
	if len(a) < len(b) {
		a, b = b, a
	}
	switch len(a) - len(b) {
	case 0:
		for len(a) > 0 && a[0] == b[0] {
			a, b = a[1:], b[1:]
		}
		return len(a) == 0 || lacksOne(a, b[1:]) || lacksOne(b, a[1:])
	case 1:
		return lacksOne(a, b)
	}
	return false
}

// lacksOne reports whether the short word is the long one without one letter.
func lacksOne(long, short string) bool {
	for len(short) > 0 && long[0] == short[0] {
		long, short = long[1:], short[1:]
	}
	return long[1:] == short
}

// skeleton is the word without vowels and doubled letters, with letters that
// sound alike folded: what is left when a child spells by ear.
func skeleton(w string) string {
	w = strings.NewReplacer("ph", "f", "ck", "k", "sch", "sh", "tch", "ch", "gh", "", "kn", "n", "wr", "r").Replace(w)
	var b strings.Builder
	last := byte(0)
	for i := range len(w) {
		c := w[i]
		switch c {
		case 'a', 'e', 'i', 'o', 'u', 'y', 'h', 'w':
			continue
		case 'c', 'q':
			c = 'k'
		case 'z':
			c = 's'
		}
		if c != last {
			b.WriteByte(c)
		}
		last = c
	}
	return b.String()
}
