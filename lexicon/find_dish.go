package lexicon

import (
	"errors"
	"fmt"
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
// list has "chocolate brownie"): in English it says what a thing is.
//
// Of several types that cover the dish, those whose dishes a folder laid over
// the built-in files names come first; of last words, the most. When several
// types are left, the error names them. The error of an unknown dish names near
// ones.
func (l *Lexicon) Find(name string) (Dish, error) {
	want := strings.Join(strings.Fields(strings.ToLower(name)), " ")
	if d, ok := l.dishes[want]; ok && l.hasDishes(want) {
		return d, nil
	}
	for _, n := range l.names {
		d := l.dishes[n]
		if sameName(want, d.Name) || sameName(want, strings.ToLower(d.Title)) || sameName(want, strings.ReplaceAll(d.Name, "-", " ")) {
			return d, nil
		}
	}
	last := lastWord(want)
	var known, whole, longest, alike []string
	most := 0 // words of the longest match
	for _, n := range l.names {
		known = append(known, n)
		covered := append([]string{n}, l.dishes[n].Dishes...)
		best, like := 0, false
		for i, c := range covered {
			if i > 0 {
				known = append(known, c)
			}
			if i > 0 && sameName(want, c) {
				whole = append(whole, n)
				break
			}
			if endsWith(want, c) {
				best = max(best, len(strings.Fields(c)))
			}
			like = like || i > 0 && sameName(last, lastWord(c))
		}
		if like {
			alike = append(alike, n)
		}
		switch {
		case best == 0 || best < most:
		case best > most:
			most, longest = best, []string{n}
		default:
			longest = append(longest, n)
		}
	}
	switch {
	case len(whole) > 0:
		return l.theOne(name, whole)
	case len(longest) > 0:
		return l.theOne(name, longest)
	case len(alike) > 0:
		return l.theOne(name, alike)
	}
	near := Nearest(want, known, 3)
	if len(near) == 0 {
		return Dish{}, fmt.Errorf("%w %q; \"saywhy dish list\" shows the ones there are", ErrUnknownDish, name)
	}
	return Dish{}, fmt.Errorf("%w %q; did you mean %s? \"saywhy dish list\" shows them all", ErrNearDish, name, quoted(near))
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

// lastWord returns the last word of a name.
func lastWord(name string) string { return name[strings.LastIndexByte(name, ' ')+1:] }

// endsWith reports whether the last words of a name are another name, in
// either number.
func endsWith(name, last string) bool {
	words := strings.Fields(name)
	n := len(strings.Fields(last))
	return n < len(words) && sameName(strings.Join(words[len(words)-n:], " "), last)
}
