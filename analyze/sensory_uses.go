package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// allBlocked reports whether a use that describes nothing covers the whole
// candidate.
func allBlocked(blocked []bool, c candidate) bool {
	for i := c.from; i < c.to; i++ {
		if !blocked[i] {
			return false
		}
	}
	return true
}

// process reports whether the form tells what was to happen to the food, or
// what it was doing meanwhile, and not how it was: "left it to rise", "let it
// bubble", "it set in the fridge", "while the dough was rising". The same verbs
// describe as participles and behind a quality: "well risen", "was bubbling",
// "had set".
func (d sensing) process(tokens []token, c candidate) bool {
	t := &tokens[c.from]
	prev := &token{}
	if c.from > 0 {
		prev = &tokens[c.from-1]
	}
	switch {
	case t.norm == "burning" && t.tag == "VBG" && c.to-c.from == 1 && c.from > 1 && plainBe(prev.norm) && !mouthNear(tokens, c.from):
		return true // "the onion was burning"
	case t.in("freezing", "burning", "bubbling", "boiling") && t.tag == "VBG" && c.to-c.from == 1 && c.from > 1 && plainBe(prev.norm) && during(tokens, c.from):
		return true // "while it was freezing"
	case t.norm == "melt" && c.to-c.from == 1:
		return !prev.in("they", "it", "which") // "snappy at first, then they melt"; but "let the butter melt"
	case t.in("rise", "rising", "prove", "bubble", "bubbling", "swell", "swells", "soften", "thicken", "melt", "wilt", "wilts", "simmer", "sizzle", "froth") && c.to-c.from == 1:
		if t.tag == "VB" && !prev.in("not", "n't", "never") && !afterSubject(tokens, c.from) {
			return true
		}
		start := clauseStart(tokens, c.from)
		return t.tag == "VBG" && start > 0 && tokens[start-1].in("while", "when", "whilst", "as")
	case t.stem == "doubl" || t.stem == "double" || t.in("doubled", "tripled"):
		for j := max(0, c.from-4); j < c.from; j++ {
			if tokens[j].in("until", "till", "til", "once", "when", "if", "let") {
				return true // "when it had doubled": what was waited for
			}
		}
	case t.in("set", "sets") && c.to-c.from == 1:
		if t.isAdj() || prev.in("had", "has", "have", "just", "almost", "nearly", "barely", "was", "were", "is", "n't", "not", "never", "fully", "completely", "lightly") {
			return false
		}
		return c.to < len(tokens) && tokens[c.to].in("like", "as", "into", "before", "in", "on", "overnight", "hard", "while", "for") || prev.norm == "to"
	}
	return false
}

// mouthNear reports whether a part of the mouth is named a few words before
// token i.
func mouthNear(tokens []token, i int) bool {
	for j := max(0, i-4); j < i; j++ {
		if tokens[j].in("mouth", "tongue", "throat", "lips") {
			return true
		}
	}
	return false
}

// during reports whether the clause of token i tells only when.
func during(tokens []token, i int) bool {
	start := clauseStart(tokens, i)
	for j := max(0, start-1); j < i; j++ {
		if tokens[j].in("while", "when", "whilst", "as", "if") {
			return true
		}
	}
	return false
}

// picksOut reports whether a word of size only picks out which part or which
// piece is meant: "the thick end", "the big ones", "the thinner part".
func picksOut(tokens []token, c candidate) bool {
	if c.from == 0 || c.to-c.from != 1 || c.to >= len(tokens) || tokens[c.from-1].norm != "the" {
		return false
	}
	return tokens[c.from].in("thick", "thicker", "thickest", "thin", "thinner", "thinnest", "big", "bigger", "biggest", "small", "smaller", "smallest", "large", "larger", "largest", "short", "long", "little", "fat", "wide", "wider", "flat") &&
		tokens[c.to].in("end", "ends", "part", "parts", "bit", "bits", "one", "ones")
}

// event reports whether the candidate is a verb for what befalls food, which
// tells of no quality where it is only imagined.
func event(tokens []token, c candidate) bool {
	if c.to-c.from > 2 || tokens[c.from].isAdj() {
		return false
	}
	switch tokens[c.from].stem {
	case "drip", "leak", "scorch", "burst", "sink", "sunk", "slump", "shrink", "curl", "spill", "spit", "boil", "overflow", "catch", "bubbl", "curdl", "collaps", "tear", "dome":
		return true
	}
	return false
}

// clauseVerb reports whether a verb that ties no quality to its subject stands
// before token i in its clause.
func clauseVerb(tokens []token, i int) bool {
	for j := i - 1; j >= clauseStart(tokens, i); j-- {
		if tokens[j].isVerb() {
			return !linkingVerb(tokens[j].norm) && !tokens[j].in("found", "find", "looked", "left", "leaving", "made", "makes", "have", "had", "has")
		}
	}
	return false
}

