package handout

import (
	"io"

	"saywhy/lexicon"
)

// Words is a word list to print and pin up.
type Words struct {
	Title string
	Dish  string // the dish itself, when the type was not what was asked for
	Type  string // the dish type's name, as commands take it
	Parts []WordsPart
	More  int  // how many words of these senses are left out
	Large bool // set in large print
}

// WordsPart is one sense.
type WordsPart struct {
	Sense  lexicon.Sense
	Moment string
	Scales []SheetScale
	Words  []lexicon.Word
}

// NewWords makes the word list of some senses of a dish type: the words that
// are typical of it, or with all every word. What is the dish that it was asked
// for, or "" when that says no more than the type.
func NewWords(dish lexicon.Dish, what string, senses []lexicon.Sense, all bool) Words {
	page := Words{Title: dish.Title, Dish: what, Type: dish.Name}
	for _, s := range senses {
		list := dish.BySense(s)
		scales := Scales(list)
		if !all {
			typical, other := dish.Typical(s)
			scales, _ = PartScales(scales, typical)
			list = typical
			page.More += len(other)
		}
		part := WordsPart{Sense: s, Moment: dish.Moments[s], Words: list}
		for _, scale := range scales {
			part.Scales = append(part.Scales, SheetScale{scale.Name, scale.Words(", ")})
		}
		page.Parts = append(page.Parts, part)
	}
	return page
}

// WriteHTML writes the list as a page to print.
func (w Words) WriteHTML(out io.Writer) error { return render(out, "words.html", w) }
