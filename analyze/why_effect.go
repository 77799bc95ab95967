package analyze

import (
	"strings"
)

// causeForBecause reports whether "cause" at token i is because, as children
// say it: a clause with its finite verb follows, or "if" or "when", and no verb
// "to cause" can stand there ("the steam can cause burns", "the cause was").
func causeForBecause(tokens []token, i int) bool {
	if i+2 >= len(tokens) {
		return false
	}
	n := &tokens[i+1]
	if i > 0 {
		p := &tokens[i-1]
		if p.tagIn("DT", "PRP$", "MD", "TO") && !p.in("it", "them", "all", "that", "this") || p.in("n't", "not", "they", "which", "main", "real", "likely", "root", "common", "biggest") {
			return false
		}
	}
	if n.in("if", "when", "then", "otherwise", "there", "its", "im", "id", "hes", "shes", "youve", "theyre", "of") {
		return n.norm != "of" || i > 0
	}
	return opensClause(tokens, i+1) || (n.points() || n.tagIn("PRP", "PRP$", "DT", "NNS")) && clauseFinite(tokens, i+2)
}

// clauseFinite reports whether a finite verb stands within the next tokens of
// the clause that token i is in.
func clauseFinite(tokens []token, i int) bool {
	for j := i; j < len(tokens) && j < i+6 && !tokens[j].pause() && tokens[j].norm != "to"; j++ {
		if tokens[j].tagIn("VBD", "VBZ", "VBP", "MD") || tokens[j].in("'s", "'d", "'m", "'re", "'ve", "'ll") {
			return true
		}
	}
	return false
}

// timesDiffer reports whether the clause behind "as" at token i stands in another
// time than the one before it, so that the two did not go on together and "as"
// gives a reason: "I put it in shallow tubs as they cool faster" (past, then a
// rule), "I'd make more as there was none left" (a plan, then the past).
func timesDiffer(tokens []token, i int) bool {
	before, after := "", ""
	for j := i - 1; j >= 0 && j >= i-reach && before == ""; j-- {
		t := &tokens[j]
		switch {
		case t.in("would", "'d", "should", "could", "will", "'ll", "next", "must") || t.tag == "VB" && j == clauseStart(tokens, i):
			before = "plan"
		case t.tag == "VBD" && !(j > 0 && tokens[j-1].in("would", "'d", "should")):
			before = "past"
		case t.tagIn("VBZ", "VBP") && !t.describes():
			before = "rule"
		}
	}
	subject := false
	for j := i + 1; j < len(tokens) && j <= i+7 && after == "" && !tokens[j].pause(); j++ {
		t := &tokens[j]
		switch {
		case !subject:
			subject = t.isNoun() || t.tag == "PRP" || t.points() || t.tag == "EX"
			if t.isVerb() && t.tag != "VBG" {
				return false
			}
		case t.tag == "VBD":
			after = "past"
		case t.tag == "VBZ", t.tag == "VBP", occurs(t), t.in("'s", "'re", "'m"):
			after = "rule"
		case t.tag == "MD":
			return false
		}
	}
	switch {
	case before == "past":
		return after == "rule" && !tokens[i+1].in("you", "i", "we")
	case before == "plan":
		return after == "past"
	}
	return false
}

// amissBehind reports whether the clause behind "as" at token i says that
// something began, went or was done too late, wrongly or too soon: "as I
// started late". What went amiss is told as a cause.
func amissBehind(tokens []token, i int) bool {
	for j := i + 3; j < len(tokens) && j <= i+7 && !tokens[j].pause(); j++ {
		if tokens[j].in("late", "wrong", "wrongly", "early", "too", "badly") {
			return tokens[i+1].tag == "PRP" || tokens[i+1].isNoun() || tokens[i+1].tagIn("DT", "PRP$")
		}
	}
	return false
}

// effectTold: "…, that lets the heat in", "this gets the air in", "it saves on
// washing up", "that's the mustard holding it together": behind a step, what
// it does, told of the step as a whole.
func effectTold(tokens []token, i int) bool {
	if i+2 >= len(tokens) || i > 0 && !tokens[i-1].pause() && !tokens[i-1].in("and", "but", "because") {
		return false
	}
	t, v := &tokens[i], &tokens[i+1]
	switch {
	case v.in("saves", "saved"):
		n := &tokens[i+2]
		return n.in("on", "time", "me", "us", "you", "any", "having", "all", "the", "a") || n.tag == "VBG"
	case t.norm == "it":
		return false
	case v.norm == "'s":
		for j := i + 2; j < len(tokens) && j <= i+5 && !tokens[j].pause(); j++ {
			if tokens[j].tag == "VBG" {
				return j > i+2 && (tokens[j-1].isNoun() || tokens[j-1].in("me", "him", "her", "it", "them", "us", "not")) && i > 1
			}
		}
		return false
	}
	if i < 3 || !v.tagIn("VBZ", "VBP") || linkingVerb(v.norm) || v.in("has", "does", "needs", "takes", "makes", "says", "means", "works", "happens", "goes", "depends") {
		return v.in("gets") && i > 2 && tokens[i+2].tagIn("DT", "PRP$", "NN", "NNS")
	}
	return tokens[i+2].tagIn("DT", "PRP", "PRP$", "NN", "NNS") && tokens[i-1].pause()
}

