package analyze

import (
	"strings"

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
	if after(tokens, i, 1).in("to", "more", "less", "too", "extra", "enough") || i > 0 && tokens[i-1].in("was", "be", "is", "are", "were", "get", "got") {
		return 0, false
	}
	if start := clauseStart(tokens, i); start > 0 && tokens[start-1].in("because", "cos", "since") && !d.worksBefore(tokens, start-1) {
		return 0, false // "it boiled over because I used the little pan": what was amiss
	}
	at := i
	for after(tokens, at, 1).in("only", "just", "both") {
		at++ // "used only my fingertips"
	}
	h := objectHead(tokens, at)
	if d.unlistedTool(tokens, at, h) {
		return clauseEnd(tokens, i), true
	}
	if after(tokens, at, 1).in("a", "the") && after(tokens, at, 2).in("new", "clean", "different", "fresh", "separate", "another") || after(tokens, at, 1).in("other", "another", "separate", "different", "clean") {
		return 0, false // which one is told, to keep food apart: a step
	}
	if after(tokens, at, 1).norm == "finger" && after(tokens, at, 2).in("tips", "tip") {
		return at + 3, true
	}
	if h >= 0 && h-at <= 4 {
		if g := partOf(tokens, h); g >= 0 && d.implement(&tokens[g]) && !tokens[g].in("water", "paper") {
			return g + 1, true // "used the back of a spoon"
		}
	}
	return clauseEnd(tokens, i), h >= 0 && h-i <= 6 && d.implement(&tokens[h]) && !tokens[h].in("oven", "hob", "fridge", "freezer", "grill") && d.toWorkWith(tokens, h)
}

// worksBefore reports whether somebody works in the clause that ends before
// token i.
func (d means) worksBefore(tokens []token, i int) bool {
	for j := clauseStart(tokens, i); j < i; j++ {
		if tokens[j].human() && !tokens[j].in("it", "they") {
			return true
		}
	}
	return i == 0
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
	case n.norm == "bigger", n.norm == "smaller":
		return true // "used a plate bigger than the pan"
	case n.in("to", "so", "as", "because", "rather", "instead", "when", "while", "not"), n.pause():
		return true
	case n.in("under", "underneath", "beneath", "round", "around"):
		return true // "used a damp cloth under the board to hold it still"
	case n.norm == "for":
		return !after(tokens, h, 2).in("ages", "once") && !after(tokens, h, 3).in("first", "last", "second")
	case n.norm == "and":
		return h+2 < len(tokens) && tokens[h+2].tagIn("VBD", "VB", "VBP") && !linkingVerb(tokens[h+2].norm)
	}
	return false
}

// implement reports whether a noun names something one works with.
func (d means) implement(t *token) bool {
	return t.kind == lexicon.Tool || t.kind == lexicon.Cloth || t.kind == lexicon.Body && !t.in("tummy", "belly", "stomach", "throat", "head", "face", "hair", "mouth", "nose", "tongue", "eyes", "eye", "leg", "legs", "feet", "foot") || t.in("hands", "hand", "fists", "fist", "fingers", "fingertips", "water", "paper", "thumb", "heel", "technique", "method", "grip", "hold", "movement", "strokes", "motion", "touch", "claw", "care", "cardboard")
}

