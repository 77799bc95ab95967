package corpus

import "strings"

// block is a paragraph of a document, or a table.
type block struct {
	text  string
	level int  // of a heading, from 1; 0 for running text
	item  bool // it stands in a list
	rows  []tableRow
}

// tableRow is one row of a table.
type tableRow []tableCell

// tableCell is one cell, with the column it begins in.
type tableCell struct {
	column int
	blocks []block
}

func (c tableCell) text() string {
	var b strings.Builder
	for _, p := range paragraphsOf(c.blocks, nil) {
		b.WriteString(p.text)
		b.WriteByte(' ')
	}
	return strings.TrimSpace(b.String())
}

// paragraph is a paragraph or a line, as it is read one after the other.
type paragraph struct {
	text  string
	level int
	item  bool
	line  bool // it is a line of a text file and no paragraph of a document
}

// paragraphsOf returns the paragraphs of blocks in reading order: tables row by
// row, but column by column below a row that heads reports to hold headings in
// two columns or more. The words at the start of such rows go with every
// column.
func paragraphsOf(blocks []block, heads func(string) bool) []paragraph {
	var out []paragraph
	for _, b := range blocks {
		switch {
		case b.rows != nil:
			out = append(out, tableParagraphs(b.rows, heads)...)
		case strings.TrimSpace(b.text) != "":
			out = append(out, paragraph{text: strings.TrimSpace(b.text), level: b.level, item: b.item})
		}
	}
	return out
}

func tableParagraphs(rows []tableRow, heads func(string) bool) []paragraph {
	var out []paragraph
	for i, row := range rows {
		if columns := headed(row, heads); len(columns) > 1 {
			return append(out, columnParagraphs(row, rows[i+1:], columns)...)
		}
		for _, c := range row {
			out = append(out, paragraphsOf(c.blocks, heads)...)
		}
	}
	return out
}

// headed returns the columns of a row that hold a heading.
func headed(row tableRow, heads func(string) bool) []int {
	if heads == nil {
		return nil
	}
	var out []int
	for _, c := range row {
		if t := c.text(); t != "" && heads(t) {
			out = append(out, c.column)
		}
	}
	return out
}

// columnParagraphs reads the columns below a row of headings one after the
// other.
func columnParagraphs(head tableRow, rows []tableRow, columns []int) []paragraph {
	first := columns[0]
	var out []paragraph
	for i, column := range columns {
		next := int(^uint(0) >> 1)
		if i+1 < len(columns) {
			next = columns[i+1]
		}
		for _, c := range head {
			if c.column == column {
				out = append(out, paragraph{text: c.text()})
			}
		}
		for _, row := range rows {
			var label, text []paragraph
			for _, c := range row {
				switch {
				case c.column < first:
					label = append(label, paragraphsOf(c.blocks, nil)...)
				case c.column >= column && c.column < next:
					text = append(text, paragraphsOf(c.blocks, nil)...)
				}
			}
			if len(text) > 0 {
				out = append(append(out, label...), text...)
			}
		}
	}
	return out
}

// joined returns paragraphs as one text: those of documents apart by an empty
// line, items of a list by a line end and with a hyphen before each.
func joined(list []paragraph) string {
	var b strings.Builder
	for i, p := range list {
		switch {
		case i == 0:
		case p.line || p.item && list[i-1].item:
			b.WriteByte('\n')
		default:
			b.WriteString("\n\n")
		}
		if p.item {
			b.WriteString("- ")
		}
		b.WriteString(p.text)
	}
	return strings.Trim(b.String(), "\n")
}
