package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// clause is a phrase of means or reason.
type clause struct {
	span
	from, to int // tokens
	explains int // of a reason: the number of the sentence it explains; 0 for its own
}

// means finds the phrases that tell the means or manner by which something was
// done.
type means struct{ words *vocabulary }

func (d means) read(r *reading) {
	for i := range r.sentences {
		s := &r.sentences[i]
		s.how = d.find(s)
	}
}

func (d means) find(s *sentence) []clause {
	tokens := s.tokens
	var out []clause
	add := func(from, to int) {
		if n := len(out); n > 0 && from < out[n-1].to {
			return
		}
		to = max(to, from+1)
		out = append(out, clause{span: span{tokens[from].start, tokens[to-1].end}, from: from, to: to})
	}
	for i := range tokens {
		if to, ok := d.at(tokens, i); ok {
			add(i, to)
		}
	}
	return out
}

// at reports whether a phrase of means begins at token i, and where it ends.
func (d means) at(tokens []token, i int) (int, bool) {
	t := &tokens[i]
	next := func(n int) *token {
		if i+n < len(tokens) {
			return &tokens[i+n]
		}
		return &token{}
	}
	switch t.norm {
	case "by":
		// by + -ing (an adverb may stand between) is means in nine cases of
		// ten (GUM: 118 of 125); "by hand"; not "by five", "by the oven".
		n := 1
		for next(n).isAdv() && n < 3 {
			n++
		}
		switch {
		case next(n).tag == "VBG" || strings.HasSuffix(next(n).norm, "ing") && len(next(n).norm) > 5 && !next(n).in("evening", "morning", "ceiling", "spring", "pudding", "filling"):
			return clauseEnd(tokens, i+n), true
		case next(1).in("hand", "eye", "touch", "feel", "spoonfuls"):
			return i + 2, true
		case next(1).in("fingers", "hands") || next(1).in("my", "her", "his", "your", "their") && next(2).in("hand", "hands", "fingers", "fingertips"):
			return i + 2, true // "by my fingers": a tool in the mouth of those new to English
		case next(1).norm == "the" && (next(2).norm == "method" || next(3).norm == "method"):
			return i + 3, true // "by the slap-and-fold method"
		case next(1).in("the", "a") && next(2).in("spoonful", "handful", "spoon", "teaspoon", "ladleful", "ladle", "tablespoon"):
			return i + 3, true
		}
	case "using", "useing":
		if i > 0 && (tokens[i-1].in("was", "were", "am", "be", "is", "are", "been", "of", "for", "about", "from", "started", "start", "tried", "try", "than", "like", "means", "enjoyed", "stop", "stopped", "stops", "quit", "enjoy", "like", "mind", "keep", "kept") || tokens[i-1].in("when", "while", "people", "those", "someone", "anyone", "by", "or", "and", "consider", "avoid", "with", "including", "start", "e.g") || tokens[i-1].isNoun() && predicateless(tokens, i)) {
			return 0, false
		}
		if i == 0 && gerundSubject(tokens, i) {
			return 0, false // "Using a sharp knife is safer": what is spoken of
		}
		if i == 0 && !next(1).pause() || i > 0 {
			return clauseEnd(tokens, i), true
		}
	case "used":
		// "I used a fork to mix": a tool and what was done with it.
		if next(1).in("to") || i > 0 && (tokens[i-1].in("was", "be", "is", "are", "were", "get", "got")) {
			return 0, false
		}
		if h := objectHead(tokens, i); h >= 0 && h-i <= 5 && d.implement(&tokens[h]) && d.toWorkWith(tokens, h) {
			return clauseEnd(tokens, i), true
		}
	case "with":
		if to, ok := d.with(tokens, i); ok {
			return to, true
		}
	case "without":
		n := 1
		for next(n).isAdv() || next(n).in("the", "it", "them") && n < 3 {
			n++
		}
		if (next(n).tag == "VBG" || strings.HasSuffix(next(n).norm, "ing") && len(next(n).norm) > 5) && !befalls(next(n), next(n+1)) && !next(n).in("prompting", "asking", "helping", "nagging", "pudding", "filling", "icing", "seasoning", "topping") && !(next(n).in("being") && next(n+1).in("asked", "told", "reminded", "prompted")) {
			return clauseEnd(tokens, i+n), true
		}
		if h := objectHead(tokens, i); h >= 0 && h-i <= 4 && (tokens[h].kind == lexicon.Tool || tokens[h].kind == lexicon.Cloth || tokens[h].norm == "machine") && next(1).norm != "any" && (d.cooking(tokens, i) || tokens[h].norm == "machine") {
			return h + 1, true
		}
	case "thanks":
		if next(1).norm == "to" && next(2).tag == "VBG" {
			return clauseEnd(tokens, i), true // "thanks to peeling everything first": by
		}
	case "wearing":
		if h := objectHead(tokens, i); i > 0 && h >= 0 && h-i <= 3 && tokens[h].in("glove", "gloves", "mitts", "goggles") && d.cooking(tokens, i) {
			return h + 1, true
		}
	case "in":
		if to, ok := d.portions(tokens, i); ok {
			return to, true
		}
		if d.withinTool(tokens, i) {
			return clauseEnd(tokens, i), true
		}
		if next(1).norm == "the" && next(2).norm == "order" && (next(3).tagIn("PRP", "NNP") || next(3).norm == "that") {
			return clauseEnd(tokens, i+2), true // "in the order I'd use them"
		}
		if next(1).norm == "a" && (next(2).in("claw", "bridge") || next(3).in("claw", "bridge")) {
			return i + 3, true
		}
	case "a", "one", "two", "three", "four", "five", "six", "bit", "little", "half":
		if t.norm == "one" && next(1).in("after", "by") && (next(2).norm == "one" || next(2).in("the", "another")) {
			return i + 4, true
		}
		// "a bit at a time", "one at a time", "little by little"
		for n := 1; n <= 4; n++ {
			if next(n).norm == "at" && next(n+1).in("a", "once") && next(n+2).norm == "time" {
				return i + n + 3, true
			}
			if next(n).pause() {
				break
			}
		}
		if t.norm == "little" && next(1).norm == "by" || t.norm == "bit" && next(1).norm == "by" {
			return i + 3, true
		}
	case "all":
		if next(1).norm == "at" && next(2).in("once", "one") {
			return i + 3, true
		}
		if next(1).norm == "in" && next(2).norm == "one" {
			return i + 3, true
		}
	case "slow":
		// "I cook it slow in butter": an adverb without its ending
		if i > 0 && !next(1).isNoun() && next(1).norm != "cooker" {
			for j := i - 1; j >= 0 && j >= i-3; j-- {
				if tokens[j].isVerb() {
					return i + 1, tokens[j].stem == "cook" || tokens[j].stem == "fri" || tokens[j].in("done", "did")
				}
			}
		}
	case "on", "over", "at", "low", "high", "medium":
		if t.norm == "on" && next(1).norm == "a" && next(2).in("damp", "wet") && (next(3).in("cloth", "towel") || next(4).norm == "towel") {
			return i + 4, true // what kept a bowl or a board still
		}
		if t.norm == "at" && next(1).norm == "once" && d.cooking(tokens, i) {
			return i + 2, true
		}
		if t.in("low", "high", "medium") {
			if next(1).norm == "heat" && i > 0 && !tokens[i-1].in("a", "on", "over", "the", "too") && d.cooking(tokens, i) {
				return i + 2, true
			}
			break
		}
		if t.norm == "over" && next(1).in("hot", "boiling", "simmering", "a") && (next(2).in("water") || next(3).in("water")) {
			return i + 3, true
		}
		if t.norm == "on" && next(1).in("its", "their") && next(2).norm == "own" && d.cooking(tokens, i) {
			return i + 3, true
		}
		if t.norm == "on" && next(1).in("low", "medium", "high", "full") && !next(2).isNoun() && clauseHasVerb(tokens, i) {
			return i + 2, true // the level of heat, without its noun
		}
		if t.in("on", "at") && (next(1).norm == "a" && next(2).in("slant", "diagonal", "angle") || next(1).norm == "an" && next(2).norm == "angle" || next(1).norm == "the" && next(2).in("diagonal", "slant", "bias")) && d.cooking(tokens, i) {
			return i + 3, true
		}
		if to, ok := d.heat(tokens, i); ok {
			return to, true
		}
		if t.norm == "on" && d.cookedOn(tokens, i) {
			return clauseEnd(tokens, i), true
		}
	case "hard":
		// "whisked it hard": the force, behind a verb of working food
		if i > 0 && (tokens[i-1].in("it", "them") || tokens[i-1].isVerb() || tokens[i-1].kind.Food()) && (next(1).pause() || next(1).in("for", "until", "till", "and")) {
			for j := i - 1; j >= 0 && j >= i-4; j-- {
				if tokens[j].isVerb() {
					switch tokens[j].stem {
					case "whisk", "beat", "boil", "knead", "shake", "shook", "squeez", "press", "stir", "scrub", "mix":
						return i + 1, true
					}
					return 0, false
				}
			}
		}
	case "through", "under", "between", "against", "off":
		if h := objectHead(tokens, i); t.norm == "through" && h >= 0 && h-i <= 4 && tokens[h].in("sieve", "strainer", "colander", "muslin", "ricer", "mouli") {
			return h + 1, true
		}
		if h := objectHead(tokens, i); t.norm == "under" && h >= 0 && tokens[h].in("board", "bowl") {
			break // "a damp cloth under my board": where, to keep it still
		}
		if h := objectHead(tokens, i); t.norm == "under" && h >= 0 && h-i <= 5 && tokens[h].in("tap") && clauseHasVerb(tokens, i) {
			return h + 1, !cooledBurn(tokens, i)
		}
		if h := objectHead(tokens, i); h >= 0 && h-i <= 5 && d.cooking(tokens, i) {
			if t.norm == "off" && tokens[h].norm == "heat" {
				return h + 1, true
			}
			if t.norm != "off" && (tokens[h].kind == lexicon.Tool && !tokens[h].in("oven", "grill", "hob") || tokens[h].kind == lexicon.Cloth || tokens[h].in("paper", "foil", "finger", "fingers", "palm", "hands", "palms", "teeth")) {
				return h + 1, true
			}
		}
	case "away":
		// "peeled away from me", "poured it away from you"
		if next(1).norm == "from" && (next(2).in("me", "you", "him", "her", "us", "myself", "yourself") || next(3).in("body", "face")) && (d.cooking(tokens, i) || i > 0 && tokens[i-1].in("going", "pointing", "facing", "tilted", "lid", "it", "them")) {
			return i + 3, true
		}
	case "from":
		if next(1).in("a", "the") && next(2).in("height") {
			return i + 3, true
		}
	case "like":
		// "fingers tucked under like a claw": the hold of the hand
		for n := 2; n <= 4; n++ {
			if next(n).norm == "claw" {
				return i + n + 1, true
			}
		}
		// "like Mum does", "like you showed me"
		if (next(1).kind == lexicon.Person || next(1).tag == "PRP" || next(1).tag == "PRP$") && d.cooking(tokens, i) {
			for n := 2; n <= 4; n++ {
				if next(n).in("does", "did", "do", "showed", "taught", "said", "told", "shows") {
					return i + n + 1, true
				}
			}
		}
	}
	if next(1).norm == "by" && next(2).norm == t.norm && t.word && t.norm != "side" {
		return i + 3, true // "bit by bit", "spoon by spoon"
	}
	// ", shaking it the whole time": a participle clause behind an action.
	if t.tag == "VBG" && i > 0 && d.accompanies(tokens, i) {
		return clauseEnd(tokens, i), true
	}
	if t.isAdv() && d.manner(t.norm) && d.cookedNear(tokens, i) && !next(1).in("enough", "because", "as") && !(i > 0 && tokens[i-1].in("how", "too", "so", "cook", "'d", "would")) || t.norm == "carefully" && d.cookedNear(tokens, i) && d.bySomebody(tokens, i) {
		if d.bySomebody(tokens, i) {
			return i + 1, true
		}
	}
	return 0, false
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

// clauseHasVerb reports whether a verb stands before token i in its clause.
func clauseHasVerb(tokens []token, i int) bool {
	for j := clauseStart(tokens, i); j < i; j++ {
		if tokens[j].isVerb() {
			return true
		}
	}
	return false
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

// gerundSubject reports whether the phrase in -ing at token i is the subject of
// the verb that follows, with no mark between.
func gerundSubject(tokens []token, i int) bool {
	for j := i + 1; j < len(tokens) && j < i+reach; j++ {
		t := &tokens[j]
		if t.pause() || t.in("i", "we", "he", "she", "it", "they", "you") {
			return false
		}
		if t.in("is", "was", "costs", "takes") || t.tag == "MD" {
			return true
		}
	}
	return false
}

// predicateless reports whether no verb stands before token i in its clause:
// "a project using a microscope" tells what the project is.
func predicateless(tokens []token, i int) bool {
	start := clauseStart(tokens, i)
	for start > 1 && tokens[start-1].norm == "," && (tokens[start-2].isNoun() || tokens[start-2].isAdj()) {
		start = clauseStart(tokens, start-1) // "in flour, egg and breadcrumbs": a list
	}
	for j := start; j < i; j++ {
		if tokens[j].isVerb() && !tokens[j].tagIn("VBN", "VBG") {
			return false
		}
		if tokens[j].isVerb() && j+1 < i {
			return false
		}
	}
	return true
}

// befalls reports whether a verb in -ing is something that happens to the food
// or to the writer, so that "without" it tells how a thing turned out, not how
// it was done.
func befalls(t, after *token) bool {
	if t.in("cracking", "breaking", "splitting", "burning", "tearing", "losing") {
		// "without breaking it" is a manner of doing, "without breaking" is not.
		return !(after.in("it", "them", "any", "all") || after.tagIn("DT", "PRP$"))
	}
	return t.in("sticking", "falling", "tasting", "looking", "feeling", "regretting", "being", "becoming", "getting", "going", "curdling", "sinking", "collapsing")
}

// implement reports whether a noun names something one works with.
func (d means) implement(t *token) bool {
	return t.kind == lexicon.Tool || t.kind == lexicon.Cloth || t.kind == lexicon.Body || t.in("hands", "hand", "fingers", "fingertips", "water", "paper", "thumb", "heel", "technique", "method", "grip", "hold", "movement", "strokes", "motion", "touch", "claw", "bottle", "care")
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

// portions matches "in three goes", "in batches", "in small amounts".
func (d means) portions(tokens []token, i int) (int, bool) {
	for j := i + 1; j < len(tokens) && j <= i+4; j++ {
		if tokens[j].in("goes", "batches", "batch", "stages", "portions", "additions", "amounts", "bits", "lots", "handfuls", "spoonfuls", "halves", "thirds", "turns", "circles", "strips", "chunks", "one", "changes", "layers", "steps", "rounds", "lumps", "go", "sticks", "triangles", "cubes", "rings", "wedges", "squares", "rows", "pairs") {
			if tokens[j].in("one", "go") && !(tokens[j].norm == "go" || j+1 < len(tokens) && tokens[j+1].norm == "go") {
				continue
			}
			if !d.cooking(tokens, i) && !(i > 1 && tokens[i-1].in("it", "them") && tokens[i-2].in("did", "do", "done")) {
				return 0, false
			}
			if tokens[j].norm == "one" {
				j++
			}
			return j + 1, true
		}
		if !(tokens[j].isAdj() || tokens[j].tag == "CD" || tokens[j].tag == "DT" || tokens[j].in("about", "two", "three", "four", "five", "the", "small", "little")) {
			break
		}
	}
	return 0, false
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

// heat matches the level of heat: "over a low heat", "on medium", "at 160 C".
func (d means) heat(tokens []token, i int) (int, bool) {
	for j := i + 1; j < len(tokens) && j <= i+5; j++ {
		t := &tokens[j]
		if t.in("heat", "flame", "simmer", "setting") {
			if j-i < 2 || j-i == 2 && tokens[i+1].tag == "DT" {
				return 0, false
			}
			if !d.cooking(tokens, i) {
				return 0, false
			}
			return j + 1, true
		}
		if tokens[i].norm == "at" && t.tag == "CD" && j+1 < len(tokens) && tokens[j+1].in("c", "°", "°c", "degrees", "f") && d.cooking(tokens, i) {
			return j + 2, true
		}
		if !(t.tag == "DT" || t.isAdj() || t.tag == "CD" || t.isAdv() || t.in("medium", "low", "high", "gentle", "only", "about")) {
			return 0, false
		}
	}
	return 0, false
}

// accompanies reports whether the participle at token i goes with an action:
// it stands behind a comma, or behind the object, and the clause before tells
// what somebody did.
func (d means) accompanies(tokens []token, i int) bool {
	prev := &tokens[i-1]
	adverb := prev.in("only", "just", "gently", "slowly", "constantly", "always", "still", "carefully")
	j := i - 1
	if adverb {
		j--
	}
	if j < 1 || tokens[j].norm != "," {
		return false
	}
	if tokens[i].card.works && !generic(tokens[i].stem) && i+1 < len(tokens) && tokens[i+1].in("all", "it", "them", "the", "as", "constantly", "continuously", "gently", "slowly") && clauseHasVerb(tokens, j) && !tokens[i].in("icing", "seasoning", "topping", "filling", "dressing", "frosting", "stuffing", "washing") {
		return true // ", whisking all the while": the participle itself is work
	}
	if tokens[i].in("including", "being", "meaning", "making", "leaving", "giving", "causing", "having", "something", "anything", "nothing", "everything", "according", "considering", "depending", "following", "looking", "sitting", "saying", "thinking", "wondering", "using", "regarding", "allowing", "resulting", "creating", "becoming", "reaching", "suggesting", "showing", "using", "washing", "icing", "seasoning", "topping", "filling", "pudding", "dressing", "frosting", "stuffing") {
		return false
	}
	if i+1 < len(tokens) && (tokens[i+1].norm == "and" || tokens[i+1].norm == "," || tokens[i+1].pause()) {
		return false
	}
	for k := clauseStart(tokens, j); k < j; k++ {
		if t := &tokens[k]; t.isVerb() && t.card.works && !generic(t.stem) {
			return true
		}
	}
	return false
}

// generic reports whether a verb of working with food is one of everyday life
// as well, so that it alone does not show cooking.
func generic(stem string) bool {
	switch stem {
	case "put", "took", "take", "left", "leav", "use", "place", "add", "drop", "turn", "had", "get", "reduc", "separ", "cut", "combin", "score", "rest", "spread", "set", "serv", "press", "incorpor", "shape", "layer", "stretch", "tear", "knock", "pit", "core", "cool", "juic":
		return true
	}
	return false
}

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
		if j == 0 && t.card.works && t.isNoun() && len(tokens) > 2 && !tokens[1].isVerb() && t.in("cut", "shook", "beat", "mix", "roll", "fry", "boil", "chop", "slice") {
			return true // "cut chicken in strips": a note without "I"
		}
		if t.card.works && (t.isVerb() || strings.HasSuffix(t.norm, "ed") || strings.HasSuffix(t.norm, "ing")) {
			return true
		}
	}
	return false
}

// bySomebody reports whether the verb that the adverb at token i belongs to is
// done by a person or told as a step: no food stands right before it as its
// subject ("the heat built slowly").
func (d means) bySomebody(tokens []token, i int) bool {
	start := clauseStart(tokens, i)
	for j := i - 1; j >= start; j-- {
		t := &tokens[j]
		if t.isVerb() || t.card.works && !t.isNoun() {
			if j == start {
				return true
			}
			s := &tokens[j-1]
			return s.human() || s.norm == "to" || s.in("and", "then", "n't", "not", "time") || s.isAdv() || s.tag == "MD" || s.isVerb()
		}
	}
	return i+1 < len(tokens) && tokens[i+1].isVerb()
}

// manner reports whether an adverb tells in what manner food was worked.
func (d means) manner(w string) bool {
	switch w {
	case "slowly", "gently", "gradually", "constantly", "thinly", "finely", "firmly", "vigorously", "continuously", "separately", "lightly", "roughly", "thoroughly", "briskly", "steadily", "quickly", "bit-by-bit", "coarsely", "individually", "evenly", "sideways", "softly", "tightly", "loosely", "neatly", "carefully":
		return true
	}
	return false
}
