package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"
)

func newDishCheck(s streams) *cobra.Command {
	course := ""
	c := &cobra.Command{
		Use:   "check",
		Short: "List everything that is wrong with the word files",
		Long: `Reads the built-in dish types and, with --course, those of your own folder and
its course.yaml. Everything that is wrong is listed at once, a line each: file,
line, column, and how to mend it. The list goes to standard output, so that it can
be kept; one line on standard error counts it, and the status is 2. When all is
well it says so, and the status is 0.`,
		Example: `  saywhy dish check --course my-course`,
		Args:    noArgs("dish check"),
		RunE:    func(*cobra.Command, []string) error { return dishCheck(s, course) },
	}
	courseFlag(c.Flags(), &course)
	return c
}

func dishCheck(s streams, dir string) error {
	lex, course, problems, err := loadAll(dir)
	if err != nil {
		return err
	}
	if len(problems) > 0 {
		files := map[string]bool{}
		for _, p := range problems {
			files[problemLine(dir, p)[:strings.Index(problemLine(dir, p), p.File)]+p.File] = true
			fmt.Fprintln(s.out, problemLine(dir, p))
		}
		return listed{fmt.Errorf("%s to mend in %s; the list says where and how", count(len(problems), "thing"), count(len(files), "file"))}
	}
	own := 0
	for _, d := range lex.Types() {
		for _, w := range d.Words {
			if lex.Laid(w) && w.From == d.Name {
				own++
			}
		}
	}
	p := newPaper(s.page)
	p.item("", fmt.Sprintf("All is well: %s, %s.", count(len(lex.Types()), "dish type"), count(len(lex.Words()), "word")))
	if dir != "" {
		p.item("", fmt.Sprintf("Of your course: %s, %s of your own.", count(len(course.Sessions), "session"), count(own, "row")))
	}
	return p.flush(s.out)
}

// noArgs refuses arguments in words that say what to do.
func noArgs(command string) cobra.PositionalArgs {
	return func(_ *cobra.Command, args []string) error {
		if len(args) > 0 {
			return fmt.Errorf("%s takes no %q; \"saywhy %s --help\" says what it takes", command, args[0], command)
		}
		return nil
	}
}
