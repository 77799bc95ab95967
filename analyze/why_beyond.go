package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// arrowed: "lid off too early -> hard couscous", "damp towel under the board = no
// slipping": in a note, a sign for what a thing led to.
func arrowed(tokens []token, i int) bool {
	if i < 2 || i+1 >= len(tokens) {
		return false
	}
	if tokens[i].in("->", "→", "=>", "-->", "⇒") || tokens[i].norm == ">" && tokens[i-1].in("-", "--", "=") {
		return true
	}
	if tokens[i].norm == ">" {
		// Alone it ranks as well ("my nan's cake > mine"), or leads through menus:
		// what was led to is a fault or a quality.
		_, to := besideMark(tokens, i)
		return faultyIn(tokens, i+1, to) || i+2 == to && tokens[i+1].describes()
	}
	if tokens[i].norm != "=" || i < 3 {
		return false
	}
	for j := i + 1; j < len(tokens) && j <= i+6 && !tokens[j].pause(); j++ {
		t := &tokens[j]
		if t.in("no", "less", "extra", "more", "stays", "stay") || t.tagIn("VBZ", "VBP") && !linkingVerb(t.norm) {
			return true
		}
	}
	return false
}

// tooAndCould: "the mash was too wet and it wouldn't pipe", "too stiff and I
// couldn't roll it": a fault, and what it kept from being done.
func tooAndCould(tokens []token, i int) bool {
	if i < 3 || i+3 >= len(tokens) || !(tokens[i+1].tag == "PRP" || tokens[i+1].in("it", "they", "i", "we")) || !negatedVerb(tokens, i+2) || !tokens[i+2].in("would", "could", "did", "wo", "ca", "can", "do", "does", "wouldnt", "couldnt", "didnt") {
		return false
	}
	for j := i - 1; j >= 0 && j >= i-7; j-- {
		t := &tokens[j]
		if t.pause() || t.in("because", "so", "but") {
			return false
		}
		if t.in("too", "forgot", "enough", "so") || t.norm == "no" && tokens[j+1].isNoun() {
			return true
		}
	}
	return false
}

// heldFrom: "keeps it from cracking": what a thing is there to prevent.
func heldFrom(tokens []token, i int) bool {
	if !tokens[i].in("keeps", "kept", "stops", "stopped", "saves", "saved", "protects", "protected") {
		return false
	}
	for j := i + 2; j+1 < len(tokens) && j <= i+5; j++ {
		if tokens[j].norm == "from" {
			return tokens[j+1].tag == "VBG"
		}
		if tokens[j].pause() || tokens[j].isVerb() {
			return false
		}
	}
	return false
}

// deedDoes: "Salting the cucumber draws the water out", "Lining the tin saves a
// lot of scrubbing", "Soaking them helps": a deed told by its -ing at the head of
// a clause, and a verb of effect.
func deedDoes(tokens []token, i int) bool {
	switch tokens[i].norm {
	case "draws", "drew", "brings", "brought", "keeps", "kept", "saves", "saved", "stops", "stopped", "makes", "made", "gives", "gave", "helps", "helped", "lets", "let", "takes", "took", "prevents", "softens", "softened", "cuts", "gets", "got", "spreads", "ruins", "ruined", "means", "meant", "adds", "added", "turns", "turned", "breaks", "broke", "pushes", "knocks", "traps", "seals", "spoils":
	default:
		return false
	}
	for j := i - 1; j >= 0 && j >= i-7; j-- {
		t := &tokens[j]
		if t.tag == "VBG" || strings.HasSuffix(t.norm, "ing") && len(t.norm) > 5 && j == 0 && !t.isAdj() {
			opens := j == 0 || tokens[j-1].pause() || tokens[j-1].in("but", "and", "that", "because")
			return opens && i >= j+2 && !t.in("something", "everything", "nothing", "anything", "morning", "evening", "pudding", "icing", "filling", "dressing", "stuffing", "topping", "seasoning", "washing", "looking", "going", "talking")
		}
		if t.pause() || t.human() && !t.in("them", "it") || t.tagIn("VBD", "VBZ", "VBP", "MD") {
			return false
		}
	}
	return false
}

