package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// toldOfWork reports whether the judgement's own sentence tells of the judged
// work: what was done, by what means, why, or what came of it.
func toldOfWork(s *sentence, j judgement) bool {
	start := clauseStart(s.tokens, j.from)
	if !j.verb && predicateOf(s.tokens, j.from) < 0 {
		start = j.from // a word of praise beside the clause, not its verb's
	}
	for _, g := range s.signs {
		if named(s.tokens, g, j) {
			continue
		}
		if g.told && (j.area == "" && g.area != lexicon.Improvement || g.area == j.area) && (g.to <= start || g.from >= j.to) {
			return true
		}
	}
	if j.of == judgedPerson && j.to+1 < len(s.tokens) && s.tokens[j.to].norm == "for" && strings.HasSuffix(s.tokens[j.to+1].norm, "ing") {
		return true // "well done for waiting"
	}
	return len(s.how) > 0 && j.area == "" || reasonFollows(s, j) || deedBeside(s, j)
}

// named reports whether a sign only names the work that is judged: "my kneading
// was good", "did well at chopping".
func named(tokens []token, g sign, j judgement) bool {
	if g.to-g.from == 1 && areaOfNoun(tokens[g.from].norm) != "" {
		return true
	}
	return j.to+2 <= len(tokens) && tokens[j.to].norm == "at" && g.from >= j.to && g.to <= j.to+3
}

// workGoesOn reports whether the next sentence tells of the judged work.
func workGoesOn(next *sentence, j judgement) bool {
	if startsWithHeading(next.tokens) || next.has(lexicon.Improvement) {
		return false
	}
	if j.area != "" {
		return tellsOf(next, j.area)
	}
	if j.of != judgedWork && len(next.sensory) > 0 {
		return false // "He did well. The soup was silky"
	}
	if j.of == judgedPerson && (humanFirst(next.tokens) || nameFirst(next.tokens)) && actBefore(next.tokens, min(len(next.tokens), reach/2)) {
		return true // "She did well. She put the hot tray down on a mat"
	}
	if j.of == judgedWork && len(next.why) > 0 {
		return true
	}
	for _, a := range workAreas() {
		if tellsOf(next, a) {
			return true
		}
	}
	return false
}

func tellsOf(s *sentence, a lexicon.Area) bool {
	for _, g := range s.signs {
		if g.area == a && g.told {
			return true
		}
	}
	return false
}

// causeFollows reports whether a clause of cause stands right behind the
// judgement ("was a nightmare as the oil spat").
func causeFollows(tokens []token, j judgement) bool {
	return j.to+1 < len(tokens) && tokens[j.to].in("because", "as", "since") && (tokens[j.to+1].tagIn("DT", "PRP", "PRP$", "EX") || tokens[j.to+1].isNoun())
}

// ofDeedBefore reports whether "that" or "which" points from the judgement at a
// deed told before it ("I did my homework by the hob, that was good planning").
func ofDeedBefore(tokens []token, j judgement) bool {
	p := predicateOf(tokens, j.from)
	if p < 0 {
		return false
	}
	n := p - 1
	return n > 0 && tokens[n].in("that", "this", "which") && actBefore(tokens, n)
}

// reasonFollows reports whether a reason follows the judgement.
func reasonFollows(s *sentence, j judgement) bool {
	for _, w := range s.why {
		if w.from >= j.to && w.from < j.to+reach && w.explains == s.n {
			return true
		}
	}
	return false
}

// deedBeside reports whether the clause behind the judgement's own, not only
// added with "and", tells what somebody did or what came of it, or the one
// before tells the deed that is praised.
func deedBeside(s *sentence, j judgement) bool {
	tokens := s.tokens
	start, end := clauseStart(tokens, j.from), clauseEnd(tokens, j.to-1)
	if end+2 < len(tokens) && j.of == judgedWork && tokens[end].in("so", "because") {
		return true
	}
	if end+1 < len(tokens) && tokens[end].norm == "," && tokens[end+1].tag == "VBG" && j.of != judgedTime {
		return true // "managed well, weighing it all out first"
	}
	if end < len(tokens) && !tokens[end].in("and", "&", "then") {
		stop := clauseEnd(tokens, min(end+1, len(tokens)-1))
		for i := end; i < stop && i < len(tokens); i++ {
			if didThing(tokens, i) || happened(tokens, i) {
				return true
			}
		}
		for _, w := range s.sensory {
			if j.of == judgedWork && w.from >= end && w.to <= stop {
				return true
			}
		}
	}
	if j.of != judgedAct && j.of != judgedPerson {
		return false
	}
	if !j.verb && predicateOf(tokens, j.from) < 0 {
		for i := start; i < j.from; i++ {
			if didThing(tokens, i) {
				return true
			}
		}
	}
	if start < 2 || tokens[start-1].in("and", "&") {
		return false
	}
	for i := clauseStart(tokens, start-2); i < start; i++ {
		if didThing(tokens, i) {
			return true
		}
	}
	return false
}
