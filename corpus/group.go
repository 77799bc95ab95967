package corpus

import (
	"cmp"
	"slices"
	"strings"
	"time"

	"saywhy/analyze"
	"saywhy/lexicon"
)

// Small is the number of texts below which a count is called small: a share of
// fewer than five says little about a group.
const Small = 5

// Group gathers the evaluations of a course and reports on them. It keeps of
// each text only what the report needs. It is not safe for many goroutines.
type Group struct {
	opposites *lexicon.Opposites
	entries   []*entry
	unplaced  []SourceNote
	remarks   []SourceNote
}

// entry is what is kept of one text.
type entry struct {
	learner, session, dish, title, source string
	role                                  analyze.Role
	date                                  time.Time
	order                                 int // in which it was added
	words                                 int
	rows                                  []analyze.AreaRow
	cautions                              []analyze.Caution
	vague                                 []analyze.Vague
	qualities                             []quality
	plans                                 []analyze.Plan
	notes                                 *analyze.Notes // without report, plans and qualities
	list                                  lexicon.Dish
	superseded                            bool // a later text of the same person and session counts
}

// quality is a sensory word with the sentence it stands in.
type quality struct {
	analyze.Quality
	text string
}

// NewGroup starts an empty group whose texts are read with the lexicon.
func NewGroup(lex *lexicon.Lexicon) *Group { return &Group{opposites: lex.Opposites()} }

// Add takes one evaluation with what was read in it. Dish is the type it was
// read as; its title tells people what was cooked.
func (g *Group) Add(e Evaluation, dish lexicon.Dish, n *analyze.Notes) {
	r := n.Report
	k := &entry{
		learner: e.Learner, session: e.Session, dish: cmp.Or(e.Dish, dish.Title), title: r.Title, source: e.Source,
		role: r.Role, date: e.Date, order: len(g.entries), words: r.Words, rows: slices.Clone(r.Areas), cautions: r.Cautions,
		plans: n.Plans, list: dish,
		notes: &analyze.Notes{Topics: n.Topics, LooksBack: n.LooksBack},
	}
	for i := range k.rows {
		k.rows[i].Sentences = nil
	}
	for _, s := range r.Sentences {
		for _, v := range s.Vague {
			v.Text = strings.ToLower(v.Text)
			k.vague = append(k.vague, v)
		}
	}
	k.qualities = make([]quality, 0, len(n.Qualities)) // they stay, and the room that append would leave free with them
	for _, q := range n.Qualities {
		k.qualities = append(k.qualities, quality{q, r.Sentences[q.Sentence-1].Text})
	}
	g.entries = append(g.entries, k)
}

// Unplaced takes something that could not be read or placed.
func (g *Group) Unplaced(u Unplaced) {
	g.unplaced = append(g.unplaced, SourceNote{u.Source, u.Reason})
}

// Remark takes something that was read all the same but that the tutor ought
// to know, such as a dish that nobody knows.
func (g *Group) Remark(source, reason string) {
	g.remarks = append(g.remarks, SourceNote{source, reason})
}

// Report reports on what was added so far. The same texts give the same report.
func (g *Group) Report() *GroupReport {
	g.supersede()
	r := &GroupReport{Unplaced: orEmpty(g.unplaced), Remarks: orEmpty(g.remarks), Shared: []SharedWording{}}
	r.Learners = g.part(analyze.Learner)
	r.Adults = g.part(analyze.Adult)
	r.Cautions = g.cautions()
	r.Disagreements = g.disagreements()
	r.Plans = g.plans()
	r.Words = g.words()
	return r
}

// supersede marks the texts that a later one of the same person, session and
// role takes the place of: later by date, else the one added later.
func (g *Group) supersede() {
	type place struct {
		learner, session string
		role             analyze.Role
	}
	last := map[place]*entry{}
	for _, e := range g.entries {
		e.superseded = false
		p := place{e.learner, e.session, e.role}
		before, twice := last[p]
		if twice && before.date.After(e.date) {
			e.superseded = true
			continue
		}
		if twice {
			before.superseded = true
		}
		last[p] = e
	}
}

// counted returns the texts that count, of one role, by learner and then
// session.
func (g *Group) counted(role analyze.Role) []*entry {
	var out []*entry
	for _, e := range g.entries {
		if e.role == role && !e.superseded {
			out = append(out, e)
		}
	}
	slices.SortFunc(out, func(a, b *entry) int {
		return cmp.Or(byName(a.learner, b.learner), cmp.Compare(a.session, b.session))
	})
	return out
}

// byName orders names as a register does: capitals make no difference.
func byName(a, b string) int {
	if a == b { // nearly always, among the texts of one person
		return 0
	}
	return cmp.Or(cmp.Compare(strings.ToLower(a), strings.ToLower(b)), cmp.Compare(a, b))
}

func orEmpty[T any](list []T) []T {
	if list == nil {
		return []T{}
	}
	return list
}
