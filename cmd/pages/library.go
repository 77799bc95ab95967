package pages

import (
	"saywhy/analyze"
	"saywhy/lexicon"
)

// Shelf is what texts are read with at one time. It never changes; a changed
// course makes a new one.
type Shelf struct {
	Lexicon  *lexicon.Lexicon
	Course   *lexicon.Course // never nil
	Analyzer *analyze.Analyzer

	// Problems are what is wrong with the course folder now. While there are
	// any, the shelf is the last one without.
	Problems lexicon.Problems
}

// Library gives the shelf in use. It is safe for many goroutines, and quick:
// every request asks.
type Library interface {
	Current() *Shelf
}

// Fixed is a Library that never changes.
func Fixed(s *Shelf) Library { return fixed{s} }

type fixed struct{ shelf *Shelf }

func (f fixed) Current() *Shelf { return f.shelf }

// cooked returns the dish type for what a person wrote and chose, and what was
// cooked in their words. A name that nobody knows is no mistake: the text is
// then read for any dish.
func (s *Shelf) cooked(title, kind string) (dish lexicon.Dish, what string) {
	what = title
	name := kind
	if name == "" {
		name = title
	}
	dish, cooked, err := s.Course.Cooked(s.Lexicon, name)
	if err != nil {
		return s.Lexicon.General(), what
	}
	if what == "" {
		what = cooked
	}
	return dish, what
}