// ingredientActs: "lime at the end lifted it", "a spoon of flour sorted that",
// "egg wash made them shine", "the yoghurt cooled it all down": a thing that
// went in, and what it did to the dish.
func (d reasons) ingredientActs(tokens []token, i int) bool {
	t := &tokens[i]
	if !t.tagIn("VBD", "VBZ", "VBN", "VBP") || i == 0 || i+1 >= len(tokens) {
		return false
	}
	switch t.stem {
	case "lift", "cheer", "sort", "fix", "cool", "cut", "brighten", "thicken", "balanc", "soften", "sweeten", "liven", "rescu", "save", "ruin", "spoil", "mask", "colour", "stain", "bind", "sharpen", "mellow", "perk", "warm", "loosen", "thin", "tone", "drown", "overpow", "tame", "calm", "lighten", "darken", "moisten", "freshen", "help", "spread":
	default:
		if !t.in("made", "makes", "gave", "gives", "held", "holds", "hid", "brought", "brings", "took", "takes", "drowned", "rounded", "masked", "livened") {
			return false
		}
	}
	s := subject(tokens, i)
	if s < 0 || tokens[s].human() || tokens[s].in("it", "they", "that", "this", "which") || tokens[i-1].norm == "and" {
		return false
	}
	for j := max(clauseStart(tokens, i), i-8); j < i; j++ {
		if tokens[j].in("i", "we", "he", "she", "you", "was", "were", "is", "been", "had") {
			return false
		}
	}
	food := tokens[s].kind.Food() || s > 0 && tokens[s-1].kind.Food() || s+2 < i && tokens[s+1].norm == "of" && (tokens[s+2].kind.Food() || s+3 < i && tokens[s+3].kind.Food())
	if !food {
		return false
	}
	n := &tokens[i+1]
	switch {
	case t.in("made", "makes"):
		return changes(tokens, i) || n.in("it", "them")
	case t.in("took", "takes"):
		return i+3 < len(tokens) && tokens[i+2].in("edge", "sting", "harshness", "bite")
	case t.in("gave", "gives", "brought", "brings"):
		return i+2 < len(tokens)
	case t.norm == "cut":
		return n.in("through", "it", "the")
	}
	return n.in("it", "them", "that", "everything", "things", "all", "up", "the", "out", "my") && !(n.norm == "out" && i+2 >= len(tokens))
}

// bodily reports whether the word names a part of the body that food acts on,
// or that cooking tires.
func bodily(t *token) bool {
	return t.in("nose", "eyes", "eye", "mouth", "tongue", "lips", "throat", "jaw", "teeth", "arm", "arms", "face", "ears", "cheeks", "stomach", "belly", "tummy")
}

// stirsBody: "it was peppery my nose was running": a quality, and with no mark
// between what it did to whoever ate it.
func stirsBody(tokens []token, i int) bool {
	if i < 2 || i+2 >= len(tokens) || !bodily(&tokens[i+1]) || !tokens[i+2].isVerb() {
		return false
	}
	for j := i - 1; j >= 0 && j >= i-3; j-- {
		if tokens[j].pause() || tokens[j].in("and", "but", "on", "in", "because") {
			return false
		}
		if tokens[j].describes() {
			return !strings.HasPrefix(tokens[j].tag, "VB")
		}
	}
	return false
}

// withoutIt: "without that they would fall to bits", "past that they shrink",
// "without it you get blue": what would come of leaving a thing out or going
// beyond it.
func withoutIt(tokens []token, i int) bool {
	if i+3 >= len(tokens) || !tokens[i+1].in("that", "it", "this", "them", "those") || i > 0 && !tokens[i-1].pause() && !tokens[i-1].in("and", "but", "because") {
		return false
	}
	j := i + 2
	if tokens[j].norm == "," {
		j++
	}
	if j+1 >= len(tokens) || !tokens[j].in("it", "they", "you", "everything", "the", "we") {
		return false
	}
	v := &tokens[j+1]
	if tokens[j].norm == "the" && j+2 < len(tokens) {
		v = &tokens[j+2]
	}
	return v.tagIn("VBZ", "VBP", "MD") || v.in("'d", "'ll")
}

