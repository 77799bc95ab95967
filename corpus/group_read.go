package corpus

import (
	"context"
	"errors"
	"iter"
	"sync"

	"saywhy/analyze"
	"saywhy/lexicon"
)

// GroupReader reads the evaluations of a course into a Group.
type GroupReader struct {
	Lexicon  *lexicon.Lexicon
	Course   *lexicon.Course
	Analyzer *analyze.Analyzer
	Ordered  Ordered
	Progress func(done int) // called after each evaluation; may be nil
}

// noted is one evaluation with what was read in it, or what could not be read.
type noted struct {
	Evaluation
	dish    lexicon.Dish
	notes   *analyze.Notes
	unknown error // of the dish
	err     error // *Unplaced
}

// Read reads all evaluations of a sequence such as Folder returns and reports
// on them. An evaluation of a dish that nobody knows is read as any dish is, with
// a remark. Read fails only when ctx ends.
func (r GroupReader) Read(ctx context.Context, evaluations iter.Seq2[Evaluation, error]) (*GroupReport, error) {
	g := NewGroup(r.Lexicon)
	shared := NewSharedFinder(TaskWording(r.Lexicon))
	done := 0
	items := func(yield func(noted) bool) {
		for e, err := range evaluations {
			if !yield(noted{Evaluation: e, err: err}) {
				return
			}
		}
	}
	dishes := NewDishes(r.Lexicon, r.Course)
	note := func(n noted) noted { return r.note(dishes, n) }
	err := InOrder(ctx, r.Ordered, items, note, func(n noted) error {
		var u *Unplaced
		switch {
		case errors.As(n.err, &u):
			g.Unplaced(*u)
			return nil
		case n.err != nil:
			return n.err
		case n.unknown != nil:
			g.Remark(n.Source, n.unknown.Error()+"; it was read as any dish is")
		}
		g.Add(n.Evaluation, n.dish, n.notes)
		shared.Add(n.Evaluation)
		done++
		if r.Progress != nil {
			r.Progress(done)
		}
		return nil
	})
	if err != nil {
		return nil, err
	}
	var found []Shared
	var finding sync.WaitGroup
	finding.Go(func() { found = shared.Find() })
	report := g.Report()
	finding.Wait()
	report.Shared = sharedWording(found)
	report.Title = r.Course.Title
	return report, nil
}

func (r GroupReader) note(dishes *Dishes, n noted) noted {
	if n.err != nil {
		return n
	}
	dish, title, err := dishes.Cooked(n.Dish)
	if err != nil {
		dish, title, n.unknown = r.Lexicon.General(), n.Dish, err
	}
	n.dish = dish
	n.notes = r.Analyzer.Note(
		analyze.Input{Text: n.Text, Title: title, Role: n.Role},
		analyze.Brief{Dish: dish, Silent: true}, // the report asks nobody anything
	)
	return n
}

// sharedWording is what texts share, as the report holds it.
func sharedWording(found []Shared) []SharedWording {
	out := []SharedWording{}
	for _, s := range found {
		out = append(out, SharedWording{
			A: placeOf(s.First.Evaluation), TextA: s.First.Text(),
			B: placeOf(s.Second.Evaluation), TextB: s.Second.Text(), Words: s.Words,
		})
	}
	return out
}

func placeOf(e Evaluation) Place { return Place{e.Learner, e.Session, e.Dish, e.Role, e.Source} }
