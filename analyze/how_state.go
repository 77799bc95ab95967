package analyze

import "saywhy/lexicon"

// state matches how the food, the lid or the cook stood while the work went on:
// "lid ajar", "uncovered", "skin side down", "upside down", "stood well back".
func (d means) state(tokens []token, i int) (int, bool) {
	t, next := &tokens[i], func(n int) *token { return after(tokens, i, n) }
	switch t.norm {
	case "covered", "uncovered":
		if i > 1 && tokens[i-1].in("it", "them") && tokens[i-2].in("cooked", "cook", "baked", "bake", "simmered", "simmer", "roasted", "roast", "steamed", "steam", "braised", "rested", "chilled", "proved") {
			return i + 1, !after(tokens, i, 1).in("in", "with")
		}
		return i + 1, t.norm == "uncovered" && i > 0 && tokens[i-1].norm == "," && d.cooking(tokens, i-2)
	case "lid", "guard":
		return d.lid(tokens, i)
	case "upside", "inside":
		return i + 2, (t.norm == "upside" && next(1).norm == "down" || t.norm == "inside" && next(1).norm == "out") && d.cooking(tokens, i) && !d.told(tokens, i)
	}
	// "stood well back" of the cook, told beside the work
	back := next(1).norm == "to" && next(2).in("one", "the") && next(3).norm == "side" || next(1).norm == "back" || next(1).in("well", "right", "way") && next(2).norm == "back"
	if !back || i == 0 || tokens[i-1].in("and", "but", "&") || tokens[i-1].human() || linkingVerb(tokens[i-1].norm) || tokens[i-1].isAdv() && i > 1 && tokens[i-2].human() {
		return 0, false
	}
	if next(1).norm == "back" {
		return i + 2, true
	}
	if next(1).norm == "to" {
		return i + 4, true
	}
	return i + 3, true
}

// sideUp matches which side of the food lay up: "skin side down". "Wiped side
// down" is a step.
func sideUp(tokens []token, i int) bool {
	return after(tokens, i, 2).in("up", "down") && !tokens[i].tagIn("DT", "PRP$", "IN") && !tokens[i].in("wiped", "wipe", "scrubbed", "cleaned", "wash", "washed", "the", "each")
}

// told reports whether a form of "to be" stands before token i in its clause,
// so that what is there is a description.
func (d means) told(tokens []token, i int) bool {
	for j := clauseStart(tokens, i); j < i; j++ {
		if tokens[j].in("is", "was", "are", "were", "looked", "came", "went") {
			return true
		}
	}
	return false
}

// lid matches a lid or guard that was left on, off or ajar, told by itself
// beside what cooked: ", lid ajar". To put it on or to take it off is a step.
func (d means) lid(tokens []token, i int) (int, bool) {
	if i == 0 || !(tokens[i-1].norm == "," || tokens[i-1].kind == lexicon.Time) {
		return 0, false
	}
	to := i + 1
	if after(tokens, i, 1).in("half", "slightly", "well", "still") {
		to++
	}
	if to >= len(tokens) || !tokens[to].in("on", "off", "ajar", "tilted", "cracked", "open", "down") {
		return 0, false
	}
	return to + 1, to+1 == len(tokens) || tokens[to+1].pause() || tokens[to+1].tagIn("CC", "IN", "TO")
}

// held matches how hand or tool was held, told by itself beside the work:
// ", fingers tucked under", "fingertips only", ", handle turned in".
func (d means) held(tokens []token, i int) (int, bool) {
	next := func(n int) *token { return after(tokens, i, n) }
	if next(1).norm == "only" && tokens[i].kind == lexicon.Body {
		return i + 2, d.cooking(tokens, i)
	}
	if next(1).in("first", "down", "up") && tokens[i].in("handle", "point", "blade", "tip") && i > 1 {
		return i + 2, next(1).norm == "first" || d.workedBefore(tokens, i, "carri", "carry", "held", "hold", "pass", "walk", "kept", "keep")
	}
	if tokens[i].in("bowl", "pan", "tin") && i > 0 && tokens[i-1].norm == "," && next(1).norm == "not" && next(2).in("touching", "moving", "covered") {
		return i + 3, true // "melted over water, bowl not touching"
	}
	j := i - 1
	for j > 0 && (tokens[j].tagIn("DT", "PRP$", "JJ") || tokens[j].in("my", "her", "knife", "pan")) {
		j--
	}
	if j >= 1 && tokens[j].in("carried", "carry", "held", "hold", "passed", "kept") {
		return clauseEnd(tokens, i), next(1).in("pointing", "pointed", "facing") // "carried the knife pointing down"
	}
	if j < 1 || !(tokens[j].pause() || tokens[j].in("with", "wi", "wiv", "keeping")) || !d.technique(tokens, max(0, i-reach), j) && !d.deed(tokens, j) && (tokens[j].pause() || !clauseHasVerb(tokens, j)) {
		return 0, false
	}
	if !next(1).in("tucked", "curled", "bent", "bended", "curved", "turned", "pointed", "pointing", "facing", "flat", "together", "under", "inwards", "in", "away", "tilted", "tipped", "still") || tokens[i].in("bowl", "pan", "tin", "knife", "spoon") && !next(1).in("tilted", "turned", "pointing", "pointed", "facing") {
		return 0, false
	}
	return clauseEnd(tokens, i), true
}

// deed reports whether somebody did something in the clause of token i, in a
// verb that says no more of it: "I did it", "she worked".
func (d means) deed(tokens []token, i int) bool {
	for j := clauseStart(tokens, i); j < i; j++ {
		switch tokens[j].norm {
		case "did", "do", "done", "doing", "made", "make", "worked", "work", "working", "carried", "held", "cleared", "planned", "wrote", "prepared", "handled", "moved", "lifted", "went":
			return !(tokens[j].norm == "went" && j > 0 && !tokens[j-1].human())
		}
	}
	return false
}
