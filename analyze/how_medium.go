package analyze

import "saywhy/lexicon"

// wordBehind returns the first of the words within four tokens behind token i, with
// no mark, verb or other phrase between, or -1.
func wordBehind(tokens []token, i int, words ...string) int {
	for j := i + 1; j < len(tokens) && j <= i+4; j++ {
		t := &tokens[j]
		if t.in(words...) {
			return j
		}
		if t.pause() || t.joins() || t.tagIn("IN", "TO", "CC", "VBD", "MD") && !t.in("like", "about", "of", "'", "his", "her") {
			return -1
		}
	}
	return -1
}

// workBefore returns the nearest verb of doing before token i in its clause, or -1.
func workBefore(tokens []token, i int) int {
	for j := i - 1; j >= max(0, i-9) && j >= clauseStart(tokens, i); j-- {
		t := &tokens[j]
		if t.isVerb() && !linkingVerb(t.norm) && !t.in("em", "'em") || t.card.works && !t.isNoun() && !t.isAdj() && !t.kind.Food() || t.card.works && (j == 0 || tokens[j-1].pause()) {
			return j
		}
	}
	return -1
}

// medium matches what food was cooked, soaked or turned in: "poached in milk",
// "softened in a little butter", "tossed in brown sugar".
func (d means) medium(tokens []token, i int) bool {
	v := workBefore(tokens, i)
	if v < 0 || v > 0 && tokens[v-1].kind.Food() || !d.bySomebody(tokens, v+1) || sizzledThen(tokens, v, i) {
		return false
	}
	m := -1
	switch tokens[v].stem {
	case "cur", "salt":
		m = wordBehind(tokens, i, "salt", "sugar", "brine", "vinegar")
	case "poach", "stew", "brais", "simmer", "cook", "bake", "roast", "marinad", "marin", "brine", "pickl", "boil", "infus", "finish":
		m = wordBehind(tokens, i, "milk", "stock", "broth", "wine", "cider", "beer", "ale", "stout", "cream", "juice", "syrup", "vinegar", "brine", "buttermilk", "yoghurt", "yogurt", "marinade", "honey", "tea", "whey", "liquor", "oil", "butter", "ghee", "lard", "dripping", "fat", "goosefat", "dashi", "milkwater")
	case "soak", "steep", "plump", "rehydr", "hydrat", "bloom", "sponge":
		m = wordBehind(tokens, i, "water", "milk", "stock", "wine", "juice", "tea", "vinegar", "brine", "buttermilk", "rum", "brandy", "sherry", "whisky", "coffee", "cider", "syrup", "oil", "butter", "ghee", "cream", "orange", "lemonade", "beer")
	case "fri", "fry", "sweat", "soften", "brown", "toast", "sear", "saut", "saute", "temper", "crisp", "caramelis", "sizzl", "warm":
		m = wordBehind(tokens, i, "butter", "oil", "ghee", "lard", "dripping", "fat", "marg", "margarine", "schmaltz", "suet", "goosefat")
		if m > 0 && tokens[m].in("butter", "oil") && (m == i+1 || m == i+2 && tokens[i+1].in("the", "some", "olive", "vegetable", "sunflower")) {
			return false // what one fries in, as always
		}
	case "press", "roll", "toss", "coat", "dredg", "dust", "drag", "shake", "shook", "turn", "bread":
		m = wordBehind(tokens, i, "flour", "cornflour", "oatmeal", "oats", "crumbs", "breadcrumbs", "panko", "semolina", "polenta", "sugar", "cinnamon", "sesame", "seeds", "coconut", "cocoa", "spices", "spice", "salt", "paprika", "oil", "butter", "dukkah", "egg", "cornmeal", "nuts", "herbs", "za'atar")
	}
	return m > 0 && !after(tokens, m, 1).in("pan", "tin", "jug", "bottle", "tray", "dish", "bowl", "bag", "pot", "tub")
}

