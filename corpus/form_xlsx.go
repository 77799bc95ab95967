package corpus

import (
	"io"
	"io/fs"
	"iter"
	"strconv"
	"time"

	"github.com/xuri/excelize/v2"
)

// maxWorkbook is how large a workbook may become when it is unpacked, in bytes.
const maxWorkbook = 64 << 20

// readXLSX reads the sheets of a workbook that a person can see, each as the
// answers of a form.
func (r *folderReader) readXLSX(name string, f fs.File, send func(found) bool) {
	u := checkWorkbook(f)
	if u != nil {
		send(found{Unplaced: u})
		return
	}
	at, size, u := readerAt(f)
	if u != nil {
		send(found{Unplaced: u})
		return
	}
	book, err := excelize.OpenReader(io.NewSectionReader(at, 0, size), excelize.Options{
		UnzipSizeLimit: maxWorkbook, UnzipXMLSizeLimit: maxWorkbook, RawCellValue: true,
	})
	if err != nil {
		send(found{Unplaced: unplaced("is damaged and cannot be read; open it and save it again as .xlsx")})
		return
	}
	defer book.Close()
	from1904 := false
	if props, err := book.GetWorkbookProps(); err == nil && props.Date1904 != nil {
		from1904 = *props.Date1904
	}
	date := func(cell string) (time.Time, bool) { return cellDate(cell, from1904) }
	sheets := visibleSheets(book)
	for _, s := range sheets {
		rows, err := book.Rows(s)
		if err != nil {
			send(found{Unplaced: unplaced("its sheet %q cannot be read; open it and save it again as .xlsx", s)})
			continue
		}
		called := s
		if len(sheets) == 1 {
			called = ""
		}
		r.readForm(name, sheet{name: called, rows: xlsxRows(rows), date: date}, send)
		rows.Close()
	}
}

// checkWorkbook refuses what unpacks into too much, before the library unpacks
// anything.
func checkWorkbook(f fs.File) *Unplaced {
	p, u := openPacked(f)
	if u != nil {
		return u
	}
	if !p.has("xl/workbook.xml") {
		return unplaced("is not the workbook its name says; open it and save it again as .xlsx")
	}
	total := uint64(0)
	for _, part := range p.parts {
		total += part.UncompressedSize64
		if part.UncompressedSize64 > bombSize && part.UncompressedSize64/maxRatio > part.CompressedSize64 || total > maxWorkbook {
			return tooLargeUnpacked()
		}
	}
	return nil
}

func visibleSheets(book *excelize.File) []string {
	var out []string
	for _, s := range book.GetSheetList() {
		if seen, err := book.GetSheetVisible(s); err != nil || seen {
			out = append(out, s)
		}
	}
	return out
}

// maxRows is how many rows a sheet of the format has.
const maxRows = excelize.TotalRows

// xlsxRows yields the rows of a sheet.
func xlsxRows(rows *excelize.Rows) iter.Seq2[[]string, error] {
	return func(yield func([]string, error) bool) {
		for n := 0; rows.Next() && n < maxRows; n++ {
			cells, err := rows.Columns()
			if err != nil {
				yield(nil, unplaced("is damaged, and with it the rest of the sheet is not read; open the file and save it again"))
				return
			}
			if !yield(cells, nil) {
				return
			}
		}
		if rows.Error() != nil {
			yield(nil, unplaced("is damaged, and with it the rest of the sheet is not read; open the file and save it again"))
		}
	}
}

// cellDate reads a date that a cell holds as a number of days, or as text.
func cellDate(cell string, from1904 bool) (time.Time, bool) {
	if days, err := strconv.ParseFloat(cell, 64); err == nil {
		if days < 1 || days > 150_000 { // beyond the year 2310
			return time.Time{}, false
		}
		t, err := excelize.ExcelDateToTime(days, from1904)
		if err != nil {
			return time.Time{}, false
		}
		return time.Date(t.Year(), t.Month(), t.Day(), 0, 0, 0, 0, time.UTC), true
	}
	return parseDate(cell)
}
