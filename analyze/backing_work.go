package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// toldOfWork reports whether the judgement's own sentence tells of the judged
// work: what was done, by what means, why, or what came of it.
func toldOfWork(s *sentence, j judgement) bool {
	if j.of == judgedPerson && leftToOthers(s.tokens, j) {
		return false
	}
	start := clauseStart(s.tokens, j.from)
	if !j.verb && predicateOf(s.tokens, j.from) < 0 {
		start = j.from // a word of praise beside the clause, not its verb's
	}
	if colonTells(s.tokens, j) {
		return true
	}
	if j.area == lexicon.Technique && cutSo(s.tokens, j.to) || (j.area == lexicon.Organisation || j.of == judgedWork && j.area == "") && clockTime(s.tokens, j.to) || hadPlan(s.tokens, j.to) {
		return true
	}
	for _, g := range s.signs {
		if named(s.tokens, g, j) || g.area == lexicon.Independence && firstVerb(s.tokens, 0, min(len(s.tokens), reach)) < 0 {
			continue // "a cracking effort from start to finish"
		}
		if g.told && (j.area == "" && g.area != lexicon.Improvement || g.area == j.area) && (g.to <= start || g.from >= j.to) {
			return true
		}
	}
	for k := j.to; j.of == judgedPerson && k+1 < len(s.tokens) && k <= j.to+2; k++ {
		if s.tokens[k].norm == "for" && strings.HasSuffix(s.tokens[k+1].norm, "ing") {
			return true // "well done for waiting", "good lad for asking"
		}
	}
	return len(s.how) > 0 && j.area == "" || reasonFollows(s, j) || deedBeside(s, j)
}

// named reports whether a sign only names the work that is judged: "my kneading
// was good", "did well at chopping".
func named(tokens []token, g sign, j judgement) bool {
	if g.to-g.from == 1 && areaOfNoun(tokens[g.from].norm) != "" {
		return true
	}
	for k := j.to; k+1 < len(tokens) && k <= j.to+1; k++ {
		if tokens[k].norm == "of" && g.from > k && g.to <= k+4 && clauseEnd(tokens, g.to-1) == g.to {
			return true // "a good job of the washing up"
		}
	}
	return j.to+2 <= len(tokens) && tokens[j.to].norm == "at" && g.from >= j.to && g.to <= j.to+3
}

// workGoesOn reports whether the next sentence tells of the judged work.
func workGoesOn(next *sentence, j judgement, praise bool) bool {
	if startsWithHeading(next.tokens) || dashHeading(next.tokens) || next.has(lexicon.Improvement) {
		return false
	}
	if j.area != "" {
		return tellsOf(next, j.area) || j.area == lexicon.Technique && (humanFirst(next.tokens) && len(next.how) > 0 || cutSo(next.tokens, 0)) || j.area == lexicon.Organisation && outOfTime(next.tokens) || j.area == lexicon.Technique && cameOfIt(next.tokens)
	}
	if j.of == judgedPerson {
		return personGoesOn(next, j)
	}
	if j.of == judgedWork && !praise && onlyFaults(next) {
		return true // "It did not go well. The beans were still hard"
	}
	if j.of != judgedWork && len(next.sensory) > 0 {
		return false // "He did well. The soup was silky"
	}
	if j.of == judgedWork && len(next.why) > 0 && !hadToWait(next.tokens) {
		return true
	}
	for _, a := range workAreas() {
		if tellsOf(next, a) && !(j.verb && (a == lexicon.Technique || a == lexicon.Safety) && beginsTale(next.tokens)) {
			return true
		}
	}
	return j.of == judgedWork && cameOfIt(next.tokens)
}

// cameOfIt reports whether a sentence opens with what became of what was worked:
// "It stuck to my fingers", "The pieces were all different sizes", "By the last
// five there were holes".
func cameOfIt(tokens []token) bool {
	if movesOn(tokens) || humanFirst(tokens) {
		return false
	}
	for i := 1; i < len(tokens) && i < 8; i++ {
		if happened(tokens, i) {
			return true
		}
		if tokens[i].in("were", "was") && tokens[i-1].in("there", "pieces", "bits", "slices", "chunks", "edges", "corners", "holes", "lumps", "gaps", "ones", "half", "some", "most") && i+1 < len(tokens) && !tokens[i+1].pause() {
			return true
		}
	}
	return false
}

