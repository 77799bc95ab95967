package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// inertSubject reports whether the form is said of a thing that is no food or
// of a person.
func (d sensing) inertSubject(tokens []token, c candidate) bool {
	if heardDoing(tokens, c.from) {
		return false
	}
	v := predicateOf(tokens, c.from)
	at := v
	if c.from > 0 && v >= 0 && tokens[v].in("keep", "kept", "get", "got") && tokens[c.from-1].isNoun() && c.from-1 > v && tokens[c.from-1].inert() {
		return true // "kept my fingers curled"
	}
	if v < 0 {
		if tokens[c.from].isVerb() {
			at = c.from
		} else {
			// "left my hands sticky", "made the kitchen hot": the noun right
			// before is what it is said of.
			if c.from > 0 && tokens[c.from-1].isNoun() {
				o := &tokens[c.from-1]
				return o.inert() || o.human()
			}
			return false
		}
	}
	if v >= 0 && (strings.HasPrefix(tokens[v].norm, "smel") || tokens[v].norm == "smelt") {
		return false // "the kitchen smelt sweet"
	}
	if v > 0 && tokens[v-1].norm == "there" {
		return false // "I was sure there was nothing pink"
	}
	s := subject(tokens, at)
	if s < 0 && v >= 0 && tokens[v].norm == "its" {
		return d.antecedentInert(tokens, v)
	}
	if s < 0 {
		return false
	}
	if tokens[s].inert() {
		s = wholeSubject(tokens, s, at)
	}
	sub := &tokens[s]
	if sub.inert() && (onlyFood(&tokens[c.from]) || holdsFood(tokens, s)) {
		return false // "the legs were juicier", "the lower tray stayed pale"
	}
	if doneThing(tokens, s, at) {
		return true
	}
	if sub.kind == lexicon.Person && sub.tag == "NNS" && v >= 0 && tokens[v].in("was", "is", "wasnt", "came", "went", "looked") && s > 0 && tokens[s-1].tag == "PRP$" {
		return false // "my brothers was still pink": my brother's, his piece
	}
	if v >= 0 && tokens[v].norm == "its" {
		return d.antecedentInert(tokens, v)
	}
	if sub.norm == "you" && c.to-c.from > 2 {
		return false // "you could stand a spoon up in it": anybody could
	}
	if sub.human() {
		return v < 0 || !tokens[v].in("got", "get", "kept", "keep", "went", "come", "came")
	}
	if sub.norm == "water" && clouded(&tokens[c.from]) && !tokens[c.from].in("cloudy", "milky") {
		return false // "the water went white"
	}
	if sub.in("it", "they", "this", "that", "these", "which") {
		return d.antecedentInert(tokens, s)
	}
	return sub.inert() && !sub.in("sound", "noise", "heat", "finish", "temperature", "steam", "shape", "result", "contrast", "bowl", "plate")
}

// wholeSubject returns the food that the verb before "and" at token v is said of
// and that goes on being spoken of, where the noun at token s right before only
// belongs to the first verb: "the onions took fifty minutes and became brown".
func wholeSubject(tokens []token, s, v int) int {
	and := v - 1
	for and > 0 && tokens[and].isAdv() {
		and--
	}
	if and <= s || !tokens[and].in("and", "then", "but") {
		return s
	}
	for u := clauseStart(tokens, v) + 1; u < s; u++ {
		if tokens[u].isVerbForm() {
			if first := subject(tokens, u); first >= 0 && tokens[first].kind.Food() {
				return first
			}
			return s
		}
	}
	return s
}

// onlyFood reports whether nothing but food is ever said to be so.
func onlyFood(t *token) bool {
	for _, root := range []string{"chew", "juic", "crunch", "crisp", "crumbl", "goo", "stodg", "sogg", "dough", "flak", "clagg", "fluff", "moist", "tender", "undercook", "overcook", "spic", "salt", "bland", "meat"} {
		if strings.HasPrefix(t.norm, root) && t.isAdj() {
			return true
		}
	}
	return false
}

// holdsFood reports whether the vessel at token s stands for what is in it: one
// of several ("the lower tray", "the second pan", "a full pan").
func holdsFood(tokens []token, s int) bool {
	switch singular(tokens[s].norm) {
	case "tray", "pan", "tin", "batch", "rack", "shelf":
	default:
		return false
	}
	return s > 0 && tokens[s-1].in("first", "second", "third", "last", "next", "other", "top", "bottom", "lower", "upper", "full", "crowded", "whole", "middle")
}

// doneThing reports whether the subject that ends at token s is a doing
// ("rolling them was messy", "making custard is harder").
func doneThing(tokens []token, s, v int) bool {
	start := clauseStart(tokens, v)
	return tokens[start].tag == "VBG" && start < s && start+3 >= s && !tokens[start].kind.Food()
}

// antecedentInert decides what "it" or "they" stands for by the nouns of the
// clauses before it in the sentence: inert only if none of them is food.
func (d sensing) antecedentInert(tokens []token, s int) bool {
	inert := false
	for j := clauseStart(tokens, s) - 1; j >= 0 && j >= s-reach; j-- {
		t := &tokens[j]
		if t.in("it", "them") && t.in("it") == tokens[s].in("it", "its", "this", "that") && j > 0 && tokens[j-1].isVerb() {
			// "I tasted it with a spoon and it was peppery": the same thing
			// goes on, and what was named before it decides.
			return d.antecedentInert(tokens, j)
		}
		if !t.isNoun() {
			continue
		}
		if t.kind.Food() || t.kind == lexicon.NoKind && !t.in("everything", "own", "rest") {
			return false
		}
		plural := t.tag == "NNS" || t.tag == "NNPS"
		if plural != tokens[s].in("they", "these", "them") {
			continue // "the pan … they": something else
		}
		if t.kind == lexicon.Tool || t.kind == lexicon.Place || t.kind == lexicon.Body || t.kind == lexicon.Cloth {
			inert = true
		}
	}
	return inert
}
