package corpus

import (
	"slices"
	"strings"
	"time"

	"saywhy/lexicon"
)

// formColumns are the columns of a form by what they hold, from 0; -1 or nil
// for what no column holds.
type formColumns struct {
	names    []string
	learner  int
	session  int
	dish     int
	role     int
	date     int
	text     []int
	feedback []int
}

// newFormColumns finds the columns in a row of names: those of course.yaml,
// and common ones for what it leaves open. It returns nil when the row names
// neither a text nor a feedback, and so is no row of names.
func newFormColumns(names []string, named lexicon.Form) (*formColumns, *Unplaced) {
	c := &formColumns{names: names}
	var u *Unplaced
	one := func(what, name string, common ...string) int {
		if u != nil {
			return -1
		}
		var found []int
		found, u = columnsOf(names, what, oneName(name), common, u)
		switch {
		case len(found) == 0:
			return -1
		case len(found) > 1 && u == nil:
			u = unplaced("has two columns that could be the %s, %.40q and %.40q; name one of them in course.yaml, under form", what, names[found[0]], names[found[1]])
		}
		return found[0]
	}
	if !headsForm(names, named) {
		return nil, nil
	}
	c.learner = one("learner", named.Learner, "name", "your name", "what is your name", "full name", "learner", "learner's name",
		"learner name", "name of learner", "student", "student name", "student's name", "pupil", "pupil name", "child's name", "cook")
	c.session = one("session", named.Session, "session", "session number", "which session", "week", "week number", "which week",
		"lesson", "practical", "practical number", "which practical")
	c.dish = one("dish", named.Dish, "dish", "recipe", "what did you make", "what did you cook", "which dish did you make",
		"which dish did you cook", "what i made", "what i cooked", "name of dish", "name of the dish")
	c.role = one("role", named.Role, "role", "i am", "who is writing", "who wrote this", "written by", "your role", "learner or adult",
		"are you the learner or the adult")
	c.date = one("date", named.Date, "date", "timestamp", "submitted", "submitted at", "submitted on", "date submitted", "submission date",
		"completion time", "date of practical", "when")
	if u != nil {
		return nil, u
	}
	if c.text, u = columnsOf(names, "text", named.Text, commonText(), u); u != nil {
		return nil, u
	}
	if c.feedback, u = columnsOf(names, "feedback", named.Feedback, commonFeedback(), u); u != nil {
		return nil, u
	}
	return c, nil
}

func commonText() []string {
	return []string{"evaluation", "my evaluation", "your evaluation", "practical evaluation", "write your evaluation", "write your evaluation here", "text"}
}

func commonFeedback() []string {
	return []string{"feedback", "adult feedback", "adult's feedback", "feedback from the adult", "feedback from an adult", "feedback from home"}
}

func oneName(name string) []string {
	if name == "" {
		return nil
	}
	return []string{name}
}

// headsForm reports whether a row names a column of text or feedback.
func headsForm(names []string, named lexicon.Form) bool {
	want := slices.Concat(named.Text, named.Feedback)
	if named.Text == nil {
		want = append(want, commonText()...)
	}
	if named.Feedback == nil {
		want = append(want, commonFeedback()...)
	}
	return slices.ContainsFunc(names, func(n string) bool {
		return n != "" && slices.ContainsFunc(want, func(w string) bool { return columnName(w) == columnName(n) })
	})
}

// columnsOf finds the named columns, in the order of their naming, or else
// those with a common name.
func columnsOf(names []string, what string, named, common []string, u *Unplaced) ([]int, *Unplaced) {
	var out []int
	for _, want := range named {
		at := slices.IndexFunc(names, func(n string) bool { return columnName(n) == columnName(want) })
		if at < 0 {
			mend := "mend the name there, or in the file"
			if near := lexicon.Nearest(strings.ToLower(want), names, 1); len(near) > 0 {
				mend = "did you mean \"" + near[0] + "\"?"
			}
			return nil, unplaced("has no column %q, which course.yaml names for the %s; %s", want, what, mend)
		}
		out = append(out, at)
	}
	if named != nil {
		return out, u
	}
	for i, n := range names {
		if n != "" && slices.ContainsFunc(common, func(c string) bool { return columnName(c) == columnName(n) }) {
			out = append(out, i)
		}
	}
	return out, u
}

// columnName is the name of a column for comparison: without the marks that
// forms put behind a question.
func columnName(s string) string { return strings.TrimRight(fold(s), " ?:.*!") }

// cell returns a cell of a row, "" where the row has none.
func (c *formColumns) cell(cells []string, column int) string {
	if column < 0 || column >= len(cells) {
		return ""
	}
	return cells[column]
}

// facts are what the cells of a row tell. A date that cannot be read is zero.
func (c *formColumns) facts(cells []string, day func(string) (time.Time, bool)) (facts, error) {
	var f facts
	for _, fact := range []struct {
		key    string
		column int
	}{{"learner", c.learner}, {"session", c.session}, {"dish", c.dish}, {"role", c.role}} {
		if v := c.cell(cells, fact.column); len(v) > maxHeading {
			return f, unplaced("its %s is %d letters long; check that the columns of the row are in their places", fact.key, len(v))
		} else if err := f.set(fact.key, v); err != nil {
			return f, err
		}
	}
	f.date, _ = day(c.cell(cells, c.date))
	return f, nil
}
