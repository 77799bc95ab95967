package corpus

import (
	"encoding/xml"
	"io"
	"io/fs"
	"strconv"
	"strings"
)

// readOdt reads a text document in OpenDocument (ISO/IEC 26300) as a person
// sees it with all changes accepted, in the manner of readDocx.
func (r *folderReader) readOdt(name string, f fs.File, send func(found) bool) {
	blocks, err := odt(f)
	r.sendDocument(name, blocks, err, send)
}

func odt(f fs.File) ([]block, error) {
	p, u := openPacked(f)
	if u != nil {
		return nil, u
	}
	if locked, err := p.locked(); err != nil || locked {
		if err == nil {
			err = unplaced("is locked with a password; open it and save it without one")
		}
		return nil, err
	}
	x, err := p.xml("content.xml")
	if err != nil {
		return nil, err
	}
	if x == nil {
		return nil, unplaced("is not the document its name says; open it and save it again as .odt")
	}
	defer x.close()
	o := &odtReader{xmlPart: x, hidden: map[string]bool{}}
	return o.body()
}

// locked reports whether the list of parts says that they are encrypted.
func (p *packed) locked() (bool, error) {
	x, err := p.xml("META-INF/manifest.xml")
	if err != nil || x == nil {
		return false, err
	}
	defer x.close()
	for {
		t, err := x.next()
		if err == io.EOF {
			return false, nil
		}
		if err != nil {
			return false, err
		}
		if e, ok := t.(xml.StartElement); ok && (e.Name.Local == "encryption-data" || e.Name.Local == "encrypted-key") {
			return true, nil
		}
	}
}

// odtReader reads the content of a text document.
type odtReader struct {
	*xmlPart
	hidden map[string]bool // styles of text that is not shown
}

// odf returns the local name of an element of OpenDocument with a short name
// of its namespace, such as "text:p", and "" for any other.
func odf(e xml.StartElement) string {
	short, ok := strings.CutPrefix(e.Name.Space, "urn:oasis:names:tc:opendocument:xmlns:")
	if !ok {
		return ""
	}
	short, _, _ = strings.Cut(short, ":")
	return short + ":" + e.Name.Local
}

// body reads the styles that hide text, and then the text.
func (o *odtReader) body() ([]block, error) {
	style := ""
	for {
		t, err := o.next()
		if err == io.EOF {
			return nil, unplaced("is not a text document; open it and save it again as .odt")
		}
		if err != nil {
			return nil, asUnplaced(err)
		}
		e, ok := t.(xml.StartElement)
		if !ok {
			continue
		}
		switch odf(e) {
		case "style:style":
			style = attr(e, "name")
		case "style:text-properties":
			if attr(e, "display") == "none" {
				o.hidden[style] = true
			}
		case "office:text":
			return o.blocks()
		}
	}
}

// blocks reads paragraphs, lists and tables up to the end of the current
// element.
func (o *odtReader) blocks() ([]block, error) {
	var out []block
	err := o.children(func(e xml.StartElement) error { return o.block(e, &out, false) })
	return out, err
}

// block reads one element that stands on its own lines.
func (o *odtReader) block(e xml.StartElement, out *[]block, item bool) error {
	switch name := odf(e); name {
	case "text:p", "text:h":
		p := odtParagraph{}
		if err := o.paragraph(&p); err != nil {
			return err
		}
		b := block{text: p.text.String(), item: item}
		if name == "text:h" {
			b.level, b.item = max(1, min(9, numberOr(attr(e, "outline-level"), 1))), false
		} else if attr(e, "style-name") == "Title" {
			b.level = 1
		}
		*out = append(*out, b)
		*out = append(*out, p.after...)
		return nil
	case "table:table":
		rows, err := o.table()
		*out = append(*out, block{rows: rows})
		return err
	case "text:tracked-changes", "text:table-of-content", "text:alphabetical-index", "text:illustration-index",
		"text:table-index", "text:object-index", "text:user-index", "text:bibliography", "office:forms",
		"text:sequence-decls", "text:variable-decls", "text:user-field-decls", "office:annotation", "svg-compatible:title", "svg-compatible:desc":
		return o.skip()
	case "text:section":
		if attr(e, "display") == "none" {
			return o.skip()
		}
	case "text:list-item":
		// The first paragraph of an item has the bullet; the rest hang below.
		return o.listItem(out)
	}
	return o.children(func(e xml.StartElement) error { return o.block(e, out, item) })
}

func (o *odtReader) listItem(out *[]block) error {
	first := true
	return o.children(func(e xml.StartElement) error {
		item := first && odf(e) == "text:p"
		first = first && !item
		return o.block(e, out, item)
	})
}

// table reads the rows of a table. Rows and cells that are said to repeat are
// read once, with the columns they take.
func (o *odtReader) table() ([]tableRow, error) {
	rows := []tableRow{}
	err := o.children(func(e xml.StartElement) error {
		switch odf(e) {
		case "table:table-row":
			row, err := o.row()
			rows = append(rows, row)
			return err
		case "table:table-header-rows", "table:table-rows", "table:table-row-group":
			inner, err := o.table()
			rows = append(rows, inner...)
			return err
		}
		return o.skip()
	})
	return rows, err
}

func (o *odtReader) row() (tableRow, error) {
	var out tableRow
	column := 0
	err := o.children(func(e xml.StartElement) error {
		repeated := columnSpan(attr(e, "number-columns-repeated"))
		at := column
		switch odf(e) {
		case "table:table-cell":
			column += repeated
			blocks, err := o.blocks()
			out = append(out, tableCell{column: at, blocks: blocks})
			return err
		case "table:covered-table-cell":
			column += repeated // it lies below a cell that spans it
		}
		return o.skip()
	})
	return out, err
}

func numberOr(s string, otherwise int) int {
	if n, err := strconv.Atoi(s); err == nil {
		return n
	}
	return otherwise
}
