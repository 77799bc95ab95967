package corpus

import (
	"encoding/xml"
	"io"
	"regexp"
	"strconv"
	"strings"
	"sync"
)

// paragraphStyle is what a style makes of a paragraph.
type paragraphStyle struct {
	level int // of a heading, from 1; 0 for running text
	item  bool
}

// paragraphStyles are the styles of a document that make a heading or an item,
// by their ids.
type paragraphStyles map[string]paragraphStyle

// styleCache keeps the styles of documents: those of a class come from one
// sheet and differ in nothing but the text.
type styleCache struct {
	mu   sync.Mutex
	seen map[styleKey]paragraphStyles
}

// styleKey tells one part of styles from another, as the archive lists it.
type styleKey struct {
	sum  uint32
	size uint64
}

// maxStyles is how many parts of styles are kept.
const maxStyles = 256

// docx returns the styles of a document; one without the part has none.
func (c *styleCache) docx(p *packed, name string) (paragraphStyles, error) {
	part := p.parts[name]
	if part == nil {
		return nil, nil
	}
	key := styleKey{part.CRC32, part.UncompressedSize64}
	c.mu.Lock()
	styles, ok := c.seen[key]
	c.mu.Unlock()
	if ok {
		return styles, nil
	}
	x, err := p.xml(name)
	if err != nil {
		return nil, err
	}
	defer x.close()
	styles, err = readStyles(x)
	if err != nil {
		return nil, err
	}
	c.mu.Lock()
	defer c.mu.Unlock()
	if c.seen == nil || len(c.seen) >= maxStyles {
		c.seen = map[styleKey]paragraphStyles{}
	}
	c.seen[key] = styles
	return styles, nil
}

// docxStyle is a style as it stands, before it inherits.
type docxStyle struct {
	paragraphStyle
	name, base string
}

func readStyles(x *xmlPart) (paragraphStyles, error) {
	all := map[string]docxStyle{}
	for {
		t, err := x.next()
		if err == io.EOF {
			break
		}
		if err != nil {
			return nil, err
		}
		e, ok := t.(xml.StartElement)
		if !ok || ooxml(e) != "style" || attr(e, "type") != "paragraph" {
			continue
		}
		var s docxStyle
		if err := x.children(func(e xml.StartElement) error { return s.read(x, e) }); err != nil {
			return nil, err
		}
		all[attr(e, "styleId")] = s
	}
	out := paragraphStyles{}
	for id := range all {
		if s := inherited(all, id); s.level > 0 || s.item {
			out[id] = s
		}
	}
	return out, nil
}

func (s *docxStyle) read(x *xmlPart, e xml.StartElement) error {
	switch ooxml(e) {
	case "name":
		s.name = strings.ToLower(attr(e, "val"))
	case "basedOn":
		s.base = attr(e, "val")
	case "pPr":
		return x.children(func(e xml.StartElement) error {
			switch ooxml(e) {
			case "outlineLvl":
				if n, err := strconv.Atoi(attr(e, "val")); err == nil && n >= 0 && n < 9 {
					s.level = n + 1
				}
			case "numPr":
				s.item = true
			}
			return x.skip()
		})
	}
	return x.skip()
}

// inherited follows a style to those it is based on until one tells what it
// makes of a paragraph.
func inherited(all map[string]docxStyle, id string) paragraphStyle {
	for range 20 { // a circle of styles ends here
		s, ok := all[id]
		if !ok {
			break
		}
		switch m := headingStyle.FindStringSubmatch(s.name); {
		case s.level > 0:
			return paragraphStyle{level: s.level}
		case m != nil:
			n, _ := strconv.Atoi(m[1]) // one digit
			return paragraphStyle{level: n}
		case s.name == "title":
			return paragraphStyle{level: 1}
		case s.item:
			return paragraphStyle{item: true}
		}
		id = s.base
	}
	return paragraphStyle{}
}

var headingStyle = regexp.MustCompile(`^heading ([1-9])$`)

// columnSpan reads how many columns a cell spans, within what a page can hold.
func columnSpan(s string) int {
	n, err := strconv.Atoi(s)
	if err != nil {
		return 1
	}
	return min(max(n, 1), 100)
}
