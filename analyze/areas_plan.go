package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// noPlan reports whether the words of a plan at hit h tell none: what somebody
// had done, what was kept from happening, what was waited for or thought, a
// habit, or how something was beside what it should have been.
func noPlan(tokens []token, h hit) bool {
	return pluperfect(tokens, h) || spared(tokens, h) || awaited(tokens, h) || ofHabit(tokens, h) ||
		h.from > 0 && (tokens[h.from-1].norm == "than" || tokens[h.from].norm == "than") || sinceFulfilled(tokens, h) || onlyPossible(tokens, h) || reckonedCause(tokens, h) || onceMore(tokens, h) || aimedAt(tokens, h) || leftAsItWas(tokens, h) || turnedOut(tokens, h)
}

// leftAsItWas reports whether the words of a plan deny that anything is to change:
// "wouldn't change a thing", "no need for more", "no more needed", "couldn't have been
// better".
func leftAsItWas(tokens []token, h hit) bool {
	first, last := &tokens[h.from], &tokens[h.to-1]
	denied := restHas(tokens, h.from, h.to-1-h.from, "not", "n't", "never") || h.from > 0 && tokens[h.from-1].in("not", "n't", "never", "cannot", "couldnt", "wouldnt")
	switch {
	case first.in("need", "needed", "want", "wanted") && h.from > 0 && tokens[h.from-1].in("no", "dinnae", "didnae", "didnt", "dont", "doesnt", "n't", "not", "never"):
		return true
	case last.in("needed", "required"):
		return h.from > 0 && tokens[h.from-1].in("no", "not", "n't")
	case last.norm == "change":
		return denied || after(tokens, h.to-1, 1).in("nothing")
	case first.in("could", "would", "couldnt") && restHas(tokens, h.from, 4, "been"):
		return denied && restHas(tokens, h.to-1, 2, "better", "nicer", "happier", "prouder", "more", "easier", "tastier")
	}
	return false
}

// turnedOut reports whether what could or would have been is set against what was
// done: "I could have bought one but I made my own", "should have been washing up
// when", or is the harm that did not come about: "if he'd stopped it would have been
// lumpy". So is a comparison with another time: "a bigger pan than last month".
func turnedOut(tokens []token, h hit) bool {
	for i := h.to; i+2 < len(tokens) && i < h.to+10; i++ {
		if tokens[i].norm == "but" && tokens[i+1].in("i", "we", "he", "she", "you") && tokens[i+2].tag == "VBD" && restHas(tokens, h.from, h.to-h.from, "could") {
			return true
		}
	}
	if h.from > 0 && tokens[h.from-1].in("when", "while") && restHas(tokens, h.from, 4, "been") {
		return true
	}
	if tokens[h.from].norm == "if" || h.from > 1 && tokens[h.from-2].norm == "if" || h.from > 0 && tokens[h.from-1].norm == "if" {
		for i := h.from; i+2 < len(tokens) && i < h.from+14; i++ {
			if tokens[i].in("would", "'d") && tokens[i+1].in("have", "'ve", "of") && i+3 < len(tokens) {
				return restHas(tokens, i+2, 3, "disaster", "badly", "ill", "mess", "ruined") || tokens[i+2].norm == "been" && (tokens[i+3].faulty() || wentWrong(&tokens[i+3]))
			}
		}
	}
	return tokens[h.to-1].isNoun() && after(tokens, h.to-1, 1).norm == "than" && restHas(tokens, h.to, 2, "last", "before", "usual")
}

// onceMore reports whether the plan is to do the same again: "I'd do the same
// beans again", "would make again".
func onceMore(tokens []token, h hit) bool {
	for i := h.from; i < h.to; i++ {
		if tokens[i].in("do", "make", "cook", "bake", "have", "buy", "love") && i > 0 && tokens[i-1].in("would", "'d", "will", "'ll", "defo", "definitely", "wud") {
			return again(tokens, i)
		}
	}
	// "I am going to make these again"
	return h.to+1 < len(tokens) && tokens[h.to-1].norm == "to" && tokens[h.to].in("make", "do", "cook", "bake", "have") && again(tokens, h.to)
}

// aimedAt reports whether the modal tells what a step was to bring about or
// keep away: "just warmed so it wouldn't go to mush".
func aimedAt(tokens []token, h hit) bool {
	i := h.from
	if !tokens[i].in("would", "could", "it", "they") {
		return false
	}
	for j := i; j > 0 && j >= i-2; j-- {
		if tokens[j].in("it", "they", "nothing", "everything") && (tokens[j-1].norm == "so" || tokens[j-1].norm == "that" && j > 1 && tokens[j-2].norm == "so") {
			return !restHas(tokens, i, 8, "next", "better", "more", "less", "longer")
		}
	}
	return false
}

// reckonedCause reports whether "I reckon" only guesses at what happened: "I
// reckon because I rushed it", "I reckon I overfilled him".
func reckonedCause(tokens []token, h hit) bool {
	i := h.to
	if i >= len(tokens) || tokens[i-1].norm != "reckon" {
		return false
	}
	for ; i < len(tokens) && i < h.to+6; i++ {
		switch t := &tokens[i]; {
		case t.norm == "because" || t.tag == "VBD":
			return true
		case t.pause() || t.tag == "MD" || t.in("'d", "'ll"):
			return false
		}
	}
	return false
}

