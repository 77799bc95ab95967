package main

import (
	"fmt"
	"io"
	"strings"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"

	"saywhy/analyze"
	"saywhy/cmd/wording"
	"saywhy/lexicon"
)

// reading is what a text is read for, as the flags of a command say.
type reading struct {
	dish      string
	role      string
	title     string
	course    string
	questions int
	format    string
}

// flags adds the flags of every command that reads an evaluation.
func (o *reading) flags(f *pflag.FlagSet) {
	f.StringVar(&o.dish, "dish", "", "the dish type or the dish, such as breads or \"tomato soup\", or a session of your course")
	f.StringVar(&o.role, "role", "learner", "who wrote it: learner or adult")
	f.StringVar(&o.title, "title", "", "what was cooked, in the writer's words")
	courseFlag(f, &o.course)
	f.IntVar(&o.questions, "questions", 3, "how many questions to ask at once; 0 asks them all")
	f.StringVar(&o.format, "format", "text", "text for people, json for programs")
}

// check returns an error that says which flag is wrong and how to mend it.
func (o *reading) check() error {
	if o.questions < 0 {
		return fmt.Errorf("--questions %d is less than nought; use 0 for all, or a number such as 3", o.questions)
	}
	if o.role != string(analyze.Learner) && o.role != string(analyze.Adult) {
		return fmt.Errorf("there is no role %q; use --role learner or --role adult", o.role)
	}
	if o.format != "text" && o.format != "json" {
		return fmt.Errorf("there is no format %q; use --format text or --format json", o.format)
	}
	return nil
}

// reader reads texts as the flags say.
type reader struct {
	analyzer *analyze.Analyzer
	dish     lexicon.Dish
	title    string
	role     analyze.Role
	brief    analyze.Brief
}

func (o *reading) reader(s streams) (*reader, error) {
	lex, course, analyzer, err := loadCourseAnalyzer(o.course)
	if err != nil {
		return nil, err
	}
	dish, what := s.cookedOrAny(lex, course, o.dish, "read as any dish is")
	r := &reader{analyzer: analyzer, dish: dish, title: o.title, role: analyze.Role(o.role)}
	if r.title == "" {
		r.title = what
	}
	r.brief = analyze.Brief{Dish: dish, Questions: o.questions}
	return r, nil
}

func (r *reader) read(text string) *analyze.Report {
	return r.analyzer.Read(analyze.Input{Text: text, Title: r.title, Role: r.role}, r.brief)
}

type compareOptions struct {
	reading
	before string
	after  string
}

func newCompare(s streams) *cobra.Command {
	var o compareOptions
	c := &cobra.Command{
		Use:   "compare OLD NEW",
		Short: "Show what changed between two drafts of an evaluation",
		Long: `Reads two drafts of one evaluation and shows which steps the new one reaches
that the old one did not, which judging words went or now have something beside
them, and which of the old draft's questions are answered. Sentences are matched
by their words, so they may have been changed or moved.

To be asked on from the old draft: saywhy read NEW --after OLD`,
		Example: `  saywhy compare soup-1.txt soup-2.txt --dish "tomato soup"
  saywhy compare soup-1.txt - --format json        (paste the new draft)`,
		Args: func(_ *cobra.Command, args []string) error {
			if len(args) != 2 {
				return fmt.Errorf("compare takes two files, the old draft and the new one; %d were named", len(args))
			}
			if args[0] == "-" && args[1] == "-" {
				return fmt.Errorf("only one of the two drafts can be pasted; name a file for the other")
			}
			return nil
		},
		RunE: func(_ *cobra.Command, args []string) error {
			o.before, o.after = args[0], args[1]
			return compare(s, o)
		},
	}
	o.flags(c.Flags())
	return c
}

func compare(s streams, o compareOptions) error {
	if err := o.check(); err != nil {
		return err
	}
	before, err := readText(s.in, o.before)
	if err != nil {
		return err
	}
	after, err := readText(s.in, o.after)
	if err != nil {
		return err
	}
	r, err := o.reader(s)
	if err != nil {
		return err
	}
	old, now := r.read(before), r.read(after)
	c := analyze.Compare(old, now)
	if o.format == "json" {
		return writeJSON(s.out, c)
	}
	return writeComparison(s.out, s.page, c, old, now)
}

// writeComparison lays out what changed for a person.
func writeComparison(out io.Writer, on page, c *analyze.Comparison, old, now *analyze.Report) error {
	p := newPaper(on)
	p.heading(fmt.Sprintf("FROM THE OLD DRAFT TO THE NEW ONE: %s before, %s now", count(c.Words.Old, "word"), count(c.Words.New, "word")))
	p.heading(strings.ToUpper(wording.Reached))
	if len(c.Reached) == 0 {
		p.item("  ", wording.NoneReached)
	}
	writeSteps(p, c.Reached)
	if len(c.Lost) > 0 {
		p.heading(strings.ToUpper(wording.Lost))
		writeSteps(p, c.Lost)
	}
	if len(c.Vague) > 0 {
		p.heading(strings.ToUpper(wording.LittleAlone))
		for _, v := range c.Vague {
			p.item("  - ", "“"+v.Text+"” "+wording.VagueFate(v))
		}
	}
	if len(c.Questions) > 0 {
		p.heading(strings.ToUpper(wording.OldQuestions))
		for _, q := range c.Questions {
			p.item("  "+pad(wording.QuestionFate(q.Fate), 10)+"  ", q.Text)
		}
	}
	p.heading(strings.ToUpper(wording.Sentences))
	if len(c.Sentences) == 0 {
		p.item("  ", "There is nothing to compare yet.")
	}
	for _, s := range c.Sentences {
		if s.New == 0 {
			p.item("    -  ", "(taken out) "+old.Sentences[s.Old-1].Text)
			continue
		}
		p.item(fmt.Sprintf("%5d  ", s.New), now.Sentences[s.New-1].Text)
		if note := wording.Pair(s); note != "" {
			p.item("         ", "~ "+note)
		}
	}
	return p.flush(out)
}

// writeSteps lists steps with those of one area in one line.
func writeSteps(p *paper, steps []analyze.StepReached) {
	for _, s := range wording.ByArea(steps) {
		p.item("  "+pad(string(s.Area), 14)+"  ", s.String())
	}
}