// with decides whether "with" at token i tells by what means: its noun is a
// tool, a hand or a cloth, or what a technique was done with ("brushed with
// egg"). Company ("with Dad"), parts ("soup with leeks") and what a dish was
// served with are not.
func (d means) with(tokens []token, i int) (int, bool) {
	at := i
	for at+1 < len(tokens) && tokens[at+1].in("just", "only", "her", "'") {
		at++ // "with just the tips of my fingers"; "her" is often taken for an object
	}
	if after(tokens, at, 1).in("about", "around", "roughly") && after(tokens, at, 2).tagIn("CD", "JJ") {
		at++ // "with about ten strokes"
	}
	if d.stayedPut(tokens, i) {
		return 0, false
	}
	if to, ok := d.smallFire(tokens, i); ok {
		return to, true
	}
	if to, ok := d.withLid(tokens, i); ok {
		return to, true
	}
	if to, ok := d.withManner(tokens, i); ok {
		return to, true
	}
	if f := wordBehind(tokens, at, "finger"); f > 0 && after(tokens, f, 1).in("tips", "tip", "ends", "nails", "nail") {
		return f + 2, i > 0 && clauseHasVerb(tokens, i)
	}
	h := d.toolHead(tokens, at)
	if i == 0 && h >= 0 && h <= 4 && d.implement(&tokens[h]) && after(tokens, h, 1).human() && after(tokens, h, 2).isVerb() {
		return h + 1, true // "with the spatula I pull the side in"
	}
	if h < 0 && at+3 < len(tokens) && tokens[at+3].norm == "one" && tokens[at+2].in("electric", "sharp", "metal", "wooden", "big", "clean") {
		h = at + 3 // "with the electric one"
		return h + 1, i > 0 && d.cooking(tokens, i)
	}
	if h < 0 || h-i > 6 || i == 0 {
		return 0, false
	}
	if h > at+1 && tokens[h].in("tip", "end", "point", "handle", "edge", "back") && tokens[h-1].kind == lexicon.Tool && clauseHasVerb(tokens, i) && !holds(tokens, i, h) {
		return h + 1, !d.otherWith(tokens, i, h-1, verbBefore(tokens, clauseStart(tokens, i), i)) // "with a knife tip"
	}
	if tokens[at+1].kind == lexicon.Person || tokens[at+1].tag == "PRP" || at > i && tokens[at].norm == "her" && !d.implement(&tokens[h]) {
		return 0, false
	}
	start := clauseStart(tokens, i)
	verb := verbBefore(tokens, start, i)
	if d.otherWith(tokens, i, h, verb) {
		return 0, false
	}
	if g := partOf(tokens, h); g >= 0 && (d.implement(&tokens[g]) || tokens[g].in("paper", "water", "milk", "egg", "salt", "oil", "foil") || tokens[g].kind.Food() && verb >= 0 && d.treats(tokens[verb].stem)) && verb >= 0 {
		return g + 1, true
	}
	if tokens[h].kind.Food() && d.coatedWith(tokens, h, verb) {
		return h + 1, true
	}
	if verb >= 0 && tokens[verb].in("equipped", "connected", "associated", "concerned", "enter", "avoid", "filled", "provided", "faced", "agree", "deal") || verb >= 0 && tokens[verb].norm == "covered" && tokens[h].kind != lexicon.Cloth && !tokens[h].in("paper", "foil", "film", "clingfilm", "lid", "plate", "cling") || verb < 0 && len(tokens) > 14 {
		return 0, false // what a thing has or has to do with; only a note leaves out its verb
	}
	if verb >= 0 && (tokens[h].kind == lexicon.NoKind || tokens[h].kind == lexicon.Other) && fastens(&tokens[verb]) {
		return h + 1, true // "ticked each with a crayon"
	}
	if d.implement(&tokens[h]) && (verb >= 0 || start == 0 || tokens[i-1].norm == "," && i > 2 && (d.technique(tokens, clauseStart(tokens, i-1), i) || d.deed(tokens, i-1)) || tokens[i-1].isNoun() || tokens[i-1].tag == "PRP" || tokens[i-1].isAdv()) {
		return max(h+1, i+2), true
	}
	if verb >= 0 && d.unlistedInstrument(tokens, at, h, verb) {
		return h + 1, true
	}
	return h + 1, verb >= 0 && tokens[h].kind.Food() && (d.treats(tokens[verb].stem) && !tokens[verb].isAdj() || tokens[i-1].norm == "blind")
}

// otherWith reports whether "with" at token i, its noun at h and the verb before
// it (or -1) tells something else than means: company, a part, what was eaten
// with it, or how tender it was.
func (d means) otherWith(tokens []token, i, h, verb int) bool {
	start, tool, prev := clauseStart(tokens, i), d.implement(&tokens[h]), &tokens[i-1]
	switch {
	case start > 0 && tokens[start-1].norm == "when" && tried(tokens, start, i):
		return true // "it fell apart when I pushed it with a fork": how tender
	case h > 0 && tokens[h].in("stick", "sticks", "leaf", "pod") && tokens[h-1].kind.Food():
		return true // "a cinnamon stick" is an ingredient
	case prev.norm == "together" && verb >= 0 && (tool || tokens[verb].in("stuck", "stick", "glued", "held", "hold", "sealed", "bound", "pressed", "fastened", "tied", "pinned") && tokens[h].kind != lexicon.Person && tokens[h].tag != "PRP"):
		return false // "brought it together with a knife"
	case prev.in("happy", "pleased", "along", "together", "fun", "wrong", "greedy", "careful"), noWork(tokens, i, verb):
		return true
	case holds(tokens, i, h):
		return true
	case verb > start && tool && gaveWay(tokens, verb):
		return true
	case verb < 0:
		return prev.norm == "up" && !tokens[h].in("water", "cloth", "mop", "sponge")
	case prev.norm == "up" && tokens[verb].in("come", "came", "end", "ended", "ends", "keep", "kept", "catch", "caught", "put", "fed", "went", "was", "met"):
		return true // "ended up with"
	case verb > start+1 && tokens[verb-1].norm == "to" && tokens[verb-2].norm == "enough":
		return true // "tender enough to cut with a fork"
	case tokens[h].norm == "water" && tokens[verb].in("blended", "blend", "mixed", "combined", "blitzed", "whizzed"):
		return true // what went in
	case verb > start && tokens[verb-1].in("could", "can") && tokens[verb].in("cut", "eat", "scoop", "break"):
		return true // "you could cut it with a spoon": how tender it was
	case verb > start && tokens[verb-1].in("like", "liked", "love", "hate", "enjoy", "enjoyed", "mind"):
		return true
	case tokens[verb].in("did", "made", "make", "was", "were", "left"):
		return !tool
	case tokens[verb].norm == "went":
		return !tokens[verb+1].in("at", "over", "through", "round", "around") || !tool
	case tokens[verb].norm == "tasted":
		return !tokens[h].in("spoon", "spoons", "teaspoon", "finger")
	}
	return tokens[verb].in("had", "has", "have", "serve", "served", "eat", "eating", "ate", "go", "is", "are", "came", "help", "helped", "started", "happy", "pleased", "looked", "began", "waited", "sat", "sits", "sit", "sitting", "stands")
}

