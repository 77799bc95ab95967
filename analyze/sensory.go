package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// sensoryWord is a word or short phrase about the food that a reader can see,
// smell, taste or feel.
type sensoryWord struct {
	span
	from, to int // tokens
	sense    lexicon.Sense
	word     string // the list's headword; "" when the list has none
	denied   bool
	supposed bool // only imagined or meant: it says nothing of how the food was
	other    bool // of another time's dish
}

// sensing finds sensory words and decides their sense by what they describe.
type sensing struct{ words *vocabulary }

// candidate is a form of the list found at tokens[from:to].
type candidate struct {
	from, to int
	readings []sensed
	open     bool // found by its place in the sentence, not on the list
}

func (d sensing) read(r *reading) {
	var heading lexicon.Sense
	for i := range r.sentences {
		s := &r.sentences[i]
		if h, ok := onlySense(s); ok {
			heading = h
		} else if h, ok := headingSense(s.tokens); ok {
			heading = h
		} else if startsWithHeading(s.tokens) {
			heading = ""
		}
		s.sensory = d.find(s, heading)
	}
}

// onlySense returns the sense that a heading which stands alone names.
func onlySense(s *sentence) (lexicon.Sense, bool) {
	if !isHeading(s) {
		return "", false
	}
	var found lexicon.Sense
	for i := range s.tokens {
		if sense, ok := senseOfNoun(s.tokens[i].norm); ok {
			if found != "" {
				return "", true
			}
			found = sense
		}
	}
	return found, true
}

// headingSense returns the sense that a sentence's heading names ("Taste:"),
// if it names just one.
func headingSense(tokens []token) (lexicon.Sense, bool) {
	var found lexicon.Sense
	for i := 0; i < len(tokens) && i < 5; i++ {
		if tokens[i].norm == ":" || tokens[i].norm == "-" || tokens[i].norm == "--" {
			return found, found != ""
		}
		if s, ok := senseOfNoun(tokens[i].norm); ok {
			if found != "" {
				return "", false
			}
			found = s
		}
	}
	return "", false
}

func startsWithHeading(tokens []token) bool {
	for i := 0; i < len(tokens) && i < 5; i++ {
		if tokens[i].norm == ":" {
			return true
		}
	}
	return false
}

func (d sensing) find(s *sentence, heading lexicon.Sense) []sensoryWord {
	tokens := s.tokens
	blocked := make([]bool, len(tokens))
	for _, h := range d.words.unsensed.find(tokens) {
		for i := h.from; i < h.to; i++ {
			blocked[i] = true
		}
	}
	var found []candidate
	for i := 0; i < len(tokens); {
		c, ok := d.at(tokens, i)
		if !ok {
			i++
			continue
		}
		if allBlocked(blocked, c) || d.process(tokens, c) || picksOut(tokens, c) || !d.describesFood(tokens, c) {
			i++
			continue
		}
		found = append(found, c)
		i = c.to
	}
	found = joinNeighbours(tokens, d.comparisons(tokens, found))
	var out []sensoryWord
	for n, c := range found {
		w := sensoryWord{
			span: span{tokens[c.from].start, tokens[c.to-1].end},
			from: c.from, to: c.to,
			denied:   denied(tokens, c.from) || denying(tokens, c),
			supposed: supposed(tokens, c.from),
			other:    otherTime(tokens, c.from),
		}
		r := d.choose(tokens, found, n, heading)
		w.sense, w.word = r.sense, r.head
		out = append(out, w)
	}
	return out
}

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
	case t.in("rise", "rising", "prove", "bubble", "bubbling", "swell", "swells", "soften", "thicken", "melt", "wilt", "wilts", "simmer", "sizzle", "froth") && c.to-c.from == 1:
		if t.tag == "VB" && !prev.in("not", "n't", "never") && !afterSubject(tokens, c.from) {
			return true
		}
		start := clauseStart(tokens, c.from)
		return t.tag == "VBG" && start > 0 && tokens[start-1].in("while", "when", "whilst", "as")
	case t.in("set", "sets") && c.to-c.from == 1:
		if t.isAdj() || prev.in("had", "has", "have", "just", "almost", "nearly", "barely", "was", "were", "is", "n't", "not", "never", "fully", "completely", "lightly") {
			return false
		}
		return c.to < len(tokens) && tokens[c.to].in("like", "as", "into", "before", "in", "on", "overnight", "hard", "while", "for") || prev.norm == "to"
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

