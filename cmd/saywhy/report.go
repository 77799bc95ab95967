package main

import (
	"fmt"
	"io"
	"strings"

	"saywhy/analyze"
	"saywhy/cmd/wording"
	"saywhy/lexicon"
)

// writeReport lays a report out for a person: what an adult ought to look at,
// the sentences, the three steps of each area, and the questions.
func writeReport(out io.Writer, on page, r *analyze.Report, dish lexicon.Dish, asked int) error {
	p := newPaper(on)
	if len(r.Cautions) > 0 {
		p.heading(strings.ToUpper(wording.AdultFirst))
		for _, c := range r.Cautions {
			p.item("  ! ", fmt.Sprintf("Sentence %d: %s", c.Sentence, c.Text))
			p.item("    ", c.Advice)
			p.item("    ", "Guidance: "+c.Source)
		}
	}
	if len(r.Sentences) == 0 {
		p.heading(wording.Nothing)
		p.item("", wording.NothingMore)
		return p.flush(out)
	}
	title := r.Title
	if title == "" && dish.Name != lexicon.Root {
		title = dish.Title
	}
	if title != "" {
		title += ", "
	}
	p.heading(fmt.Sprintf("%s: %s%s", strings.ToUpper(wording.Wrote), title, count(r.Words, "word")))
	for _, s := range r.Sentences {
		p.item(fmt.Sprintf("%3d  ", s.N), s.Text)
		if notes := wording.Notes(s); len(notes) > 0 {
			p.item("       ", "~ "+strings.Join(notes, " · "))
		}
	}
	p.heading(strings.ToUpper(wording.HowFar))
	p.item("  ", wording.ThreeSteps)
	for _, row := range r.Areas {
		p.item("  "+pad(string(row.Area), 14)+"  ", stepsPicture(row)+"  "+wording.Steps(row))
	}
	if len(r.Praise) > 0 {
		p.heading(strings.ToUpper(wording.Praise))
		for _, line := range r.Praise {
			p.item("  - ", line)
		}
	}
	p.heading(strings.ToUpper(wording.Next))
	if len(r.Questions) == 0 {
		p.item("  ", wording.NoQuestions)
	}
	for _, q := range r.Questions {
		where := ""
		if q.Sentence > 0 {
			where = fmt.Sprintf("  (sentence %d)", q.Sentence)
		}
		p.item(fmt.Sprintf("%3d. ", q.N), q.Text+where)
		if q.Look != "" {
			p.item("     ", q.Look)
		}
	}
	if asked > 0 && len(r.Questions) == asked {
		p.blank()
		p.item("  ", "More when you have done these, or with --questions 0.")
	}
	return p.flush(out)
}

// stepsPicture draws the three steps as a small stair of spoons laid or not.
func stepsPicture(row analyze.AreaRow) string {
	mark := func(b bool) string {
		if b {
			return "●"
		}
		return "·"
	}
	return mark(row.Said) + mark(row.Detail) + mark(row.Reason)
}

// count is a number with what it counts.
func count(n int, what string) string { return wording.Count(n, what) }
