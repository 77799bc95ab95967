package analyze

import "saywhy/lexicon"

// sensedByPlace returns what is told at token i of taste, tooth or eye by a word that
// is a quality only in this place; its to is 0 where there is none.
func (d sensing) sensedByPlace(tokens []token, i int, found []candidate) felt {
	switch {
	case heatFelt(tokens, i), shyTaste(tokens, i), behindIt(tokens, i), d.amongTastes(tokens, i, found), fragmentTart(tokens, i), tokens[i].in("deep", "deeper") && d.besideTaste(tokens, i+1):
		return felt{i + 1, lexicon.Tongue}
	case jellyish(tokens, i), popsAsEaten(tokens, i):
		return felt{i + 1, lexicon.Touch}
	case colourFruit(tokens, i), sunkMiddle(tokens, i), turnedSilver(tokens, i):
		return felt{i + 1, lexicon.Sight}
	}
	if to := noiseBitten(tokens, i); to > 0 {
		return felt{to, lexicon.Touch}
	}
	if to := d.ofColour(tokens, i); to > 0 {
		return felt{to, lexicon.Sight}
	}
	return felt{}
}

// heatFelt reports whether "heat" at token i is that of spice: it arrives by
// itself ("heat creeps up on you"), is measured ("hardly any heat", "a little
// heat arriving late") or comes of a spice ("the heat of the ginger"). Heat of
// a hob or an oven is turned up and down.
func heatFelt(tokens []token, i int) bool {
	if tokens[i].norm != "heat" {
		return false
	}
	for j := max(0, i-5); j < len(tokens) && j <= i+6; j++ {
		if t := &tokens[j]; t.kind == lexicon.Tool || t.kind == lexicon.Cloth || t.in("palm", "gloves", "turn", "turned", "turning", "off", "low", "lower", "lowest", "high", "higher", "medium", "fan", "hob", "oven", "escape", "full", "reduce", "reduced", "source", "sun") {
			return false
		}
	}
	if i+2 < len(tokens) && tokens[i+1].in("of", "from") {
		for j := i + 2; j < len(tokens) && j <= i+4; j++ {
			if flavouring(&tokens[j]) || tokens[j].in("chillies", "chilies", "chillis", "jalapeño", "jalapeno", "scotch", "radish") {
				return true
			}
		}
	}
	for j := i + 1; j < len(tokens) && j <= i+4 && !tokens[j].pause(); j++ {
		if arrives(tokens, j) || tokens[j].in("arriving", "builds", "built", "building", "lingers", "lingered", "sneaks", "creeping", "grows", "lasts", "afterwards") || tokens[j].in("comes", "came", "hits") && j+1 < len(tokens) && tokens[j+1].in("later", "late", "after", "at", "in", "through", "slowly", "right", "you") {
			return true
		}
	}
	if i == 0 || i+1 < len(tokens) && tokens[i+1].isNoun() {
		return i+2 < len(tokens) && i == 0 && plainBe(tokens[1].norm) && tokens[2].in("about", "just", "spot", "mild", "gentle", "perfect", "too")
	}
	if i >= 2 && tokens[i-1].norm == "of" && tokens[i-2].in("bit", "touch", "hint", "lot", "plenty", "kick") || tokens[i-1].in("any", "no") && i > 1 && !tokens[i-2].in("without", "with") {
		return i+1 == len(tokens) || tokens[i+1].pause() || tokens[i+1].in("to", "at", "but", "and", "though")
	}
	return tokens[i-1].in("gentle", "slow", "lovely") && i > 1 && tokens[i-2].norm == "a" && (i < 3 || !tokens[i-3].in("on", "over", "with", "at"))
}

// shyTaste reports whether a word said otherwise of people or sounds tells how
// strong a flavour was: "seasoning shy", "the vanilla was timid", "makes the
// cheese louder".
func shyTaste(tokens []token, i int) bool {
	if !tokens[i].in("shy", "timid", "quiet", "quieter", "loud", "louder", "muted", "subdued", "bashful", "brash", "bossy", "pushy", "polite", "bold", "bolder", "lost", "hidden", "faint", "fierce") || i == 0 {
		return false
	}
	flavour := func(t *token) bool {
		s, ok := senseOfNoun(t.norm)
		return ok && s == lexicon.Tongue || flavourNoun(t) && t.isNoun()
	}
	if flavour(&tokens[i-1]) {
		return !tokens[i].in("lost", "hidden", "faint") && (i+1 == len(tokens) || !tokens[i+1].isNoun())
	}
	v := predicateOf(tokens, i)
	if v <= 0 || i-v > 4 {
		return false
	}
	s := subject(tokens, v)
	return s >= 0 && flavour(&tokens[s])
}

