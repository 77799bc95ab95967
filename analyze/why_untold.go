package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// generalTruth: "if you knead it it goes tough", "when the pan gets too hot the
// butter burns": what comes of something, told as a rule of the kitchen.
func (d reasons) generalTruth(tokens []token, i int) bool {
	if i+4 >= len(tokens) || tokens[i+1].in("i", "we", "he", "she") {
		return false
	}
	for j := i + 3; j+1 < len(tokens) && j < i+16; j++ {
		t, n := &tokens[j], &tokens[j+1]
		if t.tagIn("VBD", "MD") && !n.in("it", "them") || t.in("like", "want", "prefer", "need") {
			return false // past, or a wish
		}
		if !t.in("it", "they", "everything") && !t.isNoun() {
			continue
		}
		if n.isAdv() && j+2 < len(tokens) && n.in("just", "only", "always", "all") {
			n = &tokens[j+2] // "it just goes grey"
		}
		if occurs(n) || n.in("goes", "go", "gets", "get", "turns", "turn", "stick", "soak", "boil", "burn", "split", "sink", "dry", "makes", "falls", "cooks", "becomes", "loses", "comes", "come", "ends") {
			return tokens[i+1].in("you", "u", "it", "they", "the", "your") || tokens[i+1].kind.Food() || tokens[i+1].kind == lexicon.Tool
		}
	}
	return false
}

// wouldDiffer: "if I squeezed it in a towel it wouldn't go so wet": a step of
// cooking, imagined with what would come of it.
func (d reasons) wouldDiffer(tokens []token, i int) bool {
	cooked := false
	for j := i + 1; j+1 < len(tokens) && j < i+18; j++ {
		t := &tokens[j]
		if t.isVerb() && t.card.works {
			cooked = true
		}
		if t.norm == "again" {
			return false // "if I made it again I would": a plan
		}
		if cooked && j > i+3 && t.in("it", "they") && tokens[j+1].in("would", "'d", "'ll", "will", "wo", "might") {
			return true
		}
	}
	return false
}

// rewarded: "leave a bigger gap and they'll stay round", "open the door and you
// lose the heat": an instruction with what comes of it.
func (d reasons) rewarded(tokens []token, i int) bool {
	if i < 2 || i+2 >= len(tokens) || !tokens[i+1].in("it", "they", "you", "he", "she") {
		return false
	}
	v := &tokens[i+2]
	will := v.in("will", "'ll", "wo")
	if p := &tokens[i-1]; p.norm == "that" && i > 2 && tokens[i-2].in("than", "past") && tokens[i+1].in("it", "they") && v.tagIn("VBZ", "VBP") {
		return true // "more than that and they go soggy"
	}
	turns := tokens[i+1].in("it", "they") && (v.tagIn("VBZ", "VBP") || occurs(v)) && !v.in("is", "are", "has", "have") || tokens[i+1].norm == "you" && v.in("lose", "get", "end", "squash", "ruin", "burn", "spoil", "break", "risk")
	if !will && !turns {
		return false
	}
	start := clauseStart(tokens, i-1)
	first := &tokens[start]
	if will && (first.tagIn("VB", "VBP") || start == 0 && (first.isNoun() || first.isAdj()) && !tokens[1].isVerb()) {
		return true
	}
	h := half{tokens: tokens, from: start, to: i, start: start}
	return turns && (h.instructs() || strings.HasPrefix(first.norm, "over") && tokens[start+1].tag == "DT")
}

// nothingHappened: "she kept the heat low and nothing caught": a step, and the
// mishap that it kept away.
func nothingHappened(tokens []token, i int) bool {
	if i < 3 || i+2 >= len(tokens) || !tokens[i+1].in("nothing", "nobody", "noone", "none", "no-one") && !(tokens[i+1].norm == "no" && tokens[i+2].norm == "one") {
		return false
	}
	for j := i + 2; j < len(tokens) && j <= i+4; j++ {
		if t := &tokens[j]; mishap(t) || t.in("got", "knocked", "touched", "leaked", "ran", "overflowed", "wasted", "splashed", "scalded", "cut", "sank", "lost", "slips", "trips", "gets", "sticks", "burns", "spills", "slip", "trip") {
			return true
		}
	}
	return false
}

