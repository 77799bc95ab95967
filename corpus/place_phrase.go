package corpus

import (
	"slices"
	"strings"

	"saywhy/lexicon"
)

// phraseKind is what a known phrase of a name stands for.
type phraseKind int

const (
	noPhrase phraseKind = iota
	dishType            // "soups"
	dishName            // "leek soup"
)

// phrases are the dishes that names are searched for, by the stems of their
// words, so that one and many are alike.
type phrases map[string]phraseKind

func (p phrases) add(kind phraseKind, text string) {
	key := stemmed(nameWords(fold(text)))
	if key != "" && p[key] != dishName {
		p[key] = kind
	}
}

func stemmed(words []nameWord) string { return strings.Join(stemsOf(words), " ") }

func stemsOf(words []nameWord) []string {
	stems := make([]string, len(words))
	for i, w := range words {
		stems[i] = lexicon.Stem(w.lower)
	}
	return stems
}

// maxDishWords is the longest name of a dish that is looked for.
const maxDishWords = 8

// phraseAt is where the dish stands among the words of a name.
type phraseAt struct {
	from, to int
	generic  bool // only a type, so that words before it may belong to it
}

func (p phraseAt) found() bool      { return p.to > p.from }
func (p phraseAt) holds(i int) bool { return i >= p.from && i < p.to }

// dish finds the longest known dish; of equals, the last.
func (p phrases) dish(words []nameWord) phraseAt {
	var best phraseAt
	stems := stemsOf(words)
	for from := range words {
		for to := from + 1; to <= len(words) && to-from <= maxDishWords; to++ {
			if words[to-1].used || to-1 > from && words[to-1].apart {
				break
			}
			if to-from < best.to-best.from {
				continue
			}
			if kind := p[strings.Join(stems[from:to], " ")]; kind != noPhrase {
				best = phraseAt{from, to, kind == dishType}
			}
		}
	}
	return best
}

// extend takes in the food that a dish is made of, before it ("leek soup",
// where only soup is known), and what is said of it behind ("with garlic", "loin
// with crackling", "for cauliflower", "like my mother's").
func (p *phraseAt) extend(words []nameWord, food func(string) bool) {
	for food != nil && p.from > 0 && !words[p.from].apart {
		w := &words[p.from-1]
		joins := w.lower == "and" && p.from > 1 && !words[p.from-2].used && food(words[p.from-2].lower)
		if w.used || !joins && !food(w.lower) {
			break
		}
		p.from--
		p.generic = false
	}
	if p.to >= len(words) || words[p.to].used || words[p.to].apart {
		return
	}
	end := p.to + 1
	for end < len(words) && !words[end].used && !words[end].apart {
		end++
	}
	if end > p.to+1 && saidOfDish(words[p.to:end], food) {
		p.to = end
	}
}

// saidOfDish reports whether the words behind a dish go on with it and name nobody.
func saidOfDish(words []nameWord, food func(string) bool) bool {
	switch words[0].lower {
	case "with", "without", "and", "in", "on", "like":
		return true
	case "for", "of":
		return food != nil && food(words[len(words)-1].lower)
	}
	for i := 1; i+1 < len(words); i++ {
		if w := words[i].lower; (w == "with" || w == "without") && !adultWord(words[i+1].lower) {
			return true
		}
	}
	return false
}

// sameDish reports whether two names of dishes differ at most in case, marks
// and number.
func sameDish(a, b string) bool { return stemmed(nameWords(fold(a))) == stemmed(nameWords(fold(b))) }

// nameBook holds what names are searched for.
type nameBook struct {
	dishes   phrases
	learners map[string]string // as course.yaml writes them, by their folded words
	titles   map[string]string // of course.yaml's sessions, to their numbers
	food     func(string) bool // whether a word is a noun of food; may be nil
}

// dish finds the dish in a name: a known one with what is said of it around.
func (b nameBook) dish(words []nameWord) phraseAt {
	at := b.dishes.dish(words)
	if at.found() {
		at.extend(words, b.food)
	}
	return at
}

// listed finds the learners that course.yaml lists.
func (n *nameParts) listed(words []nameWord, learners map[string]string) {
	known(words, learners, func(l string) { n.runs = append(n.runs, run{text: l, listed: true}) })
}

// titled finds the titles of sessions in course.yaml.
func (n *nameParts) titled(words []nameWord, titles map[string]string) {
	known(words, titles, func(number string) {
		n.marked = true
		if !slices.Contains(n.sessions, number) {
			n.sessions = append(n.sessions, number)
		}
	})
}

// known finds phrases by their folded words, the longest first, and claims
// their words.
func known(words []nameWord, phrases map[string]string, found func(string)) {
	for from := 0; from < len(words) && len(phrases) > 0; from++ {
		for to := min(len(words), from+maxNameWords); to > from; to-- {
			if v, ok := phrases[foldedWords(words[from:to])]; ok && !anyUsed(words[from:to]) {
				found(v)
				use(words[from:to])
				from = to - 1
				break
			}
		}
	}
}

func anyUsed(words []nameWord) bool {
	return slices.ContainsFunc(words, func(w nameWord) bool { return w.used })
}

// maxNameWords is the longest name of a learner or session that is looked for.
const maxNameWords = 6

func foldedWords(words []nameWord) string {
	parts := make([]string, len(words))
	for i, w := range words {
		parts[i] = strings.TrimSuffix(w.lower, "'s")
	}
	return strings.Join(parts, " ")
}