// thatMuch: "that sour my eye twitched", "that hot I couldn't hold it": a degree
// with "that", and what it led to.
func thatMuch(tokens []token, i int) bool {
	if i == 0 || i+3 >= len(tokens) || !linkingVerb(tokens[i-1].norm) && !tokens[i-1].in("n't", "all") || !tokens[i+1].isAdj() && !tokens[i+1].isAdv() {
		return false
	}
	j := i + 2
	if tokens[j].isNoun() || tokens[j].norm == "that" {
		j++
	}
	return j < len(tokens) && (tokens[j].tagIn("PRP", "PRP$", "DT") || tokens[j].human()) && opensClause(tokens, j)
}

// throughDoing: "slow through not having it weighed", "lumpy through rushing".
func throughDoing(tokens []token, i int) bool {
	j := i + 1
	if j < len(tokens) && tokens[j].in("not", "me", "my", "him", "her") {
		j++
	}
	return i > 0 && j < len(tokens) && tokens[j].tag == "VBG" && strings.HasSuffix(tokens[j].norm, "ing") && (j > i+1 || tokens[i-1].isAdj() || tokens[i-1].describes() || tokens[i-1].pause())
}

// forCause: "for want of salt", "off the heat, for paprika gets bitter", and
// the end as those new to English put it: "better for make thick".
func forCause(tokens []token, i int) bool {
	if i == 0 || i+2 >= len(tokens) {
		return false
	}
	n, m := &tokens[i+1], &tokens[i+2]
	switch {
	case n.in("want", "lack") && m.norm == "of":
		return true
	case n.in("make", "keep", "get", "stop", "avoid", "give") && !m.pause():
		return true
	}
	return (n.isNoun() || n.kind.Food()) && !n.human() && m.in("gets", "goes", "turns", "burns", "sticks", "spoils", "splits", "boils", "catches")
}

// counterfactual: "if he'd used them raw we'd have been ill", "if it had sat
// out it could have made us ill": what did not happen, and what it would have
// led to.
func counterfactual(tokens []token, i int) bool {
	had := false
	for j := i + 1; j+2 < len(tokens) && j < i+reach; j++ {
		t := &tokens[j]
		if j <= i+4 && (t.norm == "had" || t.norm == "'d") {
			had = true
		}
		if had && j > i+4 && t.in("would", "'d", "could", "might", "wouldve", "couldve") && (tokens[j+1].in("have", "of", "'ve", "all", "not", "n't") || strings.HasSuffix(t.norm, "ve")) {
			return !tokens[i+1].in("i") || tokens[j+1].in("have", "of", "'ve", "not", "n't")
		}
	}
	return false
}

// effectNoted: "baking beans in – stopped it puffing up", "…, saved time": in a
// note without subjects, what a step was good for.
func effectNoted(tokens []token, i int) bool {
	if i < 2 || i+1 >= len(tokens) || !tokens[i-1].in(",", "-", "--", "–", ";", ":", "=", "(") {
		return false
	}
	t, n := &tokens[i], &tokens[i+1]
	switch {
	case t.in("saves", "saved"):
		return n.in("on", "time", "me", "you", "us", "all", "having") || n.tag == "VBG"
	case tokens[i-1].norm == "(" && t.in("gets", "makes", "gives", "brings", "takes", "adds"):
		return n.tagIn("DT", "PRP", "PRP$", "NN", "NNS")
	case t.in("stops", "stopped", "helps", "keeps", "lets"):
		return n.in("it", "them", "the", "us", "me", "you") || n.tag == "VBG" && t.in("stops")
	}
	return false
}

// ruleThenIf: "they scramble if you rush": what always comes of a way of
// working, the condition told last.
func ruleThenIf(tokens []token, i int) bool {
	if i < 2 || i+2 >= len(tokens) || !tokens[i+1].in("you", "u", "it", "they", "the") {
		return false
	}
	for j := i - 1; j > 0 && j >= i-6 && !tokens[j].pause(); j-- {
		t := &tokens[j]
		if t.tagIn("VBD", "MD") {
			return false
		}
		if t.tagIn("VBZ", "VBP", "VB") && tokens[j-1].in("it", "they", "everything") {
			return !t.in("is", "are", "'s", "'re", "has", "have", "depends", "helps", "works", "say", "says", "matters")
		}
	}
	return false
}
