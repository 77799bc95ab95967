package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// flat matches an adverb without its ending: behind its verb ("cook it slow",
// "whisked it hard"), as a pair ("low and slow"), or between marks in a note of
// work ("go brown, slow, over half an hour").
func (d means) flat(tokens []token, i int) (int, bool) {
	t, n := &tokens[i], after(tokens, i, 1)
	if t.norm == "low" {
		return i + 3, n.in("and", "n", "&", "'n", "'n'") && after(tokens, i, 2).norm == "slow"
	}
	if i == 0 || t.in("high", "medium") {
		return 0, false
	}
	if t.norm != "hard" && (tokens[i-1].norm == "," || tokens[i-1].norm == ":") && (n.pause() || n.norm == "") {
		return i + 1, d.technique(tokens, max(0, i-reach), i) && !d.told(tokens, i-1)
	}
	switch t.norm {
	case "gentle", "careful", "gradual", "tight", "even", "thorough", "steady":
		// "fold it in gentle", "did it dead careful"
		return i + 1, (n.pause() || n.norm == "" || n.in("so", "because", "cos", "till", "until", "and")) && d.bareManner(tokens, i)
	case "fast":
		return i + 1, !n.isNoun() && !tokens[i-1].in("too", "so") && d.flatBehind(tokens, i, 4)
	case "slow":
		return i + 1, !n.isNoun() && n.norm != "cooker" && d.flatBehind(tokens, i, 4)
	case "hard":
		of := tokens[i-1].in("it", "them") || tokens[i-1].isVerb() || tokens[i-1].kind.Food()
		return i + 1, of && (n.pause() || n.in("for", "until", "till", "and", "the", "with")) && d.flatBehind(tokens, i, 4)
	}
	return 0, false
}

// flatBehind reports whether the verb before token i, at most back tokens away,
// is one that is done slow or hard.
func (d means) flatBehind(tokens []token, i, back int) bool {
	for j := i - 1; j >= 0 && j >= i-back; j-- {
		if !tokens[j].isVerb() {
			continue
		}
		if tokens[i].norm == "fast" {
			return tokens[j].in("worked", "work", "working") || tokens[j].card.works && !generic(tokens[j].stem)
		}
		if tokens[i].norm == "slow" {
			if j > 0 && tokens[j-1].in("it", "they") {
				return false // "it melts slow"
			}
			if tokens[j].in("add", "added", "put", "pour", "poured", "stir") {
				return true
			}
			return tokens[j].in("done", "did", "doing", "do") || tokens[j].card.works && !generic(tokens[j].stem) && !tokens[j].in("drop", "dropped", "set")
		}
		switch tokens[j].stem {
		case "whisk", "beat", "boil", "knead", "shake", "shook", "squeez", "press", "stir", "scrub", "mix":
			return true
		}
		return false
	}
	return false
}

// bareManner reports whether an adverb without its ending at token i belongs to
// what somebody did to "it" or "them" right before.
func (d means) bareManner(tokens []token, i int) bool {
	for j := i - 1; j > 0 && j >= i-4; j-- {
		if tokens[j].in("it", "them", "em", "'em") {
			v := &tokens[j-1]
			return (v.card.works && !v.isNoun() || v.in("did", "done", "do", "doing")) && (j == 1 || !tokens[j-2].in("makes", "keep", "keeps", "made"))
		}
		if !(tokens[j].isAdv() || tokens[j].tagIn("RP", "IN") || tokens[j].in("dead", "real", "proper", "well", "nice", "and", "slow", "right", "in")) {
			return false
		}
	}
	return false
}

// doubled returns how many tokens a word of measure or pace takes that stands
// twice at token i, as in many Englishes ("put it in small small", "little and
// little"), or 0.
func doubled(tokens []token, i int) int {
	if i+1 >= len(tokens) || !tokens[i].in("small", "little", "slow", "slowly", "bit", "drop", "softly") {
		return 0
	}
	switch {
	case tokens[i+1].norm == tokens[i].norm:
		return 2
	case tokens[i+1].norm == "and" && after(tokens, i, 2).norm == tokens[i].norm:
		return 3
	}
	return 0
}

