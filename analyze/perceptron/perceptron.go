// Package perceptron tags English words with their parts of speech, with the
// Penn Treebank tag set.
//
// It runs the averaged perceptron that github.com/jdkato/prose/v2 trained and
// publishes, over prose's own weights, and gives the tags that prose computes.
// It exists because prose offers no way to hand it tokens: its tokenizer
// loses byte offsets, lets every repetition of a word in a text share one tag,
// and cannot see "dont" or "i". The tests hold this package against prose.
//
// The weights stand in a file of their own (weights.go says in which form), so
// that the program carries neither prose nor the megabytes of other models that
// come with it, and starts without decoding them.
package perceptron

import "strings"

// Tagger assigns tags to the words of one sentence. It is built once, is never
// changed afterwards, and is safe for use by many goroutines.
//
// A feature of the model is a place and what stands there: "the word before is
// X", "the tag before is T and the word is X". Words, ends of words and tags
// are looked up once and then know their rows of weights, so that no feature is
// put into words while tagging.
type Tagger struct {
	tags    []string // names: the classes that the weights vote for, then others
	classes int      // how many of the tags are classes
	weights []int32  // of all rows; see row

	words  map[string]int32 // places in known
	known  []word           // the first is a word the model has not met
	tagged []taggedRow      // of all words; see word
	ends   map[uint32]ends  // by endOf
	firsts [256]row         // by the first byte of the word

	bias    row
	before  []row // by the tag before
	before2 []row // by the tag two before
	both    []row // by both, the tag before times len(tags) plus the one before it

	// behind is what those four add up to, in the order of both: they are the
	// longest rows, and no word is scored without them.
	behind []scores

	start, start2, empty, dash, trace, noun tag // see certain and Tag

	outerLeft, outerRight [2]seen // what stands for words before the first and behind the last
}

// tag is a place in Tagger.tags.
type tag uint8

// open is the tag of a word that needs its context.
const open = tag(255)

// row is the weights of one feature: in the lowest six bits how many there are,
// above them where they begin in Tagger.weights. An unknown feature has row 0.
//
// A weight holds its class in the lowest six bits and above them what it adds
// to the score of the class, in thousandths: every published weight is a
// multiple of 0.001, so sums are exact and do not depend on their order.
type row uint32

const (
	lowBits = 6
	lowMask = 1<<lowBits - 1
)

// word is what the model knows of a word: its tag if that is always the same,
// and its rows by where it stands: here, one or two before, one or two after,
// and here behind a certain tag.
type word struct {
	fixed                                tag
	here, before, before2, after, after2 row
	tagged, tagEnd                       int32 // those rows in Tagger.tagged
	ends                                 ends
}

type taggedRow struct {
	tag tag
	row row
}

// ends is the rows of the last three bytes of a word: here, before and after.
type ends struct{ here, before, after row }

// scores is the score of each class, in thousandths.
type scores [1 << lowBits]int32

// Knows reports whether the tagger met the word, in lower case, often enough
// in its training text to have learnt something about it.
func (t *Tagger) Knows(word string) bool {
	w := &t.known[t.words[word]]
	return w.here != 0 || w.fixed != open
}

// Word is a word as a Tagger knows it: looked up, and ready to be tagged in any
// sentence.
type Word struct {
	seen
	first row // of its first byte
	fixed tag // its tag if it needs no context, or open
}

// seen is a word as its neighbours see it.
type seen struct {
	word int32
	ends ends
	end  row // of the word as it is written
}

// Look looks a word up. Words are split as in the Penn Treebank ("do", "n't").
func (t *Tagger) Look(w string) Word {
	n := normalize(w)
	out := Word{seen: t.look(n)}
	as := out.word
	if n != w {
		as = t.words[w]
		out.end = t.ends[endOf(w)].here
	}
	if w != "" {
		out.first = t.firsts[w[0]]
	}
	out.fixed = t.certain(w, as)
	return out
}

// Tag returns one tag for each word of a sentence, from left to right. It never
// fails; an empty word is tagged as an empty string.
func (t *Tagger) Tag(words []string) []string {
	looked := make([]Word, len(words))
	for i, w := range words {
		looked[i] = t.Look(w)
	}
	return t.TagWords(looked, make([]string, 0, len(words)))
}

