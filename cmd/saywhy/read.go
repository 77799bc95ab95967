package main

import (
	"encoding/json"
	"errors"
	"fmt"
	"io"

	"github.com/spf13/cobra"

	"saywhy/analyze"
	"saywhy/cmd/wording"
)

// maxText is the longest text that is read, in bytes: about 350,000 words,
// a hundred times the longest evaluation.
const maxText = 2 << 20

type readOptions struct {
	reading
	file  string
	after string // an earlier draft
	last  string // the writer's evaluation before this one
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

It gives no marks and writes nothing for you. Up to 2 MB of text are read. A dish
that no type covers is read as any dish is.`,
		Example: `  saywhy read my-soup.txt --dish "tomato soup"
  saywhy read mums-feedback.txt --role adult --dish cakes
  saywhy read - --questions 0        (paste the text, then Ctrl-D)
  saywhy read soup-2.txt --after soup-1.txt
  saywhy read my-soup.txt --last my-bread.txt`,
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
	o.flags(f)
	f.StringVar(&o.after, "after", "", "an earlier draft of the text: what it was asked is not asked again in the same words")
	f.StringVar(&o.last, "last", "", "the evaluation before this one, of another dish: what it planned is asked about")
	return c
}

func read(s streams, o readOptions) error {
	if err := o.check(); err != nil {
		return err
	}
	if twice := pastedTwice(o.file, o.after, o.last); twice {
		return fmt.Errorf("only one of the texts can be pasted; name files for the others")
	}
	text, err := readText(s.in, o.file)
	if err != nil {
		return err
	}
	r, err := o.reader(s)
	if err != nil {
		return err
	}
	if o.after != "" {
		earlier, err := readText(s.in, o.after)
		if err != nil {
			return err
		}
		r.brief.After = r.read(earlier)
	}
	if o.last != "" {
		before, err := readText(s.in, o.last)
		if err != nil {
			return err
		}
		r.brief.Last = r.analyzer.Plans(analyze.Input{Text: before, Role: r.role}, analyze.Brief{Dish: r.dish})
	}
	report := r.read(text)
	if o.format == "json" {
		return writeJSON(s.out, report)
	}
	return writeReport(s.out, s.page, report, r.dish, o.questions)
}

// pastedTwice reports whether more than one of the names stands for standard
// input.
func pastedTwice(names ...string) bool {
	n := 0
	for _, name := range names {
		if name == "-" {
			n++
		}
	}
	return n > 1
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
			return "", errors.New("what is pasted or piped in cannot be read; name a file, or check where it comes from")
		}
	} else if data, err = readFile(name, maxText); err != nil {
		return "", err
	}
	if err := checkText(what, data); err != nil {
		return "", err
	}
	return string(data), nil
}

// checkText returns an error that says why data is no text that can be read,
// and how to mend it; what is how a person knows it.
func checkText(what string, data []byte) error {
	if len(data) > maxText {
		return fmt.Errorf("%s is longer than %d MB; read one evaluation at a time", what, maxText>>20)
	}
	if wrong := wording.NotText(data); wrong != "" {
		return fmt.Errorf("%s %s", what, wrong)
	}
	return nil
}

// writeJSON writes a value as indented JSON with the text's own characters.
func writeJSON(out io.Writer, v any) error {
	e := json.NewEncoder(out)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	return e.Encode(v)
}