// keptUp reports whether a verb of moving food on and on stands before token i:
// "stirred it all the time".
func (d means) keptUp(tokens []token, i int) bool {
	for j := clauseStart(tokens, i); j < i; j++ {
		switch tokens[j].stem {
		case "stir", "whisk", "beat", "shake", "shook", "turn", "swirl", "knead", "mix", "move":
			return true
		}
	}
	return false
}

// asCould matches "as gently as I could".
func asCould(tokens []token, i int) bool {
	how := after(tokens, i, 1)
	if how.in("low", "high", "hot", "slow", "fast") && after(tokens, i, 2).norm == "as" && after(tokens, i, 3).norm == "it" && after(tokens, i, 4).in("goes", "would", "will", "went", "could") {
		return true // "as low as it goes"
	}
	return (how.isAdv() && strings.HasSuffix(how.norm, "ly") || how.in("fast", "slow", "tight", "hard", "quick", "low", "high", "close")) && after(tokens, i, 2).norm == "as" &&
		after(tokens, i, 3).human() && after(tokens, i, 4).in("could", "can", "dared")
}

// direction reports whether the word at token i tells which way food was cut or
// work was ordered: "sliced lengthways", "planned it backwards".
func (d means) direction(tokens []token, i int) bool {
	for j := clauseStart(tokens, i); j < i; j++ {
		switch tokens[j].stem {
		case "plan", "wrote", "written", "count":
			return true
		}
	}
	return clauseHasVerb(tokens, i) && d.cooking(tokens, i)
}

// awayFromSomebody matches "peeled away from me", "poured it away from you".
func (d means) awayFromSomebody(tokens []token, i int) bool {
	return after(tokens, i, 1).norm == "from" && (after(tokens, i, 2).in("me", "you", "him", "her", "us", "them", "myself", "yourself", "himself", "herself", "themselves", "themself", "ourselves", "meself", "mysel", "himsel", "hersel", "hisself", "yersel", "oneself") || after(tokens, i, 3).in("body", "face", "hand", "hands", "tummy", "arm", "arms", "fingers")) &&
		(d.cooking(tokens, i) || i > 1 && tokens[i-1].norm == "," && d.technique(tokens, clauseStart(tokens, i-1), i) || i > 0 && tokens[i-1].in("going", "pointing", "facing", "tilted", "lid", "it", "them"))
}

// likeSomebody matches a model that was followed ("like Mum does", "like you
// showed me") and the hold of the hand ("tucked under like a claw").
func (d means) likeSomebody(tokens []token, i int) (int, bool) {
	for n := 2; n <= 4; n++ {
		if after(tokens, i, n).norm == "claw" {
			return i + n + 1, true
		}
	}
	if d.foldedLike(tokens, i) || d.handLike(tokens, i) {
		return i + 3, true
	}
	if after(tokens, i, 1).in("mad", "crazy", "fury", "billyo", "billy-o", "clockwork") {
		return i + 2, d.cookedNear(tokens, i)
	}
	if who := after(tokens, i, 1); (who.kind == lexicon.Person || who.tag == "PRP" || who.tag == "PRP$" || who.in("miss", "sir")) && (d.cooking(tokens, i) || d.inHand(tokens, i)) {
		for n := 2; n <= 4; n++ {
			if after(tokens, i, n).in("does", "did", "do", "showed", "taught", "said", "told", "shows") {
				return i + n + 1, true
			}
		}
	}
	return 0, false
}

// foldedLike matches a shape that the hand gave: "folded it like a letter".
func (d means) foldedLike(tokens []token, i int) bool {
	if i == 0 || !after(tokens, i, 1).in("a", "an") || i+2 >= len(tokens) {
		return false
	}
	for j := i - 1; j >= 0 && j >= i-4; j-- {
		switch tokens[j].stem {
		case "fold", "wrap", "twist", "plait", "pleat":
			return tokens[j].isVerb() && j+1 < i
		}
	}
	return false
}