// sizzledThen reports whether the verb at token v opens its clause as part of
// what became of the food: "fried in butter they got a skin".
func sizzledThen(tokens []token, v, i int) bool {
	if v > 0 && (tokens[v-1].norm == "being" || tokens[v-1].norm == "enough") {
		return true
	}
	if v > 0 && !tokens[v-1].pause() {
		return false
	}
	for j := i + 1; j+1 < len(tokens) && j <= i+6 && !tokens[j].pause(); j++ {
		if tokens[j].in("they", "it") && tokens[j+1].isVerb() {
			return true
		}
	}
	return false
}

// coatedWith reports whether the food at token h is what somebody covered,
// cooked or tossed something with: "covered it with crumbs", "baked it with oil".
func (d means) coatedWith(tokens []token, h, verb int) bool {
	if verb < 0 || !(verb == 0 || d.bySomebody(tokens, verb+1)) || verb > 0 && linkingVerb(tokens[verb-1].norm) {
		return false
	}
	t := &tokens[h]
	switch tokens[verb].stem {
	case "cover", "sprinkl", "scatter", "hid", "disguis":
		return t.in("crumbs", "breadcrumbs", "flour", "sugar", "icing", "oil", "butter", "cocoa", "cream", "seeds", "salt", "water", "egg", "cheese", "semolina", "oats", "coconut")
	case "stuck", "stick", "glu", "glue":
		return t.in("egg", "water", "icing", "honey", "jam", "butter", "paste", "milk", "chocolate")
	case "bake", "roast", "toast", "toss", "fri", "fry", "grill", "drizzl", "baste", "mist", "spray", "smear", "slather", "paint", "wet", "damp", "moisten", "let", "soften":
		return t.in("oil", "butter", "ghee", "lard", "dripping", "fat", "milk", "water", "egg", "honey", "syrup", "marg", "spray")
	}
	return false
}

// roundThing matches what food was cut, drawn or wound round: "cut round a
// plate", "wrapped the dough round a rolling pin".
func (d means) roundThing(tokens []token, i int) (int, bool) {
	h := objectHead(tokens, i)
	if h < 0 || h-i > 4 || !(tokens[h].kind == lexicon.Tool || tokens[h].in("coin", "finger", "fingers", "thumb", "stick", "pencil", "circle", "cardboard", "paper")) {
		return 0, false
	}
	if tokens[h].in("plate", "saucer", "bowl", "lid", "cutter", "glass", "cup", "mug", "tin", "ramekin", "dish", "pan", "tray", "jar", "pot") && !tokens[i+1].in("a", "an", "my", "one") {
		return 0, false // "ran a knife round the tin": where
	}
	v := workBefore(tokens, i)
	if v < 0 || v > 0 && tokens[v-1].in("it", "they") || clauseHas(tokens, clauseStart(tokens, i), "task", "aim") {
		return 0, false
	}
	switch tokens[v].stem {
	case "cut", "trim", "trace", "drew", "draw", "score", "wrap", "wound", "wind", "twist", "roll", "mould", "shape", "coil", "curl", "twirl":
		return h + 1, true
	}
	return 0, false
}

// arranged matches the order in which food was laid or piped: "arranged it in
// stripes", "piped in a spiral". "They charred in stripes" is how they turned out.
func (d means) arranged(tokens []token, i int) bool {
	if wordBehind(tokens, i, "stripes", "stripe", "row", "rows", "line", "lines", "circle", "circles", "ring", "rings", "spiral", "spirals", "fan", "pattern", "pyramid", "tower", "lattice", "zigzag", "zigzags", "star", "ladder", "layer", "layers", "swirls", "order", "blobs", "waves", "dots") < 0 {
		return false
	}
	v := workBefore(tokens, i)
	if v < 0 {
		return false
	}
	switch tokens[v].stem {
	case "arrang", "laid", "lay", "pip", "pipe", "stack", "drizzl", "overlap", "fan", "line", "spread", "set", "place", "paint", "spoon", "brush", "score", "dot", "weav", "wove", "plait", "build", "built", "put", "drag", "draw", "drew":
		return v == 0 || tokens[v-1].human() && !tokens[v-1].in("it", "they") || tokens[v-1].in("and", "then", "to", "was", "were", "had", "'d", "have", ",") || tokens[v-1].isAdv()
	}
	return false
}
