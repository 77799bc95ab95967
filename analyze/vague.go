package analyze

import (
	"cmp"
	"slices"

	"saywhy/lexicon"
)

// vagueWord is a word that judges without telling.
type vagueWord struct {
	span
	from, to int // tokens
	bare     bool
	blames   bool // the word by itself is no praise, or only a faint one
}

// judging finds the words that judge.
type judging struct{ words *vocabulary }

func (d judging) read(r *reading) {
	for i := range r.sentences {
		s := &r.sentences[i]
		s.vague = d.find(s)
	}
}

func (d judging) find(s *sentence) []vagueWord {
	tokens := s.tokens
	hits := d.words.vague.find(s)
	if len(hits) == 0 {
		return nil // as in most sentences
	}
	plain := make([]bool, len(tokens))
	for _, h := range d.words.plain.find(s) {
		for i := h.from; i < h.to; i++ {
			plain[i] = true
		}
	}
	taken := make([]bool, len(tokens))
	var out []vagueWord
	for _, v := range judgingSpans(tokens, hits) {
		if plain[v.from] && !wentWell(tokens, v.from) || taken[v.from] || v.slang && !d.saidOf(tokens, v.from) || d.aside(tokens, v.from, v.to) {
			continue
		}
		for i := v.from; i < v.to; i++ {
			taken[i] = true
		}
		out = append(out, v.vagueWord)
	}
	return out
}

// wentWell reports whether "well" belongs to a verb of how things went, though a
// step is named beside it: "my kneading went well" judges, "kneaded well" tells
// how.
func wentWell(tokens []token, i int) bool {
	return tokens[i].norm == "well" && i > 0 && (tokens[i-1].in("went", "go", "goes", "gone") || i > 1 && tokens[i-2].in("went", "go", "goes", "gone") && tokens[i-1].isAdv())
}

// judgingSpan is where a word or phrase may judge.
type judgingSpan struct {
	vagueWord
	slang bool
}

// judgingSpans returns where the judging words of hits stand, in text order,
// the longest first.
func judgingSpans(tokens []token, hits []hit) []judgingSpan {
	var out []judgingSpan
	for _, h := range hits {
		from, to := h.from, h.to
		if to-from > 1 && !wholePhrase(h) {
			from = to - 1
			if tokens[from].norm == "it" {
				from-- // "smashed it"
			}
		}
		out = append(out, judgingSpan{vagueWord{span: span{tokens[from].start, tokens[to-1].end}, from: from, to: to, blames: h.Label == lexicon.Blame}, h.Step == lexicon.Slang})
	}
	slices.SortStableFunc(out, func(a, b judgingSpan) int {
		return cmp.Or(cmp.Compare(a.from, b.from), cmp.Compare(b.to, a.to))
	})
	return out
}

// wholePhrase reports whether all words of a hit make up the judging phrase
// ("spot on"), not only the last one ("went well", "a disaster").
func wholePhrase(h hit) bool { return len(h.Parts) == 1 }
