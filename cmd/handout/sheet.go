package handout

import (
	"slices"
	"sort"
	"strings"

	"saywhy/lexicon"
)

// Sheet is the two sides of the sheet for one practical: the front for the
// learner, to jot down what is noticed; the back for the adult who watches.
type Sheet struct {
	Title  string // the dish, as it was asked for
	Course string // the title of the tutor's course, if any
	Type   string // the dish type's name, as commands take it; "" for any dish

	Senses    []SheetSense // the front
	Watch     []SheetWatch // the back
	Test      []string     // the taste test
	Notes     []SheetNote  // the usual cautions of such a dish
	MoreWords int          // how many words of the type are not on the sheet
}

// SheetSense is one sense: when it speaks, and the words to choose from.
type SheetSense struct {
	Sense  lexicon.Sense
	Verb   string // what is done with it: look, smell, taste, feel
	Moment string // "when you lift the lid"; may be empty
	Scales []SheetScale
	Words  []string
}

// SheetScale is a scale as one row of words, low to high.
type SheetScale struct {
	Name  string
	Steps []string
}

// NewSheet makes the sheet of a dish type. Title is the dish as it was asked
// for; when it is empty the sheet is called after the type.
//
// Of a type's many words the sheet takes, sense by sense, as many as there is
// room for: first the scales nearest to the dish, whole from low to high, so
// that every fault has its opposite beside it; then single words and phrases,
// the nearest first (see lexicon.Nearness).
func NewSheet(lex *lexicon.Lexicon, dish lexicon.Dish, title string) Sheet {
	if title == "" {
		title = dish.Title
	}
	s := Sheet{Title: capital(title), Type: typeName(dish), Watch: watches(lex, dish), Test: tasteTest(), MoreWords: len(dish.Words)}
	s.Notes = notes(dish, s.Watch)
	near := lexicon.NewNearness(dish)
	for _, sense := range lexicon.Senses() {
		part := sheetSense(dish, sense, near, wordRoom(s.Title))
		s.MoreWords -= len(part.Words)
		for _, scale := range part.Scales {
			s.MoreWords -= len(scale.Steps)
		}
		s.Senses = append(s.Senses, part)
	}
	return s
}

// sheetSense chooses the words of one sense for a number of lines.
func sheetSense(dish lexicon.Dish, sense lexicon.Sense, near lexicon.Nearness, room int) SheetSense {
	out := SheetSense{Sense: sense, Verb: verb(sense), Moment: dish.Moments[sense]}
	list := dish.BySense(sense)
	most := room * 2 / 3 // of the lines may be scales
	used := map[string]bool{}
	for _, s := range nearestScales(list, near, scaleCount(sense)) {
		row := SheetScale{s.Name, s.Words(" or ")}
		n := lines(row.Name+": "+strings.Join(row.Steps, " – "), wordColumn/em)
		if n > most {
			continue
		}
		most -= n
		room -= n
		out.Scales = append(out.Scales, row)
		for _, w := range row.Steps {
			used[w] = true
		}
	}
	list = slices.DeleteFunc(list, func(w lexicon.Word) bool {
		// Nothing raw is tasted, so the sheet does not put it into words.
		raw := sense == lexicon.Tongue && slices.Contains(strings.FieldsFunc(w.Word, func(r rune) bool { return r == ' ' || r == '-' }), "raw")
		return used[w.Word] || raw || near.Of(w) == 0
	})
	sort.SliceStable(list, func(i, j int) bool { return near.Of(list[i]) > near.Of(list[j]) })
	for n := len(list); ; n-- {
		out.Words = out.Words[:0]
		for _, w := range list[:n] {
			out.Words = append(out.Words, w.Word)
		}
		slices.Sort(out.Words)
		if packed(out.Words, wordColumn/em) <= room {
			return out
		}
	}
}

func verb(s lexicon.Sense) string {
	switch s {
	case lexicon.Sight:
		return "look"
	case lexicon.Smell:
		return "smell"
	case lexicon.Tongue:
		return "taste"
	}
	return "feel"
}
