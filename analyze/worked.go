package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// cooked reports whether the verb of a method at hit h tells what somebody did
// to food: a person is its subject, or nobody in a note without "I" ("Crimped
// it twice"), or it was done ("the mince was overworked"), or the work itself
// is spoken of ("Peeling was long"). Food that does something by itself ("it
// boiled over") shows no method, nor does a quality before a noun ("fried
// onions").
func (d areas) cooked(s *sentence, h hit) bool {
	tokens, i := s.tokens, h.from
	t := &tokens[i]
	switch {
	case t.isNoun() && !strings.HasSuffix(t.norm, "ing"), t.isAdj() && !noteParticiple(tokens, i):
		return false
	case strings.HasSuffix(t.norm, "ing"):
		return ofWork(tokens, i)
	case attributeOf(tokens, i):
		return false
	}
	return doneBySomebody(tokens, i)
}

// doneBySomebody reports whether the verb at token i has a person as its
// subject, or none at all, or is said in the passive.
func doneBySomebody(tokens []token, i int) bool {
	start := clauseStart(tokens, i)
	for j := i - 1; j >= start; j-- {
		t := &tokens[j]
		switch {
		case t.in("was", "were", "been", "being", "be", "got", "is", "are", "'s", "'re"):
			return tokens[i].tagIn("VBN", "VBD", "JJ")
		case t.isAdv() || t.tag == "MD" || t.in("had", "has", "have", "'ve", "did", "do", "n't", "to", "then", "just", "all", "both", "always", "even"):
			continue
		case t.in("it", "they", "that", "which", "this", "these", "those"):
			return false
		}
		break
	}
	sub := subject(tokens, i)
	if sub < 0 {
		return true
	}
	if tokens[sub].human() || tokens[sub].tag == "NNP" || tokens[sub].tag == "PRP" && !tokens[sub].in("it", "they") {
		return true
	}
	// "Plums halved and stoned": food and what was done to it, without a verb.
	return tokens[i].tagIn("VBN", "VBD") && noteParticiple(tokens, i) || between(tokens, sub, i, "and", ",", "then")
}

// between reports whether one of the words stands between tokens a and b.
func between(tokens []token, a, b int, words ...string) bool {
	for j := a + 1; j < b; j++ {
		if tokens[j].in(words...) {
			return true
		}
	}
	return false
}

// noteParticiple reports whether token i is a participle that stands behind
// the food it was done to, in a clause without any other verb.
func noteParticiple(tokens []token, i int) bool {
	start, end := clauseStart(tokens, i), clauseEnd(tokens, i)
	if i == start || !(strings.HasSuffix(tokens[i].norm, "ed") || tokens[i].in("cut", "beaten", "ground", "torn", "shook", "split")) {
		return false
	}
	p := &tokens[i-1]
	if !(p.kind.Food() || p.kind == lexicon.Tool || p.isAdv() || p.in("and", "+", "&", "them", "em", "it")) {
		return false
	}
	if i+1 < len(tokens) && tokens[i+1].tagIn("DT", "PRP$", "PRP") {
		return false // "the mint cooled my mouth"
	}
	for j := start; j < end; j++ {
		if j != i && tokens[j].tagIn("VBD", "VBZ", "VBP", "MD") && !tokens[j].card.works {
			return false
		}
	}
	return true
}

// attributeOf reports whether the participle at token i only names a kind of
// the noun behind it: "the mashed potato", "with fried onions".
func attributeOf(tokens []token, i int) bool {
	if i+1 >= len(tokens) || !tokens[i+1].isNoun() && !tokens[i+1].isAdj() || !strings.HasSuffix(tokens[i].norm, "ed") && tokens[i].tag != "VBN" {
		return false
	}
	if i == 0 {
		return !opensNote(tokens, i) && tokens[i].tag != "VBD"
	}
	p := &tokens[i-1]
	return p.tagIn("DT", "PRP$", "IN", "JJ", "CD", "POS", "NN", "NNS") || p.in("with", "of", "some", "like", "the")
}

// ofWork reports whether the "-ing" form at token i speaks of work done: as
// what a clause is about ("Whipping took three minutes", "the shaping"), behind
// "by", "kept", "after" or a comma. It names no tool ("rolling pin"), no part
// of the dish ("icing") and nothing that food does by itself.
func ofWork(tokens []token, i int) bool {
	t := &tokens[i]
	if t.in("icing", "seasoning", "topping", "filling", "dressing", "frosting", "stuffing", "coating", "glazing", "boiling", "warming", "cooling", "melting", "cooking", "baking", "roasting", "steaming", "resting", "browning", "reducing", "thickening", "heating", "spreading", "cracking") && !(i > 0 && tokens[i-1].in("by", "kept", "keep", "for", "from")) {
		return false
	}
	if i+1 < len(tokens) && (tokens[i+1].kind == lexicon.Tool || tokens[i+1].in("board", "boards", "pin", "powder", "water", "sheet", "paper", "pan", "oil")) && !(i+1 < len(tokens) && tokens[i+1].tag == "DT") {
		return false
	}
	if i == 0 {
		return true
	}
	for j := i - 1; j >= 0 && j >= i-3; j-- {
		p := &tokens[j]
		switch {
		case p.in("by", "kept", "keep", "after", "before", "when", "from", "started", "stopped", "stop", "start", "without", "of", "for", "the", "my", "his", "her", "skipped", "and"):
			return true
		case p.human():
			return true
		case p.pause():
			return true
		case p.in("was", "were", "is", "are", "'s"):
			k := subject(tokens, i)
			return k >= 0 && tokens[k].human()
		}
	}
	return false
}

// handledFood reports whether the everyday verb at hit h tells how food was
// worked: something of the kitchen is its object, and its half-sentence says
// in what manner, for how long, till when or into what.
func (d areas) handledFood(s *sentence, h hit) bool {
	tokens, i := s.tokens, h.from
	t := &tokens[i]
	if !t.isVerb() || strings.HasSuffix(t.norm, "ing") || !doneBySomebody(tokens, i) {
		return false
	}
	end := min(halfEnd(tokens, i), i+16)
	object := -1
	for j := i + 1; j < end && j <= i+7; j++ {
		if o := &tokens[j]; o.kind.Food() && o.kind != lexicon.DishNoun || o.in("it", "them", "em") && j <= i+2 {
			object = j
			break
		} else if o.human() || o.in("that", "what", "because", "so") {
			return false
		}
	}
	if object < 0 {
		return false
	}
	return d.mannered(s, h) || d.tellsManner(tokens, i+1, end)
}

// tellsManner reports whether the words from one token to another say in what
// manner, for how long, till when or into what something was done.
func (d areas) tellsManner(tokens []token, from, to int) bool {
	for j := from; j < to; j++ {
		t := &tokens[j]
		next := &token{card: t.card}
		if j+1 < len(tokens) {
			next = &tokens[j+1]
		}
		switch {
		case t.in("until", "till", "halfway", "apart", "flat", "gradually", "sideways", "lengthways", "diagonally", "thin", "thick", "chunky"):
			return true
		case means(d).manner(t.norm):
			return true
		case t.in("too", "into", "through", "under", "between", "underneath", "inside") && next.word:
			return true
		case t.tag == "JJR" || t.tag == "RBR":
			return true
		case t.tag == "CD" && (next.kind == lexicon.Time || next.in("min", "mins", "minutes", "seconds", "hour", "hours", "lots", "goes", "batches", "layers")):
			return true
		}
	}
	return false
}