// joinNeighbours makes one phrase of words that stand side by side with
// nothing between them: "dark brown", "creamy white", "big uneven holes". The
// last one gives the sense.
func joinNeighbours(tokens []token, found []candidate) []candidate {
	var out []candidate
	for _, c := range found {
		if n := len(out); n > 0 && !c.open && !out[n-1].open && out[n-1].to == c.from && tokens[c.from].norm != "like" && !namesSense(&tokens[c.from]) && !endsInVerb(tokens, out[n-1]) && tokens[out[n-1].to-1].word && (sharesSense(out[n-1], c) && !gloss(&tokens[out[n-1].to-1]) || shades(tokens, out[n-1], c)) && !tokens[c.from].isVerbForm() {
			c.from = out[n-1].from
			out[n-1] = c
			continue
		}
		out = append(out, c)
	}
	return out
}

// namesSense reports whether the token is the noun of a sense: "a warm | smell
// of cinnamon" tells two things.
func namesSense(t *token) bool {
	_, ok := senseOfNoun(t.norm)
	return ok
}

// endsInVerb reports whether a candidate tells what the food did ("bubbled
// up", "sank"): what follows is said of it by itself.
func endsInVerb(tokens []token, c candidate) bool {
	last := &tokens[c.to-1]
	return last.isVerbForm() || c.to-c.from > 1 && (last.tag == "RP" || last.tag == "IN" || last.tag == "CD" || tokens[c.from].isVerbForm())
}

// shades reports whether the first word only tells the shade of the colour
// that follows: "strong orange", "creamy white".
func shades(tokens []token, a, b candidate) bool {
	return a.to-a.from == 1 && len(b.readings) == 1 && b.readings[0].sense == lexicon.Sight &&
		tokens[a.from].in("strong", "deep", "light", "dark", "rich", "warm", "dusty", "creamy", "muddy", "pale", "dull", "intense", "soft") &&
		!(tokens[a.from].norm == "soft" && b.to < len(tokens) && tokens[b.to].isNoun() && tokens[b.to].kind.Food())
}

// gloss reports whether the word tells of a surface or an outline, which is
// another thing than the colour after it: "shiny brown", "a dull yellow".
func gloss(t *token) bool {
	return t.in("shiny", "glossy", "dull", "matt", "even", "uneven", "smooth", "neat", "round", "flat", "bubbly", "lacy", "patchy")
}

func sharesSense(a, b candidate) bool {
	return len(a.readings) == 1 && len(b.readings) == 1 && a.readings[0].sense == b.readings[0].sense
}

// denying reports whether the phrase itself holds its denial ("not sweet
// enough" listed as a whole is a quality, "n't" inside is not).
func denying([]token, candidate) bool { return false }

// otherTime reports whether the clause speaks of a dish made before.
func otherTime(tokens []token, i int) bool {
	for j := clauseStart(tokens, i); j < i; j++ {
		if tokens[j].in("last", "previous", "previously", "usually", "normally") && j+1 < len(tokens) && (tokens[j+1].kind == lexicon.Time || tokens[j+1].in("time", "week", "month", "one", "ones", "batch") || tokens[j].norm != "last") {
			return true
		}
	}
	return false
}

// at looks the list up at token i, the longest phrase first.
func (d sensing) at(tokens []token, i int) (candidate, bool) {
	t := &tokens[i]
	if !t.word {
		return candidate{}, false
	}
	first := t.norm
	if h := strings.IndexByte(first, '-'); h > 0 {
		first = first[:h]
	}
	for _, p := range d.words.phrases[first] {
		if to, ok := phraseAt(tokens, i, p.words); ok {
			c := candidate{from: i, to: to}
			for _, q := range d.words.phrases[first] {
				if strings.Join(q.words, " ") == strings.Join(p.words, " ") {
					c.readings = append(c.readings, q.sensed)
				}
			}
			return c, true
		}
	}
	if r := d.words.singles[t.norm]; len(r) > 0 {
		return candidate{from: i, to: i + 1, readings: r}, true
	}
	// "reddish-brown", "semi-soft": the last part decides.
	if h := strings.LastIndexByte(t.norm, '-'); h > 0 {
		if r := d.words.singles[t.norm[h+1:]]; len(r) > 0 && !strings.HasPrefix(t.norm, "deep-") && !strings.HasPrefix(t.norm, "pan-") {
			return candidate{from: i, to: i + 1, readings: r}, true
		}
	}
	return candidate{}, false
}

