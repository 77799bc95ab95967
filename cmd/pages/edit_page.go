package pages

import (
	"net/http"
	"net/url"

	"saywhy/lexicon"
)

// editPage is the words of a dish type for one sense, as a table to edit.
type editPage struct {
	frame
	Name     string
	Senses   []senseLink
	Sense    lexicon.Sense
	Rows     []editRow
	New      row
	NewWrong []string
	All      bool
	AllPath  string
	Others   int
	Undo     string
	Notice   string
	Problems []string
	Clash    *clash
}

// editRow is one row of the table; Form is set while it is being changed.
type editRow struct {
	lexicon.Word
	Own   bool // it stands in the tutor's folder
	Row   string
	Path  string // where its form is
	Form  *row
	Wrong []string
}

// clash shows the two versions of one row.
type clash struct {
	Mine   row
	Theirs row
	Remove bool
}

// notices are what a page says after a change, by what is in its address.
func notice(done string) string {
	switch done {
	case "beside":
		return "Saved. Somebody else changed other rows of this file meanwhile; those are kept as well."
	case "saved":
		return "Saved. Texts are read with it from now on."
	case "undone":
		return "Undone. The file is as it was before."
	}
	return ""
}

func editPath(name string, sense lexicon.Sense, more ...string) string {
	v := url.Values{"sense": {string(sense)}}
	for i := 0; i+1 < len(more); i += 2 {
		v.Set(more[i], more[i+1])
	}
	return "/tutor/dish/" + url.PathEscape(name) + "?" + v.Encode()
}

func (s *site) editDish(w http.ResponseWriter, r *http.Request) {
	q := r.URL.Query()
	p, ok := s.editPage(r, lexicon.Sense(q.Get("sense")), q.Get("all") == "yes")
	if !ok {
		s.fail(w, r, http.StatusNotFound)
		return
	}
	p.Notice = notice(q.Get("done"))
	if at := p.row(line(q.Get("word"))); at != nil {
		form := rowFor(at.Word, p.New.File)
		at.Form = &form
	}
	s.show(w, r, http.StatusOK, "edit", p)
}

// row returns the row of a headword, or nil.
func (p *editPage) row(word string) *editRow {
	for i := range p.Rows {
		if p.Rows[i].Word.Word == word {
			return &p.Rows[i]
		}
	}
	return nil
}

func (s *site) editPage(r *http.Request, sense lexicon.Sense, all bool) (editPage, bool) {
	shelf := s.library.Current()
	dish, ok := shelf.Lexicon.Type(r.PathValue("dish"))
	if !ok {
		return editPage{}, false
	}
	if !sense.Known() {
		sense = lexicon.Sight
	}
	p := editPage{
		frame: s.frame(r, shelf, "/tutor", "Words of "+dish.Title), Name: dish.Name, Sense: sense, All: all,
		New: row{Sense: sense, File: s.desk.stamp(lexicon.DishFile(s.desk.Folder, dish.Name))}, Undo: s.desk.undoable(dish.Name),
	}
	for _, problem := range shelf.Problems {
		p.Problems = append(p.Problems, problem.Error())
	}
	for _, other := range lexicon.Senses() {
		typical, _ := dish.Typical(other)
		p.Senses = append(p.Senses, senseLink{other, editPath(dish.Name, other), other == sense, len(typical)})
	}
	typical, rest := dish.Typical(sense)
	list := typical
	p.Others = len(rest)
	p.AllPath = editPath(dish.Name, sense, "all", "yes")
	if all {
		list = dish.BySense(sense)
		p.AllPath = editPath(dish.Name, sense)
	}
	for _, word := range list {
		more := []string{"word", word.Word}
		if all {
			more = append(more, "all", "yes")
		}
		p.Rows = append(p.Rows, editRow{Word: word, Own: shelf.Lexicon.Laid(word), Row: lexicon.WordRow(word), Path: editPath(dish.Name, sense, more...) + "#row"})
	}
	return p, true
}

func (s *site) changeDish(w http.ResponseWriter, r *http.Request) {
	if err := parse(r); err != nil {
		s.failForm(w, r, err)
		return
	}
	name := r.PathValue("dish")
	form := rowOf(r)
	if !form.Sense.Known() {
		s.fail(w, r, http.StatusBadRequest)
		return
	}
	all := r.PostFormValue("all") == "yes"
	var out outcome
	remove := false
	switch r.PostFormValue("act") {
	case "save":
		out = s.desk.save(name, form, false)
	case "remove":
		remove = true
		out = s.desk.save(name, form, true)
	case "undo":
		out = s.desk.undo(name)
	case "fill": // a word to be added, from another page
	default:
		s.fail(w, r, http.StatusBadRequest)
		return
	}
	if out.done != "" {
		more := []string{"done", out.done}
		if all {
			more = append(more, "all", "yes")
		}
		http.Redirect(w, r, editPath(name, form.Sense, more...), http.StatusSeeOther)
		return
	}
	p, ok := s.editPage(r, form.Sense, all)
	if !ok {
		s.fail(w, r, http.StatusNotFound)
		return
	}
	status := http.StatusUnprocessableEntity
	if len(out.problems) == 0 && out.clash == nil {
		status = http.StatusOK
		form.File, form.Was, form.Row = p.New.File, "", ""
	}
	switch {
	case out.clash != nil:
		status = http.StatusConflict
		mine := form
		mine.Row = out.clash.Row // whoever has seen theirs may write over it
		mine.Was, mine.File = out.clash.Was, p.New.File
		p.Clash = &clash{Mine: mine, Theirs: *out.clash, Remove: remove}
	case form.Was == "" || r.PostFormValue("act") != "save":
		p.New, p.NewWrong = form, out.problems
	default:
		if at := p.row(form.Was); at != nil {
			at.Form, at.Wrong = &form, out.problems
		} else {
			p.New, p.NewWrong = form, out.problems
		}
	}
	s.show(w, r, status, "edit", p)
}
