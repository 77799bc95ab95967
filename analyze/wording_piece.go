package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// maxQuote is how many words of the writer's a question quotes at most: a whole
// clause of ordinary length.
const maxQuote = 10

// piece returns a short piece of the sentence around what shows the area, the
// very words of the text; with told, around something concrete.
func (d asking) piece(r *reading, s *sentence, a lexicon.Area, told bool) string {
	quote := ""
	d.pieces(r, s, a, told, func(from, to int) bool {
		quote = r.Text[s.tokens[from].start:s.tokens[to-1].end]
		return true
	})
	return quote
}

// pieces calls take with each piece of the sentence, as a half-open range of
// its tokens, that stands around what shows the area, until take says that it
// is the one.
func (d asking) pieces(r *reading, s *sentence, a lexicon.Area, told bool, take func(from, to int) bool) {
	if isPrompt(s) || s.tokens[len(s.tokens)-1].in("?") {
		return // the worksheet's words, or a question that the writer asks
	}
	heading := headingEnd(s.tokens)
	for _, g := range s.signs {
		if g.area != a || told && !g.told || g.to <= heading && heading < len(s.tokens) {
			continue // what stands over the line is the worksheet's
		}
		if from, to, ok := clauseAround(r.Text, s.tokens, max(g.from, heading), max(g.to, heading), maxQuote); ok && take(from, to) {
			return
		}
	}
}

// headingEnd returns the first token behind the heading that the sentence
// begins with ("Safety: …", "who helped - my uncle"), or 0.
func headingEnd(tokens []token) int {
	if !startsWithHeading(tokens) {
		for i := 1; i < len(tokens)-1 && i <= 4; i++ {
			if tokens[i].in("-", "--", "=", ":") {
				return i + 1
			}
		}
		return 0
	}
	for i := range tokens {
		if tokens[i].norm == ":" {
			return i + 1
		}
	}
	return 0
}

// pieceAround returns the clause around tokens[from:to] in the very words of
// the text; "" when nothing short enough makes sense by itself.
func pieceAround(text string, tokens []token, from, to int) string {
	start, end, ok := clauseAround(text, tokens, from, to, maxQuote)
	if !ok {
		return ""
	}
	return text[tokens[start].start:tokens[end-1].end]
}

// clauseAround finds a piece of at most so many words around tokens[from:to]
// that makes sense by itself: the clause; where that is too long, the clause
// without a phrase of place, time or means at its end, or from its subject or
// second verb on. It never begins in the middle of a phrase, ends before the
// word that a phrase is about, or goes over a quotation mark or line end.
func clauseAround(text string, tokens []token, from, to, most int) (start, end int, ok bool) {
	if from >= len(tokens) {
		return 0, 0, false
	}
	to = min(max(to, from+1), len(tokens))
	low, high := unbroken(text, tokens, from, to)
	first := max(low, clauseStart(tokens, from))
	last := min(high, max(clauseEnd(tokens, to-1), to))
	for start = first; start <= from; start++ {
		if tokens[start].leads() || !beginsPiece(tokens, start, low) || startsAnew(tokens, start+1, from) {
			continue
		}
		for end = last; end >= to; end-- {
			n := countWords(tokens[start:end])
			if n > most || end < last && !endsPiece(tokens, end) {
				continue
			}
			e := end
			for e > to && hangsOn(&tokens[e-1]) {
				e--
			}
			if e < end && e < last && !endsPiece(tokens, e) || hangsOn(&tokens[e-1]) || carriesOn(tokens, e, high) {
				continue
			}
			if countWords(tokens[start:e]) > 0 {
				return withMoment(tokens, start, low), e, true
			}
		}
	}
	return 0, 0, false
}

// withMoment returns where a piece that begins with token i begins, together
// with the word that makes it a moment or a condition: "I came back it was
// smoking" is no English without its "when", and "anyone slipped" says the
// opposite without its "before".
func withMoment(tokens []token, i, low int) int {
	if i > low && tokens[i-1].in("when", "before", "after", "until", "till", "if", "unless", "once", "wen") {
		return i - 1
	}
	return i
}

