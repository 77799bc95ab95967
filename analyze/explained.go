package analyze

import (
	"sort"

	"saywhy/lexicon"
)

// compact is the longest sentence, in tokens, that is read as one thought. A
// longer one runs on, and its halves are about different things.
const compact = 32

// explained returns the areas that the reasons of a sentence belong to.
//
// A reason in a sentence of ordinary length says why the work in it was done,
// wherever it stands ("I tied my hair back and washed my hands because …"). A
// quality of the food is explained only by the half-sentence it is joined to.
func explained(s *sentence) map[lexicon.Area]bool {
	if len(s.why) == 0 {
		return nil
	}
	out := map[lexicon.Area]bool{}
	for _, w := range s.why {
		if verdict(s.tokens, w) {
			continue
		}
		help := ofHelp(s, w)
		for _, a := range explains(s, w) {
			out[a] = out[a] || a != lexicon.Independence || help
		}
		if s.tokens[w.from].in("from", "where") {
			continue
		}
		if len(s.tokens) > compact {
			// A change told in one long breath answers something told before.
			out[lexicon.Improvement] = out[lexicon.Improvement] || s.has(lexicon.Improvement)
			continue
		}
		for _, a := range workOnly(s.areas) {
			out[a] = out[a] || a != lexicon.Independence || help
		}
	}
	return out
}

// explains lists the areas one reason belongs to, by what joins it to the rest.
func explains(s *sentence, w clause) []lexicon.Area {
	t := &s.tokens[w.from]
	from, to := halfStart(s.tokens, w.from), halfEnd(s.tokens, w.from)
	left, right := areasBetween(s, from, w.from), areasBetween(s, w.from, to)
	var out []lexicon.Area
	switch kindOf(s.tokens, w) {
	case origin:
		// "crunchy and sharp from the lemon": the nearest quality only.
		return nearestSense(s, w.from)
	case remedy:
		// "It was lumpy, so I whisked it": the fault is why for the step, and
		// the step is what became of the fault. "It was pink so I ate round
		// it" tells no cause.
		out = append(workOnly(left), workOnly(right)...)
		if dealtWith(s.tokens, w.from) {
			out = append(out, resultOnly(left)...)
		}
		if s.tokens[w.from+1].norm == "they" && cameAbout(s.tokens, w) {
			out = append(out, resultOnly(right)...) // "so they kept their crunch"
		}
		return out
	case plan:
		// "It was pale, so next time a hotter oven": the fault is why for the
		// change, and is itself not explained.
		return append(workOnly(left), lexicon.Improvement)
	case purpose:
		// "I sieved it to catch the stringy bits": why the step was taken.
		out = append(workOnly(left), workOnly(right)...)
		if t.norm == "for" && w.from+1 < len(s.tokens) {
			out = append(out, senseNamed(&s.tokens[w.from+1])...) // "chives on top for colour"
		}
	case cause:
		// "It was dry because it was left too long": the quality before is
		// explained; one behind "because" is what explains.
		out = append(workOnly(left), workOnly(right)...)
		if len(resultOnly(left)) > 1 {
			out = append(out, lastQualities(s, w.from)...)
		} else {
			out = append(out, resultOnly(left)...)
		}
		if len(left) == 0 && w.from == 0 {
			// "Because the oven was hot it went brown": the effect follows.
			out = append(out, resultOnly(areasBetween(s, to, len(s.tokens)))...)
		}
	case result:
		// "… so it went soft", "which made it shiny": the quality that came
		// of it. In the present it is a rule of the kitchen.
		out = append(append(out, left...), right...)
		if t.norm == "so" && len(resultOnly(right)) > 0 {
			out = append(workOnly(left), right...) // what came of it, not what it came of
		}
		if present(s.tokens, w.from, to) {
			out = append(append([]lexicon.Area{}, left...), workOnly(right)...)
		}
	}
	if contains(left, lexicon.Improvement) || contains(out, lexicon.Improvement) {
		// "I'd dry it first so it crisps up": what is hoped for another time.
		// "It was greasy because of the cheese, so less next time" tells a
		// quality and its cause all the same, as does "they went to mush, I
		// should have tested one", where the plan is another thought.
		behind := !contains(left, lexicon.Improvement) && (kindOf(s.tokens, w) == cause && len(resultOnly(left)) > 0 || cameAbout(s.tokens, w))
		if !behind {
			out = workOnly(out)
		}
	}
	if len(out) == 0 && len(left) == 0 && len(right) == 0 {
		return s.areas
	}
	if t.norm == "because" && len(out) == 0 && len(right) > 0 && from > 0 {
		return workOnly(s.areas)
	}
	return out
}