// phraseAt reports whether the words stand at token i and where they end. A
// hyphen in the text is as good as a space.
func phraseAt(tokens []token, i int, words []string) (int, bool) {
	n := 0
	for j := i; j < len(tokens); j++ {
		for rest, more := tokens[j].norm, true; more; n++ {
			var part string
			part, rest, more = strings.Cut(rest, "-")
			if n == len(words) || part != words[n] {
				return 0, false
			}
		}
		if n == len(words) {
			return j + 1, true
		}
	}
	return 0, false
}

// describesFood decides by what a listed form describes: an adjective by the
// noun it stands before or the subject it is said of, a verb by who does it.
func (d sensing) describesFood(tokens []token, c candidate) bool {
	t := &tokens[c.from]
	last := &tokens[c.to-1]
	switch t.tag {
	case "IN", "DT", "PRP", "PRP$", "CC", "TO", "MD", "RP", "WDT", "WRB", "EX":
		return c.to-c.from > 1
	}
	if t.isAdv() && d.words.adverb(t.norm) && c.to-c.from == 1 {
		// "evenly browned" speaks of the food, "stirred evenly" of the work;
		// "faintly sweet" only says how sweet.
		return t.in("evenly", "unevenly", "patchily") && c.to < len(tokens) && (tokens[c.to].isAdj() || tokens[c.to].tag == "VBN")
	}
	if len(c.readings) > 0 && c.to-c.from == 1 {
		if t.norm == "raw" && !d.rawFood(tokens, c.from) {
			return false
		}
		if t.isNoun() && (t.kind == lexicon.Ingredient || t.kind == lexicon.DishNoun) && !d.adjectival(t.norm) && !d.predicate(tokens, c.from) && !d.amongColours(tokens, c.from) {
			return false // cream, caramel, tart: the food itself
		}
		if t.in("hot", "hotter", "hottest", "warm", "warmer", "cold", "colder", "cool", "cooler", "lukewarm", "tepid") && !d.temperature(tokens, c.from) {
			return false
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

// evenAll reports whether "even" means the same all over ("came out even", "an
// even brown") and not that something is surprising ("even thicker", "he even
// dried up").
func evenAll(tokens []token, c candidate) bool {
	prev := &token{}
	if c.from > 0 {
		prev = &tokens[c.from-1]
	}
	if c.to >= len(tokens) || tokens[c.to].pause() || tokens[c.to].in("and", "but", "all", "on", "in", "across", "because", "so") {
		return afterLinkingVerb(tokens, c.from) || prev.in("and", ",", "nice", "more", "less", "very")
	}
	next := &tokens[c.to]
	return (next.isNoun() && next.kind != lexicon.Person || next.tag == "JJ") && (prev.tag == "DT" || prev.word == false || prev.in("not", "very", "nice", "and", "more", "in", "with"))
}

// rawFood reports whether "raw" tells how the food was ("still raw in the
// middle", "a raw taste") and not which food is meant ("the raw chicken").
func (d sensing) rawFood(tokens []token, i int) bool {
	if h := phraseHead(tokens, i); h >= 0 && h-i <= 2 {
		_, named := senseOfNoun(tokens[h].norm)
		return named || tokens[h].in("middle", "centre", "inside", "bits", "bit", "edge", "patch", "patches")
	}
	return predicateOf(tokens, i) >= 0 && !supposed(tokens, i)
}

// amongColours reports whether a noun that is also a colour stands in a list
// with one: "bright, orange and purple".
func (d sensing) amongColours(tokens []token, i int) bool {
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

// predicate reports whether token i is said of a subject: it stands right
// after a linking verb.
func (d sensing) predicate(tokens []token, i int) bool {
	v := predicateOf(tokens, i)
	return v >= 0 && i-v <= 2 && !(i > 0 && (tokens[i-1].tag == "DT" || tokens[i-1].tag == "PRP$"))
}

// tastes reports whether the clause speaks of taste, so that hot means spiced.
func (d sensing) tastes(tokens []token, i int) bool {
	for j := max(0, i-8); j < len(tokens) && j < i+5; j++ {
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
	if h := phraseHead(tokens, i); h >= 0 {
		_, named := senseOfNoun(tokens[h].norm)
		return named
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
	return sub.kind == lexicon.DishNoun || sub.kind == lexicon.PartNoun || sub.in("mine", "rest", "salmon", "veg") ||
		sub.kind == lexicon.Ingredient && !sub.in("water", "oil", "fat", "butter", "milk", "cream", "chocolate", "jam", "stock")
}

// listed reports whether "and" or a comma ties the word at token i to another
// quality of the list that is no temperature.
func (d sensing) listed(tokens []token, i int) bool {
	for _, step := range []int{-1, 1} {
		j := i + step
		if j < 0 || j >= len(tokens) || !tokens[j].in("and", ",", "&", "but") {
			continue
		}
		j += step
		for j > 0 && j < len(tokens) && (tokens[j].isAdv() && !d.words.describes(tokens[j].norm) || tokens[j].in("and", "so", "a", "bit")) {
			j += step
		}
		if j < 0 || j >= len(tokens) || !tokens[j].isAdj() && !tokens[j].isVerb() && tokens[j].kind != lexicon.NoKind || tokens[j].in("wet", "dry", "damp", "clean", "deep") {
			continue
		}
		if d.words.describes(tokens[j].norm) && phraseHead(tokens, max(i, j)) < 0 {
			return true
		}
	}
	return false
}

// cutTo reports whether the form tells the size something was cut, rolled or
// made to: "cut the florets small", "slice them thinner".
func (d sensing) cutTo(tokens []token, i int) bool {
	if !tokens[i].in("thin", "thinner", "thick", "thicker", "small", "smaller", "big", "bigger", "large", "larger", "fine", "finer", "short", "shorter", "long", "longer", "flat", "neater", "chunky", "tiny") {
		return false
	}
	if i+1 < len(tokens) && tokens[i+1].isNoun() {
		return false
	}
	for j := i - 1; j >= 0 && j >= i-6; j-- {
		if tokens[j].isNoun() {
			continue // "the slices were thicker"
		}
		switch tokens[j].stem {
		case "cut", "slice", "chop", "roll", "make", "tear", "dice", "grate", "shape", "go", "squash", "stretch":
			if tokens[j].in("went", "made") {
				return false
			}
			return true
		}
		if tokens[j].pause() {
			return false
		}
	}
	return false
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
	object := c.to < len(tokens) && !extent(tokens, c.to) && (tokens[c.to].tag == "DT" || tokens[c.to].tag == "PRP$" || tokens[c.to].in("it", "them", "all", "each", "some", "two", "three", "half") || tokens[c.to].isNoun() && tokens[c.to].kind.Food())
	if i == 0 || tokens[i-1].pause() {
		return object
	}
	prev := &tokens[i-1]
	switch {
	case t.tag == "VB" && prev.in("to", "and", "then", "not", "n't"):
		return object || prev.norm == "to" && !afterSubject(tokens, i)
	case t.tag == "VBG" && (prev.tag == "IN" || prev.in("when", "while")) && object:
		return true
	}
	if t.tag == "VBN" && c.to < len(tokens) && tokens[c.to].isNoun() && attributive(tokens, i) {
		return false // "a shaggy, cracked lump"
	}
	if t.tag == "VBN" && prev.tag != "PRP" {
		if v := predicateOf(tokens, i); v >= 0 && tokens[v].in("be", "is", "was", "were", "are", "been", "'s", "get", "got") {
			return false
		}
	}
	if s := subject(tokens, i); s >= 0 && tokens[s].human() && !afterLinkingVerb(tokens, i) {
		return true
	}
	if prev.in("and", "then", ",") && object {
		return true
	}
	return false
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
	if h.human() || h.inert() && !h.in("sound", "noise", "feel", "contrast", "note", "temperature", "heat", "kick", "hit", "line", "lines", "ring", "rings", "mark", "marks", "shape", "pattern", "air", "trail", "water", "steam", "spot", "spots", "hint") {
		return false
	}
	if h.in("water") && !tokens[c.from].in("green", "pink", "brown", "grey", "cloudy", "orange", "red", "yellow") {
		return false
	}
	if h.in("plate", "bowl", "shirt", "board", "sauce-boat") {
		return false
	}
	if h.in("heat", "temperature", "air", "steam", "line", "lines", "ring") && h.kind == lexicon.Other && !predicateNear(tokens, c.from) {
		return false
	}
	full := tokens[c.from].norm + " " + h.norm
	if k := d.words.nouns.Kind(full); k != lexicon.NoKind && head == c.to {
		return false // brown sugar, sweet potato: a name
	}
	if (h.kind == lexicon.Ingredient || h.in("one", "ones", "bits", "pieces", "pieces", "chocolate")) && d.words.lex.Reading.States[tokens[c.from].norm] && d.action(tokens, c.from) {
		return false
	}
	return true
}

func predicateNear(tokens []token, i int) bool { return predicateOf(tokens, i) >= 0 }

// action reports whether the clause tells what somebody did with something, so
// that an ingredient's quality in it is its state before use.
func (d sensing) action(tokens []token, i int) bool {
	start := clauseStart(tokens, i)
	for j := i - 1; j >= start; j-- {
		t := &tokens[j]
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
			return true
		}
	}
	return false
}

// inertSubject reports whether the form is said of a thing that is no food or
// of a person.
func (d sensing) inertSubject(tokens []token, c candidate) bool {
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
	s := subject(tokens, at)
	if s < 0 && v >= 0 && tokens[v].norm == "its" {
		return d.antecedentInert(tokens, v)
	}
	if s < 0 {
		return false
	}
	sub := &tokens[s]
	if doneThing(tokens, s, at) {
		return true
	}
	if sub.kind == lexicon.Person && sub.tag == "NNS" && v >= 0 && tokens[v].in("was", "is", "wasnt", "came", "went", "looked") && s > 0 && tokens[s-1].tag == "PRP$" {
		return false // "my brothers was still pink": my brother's, his piece
	}
	if v >= 0 && tokens[v].norm == "its" {
		return d.antecedentInert(tokens, v)
	}
	if sub.human() {
		return v < 0 || !tokens[v].in("got", "get", "kept", "keep", "went", "come", "came")
	}
	if sub.in("it", "they", "this", "that", "these", "which") {
		return d.antecedentInert(tokens, s)
	}
	return sub.inert() && !sub.in("sound", "noise", "heat", "finish", "temperature", "steam", "shape", "result", "contrast", "bowl", "plate")
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

// choose decides between the senses a form can speak to.
func (d sensing) choose(tokens []token, all []candidate, n int, heading lexicon.Sense) sensed {
	c := all[n]
	form := tokenText(tokens, c)
	if s, ok := d.overruled(tokens, c, form); ok {
		return sensed{head: c.readings[0].head, sense: s}
	}
	if len(c.readings) == 1 {
		return c.readings[0]
	}
	head := phraseHead(tokens, c.to-1)
	verb := predicateOf(tokens, c.from)
	subj := -1
	if verb >= 0 {
		subj = subject(tokens, verb)
	}
	best, bestScore := c.readings[0], -1
	for _, r := range c.readings {
		score := prior(r.sense)
		if u, ok := d.words.lex.Reading.Usual[form]; ok && u == r.sense {
			score += 8
		} else if u, ok := d.words.lex.Reading.Usual[r.head]; ok && u == r.sense {
			score += 8
		}
		if verb >= 0 {
			if s, ok := senseOfVerb(tokens[verb].norm); ok && s == r.sense {
				score += 20
			}
		}
		for j := c.to; j < head; j++ {
			if s, ok := senseOfNoun(tokens[j].norm); ok && s == r.sense {
				score += 24
			}
		}
		for _, at := range []int{head, subj} {
			if at < 0 {
				continue
			}
			if s, ok := senseOfNoun(tokens[at].norm); ok && s == r.sense {
				score += 24
			}
			for _, of := range r.of {
				if tokens[at].norm == of || singular(tokens[at].norm) == of {
					score += 3
					break
				}
			}
		}
		if heading == r.sense {
			score += 8
		}
		if s, ok := d.named(tokens, c.from); ok && s == r.sense {
			score += 7
		}
		for m := max(0, n-4); m < len(all) && m <= n+4; m++ {
			o := all[m]
			if m != n && len(o.readings) == 1 && o.readings[0].sense == r.sense && near(tokens, c, o) {
				score++
				break
			}
		}
		if score > bestScore {
			best, bestScore = r, score
		}
	}
	return best
}

// named returns the sense that a noun or verb of perception names earlier in
// the sentence, the nearest one.
func (d sensing) named(tokens []token, i int) (lexicon.Sense, bool) {
	for j := i - 1; j >= 0 && j >= i-16; j-- {
		if tokens[j].norm == "," && j > 0 && tokens[i].norm != "like" {
			if _, ok := senseOfNoun(tokens[j-1].norm); ok {
				break // "smoky smell, juicy inside"
			}
		}
		if s, ok := senseOfNoun(tokens[j].norm); ok && !tokens[j].in("kick", "bite", "crunch", "finish", "surface") {
			return s, true
		}
		if s, ok := senseOfVerb(tokens[j].norm); ok {
			return s, true
		}
		if tokens[j].norm == ";" || tokens[j].norm == "." {
			break
		}
	}
	return "", false
}

// overruled returns the sense where the list's own does not hold: a form whose
// usual sense is another, and words for taste after "smell" or for aroma after
// "taste", which serve for both.
func (d sensing) overruled(tokens []token, c candidate, form string) (lexicon.Sense, bool) {
	if c.open {
		return "", false
	}
	offers := func(s lexicon.Sense) bool {
		for _, r := range c.readings {
			if r.sense == s {
				return true
			}
		}
		return false
	}
	if u, ok := d.words.lex.Reading.Usual[form]; ok && !offers(u) {
		return u, true
	}
	s, ok := lexicon.Sense(""), false
	if h := phraseHead(tokens, c.to-1); h >= 0 {
		s, ok = senseOfNoun(tokens[h].norm)
	}
	if !ok {
		if v := predicateOf(tokens, c.from); v >= 0 {
			s, ok = senseOfVerb(tokens[v].norm)
		} else {
			s, ok = d.named(tokens, c.from)
		}
	}
	switch {
	case ok && tokens[c.from].norm == "like" && !offers(s):
		return s, true // "looked like baby food"
	case ok && s == lexicon.Smell && !offers(s) && offers(lexicon.Tongue):
		return s, true
	case ok && s == lexicon.Tongue && !offers(s) && offers(lexicon.Smell):
		return s, true
	}
	return "", false
}

func tokenText(tokens []token, c candidate) string {
	parts := make([]string, 0, c.to-c.from)
	for _, t := range tokens[c.from:c.to] {
		parts = append(parts, t.norm)
	}
	return strings.Join(parts, " ")
}

// near reports whether two candidates stand in one list: only adverbs, commas
// and "and" between them.
func near(tokens []token, a, b candidate) bool {
	if a.from > b.from {
		a, b = b, a
	}
	if b.from-a.to > 4 {
		return false
	}
	for j := a.to; j < b.from; j++ {
		if t := &tokens[j]; !t.isAdv() && !t.in("and", ",", "but", "or", "a", "bit", "with") && !t.isAdj() {
			return false
		}
	}
	return true
}

// prior is how much a sense is preferred where nothing else decides.
func prior(s lexicon.Sense) int {
	switch s {
	case lexicon.Touch:
		return 5
	case lexicon.Tongue:
		return 2
	case lexicon.Sight:
		return 1
	}
	return 0
}

// senseOfVerb returns the sense that a verb of perception names.
func senseOfVerb(w string) (lexicon.Sense, bool) {
	switch {
	case strings.HasPrefix(w, "tast"):
		return lexicon.Tongue, true
	case strings.HasPrefix(w, "smel"):
		return lexicon.Smell, true
	case strings.HasPrefix(w, "look"):
		return lexicon.Sight, true
	case strings.HasPrefix(w, "feel"), w == "felt", strings.HasPrefix(w, "sound"):
		return lexicon.Touch, true
	}
	return "", false
}

// senseOfNoun returns the sense that a noun names.
func senseOfNoun(w string) (lexicon.Sense, bool) {
	switch strings.TrimSuffix(w, "s") {
	case "taste", "flavour", "flavor", "aftertaste", "seasoning", "kick", "tang":
		return lexicon.Tongue, true
	case "smell", "aroma", "scent", "fragrance", "odour", "whiff":
		return lexicon.Smell, true
	case "colour", "color", "appearance", "look", "shade", "finish", "surface", "presentation", "shape":
		return lexicon.Sight, true
	case "texture", "consistency", "mouthfeel", "feel", "bite", "crunch":
		return lexicon.Touch, true
	}
	return "", false
}

func singular(w string) string { return strings.TrimSuffix(w, "s") }
