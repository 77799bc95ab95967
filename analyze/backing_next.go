package analyze

import "saywhy/lexicon"

// descriptionGoesOn reports whether the next sentence tells how the judged food
// was; blame says that the judgement is no praise.
func descriptionGoesOn(next *sentence, j judgement, blame bool) bool {
	if j.verb && ofDoneVerb(next.tokens) {
		return false // "Carved lovely. Crackling went like glass"
	}
	if j.alone && (startsWithHeading(next.tokens) || humanFirst(next.tokens)) || !j.than && !keepsTopic(next, j.topic) {
		return false
	}
	if j.sense == "" && len(next.tokens) > 2 && next.tokens[0].in("it", "they") && happened(next.tokens, 1) {
		return true // "The first was a disaster. It stuck and I broke it."
	}
	if j.sense == "" && blame && (happened(next.tokens, 2) || happened(next.tokens, 3)) && !humanFirst(next.tokens) {
		return true // "It was a disaster. The bottom fell out."
	}
	if j.sense == lexicon.Sight && j.deeds && humanFirst(next.tokens) && laysOut(next.tokens) {
		return true // "The presentation was great. I put parsley on top"
	}
	if j.sense == "" && blame && didAmiss(next.tokens) {
		return true
	}
	if j.sense == "" && faultInSome(next.tokens) || likened(next.tokens) {
		return true
	}
	if j.sense == lexicon.Sight && shapeTaken(next.tokens) {
		return true // "A smart looking cake. The two halves rose evenly"
	}
	if j.sense == lexicon.Sight && j.deeds && (happened(next.tokens, 1) || happened(next.tokens, 2)) {
		return true // "Plating was poor. The stew slid to one side."
	}
	if (j.sense == "" || j.sense == lexicon.Tongue) && (findsTaste(next.tokens) || lacksSomething(next.tokens)) {
		return true
	}
	for _, g := range next.signs {
		switch {
		case g.area == lexicon.Improvement:
			return false // a wish for next time tells nothing of what was judged
		case g.area == lexicon.Aroma && j.topic != "" && j.sense == "":
			continue // the smell is of the whole
		case contrasts(next.tokens, max(0, g.from-2*reach), g.from, g.from):
			continue // "It was nice. They were good but mine was a bit pink"
		case g.told && resultArea(g.area) && (j.sense == "" || j.sense.Area() == g.area) && !onTheWay(next.tokens, g.from):
			return true
		}
	}
	return false
}

// shapeTaken reports whether a sentence opens with how a food rose, spread or sank.
func shapeTaken(tokens []token) bool {
	for i := 1; i < len(tokens) && i < 5; i++ {
		if tokens[i].in("rose", "spread", "sank", "cracked", "split", "collapsed", "domed", "stood", "slumped", "leaned", "leant", "puffed", "wobbled", "sagged") && !tokens[i-1].human() {
			return true
		}
	}
	return false
}

// laysOut reports whether a sentence opens with a verb of dressing a plate.
func laysOut(tokens []token) bool {
	for i := 1; i < len(tokens) && i < 5; i++ {
		switch tokens[i].stem {
		case "put", "add":
			return !packed(tokens, i)
		case "sprinkl", "scatter", "arrang", "drizzl", "garnish", "dust", "decor", "plate", "wipe", "slop", "slosh", "splodg", "splat", "dollop", "spoon", "smear", "pile", "stack", "swirl", "splash", "squirt", "crowd", "chuck", "plonk", "layer", "pipe", "dress", "laid", "fan":
			return true
		}
	}
	return false
}

// ofDoneVerb reports whether a sentence opens with a part or an ingredient of its
// own, so that it does not go on about what the verb before it told.
func ofDoneVerb(tokens []token) bool {
	for i := 0; i < len(tokens) && i < 4; i++ {
		if t := &tokens[i]; t.isNoun() || t.kind.Food() && !t.describes() {
			return t.kind.Food()
		} else if t.in("it", "they", "this", "that") || t.isVerb() {
			return false
		}
	}
	return false
}

// tellsHowItGoes reports whether a sentence tells what one does and sees, to
// anybody who would try it: "You chuck in the bicarb and it froths right up".
// Advice ("you need to") is none.
func tellsHowItGoes(tokens []token) bool {
	return len(tokens) > 3 && tokens[0].norm == "you" && tokens[1].tagIn("VBP", "VB") && !linkingVerb(tokens[1].norm) &&
		!tokens[1].in("need", "have", "want", "should", "must", "can", "could", "know", "do", "did", "are", "were", "might", "may", "would", "will", "make", "put") ||
		len(tokens) > 3 && tokens[0].norm == "you" && tokens[1].in("make", "put") && tokens[2].isNoun()
}

