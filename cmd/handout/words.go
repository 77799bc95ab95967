package handout

import (
	"io"

	"saywhy/lexicon"
)

// Words is a word list to print and pin up.
type Words struct {
	Title string
	Dish  string // the dish itself, when the type was not what was asked for
	Parts []WordsPart
}

// WordsPart is one sense.
type WordsPart struct {
	Sense  lexicon.Sense
	Moment string
	Scales []SheetScale
	Words  []lexicon.Word
}

// NewWords makes the word list of some senses of a dish type. What is the dish
// that it was asked for, or "" when that says no more than the type.
func NewWords(dish lexicon.Dish, what string, senses []lexicon.Sense) Words {
	page := Words{Title: dish.Title, Dish: what}
	for _, s := range senses {
		list := dish.BySense(s)
		part := WordsPart{Sense: s, Moment: dish.Moments[s], Words: list}
		for _, scale := range Scales(list) {
			part.Scales = append(part.Scales, SheetScale{scale.Name, scale.Words(", ")})
		}
		page.Parts = append(page.Parts, part)
	}
	return page
}

// WriteHTML writes the list as a page to print.
func (w Words) WriteHTML(out io.Writer) error { return render(out, "words.html", w) }