// thingDid: "the vinegar turned the cabbage pink", "the heat softened the
// butter", "the lid keeps the steam in": a thing, what it did, and to what.
func thingDid(tokens []token, i int) bool {
	t, n := &tokens[i], after(tokens, i, 1)
	if i < 1 || i > 8 || !(n.tagIn("DT", "PRP$") || n.in("it", "them", "everything", "our", "her")) {
		return false
	}
	holds := t.in("keeps", "holds", "stops", "traps", "lets")
	if !holds && !t.in("turned", "softened", "melted", "dried", "hardened", "warped", "cracked", "scorched", "shrank", "stained", "steamed", "wilted", "thinned", "burnt", "toughened", "curdled") {
		return false
	}
	s := &tokens[i-1]
	if !s.isNoun() && s.kind == lexicon.NoKind || s.human() || s.in("it", "they", "one") {
		return false
	}
	if s.kind.Food() || s.in("heat", "cold", "steam", "sun", "oven", "fridge", "grill", "acid", "lid", "foil", "cloth", "paper", "towel", "film", "water", "air", "wind", "salt", "lemon", "juice", "vinegar", "oil", "warmth", "damp", "guard", "rack", "cosy", "glove", "gloves") {
		if holds {
			return true
		}
		if t.norm != "turned" {
			return true
		}
		for j := i + 2; j < len(tokens) && j <= i+7 && !tokens[j].pause(); j++ {
			if tokens[j].describes() || tokens[j].isAdj() {
				return true
			}
		}
	}
	return false
}

// failedThen: "it didn't set, the pineapple was fresh", "the bread didn't rise;
// I forgot the yeast": what did not come about, and beside it what had been done
// or was so.
func failedThen(tokens []token, i int) bool {
	if i < 3 || i+3 >= len(tokens) || !tokens[i].in(",", ";", ":", "-", "--", "–") {
		return false
	}
	failed := false
	for j := i - 1; j > 0 && j >= i-9; j-- {
		t := &tokens[j]
		if t.in("because", "so", "if", "when", "but", "since") {
			return false
		}
		switch t.stem {
		case "rise", "set", "brown", "thicken", "puff", "crisp", "melt", "whip", "prove", "stick", "firm", "foam", "froth", "bind":
			failed = failed || tokens[j-1].in("n't", "not", "never", "hardly", "barely", "dint", "didnt", "wouldnt", "wont")
		}
	}
	if !failed {
		return false
	}
	h := half{tokens: tokens, from: i + 1, to: min(len(tokens), i+12), start: i + 1}
	s, v := h.verb()
	if s < 0 || v < 0 || h.first().joins() || h.first().in("and", "but", "so", "which", "or", "then") {
		return false
	}
	if tokens[s].human() {
		return tokens[v].in("forgot", "left", "put", "opened", "used", "had", "did", "rushed", "overdid") || strings.HasPrefix(tokens[v].norm, "over")
	}
	return tokens[v].in("was", "were") && !tokens[s].in("it", "they", "that", "this", "which") && !after(tokens, v, 1).in("nice", "good", "lovely", "fine", "great", "delicious")
}

// mendedFault: "I turned it down, it was spitting", "I added more milk, it was
// too thick": a change made in the course of the work, and the fault that asked
// for it.
func mendedFault(tokens []token, i int) bool {
	if i < 3 || i+3 >= len(tokens) || !tokens[i].in(",", ";", "-", "--", "–") || !tokens[i+1].in("it", "they") || !after(tokens, i, 2).in("was", "were") {
		return false
	}
	worse := false
	for j := i + 3; j < len(tokens) && j <= i+6 && !tokens[j].pause(); j++ {
		worse = worse || tokens[j].norm == "too" || tokens[j].faulty() || tokens[j].in("spitting", "burning", "catching", "sticking", "smoking", "boiling", "spilling", "falling", "overflowing", "splitting", "sliding", "slipping", "wobbling", "dripping", "getting", "going", "clumping", "drying", "leaking")
	}
	if !worse {
		return false
	}
	for j := max(0, clauseStart(tokens, i)); j < i; j++ {
		if tokens[j].tagIn("VBD") && (j == 0 || tokens[j-1].human()) {
			return tokens[j].in("added", "turned", "moved", "lowered", "covered", "sieved", "strained", "drained", "chucked", "binned", "threw", "swapped", "changed", "stopped", "lifted", "propped", "loosened", "thinned", "scraped", "rinsed", "took", "put", "poured", "opened")
		}
	}
	return false
}

