//go:build linux

package main

import (
	"bufio"
	"encoding/json"
	"fmt"
	"io"
	"os/exec"
	"syscall"
	"testing"

	"github.com/stretchr/testify/require"
)

// BenchmarkStart runs the built tool on one evaluation, from nothing to the end
// of the process.
func BenchmarkStart(b *testing.B) {
	bin, text := builtSayWhy(b), file(b, "x.txt", evaluation)
	for b.Loop() {
		out, err := exec.Command(bin, "read", text).CombinedOutput()
		require.NoError(b, err, "%s", out)
	}
}

// BenchmarkLong runs the built tool on many evaluations of 150 words and
// reports the time and the processor time of a thousand, and the most memory
// that the process had: the first two stay the same however many there are,
// and for stream the last does too. The longest takes some minutes.
//
//	go test ./cmd/saywhy -run '^$' -bench Long -benchtime 1x -timeout 1h
func BenchmarkLong(b *testing.B) {
	bin := builtSayWhy(b)
	report := func(b *testing.B, c *exec.Cmd, texts int) {
		used, ok := c.ProcessState.SysUsage().(*syscall.Rusage)
		require.True(b, ok)
		thousands := float64(texts) / 1000
		b.ReportMetric(b.Elapsed().Seconds()/float64(b.N)/thousands, "s/1000")
		b.ReportMetric((c.ProcessState.UserTime()+c.ProcessState.SystemTime()).Seconds()/thousands, "cpu-s/1000")
		b.ReportMetric(float64(used.Maxrss)/1000, "peak-MB") // in kilobytes: getrusage(2) of Linux
		b.ReportMetric(0, "ns/op")
	}
	for _, lines := range []int{1_000, 10_000, 100_000} {
		b.Run(fmt.Sprintf("stream/%d", lines), func(b *testing.B) {
			var c *exec.Cmd
			for b.Loop() {
				c = exec.Command(bin, "stream", "--dish", "lentil soup")
				in, err := c.StdinPipe()
				require.NoError(b, err)
				out, err := c.StdoutPipe()
				require.NoError(b, err)
				require.NoError(b, c.Start())
				next := madeUpOnes(b)
				go func() {
					defer in.Close()
					w := bufio.NewWriter(in)
					defer w.Flush()
					e := json.NewEncoder(w)
					for i := range lines {
						_ = e.Encode(map[string]any{"id": i, "text": next()}) // what does not arrive is missing from the count
					}
				}()
				answers := 0
				for r := bufio.NewReaderSize(out, 1<<20); ; {
					_, err := r.ReadSlice('\n')
					if err == io.EOF {
						break
					}
					if err != bufio.ErrBufferFull {
						require.NoError(b, err)
						answers++
					}
				}
				require.NoError(b, c.Wait())
				require.Equal(b, lines, answers)
			}
			report(b, c, lines)
		})
	}
	for _, texts := range []int{1_000, 10_000} {
		dir := madeUpFolder(b, madeUp(b, texts))
		b.Run(fmt.Sprintf("group/%d", texts), func(b *testing.B) {
			var c *exec.Cmd
			for b.Loop() {
				c = exec.Command(bin, "group", dir, "--format", "html")
				require.NoError(b, c.Run())
			}
			report(b, c, texts)
		})
	}
}
