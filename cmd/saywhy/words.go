package main

import (
	"fmt"
	"io"
	"strings"

	"github.com/spf13/cobra"

	"saywhy/lexicon"
)

type wordsOptions struct {
	dish   string
	sense  string
	format string
}

func newWords(s streams) *cobra.Command {
	var o wordsOptions
	c := &cobra.Command{
		Use:   "words [DISH]",
		Short: "Show the words for how a dish looks, smells, tastes and feels",
		Long: `Shows the word list of a dish type, by sense, each word with its plain meaning.
Words that belong on one scale stand together, from low to high. The list is a
place to look: choose a word because you noticed it.`,
		Example: `  saywhy words soups
  saywhy words "apple crumble" --sense texture`,
		Args: cobra.MaximumNArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			if len(args) == 1 {
				o.dish = args[0]
			}
			return words(s.out, s.page, o)
		},
	}
	c.Flags().StringVar(&o.sense, "sense", "", "one sense only: appearance, aroma, taste or texture")
	c.Flags().StringVar(&o.format, "format", "text", "text for people, json for programs")
	return c
}

// wordRow is a row of the word list as other programs get it.
type wordRow struct {
	Word  string        `json:"word"`
	Sense lexicon.Sense `json:"sense"`
	Means string        `json:"means"`
	Forms []string      `json:"forms"`
	Scale string        `json:"scale"`
	Step  int           `json:"step"`
	Dish  string        `json:"dish"`
	Of    []string      `json:"of"`
	From  string        `json:"from"`
}

func words(out io.Writer, on page, o wordsOptions) error {
	if o.sense != "" && !lexicon.Sense(o.sense).Known() {
		return fmt.Errorf("there is no sense %q; use appearance, aroma, taste or texture", o.sense)
	}
	if o.format != "text" && o.format != "json" {
		return fmt.Errorf("there is no format %q; use --format text or --format json", o.format)
	}
	lex, err := lexicon.Load()
	if err != nil {
		return err
	}
	dish, err := chosenDish(lex, o.dish)
	if err != nil {
		return err
	}
	senses := lexicon.Senses()
	if o.sense != "" {
		senses = []lexicon.Sense{lexicon.Sense(o.sense)}
	}
	if o.format == "json" {
		rows := []wordRow{}
		for _, s := range senses {
			for _, w := range dish.BySense(s) {
				rows = append(rows, wordRow{w.Word, w.Sense, w.Means, orEmpty(w.Forms), w.Scale, w.Step, dish.Name, orEmpty(w.Of), w.From})
			}
		}
		return writeJSON(out, rows)
	}
	p := newPaper(on)
	for _, s := range senses {
		list := dish.BySense(s)
		p.heading(fmt.Sprintf("%s: %s (%s)", strings.ToUpper(dish.Title), s, count(len(list), "word")))
		if m := dish.Moments[s]; m != "" {
			p.item("  ", "Notice it "+m+".")
		}
		for _, scale := range scales(list) {
			p.item("  "+scale.name+": ", scale.text())
		}
		p.blank()
		for _, w := range list {
			p.item("  "+pad(w.Word, 18)+"  ", w.Means)
		}
	}
	return p.flush(out)
}

func orEmpty(s []string) []string {
	if s == nil {
		return []string{}
	}
	return s
}

// scale is the words of one scale, by step.
type scale struct {
	name  string
	steps [][]string
}

func (s scale) text() string {
	var out []string
	for _, words := range s.steps {
		if len(words) > 0 {
			out = append(out, strings.Join(words, " or "))
		}
	}
	return strings.Join(out, " – ")
}

// scales gathers the scales of a list in the order of their first words.
func scales(list []lexicon.Word) []scale {
	var out []scale
	at := map[string]int{}
	for _, w := range list {
		if w.Scale == "" {
			continue
		}
		i, ok := at[w.Scale]
		if !ok {
			i = len(out)
			at[w.Scale] = i
			out = append(out, scale{name: w.Scale})
		}
		for len(out[i].steps) < w.Step {
			out[i].steps = append(out[i].steps, nil)
		}
		out[i].steps[w.Step-1] = append(out[i].steps[w.Step-1], w.Word)
	}
	return out
}
