package analyze

import (
	"slices"
	"strings"

	"saywhy/lexicon"
)

// patterns is a set of patterns indexed by how they can begin.
//
// In a tight set a gap does not reach into another clause: what is told in one
// half of a sentence must not be read together with the other half.
type patterns struct {
	set   int // which set of a vocabulary it is
	tight bool
	all   []pattern
	words map[string][]opening
	stems map[string][]opening
	kinds map[lexicon.Kind][]opening
	any   []opening // begin with a tag, or with a part that may be missing
}

// patternSets is how many sets of patterns a vocabulary has.
const patternSets = 5

// pattern is a pattern with its places.
type pattern struct {
	lexicon.Labelled
	places []place
}

// opening is a pattern that can begin at a token: where it stands in the set,
// and the number of a place behind the first without which it cannot match, or 0.
// Such places have numbers of their own, so that what a sentence has of them
// takes little room.
type opening struct{ pattern, needs int32 }

// place is one part of a pattern, ready to be held against a token: its words
// and stems have a number, and the card of a word knows whether it is among
// them.
type place struct {
	part                *lexicon.Part
	gap                 int
	wide, not, optional bool

	listed int // its words and stems; 0 if it asks for none
	worded int // these, its stems that count with a tag only, and the first words of its phrases
}

// placing gives places of all sets their numbers and finds them by word.
type placing struct {
	last    int // number given
	words   map[string][]int
	stems   map[string][]int
	phrases map[string][]int
}

func newPlacing() *placing {
	return &placing{words: map[string][]int{}, stems: map[string][]int{}, phrases: map[string][]int{}}
}

func (p *placing) place(part *lexicon.Part) place {
	out := place{part: part, gap: part.Gap, wide: part.Wide, not: part.Not, optional: part.Optional}
	if len(part.Words)+len(part.Stems) > 0 {
		p.last++
		out.listed, out.worded = p.last, p.last
		p.add(part, out.listed)
	}
	if len(part.Tagged)+len(part.Phrases) > 0 {
		p.last++
		out.worded = p.last
		p.add(part, out.worded)
		for _, s := range part.Tagged {
			p.stems[s.Stem] = append(p.stems[s.Stem], out.worded)
		}
		for _, ph := range part.Phrases {
			p.phrases[ph[0]] = append(p.phrases[ph[0]], out.worded)
		}
	}
	return out
}

// add notes the number of a place with its words and stems.
func (p *placing) add(part *lexicon.Part, number int) {
	for _, w := range part.Words {
		p.words[w] = append(p.words[w], number)
	}
	for _, s := range part.Stems {
		p.stems[s] = append(p.stems[s], number)
	}
}

// fitting returns the numbers of the places that a word fits, by itself, by
// its stem, or with what stands before its hyphen as the first of a phrase.
func (p *placing) fitting(word, stem, first string) numbers {
	out := make(numbers, p.size())
	for _, list := range [...][]int{p.words[word], p.stems[stem], p.phrases[first]} {
		for _, n := range list {
			out[n/64] |= 1 << (n % 64)
		}
	}
	return out
}

// size is how many words of memory a set of all numbers takes.
func (p *placing) size() int { return p.last/64 + 1 }

// numbers is a set of numbers, one bit each.
type numbers []uint64

func (s numbers) has(n int) bool { return s[n/64]>>(n%64)&1 != 0 }

// add adds the numbers of another set of the same size.
func (s numbers) add(other numbers) {
	for i, bits := range other[:len(s)] {
		s[i] |= bits
	}
}

func newPatterns(set int, list []lexicon.Labelled, placing, needs *placing) *patterns {
	p := &patterns{
		set: set, all: make([]pattern, len(list)),
		words: map[string][]opening{}, stems: map[string][]opening{}, kinds: map[lexicon.Kind][]opening{},
	}
	for i, l := range list {
		places := make([]place, len(l.Parts))
		for n := range l.Parts {
			places[n] = placing.place(&l.Parts[n])
		}
		p.all[i] = pattern{l, places}
		first := 0
		if l.Parts[0].Not {
			first = 1
		}
		o := opening{pattern: int32(i)}
		if part := needed(l.Parts[first+1:]); part != nil {
			o.needs = int32(needs.place(part).worded)
		}
		part := &l.Parts[first]
		if part.Optional || len(part.Tags) > 0 || len(part.Tag) > 0 {
			p.any = append(p.any, o)
			continue
		}
		for _, w := range part.Words {
			p.words[w] = append(p.words[w], o)
		}
		for _, ph := range part.Phrases {
			p.words[ph[0]] = append(p.words[ph[0]], o)
		}
		for _, s := range part.Stems {
			p.stems[s] = append(p.stems[s], o)
		}
		for _, s := range part.Tagged {
			p.stems[s.Stem] = append(p.stems[s.Stem], o)
		}
		for _, k := range part.Kinds {
			p.kinds[k] = append(p.kinds[k], o)
			if k == lexicon.Ingredient && !slices.Contains(part.Kinds, lexicon.DishNoun) {
				p.kinds[lexicon.DishNoun] = append(p.kinds[lexicon.DishNoun], o) // see fitsGrammar
			}
		}
	}
	return p
}

