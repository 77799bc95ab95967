package analyze

import (
	"hash/fnv"
	"sort"
	"strings"
	"unicode"
)

// SentencePair is a sentence of the old draft with the one of the new draft
// that it became. Old or New is 0 when it has no counterpart.
type SentencePair struct {
	Old     int  `json:"old"`
	New     int  `json:"new"`
	Changed bool `json:"changed"` // its words are not the same
	Moved   bool `json:"moved"`   // it changed places with others
}

// Limits that keep matching linear in the length of the drafts: a word that
// more sentences share tells nothing of which one is meant, and no sentence is
// held against more than so many others.
const (
	commonWord     = 40 // sentences
	mostCandidates = 12
	leastAlike     = 0.5 // of 1
)

// pairSentences matches the sentences of two drafts: first those with the same
// words, then the most alike, then those that stand alone between the same
// neighbours.
func pairSentences(before, after []string) []SentencePair {
	m := newMatching(before, after)
	m.same()
	m.alike()
	m.between()
	return m.pairs()
}

// matching is the state of one pairing; indices count from 0, -1 is none.
type matching struct {
	before, after []bag
	toAfter       []int
	toBefore      []int
}

// bag is the words of a sentence, sorted, with how much each tells.
type bag struct {
	words  []string
	key    uint64 // of the words in their order
	weight float64
}

func newMatching(before, after []string) *matching {
	m := &matching{toAfter: make([]int, len(before)), toBefore: make([]int, len(after))}
	for i, s := range before {
		m.before, m.toAfter[i] = append(m.before, newBag(s)), -1
	}
	for i, s := range after {
		m.after, m.toBefore[i] = append(m.after, newBag(s)), -1
	}
	return m
}

func newBag(s string) bag {
	words := strings.FieldsFunc(normalise(s), func(r rune) bool {
		return !unicode.IsLetter(r) && !unicode.IsDigit(r) && !unicode.Is(unicode.M, r) && r != '\''
	})
	h := fnv.New64a()
	for _, w := range words {
		_, _ = h.Write([]byte(w))
		_, _ = h.Write([]byte{0})
	}
	b := bag{words: words, key: h.Sum64()}
	sort.Strings(b.words)
	for _, w := range b.words {
		b.weight += tells(w)
	}
	return b
}

// tells is how much it says that two sentences share a word.
func tells(w string) float64 {
	switch w {
	case "a", "an", "the", "i", "it", "its", "it's", "they", "we", "you", "he", "she", "my", "our", "his", "her", "your", "their", "me", "them",
		"and", "or", "but", "so", "then", "was", "were", "is", "are", "be", "been", "had", "has", "have", "did", "do", "to", "of", "in", "on", "at", "with", "for", "from", "by",
		"very", "really", "quite", "too", "this", "that", "as", "not", "because", "when":
		return 0.25
	}
	return 1
}

// same pairs the sentences with the same words, in order.
func (m *matching) same() {
	waiting := map[uint64][]int{}
	for i, b := range m.before {
		waiting[b.key] = append(waiting[b.key], i)
	}
	for j, b := range m.after {
		if list := waiting[b.key]; len(list) > 0 {
			m.join(list[0], j)
			waiting[b.key] = list[1:]
		}
	}
}

func (m *matching) join(i, j int) { m.toAfter[i], m.toBefore[j] = j, i }

// alike pairs the sentences left over, the most alike first. Candidates are
// found by the words that few sentences have.
func (m *matching) alike() {
	having := map[string][]int{}
	for i, b := range m.before {
		if m.toAfter[i] >= 0 {
			continue
		}
		for n, w := range b.words {
			if (n == 0 || b.words[n-1] != w) && tells(w) == 1 && len(having[w]) <= commonWord {
				having[w] = append(having[w], i)
			}
		}
	}
	type candidate struct {
		i, j  int
		score float64
	}
	var all []candidate
	for j := range m.after {
		if m.toBefore[j] >= 0 {
			continue
		}
		for _, i := range m.candidates(having, j) {
			if s := likeness(m.before[i], m.after[j]); s >= leastAlike {
				all = append(all, candidate{i, j, s})
			}
		}
	}
	sort.SliceStable(all, func(x, y int) bool {
		if all[x].score != all[y].score {
			return all[x].score > all[y].score
		}
		return apart(all[x].i, all[x].j) < apart(all[y].i, all[y].j)
	})
	for _, c := range all {
		if m.toAfter[c.i] < 0 && m.toBefore[c.j] < 0 {
			m.join(c.i, c.j)
		}
	}
}

