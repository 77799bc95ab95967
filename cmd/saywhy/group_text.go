package main

import (
	"fmt"
	"io"
	"strings"

	"saywhy/cmd/wording"
	"saywhy/corpus"
	"saywhy/lexicon"
)

// The summary for the terminal is short: of each list it shows so many and says
// how many more the page has.
const (
	summaryItems = 20
	summaryWords = 10
)

// writeGroupText lays a summary out for a terminal.
func writeGroupText(out io.Writer, on page, r *corpus.GroupReport) error {
	g := groupText{newPaper(on), r}
	g.opening()
	g.cautions()
	g.teach(r.Learners, wording.GroupTeach)
	g.reach(r.Learners, wording.GroupReach)
	g.paths()
	g.disagreements()
	g.plans()
	if r.Adults.Texts > 0 {
		g.reach(r.Adults, wording.GroupReach+": the adults’ feedback")
		g.teach(r.Adults, wording.GroupTeach+": the adults’ feedback")
	}
	g.words()
	g.shared()
	g.unread()
	return g.flush(out)
}

// groupText is a summary being laid out.
type groupText struct {
	*paper
	r *corpus.GroupReport
}

func (g groupText) section(title string) { g.heading(strings.ToUpper(title)) }

// upTo returns how many of n items are shown, all of them if only one would be
// left over.
func upTo(n int) int {
	if n <= summaryItems+1 {
		return n
	}
	return summaryItems
}

func (g groupText) more(n int) {
	if rest := n - upTo(n); rest > 0 {
		g.item("  ", fmt.Sprintf("and %d more; --format html shows them all", rest))
	}
}

func (g groupText) opening() {
	g.section(wording.GroupTitle(g.r))
	g.item("  ", wording.GroupSize(g.r))
	if few := wording.FewTexts(g.r.Learners.Texts); few != "" {
		g.item("  ", "That is "+few+".")
	}
}

func (g groupText) cautions() {
	g.section(wording.GroupCautions)
	if len(g.r.Cautions) == 0 {
		g.item("  ", wording.GroupNoCautions)
	}
	kind := ""
	for _, c := range g.r.Cautions {
		if c.Kind != kind {
			if kind != "" {
				g.blank()
			}
			kind = c.Kind
			g.item("  ", wording.CautionKind(kind)+": "+c.Advice)
			g.item("    ", "Guidance: "+c.Source)
		}
		g.item("  ! ", fmt.Sprintf("%s, %s: “%s”", wording.Writer(c.Place), wording.SessionDish(c.Session, c.Dish), c.Text))
	}
}

func (g groupText) teach(part corpus.GroupPart, title string) {
	g.section(title)
	learners := title == wording.GroupTeach
	if learners {
		g.item("  ", wording.GroupTeachRule)
	}
	for _, s := range part.Sessions {
		line := wording.Title(wording.SessionDish(s.Session, s.Dishes...)) + ": " + wording.Count(s.Texts, "text")
		if few := wording.FewTexts(s.Texts); few != "" {
			line = wording.Title(wording.SessionDish(s.Session, s.Dishes...)) + ": " + few
		}
		g.item("  ", line)
		for _, p := range s.Teach {
			g.item("    - ", wording.Teach(p))
		}
		if len(s.Teach) == 0 {
			g.item("    - ", "no step at which that many stop")
		}
		if learners && len(s.Without) > 0 {
			g.item("    - ", "nothing from "+strings.Join(s.Without[:min(len(s.Without), summaryWords)], ", ")+moreNames(len(s.Without)))
		}
	}
}

func moreNames(n int) string {
	if n <= summaryWords {
		return ""
	}
	return fmt.Sprintf(" and %d more", n-summaryWords)
}

// reach writes the table of people and areas.
func (g groupText) reach(part corpus.GroupPart, title string) {
	g.section(title)
	if title == wording.GroupReach {
		g.item("  ", wording.GroupReachRule)
	}
	wide, cells := 0, 5
	for _, p := range part.People {
		wide = max(wide, len([]rune(p.Learner))+2)
		for _, c := range p.Areas {
			cells = max(cells, len([]rune(wording.Reach(c))))
		}
	}
	wide = min(wide, 24)
	perLine := max(1, (g.width-2-wide-1)/(cells+1))
	areas := lexicon.Areas()
	for from := 0; from < len(areas); from += perLine {
		to := min(len(areas), from+perLine)
		head := pad("", wide+2)
		for _, a := range areas[from:to] {
			head += " " + pad(shortArea(a, cells), cells)
		}
		g.line(head)
		for _, p := range part.People {
			mark := "  "
			if p.Cautions > 0 {
				mark = "! "
			}
			row := mark + pad(cut(p.Learner, wide), wide)
			for _, c := range p.Areas[from:to] {
				row += " " + pad(wording.Reach(c), cells)
			}
			g.line(row)
		}
	}
}

