package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// seenThickness reports whether thin or thick tells how deep a solid thing is,
// which is seen: "thin pancakes", "the base was thin", "thick slices". Of a
// liquid the same words tell how it pours. Where no noun decides, "they" are
// pieces, and so are things with lacy edges or what was rolled, spread or
// stretched; "it" is more often a liquid.
func seenThickness(tokens []token, c candidate) bool {
	t := &tokens[c.from]
	thin := t.in("thin", "thinner", "thinnest")
	if c.to-c.from != 1 || !thin && !t.in("thick", "thicker", "thickest") {
		return false
	}
	if soThin(tokens, c.from) {
		return true
	}
	if at := thicknessOf(tokens, c); at >= 0 {
		switch singular(tokens[at].norm) {
		case "slice", "strip", "ribbon", "chip", "ring", "piece", "wedge", "noodle", "sheet", "strand":
			return true
		case "base", "crust", "skin", "pancake", "crepe", "crêpe", "wafer", "wrap", "tortilla", "chapati", "poppadom", "pasta", "edge", "middle", "topping", "layer", "rim", "disc", "biscuit", "cookie", "roti", "flatbread":
			return thin && !feltTogether(tokens, c)
		case "they", "them", "some", "one", "rest", "other", "hers", "his", "theirs":
			return thin
		}
		if tokens[at].isNoun() {
			return false
		}
	}
	return thin && (spreadBefore(tokens, c.from) || besideLacy(tokens, c))
}

// thicknessOf returns the noun or pronoun that thin or thick is said of, or -1.
func thicknessOf(tokens []token, c candidate) int {
	if at := phraseHead(tokens, c.from); at >= 0 && tokens[c.to].norm != "as" {
		return at
	}
	if v := predicateOf(tokens, c.from); v >= 0 {
		return subject(tokens, v)
	}
	if c.from > 0 && tokens[c.from-1].isNoun() {
		return c.from - 1 // "Base thin and crisp"
	}
	return -1
}

// spreadBefore reports whether a verb of spreading stands before token i in its
// clause: "it spread out thin", "you rolled it so thin".
func spreadBefore(tokens []token, i int) bool {
	for j := max(0, i-9); j < i; j++ {
		switch tokens[j].stem {
		case "spread", "roll", "stretch", "flatten", "tilt":
			return true
		}
	}
	return false
}

// besideLacy reports whether a word of lace or glass stands near.
func besideLacy(tokens []token, c candidate) bool {
	for j := max(0, c.from-3); j < len(tokens) && j <= c.to+6; j++ {
		if tokens[j].in("lacy", "lacey", "frilly", "see-through") {
			return true
		}
	}
	return false
}

// feltTogether reports whether the word stands with another one of touch before
// the same noun ("a thin, brittle crust"): then both are felt.
func feltTogether(tokens []token, c candidate) bool {
	return c.to+1 < len(tokens) && tokens[c.to].in(",", "and") && phraseHead(tokens, c.from) > c.to+1 && attributive(tokens, c.from)
}

// smoothWithout reports whether bubbles are denied beside a word of smoothness,
// so that the tongue misses them: "silky, no bubbles at all".
func smoothWithout(tokens []token, i int) bool {
	if !denied(tokens, i) && !(i > 0 && tokens[i-1].in("no", "one", "a", "single")) {
		return false
	}
	for j := max(0, i-8); j < i; j++ {
		if strings.HasPrefix(tokens[j].norm, "smooth") || strings.HasPrefix(tokens[j].norm, "silk") || tokens[j].in("velvety", "creamy") {
			return true
		}
	}
	return false
}

// headTaste returns taste or smell where the noun of that sense stands right
// behind the word or its list: "a chalky taste", "Smoky smell all over".
func headTaste(tokens []token, c candidate) (lexicon.Sense, bool) {
	h := phraseHead(tokens, c.to-1)
	if h < 0 {
		for h = c.to; h+1 < len(tokens) && h < c.to+3 && (tokens[h].isAdj() || tokens[h].isAdv() || tokens[h].in(",", "and", "almost")); {
			h++
		}
	}
	if h >= len(tokens) || h > c.to+3 || endsInVerb(tokens, c) || !tokens[h].in("taste", "flavour", "flavor", "aftertaste", "tang", "smell", "aroma", "scent", "whiff", "pong", "stink", "stench") {
		return "", false
	}
	if _, ok := senseOfNoun(tokens[c.to-1].norm); ok || tokens[c.from].in("cold", "cool", "hot") {
		return "", false
	}
	return senseOfNoun(tokens[h].norm)
}

// topOf reports whether a dusting is told of the top of something, where it is
// seen: "white floury tops", "floury on top".
func topOf(tokens []token, c candidate) bool {
	if !tokens[c.to-1].in("floury", "sugary") || c.to >= len(tokens) {
		return false
	}
	return tokens[c.to].in("top", "tops", "crust", "outside") || c.to+1 < len(tokens) && tokens[c.to].norm == "on" && tokens[c.to+1].norm == "top"
}

// soThin reports whether thin is told by what shows through or vanishes: "so
// thin I could see the board", "thin enough for light to come through".
func soThin(tokens []token, i int) bool {
	so := i > 0 && tokens[i-1].in("so", "that") || i+1 < len(tokens) && tokens[i+1].norm == "enough"
	for j := i + 1; so && j < len(tokens) && j <= i+6; j++ {
		if tokens[j].in("see", "read", "light", "vanished", "vanish", "disappeared", "through") {
			return true
		}
	}
	return false
}

// ofTaste returns taste or smell where the word tells what the taste or smell
// was of ("an aftertaste of burnt garlic").
func ofTaste(tokens []token, i int) (lexicon.Sense, bool) {
	if i < 2 || tokens[i-1].norm != "of" || !tokens[i-2].in("taste", "flavour", "flavor", "aftertaste", "smell", "aroma", "whiff", "stink", "pong") {
		return "", false
	}
	return senseOfNoun(tokens[i-2].norm)
}
