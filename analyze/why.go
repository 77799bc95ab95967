package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// reasons finds the clauses that give a purpose, a cause or a consequence.
// Each rule is one function of its connective; the shares named are those of
// GUM (how-to guides, talk, travel …) and PDTB 2.0, by count.
type reasons struct{ words *vocabulary }

func (d reasons) read(r *reading) {
	for i := range r.sentences {
		s := &r.sentences[i]
		s.why = d.find(s)
		if i == 0 && len(r.sentences) > 1 && len(s.why) > 0 && s.why[0].from == 0 && s.tokens[0].norm == "so" {
			s.why = s.why[1:] // "So, I made soup": it opens the talk
		}
	}
}

func (d reasons) find(s *sentence) []clause {
	tokens := s.tokens
	var out []clause
	for i := range tokens {
		from, ok := d.at(tokens, i)
		if !ok || from >= len(tokens) {
			continue
		}
		if n := len(out); n > 0 && from < out[n-1].to {
			continue
		}
		to := max(i+1, clauseEnd(tokens, max(i, from)), from+1)
		c := clause{from: from, to: to}
		c.span = span{tokens[from].start, tokens[to-1].end}
		if pointsBack(tokens, from) {
			c.explains = -1 // settled by the reader of the whole text
		}
		out = append(out, c)
	}
	return out
}

// pointsBack reports whether a reason that begins the sentence belongs to the
// sentence before: "This was so that …", "That way …", "Because …" alone.
func pointsBack(tokens []token, i int) bool {
	first := 0
	for first < len(tokens) && tokens[first].in("and", "but", "i", "think", "probably", "maybe", "also") && first < 3 {
		first++
	}
	if first >= len(tokens) {
		return false
	}
	t := &tokens[first]
	if t.in("this", "that", "thats", "which") && first+1 < len(tokens) && (tokens[first+1].isVerb() || tokens[first+1].in("'s", "way", "was", "is")) {
		return true
	}
	if t.in("it", "they") && i > first && i <= first+3 && tokens[i].in("because", "so", "to", "due") {
		return true
	}
	return i == first && (t.in("because", "so", "otherwise", "therefore") && !hasMainClauseAfter(tokens, i))
}

// hasMainClauseAfter reports whether a comma and a new clause follow.
func hasMainClauseAfter(tokens []token, i int) bool {
	for j := i + 1; j < len(tokens); j++ {
		if tokens[j].norm == "," && opensClause(tokens, j+1) {
			return true
		}
	}
	return false
}

