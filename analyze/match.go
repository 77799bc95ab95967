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
	set   int // which set of a vocabulary it is
	tight bool
	all   []lexicon.Labelled
	words map[string][]int
	stems map[string][]int
	kinds map[lexicon.Kind][]int
	any   []int // begin with a tag, or with a part that may be missing
}

// patternSets is how many sets of patterns a vocabulary has.
const patternSets = 5

func newPatterns(set int, list []lexicon.Labelled) *patterns {
	p := &patterns{set: set, all: list, words: map[string][]int{}, stems: map[string][]int{}, kinds: map[lexicon.Kind][]int{}}
	for i, l := range list {
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
		if t.stem == "" {
			lists[1] = nil // a mark
		}
		if t.kind != lexicon.NoKind {
			lists[2] = p.kinds[t.kind]
		}
		for _, list := range lists {
			for _, n := range list {
				l := &p.all[n]
				if to, ok := p.matchAt(tokens, i, l.Parts); ok {
					out = append(out, hit{Labelled: l, from: i, to: to})
				}
			}
		}
	}
	return out
}

// matchAt matches parts from token i on and returns the token behind the
// match. A gap does not reach over the end of a clause marked by ; or :, and
// prefers the nearest word.
func (p *patterns) matchAt(tokens []token, i int, parts []lexicon.Part) (int, bool) {
	if len(parts) > 0 && parts[0].Not {
		if i > 0 && fits(tokens, i-1, &parts[0]) > 0 {
			return 0, false
		}
		parts = parts[1:]
	}
	return p.match(tokens, i, parts)
}

func (ps *patterns) match(tokens []token, i int, parts []lexicon.Part) (int, bool) {
	if len(parts) == 0 {
		return i, true
	}
	p := &parts[0]
	if p.Not {
		if i < len(tokens) && fits(tokens, i, p) > 0 {
			return 0, false
		}
		return ps.match(tokens, i, parts[1:])
	}
	for j := i; j < len(tokens); j++ {
		if n := fits(tokens, j, p); n > 0 {
			if to, ok := ps.match(tokens, j+n, parts[1:]); ok {
				return to, true
			}
		}
		if j == i+p.Gap || tokens[j].closes || ps.tight && tokens[j].turns && !p.Wide {
			break
		}
	}
	if p.Optional {
		return ps.match(tokens, i, parts[1:])
	}
	return 0, false
}

// turns reports whether another clause begins at token j.
func turns(tokens []token, j int) bool {
	t := &tokens[j]
	return t.in("because", "but", "so", "although", "though", "which", "who", "if") || t.in(",", "and") && opensClause(tokens, j+1)
}

func closesClause(norm string) bool { return norm == ";" || norm == "." || norm == "!" || norm == "?" }

// fits returns how many tokens from i on a part takes up, 0 when it does not
// fit there.
func fits(tokens []token, i int, p *lexicon.Part) int {
	for _, ph := range p.Phrases {
		if to, ok := phraseAt(tokens, i, ph); ok {
			return to - i
		}
	}
	if fitsOne(&tokens[i], p) {
		return 1
	}
	return 0
}

func fitsOne(t *token, p *lexicon.Part) bool {
	for _, w := range p.Words {
		if t.norm == w {
			return true
		}
	}
	if t.stem != "" {
		for _, s := range p.Stems {
			if t.stem == s {
				return true
			}
		}
	}
	for _, s := range p.Tagged {
		if t.stem == s.Stem && strings.HasPrefix(t.tag, s.Tag) {
			return true
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
