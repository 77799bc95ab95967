package pages

import (
	"io"
	"io/fs"
	"net/http"
	"sync"

	"saywhy/corpus"
	"saywhy/lexicon"
)

// Tutor is what the tutor's pages work on.
type Tutor struct {
	Folder  Folder
	Library *CourseLibrary // over the same folder
	Key     string         // opens the first session, once

	// Address is where others on the network reach the pages; "" when nobody
	// does.
	Address string

	// Texts returns the reports of the learners' evaluations that the tutor has
	// collected, for the words that a list lacks; nil without a folder of them,
	// an error when there is none to read.
	Texts func() ([]corpus.Reported, error)

	// Group writes the report on the group as a page complete in itself; nil
	// without such a folder.
	Group func(io.Writer) error
}

// Folder is a tutor's own folder. Names are those of fs.FS; none leads out of
// it.
type Folder interface {
	fs.FS
	// Write puts data in place of a file, whole or not at all, and makes the
	// folder it lies in.
	Write(name string, data []byte) error
	Remove(name string) error
}

// desk is the tutor's pages: one edit at a time, and what it takes to undo.
type desk struct {
	Tutor
	sessions *sessions

	mu   sync.Mutex // held while a file is edited
	done []edit
}

// tutorPage is the tutor's first page.
type tutorPage struct {
	frame
	Sessions []lexicon.Session
	Types    []typeRow
	Problems []string
	Address  string
	QR       *qrPicture
	Invite   string // the address of a link for one more person, when one was asked for
	InviteQR *qrPicture
	Group    bool
	Texts    bool
}

type typeRow struct {
	Name, Title string
	Own         int // rows of the tutor's own
}

// tutorRoutes lists the tutor's pages; each but the first asks for a session.
func (s *site) tutorRoutes() []route {
	return []route{
		{path: "/tutor/open/{key}", get: s.openDesk},
		{path: "/tutor/open", get: s.openDesk, post: s.enterDesk},
		{path: "/tutor", get: s.asTutor(s.tutor)},
		{path: "/tutor/invite", get: s.asTutor(s.tutor), post: s.asTutor(s.invite)},
		{path: "/tutor/leave", get: s.asTutor(s.tutor), post: s.asTutor(s.leaveDesk)},
		{path: "/tutor/dish/{dish}", get: s.asTutor(s.editDish), post: s.asTutor(s.changeDish)},
		{path: "/tutor/missing", get: s.asTutor(s.missing)},
		{path: "/tutor/group", get: s.asTutor(s.group)},
	}
}

// asTutor lets only a session through.
func (s *site) asTutor(next http.HandlerFunc) http.HandlerFunc {
	return func(w http.ResponseWriter, r *http.Request) {
		if !s.desk.sessions.known(r) {
			s.fail(w, r, http.StatusUnauthorized)
			return
		}
		next(w, r)
	}
}

// openPage is behind the one-time link: a button, so that a browser or a
// program that looks at links beforehand does not spend it.
type openPage struct {
	frame
	Key string
}

func (s *site) openDesk(w http.ResponseWriter, r *http.Request) {
	p := openPage{s.frame(r, s.library.Current(), "", "The tutor’s desk"), line(r.PathValue("key"))}
	s.show(w, r, http.StatusOK, "open", p)
}

func (s *site) enterDesk(w http.ResponseWriter, r *http.Request) {
	if err := parse(r); err != nil {
		s.failForm(w, r, err)
		return
	}
	if !s.desk.sessions.enter(w, line(r.PostFormValue("key"))) {
		s.fail(w, r, http.StatusUnauthorized)
		return
	}
	http.Redirect(w, r, "/tutor", http.StatusSeeOther)
}

func (s *site) leaveDesk(w http.ResponseWriter, r *http.Request) {
	s.desk.sessions.leave(w, r)
	http.Redirect(w, r, "/", http.StatusSeeOther)
}

func (s *site) tutor(w http.ResponseWriter, r *http.Request) {
	s.show(w, r, http.StatusOK, "tutor", s.tutorPage(r))
}

// invite shows a link for one more person or machine.
func (s *site) invite(w http.ResponseWriter, r *http.Request) {
	p := s.tutorPage(r)
	base := s.desk.Address
	if base == "" {
		base = "http://" + r.Host + "/"
	}
	p.Invite = base + "tutor/open/" + s.desk.sessions.invite()
	if s.desk.Address != "" {
		p.InviteQR = newQRPicture(p.Invite)
	}
	s.show(w, r, http.StatusOK, "tutor", p)
}

func (s *site) tutorPage(r *http.Request) tutorPage {
	shelf := s.library.Current()
	p := tutorPage{
		frame: s.frame(r, shelf, "/tutor", "The tutor’s desk"), Sessions: shelf.Course.Sessions,
		Address: s.desk.Address, Group: s.desk.Group != nil, Texts: s.desk.Texts != nil,
	}
	if p.Address != "" {
		p.QR = newQRPicture(p.Address)
	}
	for _, problem := range shelf.Problems {
		p.Problems = append(p.Problems, problem.Error())
	}
	for _, d := range shelf.Lexicon.Types() {
		row := typeRow{Name: d.Name, Title: d.Title}
		for _, word := range d.Words {
			if word.From == d.Name && shelf.Lexicon.Laid(word) {
				row.Own++
			}
		}
		p.Types = append(p.Types, row)
	}
	return p
}

// group shows the report on the group, which is a page complete in itself.
func (s *site) group(w http.ResponseWriter, r *http.Request) {
	if s.desk.Group == nil {
		s.fail(w, r, http.StatusNotFound)
		return
	}
	s.showHandout(w, r, s.desk.Group)
}
