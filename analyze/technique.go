package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// carriedOut reports whether a sign of technique tells how food was cooked,
// and does not only name a step in passing while the sentence is about
// something else.
func (d areas) carriedOut(s *sentence, h hit, hits []hit) bool {
	t := &s.tokens[h.from]
	switch {
	case h.Step == "method" && !d.cooked(s, h), h.Step == "handling" && !d.handledFood(s, h):
		return false
	case h.Step == "told" && t.tag != "" && (passive(s.tokens, h) || t.isVerb() && !strings.HasSuffix(t.norm, "ing") && !doneBySomebody(s.tokens, h.from)), inPassing(s.tokens, h.from):
		return false
	case inChange(s.tokens, h.from, hits):
		return false // what would be done another time was not done
	case addition(t) && !d.mannered(s, h) && !processed(s.tokens, h):
		return false
	case handling(t.stem) && !(strings.HasSuffix(t.norm, "ing") && clauseStart(s.tokens, h.from) == h.from) && serves(s, hits, h):
		return false
	case h.Step == "shown" && putAway(s.tokens, h):
		return false
	case t.stem == "cut" && portions(s.tokens, h):
		return false
	}
	return true
}

// putAway reports whether food that "went in" went to where things are kept or
// thrown ("they went in the sink"), or only gives the time of something else
// ("before it went in the oven").
func putAway(tokens []token, h hit) bool {
	if !between(tokens, h.from-1, h.to, "went", "goes", "gone", "go") {
		return false
	}
	if start := clauseStart(tokens, h.from); start > 0 && tokens[start-1].in("before", "after") {
		return true
	}
	for j := h.to; j < len(tokens) && j < h.to+6 && !closesClause(tokens[j].norm); j++ {
		if tokens[j].in("fridge", "freezer", "sink", "bin", "dishwasher", "room", "tub", "tubs", "compost", "floor") {
			return true
		}
	}
	return false
}

// inChange reports whether the half-sentence around token i tells a change for
// another time: "I'd wring it in a cloth next time".
func inChange(tokens []token, i int, hits []hit) bool {
	from, to := halfStart(tokens, i), halfEnd(tokens, i)
	for _, h := range hits {
		if lexicon.Area(h.Label) == lexicon.Improvement && h.Step == "told" && (h.from >= from && h.from < to || h.to-1 == i) {
			return true
		}
	}
	return false
}

// handling reports whether a verb is one that every job in a kitchen needs, so
// that beside a word of hygiene, safety, order or help it only says what was
// kept clean, safe, ready or done alone: "I chopped everything before I
// started", "he lowered them in away from him". A method such as kneading or
// simmering is technique whatever stands beside it.
func handling(stem string) bool {
	switch stem {
	case "cut", "chop", "slice", "grate", "peel", "core", "trim", "dice", "crack", "separ", "lay", "laid", "line", "greas", "spread", "pour", "lower", "drain", "lift", "scrape",
		"squeez", "rins", "wrap", "cool", "freez", "froze", "dip", "add", "put", "use", "tip", "place", "spoon", "scoop", "roll", "carv", "heat", "mix", "stir", "shape", "pinch",
		"steadi", "take", "took", "left", "leav", "had", "turn", "drop", "let", "cook", "bake", "lick", "touch", "fri", "marinad", "slid", "drizzl", "get", "got":
		return true
	}
	return false
}

// serves reports whether a concrete sign of another work area stands near the
// step h, so that the step is told for its sake. Help does not take the step
// over where the half-sentence also says how it was done.
func serves(s *sentence, hits []hit, h hit) bool {
	from, to := halfStart(s.tokens, h.from), halfEnd(s.tokens, h.from)
	manner := false
	for _, c := range s.how {
		manner = manner || c.from >= from && c.from < to
	}
	for _, o := range hits {
		switch lexicon.Area(o.Label) {
		case lexicon.Hygiene, lexicon.Safety, lexicon.Organisation, lexicon.Independence:
			if lexicon.Area(o.Label) == lexicon.Independence && manner {
				continue
			}
			if o.Step == "told" && o.from < to && o.to > from {
				return true
			}
		}
	}
	return false
}

// addition reports whether a verb only puts something in or on: what goes into
// a dish is its recipe, and technique only when it is told when or how.
func addition(t *token) bool {
	return t.in("add", "adds", "added", "adding", "put", "putting", "use", "used", "using", "useing")
}

// mannered reports whether the half-sentence of step h tells its manner, its
// order or its heat: "at once", "first", "cold butter", "under the grill".
func (d areas) mannered(s *sentence, h hit) bool {
	from, to := halfStart(s.tokens, h.from), halfEnd(s.tokens, h.from)
	for _, c := range s.how {
		if c.from >= from && c.from < to && c.from != h.from {
			return true
		}
	}
	for i := from; i < to; i++ {
		if s.tokens[i].in("first", "last", "early", "late", "later", "beginning", "end", "start", "once", "slowly", "gradually", "gently", "bit", "time", "half",
			"cold", "warm", "hot", "melted", "boiling", "softened", "chilled", "oven", "pan", "fridge", "freezer", "tin", "grill", "heat", "wok", "sieve", "sticks", "skewers", "scoop", "whisk", "blender", "mixer", "centre", "while", "after", "before", "until", "till", "same", "raw", "hands", "thermometer") {
			return true
		}
	}
	return false
}

