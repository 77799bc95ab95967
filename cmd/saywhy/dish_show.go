package main

import (
	"errors"
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"saywhy/lexicon"
)

type dishShowOptions struct {
	dish   string
	course string
	format string
}

func newDishShow(s streams) *cobra.Command {
	o := dishShowOptions{format: "text"}
	c := &cobra.Command{
		Use:   "show DISH",
		Short: "Show a dish type as it is with all that it inherits",
		Long: `Shows a dish type, or a family, with everything it has: what its own file says,
what it takes over from its families, and what your course changes. Each word
says which file its row stands in.`,
		Example: `  saywhy dish show soups
  saywhy dish show soups --course my-course`,
		Args: oneDish("dish show"),
		RunE: func(_ *cobra.Command, args []string) error {
			o.dish = args[0]
			return dishShow(s, o)
		},
	}
	courseFlag(c.Flags(), &o.course)
	c.Flags().StringVar(&o.format, "format", o.format, "text for people, json for programs")
	return c
}

// oneDish wants exactly one argument, a dish.
func oneDish(command string) cobra.PositionalArgs {
	return func(_ *cobra.Command, args []string) error {
		switch len(args) {
		case 0:
			return fmt.Errorf("%s needs a dish; \"saywhy dish list\" shows the ones there are", command)
		case 1:
			return nil
		}
		return fmt.Errorf("%s takes one dish and %d were named; put a name of several words in quotation marks", command, len(args))
	}
}

// typeOrFamily finds a dish type as Find does, or a family by its short name.
func typeOrFamily(lex *lexicon.Lexicon, name string) (lexicon.Dish, error) {
	if d, ok := lex.Type(name); ok {
		return d, nil
	}
	return lex.Find(name)
}

// dishShown is a dish type as other programs get it.
type dishShown struct {
	dishRow
	Families []string  `json:"families"` // the nearest first
	Words    []wordRow `json:"words"`
}

func dishShow(s streams, o dishShowOptions) error {
	if o.format != "text" && o.format != "json" {
		return fmt.Errorf("there is no format %q; use --format text or --format json", o.format)
	}
	lex, _, err := loadLexicon(o.course)
	if err != nil {
		return err
	}
	d, err := typeOrFamily(lex, o.dish)
	if err != nil {
		return err
	}
	if o.format == "json" {
		return writeJSON(s.out, dishShown{newDishRow(d), orEmpty(families(lex, d)), wordRows(lex, d, lexicon.Senses())})
	}
	p := newPaper(s.page)
	p.heading(strings.ToUpper(d.Title))
	facts := []struct{ name, value string }{
		{"type", d.Name},
		{"inherits from", strings.Join(families(lex, d), ", and that from ")},
		{"dishes", strings.Join(d.Dishes, ", ")},
		{"techniques", strings.Join(d.Techniques, ", ")},
		{"what can hurt", strings.Join(d.Hazards, ", ")},
		{"allergens", strings.Join(d.Allergens, ", ")},
		{"brief", joinAreas(d.Brief)},
	}
	for _, f := range facts {
		if f.value != "" {
			p.item("  "+pad(f.name, 14)+"  ", f.value)
		}
	}
	for _, sense := range lexicon.Senses() {
		list := d.BySense(sense)
		p.heading(fmt.Sprintf("%s (%s)", strings.ToUpper(string(sense)), count(len(list), "word")))
		if m := d.Moments[sense]; m != "" {
			p.item("  ", "Notice it "+m+".")
		}
		for _, w := range list {
			p.item("  "+pad(w.Word, 18)+"  ", fmt.Sprintf("%s  [%s]", w.Means, lex.Origin(w)))
		}
	}
	return p.flush(s.out)
}

// families returns the names a type inherits from, the nearest first.
func families(lex *lexicon.Lexicon, d lexicon.Dish) []string {
	var out []string
	for d.Family != "" && len(out) < 20 {
		out = append(out, d.Family)
		next, ok := lex.Type(d.Family)
		if !ok {
			break
		}
		d = next
	}
	return out
}

func joinAreas(areas []lexicon.Area) string {
	names := make([]string, len(areas))
	for i, a := range areas {
		names[i] = string(a)
	}
	return strings.Join(names, ", ")
}

// errNoCourse is the error of a command that changes files and was not told
// where.
func errNoCourse(command string) error {
	return errors.New(command + " writes into your own folder; name it with --course, such as --course my-course")
}
