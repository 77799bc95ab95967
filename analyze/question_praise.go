package analyze

import (
	"slices"

	"saywhy/lexicon"
)

// maxPraise is how many lines name what the writer did.
const maxPraise = 2

// A line quotes at most so many of the writer's words: a short sentence, or a
// clause of ordinary length; of a reason, what it explains as well.
const (
	longestDetail = 12
	longestReason = 16
)

// praise returns lines that are true by the table, each for another area: one
// for a reason and one for a description of the food where the text has both,
// as these two are what the writing is for; else what there is of other
// details. No line names a sentence that tells of a danger.
func (d asking) praise(r *reading, w *wording) []string {
	out, risky := []string{}, d.risky(r)
	praised := map[lexicon.Area]bool{}
	one := func(step Step, rows []AreaRow) {
		for _, row := range rows {
			if len(out) == maxPraise || praised[row.Area] || !row.Reached(step) {
				continue
			}
			if line, ok := d.praiseOf(r, w, row, step, risky); ok {
				out = append(out, line)
				praised[row.Area] = true
				return
			}
		}
	}
	one(Reason, r.rows)
	one(Detail, r.richest())
	one(Reason, r.rows)
	one(Detail, r.rows)
	one(Detail, r.rows)
	return out
}

// richest returns the rows of the four senses, the one first of which a single
// sentence tells most.
func (r *reading) richest() []AreaRow {
	words := map[lexicon.Area]int{}
	for i := range r.sentences {
		here := map[lexicon.Area]int{}
		for _, w := range r.sentences[i].sensory {
			a := w.sense.Area()
			here[a]++
			words[a] = max(words[a], here[a])
		}
	}
	var out []AreaRow
	for _, row := range r.rows {
		if lexicon.Sense(row.Area).Known() {
			out = append(out, row)
		}
	}
	slices.SortStableFunc(out, func(x, y AreaRow) int { return words[y.Area] - words[x.Area] })
	return out
}

// praiseOf returns the line for one area and step, about the first sentence
// that shows it by itself.
func (d asking) praiseOf(r *reading, w *wording, row AreaRow, step Step, risky map[int]bool) (string, bool) {
	for _, n := range row.Sentences {
		s := &r.sentences[n-1]
		if risky[n] || isPrompt(s) || s.tokens[len(s.tokens)-1].in("?") {
			continue
		}
		quote := ""
		switch step {
		case Reason:
			quote = reasonQuote(r.Text, s, row.Area)
		default:
			quote = detailQuote(r.Text, s, row.Area)
		}
		if quote == "" || w.quoted[quote] {
			continue
		}
		q := wish{area: row.Area, step: step, group: string(row.Area), list: "praise " + string(step), quote: quote}
		list := d.words.lex.Reading.Wordings["praise"][string(step)][string(row.Area)]
		if line, _, ok := w.fill(w.inTurn(list, &q), &q); ok {
			w.quoted[quote] = true
			return line, true
		}
	}
	return "", false
}

// reasonQuote quotes the reason that a sentence gives for what it says of an
// area, together with that, or from its connective on; "" when it gives none
// that is whole and short. Beside a change for next time a reason is why for the
// change.
func reasonQuote(text string, s *sentence, a lexicon.Area) string {
	if s.has(lexicon.Improvement) && a != lexicon.Improvement {
		return ""
	}
	for _, w := range s.why {
		if w.from >= len(s.tokens) || !contains(explains(s, w), a) || !s.tokens[w.from].in("because", "cos", "coz", "cause", "bc", "so", "as", "since", "to") {
			continue // other reasons cannot be told from their clause alone
		}
		if quote := statement(text, s.tokens, w.from, w.to, longestReason); quote != "" {
			return quote
		}
		_, high := unbroken(text, s.tokens, w.from, w.from+1)
		n := countWords(s.tokens[w.from:high])
		if s.tokens[w.from].in("because", "cos", "coz", "cause", "bc", "as", "since") && n >= 4 && n <= longestReason && clauseEnd(s.tokens, min(w.from+1, high-1)) >= high-1 {
			return quoted(text, s.tokens, w.from, high)
		}
	}
	return ""
}

// detailQuote quotes the statement, or else the clause, in which a sentence
// says something concrete of an area.
func detailQuote(text string, s *sentence, a lexicon.Area) string {
	shows := func(from, to int) string {
		if quote := statement(text, s.tokens, from, to, longestDetail); quote != "" {
			return quote
		}
		if start, end, ok := clauseAround(text, s.tokens, from, to, longestDetail); ok && countWords(s.tokens[start:end]) >= 3 {
			return quoted(text, s.tokens, start, end)
		}
		return ""
	}
	if sense := lexicon.Sense(a); sense.Known() {
		for _, w := range s.sensory {
			if w.sense == sense && !w.denied && !w.supposed && !w.other {
				if quote := shows(w.from, w.to); quote != "" {
					return quote
				}
			}
		}
		return ""
	}
	for _, g := range s.signs {
		if g.area == a && g.told && g.from >= headingEnd(s.tokens) {
			if quote := shows(g.from, g.to); quote != "" {
				return quote
			}
		}
	}
	return ""
}

// statement quotes all that stands between the marks around tokens[from:to],
// without the heading before it and the word that joins it to what stands
// before; "" when that is too long to quote or too short to say something.
func statement(text string, tokens []token, from, to, most int) string {
	low, high := unbroken(text, tokens, from, min(max(to, from+1), len(tokens)))
	if head := headingEnd(tokens); head > low && head <= from {
		low = head
	}
	for low < from && tokens[low].leads() {
		low++
	}
	if n := countWords(tokens[low:high]); n < 3 || n > most || low == from && tokens[low].leads() {
		return ""
	}
	return quoted(text, tokens, low, high)
}

// quoted returns the tokens without a mark at their end.
func quoted(text string, tokens []token, from, to int) string {
	for to > from+1 && !tokens[to-1].word {
		to--
	}
	return text[tokens[from].start:tokens[to-1].end]
}

// longestPlan is how many words of a plan are quoted at most: it begins in the
// middle of what was written, so it need not be whole.
const longestPlan = 8

// pieceFrom quotes a plan from its deed on: whole, or cut where a phrase ends. A
// plan of one word says too little.
func pieceFrom(text string, tokens []token, from int) string {
	_, end := unbroken(text, tokens, from, from+1)
	end = min(end, clauseEnd(tokens, min(from+1, len(tokens)-1)))
	if end <= from+1 {
		return ""
	}
	_, end = cutToSize(tokens, from, end, from, min(from+2, end))
	for end > from+1 && hangsOn(&tokens[end-1]) {
		end--
	}
	if n := countWords(tokens[from:end]); n < 3 || n > longestPlan {
		return ""
	}
	return text[tokens[from].start:tokens[end-1].end]
}
