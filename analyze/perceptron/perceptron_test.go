package perceptron

import (
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"testing"

	"github.com/jdkato/prose/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func shared(tb testing.TB) *Tagger {
	tb.Helper()
	t, err := New()
	require.NoError(tb, err)
	return t
}

// proseText reads a file of prose's own test data from the module folder: the
// module's text is never copied into this project.
func proseText(tb testing.TB, name string) []byte {
	tb.Helper()
	out, err := exec.Command("go", "list", "-m", "-f", "{{.Dir}}", "github.com/jdkato/prose/v2").Output()
	require.NoError(tb, err, "finding prose's module folder")
	data, err := os.ReadFile(filepath.Join(strings.TrimSpace(string(out)), "testdata", name))
	require.NoError(tb, err)
	return data
}

// TestTagsEqualProse holds the tags against the reference implementation,
// github.com/jdkato/prose/v2 v2.0.0, on the texts of its own test data. Left
// out of the comparison: a word that stands twice in a line (there prose
// stores the last tag for both, the fault this package mends) and a word with
// a full stop inside (prose takes "180C.Then" for a web address and calls it a
// noun; our tokens are split there).
func TestTagsEqualProse(t *testing.T) {
	tagger := shared(t)
	model := prose.ModelFromData("saywhy-test")
	var lines []string
	require.NoError(t, json.Unmarshal(proseText(t, "treebank_sents.json"), &lines))
	lines = append(lines, strings.Split(string(proseText(t, "sherlock.txt")), "\n")...)
	require.Greater(t, len(lines), 1000)

	compared := 0
	for _, line := range lines[:1000] {
		doc, err := prose.NewDocument(line, prose.UsingModel(model), prose.WithSegmentation(false), prose.WithExtraction(false))
		require.NoError(t, err)
		var words []string
		count := map[string]int{}
		for _, tok := range doc.Tokens() {
			words = append(words, tok.Text)
			count[tok.Text]++
		}
		tags := tagger.Tag(words)
		for i, tok := range doc.Tokens() {
			if count[tok.Text] > 1 || strings.Contains(strings.Trim(tok.Text, "."), ".") {
				continue
			}
			compared++
			assert.Equal(t, tok.Tag, tags[i], "%q in %q", tok.Text, line)
		}
	}
	assert.Greater(t, compared, 5000)
}

// TestRepeatedWordKeepsItsTags pins the fault that made this package needed.
func TestRepeatedWordKeepsItsTags(t *testing.T) {
	tags := shared(t).Tag(strings.Fields("I like to taste the soup and the taste was salty ."))
	assert.Equal(t, "VB", tags[3], "to taste")
	assert.Equal(t, "NN", tags[8], "the taste")
}

func TestOddWords(t *testing.T) {
	tagger := shared(t)
	for _, words := range [][]string{nil, {""}, {"", "soup", ""}, {"\xff\xfe"}, {"-"}, {"é"}, {"@home"}} {
		assert.Len(t, tagger.Tag(words), len(words), "%q", words)
	}
}

func TestManyGoroutines(t *testing.T) {
	tagger := shared(t)
	words := strings.Fields("The crust was brown and I cut it with a sharp knife .")
	want := tagger.Tag(words)
	var wg sync.WaitGroup
	for range 8 {
		wg.Go(func() {
			for range 200 {
				assert.Equal(t, want, tagger.Tag(words))
			}
		})
	}
	wg.Wait()
}

func BenchmarkTag(b *testing.B) {
	tagger := shared(b)
	words := strings.Fields("The crust was deep brown because I left the loaf in the oven for ten minutes more than last week .")
	b.ReportAllocs()
	for b.Loop() {
		tagger.Tag(words)
	}
	b.ReportMetric(float64(len(words))*float64(b.N)/b.Elapsed().Seconds(), "words/s")
}

// BenchmarkProse tags the same words with prose itself, a model shared, for the
// ratio in DEVELOPERS.md.
func BenchmarkProse(b *testing.B) {
	model := prose.ModelFromData("saywhy-test")
	text := "The crust was deep brown because I left the loaf in the oven for ten minutes more than last week ."
	n := len(strings.Fields(text))
	b.ReportAllocs()
	for b.Loop() {
		if _, err := prose.NewDocument(text, prose.UsingModel(model), prose.WithSegmentation(false), prose.WithExtraction(false)); err != nil {
			b.Fatal(err)
		}
	}
	b.ReportMetric(float64(n)*float64(b.N)/b.Elapsed().Seconds(), "words/s")
}
