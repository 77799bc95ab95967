package analyze

import (
	"sort"
	"strings"

	"saywhy/lexicon"
)

// vocabulary is the lexicon made ready for lookup. It is built once and never
// changed.
type vocabulary struct {
	lex      *lexicon.Lexicon
	nouns    *lexicon.Nouns
	spelling map[string]string
	singles  map[string][]sensed   // one-word forms
	phrases  map[string][]sensedAs // forms of several words, by their first
	known    map[string]bool       // every single word the rules look for
	deletes  map[string][]string   // known words by themselves with a letter left out
	judging  map[string]bool       // every form that a one-word vague pattern takes
	works    map[string]bool       // stems of verbs of working with food
	met      knower
	vague    *patterns
	unsensed *patterns
	plain    *patterns // uses in which a vague word does not judge
	cues     *patterns
	dangers  *patterns
}

// sensed is one reading of a form: the headword and the sense it speaks to.
type sensed struct {
	head  string
	sense lexicon.Sense
	of    []string
}

// sensedAs is a form of several words.
type sensedAs struct {
	words []string
	sensed
}

// stem is memoised nowhere: snowball costs little beside the tagger.
func (v *vocabulary) stem(w string) string { return lexicon.Stem(w) }

// describes reports whether the word is on the sensory list.
func (v *vocabulary) describes(w string) bool { return len(v.singles[w]) > 0 }

// knower is a tagger that can say which words it has met, so that a slip is
// not mended in a word that is one.
type knower interface{ Knows(word string) bool }

func newVocabulary(lex *lexicon.Lexicon, tagger Tagger) *vocabulary {
	v := &vocabulary{
		lex: lex, nouns: lex.Reading.Nouns, spelling: lex.Reading.Spelling,
		singles: map[string][]sensed{}, phrases: map[string][]sensedAs{},
		judging: map[string]bool{}, works: map[string]bool{}, known: map[string]bool{}, deletes: map[string][]string{},
	}
	for _, w := range lex.Words() {
		s := sensed{head: w.Word, sense: w.Sense, of: w.Of}
		v.addForm(w.Word, s)
		for _, f := range w.Forms {
			v.addForm(f, s)
		}
	}
	// Regular comparatives come last and never over a listed form or a noun
	// of another meaning (burn, burner).
	for _, w := range lex.Words() {
		for _, f := range w.Graded() {
			if k := v.nouns.Kind(f); k != lexicon.NoKind {
				continue
			}
			v.addForm(f, sensed{head: w.Word, sense: w.Sense, of: w.Of})
		}
	}
	for first := range v.phrases {
		list := v.phrases[first]
		sort.SliceStable(list, func(i, j int) bool { return len(list[i].words) > len(list[j].words) })
	}
	r := lex.Reading
	v.vague = newPatterns(r.Vague)
	v.unsensed = newPatterns(r.Unsensed)
	v.plain = newPatterns(r.NotVague)
	v.cues = newPatterns(r.Cues)
	v.dangers = newPatterns(r.Dangers)
	v.dangers.tight = true
	for _, l := range r.Vague {
		if len(l.Parts) == 1 {
			for _, w := range l.Parts[0].Words {
				v.judging[w] = true
			}
			for _, w := range l.Parts[0].Stems {
				v.judging[w] = true
			}
		}
	}
	for _, w := range r.Words() {
		v.know(w)
	}
	for f := range v.singles {
		v.know(f)
	}
	for _, l := range r.Cues {
		if l.Label != string(lexicon.Technique) || l.Step != "told" {
			continue
		}
		for _, p := range l.Parts[:1] {
			for _, t := range p.Tagged {
				v.works[t.Stem] = true
			}
			for _, s := range p.Stems {
				v.works[s] = true
			}
			for _, w := range p.Words {
				v.works[lexicon.Stem(w)] = true
			}
		}
	}
	// Work with food that is not told as a technique of its own.
	for _, w := range []string{"dry", "taste", "check", "test", "measure", "weigh", "thread", "wash", "wipe", "scrub"} {
		v.works[lexicon.Stem(w)] = true
	}
	v.met, _ = tagger.(knower)
	return v
}

