package analyze

import (
	"bufio"
	"encoding/json"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// BenchmarkRead reads the open and held evaluations one after the other on one
// core, for the words a second in DEVELOPERS.md.
func BenchmarkRead(b *testing.B) {
	a, lex := shared(b)
	f, err := os.Open("../testdata/labelled/settled.jsonl")
	require.NoError(b, err)
	defer f.Close()
	var texts []Input
	var briefs []Brief
	words := 0
	lines := bufio.NewScanner(f)
	lines.Buffer(nil, 1<<20)
	for lines.Scan() {
		var t struct {
			Dish, Text, Title string
			Role              Role
		}
		require.NoError(b, json.Unmarshal(lines.Bytes(), &t))
		dish, err := lex.Find(t.Dish)
		if err != nil {
			dish = lex.General()
		}
		texts = append(texts, Input{Text: t.Text, Title: t.Title, Role: t.Role})
		briefs = append(briefs, Brief{Dish: dish})
		words += len(strings.Fields(t.Text))
	}
	require.NoError(b, lines.Err())
	require.NotEmpty(b, texts)
	for b.Loop() {
		for i := range texts {
			a.Read(texts[i], briefs[i])
		}
	}
	b.ReportMetric(float64(words)*float64(b.N)/b.Elapsed().Seconds(), "words/s")
}
