package analyze

import "saywhy/lexicon"

// aimed finds a technique that only its aim shows: "we sat the dish in a tin of
// water so the eggs don't get too hot", "not too long or it goes tough", "on for
// the last minutes only, since it scorches". What is wished for or kept from the
// food, or always happens to it, says why something was done to it.
func aimed(s *sentence) []sign {
	if len(s.why) == 0 || isHeading(s) || startsWithHeading(s.tokens) {
		return nil
	}
	for _, g := range s.signs {
		if contains(workAreas(), g.area) || g.area == lexicon.Improvement {
			return nil
		}
	}
	for _, w := range s.why {
		if w.from >= 2 && aimsAtFood(s.tokens, w.from) {
			return []sign{{area: lexicon.Technique, told: true, from: w.from - 1, to: w.from}}
		}
		if deedInCause(s.tokens, w) || backOn(s.tokens, w) {
			return []sign{{area: lexicon.Technique, told: true, from: w.from, to: w.to}}
		}
	}
	return nil
}

// aimsAtFood reports whether the reason at token i tells of a state of the food
// that was wanted, not wanted, or that always comes about.
func aimsAtFood(tokens []token, i int) bool {
	t := &tokens[i]
	j := i + 1
	switch {
	case t.norm == "to":
		return j+1 < len(tokens) && tokens[j].in("stop", "keep", "prevent", "avoid", "soften", "thicken", "crisp", "let") && (tokens[j+1].in("it", "them", "any") || foodAt(tokens, j+1))
	case t.in("or", "otherwise", "if"):
		for j < len(tokens) && tokens[j].in("not", "else", ",") {
			j++
		}
	case t.norm == "so":
		if j < len(tokens) && tokens[j].norm == "that" {
			j++
		}
	case !t.in("since", "because", "as", "for"):
		return false
	}
	if j >= len(tokens) || !(tokens[j].in("it", "they", "everything") || foodAt(tokens, j)) {
		return false
	}
	for k := j + 1; k < len(tokens) && k <= j+4; k++ {
		v := &tokens[k]
		switch {
		case v.human() || v.pause() && v.norm != ",":
			return false
		case v.norm == "so" || v.in("was", "were", "is", "are", "'s", "'re") && !(k+1 < len(tokens) && tokens[k+1].norm == "n't") && t.norm != "so":
			return false
		case v.in("would", "'d", "will", "'ll", "wo", "ca", "could", "can", "did", "do", "does"):
			return k+1 < len(tokens) && (tokens[k+1].in("n't", "not") || tokens[k+1].isVerb() || v.in("would", "'d", "will", "'ll"))
		case v.tagIn("VBZ", "VBP") || occurs(v):
			return !v.in("has", "have", "looks", "look", "tastes", "taste", "smells", "need", "needs")
		case v.tag == "VBD":
			return false
		}
	}
	return false
}

// foodAt reports whether a food, or the part of one, is named within two words
// of token i.
func foodAt(tokens []token, i int) bool {
	for j := i; j < len(tokens) && j <= i+2; j++ {
		if tokens[j].kind.Food() {
			return true
		}
		if !tokens[j].tagIn("DT", "PRP$", "JJ", "NN") {
			return false
		}
	}
	return false
}

// deedInCause reports whether the cause told by w is something that somebody did:
// "the courgettes went to slop because I did them first", "too crowded cos I
// shoved all eight in". How the food was worked is why it came out so. To have
// forgotten, bought or wanted something is no work.
func deedInCause(tokens []token, w clause) bool {
	t := &tokens[w.from]
	k := kindOf(tokens, w)
	if t.in("so", "to", "which", "for") || k != cause && k != origin && !t.in("through", "down", "i", "had", "think") && !(w.from > 0 && tokens[w.from-1].pause()) {
		return false
	}
	for j := w.from; j+1 < w.to; j++ {
		v, n := &tokens[j], &tokens[j+1]
		if v.tag == "VBG" && v.card.works || v.in("stirring", "keeping", "boiling", "leaving", "kneading", "mixing", "cutting", "opening") {
			return true
		}
		object := n.in("it", "them", "all", "one", "too") || n.tagIn("DT", "PRP$", "CD") || n.kind.Food() || n.isAdv()
		if !object || v.in("liked", "loved", "thought", "ate", "forgot", "wanted", "was", "were", "been", "needed", "knew", "bought", "said", "felt") {
			continue
		}
		p := &tokens[max(0, j-1)]
		if v.tagIn("VBD", "VBN") && (j == w.from || p.in("i", "we", "he", "she", "you", "n't", "had", "'d")) || v.in("did", "put", "left", "had") && j > 0 && p.in("i", "we", "he", "she", "you") {
			return true
		}
	}
	return false
}

// backOn reports whether the result told by w is that the food was cooked once
// more: "it was pink, so back in for ten minutes".
func backOn(tokens []token, w clause) bool {
	if tokens[w.from].norm != "so" {
		return false
	}
	for j := w.from + 1; j+1 < w.to && j < w.from+7; j++ {
		if tokens[j].norm == "back" && tokens[j+1].in("in", "on", "over", "under", "into", "onto") {
			return true
		}
	}
	return false
}
