package corpus

import (
	"encoding/xml"
	"strings"
)

// odtParagraph is a paragraph while it is read.
type odtParagraph struct {
	text  strings.Builder
	space bool    // a space is due before the next letter
	after []block // text boxes and notes that hang on it
}

// write takes in characters: white space is one space, and none at the start
// (OpenDocument 1.3 part 3, section 6.1.2).
func (p *odtParagraph) write(s string) {
	for _, r := range s {
		if r == ' ' || r == '\t' || r == '\n' || r == '\r' {
			p.space = true
			continue
		}
		p.due()
		p.text.WriteRune(r)
	}
}

// due writes the space that is due.
func (p *odtParagraph) due() {
	if p.space && p.text.Len() > 0 {
		p.text.WriteByte(' ')
	}
	p.space = false
}

// mark writes a mark that is no white space of the file.
func (p *odtParagraph) mark(s string) {
	p.due()
	p.text.WriteString(s)
}

// paragraph reads the text of the current element to its end.
func (o *odtReader) paragraph(p *odtParagraph) error {
	for {
		t, err := o.next()
		if err != nil {
			return err
		}
		switch t := t.(type) {
		case xml.CharData:
			if err := o.took(len(t)); err != nil {
				return err
			}
			p.write(string(t))
		case xml.StartElement:
			if err := o.inline(t, p); err != nil {
				return err
			}
		case xml.EndElement:
			return nil
		}
	}
}

// inline reads one element inside a paragraph.
func (o *odtReader) inline(e xml.StartElement, p *odtParagraph) error {
	switch odf(e) {
	case "text:s":
		n := max(1, min(100, numberOr(attr(e, "c"), 1)))
		p.mark(strings.Repeat(" ", n))
		return o.skip()
	case "text:tab":
		p.mark("\t")
		return o.skip()
	case "text:line-break":
		p.mark("\n")
		return o.skip()
	case "text:note":
		return o.children(func(e xml.StartElement) error {
			if odf(e) != "text:note-body" {
				return o.skip() // the number by which it is cited
			}
			blocks, err := o.blocks()
			p.after = append(p.after, blocks...)
			return err
		})
	case "office:annotation", "office:annotation-end", "text:ruby-text", "text:placeholder", "text:hidden-text",
		"text:page-number", "text:page-count", "svg-compatible:title", "svg-compatible:desc":
		return o.skip()
	case "text:span":
		if o.hidden[attr(e, "style-name")] {
			return o.skip()
		}
	}
	if strings.HasPrefix(odf(e), "drawing:") {
		return o.drawing(p)
	}
	return o.paragraph(p) // what is unknown shows its text
}

// drawing reads the paragraphs in a frame, a text box or a shape.
func (o *odtReader) drawing(p *odtParagraph) error {
	blocks, err := o.blocks()
	p.after = append(p.after, blocks...)
	return err
}