func apart(i, j int) int { return max(i-j, j-i) }

// candidates lists the old sentences that share the most telling words with
// new sentence j.
func (m *matching) candidates(having map[string][]int, j int) []int {
	shared := map[int]int{}
	words := m.after[j].words
	for n, w := range words {
		if n > 0 && words[n-1] == w || len(having[w]) > commonWord {
			continue
		}
		for _, i := range having[w] {
			shared[i]++
		}
	}
	list := make([]int, 0, len(shared))
	for i := range shared {
		list = append(list, i)
	}
	sort.Slice(list, func(x, y int) bool {
		if shared[list[x]] != shared[list[y]] {
			return shared[list[x]] > shared[list[y]]
		}
		if a, b := apart(list[x], j), apart(list[y], j); a != b {
			return a < b
		}
		return list[x] < list[y]
	})
	return list[:min(len(list), mostCandidates)]
}

// likeness is how much of two sentences is the same, from 0 to 1: of both
// together, or, a little less, of the shorter one that the longer took in.
func likeness(a, b bag) float64 {
	shared, telling := 0.0, 0
	for x, y := 0, 0; x < len(a.words) && y < len(b.words); {
		switch {
		case a.words[x] == b.words[y]:
			w := tells(a.words[x])
			shared += w
			if w == 1 {
				telling++
			}
			x, y = x+1, y+1
		case a.words[x] < b.words[y]:
			x++
		default:
			y++
		}
	}
	if telling == 0 {
		return 0
	}
	both := 2 * shared / (a.weight + b.weight)
	within := 0.8 * shared / min(a.weight, b.weight)
	if telling < 2 {
		within = 0.7 * shared / min(a.weight, b.weight)
	}
	return max(both, within)
}

// between pairs a sentence that stands alone between two paired neighbours
// with the one that stands alone between them in the other draft, when they
// share a word.
func (m *matching) between() {
	for i := range m.before {
		if m.toAfter[i] >= 0 {
			continue
		}
		low, high := -1, len(m.after)
		if i > 0 {
			if low = m.toAfter[i-1]; low < 0 {
				continue
			}
		}
		if i+1 < len(m.before) {
			if high = m.toAfter[i+1]; high < 0 {
				continue
			}
		}
		if high-low == 2 && m.toBefore[low+1] < 0 && share(m.before[i], m.after[low+1]) {
			m.join(i, low+1)
		}
	}
}

func share(a, b bag) bool {
	for x, y := 0, 0; x < len(a.words) && y < len(b.words); {
		switch {
		case a.words[x] == b.words[y]:
			return true
		case a.words[x] < b.words[y]:
			x++
		default:
			y++
		}
	}
	return false
}

// pairs lists the result by new sentence, with each sentence that is gone
// behind the one that stood before it.
func (m *matching) pairs() []SentencePair {
	stays := m.inPlace()
	goneAfter := map[int][]int{} // by the new sentence they follow, -1 for the start
	last := -1
	for i := range m.before {
		if j := m.toAfter[i]; j >= 0 {
			if stays[j] {
				last = j
			}
			continue
		}
		goneAfter[last] = append(goneAfter[last], i)
	}
	out := []SentencePair{}
	gone := func(j int) {
		for _, i := range goneAfter[j] {
			out = append(out, SentencePair{Old: i + 1})
		}
	}
	gone(-1)
	for j := range m.after {
		p := SentencePair{New: j + 1}
		if i := m.toBefore[j]; i >= 0 {
			p.Old = i + 1
			p.Changed = m.before[i].key != m.after[j].key
			p.Moved = !stays[j]
		}
		out = append(out, p)
		gone(j)
	}
	return out
}

// inPlace marks the new sentences that kept their order: the longest rising
// run of their old places (patience sorting, n log n). All others moved.
func (m *matching) inPlace() []bool {
	var tops []int // new sentence that ends the best run of each length
	before := make([]int, len(m.after))
	for j, i := range m.toBefore {
		before[j] = -1
		if i < 0 {
			continue
		}
		n := sort.Search(len(tops), func(k int) bool { return m.toBefore[tops[k]] >= i })
		if n > 0 {
			before[j] = tops[n-1]
		}
		if n == len(tops) {
			tops = append(tops, j)
		} else {
			tops[n] = j
		}
	}
	out := make([]bool, len(m.after))
	if len(tops) > 0 {
		for j := tops[len(tops)-1]; j >= 0; j = before[j] {
			out[j] = true
		}
	}
	return out
}
