package main

import (
	"fmt"
	"io"
	"strings"

	"saywhy/analyze"
	"saywhy/lexicon"
)

// writeReport lays a report out for a person: what an adult ought to look at,
// the sentences, the three steps of each area, and the questions.
func writeReport(out io.Writer, on page, r *analyze.Report, dish lexicon.Dish, asked int) error {
	p := newPaper(on)
	if len(r.Cautions) > 0 {
		p.heading("FOR THE ADULT TO LOOK AT FIRST")
		for _, c := range r.Cautions {
			p.item("  ! ", fmt.Sprintf("Sentence %d: %s", c.Sentence, c.Text))
			p.item("    ", c.Advice)
			p.item("    ", "Guidance: "+c.Source)
		}
	}
	if len(r.Sentences) == 0 {
		p.heading("There is nothing to read yet.")
		p.item("", "Write a sentence or two about what you cooked, then read it again.")
		return p.flush(out)
	}
	title := r.Title
	if title == "" {
		title = dish.Title
	}
	p.heading(fmt.Sprintf("WHAT YOU WROTE: %s, %s", title, count(r.Words, "word")))
	for _, s := range r.Sentences {
		p.item(fmt.Sprintf("%3d  ", s.N), s.Text)
		if note := marginNote(s); note != "" {
			p.item("       ", note)
		}
	}
	p.heading("HOW FAR EACH AREA GOT")
	p.item("  ", "Three steps for each: you said it, you gave a detail, you gave a reason.")
	for _, row := range r.Areas {
		p.item("  "+pad(string(row.Area), 14)+"  ", stepsPicture(row)+"  "+stepsWords(row))
	}
	if len(r.Praise) > 0 {
		p.heading("WHAT YOUR READER CAN USE ALREADY")
		for _, line := range r.Praise {
			p.item("  - ", line)
		}
	}
	p.heading("TO THINK ABOUT NEXT")
	if len(r.Questions) == 0 {
		p.item("  ", "No more questions this time. The table above shows what can still grow.")
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

// marginNote says in plain words what a sentence holds.
func marginNote(s analyze.Sentence) string {
	var parts []string
	var bare []string
	for _, v := range s.Vague {
		if v.Bare {
			bare = append(bare, "“"+v.Text+"”")
		}
	}
	if len(bare) > 0 {
		parts = append(parts, "says little by itself: "+strings.Join(bare, ", "))
	}
	var words []string
	for _, w := range s.Sensory {
		words = append(words, w.Text)
	}
	if len(words) > 0 {
		parts = append(parts, "describes: "+strings.Join(words, ", "))
	}
	if len(s.How) > 0 {
		parts = append(parts, "says how")
	}
	if len(s.Why) > 0 {
		parts = append(parts, "says why")
	}
	if len(parts) == 0 {
		return ""
	}
	return "~ " + strings.Join(parts, " · ")
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

// stepsWords says the same as the picture.
func stepsWords(row analyze.AreaRow) string {
	switch {
	case !row.Said && !row.Expected:
		return "not asked for this time"
	case !row.Said:
		return "not there yet"
	}
	got := "said"
	if row.Detail {
		got += ", with detail"
	}
	if row.Reason {
		got += ", with a reason"
	}
	return got
}

func count(n int, what string) string {
	if n == 1 {
		return "1 " + what
	}
	return fmt.Sprintf("%d %ss", n, what)
}
