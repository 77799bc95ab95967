package lexicon

import (
	"math"
	"slices"
	"sort"
	"strings"
)

// Finder finds words from what was noticed: "bits stick to my teeth" leads to
// words whose meaning, forms or nouns say so. It is built once over a list of
// words, never changes and is safe for many goroutines.
//
// It ranks by BM25F: Robertson and Zaragoza, "The Probabilistic Relevance
// Framework: BM25 and Beyond" (2009), section 3.6, each word with its fields as
// one document.
type Finder struct {
	docs  []findDoc
	idf   map[string]float64
	terms []string // every term, sorted: what a slip is mended to
	mean  [findFields]float64
	kin   map[string][]string
	// sayings are turns of speech by the root of their first word.
	sayings map[string][]*saying
	food    map[string]bool // terms of the nouns that words describe
}

// The fields of a word, and how much a term counts in each.
const (
	headField = iota
	formField
	meansField
	ofField
	findFields
)

func fieldWeights() [findFields]float64 { return [findFields]float64{3, 2, 2, 0.6} }

// The free parameters of BM25: how soon a repeated term stops to count, and
// how much the length of a field matters.
const (
	bm25K = 1.2
	bm25B = 0.4
)

type findDoc struct {
	word    Word
	freq    map[string]*[findFields]float64
	length  [findFields]float64
	phrases [][]string // headword, then forms, as terms
	wholes  []string   // each of these as one term
	prior   float64    // how likely the word is, whatever was noticed
}

// Found is a word with how well it fits; the numbers compare within one search.
type Found struct {
	Word Word
	Also []Sense // the other senses under which the same headword fits
	Fit  float64
}

// NewFinder builds a Finder over words.
func NewFinder(words []Word) *Finder {
	f := &Finder{idf: map[string]float64{}, food: map[string]bool{}}
	f.kin, f.sayings = everydayKin() // only read
	in := map[string]int{}
	met := map[string][]string{} // many words are said of the same food
	rootOf := rootsOnce()
	terms := func(text string) []string {
		t, ok := met[text]
		if !ok {
			t = termsBy(text, rootOf)
			met[text] = t
		}
		return t
	}
	for _, w := range words {
		d := newFindDoc(w, terms)
		for _, of := range w.Of {
			for _, t := range terms(of) {
				f.food[t] = true
			}
		}
		for t := range d.freq {
			in[t]++
		}
		for i, l := range d.length {
			f.mean[i] += l
		}
		f.docs = append(f.docs, d)
	}
	n := float64(len(words))
	for t, c := range in {
		f.idf[t] = math.Log(1 + (n-float64(c)+0.5)/(float64(c)+0.5))
		if !strings.Contains(t, wholeSign) {
			f.terms = append(f.terms, t)
		}
	}
	slices.Sort(f.terms)
	for i := range f.mean {
		f.mean[i] = max(1, f.mean[i]/max(1, n))
	}
	return f
}

// newFindDoc makes a word ready to be found; termsOf is findTerms.
func newFindDoc(w Word, termsOf func(string) []string) findDoc {
	d := findDoc{word: w, freq: map[string]*[findFields]float64{}, prior: 1}
	if strings.ContainsAny(w.Word, " -") {
		d.prior = phrasePrior // people look for one word more often than for a phrase
	}
	if w.From == Root {
		d.prior *= rootPrior // what fits any dish is noticed more often
	}
	if w.Scale != "" {
		d.prior *= scalePrior // the words that the trade grades are those in use
	}
	add := func(field int, text string) []string {
		terms := termsOf(text)
		for _, t := range terms {
			if d.freq[t] == nil {
				d.freq[t] = &[findFields]float64{}
			}
			d.freq[t][field]++
			d.length[field]++
		}
		return terms
	}
	seen := map[string]bool{}
	phrase := func(field int, text string) {
		terms := add(field, text)
		if key := asWhole(terms); field == headField || len(terms) > 0 && !seen[key] {
			seen[key] = true
			d.phrases = append(d.phrases, terms)
			d.wholes = append(d.wholes, key)
			if len(terms) > 1 && d.freq[key] == nil {
				d.freq[key] = &[findFields]float64{}
			}
		}
	}
	phrase(headField, w.Word)
	for _, form := range w.Forms {
		phrase(formField, form)
	}
	add(meansField, w.Means)
	for _, of := range w.Of {
		add(ofField, of)
	}
	return d
}

// wholeSign joins the terms of a headword or form of several words into one
// term, by which what people say stands for it as a whole: "made me hungry" for
// mouth-watering, not for what waters.
const wholeSign = "+"

func asWhole(terms []string) string { return strings.Join(terms, wholeSign) }