// thenSpared: "…, then your fingers don't get clogged": what a step would
// bring or spare, behind "then" and with a modal or a denial.
func thenSpared(tokens []token, i int) bool {
	if i == 0 || i+3 >= len(tokens) || tokens[i-1].in("and", "since", "by", "until", "till", "only", "even", "just", "back") {
		return false
	}
	for j := i + 2; j < len(tokens) && j <= i+4; j++ {
		t := &tokens[j]
		if t.in("'ll", "will", "would", "wouldnt", "wo", "ca", "can") || t.norm == "could" || t.in("do", "does") && j+1 < len(tokens) && tokens[j+1].norm == "n't" {
			return tokens[i+1].tagIn("PRP", "PRP$", "DT") || tokens[i+1].isNoun()
		}
	}
	return false
}

// outcome: a step of cooking, "and", and the state it brought the food to: "I
// added a squeeze of lemon and it was a lot better". Kitchen knowledge ties
// the two: what was done to heat, time or amount changes the food.
func (d reasons) outcome(tokens []token, i int) bool {
	start := clauseStart(tokens, i)
	if start < 3 || tokens[start-1].norm != "and" && tokens[start-1].norm != "then" || i+1 >= len(tokens) {
		return false
	}
	s := subject(tokens, i)
	if s < start || tokens[s].human() || !(tokens[s].in("it", "they", "some", "everything", "result") || tokens[s].kind.Food()) || i > start+5 {
		return false
	}
	state := false
	for j := i + 1; j < len(tokens) && j <= i+5; j++ {
		if tokens[j].pause() || tokens[j].in("that", "and") {
			break
		}
		state = state || tokens[j].describes() || tokens[j].in("better", "worse", "fine", "perfect", "shape", "ready", "done", "together", "bowl")
	}
	if !state {
		return false
	}
	for j := start - 2; j >= 0 && j >= start-16; j-- {
		p := &tokens[j]
		if p.in("because", "so", ".", ";", "but", "until", "till", "when", "while", "if") {
			return false
		}
		if p.isVerb() && p.tag != "VBG" && (p.card.works || p.in("left", "let", "turned")) && !p.in("tasted", "taste", "cut", "served", "tried", "tested", "checked", "used", "had") {
			return j == 0 || !(tokens[j-1].in("was", "were", "is", "be"))
		}
	}
	return false
}

// follows: two halves of one sentence where the second is what the first led
// to: somebody did something, or there was too much or too little of it, "and
// it went soggy".
func (d reasons) follows(tokens []token, i int) bool {
	t := &tokens[i]
	if t.in("went", "came") && d.noteCause(tokens, i) {
		return true
	}
	if !t.isVerb() {
		return false
	}
	s := subject(tokens, i)
	if s < 0 || tokens[s].human() || !(tokens[s].in("it", "they", "which", "that") || tokens[s].kind.Food()) {
		return false
	}
	start := clauseStart(tokens, i)
	if start < 2 || !tokens[start-1].in("and", ",", "=", "--", "-") {
		return false
	}
	if t.in("came", "went", "goes") && i+1 < len(tokens) && tokens[i+1].in("to", "on", "into", "in", "well") {
		return false
	}
	// the half before
	too, acted := false, false
	for j := start - 2; j >= 0 && j >= start-reach; j-- {
		p := &tokens[j]
		if p.in("too", "enough", "forgot", "less") || p.in("to") && j+1 < len(tokens) && tokens[j+1].in("much", "long", "many", "hot", "early", "little") {
			too = true
		}
		if p.in("i", "we", "you") && j+1 < len(tokens) && (tokens[j+1].isVerb() || tokens[j+1].isAdv() || tokens[j+1].in("did")) {
			acted = true
		}
		if p.in("because", "so", ".") {
			break
		}
	}
	if too {
		return true
	}
	if n := after(tokens, i, 1); acted && t.norm == "went" && tokens[s].kind.Food() && (n.faulty() || n.in("soft", "cold", "off", "sour", "mouldy", "stale", "stiff", "everywhere")) {
		return true // "he left the fridge open and the butter went soft"
	}
	return acted && !t.in("came", "rose") && tokens[start-1].norm == "and" && (tokens[s].in("it", "they"))
}
