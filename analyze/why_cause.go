package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// whichMeans: "which meant", "that means", "this meant", ", meaning that".
func (d reasons) whichMeans(tokens []token, i int) (int, bool) {
	if tokens[i].norm == "meaning" {
		return i, i > 0 && tokens[i-1].norm == ","
	}
	if i == 0 {
		return i, true
	}
	p := &tokens[i-1]
	if p.in("was", "were", "is", "i", "he", "she", "we", "you", "n't", "it's", "be", "had") || i+1 < len(tokens) && tokens[i+1].in("to", "for") {
		return 0, false
	}
	if s := subject(tokens, i); s >= 0 && tokens[s].human() {
		return 0, false
	}
	return i - 1, true
}

// causes: a verb that itself says cause or prevention, said by a thing ("that
// stopped it sticking", "which allowed").
func (d reasons) causes(tokens []token, i int) bool {
	t := &tokens[i]
	if t.isNoun() || t.isAdj() {
		return false
	}
	if t.tag == "VBG" {
		return i > 0 && tokens[i-1].norm == "," && i+1 < len(tokens) && !tokens[i+1].in("at", "for")
	}
	if i > 0 && tokens[i-1].in("to", "would", "could", "n't", "not", "can", "will", "should", "might", "that", "which") && !tokens[i-1].in("that", "which", "would", "will", "to") {
		return false
	}
	if i > 0 && tokens[i-1].norm == "to" {
		return false
	}
	if i+1 < len(tokens) && tokens[i+1].in("out", "up") && strings.HasPrefix(t.norm, "help") {
		return false
	}
	s := subject(tokens, i)
	if s < 0 {
		return i > 0 && tokens[i-1].in("which", "that", "this")
	}
	if tokens[s].human() || tokens[s].kind == lexicon.NoKind && !tokens[s].in("that", "this", "which", "it", "they", "these") && tokens[s].tag != "VBG" {
		return false
	}
	if i > 0 && (linkingVerb(tokens[i-1].norm) || tokens[i-1].isAdv() && i > 1 && linkingVerb(tokens[i-2].norm)) {
		return false
	}
	if strings.HasPrefix(t.norm, "stop") {
		return i+1 < len(tokens) && !tokens[i+1].pause() && (tokens[i+1].in("it", "them", "the", "me", "my", "that", "any", "us", "you") || tokens[i+1].isNoun())
	}
	return i+1 < len(tokens) && !tokens[i+1].pause()
}

// makes: a causative said by a thing, a fact or "which": "which made it
// shiny", "that thickened it", "the lemon kept it white", "squeezing … gave".
func (d reasons) makes(tokens []token, i int) bool {
	t := &tokens[i]
	if !t.isVerb() || i+1 >= len(tokens) || i > 0 && tokens[i-1].in("was", "were", "is", "are") {
		return false
	}
	if d.deedSubject(tokens, i) {
		return true
	}
	start := clauseStart(tokens, i)
	if i > 1 && tokens[i-1].in("and", "then") {
		// "I used a big pan and kept it moving": the second verb of a person.
		for j := start; j < i-1; j++ {
			if tokens[j].in("i", "we", "he", "she", "you") || tokens[j].kind == lexicon.Person {
				return false
			}
		}
		if t := &tokens[start]; t.isVerb() || strings.HasSuffix(t.norm, "ed") {
			return false // a note without its subject
		}
	}
	s := subject(tokens, i)
	byWhich := start > 0 && tokens[start-1].in("which") || i > 0 && tokens[i-1].in("which")
	n := &tokens[i+1]
	object := n.in("it", "them", "the", "my", "a", "an", "its", "some", "everything", "me", "us", "you", "all", "that", "their", "this", "her", "his") || n.isNoun() || n.isAdj() && !t.in("got", "turned", "came")
	if !object {
		return byWhich && !t.in("left", "took", "made", "makes")
	}
	if t.in("make", "let", "making", "keeping", "giving") {
		// ", making it soft"; "that will make it"
		if t.tag == "VBG" {
			return i > 0 && tokens[i-1].norm == ","
		}
		return t.norm == "make" && s >= 0 && !tokens[s].human() && i > 0 && tokens[i-1].in("will", "would", "'d", "'ll", "can", "might") && changes(tokens, i) || t.norm == "let" && s >= 0 && tokens[s].in("that", "this", "which")
	}
	if byWhich {
		return !t.in("made", "makes") || changes(tokens, i)
	}
	if s < 0 || tokens[s].human() {
		return false
	}
	sub := &tokens[s]
	switch {
	case t.in("gave", "gives") && (sub.in("that", "this") && n.in("me", "us", "you") || sub.norm == "it" && start > 1 && tokens[start-1].norm == "and"):
		return true // "that gave me a level rim", "it caught and it gave the pot a smoky taste"
	case sub.in("that", "this"):
		return !t.in("made", "makes", "gave", "gives", "got", "took", "left") || n.in("it", "them") || changes(tokens, i)
	case t.in("made", "makes"):
		return changes(tokens, i) && (sub.kind != lexicon.NoKind || sub.in("it", "they", "which", "everything") || sub.tag == "VBG")
	case t.in("kept", "keeps", "stopped"):
		return (!sub.in("they") || n.in("it", "them", "the")) && !(i+2 < len(tokens) && tokens[i+2].in("shape", "form"))
	case t.in("gave", "gives", "thickened", "thickens", "softened", "loosened", "balanced", "brought", "killed", "kills", "spoiled", "spoilt", "ruined", "drew", "sealed"):
		return sub.isNoun() && sub.kind.Food()
	}
	return false
}

