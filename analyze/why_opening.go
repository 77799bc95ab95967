package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// setOut reports whether a reason is told without a word that joins it: by what
// somebody knew, wanted or feared ("Knowing he can't have nuts, …"), by a thing
// being so ("the cheese being old"), or by a phrase that means no more than
// because ("for fear of lumps", "on account of the heat").
func (d reasons) setOut(tokens []token, i int) bool {
	next := func(n int) *token { return after(tokens, i, n) }
	switch tokens[i].norm {
	case "for":
		if forBetter(tokens, i) {
			return true
		}
		return next(1).in("fear", "lack", "want") && next(2).in("of", "that") || next(1).norm == "the" && next(2).norm == "sake" ||
			next(1).norm == "protection" || i > 0 && tokens[i-1].norm == "fault" && (next(1).tag == "VBG" || next(1).norm == "not")
	case "on":
		return next(1).norm == "account" && next(2).norm == "of"
	case "in":
		return next(1).in("view", "light") && next(2).norm == "of" || next(1).in("hope", "hopes") && next(2).in("of", "that") ||
			next(1).norm == "the" && next(2).in("hope", "hopes") || next(1).tag == "DT" && next(2).in("effort", "attempt", "bid") && next(3).norm == "to"
	case "with", "wi", "wiv", "w":
		if next(1).norm == "a" && next(2).norm == "view" && next(3).norm == "to" || i > 0 && tokens[i-1].norm == "what" {
			return true
		}
		if next(1).norm == "all" && next(2).in("the", "that", "this", "those") && strings.HasSuffix(next(3).norm, "ing") {
			return i > 0 && tokens[i-1].in("tired", "ached", "ache", "aching", "sore", "hot", "red", "late", "messy", "hungry", "dizzy", "sticky")
		}
		return d.standing(tokens, i)
	case "lest":
		return true
	case "else":
		return i > 0 && next(1).tagIn("PRP", "PRP$", "DT") && opensClause(tokens, i+1) &&
			!tokens[i-1].in("or", "something", "anything", "nothing", "everything", "someone", "anyone", "nobody", "everyone", "what", "who", "where", "everywhere", "somewhere", "anywhere", "everybody", "anybody", "somebody")
	case "unless":
		return i == 0 && next(1).in("you", "u", "it", "they") && !clauseHas(tokens, len(tokens)-1, "was", "were", "had", "did") && !next(3).in("want", "like", "prefer") || d.generalTruth(tokens, i) || ruleThenIf(tokens, i)
	case "wonder":
		return i > 0 && tokens[i-1].norm == "no" && opensClause(tokens, i+1)
	case "serves":
		return next(2).norm == "right"
	case "be":
		return soundSafe(tokens, i)
	case "being":
		return d.beingSo(tokens, i)
	case "such":
		return suchThat(tokens, i)
	case "the":
		return theMoreTheMore(tokens, i)
	}
	return d.inMind(tokens, i)
}

// inMind: "Knowing he can't have nuts, I left them out", "Worried it might burn
// I turned it down", "…, not wanting a soggy base", "Having run out of eggs, …":
// what was in somebody's mind, or had gone before, told as the cause.
func (d reasons) inMind(tokens []token, i int) bool {
	t, n := &tokens[i], after(tokens, i, 1)
	opens := i == 0 || tokens[i-1].pause()
	switch {
	case t.norm == "not" && n.norm == "knowing" && i > 0:
		return false
	case t.norm == "not":
		if !(n.in("wanting", "having", "knowing", "being", "trusting", "liking", "owning", "wishing", "fancying", "realising", "daring", "expecting")) {
			return false
		}
	case t.norm == "having":
		if m := after(tokens, i, 2); !(n.in("run", "forgotten", "lost", "burnt", "burned", "broken", "missed", "never", "no", "only", "had", "ruined", "left", "cut", "been", "dropped", "spilt", "learnt", "learned") && m.norm != "") {
			return false
		}
	case t.in("hoping", "fearing"):
		if i > 0 && !tokens[i-1].in("'m", "am", "was", "were", "is", "are", "been", "'re", "'s", "n't", "be") && !(tokens[i-1].isAdv() && i > 1 && linkingVerb(tokens[i-2].norm)) && clauseHasVerb(tokens, i) {
			return true // "sat down with the recipe first hoping I'd need less help"
		}
	case t.in("knowing", "wanting", "thinking", "fancying", "remembering", "realising", "realizing", "expecting", "noticing", "seeing", "wishing", "suspecting", "trusting", "preferring"):
		if t.norm == "seeing" && !n.tagIn("DT", "PRP", "PRP$") && n.norm != "how" {
			return false
		}
		if n.in("about", "back", "of") && !t.in("thinking") || n.pause() {
			return false
		}
	case t.in("worried", "scared", "afraid", "frightened", "nervous", "anxious", "keen", "desperate", "eager", "determined", "unsure", "convinced", "wary", "mindful", "conscious", "impatient", "terrified", "fed", "tired", "short", "sick"):
		if !n.in("of", "that", "about", "to", "it", "they", "the", "i", "he", "she", "up", "not", "we", "for") {
			return false
		}
	default:
		return false
	}
	if !opens {
		return false
	}
	if i == 0 || tokens[i-1].norm != "," {
		return personFollows(tokens, i+2)
	}
	return i > 2 && (d.didBefore(tokens, i-1) || personFollows(tokens, i+2))
}

