//go:build unix

package main

import (
	"fmt"
	"io"
	"math/rand/v2"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"go.yaml.in/yaml/v3"

	"saywhy/analyze"
)

// madeUp returns n evaluations of about 150 words each, put together from the
// sentences of the demo course. The same n gives the same texts.
func madeUp(tb testing.TB, n int) []string {
	next := madeUpOnes(tb)
	out := make([]string, n)
	for i := range out {
		out[i] = next()
	}
	return out
}

// madeUpOnes returns what makes one such evaluation after the other.
func madeUpOnes(tb testing.TB) func() string {
	tb.Helper()
	files, err := filepath.Glob("../demo/texts/*.yaml")
	require.NoError(tb, err)
	var sentences []string
	for _, name := range files {
		data, err := os.ReadFile(name)
		require.NoError(tb, err)
		var learner struct{ Texts []struct{ Text string } }
		require.NoError(tb, yaml.Unmarshal(data, &learner))
		for _, t := range learner.Texts {
			for line := range strings.Lines(t.Text) {
				sentences = append(sentences, strings.TrimSpace(line))
			}
		}
	}
	require.Greater(tb, len(sentences), 200)
	r := rand.New(rand.NewPCG(1, 2))
	return func() string {
		var b strings.Builder
		for words := 0; words < 150; {
			s := sentences[r.IntN(len(sentences))]
			words += len(strings.Fields(s))
			b.WriteString(s + "\n")
		}
		return b.String()
	}
}

// madeUpFolder writes texts as the evaluations of forty kitchens and as many
// sessions as are needed.
func madeUpFolder(tb testing.TB, texts []string) string {
	tb.Helper()
	dir := tb.TempDir()
	for i, text := range texts {
		name := filepath.Join(dir, fmt.Sprintf("Kitchen %c%c", 'A'+i%40/20, 'a'+i%20), fmt.Sprintf("%03d lentil soup.txt", i/40+1))
		require.NoError(tb, os.MkdirAll(filepath.Dir(name), 0o700))
		require.NoError(tb, os.WriteFile(name, []byte(text), 0o600))
	}
	return dir
}

// BenchmarkGroup compares the reading alone with the report on a folder, which
// reads files, keeps notes and writes the report as JSON but asks no questions.
func BenchmarkGroup(b *testing.B) {
	texts := madeUp(b, 10000)
	dir := madeUpFolder(b, texts)
	lex, _, analyzer, err := loadCourseAnalyzer("")
	require.NoError(b, err)
	dish, err := lex.Find("lentil soup")
	require.NoError(b, err)
	compareWork(b, func() {
		for _, text := range texts {
			analyzer.Read(analyze.Input{Text: text}, analyze.Brief{Dish: dish, Questions: 3})
		}
	}, func() {
		require.NoError(b, group(b.Context(), streams{out: io.Discard}, groupOptions{dir: dir, format: "json"}))
	})
}
