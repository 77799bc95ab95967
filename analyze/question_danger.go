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

// longestDanger is how many words a question about a danger quotes at most: what
// happened counts more than that the question is short.
const longestDanger = 14

// dangerPieces lists what could be quoted of the danger, the first choice
// first: a whole clause, or nothing, for which there are wordings too. A
// tutor's own list may have none; for it something short follows, as a danger
// is asked about whatever the sentence is like.
func (d asking) dangerPieces(r *reading, s *sentence, kind string) []string {
	var out []string
	for _, most := range []int{maxQuote, longestDanger} {
		for _, h := range s.dangers {
			if h.Label != kind || !h.danger() {
				continue
			}
			if from, to, ok := clauseAround(r.Text, s.tokens, h.from, h.to, most); ok && countWords(s.tokens[from:to]) > 1 {
				out = append(out, r.Text[s.tokens[from].start:s.tokens[to-1].end])
			}
		}
	}
	out = append(out, "")
	shortest := ""
	for i := range s.tokens {
		if t := &s.tokens[i]; t.word && (shortest == "" || len(t.text) > 3 && len(t.text) < len(shortest)) {
			shortest = t.text
		}
	}
	return append(out, shortest)
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
