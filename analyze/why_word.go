package analyze

import (
	"slices"
	"strings"
)

// backward returns the token n places before token i, or one that is no word.
func backward(tokens []token, i, n int) *token {
	if i-n >= 0 {
		return &tokens[i-n]
	}
	return &token{}
}

// dueTo: "due to the heat", "due, I think, to the heat", "thanks to the timer".
func dueTo(tokens []token, i int) bool {
	next := func(n int) *token { return after(tokens, i, n) }
	switch {
	case tokens[i].norm == "thanks" && thanksGiven(tokens, i):
		return false
	case next(1).norm == "to":
		return true
	}
	aside := next(4).norm == "," && next(5).norm == "to" || next(3).norm == "," && next(4).norm == "to"
	return tokens[i].norm == "due" && next(1).norm == "," && aside
}

// beingSuch: ", being such a lump": what it is, told as a cause.
func beingSuch(tokens []token, i int) bool {
	return backward(tokens, i, 1).norm == "," && after(tokens, i, 1).in("such", "so", "a", "an", "the", "too", "only", "quite", "very", "from", "rather", "mostly", "all")
}

// leavingIt: ", leaving the middle raw": what came of it.
func leavingIt(tokens []token, i int) bool {
	n := after(tokens, i, 1)
	return backward(tokens, i, 1).norm == "," && (n.tagIn("DT", "PRP", "PRP$") || n.isAdj() || n.isNoun())
}

// forThat: "for the top was plain", an old because, and the other uses of "for"
// that tell a cause or an end; not "as for the presentation".
func (d reasons) forThat(tokens []token, i int) bool {
	if backward(tokens, i, 1).norm == "as" {
		return false
	}
	n, m := after(tokens, i, 1), after(tokens, i, 2)
	return forCause(tokens, i) || d.purposeNoun(tokens, i) || forNot(tokens, i) || n.norm == "to" && m.tag == "VB" ||
		backward(tokens, i, 1).norm == "," && (n.tag == "PRP" && m.isVerb() || n.norm == "the" && opensClause(tokens, i+1) && n.tag == "DT")
}

// forBetter: "for a crisper base", at the head or behind a deed: a quality as the
// end.
func forBetter(tokens []token, i int) bool {
	n, m, o := after(tokens, i, 1), after(tokens, i, 2), after(tokens, i, 3)
	if !n.in("a", "an") || !o.isNoun() {
		return false
	}
	return i == 0 && (m.tag == "JJR" || m.isAdj() && comparative(m)) ||
		i > 2 && m.in("healthier", "crisper", "softer", "smoother", "neater", "richer", "lighter", "darker", "crunchier", "fluffier", "thicker", "thinner", "sweeter", "even", "smooth", "clean", "cleaner", "crisp", "glossy", "golden", "shiny")
}

// comparative reports whether the form compares, by its tag or by its ending:
// what texts of cooks compare, the tagger often takes for a noun.
func comparative(t *token) bool {
	if t.tagIn("JJR", "RBR") || t.in("more", "less") {
		return true
	}
	return strings.HasSuffix(t.norm, "er") && len(t.norm) > 4 && !t.in("proper", "bitter", "tender", "clever", "other", "silver", "later", "butter", "water", "batter", "paper", "pepper", "cooker", "timer", "mixer", "peeler", "grater", "freezer", "toaster", "counter", "corner", "dinner", "supper", "ginger", "flavour", "powder", "oyster", "burger", "mother", "father", "brother", "sister", "outer", "inner", "upper", "under", "number", "matter", "order", "member", "border", "cover", "finger", "shoulder", "container", "colander", "strainer", "saucer", "platter", "skewer", "roaster", "steamer", "blender", "teacher", "sugar", "hamper", "helper", "whisker", "cracker", "fritter", "recover", "whether", "rather", "never", "ever", "over", "after")
}

// beforeMishap: "before it could catch", "before anybody slipped", "before it
// dried on": what it was done to prevent. "My brother had one before I could stop him"
// was not done for that; "the froth set before I could skim it" tells a cause.
func beforeMishap(tokens []token, i int) bool {
	n, m, o := after(tokens, i, 1), after(tokens, i, 2), after(tokens, i, 3)
	if n.in("i", "we") && slices.ContainsFunc(tokens[clauseStart(tokens, i):i], func(t token) bool { return t.human() }) {
		return false
	}
	if m.norm == "could" || o.norm == "could" {
		return true
	}
	return n.in("it", "they", "anybody", "anyone", "somebody", "someone", "the") && (mishap(m) && !movedOn(tokens, i+2) || mishap(o) && !movedOn(tokens, i+3))
}

// whereFrom: "which is where the shine comes from", "where I stopped stirring":
// what something came of.
func whereFrom(tokens []token, i int) (int, bool) {
	if backward(tokens, i, 1).in("is", "was", "'s") && backward(tokens, i, 2).in("which", "that") {
		return i - 2, clauseHas(tokens, i, "come", "comes", "came", "gets", "got")
	}
	n, m := after(tokens, i, 1), after(tokens, i, 2)
	return i, (n.human() || n.in("it", "they")) && (m.in("stopped", "forgot", "missed", "caught", "did", "had", "was", "burnt", "touched") || m.norm == "n't")
}

