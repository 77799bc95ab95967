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
	if short := v.unstretched(w); short != w {
		return short
	}
	if s := v.endsInY(w); s != w {
		return s
	}
	if len(w) < minTypo || v.known[w] || len(v.singles[w]) > 0 || v.nouns.Kind(w) != lexicon.NoKind || v.met != nil && v.met.Knows(w) || strings.ContainsAny(w, "-'0123456789") {
		return w
	}
	return v.mend(w)
}

// endsInY returns a word of the list that is spelt with an e before its y
// ("slimey", "crumbley") or keeps its y before an ending ("stickyer") as it is
// written otherwise.
func (v *vocabulary) endsInY(w string) string {
	if len(v.singles[w]) > 0 || v.lex.Reading.RealWords[w] {
		return w
	}
	for _, slip := range [][2]string{{"ey", "y"}, {"yer", "ier"}, {"yest", "iest"}} {
		if base, ok := strings.CutSuffix(w, slip[0]); ok && len(v.singles[base+slip[1]]) > 0 {
			return base + slip[1]
		}
	}
	return w
}

// unstretched returns a word drawn out for stress ("gooood", "yummmm") as it is
// written otherwise, if that is a word.
func (v *vocabulary) unstretched(w string) string {
	for keep := 2; keep > 0; keep-- {
		short := make([]byte, 0, len(w))
		drawn := false
		for i := 0; i < len(w); {
			run := i + 1
			for run < len(w) && w[run] == w[i] {
				run++
			}
			n := run - i
			if n > 2 && w[i] >= 'a' && w[i] <= 'z' {
				n, drawn = keep, true
			}
			for range n {
				short = append(short, w[i])
			}
			i = run
		}
		s := string(short)
		if !drawn {
			return w
		}
		if strings.Trim(s, s[:1]) == "" {
			return w // "iii", "xxx"
		}
		if v.known[s] || v.judging[s] || len(v.singles[s]) > 0 || v.met != nil && v.met.Knows(s) {
			return s
		}
	}
	return w
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
