package main

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"saywhy/lexicon"
)

type dishNewOptions struct {
	name   string
	from   string
	course string
}

func newDishNew(s streams) *cobra.Command {
	var o dishNewOptions
	c := &cobra.Command{
		Use:   "new NAME",
		Short: "Make a dish file in your course folder, ready to fill in",
		Long: `Makes a file with comments in the folder dishes of your course. With --from it is
a new dish type that has everything its parent has; with the name of a built-in
type it changes that type for your course. A folder that is missing is made; a
file that is there is never written over.`,
		Example: `  saywhy dish new tray-bakes --from cakes --course my-course
  saywhy dish new soups --course my-course`,
		Args: oneDish("dish new"),
		RunE: func(_ *cobra.Command, args []string) error {
			o.name = args[0]
			return dishNew(s, o)
		},
	}
	courseFlag(c.Flags(), &o.course)
	c.Flags().StringVar(&o.from, "from", "", "the dish type or family that a new type inherits from")
	return c
}

func dishNew(s streams, o dishNewOptions) error {
	if o.course == "" {
		return errNoCourse("dish new")
	}
	if wrong := lexicon.DishNameProblem(o.name); wrong != "" {
		return errors.New(wrong)
	}
	lex, err := lexiconBeforeNew(o.course)
	if err != nil {
		return err
	}
	below, own, err := parentOf(lex, o)
	if err != nil {
		return err
	}
	if _, err := os.Stat(o.course); err == nil {
		if file := lexicon.DishFile(os.DirFS(o.course), o.name); file != "" {
			return fmt.Errorf("%q holds the type %q already; change that file", filepath.Join(o.course, filepath.FromSlash(file)), o.name)
		}
	}
	file := filepath.Join(o.course, "dishes", o.name+".yaml")
	if _, err := os.Lstat(file); err == nil {
		return fmt.Errorf("%q is there already; choose another name, or change that file", file)
	}
	if err := makeFolder(filepath.Dir(file)); err != nil {
		return err
	}
	if err := writeFile(file, lexicon.NewDish(o.name, below, own)); err != nil {
		return err
	}
	p := newPaper(s.page)
	if own {
		p.item("", fmt.Sprintf("Made %s, which changes %s for your course.", file, o.name))
	} else {
		p.item("", fmt.Sprintf("Made %s, which inherits from %s (%s).", file, below.Name, count(len(below.Words), "word")))
	}
	p.item("", "Open it with any text editor; its comments say what each row does. Then:")
	p.item("  ", "saywhy dish check --course "+shellName(o.course))
	return p.flush(s.out)
}

// lexiconBeforeNew loads what a new type can inherit from. The course folder
// may not be there yet, and problems in it are no hindrance.
func lexiconBeforeNew(dir string) (*lexicon.Lexicon, error) {
	if _, err := os.Stat(dir); errors.Is(err, os.ErrNotExist) {
		dir = ""
	}
	lex, _, _, err := loadAll(dir)
	return lex, err
}

// parentOf returns the type that a new file lays over (own), or inherits from.
func parentOf(lex *lexicon.Lexicon, o dishNewOptions) (below lexicon.Dish, own bool, err error) {
	if d, ok := lex.Type(o.name); ok {
		if o.from != "" && o.from != d.Name {
			return d, false, fmt.Errorf("%q is a dish type already; leave --from out to change it, or choose another name", o.name)
		}
		return d, true, nil
	}
	if o.from == "" {
		return below, false, fmt.Errorf("there is no type %q to change; for a new one name its parent with --from: a family (%s) or a dish type", o.name, strings.Join(lex.Families(), ", "))
	}
	below, err = typeOrFamily(lex, o.from)
	return below, false, err
}
