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
