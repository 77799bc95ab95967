package analyze

import "saywhy/lexicon"

// maxPraise is how many lines name what the writer did.
const maxPraise = 2

// praise returns lines that are true by the table: a reason before a detail,
// each for another area. No line names a sentence that tells of a danger.
func (d asking) praise(r *reading, w *wording) []string {
	out, risky := []string{}, d.risky(r)
	for _, step := range []Step{Reason, Detail} {
		for _, row := range r.rows {
			if len(out) == maxPraise {
				return out
			}
			if step == Reason && !row.Reason || step == Detail && (!row.Detail || row.Reason) {
				continue
			}
			if line, ok := d.praiseOf(r, w, row, step, risky); ok {
				out = append(out, line)
			}
		}
	}
	return out
}

// praiseOf returns the line for one area and step, about the first sentence
// that shows it by itself.
func (d asking) praiseOf(r *reading, w *wording, row AreaRow, step Step, risky map[int]bool) (string, bool) {
	for _, n := range row.Sentences {
		s := &r.sentences[n-1]
		if risky[n] {
			continue
		}
		quote := ""
		switch step {
		case Reason:
			quote = d.reasonPiece(r, s, row.Area)
		default:
			if (table{}).detail(s, row.Area) {
				quote = d.piece(r, s, row.Area, true)
			}
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

// reasonPiece quotes the reason a sentence gives for what it says of an area,
// or "" when it gives none for just that. Beside a change for next time a
// reason is why for the change.
func (d asking) reasonPiece(r *reading, s *sentence, a lexicon.Area) string {
	if s.has(lexicon.Improvement) && a != lexicon.Improvement {
		return ""
	}
	for _, w := range s.why {
		if w.from < len(s.tokens) && contains(explains(s, w), a) {
			if q := pieceFrom(r.Text, s.tokens, w.from); q != "" {
				return q
			}
		}
	}
	return ""
}

// longestReason is how many words of a reason or a plan are quoted at most: it
// begins in the middle of what was written, so it need not be whole.
const longestReason = 8

// pieceFrom quotes a reason from its connective on: whole, or cut where a
// phrase ends. A reason of one word says too little.
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
	if n := countWords(tokens[from:end]); n < 3 || n > longestReason {
		return ""
	}
	return text[tokens[from].start:tokens[end-1].end]
}
