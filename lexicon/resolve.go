package lexicon

import (
	"fmt"
	"slices"
	"sort"
	"strings"
)

// overlaid returns the type with the rows of a tutor's file laid over it: a
// section that the file has replaces the section below, except words, which
// are added or changed one by one.
func (d *dishFile) overlaid(over *dishFile) *dishFile {
	out := *d
	o := over.dish
	for section := range over.at {
		switch section {
		case "title":
			out.dish.Title = o.Title
		case "family":
			out.dish.Family = o.Family
		case "grouping":
			out.dish.Grouping = o.Grouping
		case "dishes":
			out.dish.Dishes = o.Dishes
		case "techniques":
			out.dish.Techniques = o.Techniques
		case "hazards":
			out.dish.Hazards = o.Hazards
		case "allergens":
			out.dish.Allergens = o.Allergens
		case "moments":
			out.dish.Moments = o.Moments
		case "brief":
			out.dish.Brief = o.Brief
		}
	}
	out.at = laidOver(d.at, over.at)
	out.wordAt = laidOver(d.wordAt, over.wordAt)
	out.outAt = laidOver(d.outAt, over.outAt)
	// A word left out is the type's own, and goes here, or its family's, and
	// goes when the family is known; it may be both.
	out.without = append([]wordKey(nil), d.without...)
	out.without = append(out.without, over.without...)
	out.dish.Words = mergeWords(d.dish.Words, o.Words, over.without)
	return &out
}

func laidOver[K comparable](below, above map[K]place) map[K]place {
	out := make(map[K]place, len(below)+len(above))
	for k, v := range below {
		out[k] = v
	}
	for k, v := range above {
		out[k] = v
	}
	return out
}

// mergeWords returns the words below with those above laid over them and those
// left out taken away. Both lists are sorted, and so is what it returns.
func mergeWords(below, above []Word, without []wordKey) []Word {
	gone := make(map[wordKey]bool, len(without))
	for _, k := range without {
		gone[k] = true
	}
	out := make([]Word, 0, len(below)+len(above))
	for _, w := range below {
		for len(above) > 0 && compareWords(above[0], w) < 0 {
			out = append(out, above[0])
			above = above[1:]
		}
		if len(above) > 0 && compareWords(above[0], w) == 0 {
			w = above[0]
			above = above[1:]
		} else if gone[wordKey{w.Sense, w.Word}] {
			continue
		}
		out = append(out, w)
	}
	return append(out, above...)
}

// resolve gives every type what it inherits and runs the checks that need more
// than one file.
func (l *Lexicon) resolve(types map[string]*dishFile, order []string) {
	const (
		fresh = iota
		open
		done
	)
	state := map[string]int{}
	circled := map[string]bool{} // types in a circle, or below one: nothing else of them can be judged
	var visit func(name string) Dish
	visit = func(name string) Dish {
		if state[name] == done {
			return l.dishes[name]
		}
		f := types[name]
		state[name] = open
		d := f.dish
		switch family := d.Family; {
		case name == Root:
		case family == "":
			f.at["type"].mistake("%q has no family; add a row such as \"family: %s\"", name, Root)
		case types[family] == nil:
			mend := fmt.Sprintf("use one of: %s", strings.Join(order, ", "))
			if near := Nearest(family, order, 1); len(near) > 0 {
				mend = fmt.Sprintf("did you mean %q?", near[0])
			}
			f.at["family"].mistake("there is no family called %q; %s", family, mend)
		case state[family] == open:
			// Of the files in the circle the last one laid over made it.
			at := f.at["family"]
			circled[name] = true
			for n := family; n != name; n = types[n].dish.Family {
				circled[n] = true
				if p := types[n].at["family"]; p.layer > at.layer {
					at = p
				}
			}
			at.mistake("%q inherits from itself by way of %q; choose another family", name, family)
		default:
			d = inherit(visit(family), d, f.without)
			circled[name] = circled[name] || circled[family]
			if !circled[name] {
				f.checkWithout(l.dishes[family])
			}
		}
		if !circled[name] {
			f.check(d, l.Reading)
		}
		d.parted = &partedWords{}
		l.dishes[name] = d
		state[name] = done
		return d
	}
	for _, name := range order {
		d := visit(name)
		for k, at := range types[name].wordAt {
			if at.layer > 0 {
				l.laid[row{name, k}] = true
			}
		}
		if at, ok := types[name].at["dishes"]; ok && at.layer > 0 {
			l.laidDishes[name] = true
		}
		if !d.Grouping && name != Root {
			l.names = append(l.names, name)
		}
	}
	sort.Strings(l.names)
	l.called = newDishNames(l.Types())
	at := map[wordKey]int{}
	for _, name := range append([]string{Root}, order...) {
		for _, w := range l.dishes[name].Words {
			k := wordKey{w.Sense, w.Word}
			i, again := at[k]
			if !again {
				at[k] = len(l.all)
				l.all = append(l.all, w)
				continue
			}
			// Two types may have the same word with forms of their own; a text
			// is read with all of them.
			have := &l.all[i]
			for _, f := range w.Forms {
				if !slices.Contains(have.Forms, f) {
					have.Forms = append(slices.Clone(have.Forms), f)
				}
			}
		}
	}
	sortWords(l.all)
}