// hinderedBeside: "I didn't use the mixer, it frightens the dog", "use the back
// ring, the front one is wonky", "it was confusing, I had to read it twice": a
// choice and what is wrong with the other, or a trouble and what it made one do.
func hinderedBeside(tokens []token, i int) bool {
	if i < 3 || i+3 >= len(tokens) || !tokens[i].in(",", ";", "-", "--", "–", ":") {
		return false
	}
	t := &tokens[i+1]
	if t.human() && after(tokens, i, 2).norm == "had" && after(tokens, i, 3).norm == "to" {
		for j := i - 1; j > 0 && j >= i-4; j-- {
			if tokens[j].in("confusing", "stiff", "blunt", "broken", "missing", "stuck", "small", "tight", "late", "heavy", "complicated", "fiddly", "tricky", "hard", "empty") {
				return linkingVerb(tokens[j-1].norm) || linkingVerb(tokens[max(0, j-2)].norm)
			}
		}
		return false
	}
	left := false
	for j := max(0, i-8); j+1 < i; j++ {
		left = left || tokens[j].in("did", "do", "could", "ca", "would", "wo") && tokens[j+1].norm == "n't" || tokens[j].norm == "not" && tokens[j+1].tag == "VB" || tokens[j].in("use", "avoid", "mind", "leave", "skip") && j <= 1
	}
	if !left || !(t.tag == "PRP" && !t.human() || t.tagIn("DT", "PRP$")) {
		return false
	}
	for j := i + 2; j < len(tokens) && j <= i+5 && !tokens[j].pause(); j++ {
		if tokens[j].in("wonky", "broken", "blunt", "slippery", "leaks", "leak", "sticks", "frightens", "scares", "hurts", "burns", "spits", "wobbles", "wobbly", "fierce", "jams", "slips", "squashes", "scratches", "ruins", "dries", "wakes", "bites", "cracks", "smells", "loose", "cracked", "filthy", "weak", "tiny", "dangerous") {
			return true
		}
	}
	return false
}

// degreeBehind: "she dropped it, it was that hot", "I had three bowls, they were
// so good": behind a deed, the degree that led to it.
func degreeBehind(tokens []token, i int) bool {
	if i < 2 || i+4 >= len(tokens) || !tokens[i+1].in("it", "they", "he", "she", "i") || !tokens[i+2].in("was", "were", "is", "'s") ||
		!tokens[i+3].in("that", "so") || !tokens[i+4].isAdj() || i+5 < len(tokens) && !tokens[i+5].pause() {
		return false
	}
	for j := clauseStart(tokens, i); j < i; j++ {
		if tokens[j].tag == "VBD" && !linkingVerb(tokens[j].norm) && j > 0 && tokens[j-1].human() {
			return !tokens[j].in("liked", "loved", "thought", "said", "tasted", "enjoyed")
		}
	}
	return false
}

// brought: "onions made me cry", "the smoke set the alarm off", "the steam made
// my glasses fog": a thing, and what it brought about in somebody or something.
func brought(tokens []token, i int) bool {
	t, n := &tokens[i], after(tokens, i, 1)
	if i == 0 || !t.in("made", "makes", "set", "sets") {
		return false
	}
	s := &tokens[i-1]
	if s.human() || s.in("it", "they", "and", "which", "that", "this") || !s.isNoun() && s.kind == lexicon.NoKind {
		return false
	}
	if t.in("set", "sets") {
		return n.tagIn("DT", "PRP$") && after(tokens, i, 2).in("alarm", "alarms", "detector") || n.norm == "off" && s.in("smoke", "steam", "toast")
	}
	if n.tag == "PRP$" && bodily(after(tokens, i, 2)) {
		return after(tokens, i, 3).isVerb() || after(tokens, i, 3).in("run", "water", "tickle", "sting", "tingle", "ache", "burn", "itch")
	}
	return n.in("me", "us", "him", "her", "you") && after(tokens, i, 2).tagIn("VB", "VBP", "NN") && after(tokens, i, 2).in("cry", "sneeze", "cough", "jump", "feel", "gag", "sweat", "want", "laugh", "choke", "drop", "rush", "panic")
}

