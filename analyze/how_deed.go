package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// byDeed matches "by" + -ing (an adverb may stand between), which is means in
// nine cases of ten (GUM: 118 of 125), "by hand", and measures ("by the
// spoonful"); not "by five", "by the oven".
func (d means) byDeed(tokens []token, i int) (int, bool) {
	next := func(n int) *token { return after(tokens, i, n) }
	n := 1
	for next(n).isAdv() && n < 3 {
		n++
	}
	switch {
	case next(n+1).in("time", "size", "weight"):
		return 0, false // "by serving time"
	case next(n).tag == "VBG" || strings.HasSuffix(next(n).norm, "ing") && len(next(n).norm) > 5 && !next(n).in("evening", "morning", "ceiling", "spring", "pudding", "filling", "something", "anything", "nothing", "everything"):
		return clauseEnd(tokens, i+n), true
	case next(1).norm == "the" && next(2).in("smell", "sound", "look", "colour", "feel", "weight", "eye"):
		return i + 3, d.workedBefore(tokens, i, "judg", "tell", "told", "know", "knew", "check", "test", "guess", "cook", "done", "did", "gaug")
	case next(1).in("hand", "eye", "touch", "feel", "ear", "smell", "weight", "sight", "instinct", "guesswork", "spoonfuls"):
		return i + 2, true
	case next(1).in("fingers", "hands") || next(1).in("my", "her", "his", "your", "their") && next(2).in("hand", "hands", "fingers", "fingertips"):
		return i + 2, true // "by my fingers": a tool in the mouth of those new to English
	case d.byTool(tokens, i):
		return objectHead(tokens, i) + 1, true // "cut it by big knife": likewise
	case next(1).norm == "the" && (next(2).norm == "method" || next(3).norm == "method"):
		return i + 3, true // "by the slap-and-fold method"
	case next(1).in("the", "a") && next(2).in("spoonful", "handful", "spoon", "teaspoon", "ladleful", "ladle", "tablespoon"):
		return i + 3, true
	}
	return 0, false
}

// byTool reports whether a tool without an article stands behind "by".
func (d means) byTool(tokens []token, i int) bool {
	h := objectHead(tokens, i)
	return h > i && h-i <= 2 && tokens[i+1].tag != "DT" && d.implement(&tokens[h]) && !tokens[h].in("oven", "hob", "fridge", "cooker", "pan", "tray") && d.cooking(tokens, i)
}

// without matches what was not done ("without stirring") and the tool that was
// not taken.
func (d means) without(tokens []token, i int) (int, bool) {
	next := func(n int) *token { return after(tokens, i, n) }
	n := 1
	for next(n).isAdv() || next(n).in("the", "it", "them") && n < 3 {
		n++
	}
	if (next(n).tag == "VBG" || strings.HasSuffix(next(n).norm, "ing") && len(next(n).norm) > 5) && !befalls(next(n), next(n+1)) && !ofFood(tokens, i) && !next(n).in("prompting", "asking", "helping", "nagging", "pudding", "filling", "icing", "seasoning", "topping") && !(next(n).in("being") && next(n+1).in("asked", "told", "reminded", "prompted")) {
		return clauseEnd(tokens, i+n), true
	}
	h := objectHead(tokens, i)
	return h + 1, h >= 0 && h-i <= 4 && (tokens[h].kind == lexicon.Tool || tokens[h].kind == lexicon.Cloth || tokens[h].norm == "machine") && next(1).norm != "any" && (d.cooking(tokens, i) || tokens[h].norm == "machine")
}

// ofFood reports whether the clause before token i is about what the food is
// like or does by itself: "it quivered without flowing", "thick enough to coat
// without drowning it".
func ofFood(tokens []token, i int) bool {
	for j := i - 1; j >= clauseStart(tokens, i); j-- {
		if tokens[j].in("quivered", "wobbled", "wobbles", "set", "thick", "rounded", "spread", "coated", "coats", "held", "holds", "melts", "melted", "cut", "snapped", "bent") && (j == 0 || !tokens[j-1].human() || tokens[j-1].in("it", "they")) {
			return tokens[j].norm != "spread" && tokens[j].norm != "cut" || j > 0 && tokens[j-1].in("it", "they")
		}
	}
	return false
}

