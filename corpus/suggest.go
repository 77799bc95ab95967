package corpus

import (
	"cmp"
	"slices"
	"strings"

	"saywhy/analyze"
	"saywhy/lexicon"
)

// Reported is the report of one text and the dish type it is about.
type Reported struct {
	Name   string // of the file, for examples
	Dish   string // the short name of a dish type
	Report *analyze.Report
}

// Suggestion is a describing word that writers use of a dish type and that its
// list lacks.
type Suggestion struct {
	Word     string        // as most writers spell it, lower case
	Spelt    []string      // its other spellings and forms
	Sense    lexicon.Sense // the one in which it stands most often
	Count    int           // how often it stands in texts of the dish type
	Texts    int           // in how many of them
	Others   int           // how often in texts of other dish types
	Keyness  float64       // log-likelihood against the other dish types; 0 without any, or when it is no more usual here
	Of       []string      // nouns of food beside it, the most frequent first
	Examples []Example     // at most maxExamples, from different texts if there are
}

// Example is a sentence with the word in it.
type Example struct {
	File string
	Text string
}

const (
	maxExamples = 2
	maxNouns    = 3
	maxSpan     = 3 // words of a suggestion; a longer phrase is a likeness or a sentence
)

// Suggest returns the describing words of a dish type that the list lacks, in
// the order in which they set it apart: those more usual here than in texts of
// other dish types, by log-likelihood, before the rest, by count.
func Suggest(lex *lexicon.Lexicon, all []Reported, dish string) []Suggestion {
	g := gathering{lex: lex, listed: map[string]bool{}, found: map[string]*gathered{}}
	for _, w := range lex.Words() {
		for _, form := range append([]string{w.Word}, w.Forms...) {
			g.listed[form] = true
		}
	}
	here, elsewhere := 0, 0 // words of text
	for _, e := range all {
		if e.Dish == dish {
			here += e.Report.Words
		} else {
			elsewhere += e.Report.Words
		}
		g.read(e, e.Dish == dish)
	}
	g.fold()
	var out []Suggestion
	for _, w := range g.found {
		if w.count == 0 {
			continue
		}
		s := w.suggestion()
		if MoreUsual(s.Count, s.Others, here, elsewhere) {
			s.Keyness = LogLikelihood(s.Count, s.Others, here, elsewhere)
		}
		out = append(out, s)
	}
	slices.SortFunc(out, func(a, b Suggestion) int {
		return cmp.Or(cmp.Compare(b.Keyness, a.Keyness), cmp.Compare(b.Count, a.Count), cmp.Compare(b.Texts, a.Texts), strings.Compare(a.Word, b.Word))
	})
	return out
}

// gathering holds what stands in the texts and not in the list, by spelling.
type gathering struct {
	lex    *lexicon.Lexicon
	listed map[string]bool // headwords and forms of any dish
	found  map[string]*gathered
}

type gathered struct {
	spelt    map[string]int
	senses   map[lexicon.Sense]int
	nouns    map[string]int
	texts    map[string]bool
	count    int
	others   int
	examples []Example
}

func (g *gathering) read(e Reported, here bool) {
	for _, s := range e.Report.Sentences {
		for _, w := range s.Sensory {
			word := plainWords(w.Text)
			if w.Word != "" || !g.suggestible(word) {
				continue
			}
			at := g.found[word]
			if at == nil {
				at = &gathered{spelt: map[string]int{}, senses: map[lexicon.Sense]int{}, nouns: map[string]int{}, texts: map[string]bool{}}
				g.found[word] = at
			}
			at.spelt[word]++
			if !here {
				at.others++
				continue
			}
			at.count++
			at.senses[w.Sense]++
			at.texts[e.Name] = true
			for _, n := range g.foods(s.Text, word) {
				at.nouns[n]++
			}
			at.examples = append(at.examples, Example{e.Name, strings.Join(strings.Fields(s.Text), " ")})
		}
	}
}

func plainWords(s string) string {
	return strings.Join(strings.Fields(strings.ToLower(strings.ReplaceAll(s, "’", "'"))), " ")
}