// deedSubject reports whether the subject of the verb at token i is a step of
// cooking in -ing, so that the verb tells what came of it: "letting it down
// with milk rescued it", "brushing them gave bronzed edges".
func (d reasons) deedSubject(tokens []token, i int) bool {
	if !tokens[i].tagIn("VBD", "VBZ", "MD") && !(tokens[i].tag == "VBN" && i+1 < len(tokens) && tokens[i+1].in("it", "them")) {
		return false
	}
	start := i
	for start > 0 && !tokens[start-1].pause() && !tokens[start-1].in("but", "because", "so", "that", "think", "thought", "as", "since") {
		start--
	}
	first := &tokens[start]
	if strings.HasPrefix(first.norm, "over") && strings.HasSuffix(first.norm, "ing") && i == start+1 {
		return true // "overmixing gives you tunnels"
	}
	if first.tag != "VBG" || i < start+2 || !first.card.works && !first.in("letting", "leaving", "using", "doing", "taking", "having", "keeping", "putting") {
		return false
	}
	for j := start + 1; j < i; j++ {
		if tokens[j].tagIn("VBD", "VBZ", "MD", "VBP") || tokens[j].pause() {
			return false
		}
	}
	return true
}

// changes reports whether "made" at token i makes something be or do: an
// object and then an adjective or a bare verb ("made it shiny", "made the
// dough tear"), not an object alone ("made a decision").
func changes(tokens []token, i int) bool {
	object := false
	for j := i + 1; j < len(tokens) && j <= i+7; j++ {
		t := &tokens[j]
		switch {
		case t.in("it", "them", "me", "us", "you", "him", "her", "everything", "all"):
			object = true
		case t.pause():
			return false
		case object && (t.isAdj() || t.tag == "VB" || t.tag == "VBP" || t.isAdv() && t.in("more", "less", "really", "quite", "very", "too", "so", "all") || t.tag == "VBN"):
			return true
		case t.isNoun():
			object = true
		}
	}
	return object && i+2 < len(tokens) && tokens[i+1].in("it", "them")
}

// whichDoes: ", which relaxes the gluten": what an action does, told of the
// action as a whole.
func (d reasons) whichDoes(tokens []token, i int) bool {
	if i == 0 || tokens[i-1].norm != "," || i+2 >= len(tokens) {
		return false
	}
	v := &tokens[i+1]
	if v.in("told", "tells", "cost", "costs", "taught", "saved", "saves", "spared") && (tokens[i+2].tag == "PRP" || tokens[i+2].tagIn("DT", "CD")) {
		return true // ", which told me it was ready", ", which cost us ten minutes"
	}
	if !v.tagIn("VBZ", "VBD") || linkingVerb(v.norm) || v.in("has", "had", "did", "does", "needed", "needs", "started", "took", "takes", "ran", "includes", "contains", "comes", "makes", "made", "gave", "left", "said", "says", "means", "meant", "took", "lives", "stands", "works", "stood", "showed", "opened", "became", "began", "won", "led", "served", "held", "saw", "provides", "offers", "shows", "gives", "includes", "remains", "covers", "occurred", "happened", "features", "plays", "allows", "allowed", "runs") {
		return false
	}
	start := clauseStart(tokens, i-1)
	for j := start; j < i; j++ {
		if tokens[j].card.works && !generic(tokens[j].stem) {
			return true
		}
	}
	return false
}

