package lexicon

import (
	"errors"
	"fmt"
	"slices"
	"strings"
)

// Errors that the error of Find wraps.
var (
	ErrUnknownDish  = errors.New("unknown dish")
	ErrNearDish     = fmt.Errorf("%w", ErrUnknownDish) // one whose name is near a known one
	ErrSeveralTypes = errors.New("a dish of several types")
)

// Find returns a dish type by its name or title, or by the name of a dish that
// a type covers ("leek and potato soup"), or else by the last words of one
// ("my gran's soda bread"), or by its last word alone ("brownies", where the
// list has "chocolate brownie"): in English it says what a thing is. Where the whole
// name is not known, what stands before "with", a bracket or the like is looked for
// ("potato salad with dill").
//
// Of several types that cover the dish, those whose dishes a folder laid over
// the built-in files names come first; of last words, the most. When several
// types are left, the error names them. The error of an unknown dish names near
// ones.
func (l *Lexicon) Find(name string) (Dish, error) {
	words := strings.Fields(strings.ToLower(name))
	want := strings.Join(words, " ")
	if d, ok := l.dishes[want]; ok && l.hasDishes(want) {
		return d, nil
	}
	if types := l.called.types.find(want); len(types) > 0 {
		return l.dishes[types[0]], nil
	}
	if types := l.called.dishes.find(want); len(types) > 0 {
		return l.theOne(name, types)
	}
	for i := 1; i < len(words); i++ { // the longest end of the name first
		if types := l.called.ends.find(strings.Join(words[i:], " ")); len(types) > 0 {
			return l.theOne(name, types)
		}
	}
	if types := l.called.lasts.find(lastWord(want)); len(types) > 0 {
		return l.theOne(name, types)
	}
	if head := headOfDish(want); head != "" {
		if d, err := l.Find(head); err == nil || errors.Is(err, ErrSeveralTypes) {
			return d, err
		}
	}
	near := Nearest(want, l.knownNames(), 3)
	if len(near) == 0 {
		return Dish{}, fmt.Errorf("%w %q; \"saywhy dish list\" shows the ones there are", ErrUnknownDish, name)
	}
	return Dish{}, fmt.Errorf("%w %q; did you mean %s? \"saywhy dish list\" shows them all", ErrNearDish, name, quoted(near))
}

// knownNames lists the types, each with the dishes that it covers behind it.
func (l *Lexicon) knownNames() []string {
	var out []string
	for _, n := range l.names {
		out = append(append(out, n), l.dishes[n].Dishes...)
	}
	return out
}

// nameIndex finds types by a name in either number: whatever a name may be the
// plural of stands for it. The types are in the order of their names.
type nameIndex map[string][]string

func (x nameIndex) add(name, dishType string) {
	for _, one := range singulars(name) {
		if !slices.Contains(x[one], dishType) {
			x[one] = append(x[one], dishType)
		}
	}
}

func (x nameIndex) find(name string) []string {
	var out []string
	for _, one := range singulars(name) {
		out = append(out, x[one]...)
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// dishNames is what dish types are called.
type dishNames struct {
	types  nameIndex // their names and titles
	dishes nameIndex // the dishes they cover
	ends   nameIndex // both, as another name may end in them
	lasts  nameIndex // the last words of the dishes
}

func newDishNames(types []Dish) dishNames {
	n := dishNames{nameIndex{}, nameIndex{}, nameIndex{}, nameIndex{}}
	for _, d := range types {
		for _, name := range []string{d.Name, strings.ToLower(d.Title), strings.ReplaceAll(d.Name, "-", " ")} {
			n.types.add(name, d.Name)
		}
		n.ends.add(d.Name, d.Name)
		for _, covered := range d.Dishes {
			n.dishes.add(covered, d.Name)
			n.ends.add(covered, d.Name)
			n.lasts.add(lastWord(covered), d.Name)
		}
	}
	return n
}

// hasDishes reports whether a type is one that dishes are asked for by.
func (l *Lexicon) hasDishes(name string) bool {
	d := l.dishes[name]
	return !d.Grouping && d.Name != Root
}

// theOne returns the type that counts among those that cover a dish.
func (l *Lexicon) theOne(name string, types []string) (Dish, error) {
	var own []string
	for _, n := range types {
		if l.laidDishes[n] {
			own = append(own, n)
		}
	}
	if len(own) > 0 {
		types = own
	}
	if len(types) == 1 {
		return l.dishes[types[0]], nil
	}
	return Dish{}, fmt.Errorf("%q is %w, %s; name the type you mean instead, or take the dish out of the others", name, ErrSeveralTypes, quoted(types))
}

func quoted(names []string) string {
	q := make([]string, len(names))
	for i, n := range names {
		q[i] = fmt.Sprintf("%q", n)
	}
	return strings.Join(q, ", ")
}

// sameName reports whether two names differ at most in number.
func sameName(a, b string) bool {
	for _, x := range singulars(a) {
		for _, y := range singulars(b) {
			if x == y {
				return true
			}
		}
	}
	return false
}

// headOfDish returns what stands in a name, in lower case, before the first word or
// mark that goes on to tell more of the dish; "" where there is none.
func headOfDish(name string) string {
	end := len(name)
	for _, more := range []string{" with ", " without ", " in ", " on ", " for ", " like ", " (", ", ", " - ", ": "} {
		if i := strings.Index(name, more); i > 0 {
			end = min(end, i)
		}
	}
	if end == len(name) {
		return ""
	}
	return name[:end]
}

// lastWord returns the last word of a name.
func lastWord(name string) string { return name[strings.LastIndexByte(name, ' ')+1:] }
