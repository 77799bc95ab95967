package analyze

import "saywhy/lexicon"

// badDay reports whether a time is said to have been bad, and the next sentence opens with what
// happened ("Not my best day. The pastry cracked").
func badDay(tokens, next []token, j judgement) bool {
	if j.to >= len(tokens) || !pastime(tokens, j.to) || !denied(tokens, j.from) && !tokens[j.to-1].in("bad", "worst", "awful", "terrible", "horrible", "nightmare", "rubbish") {
		return false
	}
	for i := 1; i < len(next) && i < 4; i++ {
		if happened(next, i) {
			return true
		}
	}
	return false
}

// toldOfNamed reports whether a named piece of work is told of in the judgement's own
// sentence or the next.
func toldOfNamed(s, next *sentence, j judgement) bool {
	if j.named.shownBy(s, j.to) {
		return true
	}
	return next != nil && !movesOn(next.tokens) && !next.has(lexicon.Improvement) && j.named.goesOnIn(s, next, j)
}

// shownBy reports whether the sentence tells of the work behind token from.
func (w namedWork) shownBy(s *sentence, from int) bool {
	switch w {
	case tidying:
		return leftLying(s.tokens, from) || signFrom(s, from, lexicon.Hygiene, lexicon.Organisation)
	case cutting:
		return cutSo(s.tokens, from) || signFrom(s, from, lexicon.Safety) || from > 0 && deedFrom(s.tokens, from)
	}
	at := clauseEnd(s.tokens, from-1)
	if at+1 >= len(s.tokens) || s.tokens[at].in("and", "&", "then", "but", "when", "while") {
		return false
	}
	stop := min(clauseEnd(s.tokens, at+1)+reach/2, len(s.tokens))
	for i := at; i < stop; i++ {
		if happened(s.tokens, i) {
			return true
		}
	}
	for _, g := range s.signs {
		if g.told && g.from >= at && g.from < stop && (resultArea(g.area) || g.area == lexicon.Technique) {
			return true
		}
	}
	return w == byHand && s.tokens[at].pause() && (cutSo(s.tokens, at) || s.tokens[at+1].in("no", "not", "hardly", "barely"))
}

// goesOnIn reports whether the next sentence tells of the work.
func (w namedWork) goesOnIn(s, next *sentence, j judgement) bool {
	switch w {
	case tidying, cutting:
		return w.shownBy(next, 0)
	case byHand:
		for i := 1; i < len(next.tokens) && i < 5; i++ {
			if happened(next.tokens, i) {
				return true
			}
		}
		return saidOfThem(next.tokens) && (signFrom(next, 0, lexicon.Appearance, lexicon.Texture) || cutSo(next.tokens, 0) || mentions(next.tokens, "differ"))
	}
	for k := max(0, j.from-4); k < j.from; k++ {
		if s.tokens[k].kind.Food() && mentions(next.tokens, s.tokens[k].stem) {
			return true
		}
	}
	return saidOfThem(next.tokens)
}

// mentions reports whether one of the first words has the stem.
func mentions(tokens []token, stem string) bool {
	for i := 0; i < len(tokens) && i < reach; i++ {
		if tokens[i].stem == stem {
			return true
		}
	}
	return false
}

// saidOfThem reports whether a sentence opens with what was just spoken of.
func saidOfThem(tokens []token) bool {
	return len(tokens) > 1 && tokens[0].in("it", "they", "some", "most", "half", "one", "two", "three", "all")
}

// movesOn reports whether a sentence opens with the step that came after.
func movesOn(tokens []token) bool {
	return len(tokens) > 1 && (tokens[0].in("then", "next", "afterwards", "later", "meanwhile", "once") || tokens[0].in("when", "while", "after") && !tokens[1].in("it", "they"))
}

// deedFrom reports whether a deed is told behind token from.
func deedFrom(tokens []token, from int) bool {
	for i := from; i < len(tokens) && i < from+reach/2; i++ {
		if didThing(tokens, i) {
			return true
		}
	}
	return false
}

// signFrom reports whether a told sign of one of the areas stands behind token from.
func signFrom(s *sentence, from int, areas ...lexicon.Area) bool {
	for _, g := range s.signs {
		if g.told && g.from >= from && contains(areas, g.area) {
			return true
		}
	}
	return false
}

