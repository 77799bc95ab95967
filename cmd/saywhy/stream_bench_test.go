//go:build unix

package main

import (
	"encoding/json"
	"io"
	"runtime"
	"strings"
	"syscall"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"saywhy/analyze"
	"saywhy/corpus"
)

// BenchmarkStream compares the reading alone with the streaming of lines: see
// compareWork.
func BenchmarkStream(b *testing.B) {
	lines := labelledLines(b)
	in := strings.Join(lines, "")
	lex, course, analyzer, err := loadCourseAnalyzer("")
	require.NoError(b, err)
	var inputs []analyze.Input
	for _, line := range lines {
		var input analyze.Input
		require.NoError(b, json.Unmarshal([]byte(line), &input)) // the names are the same but for case
		inputs = append(inputs, input)
	}
	brief := analyze.Brief{Dish: lex.General(), Questions: 3}
	compareWork(b, func() {
		for _, input := range inputs {
			analyzer.Read(input, brief)
		}
	}, func() {
		l := &lineReader{dishes: corpus.NewDishes(lex, course), analyzer: analyzer, options: streamOptions{role: "learner", questions: 3}}
		require.NoError(b, l.stream(b.Context(), strings.NewReader(in), io.Discard))
	})
}

// compareWork runs one thing on one core, where its garbage is collected too, and
// then what does the same and more on all, in turns, so that both meet the same
// machine. "of-cpu" is how much of the
// processor time of the second the first takes: 1 when what it does more costs
// nothing. "of-ideal" is the throughput of the second as a share of the first's
// times the cores; it means something only while nobody else uses them.
func compareWork(b *testing.B, alone, all func()) {
	b.Helper()
	cores := runtime.GOMAXPROCS(0)
	var took, used [2]time.Duration
	for b.Loop() {
		for i, work := range []func(){alone, all} {
			if i == 0 {
				runtime.GOMAXPROCS(1)
			}
			began, before := time.Now(), processorTime(b)
			work()
			runtime.GOMAXPROCS(cores)
			took[i] += time.Since(began)
			used[i] += processorTime(b) - before
		}
	}
	b.ReportMetric(used[0].Seconds()/used[1].Seconds(), "of-cpu")
	b.ReportMetric(took[0].Seconds()/float64(cores)/took[1].Seconds(), "of-ideal")
}

// processorTime is what the process has used so far, of the system's too.
func processorTime(b *testing.B) time.Duration {
	b.Helper()
	var u syscall.Rusage
	require.NoError(b, syscall.Getrusage(syscall.RUSAGE_SELF, &u))
	return time.Duration(u.Utime.Nano() + u.Stime.Nano())
}