// gaveWay reports whether the verb at token v tells of the food what it let be
// done to it: "it pulled apart with a fork", "the loaf sliced cleanly with a
// bread knife". That tells how tender it was.
func gaveWay(tokens []token, v int) bool {
	if !tokens[v].tagIn("VBD", "VBN", "VBZ", "VBP") || !tokens[v].in("sliced", "slices", "pulled", "pulls", "squashed", "squashes", "cut", "cuts", "flaked", "flakes", "broke", "breaks", "fell", "falls", "crushed", "mashed", "crumbled", "shredded", "tore", "came", "comes", "split", "parted", "scooped", "lifted", "peeled") {
		return false
	}
	s := &tokens[v-1]
	if s.norm == "be" {
		return v > 1 && tokens[v-2].in("could", "can") // "could be pulled apart with a fork"
	}
	return s.in("it", "they", "which", "that") || s.tagIn("NN", "NNS", "JJ") && !s.human() && v > 1 && tokens[v-2].tagIn("DT", "PRP$", "NN", "JJ")
}

// holds reports whether "with" at token i tells what a vessel holds or has on
// it: "a tin with paper in it", "a jug with water", "the pan with the lid".
func holds(tokens []token, i, h int) bool {
	if tokens[i-1].kind != lexicon.Tool {
		return false
	}
	if tokens[h].in("handle", "handles") {
		return true // "the knife with the red handle"
	}
	n := after(tokens, h, 1)
	return n.norm == "in" && (after(tokens, h, 2).in("it", "them") || after(tokens, h, 2).pause()) || n.norm == "halfway"
}

// smallFire matches the heat that something was cooked with: "with small
// fire", "with a low flame".
func (d means) smallFire(tokens []token, i int) (int, bool) {
	for j := i + 2; j < len(tokens) && j <= i+4; j++ {
		if tokens[j].in("fire", "flame", "heat", "gas") {
			return j + 1, tokens[j-1].in("small", "low", "high", "big", "gentle", "little", "medium", "slow", "strong") && d.cooking(tokens, i)
		}
	}
	return 0, false
}

// withLid matches the lid or guard that was left on or off: "with lid off".
func (d means) withLid(tokens []token, i int) (int, bool) {
	at := i + 1
	for at < len(tokens) && at < i+4 && (tokens[at].tagIn("DT", "PRP$") || tokens[at].in("'", "tight", "loose", "glass", "its")) {
		at++
	}
	if i == 0 || at >= len(tokens) || !tokens[at].in("lid", "guard") {
		return 0, false
	}
	n := at + 1
	for after(tokens, n, 0).in("half", "slightly", "just", "still", "always") {
		n++
	}
	return n + 1, after(tokens, n, 0).in("on", "off", "ajar", "tilted", "cracked", "open", "down")
}

// stayedPut reports whether the clause before token i tells only where food
// stood: "it stayed on the cooker with the lid on".
func (d means) stayedPut(tokens []token, i int) bool {
	for j := i - 1; j >= clauseStart(tokens, i); j-- {
		if tokens[j].isVerb() {
			return tokens[j].in("stayed", "was", "is", "stood") && j > 0 && tokens[j-1].in("it", "they")
		}
	}
	return false
}

