package corpus

import (
	"cmp"
	"slices"

	"saywhy/analyze"
	"saywhy/lexicon"
)

// sensed is a headword under a sense.
type sensed struct {
	sense lexicon.Sense
	word  string
}

// words counts the words of the learners' texts, each once a text, and finds
// those of the lists that no learner wrote.
func (g *Group) words() GroupWords {
	learners := g.counted(analyze.Learner)
	out := GroupWords{Texts: len(learners), Vague: vagueCounts(learners)}
	used := senseCounts(learners)
	out.Sensory = listed(used)
	adults := senseCounts(g.counted(analyze.Adult))
	for w := range used {
		delete(adults, w)
	}
	out.AdultOnly = listed(adults)
	out.Unused = unusedWords(learners)
	return out
}

func vagueCounts(texts []*entry) []VagueCount {
	counts := map[string]*VagueCount{}
	for _, e := range texts {
		bare := map[string]bool{}
		for _, v := range e.vague {
			bare[v.Text] = bare[v.Text] || v.Bare
		}
		for word, isBare := range bare {
			if counts[word] == nil {
				counts[word] = &VagueCount{Word: word}
			}
			counts[word].Texts++
			counts[word].Bare += one(isBare)
		}
	}
	out := []VagueCount{}
	for _, c := range counts {
		out = append(out, *c)
	}
	slices.SortFunc(out, func(a, b VagueCount) int { return cmp.Or(cmp.Compare(b.Texts, a.Texts), cmp.Compare(a.Word, b.Word)) })
	return out
}

// senseCounts counts the texts in which a headword is said of the food, denied
// or not.
func senseCounts(texts []*entry) map[sensed]int {
	counts := map[sensed]int{}
	for _, e := range texts {
		for w := range e.headwords() {
			counts[w]++
		}
	}
	return counts
}

func (e *entry) headwords() map[sensed]bool {
	out := map[sensed]bool{}
	for _, q := range e.qualities {
		if q.Word != "" && !q.Supposed && !q.Other {
			out[sensed{q.Sense, q.Word}] = true
		}
	}
	return out
}

func listed(counts map[sensed]int) []SenseCount {
	out := []SenseCount{}
	for w, n := range counts {
		out = append(out, SenseCount{w.word, w.sense, n})
	}
	slices.SortFunc(out, func(a, b SenseCount) int {
		return cmp.Or(cmp.Compare(b.Texts, a.Texts), cmp.Compare(a.Word, b.Word), cmp.Compare(a.Sense, b.Sense))
	})
	return out
}

// unusedWords lists, for each dish type and sense, the words typical of the
// type that no learner's text about it has.
func unusedWords(texts []*entry) []UnusedWords {
	byType := map[string][]*entry{}
	for _, e := range texts {
		byType[e.list.Name] = append(byType[e.list.Name], e)
	}
	out := []UnusedWords{}
	for _, of := range byType {
		dish := of[0].list
		used := senseCounts(of)
		for _, sense := range lexicon.Senses() {
			typical, _ := dish.Typical(sense)
			u := UnusedWords{Dish: dish.Title, Sense: sense, Texts: len(of), Listed: len(typical), Words: []string{}}
			for _, w := range typical {
				if used[sensed{sense, w.Word}] == 0 {
					u.Words = append(u.Words, w.Word)
				}
			}
			out = append(out, u)
		}
	}
	slices.SortStableFunc(out, func(a, b UnusedWords) int { return cmp.Compare(a.Dish, b.Dish) })
	return out
}