// pluperfect reports whether the "'d" that makes a sign of a plan stands for
// "had": "cos I'd rolled it cold".
func pluperfect(tokens []token, h hit) bool {
	for i := h.from; i < h.to; i++ {
		if tokens[i].norm == "'d" {
			return hadBefore(tokens, i)
		}
	}
	return false
}

// spared reports whether what "would have" come about at token i is only what
// was kept from happening: "… or it would have burnt", "since warm palms would
// have melted it", "because if he'd slopped any there'd have been blisters".
func spared(tokens []token, h hit) bool {
	i := h.from
	if !restHas(tokens, i, max(4, h.to-i+1), "have", "of", "'ve", "wouldve") {
		return false
	}
	for j := i; j >= 0 && j >= i-8; j-- {
		t := &tokens[j]
		switch {
		case j < i && (t.pause() || t.norm == "but"):
			return false
		case t.in("or", "otherwise"):
			return j >= i-3
		case t.in("because", "since", "as"):
			return !restHas(tokens, i, 7, "better", "nicer", "more", "less", "longer", "easier", "helped")
		}
	}
	return false
}

// restHas reports whether one of the words stands among the n behind token i or
// is token i itself.
func restHas(tokens []token, i, n int, words ...string) bool {
	for k := i; k < len(tokens) && k <= i+n; k++ {
		if tokens[k].in(words...) {
			return true
		}
	}
	return false
}

// awaited reports whether the modal of a plan tells what was waited for, hoped
// or feared of somebody: "before he would let us carve", "until it could be
// pulled thin", "I thought he'd give up", "something you'd pay for".
func awaited(tokens []token, h hit) bool {
	for j := h.from - 1; j >= 0 && j >= h.from-4; j-- {
		t := &tokens[j]
		switch {
		case t.pause() || t.in("and", "but") || t.tagIn("VBZ", "VBP", "VBD") && !t.in("thought", "expected", "bet", "worried"):
			return false
		case t.norm == "worried" && tokens[j+1].norm == "the":
			return true // "worried the jelly should have had longer"
		case t.in("before", "until", "till", "til", "something", "anything", "afraid", "feared", "worried", "bet"):
			return tokens[j+1].tagIn("PRP", "PRP$") || t.in("before", "until", "till", "til") && j >= h.from-3 && !strings.HasSuffix(tokens[j+1].norm, "ing")
		case t.in("thought", "expected", "expecting", "sure"):
			return tokens[h.from].in("he", "she", "they", "would", "'d") && !(t.norm == "thought" && tokens[j+1].kind == lexicon.Ingredient) && !restHas(tokens, h.from, 6, "better", "nicer", "more", "less", "longer")
		}
	}
	return false
}

// ofHabit reports whether the sign tells what somebody does as a rule, or only
// opens a remark: "where I'd usually lose patience", "I will say", "I'll be
// honest".
func ofHabit(tokens []token, h hit) bool {
	for i := h.from; i < h.to+2 && i < len(tokens); i++ {
		if !tokens[i].in("would", "'d", "will", "'ll") || i+1 >= len(tokens) {
			continue
		}
		next := &tokens[i+1]
		return next.in("usually", "normally", "always", "often", "never", "admit", "defend", "describe", "call", "argue", "swear", "imagine", "guess") ||
			next.norm == "be" && restHas(tokens, i+2, 0, "honest", "fair", "frank", "lying", "happy", "proud", "pleased", "glad", "back") ||
			next.norm == "say" && tokens[i].in("will", "'ll") ||
			next.in("i", "you", "we") && restHas(tokens, i, 5, "again") // "Would I do it again?"
	}
	return false
}

// sinceFulfilled reports whether a need was met on the spot or only asked about: "to
// see if it wanted salt", "that's how we found it needed more coffee".
func sinceFulfilled(tokens []token, h hit) bool {
	if !tokens[h.from].in("wanted", "needed", "wants", "needs", "it") {
		return false
	}
	for j := h.from; j >= 0 && j >= h.from-3; j-- {
		if tokens[j].in("if", "whether") && j > 0 && tokens[j-1].in("see", "check", "ask", "asked", "know", "find", "tell", "about") {
			return true
		}
		if tokens[j].in("how", "found") && j < h.from {
			return tokens[h.from].tag != "VBZ"
		}
	}
	return false
}

// onlyPossible reports whether "could" tells what might have come of something,
// mostly a harm, and not what to change: "my knife could easily have skidded",
// "it could have made us ill", "you couldn't hear the grains any more".
func onlyPossible(tokens []token, h hit) bool {
	i := h.from
	for i < h.to && !tokens[i].in("could", "might", "can", "would") {
		i++
	}
	if i >= h.to || i+1 >= len(tokens) {
		return false
	}
	if i > 0 && tokens[i].norm == "could" && tokens[i-1].in("you", "u") && tokens[i+1].in("cut", "see", "hear", "smell", "taste", "feel", "tell", "eat", "stand", "slice", "break", "pull", "squash") {
		return true // "you could cut it with a spoon" tells how tender it was
	}
	if tokens[i].norm == "could" && tokens[i+1].in("n't", "not") {
		return !restHas(tokens, i, 5, "been", "be")
	}
	return restHas(tokens, i, 7, "ill", "poorly", "sick", "burn", "burnt", "burned", "hurt", "slipped", "skidded", "fallen", "scalded", "badly", "blisters", "hospital", "screaming", "fire", "himself", "herself", "myself", "yourself")
}
