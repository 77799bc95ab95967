package corpus

import (
	"cmp"
	"slices"

	"saywhy/analyze"
	"saywhy/lexicon"
)

// part reports on the texts of one role.
func (g *Group) part(role analyze.Role) GroupPart {
	entries := g.counted(role)
	p := GroupPart{Texts: len(entries), People: []GroupPerson{}, Sessions: []GroupSession{}}
	cautions := map[string]int{} // by learner, of earlier drafts too
	for _, e := range g.entries {
		if e.role != role {
			continue
		}
		if e.superseded {
			p.Earlier++
		}
		cautions[e.learner] += len(e.cautions)
	}
	for _, e := range entries { // by learner, then session
		if n := len(p.People); n == 0 || p.People[n-1].Learner != e.learner {
			p.People = append(p.People, GroupPerson{Learner: e.learner, Cautions: cautions[e.learner], Areas: noAreas()})
		}
		person := &p.People[len(p.People)-1]
		addAreas(person.Areas, e.rows)
		person.Path = append(person.Path, e.point())
	}
	p.Sessions = sessions(entries, p.People)
	slices.SortStableFunc(p.People, func(a, b GroupPerson) int {
		return cmp.Compare(min(b.Cautions, 1), min(a.Cautions, 1)) // with any first, however many
	})
	return p
}

// point is the text as a point on its writer's path.
func (e *entry) point() PathPoint {
	p := PathPoint{Session: e.session, Dish: e.dish, File: e.source, Words: e.words}
	for _, row := range e.rows {
		p.Areas = append(p.Areas, ReachedRow{row.Area, row.Expected, row.Said, row.Detail, row.Reason})
		if !row.Expected {
			continue
		}
		p.Asked++
		p.Said += one(row.Said)
		p.Detail += one(row.Detail)
		p.Reason += one(row.Reason)
	}
	return p
}

func noAreas() []AreaCount {
	var out []AreaCount
	for _, a := range lexicon.Areas() {
		out = append(out, AreaCount{Area: a})
	}
	return out
}

// addAreas counts one text's areas, of those that its brief asks for.
func addAreas(counts []AreaCount, rows []analyze.AreaRow) {
	for i, row := range rows {
		if !row.Expected {
			continue
		}
		counts[i].Texts++
		counts[i].Said += one(row.Said)
		counts[i].Detail += one(row.Detail)
		counts[i].Reason += one(row.Reason)
	}
}

func one(b bool) int {
	if b {
		return 1
	}
	return 0
}

// sessions reports on the texts by session. People are all of the role.
func sessions(entries []*entry, people []GroupPerson) []GroupSession {
	bySession := map[string][]*entry{}
	for _, e := range entries {
		bySession[e.session] = append(bySession[e.session], e)
	}
	out := []GroupSession{}
	for name, texts := range bySession {
		s := GroupSession{Session: name, Texts: len(texts), Areas: noAreas(), Without: []string{}, Dishes: dishes(texts)}
		wrote := map[string]bool{}
		for _, e := range texts {
			addAreas(s.Areas, e.rows)
			wrote[e.learner] = true
		}
		for _, p := range people {
			if !wrote[p.Learner] {
				s.Without = append(s.Without, p.Learner)
			}
		}
		s.Teach = teach(texts, s.Areas)
		out = append(out, s)
	}
	slices.SortFunc(out, func(a, b GroupSession) int { return cmp.Compare(a.Session, b.Session) })
	return out
}

// dishes lists what was cooked, the commonest first, in its first spelling.
func dishes(texts []*entry) []string {
	n := map[string]int{}
	out := []string{}
	for _, e := range texts {
		if n[fold(e.dish)] == 0 {
			out = append(out, e.dish)
		}
		n[fold(e.dish)]++
	}
	slices.SortStableFunc(out, func(a, b string) int { return cmp.Or(cmp.Compare(n[fold(b)], n[fold(a)]), byName(a, b)) })
	return out
}

// worthTeaching is the share of the texts asked for an area of which at least
// so many stop at a step for it to be worth teaching to all, and atOnce how
// many such points are named. A tutor can do two or three in a session.
const (
	worthTeaching = 1.0 / 3
	atOnce        = 3
)

// teach names the steps at which most texts of a session stop: at most three,
// of each area at most one, the commonest first and otherwise in the order of
// the areas; none at which fewer than a third of the texts, or only one, stop.
func teach(texts []*entry, counts []AreaCount) []TeachPoint {
	out := []TeachPoint{}
	for i, c := range counts {
		stopped := map[analyze.Step]int{}
		for _, e := range texts {
			if row := e.rows[i]; row.Expected {
				if step, ok := nextStep(row); ok {
					stopped[step]++
				}
			}
		}
		p := TeachPoint{Area: c.Area, Texts: c.Texts}
		for _, step := range []analyze.Step{analyze.Said, analyze.Detail, analyze.Reason} {
			if stopped[step] > p.Stopped {
				p.Step, p.Stopped = step, stopped[step]
			}
		}
		if p.Stopped < 2 || float64(p.Stopped) < worthTeaching*float64(c.Texts) {
			continue
		}
		p.Missing = c.Missing(p.Step)
		out = append(out, p)
	}
	slices.SortStableFunc(out, func(a, b TeachPoint) int { return cmp.Compare(b.Stopped, a.Stopped) })
	return out[:min(len(out), atOnce)]
}

// nextStep is the first step that a text has not reached in an area.
func nextStep(row analyze.AreaRow) (analyze.Step, bool) {
	for _, step := range []analyze.Step{analyze.Said, analyze.Detail, analyze.Reason} {
		if !row.Reached(step) {
			return step, true
		}
	}
	return "", false
}

// Missing is how many of the texts asked for the area did not reach a step.
func (c AreaCount) Missing(s analyze.Step) int {
	switch s {
	case analyze.Said:
		return c.Texts - c.Said
	case analyze.Detail:
		return c.Texts - c.Detail
	}
	return c.Texts - c.Reason
}

// cautions lists the cautions of every text: those of one kind together, in
// the order of the kinds, then by name and session.
func (g *Group) cautions() []GroupCaution {
	out := []GroupCaution{}
	for _, e := range g.entries {
		for _, c := range e.cautions {
			c.Advice = c.AdviceForAdult()
			out = append(out, GroupCaution{e.place(), c})
		}
	}
	kinds := lexicon.CautionKinds()
	slices.SortStableFunc(out, func(a, b GroupCaution) int {
		return cmp.Or(cmp.Compare(slices.Index(kinds, a.Kind), slices.Index(kinds, b.Kind)), byName(a.Learner, b.Learner), cmp.Compare(a.Session, b.Session), cmp.Compare(b.Role, a.Role)) // learner before adult
	})
	return out
}

func (e *entry) place() Place { return Place{e.learner, e.session, e.dish, e.role, e.source} }
