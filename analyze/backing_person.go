package analyze

import "saywhy/lexicon"

// hadToWait reports whether a sentence tells of what the room was short of and not of how the
// work went ("We had to wait for the oven").
func hadToWait(tokens []token) bool {
	for i := 0; i+2 < len(tokens) && i < 4; i++ {
		if tokens[i].norm == "had" && tokens[i+1].norm == "to" {
			return tokens[i+2].in("wait", "share", "borrow", "queue", "use")
		}
	}
	return false
}

// leftToOthers reports whether somebody else did the work for that reason ("I am not that good at
// chopping so mum did it"): how it was done stays untold.
func leftToOthers(tokens []token, j judgement) bool {
	end := clauseEnd(tokens, j.to-1)
	if end+2 >= len(tokens) || tokens[end].norm != "so" {
		return false
	}
	t := &tokens[end+1]
	if t.tag == "PRP$" {
		t = &tokens[end+2]
	}
	return t.kind == lexicon.Person || t.tag == "NNP"
}

// personGoesOn reports whether the next sentence tells what the praised person did. Somebody
// else's doing tells nothing of it, and a tool's state neither.
func personGoesOn(next *sentence, j judgement) bool {
	tokens := next.tokens
	if otherPeople(tokens, j) {
		return false
	}
	person := humanFirst(tokens) || nameFirst(tokens)
	if person && actBefore(tokens, min(len(tokens), reach)) {
		return true // "She did well. She put the hot tray down on a mat"
	}
	if len(next.sensory) > 0 {
		return false // "He did well. The soup was silky"
	}
	for _, a := range workAreas() {
		if tellsOf(next, a) && (person || a != lexicon.Technique) {
			return true
		}
	}
	return false
}

// otherPeople reports whether a sentence opens with others than the praised: the eaters, a
// relation, a shop.
func otherPeople(tokens []token, j judgement) bool {
	for i := 0; i+1 < len(tokens) && i < 4; i++ {
		switch t := &tokens[i]; {
		case t.in("we", "us") && !j.ours:
			return true
		case t.in("his", "her", "your", "my") && (tokens[i+1].kind == lexicon.Person || tokens[i+1].norm == "mum"):
			return true
		case t.human():
			return tokens[i+1].tag == "POS" || tokens[i+1].norm == "'s" && t.isNoun()
		case t.isVerb():
			return false
		}
	}
	return false
}
