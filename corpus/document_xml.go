package corpus

import (
	"encoding/xml"
	"errors"
	"io"
)

// maxDepth is how deep the elements of a document may be nested. Tables in text
// boxes in tables stay below 100.
const maxDepth = 400

// xmlPart reads one XML part of a document, element by element. It refuses
// document type declarations, and with them entities that unfold.
type xmlPart struct {
	dec   *xml.Decoder
	in    io.Closer
	left  *io.LimitedReader
	depth int
	text  int // bytes of text taken so far
}

func newXMLPart(r io.ReadCloser) *xmlPart {
	left := &io.LimitedReader{R: r, N: maxPart}
	return &xmlPart{dec: xml.NewDecoder(left), in: r, left: left}
}

func (x *xmlPart) close() { x.in.Close() }

// next returns the next token. At the end of the part it is io.EOF.
func (x *xmlPart) next() (xml.Token, error) {
	t, err := x.dec.Token()
	if err != nil {
		if errors.Is(err, io.EOF) && x.depth == 0 {
			return nil, io.EOF
		}
		if x.left.N <= 0 {
			return nil, tooLargeUnpacked()
		}
		return nil, unplaced("is damaged and cannot be read; open it and save it again")
	}
	switch t := t.(type) {
	case xml.StartElement:
		if x.depth++; x.depth > maxDepth {
			return nil, unplaced("is nested too deep for a document; copy its text into a new one")
		}
	case xml.EndElement:
		x.depth--
	case xml.Directive:
		return nil, unplaced("declares a document type, which no writing program does; open it and save it again")
	case xml.CharData:
		return t, nil
	}
	return t, nil
}

// children calls f for every element inside the current one, up to its end. f
// must read its element to the end, by children, skip or chars.
func (x *xmlPart) children(f func(xml.StartElement) error) error {
	for {
		t, err := x.next()
		if err != nil {
			return err
		}
		switch t := t.(type) {
		case xml.StartElement:
			if err := f(t); err != nil {
				return err
			}
		case xml.EndElement:
			return nil
		}
	}
}

// skip passes over the rest of the current element.
func (x *xmlPart) skip() error {
	for depth := x.depth; x.depth >= depth; {
		if _, err := x.next(); err != nil {
			return err
		}
	}
	return nil
}

// took counts text that is kept and refuses more than one text may have.
func (x *xmlPart) took(n int) error {
	if x.text += n; x.text > maxText {
		return tooLong()
	}
	return nil
}

// attr returns the value of an attribute by its local name, or "".
func attr(e xml.StartElement, local string) string {
	for _, a := range e.Attr {
		if a.Name.Local == local {
			return a.Value
		}
	}
	return ""
}
