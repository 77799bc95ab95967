package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// describesFood decides by what a listed form describes: an adjective by the
// noun it stands before or the subject it is said of, a verb by who does it.
func (d sensing) describesFood(tokens []token, c candidate) bool {
	t := &tokens[c.from]
	last := &tokens[c.to-1]
	switch t.tag {
	case "IN", "DT", "PRP", "PRP$", "CC", "TO", "MD", "RP", "WDT", "WRB", "EX":
		return c.to-c.from > 1
	}
	if strings.HasSuffix(t.norm, "ing") && heardDoing(tokens, c.from) {
		return true // "you could hear the crust crackling"
	}
	if reeks(t.norm) && c.from > 0 && tokens[c.from-1].kind == lexicon.Place {
		return true // "the whole house stank"
	}
	if c.to-c.from == 1 && calledSo(tokens, c.from) {
		return false
	}
	if t.isAdv() && t.card.adverb && c.to-c.from == 1 {
		// "evenly browned" speaks of the food, "stirred evenly" of the work;
		// "faintly sweet" only says how sweet.
		return t.in("evenly", "unevenly", "patchily") && c.to < len(tokens) && (tokens[c.to].isAdj() || tokens[c.to].tag == "VBN")
	}
	if len(c.readings) > 0 && c.to-c.from == 1 {
		if t.norm == "raw" && !d.rawFood(tokens, c.from) {
			return false
		}
		if t.isNoun() && !didItself(tokens, c.from) && (t.kind == lexicon.Ingredient || t.kind == lexicon.DishNoun) && !d.adjectival(t.norm) && !d.predicate(tokens, c.from) && !d.amongColours(tokens, c.from) {
			return false // cream, caramel, tart: the food itself
		}
		if t.kind == lexicon.Ingredient && c.from > 0 && tokens[c.from-1].norm == "of" && !d.adjectival(t.norm) {
			return false // "the smell was of orange"
		}
		if sizeWord(t) && !sized(tokens, c) {
			return false
		}
		if t.norm == "fat" {
			return plumpAs(tokens, c.from)
		}
		if t.in("grease", "crystals") && !amountLeft(tokens, c.from) {
			return false
		}
		if t.in("hot", "hotter", "hottest", "warm", "warmer", "cold", "colder", "cool", "cooler", "lukewarm", "tepid") && !d.temperature(tokens, c.from) {
			return false
		}
		if t.norm == "acid" && !d.predicate(tokens, c.from) && phraseHead(tokens, c.from) < 0 {
			return false // "the acid makes it fizz"
		}
		if t.norm == "clean" && !d.tastes(tokens, c.from) {
			return false
		}
		if t.norm == "even" && !evenAll(tokens, c) {
			return false
		}
		if d.cutTo(tokens, c.from) {
			return false
		}
	}
	if c.to-c.from > 1 && !last.isAdj() {
		return !d.inertSubject(tokens, c)
	}
	if d.doing(tokens, c) {
		return false
	}
	if t.isNoun() && t.kind == lexicon.NoKind || t.isAdj() || t.tag == "VBN" || t.tag == "VBG" || t.isVerb() || t.isAdv() || t.isNoun() {
		if head := phraseHead(tokens, c.to-1); head >= 0 && !t.isVerbForm() && !(last.isNoun() && !d.adjectival(last.norm)) {
			return d.describedBy(tokens, c, head)
		}
	}
	return !d.inertSubject(tokens, c)
}

// calledSo reports whether a word that is also a first name names a person:
// with a capital inside the sentence, or at its start before "from", "had" and
// what else people do ("Ruby had two").
func calledSo(tokens []token, i int) bool {
	t := &tokens[i]
	if !t.in("ruby", "rosie", "rosier", "rosy", "amber", "olive", "ginger", "hazel", "violet", "scarlet", "rose", "poppy", "heather", "sunny", "rusty", "sandy") || t.text == t.norm || t.text == strings.ToUpper(t.text) {
		return false
	}
	if i > 0 && !tokens[i-1].pause() {
		return true
	}
	return i == 0 && len(tokens) > 1 && tokens[1].in("had", "has", "from", "said", "says", "ate", "liked", "loved", "wanted", "helped", "'s", "who", "did", "thought", "asked", "got")
}

// didItself reports whether the tagger took for a noun what "it" or "they" did:
// "it crumbles then melts".
func didItself(tokens []token, i int) bool {
	return i > 0 && tokens[i-1].in("it", "they") && strings.HasSuffix(tokens[i].norm, "s") && (i+1 == len(tokens) || !tokens[i+1].isNoun())
}

// predicate reports whether token i is said of a subject: it stands right
// after a linking verb.
func (d sensing) predicate(tokens []token, i int) bool {
	v := predicateOf(tokens, i)
	return v >= 0 && i-v <= 2 && !(i > 0 && (tokens[i-1].tag == "DT" || tokens[i-1].tag == "PRP$"))
}