// thatWay: "that way it held together", not "I did it that way".
func thatWay(tokens []token, i int) bool {
	b := backward(tokens, i, 2)
	return backward(tokens, i, 1).in("that", "this") && (opensClause(tokens, i+1) && !b.isVerb() || b.in("quicker", "easier", "better", "faster", "cleaner", "safer", "sooner", "less", "longer", "tidier", "neater"))
}

// pointOf: "the point of the film was to keep flies off".
func pointOf(tokens []token, i int) bool {
	return after(tokens, i, 1).norm == "of" && (clauseHas(tokens, i, "to") || verbalEnd(tokens, i)) && (clauseHas(tokens, i, "is") || clauseHas(tokens, i, "was"))
}

// downTo: "that was down to the oven", "down to rushing", "down to me rushing".
func downTo(tokens []token, i int) bool {
	m, o := after(tokens, i, 2), after(tokens, i, 3)
	return after(tokens, i, 1).norm == "to" && (backward(tokens, i, 1).in("is", "was", "'s", "are", "were", "all", "mostly", "probably", "mainly", "partly") || strings.HasSuffix(m.norm, "ing") || m.tagIn("PRP", "PRP$") && strings.HasSuffix(o.norm, "ing"))
}

// onCondition: "hold it well, if not you cut yourself", and conditions that tell
// what always comes of something, or would have.
func (d reasons) onCondition(tokens []token, i int) bool {
	if tokens[i].norm == "when" {
		return d.generalTruth(tokens, i)
	}
	m := after(tokens, i, 2)
	ifNot := after(tokens, i, 1).norm == "not" && i > 0 && (m.tagIn("PRP", "PRP$", "DT", "PDT") || m.in("maybe", "then"))
	return ifNot || d.generalTruth(tokens, i) || counterfactual(tokens, i) || ruleThenIf(tokens, i) || d.wouldDiffer(tokens, i)
}

// itShows: "I rushed it and it shows".
func itShows(tokens []token, i int) bool {
	o := after(tokens, i, 3)
	return after(tokens, i, 1).in("it", "that") && after(tokens, i, 2).in("shows", "showed") && (o.pause() || o.norm == "")
}

// otherwiseWould: "otherwise it sticks": what would come about; "spot on
// otherwise" and "otherwise just got on with it" set apart.
func otherwiseWould(tokens []token, i int) bool {
	n := after(tokens, i, 1)
	if apartFromThat(tokens, i) || n.in("it", "everything", "all", "they") && after(tokens, i, 2).in("was", "were") && after(tokens, i, 3).in("fine", "good", "lovely", "nice", "great", "ok", "okay", "perfect", "spot", "delicious", "alright", "brilliant", "very", "really") {
		return false
	}
	return n.tagIn("PRP", "PRP$", "DT", "EX") || n.isNoun() || opensClause(tokens, i+1) || n.pause() && asideBefore(tokens, i) || endsRule(tokens, i)
}

// orElse: "you must not open the door or they flop", "or they go greasy": what
// would happen.
func orElse(tokens []token, i int) bool {
	n, m, o := after(tokens, i, 1), after(tokens, i, 2), after(tokens, i, 3)
	if n.in("it", "they", "you") && (m.tagIn("VBP", "VBZ") || m.in("wouldve", "would've")) && bound(tokens, i) {
		return true
	}
	return n.in("it", "they", "you", "else", "the", "i") && (m.in("go", "goes", "will", "'ll", "would", "'d", "get", "gets", "end", "turn", "turns", "burn", "burns", "stick", "sticks", "might", "can", "wo", "do", "does", "oil", "ends", "becomes", "become", "dry", "dries") || o.in("goes", "go", "gets", "will", "would", "turns"))
}

// thatIsWhy: "that's why it sank", "which is probably why", "explains why".
func thatIsWhy(tokens []token, i int) bool {
	p, b, c := backward(tokens, i, 1), backward(tokens, i, 2), backward(tokens, i, 3)
	return p.in("is", "'s", "was", "thats", "that", "explains") || b.in("that", "which", "this") || p.isAdv() && b.in("is", "'s", "was") && c.in("that", "which", "this")
}

// reasonNamed: "the main reason it rose", "for this reason", "the reason was the
// oven"; not "for some reason it was green".
func reasonNamed(tokens []token, i int) (int, bool) {
	p, b := backward(tokens, i, 1), backward(tokens, i, 2)
	switch {
	case p.in("this", "that") && (b.norm == "for" || backward(tokens, i, 3).norm == "for"):
		return i - 2, true
	case p.isAdj() && b.norm == "the" && opensClause(tokens, i+1):
		return i, true
	case p.in("some", "any", "no", "whatever"):
		return i, false
	}
	return i, after(tokens, i, 1).in("for", "i", "was", "is", "being", "why", "that", "it") || p.in("the", "one", "main") && i < 3
}

// whatDoes: "the water is what wets the flour": the cause picked out.
func whatDoes(tokens []token, i int) bool {
	n := after(tokens, i, 1)
	if i < 2 || !tokens[i-1].in("is", "'s", "was", "were") || tokens[i-2].human() {
		return false
	}
	return (n.tagIn("VBZ", "VBD") || n.in("turns", "makes", "gives", "stops", "keeps", "lets", "holds")) && !linkingVerb(n.norm) && !n.in("happened", "happens", "did", "had", "has")
}
