package analyze

import "saywhy/lexicon"

// dangers lists one question for each kind of danger in the text, in text
// order: about the danger itself, in a way that sends a learner to the adult.
func (d asking) dangers(r *reading) []wish {
	var out []wish
	asked := map[string]bool{}
	for _, c := range r.cautions {
		if asked[c.Kind] || d.askedBefore(r, c.Kind) {
			continue
		}
		asked[c.Kind] = true
		s := &r.sentences[c.Sentence-1]
		area, pieces := areaOfDanger(c.Kind), d.dangerPieces(r, s, c.Kind)
		out = append(out, wish{
			area: area, step: nextStep(r, area), group: c.Kind, list: "danger", sentence: s.n, quote: pieces[0], shorter: pieces[1:],
		})
	}
	return out
}

// askedBefore reports whether an earlier draft told of the kind of danger: it
// was asked about then, and stands at the head of the report now.
func (d asking) askedBefore(r *reading, kind string) bool {
	if r.brief.After == nil {
		return false
	}
	for _, c := range r.brief.After.Cautions {
		if c.Kind == kind {
			return true
		}
	}
	return false
}

// areaOfDanger returns the area a danger belongs to: safety when it hurts by
// itself, hygiene when it does by what is eaten.
func areaOfDanger(kind string) lexicon.Area {
	switch kind {
	case "injury", "equipment", "allergen":
		return lexicon.Safety
	}
	return lexicon.Hygiene
}

// nextStep returns the first step of the area that the text has not reached,
// or the last one.
func nextStep(r *reading, a lexicon.Area) Step {
	switch row := r.row(a); {
	case !row.Said:
		return Said
	case !row.Detail:
		return Detail
	}
	return Reason
}

// longestDanger is how many words a question about a danger quotes at most: that
// the writer sees what is meant counts more than that the question is short.
const longestDanger = 18

// dangerPieces lists what could be quoted of the danger, the first choice
// first: a whole clause with its subject, then what stands around the danger up
// to where the writer draws breath. A text must not be told of a danger without
// its own words, so only where no such piece is short enough comes the wording
// without a quote. A tutor's own list may have none; for it something short
// follows, as a danger is asked about whatever the sentence is like.
func (d asking) dangerPieces(r *reading, s *sentence, kind string) []string {
	var whole, part, short []string
	take := func(from, to int, ok bool) {
		if !ok {
			return
		}
		piece, n := r.Text[s.tokens[from].start:s.tokens[to-1].end], countWords(s.tokens[from:to])
		switch {
		case n < 2:
		case startsInside(s.tokens, from, to) || n < fewestDanger:
			short = append(short, piece)
		case startsWhole(s.tokens, from):
			whole = append(whole, piece)
		default:
			part = append(part, piece)
		}
	}
	// What completes a scene is no danger by itself: it comes behind.
	for _, sign := range []func(hit) bool{hit.danger, d.completing(kind)} {
		for _, h := range s.dangers {
			if h.Label != kind || !sign(h) {
				continue
			}
			for _, most := range []int{maxQuote, longestDanger} {
				take(clauseAround(r.Text, s.tokens, h.from, h.to, most))
			}
			take(breathAround(r.Text, s.tokens, h.from, h.to, longestDanger))
			take(breathAround(r.Text, s.tokens, h.from, min(h.to+fewestDanger, len(s.tokens)), longestDanger))
			// Of a long sign the end tells most: "the oil … she went to the door".
			take(breathAround(r.Text, s.tokens, max(h.from, h.to-fewestDanger), h.to, longestDanger))
		}
		if len(whole)+len(part) > 0 {
			break
		}
	}
	out := append(append(append(whole, part...), short...), "")
	shortest := ""
	for i := range s.tokens {
		if t := &s.tokens[i]; t.word && (shortest == "" || len(t.text) > 3 && len(t.text) < len(shortest)) {
			shortest = t.text
		}
	}
	return append(out, shortest)
}