// fastens reports whether a verb tells of mending, marking or timing, so that
// whatever follows "with" is what it was done with.
func fastens(t *token) bool {
	switch t.stem {
	case "patch", "seal", "thicken", "tick", "time", "stuck", "stick", "prop", "label", "practis":
		return t.isVerb()
	}
	return false
}

// toolHead is objectHead, but for a tool that a time or an order follows: "with
// hand ten minutes", "with soapy water afterwards".
func (d means) toolHead(tokens []token, i int) int {
	h := objectHead(tokens, i)
	for j := i + 1; j < h; j++ {
		if d.implement(&tokens[j]) && (tokens[j+1].kind == lexicon.Time || after(tokens, j, 2).kind == lexicon.Time || tokens[j+1].in("afterwards", "first", "last", "today")) {
			return j
		}
	}
	for j := i + 2; j < len(tokens)-1 && j <= i+3 && j != h; j++ {
		if tokens[j].kind == lexicon.Tool && tokens[j-1].tagIn("DT", "PRP$") && tokens[j+1].tagIn("DT", "RB") {
			return j // "with a ladle every so often"
		}
	}
	if h >= 0 && tokens[h].norm == "afterwards" && h > i+1 {
		return h - 1
	}
	return h
}

// verbBefore returns the last verb from start up to token i, a noted step
// without its subject among them ("press with finger"), or -1.
func verbBefore(tokens []token, start, i int) int {
	for j := i - 1; j >= start; j-- {
		if tokens[j].isVerb() || tokens[j].card.works && j == i-1 && (j == 0 || tokens[j-1].pause()) || tokens[j].card.works && tokens[j].isAdj() && strings.HasSuffix(tokens[j].norm, "ed") {
			return j
		}
	}
	return -1
}

// partOf returns the noun whose part or amount the noun at token h is ("the back
// of a spoon": spoon), or -1.
func partOf(tokens []token, h int) int {
	if after(tokens, h, 1).norm != "of" || !tokens[h].in("back", "corner", "strips", "scraps", "scrap", "end", "edge", "tip", "tips", "just", "heel", "side", "palm", "tent", "cover", "blanket", "lid", "aid", "help", "point", "bottom", "top", "handle", "flat", "circle", "piece", "sheet", "sheets", "layers", "mug", "pair", "layer", "dab", "little", "bit", "drop", "splash", "spoonful", "touch") {
		return -1
	}
	g := objectHead(tokens, h+1)
	if g >= 0 && tokens[g].in("bit", "piece", "sheet") && after(tokens, g, 1).norm == "of" {
		g = objectHead(tokens, g+1) // "the corner of a bit of kitchen roll"
	}
	return g
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
	case "brush", "glaze", "dust", "rub", "coat", "grease", "seal", "thicken", "season", "line", "marinad", "sharpen", "sweeten", "loosen", "flavour", "dri", "clean", "roll", "fill", "cover", "wash", "wipe", "scrub", "patch", "squeez", "bind", "bound", "deglaz", "thin", "slacken", "scrape", "top", "melt":
		return true
	}
	return false
}

// withNone matches the tool that was done without, told by itself: ", no machine".
func (d means) withNone(tokens []token, i int) bool {
	h := i + 1
	for h+1 < len(tokens) && h < i+3 && (tokens[h+1].kind == lexicon.Tool && tokens[h].kind != lexicon.Time || tokens[h].isAdj()) {
		h++ // "no potato ricer"
	}
	t, n := after(tokens, h, 0), after(tokens, h, 1)
	if !(t.in("stirring", "churning", "churn", "kneading", "knead", "peeking", "rolling") || t.kind == lexicon.Tool && !appliance(t) && !packOrPlate(t)) {
		return false
	}
	return i > 0 && (n.norm == "" || n.pause() || n.joins() || n.in("and", "so", "just")) &&
		(tokens[i-1].pause() || clauseHasVerb(tokens, i) && !tokens[i-1].isVerb())
}

// appliance reports whether a tool is what gives heat or cold: it is there or
// not, and nobody chooses another way of working by it.
func appliance(t *token) bool {
	return t.in("oven", "ovens", "hob", "hobs", "fridge", "freezer", "grill", "cooker", "stove", "stovetop", "barbecue", "burner", "broiler", "range", "kettle")
}

// packOrPlate reports whether a tool is what food comes, is kept or is served in.
func packOrPlate(t *token) bool {
	return t.in("jar", "can", "tub", "carton", "packet", "bag", "bottle", "container", "label", "sticker", "plate", "plates", "mug", "cup", "glass", "saucer", "cutlery", "crockery", "equipment", "handle", "handles", "display")
}
