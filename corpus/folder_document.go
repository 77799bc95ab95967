package corpus

import (
	"fmt"
	"strings"

	"saywhy/analyze"
)

// fewWords is how many words may stand outside the texts of a document, as its
// title or the learner's name, without being listed.
const fewWords = 15

// sendDocument sends the texts of a document by its headings.
func (r *folderReader) sendDocument(name string, blocks []block, err error, send func(found) bool) {
	if err != nil {
		send(found{Unplaced: asUnplaced(err)})
		return
	}
	r.sendTexts(name, facts{}, paragraphsOf(blocks, r.headings.is), send)
}

// sendTexts sends each text of a list of paragraphs with its place, and says
// what belongs to none.
func (r *folderReader) sendTexts(name string, given facts, list []paragraph, send func(found) bool) {
	hint, list := labels(list)
	chapters := r.places.chapters(list)
	for i, c := range chapters {
		if i == 0 && len(chapters) > 1 && wordsOf(c.list) <= fewWords {
			continue // the title page
		}
		own := given
		if c.heading != "" {
			own = c.given.over(given)
		}
		if !r.sendChapter(name, c, own, hint, send) {
			return
		}
	}
}

func (r *folderReader) sendChapter(name string, c chapter, given, hint facts, send func(found) bool) bool {
	pieces, left := r.headings.pieces(c.list)
	for _, p := range left {
		if wordsOf(p.list) <= fewWords {
			continue
		}
		where := "before the first heading"
		if p.heading != "" {
			where = fmt.Sprintf("below %q", p.heading)
		}
		u := unplaced("%d words %s belong to neither the evaluation nor the feedback; name the heading in course.yaml, under headings, as learner, adult or other", wordsOf(p.list), where)
		u.Source = within(name, c.heading, "")
		if !send(found{Unplaced: u}) {
			return false
		}
	}
	for _, p := range pieces {
		text := joined(p.list)
		if p.role == analyze.Adult && strings.TrimSpace(text) == "" {
			continue // nobody has given feedback yet
		}
		own := given
		if p.role != "" {
			own.role = p.role
		}
		if !r.place(name, within(name, c.heading, p.heading), own, hint, text, send) {
			return false
		}
	}
	return true
}

// within says where in a file a text stands.
func within(name, chapter, heading string) string {
	out := sourceOf(name)
	for _, h := range []string{chapter, heading} {
		if h != "" {
			out += fmt.Sprintf(", %q", h)
		}
	}
	return out
}

// over returns facts with those below where nothing is told.
func (f facts) over(below facts) facts {
	if f.learner == "" {
		f.learner = below.learner
	}
	if f.session == "" {
		f.session = below.session
	}
	if f.dish == "" {
		f.dish = below.dish
	}
	if f.role == "" {
		f.role = below.role
	}
	if f.date.IsZero() {
		f.date = below.date
	}
	return f
}

// place sends one text with its place.
func (r *folderReader) place(name, source string, given, hint facts, text string, send func(found) bool) bool {
	refuse := func(err error) bool {
		u := asUnplaced(err)
		u.Source = source
		return send(found{Unplaced: u})
	}
	switch {
	case strings.TrimSpace(text) == "":
		return refuse(unplaced("holds no text; if it was written by hand or is a picture, type it out"))
	case len(text) > maxText:
		return refuse(tooLong())
	}
	e, err := r.places.evaluation(name, given, hint)
	if err != nil && !r.anyone {
		return refuse(err)
	}
	e.Text, e.Source = text, source
	return send(found{Evaluation: e})
}