func (v *vocabulary) addForm(form string, s sensed) {
	toks := tokenizer{}.tokens(form, span{0, len(form)})
	var words []string
	for _, t := range toks {
		words = append(words, strings.Split(t.norm, "-")...)
	}
	if len(words) == 0 {
		return
	}
	if len(words) == 1 {
		for _, have := range v.singles[words[0]] {
			if have.sense == s.sense {
				return
			}
		}
		v.singles[words[0]] = append(v.singles[words[0]], s)
		return
	}
	for _, have := range v.phrases[words[0]] {
		if have.sense == s.sense && strings.Join(have.words, " ") == strings.Join(words, " ") {
			return
		}
	}
	v.phrases[words[0]] = append(v.phrases[words[0]], sensedAs{words: words, sensed: s})
}

// minTypo is the shortest word in which a slip is mended: in shorter ones
// nearly every slip is another word.
const minTypo = 5

func (v *vocabulary) know(w string) {
	if v.known[w] || len(w) < minTypo {
		return
	}
	v.known[w] = true
	v.deletes[w] = append(v.deletes[w], w)
	for i := range len(w) {
		d := w[:i] + w[i+1:]
		v.deletes[d] = append(v.deletes[d], w)
	}
}

// correct returns the word with a child's slip mended, if it has one.
func (v *vocabulary) correct(w string) string {
	if fixed, ok := v.spelling[w]; ok {
		return fixed
	}
	if len(w) < minTypo || v.known[w] || len(v.singles[w]) > 0 || v.nouns.Kind(w) != lexicon.NoKind || v.met != nil && v.met.Knows(w) || strings.ContainsAny(w, "-'0123456789") {
		return w
	}
	return v.mend(w)
}

// mend returns the known word that w is a misspelling of, or w itself. It is
// asked only of words that no list and no tagger knows. One slip is mended (a
// letter missing, added, changed or swapped), two in words of eight letters or
// more; the first letter must stand. Of several candidates the closest wins,
// then the alphabetically first; a vowel slip counts less than a consonant.
func (v *vocabulary) mend(w string) string {
	if len(w) < minTypo || len(w) > 20 || v.known[w] || v.lex.Reading.RealWords[w] {
		return w
	}
	best, bestCost := w, 100
	seen := map[string]bool{}
	try := func(list []string) {
		for _, c := range list {
			if seen[c] || c[0] != w[0] {
				continue
			}
			seen[c] = true
			limit := 1
			if len(w) >= 8 {
				limit = 2
			}
			d := lexicon.Distance(w, c, limit)
			if d > limit {
				continue
			}
			cost := d * 2
			if skeleton(w) == skeleton(c) {
				cost--
			}
			if cost < bestCost || cost == bestCost && c < best {
				best, bestCost = c, cost
			}
		}
	}
	try(v.deletes[w])
	for i := range len(w) {
		try(v.deletes[w[:i]+w[i+1:]])
	}
	return best
}

// skeleton is the word without vowels and doubled letters, with letters that
// sound alike folded: what is left when a child spells by ear.
func skeleton(w string) string {
	w = strings.NewReplacer("ph", "f", "ck", "k", "sch", "sh", "tch", "ch", "gh", "", "kn", "n", "wr", "r").Replace(w)
	var b strings.Builder
	last := byte(0)
	for i := range len(w) {
		c := w[i]
		switch c {
		case 'a', 'e', 'i', 'o', 'u', 'y', 'h', 'w':
			continue
		case 'c', 'q':
			c = 'k'
		case 'z':
			c = 's'
		}
		if c != last {
			b.WriteByte(c)
		}
		last = c
	}
	return b.String()
}
