package lexicon

import (
	"errors"
	"fmt"
	"io/fs"
	"path"
	"slices"
	"strings"

	"go.yaml.in/yaml/v3"
)

// CourseFile is the name of the file of a tutor's folder that holds the
// sessions and the tutor's own wordings of questions.
const CourseFile = "course.yaml"

// Course is what a tutor's own folder says besides its dish types.
type Course struct {
	Title    string
	Sessions []Session // in the order of the file
	Learners []string  // as the tutor writes them; nil when the file lists none
	Form     Form      // the columns of a form's answers
	Headings Headings  // of a document that holds an evaluation and the feedback
}

// Session is one practical of a course.
type Session struct {
	Title string // "Week 3"; may be empty
	Dish  string // a dish type, or a dish that a type covers
	Brief []Area // what its evaluation should reach; nil leaves it to the dish type
}

// Form names the columns of a spreadsheet with one evaluation a row. What is
// empty is guessed from common names.
type Form struct {
	Learner  string
	Session  string
	Dish     string
	Role     string
	Date     string
	Text     []string // the columns of the text, in the order to read them
	Feedback []string // the same for the adult's feedback, where it stands in the same row
}

// Headings names the headings of a document that holds both texts. What is
// nil is left to common headings.
type Headings struct {
	Learner []string // the learner's evaluation stands below
	Adult   []string // the adult's feedback stands below
	Other   []string // what stands below is neither, and is left out
}

// Session returns the session with that title, or else the first that cooks
// the dish of that name. Case, and one or many, make no difference.
func (c *Course) Session(name string) (Session, bool) {
	want := plainName(name)
	for _, s := range c.Sessions {
		if s.Title != "" && plainName(s.Title) == want {
			return s, true
		}
	}
	for _, s := range c.Sessions {
		if sameName(plainName(s.Dish), want) {
			return s, true
		}
	}
	return Session{}, false
}

func plainName(s string) string { return strings.Join(strings.Fields(strings.ToLower(s)), " ") }

// LoadCourse lays a tutor's folder over the built-in lexicon: its dish types,
// as Load does, and its wordings of questions. The folder may lack course.yaml.
//
// When files are wrong the error is of type Problems and lists everything that
// is; lexicon and course are returned all the same with what could be read.
func LoadCourse(dir fs.FS) (*Lexicon, *Course, error) {
	lex, err := Load(dir)
	var problems Problems
	if err != nil && !errors.As(err, &problems) {
		return nil, nil, err
	}
	strays(dir, &problems)
	twins(dir, &problems)
	course := &Course{}
	data, err := fs.ReadFile(dir, CourseFile)
	switch {
	case errors.Is(err, fs.ErrNotExist):
	case err != nil:
		problems = append(problems, Problem{File: CourseFile, Layer: 1, Text: "cannot be read; check that you may read it"})
	default:
		parseCourse(source{file: CourseFile, layer: 1, problems: &problems}, data, course, lex)
	}
	if len(problems) == 0 {
		return lex, course, nil
	}
	problems.sort()
	return lex, course, problems
}

// strays reports files that look as if they were meant to be read and are not.
func strays(dir fs.FS, problems *Problems) {
	stray := func(name, format string, args ...any) {
		*problems = append(*problems, Problem{File: name, Layer: 1, Text: fmt.Sprintf(format, args...)})
	}
	entries, _ := fs.ReadDir(dir, ".") // a folder that cannot be listed has no strays to report
	for _, e := range entries {
		switch ext := path.Ext(e.Name()); {
		case e.IsDir() || ext != ".yaml" && ext != ".yml" || e.Name() == CourseFile:
		case e.Name() == "course.yml":
			stray(e.Name(), "is not read; call it %s", CourseFile)
		default:
			stray(e.Name(), "is not read here; a dish type belongs into the folder dishes, and the sessions into %s", CourseFile)
		}
	}
	entries, _ = fs.ReadDir(dir, "dishes")
	for _, e := range entries {
		if path.Ext(e.Name()) == ".yml" {
			stray("dishes/"+e.Name(), "is not read; let its name end in .yaml")
		}
	}
}

// twins reports a type that two files of the folder hold, as a copy kept beside
// the original does: which of them counts would hang on their names.
func twins(dir fs.FS, problems *Problems) {
	files, _ := fs.Glob(dir, "dishes/*.yaml") // the pattern is well formed
	first := map[string]string{}
	for _, name := range files {
		data, err := fs.ReadFile(dir, name)
		if err != nil {
			continue // Load has said so
		}
		d := parseDish(source{file: name, problems: &Problems{}}, data)
		if d == nil {
			continue
		}
		if before, twice := first[d.dish.Name]; twice {
			at := d.at["type"]
			*problems = append(*problems, Problem{File: name, Line: at.node.Line, Column: at.node.Column, Layer: 1, Text: fmt.Sprintf("%q is also the type of %s; keep one of the two files", d.dish.Name, before)})
			continue
		}
		first[d.dish.Name] = name
	}
}

