package analyze

import (
	"slices"
	"strings"
)

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
			return handles(tokens, j+2) && !toSense(tokens, j+2, i)
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
		if tokens[j].in("press", "pressed", "push", "bite", "squeeze", "tap", "poke", "pull", "shake", "knock", "chew", "cut", "break", "bend", "snap", "lift", "hold", "look", "smell", "taste", "get", "eat", "prod", "touch", "tear", "like") || tokens[j].norm == "tip" && !between(tokens, j, min(i, j+4), "in", "into", "out") {
			return true
		}
	}
	return false
}

// handles reports whether the verb that begins at token i is of cooking or of
// handling food, said or denied, and not of speaking or knowing: "if you (do n't)
// stir it", but "if you ask me".
func handles(tokens []token, i int) bool {
	for i < len(tokens) && (tokens[i].isAdv() || tokens[i].in("do", "dont", "don't", "just", "over", "only", "even", "start", "keep", "try", "to", "go")) && i+1 < len(tokens) && (tokens[i+1].isVerb() || tokens[i+1].isAdv() || tokens[i+1].in("to", "n't") || tokens[i+1].card.works) {
		i++
	}
	if i >= len(tokens) {
		return false
	}
	t := &tokens[i]
	return t.card.works || strings.HasPrefix(t.norm, "over") || strings.HasPrefix(t.norm, "under") || t.in(
		"do", "does", "leave", "put", "use", "cook", "have", "take", "open", "let", "keep", "forget", "rush", "get", "go", "make", "move", "touch", "lift", "cut", "chuck", "stop", "wait", "miss", "skip", "serve", "store", "hurry", "poke", "squash", "crowd", "tip", "pile", "drop", "bung", "dump", "shove", "throw", "pack", "handle", "work", "play", "mess", "fiddle",
	)
}

// ofCondition reports whether token i is only so on the condition that "if" or the
// like at token j begins. One that only says whose opinion it is, or how one comes
// to sense the food, leaves what follows as it is, and no mark need divide the
// two: "if you ask me | it is dry", "if you press it | it is springy".
func ofCondition(tokens []token, j, i int) bool {
	p := predicateOf(tokens, i)
	if tokens[j].norm != "if" || p < 0 || j+2 >= len(tokens) || !tokens[j+1].in("you", "u") {
		return true
	}
	said := false
	for k := j + 2; k < subject(tokens, p); k++ {
		said = said || tokens[k].isVerb() && !tokens[k].tagIn("VBN", "VBG")
	}
	return !said || handles(tokens, j+2) && !toSense(tokens, j+2, i)
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

// otherwiseSo reports whether the clause of token i, which begins at token start,
// ends in "otherwise" and tells in the present what comes about without a step:
// "neck is tough like a boot otherwise". In the past, or behind "but" or "and",
// the word means "apart from that" ("burnt but otherwise tasty").
func otherwiseSo(tokens []token, start, i int) bool {
	end := clauseEnd(tokens, i)
	for j := i + 1; j < end; j++ {
		if tokens[j].norm != "otherwise" {
			continue
		}
		if j+1 < end || tokens[j-1].in("but", "and") {
			return false
		}
		for k := start; k < j; k++ {
			if tokens[k].tagIn("VBZ", "VBP") {
				return !slices.ContainsFunc(tokens[k:j], func(t token) bool { return t.tag == "MD" })
			}
		}
		return generally(tokens, start, i)
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
	start := clauseStart(tokens, i)
	if otherwiseSo(tokens, start, i) {
		return true
	}
	for j := i - 1; j >= start-1 && j >= 0; j-- {
		t := &tokens[j]
		switch {
		case t.imagines():
			if t.in("could", "can") && (perceived(tokens, j+1) || j+1 < len(tokens) && tokens[j+1].in("n't", "not", "just", "still", "really", "only") && perceived(tokens, j+2)) {
				return false
			}
			return true
		case t.in("if", "or", "otherwise", "unless", "until", "till") && j == start-1 && ofCondition(tokens, j, i):
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
