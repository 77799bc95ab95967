package lexicon

import (
	"bytes"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Sheet is a word list as it came back from a spreadsheet.
type Sheet struct {
	Rows    []SheetRow
	Columns []string // the headings it has
}

// SheetRow is one row, with what its columns hold.
type SheetRow struct {
	Row  int // as the spreadsheet counts, from 1; the headings stand in row 1
	Word Word
}

// Has reports whether the sheet has the column.
func (s Sheet) Has(column string) bool { return slices.Contains(s.Columns, column) }

// sheetReader reads a sheet and keeps every problem it meets.
type sheetReader struct {
	name     string
	problems Problems
}

func (r *sheetReader) problem(row int, format string, args ...any) {
	r.problems = append(r.problems, SheetProblem(r.name, row, fmt.Sprintf(format, args...)))
}

// SheetProblem is a problem with a row of a sheet, or with all of it for row 0.
func SheetProblem(name string, row int, text string) Problem {
	if row > 0 {
		name = fmt.Sprintf("%s row %d", name, row)
	}
	return Problem{File: name, Text: text}
}

// ReadSheet reads a word list that WriteSheet wrote and a spreadsheet may have
// saved: with commas, semicolons or tabs between the cells, with columns moved
// or taken out, with or without a byte order mark. An error is of type Problems
// and lists everything that is wrong, by row.
func ReadSheet(name string, data []byte) (Sheet, error) {
	r := &sheetReader{name: name}
	rows := r.rows(data)
	if len(r.problems) > 0 {
		return Sheet{}, r.problems
	}
	columns := r.columns(rows)
	if len(r.problems) > 0 {
		return Sheet{}, r.problems
	}
	sheet := Sheet{}
	for _, c := range columns {
		if c != "" {
			sheet.Columns = append(sheet.Columns, c)
		}
	}
	first := map[wordKey]int{}
	for i, cells := range rows[1:] {
		row := i + 2
		if blank(cells) {
			continue
		}
		w, ok := r.word(row, columns, cells, sheet)
		if !ok {
			continue
		}
		key := wordKey{w.Sense, w.Word}
		if before, twice := first[key]; twice {
			r.problem(row, "%q stands twice in %s, first in row %d; keep one of them", w.Word, w.Sense, before)
			continue
		}
		first[key] = row
		sheet.Rows = append(sheet.Rows, SheetRow{row, w})
	}
	switch {
	case len(r.problems) > 0:
		return sheet, r.problems
	case len(sheet.Rows) == 0:
		r.problem(2, "there is no word under the headings; nothing to read")
		return sheet, r.problems
	}
	return sheet, nil
}

func blank(cells []string) bool {
	for _, c := range cells {
		if strings.TrimSpace(c) != "" {
			return false
		}
	}
	return true
}

// rows splits the file into cells, with the mark between them that its
// headings are written with.
func (r *sheetReader) rows(data []byte) [][]string {
	switch {
	case bytes.HasPrefix(data, []byte("\xff\xfe")), bytes.HasPrefix(data, []byte("\xfe\xff")):
		r.problem(1, "the file is saved as UTF-16; save it again as CSV in UTF-8")
		return nil
	case bytes.HasPrefix(data, []byte("PK\x03\x04")):
		r.problem(1, "the file is a spreadsheet, not CSV; save it as CSV in UTF-8")
		return nil
	case !utf8.Valid(data):
		row := 1
		for len(data) > 0 {
			c, n := utf8.DecodeRune(data)
			if c == utf8.RuneError && n == 1 {
				break
			}
			if c == '\n' {
				row++
			}
			data = data[n:]
		}
		r.problem(row, "a letter is not UTF-8; save the file again as CSV in UTF-8")
		return nil
	}
	text := strings.TrimPrefix(string(data), byteOrderMark)
	marks := []byte{',', ';', '\t'}
	if rest, ok := strings.CutPrefix(text, "sep="); ok && len(rest) > 0 {
		// A first line by which some spreadsheets name their mark.
		marks = []byte{rest[0]}
		text = strings.TrimLeft(rest[1:], "\r")
		text = strings.TrimPrefix(text, "\n")
	}
	best, known := []([]string)(nil), -1
	for _, mark := range marks {
		rows, problem, row := splitCells(text, mark)
		n := 0
		if len(rows) > 0 {
			for _, c := range rows[0] {
				if slices.Contains(sheetColumns(), heading(c)) {
					n++
				}
			}
		}
		if n <= known {
			continue
		}
		best, known = rows, n
		r.problems = nil
		if problem != "" {
			r.problem(row, "%s", problem)
		}
	}
	return best
}

// splitCells reads CSV by RFC 4180 with the given mark. A row may end in any
// manner, and blank rows count, so that rows have the numbers that the
// spreadsheet shows. It says what is wrong and in which row, or "".
func splitCells(text string, mark byte) (rows [][]string, problem string, row int) {
	var cells []string
	var cell strings.Builder
	endCell := func() { cells = append(cells, cell.String()); cell.Reset() }
	endRow := func() { endCell(); rows = append(rows, cells); cells = nil }
	for i := 0; i < len(text); {
		if text[i] == '"' && cell.Len() == 0 {
			i++
			for {
				n := strings.IndexByte(text[i:], '"')
				if n < 0 {
					return append(rows, cells), "a quotation mark opens here and is never closed; close it or take it out", len(rows) + 1
				}
				cell.WriteString(text[i : i+n])
				i += n + 1
				if i < len(text) && text[i] == '"' {
					cell.WriteByte('"')
					i++
					continue
				}
				break
			}
			if i < len(text) && text[i] != mark && text[i] != '\n' && text[i] != '\r' {
				return append(rows, cells), "something stands behind a closing quotation mark; a mark inside a cell is written twice", len(rows) + 1
			}
			if i == len(text) {
				endRow()
				return rows, "", 0
			}
			continue
		}
		switch c := text[i]; c {
		case mark:
			endCell()
			if i+1 == len(text) {
				endRow()
			}
		case '\n':
			endRow()
		case '\r':
			if i+1 < len(text) && text[i+1] == '\n' {
				i++
			}
			endRow()
		default:
			cell.WriteByte(c)
			if i+1 == len(text) {
				endRow()
			}
		}
		i++
	}
	return rows, "", 0
}

func heading(cell string) string { return strings.ToLower(strings.TrimSpace(cell)) }

// columns reads the headings. A column without heading and cells is passed over.
func (r *sheetReader) columns(rows [][]string) []string {
	if len(rows) == 0 {
		r.problem(1, "the file is empty; its first row should be %s", strings.Join(sheetColumns(), ", "))
		return nil
	}
	var out []string
	known := 0
	for _, c := range rows[0] {
		out = append(out, heading(c))
		if slices.Contains(sheetColumns(), heading(c)) {
			known++
		}
	}
	if known == 0 {
		r.problem(1, "there are no headings; let the first row be %s", strings.Join(sheetColumns(), ", "))
		return nil
	}
	for i, c := range out {
		switch {
		case c == "":
		case !slices.Contains(sheetColumns(), c):
			mend := "take the column out, or use one of: " + strings.Join(sheetColumns(), ", ")
			if near := Nearest(c, sheetColumns(), 1); len(near) > 0 {
				mend = fmt.Sprintf("did you mean %q?", near[0])
			}
			r.problem(1, "no column is called %q; %s", c, mend)
		case slices.Index(out, c) < i:
			r.problem(1, "two columns are called %q; keep one of them", c)
		}
	}
	for _, need := range []string{"sense", "word", "means"} {
		if !slices.Contains(out, need) {
			r.problem(1, "the column %q is missing; put it back", need)
		}
	}
	if slices.Contains(out, "scale") != slices.Contains(out, "step") {
		r.problem(1, "the columns scale and step belong together; put the missing one back, or take both out")
	}
	return out
}

// word reads one row.
func (r *sheetReader) word(row int, columns, cells []string, sheet Sheet) (Word, bool) {
	before := len(r.problems)
	var w Word
	step := ""
	for i, c := range cells {
		c = strings.TrimSpace(restored(c))
		if i >= len(columns) || columns[i] == "" {
			if c != "" {
				r.problem(row, "%q stands under no heading; has a cell been split in two, or moved?", short(c))
				return w, false
			}
			continue
		}
		switch columns[i] {
		case "sense":
			w.Sense = Sense(strings.ToLower(c))
		case "word":
			w.Word = strings.ToLower(c)
		case "means":
			w.Means = c
		case "of":
			w.Of = cellList(c)
		case "forms":
			w.Forms = cellList(c)
		case "scale":
			w.Scale = c
		case "step":
			step = c
		}
	}
	r.checkWord(row, w)
	w.Step = r.step(row, w, step)
	return w, len(r.problems) == before
}

func (r *sheetReader) checkWord(row int, w Word) {
	what := strconv.Quote(w.Word)
	switch {
	case w.Word == "":
		what = "this word"
		r.problem(row, "the cell under word is empty; write the word, or empty the row")
	case strings.ContainsAny(w.Word, "\r\n\t"):
		r.problem(row, "%q has a line break in it; write the word on one line", short(w.Word))
	case !strings.ContainsFunc(w.Word, unicode.IsLetter):
		r.problem(row, "%q has no letters; write the word as it is said", w.Word)
	}
	switch {
	case w.Sense == "":
		r.problem(row, "%s has no sense; write appearance, aroma, taste or texture", what)
	case !w.Sense.Known():
		r.problem(row, "there is no sense %q; write appearance, aroma, taste or texture", string(w.Sense))
	}
	switch n := len(strings.Fields(w.Means)); {
	case n == 0:
		r.problem(row, "%s has no meaning; write it under means in at most %d short words", what, MaxMeaning)
	case n > MaxMeaning:
		r.problem(row, "the meaning of %s has %d words; shorten it to %d or fewer", what, n, MaxMeaning)
	}
}

// maxStep is the highest step of a scale.
const maxStep = 20

func (r *sheetReader) step(row int, w Word, step string) int {
	switch {
	case w.Scale == "" && step == "":
		return 0
	case w.Scale == "":
		r.problem(row, "%q has a step and no scale; fill in the scale or empty the step", w.Word)
		return 0
	case step == "":
		r.problem(row, "%q has a scale and no step; fill in the step, from 1 up, or empty the scale", w.Word)
		return 0
	}
	n, err := strconv.Atoi(step)
	if err != nil || n < 1 || n > maxStep {
		r.problem(row, "the step of %q is %q; write a whole number from 1 to %d", w.Word, step, maxStep)
		return 0
	}
	return n
}

// short cuts a long cell for an error.
func short(s string) string {
	s = strings.Join(strings.Fields(s), " ")
	if r := []rune(s); len(r) > 30 {
		return string(r[:30]) + "…"
	}
	return s
}
