package corpus

import (
	"encoding/xml"
	"strconv"
	"strings"
)

// docxParagraph is a paragraph while it is read.
type docxParagraph struct {
	text  strings.Builder
	level int
	item  bool
	joins bool    // its mark was deleted, so that it goes on with the next
	after []block // text boxes and notes that hang on it
}

// paragraph reads a paragraph to its end.
func (d *docxReader) paragraph(p *docxParagraph) error {
	return d.children(func(e xml.StartElement) error {
		if ooxml(e) == "pPr" {
			return d.properties(p)
		}
		return d.inline(e, p)
	})
}

// properties reads what a paragraph is: a heading, an item, or joined to the
// next.
func (d *docxReader) properties(p *docxParagraph) error {
	return d.children(func(e xml.StartElement) error {
		switch ooxml(e) {
		case "pStyle":
			s := d.styles[attr(e, "val")]
			p.level, p.item = s.level, s.item
		case "outlineLvl":
			if n, err := strconv.Atoi(attr(e, "val")); err == nil && n >= 0 && n < 9 {
				p.level = n + 1
			}
		case "numPr":
			p.item = true
			return d.children(func(e xml.StartElement) error {
				if ooxml(e) == "numId" && attr(e, "val") == "0" {
					p.item = false // numbering taken off
				}
				return d.skip()
			})
		case "rPr":
			return d.children(func(e xml.StartElement) error {
				if w := ooxml(e); w == "del" || w == "moveFrom" {
					p.joins = true
				}
				return d.skip()
			})
		}
		return d.skip()
	})
}

// inline reads one element inside a paragraph.
func (d *docxReader) inline(e xml.StartElement, p *docxParagraph) error {
	if e.Name.Local == "AlternateContent" {
		return d.alternatives(func(e xml.StartElement) error { return d.inline(e, p) })
	}
	switch ooxml(e) {
	case "t":
		return d.chars(p)
	case "tab", "ptab":
		p.text.WriteByte('\t')
	case "br", "cr":
		p.text.WriteByte('\n')
	case "noBreakHyphen":
		p.text.WriteByte('-')
	case "del", "moveFrom", "delText", "instrText", "delInstrText", "pPr", "rPr", "sdtPr", "rt":
		return d.skip()
	case "r":
		return d.run(p)
	case "sdt":
		return d.control(func(e xml.StartElement) error { return d.inline(e, p) })
	case "footnoteReference":
		p.after = append(p.after, d.notes["footnote"+attr(e, "id")]...)
	case "endnoteReference":
		p.after = append(p.after, d.notes["endnote"+attr(e, "id")]...)
	case "txbxContent":
		blocks, err := d.blocks()
		p.after = append(p.after, blocks...)
		return err
	}
	return d.children(func(e xml.StartElement) error { return d.inline(e, p) })
}

// chars takes in the text of an element.
func (d *docxReader) chars(p *docxParagraph) error {
	for {
		t, err := d.next()
		if err != nil {
			return err
		}
		switch t := t.(type) {
		case xml.CharData:
			if err := d.took(len(t)); err != nil {
				return err
			}
			p.text.Write(t)
		case xml.StartElement:
			if err := d.skip(); err != nil {
				return err
			}
		case xml.EndElement:
			return nil
		}
	}
}

// run reads a run of text, unless it is hidden.
func (d *docxReader) run(p *docxParagraph) error {
	hidden := false
	return d.children(func(e xml.StartElement) error {
		switch {
		case ooxml(e) == "rPr":
			return d.children(func(e xml.StartElement) error {
				if ooxml(e) == "vanish" {
					v := attr(e, "val")
					hidden = v != "0" && v != "false"
				}
				return d.skip()
			})
		case hidden:
			return d.skip()
		}
		return d.inline(e, p)
	})
}

// control reads a form control with inner, unless it shows only its prompt or
// is a table of contents.
func (d *docxReader) control(inner func(xml.StartElement) error) error {
	drop := false
	return d.children(func(e xml.StartElement) error {
		switch {
		case ooxml(e) == "sdtPr":
			return d.children(func(e xml.StartElement) error {
				switch ooxml(e) {
				case "showingPlcHdr":
					drop = true
				case "docPartObj":
					return d.children(func(e xml.StartElement) error {
						drop = drop || ooxml(e) == "docPartGallery" && attr(e, "val") == "Table of Contents"
						return d.skip()
					})
				}
				return d.skip()
			})
		case drop:
			return d.skip()
		}
		return inner(e)
	})
}

// alternatives reads with inner the first of the ways in which a thing is
// written, so that a text box that stands twice is read once (ECMA-376 part 3,
// section 7).
func (d *docxReader) alternatives(inner func(xml.StartElement) error) error {
	taken := false
	return d.children(func(e xml.StartElement) error {
		if taken || e.Name.Local != "Choice" && e.Name.Local != "Fallback" {
			return d.skip()
		}
		taken = true
		return d.children(inner)
	})
}
