package pages

import (
	"io"
	"net/http"
	"runtime"
	"strings"

	"saywhy/analyze"
	"saywhy/cmd/handout"
	"saywhy/cmd/wording"
	"saywhy/lexicon"
)

// writePage is the page on which a learner writes, or an adult gives feedback,
// and on which the answer stands.
type writePage struct {
	frame
	Adult  bool
	Path   string // where its forms go
	Form   writing
	Kinds  []kindGroup
	Brief  []briefArea // what the adult is asked to speak of
	Notice string      // something to know before going on
	Answer *answer
}

// kindGroup is a group of dish types or sessions to choose from.
type kindGroup struct {
	Title string
	Kinds []kind
}

type kind struct {
	Value, Title string
	Chosen       bool
}

// briefArea is an area that a text should speak of, and how.
type briefArea struct {
	Area lexicon.Area
	Hint string
}

// role tells the page of a learner from that of an adult.
type role struct {
	analyze.Role
	path  string
	title string
}

func learner() role { return role{analyze.Learner, "/write", "Write about what you cooked"} }
func adult() role   { return role{analyze.Adult, "/feedback", "Feedback for a young cook"} }

func (s *site) write(w http.ResponseWriter, r *http.Request)    { s.empty(w, r, learner()) }
func (s *site) feedback(w http.ResponseWriter, r *http.Request) { s.empty(w, r, adult()) }

func (s *site) readLearner(w http.ResponseWriter, r *http.Request) { s.read(w, r, learner()) }
func (s *site) readAdult(w http.ResponseWriter, r *http.Request)   { s.read(w, r, adult()) }

func (s *site) openLearner(w http.ResponseWriter, r *http.Request) { s.open(w, r, learner()) }
func (s *site) openAdult(w http.ResponseWriter, r *http.Request)   { s.open(w, r, adult()) }

// empty shows the page with nothing written yet.
func (s *site) empty(w http.ResponseWriter, r *http.Request, as role) {
	p := s.writePage(r, s.library.Current(), as, writing{})
	s.show(w, r, http.StatusOK, "write", p)
}

func (s *site) writePage(r *http.Request, shelf *Shelf, as role, form writing) writePage {
	p := writePage{
		frame: s.frame(r, shelf, as.path, as.title), Adult: as.Role == analyze.Adult,
		Path: as.path, Form: form, Kinds: kinds(shelf, form.Kind),
	}
	if p.Adult {
		dish, _ := shelf.cooked(form.Title, form.Kind)
		p.Brief = brief(shelf, as, dish)
	}
	return p
}

// kinds lists what a text can be about: the sessions of the course, then the
// dish types.
func kinds(shelf *Shelf, chosen string) []kindGroup {
	var out []kindGroup
	sessions := kindGroup{Title: "Your course"}
	for _, x := range shelf.Course.Sessions {
		name := x.Title
		if name == "" {
			name = x.Dish
		}
		title := name
		if !strings.EqualFold(name, x.Dish) {
			title += ": " + x.Dish
		}
		sessions.Kinds = append(sessions.Kinds, kind{name, title, name == chosen})
	}
	if len(sessions.Kinds) > 0 {
		out = append(out, sessions)
	}
	types := kindGroup{Title: "Kinds of dish"}
	for _, d := range shelf.Lexicon.Types() {
		types.Kinds = append(types.Kinds, kind{d.Name, d.Title, d.Name == chosen})
	}
	return append(out, types)
}

// brief lists what the reading of a text in that role expects, and what to ask
// oneself about it: as the sheet does where it has a line for it.
func brief(shelf *Shelf, as role, dish lexicon.Dish) []briefArea {
	ask := map[lexicon.Area]string{}
	for _, watch := range handout.NewSheet(shelf.Lexicon, dish, "").Watch {
		ask[watch.Area] = watch.Ask
	}
	var out []briefArea
	nothing := shelf.Analyzer.Read(analyze.Input{Role: as.Role}, analyze.Brief{Dish: dish, Questions: 1})
	for _, row := range nothing.Areas {
		if !row.Expected {
			continue
		}
		hint := ask[row.Area]
		if hint == "" {
			hint = wording.Observe(row.Area)
		}
		out = append(out, briefArea{row.Area, hint})
	}
	return out
}

