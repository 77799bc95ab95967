package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"unicode/utf8"

	"github.com/spf13/cobra"

	"saywhy/analyze"
	"saywhy/lexicon"
)

// maxText is the longest text that is read, in bytes: about 350,000 words,
// a hundred times the longest evaluation.
const maxText = 2 << 20

type readOptions struct {
	file      string
	dish      string
	role      string
	title     string
	questions int
	format    string
}

func newRead(s streams) *cobra.Command {
	o := readOptions{file: "-"}
	c := &cobra.Command{
		Use:   "read [FILE|-]",
		Short: "Read one evaluation and ask about it",
		Long: `Reads one evaluation, from a text file or pasted in, and answers with:

  - anything a responsible adult ought to look at, first of all
  - the sentences, numbered
  - how far each area got: said, with detail, with a reason
  - a few questions to think about next

It gives no marks and writes nothing for you. Up to 2 MB of text are read.`,
		Example: `  saywhy read my-soup.txt --dish "tomato soup"
  saywhy read mums-feedback.txt --role adult --dish cakes
  saywhy read - --questions 0        (paste the text, then Ctrl-D)`,
		Args: func(_ *cobra.Command, args []string) error {
			if len(args) > 1 {
				return fmt.Errorf("%d files were named; read takes one at a time", len(args))
			}
			return nil
		},
		RunE: func(_ *cobra.Command, args []string) error {
			if len(args) == 1 {
				o.file = args[0]
			}
			return read(s, o)
		},
	}
	f := c.Flags()
	f.StringVar(&o.dish, "dish", "", "the dish type or the dish, such as breads or \"tomato soup\"")
	f.StringVar(&o.role, "role", "learner", "who wrote it: learner or adult")
	f.StringVar(&o.title, "title", "", "what was cooked, in the writer's words")
	f.IntVar(&o.questions, "questions", 3, "how many questions to ask at once; 0 asks them all")
	f.StringVar(&o.format, "format", "text", "text for people, json for programs")
	return c
}

func read(s streams, o readOptions) error {
	if o.questions < 0 {
		return fmt.Errorf("--questions %d is less than nought; use 0 for all, or a number such as 3", o.questions)
	}
	if o.role != string(analyze.Learner) && o.role != string(analyze.Adult) {
		return fmt.Errorf("there is no role %q; use --role learner or --role adult", o.role)
	}
	if o.format != "text" && o.format != "json" {
		return fmt.Errorf("there is no format %q; use --format text or --format json", o.format)
	}
	text, err := readText(s.in, o.file)
	if err != nil {
		return err
	}
	lex, analyzer, err := loadAnalyzer()
	if err != nil {
		return err
	}
	dish, err := chosenDish(lex, o.dish)
	if err != nil {
		return err
	}
	if o.title == "" && o.dish != "" && dish.Name != o.dish {
		o.title = o.dish
	}
	report := analyzer.Read(
		analyze.Input{Text: text, Title: o.title, Role: analyze.Role(o.role)},
		analyze.Brief{Dish: dish, Questions: o.questions},
	)
	if o.format == "json" {
		return writeJSON(s.out, report)
	}
	return writeReport(s.out, s.page, report, dish, o.questions)
}

// chosenDish returns the dish type that a person named, or what fits any dish.
func chosenDish(lex *lexicon.Lexicon, name string) (lexicon.Dish, error) {
	if name == "" {
		return lex.General(), nil
	}
	return lex.Find(name)
}

// readText reads a text file, or standard input for "-". The error says why a
// file is no text and what to do.
func readText(in io.Reader, name string) (string, error) {
	var data []byte
	var err error
	what := fmt.Sprintf("%q", name)
	if name == "-" {
		what = "what was pasted"
		data, err = io.ReadAll(io.LimitReader(in, maxText+1))
		if err != nil {
			return "", fmt.Errorf("standard input cannot be read: %w", err)
		}
	} else if data, err = readFile(name); err != nil {
		return "", err
	}
	switch {
	case len(data) > maxText:
		return "", fmt.Errorf("%s is longer than %d MB; read one evaluation at a time", what, maxText>>20)
	case bytes.HasPrefix(data, []byte("PK\x03\x04")), bytes.HasPrefix(data, []byte("%PDF")):
		return "", fmt.Errorf("%s is a document, not a text file; save it as plain text first", what)
	case bytes.HasPrefix(data, []byte("\xff\xfe")), bytes.HasPrefix(data, []byte("\xfe\xff")):
		return "", fmt.Errorf("%s is saved as UTF-16; save it again as plain text in UTF-8", what)
	case bytes.IndexByte(data, 0) >= 0:
		return "", fmt.Errorf("%s is not a text file (there is a zero byte at %d); save it as plain text first", what, bytes.IndexByte(data, 0))
	case !utf8.Valid(data):
		return "", fmt.Errorf("%s is not UTF-8 text (see byte %d); save it again as plain text in UTF-8", what, firstInvalid(data))
	}
	return string(data), nil
}

func firstInvalid(data []byte) int {
	for i := 0; i < len(data); {
		r, n := utf8.DecodeRune(data[i:])
		if r == utf8.RuneError && n == 1 {
			return i
		}
		i += n
	}
	return len(data)
}

// writeJSON writes a value as indented JSON with the text's own characters.
func writeJSON(out io.Writer, v any) error {
	e := json.NewEncoder(out)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	return e.Encode(v)
}