func sizeWord(t *token) bool {
	return t.in("big", "bigger", "biggest", "large", "larger", "small", "smaller", "smallest", "tiny", "huge", "massive", "giant", "enormous", "little", "titchy")
}

// sized reports whether a word of size tells how the finished food looked: said
// of it ("they were huge"), or before another quality ("big uneven holes").
// Before a bare noun it counts out pieces ("big chunks", "a small crack"), and
// behind make or cut it tells the work.
func sized(tokens []token, c candidate) bool {
	if phraseHead(tokens, c.from) >= 0 {
		if c.from > 1 && tokens[c.from-1].norm == "one" && tokens[c.from-2].norm == "into" {
			return true // "spread into one giant biscuit"
		}
		return c.to < len(tokens) && (tokens[c.to].isAdj() || tokens[c.to].norm == "," || crumbHole(&tokens[c.to]) && !subjectIsHuman(tokens, c.from) && !supposed(tokens, c.from))
	}
	v := predicateOf(tokens, c.from)
	if v < 0 {
		// "Huge, golden and hollow."
		return c.from == 0 && c.to+1 < len(tokens) && tokens[c.to].in(",", "and") && tokens[c.to+1].isAdj()
	}
	for j := v + 1; j < c.from; j++ {
		if tokens[j].isVerb() {
			return false // "they were cut too large"
		}
	}
	return !supposed(tokens, c.from)
}

// crumbHole reports whether a noun names what the crumb or the top shows by
// itself, so that its size is seen and counts out no pieces ("a big hole").
func crumbHole(t *token) bool {
	return t.in("hole", "holes", "crack", "cracks", "flake", "flakes", "dip", "dome", "hump", "crater", "craters", "split", "bubble", "bubbles", "hollow")
}

// lumpsCut reports whether lumps are pieces: sized ("in big lumps") or of an
// ingredient ("lumps of butter"), and not denied.
func lumpsCut(tokens []token, c candidate) bool {
	if c.to-c.from != 1 || !tokens[c.from].in("lumps", "lump", "chunks") || c.from == 0 || denied(tokens, c.from) {
		return false
	}
	return sizeWord(&tokens[c.from-1]) || tokens[c.from-1].in("great", "larger", "decent", "good") ||
		c.to+1 < len(tokens) && tokens[c.to].norm == "of" && tokens[c.to+1].kind == lexicon.Ingredient && !tokens[c.to+1].in("flour", "cornflour", "custard", "gelatine")
}

// evenAll reports whether "even" means the same all over ("came out even", "an
// even brown") and not that something is surprising ("even thicker", "he even
// dried up").
func evenAll(tokens []token, c candidate) bool {
	prev := &token{}
	if c.from > 0 {
		prev = &tokens[c.from-1]
	}
	if c.to >= len(tokens) || tokens[c.to].pause() || tokens[c.to].in("and", "but", "all", "on", "in", "across", "because", "so") {
		return predicateOf(tokens, c.from) >= 0 && !subjectIsHuman(tokens, c.from) || prev.in("nice", "more", "less", "very")
	}
	next := &tokens[c.to]
	return (next.isNoun() && next.kind != lexicon.Person || next.tag == "JJ") && (prev.tag == "DT" || !prev.word || prev.in("not", "very", "nice", "and", "more", "in", "with"))
}

// rawFood reports whether "raw" tells how the food was ("still raw in the
// middle", "a raw taste") and not which food is meant ("the raw chicken").
func (d sensing) rawFood(tokens []token, i int) bool {
	if h := phraseHead(tokens, i); h >= 0 && h-i <= 3 {
		_, named := senseOfNoun(tokens[h].norm)
		return named || tokens[h].in("middle", "centre", "inside", "bits", "bit", "edge", "patch", "patches", "layer", "line", "streak", "bottom", "base")
	}
	v := predicateOf(tokens, i)
	if v >= 0 {
		if s, ok := senseOfVerb(tokens[v].norm); ok && s != lexicon.Sight {
			return true // "till it stopped smelling raw"
		}
	}
	return v >= 0 && !supposed(tokens, i)
}

// amongColours reports whether a noun that is also a colour stands in a list
// with one: "bright, orange and purple".
func (d sensing) amongColours(tokens []token, i int) bool {
	if i > 0 && tokens[i-1].norm == "of" {
		return false // "the smell was of orange": the fruit
	}
	for _, j := range []int{i - 2, i + 2} {
		if j < 0 || j >= len(tokens) || !tokens[(i+j)/2].in("and", ",", "&") {
			continue
		}
		for _, r := range d.words.singles[tokens[j].norm] {
			if r.sense == lexicon.Sight && tokens[j].kind == lexicon.NoKind {
				return true
			}
		}
	}
	return false
}