// findsTaste reports whether a sentence tells what was tasted in the food ("you
// got the cumin first", "I could taste the lemon").
func findsTaste(tokens []token) bool {
	for i := 1; i+1 < len(tokens) && i < 6; i++ {
		t := &tokens[i]
		if !(t.in("get", "got") && tokens[i-1].in("you", "can", "could") || t.in("taste") && tokens[i-1].in("can", "could", "really")) {
			continue
		}
		for k := i + 1; k < len(tokens) && k <= i+4; k++ {
			if tokens[k].kind == lexicon.Ingredient {
				return k+1 == len(tokens) || !tokens[k+1].in("out", "from", "in", "ready", "off", "on")
			}
		}
	}
	return false
}

// humanFirst reports whether the sentence opens with what somebody does.
func humanFirst(tokens []token) bool {
	for i := 0; i < len(tokens) && i < 4; i++ {
		if tokens[i].human() {
			return true
		}
		if tokens[i].isVerb() || tokens[i].isNoun() {
			return false
		}
	}
	return false
}

// nameFirst reports whether the sentence opens with what can only be a name
// ("Aoife had the griddle hot").
func nameFirst(tokens []token) bool {
	return len(tokens) > 2 && tokens[0].isNoun() && tokens[0].kind == lexicon.NoKind && !tokens[0].describes() && tokens[1].tagIn("VBD", "VBZ")
}

// lacksSomething reports whether a sentence opens with what the food wanted
// ("Needed more salt", "It could do with chilli").
func lacksSomething(tokens []token) bool {
	for i := 0; i < len(tokens) && i < 3; i++ {
		switch {
		case tokens[i].human():
			return false
		case tokens[i].in("need", "needs", "needed", "want", "wants", "wanted", "lacked", "lacks", "lacking", "missing") || tokens[i].norm == "do" && i > 0 && tokens[i-1].norm == "could":
			for k := i + 1; k < len(tokens) && k <= i+4; k++ {
				if tokens[k].kind == lexicon.Ingredient {
					return true
				}
			}
		}
	}
	return false
}

// keepsTopic reports whether a sentence can still speak of the topic: its first
// word for a thing is no other part of the food.
func keepsTopic(s *sentence, topic string) bool {
	if topic == "" || len(s.tokens) > 0 && s.tokens[0].describes() {
		return true
	}
	for i := range s.tokens {
		t := &s.tokens[i]
		switch {
		case t.in("it", "this", "that"):
			return true
		case t.in("they", "these", "them"):
			return singular(topic) != topic || topic == "rest" || topic == "other"
		case t.human() || t.norm == "mine":
			return false
		case t.kind.Food() && !t.describes():
			_, sense := senseOfNoun(t.norm)
			return sense || singular(t.norm) == singular(topic) || ofWhole(s.tokens, i) && !namesShare(topic)
		}
	}
	return true
}

// onTheWay reports whether the description at token i is of a state on the way
// and not of the finished dish: what somebody worked towards ("whisked it till
// it was pale") or did to it ("rolled it into thin ropes").
func onTheWay(tokens []token, i int) bool {
	start := clauseStart(tokens, i)
	if i > 1 && tokens[i-1].in("it", "them") && tokens[i-2].in("let", "made", "make", "left") {
		return true // "let them drip"
	}
	if start > 0 && tokens[start-1].in("until", "till", "til") || whileSo(tokens, i) || keptFrom(tokens, i, start) {
		return true
	}
	if predicateOf(tokens, i) >= 0 {
		return false
	}
	for k := i - 1; k >= start; k-- {
		if tokens[k].tagIn("VBD", "VBP", "VBZ") {
			n := subject(tokens, k)
			return tokens[k].card.works && n >= 0 && tokens[n].human()
		}
	}
	return false
}

// whileSo reports whether the description at token i only tells when ("great with
// custard while still hot").
func whileSo(tokens []token, i int) bool {
	for k := i - 1; k >= 0 && k >= i-2; k-- {
		if tokens[k].in("while", "when", "whilst") {
			return tokens[i].in("hot", "warm", "cold", "cool", "fresh", "young")
		}
		if !tokens[k].isAdv() {
			return false
		}
	}
	return false
}

// keptFrom reports whether the description at token i, in the clause that begins
// at start, is what somebody's deed kept the food from ("wet hands so they
// didn't stick").
func keptFrom(tokens []token, i, start int) bool {
	return start > 1 && tokens[start-1].norm == "so" && denied(tokens, i) && actBefore(tokens, start-1)
}

// namesShare reports whether a topic is a share told apart from the rest ("that part").
func namesShare(topic string) bool {
	switch topic {
	case "bit", "part", "half", "side", "end", "one", "ones":
		return true
	}
	return false
}