// inherit gives a type what its family has and it does not say itself.
func inherit(family, d Dish, without []wordKey) Dish {
	d.Words = mergeWords(family.Words, d.Words, without)
	if d.Hazards == nil {
		d.Hazards = family.Hazards
	}
	if d.Allergens == nil {
		d.Allergens = family.Allergens
	}
	if d.Techniques == nil {
		d.Techniques = family.Techniques
	}
	if d.Brief == nil {
		d.Brief = family.Brief
	}
	moments := map[Sense]string{}
	for s, m := range family.Moments {
		moments[s] = m
	}
	for s, m := range d.Moments {
		moments[s] = m
	}
	d.Moments = moments
	return d
}

// sortWords sorts by sense and then alphabetically; no word stands twice in a
// sense.
func sortWords(words []Word) { slices.SortFunc(words, compareWords) }

func compareWords(a, b Word) int {
	if a.Sense != b.Sense {
		return slices.Index(Senses(), a.Sense) - slices.Index(Senses(), b.Sense)
	}
	return strings.Compare(a.Word, b.Word)
}

// checkWithout reports words left out that the family does not have.
func (d *dishFile) checkWithout(family Dish) {
	for _, k := range d.without {
		found := false
		for _, w := range family.Words {
			found = found || w.Sense == k.sense && w.Word == k.word
		}
		if own, ok := d.wordAt[k]; ok && own.layer < d.outAt[k].layer {
			continue // the type's own word, left out by a file laid over it
		}
		if !found {
			d.outAt[k].mistake("%q is left out of %s but %q does not have it there; take it off the list", k.word, k.sense, d.dish.Family)
		}
	}
}

// check runs the checks of a resolved type: vague words, forms that belong to
// another word, and gaps in scales.
func (d *dishFile) check(resolved Dish, reading *Reading) {
	for _, w := range d.dish.Words {
		at := d.wordAt[wordKey{w.Sense, w.Word}]
		if reading.IsVague(w.Word) {
			at.mistake("%q judges and does not describe; a word list has no place for it", w.Word)
		}
		for _, form := range w.Forms {
			form = strings.ToLower(form)
			if form == w.Word {
				at.mistake("%q lists itself as a form; take it out", w.Word)
				continue
			}
			if other := anotherSense(resolved.Words, form, w.Sense); other != "" {
				at.mistake("the form %q of %q is itself a word of %s; take it out of one of the two", form, w.Word, other)
			}
		}
	}
	d.checkScales(resolved)
}

// anotherSense returns the first sense in which a form is a word of its own, or
// "" when it is none or is one of the same sense.
func anotherSense(words []Word, form string, sense Sense) Sense {
	other := Sense("")
	for _, s := range Senses() {
		if _, found := slices.BinarySearchFunc(words, Word{Word: form, Sense: s}, compareWords); !found {
			continue
		}
		if s == sense {
			return ""
		}
		if other == "" {
			other = s
		}
	}
	return other
}

func (d *dishFile) checkScales(resolved Dish) {
	steps := map[string]map[int]bool{}
	top := map[string]int{}
	for _, w := range resolved.Words {
		if w.Scale == "" {
			continue
		}
		if steps[w.Scale] == nil {
			steps[w.Scale] = map[int]bool{}
		}
		steps[w.Scale][w.Step] = true
		top[w.Scale] = max(top[w.Scale], w.Step)
	}
	for _, w := range d.dish.Words {
		if w.Scale == "" {
			continue
		}
		for step := 1; step < w.Step; step++ {
			if !steps[w.Scale][step] {
				d.wordAt[wordKey{w.Sense, w.Word}].mistake(
					"the scale %q has no word at step %d, below %q at step %d; give it one or move %q down", w.Scale, step, w.Word, w.Step, w.Word)
				break
			}
		}
	}
}
