package main

import (
	"context"
	"errors"
	"fmt"
	"os"
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
		Long: `Reads the learners' evaluations below a folder, of every kind that "saywhy group"
reads (.txt, .md, .docx, .odt, .csv, .xlsx), and lists describing words that the
word list of their dish lacks: those that set the dish apart from the others in
the folder first. Each has two sentences it stands in, and the row that adds it,
in which you write what it means. What cannot be read is listed last, or on
standard error in the formats json and csv.

The dish of a text stands in its front matter or a column of its form, in the
names of its file and folders (soups/tamsin.txt, tamsin-lentil-soup.docx), or is
that of its session in course.yaml. --dish names it for texts that tell none;
with texts of several dishes it shows one of them. Whose a text is need not be
told. In the format csv the words make a sheet for "saywhy dish import", once you
have filled in the meanings.`,
		Example: `  saywhy dish suggest evaluations --course my-course
  saywhy dish suggest evaluations --dish soups --format csv`,
		Args: func(_ *cobra.Command, args []string) error {
			if len(args) != 1 {
				return fmt.Errorf("dish suggest needs one folder of evaluations and %d were named", len(args))
			}
			return nil
		},
		RunE: func(c *cobra.Command, args []string) error {
			o.dir = args[0]
			return dishSuggest(c.Context(), s, o)
		},
	}
	f := c.Flags()
	f.StringVar(&o.dish, "dish", "", "the dish of the texts that tell none, or the one to show")
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

func dishSuggest(ctx context.Context, s streams, o dishSuggestOptions) error {
	if o.format != "text" && o.format != "json" && o.format != "csv" {
		return fmt.Errorf("there is no format %q; use --format text, --format json or --format csv", o.format)
	}
	if o.most < 0 {
		return fmt.Errorf("--most %d is less than nought; use 0 for all, or a number such as 10", o.most)
	}
	if err := isTexts(o.dir); err != nil {
		return err
	}
	o.course = courseOf(o.dir, o.course)
	lex, course, analyzer, err := loadCourseAnalyzer(o.course)
	if err != nil {
		return err
	}
	words := learnersTexts{lex: lex, course: course, analyzer: analyzer}
	only := ""
	if o.dish != "" {
		if words.otherwise, _, err = cooked(lex, course, o.dish); err != nil {
			return err
		}
		only = words.otherwise.Name
	}
	texts, unread := words.read(ctx, o.dir)
	if err := ctx.Err(); err != nil {
		return fmt.Errorf("the folder was not read to its end: %w", err)
	}
	if len(texts) == 0 {
		return noEvaluation(o.dir, unread)
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
		tellUnread(s, unread)
		return writeJSON(s.out, rows)
	case "csv":
		if err := suggestionSheet(s, lex, dishes, rows); err != nil {
			return err
		}
		tellUnread(s, unread)
		return nil
	}
	return writeSuggestions(s, o, texts, dishes, rows, unread)
}

func isTexts(dir string) error {
	info, err := os.Stat(dir)
	switch {
	case err != nil:
		return fmt.Errorf("there is no folder called %q; check the name", dir)
	case !info.IsDir():
		return fmt.Errorf("%q is a file; name the folder that the evaluations lie in", dir)
	}
	return nil
}

// learnersTexts reads learners' evaluations for the words that a list lacks.
type learnersTexts struct {
	lex       *lexicon.Lexicon
	course    *lexicon.Course
	analyzer  *analyze.Analyzer
	otherwise lexicon.Dish // of a text whose dish cannot be told; none, and such a text is not read
}

// read reads every learner's text below a folder, and returns what could not be
// read beside them.
func (l learnersTexts) read(ctx context.Context, dir string) (texts []corpus.Reported, unread []*corpus.Unplaced) {
	folder := corpus.Folder(ctx, os.DirFS(dir), corpus.FolderOptions{Lexicon: l.lex, Course: l.course, Anyone: true})
	for e, err := range folder {
		var wrong *corpus.Unplaced
		switch {
		case errors.As(err, &wrong):
			unread = append(unread, wrong)
			continue
		case err != nil || e.Role == analyze.Adult:
			continue
		}
		dish, err := l.dish(e)
		if err != nil {
			unread = append(unread, &corpus.Unplaced{Source: e.Source, Reason: oneLine(err.Error())})
			continue
		}
		report := l.analyzer.Read(analyze.Input{Text: e.Text, Role: e.Role}, analyze.Brief{Dish: dish, Questions: 1})
		texts = append(texts, corpus.Reported{Name: e.Source, Dish: dish.Name, Report: report})
	}
	return texts, unread
}

// dish returns the dish type of a text.
func (l learnersTexts) dish(e corpus.Evaluation) (lexicon.Dish, error) {
	told := e.Dish != ""
	if told {
		for _, name := range []string{e.Dish, strings.NewReplacer("-", " ", "_", " ").Replace(e.Dish)} { // as names of files have it
			if d, _, err := cooked(l.lex, l.course, name); err == nil {
				return d, nil
			}
		}
	}
	switch {
	case l.otherwise.Name != "":
		return l.otherwise, nil
	case told:
		return lexicon.Dish{}, fmt.Errorf("its dish %q is none that is known; name the kind of dish with --dish, or put it into a folder named after the kind, such as soups", e.Dish)
	}
	return lexicon.Dish{}, errors.New("its dish cannot be told; name it with --dish, or put the text into a folder named after the dish, such as soups")
}

// noEvaluation says that no text in a folder can be read, with the first reason.
func noEvaluation(dir string, unread []*corpus.Unplaced) error {
	if len(unread) == 0 {
		return fmt.Errorf("there is no evaluation in %q; put texts into it, such as \"soups/amina.txt\"", dir)
	}
	more := ""
	if n := len(unread) - 1; n > 0 {
		more = fmt.Sprintf(" (and %d more)", n)
	}
	return fmt.Errorf("there is no evaluation in %q that can be read: %q %s%s", dir, unread[0].Source, unread[0].Reason, more)
}

// tellUnread lists on standard error what was not read, a line each: what goes
// to standard output in these formats is for programs.
func tellUnread(s streams, unread []*corpus.Unplaced) {
	for _, u := range unread {
		fmt.Fprintf(s.err, "saywhy: not read: %q %s\n", u.Source, u.Reason)
	}
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

func writeSuggestions(s streams, o dishSuggestOptions, texts []corpus.Reported, dishes []string, rows []suggestionRow, unread []*corpus.Unplaced) error {
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
	if len(unread) > 0 {
		p.heading("NOT READ")
		for _, u := range unread {
			p.item("  - ", u.Source+": "+u.Reason)
		}
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
