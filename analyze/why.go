package analyze

// reasons finds the clauses that give a purpose, a cause or a consequence.
// Each rule is one function of its connective; the shares named are those of
// GUM (how-to guides, talk, travel …) and PDTB 2.0, by count. They stand by how
// the reason is told: joined by a word (why_joined.go, why_word.go), by an infinitive
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
	if d.setOut(tokens, i) || hurtDoing(tokens, i) || mustBe(tokens, i) || arrowed(tokens, i) || heldFrom(tokens, i) || deedDoes(tokens, i) || thingDid(tokens, i) || brought(tokens, i) || wouldHave(tokens, i) {
		return i, true
	}
	switch tokens[i].norm {
	case "where":
		return whereFrom(tokens, i)
	case "(":
		return i + 1, lackSetApart(tokens, i)
	case "think", "suspect", "reckon", "guess", "bet":
		return i - 1, i > 0 && hedgedCause(tokens, i)
	case "way":
		return i - 1, thatWay(tokens, i)
	case "order":
		if i > 0 && tokens[i-1].norm == "in" && after(tokens, i, 1).in("to", "that") {
			return i - 1, true
		}
	case "else":
		return i - 1, i > 0 && tokens[i-1].norm == "or"
	case "case":
		return i - 1, i > 0 && tokens[i-1].norm == "in"
	case "result":
		return i - 2, i > 1 && tokens[i-2].norm == "as" && tokens[i-1].norm == "a"
	case "why":
		if thatIsWhy(tokens, i) {
			return max(0, i-2), true
		}
	case "reason":
		return reasonNamed(tokens, i)
	case "meant", "means", "meaning":
		return d.whichMeans(tokens, i)
	case ",", ";", "--", "-", "–", ":":
		return i + 1, tokens[i].norm == "," && (faultThenEffect(tokens, i) || d.changeAndFault(tokens, i)) || failedThen(tokens, i) || mendedFault(tokens, i) || hinderedBeside(tokens, i) || degreeBehind(tokens, i) || faultNoted(tokens, i) || d.beside(tokens, i)
	}
	if ok, joins := d.joined(tokens, i); joins {
		return i, ok
	}
	return i, d.doneBy(tokens, i)
}

// joined reports whether the word at token i joins a reason to what it explains,
// and whether it is a word that can: one that does acts on nothing.
func (d reasons) joined(tokens []token, i int) (ok, joins bool) {
	switch t := &tokens[i]; t.norm {
	case "because", "cus", "therefore", "thus", "hence", "consequently", "thereby", "accordingly":
		// because: reason in all of its 858 uses in PDTB.
		return true, true
	case "due", "owing", "thanks":
		return dueTo(tokens, i), true
	case "through":
		return throughDoing(tokens, i), true
	case "being":
		return beingSuch(tokens, i), true
	case "leaving":
		return leavingIt(tokens, i), true
	case "so":
		return d.so(tokens, i), true
	case "since":
		return d.since(tokens, i), true
	case "as":
		return d.as(tokens, i), true
	case "for":
		return d.forThat(tokens, i), true
	case "without", "past", "beyond":
		return withoutIt(tokens, i), true
	case "before":
		return beforeMishap(tokens, i), true
	case "blame", "blames", "blamed", "blaming":
		return i > 0 && i+1 < len(tokens) && tokens[i-1].norm != "to", true
	case "point":
		return pointOf(tokens, i), true
	case "down":
		return downTo(tokens, i), true
	case "purpose":
		return after(tokens, i, 1).norm == "of" || i > 0 && tokens[i-1].in("the", "for"), true
	case "if", "when":
		return d.onCondition(tokens, i), true
	case "and":
		return d.rewarded(tokens, i) || nothingHappened(tokens, i) || hadTo(tokens, i) || struck(tokens, i) || tooAndCould(tokens, i) || itShows(tokens, i) || excessThen(tokens, i), true
	case "then":
		return thenSpared(tokens, i), true
	case "to":
		return d.purpose(tokens, i), true
	case "otherwise":
		return otherwiseWould(tokens, i), true
	case "or":
		return orElse(tokens, i) || d.ingredientActs(tokens, i), true
	case "given":
		return i == 0 || tokens[i-1].norm == "," || after(tokens, i, 1).norm == "that", true
	case "reasons":
		return i > 0 && tokens[i-1].in("these", "two", "three", "several", "for"), true
	case "from":
		return fromEffort(tokens, i) || d.fromCause(tokens, i), true
	case "now":
		return after(tokens, i, 1).norm == "that", true
	case "seeing":
		return after(tokens, i, 1).in("as", "that", "how"), true
	case "which":
		return d.whichDoes(tokens, i) || whichActs(tokens, i) || whichTooMuch(tokens, i), true
	case "that", "this", "it":
		return effectTold(tokens, i) || t.norm == "that" && (thatMuch(tokens, i) || enoughThat(tokens, i)), true
	case "what":
		return whatDoes(tokens, i), true
	}
	return false, false
}

// doneBy reports whether the word at token i, most often a verb, tells by itself
// what a thing or a deed brought about.
func (d reasons) doneBy(tokens []token, i int) bool {
	switch t := &tokens[i]; t.norm {
	case "my", "your":
		return stirsBody(tokens, i)
	case "would", "'d", "might", "will", "'ll", "could", "should":
		return d.remedy(tokens, i) || betters(tokens, i)
	case "stopped", "stops", "stop", "prevents", "prevented", "avoids", "avoided", "helps", "helped", "ensure", "ensures", "ensured", "ensuring", "preventing", "stopping", "avoiding", "allows", "allowed", "allowing", "lets", "causes", "caused", "causing", "enabled", "enables", "enabling", "leads", "led", "leading", "resulted", "resulting", "results":
		return d.causes(tokens, i) || d.ingredientActs(tokens, i) || effectNoted(tokens, i)
	case "made", "makes", "making", "make", "kept", "keeps", "keeping", "gave", "gives", "giving", "turned", "leaves", "let", "got", "brought", "brings", "took", "thickened", "thickens", "dried", "softened", "loosened", "added", "adds", "balanced", "cut", "sealed", "caught", "held", "holds", "killed", "kills", "spoiled", "spoilt", "ruined", "drew", "pulled", "left", "sorted", "fixed", "saved", "rescued", "spared":
		return d.makes(tokens, i) || d.ingredientActs(tokens, i) || effectNoted(tokens, i)
	case "forgot":
		return d.noteCause(tokens, i) || d.forgotten(tokens, i)
	case "did", "put", "had", "too":
		return d.noteCause(tokens, i) || t.norm == "did" && after(tokens, i, 1).in("it", "them", "the") && d.deedSubject(tokens, i)
	case "saves", "gets":
		return effectNoted(tokens, i)
	case "paid", "showed", "difference":
		// "it paid off: nothing dried out", "that made all the difference: …"
		return toldAs(tokens, i)
	case "was", "were", "felt", "became", "stayed", "filled":
		return t.in("was", "were") && d.noteCause(tokens, i) || d.outcome(tokens, i)
	case "went", "came", "goes", "turns", "splashed", "splattered", "spat", "exploded", "burst", "flew", "slid", "slipped", "split", "sank", "stuck", "broke", "collapsed", "burnt", "burned", "curdled", "spread", "leaked", "tore", "ended", "fell", "shrank", "cracked", "overflowed", "dropped", "rose":
		return d.follows(tokens, i)
	}
	return d.ingredientActs(tokens, i)
}
