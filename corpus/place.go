package corpus

import (
	"cmp"
	"fmt"
	"path"
	"slices"
	"strings"
	"sync"

	"saywhy/analyze"
	"saywhy/lexicon"
)

// places tells whose text a file holds, of which session, dish, role and date.
// What is told outright (front matter, a form's columns, a heading) goes first.
// The rest comes from the names of the file and of the folders it lies in, each
// read word by word (see placeName):
//
//   - session: a number of one to three digits ("03 leek soup", "week 3", "s3"),
//     the title of a session of course.yaml, or else the one session of
//     course.yaml that cooks the dish, or else the date;
//   - date: 2026-03-14, 20260314 or 14-03-2026;
//   - role: adult where a name says feedback, adult, parent, mum, dad or the
//     like, otherwise learner;
//   - dish: the name of a dish type, of a dish that a type covers or of a
//     session's dish; or else the words behind the session's number, if the
//     learner stands elsewhere; or else the dish of the session in course.yaml;
//   - learner: the words that are left. With learners listed in course.yaml it
//     must be one of them, and then other words do no harm.
//
// Of several that are told the nearest to the text counts, except that two
// sessions, or two names that could both be the learner, are a doubt: the text
// is then unplaced with the reason. Where an adult wrote, a second name beside
// that of the folder is the adult's.
//
// It is safe for many goroutines.
type places struct {
	book     nameBook
	sessions []courseSession
	learners []string // as course.yaml writes them; empty when it lists none
	read     sync.Map // of each folder with files, the []nameParts that folders returns
}

// courseSession is a session of course.yaml with its number as in Evaluation.
type courseSession struct {
	lexicon.Session
	number string
}

func newPlaces(lex *lexicon.Lexicon, course *lexicon.Course) *places {
	course = courseOrEmpty(course)
	p := &places{book: nameBook{dishes: phrases{}, learners: map[string]string{}, titles: map[string]string{}}, learners: course.Learners}
	for _, l := range course.Learners {
		p.book.learners[foldedWords(nameWords(l))] = l
	}
	if lex != nil {
		nouns := lex.Reading.Nouns
		p.book.food = func(w string) bool { return nouns.Kind(w).Food() || nouns.Kind(w+"s").Food() }
		for _, d := range lex.Types() {
			p.book.dishes.add(dishType, d.Name)
			p.book.dishes.add(dishType, d.Title)
			for _, covered := range d.Dishes {
				p.book.dishes.add(dishName, covered)
			}
		}
	}
	for i, s := range course.Sessions {
		number := fmt.Sprintf("%02d", i+1)
		if n := placeName(s.Title, nameBook{}).sessions; len(n) == 1 {
			number = n[0]
		}
		p.sessions = append(p.sessions, courseSession{s, number})
		p.book.dishes.add(dishName, s.Dish)
		if key := foldedWords(nameWords(s.Title)); key != "" {
			p.book.titles[key] = number
		}
	}
	return p
}

// evaluation places the text of a file by what is told of it, by its path, and
// where both are silent by the hint. The text itself is not filled in. With an
// error it returns what can be told all the same.
func (p *places) evaluation(name string, given, hint facts) (Evaluation, error) {
	names := p.names(name)
	e := Evaluation{Learner: given.learner, Dish: given.dish, Role: given.role, Date: given.date}
	for _, n := range slices.Backward(names) {
		if e.Date.IsZero() {
			e.Date = n.date
		}
		if e.Role == "" && n.role != bothRoles {
			e.Role = n.role
		}
	}
	if e.Role == "" && slices.ContainsFunc(names, func(n nameParts) bool { return n.role == bothRoles }) {
		return e, unplaced("its name speaks of an evaluation and of feedback, and no heading parts them; put a line with \"My evaluation\" and one with \"Adult feedback\" before the two texts")
	}
	e.Role = cmp.Or(e.Role, hint.role, analyze.Learner)
	if e.Date.IsZero() {
		e.Date = hint.date
	}
	session, err := p.session(names, given.session)
	if err != nil {
		return e, err
	}
	if session == "" && hint.session != "" {
		if session, err = p.sessionNumber(hint.session); err != nil {
			return e, err
		}
	}
	if err := p.learnerAndDish(names, &e, session, hint); err != nil {
		_ = p.completed(&e, session) // the first error is the one to mend
		return e, err
	}
	if err := p.completed(&e, session); err != nil {
		return e, err
	}
	return e, nil
}

// names reads the folders a file lies in and its own name without its ending.
func (p *places) names(name string) []nameParts {
	base := path.Base(name)
	return append(p.folders(path.Dir(name)), placeName(strings.TrimSuffix(base, path.Ext(base)), p.book))
}

// folders reads the names of a folder and of those it lies in.
func (p *places) folders(dir string) []nameParts {
	if dir == "." {
		return nil
	}
	if known, ok := p.read.Load(dir); ok {
		return known.([]nameParts)
	}
	var out []nameParts
	for _, folder := range strings.Split(dir, "/") {
		out = append(out, placeName(folder, p.book))
	}
	out = slices.Clip(out) // whoever appends gets memory of their own
	p.read.Store(dir, out)
	return out
}

// session returns the number that is told, or "".
func (p *places) session(names []nameParts, given string) (string, error) {
	if given != "" {
		return p.sessionNumber(given)
	}
	var all []string
	for _, n := range names {
		for _, s := range n.sessions {
			if !slices.Contains(all, s) {
				all = append(all, s)
			}
		}
	}
	if len(all) > 1 {
		return "", unplaced("its name speaks of session %s and of session %s; keep one number, such as \"03 leek soup\"", all[0], all[1])
	}
	if len(all) == 1 {
		return all[0], nil
	}
	return "", nil
}

// sessionNumber is a session as it was told outright: a number, a title of
// course.yaml, or a date.
func (p *places) sessionNumber(given string) (string, error) {
	for _, s := range p.sessions {
		if s.Title != "" && fold(s.Title) == fold(given) {
			return s.number, nil
		}
	}
	n := placeName(given, p.book)
	switch {
	case len(n.sessions) == 1:
		return n.sessions[0], nil
	case !n.date.IsZero():
		return n.date.Format(dateForm), nil
	}
	if len(p.sessions) > 0 {
		return "", unplaced("its session is %q, which is no number and no title of a session in course.yaml; write its number", given)
	}
	return "", unplaced("its session is %q; write its number, such as 3", given)
}

// dateForm is a day as Evaluation.Session writes it where there is no number.
const dateForm = "2006-01-02"

// completed fills in from course.yaml and the date what names do not tell.
func (p *places) completed(e *Evaluation, session string) error {
	if session == "" && e.Dish != "" {
		var cooked []string
		for _, s := range p.sessions {
			if sameDish(s.Dish, e.Dish) {
				cooked = append(cooked, s.number)
			}
		}
		switch {
		case len(cooked) == 1:
			session = cooked[0]
		case len(cooked) > 1 && e.Date.IsZero():
			return unplaced("sessions %s and %s both cook %s; put the number of the session before its name", cooked[0], cooked[1], e.Dish)
		}
	}
	if session == "" && !e.Date.IsZero() {
		session = e.Date.Format(dateForm)
	}
	if session == "" {
		return unplaced("its session cannot be told; put a number into its name, such as \"03 leek soup\"")
	}
	e.Session = session
	if e.Dish == "" {
		for _, s := range p.sessions {
			if s.number == session {
				e.Dish = s.Dish
			}
		}
	}
	return nil
}
