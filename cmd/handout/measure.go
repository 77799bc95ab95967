package handout

import "strings"

// How much room text takes when it is printed in 12 pt. A page cannot know
// which font the machine has that it is printed on, so widths are those of the
// widest that is usual on screens (DejaVu Sans; Verdana is near it), rounded up.

// ems returns the width of a text in ems.
func ems(s string) float64 {
	w := 0.0
	for _, r := range s {
		switch {
		case strings.ContainsRune("iIjl.,:;'’|! ·", r):
			w += 0.35
		case strings.ContainsRune("ftr-()/", r):
			w += 0.45
		case strings.ContainsRune("mwMW—%", r):
			w += 1
		case r >= 'A' && r <= 'Z':
			w += 0.75
		default:
			w += 0.61
		}
	}
	return w
}

// lines returns how many lines of a width in ems a text takes when it is broken
// at its spaces, and within words that are longer than a line.
func lines(text string, width float64) int {
	n, at := 0, 0.0
	for _, word := range strings.Fields(text) {
		w := ems(word)
		if n > 0 && at+ems(" ")+w <= width {
			at += ems(" ") + w
			continue
		}
		n++
		for at = w; at > width; at -= width {
			n++
		}
	}
	return n
}

// packed returns how many lines of a width in ems a list of words takes whose
// items are not broken, each behind its dot (".words li" in sheet.html).
func packed(items []string, width float64) int {
	n, at := 0, 0.0
	for _, item := range items {
		w := ems("· "+item) + itemGap
		if n == 0 || at+w > width+itemGap {
			n++
			at = 0
		}
		at += w
		if w > width+itemGap { // alone, and broken
			n += lines("· "+item, width) - 1
		}
	}
	return n
}

// itemGap is the room in ems between two words of a list.
const itemGap = 0.5

// textHeight returns how many millimetres paragraphs take in a column of a
// width in millimetres.
func textHeight(width float64, paragraphs ...string) float64 {
	n := 0
	for _, p := range paragraphs {
		n += lines(p, width/em)
	}
	return float64(n) * textLine
}

// Millimetres of text in 12 pt.
const (
	em       = 12 * 25.4 / 72
	textLine = 1.3 * em
)
