package corpus

import (
	"strings"

	"saywhy/analyze"
)

// chapter is the part of a document that is about one session: from a heading
// such as "Session 3: leek soup" to the next. A document without such headings
// is one chapter.
type chapter struct {
	heading string // "" for what stands before the first
	given   facts
	list    []paragraph
}

// piece is a text of one role, with the heading it stands below.
type piece struct {
	role    analyze.Role // "" when no heading says
	section section
	heading string    // "" when none stands above
	line    paragraph // of the heading
	list    []paragraph
}

// chapters parts a document at its headings of sessions.
func (p *places) chapters(list []paragraph) []chapter {
	out := []chapter{{}}
	for _, para := range list {
		if given, ok := p.sessionHeading(para); ok {
			out = append(out, chapter{heading: plainLine(para.text), given: given})
			continue
		}
		last := &out[len(out)-1]
		last.list = append(last.list, para)
	}
	return out
}

// sessionHeading reads a heading that names a session by a word and its number
// or by its title in course.yaml.
func (p *places) sessionHeading(para paragraph) (facts, bool) {
	if para.level == 0 || len(para.text) > maxHeading {
		return facts{}, false
	}
	n := placeName(para.text, p.book)
	if !n.marked || len(n.sessions) != 1 {
		return facts{}, false
	}
	return n.facts(), true
}

// facts are what a name tells besides the learner: of a heading, a sheet or a
// form.
func (n nameParts) facts() facts {
	f := facts{dish: n.dish, date: n.date}
	if len(n.sessions) == 1 {
		f.session = n.sessions[0]
	}
	if n.role != bothRoles {
		f.role = n.role
	}
	for _, r := range n.runs {
		switch {
		case n.dish == "" && f.dish == "" && r.numbered:
			f.dish = r.text // a dish that no type covers
		case r.beforeDish:
			f.dish = r.text + " " + n.dish
		}
	}
	return f
}

// pieces parts a chapter at the headings of the two texts. Without any, it is
// one piece, without what the tutor's headings leave out; what stands before a
// heading of the adult's, where the learner's text has none, is the learner's.
// Below a heading on the same or a higher level that nobody named and that is
// about none of the areas, a text has ended, and left returns what stands there.
func (h sectionHeadings) pieces(list []paragraph) (out, left []piece) {
	all := []piece{{}}
	for _, para := range list {
		now := &all[len(all)-1]
		s, rest, ok := h.of(para.text)
		switch {
		case ok && (rest == "" || para.level == 0):
			next := piece{section: s, heading: plainLine(strings.TrimSuffix(para.text, rest)), line: para}
			if rest != "" {
				next.list = []paragraph{{text: rest, line: para.line}}
			}
			all = append(all, next)
		case para.level > 0 && para.level <= now.line.level && !areaHeading(para.text):
			all = append(all, piece{section: unknownText, heading: plainLine(para.text), line: para})
		default:
			now.list = append(now.list, para)
		}
	}
	return byRole(all)
}

// byRole gives every part of a chapter its role.
func byRole(all []piece) (out, left []piece) {
	has := map[section]bool{}
	for _, p := range all {
		has[p.section] = true
	}
	if !has[learnerText] && !has[adultText] {
		whole := piece{}
		for _, p := range all {
			if p.section == otherText {
				continue
			}
			if p.heading != "" {
				whole.list = append(whole.list, p.line)
			}
			if p.heading == "" || plainLine(p.line.text) == p.heading { // no text on the line of the heading
				whole.list = append(whole.list, p.list...)
			} else {
				whole.list = append(whole.list, p.list[1:]...)
			}
		}
		return []piece{whole}, nil
	}
	for _, p := range all {
		switch {
		case p.section == openSection && wordsOf(p.list) == 0:
		case p.section == learnerText, p.section == openSection && !has[learnerText]:
			p.role = analyze.Learner
			out = appendPiece(out, p)
		case p.section == adultText:
			p.role = analyze.Adult
			out = appendPiece(out, p)
		case p.section == openSection, p.section == unknownText:
			left = append(left, p)
		}
	}
	return out, left
}

// appendPiece adds a piece, or goes on with the one of the same role: a
// heading may come again on the next page.
func appendPiece(out []piece, p piece) []piece {
	for i := range out {
		if out[i].role == p.role {
			out[i].list = append(out[i].list, p.list...)
			return out
		}
	}
	return append(out, p)
}

// plainLine is a heading as a person is shown it.
func plainLine(s string) string {
	s = strings.TrimSpace(strings.TrimLeft(strings.TrimSpace(s), "#"))
	return strings.TrimRight(strings.Join(strings.Fields(s), " "), " :")
}

// wordsOf counts the words of a list of paragraphs.
func wordsOf(list []paragraph) int {
	n := 0
	for _, p := range list {
		n += len(strings.Fields(p.text))
	}
	return n
}
