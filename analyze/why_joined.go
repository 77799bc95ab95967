package analyze

import (
	"saywhy/lexicon"
)

// so: a result or purpose where a clause, "that" or a bare verb follows; not
// the intensifier ("so nice"), "so far", "or so", "I think so".
func (d reasons) so(tokens []token, i int) bool {
	prev := &token{}
	if i > 0 {
		prev = &tokens[i-1]
	}
	if i+1 >= len(tokens) {
		return false
	}
	n := &tokens[i+1]
	if opensTalk(tokens, i) || n.pause() && n.norm != "," || n.norm == "you" && i+2 < len(tokens) && tokens[i+2].norm == "know" || i == 0 && n.norm == "that" && i+3 < len(tokens) && tokens[i+2].in("was", "is", "'s") && tokens[i+3].in("my", "our", "the", "it") {
		return false
	}
	if n.isAdj() && i > 1 && i+2 < len(tokens) && !tokens[i+2].joins() && (prev.norm == "," && tokens[i+2].isNoun() || prev.isNoun() && tokens[i+2].pause() && prev.kind.Food() && !linkingBefore(tokens, i)) {
		return true // "oven too cold, so flat puddings", "forgot the salt so bland"
	}
	switch {
	case prev.norm == "," && i > 1 && i+2 < len(tokens) && !n.pause() && !n.isAdj() && !n.in("far", "called", "on", "so", "long", "much", "many", "yeah", "yes", "anyway"):
		return true // behind a comma: a degree would stand in its clause
	case n.in("more", "less", "fewer", "still", "hardly", "barely", "maybe", "straight") && i > 1 && i+2 < len(tokens) && !linkingVerb(prev.norm) && !prev.in("and", "or", "not", "even", "but"):
		return true // "so more sugar needed", "so still crisp"
	case i+2 < len(tokens) && tokens[i+2].in("not", "n't") && (n.kind == lexicon.Tool || n.kind.Food()) && i > 0:
		return true // "so knife not touch"
	case n.in("much", "many") && i > 0 && i+2 < len(tokens) && (tokens[i+2].norm == "that" || opensClause(tokens, i+2) && !tokens[i+2].isNoun() && prev.isVerb() && !linkingVerb(prev.norm)):
		return true // "it had swelled so much that the spoon stood up"
	case i == 0 && n.norm == "next", n.in("noone", "nobody", "everyone", "everybody") && i > 0:
		return true
	case n.norm == "as" && i+3 < len(tokens) && tokens[i+2].norm == "not" && tokens[i+3].norm == "to":
		return true
	case n.kind.Food() && i+2 < len(tokens) && tokens[i+2].tagIn("VBZ", "VBD", "VBP", "MD") && i > 0:
		return true // "so skin goes snappy", whatever the tagger took it for
	case prev.norm == "," && n.card.works && !n.isNoun() && !n.isVerb():
		return true // "…, so use half": an instruction taken for an adjective
	case n.tag == "IN" && i > 0 && !prev.in("or", "and", "ever", "even") && !prev.in("did", "do", "does", "doing", "done", "said", "think") && clauseWithin(tokens, i+2, 5):
		return true // "so at the end there was only the tray"
	case i > 1 && n.card.works && i+2 < len(tokens) && tokens[i+2].in("it", "them", "em", "'em"):
		return true // "still crunchy so cook em longer"
	case i > 1 && n.kind.Food() && i+2 < len(tokens) && tokens[i+2].in("on", "over") && !linkingVerb(prev.norm):
		return true // "it looks grey, so parsley on top"
	case n.norm == "them" && i+2 < len(tokens) && tokens[i+2].isNoun():
		return true // "so them ones went dark"
	case n.in("next", "no", "less", "its", "it", "i", "we", "they", "he", "she", "im", "id", "il", "my", "this", "there") && !prev.in("or", "not", "do", "ok", "okay", "think", "why", "even") && i > 0:
		return true
	case n.norm == "that" || n.norm == "as" && i+2 < len(tokens) && tokens[i+2].norm == "to":
		return true
	case soThen(tokens, i):
		return true
	case prev.in("or", "do", "did", "think", "even", "not", "hope", "ok", "okay", "right", "guess", "say", "said", "yeah", "done", "ever", "just", "why") && prev.norm != "did":
		return prev.norm == "just" || prev.norm == "done" && opensClause(tokens, i+1)
	case n.in("did", "does", "do", "was", "is", "were", "are", "has", "have", "had", "will", "can") && i+2 < len(tokens) && !tokens[i+2].isVerb() && !tokens[i+2].isAdv() && !(n.in("have", "do") && tokens[i+2].tagIn("DT", "PRP$") && i > 1):
		return false // "and so did the toffee": likewise
	case n.in("much", "many", "far", "on", "called", "long", "what", "yeah", "yes", "anyway", "basically", ",", ".", "!") || n.pause():
		return false
	}
	if n.isAdj() || n.isAdv() && !n.in("then", "now", "next", "instead", "there", "maybe", "also", "actually", "hopefully", "this", "here", "just", "not", "only", "never", "always", "sometimes", "afterwards", "eventually") {
		if opensClause(tokens, i+1) && n.isAdj() && i+2 < len(tokens) && tokens[i+2].isNoun() {
			return true
		}
		// "so crunchy it took ages": degree with its consequence.
		for j := i + 2; j < len(tokens) && j <= i+5; j++ {
			if tokens[j].norm == "that" || tokens[j].in("i", "it", "we", "they", "you", "he", "she", "my", "the") && j+1 < len(tokens) && opensClause(tokens, j) {
				return true
			}
			if tokens[j].pause() || tokens[j].in("and", "but", "because", "so", "when", "as", "with") {
				return false
			}
		}
		return false
	}
	if i == 0 {
		return true
	}
	if opensClause(tokens, i+1) {
		return true
	}
	// "too wet so spread", "so next time more salt"
	return n.isVerb() || n.in("next", "no", "less", "more", "nothing", "everything", "everyone", "nobody", "this", "there", "i", "it", "we", "they", "you", "he", "she", "il", "im", "id", "my", "the", "a", "mum", "dad", "one", "some", "all", "then", "not", "now", "most", "each", "both", "half", "people", "that's", "there's", "none", "instead", "maybe", "any") || n.isNoun()
}

