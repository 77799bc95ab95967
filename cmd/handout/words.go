package handout

import (
	"io"

	"saywhy/lexicon"
)

// Words is a word list to print and pin up.
type Words struct {
	Title string
	Dish  string // the dish itself, when the type was not what was asked for
	Type  string // the dish type's name, as commands take it; "" for any dish
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

// NewWords makes the list of the words that are typical of a dish type, for some
// senses. What is the dish that it was asked for, or "" when that says no more
// than the type.
func NewWords(dish lexicon.Dish, what string, senses []lexicon.Sense) Words {
	page := NewAllWords(dish, what, senses)
	for i, part := range page.Parts {
		typical, other := dish.Typical(part.Sense)
		scales, _ := PartScales(Scales(part.Words), typical)
		page.Parts[i].Words = typical
		page.Parts[i].Scales = rows(scales)
		page.More += len(other)
	}
	return page
}

// NewAllWords makes the list of every word that a dish type has.
func NewAllWords(dish lexicon.Dish, what string, senses []lexicon.Sense) Words {
	page := Words{Title: dish.Title, Dish: what, Type: typeName(dish)}
	for _, s := range senses {
		list := dish.BySense(s)
		page.Parts = append(page.Parts, WordsPart{s, dish.Moments[s], rows(Scales(list)), list})
	}
	return page
}

// rows returns scales as they are printed, the words of a step together.
func rows(scales []Scale) []SheetScale {
	var out []SheetScale
	for _, s := range scales {
		out = append(out, SheetScale{s.Name, s.Words(", ")})
	}
	return out
}

// WriteHTML writes the list as a page to print.
func (w Words) WriteHTML(out io.Writer) error { return render(out, "words.html", w) }

// typeName is the name by which commands take a dish type; any dish has none.
func typeName(dish lexicon.Dish) string {
	if dish.Name == lexicon.Root {
		return ""
	}
	return dish.Name
}