// at reports whether a reason begins at token i and returns the first token of
// its clause.
func (d reasons) at(tokens []token, i int) (int, bool) {
	t := &tokens[i]
	next := func(n int) *token {
		if i+n >= 0 && i+n < len(tokens) {
			return &tokens[i+n]
		}
		return &token{}
	}
	prev := next(-1)
	switch t.norm {
	case "because", "cus", "therefore", "thus", "hence", "consequently", "thereby", "accordingly":
		// because: reason in all of its 858 uses in PDTB.
		return i, true
	case "due", "owing", "thanks":
		return i, next(1).norm == "to"
	case "so":
		return i, d.so(tokens, i)
	case "since":
		return i, d.since(tokens, i)
	case "as":
		return i, d.as(tokens, i)
	case "for":
		// for + clause is an old because: "for the top was plain".
		return i, d.purposeNoun(tokens, i) || prev.norm == "," && (next(1).tag == "PRP" && next(2).isVerb() || next(1).norm == "the" && opensClause(tokens, i+1) && next(1).tag == "DT")
	case "cause":
		return i, prev.norm == "," && next(1).tag == "PRP$" || !t.isVerb() && prev.tag != "DT" && (next(1).tag == "PRP" || next(1).in("the", "i", "it", "my", "there") && i > 0)
	case "before":
		// "before it could catch": what it was done to prevent.
		// "before anybody slipped", "before it dried on": likewise.
		return i, next(2).norm == "could" || next(3).norm == "could" || (next(1).in("it", "they", "anybody", "anyone", "somebody", "someone") || next(1).norm == "the") && (mishap(next(2)) || mishap(next(3)))
	case "where":
		return i, (next(1).human() || next(1).in("it", "they")) && (next(2).in("stopped", "forgot", "missed", "caught", "did", "had", "was", "burnt", "touched") || next(2).norm == "n't")
	case "down":
		return i, next(1).norm == "to" && (strings.HasSuffix(next(2).norm, "ing") || next(2).tagIn("PRP", "PRP$") && strings.HasSuffix(next(3).norm, "ing"))
	case "purpose":
		return i, next(1).norm == "of" || prev.in("the", "for")
	case "if", "when":
		return i, d.generalTruth(tokens, i) || t.norm == "if" && d.wouldDiffer(tokens, i)
	case "and":
		return i, rewarded(tokens, i)
	case "then":
		return i, thenSpared(tokens, i)
	case "would", "'d", "might", "will", "'ll", "could", "should":
		return i, d.remedy(tokens, i)
	case "to":
		return i, d.purpose(tokens, i)
	case "order":
		if prev.norm == "in" && next(1).in("to", "that") {
			return i - 1, true
		}
	case "otherwise":
		// "spot on otherwise" and "otherwise just got on with it" set apart.
		return i, next(1).tagIn("PRP", "PRP$", "DT", "EX") || next(1).isNoun() || opensClause(tokens, i+1) || next(1).pause() && asideBefore(tokens, i)
	case "else":
		return i - 1, prev.norm == "or"
	case "or":
		if next(1).in("it", "they", "you") && (next(2).tagIn("VBP", "VBZ") || next(2).in("wouldve", "would've")) && bound(tokens, i) {
			return i, true // "you must not open the door or they flop"
		}
		// "or they go greasy": what would happen.
		if next(1).in("it", "they", "you", "else", "the", "i") && (next(2).in("go", "goes", "will", "'ll", "would", "'d", "get", "gets", "end", "turn", "turns", "burn", "burns", "stick", "sticks", "might", "can", "wo", "do", "does", "oil", "ends", "becomes", "become", "dry", "dries") || next(3).in("goes", "go", "gets", "will", "would", "turns")) {
			return i, true
		}
	case "case":
		return i - 1, prev.norm == "in"
	case "result":
		if next(-2).norm == "as" && prev.norm == "a" {
			return i - 2, true
		}
		return 0, false
	case "given":
		return i, i == 0 || prev.norm == "," || next(1).norm == "that"
	case "why":
		if prev.in("is", "'s", "was", "thats", "that", "explains") || next(-2).in("that", "which", "this") {
			return max(0, i-2), true
		}
	case "reason":
		if prev.in("this", "that") && next(-2).norm == "for" {
			return i - 2, true
		}
		return i, next(1).in("for", "i", "was", "is", "being", "why", "that", "it") || prev.in("the", "one", "main") && i < 3
	case "reasons":
		return i, prev.in("these", "two", "three", "several", "for")
	case "meant", "means", "meaning":
		return d.whichMeans(tokens, i)
	case "from":
		return i, d.fromCause(tokens, i)
	case "now":
		return i, next(1).norm == "that"
	case "seeing":
		return i, next(1).in("as", "that", "how")
	case "stopped", "stops", "stop", "prevents", "prevented", "avoids", "avoided", "helps", "helped", "ensure", "ensures", "ensured", "ensuring", "preventing", "stopping", "avoiding", "allows", "allowed", "allowing", "lets", "causes", "caused", "causing", "enabled", "enables", "enabling", "leads", "led", "leading", "resulted", "resulting", "results":
		return i, d.causes(tokens, i)
	case "made", "makes", "making", "make", "kept", "keeps", "keeping", "gave", "gives", "giving", "turned", "leaves", "let", "got", "brought", "brings", "took", "thickened", "thickens", "dried", "softened", "loosened", "added", "adds", "balanced", "cut", "sealed", "caught", "held", "holds", "killed", "kills", "spoiled", "spoilt", "ruined", "drew", "pulled", "left", "sorted", "fixed", "saved", "rescued", "spared":
		return i, d.makes(tokens, i)
	case "which":
		return i, d.whichDoes(tokens, i) || whichActs(tokens, i)
	case "forgot":
		return i, d.noteCause(tokens, i) || d.forgotten(tokens, i)
	case "did", "put", "had", "too":
		return i, d.noteCause(tokens, i)
	case "what":
		// "the water is what wets the flour": the cause picked out.
		return i, i > 1 && prev.in("is", "'s", "was", "were") && next(1).tagIn("VBZ", "VBD") && !linkingVerb(next(1).norm) && !next(-2).human() && !next(1).in("happened", "happens", "did", "had", "has")
	case ",", ";", "--", "-", "–", ":":
		return i + 1, t.norm == "," && (faultThenEffect(tokens, i) || d.changeAndFault(tokens, i)) || d.beside(tokens, i)
	case "was", "were", "felt", "became", "stayed", "filled":
		return i, t.in("was", "were") && d.noteCause(tokens, i) || d.outcome(tokens, i)
	case "went", "came", "goes", "turns", "split", "sank", "stuck", "broke", "collapsed", "burnt", "burned", "curdled", "spread", "leaked", "tore", "ended", "fell", "shrank", "cracked", "overflowed", "dropped", "rose":
		return i, d.follows(tokens, i)
	}
	if t.isAdj() || t.isAdv() {
		return i, false
	}
	return 0, false
}

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
	switch {
	case i == 0 && n.norm == "next", n.in("noone", "nobody", "everyone", "everybody") && i > 0:
		return true
	case n.norm == "as" && i+3 < len(tokens) && tokens[i+2].norm == "not" && tokens[i+3].norm == "to":
		return true
	case n.kind.Food() && i+2 < len(tokens) && tokens[i+2].tagIn("VBZ", "VBD", "VBP", "MD") && i > 0:
		return true // "so skin goes snappy", whatever the tagger took it for
	case prev.norm == "," && n.card.works && !n.isNoun() && !n.isVerb():
		return true // "…, so use half": an instruction taken for an adjective
	case n.tag == "IN" && i > 0 && !prev.in("or", "and", "ever", "even") && (prev.norm == "," || !prev.isVerb()) && clauseWithin(tokens, i+2, 5):
		return true // "so at the end there was only the tray"
	case n.in("next", "no", "less", "its", "it", "i", "we", "they", "he", "she", "im", "id", "il", "my", "this", "there") && !prev.in("or", "not", "do", "ok", "okay", "think", "why", "even") && i > 0:
		return true
	case n.norm == "that" || n.norm == "as" && i+2 < len(tokens) && tokens[i+2].norm == "to":
		return true
	case prev.in("or", "do", "did", "think", "even", "not", "hope", "ok", "okay", "right", "guess", "say", "said", "yeah", "done", "ever", "just", "why") && prev.norm != "did":
		return prev.norm == "just" || prev.norm == "done" && opensClause(tokens, i+1)
	case n.in("did", "does", "do", "was", "is", "were", "are", "has", "have", "had", "will", "can") && i+2 < len(tokens) && !tokens[i+2].isVerb() && !tokens[i+2].isAdv():
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

// mishap reports whether a verb tells what one guards against.
func mishap(t *token) bool {
	return t.in("slipped", "fell", "burnt", "burned", "dried", "caught", "spilt", "spilled", "dropped", "boiled", "split", "curdled", "tripped", "hurt", "melted", "overcooked", "stuck", "broke", "skidded", "scorched", "went")
}

// wouldDiffer: "if I squeezed it in a towel it wouldn't go so wet": a step of
// cooking, imagined with what would come of it.
func (d reasons) wouldDiffer(tokens []token, i int) bool {
	cooked := false
	for j := i + 1; j+1 < len(tokens) && j < i+18; j++ {
		t := &tokens[j]
		if t.isVerb() && t.card.works {
			cooked = true
		}
		if t.norm == "again" {
			return false // "if I made it again I would": a plan
		}
		if cooked && j > i+3 && t.in("it", "they") && tokens[j+1].in("would", "'d", "'ll", "will", "wo", "might") {
			return true
		}
	}
	return false
}

// rewarded: "leave a bigger gap and they'll stay round": an instruction with
// what comes of it.
func rewarded(tokens []token, i int) bool {
	if i < 2 || i+2 >= len(tokens) || !tokens[i+1].in("it", "they", "you", "he", "she") || !tokens[i+2].in("will", "'ll", "wo") {
		return false
	}
	start := clauseStart(tokens, i-1)
	first := &tokens[start]
	return first.tagIn("VB", "VBP") || start == 0 && (first.isNoun() || first.isAdj()) && !tokens[1].isVerb()
}

// thenSpared: "…, then your fingers don't get clogged": what a step would
// bring or spare, behind "then" and with a modal or a denial.
func thenSpared(tokens []token, i int) bool {
	if i == 0 || i+3 >= len(tokens) || tokens[i-1].in("and", "since", "by", "until", "till", "only", "even", "just", "back") {
		return false
	}
	for j := i + 2; j < len(tokens) && j <= i+4; j++ {
		t := &tokens[j]
		if t.in("'ll", "will", "would", "wouldnt", "wo", "ca") || t.norm == "could" || t.in("do", "does") && j+1 < len(tokens) && tokens[j+1].norm == "n't" {
			return tokens[i+1].tagIn("PRP", "PRP$", "DT") || tokens[i+1].isNoun()
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
	case "cool", "stop", "prevent", "soak", "thicken", "thin", "soften", "loosen", "dri", "melt", "break", "relax", "sweeten", "lighten", "darken", "weaken", "seal", "trap", "spoil", "ruin", "brighten", "balanc", "kill", "drown", "stick":
		return v.isVerb() || v.isNoun()
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
		if (tokens[j].tagIn("VBD", "VBZ", "VBP", "MD") || tokens[j].in("'s", "'re", "'m", "'d", "'ve")) && j > i+1 {
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
	if n.tag == "VBG" && tokens[i+2].tagIn("VBZ", "VBP") {
		return true // "as stirring makes it grainy"
	}
	if i > 0 {
		p := &tokens[i-1]
		if p.in("such", "just", "same", "so", "well", "known", "used", "served", "far", "soon", "long", "much", "as", "not", "regarded", "described", "seen", "act", "acts", "act", "twice", "exactly") {
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
	if n.in("you", "i", "we") && i+2 < len(tokens) && tokens[i+2].in("can", "could", "go", "went", "know", "see", "say", "said", "mentioned", "do", "did") && !negatedVerb(tokens, i+2) {
		return n.in("i", "we") && tokens[i+2].in("know", "could")
	}
	// Find the verb of its subject. A noun without an article names a role
	// ("as head of …") unless its verb follows at once.
	far := i + 9
	if n.isNoun() && n.tag != "NNS" && !(i > 0 && tokens[i-1].norm == ",") || n.tag == "NNS" && i+2 < len(tokens) && tokens[i+2].tag == "IN" {
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
		if j+1 < len(tokens) && tokens[j+1].tagIn("VBD", "MD") && tokens[j].tagIn("VBZ", "VBP", "VBD") && (n.tag == "DT" || n.tag == "PRP$") {
			continue // "as the bottom leaves had": a noun taken for a verb
		}
		if t.tag == "VBG" || t.tag == "VBN" && !t.in("had", "forgot") {
			continue
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

// purposeNoun: "for crispness", "for extra flavour": a quality wanted.
func (d reasons) purposeNoun(tokens []token, i int) bool {
	for j := i + 1; j < len(tokens) && j <= i+4; j++ {
		t := &tokens[j]
		if t.in("flavour", "flavor", "crunch", "colour", "color", "crispness", "sweetness", "texture", "moisture", "safety", "hygiene", "decoration", "extra", "richness", "contrast", "freshness", "bite", "kick", "shine", "depth", "sharpness", "warmth", "taste", "gloss", "tenderness", "presentation", "garnish", "speed", "lightness", "effect", "tang", "show", "luck") {
			return t.norm != "luck" && !(t.in("taste", "texture", "presentation", "hygiene", "safety") && j == i+1 && i > 0 && tokens[i-1].pause())
		}
		if !(t.isAdj() || t.tag == "DT" || t.in("a", "some", "more", "bit", "of", "and", "added", "that")) {
			return false
		}
	}
	return false
}

// purpose: an infinitive tells what something was done for when an action
// with its object or place stands before it, and nothing that takes an
// infinitive of itself ("need to", "too hot to", "time to"). One infinitive in
// seven is of this sort (GUM; one in five in how-to guides).
func (d reasons) purpose(tokens []token, i int) bool {
	v := i + 1
	for v < len(tokens) && tokens[v].isAdv() && v < i+3 {
		v++
	}
	if guards(tokens, v) && i > 1 && !takesInfinitive(&tokens[i-1]) && !nounTakesInfinitive(&tokens[i-1]) && !tokens[i-1].isVerb() && !(tokens[i-1].isAdj() && linkingVerb(tokens[i-2].norm)) && !tokens[i-1].in("how", "what", "not", "and", "or", "is", "was", "able", "enough", "up", "about", "me", "us", "him", "her") {
		return true
	}
	if v >= len(tokens) || !(tokens[v].tag == "VB" || tokens[i].tag == "TO" && tokens[v].in("keep", "let", "stop", "make", "cut", "get", "give", "see", "help", "avoid", "cool", "rest", "dry", "set", "balance", "taste", "test", "check", "thicken")) {
		return false
	}
	if after := v + 1; after < len(tokens) && (tokens[v].norm == "be" && tokens[after].in("fair", "honest", "sure", "precise") || tokens[v].norm == "look" && tokens[after].norm == "at" || tokens[v].norm == "die") {
		return false // "to be fair", "brown to look at"
	}
	if tokens[v].in("rise", "drain", "soak", "cool", "set", "rest", "prove", "chill", "settle", "stand", "simmer", "find", "go") {
		// "I left it to rise" tells what was left to happen, not an end.
		for j := i - 1; j >= 0 && j >= i-6; j-- {
			if tokens[j].in("left", "leave", "leaving", "let", "put") && tokens[v].norm != "go" || tokens[j].in("left", "leave") {
				return false
			}
		}
	}
	if tokens[v].in("be", "have") && i > 0 && !tokens[i-1].isNoun() {
		return false
	}
	if i == 0 || tokens[i-1].pause() && tokens[i-1].norm != "," {
		return i == 0 && !tokens[v].in("be", "begin", "start", "conclude", "improve", "sum", "summarise", "finish", "summarize", "say") && hasMainClause(tokens, v)
	}
	p := &tokens[i-1]
	if p.norm == "," {
		if i < 2 {
			return false
		}
		if tokens[v].in("be", "say", "summarise") {
			return false
		}
		return true
	}
	if p.in("not", "n't", "just", "only", "simply", "mainly", "also", "and", "or", "partly", "purely") {
		if i >= 2 {
			if p.in("just", "only", "mainly", "partly", "simply", "purely") {
				p = &tokens[i-2]
			} else if p.norm == "and" || p.norm == "or" {
				return d.earlierPurpose(tokens, i-1)
			} else {
				return false
			}
		}
	}
	if takesInfinitive(p) || p.norm == "on" && i >= 2 && tokens[i-2].in("go", "goes", "went", "going", "gone") {
		return false
	}
	if p.in("how", "what", "when", "where", "which", "who", "whether", "enough", "as", "than", "about", "but", "except", "from", "up", "due", "according", "used", "next", "close", "near", "able", "back", "down", "on", "in") {
		if !p.in("up", "back", "down", "on", "in") {
			return false
		}
	}
	// an adjective: "easy to", "ready to", "too hot to"
	if p.isAdj() && !(i >= 2 && (tokens[i-2].tag == "DT" || tokens[i-2].isVerb() && d.actionVerb(&tokens[i-2]))) || p.in("ready", "hard", "easy", "nice", "good", "able", "likely", "keen", "happy", "difficult", "first", "last", "possible", "impossible", "important", "best", "better", "sure", "lovely", "careful", "allowed", "supposed", "meant", "set", "due", "bound", "free", "willing", "unable", "proud", "glad", "afraid", "scared", "lucky", "tempted", "starving") {
		return false
	}
	// a degree earlier: "too long to", "so … as to"
	for j := i - 1; j >= 0 && j >= i-5; j-- {
		if tokens[j].norm == "too" && !tokens[i-1].isNoun() || tokens[j].norm == "enough" {
			return false
		}
	}
	if p.isVerb() && !p.tagIn("VBD", "VBN", "VBG", "VBZ", "VBP", "VB") {
		return false
	}
	if p.isVerb() {
		// Straight behind a verb: what was done, and to what end ("stopped to
		// check", "is used to"), unless the verb takes an infinitive of itself.
		return !passiveWithInfinitive(p.norm) || p.norm == "used" && i >= 2 && tokens[i-2].in("was", "is", "were", "are", "be", "been")
	}
	// An action must stand before.
	start := clauseStart(tokens, i)
	verb := -1
	for j := i - 1; j >= start; j-- {
		if tokens[j].isVerb() && tokens[j].tag != "MD" {
			verb = j
			break
		}
	}
	if verb < 0 {
		// notes without a subject: "Cross in the top to let heat in"
		return p.isNoun() && i-start >= 2 && i-start <= 9 && start == 0 && !nounTakesInfinitive(p) && !finiteAfter(tokens, i)
	}
	w := &tokens[verb]
	if takesInfinitive(w) && w.norm != "used" || w.in("is", "was", "are", "were", "'s", "be", "been", "being", "am", "'m", "'re", "seem", "seems", "seemed", "has", "ask", "asks", "asking", "invite", "invites", "inspire", "motivated", "persuade", "persuades", "plead", "pleaded", "summon", "summoned", "commission", "commissioned", "call", "called", "calls", "voted", "urged", "urging", "ordering", "costs", "cost", "takes", "precluded", "serve", "serves", "reminding", "asked", "told", "let", "got", "get", "getting", "remind", "reminded", "teach", "taught", "expect", "expected", "helped", "help", "allowed", "allow", "allows", "allowing", "forced", "force", "cause", "caused", "encourage", "encouraged", "encouraging", "enable", "enabled", "enables", "require", "required", "persuaded", "invite", "invited", "order", "ordered", "warned", "advise", "advised", "lead", "led", "wait", "prove", "proved", "tell", "showed", "show", "urge", "urged", "prompted", "requires", "permitted", "inspired") {
		if w.in("got", "get", "getting", "has") && p.isNoun() && !(p.human()) {
			return true
		}
		return w.in("is", "was", "were", "are") && i-verb <= 2 && tokens[max(0, verb-1)].in("this", "that", "which", "all")
	}
	if p.isNoun() && nounTakesInfinitive(p) && !lasted(tokens, i) && !(p.in("hours", "minutes", "hour", "bit") && tokens[v].in("set", "cool", "rest", "chill", "rise", "prove", "firm", "soften", "dry", "thicken")) {
		return false
	}
	// "the only one to", "the most reliable way to", "the first batch to"
	for j := i - 2; j >= 0 && j >= i-5; j-- {
		if tokens[j].in("only", "first", "second", "last", "next", "most", "best", "right") || tokens[j].tag == "JJS" || tokens[j].tag == "RBS" {
			return false
		}
		if tokens[j].isVerb() || tokens[j].pause() {
			break
		}
	}
	return true
}

// guards reports whether an infinitive can only tell an end: "to stop it
// catching", "to get rid of the pips", "to save time".
func guards(tokens []token, v int) bool {
	if v+1 >= len(tokens) {
		return false
	}
	n := &tokens[v+1]
	switch tokens[v].norm {
	case "stop", "prevent", "avoid", "protect":
		return n.in("it", "them", "the", "my", "me", "any", "her", "his", "anyone", "anybody") || n.tag == "VBG"
	case "get":
		return n.norm == "rid" || n.in("the", "air", "all") && v+3 < len(tokens) && (tokens[v+3].in("off", "out", "in", "into") || tokens[v+2].in("into", "in"))
	case "save":
		return n.in("time", "on", "washing")
	}
	return false
}

// passiveWithInfinitive reports whether a verb form is followed by an
// infinitive that tells what is said, thought or allowed, not an end.
func passiveWithInfinitive(w string) bool {
	switch w {
	case "expected", "supposed", "said", "known", "believed", "intended", "meant", "allowed", "considered", "likely", "required", "forced", "thought", "found", "reported", "asked", "told", "made", "seen", "planned", "scheduled", "set", "determined", "inclined", "prepared", "encouraged", "proposed", "shown", "estimated", "assumed", "taken", "compelled", "invited", "obliged", "permitted", "tempted", "led", "lead", "leads", "happened", "used", "went", "came", "go", "come", "amounts", "amount", "according", "relates", "responded", "relating", "compared", "due", "related", "limited", "referred", "refers", "refer", "belongs", "similar", "subject", "committed", "dedicated", "opposed", "suggested", "alleged", "advised", "ordered", "instructed", "entitled", "wait", "waiting", "waited", "mean", "means", "bring", "live", "think", "do", "did", "done", "is", "was", "are", "were", "be", "been", "being", "does", "left", "gets", "gone", "let", "given", "ready", "needs", "kept", "keep", "keeps", "hard", "thanks", "promised", "doomed", "denied", "welcome", "motivated", "persuaded", "voted", "agreeing", "agreed", "accustomed", "likened", "prone", "contribute", "translates", "condenses", "rise", "rose", "precluded", "commanded", "elected", "appointed", "authorized", "designated", "inspired", "relieved", "pleased", "surprised", "delighted", "amazed", "pleaded", "sentenced", "added", "listen", "listened", "close", "closer", "speak", "spoke", "talk", "talked", "look", "looking", "say", "says", "write", "access", "returned", "return", "moved", "lived", "decides", "opted", "failing", "refusing", "deciding", "choosing", "hesitate", "struggling", "aiming", "seeking", "continuing", "proceeding", "working", "work", "worked":
		return true
	}
	return false
}

// lasted reports whether a length of time stands before token i: "for an hour
// to relax the gluten".
func lasted(tokens []token, i int) bool {
	if tokens[i-1].kind != lexicon.Time {
		return false
	}
	for j := i - 2; j >= 0 && j >= i-4; j-- {
		if tokens[j].norm == "for" {
			return true
		}
	}
	return false
}

// earlierPurpose: "to stop it sticking and to add colour".
func (d reasons) earlierPurpose(tokens []token, i int) bool {
	for j := i - 1; j >= 0 && j >= i-10; j-- {
		if tokens[j].norm == "to" {
			return d.purpose(tokens, j)
		}
	}
	return false
}

// finiteAfter reports whether a finite verb follows, so that what stands
// before token i is its subject and no note.
func finiteAfter(tokens []token, i int) bool {
	for j := i + 1; j < len(tokens) && j < i+reach; j++ {
		if t := &tokens[j]; t.tag == "VBZ" || t.tag == "VBD" || t.tag == "VBP" || t.tag == "MD" {
			return true
		}
	}
	return false
}

func hasMainClause(tokens []token, i int) bool {
	for j := i; j < len(tokens) && j < i+reach; j++ {
		if tokens[j].norm == "," || tokens[j].in("i", "we", "you", "he", "she", "they") {
			return true
		}
	}
	return false
}

func (d reasons) actionVerb(t *token) bool { return !linkingVerb(t.norm) && !takesInfinitive(t) }

func (t *token) tagIn(tags ...string) bool {
	for _, tag := range tags {
		if t.tag == tag {
			return true
		}
	}
	return false
}

// takesInfinitive reports whether a verb takes an infinitive as its object.
func takesInfinitive(t *token) bool {
	switch t.norm {
	case "need", "needs", "needed", "want", "wants", "wanted", "try", "tries", "tried", "trying", "like", "likes", "liked", "love", "loved", "loves",
		"have", "has", "had", "having", "going", "gon", "decide", "decided", "decides", "start", "started", "starts", "starting", "begin", "began", "begins", "begun", "beginning",
		"forget", "forgot", "forgotten", "remember", "remembered", "learn", "learned", "learnt", "learning", "manage", "managed", "manages", "hope", "hoped", "hoping", "hopes", "plan", "planned", "planning", "plans",
		"wish", "prefer", "preferred", "continue", "continued", "continues", "seem", "seems", "seemed", "appear", "appears", "appeared", "tend", "tends", "tended", "fail", "failed", "fails", "offer", "offered", "refuse", "refused",
		"ought", "able", "agreed", "agree", "choose", "chose", "chosen", "expect", "expected", "expects", "promised", "promise", "supposed", "meant", "intend", "intended", "dare", "struggled", "struggle", "struggles", "afford", "attempt", "attempted", "attempts", "attempting", "aim", "aims", "aimed", "proceed", "proceeded", "threatened", "hate", "hated", "bothered", "bother", "dying", "got", "get", "happen", "happened", "happens", "said", "came", "come", "comes", "grew", "turned", "proved", "used", "allowed", "set", "determined", "claimed", "claims", "claim", "sought", "seek", "seeks", "cease", "ceased", "helped", "help", "known", "found", "believed", "thought", "considered", "reported", "estimated", "wanting", "needing", "liking":
		return true
	}
	return false
}

// nounTakesInfinitive reports whether a noun takes an infinitive that tells
// what it is, not what something was done for.
func nounTakesInfinitive(t *token) bool {
	switch t.norm {
	case "time", "way", "ways", "chance", "chances", "need", "ability", "abilities", "decision", "attempt", "attempts", "plan", "plans", "right", "reason", "reasons", "desire", "effort", "efforts", "opportunity", "opportunities", "thing", "things",
		"lot", "something", "anything", "nothing", "everything", "place", "places", "one", "person", "people", "job", "bit", "mistake", "idea", "tendency", "willingness", "power", "permission", "intention", "failure", "refusal", "promise", "goal", "aim", "task", "duty", "point", "part", "half", "moment", "someone", "anyone", "ones", "turn", "offer", "commitment", "potential", "capacity", "authority", "response", "obligation", "motivation", "freedom", "incentive", "pressure", "access", "approach", "approaches", "relation", "regard", "respect", "addition", "similar", "contrast", "year", "years", "hours", "minutes", "hour", "ages", "days", "weeks", "steps", "option", "step", "answer", "process", "campaign", "push", "occasion", "request", "requests", "direction", "theory", "invitation", "movement", "proposal", "proposals", "agreement", "requirement", "requirements", "conspiracy", "readiness", "inability", "hope", "hopes", "dream", "wish", "urge", "tool", "tools", "method", "methods", "work", "use", "member", "members", "kids", "subject":
		return true
	}
	return t.human()
}

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
	if h < 0 || !tokens[h].kind.Food() && tokens[h].kind != lexicon.NoKind && !tokens[h].in("heat", "steam", "oven", "grill", "oil", "fat", "whisking", "kneading", "air") {
		return false
	}
	for j := i - 1; j >= 0 && j >= i-5; j-- {
		t := &tokens[j]
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

// causes: a verb that itself says cause or prevention, said by a thing ("that
// stopped it sticking", "which allowed").
// generalTruth: "if you knead it it goes tough": what comes of something, told
// as a rule of the kitchen.
func (d reasons) generalTruth(tokens []token, i int) bool {
	if i+2 >= len(tokens) || !tokens[i+1].in("you", "u") {
		return false
	}
	for j := i + 3; j+1 < len(tokens) && j < i+16; j++ {
		if tokens[j].in("it", "they", "everything", "the") && tokens[j+1].in("goes", "go", "gets", "get", "turns", "turn", "sticks", "stick", "spits", "burns", "boils", "makes", "falls", "splits", "cooks", "puffs", "becomes") {
			return true
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
	case "lift", "brighten", "firm", "sort", "fix", "stop", "let", "allow", "balanc", "cut", "reliev", "loosen", "give", "help", "sharpen", "soften", "sweeten", "thicken", "melt", "lighten", "mask", "hide", "bring", "add", "make", "keep", "liven", "wake", "spread", "crisp", "save":
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
	if tokens[j].stem == "have" || tokens[j].in("of") {
		return false
	}
	if tokens[j].in("help", "make", "give", "add", "keep") {
		return n.in("it", "them", "the", "to", "some") && tokens[j].norm != "add"
	}
	return n.in("it", "them", "that", "the", "this", "up", "those", "these", "any", "my", "me", "some")
}

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
	if !t.isVerb() || i+1 >= len(tokens) {
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
	if !tokens[i].tagIn("VBD", "VBZ", "MD") {
		return false
	}
	start := i
	for start > 0 && !tokens[start-1].pause() && !tokens[start-1].in("but", "because", "so", "that", "think", "thought", "as", "since") {
		start--
	}
	first := &tokens[start]
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

// forgotten: "bit bland underneath i forgot mustard": a quality and what was
// left out, with no mark between.
func (d reasons) forgotten(tokens []token, i int) bool {
	if i < 2 || !tokens[i-1].in("i", "we") {
		return false
	}
	for j := i - 2; j >= 0 && j >= i-5; j-- {
		if tokens[j].pause() || tokens[j].in("and", "but", "because", "so") {
			return false
		}
		if tokens[j].describes() {
			return true
		}
	}
	return false
}

// faultThenEffect: "too much oil, they left a greasy patch": a note of too much
// or too little, then a clause with what it led to.
func faultThenEffect(tokens []token, i int) bool {
	fault := false
	for j := i - 1; j >= 0 && j >= i-6; j-- {
		t := &tokens[j]
		if t.pause() {
			break
		}
		if t.tagIn("VBD", "VBZ", "VBP", "MD") || t.joins() {
			return false
		}
		fault = fault || t.norm == "too" && j+2 < i
	}
	return fault && i+2 < len(tokens) && tokens[i+1].in("it", "they") && tokens[i+2].isVerb()
}

// changeAndFault: a change without a verb beside the fault that it would mend:
// "bigger bowl, it was falling out", "the ends burnt, thicker ones next week".
func (d reasons) changeAndFault(tokens []token, i int) bool {
	note := func(from, to int) bool {
		if from >= to || to-from > 7 {
			return false
		}
		more := false
		for j := from; j < to; j++ {
			if tokens[j].isVerb() && tokens[j].tag != "VBN" {
				return false
			}
			more = more || tokens[j].tagIn("JJR", "RBR") && j <= from+1
		}
		return more
	}
	told := func(from, to int) bool {
		for j := from; j < to; j++ {
			if tokens[j].tag == "VBD" {
				return true
			}
		}
		return false
	}
	from, to := 0, len(tokens)
	for j := i - 1; j >= 0; j-- {
		if tokens[j].pause() {
			from = j + 1
			break
		}
	}
	for j := i + 1; j < len(tokens); j++ {
		if tokens[j].pause() {
			to = j
			break
		}
	}
	if !d.ofCooking(tokens[from:to]) {
		return false
	}
	next := i+1 < to && (tokens[to-1].in("time", "week", "go") || tokens[to-1].kind == lexicon.Time)
	return note(from, i) && told(i+1, to) && opensClause(tokens, i+1) || next && told(from, i) && note(i+1, to)
}

// ofCooking reports whether the tokens speak of food or of working with it.
func (d reasons) ofCooking(tokens []token) bool {
	for i := range tokens {
		t := &tokens[i]
		if t.kind.Food() || t.kind == lexicon.Tool || t.isVerb() && t.card.works && !generic(t.stem) || t.isAdj() && t.describes() {
			return true
		}
	}
	return false
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

// beside reports whether two clauses set side by side by the mark at token i
// explain each other without a word that says so: how the food was and what the
// cook did ("the skin was crisp, you'd rubbed the butter in"); a step and the
// rule of the kitchen behind it ("in three lots; a full pan goes grey"); a
// change and the fault that asks for it ("I'd chop them smaller; they kept
// catching").
func (d reasons) beside(tokens []token, i int) bool {
	from, to := i, i+1
	for from > max(0, i-2*reach) && !tokens[from-1].in(";", ":", ".", "--", "–") && (tokens[from-1].norm != "," || listComma(tokens, from-1)) {
		from--
	}
	for to < min(len(tokens), i+2*reach) && !tokens[to].in(";", ":", ".", "--", "–", ",", "!") {
		to++
	}
	first := i + 1
	for first < to && (tokens[first].isAdv() || tokens[first].norm == "and") {
		first++
	}
	if i-from < 3 || to-first < 3 || tokens[first].in("so", "but", "because", "which", "who", "that", "then", "when", "if", "where", "as", "or") {
		return false
	}
	described, acted, plan := false, false, false
	for j := from; j < i; j++ {
		t := &tokens[j]
		if t.in("because", "so", "but", "if", "when") {
			return false
		}
		described = described || t.describes() && t.isAdj()
		plan = plan || t.in("would", "'d", "next") || j == from && t.tag == "VB"
		acted = acted || t.tag == "VBD" && t.card.works && !generic(t.stem)
	}
	subjectAt, verb := -1, -1
	for j := first; j < to; j++ {
		if tokens[j].tagIn("VBD", "VBZ", "VBP", "MD") || tokens[j].in("'d", "'ve") {
			verb = j
			break
		}
		if tokens[j].isNoun() || tokens[j].tag == "PRP" {
			subjectAt = j
		}
	}
	if subjectAt < 0 || verb < 0 || verb > subjectAt+3 {
		return false
	}
	v, s := &tokens[verb], &tokens[subjectAt]
	deed := func() bool {
		for j := verb; j < to && j < verb+3; j++ {
			if tokens[j].card.works && tokens[j].isVerb() && !tokens[j].in("made", "had", "took", "cut") || tokens[j].in("forgot", "left") {
				return true
			}
		}
		return false
	}
	switch {
	case plan && d.ofCooking(tokens[from:i]):
		return v.tag == "VBD" && tokens[i].norm != ":" && !tokens[first].in("this", "that")
	case described && !acted:
		return s.in("i", "you", "we") && (v.tag == "VBD" || v.in("'d", "had")) && deed()
	case acted:
		return tokens[i].norm != "," && tokens[i].norm != ":" && v.tagIn("VBZ", "VBP") && !s.human() && !s.in("it")
	}
	return false
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

// noteCause: the cause in the second half of a note without subjects:
// "Carrots mushy, went in too early", "gravy thin, didn't take the lid off".
func (d reasons) noteCause(tokens []token, i int) bool {
	if i < 2 || tokens[i-1].norm != "," || i+2 >= len(tokens) {
		return false
	}
	amiss := false
	for j := i; j < len(tokens) && j < i+8; j++ {
		if tokens[j].in("n't", "not", "too", "forgot", "enough") {
			amiss = true
		}
	}
	if !amiss {
		return false
	}
	for j := i - 2; j >= 0 && j >= i-8; j-- {
		if tokens[j].describes() {
			return true
		}
	}
	return false
}

// outcome: a step of cooking, "and", and the state it brought the food to: "I
// added a squeeze of lemon and it was a lot better". Kitchen knowledge ties
// the two: what was done to heat, time or amount changes the food.
func (d reasons) outcome(tokens []token, i int) bool {
	start := clauseStart(tokens, i)
	if start < 3 || tokens[start-1].norm != "and" && tokens[start-1].norm != "then" || i+1 >= len(tokens) {
		return false
	}
	s := subject(tokens, i)
	if s < start || tokens[s].human() || !(tokens[s].in("it", "they", "some", "everything", "result") || tokens[s].kind.Food()) || i > start+5 {
		return false
	}
	state := false
	for j := i + 1; j < len(tokens) && j <= i+5; j++ {
		if tokens[j].pause() || tokens[j].in("that", "and") {
			break
		}
		state = state || tokens[j].describes() || tokens[j].in("better", "worse", "fine", "perfect", "shape", "ready", "done", "together", "bowl")
	}
	if !state {
		return false
	}
	for j := start - 2; j >= 0 && j >= start-16; j-- {
		p := &tokens[j]
		if p.in("because", "so", ".", ";", "but", "until", "till", "when", "while", "if") {
			return false
		}
		if p.isVerb() && (p.card.works || p.in("left", "let", "turned")) && !p.in("tasted", "taste", "cut", "served", "tried", "tested", "checked", "used") {
			return j == 0 || !(tokens[j-1].in("was", "were", "is", "be"))
		}
	}
	return false
}

// follows: two halves of one sentence where the second is what the first led
// to: somebody did something, or there was too much or too little of it, "and
// it went soggy".
func (d reasons) follows(tokens []token, i int) bool {
	t := &tokens[i]
	if t.in("went", "came") && d.noteCause(tokens, i) {
		return true
	}
	if !t.isVerb() {
		return false
	}
	s := subject(tokens, i)
	if s < 0 || tokens[s].human() || !(tokens[s].in("it", "they", "which", "that") || tokens[s].kind.Food()) {
		return false
	}
	start := clauseStart(tokens, i)
	if start < 2 || !tokens[start-1].in("and", ",", "=", "--", "-") {
		return false
	}
	if t.in("came", "went", "goes") && i+1 < len(tokens) && tokens[i+1].in("to", "on", "into", "in", "well") {
		return false
	}
	// the half before
	too, acted := false, false
	for j := start - 2; j >= 0 && j >= start-reach; j-- {
		p := &tokens[j]
		if p.in("too", "enough", "forgot", "less") || p.in("to") && j+1 < len(tokens) && tokens[j+1].in("much", "long", "many", "hot", "early", "little") {
			too = true
		}
		if p.in("i", "we", "you") && j+1 < len(tokens) && (tokens[j+1].isVerb() || tokens[j+1].isAdv() || tokens[j+1].in("did")) {
			acted = true
		}
		if p.in("because", "so", ".") {
			break
		}
	}
	if too {
		return true
	}
	return acted && !t.in("came", "rose") && tokens[start-1].norm == "and" && (tokens[s].in("it", "they"))
}