// opensTalk reports whether only words that open talk stand before "so": "right
// so I made the pie", "um so today was rice".
func opensTalk(tokens []token, i int) bool {
	for j := range i {
		if tokens[j].word && !tokens[j].in("right", "um", "erm", "er", "ok", "okay", "well", "anyway", "yeah", "yes", "alright", "oh", "hi", "hello", "hey", "basically", "and", "like") {
			return false
		}
	}
	return i > 0
}

// soThen: "so back in the oven", "so add more", "so happy days": behind a whole
// clause "so" gives a result even without a subject, where an adverb of place,
// a verb of work that the tagger took for an adjective, or a word of comment
// follows; "it looked so happy" is degree.
func soThen(tokens []token, i int) bool {
	n := &tokens[i+1]
	last := i+2 >= len(tokens)
	if i == 0 {
		return n.norm == "sorry" && !last && tokens[i+2].in("for", "about", "if")
	}
	if p := &tokens[i-1]; linkingVerb(p.norm) || p.isAdv() || p.in("and", "or", "not", "is", "was", "be", "do", "think", "ok", "okay", "right", "yeah", "yes") {
		return false
	}
	switch {
	case n.in("back", "straight", "off", "out", "into", "excuse", "sorry", "chuck", "bung", "pop", "stick", "fair", "thanks", "well") && !last:
		return n.norm != "well" || tokens[i+2].in("done")
	case n.card.works && !n.describes() && !n.isVerb() && !last && (tokens[i+2].tagIn("DT", "PRP$", "JJR", "RBR") || tokens[i+2].in("more", "less", "it", "them", "some", "straight", "quickly", "hot", "cold")):
		return true
	case n.isAdj() && !n.describes() && !n.in("many", "much", "few", "little", "long") && !last && tokens[i+2].isNoun() && (i+3 >= len(tokens) || tokens[i+3].pause()):
		return true
	}
	return false
}

// clauseHas reports whether one of the words stands in the clause that begins
// at token i.
func clauseHas(tokens []token, i int, words ...string) bool {
	for j := i; j < len(tokens) && j < i+reach && !tokens[j].pause(); j++ {
		if tokens[j].in(words...) {
			return true
		}
	}
	return false
}

