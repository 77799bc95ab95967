package grouppage

import (
	"fmt"
	"strings"

	"saywhy/cmd/wording"
	"saywhy/corpus"
	"saywhy/lexicon"
)

// A plot of one learner's path, in units of the picture: sessions from left to
// right, evenly, and the number of areas from nought at the bottom to all ten.
const (
	plotWidth  = 240
	plotHeight = 110
	plotLeft   = 22
	plotRight  = 8
	plotTop    = 8
	plotBottom = 20
)

// plot is one learner's path as three lines, and the same in numbers.
type plot struct {
	Learner  string
	Sessions []plotSession
	Lines    []plotLine
	Said     string // what a reader who cannot see the picture hears
	Width    int
	Height   int
	Left     int
	Right    int
	Marks    []plotMark // of the height
	Base     int
}

// plotSession is a session of the group; Point is nil where the learner wrote
// nothing.
type plotSession struct {
	Name  string
	Full  string
	X     int
	Point *corpus.PathPoint
}

// plotMark is a line across with its number.
type plotMark struct {
	Y, Areas int
}

// plotLine is one of the three lines. Pieces are its unbroken runs of sessions
// as points of a polyline; it breaks where a session is missing.
type plotLine struct {
	Name   string
	Class  string
	Pieces []string
	Dots   [][2]int
}

func newPlot(p corpus.GroupPerson, sessions []corpus.GroupSession) plot {
	out := plot{
		Learner: p.Learner, Width: plotWidth, Height: plotHeight, Left: plotLeft, Right: plotWidth - plotRight, Base: plotHeight - plotBottom,
		Marks: []plotMark{{height(0), 0}, {height(5), 5}, {height(10), 10}},
	}
	at := map[string]*corpus.PathPoint{}
	for i := range p.Path {
		at[p.Path[i].Session] = &p.Path[i]
	}
	var heard []string
	for i, s := range sessions {
		x := plotLeft + 8
		if len(sessions) > 1 {
			x += i * (plotWidth - plotLeft - plotRight - 16) / (len(sessions) - 1)
		}
		name := strings.TrimPrefix(wording.Session(s.Session), "session ")
		out.Sessions = append(out.Sessions, plotSession{Name: shortSession(name), Full: name, X: x, Point: at[s.Session]})
		if point := at[s.Session]; point != nil {
			heard = append(heard, fmt.Sprintf("session %s: %d said, %d with detail, %d with a reason", name, point.Said, point.Detail, point.Reason))
		}
	}
	out.Said = fmt.Sprintf("Path of %s, of %d areas. %s.", p.Learner, len(lexicon.Areas()), strings.Join(heard, "; "))
	for _, l := range []struct {
		name, class string
		of          func(*corpus.PathPoint) int
	}{
		{"said", "said", func(p *corpus.PathPoint) int { return p.Said }},
		{"with detail", "detail", func(p *corpus.PathPoint) int { return p.Detail }},
		{"with a reason", "reason", func(p *corpus.PathPoint) int { return p.Reason }},
	} {
		line := plotLine{Name: l.name, Class: l.class}
		piece := ""
		for _, s := range out.Sessions {
			if s.Point == nil {
				line.Pieces, piece = append(line.Pieces, piece), ""
				continue
			}
			y := height(l.of(s.Point))
			piece += fmt.Sprintf("%d,%d ", s.X, y)
			line.Dots = append(line.Dots, [2]int{s.X, y})
		}
		line.Pieces = append(line.Pieces, piece)
		out.Lines = append(out.Lines, line)
	}
	return out
}

// height is where a number of areas stands.
func height(areas int) int {
	return plotHeight - plotBottom - areas*(plotHeight-plotTop-plotBottom)/len(lexicon.Areas())
}

// shortSession fits a session's name under its place: a number, or a date
// without its year.
func shortSession(name string) string {
	if len(name) == len("of 2026-03-14") && strings.HasPrefix(name, "of ") {
		return name[len("of 2026-"):]
	}
	return name
}