// completing returns what tells the last part of a scene of the kind.
func (d asking) completing(kind string) func(hit) bool {
	return func(h hit) bool {
		for _, scene := range d.words.lex.Reading.Scenes {
			if scene.Kind == kind && h.Step == scene.Parts[len(scene.Parts)-1].Cue {
				return true
			}
		}
		return false
	}
}

// fewestDanger is the fewest words by which a writer knows again what is meant.
const fewestDanger = 5

// startsInside reports whether a piece begins behind "while" or "that" and runs
// on into the clause that goes with it: "it was cooking I did the lettuce".
func startsInside(tokens []token, from, to int) bool {
	if from == 0 {
		return false
	}
	before := &tokens[from-1]
	return before.norm == "that" || tokens[from].norm == "that" || before.joins() && !before.in("but", "so", "then", "because") && startsAnew(tokens, from+1, to-1)
}

// startsWhole reports whether a piece that begins with token i has its subject,
// or begins where the sentence does.
func startsWhole(tokens []token, i int) bool {
	return i == 0 || opensClause(tokens, i)
}

// breathAround finds a piece of at most so many words around tokens[from:to],
// or around as much of them as fits, that begins where a subject or a verb does
// and ends where a phrase does. It is less strict than clauseAround: it may run
// over "and" and "while", as spoken sentences do.
func breathAround(text string, tokens []token, from, to, most int) (start, end int, ok bool) {
	for to > from+1 && countWords(tokens[from:to]) > most {
		to--
	}
	low, high := unbroken(text, tokens, from, to)
	start = -1
	for i := from; i >= low && countWords(tokens[i:to]) <= most; i-- {
		if tokens[i].leads() || tokens[i].joins() {
			continue
		}
		if i == low || opensSubject(tokens, i) {
			start = i
			break
		}
		if before := &tokens[i-1]; start < 0 && (before.pause() || before.leads() || before.norm == "then") {
			start = i
		}
	}
	if start < 0 {
		return 0, 0, false
	}
	for end = to; end <= high && countWords(tokens[start:end]) <= most; end++ {
		if hangsOn(&tokens[end-1]) || carriesOn(tokens, end, high) || end < high && end-start > 2 && tokens[end-2].norm == "and" {
			continue // "… with the lid on and Monday": what follows belongs to it
		}
		if end == high || endsPiece(tokens, end) {
			return withMoment(tokens, start, low), end, true
		}
	}
	return 0, 0, false
}

// opensSubject reports whether token i is the first of a subject: a clause opens
// there, or behind "and" a noun that something is told of ("and my cousin who").
func opensSubject(tokens []token, i int) bool {
	before := &tokens[i-1]
	if before.joins() && !before.in("but", "so", "then") || joinsSubject(tokens, i, 0) {
		return false // "while they were in I gave …"
	}
	if opensClause(tokens, i) {
		return !before.describesNext()
	}
	return before.leads() && before.norm != "or" && tokens[i].tagIn("DT", "PRP$", "CD", "NNP")
}

// describesNext reports whether the token belongs to the noun behind it, so
// that no piece begins between them.
func (t *token) describesNext() bool {
	return t.word && (t.isAdj() || t.isNoun() || t.isVerb() || t.tagIn("DT", "PRP$", "CD", "POS", "IN", "TO"))
}

// risky returns the sentences that tell of a danger of the report's cautions,
// also those that only tell on of it: they are for the adult, so nothing else
// is asked of them and nothing in them is praised.
func (d asking) risky(r *reading) map[int]bool {
	out, kinds := map[int]bool{}, map[string]bool{}
	for _, c := range r.cautions {
		out[c.Sentence], kinds[c.Kind] = true, true
	}
	if len(kinds) == 0 {
		return out
	}
	for i := range r.sentences {
		for _, h := range r.sentences[i].dangers {
			if h.danger() && kinds[h.Label] {
				out[r.sentences[i].n] = true
			}
		}
	}
	return out
}
