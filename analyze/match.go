package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// patterns is a set of patterns indexed by how they can begin.
//
// In a tight set a gap does not reach into another clause: what is told in one
// half of a sentence must not be read together with the other half.
type patterns struct {
	set    int // which set of a vocabulary it is
	tight  bool
	all    []lexicon.Labelled
	places [][]place // of each pattern
	words  map[string][]int
	stems  map[string][]int
	kinds  map[lexicon.Kind][]int
	any    []int // begin with a tag, or with a part that may be missing
}

// patternSets is how many sets of patterns a vocabulary has.
const patternSets = 5

// place is one part of a pattern, ready to be held against a token: its words
// and stems have numbers, and the card of a word knows whether it is among
// them. A number is 0 where the part asks for nothing of the sort.
type place struct {
	*lexicon.Part
	listed  int // its words and stems
	tagged  int // its stems that count with a tag only
	phrased int // the first words of its phrases
}

// placing gives the places of all sets their numbers and finds them by word.
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
	out := place{Part: part}
	number := func(any bool) int {
		if !any {
			return 0
		}
		p.last++
		return p.last
	}
	out.listed = number(len(part.Words)+len(part.Stems) > 0)
	out.tagged = number(len(part.Tagged) > 0)
	out.phrased = number(len(part.Phrases) > 0)
	for _, w := range part.Words {
		p.words[w] = append(p.words[w], out.listed)
	}
	for _, s := range part.Stems {
		p.stems[s] = append(p.stems[s], out.listed)
	}
	for _, s := range part.Tagged {
		p.stems[s.Stem] = append(p.stems[s.Stem], out.tagged)
	}
	for _, ph := range part.Phrases {
		p.phrases[ph[0]] = append(p.phrases[ph[0]], out.phrased)
	}
	return out
}

// fitting returns the numbers of the places that a word fits, by itself, by
// its stem, or with what stands before its hyphen as the first of a phrase.
func (p *placing) fitting(word, stem, first string) numbers {
	out := make(numbers, p.last/64+1)
	for _, list := range [...][]int{p.words[word], p.stems[stem], p.phrases[first]} {
		for _, n := range list {
			out[n/64] |= 1 << (n % 64)
		}
	}
	return out
}

// numbers is a set of numbers, one bit each.
type numbers []uint64

func (s numbers) has(n int) bool { return s[n/64]>>(n%64)&1 != 0 }

func newPatterns(set int, list []lexicon.Labelled, placing *placing) *patterns {
	p := &patterns{
		set: set, all: list, places: make([][]place, len(list)),
		words: map[string][]int{}, stems: map[string][]int{}, kinds: map[lexicon.Kind][]int{},
	}
	for i, l := range list {
		for n := range l.Parts {
			p.places[i] = append(p.places[i], placing.place(&l.Parts[n]))
		}
		first := l.Parts[0]
		if first.Not {
			first = l.Parts[1]
		}
		if first.Optional || len(first.Tags) > 0 || len(first.Tag) > 0 {
			p.any = append(p.any, i)
			continue
		}
		for _, w := range first.Words {
			p.words[w] = append(p.words[w], i)
		}
		for _, ph := range first.Phrases {
			p.words[ph[0]] = append(p.words[ph[0]], i)
		}
		for _, s := range first.Stems {
			p.stems[s] = append(p.stems[s], i)
		}
		for _, s := range first.Tagged {
			p.stems[s.Stem] = append(p.stems[s.Stem], i)
		}
		for _, k := range first.Kinds {
			p.kinds[k] = append(p.kinds[k], i)
		}
	}
	return p
}

// hit is a pattern found in a sentence: tokens[from:to].
type hit struct {
	*lexicon.Labelled
	from, to int
}

// find returns every pattern that begins at some token, in text order; for
// each pattern and place only its shortest match.
func (p *patterns) find(tokens []token) []hit {
	var out []hit
	for i := range tokens {
		t := &tokens[i]
		begins := &t.card.begins[p.set]
		if begins.word == nil && begins.stem == nil && t.kind == lexicon.NoKind && p.any == nil {
			continue // so do most
		}
		lists := [...][]int{begins.word, begins.stem, nil, p.any}
		if t.kind != lexicon.NoKind {
			lists[2] = p.kinds[t.kind]
		}
		for _, list := range lists {
			for _, n := range list {
				if to, ok := p.matchAt(tokens, i, p.places[n]); ok {
					out = append(out, hit{Labelled: &p.all[n], from: i, to: to})
				}
			}
		}
	}
	return out
}

// matchAt matches places from token i on and returns the token behind the
// match. A gap does not reach over the end of a clause marked by ; or :, and
// prefers the nearest word.
func (p *patterns) matchAt(tokens []token, i int, places []place) (int, bool) {
	if len(places) > 0 && places[0].Not {
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
	if p.Not {
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
		if j == i+p.Gap || tokens[j].closes || ps.tight && tokens[j].turns && !p.Wide {
			break
		}
	}
	if p.Optional {
		return ps.match(tokens, i, places[1:])
	}
	return 0, false
}

// fits returns how many tokens from i on a place takes up, 0 when it does not
// fit there.
func (p *place) fits(tokens []token, i int) int {
	t := &tokens[i]
	if p.phrased != 0 && t.card.fits.has(p.phrased) {
		for _, ph := range p.Phrases {
			if to, ok := phraseAt(tokens, i, ph); ok {
				return to - i
			}
		}
	}
	if p.fitsOne(t) {
		return 1
	}
	return 0
}

func (p *place) fitsOne(t *token) bool {
	if t.card.fits.has(p.listed) {
		return true
	}
	if p.tagged != 0 && t.card.fits.has(p.tagged) {
		for _, s := range p.Tagged {
			if t.stem == s.Stem && strings.HasPrefix(t.tag, s.Tag) {
				return true
			}
		}
	}
	if t.kind != lexicon.NoKind {
		for _, k := range p.Kinds {
			if t.kind == k || k == lexicon.Ingredient && t.kind == lexicon.DishNoun {
				return true
			}
		}
	}
	for _, tag := range p.Tag {
		if t.tag == tag {
			return true
		}
	}
	for _, tag := range p.Tags {
		if strings.HasPrefix(t.tag, tag) {
			return true
		}
	}
	return false
}

// turns reports whether another clause begins at token j.
func turns(tokens []token, j int) bool {
	t := &tokens[j]
	return t.in("because", "but", "so", "although", "though", "which", "who", "if") || t.in(",", "and") && opensClause(tokens, j+1)
}

func closesClause(norm string) bool { return norm == ";" || norm == "." || norm == "!" || norm == "?" }
