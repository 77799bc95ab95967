package main

import (
	"io"
	"os"
	"strings"

	"github.com/rivo/uniseg"
	"golang.org/x/term"
)

// page is what text is laid out for.
type page struct {
	width int  // in columns
	bold  bool // whether bold can be shown
	drawn bool // whether a picture in blocks of black and white can be shown
}

// paper lays text out: wrapped to the width of the page, with bold headings
// where they can be shown, and the same words without.
type paper struct {
	page
	b strings.Builder
}

// Widths in columns: what is used where none can be asked for, and the limits
// between which a line reads comfortably.
const (
	plainWidth  = 80
	narrowWidth = 32
	wideWidth   = 92
)

// terminalPage asks the terminal that f is, if it is one. NO_COLOR turns bold
// off as well (no-color.org).
func terminalPage(f *os.File, getenv func(string) string) page {
	p := page{width: plainWidth}
	if !term.IsTerminal(int(f.Fd())) {
		return p
	}
	p.drawn = getenv("TERM") != "dumb"
	p.bold = getenv("NO_COLOR") == "" && getenv("TERM") != "dumb"
	if w, _, err := term.GetSize(int(f.Fd())); err == nil && w > 0 {
		p.width = min(max(w, narrowWidth), wideWidth)
	}
	return p
}

func newPaper(p page) *paper {
	if p.width == 0 {
		p.width = plainWidth
	}
	return &paper{page: p}
}

// heading writes a heading with a blank line before it.
func (p *paper) heading(s string) {
	if p.b.Len() > 0 {
		p.b.WriteString("\n")
	}
	if p.bold {
		s = "\x1b[1m" + s + "\x1b[0m"
	}
	p.b.WriteString(s + "\n")
}

// item writes a paragraph whose first line starts with a mark and whose
// further lines stand under the first word.
func (p *paper) item(mark, s string) {
	indent := strings.Repeat(" ", uniseg.StringWidth(mark))
	line := mark
	width := uniseg.StringWidth(mark)
	fresh := true
	for _, word := range strings.Fields(clean(s)) {
		w := uniseg.StringWidth(word)
		if !fresh && width+1+w > p.width {
			p.b.WriteString(line + "\n")
			line, width, fresh = indent, len(indent), true
		}
		if !fresh {
			line += " "
			width++
		}
		line += word
		width += w
		fresh = false
	}
	p.b.WriteString(strings.TrimRight(line, " ") + "\n")
}

// clean takes out what could steer a terminal.
func clean(s string) string {
	return strings.Map(func(r rune) rune {
		if r < 0x20 && r != '\n' && r != '\t' || r >= 0x7f && r < 0xa0 {
			return ' '
		}
		return r
	}, s)
}

func (p *paper) blank() { p.b.WriteString("\n") }

// flush writes everything out.
func (p *paper) flush(out io.Writer) error {
	_, err := io.WriteString(out, p.b.String())
	return err
}

// pad fills s with spaces up to a width in columns.
func pad(s string, width int) string {
	return s + strings.Repeat(" ", max(0, width-uniseg.StringWidth(s)))
}