// outOfTime reports whether a sentence tells what was ready when ("the potatoes
// were cold by the time the fish was done").
func outOfTime(tokens []token) bool {
	for i := 1; i+2 < len(tokens) && i < reach; i++ {
		if tokens[i].norm == "by" && tokens[i+1].norm == "the" && tokens[i+2].norm == "time" || tokens[i].in("before", "while", "after") && i > 2 && tokens[i+1].tagIn("DT", "PRP$") {
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

// boundTo reports whether it is added at token i what had to be done, which is what
// came of it ("I greased it badly and we had to chisel it out").
func boundTo(tokens []token, i int) bool {
	and := false
	for k := i; k+1 < len(tokens) && k <= i+4; k++ {
		and = and || tokens[k].in("and", "&")
		if and && tokens[k].norm == "had" && tokens[k+1].norm == "to" {
			return true
		}
	}
	return false
}

// colonTells reports whether a colon behind the judgement brings a verb, and so
// what is meant ("Timing was bad: the sieve was still dirty").
func colonTells(tokens []token, j judgement) bool {
	if j.to >= len(tokens) || tokens[j.to].norm != ":" || j.alone {
		return false
	}
	for i := j.to + 2; i < len(tokens); i++ {
		if tokens[i].tagIn("VBD", "VBN", "VBZ", "VBP") {
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
	if end+2 < len(tokens) && j.of == judgedWork && tokens[end].in("so", "because") || j.of == judgedWork && boundTo(tokens, j.to) {
		return true
	}
	if end+1 < len(tokens) && tokens[end].norm == "," && tokens[end+1].tag == "VBG" && j.of != judgedTime {
		return true // "managed well, weighing it all out first"
	}
	if end < len(tokens) && !tokens[end].in("and", "&", "then") && !(j.of == judgedTime && tokens[end].norm == "but") {
		stop := clauseEnd(tokens, min(end+1, len(tokens)-1))
		for i := end; i < stop && i < len(tokens); i++ {
			if didThing(tokens, i) || happened(tokens, i) {
				return true
			}
		}
		for _, w := range s.sensory {
			if (j.of == judgedWork || j.of == judgedPerson && !j.verb) && w.from >= end && w.to <= stop {
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

// soFar reports whether the judgement sums up in a word what was told before it
// ("we sat down at ten past so not bad").
func soFar(tokens []token, v *vagueWord) bool {
	i := v.from - 1
	for i > 0 && (tokens[i].isAdv() || tokens[i].in("not", "pretty", "all")) && tokens[i].norm != "so" {
		i--
	}
	return i > 3 && tokens[i].norm == "so" && (v.to == len(tokens) || tokens[v.to].pause())
}

// thanThat reports whether the judgement is of what was told before it in the
// sentence ("the bowls were washed, can't ask better than that").
func thanThat(s *sentence, v *vagueWord) bool {
	if v.to+1 >= len(s.tokens) || s.tokens[v.to].norm != "than" {
		return false
	}
	for k := v.to + 2; k+2 < len(s.tokens) && k <= v.to+4; k++ {
		if s.tokens[k].in("which", "that") && linkingVerb(s.tokens[k+1].norm) {
			return true // "better than the second which was charcoal"
		}
	}
	if !s.tokens[v.to+1].in("that", "this") {
		return false
	}
	start := clauseStart(s.tokens, v.from)
	for _, g := range s.signs {
		if g.told && g.from < start {
			return true
		}
	}
	return false
}

// deedBefore reports whether the clause before the judgement tells a deed.
func deedBefore(tokens []token, j judgement) bool {
	for i := 0; i < j.from; i++ {
		if didThing(tokens, i) && tokens[i].card.works {
			return true
		}
	}
	return false
}

// dashHeading reports whether a sentence opens with a heading before a dash ("Hygiene - hands
// washed").
func dashHeading(tokens []token) bool {
	return len(tokens) > 2 && tokens[1].in("-", "–", "—") && areaOfNoun(tokens[0].norm) != ""
}

// clockTime reports whether it is told behind token i when something was ready ("half six
// like I planned", "ten to seven"), and not how long it took ("ten to fifteen minutes").
func clockTime(tokens []token, i int) bool {
	for k := i; k+1 < len(tokens) && k < i+8; k++ {
		t, next := &tokens[k], &tokens[k+1]
		switch {
		case t.in("half", "quarter", "ten", "five", "twenty"):
			if next.in("past", "to") && after(tokens, k, 2).tag == "CD" && !spanOfTime(after(tokens, k, 3)) || next.in("past", "to") && after(tokens, k, 2).in("midday", "noon", "midnight") || next.tag == "CD" && !spanOfTime(after(tokens, k, 2)) {
				return true
			}
		case t.norm == "at":
			if next.tag == "CD" || next.in("half", "ten", "quarter", "teatime") {
				return true
			}
		case t.in("early", "late", "spare"):
			if k > 0 && (spanOfTime(&tokens[k-1]) || tokens[k-1].norm == "to") {
				return true
			}
		}
	}
	return false
}

// spanOfTime reports whether the token counts how long something lasts.
func spanOfTime(t *token) bool {
	return t.in("minutes", "mins", "min", "minute", "seconds", "secs", "hours", "hour", "days", "goes", "times")
}

// hadPlan reports whether it is told behind token i that somebody had a plan or a list.
func hadPlan(tokens []token, i int) bool {
	for k := i; k+3 < len(tokens) && k < i+8; k++ {
		if !tokens[k].human() || !tokens[k+1].in("had", "made", "wrote", "used") || !tokens[k+2].in("a", "my", "the", "his", "her") {
			continue
		}
		if tokens[k+3].in("plan", "timeplan", "time-plan", "list", "timer", "checklist", "timetable", "schedule") || tokens[k+3].norm == "time" && after(tokens, k, 4).in("plan", "table", "sheet") {
			return true
		}
	}
	return false
}

// beginsTale reports whether a sentence begins to tell the steps in their order ("First I
// peeled the apples"): how the whole went stays untold.
func beginsTale(tokens []token) bool {
	i := 0
	if len(tokens) > 3 && tokens[0].in("first", "firstly", "so", "then") {
		i++
	}
	return len(tokens) > i+2 && tokens[i].in("i", "we") && tokens[i+1].tagIn("VBD")
}

// everythingDid reports whether it is added behind token i what the judged thing did to the
// food ("the pan was rubbish, everything stuck to it").
func everythingDid(tokens []token, i int) bool {
	for k := i; k+1 < len(tokens) && k < i+4; k++ {
		if tokens[k].in("everything", "it", "they", "half", "all") && tokens[k+1].tag == "VBD" && !linkingVerb(tokens[k+1].norm) && tokens[k+1].norm != "had" {
			return true
		}
	}
	return false
}
