package corpus

import (
	"errors"
	"io"
	"runtime"
	"strings"
	"testing"
	"testing/iotest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestLines(t *testing.T) {
	for name, c := range map[string]struct {
		in   string
		want []string // a long line with … behind its start
	}{
		"none":                        {"", nil},
		"one without an end":          {"ab", []string{"ab"}},
		"one with an end":             {"ab\n", []string{"ab"}},
		"empty ones":                  {"\n\nab\n\n", []string{"", "", "ab", ""}},
		"ends of another system":      {"ab\r\n\r\ncd\r\n", []string{"ab", "", "cd"}},
		"a return inside":             {"a\rb\r\r\n", []string{"a\rb\r"}},
		"as long as the limit":        {"12345678\r\nab", []string{"12345678", "ab"}},
		"longer than the limit":       {"123456789\nab\n", []string{"12345678…", "ab"}},
		"longer, ended by a return":   {"123456789\r\nab\n", []string{"12345678…", "ab"}},
		"longer, the last, no end":    {"ab\n123456789", []string{"ab", "12345678…"}},
		"much longer than the buffer": {strings.Repeat("x", 200<<10) + "\nab\n", []string{"xxxxxxxx…", "ab"}},
	} {
		t.Run(name, func(t *testing.T) {
			for _, in := range []io.Reader{strings.NewReader(c.in), iotest.OneByteReader(strings.NewReader(c.in)), iotest.DataErrReader(strings.NewReader(c.in))} {
				lines, ended := Lines(in, 8)
				var got []string
				for line := range lines {
					got = append(got, string(line.Data))
					if line.Long {
						got[len(got)-1] += "…"
					}
					assert.Equal(t, len(got), line.N)
				}
				require.NoError(t, ended())
				assert.Equal(t, c.want, got)
			}
		})
	}
}

func TestLinesTellsWhatEndedThem(t *testing.T) {
	pulled := errors.New("pulled")
	lines, ended := Lines(io.MultiReader(strings.NewReader("ab\ncd"), iotest.ErrReader(pulled)), 8)
	var got []string
	for line := range lines {
		got = append(got, string(line.Data))
	}
	assert.Equal(t, []string{"ab"}, got, "half a line is no line")
	assert.ErrorIs(t, ended(), pulled)
}

// TestLinesHoldsNoLongLine reads a line of 400 MB.
func TestLinesHoldsNoLongLine(t *testing.T) {
	lines, ended := Lines(io.MultiReader(io.LimitReader(endless{}, 400<<20), strings.NewReader("\nab")), 1<<20)
	var before, after runtime.MemStats
	runtime.ReadMemStats(&before)
	n := 0
	for range lines {
		n++
	}
	runtime.ReadMemStats(&after)
	require.NoError(t, ended())
	assert.Equal(t, 2, n)
	assert.Less(t, after.TotalAlloc-before.TotalAlloc, uint64(10<<20), "bytes ever allocated")
}

// endless is one line without an end.
type endless struct{}

func (endless) Read(p []byte) (int, error) {
	for i := range p {
		p[i] = 'x'
	}
	return len(p), nil
}
