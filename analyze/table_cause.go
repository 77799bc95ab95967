package analyze

import "saywhy/lexicon"

// suspects reports whether a sentence only says what may have brought about
// what was told before it: "My theory is that I was rough with it.", "I suspect
// the tin never got hot.", "The pan wasn't hot enough.".
func suspects(s *sentence) bool {
	tokens := s.tokens
	i := 0
	for i < len(tokens) && i < 2 && (tokens[i].isAdv() || tokens[i].in("and", "but", "so")) {
		i++
	}
	if len(tokens)-i < 4 || len(tokens) > compact+reach {
		return false
	}
	first, second, third := &tokens[i], &tokens[i+1], &tokens[i+2]
	switch {
	case first.in("my", "the", "our", "one", "only") && (second.in("theory", "guess", "hunch", "explanation", "suspicion", "culprit", "cause") || third.in("theory", "guess", "explanation", "cause")):
		return true
	case first.in("i", "we") && second.in("suspect", "blame", "blamed"):
		return true
	case first.in("i", "we") && second.in("put", "puts") && third.in("it", "that", "this", "them"):
		return restHas(tokens, i+3, 1, "down")
	}
	return heatWrong(tokens, i)
}

// heatWrong reports whether what begins at token i tells only that something of
// the kitchen was not as warm or ready as it had to be: "The oven wasn't up to
// heat.", "Oil was too cold.".
func heatWrong(tokens []token, i int) bool {
	if tokens[i].in("the", "my", "our") {
		i++
	}
	if i+2 >= len(tokens) || len(tokens) > 14 || !tokens[i].in("oven", "pan", "oil", "fat", "butter", "tin", "tray", "griddle", "grill", "water", "heat", "hob", "fridge", "freezer", "kitchen", "flour", "milk", "yeast", "dough", "batter", "mix", "mixture") || !tokens[i+1].in("was", "were", "had", "must", "wasnt", "could", "did", "ca") {
		return false
	}
	return wanting(tokens, i+2)
}

// wanting reports whether one of the words from token i on says that a thing was
// not as it had to be for the work.
func wanting(tokens []token, i int) bool {
	return restHas(tokens, i, 5, "too", "enough", "cold", "freezing", "old", "low", "ready", "full", "thin", "wet")
}

// ledTo reports whether a sentence only tells what somebody did, behind one that
// tells a fault of the food: "Sauce was lumpy. I put all the milk in at once.".
// The fault is what the deed led to.
func ledTo(s, before *sentence) bool {
	return didOnly(s) && ill(before) && len(resultOnly(before.areas)) > 0
}

// blamed reports whether the sentence behind one that tells a fault says what
// somebody did wholly, hastily or not at all: "It caught on one side. I'd walked
// off and left it.". It asks for a fault that is seen or felt, as a taste comes of
// what went in.
func blamed(s, next *sentence) bool {
	if !ill(s) || len(next.sensory) > 0 {
		return false
	}
	if didOnly(next) {
		for i := range next.tokens {
			if next.tokens[i].in("all", "too", "once", "only", "just", "n't", "straight", "not", "never", "forgot", "early", "late", "whole", "still", "away", "rushed", "lots", "much", "hot", "full", "loads", "enough", "without", "didnt") {
				return true
			}
		}
	}
	return shortOf(next.tokens)
}

// didOnly reports whether a short sentence tells at its head what a person did,
// not what they felt, thought or said of the food.
func didOnly(s *sentence) bool {
	t := s.tokens
	if len(t) < 3 || len(t) > 16 || s.has(lexicon.Improvement) {
		return false
	}
	k := 0
	for k < len(t)-1 && k < 3 && !t[k].human() {
		k++
	}
	if !t[k].in("i", "we", "he", "she", "you") {
		return false
	}
	for j := k + 1; j < len(t) && j < k+4; j++ {
		if t[j].tag == "VBD" && !t[j].in("was", "were", "liked", "loved", "enjoyed", "thought", "ate", "said", "tasted", "served", "felt") || t[j].in("put", "did", "had", "forgot", "used") {
			return true
		}
	}
	return false
}

// ill reports whether the sentence tells a fault of the food, not denied.
func ill(s *sentence) bool {
	for i := range s.tokens {
		if s.tokens[i].faulty() && !deniedBefore(s.tokens, i) {
			return true
		}
	}
	return amiss(s)
}

// shortOf reports whether a short sentence tells of a thing that it was not as it
// had to be: "The shelf was too low.", "Our scales were not level.".
func shortOf(t []token) bool {
	if len(t) < 4 || len(t) > 14 || t[0].human() || t[0].in("it", "they") {
		return false
	}
	for j := 1; j+2 < len(t) && j < 5; j++ {
		if t[j].in("was", "were", "had", "is") {
			return wanting(t, j+1) || restHas(t, j+1, 5, "n't")
		}
	}
	return false
}
