package analyze

// within matches phrases in "in": portions, what shapes the method, an order,
// and the hold of the hand.
func (d means) within(tokens []token, i int) (int, bool) {
	next := func(n int) *token { return after(tokens, i, n) }
	if to, ok := d.portions(tokens, i); ok {
		return to, true
	}
	if h := objectHead(tokens, i); h >= 0 && h-i <= 4 && tokens[h].in("stream", "trickle", "spiral", "pattern", "motion", "movement", "figure", "figures", "loop", "loops", "swirl", "zigzag", "eight", "fashion", "manner") && (d.cooking(tokens, i) || d.deed(tokens, i)) {
		return clauseEnd(tokens, i), true // the path of the hand
	}
	if becameIn(tokens, i) {
		return 0, false
	}
	if d.withinTool(tokens, i) || d.workedIn(tokens, i) || d.bathed(tokens, i) || d.medium(tokens, i) || d.arranged(tokens, i) {
		return clauseEnd(tokens, i), true
	}
	if next(1).in("one", "the") && next(2).in("one", "same", "direction") && (next(2).norm == "direction" || next(3).norm == "direction") {
		return i + 3, d.cooking(tokens, i)
	}
	if h := wordBehind(tokens, i, "gloves", "goggles", "mitts"); h > 0 {
		return h + 1, d.cooking(tokens, i) || d.workedBefore(tokens, i, "deseed", "handl", "chop", "did")
	}
	if next(1).in("one", "1") && next(2).in("piece", "pull", "movement", "sweep") && clauseHasVerb(tokens, i) && !d.told(tokens, i) && (tokens[i-1].in("off", "out", "over", "up") || d.cooking(tokens, i)) {
		return i + 3, !clauseHas(tokens, clauseStart(tokens, i), "came", "comes", "slid", "landed", "fell", "turned", "is", "was", "were")
	}
	if next(1).norm == "the" && next(2).norm == "order" && (next(3).tagIn("PRP", "NNP") || next(3).norm == "that") {
		return clauseEnd(tokens, i+2), true // "in the order I'd use them"
	}
	if h := wordBehind(tokens, i, "hand"); h > 0 && tokens[h-1].in("left", "right", "other", "one", "each") {
		return h + 1, d.inHand(tokens, i) // "held the knife in my right hand"
	}
	if h := wordBehind(tokens, i, "rush", "hurry", "panic", "flap", "frenzy"); h > 0 {
		return h + 1, next(1).in("a", "such") && d.didWork(tokens, i)
	}
	if next(1).norm == "order" && next(2).norm == "of" || next(1).norm == "a" && next(2).in("line", "row") {
		return i + 3, d.cooking(tokens, i) || d.workedBefore(tokens, i, "laid", "lay", "set", "lined", "did", "put") // "in order of size"
	}
	return i + 3, next(1).norm == "a" && (next(2).in("claw", "bridge") || next(3).in("claw", "bridge"))
}

// didWork reports whether somebody made, did or cooked something in the clause
// before token i ("did this one in a rush"); "I was in a rush" tells no deed.
func (d means) didWork(tokens []token, i int) bool {
	for j := i - 1; j >= clauseStart(tokens, i); j-- {
		t := &tokens[j]
		if t.in("did", "done", "made", "make", "rolled", "packed", "wrote", "written") || t.card.works && t.isVerb() {
			return true
		}
		if t.isVerb() {
			return false
		}
	}
	return false
}

// becameIn reports whether "in" at token i belongs to a drop that was tried in
// water: "a drip of it went brittle in cold water", "a drop in cold water set".
func becameIn(tokens []token, i int) bool {
	if i > 1 && tokens[i-1].in("drop", "drip", "blob") && tokens[i-2].tag == "DT" && clauseStart(tokens, i) >= i-3 {
		return true
	}
	for j := i - 1; j >= max(0, i-3); j-- {
		if tokens[j].in("went", "goes", "turned") {
			return tokens[j+1].in("brittle", "into", "hard", "soft", "stringy", "cloudy", "solid")
		}
	}
	return false
}

