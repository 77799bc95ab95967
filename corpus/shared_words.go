package corpus

import (
	"runtime"
	"slices"
	"sync"
	"unicode"
	"unicode/utf8"
)

// textWord is a word of a text as it is compared: by the hash of its letters
// in lower case.
type textWord struct {
	hash       uint64
	start, end int // bytes of the text
}

// The basis and the prime of FNV-1a in 64 bits (Fowler, Noll and Vo), taken here
// letter by letter.
const (
	fnvBasis = 14695981039346656037
	fnvPrime = 1099511628211
)

// wordsIn returns the words of a text: runs of letters and digits. Marks,
// apostrophes among them, are passed over, so that "didn't" and "didnt" are one.
func wordsIn(text string) []textWord { return appendWords(nil, text) }

// appendWords appends the words of a text to out.
func appendWords(out []textWord, text string) []textWord {
	out = slices.Grow(out, len(text)/5)
	w := textWord{hash: fnvBasis, start: -1}
	for i := 0; i < len(text); {
		r, n := rune(text[i]), 1
		if r >= utf8.RuneSelf {
			r, n = utf8.DecodeRuneInString(text[i:])
		}
		switch {
		case r < utf8.RuneSelf && (r >= 'a' && r <= 'z' || r >= '0' && r <= '9'):
		case r < utf8.RuneSelf && r >= 'A' && r <= 'Z':
			r += 'a' - 'A'
		case r >= utf8.RuneSelf && (unicode.IsLetter(r) || unicode.IsDigit(r)):
			r = unicode.ToLower(r)
		case (r == '\'' || r == '’') && w.start >= 0:
			i += n
			continue
		default:
			if w.start >= 0 {
				out = append(out, w)
				w = textWord{hash: fnvBasis, start: -1}
			}
			i += n
			continue
		}
		if w.start < 0 {
			w.start = i
		}
		w.hash = (w.hash ^ uint64(r)) * fnvPrime
		i += n
		w.end = i
	}
	if w.start >= 0 {
		out = append(out, w)
	}
	return out
}

func hashWord(w string) uint64 {
	for _, t := range wordsIn(w) {
		return t.hash
	}
	return 0
}

// shingles returns the hash of every run of shingleWords words, by the place
// of its first word; none of a text that is shorter.
func shingles(words []textWord) []uint64 {
	if len(words) < shingleWords {
		return nil
	}
	out := make([]uint64, len(words)-shingleWords+1)
	for i := range out {
		h := uint64(0)
		for _, w := range words[i : i+shingleWords] {
			h = mix(h ^ w.hash)
		}
		out[i] = h
	}
	return out
}

// mix is the finaliser of SplitMix64: Steele, Lea and Flood, "Fast splittable
// pseudorandom number generators" (2014).
func mix(x uint64) uint64 {
	x += 0x9e3779b97f4a7c15
	x = (x ^ x>>30) * 0xbf58476d1ce4e5b9
	x = (x ^ x>>27) * 0x94d049bb133111eb
	return x ^ x>>31
}

// littleWords are words that hold a list together.
func littleWords() []string {
	return []string{
		"a", "an", "the", "and", "or", "but", "it", "was", "were", "is", "are", "very", "really", "so", "too", "not", "with",
		"of", "in", "on", "to", "i", "my", "they", "its", "bit", "quite", "like", "taste", "tasted", "smell", "smelt", "smelled",
		"look", "looked", "feel", "felt",
	}
}

// maxUsers is how many learners may use a phrase before it counts as the way
// people speak of such a thing.
const maxUsers = 8

// users returns how many learners use a shingle, for those that more than two
// of them use.
func (f *SharedFinder) users() map[uint64]int {
	// A shingle's upper 44 bits and its learner in one number, so that sorting
	// brings them together at 8 bytes each. Shingles that agree in 44 bits are
	// one here; among a million there are about 30 such pairs.
	n := 0
	for i := range f.texts {
		n += len(f.texts[i].shingles)
	}
	all := make([]uint64, 0, n)
	for i := range f.texts {
		id := uint64(f.texts[i].learner) & (1<<userBits - 1)
		for _, s := range f.texts[i].shingles {
			all = append(all, s>>userBits<<userBits|id)
		}
	}
	slices.Sort(all)
	all = slices.Compact(all)
	out := map[uint64]int{}
	for i := 0; i < len(all); {
		j := i + 1
		for j < len(all) && all[j]>>userBits == all[i]>>userBits {
			j++
		}
		if j-i > 2 {
			out[all[i]>>userBits] = j - i
		}
		i = j
	}
	return out
}

// userBits is the part of a shingle's hash that gives way to its user.
const userBits = 20

// weigh gives every shingle its weight.
func (f *SharedFinder) weigh() {
	users := f.users()
	weights := onAllCores(len(f.texts), func(from, to int) [][]float32 { return f.weights(f.texts[from:to], users) })
	for i := range f.texts {
		f.texts[i].weights = weights[i]
	}
}

// weights returns the weights of the shingles of some texts.
func (f *SharedFinder) weights(texts []sharedText, users map[uint64]int) [][]float32 {
	out := make([][]float32, len(texts))
	var words []textWord
	for i, t := range texts {
		words = appendWords(words[:0], t.Text)
		given := f.given(words, t.shingles)
		out[i] = make([]float32, len(t.shingles))
		for k, s := range t.shingles {
			n := max(2, users[s>>userBits])
			if n <= maxUsers && slices.Contains(given[k:k+shingleWords], false) {
				out[i][k] = 2 / float32(n)
			}
		}
	}
	return out
}

// onAllCores parts n items into as many runs as there are cores, works on all of
// them at the same time and returns what came of them, in the order of the items.
func onAllCores[T any](n int, work func(from, to int) []T) []T {
	runs := make([][]T, runtime.GOMAXPROCS(0))
	var working sync.WaitGroup
	for i := range runs {
		working.Go(func() { runs[i] = work(i*n/len(runs), (i+1)*n/len(runs)) })
	}
	working.Wait()
	return slices.Concat(runs...)
}

// slotWords is how many words may stand between two pieces of the task's wording
// and still belong to it: what fills a slot of a question ("your lentil soup"),
// with a piece of it too short to be a shingle.
const slotWords = 4

// given returns for every word of a text whether it was put before the writer:
// as part of the task's wording, of which at least a whole shingle stands
// there, or as a word of a list, little words included. A shingle of nothing
// but such words does not count, so that neither do the seams between two
// pieces of the task, nor what fills its slots.
func (f *SharedFinder) given(words []textWord, shingles []uint64) []bool {
	out := make([]bool, len(words))
	for i, w := range words {
		out[i] = f.list[w.hash]
	}
	end := -1 // behind the last piece of the task
	for k, s := range shingles {
		if !f.task[s] {
			continue
		}
		from := k
		if end >= 0 && k-end <= slotWords {
			from = min(end, k)
		}
		end = k + shingleWords
		for i := from; i < end; i++ {
			out[i] = true
		}
	}
	return out
}