// Find returns at most n words that fit what was noticed, the best first; none
// when no term of it is known.
func (f *Finder) Find(noticed string, n int) []Found {
	plain := findTerms(noticed)
	topics := f.topics(noticed)
	query, taken := f.query(noticed, topics)
	cued := sensesCued(noticed)
	var all []Found
	for i := range f.docs {
		if fit := f.fit(&f.docs[i], query, topics, taken, plain) * cued[f.docs[i].word.Sense]; fit > 0 {
			all = append(all, Found{Word: f.docs[i].word, Fit: fit})
		}
	}
	sort.SliceStable(all, func(i, j int) bool { return all[i].Fit > all[j].Fit })
	var out []Found
	at := map[string]int{}
	for _, w := range all {
		if i, ok := at[w.Word.Word]; ok {
			out[i].Also = append(out[i].Also, w.Word.Sense)
			continue
		}
		at[w.Word.Word] = len(out)
		out = append(out, w)
	}
	return out[:min(n, len(out))]
}

// query returns the terms of what was noticed with their weights: its own
// terms, slips mended, and at less weight words of everyday speech akin to them.
func (f *Finder) query(noticed string, topics map[string]bool) (out map[string]float64, taken map[string]bool) {
	out = map[string]float64{}
	add := func(t string, weight float64) { out[t] = max(out[t], weight) }
	sayings, taken := f.said(noticed)
	for _, s := range sayings {
		for i, t := range s.meant {
			add(t, sayingWeight*math.Pow(kinDecay, float64(i))*f.evened(t)*s.weight)
		}
	}
	for _, t := range findTerms(noticed) {
		if taken[strings.TrimPrefix(t, not)] {
			add(t, takenWeight)
			continue
		}
		if _, known := f.idf[t]; !known && len(f.kin[t]) == 0 && !strings.HasPrefix(t, not) {
			if near := f.mended(t); near != t {
				weight := slipWeight
				if !soundAlike(t, near) {
					weight = otherSlipWeight
				}
				t = near
				add(t, weight)
			}
		} else {
			add(t, weightOf(t))
		}
		weight := kinWeight
		if topics[t] {
			weight *= topicKin
		}
		for i, k := range f.kin[t] {
			add(k, weight*math.Pow(kinDecay, float64(i)))
		}
		if plain, denied := strings.CutPrefix(t, not); denied {
			add(plain, deniedWeight)
		}
	}
	return out, taken
}

// evened is the weight of a term that a turn of speech stands for: how rare the
// term is counts less than for what is said itself.
func (f *Finder) evened(t string) float64 {
	weight := 1.0
	if idf := f.idf[t]; idf > 0 {
		weight = math.Sqrt(evenIDF / idf)
	}
	if strings.Contains(t, wholeSign) {
		weight *= wholeWeight
	}
	return weight
}

const (
	// evenIDF is the inverse document frequency of a term that is neither rare
	// nor common.
	evenIDF = 5
	// wholeWeight makes up for phrasePrior: here the phrase was looked for.
	wholeWeight = 1.4
)

// Weights of terms that the query does not have itself.
const (
	kinWeight    = 0.9
	kinDecay     = 0.9 // for each likelier one
	sayingWeight = 1
	takenWeight  = 0.6 // of a term that only makes up a turn of speech
	slipWeight   = 0.7
	// Of a slip that changes consonants: it may as well be another word.
	otherSlipWeight = 0.3
	deniedWeight    = 0.2
)

// A food that the noticing only speaks about counts less as a quality, and more
// as what a word describes: of "garlic cooked slow", "garlicky" tells nothing.
const (
	topicWeight = 0.5
	topicOf     = 1.5
	topicKin    = 0.8 // of the weight of words akin to it
)

// mended returns the known term that is one slip away, or two for a long one.
func (f *Finder) mended(t string) string {
	limit := 1
	switch n := len([]rune(t)); {
	case n < 4:
		return t
	case n >= 8:
		limit = 2
	}
	best, least := t, limit+1
	for _, known := range f.terms {
		if known[0] != t[0] {
			continue
		}
		if d := Distance(t, known, limit); d < least {
			best, least = known, d
		}
	}
	return best
}

// soundAlike reports whether two words have the same consonants: who spells by
// ear mistakes vowels and doubled letters. Letters that were only swapped count
// as the same too.
func soundAlike(a, b string) bool {
	if consonants(a) == consonants(b) {
		return true
	}
	x, y := []byte(a), []byte(b)
	slices.Sort(x)
	slices.Sort(y)
	return slices.Equal(x, y)
}

// consonants returns the consonants of a word, those that sound the same as one
// letter and none twice in a row.
func consonants(w string) string {
	w = strings.NewReplacer("ck", "k", "ph", "f", "gh", "", "c", "k", "z", "s", "q", "k").Replace(w)
	var out []rune
	for _, r := range w {
		if !strings.ContainsRune("aeiouyhw", r) && (len(out) == 0 || out[len(out)-1] != r) {
			out = append(out, r)
		}
	}
	return string(out)
}

// weakWeight is the weight of a weak term.
const weakWeight = 0.5

// Priors, by which a fit is multiplied.
const (
	phrasePrior = 0.7
	rootPrior   = 1.4
	scalePrior  = 1.3
)

// phraseWeight is how much a whole form in the query adds.
const phraseWeight = 0.8