// isVerbForm reports whether the token is a finite verb.
func (t *token) isVerbForm() bool { return t.tag == "VBD" || t.tag == "VBZ" || t.tag == "VBP" }

// adjectival reports whether the form has the look of an adjective, whatever
// the tagger says.
func (d sensing) adjectival(w string) bool {
	return strings.HasSuffix(w, "y") || strings.HasSuffix(w, "ish") || strings.HasSuffix(w, "en") || strings.HasSuffix(w, "ed")
}

// doing reports whether the form is something that somebody did: "I browned
// the meat", "creamed the butter", "by melting", "to soften".
func (d sensing) doing(tokens []token, c candidate) bool {
	i := c.from
	t := &tokens[i]
	if !t.isVerb() {
		return false
	}
	if heardDoing(tokens, i) {
		return false
	}
	if c.to+1 < len(tokens) && (t.tag == "VBN" || t.tag == "VBD") && tokens[c.to].norm == "by" && tokens[c.to+1].in("hand", "me", "mum", "dad", "myself") {
		return true // "squashed by hand"
	}
	if workedOver(tokens, c) {
		return true
	}
	object := c.to < len(tokens) && !extent(tokens, c.to) && (tokens[c.to].tag == "DT" || tokens[c.to].tag == "CD" || tokens[c.to].tag == "PRP$" || tokens[c.to].in("it", "them", "all", "each", "some", "two", "three", "half") || tokens[c.to].isNoun() && tokens[c.to].kind.Food())
	if c.to < len(tokens) && (t.tag == "VBN" && tokens[c.to].isNoun() && attributive(tokens, i) || tokens[c.to].in("stripes", "edges", "corners", "patches", "marks", "lines", "spots", "tips")) {
		return false // "a shaggy, cracked lump", "charred stripes", "curling edges"
	}
	if c.to+1 < len(tokens) && tokens[c.to].norm == "," && (tokens[c.to+1].tag == "VBG" || tokens[c.to+1].tag == "VBN" || tokens[c.to+1].isAdj()) {
		if h := phraseHead(tokens, c.to+1); h >= 0 && tokens[h].kind == lexicon.PartNoun {
			return false // "bronzed, curling edges"
		}
	}
	if i >= 3 && tokens[i-1].norm == "to" && tokens[i-3].norm == "from" {
		return false // "from shiny to dull"
	}
	if i == 0 || tokens[i-1].pause() {
		return object
	}
	prev := &tokens[i-1]
	switch {
	case t.tag == "VB" && prev.in("to", "and", "then", "not", "n't"):
		return object || prev.norm == "to" && !afterSubject(tokens, i)
	case t.tag == "VB" && object && prev.in("said", "says", "just", "you", "always", "please"):
		return true // "Dad said swirl the pan"
	case t.tag == "VBG" && (prev.tag == "IN" || prev.in("when", "while")) && object:
		return true
	}
	if t.tag == "VBN" && prev.tag != "PRP" {
		if v := predicateOf(tokens, i); v >= 0 && tokens[v].in("be", "is", "was", "were", "are", "been", "'s", "get", "got") {
			return false
		}
	}
	if s := subject(tokens, i); s >= 0 && tokens[s].human() && !afterLinkingVerb(tokens, i) {
		if tokens[s].norm == "they" && !object && t.in("melt", "crumble", "snap", "flake", "wobble", "crunch", "ooze") {
			return false // of the biscuits
		}
		return true
	}
	if prev.in("and", "then", ",") && object {
		return true
	}
	return false
}

// workedOver reports whether a participle behind a form of be tells a step by
// where or with what it was done: "it was melted over simmering water", "were
// toasted in a dry pan".
func workedOver(tokens []token, c candidate) bool {
	if c.to-c.from != 1 || c.from == 0 || !tokens[c.from].tagIn("VBN", "VBD") || !plainBe(tokens[c.from-1].norm) || !after(tokens, c.from, 1).in("over", "in", "with", "on", "under") {
		return false
	}
	switch tokens[c.from].stem {
	case "melt", "soften", "toast", "brown", "caramelis", "crush", "fri", "steam", "whip", "mash", "squash":
	default:
		return false
	}
	h := objectHead(tokens, c.to)
	return h >= 0 && h-c.to <= 4 && (tokens[h].kind == lexicon.Tool || tokens[h].in("water", "flame", "heat", "microwave", "pan", "butter", "oil", "ghee"))
}