// joinsSubject reports whether token i is the second half of a subject: "me and
// my cousin".
func joinsSubject(tokens []token, i, low int) bool {
	if i-2 < low || !tokens[i-1].in("and", "n", "+", "&") {
		return false
	}
	first := &tokens[i-2]
	return (first.in("me", "i", "him", "her", "he", "she", "you", "us") || first.kind == lexicon.Person) && (i-2 == low || !tokens[i-3].isVerb() && tokens[i-3].tag != "IN" && tokens[i-3].tag != "TO")
}

// leads reports whether the token only joins a clause to what stands before.
func (t *token) leads() bool {
	return !t.word || t.in("and", "but", "so", "then", "or", "also", "because", "plus", "though", "tho", "although", "n", "+", "&")
}

// beginsPiece reports whether a piece can begin with token i: where a clause
// does, at its second verb, or at its subject behind a phrase of time.
func beginsPiece(tokens []token, i, low int) bool {
	if i == low {
		return i == 0 || !tokens[i-1].word || tokens[i-1].divides()
	}
	if joinsSubject(tokens, i, low) {
		return false
	}
	t, before := &tokens[i], &tokens[i-1]
	switch {
	case before.pause():
		return true
	case before.leads():
		return opensClause(tokens, i) || t.isVerb() || before.norm == "because"
	case before.joins():
		return opensClause(tokens, i) && !before.in("which", "who", "where")
	case t.in("i", "we", "he", "she", "they"):
		return !before.isVerb() && before.tag != "IN" && before.tag != "TO"
	}
	return false
}

// startsAnew reports whether another clause begins between two tokens with
// nothing to join it: "while they were in I gave the board a wipe".
func startsAnew(tokens []token, i, to int) bool {
	for ; i <= to && i+1 < len(tokens); i++ {
		if !tokens[i].in("i", "we", "he", "she", "they") || !tokens[i+1].tagIn("VBD", "VBP", "VBZ", "VB") {
			continue
		}
		if before := &tokens[i-1]; !before.isVerb() && !before.leads() && !before.joins() && before.norm != "," {
			return true
		}
	}
	return false
}

// endsPiece reports whether a piece can end before token i: what stands before
// is a whole, and what follows is a phrase or clause that can be left out.
func endsPiece(tokens []token, i int) bool {
	t, before := &tokens[i], &tokens[i-1]
	switch {
	case t.pause():
		return !(t.norm == "," && listComma(tokens, i))
	case t.in("of", "like", "than", "as", "about", "that"):
		return false
	case t.tag == "CC":
		return opensClause(tokens, i+1) || i+1 < len(tokens) && tokens[i+1].isVerb() && !tokens[i+1].tagIn("VBN", "VBG")
	case t.joins():
		return t.norm != "so" || opensClause(tokens, i+1)
	case t.tag == "IN" && namesPart(tokens, i+1):
		return false // "chewy in the middle and hard | at the edge"
	case t.tag == "IN":
		return !before.isVerb() && !before.isAdj() && before.tag != "PRP" && !(i+1 < len(tokens) && tokens[i+1].pause())
	}
	return false
}

// namesPart reports whether a part of the food is named at token i: "the edge".
func namesPart(tokens []token, i int) bool {
	if i < len(tokens) && tokens[i].tagIn("DT", "PRP$") {
		i++
	}
	return i < len(tokens) && tokens[i].in("edge", "edges", "middle", "centre", "center", "top", "bottom", "base", "outside", "inside", "side", "sides", "end", "ends", "corners", "rim", "tip", "tips", "underneath")
}

// carriesOn reports whether token i goes on with the noun that stands before
// it: "a wet tea" of "a wet tea towel".
func carriesOn(tokens []token, i, high int) bool {
	return i < high && tokens[i].word && (tokens[i].isNoun() || tokens[i].tag == "POS") && (tokens[i-1].isNoun() || tokens[i-1].isAdj() || tokens[i-1].tag == "CD")
}

