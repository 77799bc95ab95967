package analyze

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"saywhy/lexicon"
)

// TestFindsWhatTryingEverythingFinds holds the index, the cards and the place
// that a pattern cannot do without against a matcher that has none of them: it
// tries every pattern at every token, by its words alone. Source: the pattern
// language as lexicon.Pattern describes it.
func TestFindsWhatTryingEverythingFinds(t *testing.T) {
	type match struct {
		from, to int
		pattern  string
	}
	a, _ := shared(t)
	texts, briefs, _ := evaluations(t)
	found := 0
	for n, text := range texts {
		r := a.reading(text, briefs[n])
		for i := range r.sentences {
			s := &r.sentences[i]
			for _, p := range []*patterns{a.words.vague, a.words.unsensed, a.words.plain, a.words.cues, a.words.dangers} {
				got, want := map[match]bool{}, map[match]bool{}
				for _, h := range p.find(s) {
					if !strings.Contains(s.tokens[h.from].norm, "-") {
						got[match{h.from, h.to, h.Text}] = true
					}
				}
				for from := range s.tokens {
					if strings.Contains(s.tokens[from].norm, "-") {
						continue // the index does not open a phrase with half a word
					}
					for k := range p.all {
						parts := p.all[k].Parts
						if parts[0].Not {
							if from > 0 && plainFits(s.tokens, from-1, &parts[0]) > 0 {
								continue
							}
							parts = parts[1:]
						}
						if to, ok := plainMatch(s.tokens, from, parts, p.tight); ok {
							want[match{from, to, p.all[k].Text}] = true
						}
					}
				}
				assert.Equal(t, want, got, "set %d, sentence %d of text %d", p.set, s.n, n)
				found += len(got)
			}
		}
	}
	assert.Greater(t, found, 1000, "patterns found in all")
}

func plainMatch(tokens []token, i int, parts []lexicon.Part, tight bool) (int, bool) {
	if len(parts) == 0 {
		return i, true
	}
	p := &parts[0]
	if p.Not {
		if i < len(tokens) && plainFits(tokens, i, p) > 0 {
			return 0, false
		}
		return plainMatch(tokens, i, parts[1:], tight)
	}
	for j := i; j < len(tokens); j++ {
		if n := plainFits(tokens, j, p); n > 0 {
			if to, ok := plainMatch(tokens, j+n, parts[1:], tight); ok {
				return to, true
			}
		}
		if j == i+p.Gap || closesClause(tokens[j].norm) || tight && !p.Wide && turns(tokens, j) {
			break
		}
	}
	if p.Optional {
		return plainMatch(tokens, i, parts[1:], tight)
	}
	return 0, false
}

func plainFits(tokens []token, i int, p *lexicon.Part) int {
	t := &tokens[i]
	for _, ph := range p.Phrases {
		if to, ok := phraseAt(tokens, i, ph); ok {
			return to - i
		}
	}
	fits := false
	for _, w := range p.Words {
		fits = fits || t.norm == w
	}
	for _, s := range p.Stems {
		fits = fits || t.word && t.stem == s
	}
	for _, s := range p.Tagged {
		fits = fits || t.word && t.stem == s.Stem && strings.HasPrefix(t.tag, s.Tag)
	}
	for _, k := range p.Kinds {
		fits = fits || t.kind == k || k == lexicon.Ingredient && t.kind == lexicon.DishNoun
	}
	for _, tag := range p.Tag {
		fits = fits || t.tag == tag
	}
	for _, tag := range p.Tags {
		fits = fits || strings.HasPrefix(t.tag, tag)
	}
	if fits {
		return 1
	}
	return 0
}