// clauseWithin reports whether a subject and its verb begin within n tokens
// from token i on.
func clauseWithin(tokens []token, i, n int) bool {
	for j := i; j < len(tokens) && j < i+n; j++ {
		if tokens[j].pause() {
			return false
		}
		if tokens[j].in("i", "we", "he", "she", "it", "they", "there", "you") && j+1 < len(tokens) && tokens[j+1].isVerb() {
			return true
		}
	}
	return false
}

// since gives a reason in half of its uses (PDTB 52 %), a time in the others:
// a time word, a year, or "been" in the main clause shows the time.
func (d reasons) since(tokens []token, i int) bool {
	if i+1 >= len(tokens) {
		return false
	}
	n := &tokens[i+1]
	if n.kind == lexicon.Time || n.tag == "CD" && !opensClause(tokens, i+1) || n.in("then", "last", "yesterday", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday", "january", "february", "march", "april", "may", "june", "july", "august", "september", "october", "november", "december", "christmas", "easter", "early", "childhood") && !opensClause(tokens, i+1) {
		return false
	}
	if h := objectHead(tokens, i); h >= 0 && tokens[h].kind == lexicon.Time {
		return false
	}
	if i > 0 && (tokens[i-1].in("ever", "long", "time") || tokens[i-1].kind == lexicon.Time) {
		return false
	}
	for j := clauseStart(tokens, i); j < i; j++ {
		if tokens[j].in("been", "have", "has", "'ve") && j+1 < i && tokens[j+1].tag == "VBN" {
			return false
		}
	}
	if i > 0 && tokens[i-1].norm == "," && i+3 < len(tokens) && !n.tagIn("IN", "CD", "VBG", "TO") && !n.pause() {
		return true // behind a comma it gives a reason, where no time follows
	}
	for j := i + 1; j < len(tokens) && j <= i+10; j++ {
		if tokens[j].pause() {
			return false
		}
		if (tokens[j].tagIn("VBD", "VBZ", "VBP", "MD") || tokens[j].in("'s", "'re", "'m", "'d", "'ve") || tokens[j].tag == "VB" && (tokens[j-1].isNoun() || tokens[j-1].norm == "they")) && j > i+1 {
			return true // behind a first word that the tagger may take for a verb ("loads")
		}
	}
	return false
}