// wayShown matches a way of working that somebody gave: "the way the packet
// said", "how Gran does it". "I like the way it looks" gives none.
func (d means) wayShown(tokens []token, i int) (int, bool) {
	n := 1
	if tokens[i].norm == "the" {
		if after(tokens, i, 1).norm != "way" {
			return 0, false
		}
		n = 2
	}
	if i == 0 || !d.cooking(tokens, i) && !d.deed(tokens, i) || tokens[i-1].in("show", "showed", "shown", "know", "knew", "learn", "learned", "learnt", "like", "liked", "love", "me", "about", "remember", "see", "is", "was", "forgot", "of") {
		return 0, false
	}
	if who := after(tokens, i, n); !(who.human() || who.tagIn("DT", "PRP$", "PRP", "NNP") || who.kind == lexicon.Person) {
		return 0, false
	}
	for k := n + 1; k <= n+3; k++ {
		if after(tokens, i, k).in("says", "said", "told", "showed", "shows", "does", "did", "do", "taught") {
			return i + k + 1, true
		}
	}
	return 0, false
}

// adverb reports whether the word at token i is an adverb that tells in what
// manner somebody worked food.
func (d means) adverb(tokens []token, i int) bool {
	t := &tokens[i]
	if !d.manner(t.norm) || !d.cookedNear(tokens, i) && !d.actedOnFood(tokens, i) || !d.bySomebody(tokens, i) {
		return false
	}
	if i == 0 && after(tokens, i, 2).pause() || d.wished(tokens, i) {
		return false // "Evenly cracked, …" describes; "I will stir it slowly" plans
	}
	if i > 1 && tokens[i-1].norm == "so" && after(tokens, i, 1).norm == "that" && workBefore(tokens, i) >= 0 {
		return true // "sliced so finely that you could see through it"
	}
	if t.norm == "carefully" {
		return true
	}
	if i > 0 && tokens[i-1].in("melting", "dissolving", "crumbling") {
		return false
	}
	return t.isAdv() && !after(tokens, i, 1).in("enough", "because", "as") && !(i > 0 && tokens[i-1].in("how", "too", "so", "cook", "'d", "would"))
}

// actedOnFood reports whether the adverb at token i stands right behind a food
// that somebody did something to: "I softened the peppers slowly".
func (d means) actedOnFood(tokens []token, i int) bool {
	if !tokens[i].in("slowly", "gently", "gradually", "lightly", "firmly", "separately") || i < 3 || !tokens[i-1].kind.Food() && !tokens[i-1].in("it", "them") {
		return false
	}
	for j := i - 2; j > 0 && j >= i-4; j-- {
		if tokens[j].isVerb() {
			return tokens[j].tagIn("VBD", "VB", "VBP") && tokens[j-1].human() && !tokens[j-1].in("it", "they") && !tokens[j].in("ate", "eat", "had", "like", "liked")
		}
	}
	return false
}

// manner reports whether an adverb tells in what manner food was worked.
func (d means) manner(w string) bool {
	switch w {
	case "slowly", "gently", "gradually", "constantly", "thinly", "finely", "firmly", "vigorously", "continuously", "separately", "lightly", "roughly", "thoroughly", "briskly", "steadily", "quickly", "bit-by-bit", "coarsely", "individually", "evenly", "sideways", "softly", "methodically", "sensibly", "calmly", "patiently", "delicately", "swiftly", "rapidly", "repeatedly", "sparingly", "tightly", "loosely", "neatly", "carefully":
		return true
	}
	return false
}

// bySomebody reports whether the verb that the adverb at token i belongs to is
// done by a person or told as a step: no food stands right before it as its
// subject ("the heat built slowly").
func (d means) bySomebody(tokens []token, i int) bool {
	start := clauseStart(tokens, i)
	for j := i - 1; j >= start; j-- {
		t := &tokens[j]
		if t.isVerb() || t.card.works && !t.isNoun() {
			if j == start {
				return true
			}
			s := &tokens[j-1]
			return s.human() || s.norm == "to" || s.in("and", "then", "n't", "not", "time") || s.isAdv() || s.tag == "MD" || s.isVerb()
		}
	}
	return i+1 < len(tokens) && tokens[i+1].isVerb()
}

// wished reports whether the clause before token i tells what is to be done or
// would be, not what was.
func (d means) wished(tokens []token, i int) bool {
	for j := clauseStart(tokens, i); j < i; j++ {
		if tokens[j].in("will", "'ll", "would", "'d", "task", "aim", "should", "shall") {
			return true
		}
	}
	return false
}