// processed reports whether what is put in changes how the mixture works
// (flour, liquid, fat, egg), and is told with its amount or its effect; salt,
// sugar or a herb changes only the taste or the look.
func processed(tokens []token, h hit) bool {
	for i := h.from + 1; i < h.to; i++ {
		if tokens[i].in("milk", "flour", "stock", "water", "oil", "egg", "eggs", "butter", "yeast", "cornflour", "cubes", "liquid") {
			for j := h.from + 1; j <= h.to+1 && j < len(tokens); j++ {
				if tokens[j].in("too", "much", "many", "more", "extra", "enough", "less") || tokens[j].norm == "to" && j+1 < len(tokens) && tokens[j+1].in("much", "make", "stop", "thicken") {
					return true
				}
			}
		}
	}
	return false
}

// portions reports whether a cut only opens or divides the finished dish, to
// look inside or to serve: "we cut two in half to see", "when I cut into it".
func portions(tokens []token, h hit) bool {
	if i := h.from; i > 1 && tokens[i-1].norm == "to" && tokens[i-2].in("enough", "easy", "hard") {
		return true // "set firmly enough to cut"
	}
	for j := h.from + 1; j < len(tokens) && j <= h.from+8; j++ {
		if tokens[j].in("see", "check", "middle", "half", "open", "well", "easily", "clean", "cleanly", "slices", "off") || tokens[j].norm == "into" && j == h.from+1 || tokens[j].norm == "through" {
			return true
		}
		if closesClause(tokens[j].norm) {
			break
		}
	}
	return false
}

// accounted finds a technique that only its reason shows: "I put the pieces in
// big because I like them big", "they stuck because I didn't grease it". A step
// of cooking is told with its cause, end or effect, and no other area of work is
// what it was done for.
func accounted(s *sentence) []sign {
	if len(s.why) == 0 || isHeading(s) || startsWithHeading(s.tokens) {
		return nil
	}
	for _, g := range s.signs {
		if contains(workAreas(), g.area) || g.area == lexicon.Improvement {
			return nil
		}
	}
	for i := range s.tokens {
		if stepTold(s.tokens, i) {
			return []sign{{area: lexicon.Technique, told: true, from: i, to: i + 1}}
		}
	}
	return nil
}

// stepTold reports whether the verb at token i tells a step of cooking that the
// cook took or left out, in words that name the food or stand for it.
func stepTold(tokens []token, i int) bool {
	t := &tokens[i]
	if !(t.card.works || ownDeed(tokens, i)) || !t.isVerb() || t.tag == "VBG" || t.describes() && t.tag == "VBN" || t.in("had", "have", "eat", "ate", "serve", "served", "took", "take", "get", "got") {
		return false
	}
	if inPassing(tokens, i) || i > 0 && tokens[i-1].in("would", "'d", "will", "'ll", "could", "should", "might") {
		return false
	}
	if s := subject(tokens, i); s >= 0 && !tokens[s].human() && !afterLinkingVerb(tokens, i) && i > 0 {
		return false // "it spread": what the food did
	}
	for j := i + 1; j < len(tokens) && j <= i+5; j++ {
		if n := &tokens[j]; n.in("it", "them", "each", "everything") || n.kind.Food() {
			return true
		} else if n.pause() || n.joins() {
			break
		}
	}
	return afterLinkingVerb(tokens, i)
}

// ownDeed reports whether the verb at token i, which no list has as a job of the
// kitchen, tells what the writer did by hand: "I slashed the skin", "we bunged in a
// spoon of flour". What was sensed, thought, said, wanted or eaten is none.
func ownDeed(tokens []token, i int) bool {
	if t := &tokens[i]; t.tag != "VBD" || linkingVerb(t.norm) || t.in("ate", "tried", "tasted", "liked", "loved", "hated", "enjoyed", "wanted", "needed", "thought", "knew", "felt", "saw", "heard",
		"smelt", "smelled", "noticed", "found", "said", "told", "asked", "called", "hoped", "wished", "gave", "shared", "brought", "bought", "picked", "chose", "preferred", "finished", "scoffed", "forgot",
		"remembered", "meant", "learnt", "learned", "could", "would", "did", "missed", "scraped", "scored", "expected", "began", "started", "decided", "managed", "helped", "lost", "ruined", "dropped", "spilt", "licked", "binned") {
		return false
	}
	for j := i - 1; j >= 0 && j >= i-2; j-- {
		if tokens[j].in("i", "we") {
			return true
		}
		if !tokens[j].isAdv() {
			return false
		}
	}
	return false
}
