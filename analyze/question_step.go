package analyze

import (
	"slices"
	"strings"

	"saywhy/lexicon"
)

// quotable is a piece of a sentence that a question may put before the writer.
type quotable struct {
	sentence int
	text     string
	rank     int // 0 for what matters most
}

// stepsFor lists the jobs of the writer's own, or the faults, at which an area
// that the text does not speak of could be told, those that matter most first.
// To be asked "what could you smell?" of no moment in particular is the same
// question week after week; asked of the onions just fried it is one's own.
func (d asking) stepsFor(r *reading, a lexicon.Area, risky map[int]bool) []quotable {
	var out []quotable
	ranks := d.words.lex.Reading.Steps[a]
	for i := range r.sentences {
		s := &r.sentences[i]
		if risky[s.n] || isPrompt(s) || s.tokens[len(s.tokens)-1].in("?") || s.reportsSpeech(r.Text) {
			continue
		}
		if a != lexicon.Improvement && s.has(lexicon.Improvement) || a == lexicon.Safety && restHas(s.tokens, 0, len(s.tokens), "careful", "carefully", "safe", "safely") {
			continue // "next time I chop coriander also"; "she cut them all the same size, very careful"
		}
		for j := headingEnd(s.tokens); j < len(s.tokens); j++ {
			rank, ok := ranks[s.tokens[j].stem]
			if a == lexicon.Improvement {
				rank, ok = 0, faultAt(s, j)
			}
			if !ok || !jobAt(s.tokens, j, a) {
				continue
			}
			from, to, whole := clauseAround(r.Text, s.tokens, j, j+1, maxQuote)
			if whole && endsWhole(s.tokens, to) && d.stepOf(s.tokens[from:to], a, r.Role) && !sharesModal(s.tokens, from) {
				out = append(out, quotable{s.n, r.Text[s.tokens[from].start:s.tokens[to-1].end], rank})
			}
		}
	}
	slices.SortStableFunc(out, func(a, b quotable) int { return a.rank - b.rank })
	return out
}

// jobAt reports whether token j, which names a job or a tool of the area, tells in its
// place of a job at which the area can be asked about.
func jobAt(tokens []token, j int, a lexicon.Area) bool {
	if namesNext(tokens, j) || listsWhatWas(tokens, j) {
		return false
	}
	switch a {
	case lexicon.Safety:
		return hazardous(tokens, j)
	case lexicon.Aroma:
		return !cookedBefore(tokens, j) && !namesFood(tokens, j) // "we had toast": the food, not the job
	case lexicon.Hygiene:
		return !restHas(tokens, max(0, j-2), 1, "into", "onto", "over") // germs come in before that
	}
	return true
}

// hazardous reports whether token j is a tool or a job at which somebody can get hurt,
// and not what was cut or cooked before: "soaked the slices", "peeled the boiled eggs".
func hazardous(tokens []token, j int) bool {
	t := &tokens[j]
	if t.kind == lexicon.Tool {
		return true
	}
	for k := j + 1; k < len(tokens) && k <= j+2; k++ {
		if tokens[k].kind == lexicon.Tool && tokens[k-1].tagIn("DT", "PRP$") {
			return false // "we boiled the jars first"
		}
	}
	return t.isVerb() && !cookedBefore(tokens, j)
}

// cookedBefore reports whether token j tells of a noun how it had been cooked or cut:
// "the boiled eggs", "potato and fried onion".
func cookedBefore(tokens []token, j int) bool {
	if j == 0 || j+1 >= len(tokens) || !tokens[j+1].isNoun() && !tokens[j+1].kind.Food() || !strings.HasSuffix(tokens[j].norm, "ed") {
		return false
	}
	return tokens[j-1].tagIn("DT", "PRP$", "JJ", "IN") || j > 1 && tokens[j-1].in("and", "&", "+") && (tokens[j-2].isNoun() || tokens[j-2].kind.Food())
}

// sharesModal reports whether the piece that begins at token i, without anybody
// who did it, goes on with what the clause before only imagines: "I could have cut
// it up | and boiled it longer".
func sharesModal(tokens []token, i int) bool {
	for i > 0 && tokens[i-1].in("and", ",", "then", "or", "&") {
		i--
	}
	if i == 0 || i < len(tokens) && !tokens[i].in("and", ",", "then", "or", "&") {
		return false
	}
	for j := i; j < len(tokens) && j <= i+2; j++ {
		if tokens[j].human() {
			return false
		}
	}
	for j := i - 1; j >= clauseStart(tokens, i-1); j-- {
		if tokens[j].imagines() {
			return true
		}
	}
	return false
}

// endsWhole reports whether what stands before token i is a whole: no clause has
// only begun there, as in "I boiled it until a drop | set hard".
func endsWhole(tokens []token, i int) bool {
	if i < len(tokens) && i > 0 && tokens[i-1].in("well", "just", "right", "about", "almost", "nearly") {
		return false // "boiled hard for well | over ten minutes"
	}
	if i > 0 && tokens[i-1].tag == "CD" {
		return false // "browned them four | at a time"
	}
	return i == len(tokens) || tokens[i].pause() || tokens[i].divides() || tokens[i].tag == "CC" || tokens[i].joins() || tokens[i].leads() ||
		tokens[i].tag == "IN" && !tokens[i].in("of", "like", "than", "that")
}

