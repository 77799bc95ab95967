package lexicon

import (
	"slices"
	"strings"
)

// Factors for the words of a sense that is named in what was noticed. What is
// smelt is smelt; "tastes", "looks" and "feels" are said more loosely ("it
// tastes dry"), and count for less.
const (
	smellFactor = 2
	senseFactor = 1.3
)

// sensesCued returns the factor of each sense for what was noticed: "smelt like
// the sea" is looked for among the words for aroma.
func sensesCued(noticed string) map[Sense]float64 {
	out := map[Sense]float64{}
	for _, s := range Senses() {
		out[s] = 1
	}
	cues := senseCues()
	for _, w := range saidWords(noticed) {
		for _, s := range Senses() {
			switch {
			case !slices.Contains(cues[s], w):
			case s == Smell:
				out[s] = smellFactor
			default:
				out[s] = senseFactor
			}
		}
	}
	return out
}

// senseCues lists by sense the everyday words that name it.
func senseCues() map[Sense][]string {
	return map[Sense][]string{
		Sight:  strings.Fields("look looks looked looking see saw seen colour coloured"),
		Smell:  strings.Fields("smell smells smelt smelled smelling sniff sniffed whiff"),
		Tongue: strings.Fields("taste tastes tasted tasting"),
		Touch:  strings.Fields("feel feels felt feeling mouth teeth bite chew touch pressed press"),
	}
}

// senseVerbs are joiners that tell something once they are denied.
func senseVerbs() []string {
	return strings.Fields("smell smells smelt smelled taste tastes tasted")
}

// topics returns the terms of what was noticed that only say which food it is
// about: nouns that words describe, unless a word shortly before them makes them
// a likeness, a taste or smell, or a matter of how much ("like bread", "smells
// of butter", "too much sugar").
func (f *Finder) topics(noticed string) map[string]bool {
	out := map[string]bool{}
	since := likeReach
	for _, w := range saidWords(noticed) {
		if slices.Contains(likeWords(), w) {
			since = 0
			continue
		}
		if since++; since > likeReach && f.food[root(w)] {
			out[root(w)] = true
		}
	}
	return out
}

// likeReach is how many words on a likeness reaches.
const likeReach = 3

func likeWords() []string {
	return strings.Fields(`like as of than much many more less enough no without full too bits see left
taste tastes tasted tasting smell smells smelt smelled flavour`)
}
