package analyze

import "saywhy/lexicon"

// workedIn matches the vessel or the cloth in which food was broken, shaken,
// washed or wrung, where another would do as well: "cracked it in a mug",
// "bashed them in a sock", "shaken up in a jam jar". What food is cooked or put
// in is its place.
func (d means) workedIn(tokens []token, i int) bool {
	h := objectHead(tokens, i)
	if h < 0 || h-i > 4 || !(tokens[h].kind == lexicon.Tool || tokens[h].kind == lexicon.Cloth || tokens[h].in("sock", "tea", "milk", "vinegar", "brine", "sink", "pillowcase", "sleeve", "fist", "fists", "fingers", "hand", "hands", "palm", "palms")) || tokens[h].in("oven", "fridge", "freezer", "microwave") {
		return false
	}
	if tokens[h].in("hands", "hand", "palms", "palm", "fist", "fists", "fingers") && d.workedBefore(tokens, i, "roll", "shape", "rub", "press", "pat", "warm", "squeez", "squash", "form", "crumbl", "crush") {
		return true // "rolled them in my hands"
	}
	if tokens[i+1].in("the", "that", "this") {
		return false // the one that stood there
	}
	return d.workedBefore(tokens, i, "crack", "bash", "crush", "smash", "shake", "shook", "shaken", "wash", "rins", "swish", "swill", "squeez", "wring", "wrung", "dri", "spin", "spun", "grind", "pound", "weigh", "measur", "soak", "steep", "toss", "beat", "beaten")
}

// restedUnder matches a cover that dough or meat lay under for a time: "kept
// them warm under foil", "left it to rise under a damp towel".
func (d means) restedUnder(tokens []token, i, h int) bool {
	return tokens[i+1].norm != "the" && tokens[h].in("foil", "cloth", "towel", "tea-towel", "cling", "clingfilm", "lid", "plate") &&
		d.workedBefore(tokens, i, "rest", "prove", "rise", "relax", "kept", "keep", "cool", "sleep", "left", "leav", "sat")
}

// laidOn matches what food lay or was stood on while it was worked: "spread it
// on a tray", "stood it on its cut end", "grated on the fine side".
func (d means) laidOn(tokens []token, i, h int) bool {
	switch {
	case tokens[h].in("side", "end", "holes", "edge") && h-i > 1:
		return tokens[i+1].in("its", "their") || tokens[h-1].in("fine", "coarse", "big", "small", "rough", "flat", "cut", "thin", "thick", "large") && d.workedBefore(tokens, i, "grate", "slice", "cut", "shred", "stood", "stand", "lay", "laid", "sat", "zest")
	case tokens[h].in("edge", "rim", "side", "worktop", "counter", "table") && tokens[i+1].tag == "DT":
		return d.workedBefore(tokens, i, "crack", "tap", "bang", "knock", "bash")
	case tokens[h].in("clock", "phone", "watch", "stopwatch", "timer", "app"):
		return d.workedBefore(tokens, i, "time")
	case tokens[h].in("note", "whiteboard", "card", "list"):
		return h-i > 1 && tokens[i+1].in("a", "one") && d.workedBefore(tokens, i, "write", "wrote", "written", "jot")
	case tokens[h].in("apron", "sleeve", "trousers", "jeans", "leg", "legs", "shirt", "t-shirt", "jumper", "skirt", "top", "pinny", "hoodie", "towel", "cloth", "tea-towel", "tissue", "hem", "shorts", "overalls", "dungarees"):
		return d.workedBefore(tokens, i, "wipe", "wip", "dri", "dry", "blot", "rub", "clean", "polish")
	case tokens[h].in("stool", "lap", "chair", "floor"):
		return d.workedBefore(tokens, i, "did", "peel", "chop", "pod", "shell", "knead", "plate", "roll", "shape", "grind", "ground", "done")
	case tokens[h].in("griddle", "bakestone", "planc", "girdle", "tava", "tawa", "hotplate", "plancha", "comal", "spit", "rotisserie"):
		return d.workedBefore(tokens, i, "did", "done", "do", "cook", "made", "make", "bake", "grill", "toast", "fri", "roast", "char")
	case tokens[h].in("knuckle", "knuckles", "fist", "fists", "palm", "knee", "knees"):
		return d.workedBefore(tokens, i, "stretch", "pat", "shape", "roll", "press", "slap")
	}
	return tokens[i+1].in("a", "one", "two") && tokens[h].in("tray", "plate", "sheet", "board", "platter") && d.workedBefore(tokens, i, "spread", "pick", "sort", "laid", "cool")
}