// tastes reports whether the clause speaks of taste, so that hot means spiced.
func (d sensing) tastes(tokens []token, i int) bool {
	for j := max(0, i-8); j < len(tokens) && j < i+6; j++ {
		if s, ok := senseOfVerb(tokens[j].norm); ok && s == lexicon.Tongue {
			return true
		}
		if s, ok := senseOfNoun(tokens[j].norm); ok && s == lexicon.Tongue {
			return true
		}
		if tokens[j].in("spicy", "chilli", "chili", "spice", "curry", "mustard", "ginger", "pepper", "mouth", "sauce", "salsa", "tongue", "finish") {
			return true
		}
	}
	return false
}

// temperature reports whether a word of heat or cold tells how the food was to
// eat. Most often it tells of the oven, of waiting or of keeping food safe
// ("let it go cold", "the oil was hot"), and then it describes no food.
//
//   - hot counts as a taste where the clause speaks of taste or spice;
//   - warm counts behind smell and taste ("smelt warm and earthy");
//   - any of them counts in a list with another quality ("minty and cool");
//   - cold and cool count when said of a dish or a part as it was ("the middle
//     was cold"), not of fat or water and not behind let, wait, once or until.
func (d sensing) temperature(tokens []token, i int) bool {
	t := &tokens[i]
	if d.tastes(tokens, i) {
		return true
	}
	v := predicateOf(tokens, i)
	if h := phraseHead(tokens, i); h >= 0 && !strings.HasSuffix(tokens[h].norm, "ing") {
		_, named := senseOfNoun(tokens[h].norm)
		return named || t.in("warm", "hot") && h == i+1 && tokens[h].in("ginger", "cinnamon", "nutmeg", "cumin", "spice", "spices", "spicing", "clove", "cloves", "chilli", "cardamom", "pepper")
	}
	if d.listed(tokens, i) {
		return true
	}
	if v < 0 {
		return false
	}
	if _, ok := senseOfVerb(tokens[v].norm); ok && !t.in("hot", "hotter", "hottest") {
		return true
	}
	if t.in("hot", "lukewarm", "tepid") && eatenHot(tokens, i, v) {
		return true
	}
	if t.in("hot", "hotter", "hottest", "warm", "warmer") || supposed(tokens, i) {
		return false
	}
	start := clauseStart(tokens, i)
	for j := max(0, start-1); j < i; j++ {
		if tokens[j].in("let", "leave", "left", "wait", "waited", "until", "till", "once", "before", "when", "while", "after", "keep", "kept", "if", "chill", "has", "have") {
			return false
		}
	}
	s := subject(tokens, v)
	if s < 0 {
		return false
	}
	sub := &tokens[s]
	return sub.kind == lexicon.DishNoun || sub.kind == lexicon.PartNoun || sub.in("mine", "rest", "bit", "piece", "inside", "outside") ||
		sub.kind == lexicon.Ingredient && !sub.in("water", "oil", "fat", "butter", "milk", "cream", "chocolate", "jam", "stock")
}

// eatenHot reports whether hot, said of a dish or of "it" by the verb of being at
// token v, tells how it was to eat: the sentence names no tool, place or fat
// that may be meant, and the clause does not only tell when.
func eatenHot(tokens []token, i, v int) bool {
	s := subject(tokens, v)
	if !plainBe(tokens[v].norm) || s < 0 || !tokens[s].in("it", "they", "sauce", "soup", "curry", "stew", "inside", "filling", "middle") || supposed(tokens, i) || during(tokens, i) {
		return false
	}
	for j := max(0, i-reach/2); j < len(tokens) && j <= i+reach/2; j++ {
		t := &tokens[j]
		if t.kind == lexicon.Tool || t.kind == lexicon.Place || t.kind == lexicon.Cloth || t.in("oil", "fat", "butter", "water", "milk", "stock", "syrup", "sugar", "ghee", "careful", "burnt", "burned", "once", "until", "till", "before", "while", "when", "after", "cool", "cooled", "wait", "enough") {
			return false
		}
	}
	return true
}

// listed reports whether "and" or a comma ties the word at token i to another
// quality of the list that is no temperature.
func (d sensing) listed(tokens []token, i int) bool {
	for _, step := range []int{-1, 1} {
		j := i + step
		for step < 0 && j > 0 && (tokens[j].isAdv() && !tokens[j].describes() || tokens[j].in("a", "bit", "little", "touch", "almost")) {
			j-- // "tangy and | a bit hot"
		}
		if j < 0 || j >= len(tokens) || !tokens[j].in("and", ",", "&", "but") {
			continue
		}
		j += step
		for j > 0 && j < len(tokens) && (tokens[j].isAdv() && !tokens[j].describes() || tokens[j].in("and", "so", "a", "bit")) {
			j += step
		}
		if j < 0 || j >= len(tokens) || !tokens[j].isAdj() && !tokens[j].isVerb() && tokens[j].kind != lexicon.NoKind || tokens[j].in("wet", "dry", "damp", "clean", "deep", "cold", "hot", "cool", "warm") {
			continue
		}
		if tokens[j].describes() && phraseHead(tokens, max(i, j)) < 0 {
			return true
		}
	}
	return false
}
