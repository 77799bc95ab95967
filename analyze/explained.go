package analyze

import (
	"sort"

	"saywhy/lexicon"
)

// explained returns the areas that the reasons of a sentence belong to: those
// whose signs stand in the half-sentence that a reason is joined to, not all
// that the sentence speaks of.
func explained(s *sentence) map[lexicon.Area]bool {
	out := map[lexicon.Area]bool{}
	for _, w := range s.why {
		for _, a := range explains(s, w) {
			out[a] = true
		}
	}
	return out
}

// explains lists the areas one reason belongs to.
func explains(s *sentence, w clause) []lexicon.Area {
	t := &s.tokens[w.from]
	left := areasBetween(s, halfStart(s.tokens, w.from), w.from)
	right := areasBetween(s, w.from, halfEnd(s.tokens, w.from))
	switch {
	case t.norm == "from":
		// "crunchy and sharp from the lemon": the nearest quality only.
		return nearestSense(s, w.from)
	case t.norm == "so" && (contains(left, lexicon.Improvement) || contains(right, lexicon.Improvement)):
		// "It was pale, so next time a hotter oven": the fault is why for the
		// change, and is itself not explained.
		return append(workOnly(left), lexicon.Improvement)
	case t.norm == "so" && w.from+1 < len(s.tokens) && s.tokens[w.from+1].in("i", "we", "he", "she", "you"):
		// "It was too salty, so I added lime": why the step was taken, not
		// why it was salty.
		if work := workOnly(left); len(work) > 0 {
			return append(work, right...)
		}
		if len(right) > 0 {
			return right
		}
		if len(left) > 0 {
			return left
		}
	default:
		if len(left) > 0 || len(right) > 0 {
			return append(left, right...)
		}
	}
	if len(left) > 0 {
		return left
	}
	if after := areasBetween(s, w.from, len(s.tokens)); len(after) > 0 {
		return after
	}
	return s.areas
}

// areasBetween lists the areas of the signs among tokens[from:to].
func areasBetween(s *sentence, from, to int) []lexicon.Area {
	var out []lexicon.Area
	first := sort.Search(len(s.signs), func(n int) bool { return s.signs[n].from >= from-2*reach })
	for _, g := range s.signs[first:] {
		if g.from >= to {
			break
		}
		if g.to <= from {
			continue
		}
		known := false
		for _, a := range out {
			known = known || a == g.area
		}
		if !known {
			out = append(out, g.area)
		}
	}
	return out
}

// nearestSense returns the area of the last sensory word before token i.
func nearestSense(s *sentence, i int) []lexicon.Area {
	for n := len(s.sensory) - 1; n >= 0; n-- {
		if w := s.sensory[n]; w.to <= i && !w.supposed {
			return []lexicon.Area{w.sense.Area()}
		}
	}
	return s.areas
}

func contains(areas []lexicon.Area, a lexicon.Area) bool {
	for _, b := range areas {
		if a == b {
			return true
		}
	}
	return false
}

func workOnly(areas []lexicon.Area) []lexicon.Area {
	var out []lexicon.Area
	for _, a := range areas {
		switch a {
		case lexicon.Hygiene, lexicon.Safety, lexicon.Organisation, lexicon.Independence, lexicon.Technique, lexicon.Improvement:
			out = append(out, a)
		}
	}
	return out
}

// halfStart returns where the half-sentence before token i begins: behind a
// mark that ends a thought, behind "but", or behind an "and" or comma that a
// new subject follows.
func halfStart(tokens []token, i int) int {
	far := max(0, i-2*reach)
	for j := i - 2; j >= far; j-- {
		t := &tokens[j]
		if t.in(";", "but", "although", "though", ":", "--", "...", ".") {
			return j + 1
		}
		if t.in("and", ",", "then") && opensClause(tokens, j+1) {
			return j + 1
		}
	}
	return far
}

// halfEnd returns where the half-sentence that begins at token i ends.
func halfEnd(tokens []token, i int) int {
	far := min(len(tokens), i+2*reach)
	for j := i + 2; j < far; j++ {
		t := &tokens[j]
		if t.in(";", "but", "although", "though", "--", "...", ".") {
			return j
		}
		if t.in("and", ",", "then") && opensClause(tokens, j+1) {
			return j
		}
	}
	return far
}
