package lexicon

// Dish is a dish type with everything it inherits: the words a writer may
// need for it and what its cooking usually involves.
type Dish struct {
	Name   string // the type's short name, as commands take it: "breads"
	Title  string // for people: "Breads"
	Family string // the type it inherits from; "" only for the root

	// Grouping marks a family that only passes on what its types share.
	Grouping bool

	Dishes     []string         // dishes the type covers
	Techniques []string         // its usual techniques, as -ing words
	Hazards    []string         // what can hurt: see Hazards
	Allergens  []string         // groups of UK law usually in it
	Moments    map[Sense]string // when each sense speaks: "when you lift the lid"
	Brief      []Area           // what an evaluation of it should reach
	Words      []Word           // by sense, then alphabetically

	parted *partedWords // of a loaded type; see Typical
}

// Hazards returns the names a dish file may give for what can hurt someone.
func Hazards() []string {
	return []string{
		"knife", "oven", "hob", "hot oil", "steam", "boiling liquid", "boiling sugar", "grill",
		"blender", "grater", "raw meat", "raw poultry", "raw fish", "raw egg", "raw flour",
		"cooling rice", "chilling", "reheating", "choking", "bones",
	}
}

// Allergens returns the 14 groups of Annex II of Regulation (EU) 1169/2011, as
// kept in UK law.
func Allergens() []string {
	return []string{
		"cereals with gluten", "crustaceans", "eggs", "fish", "peanuts", "soybeans", "milk",
		"nuts", "celery", "mustard", "sesame", "sulphites", "lupin", "molluscs",
	}
}

// Expects reports whether the brief asks for the area.
func (d Dish) Expects(a Area) bool {
	for _, b := range d.Brief {
		if a == b {
			return true
		}
	}
	return false
}

// BySense returns the words of one sense, in order.
func (d Dish) BySense(s Sense) []Word {
	var out []Word
	for _, w := range d.Words {
		if w.Sense == s {
			out = append(out, w)
		}
	}
	return out
}
