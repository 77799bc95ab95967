package corpus

import (
	"slices"
	"strings"

	"saywhy/analyze"
	"saywhy/lexicon"
)

// candidate is a piece of a name that no rule knows, so that it may be the
// learner or a dish no type covers.
type candidate struct {
	run
	at   int // which of the names, from the outermost
	file bool
}

// learnerAndDish finds the learner and the dish in what the names leave.
func (p *places) learnerAndDish(names []nameParts, e *Evaluation, session string, hint facts) error {
	var rest []candidate
	for i, n := range names {
		for _, r := range n.runs {
			rest = append(rest, candidate{r, i, i == len(names)-1})
		}
	}
	known := e.Dish != "" // front matter or a form's column told it
	if !known {
		for _, n := range names {
			if n.dish != "" {
				e.Dish = n.dish
			}
		}
	}
	if len(p.learners) > 0 {
		if e.Learner == "" && !slices.ContainsFunc(rest, func(c candidate) bool { return c.listed }) {
			e.Learner = hint.learner
		}
		if err := p.listed(names, e); err != nil {
			return err
		}
		rest = without(rest, func(c candidate) bool { return !c.listed })
	}
	told := e.Learner != ""
	rest = without(rest, func(c candidate) bool {
		dish := names[c.at].dish
		switch {
		case c.listed, !c.beforeDish && (!c.numbered || dish != ""), !told && !learnerBeside(rest, c):
			return false
		case known:
		case c.beforeDish:
			e.Dish = c.text + " " + dish
		case e.Dish != "" && dish == "":
			// "strawberry fluff (no churn)": the first piece names the dish
		default:
			e.Dish = c.text
		}
		return true
	})
	if e.Dish == "" {
		e.Dish = hint.dish
	}
	if !told && len(rest) == 0 {
		e.Learner = hint.learner
		told = e.Learner != ""
	}
	if told {
		return nil
	}
	return p.oneLearner(names, rest, e, session)
}

// oneLearner decides which of the pieces left is the learner.
func (p *places) oneLearner(names []nameParts, rest []candidate, e *Evaluation, session string) error {
	rest = distinct(rest)
	if len(rest) > 1 && e.Role == analyze.Adult {
		// The adult may have put a name of their own into the file's.
		if above := without(rest, func(c candidate) bool { return c.file }); len(above) == 1 {
			rest = above
		}
	}
	switch {
	case len(rest) == 0:
		return unplaced("its learner cannot be told; put the learner's name into the name of the file or of its folder")
	case len(rest) > 1:
		return unplaced("%q and %q could both be the learner; list the learners in course.yaml, as in \"learners: [amina, ben]\", or take the other words out of the name", rest[0].text, rest[1].text)
	}
	c := rest[0]
	if c.generic {
		return unplaced("in %q the learner and the dish cannot be told apart; write them as \"amina - leek soup\", or list the learners in course.yaml", c.text+" "+names[c.at].dish)
	}
	if c.numbered && e.Dish == "" && !p.cooks(session) {
		return unplaced("%q could be the learner or the dish; name both, as in \"amina/03 leek soup\"", c.text)
	}
	e.Learner = c.text
	return nil
}

// listed finds the one learner of course.yaml that the names speak of.
func (p *places) listed(names []nameParts, e *Evaluation) error {
	if e.Learner != "" {
		for _, l := range p.learners {
			if fold(l) == fold(e.Learner) {
				e.Learner = l
				return nil
			}
		}
		return p.stranger(e.Learner)
	}
	var found []string
	for _, n := range names {
		for _, r := range n.runs {
			if r.listed && !containsFolded(found, r.text) {
				found = append(found, r.text)
			}
		}
	}
	switch len(found) {
	case 0:
		for i := len(names) - 1; i >= 0; i-- {
			if len(names[i].runs) > 0 {
				return p.stranger(names[i].runs[0].text)
			}
		}
		return unplaced("its learner cannot be told; put a name from the learners in course.yaml into the name of the file or of its folder")
	case 1:
		e.Learner = found[0]
		return nil
	}
	return unplaced("its name speaks of %q and of %q; keep the one who wrote it", found[0], found[1])
}

func (p *places) stranger(name string) error {
	if near := lexicon.Nearest(strings.ToLower(name), p.learners, 1); len(near) > 0 {
		return unplaced("%q is no learner of course.yaml; did you mean %q?", name, near[0])
	}
	return unplaced("%q is no learner of course.yaml; add the name to its learners, or mend the name of the file", name)
}

// cooks reports whether course.yaml tells the dish of a session.
func (p *places) cooks(session string) bool {
	for _, s := range p.sessions {
		if s.number == session {
			return true
		}
	}
	return false
}

// learnerBeside reports whether another piece than c may be the learner, so
// that c is the dish or a part of it.
func learnerBeside(rest []candidate, c candidate) bool {
	for _, o := range rest {
		if !o.beforeDish && (o.at != c.at || !o.numbered || c.beforeDish) {
			return true
		}
	}
	return false
}

func without(list []candidate, drop func(candidate) bool) []candidate {
	var out []candidate
	for _, c := range list {
		if !drop(c) {
			out = append(out, c)
		}
	}
	return out
}

// distinct keeps the first of pieces that are spelt alike.
func distinct(list []candidate) []candidate {
	var out []candidate
	for _, c := range list {
		same := false
		for _, o := range out {
			same = same || fold(o.text) == fold(c.text)
		}
		if !same {
			out = append(out, c)
		}
	}
	return out
}

func containsFolded(list []string, s string) bool {
	for _, l := range list {
		if fold(l) == fold(s) {
			return true
		}
	}
	return false
}
