package analyze

import (
	"strings"
	"unicode"

	"saywhy/analyze/perceptron"
	"saywhy/lexicon"
)

// Tagger assigns a Penn Treebank tag to each word of a sentence. It must be
// safe for many goroutines. analyze/perceptron has the one in use.
type Tagger interface {
	// Look looks a word up, so that this need not be done in every sentence.
	Look(word string) perceptron.Word

	// TagWords appends to tags as many as it is given words.
	TagWords(words []perceptron.Word, tags []string) []string
}

// tagging gives the tokens of a sentence their tags, stems and kinds.
type tagging struct {
	tagger Tagger
	words  *vocabulary
}

func (t tagging) read(r *reading) {
	var room tagRoom
	size := t.words.needs.size()
	meets := make(numbers, size*len(r.sentences))
	for i := range r.sentences {
		r.sentences[i].meets, meets = meets[:size:size], meets[size:]
		t.tag(&r.sentences[i], &room)
	}
}

// tagRoom is memory that one sentence after the other is tagged in.
type tagRoom struct {
	words []perceptron.Word
	tags  []string
}

func (t tagging) tag(s *sentence, room *tagRoom) {
	shouting := mostlyCapitals(s.tokens)
	words := room.words[:0]
	for i := range s.tokens {
		tok := &s.tokens[i]
		tok.card = t.words.card(tok.norm)
		if w := tok.norm; tok.word && w != "i" && !shouting && isCapital(tok.text) && i > 0 {
			words = append(words, t.tagger.Look(strings.ToUpper(w[:1])+w[1:]))
			continue
		}
		words = append(words, tok.card.looked)
	}
	tags := t.tagger.TagWords(words, room.tags[:0])
	room.words, room.tags = words, tags
	for i := range s.tokens {
		tok := &s.tokens[i]
		tok.tag = tags[i]
		if !tok.word {
			continue
		}
		if !(len(tok.text) <= 3 && isCapital(tok.text) && !shouting) {
			tok.norm = tok.card.mended
		}
		tok.look(t.words)
		tok.stem, tok.kind = tok.card.stem, tok.card.kind
	}
	t.compounds(s.tokens)
	repair(s.tokens, t.words)
	for i := range s.tokens {
		s.tokens[i].look(t.words)
	}
	s.mark()
	s.dangers = withoutHarmless(t.words.dangers.find(s), len(s.tokens))
}

// mark notes of a sentence what patterns are found by: where its clauses end,
// and which of the places that patterns cannot do without some word of it fits.
func (s *sentence) mark() {
	for i := range s.tokens {
		t := &s.tokens[i]
		t.turns, t.closes = turns(s.tokens, i), closesClause(t.norm)
		s.meets.add(t.card.meets)
	}
}

// look looks the token up again if it was mended since.
func (t *token) look(words *vocabulary) {
	if t.card.word != t.norm {
		t.card = words.card(t.norm)
	}
}

// compounds gives the last word of a noun of two words the kind of the whole:
// a rolling pin is a tool, a tea towel a cloth.
func (t tagging) compounds(tokens []token) {
	for i := 1; i < len(tokens); i++ {
		if !tokens[i].word || !tokens[i-1].word || tokens[i].isVerb() || !tokens[i-1].card.opens {
			continue
		}
		if k := t.words.nouns.Kind(tokens[i-1].norm + " " + tokens[i].norm); k != lexicon.NoKind {
			tokens[i].kind = k
		}
	}
}

func isCapital(s string) bool {
	for _, r := range s {
		return unicode.IsUpper(r)
	}
	return false
}

// mostlyCapitals reports whether a sentence is written in capitals, so that
// they say nothing about names.
func mostlyCapitals(tokens []token) bool {
	upper, lower := 0, 0
	for i := range tokens {
		for _, r := range tokens[i].text {
			switch {
			case unicode.IsUpper(r):
				upper++
			case unicode.IsLower(r):
				lower++
			}
		}
	}
	return upper > lower
}

