package analyze

import (
	"slices"
	"strings"

	"saywhy/lexicon"
)

// dangers lists one question for each kind of danger in the text, in the order in
// which the kinds come up: about the danger itself, in a way that sends a learner
// to the adult. Of several sentences that tell of one kind, the one is asked about
// in which most tells of it. One event is asked about once, whatever kinds of
// danger it belongs to. Not asked about is what may be none, as only one row of the
// lexicon hears it, and what the text tells the end of: that an adult stepped in, that
// it was put right, or what is to keep it from coming again. The report shows it all the
// same.
func (d asking) dangers(r *reading) []wish {
	var out []wish
	asked := map[string]bool{}
	for _, c := range r.cautions {
		if asked[c.Kind] || d.askedBefore(r, c.Kind) {
			continue
		}
		asked[c.Kind] = true
		c = d.plainest(r, c)
		if d.onlySeenTo(r, c) {
			c.Kind = "equipment" // what did it is told, of the hurt only that it was cooled
		}
		area, pieces := areaOfDanger(c.Kind), d.dangerPieces(r, c.Sentence-1, c.Kind)
		q := wish{
			area: area, step: nextStep(r, area), group: c.Kind, list: "danger", state: seenTo(r, c.Sentence-1, c.Kind),
			sentence: c.Sentence, quote: pieces[0], shorter: pieces[1:],
		}
		if q.state == dealt || q.state == givenAdvice || !d.plain(r, c, q.state) {
			continue
		}
		if q.state == treated && r.Role == Learner && r.namesGrownUp() {
			continue // who was there has seen it
		}
		if q.state == planForNext && areaOfDanger(c.Kind) == lexicon.Safety && r.namesGrownUp() {
			continue // what was eaten may still do harm, a step that is over does not
		}
		if k := slices.IndexFunc(out, func(o wish) bool { return sameEvent(&o, &q) }); k < 0 {
			out = append(out, q)
		} else if q.group == "injury" && q.state != treated && out[k].sentence == q.sentence || out[k].state == treated && q.sentence == out[k].sentence {
			out[k] = q // the harm tells it best; of a hurt that was seen to, what did it
		}
	}
	return out
}

// namesGrownUp reports whether the text names a grown-up who was there or ate.
func (r *reading) namesGrownUp() bool {
	for i := range r.sentences {
		if slices.ContainsFunc(r.sentences[i].tokens, func(t token) bool { return grownUp(&t) }) {
			return true
		}
	}
	return false
}

// onlySeenTo reports whether a sentence tells of a hurt only how it was seen to, and
// tells what did it: "I grabbed the tray with a damp tea towel, I ran my hand under the
// tap and it was fine".
func (d asking) onlySeenTo(r *reading, c Caution) bool {
	did, other := false, false
	s := &r.sentences[c.Sentence-1]
	for _, h := range s.dangers {
		did = did || h.Label == "equipment" && h.danger() && cautioning(d).fact(s, h)
		other = other || h.Label == "injury" && h.danger() && !treats(s.tokens[h.from:h.to])
	}
	return c.Kind == "injury" && did && !other
}

// plain reports whether a danger is told plainly: more than one row of the lexicon
// hears it, a hurt was seen to, something caught fire, or a good part of a short
// sentence tells it ("I used the same board for the chicken and the salad.").
func (d asking) plain(r *reading, c Caution, state string) bool {
	if state == treated || c.Kind == "equipment" && flared(r.sentences[c.Sentence-1].tokens) || cautioning(d).heard(r, c.Sentence-1, c.Kind) >= plainlyHeard {
		return true
	}
	s := &r.sentences[c.Sentence-1]
	words := countWords(s.tokens)
	for _, h := range s.dangers {
		if h.Label == c.Kind && h.danger() && words <= shortDanger && 5*countWords(s.tokens[h.from:h.to]) >= 2*words {
			return true
		}
	}
	return false
}

// shortDanger is the most words of a sentence in which two in five, as one sign, make a
// danger plain.
const shortDanger = 12

// plainlyHeard is how many rows of the lexicon must hear a danger for it to be told
// plainly. Of the cautions on 138 texts that no rule had seen 16 were heard twice or
// more, all rightly; of 15 heard once 5 were right.
const plainlyHeard = 2

// plainest returns of the cautions of one kind the one whose sentence tells most
// of the danger: the thighs cut up are half of it, what they were laid on when
// they were done is the other.
func (d asking) plainest(r *reading, first Caution) Caution {
	best, most := first, d.worthOf(r, first)
	for _, c := range r.cautions {
		if c.Kind != first.Kind || c.Sentence == first.Sentence {
			continue
		}
		if worth := d.worthOf(r, c); worth > most {
			best, most = c, worth
		}
	}
	return best
}

// worthOf returns the worth of the best that could be quoted of a caution.
func (d asking) worthOf(r *reading, c Caution) int {
	i := c.Sentence - 1
	pieces := weighedPieces(r.Text, r.sentences[i].tokens, d.dangerWeights(r, i, c.Kind))
	if len(pieces) == 0 {
		return 0
	}
	return pieces[0].worth
}

// sameEvent reports whether two dangers are one event: a harm and what did it,
// side by side, or two kinds told in the same words.
func sameEvent(a, b *wish) bool {
	if a.sentence == b.sentence && a.quote != "" && b.quote != "" && shareWords(a.quote, b.quote) {
		return true
	}
	harm := a.group == "injury" && b.group == "equipment" || a.group == "equipment" && b.group == "injury"
	return harm && b.sentence-a.sentence <= 1 && a.sentence-b.sentence <= 1
}

// shareWords reports whether one of two quotes begins within the other.
func shareWords(a, b string) bool {
	first := func(s string) string {
		words := strings.Fields(s)
		return strings.Join(words[:min(len(words), 3)], " ")
	}
	return strings.Contains(a, first(b)) || strings.Contains(b, first(a))
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
		if state := seenTo(r, c.Sentence-1, c.Kind); state == dealt || state == treated {
			out[c.Sentence+1] = true // what was done about it
		}
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