// unbroken returns the run of tokens around tokens[from:to] that no quotation
// mark, bracket, sentence end or line end divides.
func unbroken(text string, tokens []token, from, to int) (low, high int) {
	breaks := func(i int) bool { // between tokens i-1 and i
		return strings.ContainsAny(text[tokens[i-1].end:tokens[i].start], "\r\n\u2028\u2029\v\f\u0085")
	}
	low, high = from, to
	for low > 0 && low > from-reach && !breaks(low) && !tokens[low-1].divides() {
		low--
	}
	for high < len(tokens) && high < to+reach && !breaks(high) && !tokens[high].divides() {
		high++
	}
	return low, high
}

// divides reports whether the token is a mark that no quote goes over.
func (t *token) divides() bool {
	return !t.word && strings.ContainsAny(t.text, "\"“”„«»()[]{}?!;.…")
}

// cutToSize shortens a clause to the size of a quote: first behind, then
// before what it is about, each time where a phrase begins.
func cutToSize(tokens []token, start, end, from, to int) (int, int) {
	for end > to && countWords(tokens[start:end]) > longestPlan {
		cut := to
		for j := end - 1; j > to; j-- {
			if tokens[j].opensPhrase() && countWords(tokens[start:j]) > 1 {
				cut = j
				break
			}
		}
		end = cut
	}
	for start < from && countWords(tokens[start:end]) > longestPlan {
		cut := from
		for j := start + 1; j < from; j++ {
			if tokens[j].opensPhrase() && (tokens[j].tag != "CC" || opensClause(tokens, j+1) || tokens[j+1].isVerb()) {
				cut = j
				break
			}
		}
		start = cut
		for start < from && (tokens[start].in("and", "but", "or", "so", "then", "which", "that", "in", "on", "at", "of", "for", "to", "into") || !tokens[start].word) {
			start++
		}
	}
	return start, end
}

// opensPhrase reports whether a clause can be cut before the token.
func (t *token) opensPhrase() bool {
	return !t.word || t.tag == "IN" || t.tag == "TO" || t.tag == "CC" || t.tag == "WDT" || t.tag == "WRB" || t.joins()
}

// hangsOn reports whether a quote cannot end with the token.
func hangsOn(t *token) bool {
	switch t.tag {
	case "DT", "TO", "CC", "PRP$", "MD", "WDT", "WP":
		return !t.in("this", "that", "each", "all", "both")
	case "IN":
		return !t.in("on", "off", "up", "down", "in", "out", "over", "away", "back", "through", "apart", "together", "inside", "outside", "underneath", "around", "round")
	}
	return !t.word || t.in("and", "but", "so", "the", "a", "an", "to", "of", "with", "because", "my", "it's", "i", "for", "as", "than", "very", "really", "quite", "too", "from", "at", "into", "wi", "wiv", "w", "n", "o", "wit", "till", "til", "no")
}

func countWords(tokens []token) int {
	n := 0
	for i := range tokens {
		if tokens[i].word {
			n++
		}
	}
	return n
}

// judgedNoun returns the food that a judging word is said of, as the text
// writes it, or "": a misspelling would look like the question's own.
func judgedNoun(tokens []token, v *vagueWord) string {
	n := phraseHead(tokens, v.to-1)
	if n < 0 {
		if p := predicateOf(tokens, v.from); p >= 0 {
			n = subject(tokens, p)
		}
	}
	if n < 0 {
		return ""
	}
	t := &tokens[n]
	if !t.isNoun() || !t.kind.Food() || t.norm != strings.ToLower(t.text) || strings.Contains(t.norm, "'") ||
		t.in("slice", "piece", "bite", "mouthful", "plate", "portion", "batch", "meal", "one", "result", "bit", "part", "food") {
		return ""
	}
	return t.norm
}
