package analyze

import (
	"strings"
)

// cooking reports whether a technique stands in the clause around token i.
func (d means) cooking(tokens []token, i int) bool {
	return d.technique(tokens, max(0, min(clauseStart(tokens, i), i-8)), min(len(tokens), clauseEnd(tokens, i)))
}

// cookedNear is cooking within a few words: an adverb belongs to the verb it
// stands beside.
func (d means) cookedNear(tokens []token, i int) bool {
	for j := max(clauseStart(tokens, i), i-6); j < len(tokens) && j < i+3; j++ {
		switch tokens[j].stem {
		case "took", "take", "reduc", "use", "turn", "score", "serv", "had", "left", "combin", "separ":
			continue // as often done outside a kitchen
		}
		if d.technique(tokens, j, j+1) || tokens[j].tagIn("VBD", "VB", "VBN") && tokens[j].in("handled", "worked", "lowered", "slid", "tipped", "carried", "moved", "drew", "handle", "lower", "tip", "carry", "held", "hold") {
			return true
		}
	}
	return false
}

// technique reports whether one of the tokens is a verb of working with food
// that somebody carried out.
func (d means) technique(tokens []token, from, to int) bool {
	for j := max(0, from); j < to && j < len(tokens); j++ {
		t := &tokens[j]
		first := j == 0 || tokens[j-1].pause()
		if first && t.card.works && !t.isVerb() && len(tokens) > j+2 && !tokens[j+1].isVerb() && t.in("cut", "shook", "beat", "mix", "roll", "fry", "boil", "chop", "slice", "press", "brush", "brown", "whisk", "cook", "stir") || t.norm == "shook" {
			return true // "cut chicken in strips": a note without "I"
		}
		if (t.card.works || byHandOnly(t.stem)) && (t.isVerb() || strings.HasSuffix(t.norm, "ed") || strings.HasSuffix(t.norm, "ing")) {
			return true
		}
	}
	return false
}

// clauseHasVerb reports whether a verb stands before token i in its clause.
func clauseHasVerb(tokens []token, i int) bool {
	for j := clauseStart(tokens, i); j < i; j++ {
		if tokens[j].isVerb() {
			return true
		}
	}
	return false
}

// byHandOnly reports whether a verb tells of work with the hands on food, though it
// is no technique of its own.
func byHandOnly(stem string) bool {
	switch stem {
	case "pound", "patch", "ladl", "dab", "blot", "pluck", "gut", "stack", "pack", "handl", "plait", "decor", "wrung", "sift", "fed", "whack", "bounc", "ground":
		return true
	}
	return false
}
