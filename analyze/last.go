package analyze

import (
	"slices"
	"strings"

	"saywhy/lexicon"
)

// Plan is a change that an evaluation names for next time.
type Plan struct {
	Text     string // the very words, at most 8
	Sentence int    // of that evaluation, from 1
	topic    []string
}

// Plans returns the concrete changes that an evaluation names for next time,
// in text order. They can be given to the reading of a later text.
func (a *Analyzer) Plans(in Input, brief Brief) []Plan {
	r := a.reading(in, brief)
	defer a.end(r)
	return a.plansIn(r)
}

func (a *Analyzer) plansIn(r *reading) []Plan {
	var out []Plan
	for _, n := range r.row(lexicon.Improvement).Sentences {
		s := &r.sentences[n-1]
		if !(table{}).detail(s, lexicon.Improvement) || !looksAhead(s.tokens) {
			continue
		}
		if p, ok := (asking{words: a.words}).plan(r, s); ok {
			out = append(out, p)
		}
	}
	return out
}

// looksAhead reports whether a sentence speaks of a time to come: it says so, or
// tells what its writer would, will or should do, not what something was for
// ("so that it would not slip").
func looksAhead(tokens []token) bool {
	for i := range tokens {
		t := &tokens[i]
		switch {
		case t.norm == "next", t.norm == "future" && i > 0 && tokens[i-1].norm == "in", t.norm == "again" && i+1 == len(tokens):
			return true
		case t.in("would", "'d", "will", "'ll", "should", "could", "might") && i > 0 && tokens[i-1].in("i", "we", "you"):
			if clause := clauseStart(tokens, i); clause < 2 || !tokens[clause-1].in("that", "so") {
				return true
			}
		}
	}
	return false
}

// plan returns the change a sentence names, quoted from the deed on ("take the
// tin out sooner") where it can be.
func (d asking) plan(r *reading, s *sentence) (Plan, bool) {
	topic := topicWords(s.tokens)
	if len(topic) == 0 {
		return Plan{}, false
	}
	for _, g := range s.signs {
		if g.area != lexicon.Improvement || !g.told || g.from >= len(s.tokens) {
			continue
		}
		quote := ""
		if i := deed(s.tokens, g.from); i >= 0 {
			quote = pieceFrom(r.Text, s.tokens, i)
		}
		if quote == "" {
			quote = pieceAround(r.Text, s.tokens, g.from, g.to)
		}
		if lexicon.Words(quote) > 2 {
			return Plan{Text: quote, Sentence: s.n, topic: topic}, true
		}
	}
	return Plan{}, false
}

// deed returns the verb of the plan that a sign at token i belongs to: what
// "would", "will" or "should" helps; or -1.
func deed(tokens []token, i int) int {
	for j := max(0, i-4); j+1 < len(tokens) && j < i+reach; j++ {
		if !tokens[j].in("would", "'d", "will", "'ll", "could", "should", "can", "might") {
			continue
		}
		for j++; j < len(tokens) && (tokens[j].isAdv() || tokens[j].in("have", "probably", "also", "definitely")); j++ {
		}
		if j < len(tokens) && tokens[j].isVerb() {
			return j
		}
	}
	return -1
}

// topicWords lists the words by which another text is known to speak of the
// same thing: things and deeds, in their plain form.
func topicWords(tokens []token) []string {
	var out []string
	for i := range tokens {
		t := &tokens[i]
		if !t.word || !(t.isNoun() || t.isVerb() || t.kind != lexicon.NoKind) || announces(t) {
			continue
		}
		if w := plainForm(t); !slices.Contains(out, w) {
			out = append(out, w)
		}
	}
	return out
}

// announces reports whether the word belongs to any plan at all.
func announces(t *token) bool {
	return t.kind == lexicon.Time || t.tag == "MD" || t.in(
		"next", "time", "would", "will", "'d", "'ll", "be", "is", "was", "were", "am", "do", "did", "does", "have", "had", "has", "try", "want",
		"like", "think", "need", "make", "made", "get", "got", "go", "going", "improve", "change", "way", "thing", "bit", "lot", "use", "used", "let", "keep", "i", "it",
	)
}

// plainForm returns the stem of a word, of an irregular verb that of its
// present ("took": take).
func plainForm(t *token) string {
	if plain, is := irregular(t.norm); is != 0 {
		return lexicon.Stem(plain)
	}
	if t.card != nil && !strings.HasSuffix(t.norm, "'s") {
		return t.card.stem
	}
	return lexicon.Stem(strings.TrimSuffix(t.norm, "'s"))
}

// plans lists a question for the first plan of last time that this text does
// not speak of.
func (d asking) plans(r *reading) []wish {
	if len(r.brief.Last) == 0 {
		return nil
	}
	topics := r.topics()
	for _, p := range r.brief.Last {
		if spokenOf(p, topics) || r.speaksOfLastTime() {
			continue
		}
		return []wish{{
			area: lexicon.Improvement, step: nextStep(r, lexicon.Improvement), list: "planned", quote: p.Text, planned: true,
		}}
	}
	return nil
}

// speaksOfLastTime reports whether the text itself looks back at the time
// before.
func (r *reading) speaksOfLastTime() bool {
	for i := range r.sentences {
		tokens := r.sentences[i].tokens
		for j := 0; j+1 < len(tokens); j++ {
			if tokens[j].in("last", "previous") && tokens[j+1].in("time", "week", "session", "evaluation", "lesson", "month") {
				return true
			}
		}
	}
	return false
}
