package pages

import "saywhy/cmd/wording"

// say is the headings and lines that the terminal uses as well, for templates.
type say struct {
	AdultFirst, Nothing, NothingMore, Wrote, HowFar, ThreeSteps, Praise, Next, NoQuestions string
	Reached, NoneReached, Lost, LittleAlone, OldQuestions, Sentences                       string
}

func newSay() say {
	return say{
		AdultFirst: wording.AdultFirst, Nothing: wording.Nothing, NothingMore: wording.NothingMore, Wrote: wording.Wrote,
		HowFar: wording.HowFar, ThreeSteps: wording.ThreeSteps, Praise: wording.Praise, Next: wording.Next, NoQuestions: wording.NoQuestions,
		Reached: wording.Reached, NoneReached: wording.NoneReached, Lost: wording.Lost,
		LittleAlone: wording.LittleAlone, OldQuestions: wording.OldQuestions, Sentences: wording.Sentences,
	}
}
