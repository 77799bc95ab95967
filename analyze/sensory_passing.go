package analyze

import "strings"

// inPassing reports whether a listed form is used of a step, of another thing
// or of which piece is meant, and not of how the food was.
func (d sensing) inPassing(tokens []token, c candidate) bool {
	return namesDish(tokens) || dayBehind(tokens, c) || d.superlativePick(tokens, c) || seedsPop(tokens, c) ||
		setsInto(tokens, c) || driesLike(tokens, c.from) || workedHarder(tokens, c) || d.tellsArrival(tokens, c) || sheetsNamed(tokens, c) || aFirstName(tokens, c) || d.noQuality(tokens, c)
}

// namesDish reports whether the sentence only names what was made ("Dish: baked
// haddock with a herby crumb").
func namesDish(tokens []token) bool {
	return len(tokens) > 2 && tokens[1].norm == ":" && tokens[0].in("dish", "recipe", "title", "product", "practical") ||
		len(tokens) > 3 && tokens[2].norm == ":" && tokens[0].in("my", "dish", "recipe", "practical") && tokens[1].in("dish", "recipe", "name", "title")
}

// aFirstName reports whether the word is somebody's name: a capital, and a deed or
// what is theirs behind it ("Ruby weighed the flour", "Amber's plate").
func aFirstName(tokens []token, c candidate) bool {
	t := &tokens[c.from]
	if c.to-c.from != 1 || c.to >= len(tokens) || t.text[0] < 'A' || t.text[0] > 'Z' || strings.ToUpper(t.text) == t.text {
		return false
	}
	next := &tokens[c.to]
	if next.norm == "'s" {
		return c.from > 0 || next.tag == "POS"
	}
	return next.tag == "VBD" && next.card.works && !next.describes() || next.in("did", "made", "had", "helped", "forgot", "worked", "kept", "asked", "knew", "remembered")
}

// dayBehind reports whether the word stands before a day or a time of day ("a
// wet Saturday").
func dayBehind(tokens []token, c candidate) bool {
	if c.to >= len(tokens) {
		return false
	}
	return tokens[c.to].in("saturday", "sunday", "monday", "tuesday", "wednesday", "thursday", "friday", "afternoon", "morning", "evening", "night", "weather")
}

// superlativePick reports whether a superlative without a noun, or with one for
// a piece, picks out which piece is meant: "the hardest went in first", "cut the
// thickest open", "it bastes the leanest part". The best of a dish is told by
// other words ("the crispiest bit").
func (d sensing) superlativePick(tokens []token, c candidate) bool {
	if c.to-c.from != 1 || c.from == 0 {
		return false
	}
	t := &tokens[c.from]
	stem := strings.TrimSuffix(strings.TrimSuffix(t.norm, "est"), "n")
	switch stem {
	case "thick", "thi", "lea", "hard", "firm", "small", "bigg", "larg", "ripe", "rip", "long", "short", "fatt":
	default:
		return t.in("savoury", "savory", "sweet", "plain") && tokens[c.from-1].norm == "the" && c.to < len(tokens) && tokens[c.to].in("ones", "one")
	}
	if !strings.HasSuffix(t.norm, "est") || !tokens[c.from-1].in("the", "in", "its") {
		return false
	}
	if c.to == len(tokens) {
		return true
	}
	next := &tokens[c.to]
	return next.isVerb() || next.in("part", "parts", "bit", "bits", "end", "one", "ones", "piece", "pieces", "open", "first", "last", "in", "of", "vegetables", "veg", "potatoes")
}

// seedsPop reports whether spices or seeds are told to pop or crackle in hot
// fat, which is the sign for the next step.
func seedsPop(tokens []token, c candidate) bool {
	switch tokens[c.from].stem {
	case "pop", "crackl", "sizzl", "splutter", "sputter", "jump":
	default:
		return false
	}
	for j := c.from - 1; j >= 0 && j >= c.from-6; j-- {
		if tokens[j].in("seeds", "seed", "cumin", "spices", "spice", "mustard", "popcorn", "peppercorns", "ghee") {
			return true
		}
	}
	return c.from > 1 && tokens[c.from-1].in("they", "it") && tokens[c.from-2].in("till", "until", "til") && tokens[c.from].stem == "pop"
}

// setsInto reports whether "set" leads to what a cooled fat or a filling became
// ("the fat had set into a white disc"), or stands in "the set point".
func setsInto(tokens []token, c candidate) bool {
	if tokens[c.from].norm != "set" || c.to-c.from != 1 {
		return false
	}
	if c.to < len(tokens) && (tokens[c.to].in("point", "into", "a", "some", "it", "them", "timer") || tokens[c.to].in("in", "with") && c.to+1 < len(tokens) && tokens[c.to+1].in("a", "big", "large") && !wobbleAhead(tokens, c.to)) {
		return true
	}
	for j := c.from - 1; j >= 0 && j >= c.from-3; j-- {
		if tokens[j].in("fat", "oil", "grease", "dripping", "lard") {
			return true
		}
	}
	return false
}

