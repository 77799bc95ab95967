// Package wording holds the words in which the terminal and the pages tell a
// person what a reading found, so that both say the same.
package wording

import (
	"fmt"
	"strings"

	"saywhy/analyze"
)

// Headings of a report and of a comparison of two drafts. The terminal sets
// them in capitals.
const (
	AdultFirst  = "For the adult to look at first"
	Nothing     = "There is nothing to read yet."
	NothingMore = "Write a sentence or two about what you cooked, then read it again."
	Wrote       = "What you wrote"
	HowFar      = "How far each area got"
	ThreeSteps  = "Three steps for each: you said it, you gave a detail, you gave a reason."
	Praise      = "What your reader can use already"
	Next        = "To think about next"
	NoQuestions = "No more questions this time. The table above shows what can still grow."

	Reached      = "Steps your new draft reaches"
	NoneReached  = "No new ones yet."
	Lost         = "Steps that only the old draft had"
	LittleAlone  = "Words that say little by themselves"
	OldQuestions = "The questions of the old draft"
	Sentences    = "Sentence by sentence"
)

// Notes says in plain words what a sentence holds, one note for each kind of
// thing; none when it holds nothing of note.
func Notes(s analyze.Sentence) []string {
	var notes, bare, words []string
	for _, v := range s.Vague {
		if v.Bare {
			bare = append(bare, "“"+v.Text+"”")
		}
	}
	if len(bare) > 0 {
		notes = append(notes, "says little by itself: "+strings.Join(bare, ", "))
	}
	for _, w := range s.Sensory {
		words = append(words, w.Text)
	}
	if len(words) > 0 {
		notes = append(notes, "describes: "+strings.Join(words, ", "))
	}
	if len(s.How) > 0 {
		notes = append(notes, "says how")
	}
	if len(s.Why) > 0 {
		notes = append(notes, "says why")
	}
	return notes
}

// Steps says how far an area got: what the picture of its three steps shows.
func Steps(row analyze.AreaRow) string {
	switch {
	case !row.Said && !row.Expected:
		return "not asked for this time"
	case !row.Said:
		return "not there yet"
	}
	got := []string{Step(analyze.Said)}
	if row.Detail {
		got = append(got, Step(analyze.Detail))
	}
	if row.Reason {
		got = append(got, Step(analyze.Reason))
	}
	return strings.Join(got, ", ")
}

// Step is a step as a person reads it.
func Step(s analyze.Step) string {
	switch s {
	case analyze.Detail:
		return "with detail"
	case analyze.Reason:
		return "with a reason"
	}
	return "said"
}

// Count is a number with what it counts, whose plural ends in s.
func Count(n int, what string) string {
	if n == 1 {
		return "1 " + what
	}
	return fmt.Sprintf("%d %ss", n, what)
}
