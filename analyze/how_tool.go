package analyze

import (
	"saywhy/lexicon"
)

// using matches "using a fork", not where using is what is spoken of ("I tried
// using", "Using a sharp knife is safer").
func (d means) using(tokens []token, i int) (int, bool) {
	if i > 0 && (tokens[i-1].in("was", "were", "am", "be", "is", "are", "been", "of", "for", "about", "from", "started", "start", "tried", "try", "than", "like", "means", "enjoyed", "stop", "stopped", "stops", "quit", "enjoy", "mind", "keep", "kept", "when", "while", "people", "those", "someone", "anyone", "by", "or", "and", "consider", "avoid", "with", "including", "e.g") || tokens[i-1].isNoun() && predicateless(tokens, i)) {
		return 0, false
	}
	if i == 0 && (gerundSubject(tokens, i) || after(tokens, i, 1).pause()) {
		return 0, false
	}
	return clauseEnd(tokens, i), true
}

// used matches a tool and what was done with it: "I used a fork to mix".
func (d means) used(tokens []token, i int) (int, bool) {
	if after(tokens, i, 1).norm == "to" || i > 0 && tokens[i-1].in("was", "be", "is", "are", "were", "get", "got") {
		return 0, false
	}
	h := objectHead(tokens, i)
	return clauseEnd(tokens, i), h >= 0 && h-i <= 5 && d.implement(&tokens[h]) && d.toWorkWith(tokens, h)
}

// toWorkWith reports whether what follows the tool at token h tells what it was
// used for: "used a fork to mix", "used two spoons and slid them in"; or nothing
// follows, and the tool is all that is told ("I used a whisk").
func (d means) toWorkWith(tokens []token, h int) bool {
	if h+1 >= len(tokens) {
		return true
	}
	n := &tokens[h+1]
	switch {
	case n.in("to", "so"), n.pause():
		return true
	case n.norm == "for":
		return !(h+2 < len(tokens) && tokens[h+2].in("the", "ages"))
	case n.norm == "and":
		return h+2 < len(tokens) && tokens[h+2].tagIn("VBD", "VB", "VBP") && !linkingVerb(tokens[h+2].norm)
	}
	return false
}

// with decides whether "with" at token i tells by what means: its noun is a
// tool, a hand or a cloth, or what a technique was done with ("brushed with
// egg"). Company ("with Dad"), parts ("soup with leeks") and what a dish was
// served with are not.
func (d means) with(tokens []token, i int) (int, bool) {
	at := i
	for at+1 < len(tokens) && tokens[at+1].in("just", "only", "her") {
		at++ // "with just the tips of my fingers"; "her" is often taken for an object
	}
	h := objectHead(tokens, at)
	if h < 0 && at+3 < len(tokens) && tokens[at+3].norm == "one" && tokens[at+2].in("electric", "sharp", "metal", "wooden", "big", "clean") {
		h = at + 3 // "with the electric one"
		return h + 1, i > 0 && d.cooking(tokens, i)
	}
	if h < 0 || h-i > 6 || i == 0 {
		return 0, false
	}
	if tokens[at+1].kind == lexicon.Person || tokens[at+1].tag == "PRP" || at > i && tokens[at].norm == "her" && !d.implement(&tokens[h]) {
		return 0, false
	}
	start := clauseStart(tokens, i)
	if start > 0 && tokens[start-1].norm == "when" && tried(tokens, start, i) {
		return 0, false // "it fell apart when I pushed it with a fork": how tender
	}
	if h > 0 && tokens[h].in("stick", "sticks", "leaf", "pod") && tokens[h-1].kind.Food() {
		return 0, false // "a cinnamon stick" is an ingredient
	}
	verb := -1
	for j := i - 1; j >= start; j-- {
		if tokens[j].isVerb() {
			verb = j
			break
		}
	}
	if verb >= 0 && (tokens[verb].in("had", "has", "have", "serve", "served", "eat", "ate", "went", "go", "was", "were", "is", "are", "came", "help", "helped", "did", "made", "make", "started", "happy", "pleased", "looked", "tasted", "began", "left")) && !(tokens[verb].norm == "went" && verb+1 < i && tokens[verb+1].norm == "at") && !(tokens[verb].in("did", "made", "make", "was", "were") && d.implement(&tokens[h])) && !(tokens[verb].norm == "tasted" && tokens[h].in("spoon", "spoons", "teaspoon", "finger")) {
		return 0, false
	}
	if verb > start && tokens[verb-1].in("could", "can") && tokens[verb].in("cut", "eat", "scoop", "break") {
		return 0, false // "you could cut it with a spoon": how tender it was
	}
	if tokens[i-1].in("happy", "pleased", "along", "together", "fun", "wrong") || tokens[i-1].norm == "up" && !tokens[h].in("water", "cloth", "mop", "sponge") {
		return 0, false
	}
	if tokens[h].in("back", "end", "edge", "tip", "tips", "just", "heel", "side", "palm", "aid", "help", "point", "bottom", "top", "handle", "circle", "piece", "sheet", "mug", "pair", "layer", "dab", "little", "bit", "drop", "splash", "spoonful", "touch") && h+1 < len(tokens) && tokens[h+1].norm == "of" {
		if g := objectHead(tokens, h+1); g >= 0 && (d.implement(&tokens[g]) || tokens[g].in("paper", "water", "milk", "egg", "salt", "oil", "foil")) && verb >= 0 {
			return g + 1, true
		}
	}
	if verb >= 0 && tokens[verb].in("equipped", "connected", "associated", "concerned", "enter", "avoid", "filled", "provided", "faced", "covered", "agree", "deal") {
		return 0, false // what a thing has or has to do with
	}
	if verb < 0 && len(tokens) > 14 {
		return 0, false // only a note leaves out its verb
	}
	if d.implement(&tokens[h]) && (verb >= 0 || start == 0 || tokens[i-1].isNoun() || tokens[i-1].tag == "PRP" || tokens[i-1].isAdv()) {
		return max(h+1, i+2), true
	}
	if verb >= 0 && tokens[h].kind.Food() && d.treats(tokens[verb].stem) && !tokens[verb].isAdj() {
		return h + 1, true
	}
	return 0, false
}