func wobbleAhead(tokens []token, i int) bool {
	for j := i; j < len(tokens) && j <= i+4; j++ {
		if strings.HasPrefix(tokens[j].norm, "wobbl") {
			return true
		}
	}
	return false
}

// driesLike reports whether a likeness tells what always happens to what is left
// unwashed: "milk sets like glue", "pith dries like cement".
func driesLike(tokens []token, i int) bool {
	return tokens[i].norm == "like" && i > 0 && tokens[i-1].in("sets", "dries", "welds", "sticks") &&
		i+1 < len(tokens) && tokens[i+1].in("glue", "cement", "concrete", "plaster", "superglue", "stone", "rock")
}

// workedHarder reports whether a comparative tells how somebody should work:
// "squeeze them tighter", "drain the spinach harder", "crimping is harder".
func workedHarder(tokens []token, c candidate) bool {
	if c.to-c.from != 1 || !tokens[c.from].in("harder", "tighter", "looser", "rougher", "firmer", "softer", "gentler", "lighter") {
		return false
	}
	if c.to < len(tokens) && tokens[c.to].in("than", "to") {
		if v := predicateOf(tokens, c.from); v >= 0 && v > 0 && strings.HasSuffix(tokens[v-1].norm, "ing") && tokens[v-1].norm != "topping" && tokens[v-1].norm != "filling" && tokens[v-1].norm != "icing" && tokens[v-1].norm != "coating" && tokens[v-1].norm != "stuffing" {
			return true // "crimping is harder than it looks"
		}
		if c.to+2 < len(tokens) && tokens[c.to+1].in("it", "i", "in") && tokens[c.to+2].in("looks", "looked", "thought", "expected", "the") {
			return true
		}
	}
	for j := c.from - 1; j >= 0 && j >= c.from-6; j-- {
		switch t := &tokens[j]; {
		case t.in("squeeze", "squeezed", "tie", "tied", "press", "pressed", "roll", "rolled", "push", "pull", "pulled", "drain", "wring", "wrap", "wrapped", "pack", "packed", "fold", "pinch", "crimp", "twist", "whisk", "beat", "knead", "work", "try", "hold", "screw", "seal"):
			return true
		case t.pause() || t.in("so", "was", "were", "is", "and", "came"):
			return false
		}
	}
	return false
}

// sheetsNamed reports whether "layers" only names the sheets or rings of a
// thing ("flour between the layers", "grit in between the layers").
func sheetsNamed(tokens []token, c candidate) bool {
	if c.to-c.from != 1 || !tokens[c.from].in("layers") || c.from == 0 {
		return c.to-c.from == 1 && tokens[c.from].norm == "layers" && c.to < len(tokens) && tokens[c.to].isVerb()
	}
	for j := c.from - 1; j >= 0 && j >= c.from-3; j-- {
		if tokens[j].in("of", "in", "see", "many", "visible", "loads", "with", "had", "has", "lots") && !(tokens[j].norm == "in" && tokens[c.from-1].norm != "in") {
			return j == c.from-1 && tokens[j].in("with", "in") && j > 0 && tokens[j-1].norm == "between"
		}
	}
	return tokens[c.from-1].in("the", "my", "your", "these", "between")
}

// plumpAs reports whether "fat" at token i is a shape ("fat little buns", "one is
// fat") and not what is trimmed off or fried in.
func plumpAs(tokens []token, i int) bool {
	if i > 0 && tokens[i-1].isNoun() {
		return false // "tail fat, red pepper"
	}
	if h := phraseHead(tokens, i); h >= 0 {
		return (tokens[h].kind.Food() || tokens[h].in("ones", "one", "bits", "chunks", "flakes", "strips")) && !tokens[h].in("end", "content") && (i == 0 || !tokens[i-1].in("the", "hot", "of", "in", "any") || tokens[h].in("ones", "one"))
	}
	j := i - 1
	for j > 0 && (tokens[j].isAdv() || tokens[j].in("a", "bit", "all", "and")) {
		j--
	}
	if j < 0 {
		return false
	}
	if tokens[j].in("some", "one", "others") {
		return i+1 < len(tokens) && tokens[i+1].in("some", "one", "others", ",", "and")
	}
	v := predicateOf(tokens, i)
	return v == j && !tokens[v].in("tasted", "tastes", "got", "get")
}

// amountLeft reports whether grease or crystals at token i are told of by how
// much of them was there ("hardly any grease", "crunchy crystals") and not as
// what is wiped, broken up or kept small.
func amountLeft(tokens []token, i int) bool {
	if i == 0 {
		return false
	}
	prev := &tokens[i-1]
	return prev.isAdj() && !prev.in("ice") || prev.in("any", "no", "of", "some", "was", "were", "few", "little", "much", "with") && !(i > 1 && tokens[i-2].in("full", "rid", "get"))
}