// promises reports whether "ill" at token i is "I'll" without its mark: a clause
// begins there, and what is to be done follows.
func promises(tokens []token, i int) bool {
	if i+1 >= len(tokens) || i > 0 && !tokens[i-1].pause() && !tokens[i-1].divides() && !tokens[i-1].in("and", "so", "but", "then", "think", "time", "or") {
		return false
	}
	next := &tokens[i+1]
	return next.card.works && !strings.HasSuffix(next.norm, "ed") && !strings.HasSuffix(next.norm, "ing") ||
		next.in("try", "make", "do", "use", "add", "put", "take", "be", "have", "get", "let", "leave", "never", "definitely", "probably", "not", "also", "just", "keep", "buy", "ask", "start", "give", "remember", "check", "need", "make", "go", "know", "tell")
}

// repair mends tags where these texts differ from the newspapers the tagger
// learnt from. Each rule says what it means in language.
func repair(tokens []token, words *vocabulary) {
	for i := range tokens {
		t := &tokens[i]
		switch {
		case t.norm == "to" && i+1 < len(tokens) && tokens[i+1].in("much", "many", "long", "hot", "hard", "sweet", "salty", "dry", "thick", "thin", "wet", "runny", "sticky", "big", "small", "early", "late", "soft", "strong", "spicy", "high", "low", "short", "soon", "little", "fast", "quick", "heavy", "bland", "bitter", "chewy", "tough", "sour", "close", "dark") && !worksOn(tokens, i+1):
			// "to much", "to hard": too, one letter short.
			t.norm, t.tag = "too", "RB"
			t.stem = "too"
		case t.norm == "to" && i > 0 && i+1 < len(tokens) && tokens[i+1].describes() && degree(tokens, i-1):
			// "way to sticky", "was to garlicky": the same before any listed
			// describing word, where what stands before asks for a degree.
			t.norm, t.tag = "too", "RB"
			t.stem = "too"
		case t.norm == "cause" && causeForBecause(tokens, i):
			t.norm, t.stem, t.tag = "because", "because", "IN"
		case t.norm == "ill" && promises(tokens, i):
			// "Ill cut them smaller": I will, and nobody is ill.
			t.norm, t.stem, t.tag = "will", "will", "MD"
		case t.norm == "i" || t.norm == "we":
			t.tag = "PRP"
		case t.norm == "'d" && tellsPast(tokens, i):
			// "once I'd cooled it", "he'd two left": had, not would.
			t.norm, t.stem, t.tag = "had", "had", "VBD"
		case i > 0 && strings.HasPrefix(t.tag, "VB") && t.tag != "VBN" && t.tag != "VBG" && tokens[i-1].in("too", "very", "quite", "really") && t.describes():
			t.tag = "JJ" // "way too thick": a degree is of a quality
		case t.norm == "smelt" || t.norm == "tasted":
			t.tag = "VBD" // no fish and no metal
		case t.norm == "its" && startsPredicate(tokens, i+1):
			// "its really soft": it is, the apostrophe left out.
			t.tag = "PRP"
		case (t.norm == "n't" || t.norm == "not") && t.tag != "RB":
			t.tag = "RB"
		case t.card.adverb && !strings.HasPrefix(t.tag, "RB"):
			t.tag = "RB" // "smelt faintly of"
		case t.describes() && t.kind == lexicon.NoKind && !t.isAdj() && (strings.HasSuffix(t.norm, "y") && !t.card.adverb || strings.HasSuffix(t.norm, "ish") || strings.HasSuffix(t.norm, "iest")):
			// "smoky", "nutty": a listed word in -y is an adjective.
			t.tag = "JJ"
		case t.describes() && (t.tag == "IN" || t.tag == "RP") && !t.in("round", "off", "past", "like"):
			// "had wept", "get them brown": a listed word is no preposition.
			t.tag = "JJ"
			if i > 0 && (tokens[i-1].in("had", "has", "have") || strings.HasPrefix(tokens[i-1].tag, "NN") || tokens[i-1].in("it", "they") && !strings.HasSuffix(t.norm, "n")) && !afterLinkingVerb(tokens, i) {
				t.tag = "VBD"
			}
		case t.describes() && afterLinkingVerb(tokens, i):
			// "was salty", "looked brown": after be, look, smell, taste, feel a
			// listed describing word is an adjective, whatever the tagger took
			// it for. A participle stays one: it describes as well.
			if !strings.HasPrefix(t.tag, "VB") && !strings.HasPrefix(t.tag, "JJ") && !t.card.adverb && t.norm != "even" {
				t.tag = "JJ"
			}
		case i > 0 && tokens[i-1].tag == "PRP" && subjectPronoun(tokens[i-1].norm) && strings.HasPrefix(t.tag, "NN") && i+1 < len(tokens) && regularPast(t.norm):
			// "I kneaded the dough": an unknown past tense taken for a noun.
			t.tag = "VBD"
		case (i == 0 || tokens[i-1].pause()) && t.card.works && t.isNoun() && i+1 < len(tokens) && tokens[i+1].in("it", "them"):
			t.tag = "VB" // "Brush it with milk"
		case i == 0 && regularPast(t.norm) && strings.HasPrefix(t.tag, "NN"):
			t.tag = "VBD"
		case regularPast(t.norm) && t.tagIn("JJ", "VBN") && opensNote(tokens, i):
			t.tag = "VBD"
		case t.tag == "POS" && shortIs(tokens, i):
			t.tag = "VBZ" // "the knob's stiff": is
		case t.tag == "VBZ" && t.kind.Food() && i+1 < len(tokens) && tokens[i+1].tag == "VBD" && strings.HasSuffix(t.norm, "s"):
			t.tag = "NNS" // "leeks gave it sweetness"
		case t.tag == "VBD" && t.in("shred", "embed", "feed", "need", "bleed", "weed", "proceed", "succeed"):
			t.tag = "VBP" // "they shred easily": that is no past in -ed
		case t.tag == "VBP" && onlyPast(t.norm):
			t.tag = "VBD" // "so they kept their shape"
		case t.norm == "underneath":
			t.tag = "RB" // "damp paper underneath": no noun
		}
	}
}

