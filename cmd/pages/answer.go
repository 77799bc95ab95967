package pages

import (
	"net/url"
	"strings"

	"saywhy/analyze"
	"saywhy/cmd/handout"
	"saywhy/cmd/wording"
	"saywhy/lexicon"
)

// answer is what a person gets to see of a report.
type answer struct {
	Cooked string // what was cooked, or the kind of dish
	Kind   string // the kind of dish it was read as; "" for any
	Words  string // how many

	Cautions  []analyze.Caution
	Growth    *growth // since the last draft; nil for the first
	Sentences []answerSentence
	Areas     []answerArea
	Praise    []string
	Plans     []string // what the evaluation before this one meant to change
	Questions []answerQuestion
	More      int // how many questions to ask when more are wanted; 0 when there are none

	Care []handout.SheetNote // the usual cautions of such a dish
}

type answerSentence struct {
	N     int
	Text  string
	Notes []string
	Asked []int // the questions about it
}

type answerArea struct {
	Area                 lexicon.Area
	Said, Detail, Reason bool
	Words                string // says what the picture shows
	Sentences            []int
}

type answerQuestion struct {
	N        int
	Text     string
	Sentence int
	Look     string
	Words    string // the address of the word list that Look offers
}

// growth is what changed since the last draft.
type growth struct {
	Same      bool // nothing was changed
	Reached   []grown
	Lost      []grown
	Vague     []fate
	Questions []fate
	Gone      []string // sentences that were taken out
}

type grown struct {
	Area  lexicon.Area
	Words string
}

type fate struct{ What, Fate string }

// newAnswer reads a text, with the draft before it when there is one.
func newAnswer(shelf *Shelf, as role, form writing) *answer {
	dish, what := shelf.cooked(form.Title, form.Kind)
	in := func(text string) analyze.Input { return analyze.Input{Text: text, Title: what, Role: as.Role} }
	brief := analyze.Brief{Dish: dish, Questions: form.Asked}
	if strings.TrimSpace(form.Last) != "" {
		brief.Last = shelf.Analyzer.Plans(in(form.Last), analyze.Brief{Dish: dish})
	}
	var before *analyze.Report
	// Pressing the button again on the same text asks the same again.
	if form.Before != "" && form.Before != form.Text {
		old := brief
		old.Questions = form.Was
		before = shelf.Analyzer.Read(in(form.Before), old)
		brief.After = before
	}
	// One more than is shown tells whether there are more.
	brief.Questions++
	report := shelf.Analyzer.Read(in(form.Text), brief)
	more := len(report.Questions) > form.Asked
	if more {
		report.Questions = report.Questions[:form.Asked]
	}
	a := lay(report, dish)
	if as.Role == analyze.Adult && a.Kind != "" {
		a.Care = handout.NewSheet(shelf.Lexicon, dish, "").Notes
	}
	if more {
		a.More = min(form.Asked+atOnce, maxAsked)
	}
	for _, p := range brief.Last {
		a.Plans = append(a.Plans, p.Text)
	}
	switch {
	case before != nil:
		a.grow(analyze.Compare(before, report), before)
	case form.Before != "":
		a.Growth = &growth{Same: true}
	}
	return a
}

// lay lays a report out for a page.
func lay(r *analyze.Report, dish lexicon.Dish) *answer {
	a := &answer{Cooked: r.Title, Words: wording.Count(r.Words, "word"), Cautions: r.Cautions, Praise: r.Praise}
	if dish.Name != lexicon.Root {
		a.Kind = dish.Title
	}
	asked := map[int][]int{}
	for _, q := range r.Questions {
		asked[q.Sentence] = append(asked[q.Sentence], q.N)
		out := answerQuestion{N: q.N, Text: q.Text, Sentence: q.Sentence, Look: q.Look}
		if q.Look != "" {
			out.Words = wordsAddress(dish.Name, string(q.Area))
		}
		a.Questions = append(a.Questions, out)
	}
	for _, s := range r.Sentences {
		a.Sentences = append(a.Sentences, answerSentence{N: s.N, Text: s.Text, Notes: wording.Notes(s), Asked: asked[s.N]})
	}
	for _, row := range r.Areas {
		a.Areas = append(a.Areas, answerArea{row.Area, row.Said, row.Detail, row.Reason, wording.Steps(row), row.Sentences})
	}
	return a
}

// wordsAddress is where the words of a dish type for one sense stand.
func wordsAddress(dish, sense string) string {
	return "/words?" + url.Values{"dish": {dish}, "sense": {sense}}.Encode()
}

// grow adds what changed since the last draft, and says beside each sentence
// how it came into this one.
func (a *answer) grow(c *analyze.Comparison, before *analyze.Report) {
	g := &growth{}
	for _, s := range wording.ByArea(c.Reached) {
		g.Reached = append(g.Reached, grown{s.Area, s.String()})
	}
	for _, s := range wording.ByArea(c.Lost) {
		g.Lost = append(g.Lost, grown{s.Area, s.String()})
	}
	for _, v := range c.Vague {
		g.Vague = append(g.Vague, fate{v.Text, wording.VagueFate(v)})
	}
	for _, q := range c.Questions {
		g.Questions = append(g.Questions, fate{q.Text, wording.QuestionFate(q.Fate)})
	}
	for _, p := range c.Sentences {
		if p.New == 0 {
			g.Gone = append(g.Gone, before.Sentences[p.Old-1].Text)
		} else if note := wording.Pair(p); note != "" {
			s := &a.Sentences[p.New-1]
			s.Notes = append([]string{note}, s.Notes...)
		}
	}
	a.Growth = g
}

// heading is the title of a page with an answer on it.
func (a *answer) heading(as role) string {
	what := a.Cooked
	if what == "" {
		what = a.Kind
	}
	if what == "" {
		return wording.Wrote
	}
	return wording.Wrote + ": " + what
}
