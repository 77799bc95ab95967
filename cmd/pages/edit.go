package pages

import (
	"crypto/sha256"
	"encoding/hex"
	"io/fs"
	"slices"

	"saywhy/lexicon"
)

// edit is one change of a file that can be taken back.
type edit struct {
	file   string
	what   string // for a person: "added crackly (texture)"
	before []byte // nil when the file was made by it
	after  string // the file's stamp when it was done
}

// mostUndo is how many edits can be taken back, the last first.
const mostUndo = 100

// outcome is what came of an edit.
type outcome struct {
	done     string   // which notice to show; "" when nothing was changed
	problems []string // what is in the way, a sentence each
	clash    *row     // the row as somebody else has it now; its Word is "" when it is gone
}

// save makes a change, or says why not. Nothing is lost by two people editing
// one file: a row that somebody else changed meanwhile is shown, not written
// over, and changes to other rows stay.
func (d *desk) save(name string, form row, remove bool) outcome {
	d.mu.Lock()
	defer d.mu.Unlock()
	dish, out := d.ready(name)
	if out.problems != nil {
		return out
	}
	w, wrong := form.word()
	if remove {
		w, wrong = lexicon.Word{Sense: form.Sense, Word: form.Was}, ""
	}
	if wrong != "" {
		return outcome{problems: []string{wrong}}
	}
	was := form.Was
	if was == "" {
		was = w.Word
	}
	now, there := dish.Has(lexicon.Word{Sense: form.Sense, Word: was})
	standing := ""
	if there {
		standing = lexicon.WordRow(now)
	}
	if standing != form.Row {
		theirs := row{Sense: form.Sense}
		if there {
			theirs = rowFor(now, "")
		}
		return outcome{clash: &theirs}
	}
	if w.Word != was {
		if _, taken := dish.Has(w); taken {
			return outcome{problems: []string{"“" + w.Word + "” is in the list already. Change its own row."}}
		}
	}
	changes := []lexicon.Change{{Word: w, Remove: remove}}
	if !remove && w.Word != was {
		changes = append(changes, lexicon.Change{Word: lexicon.Word{Sense: form.Sense, Word: was}, Remove: true})
	}
	what := "changed "
	switch {
	case remove:
		what = "left out "
	case !there:
		what = "added "
	}
	done := "saved"
	if form.File != d.stamp(lexicon.DishFile(d.Folder, dish.Name)) {
		done = "beside"
	}
	return d.write(dish, changes, what+was+" ("+string(form.Sense)+")", done)
}

// ready looks at the folder at once and returns the dish type that is to be
// edited, or what is to be mended first.
func (d *desk) ready(name string) (lexicon.Dish, outcome) {
	if err := d.Library.Reload(); err != nil {
		return lexicon.Dish{}, outcome{problems: []string{"The course folder cannot be read. Check that it is still there."}}
	}
	shelf := d.Library.Current()
	if len(shelf.Problems) > 0 {
		out := outcome{problems: []string{"The files have something to mend first. Nothing was changed."}}
		for _, p := range shelf.Problems {
			out.problems = append(out.problems, p.Error())
		}
		return lexicon.Dish{}, out
	}
	dish, ok := shelf.Lexicon.Type(name)
	if !ok {
		return lexicon.Dish{}, outcome{problems: []string{"There is no such kind of dish any more."}}
	}
	return dish, outcome{}
}

// write makes a change that nobody else is in the way of.
func (d *desk) write(dish lexicon.Dish, changes []lexicon.Change, what, done string) outcome {
	file := lexicon.DishFile(d.Folder, dish.Name)
	var before []byte
	if file != "" {
		var err error
		if before, err = fs.ReadFile(d.Folder, file); err != nil {
			return outcome{problems: []string{"The file cannot be read. Check that you may read it. Nothing was changed."}}
		}
	}
	data, file, err := lexicon.EditCourse(d.Folder, dish, changes)
	if err != nil {
		return outcome{problems: []string{file + ": " + err.Error() + "."}}
	}
	if problems := lexicon.CheckCourseEdit(d.Folder, file, data, "", dish.Name, changes); len(problems) > 0 {
		out := outcome{}
		for _, p := range problems {
			out.problems = append(out.problems, p.Text+".")
		}
		return out
	}
	if d.stamp(file) != stampOfData(before) {
		return outcome{problems: []string{"The file was changed by somebody at this very moment. Nothing was written; press Save again."}}
	}
	if err := d.Folder.Write(file, data); err != nil {
		return outcome{problems: []string{"The file could not be written. Check that there is room on the disk and that you may write in the course folder. Nothing was changed."}}
	}
	d.done = append(d.done, edit{file, what, before, stampOfData(data)})
	if len(d.done) > mostUndo {
		d.done = slices.Delete(d.done, 0, 1)
	}
	_ = d.Library.Reload() // it was checked before it was written
	return outcome{done: done}
}

// undo takes the last edit of a dish type's file back, unless somebody has
// changed the file since.
func (d *desk) undo(name string) outcome {
	d.mu.Lock()
	defer d.mu.Unlock()
	at := d.lastEdit(name)
	if at < 0 {
		return outcome{problems: []string{"There is nothing to undo."}}
	}
	e := d.done[at]
	if d.stamp(e.file) != e.after {
		return outcome{problems: []string{"The file has been changed since, outside these pages. Undoing would lose that, so nothing was done. Change the row itself."}}
	}
	var err error
	if e.before == nil {
		err = d.Folder.Remove(e.file)
	} else {
		err = d.Folder.Write(e.file, e.before)
	}
	if err != nil {
		return outcome{problems: []string{"The file could not be written. Nothing was changed."}}
	}
	d.done = slices.Delete(d.done, at, at+1)
	_ = d.Library.Reload()
	return outcome{done: "undone"}
}

// lastEdit returns the place of the last edit of a dish type's file, or -1.
func (d *desk) lastEdit(name string) int {
	file := lexicon.DishFile(d.Folder, name)
	for i := len(d.done) - 1; i >= 0; i-- {
		if d.done[i].file == file {
			return i
		}
	}
	return -1
}

// undoable says what undoing would take back, "" for nothing.
func (d *desk) undoable(name string) string {
	d.mu.Lock()
	defer d.mu.Unlock()
	if at := d.lastEdit(name); at >= 0 {
		return d.done[at].what
	}
	return ""
}

// stamp tells one state of a file from another.
func (d *desk) stamp(file string) string {
	data, err := fs.ReadFile(d.Folder, file)
	if err != nil {
		data = nil
	}
	return stampOfData(data)
}

func stampOfData(data []byte) string {
	if data == nil {
		return "none"
	}
	sum := sha256.Sum256(data)
	return hex.EncodeToString(sum[:12])
}
