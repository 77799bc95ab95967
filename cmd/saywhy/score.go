package main

import (
	"bytes"
	"fmt"
	"io"
	"text/tabwriter"

	"github.com/spf13/cobra"

	"saywhy/analyze"
	"saywhy/corpus"
	"saywhy/lexicon"
)

type scoreOptions struct {
	files   []string
	readers []string
	part    string
	family  string
	misses  bool
}

func newScore(s streams) *cobra.Command {
	var o scoreOptions
	c := &cobra.Command{
		Use:   "score FILE...",
		Short: "Measure the reading against labelled texts (for contributors)",
		Long: `Reads labelled texts, one JSON object a line, and prints for each family of
labels how often saywhy and the labels agree: precision, recall, F1 and the
counts behind them. With two readers' own label files it also prints how far
those two agree, by F1 and Cohen's kappa.`,
		Example: `  saywhy score testdata/labelled/settled.jsonl --part open --misses
  saywhy score testdata/labelled/settled.jsonl \
    --reader testdata/labelled/reader-1.jsonl --reader testdata/labelled/reader-2.jsonl`,
		Args: cobra.MinimumNArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			o.files = args
			return score(s.out, o)
		},
	}
	c.Flags().StringArrayVar(&o.readers, "reader", nil, "a reader's own labels of the same texts; give it twice")
	c.Flags().StringVar(&o.part, "part", "all", "which texts: open, held (every third by the number in its id), or all")
	c.Flags().StringVar(&o.family, "family", "", "list the disagreements of this family only")
	c.Flags().BoolVar(&o.misses, "misses", false, "list every disagreement with its sentence")
	return c
}

func score(out io.Writer, o scoreOptions) error {
	if o.part != "all" && o.part != "open" && o.part != "held" {
		return fmt.Errorf("there is no part called %q; use open, held or all", o.part)
	}
	if len(o.readers) != 0 && len(o.readers) != 2 {
		return fmt.Errorf("--reader was given %d times; give it once for each of the two readers", len(o.readers))
	}
	var texts []corpus.Labelled
	for _, name := range o.files {
		ts, err := labelledFile(name)
		if err != nil {
			return err
		}
		texts = append(texts, ts...)
	}
	lex, analyzer, err := loadAnalyzer()
	if err != nil {
		return err
	}
	total := corpus.NewScore()
	for i := range texts {
		t := &texts[i]
		if !inPart(t.ID, o.part) {
			continue
		}
		s, err := corpus.Compare(t, readLabelled(lex, analyzer, t))
		if err != nil {
			return err
		}
		total.Add(s)
	}
	if total.Texts == 0 {
		return fmt.Errorf("there is no text of the part %q in %s", o.part, o.files[0])
	}
	fmt.Fprintf(out, "saywhy against the labels, %d texts (%s)\n\n", total.Texts, o.part)
	if err := printScore(out, total); err != nil {
		return err
	}
	if len(o.readers) == 2 {
		between, err := readersScore(o)
		if err != nil {
			return err
		}
		fmt.Fprintf(out, "\nthe second reader against the first, %d texts (%s)\n\n", between.Texts, o.part)
		if err := printScore(out, between); err != nil {
			return err
		}
	}
	if o.misses || o.family != "" {
		fmt.Fprintln(out)
		for _, m := range total.Misses {
			if o.family == "" || m.Family == o.family {
				fmt.Fprintln(out, m)
			}
		}
	}
	return nil
}

func inPart(id, part string) bool {
	return part == "all" || corpus.HeldBack(id) == (part == "held")
}

// maxLabelled is the longest file of labelled texts that is read, in bytes:
// some 50,000 texts.
const maxLabelled = 256 << 20

func labelledFile(name string) ([]corpus.Labelled, error) {
	data, err := readFile(name, maxLabelled)
	if err != nil {
		return nil, err
	}
	if len(data) > maxLabelled {
		return nil, fmt.Errorf("%q is longer than %d MB; is it the right file?", name, maxLabelled>>20)
	}
	ts, err := corpus.ReadLabelled(bytes.NewReader(data))
	if err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	return ts, nil
}

// readLabelled reads a labelled text as its writer would have had it read.
func readLabelled(lex *lexicon.Lexicon, a *analyze.Analyzer, t *corpus.Labelled) *analyze.Report {
	dish, err := lex.Find(t.Dish)
	if err != nil {
		dish = lex.General()
	}
	return a.Read(analyze.Input{Text: t.Text, Title: t.Title, Role: t.Role}, analyze.Brief{Dish: dish, Questions: 3})
}

func readersScore(o scoreOptions) (*corpus.Score, error) {
	first, err := labelledFile(o.readers[0])
	if err != nil {
		return nil, err
	}
	second, err := labelledFile(o.readers[1])
	if err != nil {
		return nil, err
	}
	byID := map[string]*corpus.Labelled{}
	for i := range second {
		byID[second[i].ID] = &second[i]
	}
	total := corpus.NewScore()
	for i := range first {
		t := &first[i]
		other, ok := byID[t.ID]
		if !ok || !inPart(t.ID, o.part) {
			continue
		}
		s, err := corpus.CompareLabels(t, other)
		if err != nil {
			return nil, err
		}
		total.Add(s)
	}
	return total, nil
}

func printScore(out io.Writer, s *corpus.Score) error {
	w := tabwriter.NewWriter(out, 0, 0, 2, ' ', tabwriter.AlignRight)
	fmt.Fprintln(w, "family\tprecision\trecall\tF1\tboth\tonly here\tonly labels\tkappa\t")
	for _, f := range corpus.Families() {
		c, ok := s.Counts[f]
		if !ok {
			continue
		}
		kappa := "–"
		if k, ok := s.Kappa(f); ok {
			kappa = fmt.Sprintf("%.2f", k)
		}
		fmt.Fprintf(w, "%s\t%.2f\t%.2f\t%.2f\t%d\t%d\t%d\t%s\t\n", f, c.Precision(), c.Recall(), c.F1(), c.Both, c.Extra, c.Missed, kappa)
	}
	return w.Flush()
}
