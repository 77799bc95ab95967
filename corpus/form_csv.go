package corpus

import (
	"bufio"
	"encoding/csv"
	"errors"
	"io"
	"io/fs"
	"iter"
	"strings"
	"unicode/utf8"

	"golang.org/x/text/encoding/charmap"
	"golang.org/x/text/encoding/unicode"
	"golang.org/x/text/transform"
)

// maxRow is the longest row of a table, in bytes. A quotation mark that is
// never closed would else take in the rest of the file.
const maxRow = 4 << 20

// readCSV reads a table with commas, semicolons or tabs between its cells (RFC
// 4180 but for these marks), in UTF-8, in UTF-16 with a byte order mark, or in
// Windows-1252. Rows are read one at a time.
func (r *folderReader) readCSV(name string, f fs.File, send func(found) bool) {
	in := bufio.NewReaderSize(transform.NewReader(f, unicode.BOMOverride(transform.Nop)), 64<<10)
	head, _ := in.Peek(4 << 10) // what there is of a shorter file
	if strings.ContainsRune(string(head), 0) || strings.HasPrefix(string(head), "PK\x03\x04") {
		send(found{Unplaced: unplaced("is no table as text, whatever its name says; save it as .csv again")})
		return
	}
	limited := &rowLimit{in: in}
	c := csv.NewReader(limited)
	c.Comma = separator(string(head))
	c.FieldsPerRecord = -1
	r.readForm(name, sheet{rows: csvRows(c, limited), date: parseDate}, send)
}

// csvRows yields the rows of a table.
func csvRows(c *csv.Reader, limited *rowLimit) iter.Seq2[[]string, error] {
	return func(yield func([]string, error) bool) {
		for {
			limited.taken = 0
			cells, err := c.Read()
			var wrong *csv.ParseError
			switch {
			case errors.Is(err, io.EOF):
				return
			case errors.As(err, &wrong):
				if !yield(nil, unplaced("has a quotation mark that does not fit, from line %d of the file; double every mark inside a cell and put one round it", wrong.StartLine)) {
					return
				}
				continue
			case err != nil:
				yield(nil, asUnplaced(err))
				return
			}
			for i := range cells {
				if !utf8.ValidString(cells[i]) {
					// Every byte has a letter, or is left out as unknown.
					cells[i], _ = charmap.Windows1252.NewDecoder().String(cells[i])
				}
			}
			if !yield(cells, nil) {
				return
			}
		}
	}
}

// separator tells what stands between the cells, from the first line.
func separator(head string) rune {
	counts := map[rune]int{}
	quoted := false
	for _, r := range head {
		switch {
		case r == '"':
			quoted = !quoted
		case quoted:
		case r == '\n':
			return mostOf(counts)
		default:
			counts[r]++
		}
	}
	return mostOf(counts)
}

func mostOf(counts map[rune]int) rune {
	best := ','
	for _, r := range []rune{';', '\t'} {
		if counts[r] > counts[best] {
			best = r
		}
	}
	return best
}

// rowLimit ends a file in which one row takes too much.
type rowLimit struct {
	in    io.Reader
	taken int
}

func (l *rowLimit) Read(p []byte) (int, error) {
	if l.taken > maxRow {
		return 0, unplaced("is longer than %d MB, and with it the rest of the file is not read; look for a quotation mark that is never closed", maxRow>>20)
	}
	n, err := l.in.Read(p)
	l.taken += n
	return n, err
}