// read answers a text.
func (s *site) read(w http.ResponseWriter, r *http.Request, as role) {
	form, err := writingOf(r)
	if err != nil {
		s.failForm(w, r, err)
		return
	}
	shelf := s.library.Current()
	if notice := tooLong(form); notice != "" {
		p := s.writePage(r, shelf, as, form)
		p.Notice = notice
		s.show(w, r, http.StatusRequestEntityTooLarge, "write", p)
		return
	}
	if made, ok := s.inTurn(r, func() []byte {
		p := s.writePage(r, shelf, as, form)
		p.Answer = newAnswer(shelf, as, form)
		p.Title = p.Answer.heading(as)
		return s.render("write", p)
	}); ok {
		send(w, r, http.StatusOK, made)
	}
}

// inTurn makes an answer as soon as a core is free for it, in the order in which
// they were asked for: so nobody waits much longer than others do. A slow line
// holds up nobody, as nothing is sent here. It is not ok when nobody waits for
// the answer any more.
func (s *site) inTurn(r *http.Request, answer func() []byte) (made []byte, ok bool) {
	select {
	case s.reading <- struct{}{}:
	case <-r.Context().Done():
		return nil, false
	}
	defer func() { <-s.reading }()
	// Let everything short that waits for this core go first: whoever takes the
	// place over from another is run before them, one long answer after the other.
	runtime.Gosched()
	return answer(), true
}

// tooLong says that a text cannot be read for its length, or "".
func tooLong(form writing) string {
	for _, t := range []struct{ what, text string }{{"Your text", form.Text}, {"Your last evaluation", form.Last}, {"Your earlier draft", form.Before}} {
		if len(t.text) > maxText {
			return t.what + " is longer than saywhy reads at once (about 11,000 words). Nothing is lost: make it shorter, then read it again."
		}
	}
	return ""
}

// open puts a text file into the box. It is read nowhere else.
func (s *site) open(w http.ResponseWriter, r *http.Request, as role) {
	form, err := writingOf(r)
	if err != nil {
		s.failForm(w, r, err)
		return
	}
	status := http.StatusOK
	text, notice := opened(r)
	if notice == "" {
		form.Text, form.Before = text, ""
		notice = "Your file is open in the box below."
	} else {
		status = http.StatusUnprocessableEntity
	}
	p := s.writePage(r, s.library.Current(), as, form)
	p.Notice = notice
	s.show(w, r, status, "write", p)
}

// opened returns the text of the file of a form, or what is wrong with it.
func opened(r *http.Request) (text, wrong string) {
	f, _, err := r.FormFile("file")
	if err != nil {
		return "", "No file was chosen. Choose one first, then press “Open it”."
	}
	defer f.Close()
	data, err := io.ReadAll(io.LimitReader(f, maxText+1))
	switch {
	case err != nil:
		return "", "That file did not arrive whole. Try once more."
	case len(data) > maxText:
		return "", "That file is longer than saywhy reads at once (about 11,000 words). Open a shorter one."
	}
	if wrong := wording.NotText(data); wrong != "" {
		return "", "That file " + wrong + "."
	}
	return plain(strings.TrimPrefix(string(data), "\ufeff")), ""
}

// download gives the text back as a file. It comes from the form and goes
// straight back; nothing is kept between.
func (s *site) download(w http.ResponseWriter, r *http.Request) {
	form, err := writingOf(r)
	if err != nil {
		s.failForm(w, r, err)
		return
	}
	h := w.Header()
	h.Set("Content-Type", "text/plain; charset=utf-8")
	h.Set("Content-Disposition", `attachment; filename="`+fileName(form.Title)+`"`)
	_, _ = io.WriteString(w, form.Text)
}

// fileName is the name of a text file about what was cooked.
func fileName(title string) string {
	words := strings.FieldsFunc(strings.ToLower(title), func(r rune) bool { return (r < 'a' || r > 'z') && (r < '0' || r > '9') })
	name := strings.Join(words, "-")
	if len(name) > 60 {
		name = name[:60]
	}
	if name == "" {
		name = "my-evaluation"
	}
	return name + ".txt"
}