// behindIt reports whether the flavouring at token i is told by where it comes
// in the taste: "with thyme behind", "tomato behind it", "clove at the back".
func behindIt(tokens []token, i int) bool {
	if !flavourNoun(&tokens[i]) || i+1 >= len(tokens) || i > 0 && tokens[i-1].norm == "of" || toldAsWork(tokens, i) {
		return false
	}
	next := &tokens[i+1]
	if next.norm == "behind" {
		return i+2 == len(tokens) || tokens[i+2].pause() || tokens[i+2].in("it", "that", "them", "everything")
	}
	return next.norm == "at" && i+3 < len(tokens) && tokens[i+2].in("the", "back") && tokens[i+3].in("back", "end", "finish", "of") && (i+4 == len(tokens) || !tokens[i+4].in("of") || i+6 < len(tokens) && tokens[i+6].in("throat", "mouth", "tongue"))
}

// amongTastes reports whether a flavouring stands bare in a list of tastes
// behind a verb of tasting: "tastes milky, vanilla and a bit sweet".
func (d sensing) amongTastes(tokens []token, i int, found []candidate) bool {
	if i < 2 || !flavourNoun(&tokens[i]) || tokens[i-1].norm != "," || i+1 < len(tokens) && !tokens[i+1].pause() && tokens[i+1].norm != "and" {
		return false
	}
	if s, ok := d.named(tokens, i-1); !ok || s != lexicon.Tongue {
		return false
	}
	for n, c := range found {
		if c.to == i-1 {
			return d.choose(tokens, found, n, "").sense == lexicon.Tongue
		}
	}
	return false
}

// fragmentTart reports whether "tart" at token i is a taste that the tagger took
// for the dish: in a list or a note ("Tart, then creamy", "tart underneath").
func fragmentTart(tokens []token, i int) bool {
	t := &tokens[i]
	if t.norm != "tart" {
		return false
	}
	if i > 0 {
		prev := &tokens[i-1]
		if !prev.pause() && !prev.in("then", "and", "but", "too", "bit", "so", "quite", "very", "really", "slightly", "nicely", "still", "pretty", "more", "was", "is", "are", "were", "tasted", "tastes") {
			return false
		}
	}
	return i+1 == len(tokens) || tokens[i+1].pause() || tokens[i+1].in("and", "but", "then", "underneath", "inside", "at", "again", "enough", "because", "cos", "from", "with")
}

// jellyish reports whether jelly is told of something else that was like it: "it
// was a bit jelly", "that jelly bit in the middle".
func jellyish(tokens []token, i int) bool {
	if tokens[i].norm != "jelly" || i == 0 {
		return false
	}
	if i+1 < len(tokens) && tokens[i+1].in("bit", "bits", "part", "layer") {
		return true
	}
	at := i - 1
	for at > 0 && tokens[at].in("a", "bit", "all", "still", "abit", "quite", "sort", "kind", "of", "too") {
		at--
	}
	if i+1 < len(tokens) && tokens[i+1].isNoun() || at == i-1 && !linkingVerb(tokens[at].norm) || tokens[i-1].tag == "DT" {
		return false
	}
	return linkingVerb(tokens[at].norm)
}

// popsAsEaten reports whether peas, berries or the like are told to pop, which
// is felt by the teeth.
func popsAsEaten(tokens []token, i int) bool {
	if !tokens[i].in("pop", "pops", "popped", "burst", "bursts") || i == 0 {
		return false
	}
	if tokens[i].in("burst", "bursts") && !(i+2 < len(tokens) && tokens[i+1].in("in", "when", "as")) {
		return false
	}
	if i+1 < len(tokens) && tokens[i+1].in("it", "them", "the", "out", "up", "off", "to") {
		return false
	}
	return tokens[i-1].in("peas", "sweetcorn", "corn", "berries", "blueberries", "grapes", "pomegranate", "kernels", "beans", "currants", "tomatoes", "cranberries", "edamame")
}

// noiseBitten returns where a phrase ends that begins at token i and tells what
// was heard of the food at the bite: "made a noise when you bit it", "make noise
// when you bite"; or -1.
func noiseBitten(tokens []token, i int) int {
	if !tokens[i].in("make", "makes", "made", "making", "gave", "gives") || subjectIsHuman(tokens, i) {
		return -1
	}
	for j := i + 1; j < len(tokens) && j <= i+4; j++ {
		t := &tokens[j]
		if !t.in("noise", "sound", "crack", "crackle", "crunch", "snap", "pop") {
			if t.tag != "DT" && !t.isAdj() && !t.isAdv() && !t.isNoun() {
				return -1
			}
			continue
		}
		if tokens[i].in("gave", "gives") && t.in("crack", "crunch", "snap") && j > i+1 {
			return j + 1 // "the crust gave a proper crack"
		}
		for k := j + 1; k < len(tokens) && k <= j+4; k++ {
			if tokens[k].in("bite", "bit", "bites", "eat", "ate", "chew", "snap", "snapped", "cut", "break", "broke", "crunch", "tap", "tapped") {
				return j + 1
			}
		}
	}
	return -1
}

