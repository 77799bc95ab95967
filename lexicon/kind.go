package lexicon

import "strings"

// Kind is what a noun names, as far as a reader of cookery texts must know it
// to tell whether an adjective describes the food.
type Kind string

// The kinds of noun. DishNoun, PartNoun and Ingredient are food; Protein marks those
// foods that must be cooked through and stands beside another kind.
const (
	DishNoun   Kind = "dish"
	PartNoun   Kind = "part"
	Ingredient Kind = "ingredient"
	Protein    Kind = "protein"
	Tool       Kind = "tool"
	Body       Kind = "body"
	Cloth      Kind = "cloth"
	Place      Kind = "place"
	Person     Kind = "person"
	Time       Kind = "time"
	Other      Kind = "other"
	NoKind     Kind = ""
)

func kinds() []Kind {
	return []Kind{DishNoun, PartNoun, Ingredient, Protein, Tool, Body, Cloth, Place, Person, Time, Other}
}

// Known reports whether k is one of the kinds a file may name.
func (k Kind) Known() bool {
	for _, known := range kinds() {
		if k == known {
			return true
		}
	}
	return false
}

// Food reports whether nouns of the kind are food.
func (k Kind) Food() bool { return k == DishNoun || k == PartNoun || k == Ingredient || k == Protein }

// Nouns knows the kinds of nouns in singular and plural.
type Nouns struct {
	kind    map[string]Kind
	protein map[string]bool
	opens   map[string]bool // first words of nouns of two words
}

func newNouns(byKind map[Kind][]string) *Nouns {
	n := &Nouns{kind: map[string]Kind{}, protein: map[string]bool{}, opens: map[string]bool{}}
	for _, k := range kinds() {
		for _, w := range byKind[k] {
			w = strings.ToLower(w)
			if first, _, two := strings.Cut(w, " "); two {
				n.opens[first] = true
			}
			if k == Protein {
				n.protein[w] = true
				if _, ok := n.kind[w]; !ok {
					n.kind[w] = Ingredient
				}
				continue
			}
			if _, ok := n.kind[w]; !ok {
				n.kind[w] = k
			}
		}
	}
	return n
}

// Kind returns the kind of a lower-case noun in either number, or NoKind. Of
// several words the last decides ("apple crumble" is a crumble) unless the
// whole is listed.
func (n *Nouns) Kind(noun string) Kind {
	for _, w := range singulars(noun) {
		if k, ok := n.kind[w]; ok {
			return k
		}
	}
	return NoKind
}

// Opens reports whether the word is the first of a listed noun of several.
func (n *Nouns) Opens(word string) bool { return n.opens[word] }

// MustCook reports whether the noun names a food that has to be cooked through.
func (n *Nouns) MustCook(noun string) bool {
	for _, w := range singulars(noun) {
		if n.protein[w] {
			return true
		}
	}
	return false
}

// singulars lists what a noun may be the plural of, itself first.
func singulars(noun string) []string {
	out := []string{noun}
	switch {
	case strings.HasSuffix(noun, "ies") && len(noun) > 4:
		out = append(out, noun[:len(noun)-3]+"y", noun[:len(noun)-1])
	case strings.HasSuffix(noun, "ves") && len(noun) > 4:
		out = append(out, noun[:len(noun)-3]+"f", noun[:len(noun)-3]+"fe", noun[:len(noun)-1])
	case strings.HasSuffix(noun, "es") && len(noun) > 3:
		out = append(out, noun[:len(noun)-1], noun[:len(noun)-2])
	case strings.HasSuffix(noun, "s") && len(noun) > 2 && !strings.HasSuffix(noun, "ss"):
		out = append(out, noun[:len(noun)-1])
	}
	return out
}
