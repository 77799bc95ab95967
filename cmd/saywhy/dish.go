package main

import (
	"fmt"
	"io"
	"strings"

	"github.com/spf13/cobra"

	"saywhy/lexicon"
)

func newDish(s streams) *cobra.Command {
	c := &cobra.Command{
		Use:   "dish",
		Short: "See and set the dish types and their words",
		Long: `A dish type holds the words, hazards and moments of dishes that are cooked alike.
A tutor's own folder, named with --course, is laid over the built-in ones: its
dishes/*.yaml add, change and leave out words and types, and its course.yaml holds
the sessions and the tutor's own wordings of questions.`,
		Args: cobra.NoArgs,
		RunE: func(c *cobra.Command, _ []string) error { return c.Help() },
	}
	c.AddCommand(newDishList(s), newDishShow(s), newDishNew(s), newDishCheck(s), newDishExport(s), newDishImport(s), newDishSuggest(s))
	return c
}

func newDishList(s streams) *cobra.Command {
	format, course := "text", ""
	c := &cobra.Command{
		Use:     "list",
		Short:   "List the dish types and the dishes they cover",
		Long:    `Lists every dish type with the dishes it covers. Either name works wherever a dish is asked for.`,
		Example: `  saywhy dish list`,
		Args:    cobra.NoArgs,
		RunE:    func(*cobra.Command, []string) error { return dishList(s.out, s.page, course, format) },
	}
	courseFlag(c.Flags(), &course)
	c.Flags().StringVar(&format, "format", format, "text for people, json for programs")
	return c
}

// dishRow is a dish type as other programs get it.
type dishRow struct {
	Dish       string                   `json:"dish"`
	Title      string                   `json:"title"`
	Family     string                   `json:"family"`
	Dishes     []string                 `json:"dishes"`
	Techniques []string                 `json:"techniques"`
	Hazards    []string                 `json:"hazards"`
	Allergens  []string                 `json:"allergens"`
	Moments    map[lexicon.Sense]string `json:"moments"`
	Brief      []lexicon.Area           `json:"brief"`
	Words      int                      `json:"words"`
	BySense    map[lexicon.Sense]int    `json:"by_sense"`
}

func dishList(out io.Writer, on page, course, format string) error {
	if format != "text" && format != "json" {
		return fmt.Errorf("there is no format %q; use --format text or --format json", format)
	}
	lex, _, err := loadLexicon(course)
	if err != nil {
		return err
	}
	if format == "json" {
		rows := []dishRow{}
		for _, d := range lex.Types() {
			rows = append(rows, newDishRow(d))
		}
		return writeJSON(out, rows)
	}
	p := newPaper(on)
	p.heading(fmt.Sprintf("DISH TYPES (%d)", len(lex.Types())))
	for _, d := range lex.Types() {
		p.item("  "+pad(d.Name, 18)+"  ", strings.Join(d.Dishes, ", "))
	}
	return p.flush(out)
}

func newDishRow(d lexicon.Dish) dishRow {
	row := dishRow{
		d.Name, d.Title, d.Family, orEmpty(d.Dishes), orEmpty(d.Techniques), orEmpty(d.Hazards),
		orEmpty(d.Allergens), d.Moments, d.Brief, len(d.Words), map[lexicon.Sense]int{},
	}
	for _, s := range lexicon.Senses() {
		row.BySense[s] = len(d.BySense(s))
	}
	return row
}
