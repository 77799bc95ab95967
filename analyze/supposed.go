package analyze

// generally reports whether the clause speaks in the present of what always
// happens.
func generally(tokens []token, start, i int) bool {
	for j := start; j < i; j++ {
		if tokens[j].in("go", "goes", "gets", "get", "makes", "make", "turns", "turn", "becomes", "become", "stays", "stay", "spits", "leaves", "ends", "keeps", "steams") && !tokens[j].isNoun() {
			return true
		}
	}
	return false
}

// ruleOfKitchen reports whether token i tells what always comes of something,
// as the reason for what was done: "as stirring makes it go grainy", "because if
// you beat it they go like rubber".
func ruleOfKitchen(tokens []token, i int) bool {
	for j := i - 1; j >= 0 && j >= i-reach; j-- {
		t := &tokens[j]
		switch {
		case t.tag == "VBD" || t.tag == "MD" || t.in("but", ";", ".", "--", "so"):
			return false
		case t.in("because", "since") || t.norm == "as" && j > 0 && !tokens[j-1].isAdj() && !tokens[j-1].isAdv():
			return generally(tokens, j+1, i) || ofAKind(tokens, j+1, i)
		case t.in("says", "reckons"):
			return generally(tokens, j+1, i) // "he says the blender makes it baby food"
		case t.norm == "if" && j+2 < i && tokens[j+1].in("you", "u"):
			return !toSense(tokens, j+2, i)
		}
	}
	return false
}

// keptOut reports whether what token i describes is what was not to get in or
// be left: "so no stringy egg got in".
func keptOut(tokens []token, i int) bool {
	for j := i + 1; j+1 < len(tokens) && j <= i+3; j++ {
		if tokens[j].in("got", "get", "gets", "was", "is") && tokens[j+1].in("in", "through", "trapped", "caught", "left", "past") {
			return true
		}
	}
	return false
}

// ofAKind reports whether the clause speaks of things in general: a plural or
// a food without an article and a verb in the present ("pale herbs have a taste
// of grass", "because flat ones cook evenly", "fresh bread dissolves").
func ofAKind(tokens []token, start, i int) bool {
	for j := start; j+1 < len(tokens) && j <= start+3; j++ {
		t := &tokens[j]
		if t.isNoun() {
			v := &tokens[j+1]
			return v.tagIn("VBP", "VB", "VBZ") && !v.in("did", "were", "is", "'s", "looks", "tastes", "smells", "has", "feels") && (t.tag == "NNS" || t.kind.Food() || t.norm == "ones") || occurs(v)
		}
		if !t.isAdj() && !t.describes() {
			return false
		}
	}
	return false
}

// toSense reports whether "if you" only says how one comes to sense the food: "if
// you press it it springs back".
func toSense(tokens []token, from, i int) bool {
	for j := from; j < i && j <= from+3; j++ {
		if tokens[j].in("press", "pressed", "push", "bite", "squeeze", "tap", "poke", "pull", "shake", "tip", "knock", "chew", "cut", "break", "bend", "snap", "lift", "hold", "look", "smell", "taste", "get", "eat", "prod", "touch", "tear", "like") {
			return true
		}
	}
	return false
}

// perceived reports whether token i is a verb of perceiving: what one could
// see, taste or feel was there.
func perceived(tokens []token, i int) bool {
	return i < len(tokens) && tokens[i].in("see", "taste", "feel", "smell", "hear", "tell")
}

// imagines reports whether the token says that something is not, or not yet, so.
func (t *token) imagines() bool {
	switch t.norm {
	case "would", "'d", "could", "might", "should", "may", "must", "wouldn't", "'ll", "will", "can", "supposed", "meant", "hoping", "hoped", "wanted", "want", "wo", "expected", "wished", "wish":
		return true
	}
	return false
}

// supposed reports whether what token i says is only imagined, wished or
// meant: "would have been heavy", "should be crisp", "to make it crunchy",
// "so it stays soft", "if it is dry".
func supposed(tokens []token, i int) bool {
	if ruleOfKitchen(tokens, i) {
		return true
	}
	for j := i + 1; j < len(tokens) && j <= i+5 && !tokens[j].pause(); j++ {
		if tokens[j].norm == "otherwise" {
			return true // "neck is tough like a boot otherwise"
		}
	}
	start := clauseStart(tokens, i)
	for j := i - 1; j >= start-1 && j >= 0; j-- {
		t := &tokens[j]
		switch {
		case t.imagines():
			if t.in("could", "can") && (perceived(tokens, j+1) || j+1 < len(tokens) && tokens[j+1].in("n't", "not", "just", "still", "really", "only") && perceived(tokens, j+2)) {
				return false
			}
			return true
		case t.in("if", "or", "otherwise", "unless", "until", "till") && j == start-1:
			return true
		case t.norm == "to" && j+1 < len(tokens) && (tokens[j+1].in("make", "keep", "get", "stop", "give", "avoid", "prevent", "be", "go", "add", "help", "let", "have", "become")):
			return true
		case t.in("avoid", "prevent", "stop", "avoiding", "preventing", "stopping"):
			return true
		case t.norm == "so" && j+2 < len(tokens) && tokens[j+1].in("no", "nothing") && keptOut(tokens, i):
			return true
		case t.in("because", "since", "or", "as") && j == start-1 && generally(tokens, start, i):
			// "because a spoon makes it go grainy": a rule of the kitchen, not
			// how this dish was.
			return true
		}
	}
	return false
}
