package corpus

import (
	"cmp"
	"slices"
)

// Shared is a passage that two texts have in common, for a tutor to ask about:
// it does not say who wrote it first, or why.
type Shared struct {
	First  Passage // of the text that was added first
	Second Passage
	Words  int // of the first passage
}

// Passage is a stretch of a text.
type Passage struct {
	Evaluation Evaluation
	Start, End int // bytes of its text, half open
}

// Text returns the very words of the passage.
func (p Passage) Text() string { return p.Evaluation.Text[p.Start:p.End] }

// The size of what is looked for. A passage is at least minPassage words long,
// and the runs of shingleWords words (shingles) that the two texts share in it
// weigh at least minWeight together: one that no third learner uses weighs 1,
// one that n learners use 2/n.
//
// In 2,000 texts put together from clauses (shared_test.go), where two in five
// shingles are used once, chance brings a pair to about 5 at most. In the 150
// labelled texts, where 99 in 100 are, it brings none to anything.
const (
	shingleWords = 4
	minPassage   = 16
	minWeight    = 6
)

// SharedFinder looks for passages that two learners, or two sessions of one
// learner, have in common. It cuts every text into windows of words, hashes the
// runs of four words in each (shingles), estimates by MinHash which windows are
// alike, and lets locality-sensitive hashing pair them, so that the cost grows
// with the number of texts and not with its square. Whatever it pairs is then
// compared word by word.
//
// Not counted as shared are shingles made of nothing but the task's wording,
// words of a word list and little words, and phrases that more than maxUsers
// learners use. Two texts about the same practical of
// the same learner are not compared: the adult may quote the learner, and a
// second draft repeats the first.
//
// Broder, "On the resemblance and containment of documents" (1997); the bands
// after Leskovec, Rajaraman and Ullman, "Mining of Massive Datasets", chapter 3.
type SharedFinder struct {
	task  map[uint64]bool // shingles of the task's wording
	list  map[uint64]bool // words of the word lists
	texts []sharedText
	ids   map[string]uint32 // of learners
	words []textWord        // of the text last added; the memory serves the next
}

// sharedText is one text with what it is compared by.
type sharedText struct {
	Evaluation
	learner  uint32
	shingles []uint64
	weights  []float32 // of the shingles; 0 for what does not count
}

// NewSharedFinder makes a finder that leaves out the wording of the task: the
// printed sheet, the questions, the recipe, headings. Of a list, every word on
// its own is left out.
func NewSharedFinder(task, list []string) *SharedFinder {
	f := &SharedFinder{task: map[uint64]bool{}, list: map[uint64]bool{}, ids: map[string]uint32{}}
	for _, t := range task {
		for _, s := range shingles(wordsIn(t)) {
			f.task[s] = true
		}
	}
	for _, l := range list {
		for _, w := range wordsIn(l) {
			f.list[w.hash] = true
		}
	}
	for _, w := range littleWords() {
		f.list[hashWord(w)] = true
	}
	return f
}

// Add takes in a text.
func (f *SharedFinder) Add(e Evaluation) {
	key := fold(e.Learner)
	id, ok := f.ids[key]
	if !ok {
		id = uint32(len(f.ids))
		f.ids[key] = id
	}
	f.words = appendWords(f.words[:0], e.Text)
	f.texts = append(f.texts, sharedText{Evaluation: e, learner: id, shingles: shingles(f.words)})
}

// Find returns what the texts have in common, the longest passages first. The
// same texts in the same order give the same result.
func (f *SharedFinder) Find() []Shared {
	f.weigh()
	var out []Shared
	var first comparison
	for _, pair := range f.candidates() {
		a, b := &f.texts[pair.a], &f.texts[pair.b]
		first.begin(a)
		if !first.mayShare(b) {
			continue
		}
		for _, p := range first.passages(b) {
			out = append(out, Shared{
				First:  Passage{a.Evaluation, p.a.start, p.a.end},
				Second: Passage{b.Evaluation, p.b.start, p.b.end},
				Words:  p.words,
			})
		}
	}
	// Pairs come in the order of the texts, which a stable sort keeps.
	slices.SortStableFunc(out, func(x, y Shared) int { return cmp.Compare(y.Words, x.Words) })
	return out
}

// comparable reports whether a passage that two texts share would say anything.
func (f *SharedFinder) comparable(a, b int) bool {
	x, y := &f.texts[a], &f.texts[b]
	return a != b && (x.learner != y.learner || x.Session != y.Session)
}
