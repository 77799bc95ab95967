//go:build unix

package analyze

import (
	"syscall"
	"testing"
	"time"

	"github.com/jdkato/prose/v2"
	"github.com/stretchr/testify/require"
)

// BenchmarkBeside reads the labelled evaluations with saywhy and with prose, in
// one run and on one core each. The figures are words a second of processor
// time in the fastest round over all texts: what else the machine does only
// slows a round down. testdata/bench/compare.sh sets other libraries beside
// them and prints the ratios.
func BenchmarkBeside(b *testing.B) {
	a, _ := shared(b)
	texts, briefs, words := evaluations(b)
	b.Run("saywhy", func(b *testing.B) {
		fastest(b, words, func() {
			for i := range texts {
				a.Read(texts[i], briefs[i])
			}
		})
	})
	// The model is shared, which NewDocument does not do of itself: without, it
	// decodes 29 MB for each text and is some nine times slower.
	model := prose.ModelFromData("saywhy-bench")
	for name, options := range map[string][]prose.DocOpt{
		"prose":         {prose.UsingModel(model)},
		"prose-tagging": {prose.UsingModel(model), prose.WithSegmentation(false), prose.WithExtraction(false)},
	} {
		b.Run(name, func(b *testing.B) {
			fastest(b, words, func() {
				for i := range texts {
					_, err := prose.NewDocument(texts[i].Text, options...)
					require.NoError(b, err)
				}
			})
		})
	}
}

func fastest(b *testing.B, words int, round func()) {
	round()
	best := time.Duration(1<<63 - 1)
	for b.Loop() {
		before := processorTime(b)
		round()
		best = min(best, processorTime(b)-before)
	}
	b.ReportMetric(float64(words)/best.Seconds(), "best-words/s")
}

func processorTime(tb testing.TB) time.Duration {
	var used syscall.Rusage
	require.NoError(tb, syscall.Getrusage(syscall.RUSAGE_SELF, &used))
	return time.Duration(used.Utime.Nano() + used.Stime.Nano())
}