// cameAbout reports whether a clause of result tells in the past what happened
// ("so they went to mush", "which made it salty").
func cameAbout(tokens []token, w clause) bool {
	for i := w.from; i < w.to; i++ {
		if t := &tokens[i]; t.tagIn("VBD", "VBZ", "VBP", "MD") {
			return t.tag == "VBD" && !t.imagines()
		}
	}
	return false
}

// lastQualities returns the area of the last sensory word before token i, and
// of the one joined to it by "and" ("white and floppy because …"). Qualities
// further off in a list are not explained.
func lastQualities(s *sentence, i int) []lexicon.Area {
	out := nearestSense(s, i)
	listed := false
	for n := len(s.sensory) - 1; n > 0 && s.sensory[n-1].to > i-reach; n-- {
		w, before := s.sensory[n], s.sensory[n-1]
		if w.to > i {
			continue
		}
		joint := &s.tokens[max(0, w.from-1)]
		if w.from-before.to > 2 || w.from > before.to && !joint.in("and", "&") && !(listed && joint.norm == ",") {
			break // "curled up | hard" is one quality
		}
		listed = true
		out = append(out, before.sense.Area())
	}
	return out
}

// present reports whether the first finite verb among tokens[from:to] is in
// the present.
func present(tokens []token, from, to int) bool {
	for i := from + 1; i < to && i < len(tokens); i++ {
		switch tokens[i].tag {
		case "VBZ", "VBP":
			return !tokens[i].in("'s", "is", "are")
		case "VBD", "MD":
			return false
		}
	}
	return false
}

// resultOnly lists the areas that tell of the food as sensed.
func resultOnly(areas []lexicon.Area) []lexicon.Area {
	var out []lexicon.Area
	for _, a := range areas {
		switch a {
		case lexicon.Appearance, lexicon.Aroma, lexicon.Taste, lexicon.Texture:
			out = append(out, a)
		}
	}
	return out
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

// nearestSense returns the area of the last sensory word before token i, if it
// stands close by.
func nearestSense(s *sentence, i int) []lexicon.Area {
	for n := len(s.sensory) - 1; n >= 0; n-- {
		if w := s.sensory[n]; w.to <= i && !w.supposed && w.to >= i-6 {
			return []lexicon.Area{w.sense.Area()}
		}
	}
	return nil
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
		if t.in("and", ",", "then") && opensClause(tokens, j+1) && !leadsUpTo(tokens, j+1, i) {
			return j + 1
		}
		if len(tokens) > compact && runsOn(tokens, j+1) && !leadsUpTo(tokens, j+1, i) {
			return j + 1
		}
	}
	return far
}

// leadsUpTo reports whether the words from one token to the cause at another
// only point back or hedge: ", and that is | down to …", ", I think | because …".
func leadsUpTo(tokens []token, from, i int) bool {
	if i-from > 6 || !tokens[i].in("because", "down", "due", "owing", "from", "since", "why", "thanks") {
		return false
	}
	said := false
	for j := from; j < i; j++ {
		t := &tokens[j]
		switch {
		case t.in("is", "was", "'s", "be", "think", "reckon", "guess", "believe", "suspect", "suppose", "assume", "thought", "reckoned"):
			said = true
		case !t.isAdv() && !t.in("that", "this", "which", "it", "i", "we", "all", "its", "mostly", "partly", "must", "might", "could", "have", "been"):
			return false
		}
	}
	return said
}

// runsOn reports whether a new thought begins at token i although nothing
// joins it to the one before: a pronoun and its verb behind a word that ends a
// thought ("… sweet and soft i did the oil with mum").
func runsOn(tokens []token, i int) bool {
	if i < 2 || i+1 >= len(tokens) {
		return false
	}
	t, p, n := &tokens[i], &tokens[i-1], &tokens[i+1]
	if !t.in("i", "we", "he", "she", "it", "they", "you") || !(n.isVerb() || n.in("didnt", "'s", "'m", "'d")) {
		return false
	}
	return (p.isNoun() || p.isAdj() || p.tag == "RB" || p.in("it", "them", "in", "out", "up", "off", "on", "lol", "tbh")) && !p.in("so", "that", "how", "then", "just", "only", "even", "bit", "one", "thing", "way", "time", "part", "because")
}

// halfEnd returns where the half-sentence that begins at token i ends.
func halfEnd(tokens []token, i int) int {
	far := min(len(tokens), i+2*reach)
	for j := i + 2; j < far; j++ {
		t := &tokens[j]
		if t.in(";", "but", "although", "though", "--", "...", ".") {
			return j
		}
		if t.in("and", ",", "then") && opensClause(tokens, j+1) || t.norm == "so" && plansAhead(tokens, j) {
			return j
		}
		if len(tokens) > compact && j > i+3 && runsOn(tokens, j) {
			return j
		}
	}
	return far
}
