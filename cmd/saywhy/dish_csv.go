package main

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"saywhy/lexicon"
)

type dishExportOptions struct {
	dish   string
	file   string
	course string
}

func newDishExport(s streams) *cobra.Command {
	o := dishExportOptions{file: "-"}
	c := &cobra.Command{
		Use:   "export DISH [FILE|-]",
		Short: "Write the words of a dish type as a spreadsheet (CSV)",
		Long: `Writes the whole word list of a dish type, one row a word, as CSV in UTF-8 that
any spreadsheet opens. Change it there, save it as CSV, and take it back with
"saywhy dish import". In the columns of and forms, a semicolon stands between
entries. The column from tells which file a row comes from and is not read back.`,
		Example: `  saywhy dish export soups soups.csv
  saywhy dish export soups soups.csv --course my-course`,
		Args: dishAndFile("dish export", 1),
		RunE: func(_ *cobra.Command, args []string) error {
			o.dish = args[0]
			if len(args) == 2 {
				o.file = args[1]
			}
			return dishExport(s, o)
		},
	}
	courseFlag(c.Flags(), &o.course)
	return c
}

// dishAndFile wants a dish and a file, of which the last may be left out.
func dishAndFile(command string, least int) cobra.PositionalArgs {
	return func(_ *cobra.Command, args []string) error {
		switch {
		case len(args) == 0:
			return fmt.Errorf("%s needs a dish and a file; \"saywhy dish list\" shows the dishes", command)
		case len(args) < least:
			return fmt.Errorf("%s needs a file behind the dish %q, such as words.csv, or - for what is typed or piped in", command, args[0])
		case len(args) > 2:
			return fmt.Errorf("%s takes a dish and a file and %d names were given; put a name of several words in quotation marks", command, len(args))
		}
		return nil
	}
}

func dishExport(s streams, o dishExportOptions) error {
	lex, _, err := loadLexicon(o.course)
	if err != nil {
		return err
	}
	d, err := typeOrFamily(lex, o.dish)
	if err != nil {
		return err
	}
	var b bytes.Buffer
	if err := lex.WriteSheet(&b, d.Words); err != nil {
		return err
	}
	if o.file == "-" {
		_, err := s.out.Write(b.Bytes())
		return err
	}
	if err := writeFile(o.file, b.Bytes()); err != nil {
		return err
	}
	_, err = fmt.Fprintf(s.out, "Wrote %s of %s to %s.\n", count(len(d.Words), "word"), d.Name, o.file)
	return err
}

type dishImportOptions struct {
	dish   string
	file   string
	course string
	whole  bool
	try    bool
}

func newDishImport(s streams) *cobra.Command {
	var o dishImportOptions
	c := &cobra.Command{
		Use:   "import DISH FILE|-",
		Short: "Take a changed spreadsheet (CSV) back into your course",
		Long: `Reads a word list saved as CSV, finds what is new or changed against the dish
type, and writes those rows into its file in your course folder. Your comments and
every other row of that file stay as they are. Rows that the sheet does not have
stay too, unless you say with --whole that the sheet is the whole list.

The headings may stand in any order; sense, word and means must be there. Cells
may be parted by commas, semicolons or tabs. When something is wrong nothing is
written, the status is 2, and one line on standard error says what; several
problems are listed on standard output, a line each, by their rows.`,
		Example: `  saywhy dish import soups soups.csv --course my-course
  saywhy dish import soups soups.csv --course my-course --whole --try`,
		Args: dishAndFile("dish import", 2),
		RunE: func(_ *cobra.Command, args []string) error {
			o.dish, o.file = args[0], args[1]
			return dishImport(s, o)
		},
	}
	courseFlag(c.Flags(), &o.course)
	c.Flags().BoolVar(&o.whole, "whole", false, "leave out the words that the sheet does not have")
	c.Flags().BoolVar(&o.try, "try", false, "say what would change and write nothing")
	return c
}

