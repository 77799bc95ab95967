package perceptron

import (
	"bytes"
	"encoding/binary"
	"encoding/gob"
	"flag"
	"maps"
	"math"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/jdkato/prose/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

var update = flag.Bool("update", false, "write weights.bin from prose's data")

// published is the model as prose publishes it.
type published struct {
	classes []string
	fixed   map[string]string
	weights map[string]map[string]float64
}

func publishedModel(tb testing.TB) published {
	tb.Helper()
	var m published
	for name, into := range map[string]any{"classes": &m.classes, "tags": &m.fixed, "weights": &m.weights} {
		data, err := prose.Asset("model/AveragedPerceptron/" + name + ".gob")
		require.NoError(tb, err)
		require.NoError(tb, gob.NewDecoder(bytes.NewReader(data)).Decode(into), name)
	}
	return m
}

// TestWeightsArePublished writes the file of weights from prose's own data
// (github.com/jdkato/prose/v2 v2.0.0) and holds the embedded one to it. With
// -update the file is written.
func TestWeightsArePublished(t *testing.T) {
	want := encodeModel(t, publishedModel(t))
	if *update {
		require.NoError(t, os.WriteFile("weights.bin", want, 0o644))
		return
	}
	require.True(t, string(want) == weightsFile, "weights.bin does not hold what prose publishes; run: go test ./analyze/perceptron -run Weights -update")
}

// TestEveryWeight asks the tagger for the row of every feature that prose
// publishes, by the feature's own name, and counts that there are no others.
func TestEveryWeight(t *testing.T) {
	tagger, model := shared(t), publishedModel(t)
	rows, weights := 0, 0
	for feature, byClass := range model.weights {
		r := rowOf(t, tagger, feature)
		require.NotZero(t, r, "%q", feature)
		got := map[string]float64{}
		for _, w := range tagger.weights[r>>lowBits : r>>lowBits+r&lowMask] {
			got[tagger.tags[w&lowMask]] = float64(w>>lowBits) / 1000
		}
		require.Equal(t, byClass, got, "%q", feature)
		rows++
		weights += len(got)
	}
	assert.Equal(t, 75_447, rows)
	assert.Len(t, tagger.weights, weights+1)
	assert.Equal(t, rows, countRows(tagger))
	for word, tag := range model.fixed {
		require.Equal(t, tag, tagger.tags[tagger.known[tagger.words[word]].fixed], "%q", word)
	}
	assert.Equal(t, model.classes, tagger.tags[:tagger.classes])
}

// rowOf finds the row of a feature by its name in prose's model.
func rowOf(tb testing.TB, t *Tagger, feature string) row {
	tb.Helper()
	tagID := func(name string) tag {
		i := slices.Index(t.tags, name)
		require.GreaterOrEqual(tb, i, 0, "tag %q", name)
		return tag(i)
	}
	if feature == "bias" {
		return t.bias
	}
	kind, rest := cutFeature(tb, feature)
	w, end := t.known[t.words[rest]], t.ends[endOf(rest)]
	switch kind {
	case "i pref1 ":
		return t.firsts[byte([]rune(rest)[0])]
	case "i suffix ":
		return end.here
	case "i-1 suffix ":
		return end.before
	case "i+1 suffix ":
		return end.after
	case "i word ":
		return w.here
	case "i-1 word ":
		return w.before
	case "i-2 word ":
		return w.before2
	case "i+1 word ":
		return w.after
	case "i+2 word ":
		return w.after2
	case "i-1 tag ":
		return t.before[tagID(rest)]
	case "i-2 tag ":
		return t.before2[tagID(rest)]
	}
	prev, rest, _ := strings.Cut(rest, " ")
	if kind == "i tag+i-2 tag " {
		return t.both[int(tagID(prev))*len(t.tags)+int(tagID(rest))]
	}
	w = t.known[t.words[rest]]
	for _, x := range t.tagged[w.tagged:w.tagEnd] {
		if x.tag == tagID(prev) {
			return x.row
		}
	}
	return 0
}

func countRows(t *Tagger) int {
	n := 0
	count := func(rows ...row) {
		for _, r := range rows {
			if r != 0 {
				n++
			}
		}
	}
	count(t.bias)
	count(t.firsts[:]...)
	count(t.before...)
	count(t.before2...)
	count(t.both...)
	for _, e := range t.ends {
		count(e.here, e.before, e.after)
	}
	for _, w := range t.known {
		count(w.here, w.before, w.before2, w.after, w.after2)
	}
	for _, x := range t.tagged {
		count(x.row)
	}
	return n
}

// features lists the kinds of feature of prose's model with one thing each.
func features() []string {
	return []string{
		"i suffix ", "i pref1 ", "i-1 tag ", "i-2 tag ", "i tag+i-2 tag ", "i word ", "i-1 tag+i word ",
		"i-1 word ", "i-1 suffix ", "i-2 word ", "i+1 word ", "i+1 suffix ", "i+2 word ",
	}
}

func cutFeature(tb testing.TB, feature string) (kind, rest string) {
	tb.Helper()
	for _, kind := range features() {
		if rest, ok := strings.CutPrefix(feature, kind); ok {
			return kind, rest
		}
	}
	require.Fail(tb, "a feature of a kind that the format has no place for", "%q", feature)
	return "", ""
}

// encodeModel writes the file of weights as weights.go describes it.
func encodeModel(tb testing.TB, m published) []byte {
	tb.Helper()
	tags := slices.Clone(m.classes)
	tagID := func(name string) int {
		if i := slices.Index(tags, name); i >= 0 {
			return i
		}
		tags = append(tags, name)
		return len(tags) - 1
	}
	words, ends, firsts := map[string]map[string]string{}, map[string]map[string]string{}, map[string]string{}
	before, before2, both := map[string]string{}, map[string]string{}, map[string]string{}
	behind := map[string]map[string]string{}
	put := func(in map[string]map[string]string, name, kind, feature string) {
		if in[name] == nil {
			in[name] = map[string]string{}
		}
		in[name][kind] = feature
	}
	for feature := range m.weights {
		if feature == "bias" {
			continue
		}
		kind, rest := cutFeature(tb, feature)
		switch kind {
		case "i pref1 ":
			firsts[rest] = feature
		case "i suffix ", "i-1 suffix ", "i+1 suffix ":
			require.LessOrEqual(tb, len(rest), 3, "%q", feature)
			put(ends, rest, kind, feature)
		case "i-1 tag ":
			before[rest] = feature
		case "i-2 tag ":
			before2[rest] = feature
		case "i tag+i-2 tag ":
			both[rest] = feature
		case "i-1 tag+i word ":
			prev, word, _ := strings.Cut(rest, " ")
			put(behind, word, prev, feature)
			put(words, word, kind, feature)
		default:
			put(words, rest, kind, feature)
		}
	}
	for word := range m.fixed {
		put(words, word, "fixed", "")
	}
	for _, name := range slices.Sorted(maps.Keys(before2)) {
		tagID(name)
	}
	for _, name := range slices.Sorted(maps.Values(m.fixed)) {
		tagID(name)
	}
	for _, name := range []string{"-START-", "-START2-", "", "-", "-NONE-", "NN"} {
		tagID(name)
	}

	var out []byte
	number := func(n int) { out = binary.AppendUvarint(out, uint64(n)) }
	text := func(s string) { number(len(s)); out = append(out, s...) }
	row := func(feature string) {
		byClass, ok := m.weights[feature]
		if !ok {
			number(0)
			return
		}
		number(len(byClass) + 1)
		for _, class := range slices.Sorted(maps.Keys(byClass)) {
			id := slices.Index(m.classes, class)
			require.GreaterOrEqual(tb, id, 0, "class %q", class)
			number(id)
			milli := math.Round(byClass[class] * 1000)
			require.InDelta(tb, byClass[class]*1000, milli, 1e-6, "%q is no multiple of 0.001", feature)
			out = binary.AppendVarint(out, int64(milli))
		}
	}
	number(len(tags))
	for _, name := range tags {
		text(name)
	}
	number(len(m.classes))
	row("bias")
	number(len(firsts))
	for _, first := range slices.Sorted(maps.Keys(firsts)) {
		r := []rune(first)
		require.True(tb, len(r) == 1 && r[0] < 256, "%q", first)
		number(int(r[0]))
		row(firsts[first])
	}
	for _, name := range tags {
		row("i-1 tag " + name)
		row("i-2 tag " + name)
	}
	number(len(both))
	for _, pair := range slices.Sorted(maps.Keys(both)) {
		prev, prev2, _ := strings.Cut(pair, " ")
		number(tagID(prev))
		number(tagID(prev2))
		row(both[pair])
	}
	number(len(ends))
	for _, end := range slices.Sorted(maps.Keys(ends)) {
		text(end)
		row("i suffix " + end)
		row("i-1 suffix " + end)
		row("i+1 suffix " + end)
	}
	number(len(words))
	for _, word := range slices.Sorted(maps.Keys(words)) {
		text(word)
		if fixed, ok := m.fixed[word]; ok {
			number(tagID(fixed) + 1)
		} else {
			number(0)
		}
		for _, kind := range []string{"i word ", "i-1 word ", "i-2 word ", "i+1 word ", "i+2 word "} {
			row(kind + word)
		}
		number(len(behind[word]))
		for _, prev := range slices.Sorted(maps.Keys(behind[word])) {
			number(tagID(prev))
			row(behind[word][prev])
		}
	}
	require.Equal(tb, out[0], byte(len(tags)), "all tags were known before the first was written")
	return out
}

// TestDamagedWeights cuts and changes the file: it is refused or read, and
// nothing else happens.
func TestDamagedWeights(t *testing.T) {
	for _, n := range []int{0, 1, 100, 5_000, len(weightsFile) / 2, len(weightsFile) - 1} {
		_, err := parse(weightsFile[:n])
		assert.ErrorContains(t, err, "damaged", "the first %d bytes", n)
	}
	_, err := parse(weightsFile + "x")
	assert.ErrorContains(t, err, "damaged", "a byte too many")
	for _, at := range []int{0, 1, 50, 300, 5_000, 90_000, len(weightsFile) / 2} {
		data := []byte(weightsFile)
		for _, b := range []byte{0x00, 0x7f, 0xff} {
			data[at] = b
			if tagger, err := parse(string(data)); err == nil {
				tagger.Tag(strings.Fields("The crust was brown ."))
			}
		}
	}
}
