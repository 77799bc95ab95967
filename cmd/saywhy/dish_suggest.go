package main

import (
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"saywhy/analyze"
	"saywhy/corpus"
	"saywhy/lexicon"
)

type dishSuggestOptions struct {
	dir    string
	dish   string
	course string
	most   int
	format string
}

func newDishSuggest(s streams) *cobra.Command {
	o := dishSuggestOptions{most: 10, format: "text"}
	c := &cobra.Command{
		Use:   "suggest DIR",
		Short: "Find words that learners use of a dish and the list lacks",
		Long: `Reads a folder of evaluations (text files that end in .txt) and lists describing
words that the word list of their dish lacks: those that set the dish apart from
the others in the folder first. Each has two sentences it stands in, and the row
that adds it, in which you write what it means.

The dish of a text is the name of the folder it lies in, or else --dish, or else
the last words of its own name (tamsin-lentil-soup.txt). With folders for several
dishes, --dish shows one of them. In the format csv the words make a sheet for
"saywhy dish import", once you have filled in the meanings.`,
		Example: `  saywhy dish suggest evaluations --course my-course
  saywhy dish suggest evaluations --dish soups --format csv`,
		Args: func(_ *cobra.Command, args []string) error {
			if len(args) != 1 {
				return fmt.Errorf("dish suggest needs one folder of text files and %d were named", len(args))
			}
			return nil
		},
		RunE: func(_ *cobra.Command, args []string) error {
			o.dir = args[0]
			return dishSuggest(s, o)
		},
	}
	f := c.Flags()
	f.StringVar(&o.dish, "dish", "", "the dish of the texts that lie in no folder of their own, or the one to show")
	courseFlag(f, &o.course)
	f.IntVar(&o.most, "most", o.most, "how many words of a dish to list at most; 0 lists all")
	f.StringVar(&o.format, "format", o.format, "text, json, or csv for a spreadsheet")
	return c
}

// suggestionRow is a suggestion as other programs get it.
type suggestionRow struct {
	Dish     string        `json:"dish"`
	Word     string        `json:"word"`
	Spelt    []string      `json:"spelt"`
	Sense    lexicon.Sense `json:"sense"`
	Count    int           `json:"count"`
	Texts    int           `json:"texts"`
	Others   int           `json:"others"`
	Keyness  float64       `json:"keyness"`
	Examples []exampleRow  `json:"examples"`
	Row      string        `json:"row"`
}

type exampleRow struct {
	File string `json:"file"`
	Text string `json:"text"`
}

func dishSuggest(s streams, o dishSuggestOptions) error {
	if o.format != "text" && o.format != "json" && o.format != "csv" {
		return fmt.Errorf("there is no format %q; use --format text, --format json or --format csv", o.format)
	}
	if o.most < 0 {
		return fmt.Errorf("--most %d is less than nought; use 0 for all, or a number such as 10", o.most)
	}
	if err := isTexts(o.dir); err != nil {
		return err
	}
	lex, course, analyzer, err := loadCourseAnalyzer(o.course)
	if err != nil {
		return err
	}
	only := ""
	if o.dish != "" {
		d, _, err := cooked(lex, course, o.dish)
		if err != nil {
			return err
		}
		only = d.Name
	}
	texts, err := evaluations(lex, course, analyzer, o.dir, only)
	if err != nil {
		return err
	}
	var dishes []string
	for _, d := range lex.Types() {
		for _, t := range texts {
			if t.Dish == d.Name && (only == "" || only == d.Name) {
				dishes = append(dishes, d.Name)
				break
			}
		}
	}
	if len(dishes) == 0 {
		return fmt.Errorf("no text in %q is about %s; name another dish, or leave --dish out", o.dir, only)
	}
	rows := []suggestionRow{}
	for _, d := range dishes {
		found := corpus.Suggest(lex, texts, d)
		if o.most > 0 {
			found = found[:min(o.most, len(found))]
		}
		for _, f := range found {
			rows = append(rows, newSuggestionRow(d, f))
		}
	}
	switch o.format {
	case "json":
		return writeJSON(s.out, rows)
	case "csv":
		return suggestionSheet(s, lex, dishes, rows)
	}
	return writeSuggestions(s, o, texts, dishes, rows)
}

func isTexts(dir string) error {
	info, err := os.Stat(dir)
	switch {
	case err != nil:
		return fmt.Errorf("there is no folder called %q; check the name", dir)
	case !info.IsDir():
		return fmt.Errorf("%q is a file; name the folder that the text files lie in", dir)
	}
	return nil
}

// evaluations reads every text file of a folder and of the folders in it.
func evaluations(lex *lexicon.Lexicon, course *lexicon.Course, a *analyze.Analyzer, dir, dish string) ([]corpus.Reported, error) {
	var out []corpus.Reported
	err := filepath.WalkDir(dir, func(path string, e fs.DirEntry, err error) error {
		if err != nil {
			return fmt.Errorf("%q cannot be read; check that you may read it", path)
		}
		if hidden := strings.HasPrefix(e.Name(), ".") && path != dir; hidden && e.IsDir() {
			return fs.SkipDir
		} else if hidden || e.IsDir() || !strings.EqualFold(filepath.Ext(path), ".txt") {
			return nil
		}
		text, err := readText(nil, path)
		if err != nil {
			return err
		}
		name, err := filepath.Rel(dir, path)
		if err != nil {
			name = path
		}
		d, err := dishOf(lex, course, name, dish)
		if err != nil {
			return fmt.Errorf("%q: %w", path, err)
		}
		report := a.Read(analyze.Input{Text: text}, analyze.Brief{Dish: d, Questions: 1})
		out = append(out, corpus.Reported{Name: filepath.ToSlash(name), Dish: d.Name, Report: report})
		return nil
	})
	if err == nil && len(out) == 0 {
		err = fmt.Errorf("there is no text file in %q; evaluations end in .txt", dir)
	}
	return out, err
}

