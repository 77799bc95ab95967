package main

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strconv"
	"strings"

	"github.com/spf13/pflag"

	"saywhy/lexicon"
)

// courseFlag adds the flag that every command which uses dish types has.
func courseFlag(f *pflag.FlagSet, dir *string) {
	f.StringVar(dir, "course", "", "your own folder of dish types and sessions, laid over the built-in ones")
}

// loadLexicon loads the built-in lexicon with a tutor's folder laid over it;
// "" is for none. Anything wrong in the folder is an error that names the first
// problem: a command must not read with half of what the tutor meant.
func loadLexicon(dir string) (*lexicon.Lexicon, *lexicon.Course, error) {
	lex, course, problems, err := loadAll(dir)
	if err != nil {
		return nil, nil, err
	}
	if len(problems) > 0 {
		more := ""
		if n := len(problems) - 1; n > 0 {
			more = fmt.Sprintf(" (and %d more)", n)
		}
		all := "saywhy dish check"
		if dir != "" {
			all += " --course " + shellName(dir)
		}
		return nil, nil, fmt.Errorf("%s%s; \"%s\" lists them all", problemLine(dir, problems[0]), more, all)
	}
	return lex, course, nil
}

// shellName is a name as it is typed on a command line.
func shellName(name string) string {
	if strings.ContainsAny(name, " '()&;") {
		return strconv.Quote(name)
	}
	return name
}

// loadAll loads as loadLexicon does, and returns what could be read together
// with everything that is wrong.
func loadAll(dir string) (*lexicon.Lexicon, *lexicon.Course, lexicon.Problems, error) {
	var lex *lexicon.Lexicon
	var err error
	course := &lexicon.Course{}
	if dir == "" {
		lex, err = builtin()
	} else {
		if err := isFolder(dir); err != nil {
			return nil, nil, nil, err
		}
		lex, course, err = lexicon.LoadCourse(os.DirFS(dir))
	}
	var problems lexicon.Problems
	if err != nil && !errors.As(err, &problems) {
		return nil, nil, nil, err
	}
	return lex, course, problems, nil
}

// isFolder returns an error that says what to do when there is no such folder.
func isFolder(dir string) error {
	info, err := os.Stat(dir)
	switch {
	case errors.Is(err, os.ErrNotExist):
		return fmt.Errorf("there is no folder called %q; check the name, or make it with \"saywhy dish new\"", dir)
	case err != nil:
		return fmt.Errorf("the folder %q cannot be opened; check that you may read it", dir)
	case !info.IsDir():
		return fmt.Errorf("%q is a file, not a folder; name the folder it lies in", dir)
	}
	return nil
}

// problemLine is a problem with the file's name as the tutor knows it.
func problemLine(dir string, p lexicon.Problem) string {
	if p.Layer > 0 {
		p.File = filepath.Join(dir, filepath.FromSlash(p.File))
	} else if dir != "" {
		p.File = "built in: " + p.File
	}
	return oneLine(p.Error())
}

// cooked returns the dish type for a name that a person gave, and what was
// cooked; see [lexicon.Course.Cooked].
func cooked(lex *lexicon.Lexicon, course *lexicon.Course, name string) (dish lexicon.Dish, what string, err error) {
	return course.Cooked(lex, name)
}

// cookedOrAny is cooked, but a dish that nobody knows, or that several types
// cover, is any dish, as on the pages and in a group: what was written about it
// can be read all the same. A remark then says so; done says what was done.
func (s streams) cookedOrAny(lex *lexicon.Lexicon, course *lexicon.Course, name, done string) (dish lexicon.Dish, what string) {
	dish, what, err := cooked(lex, course, name)
	if err != nil {
		fmt.Fprintln(s.late, "saywhy: "+oneLine(done+": "+err.Error()))
		return lex.General(), name
	}
	return dish, what
}

// cookedOrNear is cookedOrAny for a list to look at: a name near a known one is
// an error here, since whoever mistyped it wants that one and can ask again.
func (s streams) cookedOrNear(lex *lexicon.Lexicon, course *lexicon.Course, name, done string) (dish lexicon.Dish, what string, err error) {
	if _, _, err := cooked(lex, course, name); errors.Is(err, lexicon.ErrNearDish) {
		return dish, "", err
	}
	dish, what = s.cookedOrAny(lex, course, name, done)
	return dish, what, nil
}
