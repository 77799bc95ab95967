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
		}
		out = append(out, judgingSpan{vagueWord{span: span{tokens[from].start, tokens[to-1].end}, from: from, to: to}, h.Step == lexicon.Slang})
	}
	slices.SortStableFunc(out, func(a, b judgingSpan) int {
		return cmp.Or(cmp.Compare(a.from, b.from), cmp.Compare(b.to, a.to))
	})
	return out
}

// wholePhrase reports whether all words of a hit make up the judging phrase
// ("spot on"), not only the last one ("went well", "a disaster").
func wholePhrase(h hit) bool { return len(h.Parts) == 1 }

// saidOf reports whether slang at token i is said of the food or the work as a
// quality: after a linking verb whose subject is no person, or alone.
func (d judging) saidOf(tokens []token, i int) bool {
	if i+1 < len(tokens) && tokens[i+1].word && (tokens[i+1].isAdj() || tokens[i+1].describes()) {
		return false // "dead colourful": very
	}
	if i+1 < len(tokens) && (tokens[i+1].word && tokens[i+1].isNoun() || tokens[i+1].in("of", "the", "it")) && !tokens[i+1].pause() {
		return false
	}
	if tokens[i].norm == "mint" && i+2 < len(tokens) && tokens[i+1].in("and", ",") && tokens[i+2].describes() {
		return false // "mint and lemony"
	}
	v := predicateOf(tokens, i)
	if v < 0 {
		return len(tokens) <= 3
	}
	if tokens[v].norm == "its" {
		return true
	}
	if i-v > 4 || tokens[v].in("get", "got", "feel", "felt", "go", "went") {
		return false
	}
	s := subject(tokens, v)
	if s < 0 && v == clauseStart(tokens, i) {
		return true // "smelt peng": in a note it is the food that is left out
	}
	if s >= 0 && tokens[s].in("hygiene", "safety", "planning", "organisation", "technique", "timing", "work") {
		return true // "Hygiene was sound"
	}
	return s >= 0 && !tokens[s].human() && tokens[s].kind != lexicon.Tool && tokens[s].kind != lexicon.Place && tokens[s].kind != lexicon.Other
}

// aside reports uses that the neighbouring words rule out: "good" before a
// measure, "well" as a noun, "fine" of a person.
func (d judging) aside(tokens []token, from, to int) bool {
	t := &tokens[from]
	if to < len(tokens) {
		next := &tokens[to]
		if t.in("good", "nice", "decent") && next.in("few", "bit", "while", "amount", "deal") {
			return true
		}
		if t.in("pretty", "super") && (next.isAdj() || next.isAdv()) && !next.pause() {
			return true // "pretty good", "super wet": how much
		}
		if t.in("fine", "finer") && next.kind == lexicon.Tool {
			return true
		}
	}
	if t.in("ok", "okay", "right", "well") && from == 0 && (to >= len(tokens) || tokens[to].in(",", "so", "um", "well", "then", "right", "basically")) && to < len(tokens) {
		return true
	}
	if t.norm == "well" && to < len(tokens) && tokens[to].norm == "," && from > 0 && (tokens[from-1].pause() || tokens[from-1].in("and", "but", "so")) {
		return true // "and, well, I dropped it"
	}
	if t.in("ok", "okay", "right") && from == 0 && to < len(tokens) && (subjectPronoun(tokens[to].norm) || tokens[to].human() || tokens[to].in("the", "my", "here", "today", "first")) {
		return true // "ok mum says": a way to begin
	}
	if t.norm == "finely" {
		return true // tells how small something was cut
	}
	if t.in("awful", "terrible", "horrible", "rubbish", "dreadful", "sick", "amazing", "grim") && from > 0 {
		// "I felt awful": the writer's own state, not the food's.
		if v := predicateOf(tokens, from); v >= 0 && tokens[v].in("feel", "feels", "felt", "feeling") && subjectIsHuman(tokens, from) {
			return true
		}
	}
	if t.in("fine", "alright", "ok", "okay", "well", "better", "good", "poorly", "great", "bad") && from > 0 && to-from == 1 {
		if v := predicateOf(tokens, from); v >= 0 && tokens[v].in("is", "'s", "was", "'m", "am", "seem", "seems", "seemed", "feel", "feels", "felt", "feeling", "be", "are", "were") {
			if s := subject(tokens, v); s >= 0 && tokens[s].human() && s < v && from-v <= 3 && !(to < len(tokens) && tokens[to].in("at")) {
				return t.norm != "good" && t.norm != "great" || tokens[v].in("feel", "felt", "feeling", "feels")
			}
		}
	}
	return false
}