// whichActs: ", which cooled the pan down", ", which took out the stringy
// bits": an effect of the step before, told as a deed with its object.
func whichActs(tokens []token, i int) bool {
	if i == 0 || tokens[i-1].norm != "," || i+2 >= len(tokens) {
		return false
	}
	v := &tokens[i+1]
	if v.in("took", "takes", "gets", "got", "washes", "washed", "brings", "brought") {
		for j := i + 2; j < len(tokens) && j <= i+6; j++ {
			if tokens[j].in("away", "out", "off", "rid") {
				return true
			}
		}
		return false
	}
	switch v.stem {
	case "cool", "stop", "prevent", "soak", "thicken", "thin", "soften", "loosen", "dri", "melt", "break", "relax", "sweeten", "lighten", "darken", "weaken", "slow", "stain", "steadi", "steady", "shrink", "seal", "trap", "spoil", "ruin", "brighten", "balanc", "kill", "drown", "stick":
		return v.isVerb() || v.isNoun()
	}
	return false
}

// fromCause: "tangy from the cheddar": a quality and where it came from.
func (d reasons) fromCause(tokens []token, i int) bool {
	if i == 0 || i+1 >= len(tokens) {
		return false
	}
	if tokens[i-1].norm == "apart" {
		return false
	}
	h := objectHead(tokens, i)
	if h >= 0 && h+1 < len(tokens) && tokens[h+1].norm == "being" {
		return true // "from the oven being too hot"
	}
	if h >= 0 && tokens[i-1].in("probably", "mostly", "mainly", "partly", "likely") && tokens[h].kind.Food() {
		return true // "ice crystals, probably from the juice"
	}
	if v := &tokens[i+1]; (v.card.works || v.tag == "VBG") && strings.HasSuffix(v.norm, "ing") {
		// "bitter from burning the garlic", "that was from boiling it hard"
		return i > 1 && (tokens[i-1].in("was", "is", "'s", "probably") || tokens[i-1].describes() || tokens[i-2].describes() || v.card.works && tokens[i-1].tag == "VBN" || tokens[i-1].isAdj() && linkingVerb(tokens[i-2].norm) || tokens[i-1].in("ached", "hurt", "aching", "sore", "tired"))
	}
	if h >= 0 && tokens[h].in("stairs", "landing", "hall", "hallway", "garden", "door", "street", "road", "upstairs", "downstairs", "outside", "gate", "room", "bedroom", "lounge", "drive", "start", "top", "side", "middle", "end") {
		return false // "I could smell it from the stairs"
	}
	if h < 0 || !tokens[h].kind.Food() && tokens[h].kind != lexicon.NoKind && !tokens[h].in("heat", "steam", "oven", "grill", "oil", "fat", "whisking", "kneading", "air") {
		return false
	}
	for j := i - 1; j >= 0 && j >= i-5; j-- {
		t := &tokens[j]
		if t.norm == "," && j == i-1 && j > 0 && tokens[j-1].describes() {
			continue // "tangy, from the buttermilk"
		}
		if (t.describes() || t.in("stinging", "watering", "tired", "sore", "aching")) && !t.isVerbForm() {
			return true
		}
		if t.in("came", "comes", "coming") && tokens[h].kind != lexicon.Place {
			// "The flavour came from the stock": a quality and its source.
			for k := j - 1; k >= 0 && k >= j-6; k-- {
				if tokens[k].in("flavour", "taste", "tastes", "heat", "colour", "smell", "crunch", "sweetness", "bitterness", "saltiness", "warmth", "texture", "kick", "shine", "it", "that", "moisture", "lift", "richness") || tokens[k].kind.Food() || tokens[k].describes() {
					return true
				}
			}
			return false
		}
		if t.pause() || t.isVerb() && !linkingVerb(t.norm) {
			return false
		}
	}
	return false
}

