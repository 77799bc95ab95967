package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// flavouring reports whether the token names something put in for its taste.
func flavouring(t *token) bool {
	switch singular(t.norm) {
	case "salt", "sugar", "pepper", "seasoning", "spice", "vinegar", "lemon", "lime", "garlic", "ginger", "chilli", "chili", "cumin", "cinnamon", "nutmeg", "clove",
		"vanilla", "mustard", "mint", "basil", "coriander", "thyme", "rosemary", "sage", "parsley", "dill", "cardamom", "turmeric", "paprika", "honey", "onion", "soy", "curry", "cayenne", "fennel", "aniseed", "saffron", "oregano", "tarragon", "chive", "caraway", "ajwain", "lemongrass", "peppercorn", "horseradish", "wasabi", "treacle", "cinamon", "allspice", "mace", "tamarind", "harissa", "pesto", "zest":
		return true
	}
	return false
}

// amountOf returns where a phrase begins that tells how much of the flavouring
// at token i was tasted ("too much ginger", "heavy on the salt", "with plenty
// of cumin"), or -1. What somebody put in or plans is a step.
func amountOf(tokens []token, i int) int {
	at := -1
	for j := i - 1; j >= 0 && j >= i-4; j-- {
		t := &tokens[j]
		next := &tokens[j+1]
		switch {
		case t.norm == "too" && next.in("much", "many", "little"), t.norm == "not" && next.norm == "enough", t.norm == "nowhere" && next.norm == "near",
			t.in("plenty", "loads", "short", "lots") && next.norm == "of", t.norm == "heavy" && next.in("on", "with"), t.in("lacked", "lacks", "lacking") && i-j <= 2:
			at = j
		case t.pause():
			j = -1
		}
	}
	if at < 0 {
		return -1
	}
	for j := clauseStart(tokens, at); j < at; j++ {
		if tokens[j].isVerb() && !linkingVerb(tokens[j].norm) && !tokens[j].in("had", "has", "have", "think", "thought", "found", "reckon", "with", "do", "did") || tokens[j].imagines() || tokens[j].in("next", "needs") {
			return -1
		}
	}
	return at
}

// madeOfFood reports whether the word, which no list has, is an adjective made
// of an ingredient's name: "cardamomy", "mushroomy", "garlicky".
func (d sensing) madeOfFood(t *token) bool {
	if t.kind != lexicon.NoKind || t.describes() || t.isAdv() || len(t.norm) < 6 || !strings.HasSuffix(t.norm, "y") {
		return false
	}
	for _, end := range []string{"y", "-y", "ey", "ky"} {
		if stem, ok := strings.CutSuffix(t.norm, end); ok && !strings.HasSuffix(stem, "s") && d.words.nouns.Kind(stem) == lexicon.Ingredient {
			return true
		}
	}
	return d.words.nouns.Kind(strings.TrimSuffix(t.norm, "y")+"e") == lexicon.Ingredient
}

// foodSense is the sense of such an adjective: the one that its verb or its
// noun names, else taste.
func foodSense(tokens []token, i int) lexicon.Sense {
	if v := predicateOf(tokens, i); v >= 0 {
		if s, ok := senseOfVerb(tokens[v].norm); ok {
			return s
		}
	}
	if h := phraseHead(tokens, i); h >= 0 {
		if s, ok := senseOfNoun(tokens[h].norm); ok {
			return s
		}
	}
	return lexicon.Tongue
}
