package lexicon

import (
	"errors"
	"fmt"
	"io/fs"
)

// EditCourse returns the file of a dish type in a tutor's folder with changes
// made, and its name in the folder, which an error is about. A type that the
// folder has no file of gets one. A word that goes and lies below the folder is
// left out by name. Nothing is written.
func EditCourse(dir fs.FS, d Dish, changes []Change) (data []byte, file string, err error) {
	if file = DishFile(dir, d.Name); file != "" {
		if data, err = fs.ReadFile(dir, file); err != nil {
			return nil, file, errors.New("cannot be read; check that you may read it")
		}
	} else {
		file = "dishes/" + d.Name + ".yaml"
		if _, err := fs.Stat(dir, file); !errors.Is(err, fs.ErrNotExist) {
			return nil, file, errors.New("is there and holds another type; give that file another name")
		}
		data = NewDish(d.Name, d, true)
	}
	if data, err = EditDish(data, changes); err != nil {
		return nil, file, err
	}
	lex, _, err := LoadCourse(With(dir, file, data))
	if lex == nil {
		return nil, file, err
	}
	now, _ := lex.Type(d.Name)
	var below []Word
	for _, c := range changes {
		if _, there := now.Has(c.Word); c.Remove && there {
			below = append(below, c.Word)
		}
	}
	if data, err = LeaveOut(data, below); err != nil {
		return nil, file, err
	}
	return data, file, nil
}

// CheckCourseEdit loads a folder as it would be with the edited file and
// returns what would be wrong: by the row of the sheet of that name where a
// change comes from one, otherwise by the line of the file.
func CheckCourseEdit(dir fs.FS, file string, data []byte, sheet, dish string, changes []Change) Problems {
	lex, _, err := LoadCourse(With(dir, file, data))
	problems, _ := err.(Problems)
	for i, p := range problems {
		if p.File != file || p.Layer == 0 {
			continue
		}
		sense, word, ok := RowAt(data, p.Line)
		for _, c := range changes {
			if ok && c.Row > 0 && c.Word.Sense == sense && c.Word.Word == word {
				problems[i] = SheetProblem(sheet, c.Row, p.Text)
			}
		}
	}
	if len(problems) > 0 || lex == nil {
		return problems
	}
	// What was written must come back as it was meant.
	d, _ := lex.Type(dish)
	for _, c := range changes {
		w, there := d.Has(c.Word)
		if there == c.Remove || there && !sameRow(w, c.Word) {
			problems = append(problems, SheetProblem(sheet, c.Row, fmt.Sprintf("%q cannot be written as it stands; write its row by hand", c.Word.Word)))
		}
	}
	return problems
}

// Has returns the row of a word of the type, by its sense and headword.
func (d Dish) Has(w Word) (Word, bool) {
	for _, have := range d.Words {
		if have.Sense == w.Sense && have.Word == w.Word {
			return have, true
		}
	}
	return Word{}, false
}
