package lexicon

import (
	"fmt"
	"strings"
	"unicode"
)

// noteWidth is how long a line of a comment gets, in letters.
const noteWidth = 82

// NewDish is a dish file to begin with, for the tutor to fill in: valid as it
// stands, and with comments that say what each row does. When own is set it
// lays over the type itself; otherwise it is a new type of the family.
func NewDish(name string, below Dish, own bool) []byte {
	var b strings.Builder
	line := func(format string, args ...any) { fmt.Fprintf(&b, format+"\n", args...) }
	note := func(text string) {
		row := "#"
		for _, w := range strings.Fields(text) {
			if len(row)+1+len(w) > noteWidth {
				line("%s", row)
				row = "#"
			}
			row += " " + w
		}
		line("%s", row)
	}
	title := below.Title
	if !own {
		title = dishTitle(name)
	}
	line("# %s: say here, for yourself, what this file is for.", title)
	line("#")
	if own {
		line("# It changes the dish type %s for your course. What you leave out stays as it", name)
		line("# is; what you write comes on top of it.")
	} else {
		line("# It adds the dish type %s to your course. It has everything that %s has,", name, below.Name)
		line("# and what you write comes on top of it.")
	}
	line("#")
	line("# You may change every row below. Lines that begin with # are notes: the program")
	line("# passes over them. To use a row that has been made a note, take its first two")
	line("# characters (# and the space) away. \"saywhy dish check --course\" and the name of")
	line("# your folder tells whether all is well.")
	line("type: %s", name)
	line("title: %s", yamlValue(title))
	if !own {
		line("family: %s", below.Name)
		line("")
		line("# The dishes it covers. Whoever names one of them gets this dish type.")
		line("dishes: [%s]", yamlValue(strings.ReplaceAll(name, "-", " ")))
	}
	line("")
	line("# These rows stand here as they are without this file. A row you use takes their")
	line("# place as a whole.")
	if own {
		line("# dishes: %s", yamlRowList(below.Dishes))
	}
	line("# techniques: %s", yamlRowList(below.Techniques))
	line("#")
	note("What can hurt. Choose from: " + strings.Join(Hazards(), ", ") + ".")
	line("# hazards: %s", yamlRowList(below.Hazards))
	line("#")
	note("Allergens usually in it. Choose from: " + strings.Join(Allergens(), ", ") + ".")
	line("# allergens: %s", yamlRowList(below.Allergens))
	line("#")
	line("# When each sense speaks, beginning with when, as, once or while.")
	line("# moments:")
	for _, s := range Senses() {
		line("#   %s: %s", s, yamlValue(below.Moments[s]))
	}
	line("#")
	line("# What an evaluation should reach. Take out what you do not ask for.")
	brief := make([]string, len(below.Brief))
	for i, a := range below.Brief {
		brief[i] = string(a)
	}
	line("# brief: %s", yamlRowList(brief))
	line("")
	line("# Words. One row a word, under its sense: its meaning (at most %d short words), the", MaxMeaning)
	line("# food it usually describes, its other forms, and, where the trade grades it, its")
	line("# scale and step from 1 up. Only the meaning must be there. A word that is there")
	line("# already gets your row in place of its old one. Such a row looks like this:")
	line("#     snappy: {means: \"breaks with a short clean sound\", of: [biscuit], forms: [snap], scale: \"crispness 3\"}")
	line("words:")
	for _, s := range Senses() {
		line("  %s:", s)
	}
	line("")
	line("# Words that make no sense here, to be left out:")
	line("# without:")
	line("#   texture: [one word, another word]")
	return []byte(b.String())
}

// dishTitle is a type's name as a title: "tray-bakes" is Tray bakes.
func dishTitle(name string) string {
	for i, r := range name {
		return string(unicode.ToUpper(r)) + strings.ReplaceAll(name[i+len(string(r)):], "-", " ")
	}
	return ""
}

func yamlValue(s string) string {
	if s == "" {
		return `""`
	}
	return strings.TrimPrefix(yamlRow("k", yamlText(s)), "k: ")
}

func yamlRowList(list []string) string {
	return strings.TrimPrefix(yamlRow("k", yamlList(list)), "k: ")
}

// DishNameProblem says why a name cannot be that of a dish type, with the mend,
// or "".
func DishNameProblem(name string) string {
	mended := strings.Join(strings.FieldsFunc(strings.ToLower(name), func(r rune) bool { return !plainLetter(r) }), "-")
	switch {
	case mended == "":
		return fmt.Sprintf("%q cannot be the name of a dish type; use letters, digits and hyphens, such as tray-bakes", name)
	case mended != name:
		return fmt.Sprintf("%q cannot be the name of a dish type; use %q", name, mended)
	case len(name) > 60:
		return "the name of a dish type has at most 60 letters; shorten it"
	}
	return ""
}

func plainLetter(r rune) bool { return r >= 'a' && r <= 'z' || r >= '0' && r <= '9' }

// RowAt returns the word whose row begins in the line of a dish file.
func RowAt(data []byte, line int) (Sense, string, bool) {
	d := parseDish(source{problems: &Problems{}}, data)
	if d == nil {
		return "", "", false
	}
	for k, at := range d.wordAt {
		if at.node != nil && at.node.Line == line {
			return k.sense, k.word, true
		}
	}
	return "", "", false
}
