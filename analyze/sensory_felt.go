package analyze

import "saywhy/lexicon"

// felt is where a phrase ends that is sensed, and by which sense; to is 0 where
// there is none.
type felt struct {
	to    int
	sense lexicon.Sense
}

// feltAt returns what is told at token i of tooth, tongue, nose or eye by words
// that no list can hold, as only their neighbours make them sensed.
func feltAt(tokens []token, i int) felt {
	switch {
	case biteFrom(tokens, i) && chewOf(tokens, i):
		return felt{i + 1, lexicon.Tongue}
	case chewOf(tokens, i), closeCrumb(tokens, i):
		return felt{i + 1, lexicon.Touch}
	case offSpoon(tokens, i) > 0:
		return felt{offSpoon(tokens, i), lexicon.Touch}
	case coats(tokens, i) > 0:
		return felt{coats(tokens, i), lexicon.Touch}
	case bloodLeft(tokens, i):
		return felt{i + 1, lexicon.Sight}
	case allIGot(tokens, i):
		return felt{i + 1, lexicon.Tongue}
	case fillsRoom(tokens, i):
		return felt{i + 1, lexicon.Smell}
	}
	if s := tasteWas(tokens, i); s != "" {
		return felt{i + 1, s}
	}
	return felt{}
}

// chewOf reports whether the noun at token i tells what teeth or fingers meet,
// behind a measure: "a bit of bite", "just a touch of crunch", "kept some snap".
func chewOf(tokens []token, i int) bool {
	if i < 2 || !tokens[i].in("bite", "pop", "snap", "crunch", "chew", "wobble", "squeak", "spring", "bounce", "crackle", "squish", "resistance", "body") {
		return false
	}
	if i+1 < len(tokens) && (tokens[i+1].isNoun() || tokens[i+1].norm == "of") {
		return false // "a bit of pop music", "a bit of spring onion"
	}
	if tokens[i].in("pop", "spring", "snap") && tokens[i-1].in("nice", "lovely", "pleasant", "decent", "satisfying") {
		return false // "had a lovely pop"
	}
	at := i - 1
	if tokens[at].tag == "DT" && at > 1 && tokens[at-1].norm == "of" {
		at-- // "a bit of a chew"
	}
	if tokens[at].norm == "of" {
		return tokens[at-1].in("bit", "touch", "hint", "lot", "little", "amount", "plenty", "loads", "lots", "kind", "sort", "trace", "suggestion", "wee")
	}
	if !tokens[at].in("some", "no", "more", "any", "enough", "little", "much", "it", "proper", "real", "good", "slight", "nice", "lovely", "gentle", "satisfying", "faint", "pleasant", "decent") {
		return false
	}
	for j := at - 1; j >= 0 && j >= at-3; j-- {
		if tokens[j].in("have", "had", "has", "keep", "kept", "keeping", "keeps", "lost", "needs", "needed", "with", "give", "gave", "gives", "giving", "still") {
			return tokens[at].norm != "it" || tokens[i].norm == "body"
		}
	}
	return false
}

// biteFrom reports whether the bite at token i comes from something sharp and is
// a taste: "a bit of a bite from the onion".
func biteFrom(tokens []token, i int) bool {
	if tokens[i].norm != "bite" || after(tokens, i, 1).norm != "from" {
		return false
	}
	h := objectHead(tokens, i+1)
	return h >= 0 && h-i <= 4 && savour(&tokens[h]) && !tokens[h].in("nuts", "rice", "barley", "carrot", "carrots", "potato", "pasta", "beans", "peas")
}

// coats returns where a phrase ends that begins with the verb at token i and
// tells what a sauce or a coating clung to ("coated the back of a spoon",
// "coats your mouth"), or -1. What somebody coated is a step.
func coats(tokens []token, i int) int {
	if !tokens[i].in("coat", "coats", "coated", "coating") || subjectIsHuman(tokens, i) || i > 0 && (tokens[i-1].tag == "DT" || tokens[i-1].isAdj()) {
		return -1
	}
	for j := i + 1; j < len(tokens) && j <= i+6; j++ {
		t := &tokens[j]
		switch {
		case t.in("spoon", "mouth", "tongue", "teeth", "throat", "lips", "palate"):
			return j + 1
		case t.in("back") && j+2 < len(tokens) && tokens[j+1].norm == "of" && tokens[j+2].norm == "it":
			return j + 3
		case t.isNoun() && t.kind.Food() && tokens[i].in("coats", "coated") && i > 0 && (tokens[i-1].isNoun() || tokens[i-1].in("it", "which", "that", "they")) && tokens[j-1].tagIn("DT", "PRP$"):
			return j + 1
		case t.tagIn("DT", "PRP$", "JJ", "NN") && !t.kind.Food() || t.in("of", "back", "whole", "roof", "inside"):
		default:
			return -1
		}
	}
	return -1
}