// TagWords appends to tags one tag for each word of a sentence, from left to
// right. The words are the Tagger's own.
func (t *Tagger) TagWords(words []Word, tags []string) []string {
	prev, prev2 := t.start, t.start2
	for i := range words {
		now := words[i].fixed
		if now == open {
			s := t.score(words, i, prev, prev2)
			now = t.best(&s)
		}
		tags = append(tags, t.tags[now])
		prev2, prev = prev, now
	}
	return tags
}

// around returns the word at place i, or what stands for one that is not there.
func (t *Tagger) around(words []Word, i int) *seen {
	switch {
	case i < 0:
		return &t.outerLeft[2+i]
	case i >= len(words):
		return &t.outerRight[i-len(words)]
	}
	return &words[i].seen
}

func (t *Tagger) look(w string) seen {
	i, ok := t.words[w]
	ends := &t.known[i].ends
	if !ok {
		unknown := t.ends[endOf(w)]
		ends = &unknown
	}
	return seen{i, *ends, ends.here}
}

// certain returns the tag of a word that needs no context, or open.
func (t *Tagger) certain(w string, as int32) tag {
	switch {
	case w == "":
		return t.empty
	case w == "-":
		return t.dash
	case w == "0" || w == "*":
		return t.trace // symbols of the treebank, which prose keeps apart
	case w[0] == '@':
		return t.noun
	}
	return t.known[as].fixed
}

// score adds up the weights of the features of the word at place i. The
// features are those the weights were trained with: the word and its ends, the
// two words on either side, and the two tags to the left.
func (t *Tagger) score(words []Word, i int, prev, prev2 tag) scores {
	s := t.behind[int(prev)*len(t.tags)+int(prev2)]
	w := &words[i]
	here := &t.known[w.word]
	t.add(&s, w.end)
	t.add(&s, w.first)
	t.add(&s, here.here)
	for _, x := range t.tagged[here.tagged:here.tagEnd] {
		if x.tag == prev {
			t.add(&s, x.row)
		}
	}
	before, after := t.around(words, i-1), t.around(words, i+1)
	t.add(&s, t.known[before.word].before)
	t.add(&s, before.ends.before)
	t.add(&s, t.known[t.around(words, i-2).word].before2)
	t.add(&s, t.known[after.word].after)
	t.add(&s, after.ends.after)
	t.add(&s, t.known[t.around(words, i+2).word].after2)
	return s
}

func (t *Tagger) add(s *scores, r row) {
	from := r >> lowBits
	for _, w := range t.weights[from : from+r&lowMask] {
		s[w&lowMask] += w >> lowBits
	}
}

// best returns the class with the highest score; of equal ones the first in
// the published order. (prose leaves ties to the order of a map.)
func (t *Tagger) best(s *scores) tag {
	top := 0
	for i, x := range s[:t.classes] {
		if x > s[top] {
			top = i
		}
	}
	return tag(top)
}

// endOf returns the last three bytes of a word as a number, and in its highest
// byte how many there are: the features were trained on bytes.
func endOf(s string) uint32 {
	s = s[max(0, len(s)-3):]
	n := uint32(len(s)) << 24
	for i := range len(s) {
		n |= uint32(s[i]) << (8 * i)
	}
	return n
}

// normalize maps a word to the form the features use for it.
func normalize(w string) string {
	switch {
	case w == "":
		return w
	case strings.Contains(w, "-") && w[0] != '-':
		return "!HYPHEN"
	case len(w) == 4 && isInt(w):
		return "!YEAR"
	case w[0] >= '0' && w[0] <= '9':
		return "!DIGITS"
	}
	return strings.ToLower(w)
}

// isInt reports whether a word is figures, perhaps behind a sign.
func isInt(w string) bool {
	if w[0] == '+' || w[0] == '-' {
		w = w[1:]
	}
	for i := range len(w) {
		if w[i] < '0' || w[i] > '9' {
			return false
		}
	}
	return true
}
