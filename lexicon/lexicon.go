// Package lexicon holds words: the sensory vocabulary of each dish type, with
// plain meanings, forms and scales, and the words by which a text is read. It
// knows nothing of texts.
//
// The built-in lists are embedded data files; a tutor's own folder can be laid
// over them with Load.
package lexicon

import (
	"embed"
	"errors"
	"io/fs"
	"sync"
)

//go:embed builtin
var builtin embed.FS

// Lexicon is a set of dish types, resolved, and the words for reading. It is
// not changed after loading and is safe for use by many goroutines.
type Lexicon struct {
	Reading *Reading

	dishes map[string]Dish
	names  []string // of the types that are no groupings, in order
	called dishNames
	all    []Word // every word of every type, once per sense

	laid       map[row]bool    // the rows that come from a folder laid over the built-in ones
	laidDishes map[string]bool // the types whose dishes come from such a folder
}

// Builtin returns the lexicon that comes with the program. An error means that
// an embedded file is wrong, which the package's tests rule out.
func Builtin() (*Lexicon, error) {
	lex, err := Load()
	if err != nil {
		return nil, err
	}
	return lex, nil
}

// Load lays the dish files of the given folders (their dishes/*.yaml) over the
// built-in ones, later folders over earlier ones. A file whose type exists
// already adds and changes rows of it; a new type is added.
//
// When files are wrong the error is of type Problems and lists everything that
// is; the Lexicon is returned all the same with what could be read.
func Load(layers ...fs.FS) (*Lexicon, error) {
	base, err := fs.Sub(builtin, "builtin")
	if err != nil {
		return nil, err
	}
	files, err := dishFiles(append([]fs.FS{base}, layers...))
	if err != nil {
		return nil, err
	}
	// The files are parsed side by side, for parsing is most of the time that the
	// program takes to start. Each keeps its own list of problems.
	var (
		parsing     sync.WaitGroup
		reading     *Reading
		readingErr  error
		problems    Problems
		questions   = newWordingSource()
		questionErr error
	)
	parsing.Go(func() { reading, readingErr = parseReading(base, &problems) })
	parsing.Go(func() { questionErr = questions.parse(base) })
	for i := range files {
		parsing.Go(files[i].parse)
	}
	parsing.Wait()
	if err := errors.Join(readingErr, questionErr); err != nil {
		return nil, err
	}
	lex := newLexicon(reading)
	types := map[string]*dishFile{}
	var order []string
	for _, f := range files {
		d := f.dish
		if d == nil {
			continue
		}
		if under, ok := types[d.dish.Name]; ok {
			d = under.overlaid(d)
		} else {
			order = append(order, d.dish.Name)
		}
		types[d.dish.Name] = d
	}
	lex.resolve(types, order)
	for _, f := range files {
		problems = append(problems, *f.problems...)
	}
	lex.Reading.Wordings = questions.read(lex)
	// A word that a tutor adds may stand in a built-in wording. Such a wording is
	// left out and is no mistake of the tutor's.
	if len(layers) == 0 {
		problems = append(problems, *questions.problems...)
	}
	if len(problems) > 0 {
		problems.sort()
		return lex, problems
	}
	return lex, nil
}

func newLexicon(reading *Reading) *Lexicon {
	return &Lexicon{Reading: reading, dishes: map[string]Dish{}, laid: map[row]bool{}, laidDishes: map[string]bool{}}
}

// layerFile is a dish file of one of the layers.
type layerFile struct {
	source
	layer fs.FS
	dish  *dishFile // nil when nothing of it can be read
}

// dishFiles lists the dish files of the layers, those below first.
func dishFiles(layers []fs.FS) ([]layerFile, error) {
	var out []layerFile
	for n, layer := range layers {
		names, err := fs.Glob(layer, "dishes/*.yaml")
		if err != nil {
			return nil, err
		}
		for _, name := range names {
			out = append(out, layerFile{source: source{file: name, layer: n, problems: &Problems{}}, layer: layer})
		}
	}
	return out, nil
}

func (f *layerFile) parse() {
	data, err := fs.ReadFile(f.layer, f.file)
	if err != nil {
		f.problem(nil, "cannot be read: %v", err)
		return
	}
	f.dish = parseDish(f.source, data)
}

// Types returns the dish types that have dishes, by name.
func (l *Lexicon) Types() []Dish {
	out := make([]Dish, 0, len(l.names))
	for _, n := range l.names {
		out = append(out, l.dishes[n])
	}
	return out
}

// Words returns every word of every type, once per sense, by sense and then
// alphabetically: what a text is read with, whatever its dish.
func (l *Lexicon) Words() []Word { return l.all }

// General returns the root type: the words that fit any dish. Its brief asks
// for all ten areas.
func (l *Lexicon) General() Dish { return l.dishes[Root] }