// suggestible reports whether a phrase can stand in a word list: not a likeness,
// and of several words none that names a thing or that the list has. "Warm olive
// oil" is what a dish tasted of, and belongs to one text.
func (g *gathering) suggestible(phrase string) bool {
	words := strings.Fields(phrase)
	if len(words) == 0 || len(words) > maxSpan {
		return false
	}
	for _, w := range words {
		switch w {
		case "like", "as", "of", "than", "colour", "color":
			return false
		}
		if len(words) > 1 && (g.lex.Reading.Nouns.Kind(w) != lexicon.NoKind || g.listed[w]) {
			return false
		}
	}
	return true
}

// foods returns the nouns of food in a sentence, one each, without the word.
func (g *gathering) foods(sentence, word string) []string {
	var out []string
	for _, w := range strings.FieldsFunc(strings.ToLower(sentence), func(r rune) bool { return r != '-' && (r < 'a' || r > 'z') }) {
		kind := g.lex.Reading.Nouns.Kind(w)
		if kind.Food() && w != word && !slices.Contains(out, w) {
			out = append(out, w)
		}
	}
	return out
}

// fold puts spellings together: forms of one stem, and slips of a word that
// stands more often, but for those that are words themselves.
func (g *gathering) fold() {
	words := make([]string, 0, len(g.found))
	for w := range g.found {
		words = append(words, w)
	}
	total := func(w string) int { return g.found[w].count + g.found[w].others }
	slices.SortFunc(words, func(a, b string) int {
		return cmp.Or(cmp.Compare(total(b), total(a)), g.realFirst(a, b), strings.Compare(a, b))
	})
	var kept []string
	for _, w := range words {
		into := ""
		for _, k := range kept {
			if g.sameWord(w, k) {
				into = k
				break
			}
		}
		if into == "" {
			kept = append(kept, w)
			continue
		}
		g.found[into].add(g.found[w])
		delete(g.found, w)
	}
}

func (g *gathering) realFirst(a, b string) int {
	rank := func(w string) int {
		if g.lex.Reading.RealWords[w] {
			return 0
		}
		return 1
	}
	return cmp.Compare(rank(a), rank(b))
}

// sameWord reports whether w is a form or a slip of the word that is kept.
func (g *gathering) sameWord(w, kept string) bool {
	if lexicon.Stem(w) == lexicon.Stem(kept) {
		return true
	}
	if g.lex.Reading.RealWords[w] || len(kept) < 2 || !strings.HasPrefix(w, kept[:2]) {
		return false
	}
	switch n := len([]rune(w)); {
	case n < 5:
		return false
	case n < 10:
		return lexicon.Distance(w, kept, 1) <= 1
	}
	return lexicon.Distance(w, kept, 2) <= 2
}

func (a *gathered) add(b *gathered) {
	addCounts(a.spelt, b.spelt)
	addCounts(a.senses, b.senses)
	addCounts(a.nouns, b.nouns)
	for t := range b.texts {
		a.texts[t] = true
	}
	a.count += b.count
	a.others += b.others
	a.examples = append(a.examples, b.examples...)
}

func addCounts[K comparable](to, from map[K]int) {
	for k, n := range from {
		to[k] += n
	}
}

func (a *gathered) suggestion() Suggestion {
	spelt := byCount(a.spelt)
	s := Suggestion{
		Word: spelt[0], Spelt: spelt[1:], Sense: byCount(a.senses)[0],
		Count: a.count, Texts: len(a.texts), Others: a.others,
	}
	nouns := byCount(a.nouns)
	s.Of = nouns[:min(maxNouns, len(nouns))]
	// Two texts tell more than one, so a second text goes before a second
	// sentence.
	used := map[string]bool{}
	for _, again := range []bool{false, true} {
		for _, e := range a.examples {
			if len(s.Examples) == maxExamples {
				return s
			}
			if used[e.File] == again && !slices.Contains(s.Examples, e) {
				used[e.File] = true
				s.Examples = append(s.Examples, e)
			}
		}
	}
	return s
}

// byCount returns keys, the most frequent first.
func byCount[K cmp.Ordered](counts map[K]int) []K {
	out := make([]K, 0, len(counts))
	for k := range counts {
		out = append(out, k)
	}
	slices.SortFunc(out, func(a, b K) int {
		return cmp.Or(cmp.Compare(counts[b], counts[a]), cmp.Compare(a, b))
	})
	return out
}