// attributive reports whether token i stands in a noun phrase: only adjectives,
// adverbs and commas between it and an article, a number or a possessive.
func attributive(tokens []token, i int) bool {
	for j := i - 1; j >= 0 && j >= i-5; j-- {
		switch t := &tokens[j]; {
		case t.tag == "DT" || t.tag == "PRP$" || t.tag == "CD":
			return true
		case t.isAdj() || t.isAdv() || t.in(",", "and") || t.tag == "VBN" || t.isNoun() && j == i-2:
		default:
			return false
		}
	}
	return false
}

// extent reports whether the words at token i tell how much or how far ("a
// bit", "all over", "a lot") and are no object of the verb before them.
func extent(tokens []token, i int) bool {
	if i+1 >= len(tokens) {
		return false
	}
	next := &tokens[i+1]
	switch tokens[i].norm {
	case "a", "the":
		return next.in("bit", "little", "lot", "touch", "tad", "fraction", "whole", "once") || next.in("few") && i+2 < len(tokens) && tokens[i+2].kind == lexicon.Time
	case "all":
		return next.in("over", "round", "around", "along", "through", "down", "up", "across", "together") || next.norm == "the" && i+2 < len(tokens) && tokens[i+2].in("way", "time")
	case "half":
		return next.in("way", "an")
	}
	return false
}

// afterSubject reports whether an infinitive tells what the food does ("began
// to brown", "started to ooze") and not what it was done for.
func afterSubject(tokens []token, i int) bool {
	return i >= 2 && tokens[i-2].in("began", "started", "starting", "beginning", "tended", "begins", "starts", "managed", "seemed", "seems", "tends", "turned", "going", "refused", "wants", "wanted", "due", "kept")
}

// describedBy decides for an adjective before the noun at head.
func (d sensing) describedBy(tokens []token, c candidate, head int) bool {
	h := &tokens[head]
	if h.human() || h.inert() && !h.in("sound", "noise", "feel", "contrast", "note", "temperature", "heat", "kick", "hit", "line", "lines", "ring", "rings", "mark", "marks", "shape", "pattern", "air", "trail", "water", "steam", "spot", "spots", "hint", "strings", "string", "stuff", "way") {
		return false
	}
	if h.in("water") && !clouded(&tokens[c.from]) {
		return false
	}
	if h.norm == "way" && !(c.from > 1 && tokens[c.from-1].norm == "a" && tokens[c.from-2].norm == "in") || h.norm == "stuff" && !clouded(&tokens[c.from]) {
		return false // but "in a stinky way", "that white stuff"
	}
	if h.in("plate", "bowl", "shirt", "board", "sauce-boat") {
		return false
	}
	if h.in("heat", "temperature", "air", "steam", "line", "lines", "ring") && h.kind == lexicon.Other && !predicateNear(tokens, c.from) {
		return false
	}
	full := tokens[c.from].norm + " " + h.norm
	graded := c.from > 0 && tokens[c.from-1].in("really", "very", "so", "quite", "too", "lovely", "nice", "such")
	if k := d.words.nouns.Kind(full); k != lexicon.NoKind && head == c.to && !graded {
		return false // brown sugar, sweet potato: a name
	}
	if (h.kind == lexicon.Ingredient || h.in("one", "ones", "bits", "pieces", "chocolate", "yolk", "yolks")) && d.words.lex.Reading.States[tokens[c.from].norm] && d.action(tokens, c.from) {
		return false
	}
	return true
}

// clouded reports whether the word tells a colour that food gives to water.
func clouded(t *token) bool {
	return t.in("green", "pink", "brown", "grey", "cloudy", "orange", "red", "yellow", "white", "purple", "milky")
}

func predicateNear(tokens []token, i int) bool { return predicateOf(tokens, i) >= 0 }

// action reports whether the clause tells what somebody did with something, so
// that an ingredient's quality in it is its state before use.
func (d sensing) action(tokens []token, i int) bool {
	start := clauseStart(tokens, i)
	for j := i - 1; j >= start; j-- {
		t := &tokens[j]
		if t.in("see", "saw", "notice", "noticed", "spot", "spotted") && !t.card.works {
			return false // "you could see green bits"
		}
		if linkingVerb(t.norm) && !t.in("get", "got", "keep", "kept", "turned", "turn") || t.in("had", "has", "have", "with", "like") {
			return false
		}
		if t.isVerb() {
			return true
		}
	}
	// "Fresh parsley, chopped": a note of what was done. A note without any
	// verb ("Soft, sweet onions.") tells how the food was.
	if predicateNear(tokens, i) || i-start > 2 {
		return false
	}
	for j := i + 1; j < len(tokens) && j <= i+reach && !closesClause(tokens[j].norm); j++ {
		if tokens[j].isVerb() {
			return i == 0 || tokens[i-1].norm != ":" || !linkingVerb(tokens[j].norm) // "Taste: soft potato, onion is sweet"
		}
	}
	return false
}