// implement reports whether a noun names something one works with.
func (d means) implement(t *token) bool {
	return t.kind == lexicon.Tool || t.kind == lexicon.Cloth || t.kind == lexicon.Body || t.in("hands", "hand", "fingers", "fingertips", "water", "paper", "thumb", "heel", "technique", "method", "grip", "hold", "movement", "strokes", "motion", "touch", "claw", "bottle", "care")
}

// tried reports whether a clause only tells how the finished food was tried:
// pushed, pressed, hit or cut to see how it was.
func tried(tokens []token, from, to int) bool {
	for j := from; j < to; j++ {
		if tokens[j].in("pushed", "pressed", "hit", "poked", "prodded", "touched", "cut", "stuck", "tapped", "squashed", "bit", "push", "press", "hit", "poke", "prod", "touch") {
			return true
		}
	}
	return false
}

// treats reports whether a technique is done with something put on or in.
func (d means) treats(stem string) bool {
	switch stem {
	case "brush", "boil", "glaze", "dust", "rub", "coat", "grease", "seal", "thicken", "season", "line", "marinad", "sharpen", "sweeten", "loosen", "flavour", "fri", "dri", "clean", "bake", "roll", "fill", "cover", "poach", "simmer", "wash", "wipe", "scrub":
		return true
	}
	return false
}

// withinTool matches cooking in something that shapes the method: "in a dry
// pan", "in a colander", not "in the oven".
func (d means) withinTool(tokens []token, i int) bool {
	h := objectHead(tokens, i)
	if h >= 0 && h-i <= 3 && tokens[h].in("blender", "processor", "microwave", "mixer", "bread-maker") {
		for j := clauseStart(tokens, i); j < i; j++ {
			if tokens[j].in("made", "did", "done", "mixed") {
				return true
			}
		}
	}
	if h < 0 || h-i > 4 || !d.cooking(tokens, i) {
		return false
	}
	if tokens[h].in("water") && h-i > 1 && tokens[h-1].isAdj() {
		return true
	}
	if tokens[h].in("colander", "blender", "processor", "microwave", "steamer", "sieve", "wok", "mortar", "bag", "cloth", "jar", "mixer", "freezer-bag", "bain-marie", "muslin", "teatowel", "towel", "spinner", "towels", "ring", "circles", "paper", "greaseproof", "foil", "squares", "lines", "rows", "batches") {
		return true
	}
	return tokens[h].kind == lexicon.Tool && tokens[h].in("pan", "frying", "dish", "tin") && h-i >= 3 && tokens[h-1].isAdj()
}

// cookedOn matches "on kitchen roll", "on a rack", "on a damp cloth".
func (d means) cookedOn(tokens []token, i int) bool {
	h := objectHead(tokens, i)
	if h < 0 || h-i > 4 || !d.cooking(tokens, i) {
		return false
	}
	return tokens[h].in("roll", "paper", "rack", "towel", "towels", "cloth", "grater", "hook", "parchment", "hooks", "skewers", "setting", "pulse", "stand")
}

// past matches what food went through, under, between or off: "through a
// sieve", "under the tap", "off the heat".
func (d means) past(tokens []token, i int) (int, bool) {
	t, h := &tokens[i], objectHead(tokens, i)
	switch {
	case h < 0:
		return 0, false
	case t.norm == "through" && h-i <= 4 && tokens[h].in("sieve", "strainer", "colander", "muslin", "ricer", "mouli"):
		return h + 1, true
	case t.norm == "under" && tokens[h].in("board", "bowl"):
		return 0, false // "a damp cloth under my board": where, to keep it still
	case t.norm == "under" && h-i <= 5 && tokens[h].in("tap") && clauseHasVerb(tokens, i):
		return h + 1, !cooledBurn(tokens, i)
	case h-i > 5 || !d.cooking(tokens, i):
		return 0, false
	case t.norm == "off":
		return h + 1, tokens[h].norm == "heat"
	}
	return h + 1, tokens[h].kind == lexicon.Tool && !tokens[h].in("oven", "grill", "hob") || tokens[h].kind == lexicon.Cloth || tokens[h].in("paper", "foil", "finger", "fingers", "palm", "hands", "palms", "teeth")
}

// cooledBurn reports whether a hand was held under the tap: first aid.
func cooledBurn(tokens []token, i int) bool {
	for j := clauseStart(tokens, i); j < i; j++ {
		if tokens[j].kind == lexicon.Body || tokens[j].norm == "it" {
			return true
		}
	}
	return false
}
