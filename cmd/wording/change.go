package wording

import (
	"fmt"
	"strings"

	"saywhy/analyze"
	"saywhy/lexicon"
)

// AreaSteps is steps of one area.
type AreaSteps struct {
	Area  lexicon.Area
	Steps []analyze.Step
}

// String names the steps.
func (s AreaSteps) String() string {
	words := make([]string, len(s.Steps))
	for i, step := range s.Steps {
		words[i] = Step(step)
	}
	return strings.Join(words, ", ")
}

// ByArea puts the steps of one area together; they stand side by side already.
func ByArea(steps []analyze.StepReached) []AreaSteps {
	var out []AreaSteps
	for _, s := range steps {
		if n := len(out); n == 0 || out[n-1].Area != s.Area {
			out = append(out, AreaSteps{Area: s.Area})
		}
		last := &out[len(out)-1]
		last.Steps = append(last.Steps, s.Step)
	}
	return out
}

// VagueFate says what became of a judging word between two drafts.
func VagueFate(v analyze.VagueFate) string {
	switch v.Fate {
	case analyze.FateGone:
		return fmt.Sprintf("went (old sentence %d)", v.Old)
	case analyze.FateBacked:
		return fmt.Sprintf("now has something beside it that tells (sentence %d)", v.New)
	case analyze.FateStill:
		return fmt.Sprintf("still stands alone (sentence %d)", v.New)
	}
	return fmt.Sprintf("is new and stands alone (sentence %d)", v.New)
}

// QuestionFate says what became of a question between two drafts.
func QuestionFate(f analyze.Fate) string {
	switch f {
	case analyze.FateAnswered:
		return "answered"
	case analyze.FateGone:
		return "taken out"
	}
	return "still open"
}

// Pair says how a sentence came into the new draft, or "" when it stayed as it
// was.
func Pair(s analyze.SentencePair) string {
	switch {
	case s.Old == 0:
		return "new"
	case s.Changed && s.Moved:
		return fmt.Sprintf("changed, and moved from place %d", s.Old)
	case s.Changed:
		return "changed"
	case s.Moved:
		return fmt.Sprintf("moved from place %d", s.Old)
	}
	return ""
}