// insteadOf matches the other way of working that was left: "instead of
// stirring", "rather than trusting my eye", behind what somebody did.
func (d means) insteadOf(tokens []token, i int) (int, bool) {
	to, of := &tokens[i], after(tokens, i, 1)
	if i == 0 || !(to.norm == "instead" && of.norm == "of" || to.norm == "rather" && of.norm == "than") {
		return 0, false
	}
	if d.insteadOfTool(tokens, i) {
		return clauseEnd(tokens, i), true
	}
	v := after(tokens, i, 2)
	if !(v.tag == "VBG" || v.card != nil && v.card.works && strings.HasSuffix(v.norm, "ing")) || v.in("using", "putting", "leaving", "taking", "reducing") || !(v.card.works || v.in("trusting", "guessing", "relying", "sawing", "pulling", "pushing", "dragging", "buying")) {
		return 0, false
	}
	for j := clauseStart(tokens, i); j < i; j++ {
		if tokens[j].isVerb() && (j == 0 || d.bySomebody(tokens, j+1)) {
			return clauseEnd(tokens, i+2), true
		}
	}
	return 0, false
}

// insteadOfTool matches the tool that was left for another way: "with his wrist
// instead of a slice", "stretched it rather than the rolling pin".
func (d means) insteadOfTool(tokens []token, i int) bool {
	h := objectHead(tokens, i+1)
	if h < 0 || h-i > 5 || !(tokens[h].in("hands", "hand", "brush") || tokens[h].kind == lexicon.Tool && !appliance(&tokens[h]) && !packOrPlate(&tokens[h])) {
		return false
	}
	return d.technique(tokens, clauseStart(tokens, i), i) && d.bySomebody(tokens, i) && !d.wished(tokens, i)
}

// befalls reports whether a verb in -ing is something that happens to the food
// or to the writer, so that "without" it tells how a thing turned out, not how
// it was done.
func befalls(t, after *token) bool {
	if t.in("cracking", "breaking", "splitting", "burning", "tearing", "losing") {
		// "without breaking it" is a manner of doing, "without breaking" is not.
		return !(after.in("it", "them", "any", "all") || after.tagIn("DT", "PRP$"))
	}
	return t.in("ripping", "leaking", "bursting", "spilling", "slipping", "separating", "crumbling", "sticking", "falling", "tasting", "looking", "feeling", "regretting", "being", "becoming", "getting", "going", "curdling", "sinking", "collapsing")
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
	if tokens[i].in("melting", "dissolving", "crumbling", "oozing", "dripping", "snapping", "flaking", "breaking", "splitting") && !after(tokens, i, 1).in("it", "them", "the", "my", "in") {
		return false // "smooth, melting quickly on the tongue": what the food does
	}
	if j >= 1 && d.heldBeside(tokens, i) {
		return true
	}
	if j < 1 || tokens[j].norm != "," {
		return false
	}
	if tokens[i].in("lifting", "raising", "tilting", "holding", "keeping", "shaking", "swirling", "scraping") && after(tokens, i, 1).in("it", "them", "my", "his", "her", "your", "the") && (d.technique(tokens, max(0, i-reach), j) || d.deed(tokens, j)) {
		return true
	}
	if tokens[i].norm == "topping" && (after(tokens, i, 1).norm == "up" || after(tokens, i, 2).norm == "up") && d.technique(tokens, max(0, i-reach), j) {
		return true // ", topping it up whenever it looked dry"
	}
	if tokens[i].card.works && !generic(tokens[i].stem) && i+1 < len(tokens) && tokens[i+1].in("all", "it", "them", "the", "as", "constantly", "continuously", "gently", "slowly") && clauseHasVerb(tokens, j) && !tokens[i].in("icing", "seasoning", "topping", "filling", "dressing", "frosting", "stuffing", "washing") {
		return true // ", whisking all the while": the participle itself is work
	}
	if tokens[i].in("including", "being", "meaning", "making", "leaving", "giving", "causing", "having", "something", "anything", "nothing", "everything", "according", "considering", "depending", "following", "looking", "sitting", "saying", "seeing", "thinking", "wondering", "using", "regarding", "allowing", "resulting", "creating", "becoming", "reaching", "suggesting", "showing", "using", "washing", "icing", "seasoning", "topping", "filling", "pudding", "dressing", "frosting", "stuffing") {
		return false
	}
	if n := after(tokens, i, 1); n.norm == "and" || n.pause() {
		// ", stirring, until it thickened", but not a list of deeds
		return n.norm == "," && after(tokens, i, 2).in("until", "till", "so", "for", "to") && d.technique(tokens, clauseStart(tokens, j), j) && tokens[j-1].tag != "VBG"
	}
	for k := clauseStart(tokens, j); k < j; k++ {
		if t := &tokens[k]; t.isVerb() && t.card.works && !generic(t.stem) || t.in("worked", "wrote", "written", "planned", "followed") && tokens[i].in("working", "counting", "clearing", "going", "starting", "ticking") {
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
