package corpus

import (
	"encoding/xml"
	"io/fs"
	"path"
	"strings"
)

// readDocx reads a document in Office Open XML (ECMA-376 part 1, chapter 17) as
// a person sees it with all changes accepted: inserted text is in, deleted text
// is out; comments, headers, footers, hidden text, instructions of fields and
// the prompts of empty form controls are left out. Text boxes and notes follow
// the paragraph they hang on.
func (r *folderReader) readDocx(name string, f fs.File, send func(found) bool) {
	blocks, err := r.docx(f)
	r.sendDocument(name, blocks, err, send)
}

func (r *folderReader) docx(f fs.File) ([]block, error) {
	p, u := openPacked(f)
	if u != nil {
		return nil, u
	}
	body := "word/document.xml"
	if !p.has(body) {
		body = p.mainPart()
	}
	dir := path.Dir(body)
	styles, err := r.styles.docx(p, dir+"/styles.xml")
	if err != nil {
		return nil, err
	}
	d := &docxReader{styles: styles, notes: map[string][]block{}}
	for _, part := range []struct{ name, element string }{{"footnotes.xml", "footnote"}, {"endnotes.xml", "endnote"}} {
		if err := d.readNotes(p, dir+"/"+part.name, part.element); err != nil {
			return nil, err
		}
	}
	x, err := p.xml(body)
	if err != nil {
		return nil, err
	}
	if x == nil {
		return nil, unplaced("is not the document its name says; open it and save it again as .docx")
	}
	defer x.close()
	d.xmlPart = x
	return d.body()
}

// mainPart finds the part with the text by the relationships of the archive.
func (p *packed) mainPart() string {
	x, err := p.xml("_rels/.rels")
	if err != nil || x == nil {
		return ""
	}
	defer x.close()
	for {
		t, err := x.next()
		if err != nil {
			return ""
		}
		if e, ok := t.(xml.StartElement); ok && strings.HasSuffix(attr(e, "Type"), "/officeDocument") {
			return strings.TrimPrefix(path.Clean(strings.ReplaceAll(attr(e, "Target"), `\`, "/")), "/")
		}
	}
}

// docxReader reads one part.
type docxReader struct {
	*xmlPart
	styles paragraphStyles
	notes  map[string][]block // of the document, by element and id
}

// ooxml returns the local name of an element of WordprocessingML, transitional
// or strict, and "" for any other.
func ooxml(e xml.StartElement) string {
	if strings.Contains(e.Name.Space, "wordprocessingml") {
		return e.Name.Local
	}
	return ""
}

// body reads the whole part.
func (d *docxReader) body() ([]block, error) {
	for {
		t, err := d.next()
		if err != nil {
			return nil, asUnplaced(err)
		}
		if e, ok := t.(xml.StartElement); ok && ooxml(e) == "body" {
			return d.blocks()
		}
	}
}

// readNotes reads the footnotes or endnotes of the document.
func (d *docxReader) readNotes(p *packed, name, element string) error {
	x, err := p.xml(name)
	if err != nil || x == nil {
		return err
	}
	defer x.close()
	part := &docxReader{xmlPart: x, styles: d.styles}
	for {
		t, err := x.next()
		if err != nil {
			if x.depth == 0 {
				return nil
			}
			return err
		}
		// Notes with a type are the lines that part notes from the text.
		if e, ok := t.(xml.StartElement); ok && ooxml(e) == element && attr(e, "type") == "" {
			blocks, err := part.blocks()
			if err != nil {
				return err
			}
			d.notes[element+attr(e, "id")] = blocks
		}
	}
}

// docxBlocks gathers what stands one below the other.
type docxBlocks struct {
	list  []block
	joins bool // the mark of the last paragraph was deleted
}

// blocks reads paragraphs and tables up to the end of the current element.
func (d *docxReader) blocks() ([]block, error) {
	var out docxBlocks
	err := d.children(func(e xml.StartElement) error { return d.block(e, &out) })
	return out.list, err
}

// block reads one element that stands on its own lines.
func (d *docxReader) block(e xml.StartElement, out *docxBlocks) error {
	switch ooxml(e) {
	case "p":
		p := docxParagraph{}
		if err := d.paragraph(&p); err != nil {
			return err
		}
		out.add(&p)
		return nil
	case "tbl":
		rows, err := d.table()
		out.list, out.joins = append(out.list, block{rows: rows}), false
		return err
	case "del", "moveFrom", "sectPr", "pPr":
		return d.skip()
	case "sdt":
		return d.control(func(e xml.StartElement) error { return d.block(e, out) })
	}
	inner := func(e xml.StartElement) error { return d.block(e, out) }
	if e.Name.Local == "AlternateContent" {
		return d.alternatives(inner)
	}
	return d.children(inner) // sdtContent, ins, moveTo, customXml and what is unknown
}

// add appends a paragraph and what hangs on it, or goes on with the one before.
func (b *docxBlocks) add(p *docxParagraph) {
	next := block{text: p.text.String(), level: p.level, item: p.item}
	if b.joins {
		last := &b.list[len(b.list)-1]
		if last.text != "" {
			next.level, next.item = last.level, last.item
		}
		next.text = last.text + next.text
		*last = next
	} else {
		b.list = append(b.list, next)
	}
	b.joins = p.joins && len(p.after) == 0
	b.list = append(b.list, p.after...)
}

// table reads the rows of a table.
func (d *docxReader) table() ([]tableRow, error) {
	rows := []tableRow{}
	err := d.children(func(e xml.StartElement) error {
		switch ooxml(e) {
		case "tr":
			row, deleted, err := d.row()
			if err == nil && !deleted {
				rows = append(rows, row)
			}
			return err
		case "sdt", "sdtContent", "customXml":
			inner, err := d.table()
			rows = append(rows, inner...)
			return err
		}
		return d.skip()
	})
	return rows, err
}

func (d *docxReader) row() (row tableRow, deleted bool, err error) {
	column := 0
	err = d.children(func(e xml.StartElement) error {
		switch ooxml(e) {
		case "tc":
			cell := tableCell{column: column}
			span, err := d.cell(&cell)
			row = append(row, cell)
			column += span
			return err
		case "trPr":
			return d.children(func(e xml.StartElement) error {
				deleted = deleted || ooxml(e) == "del"
				return d.skip()
			})
		case "sdt", "sdtContent", "customXml":
			inner, gone, err := d.row()
			for _, c := range inner {
				c.column += column
				row = append(row, c)
			}
			column += len(inner)
			deleted = deleted || gone
			return err
		}
		return d.skip()
	})
	return row, deleted, err
}

// cell reads a cell and returns how many columns it spans.
func (d *docxReader) cell(c *tableCell) (int, error) {
	span := 1
	var in docxBlocks
	err := d.children(func(e xml.StartElement) error {
		if ooxml(e) == "tcPr" {
			return d.children(func(e xml.StartElement) error {
				if ooxml(e) == "gridSpan" {
					span = columnSpan(attr(e, "val"))
				}
				return d.skip()
			})
		}
		return d.block(e, &in)
	})
	c.blocks = in.list
	return span, err
}
