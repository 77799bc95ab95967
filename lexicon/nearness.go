package lexicon

// Nearness tells how near words stand to one dish type: of those typical of it
// (see Dish.Typical), which come first where there is no room for all.
type Nearness struct {
	dish  Dish
	foods map[string]bool
	heads map[string]string // of the nouns of the type's words: lists are sorted by nearness
}

// NewNearness builds the nearness to a dish type.
func NewNearness(d Dish) Nearness {
	n := Nearness{d, d.foods(), map[string]string{}}
	for _, w := range d.Words {
		for _, of := range w.Of {
			if _, ok := n.heads[of]; !ok {
				n.heads[of] = headStem(of)
			}
		}
	}
	return n
}

// Of returns how near a word is, from 0 to 2: 2 for a row of the type's own
// file; for any other the share of its nouns that are foods of the type, and
// half a point more for a row of a family below the root. What is not typical
// has 0.
func (n Nearness) Of(w Word) float64 {
	switch w.From {
	case n.dish.Name:
		return 2
	case Root:
		return n.Described(w)
	}
	return 0.5 + n.Described(w)
}

// Described returns the share of the word's nouns, from 0 to 1, that are foods
// of the type.
func (n Nearness) Described(w Word) float64 {
	if len(w.Of) == 0 {
		return 0
	}
	hits := 0
	for _, of := range w.Of {
		head, ok := n.heads[of]
		if !ok {
			head = headStem(of)
		}
		if n.foods[head] {
			hits++
		}
	}
	return float64(hits) / float64(len(w.Of))
}
