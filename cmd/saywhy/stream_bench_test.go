package main

import (
	"encoding/json"
	"io"
	"runtime"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"saywhy/analyze"
)

// BenchmarkStream reports how much of the throughput of the reading alone,
// times the cores, is left when lines are streamed: "of-ideal" is 1 when
// taking lines apart, keeping order and writing reports cost nothing. The two
// take turns, so that both meet the same machine.
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
	var alone, streamed time.Duration
	for b.Loop() {
		began := time.Now()
		for _, input := range inputs {
			analyzer.Read(input, brief)
		}
		alone += time.Since(began)
		began = time.Now()
		l := &lineReader{lex: lex, course: course, analyzer: analyzer, options: streamOptions{role: "learner", questions: 3}}
		require.NoError(b, l.stream(b.Context(), strings.NewReader(in), io.Discard))
		streamed += time.Since(began)
	}
	b.ReportMetric(alone.Seconds()/float64(runtime.GOMAXPROCS(0))/streamed.Seconds(), "of-ideal")
}
