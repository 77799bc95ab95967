package analyze

import (
	"saywhy/lexicon"
)

// flat matches an adverb without its ending: "cook it slow", "whisked it hard".
func (d means) flat(tokens []token, i int) (int, bool) {
	if i == 0 {
		return 0, false
	}
	n, back := after(tokens, i, 1), 3
	if tokens[i].norm == "slow" && (n.isNoun() || n.norm == "cooker") {
		return 0, false
	}
	if tokens[i].norm == "hard" {
		back = 4
		if !((tokens[i-1].in("it", "them") || tokens[i-1].isVerb() || tokens[i-1].kind.Food()) && (n.pause() || n.in("for", "until", "till", "and"))) {
			return 0, false
		}
	}
	for j := i - 1; j >= 0 && j >= i-back; j-- {
		if !tokens[j].isVerb() {
			continue
		}
		if tokens[i].norm == "slow" {
			return i + 1, tokens[j].stem == "cook" || tokens[j].stem == "fri" || tokens[j].in("done", "did")
		}
		switch tokens[j].stem {
		case "whisk", "beat", "boil", "knead", "shake", "shook", "squeez", "press", "stir", "scrub", "mix":
			return i + 1, true
		}
		return 0, false
	}
	return 0, false
}

// awayFromSomebody matches "peeled away from me", "poured it away from you".
func (d means) awayFromSomebody(tokens []token, i int) bool {
	return after(tokens, i, 1).norm == "from" && (after(tokens, i, 2).in("me", "you", "him", "her", "us", "myself", "yourself") || after(tokens, i, 3).in("body", "face")) &&
		(d.cooking(tokens, i) || i > 0 && tokens[i-1].in("going", "pointing", "facing", "tilted", "lid", "it", "them"))
}

// likeSomebody matches a model that was followed ("like Mum does", "like you
// showed me") and the hold of the hand ("tucked under like a claw").
func (d means) likeSomebody(tokens []token, i int) (int, bool) {
	for n := 2; n <= 4; n++ {
		if after(tokens, i, n).norm == "claw" {
			return i + n + 1, true
		}
	}
	if who := after(tokens, i, 1); (who.kind == lexicon.Person || who.tag == "PRP" || who.tag == "PRP$") && d.cooking(tokens, i) {
		for n := 2; n <= 4; n++ {
			if after(tokens, i, n).in("does", "did", "do", "showed", "taught", "said", "told", "shows") {
				return i + n + 1, true
			}
		}
	}
	return 0, false
}

// adverb reports whether the word at token i is an adverb that tells in what
// manner somebody worked food.
func (d means) adverb(tokens []token, i int) bool {
	t := &tokens[i]
	if !d.manner(t.norm) || !d.cookedNear(tokens, i) || !d.bySomebody(tokens, i) {
		return false
	}
	if t.norm == "carefully" {
		return true
	}
	return t.isAdv() && !after(tokens, i, 1).in("enough", "because", "as") && !(i > 0 && tokens[i-1].in("how", "too", "so", "cook", "'d", "would"))
}

// manner reports whether an adverb tells in what manner food was worked.
func (d means) manner(w string) bool {
	switch w {
	case "slowly", "gently", "gradually", "constantly", "thinly", "finely", "firmly", "vigorously", "continuously", "separately", "lightly", "roughly", "thoroughly", "briskly", "steadily", "quickly", "bit-by-bit", "coarsely", "individually", "evenly", "sideways", "softly", "tightly", "loosely", "neatly", "carefully":
		return true
	}
	return false
}

// bySomebody reports whether the verb that the adverb at token i belongs to is
// done by a person or told as a step: no food stands right before it as its
// subject ("the heat built slowly").
func (d means) bySomebody(tokens []token, i int) bool {
	start := clauseStart(tokens, i)
	for j := i - 1; j >= start; j-- {
		t := &tokens[j]
		if t.isVerb() || t.card.works && !t.isNoun() {
			if j == start {
				return true
			}
			s := &tokens[j-1]
			return s.human() || s.norm == "to" || s.in("and", "then", "n't", "not", "time") || s.isAdv() || s.tag == "MD" || s.isVerb()
		}
	}
	return i+1 < len(tokens) && tokens[i+1].isVerb()
}