// needed returns the part, among those that no match can do without, that the
// fewest words fit, or nil where there is none.
func needed(parts []lexicon.Part) *lexicon.Part {
	var rarest *lexicon.Part
	fewest := 0
	for i := range parts {
		p := &parts[i]
		if p.Not || p.Optional || len(p.Kinds)+len(p.Tag)+len(p.Tags) > 0 {
			continue
		}
		words := len(p.Words) + len(p.Stems) + len(p.Tagged) + len(p.Phrases)
		if rarest == nil || words <= fewest { // the later one is more often the rarer
			rarest, fewest = p, words
		}
	}
	return rarest
}

// hit is a pattern found in a sentence: tokens[from:to].
type hit struct {
	*lexicon.Labelled
	from, to int
}

// find returns every pattern that begins at some token, in text order; for
// each pattern and place only its shortest match.
func (p *patterns) find(s *sentence) []hit {
	var out []hit
	anywhere := p.any
	if !s.allowsAny(anywhere) {
		anywhere = nil
	}
	for i := range s.tokens {
		t := &s.tokens[i]
		begins := t.card.begins[p.set]
		if begins == nil && t.kind == lexicon.NoKind && anywhere == nil {
			continue // so do most
		}
		lists := [...][]opening{begins, nil, anywhere}
		if t.kind != lexicon.NoKind {
			lists[1] = p.kinds[t.kind]
		}
		for _, list := range lists {
			for _, o := range list {
				if !s.allows(o) {
					continue
				}
				l := &p.all[o.pattern]
				if to, ok := p.matchAt(s.tokens, i, l.places); ok {
					out = append(out, hit{Labelled: &l.Labelled, from: i, to: to})
				}
			}
		}
	}
	return out
}

// allows reports whether some word of the sentence fits the place that the
// pattern cannot do without.
func (s *sentence) allows(o opening) bool { return o.needs == 0 || s.meets.has(int(o.needs)) }

// allowsAny reports whether one of the patterns can match at all.
func (s *sentence) allowsAny(list []opening) bool { return slices.ContainsFunc(list, s.allows) }

// matchAt matches places from token i on and returns the token behind the
// match. A gap does not reach over the end of a clause marked by ; or :, and
// prefers the nearest word.
func (p *patterns) matchAt(tokens []token, i int, places []place) (int, bool) {
	if len(places) > 0 && places[0].not {
		if i > 0 && places[0].fits(tokens, i-1) > 0 {
			return 0, false
		}
		places = places[1:]
	}
	return p.match(tokens, i, places)
}

func (ps *patterns) match(tokens []token, i int, places []place) (int, bool) {
	if len(places) == 0 {
		return i, true
	}
	p := &places[0]
	if p.not {
		if i < len(tokens) && p.fits(tokens, i) > 0 {
			return 0, false
		}
		return ps.match(tokens, i, places[1:])
	}
	for j := i; j < len(tokens); j++ {
		if n := p.fits(tokens, j); n > 0 {
			if to, ok := ps.match(tokens, j+n, places[1:]); ok {
				return to, true
			}
		}
		if j == i+p.gap || tokens[j].closes || ps.tight && tokens[j].turns && !p.wide {
			break
		}
	}
	if p.optional {
		return ps.match(tokens, i, places[1:])
	}
	return 0, false
}

// fits returns how many tokens from i on a place takes up, 0 when it does not
// fit there.
func (p *place) fits(tokens []token, i int) int {
	t := &tokens[i]
	worded := t.card.fits.has(p.worded)
	if worded && p.worded != p.listed {
		for _, ph := range p.part.Phrases {
			if to, ok := phraseAt(tokens, i, ph); ok {
				return to - i
			}
		}
	}
	if worded && p.fitsWord(t) || p.fitsGrammar(t) {
		return 1
	}
	return 0
}

// fitsWord reports whether a token fits by its word or stem.
func (p *place) fitsWord(t *token) bool {
	if t.card.fits.has(p.listed) {
		return true
	}
	for _, s := range p.part.Tagged {
		if t.stem == s.Stem && strings.HasPrefix(t.tag, s.Tag) {
			return true
		}
	}
	return false
}

// fitsGrammar reports whether a token fits by its kind of noun or its tag.
func (p *place) fitsGrammar(t *token) bool {
	if t.kind != lexicon.NoKind {
		for _, k := range p.part.Kinds {
			if t.kind == k || k == lexicon.Ingredient && t.kind == lexicon.DishNoun {
				return true
			}
		}
	}
	for _, tag := range p.part.Tag {
		if t.tag == tag {
			return true
		}
	}
	for _, tag := range p.part.Tags {
		if strings.HasPrefix(t.tag, tag) {
			return true
		}
	}
	return false
}

// turns reports whether another clause begins at token j.
func turns(tokens []token, j int) bool {
	t := &tokens[j]
	switch t.norm {
	case "because", "but", "so", "although", "though", "which", "who", "if":
		return true
	case ",", "and":
		return opensClause(tokens, j+1)
	}
	return false
}

func closesClause(norm string) bool { return norm == ";" || norm == "." || norm == "!" || norm == "?" }
