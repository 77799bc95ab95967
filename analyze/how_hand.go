package analyze

// handEach matches work shared out between the hands: "one hand wet, one hand
// dry", "one hand for the egg, the other for crumbs". To keep a hand for
// something is a rule of the house.
func (d means) handEach(tokens []token, i int) (int, bool) {
	if after(tokens, i, 1).norm != "hand" || i > 0 && tokens[i-1].in("keep", "kept", "on") {
		return 0, false
	}
	if !after(tokens, i, 2).in("for", "wet", "dry", "in", "on", "does", "did", "holding", "stirring", "pouring", "turning", "doing", "stirred", "poured", "held", "whisked", "turned", "mixed", "rolled", "steadied", "stirs", "pours", "holds", "turns") {
		return 0, false
	}
	for j := i + 3; j < len(tokens) && j <= i+10; j++ {
		if tokens[j].in("other", "'other", "t'other") || tokens[j].in("one", "left", "right", "dry", "wet") && after(tokens, j, 1).in("hand", "for", "dry") {
			return min(len(tokens), j+2), true
		}
	}
	return 0, false
}

// gripNamed matches a hold of the hand told by its name: "onion cut claw grip",
// "bridge hold for the tomatoes".
func (d means) gripNamed(tokens []token, i int) (int, bool) {
	for j := i - 1; j >= 0 && j >= i-4; j-- {
		if tokens[j].pause() || tokens[j].in("learn", "learnt", "learned", "called", "know", "forgot", "forget", "practise", "needs", "need", "remember", "try", "showed", "taught") {
			return 0, false
		}
	}
	n := 1
	if after(tokens, i, 1).in("'s", "and") && after(tokens, i, 2).in("paw", "claw", "bridge") {
		n = 3
	}
	return i + n + 1, workBefore(tokens, i) >= 0 && after(tokens, i, n).in("grip", "hold", "hand", "hands", "technique", "method", "shape", "thing", "position", "style", "fingers", "cut")
}

// lowThenHigh matches two settings told one behind the other: "low till soft
// then hot till golden", "go low first, second go hot".
func (d means) lowThenHigh(tokens []token, i int) (int, bool) {
	slow := tokens[i].in("low", "slow", "slowly", "gentle", "cool")
	second := []string{"high", "hot", "hotter", "higher", "fast", "faster", "hard", "harder", "up", "blast"}
	if !slow {
		second = []string{"low", "lower", "slow", "slower", "down", "gentle", "cooler"}
	}
	if n := after(tokens, i, 1); n.isNoun() && !n.in("heat", "temperature", "till", "until", "til") || i > 0 && (linkingVerb(tokens[i-1].norm) || tokens[i-1].in("too", "so", "very", "'s")) {
		return 0, false
	}
	then := -1
	for j := i + 1; j < len(tokens) && j <= i+9; j++ {
		switch {
		case tokens[j].in("then", "second", "after", "afterwards", "before"):
			then = j
		case then > 0 && tokens[j].in(second...) && j-then <= 4:
			return j + 1, d.cooking(tokens, i) || d.deed(tokens, i) || d.technique(tokens, max(0, i-reach), i)
		}
	}
	return 0, false
}

// wayNamed matches a way of working told by its name, behind what somebody did:
// "used the no churn way", "did it the long way", "made it the old-fashioned way".
func (d means) wayNamed(tokens []token, i int) (int, bool) {
	from := i
	for from > 0 && from > i-5 && (!tokens[from-1].tagIn("DT", "PRP$", "POS") || tokens[from-1].norm == "no") {
		from--
	}
	if from == i || from < 2 || !tokens[from-1].in("the", "my", "her", "his", "our", "'s") || after(tokens, i, 1).in("through", "round", "along", "up", "down", "to", "there", "home", "in", "across") {
		return 0, false
	}
	if tokens[i-1].in("all", "whole", "hard", "same", "right", "wrong", "only", "best") {
		return 0, false
	}
	for j := from - 2; j >= 0 && j >= from-6; j-- {
		if tokens[j].pause() {
			return 0, false
		}
		if tokens[j].in("did", "do", "done", "made", "make", "used", "use", "cooked", "cook", "doing", "making", "using") {
			return i + 1, j == 0 || !linkingVerb(tokens[j-1].norm)
		}
	}
	return 0, false
}

// trialNamed matches a test by which somebody knew how far food was: "did the
// saucer test".
func (d means) trialNamed(tokens []token, i int) (int, bool) {
	if i < 2 || !tokens[i-1].in("saucer", "wrinkle", "plate", "skewer", "toothpick", "float", "water", "windowpane", "window", "finger", "poke", "flake", "spoon", "bread", "drop", "ribbon", "squeeze", "tap", "knock", "fork", "knife", "thermometer", "wobble", "spring", "touch", "crumb", "cube") {
		return 0, false
	}
	for j := i - 2; j >= 0 && j >= i-4; j-- {
		if tokens[j].in("did", "do", "done", "doing", "used", "use", "using") {
			return i + 1, true
		}
	}
	return 0, false
}

// sideDown matches which side of food lay up or down without the word "side":
// "skin down", "cut up first". The verb must be one of cooking or laying.
func (d means) sideDown(tokens []token, i int) (int, bool) {
	if !after(tokens, i, 1).in("down", "up", "downwards", "upwards", "first", "under", "uppermost") {
		return 0, false
	}
	if i == 0 {
		// "Skin down on foil, twelve minutes": a note of cooking
		return 2, tokens[0].in("skin", "flesh", "fat", "cut") && after(tokens, 0, 1).norm == "down" && after(tokens, 0, 2).in("in", "on", "for", ",")
	}
	if after(tokens, i, 1).in("first", "under", "up") && !tokens[i].in("skin", "fat", "seam", "rind") {
		return 0, false
	}
	if tokens[i-1].tagIn("DT", "PRP$") || tokens[i-1].in("and", "wiped", "wipe", "fell", "over") {
		return 0, false
	}
	to := i + 2
	if after(tokens, i, 2).norm == "first" {
		to++
	}
	return to, d.technique(tokens, max(0, i-reach), i) || d.workedBefore(tokens, i, "laid", "lay", "put", "went", "place", "start", "set")
}

// fromMiddle matches where on the food the hand began and which way it went:
// "rolled it from the middle out".
func (d means) fromMiddle(tokens []token, i int) (int, bool) {
	if !after(tokens, i, 1).in("the", "middle", "centre") {
		return 0, false
	}
	h := wordBehind(tokens, i, "middle", "centre", "center", "outside", "inside", "edge", "edges", "bottom", "top", "side", "sides")
	if h < 0 || !after(tokens, h, 1).in("out", "outwards", "outward", "in", "inwards", "up", "upwards", "down") || after(tokens, h, 2).tagIn("DT", "NN") {
		return 0, false
	}
	return h + 2, d.technique(tokens, clauseStart(tokens, i), i) || d.workedBefore(tokens, i, "work", "crimp", "pat", "flatten", "smooth", "spread", "push")
}
