package main

import (
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"saywhy/cmd/handout"
	"saywhy/lexicon"
)

type wordsOptions struct {
	dish   string
	sense  string
	find   string
	course string
	format string
	all    bool // of the page to print
	large  bool
}

func newWords(s streams) *cobra.Command {
	o := wordsOptions{format: "text"}
	c := &cobra.Command{
		Use:   "words [DISH]",
		Short: "Show the words for how a dish looks, smells, tastes and feels",
		Long: `Shows the word list of a dish type, by sense, each word with its plain meaning.
Words that belong on one scale stand together, from low to high. The list is a
place to look: choose a word because you noticed it.

With --find it looks for words that fit what you noticed, in your own words. For
a page to print and pin up, use --format html and open the file in a browser. It
has the words typical of the dish; with --all it has every word.`,
		Example: `  saywhy words soups
  saywhy words "apple crumble" --sense texture
  saywhy words --find "bits stick to my teeth"
  saywhy words soups --format html > soup-words.html`,
		Args: cobra.MaximumNArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			if len(args) == 1 {
				o.dish = args[0]
			}
			return words(s, o)
		},
	}
	f := c.Flags()
	f.StringVar(&o.sense, "sense", "", "one sense only: appearance, aroma, taste or texture")
	f.StringVar(&o.find, "find", "", "what you noticed, such as \"bits stick to my teeth\"")
	courseFlag(f, &o.course)
	f.StringVar(&o.format, "format", o.format, "text, json, csv for a spreadsheet, or html for a page to print")
	f.BoolVar(&o.all, "all", false, "every word on the page to print, not only those typical of the dish")
	f.BoolVar(&o.large, "large", false, "large print on the page to print")
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
	Own   bool          `json:"course"` // its row stands in the tutor's folder
}

// wordFormats are the formats of a word list.
func wordFormats() []string { return []string{"text", "json", "csv", "html"} }

func words(s streams, o wordsOptions) error {
	if o.sense != "" && !lexicon.Sense(o.sense).Known() {
		return fmt.Errorf("there is no sense %q; use appearance, aroma, taste or texture", o.sense)
	}
	if !slices.Contains(wordFormats(), o.format) {
		return fmt.Errorf("there is no format %q; use --format %s", o.format, strings.Join(wordFormats(), ", --format "))
	}
	if (o.all || o.large) && o.format != "html" {
		return errors.New("--all and --large are for the page to print; add --format html")
	}
	lex, course, err := loadLexicon(o.course)
	if err != nil {
		return err
	}
	dish, what, err := s.cookedOrNear(lex, course, o.dish, "the words for any dish")
	if err != nil {
		return err
	}
	senses := lexicon.Senses()
	if o.sense != "" {
		senses = []lexicon.Sense{lexicon.Sense(o.sense)}
	}
	if strings.TrimSpace(o.find) != "" {
		list := dish.Words
		if dish.Name == lexicon.Root {
			list = lex.Words()
		}
		return foundWords(s.out, s.page, o, lex, dish, list)
	}
	switch o.format {
	case "json":
		return writeJSON(s.out, wordRows(lex, dish, senses))
	case "csv":
		var list []lexicon.Word
		for _, sense := range senses {
			list = append(list, dish.BySense(sense)...)
		}
		return lex.WriteSheet(s.out, list)
	case "html":
		list := handout.NewWords
		if o.all {
			list = handout.NewAllWords
		}
		page := list(dish, what, senses)
		page.Large = o.large
		return page.WriteHTML(s.out)
	}
	return writeWords(s.out, s.page, dish, senses)
}

// wordRows returns the rows of some senses of a dish type.
func wordRows(lex *lexicon.Lexicon, dish lexicon.Dish, senses []lexicon.Sense) []wordRow {
	rows := []wordRow{}
	for _, s := range senses {
		for _, w := range dish.BySense(s) {
			rows = append(rows, newWordRow(lex, dish, w))
		}
	}
	return rows
}

func newWordRow(lex *lexicon.Lexicon, dish lexicon.Dish, w lexicon.Word) wordRow {
	return wordRow{w.Word, w.Sense, w.Means, orEmpty(w.Forms), w.Scale, w.Step, dish.Name, orEmpty(w.Of), w.From, lex.Laid(w)}
}

// writeWords lays a word list out for a terminal: in each sense the words that
// are typical of the dish first, then those for any food.
func writeWords(out io.Writer, on page, dish lexicon.Dish, senses []lexicon.Sense) error {
	p := newPaper(on)
	for _, s := range senses {
		typical, other := dish.Typical(s)
		p.heading(fmt.Sprintf("%s: %s (%s)", strings.ToUpper(dish.Title), s, count(len(typical), "word")))
		if m := dish.Moments[s]; m != "" {
			p.item("  ", "Notice it "+m+".")
		}
		with, without := handout.PartScales(handout.Scales(dish.BySense(s)), typical)
		writeWordList(p, with, typical)
		if len(other) > 0 {
			p.heading(fmt.Sprintf("FOR OTHER FOOD TOO: %s (%s)", s, count(len(other), "word")))
			writeWordList(p, without, other)
		}
	}
	return p.flush(out)
}

// writeWordList writes scales, then words with their meanings.
func writeWordList(p *paper, list []handout.Scale, words []lexicon.Word) {
	for _, scale := range list {
		p.item("  "+scale.Name+": ", strings.Join(scale.Words(" or "), " – "))
	}
	p.blank()
	for _, w := range words {
		p.item("  "+pad(w.Word, 18)+"  ", w.Means)
	}
}

// foundAtOnce is how many words --find shows.
const foundAtOnce = 8

// foundWords writes the words that fit what was noticed, the best first.
func foundWords(out io.Writer, on page, o wordsOptions, lex *lexicon.Lexicon, dish lexicon.Dish, list []lexicon.Word) error {
	var in []lexicon.Word
	for _, w := range list {
		if o.sense == "" || string(w.Sense) == o.sense {
			in = append(in, w)
		}
	}
	found := lexicon.NewFinder(in).Find(o.find, foundAtOnce)
	switch o.format {
	case "json":
		rows := []wordRow{}
		for _, f := range found {
			rows = append(rows, newWordRow(lex, dish, f.Word))
		}
		return writeJSON(out, rows)
	case "csv":
		var words []lexicon.Word
		for _, f := range found {
			words = append(words, f.Word)
		}
		return lex.WriteSheet(out, words)
	case "html":
		return errors.New("--find has no page to print; use --format text, json or csv")
	}
	p := newPaper(on)
	if len(found) == 0 {
		p.item("", "No word fits that. Say it another way: what did you see, smell, taste or feel?")
		return p.flush(out)
	}
	p.heading(fmt.Sprintf("WORDS FOR “%s”", strings.Join(strings.Fields(clean(o.find)), " ")))
	for _, f := range found {
		sense := string(f.Word.Sense)
		for _, also := range f.Also {
			sense += " or " + string(also)
		}
		p.item("  "+pad(f.Word.Word, 18)+"  ", fmt.Sprintf("%s (%s)", f.Word.Means, sense))
	}
	p.blank()
	p.item("  ", "Use one only if it is what you noticed.")
	return p.flush(out)
}

func orEmpty(s []string) []string {
	if s == nil {
		return []string{}
	}
	return s
}
