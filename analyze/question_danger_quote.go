package analyze

import (
	"cmp"
	"slices"
	"strings"
)

// longestDanger is how many words a question about a danger quotes at most: that
// the writer sees what is meant counts more than that the question is short.
const longestDanger = 18

// fewestDanger is the fewest words by which a writer knows again what is meant.
const fewestDanger = 5

// mostDangerPieces is how many pieces are kept to choose from: a long one may
// make a question too hard to read.
const mostDangerPieces = 12

// dangerPieces lists what could be quoted of the danger, the first choice first:
// the piece that holds most of what makes it one, and least besides. A text must
// not be told of a danger without its own words, so only where no such piece is
// short enough comes the wording without a quote. A tutor's own list may have
// none; for it something short follows, as a danger is asked about whatever the
// sentence is like.
func (d asking) dangerPieces(r *reading, i int, kind string) []string {
	s := &r.sentences[i]
	weights := d.dangerWeights(r, i, kind)
	var out []string
	for _, p := range weighedPieces(r.Text, s.tokens, weights) {
		out = append(out, r.Text[s.tokens[p.from].start:s.tokens[p.to-1].end])
	}
	out = append(out, d.clausesOf(r.Text, s, weights)...)
	shortest := ""
	for i := range s.tokens {
		if t := &s.tokens[i]; t.word && (shortest == "" || len(t.text) > 3 && len(t.text) < len(shortest)) {
			shortest = t.text
		}
	}
	return append(out, "", shortest)
}

// clausesOf returns the clauses around what makes the danger, for sentences in
// which no piece begins and ends as it should.
func (d asking) clausesOf(text string, s *sentence, weights []int) []string {
	var whole, part []string
	for i, w := range weights {
		if w == 0 || i > 0 && weights[i-1] > 0 {
			continue
		}
		from, to, ok := clauseAround(text, s.tokens, i, i+1, maxQuote)
		if n := to - from; !ok || countWords(s.tokens[from:to]) < 2 {
			continue
		} else if piece := text[s.tokens[from].start:s.tokens[to-1].end]; n < fewestDanger {
			part = append(part, piece)
		} else {
			whole = append(whole, piece)
		}
		if len(whole)+len(part) == mostDangerPieces {
			break
		}
	}
	return append(whole, part...)
}

// What a word counts for in a quote: as part of a sign of the danger, of a scene
// that is one, or of what may belong to such a scene.
const (
	signWeight  = 6
	sceneWeight = 5
	cueWeight   = 2
)

// dangerWeights says for each word of the sentence how much it tells of the
// danger. Of a long sign the ends tell most: "the oil … she went to the door".
func (d asking) dangerWeights(r *reading, i int, kind string) []int {
	s := &r.sentences[i]
	weights := make([]int, len(s.tokens))
	mark := func(h hit, weight int) {
		for j := h.from; j < h.to; j++ {
			if j >= h.from+signEnds && j < h.to-signEnds {
				j = h.to - signEnds
			}
			weights[j] = max(weights[j], weight)
		}
	}
	found := false
	for _, h := range s.dangers {
		if h.Label == kind && h.danger() && !treats(s.tokens[h.from:h.to]) {
			mark(h, signWeight)
			found = true
		}
	}
	for _, h := range s.dangers {
		if h.Label == kind && h.danger() && !found {
			mark(h, signWeight) // only "ran it under the cold tap" tells of the burn
		}
	}
	found = slices.ContainsFunc(s.dangers, func(h hit) bool { return h.Label == kind && h.danger() })
	steps, weight := d.scenesOf(r, i, kind), sceneWeight
	if found {
		weight = cueWeight // the sign tells it
	}
	for _, h := range s.dangers {
		if h.Label == kind && steps[h.Step] && factual(s.tokens, h) {
			mark(h, weight)
			found = true
		}
	}
	if !found {
		for _, h := range s.dangers {
			if h.Label == kind {
				mark(h, cueWeight)
			}
		}
	}
	return weights
}

// signEnds is how many words at each end of a long sign count.
const signEnds = 5

// scenesOf returns the cues of the scenes of the kind that the sentence completes.
func (d asking) scenesOf(r *reading, i int, kind string) map[string]bool {
	out := map[string]bool{}
	caution := cautioning(d)
	for _, scene := range d.words.lex.Reading.Scenes {
		if scene.Kind == kind && !caution.prevented(r, i, scene) && completes(r, i, scene) {
			for _, part := range scene.Parts {
				out[part.Cue] = true
			}
		}
	}
	return out
}

// weighed is a piece of a sentence, a half-open range of tokens, with its worth.
type weighed struct{ from, to, worth int }

// weighedPieces returns the pieces that hold something of the danger, the
// worthiest first.
func weighedPieces(text string, tokens []token, weights []int) []weighed {
	var out []weighed
	for from := range tokens {
		if !startsQuote(tokens, from) {
			continue
		}
		bonus := 0
		if opensClause(tokens, from) || from == 0 && !tokens[0].isAdv() {
			bonus = wholeBonus
		}
		words, told := 0, 0
		for to := from + 1; to <= min(len(tokens), from+2*longestDanger); to++ {
			t := &tokens[to-1]
			if t.divides() || t.norm == ":" || to-1 > from && brokenLine(text, tokens, to-1) {
				break
			}
			told += weights[to-1]
			if t.word {
				words++
				told--
			}
			if words > longestDanger {
				break
			}
			if words < 2 || told+words == 0 || !endsQuote(text, tokens, from, to) {
				continue
			}
			worth := told + bonus
			if words < fewestDanger {
				worth -= wholeBonus
			}
			out = append(out, weighed{withMoment(tokens, from, 0), to, worth})
		}
		out = worthiest(out)
	}
	return out
}

