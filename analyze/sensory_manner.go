package analyze

import "saywhy/lexicon"

// manner reports whether round or flat tells how something was moved or lay
// ("turn the tins round", "wipe it round", "held flat on top") and not the shape
// of the food: it stands before no noun, no quality is tied to it, and no verb
// before it tells what became of the food ("was round", "fell flat").
func manner(tokens []token, c candidate) bool {
	if c.to-c.from != 1 || !tokens[c.from].in("round", "flat") {
		return false
	}
	if c.to < len(tokens) && (tokens[c.to].norm == "'s" || tokens[c.from].norm == "round" && tokens[c.to].in("the", "them", "it", "my", "every")) ||
		c.from > 0 && tokens[c.from].norm == "round" && tokens[c.from-1].in("it", "them", "round") ||
		c.to+1 < len(tokens) && tokens[c.to].norm == "and" && tokens[c.to+1].norm == tokens[c.from].norm {
		return true // the flat's kitchen, "pooled round them", "wipe it round"
	}
	if dwelling(tokens, c.from) || movedRound(tokens, c.from) {
		return true
	}
	if phraseHead(tokens, c.from) >= 0 && tokens[c.from].isAdj() {
		return false
	}
	for j := c.from - 1; j >= 0 && !tokens[j].pause(); j-- {
		t := &tokens[j]
		if t.isAdv() || t.isAdj() || t.in("a", "bit", "little", "touch", "tad", "and", "not", "n't", "as", "all", "of", "out") {
			continue
		}
		return !(linkingVerb(t.norm) || t.in("fell", "fall", "sank", "stay", "ended", "lay", "sat", "baked", "spread")) && (t.isVerb() || j > 0 && clauseVerb(tokens, j))
	}
	return false
}

// dwelling reports whether "flat" at token i is where somebody lives: "my aunt's
// flat", "the whole flat stank".
func dwelling(tokens []token, i int) bool {
	return tokens[i].norm == "flat" && i > 0 && (i+1 == len(tokens) || !tokens[i+1].isNoun()) &&
		(tokens[i-1].tag == "PRP$" || tokens[i-1].in("'s", "our", "the") || i > 1 && tokens[i-1].norm == "whole" && tokens[i-2].norm == "the")
}

// movedRound reports whether "round" at token i belongs to a verb of coming,
// going or turning, or tells that somebody was there ("came round", "who was
// round for tea").
func movedRound(tokens []token, i int) bool {
	if tokens[i].norm != "round" || i == 0 {
		return false
	}
	if i+1 < len(tokens) && tokens[i+1].in("for", "at", "to", "here", "edge", "edges", "corner", "bend", "ours", "mine", "yours") {
		return true
	}
	at := i - 1
	for at > 0 && (tokens[at].in("all", "right", "back") || tokens[at].isNoun() && at == i-1 && tokens[at].kind != lexicon.NoKind) {
		at--
	}
	return tokens[at].in("come", "came", "comes", "coming", "going", "go", "goes", "popped", "nipped", "invited", "passed", "turn", "turned", "spun", "ran", "run", "walked", "sat", "gathered", "asked", "whizzed", "all")
}

// cutTo reports whether the form tells the size something was cut, rolled or
// made to: "cut the florets small", "slice them thinner".
func (d sensing) cutTo(tokens []token, i int) bool {
	if !tokens[i].in("thin", "thinner", "thick", "thicker", "small", "smaller", "big", "bigger", "large", "larger", "fine", "finer", "short", "shorter", "long", "longer", "flat", "neater", "chunky", "tiny") {
		return false
	}
	if i+1 < len(tokens) && tokens[i+1].isNoun() || soThin(tokens, i) {
		return false
	}
	for j := i - 1; j >= 0 && j >= i-6; j-- {
		if tokens[j].isNoun() && !(j == 0 && tokens[1].in("it", "them")) {
			continue // "the slices were thicker"
		}
		if tokens[j].in("was", "were", "came", "turned") {
			return false // "so it came out thin": what it was in the end
		}
		switch tokens[j].stem {
		case "cut", "slice", "chop", "roll", "make", "tear", "dice", "grate", "shape", "go", "squash", "stretch":
			if tokens[j].in("went", "made") {
				return false
			}
			return true
		}
		if tokens[j].pause() {
			return false
		}
	}
	return false
}

// hardWork reports whether "hard" tells how somebody did a thing or how difficult
// it was ("shake it hard", "finds reading hard", "the lid was hard to open").
func hardWork(tokens []token, i int) bool {
	if !tokens[i].in("hard", "harder") {
		return false
	}
	if i+1 < len(tokens) && (tokens[i+1].in("to", "job", "work", "because", "cos", "keeping") || tokens[i+1].in("part", "bit", "end") && i > 0 && tokens[i-1].norm == "the") {
		return true
	}
	for j := i - 1; j >= 0 && j >= i-5 && !tokens[j].pause(); j-- {
		if t := &tokens[j]; t.isVerb() && !linkingVerb(t.norm) {
			switch t.stem {
			case "boil", "shake", "shaken", "shook", "find", "found", "knead", "stir", "beat", "whisk", "press", "push", "squeez", "scrub", "work", "tri", "try", "pull", "hit", "rub", "bash", "bang", "concentr":
				return true
			}
			return false
		}
	}
	return false
}

// atThePoint reports whether heat or cold is told only to say when ("once it was
// stone cold", "when it's still hot").
func atThePoint(tokens []token, c candidate) bool {
	if !tokens[c.to-1].in("cold", "cool", "hot", "warm") || c.to-c.from < 2 {
		return false
	}
	start := clauseStart(tokens, c.from)
	for j := max(0, start-1); j < c.from; j++ {
		if tokens[j].in("once", "when", "until", "till", "til", "while", "after", "before") {
			return true
		}
	}
	return false
}

// hotFat reports whether smoke or haze is told of fat or a pan, which tells when
// it was hot enough and nothing of the dish.
func hotFat(tokens []token, c candidate) bool {
	if c.to-c.from > 1 || !tokens[c.from].in("smoky", "smokey", "hazy", "smoking", "shimmering", "bubbling", "sizzling", "spitting") {
		return false
	}
	for j := c.from - 1; j >= 0 && j >= c.from-4; j-- {
		if tokens[j].in("oil", "fat", "pan", "wok", "skillet", "griddle", "lard", "dripping", "ghee") {
			return true
		}
	}
	return false
}