// workedBefore reports whether a verb of one of the stems stands before token i
// in its clause.
func (d means) workedBefore(tokens []token, i int, stems ...string) bool {
	for j := i - 1; j >= max(0, i-9) && j >= clauseStart(tokens, i)-1; j-- {
		t := &tokens[j]
		if !t.isVerb() && !t.card.works {
			continue
		}
		for _, s := range stems {
			if t.stem == s || t.norm == s {
				return true
			}
		}
	}
	return false
}

// spread matches what food was drawn or laid over: "stretched it over my
// knuckles", "over a pan of simmering water".
func (d means) spread(tokens []token, i int) (int, bool) {
	h := objectHead(tokens, i)
	if tokens[i].norm != "over" || h < 0 || h-i > 4 {
		return 0, false
	}
	if tokens[h].in("pan", "saucepan", "pot", "bowl") && after(tokens, h, 1).norm == "of" {
		for n := 2; n <= 4; n++ {
			if after(tokens, h, n).norm == "water" {
				return h + n + 1, true
			}
		}
	}
	if tokens[h].in("sink", "newspaper", "bowl", "paper", "plate", "bin") {
		return h + 1, d.workedBefore(tokens, i, "grate", "gut", "zest", "peel", "crack", "drain", "strain", "sieve", "sift", "shell", "squeez", "flip", "turn", "fillet", "pluck", "did", "do", "done")
	}
	if !tokens[h].in("knuckle", "knuckles", "fist", "fists", "sieve", "colander", "strainer", "rack", "airer", "flame", "embers", "coals", "charcoal", "steam", "chair", "chairs", "handle", "pole", "rail", "line", "horse", "rope") {
		return 0, false
	}
	return h + 1, d.cooking(tokens, i) || d.hung(tokens, i)
}