func dishImport(s streams, o dishImportOptions) error {
	if o.course == "" {
		return errNoCourse("dish import")
	}
	lex, _, err := loadLexicon(o.course)
	if err != nil {
		return err
	}
	d, err := typeOrFamily(lex, o.dish)
	if err != nil {
		return err
	}
	data, err := sheetFile(s.in, o.file)
	if err != nil {
		return err
	}
	name := o.file
	if name == "-" {
		name = "the sheet"
	}
	sheet, err := lexicon.ReadSheet(name, data)
	if problems, ok := err.(lexicon.Problems); ok {
		return listProblems(s.out, o.course, problems)
	}
	changes := sheet.Changes(d, o.whole)
	stay := len(d.Words)
	for _, c := range sheet.Rows {
		if _, there := d.Has(c.Word); there {
			stay--
		}
	}
	if len(changes) == 0 {
		return importNote(s, o, d, nil, stay, "")
	}
	folder := os.DirFS(o.course)
	before := lexicon.DishFile(folder, d.Name)
	was, err := dishFileNow(folder, before)
	if err != nil {
		return fmt.Errorf("%q %w", filepath.Join(o.course, filepath.FromSlash(before)), err)
	}
	edited, file, err := lexicon.EditCourse(folder, d, changes)
	path := filepath.Join(o.course, filepath.FromSlash(file))
	if err != nil {
		return fmt.Errorf("%s: %w", path, err)
	}
	if problems := lexicon.CheckCourseEdit(folder, file, edited, name, d.Name, changes); len(problems) > 0 {
		return listProblems(s.out, o.course, problems)
	}
	if !o.try {
		if err := makeFolder(filepath.Dir(path)); err != nil {
			return err
		}
		if now, err := dishFileNow(folder, file); err != nil || !bytes.Equal(now, was) {
			return fmt.Errorf("%q was changed by somebody at this very moment; nothing was written, so run this again", path)
		}
		if err := writeFile(path, edited); err != nil {
			return err
		}
	}
	return importNote(s, o, d, changes, stay, path)
}

// dishFileNow is what a file of the course holds at this moment; nothing when
// there is none.
func dishFileNow(folder fs.FS, name string) ([]byte, error) {
	if name == "" {
		return nil, nil
	}
	data, err := fs.ReadFile(folder, name)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil, nil
	case err != nil:
		return nil, errors.New("cannot be read; check that you may read it")
	}
	return data, nil
}

// maxSheet is the longest sheet that is read, in bytes: some 50,000 words.
const maxSheet = 8 << 20

func sheetFile(in io.Reader, name string) ([]byte, error) {
	var data []byte
	var err error
	if name == "-" {
		data, err = io.ReadAll(io.LimitReader(in, maxSheet+1))
		if err != nil {
			return nil, errors.New("the sheet cannot be read from standard input; name its file")
		}
	} else if data, err = readFile(name, maxSheet); err != nil {
		return nil, err
	}
	if len(data) > maxSheet {
		return nil, fmt.Errorf("the sheet is longer than %d MB; is it the right file?", maxSheet>>20)
	}
	return data, nil
}

// listProblems returns the error of a sheet that cannot be taken in. Several
// problems are listed, a line each, and the error closes the list.
func listProblems(out io.Writer, dir string, problems lexicon.Problems) error {
	if len(problems) == 1 {
		return errors.New(problemText(dir, problems[0]) + "; nothing was written")
	}
	for _, p := range problems {
		fmt.Fprintln(out, problemText(dir, p))
	}
	return listed{fmt.Errorf("%s to mend in the sheet; the list says where and how, and nothing was written", count(len(problems), "thing"))}
}

// problemText is a problem of a sheet, or of a file of the course.
func problemText(dir string, p lexicon.Problem) string {
	if p.Line == 0 && p.Layer == 0 {
		return oneLine(p.Error())
	}
	return problemLine(dir, p)
}

// importNote says what an import did.
func importNote(s streams, o dishImportOptions, d lexicon.Dish, changes []lexicon.Change, stay int, path string) error {
	var added, changed, gone []string
	for _, c := range changes {
		name := fmt.Sprintf("%s (%s)", c.Word.Word, c.Word.Sense)
		_, there := d.Has(c.Word)
		switch {
		case c.Remove:
			gone = append(gone, name)
		case there:
			changed = append(changed, name)
		default:
			added = append(added, name)
		}
	}
	p := newPaper(s.page)
	switch {
	case len(changes) == 0:
		p.item("", fmt.Sprintf("The sheet says what %s says already; nothing to change.", d.Name))
	case o.try:
		p.item("", fmt.Sprintf("Nothing was written. This would change %s:", path))
	default:
		p.item("", fmt.Sprintf("Changed %s:", path))
	}
	for _, part := range []struct {
		what  string
		words []string
	}{{"added", added}, {"changed", changed}, {"left out", gone}} {
		if len(part.words) > 0 {
			p.item(fmt.Sprintf("  %d %s: ", len(part.words), part.what), strings.Join(part.words, ", "))
		}
	}
	if !o.whole && stay > 0 {
		p.item("", fmt.Sprintf("Not in the sheet, and left as it is: %s. With --whole that goes.", count(stay, "word")))
	}
	return p.flush(s.out)
}
