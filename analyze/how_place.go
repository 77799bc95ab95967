package analyze

import "saywhy/lexicon"

// workedIn matches the vessel or the cloth in which food was broken, shaken,
// washed or wrung, where another would do as well: "cracked it in a mug",
// "bashed them in a sock", "shaken up in a jam jar". What food is cooked or put
// in is its place.
func (d means) workedIn(tokens []token, i int) bool {
	h := objectHead(tokens, i)
	if h < 0 || h-i > 4 || !(tokens[h].kind == lexicon.Tool || tokens[h].kind == lexicon.Cloth || tokens[h].in("sock", "tea", "milk", "vinegar", "brine", "bag", "bags", "sink", "bucket", "jar", "jug", "cup", "mug", "tub", "saucer", "pillowcase", "sleeve", "fist", "hands", "palm")) || tokens[h].in("oven", "fridge", "freezer", "microwave") {
		return false
	}
	if tokens[h].in("hands", "palms", "palm", "fist", "fists") && d.workedBefore(tokens, i, "roll", "shape", "rub", "press", "pat", "warm", "squeez", "squash", "form", "crumbl", "crush") {
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