// colourFruit reports whether orange, which the tagger took for the fruit, is a
// colour: behind a shade ("bonny orange"), at the head of a note about looks
// ("Look: orange with dots"), or before what is no part of the fruit ("beads of
// orange fat").
func colourFruit(tokens []token, i int) bool {
	if !tokens[i].in("orange", "peach", "apricot", "salmon", "plum") {
		return false
	}
	next := &token{}
	if i+1 < len(tokens) {
		next = &tokens[i+1]
	}
	if tokens[i].norm == "orange" && next.isNoun() && !ofTheFruit(next) && !(i > 0 && tokens[i-1].in("the", "of") && next.in("skin", "flesh", "top", "bits", "sauce")) {
		return true
	}
	if next.isNoun() || next.norm == "and" || next.norm == "-" {
		return false
	}
	if i > 0 && tokens[i-1].in("bright", "deep", "dark", "pale", "bonny", "vivid", "light", "burnt", "rich", "reddish", "brownish", "glowing", "sunset", "sunny", "dull", "neon") {
		return true
	}
	if s, ok := headingSense(tokens); ok && s == lexicon.Sight && i > 0 && tokens[i-1].in(":", "-", "--") {
		return true
	}
	return false
}

// ofTheFruit reports whether a noun behind orange is a piece of that fruit or
// made with it: "orange zest", "an orange cake". A soup or a carrot is orange.
func ofTheFruit(t *token) bool {
	switch t.kind {
	case lexicon.Person, lexicon.Tool, lexicon.Cloth:
		return true
	case lexicon.DishNoun:
		return !t.in("soup", "soups", "curry", "stew", "mash", "dal", "dhal", "scramble", "chips")
	case lexicon.Ingredient:
		return !t.in("carrot", "carrots", "cheese", "cheddar", "mango", "oil", "fat", "yolk", "yolks", "lentil", "lentils", "pepper", "peppers", "flesh", "skin", "breadcrumbs", "pumpkin", "salmon")
	}
	return t.in("juice", "zest", "peel", "rind", "pith", "segment", "segments", "slice", "slices", "half", "halves", "pips", "pieces", "wedge", "wedges", "curd", "extract", "essence", "oils", "blossom", "water", "icing", "glaze", "syrup", "marmalade", "jelly", "drizzle", "filling", "cream", "buttercream", "tree", "flavour", "flavor", "taste", "smell", "scent", "tang", "one", "ones", "liqueur", "batter", "dressing", "mixture", "mix", "bit")
}

// sunkMiddle reports whether the verb at token i tells that a part or the top
// went down: "the middle dipped".
func sunkMiddle(tokens []token, i int) bool {
	if !tokens[i].in("dipped", "dips", "domed", "drooped", "caved") || i == 0 || subjectIsHuman(tokens, i) {
		return false
	}
	s := subject(tokens, i)
	if s >= 0 && tokens[s].in("it", "they", "cake", "sponge", "loaf", "top") && tokens[i].norm != "drooped" {
		for j := i + 1; j < len(tokens) && j <= i+4 && (tokens[j].isAdv() || tokens[j].in("in", "a", "bit", "the", "middle", "centre", "center")); j++ {
			if tokens[j].in("middle", "centre", "center") {
				return true // "it dipped slightly in the centre"
			}
		}
	}
	return s >= 0 && tokens[s].in("middle", "centre", "center", "top", "lid", "edge", "edges", "sides") && (i+1 == len(tokens) || tokens[i+1].pause() || tokens[i+1].in("in", "a", "because", "cos", "when", "as", "and", "but", "down"))
}

// turnedSilver reports whether a metal at token i is the colour something turned:
// "blistered silver and black", "went silver".
func turnedSilver(tokens []token, i int) bool {
	if tokens[i].norm != "silver" || i == 0 {
		return false
	}
	if i+1 < len(tokens) && tokens[i+1].in("foil", "tray", "paper", "spoon", "balls", "dish", "bowl", "plate", "platter") {
		return false
	}
	return tokens[i-1].in("blistered", "went", "turned", "is", "was", "and", "shiny") || i+1 < len(tokens) && tokens[i+1].in("skin", "skins", "scales", "and")
}

// ofColour returns where a likeness of colour ends that begins at token i and
// stands by itself or behind "to", "at" or "in": "colour of sand, breaks with a
// snap", "I stopped at the colour of a new penny"; or -1. "The colour of the
// sauce" is a subject.
func (d sensing) ofColour(tokens []token, i int) int {
	if !tokens[i].in("colour", "color", "shade") || i+2 >= len(tokens) || tokens[i+1].norm != "of" || tokens[i+2].in("the", "it", "my", "them", "this", "each", "our", "your", "food") {
		return -1
	}
	at := i - 1
	if at >= 0 && (tokens[at].isAdj() || tokens[at].tag == "VBG" || d.judges(&tokens[at])) {
		at-- // "an alarming colour of"
	}
	if at >= 0 && tokens[at].tag == "DT" {
		at--
	}
	for at > 0 && tokens[at].isAdv() {
		at--
	}
	if at >= 0 && !tokens[at].pause() && !linkingVerb(tokens[at].norm) && !tokens[at].in("to", "at", "until", "till", "exactly", "about", "reached", "like", "went", "turned", "got") {
		return -1
	}
	end := likenessEnd(tokens, i+2)
	if end <= i+2 || end < len(tokens) && (tokens[end].isVerbForm() || tokens[end].tag == "MD") {
		return -1
	}
	return end
}
