package lexicon

import (
	"bytes"
	"io"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"
)

// sheetColumns are the headings of a word list as a spreadsheet opens it, in
// the order in which they are written. They are read in any order. "from"
// tells where a row stands and is not read back.
func sheetColumns() []string {
	return []string{"sense", "word", "means", "of", "forms", "scale", "step", "from"}
}

// byteOrderMark tells spreadsheets that a file is UTF-8.
const byteOrderMark = "\ufeff"

// WriteSheet writes words as CSV (RFC 4180) that opens in any spreadsheet:
// UTF-8 with a byte order mark, lists with "; " between their entries, and no
// cell that a spreadsheet would take for a formula, a date or the like.
func (l *Lexicon) WriteSheet(out io.Writer, words []Word) error {
	var b bytes.Buffer
	b.WriteString(byteOrderMark)
	writeRow(&b, sheetColumns())
	for _, w := range words {
		step := ""
		if w.Scale != "" {
			step = strconv.Itoa(w.Step)
		}
		writeRow(&b, []string{string(w.Sense), w.Word, w.Means, listCell(w.Of), listCell(w.Forms), w.Scale, step, l.Origin(w)})
	}
	_, err := out.Write(b.Bytes())
	return err
}

func writeRow(b *bytes.Buffer, cells []string) {
	for i, c := range cells {
		if i > 0 {
			b.WriteByte(',')
		}
		if c = neutral(c); strings.ContainsAny(c, ",;\t\"\r\n") {
			c = `"` + strings.ReplaceAll(c, `"`, `""`) + `"`
		}
		b.WriteString(c)
	}
	b.WriteString("\r\n")
}

// formulaStarts are the characters by which a spreadsheet takes a cell for a
// formula, with their full-width forms (OWASP, CSV injection).
const formulaStarts = "=+-@\t\r\n＝＋－＠"

// neutral puts an apostrophe before a cell that a spreadsheet would take for
// something else than text, and before one that looks like a cell so treated, so
// that restored can tell.
func neutral(cell string) string {
	if looksLikeMore(cell) {
		return "'" + cell
	}
	return cell
}

// restored undoes neutral. A spreadsheet may have taken the apostrophe for its
// own mark and dropped it; then there is nothing to undo.
func restored(cell string) string {
	if strings.HasPrefix(cell, "'") && looksLikeMore(cell[1:]) {
		return cell[1:]
	}
	return cell
}

// looksLikeMore reports whether a spreadsheet would take a cell for a formula,
// for a date or another number than a whole one ("1/2", "007"), or for true or
// false.
func looksLikeMore(cell string) bool {
	cell = strings.TrimLeft(cell, "'")
	first, _ := utf8.DecodeRuneInString(cell)
	switch {
	case first == utf8.RuneError:
		return false
	case strings.ContainsRune(formulaStarts, first), strings.EqualFold(cell, "true"), strings.EqualFold(cell, "false"):
		return true
	case first < '0' || first > '9':
		return false
	}
	n, err := strconv.Atoi(cell)
	return err != nil || strconv.Itoa(n) != cell
}

func listCell(list []string) string {
	cells := make([]string, len(list))
	for i, s := range list {
		cells[i] = strings.NewReplacer(`\`, `\\`, `;`, `\;`).Replace(s)
	}
	return strings.Join(cells, "; ")
}

func cellList(cell string) []string {
	var out []string
	var b strings.Builder
	end := func() {
		if s := strings.TrimSpace(b.String()); s != "" {
			out = append(out, s)
		}
		b.Reset()
	}
	for i := 0; i < len(cell); i++ {
		switch {
		case cell[i] == '\\' && i+1 < len(cell) && (cell[i+1] == '\\' || cell[i+1] == ';'):
			i++
			b.WriteByte(cell[i])
		case cell[i] == ';':
			end()
		default:
			b.WriteByte(cell[i])
		}
	}
	end()
	return out
}

// Changes compares a sheet with the words of a type and returns what differs:
// rows that are new or changed, and, when the sheet is the whole list, words
// that it lacks. A column that the sheet lacks changes nothing.
func (s Sheet) Changes(d Dish, whole bool) []Change {
	present := map[wordKey]Word{}
	for _, w := range d.Words {
		present[wordKey{w.Sense, w.Word}] = w
	}
	var out []Change
	listed := map[wordKey]bool{}
	for _, row := range s.Rows {
		w := row.Word
		key := wordKey{w.Sense, w.Word}
		listed[key] = true
		old, there := present[key]
		if !s.Has("of") {
			w.Of = old.Of
		}
		if !s.Has("forms") {
			w.Forms = old.Forms
		}
		if !s.Has("scale") {
			w.Scale, w.Step = old.Scale, old.Step
		}
		if there && sameRow(w, old) {
			continue
		}
		out = append(out, Change{Word: w, Row: row.Row})
	}
	if whole {
		for _, w := range d.Words {
			if !listed[wordKey{w.Sense, w.Word}] {
				out = append(out, Change{Word: w, Remove: true})
			}
		}
	}
	return out
}

func sameRow(a, b Word) bool {
	return a.Means == b.Means && slices.Equal(a.Of, b.Of) && slices.Equal(a.Forms, b.Forms) && a.Scale == b.Scale && a.Step == b.Step
}
