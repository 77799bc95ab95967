package lexicon

import (
	"fmt"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"go.yaml.in/yaml/v3"
)

// Root is the name of the type that every other inherits from.
const Root = "food"

// MaxMeaning is how many words a plain meaning may have.
const MaxMeaning = 16

// dishFile is one dish file as written, before anything is inherited.
type dishFile struct {
	dish    Dish             // its own words only
	at      map[string]place // of each section
	wordAt  map[wordKey]place
	outAt   map[wordKey]place // of the words left out
	without []wordKey
}

// place is where something stands: in which file, and at which node.
type place struct {
	source
	node *yaml.Node
}

// mistake reports a problem at the place.
func (p place) mistake(format string, args ...any) { p.problem(p.node, format, args...) }

type wordKey struct {
	sense Sense
	word  string
}

func dishKeys() []string {
	return []string{"type", "title", "family", "grouping", "dishes", "techniques", "hazards", "allergens", "moments", "brief", "words", "without"}
}

func wordKeys() []string { return []string{"means", "of", "forms", "scale"} }

// parseDish reads one dish file strictly. It returns what could be read even
// when there are problems, so that the checks that follow find theirs too.
func parseDish(s source, data []byte) *dishFile {
	d := &dishFile{at: map[string]place{}, wordAt: map[wordKey]place{}, outAt: map[wordKey]place{}}
	root := s.root(data)
	if root == nil {
		return nil
	}
	s.each(root, "the file", func(key string, k, v *yaml.Node) {
		d.at[key] = place{s, k}
		switch key {
		case "type":
			d.dish.Name = s.text(v, "type")
		case "title":
			d.dish.Title = s.text(v, "title")
		case "family":
			d.dish.Family = s.text(v, "family")
		case "grouping":
			switch s.text(v, "grouping") {
			case "yes", "true":
				d.dish.Grouping = true
			case "no", "false":
			default:
				s.problem(v, "grouping is %q; write yes or no", v.Value)
			}
		case "dishes":
			d.dish.Dishes = s.list(v, "dishes")
		case "techniques":
			d.dish.Techniques = s.list(v, "techniques")
		case "hazards":
			d.dish.Hazards = s.known(v, "hazards", Hazards())
		case "allergens":
			d.dish.Allergens = s.known(v, "allergens", Allergens())
		case "moments":
			d.dish.Moments = map[Sense]string{}
			s.senses(v, "moments", func(sense Sense, v *yaml.Node) {
				d.dish.Moments[sense] = s.text(v, "the moment")
			})
		case "brief":
			for _, name := range s.known(v, "brief", areaNames()) {
				d.dish.Brief = append(d.dish.Brief, Area(name))
			}
		case "words":
			s.senses(v, "words", func(sense Sense, v *yaml.Node) { d.words(s, sense, v) })
		case "without":
			s.senses(v, "without", func(sense Sense, v *yaml.Node) {
				for _, item := range s.items(v, "without") {
					key := wordKey{sense, strings.ToLower(s.text(item, "each entry of without"))}
					d.without = append(d.without, key)
					d.outAt[key] = place{s, item}
				}
			})
		default:
			s.unknownKey(k, "a dish file", dishKeys())
		}
	})
	if d.dish.Name == "" {
		s.problem(root, "the type has no name; add a row such as \"type: breads\"")
		return nil
	}
	for i := range d.dish.Words {
		d.dish.Words[i].From = d.dish.Name // the row "type" may stand last
	}
	sortWords(d.dish.Words)
	if d.dish.Title == "" {
		first, n := utf8.DecodeRuneInString(d.dish.Name)
		d.dish.Title = string(unicode.ToUpper(first)) + strings.ReplaceAll(d.dish.Name[n:], "-", " ")
	}
	return d
}

// words reads the rows of one sense.
func (d *dishFile) words(s source, sense Sense, n *yaml.Node) {
	s.each(n, "the words of "+string(sense), func(word string, k, v *yaml.Node) {
		w := Word{Word: strings.ToLower(strings.TrimSpace(word)), Sense: sense}
		s.each(v, fmt.Sprintf("the row of %q", word), func(key string, k, v *yaml.Node) {
			switch key {
			case "means":
				w.Means = s.text(v, "means")
			case "of":
				w.Of = s.list(v, "of")
			case "forms":
				w.Forms = s.list(v, "forms")
			case "scale":
				w.Scale, w.Step = s.scale(v)
			default:
				s.unknownKey(k, "a word", wordKeys())
			}
		})
		switch n := len(strings.Fields(w.Means)); {
		case n == 0:
			s.problem(k, "%q has no meaning; add means: \"…\" in at most %d short words", word, MaxMeaning)
		case n > MaxMeaning:
			s.problem(k, "the meaning of %q has %d words; shorten it to %d or fewer", word, n, MaxMeaning)
		}
		if !strings.ContainsFunc(w.Word, unicode.IsLetter) {
			s.problem(k, "%q has no letters; write the word as it is said", word)
			return
		}
		key := wordKey{sense, w.Word}
		if before, twice := d.wordAt[key]; twice {
			s.problem(k, "%q stands twice in the words of %s, first in line %d; keep one of them", word, sense, before.node.Line)
			return
		}
		d.wordAt[key] = place{s, k}
		d.dish.Words = append(d.dish.Words, w)
	})
}

// known reads a list whose entries come from a fixed set of names.
func (s source) known(n *yaml.Node, what string, names []string) []string {
	var out []string
	for _, item := range s.items(n, what) {
		v := s.text(item, "each entry of "+what)
		ok := false
		for _, name := range names {
			ok = ok || v == name
		}
		if !ok {
			mend := "use one of: " + strings.Join(names, ", ")
			if near := Nearest(v, names, 1); len(near) > 0 {
				mend = fmt.Sprintf("did you mean %q?", near[0])
			}
			s.problem(item, "%s has no entry called %q; %s", what, v, mend)
			continue
		}
		out = append(out, v)
	}
	return out
}

// senses calls f for each of the four senses a section has rows for.
func (s source) senses(n *yaml.Node, what string, f func(Sense, *yaml.Node)) {
	s.each(n, what, func(key string, k, v *yaml.Node) {
		if !Sense(key).Known() {
			s.unknownKey(k, what, []string{"appearance", "aroma", "taste", "texture"})
			return
		}
		f(Sense(key), v)
	})
}

// scale reads "thickness 3".
func (s source) scale(n *yaml.Node) (string, int) {
	v := s.text(n, "scale")
	name, step := "", 0
	if i := strings.LastIndexByte(v, ' '); i > 0 {
		name = strings.TrimSpace(v[:i])
		step, _ = strconv.Atoi(v[i+1:])
	}
	if name == "" || step < 1 || step > 20 {
		s.problem(n, "the scale %q should be a name and a step from 1 up, such as \"thickness 3\"", v)
		return "", 0
	}
	return name, step
}

func areaNames() []string {
	var out []string
	for _, a := range Areas() {
		out = append(out, string(a))
	}
	return out
}