// atATime matches how much went in at once: "a bit at a time", "one after the
// other", "little by little", "all at once", "all in one go".
func (d means) atATime(tokens []token, i int) (int, bool) {
	t, next := &tokens[i], func(n int) *token { return after(tokens, i, n) }
	if t.norm == "all" && next(1).norm == "the" && next(2).norm == "time" {
		return i + 3, d.keptUp(tokens, i)
	}
	if t.norm == "all" {
		return i + 3, next(1).norm == "at" && next(2).in("once", "one") || next(1).norm == "in" && next(2).norm == "one" && (next(3).in("way", "method") || !next(3).isNoun() && !d.told(tokens, i))
	}
	if t.norm == "one" && next(1).in("after", "by") && (next(2).norm == "one" || next(2).norm == "another" || next(2).norm == "the" && next(3).norm == "other") {
		return i + 4, true
	}
	for n := 1; n <= 4; n++ {
		if next(n).norm == "at" && next(n+1).in("a", "once", "one") && next(n+2).norm == "time" {
			return i + n + 3, true
		}
		if next(n).pause() {
			break
		}
	}
	return i + 3, t.in("little", "bit") && next(1).norm == "by" && next(2).norm == t.norm
}

// onOrOver matches the heat, the water and what the work lay on.
func (d means) onOrOver(tokens []token, i int) (int, bool) {
	t, next := &tokens[i], func(n int) *token { return after(tokens, i, n) }
	switch {
	case t.norm == "on" && next(1).norm == "a" && next(2).in("damp", "wet") && (next(3).in("cloth", "towel") || next(4).norm == "towel"):
		return i + 4, true // what kept a bowl or a board still
	case t.norm == "at" && next(1).norm == "once" && i > 2 && tokens[i-1].norm == "in" && (tokens[i-2].tag == "CD" || tokens[i-3].tag == "CD"):
		return 0, false // "put five in at once": too many
	case t.norm == "at" && next(1).norm == "once" && d.cooking(tokens, i):
		return i + 2, true
	case t.norm == "at" && (next(1).in("arm", "arms") && after(tokens, i, 2).in("'s", "'", "length") || next(1).in("armslength", "arms-length")):
		return min(i+4, len(tokens)), true
	case t.norm == "over" && next(1).in("hot", "boiling", "simmering", "a") && (next(2).in("water") || next(3).in("water")):
		return i + 3, true
	case t.norm == "on" && next(1).in("its", "their") && next(2).norm == "own" && d.cookedNear(tokens, i) && !d.tastes(tokens, i):
		return i + 3, true
	case t.norm == "on" && next(1).in("low", "medium", "high", "full") && d.switchedOn(tokens, i):
		return 0, false
	case t.norm == "on" && next(1).in("low", "medium", "high", "full") && (!next(2).isNoun() || next(2).in("power", "speed", "blast")) && clauseHasVerb(tokens, i):
		return i + 2, true // the level of heat, without its noun
	case t.norm != "over" && (next(1).norm == "a" && next(2).in("slant", "diagonal", "angle") || next(1).norm == "an" && next(2).norm == "angle" || next(1).norm == "the" && next(2).in("diagonal", "slant", "bias")) && d.cooking(tokens, i):
		return i + 3, true
	}
	if to, ok := d.heat(tokens, i); ok {
		return to, true
	}
	return clauseEnd(tokens, i), t.norm == "on" && d.cookedOn(tokens, i)
}

// switchedOn reports whether the nearest verb before token i only sets a machine
// or leaves it to itself: "set it on low", "put it on full", "left on low all day".
func (d means) switchedOn(tokens []token, i int) bool {
	for j := i - 1; j >= max(0, i-4); j-- {
		if t := &tokens[j]; t.isVerb() || t.in("put", "set", "left") {
			return t.in("put", "set", "left", "leave", "turned", "turn", "switched", "stuck", "whacked") && (j == i-1 || tokens[j+1].in("it", "them"))
		}
	}
	return false
}

