package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// maxQuote is how many words of the writer's a question quotes at most.
const maxQuote = 8

// piece returns a short piece of the sentence around what shows the area, the
// very words of the text; with told, around something concrete.
func (d asking) piece(r *reading, s *sentence, a lexicon.Area, told bool) string {
	heading := 0
	if startsWithHeading(s.tokens) {
		for heading < len(s.tokens) && s.tokens[heading].norm != ":" {
			heading++
		}
	}
	for _, g := range s.signs {
		if g.area != a || told && !g.told || g.from < heading && heading+1 < len(s.tokens) {
			continue // what stands over the line is the worksheet's
		}
		if q := pieceAround(r.Text, s.tokens, g.from, g.to); q != "" {
			return q
		}
	}
	return ""
}

// pieceAround returns the clause around tokens[from:to] in the very words of
// the text, cut where a phrase ends when it is long; "" when nothing short
// enough makes sense. It holds no quotation mark and no line end.
func pieceAround(text string, tokens []token, from, to int) string {
	if from >= len(tokens) {
		return ""
	}
	to = min(max(to, from+1), len(tokens))
	for to < len(tokens) && to < from+maxQuote/2 && tokens[to].word && tokens[to].isNoun() && (tokens[to-1].isAdj() || tokens[to-1].isNoun()) {
		to++ // not "a flat" of "a flat top"
	}
	low, high := unbroken(text, tokens, from, to)
	start := max(low, clauseStart(tokens, from))
	end := min(high, max(clauseEnd(tokens, to-1), to))
	for start < from && (tokens[start].in("and", "but", "so", "then", "or", "also", "because", "plus") || !tokens[start].word) {
		start++
	}
	start, end = cutToSize(tokens, start, end, from, to)
	if end < high && tokens[end-1].isVerb() && (tokens[end].tagIn("DT", "PRP$") || tokens[end].isNoun()) {
		// "He let it stand", not "He let it stand while he laid"
		for j := end - 1; j > to && countWords(tokens[start:j]) > 2; j-- {
			if tokens[j].opensPhrase() {
				end = j
				break
			}
		}
	}
	if end < high && end+1 < len(tokens) && tokens[end].in("on", "off", "up", "down", "in", "out", "over", "away") && !tokens[end+1].isNoun() && !tokens[end+1].tagIn("DT", "PRP$", "PRP", "JJ", "CD") {
		end++ // "put my apron on", not "put my apron"
	}
	for end > to && hangsOn(&tokens[end-1]) {
		end--
	}
	if n := countWords(tokens[start:end]); n == 0 || n > maxQuote {
		return ""
	}
	return text[tokens[start].start:tokens[end-1].end]
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
	for end > to && countWords(tokens[start:end]) > maxQuote {
		cut := to
		for j := end - 1; j > to; j-- {
			if tokens[j].opensPhrase() && countWords(tokens[start:j]) > 1 {
				cut = j
				break
			}
		}
		end = cut
	}
	for start < from && countWords(tokens[start:end]) > maxQuote {
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
	case "DT", "TO", "CC", "PRP$", "MD":
		return true
	}
	return !t.word || t.in("and", "but", "so", "the", "a", "an", "to", "of", "with", "because", "my", "it's", "i", "for", "as", "than", "very", "really", "quite", "too", "from", "at", "into")
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