// remedy: a thing that would put something right: "a squeeze of lemon would
// lift it".
func (d reasons) remedy(tokens []token, i int) bool {
	j := i + 1
	for j < len(tokens) && tokens[j].isAdv() {
		j++
	}
	if j+1 >= len(tokens) {
		return false
	}
	switch tokens[j].stem {
	case "lift", "brighten", "firm", "sort", "fix", "stop", "let", "allow", "balanc", "cut", "reliev", "loosen", "give", "help", "sharpen", "soften", "sweeten", "thicken", "melt", "lighten", "mask", "hide", "bring", "add", "make", "keep", "liven", "wake", "spread", "crisp", "save", "cure", "solv", "put":
	case "have", "of":
		// "would have melted it away"
		k := j + 1
		if k+1 < len(tokens) && tokens[k].in("melted", "kept", "stopped", "saved", "helped", "fixed", "sorted", "lifted", "softened", "thickened", "given", "brought") {
			s := subject(tokens, i)
			return s >= 0 && !tokens[s].human()
		}
		return false
	default:
		return false
	}
	if d.deedSubject(tokens, i) {
		return true // "chilling it overnight would let me lift the fat off"
	}
	s := subject(tokens, i)
	if s < 0 || tokens[s].human() {
		return false
	}
	n := &tokens[j+1]
	if tokens[j].norm == "put" {
		return j+2 < len(tokens) && tokens[j+2].norm == "right" // "another spoon of sugar would put that right"
	}
	if tokens[j].stem == "have" || tokens[j].in("of") {
		return false
	}
	if tokens[j].in("help", "make", "give", "add", "keep") {
		return n.in("it", "them", "the", "to", "some") && tokens[j].norm != "add"
	}
	return n.in("it", "them", "that", "the", "this", "up", "those", "these", "any", "my", "me", "some")
}

// struck: "I lifted the lid and the steam got me", "it popped and oil hit my
// glasses": what something hot or wet did to somebody, or where it went, behind
// the deed that let it.
func struck(tokens []token, i int) bool {
	j := i + 1
	for j < i+4 && j < len(tokens) && tokens[j].tagIn("DT", "JJ", "PRP$") {
		j++
	}
	if j+2 >= len(tokens) || !tokens[j].kind.Food() && !tokens[j].in("oil", "fat", "steam", "water", "juice", "it", "lid", "knife", "grease", "caramel", "sugar", "milk") {
		return false
	}
	if tokens[j].in("smell", "aroma") || !tokens[j+1].in("hit", "got", "burnt", "burned", "splashed", "spat", "went", "flew", "shot", "caught", "landed", "slipped", "jumped", "squirted", "spilt", "spilled") {
		return false
	}
	for k := j + 2; k < len(tokens) && k <= j+5 && !tokens[k].pause(); k++ {
		if tokens[k].in("my", "me", "his", "her", "him", "everywhere", "over", "floor", "wall", "all") {
			return true
		}
	}
	return false
}

// enoughThat: "hot enough that I needed yoghurt": a degree, and what it led to.
func enoughThat(tokens []token, i int) bool {
	return i > 2 && tokens[i-1].norm == "enough" && opensClause(tokens, i+1)
}

// whichTooMuch: "bar the top shelf, which is too high for her": a thing left to
// others or left out, and what is wrong with it.
func whichTooMuch(tokens []token, i int) bool {
	return i > 1 && after(tokens, i, 1).in("is", "was", "are", "were") && after(tokens, i, 2).norm == "too"
}

// betters: "a wedge of lemon would show it off", "ribbon would finish it": a thing
// that would do something to the dish. What a dish would be, need or taste like
// tells no more than the wish.
func betters(tokens []token, i int) bool {
	n := after(tokens, i, 1)
	if !tokens[i].in("would", "'d") || i == 0 || i+2 >= len(tokens) || !n.isVerb() || n.in("be", "have", "like", "need", "love", "taste", "go", "do", "take", "look", "work", "of", "eat") {
		return false
	}
	s := subject(tokens, i)
	return s >= 0 && tokens[s].isNoun() && !tokens[s].human()
}