// dishOf tells the dish of a text by the folder it lies in, by the dish that
// was named, or by the last words of its own name.
func dishOf(lex *lexicon.Lexicon, course *lexicon.Course, file, named string) (lexicon.Dish, error) {
	spaced := strings.NewReplacer("-", " ", "_", " ")
	for dir := filepath.Dir(file); dir != "." && dir != string(filepath.Separator); dir = filepath.Dir(dir) {
		for _, name := range []string{filepath.Base(dir), spaced.Replace(filepath.Base(dir))} {
			if d, _, err := cooked(lex, course, name); err == nil {
				return d, nil
			}
		}
	}
	if named != "" {
		return lex.Find(named)
	}
	name := strings.TrimSuffix(filepath.Base(file), filepath.Ext(file))
	if d, err := lex.Find(strings.TrimRight(spaced.Replace(name), "0123456789 ")); err == nil {
		return d, nil
	}
	return lexicon.Dish{}, fmt.Errorf("the dish of this text cannot be told; name it with --dish, or put the text into a folder named after the dish, such as soups")
}

func newSuggestionRow(dish string, s corpus.Suggestion) suggestionRow {
	row := suggestionRow{
		Dish: dish, Word: s.Word, Spelt: orEmpty(s.Spelt), Sense: s.Sense, Count: s.Count, Texts: s.Texts, Others: s.Others,
		Keyness: s.Keyness, Examples: []exampleRow{}, Row: lexicon.WordRow(suggested(s.Word, s.Sense, s.Of, s.Spelt)),
	}
	for _, e := range s.Examples {
		row.Examples = append(row.Examples, exampleRow(e))
	}
	return row
}

// suggested is the row to add; its meaning is for the tutor to write, and a row
// without one is refused.
func suggested(word string, sense lexicon.Sense, of, forms []string) lexicon.Word {
	return lexicon.Word{Word: word, Sense: sense, Of: of, Forms: forms}
}

// suggestionSheet writes the words as a sheet to fill in and import.
func suggestionSheet(s streams, lex *lexicon.Lexicon, dishes []string, rows []suggestionRow) error {
	if len(dishes) > 1 {
		return fmt.Errorf("the texts are about %d dishes, and a sheet is for one; name it with --dish, such as --dish %s", len(dishes), dishes[0])
	}
	var words []lexicon.Word
	for _, r := range rows {
		words = append(words, suggested(r.Word, r.Sense, nil, r.Spelt))
	}
	return lex.WriteSheet(s.out, words)
}

func writeSuggestions(s streams, o dishSuggestOptions, texts []corpus.Reported, dishes []string, rows []suggestionRow) error {
	p := newPaper(s.page)
	for _, d := range dishes {
		n := 0
		for _, t := range texts {
			if t.Dish == d {
				n++
			}
		}
		p.heading(fmt.Sprintf("%s: WORDS THAT THE LIST LACKS, FROM %s", strings.ToUpper(d), strings.ToUpper(count(n, "text"))))
		if n == len(texts) {
			p.item("  ", "There is no other dish to compare with, so they stand by how often they are used.")
		}
		any := false
		for _, r := range rows {
			if r.Dish != d {
				continue
			}
			any = true
			p.blank()
			p.item("  "+pad(r.Word, 18)+"  ", suggestionFigures(r))
			for _, e := range r.Examples {
				p.item("    - ", fmt.Sprintf("%s (%s)", e.Text, e.File))
			}
			p.item("    ", "To add it, under words, "+string(r.Sense)+", and with its meaning filled in:")
			// A row is copied, so it is not wrapped.
			fmt.Fprintln(&p.b, "    "+clean(r.Row))
		}
		if !any {
			p.item("  ", "None: the list has every describing word of these texts.")
		}
	}
	if slices.ContainsFunc(rows, func(r suggestionRow) bool { return r.Keyness > 0 }) {
		p.blank()
		p.item("", "The log-likelihood tells how surely a word is more usual in this dish than in the others: from 3.84 on, chance alone would do so once in 20 times, from 6.63 on once in 100.")
	}
	if len(rows) > 0 {
		p.blank()
		folder := o.course
		if folder == "" {
			folder = "your course folder"
		}
		p.item("", fmt.Sprintf("The rows belong into dishes/ in %s; \"saywhy dish new\" makes the file.", folder))
	}
	return p.flush(s.out)
}

func suggestionFigures(r suggestionRow) string {
	text := fmt.Sprintf("%s, in %s", count(r.Count, "time"), count(r.Texts, "text"))
	if r.Others > 0 {
		text += fmt.Sprintf("; %s of other dishes", count(r.Others, "time"))
	}
	if r.Keyness > 0 {
		text += fmt.Sprintf("; log-likelihood %.2f", r.Keyness)
	}
	if len(r.Spelt) > 0 {
		text += "; also written " + strings.Join(r.Spelt, ", ")
	}
	return text
}