// as gives a reason in a quarter of its uses; a state, a modal, a negation or
// a perfect behind its subject shows it ("as it was hot", "as I had no lid"),
// an event shows time ("as it cooked").
func (d reasons) as(tokens []token, i int) bool {
	if i+2 >= len(tokens) {
		return false
	}
	n := &tokens[i+1]
	if i > 0 && tokens[i-1].norm == "," && !n.tagIn("DT", "PRP", "PRP$") && occurs(&tokens[i+2]) {
		return true // ", as pith dries like cement"
	}
	if n.tag == "VBG" && tokens[i+2].tagIn("VBZ", "VBP") {
		return true // "as stirring makes it grainy"
	}
	if i > 0 {
		p := &tokens[i-1]
		if p.in("such", "just", "same", "so", "well", "known", "used", "served", "far", "soon", "long", "much", "as", "not", "regarded", "described", "seen", "act", "acts", "act", "exactly") || p.norm == "twice" && (n.isAdj() || n.isAdv()) {
			return false
		}
		if p.isAdj() && i > 1 && tokens[i-2].norm == "as" || p.isAdv() && i > 1 && tokens[i-2].norm == "as" {
			return false
		}
	}
	if n.tagIn("VBD", "VBP") && negatedVerb(tokens, i+1) || n.in("forgot", "didnt") {
		return true // "as didn't brown them": a note without its subject
	}
	if n.norm == "its" && n.tag == "PRP" {
		return true // "as its really heavy": it is
	}
	if n.in("well", "soon", "long", "if", "though", "usual", "for", "always", "part", "far", "many", "possible", "per", "expected", "with", "to", "opposed", "such", "it-were") || n.isAdj() && !opensClause(tokens, i+1) || n.isAdv() && !opensClause(tokens, i+1) {
		return false
	}
	if i > 0 && (timesDiffer(tokens, i) || amissBehind(tokens, i)) {
		return true
	}
	if asTold(tokens, i) {
		return true
	}
	if n.in("you", "i", "we") && i+2 < len(tokens) && tokens[i+2].in("can", "could", "go", "went", "know", "see", "say", "said", "mentioned", "do", "did") && !negatedVerb(tokens, i+2) {
		return n.in("i", "we") && tokens[i+2].in("know", "could")
	}
	// Find the verb of its subject. A noun without an article names a role
	// ("as head of …") unless its verb follows at once.
	far := i + 9
	if n.isNoun() && n.tag != "NNS" && !n.in("everything", "everyone", "everybody", "nothing", "nobody", "something") && !(i > 0 && tokens[i-1].norm == ",") || n.tag == "NNS" && i+2 < len(tokens) && tokens[i+2].tag == "IN" {
		far = i + 3
	}
	for j := i + 1; j < len(tokens) && j <= far; j++ {
		t := &tokens[j]
		if n.in("a", "an") && t.in("of", "that", "which", "who", "and") {
			return false
		}
		if j == i+1 && t.isVerb() {
			return false
		}
		if t.pause() {
			return false
		}
		if !t.isVerb() && !t.in("'s", "'re", "'m", "'d", "'ve", "'ll") {
			continue
		}
		if j+1 < len(tokens) && (tokens[j+1].tagIn("VBD", "MD") || tokens[j+1].in("are", "is")) && tokens[j].tagIn("VBZ", "VBP", "VBD") && (n.tag == "DT" || n.tag == "PRP$") {
			continue // "as the bottom leaves had": a noun taken for a verb
		}
		if t.tag == "VBG" || t.tag == "VBN" && !t.in("had", "forgot") {
			continue
		}
		if t.in("go", "goes", "went") && (j+1 == len(tokens) || tokens[j+1].pause() || tokens[j+1].in("along", "and", "so")) {
			return false // "tidied as she went": meanwhile
		}
		if t.in("is", "was", "are", "were", "had", "has", "have", "'s", "'re", "'m", "can", "could", "would", "'d", "will", "'ll", "need", "needs", "needed", "want", "wanted", "wants", "knew", "know", "knows", "think", "thought", "like", "likes", "liked", "love", "loves", "loved", "prefer", "hate", "hates", "forgot", "feel", "felt", "did", "does", "do", "might", "may", "should", "must", "am", "meant", "means", "seems", "seemed", "looks", "looked", "tend", "tends", "contains", "holds", "lost", "ran", "makes", "made", "gives", "keeps", "ca", "wo", "takes", "took", "kept", "stops", "helps", "tastes", "tasted", "ensures", "allows", "gets", "got", "goes", "sticks", "stuck", "came", "found", "left", "uses", "used", "put", "added") {
			if t.in("did", "do", "does", "went", "got", "put", "came") && !negatedVerb(tokens, j) && t.in("did", "do", "does") {
				return false
			}
			return true
		}
		return negatedVerb(tokens, j) || i > 0 && tokens[i-1].norm == "," && t.tagIn("VBP", "VBZ") || t.tagIn("VBZ", "VBP") && lasts(t.stem) && n.tag != "PRP" || t.in("weighs", "slopes", "burns", "spits", "splits", "falls", "lacks", "depends") && j <= i+4 || t.norm == "went" && j+1 < len(tokens) && tokens[j+1].isAdj()
	}
	return false
}

