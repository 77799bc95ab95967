package main

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"saywhy/cmd/handout"
)

type sheetOptions struct {
	dish   string
	course string
	format string
}

func newSheet(s streams) *cobra.Command {
	o := sheetOptions{format: "text"}
	c := &cobra.Command{
		Use:   "sheet DISH",
		Short: "Make the sheet for a practical, to print on both sides of one page",
		Long: `Makes the sheet for one practical. The front is for the learner: when to look,
smell, taste and feel, with room to jot and words to choose from. The back is for
the adult: what to watch, the taste test, and the usual cautions of such a dish.

To print it, use --format html, open the file in a browser and print on both
sides of one A4 page. The words are those nearest to the dish; "saywhy words"
shows them all. A dish that no type covers has the sheet for any dish.`,
		Example: `  saywhy sheet "leek and potato soup" --format html > sheet.html
  saywhy sheet "Week 3" --course my-course --format html > week-3.html`,
		Args: oneDish("sheet"),
		RunE: func(_ *cobra.Command, args []string) error {
			o.dish = args[0]
			return sheet(s, o)
		},
	}
	f := c.Flags()
	courseFlag(f, &o.course)
	f.StringVar(&o.format, "format", o.format, "text for a terminal, html for a page to print")
	return c
}

func sheet(s streams, o sheetOptions) error {
	if !slices.Contains([]string{"text", "html"}, o.format) {
		return fmt.Errorf("there is no format %q; use --format text or --format html", o.format)
	}
	lex, course, err := loadLexicon(o.course)
	if err != nil {
		return err
	}
	dish, what, err := s.cookedOrNear(lex, course, o.dish, "a sheet for any dish")
	if err != nil {
		return err
	}
	made := handout.NewSheet(lex, dish, what)
	made.Course = course.Title
	if o.format == "html" {
		return made.WriteHTML(s.out)
	}
	return writeSheet(s.out, s.page, made)
}

// writeSheet lays the sheet out for a terminal; what has ruled lines on paper
// is left to the page to print.
func writeSheet(out io.Writer, on page, s handout.Sheet) error {
	p := newPaper(on)
	p.heading(strings.ToUpper(s.Title) + ": FOR THE LEARNER")
	p.item("  ", handout.SheetLead)
	for _, sense := range s.Senses {
		p.heading(strings.ToUpper(sense.Verb) + pointed(sense.Moment))
		for _, scale := range sense.Scales {
			p.item("  "+scale.Name+": ", strings.Join(scale.Steps, " – "))
		}
		p.item("  ", strings.Join(sense.Words, ", "))
	}
	p.blank()
	if s.MoreWords > 0 {
		p.item("  ", fmt.Sprintf("%s, with what they mean: %s", count(s.MoreWords, "more word"), strings.TrimSpace("saywhy words "+s.Type)))
	}
	p.heading(strings.ToUpper(s.Title) + ": FOR THE ADULT")
	for _, w := range s.Watch {
		p.heading(strings.ToUpper(string(w.Area)))
		p.item("  ", w.Ask)
		for _, h := range w.Hazards {
			p.item("  - "+h.Name+": ", h.Watch)
		}
	}
	p.heading("THE TASTE TEST")
	p.item("  ", handout.TasteLead)
	for _, ask := range s.Test {
		p.item("  - ", ask)
	}
	p.heading("THE USUAL CAUTIONS")
	for _, note := range s.Notes {
		p.item("  "+note.Name+": ", note.Text)
	}
	return p.flush(out)
}

// pointed is a moment behind a heading.
func pointed(moment string) string {
	if moment == "" {
		return ""
	}
	return " " + moment
}