// leftLying reports whether it is told where something was put or left lying ("skins in
// the sink", "flour up the tiles", "a bowl for peelings", "everything put back").
func leftLying(tokens []token, from int) bool {
	for i := from + 1; i+1 < len(tokens) && i < from+reach; i++ {
		t := &tokens[i]
		if t.in("in", "on", "up", "over", "under", "down", "across", "round", "to") && (tokens[i-1].isNoun() || tokens[i-1].in("stuck", "set", "left", "dried", "burnt", "caked", "baked", "welded", "smeared", "splashed", "spilt")) {
			if h := objectHead(tokens, i); h >= 0 && (tokens[h].inert() || tokens[h].in("tiles", "floor", "walls", "sink", "cupboards", "everything")) {
				return true
			}
		}
		if t.in("away", "back") && i > from+1 && (tokens[i-1].isVerb() || tokens[i-1].isNoun()) || t.norm == "rubbish" && tokens[i-1].norm == "for" {
			return true
		}
	}
	return false
}

// cutSo reports whether it is told how the knife was held or how the pieces came out.
func cutSo(tokens []token, from int) bool {
	for i := from; i < len(tokens) && i < from+reach; i++ {
		if tokens[i].in("claw", "bridge", "grip", "fingers", "fingertips", "fingernails", "knuckles", "thumb", "tucked", "even", "evenly", "uneven", "same", "different", "size", "sizes", "sized", "length", "thick", "thickness", "thin",
			"cm", "centimetre", "centimetres", "mm", "cubes", "cube", "dice", "strips", "chunks", "matchsticks", "wedges", "slower", "faster", "slow", "quick", "blade", "tip") {
			return true
		}
	}
	return false
}

// cameApart reports whether the linking verb at token i tells what became of the food
// ("three of them came undone", "it fell to bits").
func cameApart(tokens []token, i int) bool {
	return tokens[i].in("came", "come", "went", "gone", "got") && i+1 < len(tokens) &&
		(tokens[i+1].in("undone", "apart", "open", "loose", "unstuck", "everywhere", "stuck", "squashed", "torn", "ripped", "broken", "away") ||
			tokens[i+1].in("to", "in") && i+2 < len(tokens) && tokens[i+2].in("pieces", "bits", "mush", "two", "half", "three"))
}

// tellsWhichOne reports whether a quality stands in the judgement's own subject only to tell which
// of several is meant ("the pink half was nicer").
func tellsWhichOne(tokens []token, j judgement, g sign) bool {
	switch j.topic {
	case "half", "ones", "one", "side", "end", "bit", "part":
		return g.to <= j.from && g.to < len(tokens) && (tokens[g.to].norm == j.topic || g.to > 0 && tokens[g.to-1].norm == j.topic)
	}
	return false
}

// ownSubject reports whether the ingredient at token i is what the rest of the clause speaks of
// ("but the peas were hard").
func ownSubject(tokens []token, i int) bool {
	for k := i + 1; k < len(tokens) && k <= i+3; k++ {
		if tokens[k].tagIn("VBD", "VBZ", "VBP", "MD") || linkingVerb(tokens[k].norm) {
			return true
		}
		if !tokens[k].isNoun() && !tokens[k].isAdv() {
			return false
		}
	}
	return false
}

// madeSo reports whether it is told by what deed the food came to be so ("was bad because I took
// it out too early").
func madeSo(tokens []token, j judgement) bool {
	at := j.to
	if at < len(tokens) && tokens[at].norm == "than" {
		for at < len(tokens) && at < j.to+5 && tokens[at].norm != "because" {
			at++ // "better than last time because I rested it"
		}
	}
	if at+2 >= len(tokens) || tokens[at].norm != "because" {
		return false
	}
	j.to = at
	if h := objectHead(tokens, at+1); tokens[at+1].norm == "of" && h >= 0 && tokens[h].kind == lexicon.Ingredient {
		return true // "because of the chocolate"
	}
	if tokens[j.to+1].in("it", "they") {
		for i := j.to + 2; i < len(tokens) && i <= j.to+4; i++ {
			if tokens[i].isVerb() && !linkingVerb(tokens[i].norm) && !tokens[i].in("had", "has", "have", "do", "does", "did", "could", "would", "can") {
				return true // "because it doesn't stick"
			}
		}
	}
	for i := j.to + 2; i < len(tokens) && i <= j.to+5; i++ {
		if tokens[i].in("forgot", "forget", "left") || didThing(tokens, i) && !tokens[i].in("made", "make") {
			return tokens[j.to+1].human() || tokens[i-1].human()
		}
	}
	return false
}

// packed reports whether what was put at token i went into something to be kept or carried.
func packed(tokens []token, i int) bool {
	for k := i + 1; k < len(tokens) && k < i+8; k++ {
		if !tokens[k].in("in", "into") {
			continue
		}
		for m := k + 1; m < len(tokens) && m <= k+4; m++ {
			if tokens[m].in("box", "lunchbox", "tub", "bag", "tin", "container", "fridge", "freezer", "oven", "foil", "tupperware", "microwave", "basket") {
				return true
			}
		}
	}
	return false
}