// shortIs reports whether the "'s" at token i is short for "is": a quality or a
// degree follows it and no noun that somebody could have. "Nan's best" and "It was
// my mum's favourite" leave the noun out: what somebody has is one of several.
func shortIs(tokens []token, i int) bool {
	if i+1 >= len(tokens) {
		return false
	}
	t := &tokens[i+1]
	if t.in("too", "very", "really", "so", "quite", "not", "n't") {
		return true
	}
	if !t.isAdj() && !t.describes() || i+2 < len(tokens) && (tokens[i+2].isNoun() || tokens[i+2].isAdj()) {
		return false
	}
	if t.tag == "JJS" || t.in("favourite", "favorite", "fave", "own", "usual", "best", "worst", "latest", "speciality", "first", "last", "second") {
		return false
	}
	if i < 2 || !tokens[i-1].human() || !tokens[i-2].tagIn("DT", "PRP$") {
		return true
	}
	start := clauseStart(tokens, i)
	for j := start; j < i-2; j++ {
		if tokens[j].isVerb() {
			return false // "mine looked like my nan's"
		}
	}
	return true
}

// tellsPast reports whether the "'d" at token i is short for "had": a past
// participle or a thing one has follows it. Where the participle looks like
// the infinitive ("I'd cut it"), what stands before tells an earlier time.
func tellsPast(tokens []token, i int) bool {
	j := i + 1
	for j < len(tokens) && (tokens[j].isAdv() || tokens[j].in("all", "just", "already", "only", "both", "even")) {
		j++
	}
	if i == 0 || j >= len(tokens) || tokens[j].in("rather", "better", "have", "of", "be", "do", "go", "like", "love", "come", "become", "run") {
		return false
	}
	t := &tokens[j]
	switch t.norm {
	case "cut", "put", "let", "set", "shut", "split", "spread", "hit", "read", "quit":
		k := i - 2
		return k >= 0 && (tokens[k].in("once", "because", "after", "where", "when", "since", "until", "till", "what", "which", "that") || tokens[k].norm == "as" && k > 0)
	}
	switch {
	case t.tagIn("VBN", "VBD", "DT", "PRP$", "CD"):
		return true
	case t.tagIn("NN", "JJ", "VB", "VBP"):
		return regularPast(t.norm) || pastForm(t.norm)
	}
	return false
}

