package corpus

import (
	"maps"
	"regexp"
	"slices"
	"strings"

	"saywhy/lexicon"
)

// slot is the place of a wording where a piece of the writer's own text goes.
var slot = regexp.MustCompile(`\{[^{}]*\}`)

// TaskWording returns what the program and its word lists put before a writer:
// the questions with all their wordings, the advice beside a caution, and the
// meanings of words and moments of dish types as the task, the words themselves
// with their forms as the list. What stands on a tutor's own sheet comes on top.
func TaskWording(lex *lexicon.Lexicon) (task, list []string) {
	for _, section := range sortedKeys(lex.Reading.Wordings) {
		groups := lex.Reading.Wordings[section]
		for _, group := range sortedKeys(groups) {
			for _, name := range sortedKeys(groups[group]) {
				for _, w := range groups[group][name] {
					task = append(task, slot.Split(w, -1)...)
				}
			}
		}
	}
	for _, kind := range sortedKeys(lex.Reading.Cautions) {
		task = append(task, lex.Reading.Cautions[kind].Advice)
	}
	for _, d := range lex.Types() {
		for _, s := range lexicon.Senses() {
			task = append(task, d.Moments[s])
		}
	}
	for _, w := range lex.Words() {
		task = append(task, w.Word+": "+w.Means, w.Means)
		for _, form := range append([]string{w.Word}, w.Forms...) {
			if !strings.Contains(form, " ") { // "hole in the middle" must not take hole, in, the and middle out of every text
				list = append(list, form)
			}
		}
	}
	return task, list
}

func sortedKeys[V any](m map[string]V) []string { return slices.Sorted(maps.Keys(m)) }
