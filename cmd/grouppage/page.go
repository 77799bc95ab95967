// Package grouppage makes the page that reports on a group: one file that needs
// nothing else, no script and no other host, for the screen and for paper.
package grouppage

import (
	"bytes"
	_ "embed"
	"html/template"
	"io"
	"strings"

	"saywhy/cmd/wording"
	"saywhy/corpus"
	"saywhy/lexicon"
)

//go:embed page.html
var pageHTML string

//go:embed page.css
var pageCSS string

// page is all that the template needs.
type page struct {
	*corpus.GroupReport
	CSS template.CSS

	LearnerPart, AdultPart part

	Areas    []lexicon.Area
	Cautions []cautionKind
	Plots    []plot
	Unused   []unusedDish
}

// part is the texts of one role, with what tells its tables from the other's.
type part struct {
	corpus.GroupPart
	Who string
}

// cautionKind is the cautions of one kind, which share their advice.
type cautionKind struct {
	Title, Advice, Source string
	Cautions              []corpus.GroupCaution
}

// unusedDish is the unused words of one dish type.
type unusedDish struct {
	Dish   string
	Texts  int
	Senses []corpus.UnusedWords
}

// unusedShown is how many unused words of a sense are named; a list of ninety
// would tell a tutor no more.
const unusedShown = 12

// Write writes the page. It is made whole before any of it goes out.
func Write(out io.Writer, r *corpus.GroupReport) error {
	t, err := template.New("group").Funcs(template.FuncMap{
		"title": wording.Title, "session": wording.Session, "sessionDish": wording.SessionDish, "few": wording.FewTexts,
		"teach": wording.Teach, "reach": wording.Reach, "reachWords": wording.ReachWords, "planKept": wording.PlanKept,
		"told": wording.ToldOf, "writer": wording.Writer, "count": wording.Count, "join": strings.Join,
		"groupTitle": wording.GroupTitle, "groupSize": wording.GroupSize, "text": heading,
		"some": func(words []string) []string { return words[:min(len(words), unusedShown)] },
	}).Parse(pageHTML)
	if err != nil {
		return err
	}
	p := page{
		GroupReport: r, LearnerPart: part{r.Learners, "Learners"}, AdultPart: part{r.Adults, "Adults"},
		CSS: template.CSS(pageCSS), Areas: lexicon.Areas(), Cautions: byKind(r.Cautions), Unused: byDish(r.Words.Unused),
	}
	for _, person := range r.Learners.People {
		p.Plots = append(p.Plots, newPlot(person, r.Learners.Sessions))
	}
	var b bytes.Buffer
	if err := t.Execute(&b, p); err != nil {
		return err
	}
	_, err = out.Write(b.Bytes())
	return err
}

// heading is a heading or rule that the terminal has as well.
func heading(name string) string {
	return map[string]string{
		"cautions": wording.GroupCautions, "noCautions": wording.GroupNoCautions,
		"teach": wording.GroupTeach, "teachRule": wording.GroupTeachRule,
		"reach": wording.GroupReach, "reachRule": wording.GroupReachRule,
		"paths": wording.GroupPaths, "pathsRule": wording.GroupPathsRule,
		"disagree": wording.GroupDisagree, "disagreeNote": wording.GroupDisagreeNote, "noDisagree": wording.GroupNoDisagree,
		"plans": wording.GroupPlans, "noPlans": wording.GroupNoPlans,
		"words": wording.GroupWords, "shared": wording.GroupShared, "sharedNote": wording.GroupSharedNote,
		"unread": wording.GroupUnread, "unreadNo": wording.GroupUnreadNo, "remarks": wording.GroupRemarks,
	}[name]
}

func byKind(cautions []corpus.GroupCaution) []cautionKind {
	var out []cautionKind
	kind := ""
	for _, c := range cautions { // those of one kind stand together
		if c.Kind != kind {
			kind = c.Kind
			out = append(out, cautionKind{Title: wording.CautionKind(kind), Advice: c.Advice, Source: c.Source})
		}
		last := &out[len(out)-1]
		last.Cautions = append(last.Cautions, c)
	}
	return out
}

func byDish(words []corpus.UnusedWords) []unusedDish {
	var out []unusedDish
	for _, w := range words { // those of one dish stand together
		if n := len(out); n == 0 || out[n-1].Dish != w.Dish {
			out = append(out, unusedDish{Dish: w.Dish, Texts: w.Texts})
		}
		last := &out[len(out)-1]
		last.Senses = append(last.Senses, w)
	}
	return out
}