// flavourNoun reports whether a noun names what food can taste of without being
// put in: "caramel", "toffee".
func flavourNoun(t *token) bool {
	return flavouring(t) || t.kind == lexicon.Ingredient && !t.isVerb() || t.in("caramel", "toffee", "butterscotch", "treacle", "liquorice", "aniseed", "marzipan", "fudge", "chocolate", "coffee", "smoke", "fruit", "tobacco", "malt", "syrup")
}

// tasteWas returns the sense of a flavour that is said to be the taste or the
// smell ("the first taste is caramel", "the flavour, sage and apple, was"), or "".
func tasteWas(tokens []token, i int) lexicon.Sense {
	if i < 2 || !flavourNoun(&tokens[i]) || i+1 < len(tokens) && tokens[i+1].isNoun() && !tokens[i+1].pause() {
		return ""
	}
	for j := i - 1; j >= 0 && j >= i-5; j-- {
		t := &tokens[j]
		if s, ok := senseOfNoun(t.norm); ok && t.isNoun() {
			if s != lexicon.Tongue && s != lexicon.Smell || !tokens[j+1].in(",", "is", "was", "'s") || j > 0 && t.in("kick", "bite") {
				return ""
			}
			if tokens[j+1].norm != "," {
				return s
			}
			if j+4 < len(tokens) && j > 0 && closesAside(tokens, j+2) {
				return s
			}
			return ""
		}
		if !t.isAdv() && !t.isAdj() && !t.in(",", "and", "is", "was", "'s", "a", "mainly", "mostly", "just", "pure", "all") && !flavourNoun(t) {
			return ""
		}
	}
	return ""
}

// closesAside reports whether a comma and a verb close the aside that begins at
// token i.
func closesAside(tokens []token, i int) bool {
	for j := i; j+1 < len(tokens) && j <= i+5; j++ {
		if tokens[j].norm == "," {
			return tokens[j+1].tagIn("VBD", "VBZ", "MD")
		}
	}
	return false
}

// fillsRoom reports whether a room or a house is told to be full of the
// flavouring at token i ("kitchen full of cinnamon").
func fillsRoom(tokens []token, i int) bool {
	if i < 3 || !savour(&tokens[i]) || tokens[i-1].norm != "of" || tokens[i-2].norm != "full" {
		return false
	}
	for j := i - 3; j >= 0 && j >= i-5; j-- {
		if tokens[j].in("kitchen", "house", "room", "hall", "flat", "air", "place", "building") {
			return true
		}
	}
	return false
}

// offSpoon returns where a phrase ends that begins with the verb at token i and
// tells how something left the spoon ("dropped off the spoon slowly"), or -1.
func offSpoon(tokens []token, i int) int {
	if !tokens[i].in("dropped", "drops", "fell", "falls", "ran", "runs", "slid", "slides", "plopped", "plops", "poured", "pours", "dripped", "drips") || i+3 >= len(tokens) || subjectIsHuman(tokens, i) {
		return -1
	}
	if tokens[i+1].in("off", "from") && tokens[i+2].tagIn("DT", "PRP$") && tokens[i+3].in("spoon", "whisk", "ladle", "spatula", "fork") {
		return i + 4
	}
	return -1
}

// bloodLeft reports whether "blood" at token i is told of meat ("still blood near
// the bone", "no blood in the juices") and not of somebody's hand.
func bloodLeft(tokens []token, i int) bool {
	if tokens[i].norm != "blood" || i == 0 {
		return false
	}
	meat := false
	for j := max(0, i-6); j < len(tokens) && j <= i+6; j++ {
		switch t := &tokens[j]; {
		case t.kind == lexicon.Body && !t.in("leg", "legs", "breast"), t.in("plaster", "cut", "finger", "tap"):
			return false
		case t.in("bone", "juice", "juices", "middle", "inside", "meat", "chicken", "thigh", "leg", "burger", "steak", "sausage", "centre"):
			meat = true
		}
	}
	return meat
}

// allIGot reports whether the flavouring at token i was all that was tasted ("all
// I got was salt").
func allIGot(tokens []token, i int) bool {
	return i > 3 && flavourNoun(&tokens[i]) && plainBe(tokens[i-1].norm) && tokens[i-2].in("got", "get") && tokens[i-4].norm == "all"
}
