package analyze

import "saywhy/lexicon"

// unlistedInstrument reports whether the thing at token h, which no list of tools knows,
// is what the verb before "with" at token i was done with: "smashed it with a
// stone", "fished the shell out with another bit of shell". The verb is one
// that hardly goes without a thing to do it with.
func (d means) unlistedInstrument(tokens []token, i, h, verb int) bool {
	t, v := &tokens[h], &tokens[verb]
	if !(t.kind == lexicon.NoKind || t.kind == lexicon.Other || t.kind == lexicon.Place || t.in("stone", "shell", "cracker")) || !t.isNoun() || t.tagIn("NNP", "NNPS") || notToWorkWith(t) {
		return false
	}
	if !v.tagIn("VBD", "VB", "VBP", "VBG", "VBN") && !v.card.works {
		return false
	}
	if g := after(tokens, h, 1); g.norm == "of" && !t.in("bit", "piece", "lump", "strip", "length", "scrap") {
		return false
	}
	if tokens[i+1].norm == "no" || verb > 0 && linkingVerb(tokens[verb-1].norm) || verb > 1 && linkingVerb(tokens[verb-2].norm) && !v.tagIn("VB", "VBD") {
		return false // "the path is marked with signs": what it has
	}
	if takesInstrument(v.stem) {
		return verb == 0 || !gaveWay(tokens, verb)
	}
	for j := verb + 1; j < i; j++ {
		if tokens[j].in("out", "off", "up", "open", "down", "level") && tokens[j+1].norm != "of" && retrieves(v) {
			return true
		}
	}
	return false
}

// takesInstrument reports whether a verb asks for a thing to do it with.
func takesInstrument(stem string) bool {
	switch stem {
	case "open", "cut", "smash", "crack", "flatten", "measur", "mark", "wedg", "fan", "prod", "poke", "stab", "tie", "tied", "clip", "pin", "pinned", "greas", "scrape", "scoop", "level", "prop", "tap", "hit", "score", "prick", "crush", "bash", "pound", "ground", "grind", "squash", "spread", "wipe", "mop", "scrub", "wrap", "weigh", "pop", "skewer", "pierc", "shred", "scratch", "trim", "pri", "prise", "lever", "hammer", "chisel", "saw", "slit", "clean", "dry", "dri", "fasten", "held", "block", "stamp", "whack", "beat", "stir", "whisk", "lift", "snip":
		return true
	}
	return false
}

// retrieves reports whether a verb of getting something tells a deed with a thing
// once "out", "off" or "up" stands behind it.
func retrieves(t *token) bool {
	return t.in("got", "get", "getting", "took", "take", "taking", "fished", "fish", "picked", "pick", "dug", "dig", "pulled", "pull", "lifted", "lift", "put", "let", "hold", "held", "brought", "pushed", "push", "knocked", "rolled", "flicked", "turned", "soaked")
}

// notToWorkWith reports whether a noun tells something that goes along with a
// deed and is no thing in the hand: a trouble, a part, what a thing was like.
func notToWorkWith(t *token) bool {
	return t.in("trouble", "problem", "problems", "difficulty", "difficulties", "help", "fun", "luck", "argument", "fuss", "bother", "arrows", "success", "seconds", "result", "results", "mistake", "mistakes", "edges", "top", "bottom", "middle", "lumps", "bits", "holes", "colour", "texture", "flavour", "taste", "smell", "look", "friends", "others", "group", "class", "rest", "other", "time", "minutes", "lid", "recipe", "gaps", "gap", "space", "ones", "one", "way", "lot", "lots", "load", "thing", "things", "everything", "nothing", "idea", "end", "dish", "meal", "guard", "size")
}

// noWork reports whether what stands before "with" at token i tells that
// somebody was good at something, had trouble with it, was done with it or
// lacked it, and no work: "slow with the knife", "needed a hand with the tin
// opener", "could do with a bigger pan", "slipped with the tray".
func noWork(tokens []token, i, verb int) bool {
	prev := &tokens[i-1]
	if prev.in("trouble", "problem", "problems", "issue", "issues", "difficulty", "difficulties", "help", "luck", "mistake", "accident", "practice", "confident", "confidence", "finished", "struggle", "struggled", "struggling", "experience", "skills", "fuss") {
		return true
	}
	if verb < 0 {
		return false
	}
	v := &tokens[verb]
	switch {
	case prev.norm == "hand" && v.in("needed", "need", "had", "wanted", "gave", "give", "lent"):
		return true
	case v.in("slipped", "tripped", "fell", "struggled", "burnt", "burned"), v.in("went") && i > 1 && tokens[i-1].norm == "flying":
		return true
	case v.norm == "do" && verb > 0 && tokens[verb-1].in("could", "can"):
		return verb == i-1
	}
	return (prev.isAdj() || prev.in("slow", "great", "quick", "golden", "brown")) && v.in("was", "were", "am", "is", "are", "be", "been", "getting", "got", "became", "'s", "'m")
}

// unlistedTool reports whether "used" at token at tells the thing at token h as a
// means, though no list knows it or an adjective stands before it that else
// tells food apart: "used a clean ruler to measure", "used my nan's mincer for
// the beef".
func (d means) unlistedTool(tokens []token, at, h int) bool {
	if h < 0 || h-at > 4 || at > 0 && !tokens[at-1].human() && !tokens[at-1].pause() && tokens[at-1].norm != "and" && !tokens[at-1].isAdv() && !tokens[at-1].in("only", "just", "used") {
		return false
	}
	t, n := &tokens[h], after(tokens, h, 1)
	if t.kind.Food() || t.kind == lexicon.Person || t.kind == lexicon.Time || notToWorkWith(t) || t.in("oven", "hob", "fridge", "freezer", "grill") {
		return false
	}
	if do := after(tokens, h, 2); n.norm == "to" && (do.card != nil && do.card.works || do.in("measure", "weigh", "check", "hold", "stop", "lift", "push", "open", "test", "time", "reach", "mark", "cut", "flatten", "wedge", "prop", "keep", "pick", "pull", "get", "hit", "smash")) {
		return true
	}
	return n.norm == "as" && after(tokens, h, 2).in("a", "an", "my") && t.kind != lexicon.Place
}

