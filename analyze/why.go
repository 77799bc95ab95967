package analyze

import (
	"strings"
)

// reasons finds the clauses that give a purpose, a cause or a consequence.
// Each rule is one function of its connective; the shares named are those of
// GUM (how-to guides, talk, travel …) and PDTB 2.0, by count. They stand by how
// the reason is told: joined by a word (why_joined.go), by an infinitive
// (why_purpose.go), by a verb that causes (why_cause.go), by what is told beside
// it (why_untold.go), and in notes without subjects (why_note.go).
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
	if d.setOut(tokens, i) || hurtDoing(tokens, i) || mustBe(tokens, i) || arrowed(tokens, i) || heldFrom(tokens, i) || deedDoes(tokens, i) || thingDid(tokens, i) || brought(tokens, i) || wouldHave(tokens, i) {
		return i, true
	}
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
		if t.norm == "thanks" && thanksGiven(tokens, i) {
			return 0, false
		}
		return i, next(1).norm == "to" || t.norm == "due" && next(1).norm == "," && (next(4).norm == "," && next(5).norm == "to" || next(3).norm == "," && next(4).norm == "to")
	case "through":
		return i, throughDoing(tokens, i)
	case "being":
		// ", being such a lump": what it is, told as a cause.
		return i, prev.norm == "," && next(1).in("such", "so", "a", "an", "the", "too", "only", "quite", "very", "from", "rather", "mostly", "all")
	case "leaving":
		return i, prev.norm == "," && (next(1).tagIn("DT", "PRP", "PRP$") || next(1).isAdj() || next(1).isNoun())
	case "so":
		return i, d.so(tokens, i)
	case "since":
		return i, d.since(tokens, i)
	case "as":
		return i, d.as(tokens, i)
	case "for":
		// for + clause is an old because: "for the top was plain".
		if prev.norm == "as" {
			return 0, false // "as for the presentation"
		}
		return i, forCause(tokens, i) || d.purposeNoun(tokens, i) || forNot(tokens, i) || next(1).norm == "to" && next(2).tag == "VB" || prev.norm == "," && (next(1).tag == "PRP" && next(2).isVerb() || next(1).norm == "the" && opensClause(tokens, i+1) && next(1).tag == "DT")
	case "without", "past", "beyond":
		return i, withoutIt(tokens, i)
	case "my", "your":
		return i, stirsBody(tokens, i)
	case "before":
		// "before it could catch": what it was done to prevent.
		// "before anybody slipped", "before it dried on": likewise.
		return i, next(2).norm == "could" || next(3).norm == "could" || (next(1).in("it", "they", "anybody", "anyone", "somebody", "someone") || next(1).norm == "the") && (mishap(next(2)) && !movedOn(tokens, i+2) || mishap(next(3)) && !movedOn(tokens, i+3))
	case "where":
		if prev.in("is", "was", "'s") && next(-2).in("which", "that") {
			return i - 2, clauseHas(tokens, i, "come", "comes", "came", "gets", "got") // "which is where the shine comes from"
		}
		return i, (next(1).human() || next(1).in("it", "they")) && (next(2).in("stopped", "forgot", "missed", "caught", "did", "had", "was", "burnt", "touched") || next(2).norm == "n't")
	case "(":
		return i + 1, lackSetApart(tokens, i)
	case "think", "suspect", "reckon", "guess", "bet":
		return i - 1, i > 0 && hedgedCause(tokens, i)
	case "blame", "blames", "blamed", "blaming":
		return i, i > 0 && i+1 < len(tokens) && prev.norm != "to"
	case "way":
		// "that way it held together", not "I did it that way"
		return i - 1, prev.in("that", "this") && (opensClause(tokens, i+1) && !next(-2).isVerb() || next(-2).in("quicker", "easier", "better", "faster", "cleaner", "safer", "sooner", "less", "longer", "tidier", "neater"))
	case "point":
		return i, next(1).norm == "of" && (clauseHas(tokens, i, "to") || verbalEnd(tokens, i)) && (clauseHas(tokens, i, "is") || clauseHas(tokens, i, "was"))
	case "down":
		return i, next(1).norm == "to" && (prev.in("is", "was", "'s", "are", "were", "all", "mostly", "probably", "mainly", "partly") || strings.HasSuffix(next(2).norm, "ing") || next(2).tagIn("PRP", "PRP$") && strings.HasSuffix(next(3).norm, "ing"))
	case "purpose":
		return i, next(1).norm == "of" || prev.in("the", "for")
	case "if", "when":
		if t.norm == "if" && next(1).norm == "not" && i > 0 && (next(2).tagIn("PRP", "PRP$", "DT", "PDT") || next(2).in("maybe", "then")) {
			return i, true // "hold it well, if not you cut yourself": otherwise
		}
		return i, d.generalTruth(tokens, i) || t.norm == "if" && (counterfactual(tokens, i) || ruleThenIf(tokens, i)) || t.norm == "if" && d.wouldDiffer(tokens, i)
	case "and":
		return i, d.rewarded(tokens, i) || nothingHappened(tokens, i) || hadTo(tokens, i) || tooAndCould(tokens, i) || next(1).in("it", "that") && next(2).in("shows", "showed") && (next(3).pause() || next(3).norm == "") || excessThen(tokens, i)
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
		if apartFromThat(tokens, i) || next(1).in("it", "everything", "all", "they") && next(2).in("was", "were") && next(3).in("fine", "good", "lovely", "nice", "great", "ok", "okay", "perfect", "spot", "delicious", "alright", "brilliant", "very", "really") {
			return 0, false
		}
		return i, next(1).tagIn("PRP", "PRP$", "DT", "EX") || next(1).isNoun() || opensClause(tokens, i+1) || next(1).pause() && asideBefore(tokens, i) || endsRule(tokens, i)
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
		if prev.in("is", "'s", "was", "thats", "that", "explains") || next(-2).in("that", "which", "this") || prev.isAdv() && next(-2).in("is", "'s", "was") && next(-3).in("that", "which", "this") {
			return max(0, i-2), true
		}
	case "reason":
		if prev.in("this", "that") && (next(-2).norm == "for" || next(-3).norm == "for") {
			return i - 2, true
		}
		if prev.isAdj() && next(-2).norm == "the" && opensClause(tokens, i+1) {
			return i, true // "the main reason it rose"
		}
		if prev.in("some", "any", "no", "whatever") {
			return 0, false // "for some reason it was green"
		}
		return i, next(1).in("for", "i", "was", "is", "being", "why", "that", "it") || prev.in("the", "one", "main") && i < 3
	case "reasons":
		return i, prev.in("these", "two", "three", "several", "for")
	case "meant", "means", "meaning":
		return d.whichMeans(tokens, i)
	case "from":
		return i, fromEffort(tokens, i) || d.fromCause(tokens, i)
	case "now":
		return i, next(1).norm == "that"
	case "seeing":
		return i, next(1).in("as", "that", "how")
	case "stopped", "stops", "stop", "prevents", "prevented", "avoids", "avoided", "helps", "helped", "ensure", "ensures", "ensured", "ensuring", "preventing", "stopping", "avoiding", "allows", "allowed", "allowing", "lets", "causes", "caused", "causing", "enabled", "enables", "enabling", "leads", "led", "leading", "resulted", "resulting", "results":
		return i, d.causes(tokens, i) || d.ingredientActs(tokens, i) || effectNoted(tokens, i)
	case "made", "makes", "making", "make", "kept", "keeps", "keeping", "gave", "gives", "giving", "turned", "leaves", "let", "got", "brought", "brings", "took", "thickened", "thickens", "dried", "softened", "loosened", "added", "adds", "balanced", "cut", "sealed", "caught", "held", "holds", "killed", "kills", "spoiled", "spoilt", "ruined", "drew", "pulled", "left", "sorted", "fixed", "saved", "rescued", "spared":
		return i, d.makes(tokens, i) || d.ingredientActs(tokens, i) || effectNoted(tokens, i)
	case "which":
		return i, d.whichDoes(tokens, i) || whichActs(tokens, i)
	case "forgot":
		return i, d.noteCause(tokens, i) || d.forgotten(tokens, i)
	case "did", "put", "had", "too":
		return i, d.noteCause(tokens, i) || t.norm == "did" && next(1).in("it", "them", "the") && d.deedSubject(tokens, i)
	case "saves", "gets":
		return i, effectNoted(tokens, i)
	case "that", "this", "it":
		return i, effectTold(tokens, i) || t.norm == "that" && thatMuch(tokens, i)
	case "paid", "showed", "difference":
		// "it paid off: nothing dried out", "that made all the difference: …"
		return i, toldAs(tokens, i)
	case "what":
		// "the water is what wets the flour": the cause picked out.
		return i, i > 0 && prev.in("is", "'s", "was", "were") && (next(1).tagIn("VBZ", "VBD") || next(1).in("turns", "makes", "gives", "stops", "keeps", "lets", "holds")) && !linkingVerb(next(1).norm) && i > 1 && !next(-2).human() && !next(1).in("happened", "happens", "did", "had", "has")
	case ",", ";", "--", "-", "–", ":":
		return i + 1, t.norm == "," && (faultThenEffect(tokens, i) || d.changeAndFault(tokens, i)) || failedThen(tokens, i) || mendedFault(tokens, i) || hinderedBeside(tokens, i) || degreeBehind(tokens, i) || faultNoted(tokens, i) || d.beside(tokens, i)
	case "was", "were", "felt", "became", "stayed", "filled":
		return i, t.in("was", "were") && d.noteCause(tokens, i) || d.outcome(tokens, i)
	case "went", "came", "goes", "turns", "splashed", "splattered", "spat", "exploded", "burst", "flew", "slid", "slipped", "split", "sank", "stuck", "broke", "collapsed", "burnt", "burned", "curdled", "spread", "leaked", "tore", "ended", "fell", "shrank", "cracked", "overflowed", "dropped", "rose":
		return i, d.follows(tokens, i)
	}
	return i, d.ingredientActs(tokens, i)
}