// personFollows reports whether, behind token i, a person does something: the
// main clause that a participle at the head of the sentence belongs to.
func personFollows(tokens []token, i int) bool {
	for j := i; j+1 < len(tokens) && j < i+14; j++ {
		t := &tokens[j]
		if t.norm == "," && j+2 < len(tokens) && opensClause(tokens, j+1) {
			return true
		}
		if t.tagIn("VBZ", "MD") && !tokens[j-1].human() && !tokens[j-1].in("it", "they", "n't") && tokens[j-1].tagIn("NN", "NNS") && j < i+2 {
			return false
		}
		if j > i && t.in("i", "we", "he", "she") && tokens[j+1].tagIn("VBD", "VBP") && !tokens[j-1].in("that", "what", "how") {
			return true
		}
	}
	return false
}

// didBefore reports whether a person does something in the clause that ends at
// token i.
func (d reasons) didBefore(tokens []token, i int) bool {
	for j := clauseStart(tokens, i); j < i; j++ {
		if tokens[j].tagIn("VBD", "VBP") && !linkingVerb(tokens[j].norm) {
			return j == 0 || tokens[j-1].human() || tokens[j-1].isAdv() || tokens[j-1].in("and", "then") || tokens[j].card.works
		}
	}
	return false
}

// standing: "With the oven being on the blink, …", "With no eggs left I …", "Wi'
// the door left ajar, …": how things stood, at the head of a sentence.
func (d reasons) standing(tokens []token, i int) bool {
	if i > 0 && !tokens[i-1].in("and", "but") || len(tokens) < 6 {
		return false
	}
	j := i + 2
	for j < len(tokens) && j <= i+6 && !tokens[j].in("being", "left", "gone", "broken", "so", "away", "still", "having", "getting", "running", "crying", "playing") {
		if tokens[j].pause() || tokens[j].tagIn("IN", "TO") || tokens[j].human() && tokens[j].tag == "PRP" {
			return false
		}
		j++
	}
	if j > i+6 {
		return false
	}
	for k := j + 1; k+1 < len(tokens) && k <= j+8; k++ {
		if tokens[k].norm == "," && (opensClause(tokens, k+1) || tokens[k+1].tagIn("PRP", "PRP$")) || tokens[k].human() && tokens[k+1].tagIn("VBD", "VBP", "MD") || k > j && tokens[k].tagIn("DT", "PRP$") && opensClause(tokens, k) {
			return true
		}
	}
	return false
}

// beingSo: "the grill being good and fierce by then", "Being so thin, the
// chapatis cooked fast": a thing being so, in a clause without a finite verb.
func (d reasons) beingSo(tokens []token, i int) bool {
	n := after(tokens, i, 1)
	if !(n.isAdj() || n.tag == "DT" || n.in("so", "too", "such", "as", "on", "off", "away", "half", "quite", "rather", "very", "out", "from", "only", "left-handed", "nearer", "one")) {
		return false
	}
	if i == 0 || tokens[i-1].norm == "not" && i == 1 {
		for j := i + 2; j < len(tokens) && j < i+12; j++ {
			if tokens[j].norm == "," {
				return opensClause(tokens, j+1) || j+1 < len(tokens) && tokens[j+1].tagIn("DT", "PRP", "PRP$")
			}
			if tokens[j].tagIn("VBD", "VBZ", "VBP", "MD") {
				return false // "being in a group was fun"
			}
		}
		return false
	}
	if !tokens[i-1].isNoun() || n.norm == "the" {
		return false
	}
	for j := i - 1; j >= 0 && j >= i-6; j-- {
		t := &tokens[j]
		if t.norm == "," || j == 0 {
			return !t.in("with", "despite", "without")
		}
		if t.isVerb() || t.tagIn("IN", "TO") || t.pause() {
			return false
		}
	}
	return false
}

// soundSafe: "just to be safe", "to be on the safe side", "to be sure", "to be rid
// of it": care as the end.
func soundSafe(tokens []token, i int) bool {
	if i == 0 || tokens[i-1].norm != "to" {
		return false
	}
	n := after(tokens, i, 1)
	if i > 1 && (tokens[i-2].in("need", "needs", "have", "has", "had", "got", "seemed", "seems", "likely", "want", "wanted", "try", "tried", "supposed", "going")) {
		return false
	}
	return n.norm == "sure" || n.norm == "safe" && (after(tokens, i, 2).pause() || i > 1 && tokens[i-2].norm == "just" || after(tokens, i, 2).norm == "") || n.norm == "on" && after(tokens, i, 3).norm == "safe" ||
		n.norm == "rid" && after(tokens, i, 2).norm == "of"
}