// opensNote reports whether the participle at token i opens a note that leaves
// out "I": "Poked holes with a skewer". What it acts on follows, and no other
// verb does ("Toasted nuts were on top").
func opensNote(tokens []token, i int) bool {
	if i > 0 && !tokens[i-1].pause() || i+2 >= len(tokens) {
		return false
	}
	n := &tokens[i+1]
	if n.tagIn("DT", "PRP", "PRP$", "CD") {
		return true
	}
	if !n.tagIn("NNS", "NN") {
		return false
	}
	for j := i + 2; j < len(tokens) && !tokens[j].pause() && !tokens[j].joins() && tokens[j].norm != "and"; j++ {
		if tokens[j].isVerb() {
			return false
		}
	}
	return true
}

// degree reports whether token i asks for a quality and how much of it: "was
// (too) garlicky", "way (too) sticky".
func degree(tokens []token, i int) bool {
	t := &tokens[i]
	return t.in("way", "far", "much", "bit", "abit", "little", "not", "n't") || linkingVerb(t.norm) && !t.in("go", "going", "get", "getting", "come", "keep", "be", "look", "need")
}

func subjectPronoun(w string) bool {
	switch w {
	case "i", "we", "he", "she", "they", "you", "it":
		return true
	}
	return false
}

// startsPredicate reports whether the token begins what is said of a subject.
func startsPredicate(tokens []token, i int) bool {
	if i >= len(tokens) {
		return false
	}
	switch tokens[i].norm {
	case "a", "an", "the", "not", "really", "very", "so", "too", "quite", "just", "like", "got", "been", "my", "because", "all", "going":
		return true
	}
	if !strings.HasPrefix(tokens[i].tag, "JJ") {
		return false
	}
	// "its soft." but not "its soft crust"
	return i+1 >= len(tokens) || !strings.HasPrefix(tokens[i+1].tag, "NN")
}

// afterLinkingVerb reports whether token i stands after a linking verb with
// at most adverbs, other describing words and "and" between.
func afterLinkingVerb(tokens []token, i int) bool {
	for j := i - 1; j >= 0 && j >= i-6; j-- {
		t := &tokens[j]
		if linkingVerb(t.norm) {
			return true
		}
		if strings.HasPrefix(t.tag, "RB") || strings.HasPrefix(t.tag, "JJ") || t.in("and", ",", "a", "bit", "but", "n't", "both", "too", "so", "way", "kinda", "sort", "kind", "of", "sorta", "abit", "proper", "little", "touch", "tad", "lot", "mega", "super", "well", "dead") {
			continue
		}
		return false
	}
	return false
}

// linkingVerb reports whether the form belongs to a verb that ties a quality
// to its subject.
func linkingVerb(w string) bool {
	switch w {
	case "is", "was", "are", "were", "be", "been", "being", "'s", "'re", "am", "'m",
		"look", "looks", "looked", "looking", "smell", "smells", "smelt", "smelled", "smelling",
		"taste", "tastes", "tasted", "tasting", "feel", "feels", "felt", "seem", "seems", "seemed",
		"go", "goes", "went", "gone", "going", "get", "gets", "got", "getting",
		"turn", "turns", "turned", "become", "becomes", "became",
		"stay", "stays", "stayed", "remain", "remained", "keep", "kept", "sound", "sounds", "sounded",
		"appear", "appeared", "come", "came", "comes", "its", "wa", "wuz", "prove", "proved":
		return true
	}
	return false
}

// worksOn reports whether a word that is an adjective elsewhere is a verb with
// its object at token i: "had to thin it", "to dry them".
func worksOn(tokens []token, i int) bool {
	return tokens[i].in("dry", "thin", "sour", "close") && i+1 < len(tokens) && tokens[i+1].in("it", "them", "the", "my", "her", "his")
}

// tagIn reports whether the token has one of the part-of-speech tags.
func (t *token) tagIn(tags ...string) bool {
	for _, tag := range tags {
		if t.tag == tag {
			return true
		}
	}
	return false
}
