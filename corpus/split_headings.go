package corpus

import (
	"slices"
	"strings"

	"saywhy/lexicon"
)

// section is which part of a document a paragraph belongs to.
type section int

const (
	openSection section = iota // no heading has said
	learnerText                // the learner's evaluation
	adultText                  // the adult's feedback
	otherText                  // named as neither in course.yaml
	commonOther                // commonly neither, in a document that holds the two
	unknownText                // below a heading that nobody named
)

// sectionHeadings are the headings that part a document.
type sectionHeadings struct {
	sections map[string]section // by the folded heading
	longest  int                // bytes of the longest of them
}

// newSectionHeadings takes the headings of course.yaml, and common ones for
// what it does not name.
func newSectionHeadings(named lexicon.Headings) sectionHeadings {
	h := sectionHeadings{sections: map[string]section{}}
	add := func(s section, own, common []string) {
		if own == nil {
			own = common
		}
		for _, name := range own {
			plain := plainHeading(name)
			if _, taken := h.sections[plain]; !taken {
				h.sections[plain] = s
				h.longest = max(h.longest, len(plain))
			}
		}
	}
	// What the tutor names goes before what is common.
	add(learnerText, named.Learner, []string{})
	add(adultText, named.Adult, []string{})
	add(otherText, named.Other, []string{})
	add(learnerText, named.Learner, []string{
		"my evaluation", "my practical evaluation", "evaluation", "learner evaluation", "learner's evaluation",
		"what i wrote", "my practical",
	})
	add(adultText, named.Adult, []string{
		"adult feedback", "adult's feedback", "feedback", "feedback from the adult", "feedback from an adult",
		"feedback from home", "feedback from my adult", "supervising adult's feedback", "from the adult",
		"what the adult noticed", "the adult's part",
	})
	add(commonOther, nil, []string{"recipe", "ingredients", "shopping list", "equipment", "photo", "photos"})
	return h
}

// plainHeading is a heading without its number and its colon, folded.
func plainHeading(s string) string {
	s = strings.TrimSpace(strings.TrimLeft(strings.TrimSpace(s), "#"))
	s = strings.TrimSpace(strings.Trim(s, "*_"))
	if number, rest, ok := strings.Cut(s, " "); ok && strings.Trim(number, "0123456789.)") == "" {
		s = rest
	}
	return fold(strings.TrimRight(s, " :.–—-"))
}

// maxHeading is the longest line that can be a heading, in bytes.
const maxHeading = 120

// of returns the section that a line opens, with what follows the heading on
// the same line ("Adult feedback: it was hot").
func (h sectionHeadings) of(line string) (s section, rest string, ok bool) {
	if s, ok := h.named(line); ok {
		return s, "", true
	}
	if head, rest, found := strings.Cut(line, ":"); found {
		if s, ok := h.named(head); ok {
			return s, strings.TrimSpace(rest), true
		}
	}
	return openSection, "", false
}

// headingMarks is how many bytes of number, marks and blanks a heading may have
// around its words.
const headingMarks = 32

// named returns the section of a heading. Nearly every line of a text is too
// long to be one, which is seen before anything is made of it.
func (h sectionHeadings) named(line string) (section, bool) {
	if len(line) > h.longest+headingMarks {
		return openSection, false
	}
	s, ok := h.sections[plainHeading(line)]
	return s, ok
}

// is reports whether a line is a heading that parts a document into the two
// texts.
func (h sectionHeadings) is(line string) bool {
	s, rest, ok := h.of(line)
	return ok && rest == "" && (s == learnerText || s == adultText)
}

// areaHeading reports whether a heading is about something an evaluation
// speaks of, so that the evaluation goes on below it.
func areaHeading(line string) bool {
	for _, w := range nameWords(line) {
		if slices.ContainsFunc(lexicon.Areas(), func(a lexicon.Area) bool { return w.lower == string(a) }) {
			return true
		}
		switch w.lower {
		case "next", "smell", "look", "looked", "feel", "well", "improve", "change", "plan", "skills", "went":
			return true
		}
	}
	return false
}