// suchThat: "such a runny batter that the prawns came out bald": a degree, and
// what it led to.
func suchThat(tokens []token, i int) bool {
	for j := i + 2; j+2 < len(tokens) && j <= i+6; j++ {
		t := &tokens[j]
		if t.pause() {
			return false
		}
		if t.norm == "that" && tokens[j-1].isNoun() {
			return opensClause(tokens, j+1) && !tokens[j+1].isVerb()
		}
		if tokens[j-1].isNoun() && t.in("i", "we", "he", "she", "it") && tokens[j+1].tagIn("VBD", "MD") {
			return true
		}
	}
	return false
}

// theMoreTheMore: "the longer you knead it the stretchier it gets".
func theMoreTheMore(tokens []token, i int) bool {
	more := func(j int) bool {
		t := after(tokens, j, 1)
		return after(tokens, j, 0).norm == "the" && comparative(t) && (t.tagIn("JJR", "RBR") || t.in("more", "less") || strings.HasSuffix(t.norm, "ier") || j > i && after(tokens, j, 2).in("it", "they", "i", "you", "we"))
	}
	if !more(i) || !opensClause(tokens, i+2) && !after(tokens, i, 2).isNoun() && !after(tokens, i, 2).tagIn("PRP", "DT") {
		return false
	}
	for j := i + 4; j < len(tokens) && j <= i+12; j++ {
		if more(j) {
			return true
		}
	}
	return false
}

// mustBe: ", that'll be the cheap tin", "must be the cold butter": the cause that
// somebody guesses at, behind what came of it.
func mustBe(tokens []token, i int) bool {
	if i < 2 || !tokens[i].in("'ll", "must", "will") || after(tokens, i, 1).norm != "be" && !(after(tokens, i, 1).in("have", "of") && after(tokens, i, 2).norm == "been") {
		return false
	}
	if !tokens[i-1].pause() && !(tokens[i-1].in("that", "it", "this") && i > 2 && (tokens[i-2].pause() || tokens[i-2].norm == "but")) {
		return false
	}
	at := i + 2
	if after(tokens, at, 0).norm == "been" {
		at++
	}
	n, m := after(tokens, at, 0), after(tokens, at, 1)
	return n.tagIn("DT", "PRP$") && n.norm != "a" && !m.tagIn("JJS", "RBS") && !m.in("best", "first", "last", "one")
}

// hurtDoing: "cut my thumb opening a tin", "I burnt my wrist taking it out": a
// harm, and the deed that led to it.
func hurtDoing(tokens []token, i int) bool {
	if i < 2 || tokens[i].tag != "VBG" {
		return false
	}
	body := -1
	for j := i - 1; j >= 0 && j >= i-3; j-- {
		if tokens[j].kind == lexicon.Body || bodily(&tokens[j]) || tokens[j].in("myself", "himself", "herself") {
			body = j
			break
		}
		if !tokens[j].isAdv() && !tokens[j].in("bit") {
			return false
		}
	}
	for j := body - 1; body > 0 && j >= 0 && j >= body-4; j-- {
		if tokens[j].in("cut", "burnt", "burned", "hurt", "nicked", "scalded", "caught", "grazed", "trapped", "stabbed", "sliced", "grated", "jabbed", "scraped", "bruised", "singed") {
			return true
		}
	}
	return false
}

// fromEffort: "streaming from all them onions", "ached from the stirring", "that
// came from you charring the peppers": behind "from", the deed or the plenty that
// something came of.
func fromEffort(tokens []token, i int) bool {
	n, m := after(tokens, i, 1), after(tokens, i, 2)
	if i == 0 {
		return false
	}
	for j := i - 1; j >= 0 && j >= i-4; j-- {
		if tokens[j].in("stop", "stopped", "stops", "prevent", "prevented", "keep", "keeps", "kept", "away", "far", "protect", "saved", "save", "different", "learned", "learnt", "apart", "refrain", "aside") {
			return false
		}
	}
	p := &tokens[i-1]
	switch {
	case n.norm == "too" && m.in("long", "much", "many", "little"):
		return true // "hard from too long in the oven"
	case n.norm == "being" && !m.in("a", "an") && m.tag != "IN":
		return true // "from being rolled cold"
	case n.in("you", "me", "him", "her", "us", "them", "my", "your", "his") && m.tag == "VBG":
		return true
	case n.norm == "all" && m.in("that", "those", "them", "the", "this", "these"):
		return p.in("streaming", "ached", "ache", "aching", "watering", "watered", "sore", "tired", "red", "running", "wet", "shaking", "hot", "pink", "sticky", "numb", "hurt", "greasy", "steamy") || p.describes()
	case n.tag == "VBG" || n.card != nil && n.card.works && strings.HasSuffix(n.norm, "ing"):
		return p.in("'s", "think", "suppose", "reckon", "guess", "just") || p.isNoun() && i > 1 && (tokens[i-2].in("split", "cracked", "sore"))
	}
	return false
}