// withManner matches a way of moving or of taking trouble told by "with": "with
// a flick of the wrist", "with great care", "with ease".
func (d means) withManner(tokens []token, i int) (int, bool) {
	for j := i + 1; j < len(tokens) && j <= i+3; j++ {
		t := &tokens[j]
		switch t.norm {
		case "flick", "twist", "jerk", "tug", "swipe", "sweep", "shake", "swirl", "jiggle", "wiggle", "strokes", "stroke":
			return j + 1, i > 0 && j > i+1 && clauseHasVerb(tokens, i) && !d.told(tokens, i)
		case "ease", "patience", "precision", "force", "speed", "concentration", "gusto", "determination", "delicacy":
			return j + 1, i > 0 && (d.cooking(tokens, i) || d.deed(tokens, i)) && !d.told(tokens, i)
		}
		if !(t.isAdj() || t.isAdv() || t.tagIn("DT", "CD", "PRP$")) {
			break
		}
	}
	return 0, false
}

// counted matches how many strokes work took, told by itself (", four or five
// strokes"), and pieces told off one by one ("one, one, one").
func (d means) counted(tokens []token, i int) (int, bool) {
	if i == 0 {
		return 0, false
	}
	if tokens[i].norm == "one" && after(tokens, i, 1).norm == "," && after(tokens, i, 2).norm == "one" && after(tokens, i, 4).norm == "one" {
		return i + 5, true
	}
	if !tokens[i-1].pause() {
		return 0, false
	}
	for j := i + 1; j < len(tokens) && j <= i+4; j++ {
		if tokens[j].in("strokes", "turns", "stirs", "shakes", "pulses", "bursts") {
			return j + 1, d.technique(tokens, max(0, i-reach), i) || d.deed(tokens, i-1)
		}
		if !(tokens[j].tag == "CD" || tokens[j].isAdj() || tokens[j].norm == "or") {
			break
		}
	}
	return 0, false
}

// handLike matches what hand or tool was held like, or something rolled like:
// "fingers tucked in like a bear's paw", "held the bag like a pencil".
func (d means) handLike(tokens []token, i int) bool {
	return i > 0 && after(tokens, i, 1).in("a", "an") && d.inHand(tokens, i)
}

// inHand reports whether somebody held, tucked or bent something within a few
// words before token i.
func (d means) inHand(tokens []token, i int) bool {
	for j := i - 1; j >= max(0, i-5); j-- {
		t := &tokens[j]
		if t.pause() {
			return false
		}
		if t.in("held", "hold", "holding", "tucked", "tuck", "curled", "curl", "bend", "bended", "bent", "spread", "crossed", "grip", "gripped") {
			return j == 0 || tokens[j-1].human() && !tokens[j-1].in("it", "they") || tokens[j-1].kind == lexicon.Body || tokens[j-1].in("and", "to", "then")
		}
		if t.kind == lexicon.Body && t.in("finger", "fingers", "hand", "hands", "fingertips") && j > 1 && tokens[j-2].in("made", "make", "with", "put", "keep", "kept") {
			return true
		}
	}
	return false
}

// heldBeside matches what somebody held while carrying or working, with no mark
// between: "carried it holding both handles", "went down the list ticking off
// each step".
func (d means) heldBeside(tokens []token, i int) bool {
	if !tokens[i].in("holding", "keeping", "ticking", "counting", "wearing") || i < 2 || !(tokens[i-1].isNoun() || tokens[i-1].in("it", "them")) {
		return false
	}
	for j := i - 2; j > 0 && j >= clauseStart(tokens, i); j-- {
		if tokens[j].isVerb() {
			return tokens[j-1].human() && tokens[j].in("carried", "carry", "lifted", "cut", "sliced", "worked", "went", "did", "chopped", "stirred", "poured", "peeled", "drained", "moved", "took", "grated", "walked")
		}
	}
	return false
}

// bathed matches a bath of water, a machine named by two words, and food cooked
// in what it grew in: "in a water bath", "in the slow cooker", "in their skins".
func (d means) bathed(tokens []token, i int) bool {
	h := objectHead(tokens, i)
	if h < 0 || h-i > 4 || d.told(tokens, i) && !d.cooking(tokens, i) {
		return false
	}
	switch tokens[h].norm {
	case "bath":
		return h > 0 && tokens[h-1].in("water", "ice", "hot", "warm")
	case "cooker":
		return tokens[h-1].in("slow", "pressure", "rice")
	case "fryer":
		return tokens[h-1].norm == "air" || tokens[i+1].norm == "air"
	case "airfryer":
		return d.cooking(tokens, i) || d.deed(tokens, i)
	case "cupboard":
		return h > 0 && tokens[h-1].norm == "airing" && (d.technique(tokens, clauseStart(tokens, i), i) || d.workedBefore(tokens, i, "prove", "rise", "put", "left"))
	case "skins", "skin", "shells", "shell", "jackets", "husks", "pods", "husk":
		return tokens[i+1].in("their", "its") && d.cooking(tokens, i) && !d.workedBefore(tokens, i, "weigh")
	case "jar":
		return d.deed(tokens, i) && tokens[i+1].in("a", "an", "my")
	}
	return false
}
