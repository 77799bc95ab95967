package analyze

import (
	"bufio"
	"encoding/json"
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// BenchmarkRead reads the open and held evaluations one after the other on one
// core, for the words a second in DEVELOPERS.md.
func BenchmarkRead(b *testing.B) {
	a, _ := shared(b)
	texts, briefs, words := evaluations(b)
	b.ReportAllocs()
	for b.Loop() {
		for i := range texts {
			a.Read(texts[i], briefs[i])
		}
	}
	b.ReportMetric(float64(words)*float64(b.N)/b.Elapsed().Seconds(), "words/s")
}

// evaluations returns the labelled evaluations, open and held, their briefs and
// how many words they have by their blanks.
func evaluations(tb testing.TB) (texts []Input, briefs []Brief, words int) {
	tb.Helper()
	_, lex := shared(tb)
	f, err := os.Open("../testdata/labelled/settled.jsonl")
	require.NoError(tb, err)
	defer f.Close()
	lines := bufio.NewScanner(f)
	lines.Buffer(nil, 1<<20)
	for lines.Scan() {
		var t struct {
			Dish, Text, Title string
			Role              Role
		}
		require.NoError(tb, json.Unmarshal(lines.Bytes(), &t))
		dish, err := lex.Find(t.Dish)
		if err != nil {
			dish = lex.General()
		}
		texts = append(texts, Input{Text: t.Text, Title: t.Title, Role: t.Role})
		briefs = append(briefs, Brief{Dish: dish})
		words += len(strings.Fields(t.Text))
	}
	require.NoError(tb, lines.Err())
	require.NotEmpty(tb, texts)
	return texts, briefs, words
}

// BenchmarkReadBySize reads one text of so many words. The words a second stay
// the same: the time is in proportion to the length.
func BenchmarkReadBySize(b *testing.B) {
	a, lex := shared(b)
	texts, _, _ := evaluations(b)
	var all []string
	for _, t := range texts {
		all = append(all, strings.Fields(t.Text)...)
	}
	for _, words := range []int{50, 150, 500, 1_500, 5_000} {
		b.Run(strconv.Itoa(words), func(b *testing.B) {
			input := Input{Text: strings.Join(all[:words], " ")}
			for b.Loop() {
				a.Read(input, Brief{Dish: lex.General(), Questions: 3})
			}
			b.ReportMetric(float64(words)*float64(b.N)/b.Elapsed().Seconds(), "words/s")
		})
	}
}
