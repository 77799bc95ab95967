package analyze

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
	return restHas(tokens, i+2, 5, "too", "enough", "cold", "freezing", "old", "low", "ready", "full", "thin", "wet")
}
