package handout

import (
	"io"
	"strings"

	"saywhy/lexicon"
)

// Measures of the printed sheet in millimetres; sheet.html has the same.
const (
	sideHeight = 272.0 // what is printed of one side of A4
	sideWidth  = 186.0
	wordColumn = 82.0 // of the words, beside the ruled lines
	jotColumn  = 95.0 // of the ruled lines
	pairColumn = 89.5 // of the two columns of the back

	rule     = 7.2  // from one ruled line to the next, at least
	heading  = 7.5  // a line of 17 pt
	between  = 6.0  // round a band, a pair or the notes
	foot     = 2.5  // above the foot
	nameLine = 11.0 // name and date, and the rule below them
	testRow  = 9.0  // a line of the taste test
	backHead = 13.0
)

// titleSize is the size of the front's title, in lines of 12 pt: a long one is
// set smaller.
func titleSize(title string) float64 {
	if ems(title)*25/12*em > sideWidth {
		return 17.0 / 12
	}
	return 25.0 / 12
}

// bandHeight is what each of the four senses has of the front.
func bandHeight(title string) float64 {
	size := titleSize(title)
	head := float64(lines(title, sideWidth/em/size))*size*textLine + nameLine
	return (sideHeight - head - textHeight(sideWidth, SheetLead) - between - 2*textLine - foot) / 4
}

// wordRoom is how many lines of words there are beside each sense.
func wordRoom(title string) int { return int((bandHeight(title) - between) / textLine) }

// sheetPage is a sheet as it is laid out: with the ruled lines that there is
// room for, and no more cautions than leave room to jot.
type sheetPage struct {
	Sheet
	Lead, WordsLead, TasteLead string
	Small                      bool // the title is long
	Bands                      []sheetBand
	Pairs                      []sheetPair
}

type sheetBand struct {
	SheetSense
	Lines int // ruled ones
}

type sheetPair struct {
	SheetWatch
	Also  string // hazards that only their names are left room for
	Lines int    // ruled ones
}

func newSheetPage(s Sheet) sheetPage {
	p := sheetPage{Sheet: s, Lead: SheetLead, WordsLead: WordsLead, TasteLead: TasteLead, Small: titleSize(s.Title) < 2}
	for _, sense := range s.Senses {
		room := bandHeight(s.Title) - between - heading - textHeight(jotColumn, sense.Moment)
		p.Bands = append(p.Bands, sheetBand{sense, ruled(room)})
	}
	room := sideHeight - backHead - heading - between - float64(len(s.Test))*testRow - between
	for _, n := range s.Notes {
		room -= textHeight(sideWidth, n.Name+": "+n.Text) + 1
	}
	// The things to watch stand two in a row.
	rows := float64((len(s.Watch) + 1) / 2)
	texts := make([]float64, len(s.Watch))
	for i, w := range s.Watch {
		texts[i] = heading + textHeight(pairColumn, w.Ask) + between
		p.Pairs = append(p.Pairs, sheetPair{SheetWatch: w})
	}
	free := room - (2*rows-1.5)*rule // two lines to jot, one where much is to be watched
	for i := 0; i < len(texts); i += 2 {
		free -= max(texts[i], texts[min(i+1, len(texts)-1)])
	}
	for i := range p.Pairs {
		texts[i] += p.Pairs[i].cut(free)
	}
	left := room
	for i := 0; i < len(texts); i += 2 {
		left -= max(texts[i], texts[min(i+1, len(texts)-1)])
	}
	for i := range p.Pairs {
		row := i - i%2
		row = min(row, len(texts)-1)
		tall := max(texts[row], texts[min(row+1, len(texts)-1)])
		p.Pairs[i].Lines = ruled(left/rows + tall - texts[i])
	}
	return p
}

// cut keeps as many cautions as there is room for and only names the others.
// It returns the height of what stands then.
func (p *sheetPair) cut(room float64) float64 {
	all := p.Hazards
	for n := len(all); ; n-- {
		p.Hazards, p.Also = all[:n], ""
		var names []string
		for _, h := range all[n:] {
			names = append(names, h.Name)
		}
		if len(names) > 0 {
			p.Also = "also " + strings.Join(names, ", ")
		}
		height := textHeight(pairColumn, p.Also)
		for _, h := range p.Hazards {
			height += textHeight(pairColumn, "– "+h.Name+": "+h.Watch)
		}
		if height <= room || n == 0 {
			return height
		}
	}
}

// ruled returns how many ruled lines there is room for, at least one.
func ruled(room float64) int { return max(1, int(room/rule)) }

// WriteHTML writes the sheet as a page to print on both sides of one A4 paper.
func (s Sheet) WriteHTML(out io.Writer) error { return render(out, "sheet.html", newSheetPage(s)) }

// scaleCount is how many scales of a sense stand on the sheet.
func scaleCount(s lexicon.Sense) int {
	if s == lexicon.Smell {
		return 2
	}
	return 3
}
