package analyze

import (
	"slices"

	"saywhy/lexicon"
)

// endsInWish reports a sentence whose last words are such a note: "… it all sank
// so more holes", "Change: bigger bowl".
func endsInWish(s *sentence) bool {
	n := len(s.tokens)
	for n > 0 && !s.tokens[n-1].word {
		n--
	}
	for i := max(1, n-5); i+1 < n; i++ {
		t, next := &s.tokens[i], &s.tokens[i+1]
		if s.tokens[i-1].norm == "so" && t.kind.Food() && next.in("on", "over") && !verbBetween(s.tokens, i, n) {
			return true // "it looks grey, so parsley on top"
		}
		if !s.tokens[i-1].in("so", ":") && !amountAfterSo(s.tokens, i) || !t.in("more", "less", "fewer", "extra", "another") && t.tag != "JJR" || t.in("better", "worse") || !next.isNoun() {
			continue
		}
		if !verbBetween(s.tokens, i, n) {
			return true
		}
	}
	return false
}

// advised reports whether a step of technique is only what is to be done
// another time: a bare verb without a person before it, in a sentence that
// tells a change ("Chill them first", "… and scatter some oats on").
func advised(s *sentence, step sign) bool {
	t := &s.tokens[step.from]
	if !t.tagIn("VB", "VBP") || step.from > 0 && s.tokens[step.from-1].human() {
		return false
	}
	from, to := halfStart(s.tokens, step.from), halfEnd(s.tokens, step.from)
	return slices.ContainsFunc(s.signs, func(g sign) bool {
		return g.area == lexicon.Improvement && g.from < to && g.to > from
	})
}

// wishes reports a note that only says what there should be more or less of:
// "Less water there", "Bigger bowl, it was falling out".
func wishes(s *sentence) bool {
	tokens := s.tokens
	for len(tokens) > 3 && tokens[0].in("and", "also", "but", "yeah", "maybe", "oh", "ok", "plus", ",", "a", "bit", "abit", "slightly", "just", "tad", "little", "touch") {
		tokens = tokens[1:]
	}
	if len(tokens) < 2 || isHeading(s) {
		return false
	}
	first, second := &tokens[0], &tokens[1]
	if !first.in("more", "less", "fewer", "extra") && first.tag != "JJR" || first.in("better", "worse") {
		return false
	}
	if !second.isNoun() && second.tag != "VBG" || second.kind == lexicon.Person {
		return false // "More crunchy than last time" describes
	}
	for i := 2; i < len(tokens) && !tokens[i].in(",", "so", "because") && !tokens[i].pause(); i++ {
		if tokens[i].tagIn("VBD", "VBZ", "VBP", "MD") || tokens[i].norm == "than" {
			return false
		}
	}
	return true
}

// wouldDo reports a change told without its person: "would put oats in",
// "Would have the fan on earlier", "Could toast the nuts", "Will use two". That
// somebody would make or eat the dish again plans none, nor does what could be
// seen or tasted.
func wouldDo(s *sentence) bool {
	i := 0
	for i < len(s.tokens) && i < 3 && s.tokens[i].in("and", "also", "but", "so", "yeah", "maybe", ",", "defo", "definitely") {
		i++
	}
	if i+2 >= len(s.tokens) || !s.tokens[i].in("would", "wud", "could", "cud", "might", "should", "shud", "will") {
		return false
	}
	if !s.tokens[i+1].tagIn("VB", "VBP") && !s.tokens[i+1].card.works || s.tokens[i+1].in("be", "recommend", "eat", "say", "love", "like", "rate", "give", "buy", "n't", "not") {
		return false
	}
	if !s.tokens[i].in("would", "wud") && (s.tokens[i+1].in("taste", "smell", "see", "hear", "feel", "tell", "have", "do", "cut", "slice", "stand", "know", "you", "we", "i", "help", "get", "never", "look") || s.tokens[len(s.tokens)-1].norm == "?") {
		return false // "Could smell the garlic", "Should have read it" has its own sign
	}
	if s.tokens[i+1].in("go", "make", "work", "taste", "suit", "pair", "look", "do", "serve", "feed", "keep", "freeze") && !compares(s.tokens, i+1) {
		return false // "Would go well with custard": what the food is good for
	}
	return !again(s.tokens, i+1)
}

// again reports whether what somebody would do at token i is only to make or
// have the same once more.
func again(tokens []token, i int) bool {
	for j := i; j < len(tokens) && j <= i+6 && !tokens[j].pause(); j++ {
		if tokens[j].in("again", "same") {
			return !compares(tokens, j) && !compares(tokens, i)
		}
	}
	return false
}

// suggests reports what an adult only names as a change: "Chives maybe?",
// "Shells in the bin please".
func suggests(s *sentence, role Role) bool {
	if role != Adult || len(s.tokens) < 2 || len(s.tokens) > 14 {
		return false
	}
	food, hint := false, false
	for i := range s.tokens {
		t := &s.tokens[i]
		if t.tagIn("VBD", "VBZ", "MD") || t.in("thank", "thanks", "you", "i", "too") {
			return false
		}
		food = food || t.kind.Food() || t.kind == lexicon.Tool
		// "Clean knife every time" praises unless it is asked for.
		asked := s.tokens[i].norm == "time" && i > 0 && (s.tokens[i-1].norm == "next" || s.tokens[i-1].norm == "every" && s.tokens[0].tag == "VB")
		hint = hint || t.norm == "please" || asked || t.in("maybe", "perhaps") && len(s.tokens) <= 7
	}
	return food && hint && !(len(s.vague) > 0 && !restHas(s.tokens, 0, len(s.tokens), "please"))
}

// amountAfterSo reports whether only an amount stands between "so" and token i:
// "so 50 g more sugar", "so a spoonful more".
func amountAfterSo(tokens []token, i int) bool {
	for j := i - 1; j >= 0 && j >= i-4; j-- {
		t := &tokens[j]
		if t.norm == "so" {
			return j < i-1
		}
		if !t.tagIn("CD", "DT") && !t.in("g", "grams", "spoonful", "spoon", "pinch", "bit", "little", "minutes", "mins", "handful", "splash", "of") {
			return false
		}
	}
	return false
}