// hung reports whether food was left to drain or hang in the clause of token i.
func (d means) hung(tokens []token, i int) bool {
	for j := clauseStart(tokens, i); j < i; j++ {
		if tokens[j].in("hang", "hung", "drain", "drained", "drip", "held", "hold", "draped") {
			return true
		}
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
	if h-i == 3 && tokens[h].in("pan", "wok", "skillet") && tokens[h-1].in("dry", "cold", "smoking", "lidded", "covered") && d.workedBefore(tokens, i, "burn", "burnt", "did", "done", "start", "put", "warm", "heat", "char", "toast") && d.bySomebody(tokens, i) {
		return true // "burnt a pinch in a dry pan"
	}
	if h < 0 || h-i > 4 || !d.cooking(tokens, i) && !d.stood(tokens, i) {
		return false
	}
	if tokens[h].kind == lexicon.Tool && after(tokens, h, 1).norm == "of" {
		for n := 2; n <= 4; n++ {
			if after(tokens, h, n).in("water", "ice") {
				return true // "in a pan of simmering water"
			}
		}
	}
	if !d.cooking(tokens, i) {
		return false
	}
	if tokens[h].in("water") && h-i > 1 && (tokens[h-1].isAdj() || tokens[h-1].in("simmering", "boiling", "running")) {
		return true
	}
	if tokens[h].in("pestle", "colander", "blender", "processor", "microwave", "steamer", "sieve", "wok", "mortar", "bag", "cloth", "jar", "mixer", "freezer-bag", "bain-marie", "muslin", "teatowel", "towel", "spinner", "towels", "ring", "circles", "film", "clingfilm", "paper", "greaseproof", "foil", "squares", "lines", "rows", "batches") {
		return true
	}
	return tokens[h].kind == lexicon.Tool && tokens[h].in("pan", "frying", "dish", "tin") && h-i >= 3 && tokens[h-1].isAdj()
}

// cookedOn matches "on kitchen roll", "on a rack", "on a damp cloth".
func (d means) cookedOn(tokens []token, i int) bool {
	h := objectHead(tokens, i)
	if h < 0 || h-i > 4 {
		return false
	}
	if d.laidOn(tokens, i, h) {
		return true
	}
	if !d.cooking(tokens, i) {
		return false
	}
	if h-i > 1 && (tokens[h-1].isAdj() || tokens[h-1].in("bare", "floured", "oiled", "damp")) && tokens[h].in("board", "plate", "worktop", "surface", "slab", "stone", "ring", "gas", "tray") {
		return true // which one is told: "on a cold plate"
	}
	if tokens[h].norm == "side" && tokens[i+1].in("its", "their") {
		return true // "cut it on its flat side"
	}
	return tokens[h].in("flame", "fire", "coals", "embers", "griddle", "newspaper", "slicer", "mandolin", "mandoline", "scales", "slab", "holes", "roll", "paper", "rack", "towel", "towels", "cloth", "bed", "trivet", "grater", "hook", "parchment", "hooks", "skewers", "setting", "pulse", "stand")
}

// past matches what food went through, under, between or off: "through a
// sieve", "under the tap", "off the heat".
func (d means) past(tokens []token, i int) (int, bool) {
	t, h := &tokens[i], objectHead(tokens, i)
	switch {
	case t.norm == "off" && h > 0 && tokens[h].in("spoon", "teaspoon"):
		return h + 1, d.cooking(tokens, i) && clauseHasVerb(tokens, i) && !tokens[i-1].in("dropped", "drops", "drop", "fell", "slid", "dripped")
	case t.norm == "off":
		return d.offHeat(tokens, i)
	case h < 0, i > 1 && tokens[i-1].tag == "VBG" && tokens[i-2].norm == "no":
		return 0, false // "no rinsing under the tap"
	case t.norm == "against" && tokens[h].in("ruler", "scale", "template", "picture", "edge"):
		return h + 1, d.workedBefore(tokens, i, "roll", "measur", "cut", "weigh", "check", "line", "trim")
	case tokens[h].norm == "grain" && h-i == 2:
		return h + 1, d.cooking(tokens, i) // "sliced across the grain"
	case t.norm == "under" && tokens[h].norm == "water" && tokens[i+1].in("running", "cold", "warm"):
		return h + 1, d.cooking(tokens, i) && !cooledBurn(tokens, i)
	case t.norm == "across", t.norm == "against" && d.told(tokens, i):
		return 0, false
	case t.norm == "through" && h-i <= 4 && tokens[h].in("sieve", "strainer", "colander", "muslin", "ricer", "mouli"):
		return h + 1, true
	case t.norm == "under" && tokens[h].norm == "bowl" && tokens[h-1].in("upturned", "upside-down", "inverted"):
		return h + 1, true
	case t.norm == "under" && h-i <= 4 && d.restedUnder(tokens, i, h):
		return h + 1, true
	case t.norm == "under" && tokens[h].in("board", "bowl", "lid", "ramekins", "ramekin", "tin", "tray", "dish"):
		return 0, false // "a damp cloth under my board": where, to keep it still
	case t.in("between", "under") && tokens[h].in("plates", "plate", "boards", "trays", "tins", "tin", "weight", "weights", "brick", "pan", "book", "books") && d.workedBefore(tokens, i, "press", "squash", "flatten", "sandwich", "squeez"):
		return h + 1, true // "pressed it between two plates"
	case t.norm == "between" && tokens[h].kind == lexicon.Tool && tokens[h].norm != "spoons":
		return 0, false // "shared it between the tins"
	case partOf(tokens, h) >= 0 && d.cooking(tokens, i):
		g := partOf(tokens, h)
		return g + 1, d.implement(&tokens[g]) // "under a circle of baking paper"
	case t.norm == "under" && h-i <= 5 && tokens[h].in("tap") && clauseHasVerb(tokens, i):
		return h + 1, !cooledBurn(tokens, i)
	case h-i > 5 || !d.cooking(tokens, i):
		return 0, false
	}
	return h + 1, tokens[h].kind == lexicon.Tool && !tokens[h].in("oven", "grill", "hob") || tokens[h].kind == lexicon.Cloth || tokens[h].in("paper", "foil", "film", "clingfilm", "finger", "fingers", "palm", "hands", "palms", "fist", "fists", "thumb")
}

// cooledBurn reports whether a hand was held under the tap, or the tap is only
// where something went.
func cooledBurn(tokens []token, i int) bool {
	for j := clauseStart(tokens, i); j < i; j++ {
		if tokens[j].kind == lexicon.Body || tokens[j].in("it", "went", "get", "got", "goes", "go", "mark", "burn", "blister", "ow", "ouch") {
			return true
		}
	}
	for j := i - 1; j >= 0 && j >= i-reach; j-- {
		if tokens[j].kind == lexicon.Body || tokens[j].in("mark", "burn", "blister", "scald") {
			return tokens[i-1].in("them", "it") // "my hands were warm … run them under the tap"
		}
	}
	return false
}

// offHeat matches what was done away from the heat: "stirred in off the heat",
// "the juice went in off the heat". To take a pan off it is a step.
func (d means) offHeat(tokens []token, i int) (int, bool) {
	at := i + 1
	if after(tokens, i, 1).norm == "the" {
		at++
	}
	if at >= len(tokens) || !tokens[at].in("heat", "flame", "gas", "hob", "ring", "boil") {
		return 0, false
	}
	for j := i - 1; j >= clauseStart(tokens, i); j-- {
		if !tokens[j].isVerb() && !tokens[j].card.works {
			continue
		}
		switch tokens[j].stem {
		case "took", "take", "taken", "pull", "lift", "move", "came", "come", "get", "got", "remov", "slid", "slide", "whip", "keep", "kept":
			return 0, false
		case "went", "go", "goe":
			return at + 1, tokens[i-1].in("in", "on")
		}
		return at + 1, d.cooking(tokens, i) || tokens[j].in("stand", "sit", "stood", "sat")
	}
	return at + 1, i > 0 && tokens[i-1].norm == "," && d.technique(tokens, max(0, i-reach), i)
}

// fromHand matches from where something was let fall: "from a height", "poured
// from a jug", "dropped from a spoon".
func (d means) fromHand(tokens []token, i int) (int, bool) {
	if after(tokens, i, 1).in("a", "the") && after(tokens, i, 2).norm == "height" {
		return i + 3, true
	}
	if after(tokens, i, 1).in("up", "high", "higher") && after(tokens, i, 2).in("high", "up") || after(tokens, i, 1).norm == "above" && after(tokens, i, 2).pause() {
		return i + 3, d.cooking(tokens, i)
	}
	h := objectHead(tokens, i)
	if h < 0 || h-i > 4 || !tokens[h].in("jug", "spoon", "teaspoon", "ladle", "bottle", "teapot", "fork", "whisk", "scoop", "cup", "mug", "saucer", "bag", "carton", "packet") {
		return 0, false
	}
	from := clauseStart(tokens, i)
	if i > 0 && from == i {
		from = max(0, i-6) // "while I poured, from a jug"
	}
	for j := from; j < i; j++ {
		switch tokens[j].stem {
		case "pip", "pipe", "squeez", "squirt":
			return h + 1, tokens[j].isVerb()
		case "pour", "slid", "slip", "drop", "drip", "drizzl", "trickl", "spoon", "tip":
			return h + 1, tokens[j].isVerb()
		}
	}
	return 0, false
}

// stood reports whether something was stood or left in the clause of token i.
func (d means) stood(tokens []token, i int) bool {
	for j := clauseStart(tokens, i); j < i; j++ {
		if tokens[j].in("sat", "sit", "stood", "stand", "standing", "left", "kept") {
			return true
		}
	}
	return false
}
