package analyze

import (
	"slices"
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
	singles  map[string][]sensed              // one-word forms
	phrases  map[string]map[string][]sensedAs // forms of several words, by their first and second; the longest first
	known    map[string]bool                  // every single word the rules look for
	initial  [256][]string                    // the known words by their first letter
	cards    *memo[card]                      // of words met lately
	telling  *memo[[]string]                  // of questions asked lately; see tellingWords
	judging  map[string]bool                  // every form that a one-word vague pattern takes
	works    map[string]bool                  // stems of verbs of working with food
	tagger   Tagger
	met      knower
	placing  *placing // of all places
	needs    *placing // of those that patterns cannot do without
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

// sensedAs is a form of several words with its readings.
type sensedAs struct {
	words    []string
	readings []sensed
}

// adverb reports whether a listed word in -ly is an adverb made from a listed
// quality (faintly, evenly, patchily) and no adjective that happens to end so
// (bubbly, crumbly, frilly).
func (v *vocabulary) adverb(w string) bool {
	base, ok := strings.CutSuffix(w, "ly")
	if !ok {
		return false
	}
	if i, ok := strings.CutSuffix(base, "i"); ok && v.headword(i+"y") {
		return true
	}
	return v.headword(base) || v.headword(base+"le")
}

// headword reports whether the word is a quality of the list by itself, not
// only a form of one.
func (v *vocabulary) headword(w string) bool {
	for _, r := range v.singles[w] {
		if r.head == w {
			return true
		}
	}
	return false
}

// knower is a tagger that can say which words it has met, so that a slip is
// not mended in a word that is one.
type knower interface{ Knows(word string) bool }

func newVocabulary(lex *lexicon.Lexicon, tagger Tagger) *vocabulary {
	v := &vocabulary{
		lex: lex, tagger: tagger, nouns: lex.Reading.Nouns, spelling: lex.Reading.Spelling,
		singles: map[string][]sensed{}, phrases: map[string]map[string][]sensedAs{},
		judging: map[string]bool{}, works: map[string]bool{}, known: map[string]bool{},
		placing: newPlacing(), needs: newPlacing(),
		cards: newMemo[card](1 << 14), telling: newMemo[[]string](1 << 10),
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
	for _, bySecond := range v.phrases {
		for _, list := range bySecond {
			sort.SliceStable(list, func(i, j int) bool { return len(list[i].words) > len(list[j].words) })
		}
	}
	r := lex.Reading
	v.vague = newPatterns(0, r.Vague, v.placing, v.needs)
	v.unsensed = newPatterns(1, r.Unsensed, v.placing, v.needs)
	v.plain = newPatterns(2, r.NotVague, v.placing, v.needs)
	v.cues = newPatterns(3, r.Cues, v.placing, v.needs)
	v.dangers = newPatterns(4, r.Dangers, v.placing, v.needs)
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
	for _, right := range v.spelling {
		v.know(right)
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
	toks := tokenizer{}.tokens(form)
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
	if v.phrases[words[0]] == nil {
		v.phrases[words[0]] = map[string][]sensedAs{}
	}
	list := v.phrases[words[0]][words[1]]
	for i := range list {
		if slices.Equal(list[i].words, words) {
			list[i].add(s)
			return
		}
	}
	v.phrases[words[0]][words[1]] = append(list, sensedAs{words: words, readings: []sensed{s}})
}

// add adds a reading, one for each sense.
func (p *sensedAs) add(s sensed) {
	for _, have := range p.readings {
		if have.sense == s.sense {
			return
		}
	}
	p.readings = append(p.readings, s)
}