// stepOf reports whether a piece tells of a job at which it makes sense to ask
// about the area.
func (d asking) stepOf(piece []token, a lexicon.Area, role Role) bool {
	if countWords(piece) < 3 || !done(piece) || piece[0].in("when", "after", "before", "if", "once", "until", "till") {
		return false
	}
	switch a {
	case lexicon.Improvement:
		return true
	case lexicon.Organisation:
		return waits(piece)
	}
	if slipped(piece) || given(piece, a) || restHas(piece, 0, len(piece), "too", "have", "has", "had", "gloves", "guard", "mitts", "before") {
		return false
	}
	return opensWithDoer(piece) && doer(piece, role) && cooks(piece)
}

// namesNext reports whether token j only names the noun behind it: "baking paper",
// "the frying pan".
func namesNext(tokens []token, j int) bool {
	return strings.HasSuffix(tokens[j].norm, "ing") && j+1 < len(tokens) && tokens[j+1].isNoun()
}

// listsWhatWas reports whether token j stands in a list of what something was made
// of, or goes on with how something was, where it tells no job: "the filling was
// mashed potato, | fried onion and leek", "chilli was served apart, | chopped in
// yoghurt".
func listsWhatWas(tokens []token, j int) bool {
	if j+1 >= len(tokens) || !tokens[j+1].isNoun() && (j == 0 || tokens[j-1].norm != ",") {
		return false
	}
	for i := j - 1; i > 0; i-- {
		switch t := &tokens[i]; {
		case plainBe(t.norm), t.tagIn("VBN", "VBD") && plainBe(tokens[i-1].norm):
			return true
		case t.isVerb() && !(i+1 < len(tokens) && tokens[i+1].isNoun()), t.human(), t.divides():
			return false
		}
	}
	return false
}

// namesFood reports whether token j, which may be a job, is what was eaten or used:
// "we had toast".
func namesFood(tokens []token, j int) bool {
	t := &tokens[j]
	if t.stem == "zest" || strings.HasSuffix(t.norm, "ed") {
		return false // "I added the zest" is a job too
	}
	return t.isNoun() || j > 0 && tokens[j-1].in("had", "have", "ate", "some", "with", "on", "for", "of", "the", "a")
}

// opensWithDoer reports whether a piece begins with who did a job, or with the job
// itself, and tells of no second person's.
func opensWithDoer(piece []token) bool {
	if t := &piece[0]; !t.in("i", "we", "he", "she", "you", "they") && t.kind != lexicon.Person && !t.tagIn("VBD", "VBN", "NNP") {
		return false
	}
	return !slices.ContainsFunc(piece[1:], func(t token) bool { return t.in("i", "we", "he", "she", "they", "floor") })
}

// given reports whether a piece says already what the question would ask: of
// germs, that water came in; or whether it is about food that is done, of which
// a slice is cut to look inside.
func given(piece []token, a lexicon.Area) bool {
	cuts, raw := false, false
	for i := range piece {
		t := &piece[i]
		if a == lexicon.Hygiene && t.in("washed", "wash", "rinsed", "rinse", "wiped", "scrubbed", "boiled", "fried", "cooked", "baked", "roasted", "grilled", "served", "boil", "fry", "cook", "bake", "roast", "grill", "simmer", "simmered", "poach", "poached", "steam", "steamed") {
			return true
		}
		cuts = cuts || t.in("cut", "sliced", "slice", "chopped", "diced")
		raw = raw || t.kind == lexicon.Ingredient || t.kind == lexicon.Protein
	}
	return a == lexicon.Safety && cuts && !raw
}

// waits reports whether a piece tells how long something took by itself, in
// which the cook had time: "it went in the oven for half an hour".
func waits(piece []token) bool {
	return slices.ContainsFunc(piece, func(t token) bool {
		return t.kind == lexicon.Time && !t.in("time", "times", "night", "overnight", "day", "days", "second", "seconds", "week", "weeks")
	}) &&
		slices.ContainsFunc(piece, func(t token) bool { return t.in("for", "about", "until", "after", "took") || t.tag == "CD" })
}

// faultAt reports whether token j is a word by which the writer describes what
// was amiss with the food: a fault in any food, or a quality that was too much.
func faultAt(s *sentence, j int) bool {
	t := &s.tokens[j]
	if !t.faulty() {
		return false
	}
	always := t.in("burnt", "burned", "doughy", "rubbery", "gluey", "lumpy", "soggy", "stodgy", "claggy", "gritty", "tasteless", "leathery", "underdone", "overdone",
		"undercooked", "overcooked", "split", "collapsed", "mushy", "sloppy", "greasy")
	wanted := t.in("spicy", "peppery", "hot", "salty", "sour", "bitter") // a bit of it may be as it should
	if !always && !(j > 0 && (s.tokens[j-1].norm == "too" || !wanted && s.tokens[j-1].in("bit", "abit", "slightly", "rather"))) {
		return false
	}
	return slices.ContainsFunc(s.sensory, func(w sensoryWord) bool {
		return w.from <= j && j < w.to && !w.supposed && !w.denied && !w.other
	})
}
