package corpus

import (
	"fmt"
	"iter"
	"path"
	"slices"
	"strings"
	"time"

	"saywhy/analyze"
)

// sheet is a table of a form's answers.
type sheet struct {
	name string // of the sheet in a workbook that has several, or ""
	rows iter.Seq2[[]string, error]
	date func(cell string) (time.Time, bool)
}

// readForm sends the evaluations of a sheet, one or two a row. The sequence
// yields one row after the other from the first, empty ones included, so that
// they count as a spreadsheet counts them; an error stands for a row that
// cannot be read.
func (r *folderReader) readForm(name string, s sheet, send func(found) bool) {
	f := &formReader{folderReader: r, name: name, sheet: s, send: send}
	n := 0
	for cells, err := range s.rows {
		if n++; err != nil {
			if !f.refuse(n, asUnplaced(err)) {
				return
			}
			continue
		}
		trimCells(cells)
		switch {
		case emptyRow(cells):
		case f.columns == nil:
			if !f.heading(cells) {
				f.first = append(f.first, cells)
			}
			if len(f.first) >= maxTitleRows {
				f.unnamed()
				return
			}
		default:
			if !f.row(n, cells) {
				return
			}
		}
		if f.done {
			return
		}
	}
	if f.columns == nil && !f.done && (len(f.first) > 0 || n == 0) {
		f.unnamed()
	}
}

// maxTitleRows is how many rows may stand above the names of the columns.
const maxTitleRows = 10

// formReader reads one sheet.
type formReader struct {
	*folderReader
	sheet
	name    string
	send    func(found) bool
	first   [][]string // rows that were not the names of the columns
	columns *formColumns
	done    bool
}

// refuse says what is wrong with a row, or with the sheet for row 0.
func (f *formReader) refuse(row int, u *Unplaced) bool {
	u.Source = f.source(row)
	return f.send(found{Unplaced: u})
}

func (f *formReader) source(row int) string {
	out := sourceOf(f.name)
	if f.sheet.name != "" {
		out += fmt.Sprintf(", sheet %q", f.sheet.name)
	}
	if row > 0 {
		out += fmt.Sprintf(", row %d", row)
	}
	return out
}

// heading takes a row as the names of the columns if it can be.
func (f *formReader) heading(cells []string) bool {
	columns, u := newFormColumns(cells, f.course.Form)
	if u != nil {
		f.done = true
		f.refuse(0, u)
		return true
	}
	f.columns = columns
	if columns != nil && columns.learner < 0 && !f.anyone {
		if _, err := f.places.evaluation(f.place(), facts{session: "1"}, facts{}); err != nil {
			f.done = true
			f.refuse(0, unplaced("has no column that is surely the learner; name it in course.yaml, under form, or put the file into the learner's folder"))
		}
	}
	return columns != nil
}

// place is the path by which rows are placed: the file's own name is that of a
// form and not of a learner.
func (f *formReader) place() string { return path.Join(path.Dir(f.name), "form.csv") }

// unnamed says that no row names the columns.
func (f *formReader) unnamed() {
	if len(f.first) == 0 {
		f.refuse(0, unplaced("holds no rows"))
		return
	}
	var names []string
	for _, c := range f.first[0] {
		if c != "" && len(names) < 12 {
			names = append(names, fmt.Sprintf("%.40q", c))
		}
	}
	f.refuse(0, unplaced("has no column that is surely the evaluation; name it in course.yaml, under form, as text (the columns are %s)", strings.Join(names, ", ")))
}

// row sends the texts of one row.
func (f *formReader) row(n int, cells []string) bool {
	given, err := f.columns.facts(cells, f.date)
	if err != nil {
		return f.refuse(n, asUnplaced(err))
	}
	if day := f.columns.cell(cells, f.columns.date); day != "" && given.date.IsZero() {
		if !f.refuse(n, unplaced("its date %.40q cannot be read and is left out; write it as 2026-03-14", day)) {
			return false
		}
	}
	text, feedback := joinCells(cells, f.columns.text), joinCells(cells, f.columns.feedback)
	switch {
	case given.learner == "" && f.columns.learner >= 0 && !f.anyone:
		return f.refuse(n, unplaced("names no learner; fill in the column %q", f.columns.names[f.columns.learner]))
	case text == "" && feedback == "":
		return f.refuse(n, unplaced("holds no text"))
	}
	hint := f.hint()
	if text != "" {
		own := given
		if own.role == "" && len(f.columns.feedback) > 0 {
			own.role = analyze.Learner
		}
		if own.role == "" {
			own.role = hint.role
		}
		if !f.folderReader.place(f.place(), f.source(n), own, hint, text, f.send) {
			return false
		}
	}
	if feedback != "" {
		given.role = analyze.Adult
		return f.folderReader.place(f.place(), f.source(n), given, hint, feedback, f.send)
	}
	return true
}

// hint is what the names of the file and of the sheet tell.
func (f *formReader) hint() facts {
	base := path.Base(f.name)
	hint := placeName(strings.TrimSuffix(base, path.Ext(base)), f.places.book).facts()
	return placeName(f.sheet.name, f.places.book).facts().over(hint)
}

func trimCells(cells []string) {
	for i, c := range cells {
		cells[i] = strings.TrimSpace(strings.ReplaceAll(c, "\r\n", "\n"))
	}
}

func emptyRow(cells []string) bool {
	return !slices.ContainsFunc(cells, func(c string) bool { return c != "" })
}

// joinCells puts the cells of several columns below each other.
func joinCells(cells []string, columns []int) string {
	var out []string
	for _, c := range columns {
		if c < len(cells) && cells[c] != "" {
			out = append(out, cells[c])
		}
	}
	return strings.Join(out, "\n\n")
}