// asTold: "a mistake as I splashed my wrist", "it slid off as I iced it warm",
// "in a rush as had football": in an evaluation a whole clause behind "as" tells
// a cause more often than what went on meanwhile. It does not where it only
// compares ("as I'd hoped", "as he prefers"), tells the pace ("as you go") or
// what food did of itself ("as it cooked").
func asTold(tokens []token, i int) bool {
	if i < 2 || i+2 >= len(tokens) {
		return false
	}
	n, v := &tokens[i+1], &tokens[i+2]
	if n.in("had", "was", "is") {
		return !v.tagIn("PRP", "NNP") && v.norm != "the" && !tokens[i-1].pause()
	}
	if !n.tagIn("PRP", "PRP$", "DT", "NNS", "NNP") || !opensClause(tokens, i+1) {
		return false
	}
	for j := i - 1; j >= 0 && j >= i-6; j-- {
		if tokens[j].norm == "as" {
			return false // "not as short as I'd hoped"
		}
	}
	for j := i + 2; j < len(tokens) && j <= i+6 && !tokens[j].pause(); j++ {
		t := &tokens[j]
		if t.in("go", "goes", "went", "said", "say", "says", "hoped", "dare", "prefers", "prefer", "expected", "wanted", "liked", "usual", "normal", "always") {
			return false
		}
	}
	for j := i + 2; j < len(tokens) && j <= i+6 && !tokens[j].pause(); j++ {
		if tokens[j].tag != "VBD" {
			continue
		}
		if !n.human() {
			return !tokens[j].card.works && !tokens[j].in("bubbled", "hissed", "steamed", "dried", "rose", "thickened", "darkened")
		}
		// Two deeds of people go on together ("I sang as I chopped").
		for k := clauseStart(tokens, i); k < i; k++ {
			if tokens[k].tag == "VBD" {
				s := subject(tokens, k)
				return linkingVerb(tokens[k].norm) || s >= 0 && !tokens[s].human()
			}
		}
		return false
	}
	return true
}

// lasts reports whether a verb in the present tells what a thing always does
// or is like ("as hot jam stays on your skin"), not what went on meanwhile.
func lasts(stem string) bool {
	switch stem {
	case "stay", "stick", "burn", "slope", "weigh", "steam", "melt", "spit", "hold", "fall", "dull", "set", "soak", "splash", "spread", "rot", "smell", "lose", "hide", "absorb", "drink":
		return true
	}
	return false
}

// negatedVerb reports whether "not" follows the verb at token j.
func negatedVerb(tokens []token, j int) bool {
	return j+1 < len(tokens) && tokens[j+1].in("not", "n't", "never") || j+2 < len(tokens) && tokens[j+2].in("n't", "not")
}

// bound reports whether the clause before token i tells what must be done or
// was done in time, so that "or" gives what happens otherwise.
func bound(tokens []token, i int) bool {
	for j := i - 1; j >= 0 && j >= i-12; j-- {
		if tokens[j].in("must", "n't", "not", "never", "need", "have", "got", "always", "keep", "at", "before") {
			return true
		}
	}
	return false
}

// asideBefore reports whether "otherwise" ends a short note set apart: "shards
// everywhere otherwise".
func asideBefore(tokens []token, i int) bool {
	for j := i - 1; j >= 0 && j >= i-5; j-- {
		if tokens[j].isVerb() {
			return false
		}
		if tokens[j].in(";", ",", "--", "-", "–") {
			return true
		}
	}
	return false
}

// endsRule reports whether "otherwise" closes a clause that tells what always
// happens or would: "the dough gets stuck otherwise", "it goes stringy
// otherwise". Behind the past it means "apart from that".
func endsRule(tokens []token, i int) bool {
	if i+1 < len(tokens) && !tokens[i+1].pause() && tokens[i+1].norm != ")" {
		return false
	}
	for j := i - 1; j >= 0 && j >= i-8; j-- {
		t := &tokens[j]
		if t.pause() || t.tag == "VBD" {
			return false
		}
		if t.tagIn("VBZ", "VBP") || t.in("would", "'d", "will", "'ll") {
			return !linkingVerb(t.norm) || t.in("goes", "go", "gets", "get", "turns", "turn")
		}
	}
	return false
}

// apartFromThat: "otherwise I got by on my own": what a person did besides,
// not what would have come about.
func apartFromThat(tokens []token, i int) bool {
	if i+2 >= len(tokens) || !tokens[i+1].human() {
		return false
	}
	v := i + 2
	for v < len(tokens) && v < i+4 && tokens[v].isAdv() {
		v++
	}
	return v < len(tokens) && tokens[v].tag == "VBD" && !tokens[v].in("had", "'d", "would", "could", "might") && !negatedVerb(tokens, v)
}

// linkingBefore reports whether a form of "to be" or of the senses stands in the
// clause before token i, so that "so" there tells a degree.
func linkingBefore(tokens []token, i int) bool {
	for j := clauseStart(tokens, i); j < i; j++ {
		if linkingVerb(tokens[j].norm) && tokens[j].isVerb() {
			return true
		}
	}
	return false
}