// portions matches "in three goes", "in batches", "in small amounts".
func (d means) portions(tokens []token, i int) (int, bool) {
	for j := i + 1; j < len(tokens) && j <= i+4; j++ {
		if tokens[j].in("goes", "batches", "batch", "stages", "portions", "additions", "amounts", "bits", "lots", "handfuls", "spoonfuls", "halves", "quarters", "thirds", "turns", "circles", "strips", "chunks", "one", "changes", "layers", "steps", "rounds", "bursts", "strokes", "splashes", "dribbles", "drips", "pulses", "go", "sticks", "triangles", "cubes", "rings", "wedges", "squares", "rows", "pairs", "quantity", "quantities", "dollops", "doses") {
			if after(tokens, j, 1).in("strokes", "bursts", "goes", "blasts", "chunks") {
				j++
			}
			if tokens[j].in("one", "go") && !(tokens[j].norm == "go" || j+1 < len(tokens) && tokens[j+1].norm == "go") {
				continue
			}
			if after(tokens, j, 1).norm == "of" && after(tokens, j, 2).norm != "water" && after(tokens, j, 3).norm != "water" || !d.cooking(tokens, i) && !d.deed(tokens, i) && !d.tended(tokens, i) {
				return 0, false
			}
			if tokens[j].in("strips", "sticks", "chunks", "cubes", "wedges", "rings", "triangles", "squares", "halves") && d.cutInto(tokens, i) {
				return 0, false // what it was cut into, not how
			}
			if tokens[j].norm == "one" {
				j++
			}
			return j + 1, true
		}
		if !(tokens[j].isAdj() || tokens[j].tag == "CD" || tokens[j].tag == "DT" || tokens[j].in("second", "minute", "about", "two", "three", "four", "five", "the", "small", "little")) {
			break
		}
	}
	return 0, false
}

// cutInto reports whether the last verb before token i is one of cutting or of
// leaving whole.
func (d means) cutInto(tokens []token, i int) bool {
	for j := i - 1; j >= clauseStart(tokens, i); j-- {
		if tokens[j].isVerb() || tokens[j].card.works {
			return tokens[j].in("cut", "cutting", "left", "leave", "sliced", "chopped", "diced") || tokens[j].in("folded", "fold") && after(tokens, i, 1).in("triangles", "squares")
		}
	}
	return false
}

// heat matches the level of heat: "over a low heat", "on medium", "at 160 C".
func (d means) heat(tokens []token, i int) (int, bool) {
	for j := i + 1; j < len(tokens) && j <= i+5; j++ {
		t := &tokens[j]
		if t.in("heat", "flame", "simmer", "setting", "gas", "ring", "tremble", "bubble", "boil", "blip", "temperature") {
			if j-i < 2 || j-i == 2 && tokens[i+1].tag == "DT" {
				return 0, false
			}
			return j + 1, (d.cooking(tokens, i) || d.tended(tokens, i)) && !byItself(tokens, i)
		}
		if tokens[i].norm == "at" && t.tag == "CD" && j+1 < len(tokens) && tokens[j+1].in("c", "°", "°c", "degrees", "f") && d.cooking(tokens, i) {
			return j + 2, true
		}
		if !(t.tag == "DT" || t.isAdj() || t.tag == "CD" || t.isAdv() || t.in("medium", "low", "high", "gentle", "only", "about", "bare", "wee", "slow")) {
			return 0, false
		}
	}
	return 0, false
}

// tended reports whether somebody kept something as it was in the clause before
// token i: "kept the stock at a bare simmer".
func (d means) tended(tokens []token, i int) bool {
	for j := clauseStart(tokens, i); j < i; j++ {
		if tokens[j].in("kept", "keep", "held", "hold", "left", "leave", "let", "cooks", "cooked", "warmed", "heated") {
			return true
		}
	}
	return false
}

// tastes reports whether the clause before token i tells how the food tasted or
// was eaten.
func (d means) tastes(tokens []token, i int) bool {
	for j := clauseStart(tokens, i); j < i; j++ {
		if tokens[j].in("taste", "tastes", "tasted", "eat", "ate", "eaten", "eating") {
			return true
		}
	}
	return false
}

// byItself reports whether food is the subject of what happens in the clause
// before token i: "proteins tighten at high heat".
func byItself(tokens []token, i int) bool {
	for j := i - 1; j >= clauseStart(tokens, i); j-- {
		if tokens[j].tagIn("VBP", "VBZ") && !linkingVerb(tokens[j].norm) {
			s := subject(tokens, j)
			return s >= 0 && s < j && !tokens[s].human() && tokens[s].isNoun()
		}
	}
	return false
}
