package corpus

import (
	"slices"

	"saywhy/analyze"
)

// disagreements lists where the learner's text and an adult's about the same
// dish tell a quality differently. Two sensory words disagree when
//
//   - both are said of this dish, as it was: not wished for, not last time's;
//   - both are said of the same part, or both of the dish as a whole;
//   - one denies the very word that the other says, and not only a degree of it
//     ("not too sweet"), or they are opposites (lexicon.Opposites) and neither is
//     denied;
//   - neither text also says the other's word of that part, or of the whole: who tells that the
//     sauce went lumpy and then smooth tells the same as who calls it smooth.
//
// Each pair of words is named once, by where it stands first.
func (g *Group) disagreements() []Disagreement {
	type home struct{ learner, session string }
	adults := map[home][]*entry{}
	for _, e := range g.counted(analyze.Adult) {
		h := home{e.learner, e.session}
		adults[h] = append(adults[h], e)
	}
	out := []Disagreement{}
	for _, e := range g.counted(analyze.Learner) {
		for _, adult := range adults[home{e.learner, e.session}] {
			out = append(out, g.disagree(e, adult)...)
		}
	}
	return out
}

func (g *Group) disagree(learner, adult *entry) []Disagreement {
	var out []Disagreement
	type words struct{ of, child, adult string }
	seen := map[words]bool{}
	for _, a := range learner.qualities {
		for _, b := range adult.qualities {
			w := words{a.Of, a.Word, b.Word}
			if seen[w] || !g.contradict(a.Quality, b.Quality) || says(learner, b) || says(adult, a) {
				continue
			}
			seen[w] = true
			out = append(out, Disagreement{
				Learner: learner.learner, Session: learner.session, Dish: learner.dish, Of: a.Of,
				Child: Told{a.Text, a.Denied, a.text, learner.source},
				Adult: Told{b.Text, b.Denied, b.text, adult.source},
			})
		}
	}
	return out
}

// says reports whether a text holds the same quality of what may be the same part.
func says(e *entry, q quality) bool {
	return slices.ContainsFunc(e.qualities, func(own quality) bool {
		return own.Word == q.Word && own.Denied == q.Denied && (own.Of == q.Of || own.Of == "" || q.Of == "")
	})
}

func (g *Group) contradict(a, b analyze.Quality) bool {
	switch {
	case a.Word == "" || b.Word == "" || a.Supposed || b.Supposed || a.Other || b.Other || a.Partly || b.Partly || a.Of != b.Of:
		return false
	case a.Word == b.Word && a.Sense == b.Sense:
		return a.Denied != b.Denied
	}
	return !a.Denied && !b.Denied && g.opposites.Are(a.Sense, a.Word, b.Sense, b.Word)
}

// plans lists what learners planned to change, with whether their next
// evaluation speaks of it.
func (g *Group) plans() []KeptPlan {
	out := []KeptPlan{}
	texts := g.counted(analyze.Learner) // by learner, then session
	for i, e := range texts {
		var next *entry
		if i+1 < len(texts) && texts[i+1].learner == e.learner {
			next = texts[i+1]
		}
		for _, p := range e.plans {
			k := KeptPlan{Learner: e.learner, Session: e.session, Dish: e.dish, Plan: p.Text}
			if next != nil {
				k.Next = next.session
				k.SpokenOf = next.notes.LooksBack || next.notes.SpeaksOf(p)
			}
			out = append(out, k)
		}
	}
	return out
}