// wouldHave: "had I known I would have soaked it", "cooked any longer it would
// have dried out": a condition told without "if".
func wouldHave(tokens []token, i int) bool {
	n := after(tokens, i, 1)
	switch {
	case tokens[i].norm == "had" && n.human() && i+2 < len(tokens) && tokens[i+2].isVerb():
	case tokens[i].isVerb() && (n.norm == "any" && after(tokens, i, 2).tagIn("JJR", "RBR")):
	default:
		return false
	}
	if i > 0 && !tokens[i-1].pause() && !tokens[i-1].in("but", "and") {
		return false
	}
	for j := i + 3; j+1 < len(tokens) && j <= i+12; j++ {
		if tokens[j].in("would", "'d", "might", "could", "will", "'ll") && j > 0 && (tokens[j-1].tag == "PRP" || tokens[j-1].isNoun()) {
			return true
		}
	}
	return false
}

// faultNoted: "Cracked cheesecake: left in too long", "Fat not smoking - pale and
// stodgy", "oven wasn't hot enough, Yorkshires stayed flat": a fault, a mark, and
// what had been too much or too little, in either order.
func faultNoted(tokens []token, i int) bool {
	if i < 2 || i+2 >= len(tokens) || !tokens[i].in(":", "-", "--", "–", ",") {
		return false
	}
	from, to := besideMark(tokens, i)
	if tokens[i+1].in("and", "but", "so", "or", "because", "which", "just") || tokens[from].in("and", "but", "if", "when") {
		return false
	}
	before, behind := overdone(tokens, from, i), overdone(tokens, i+1, to)
	left := before && faultyIn(tokens, i+1, to)
	right := behind && faultyIn(tokens, from, i) && tokens[i+1].tagIn("VBN", "VBD", "IN", "RB", "NN", "NNS", "JJ")
	return (left || right) && !(before && behind)
}

// besideMark returns where the pieces before and behind the mark at token i
// begin and end, at most a few words away.
func besideMark(tokens []token, i int) (from, to int) {
	from, to = max(0, i-8), min(len(tokens), i+8)
	for j := i - 1; j >= from; j-- {
		if tokens[j].pause() {
			from = j + 1
			break
		}
	}
	for j := i + 1; j < to; j++ {
		if tokens[j].pause() {
			to = j
			break
		}
	}
	return from, to
}

// overdone reports whether something between two tokens was too much or too
// little: "too long", "not hot enough", "not drained".
func overdone(tokens []token, from, to int) bool {
	for j := from; j+1 < to; j++ {
		t := &tokens[j]
		if t.norm == "too" && tokens[j+1].in("long", "early", "late", "soon", "hot", "cold", "cool", "high", "low", "fast", "quick", "much", "many", "little", "few", "big", "small", "full", "wet", "dry", "thick", "thin") {
			return true
		}
		if t.in("not", "n't") && (tokens[j+1].norm == "enough" || after(tokens, j, 2).norm == "enough" || tokens[j+1].in("hot", "smoking", "greased", "floured", "lined", "sealed", "stirred", "drained", "risen", "rested", "proved", "preheated", "chilled", "soaked", "rinsed")) {
			return true
		}
	}
	return false
}

// faultyIn reports whether a fault of the food is told between two tokens.
func faultyIn(tokens []token, from, to int) bool {
	for j := from; j < to; j++ {
		if tokens[j].faulty() || tokens[j].in("cracked", "sunken", "curdled", "shrunk", "lumps", "spilled", "leaked") {
			return true
		}
	}
	return false
}

// verbalEnd reports whether "was" or "is" with a verb in -ing follows within a
// few words: "the point of the film was keeping flies off".
func verbalEnd(tokens []token, i int) bool {
	for j := i + 2; j+1 < len(tokens) && j <= i+7; j++ {
		if tokens[j].in("was", "is") {
			return tokens[j+1].tag == "VBG"
		}
	}
	return false
}

// thanksGiven: "thanks to my auntie for the lend of her bowl": somebody is
// thanked, and nothing explained.
func thanksGiven(tokens []token, i int) bool {
	for j := i + 2; j < len(tokens) && j <= i+6; j++ {
		if tokens[j].norm == "for" {
			return i == 0 || tokens[i-1].in("many", "big", "special")
		}
		if tokens[j].isVerb() || tokens[j].pause() {
			return false
		}
	}
	return false
}