// DishFile returns the file of the folder that holds the type, such as
// "dishes/soups.yaml", or "" when none does.
func DishFile(dir fs.FS, dish string) string {
	files, _ := fs.Glob(dir, "dishes/*.yaml") // the pattern is well formed
	for _, name := range files {
		data, err := fs.ReadFile(dir, name)
		if err != nil {
			continue
		}
		if d := parseDish(source{file: name, problems: &Problems{}}, data); d != nil && d.dish.Name == dish {
			return name
		}
	}
	return ""
}

// parseCourse reads course.yaml strictly and lays its wordings over those of
// the lexicon, which nobody else holds yet.
func parseCourse(s source, data []byte, c *Course, lex *Lexicon) {
	root := s.root(data)
	if root == nil {
		return
	}
	s.each(root, "the file", func(key string, k, v *yaml.Node) {
		switch key {
		case "title":
			c.Title = s.text(v, "title")
		case "sessions":
			c.Sessions = s.sessions(v, lex)
		case "learners":
			c.Learners = s.distinct(v, "learners")
		case "form":
			c.Form = s.form(v)
		case "headings":
			c.Headings = s.headings(v)
		case "questions":
			lex.Reading.Wordings = s.wordingFile(v, lex, lex.Reading.Wordings)
		default:
			s.unknownKey(k, "a course file", []string{"title", "sessions", "learners", "form", "headings", "questions"})
		}
	})
}

func (s source) sessions(n *yaml.Node, lex *Lexicon) []Session {
	if n.Tag == "!!null" {
		return nil
	}
	if n.Kind != yaml.SequenceNode {
		s.problem(n, "sessions should be a list; start each with \"- dish: tomato soup\"")
		return nil
	}
	var out []Session
	titles := map[string]int{}
	for _, item := range n.Content {
		session, ok := s.session(item, lex)
		if !ok {
			continue
		}
		title := plainName(session.Title)
		if line, twice := titles[title]; twice && title != "" {
			s.problem(item, "two sessions are called %q, the first in line %d; give one of them another title", session.Title, line)
			continue
		}
		titles[title] = item.Line
		out = append(out, session)
	}
	return out
}

func (s source) session(n *yaml.Node, lex *Lexicon) (Session, bool) {
	var out Session
	before := len(*s.problems)
	s.each(n, "a session", func(key string, k, v *yaml.Node) {
		switch key {
		case "title":
			out.Title = s.text(v, "title")
		case "dish":
			out.Dish = s.text(v, "dish")
			if out.Dish == "" {
				return
			}
			if _, err := lex.Find(out.Dish); err != nil {
				s.problem(v, "%v", err)
			}
		case "brief":
			out.Brief = s.brief(v)
		default:
			s.unknownKey(k, "a session", []string{"title", "dish", "brief"})
		}
	})
	if out.Dish == "" && len(*s.problems) == before {
		s.problem(n, "this session has no dish; add a row such as \"dish: tomato soup\"")
	}
	return out, len(*s.problems) == before
}

func (s source) brief(n *yaml.Node) []Area {
	var out []Area
	for _, name := range s.known(n, "brief", areaNames()) {
		if !slices.Contains(out, Area(name)) {
			out = append(out, Area(name))
		}
	}
	if len(out) == 0 && n.Kind == yaml.SequenceNode && len(n.Content) == 0 {
		s.problem(n, "the brief is empty; name at least one area, or take the row out")
	}
	return out
}

// Type returns a dish type or a family by its short name.
func (l *Lexicon) Type(name string) (Dish, bool) {
	d, ok := l.dishes[name]
	return d, ok
}

// Families returns the short names of the groupings, the root first, then by
// name.
func (l *Lexicon) Families() []string {
	var out []string
	for name, d := range l.dishes {
		if d.Grouping && name != Root {
			out = append(out, name)
		}
	}
	slices.Sort(out)
	return append([]string{Root}, out...)
}

// row is where a word's row stands: in the file of which type.
type row struct {
	from string
	wordKey
}

// Laid reports whether the row of a word comes from a folder laid over the
// built-in files.
func (l *Lexicon) Laid(w Word) bool { return l.laid[row{w.From, wordKey{w.Sense, w.Word}}] }

// Origin says for a person which type's file the row of a word stands in, and
// whether that is the built-in one.
func (l *Lexicon) Origin(w Word) string {
	if l.Laid(w) {
		return w.From + ", your course"
	}
	return w.From
}