// paths writes each learner's sessions as three numbers each.
func (g groupText) paths() {
	g.section(wording.GroupPaths)
	g.item("  ", wording.GroupPathsRule)
	for _, p := range g.r.Learners.People {
		var points []string
		for _, at := range p.Path {
			points = append(points, fmt.Sprintf("%s:\u00a0%d·%d·%d", strings.TrimPrefix(wording.Session(at.Session), "session "), at.Said, at.Detail, at.Reason))
		}
		g.item("  "+pad(p.Learner, 10)+" ", strings.Join(points, "  "))
	}
}

func (g groupText) disagreements() {
	if g.r.Adults.Texts == 0 {
		return
	}
	g.section(wording.GroupDisagree)
	if len(g.r.Disagreements) == 0 {
		g.item("  ", wording.GroupNoDisagree)
		return
	}
	g.item("  ", wording.GroupDisagreeNote)
	for _, d := range g.r.Disagreements[:upTo(len(g.r.Disagreements))] {
		g.item("  - ", fmt.Sprintf("%s, %s: %s and the adult %s", d.Learner, wording.SessionDish(d.Session, d.Dish), wording.ToldOf(d.Child), wording.ToldOf(d.Adult)))
		g.item("      ", "learner: "+d.Child.Sentence)
		g.item("      ", "adult: "+d.Adult.Sentence)
	}
	g.more(len(g.r.Disagreements))
}

func (g groupText) plans() {
	g.section(wording.GroupPlans)
	if len(g.r.Plans) == 0 {
		g.item("  ", wording.GroupNoPlans)
	}
	for _, p := range g.r.Plans[:upTo(len(g.r.Plans))] {
		g.item("  - ", fmt.Sprintf("%s, %s: “%s”; %s", p.Learner, wording.Session(p.Session), p.Plan, wording.PlanKept(p)))
	}
	g.more(len(g.r.Plans))
}

func (g groupText) words() {
	w := g.r.Words
	g.section(wording.GroupWords)
	for _, line := range wording.WordLines(w, summaryWords) {
		g.item("  - ", line)
	}
	if len(w.Unused) > 0 {
		g.item("  ", "Words of the lists that nobody used: --format html names them, dish by dish.")
	}
}

func (g groupText) shared() {
	if len(g.r.Shared) == 0 {
		return
	}
	g.section(wording.GroupShared)
	g.item("  ", wording.GroupSharedNote)
	for _, s := range g.r.Shared[:upTo(len(g.r.Shared))] {
		g.item("  - ", fmt.Sprintf("%s, %s: “%s”", wording.Writer(s.A), wording.SessionDish(s.A.Session, s.A.Dish), s.TextA))
		g.item("    ", fmt.Sprintf("%s, %s: “%s”", wording.Writer(s.B), wording.SessionDish(s.B.Session, s.B.Dish), s.TextB))
	}
	g.more(len(g.r.Shared))
}

func (g groupText) unread() {
	g.section(wording.GroupUnread)
	if len(g.r.Unplaced) == 0 {
		g.item("  ", wording.GroupUnreadNo)
	}
	for _, u := range g.r.Unplaced[:upTo(len(g.r.Unplaced))] {
		g.item("  - ", u.File+" "+u.Reason)
	}
	g.more(len(g.r.Unplaced))
	if len(g.r.Remarks) > 0 {
		g.section(wording.GroupRemarks)
		for _, u := range g.r.Remarks[:upTo(len(g.r.Remarks))] {
			g.item("  - ", u.File+": "+u.Reason)
		}
		g.more(len(g.r.Remarks))
	}
}

// shortArea is the head of a column of so many letters.
func shortArea(a lexicon.Area, n int) string {
	name := []rune(string(a))
	if len(name) <= n {
		return string(name)
	}
	return string(name[:n-1]) + "."
}

// cut shortens a name that is too long for its column.
func cut(s string, n int) string {
	r := []rune(s)
	if len(r) <= n {
		return s
	}
	return string(r[:n-1]) + "…"
}

// line writes a line that is laid out already.
func (p *paper) line(s string) { p.b.WriteString(strings.TrimRight(clean(s), " ") + "\n") }
