// Package perceptron tags English words with their parts of speech, with the
// Penn Treebank tag set.
//
// It runs the averaged perceptron that github.com/jdkato/prose/v2 trained and
// publishes, over prose's own weights, and gives the tags that prose computes.
// It exists because prose offers no way to hand it tokens: its tokenizer
// loses byte offsets, lets every repetition of a word in a text share one tag,
// and cannot see "dont" or "i". The tests hold this package against prose.
package perceptron

import (
	"bytes"
	"encoding/gob"
	"fmt"
	"math"
	"strconv"
	"strings"

	"github.com/jdkato/prose/v2"
)

// Tagger assigns tags to the words of one sentence. It is built once, is never
// changed afterwards, and is safe for use by many goroutines.
type Tagger struct {
	classes []string
	fixed   map[string]string // words that are always tagged alike
	weights map[string][]weight
}

// weight is what one feature adds to the score of one class, in thousandths:
// every published weight is a multiple of 0.001, so sums are exact and do not
// depend on their order.
type weight struct {
	class int32
	milli int32
}

// New decodes the weights that prose carries. It costs about a fifth of a
// second, so share the result. An error means that the prose module in use
// holds other data than the version this package was written for.
func New() (*Tagger, error) {
	t := &Tagger{}
	if err := decode("classes", &t.classes); err != nil {
		return nil, err
	}
	if err := decode("tags", &t.fixed); err != nil {
		return nil, err
	}
	var raw map[string]map[string]float64
	if err := decode("weights", &raw); err != nil {
		return nil, err
	}
	index := make(map[string]int32, len(t.classes))
	for i, c := range t.classes {
		index[c] = int32(i)
	}
	t.weights = make(map[string][]weight, len(raw))
	for feature, byClass := range raw {
		ws := make([]weight, 0, len(byClass))
		for class, w := range byClass {
			i, ok := index[class]
			if !ok {
				i = int32(len(t.classes))
				index[class] = i
				t.classes = append(t.classes, class)
			}
			ws = append(ws, weight{class: i, milli: int32(math.Round(w * 1000))})
		}
		t.weights[feature] = ws
	}
	return t, nil
}

func decode(name string, into any) error {
	path := "model/AveragedPerceptron/" + name + ".gob"
	data, err := prose.Asset(path)
	if err != nil {
		return fmt.Errorf("perceptron: prose has no %s: %w", path, err)
	}
	if err := gob.NewDecoder(bytes.NewReader(data)).Decode(into); err != nil {
		return fmt.Errorf("perceptron: reading prose's %s: %w", path, err)
	}
	return nil
}

// Knows reports whether the tagger met the word, in lower case, often enough
// in its training text to have learnt something about it.
func (t *Tagger) Knows(word string) bool {
	_, ok := t.weights["i word "+word]
	if !ok {
		_, ok = t.fixed[word]
	}
	return ok
}

// Tag returns one tag for each word of a sentence, from left to right. Words
// are split as in the Penn Treebank ("do", "n't"). It never fails; an empty
// word is tagged as an empty string.
func (t *Tagger) Tag(words []string) []string {
	context := make([]string, 0, len(words)+4)
	context = append(context, "-START-", "-START2-")
	for _, w := range words {
		context = append(context, normalize(w))
	}
	context = append(context, "-END-", "-END2-")

	tags := make([]string, len(words))
	scores := make([]int32, len(t.classes))
	key := make([]byte, 0, 64)
	prev, prev2 := "-START-", "-START2-"
	for i, w := range words {
		tag, ok := t.certain(w)
		if !ok {
			clear(scores)
			key = t.score(scores, key, context, i+2, w, prev, prev2)
			tag = t.best(scores)
		}
		tags[i] = tag
		prev2, prev = prev, tag
	}
	return tags
}

// certain returns the tag of a word that needs no context.
func (t *Tagger) certain(w string) (string, bool) {
	switch {
	case w == "":
		return "", true
	case w == "-":
		return "-", true
	case w == "0" || w == "*":
		// Trace symbols of the treebank, which prose keeps apart.
		return "-NONE-", true
	case strings.HasPrefix(w, "@"):
		return "NN", true
	}
	tag, ok := t.fixed[w]
	return tag, ok
}

// score adds up the weights of the features of the word at context[c]. The
// features are those the weights were trained with: the word and its ends, the
// two words on either side, and the two tags to the left.
func (t *Tagger) score(scores []int32, key []byte, context []string, c int, w, prev, prev2 string) []byte {
	add := func(parts ...string) {
		key = key[:0]
		for _, p := range parts {
			key = append(key, p...)
		}
		for _, x := range t.weights[string(key)] {
			scores[x.class] += x.milli
		}
	}
	before, after := context[c-1], context[c+1]
	add("bias")
	add("i suffix ", suffix(w))
	add("i pref1 ", string(rune(w[0])))
	add("i-1 tag ", prev)
	add("i-2 tag ", prev2)
	add("i tag+i-2 tag ", prev, " ", prev2)
	add("i word ", context[c])
	add("i-1 tag+i word ", prev, " ", context[c])
	add("i-1 word ", before)
	add("i-1 suffix ", suffix(before))
	add("i-2 word ", context[c-2])
	add("i+1 word ", after)
	add("i+1 suffix ", suffix(after))
	add("i+2 word ", context[c+2])
	return key
}

// best returns the class with the highest score; of equal ones the first in
// the published order. (prose leaves ties to the order of a map.)
func (t *Tagger) best(scores []int32) string {
	top := 0
	for i, s := range scores {
		if s > scores[top] {
			top = i
		}
	}
	return t.classes[top]
}

// suffix returns the last three bytes: the features were trained on bytes.
func suffix(s string) string { return s[max(0, len(s)-3):] }

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

func isInt(s string) bool {
	_, err := strconv.Atoi(s)
	return err == nil
}
