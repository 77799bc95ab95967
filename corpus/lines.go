package corpus

import (
	"bufio"
	"bytes"
	"errors"
	"io"
	"iter"
)

// Line is one line of a stream, without its end.
type Line struct {
	N    int    // from 1
	Data []byte // at most the limit; of a longer line its start
	Long bool   // the line was longer than the limit
}

// Lines returns the lines of a stream one after the other; "\n" and "\r\n" end
// them, and the last needs no end. Of a line longer than limit bytes only the
// start is held, and the rest is read past. Each line has bytes of its own. The
// function returned last tells, once the sequence is over, what ended it; the
// end of the stream is no error.
func Lines(in io.Reader, limit int) (iter.Seq[Line], func() error) {
	var failed error
	lines := func(yield func(Line) bool) {
		r := bufio.NewReaderSize(in, 64<<10)
		for n := 1; ; n++ {
			line, err := nextLine(r, limit)
			line.N = n
			if err != nil && !errors.Is(err, io.EOF) {
				failed = err // what was read of the line is not the line
				return
			}
			if err != nil && len(line.Data) == 0 {
				return
			}
			if !yield(line) || err != nil {
				return
			}
		}
	}
	return lines, func() error { return failed }
}

// nextLine reads up to the end of a line. With an error it returns what stood
// before it.
func nextLine(r *bufio.Reader, limit int) (Line, error) {
	var line Line
	for {
		part, err := r.ReadSlice('\n')
		ended := err == nil
		if ended {
			part = part[:len(part)-1]
		}
		if room := limit + 1 - len(line.Data); len(part) > room { // one more for a "\r"
			line.Long = true
			part = part[:room]
		}
		line.Data = append(line.Data, part...)
		if errors.Is(err, bufio.ErrBufferFull) {
			continue
		}
		if ended && !line.Long {
			line.Data = bytes.TrimSuffix(line.Data, []byte("\r"))
		}
		if len(line.Data) > limit {
			line.Long = true
			line.Data = line.Data[:limit]
		}
		return line, err
	}
}