// wholeBonus is what a piece is worth more when it has its subject.
const wholeBonus = 6

// worthiest puts pieces in order and keeps the first.
func worthiest(list []weighed) []weighed {
	slices.SortStableFunc(list, func(a, b weighed) int { return cmp.Compare(b.worth, a.worth) })
	return list[:min(len(list), mostDangerPieces)]
}

// brokenLine reports whether a line ends between token i and the one before.
func brokenLine(text string, tokens []token, i int) bool {
	return strings.ContainsAny(text[tokens[i-1].end:tokens[i].start], "\r\n\u2028\u2029\v\f\u0085")
}

// startsQuote reports whether a quote can begin with token i: where a clause
// does, behind a pause or a joining word; never behind its subject, or with a
// word that only fills ("right so", "mind,").
func startsQuote(tokens []token, i int) bool {
	t := &tokens[i]
	if t.leads() || t.fills() && i+1 < len(tokens) || i > 0 && (t.joins() || t.norm == "that") {
		return false
	}
	if i == 0 {
		return true
	}
	before := &tokens[i-1]
	if t.in("i", "we", "he", "she", "they", "you") && before.in("one", "ones", "bit", "piece", "batch", "lot") && i+2 < len(tokens) && tokens[i+1].isVerb() && tokens[i+2].in("was", "were", "is", "had", "went", "came", "looked") {
		return false // "the one | I cut was still pink"
	}
	switch {
	case joinsSubject(tokens, i, 0), before.in("i", "we", "he", "she", "they", "you", "it", "that"):
		return false
	case before.fills(), before.divides():
		return true
	case before.norm == "," && listComma(tokens, i-1):
		return false
	case before.pause():
		return true
	case before.leads():
		return opensClause(tokens, i) || opensSubject(tokens, i) || t.isVerb() && !t.tagIn("VBG", "VBN") || before.in("then", "so")
	case before.joins():
		return opensClause(tokens, i) && !before.in("which", "who", "where", "while", "as", "because", "cos", "since")
	}
	switch {
	case t.in("it", "there") && i+1 < len(tokens) && tokens[i+1].isVerb():
		return !before.isVerb() && !before.tagIn("IN", "TO")
	case t.in("the", "my", "some") && (before.isAdj() || before.isNoun()) && (opensClause(tokens, i) || i+1 < len(tokens) && tokens[i+1].isAdj()):
		return true // nothing joins two clauses of a spoken sentence
	}
	return opensSubject(tokens, i) || t.in("i", "we", "he", "she", "they") && !before.isVerb() && before.tag != "IN" && before.tag != "TO"
}

// fills reports whether the token only fills, as speech does.
func (t *token) fills() bool {
	return t.in("right", "ok", "okay", "basically", "mind", "lol", "well", "anyway", "um", "er", "erm", "honestly", "yeah", "tbh", "haha", "unfortunately", "luckily", "so")
}

// endsQuote reports whether a piece from one token up to another is a whole.
func endsQuote(text string, tokens []token, from, to int) bool {
	last := &tokens[to-1]
	if last.leads() && !(to-2 >= from && tokens[to-2].norm == "since") || last.fills() || last.in("we", "he", "she", "they") || last.in("straight", "right", "just", "all", "then") && !endsHere(tokens, to) {
		return false
	}
	if last.negator() && to < len(tokens) && !tokens[to].pause() {
		return false // "when it was cold not | when it was hot"
	}
	if last.norm == "up" && to-2 >= from && tokens[to-2].in("ended", "end", "wound", "ends", "ending") {
		return false // "and ended up | on the phone"
	}
	if hangsOn(last) && !(last.tag == "IN" && endsHere(tokens, to)) || last.in("me", "i") && to-2 >= from && !tokens[to-2].isVerb() && !tokens[to-2].tagIn("IN", "TO") {
		return false
	}
	if to-from > 2 && tokens[to-2].norm == "and" && !last.isVerb() && !last.isAdj() && (last.isAdv() || !tokens[to-3].isNoun()) {
		return false // "the pan on and Monday"
	}
	if hangingClause(tokens, from, to) {
		return false
	}
	if to == len(tokens) || tokens[to].divides() || brokenLine(text, tokens, to) {
		return true
	}
	if tokens[to].tag == "CC" && to+1 < len(tokens) && tokens[to+1].joins() {
		return true // "… | and when I came back"
	}
	if next := &tokens[to]; next.in("through", "in", "out", "on", "off", "up") && (to+1 == len(tokens) || !tokens[to+1].isNoun() && !tokens[to+1].tagIn("DT", "PRP$", "JJ", "CD")) {
		return false // "to let the heat | in"
	}
	return !carriesOn(tokens, to, len(tokens)) && (endsPiece(tokens, to) || tokens[to].fills() || opensSubject(tokens, to))
}

// endsHere reports whether a pause or the end stands before token i.
func endsHere(tokens []token, i int) bool { return i == len(tokens) || tokens[i].pause() }

// hangingClause reports whether the piece ends within what "when" or "if" opens,
// and what it is about comes behind: "… and when I come back".
func hangingClause(tokens []token, from, to int) bool {
	if from > 0 && tokens[from-1].in("when", "if", "once", "wen") && countWords(tokens[from:to]) < fewestDanger+1 {
		return true
	}
	for i := to - 1; i > from; i-- {
		if tokens[i].word && tokens[i].in("when", "while", "if", "once", "as") {
			return (tokens[i-1].leads() || tokens[i-1].in("then")) && to < len(tokens) && !tokens[to].divides()
		}
		if tokens[i].pause() {
			return false
		}
	}
	return false
}
