package corpus

import (
	"fmt"
	"strings"

	"saywhy/analyze"
)

// Counts are decisions that add up over texts: what both have, what only the
// tool has, and what only the labels have.
type Counts struct{ Both, Extra, Missed int }

// Add adds other counts to these.
func (c *Counts) Add(o Counts) {
	c.Both += o.Both
	c.Extra += o.Extra
	c.Missed += o.Missed
}

// Precision is the share of what the tool found that the labels have, from 0
// to 1; 0 when it found nothing.
func (c Counts) Precision() float64 { return share(c.Both, c.Both+c.Extra) }

// Recall is the share of what the labels have that the tool found, from 0 to 1.
func (c Counts) Recall() float64 { return share(c.Both, c.Both+c.Missed) }

// F1 is the harmonic mean of precision and recall, from 0 to 1.
func (c Counts) F1() float64 { return share(2*c.Both, 2*c.Both+c.Extra+c.Missed) }

func share(a, b int) float64 {
	if b == 0 {
		return 0
	}
	return float64(a) / float64(b)
}

// Families returns the label families in the order of every table.
func Families() []string {
	return []string{"vague", "bare", "sensory", "how", "why", "areas by sentence", "said", "detail", "reason", "cautions"}
}

// Score is the agreement of one set of judgements with another, by family. A
// family that nothing was labelled for is not in Counts. Units holds, for the
// families that are yes-or-no decisions, how often both said no as well, which
// kappa needs.
type Score struct {
	Texts   int
	Counts  map[string]Counts
	Neither map[string]int
	Misses  []Miss
}

// Miss is one disagreement.
type Miss struct {
	ID       string
	Family   string
	Sentence int    // 0 when it concerns the text
	What     string // the word, area or kind
	Extra    bool   // the tool has it and the labels do not
	Text     string
}

// String shows a miss in one line: "+" for what only the tool has, "-" for
// what only the labels have.
func (m Miss) String() string {
	sign := "-"
	if m.Extra {
		sign = "+"
	}
	return fmt.Sprintf("%s %s %s %d %s | %s", sign, m.ID, m.Family, m.Sentence, m.What, strings.Join(strings.Fields(m.Text), " "))
}

// NewScore returns an empty score.
func NewScore() *Score { return &Score{Counts: map[string]Counts{}, Neither: map[string]int{}} }

// Add adds another score to this one.
func (s *Score) Add(o *Score) {
	s.Texts += o.Texts
	for f, c := range o.Counts {
		have := s.Counts[f]
		have.Add(c)
		s.Counts[f] = have
	}
	for f, n := range o.Neither {
		s.Neither[f] += n
	}
	s.Misses = append(s.Misses, o.Misses...)
}

// Kappa is Cohen's kappa of a family of yes-or-no decisions, from -1 to 1; ok
// is false for families where "neither" cannot be counted.
func (s *Score) Kappa(family string) (kappa float64, ok bool) {
	neither, ok := s.Neither[family]
	if !ok {
		return 0, false
	}
	c := s.Counts[family]
	return Kappa(c.Both, c.Extra, c.Missed, neither), true
}

// Kappa is Cohen's kappa of two judges: how often both said yes, only the
// first, only the second, neither. It is 1 when they never differ.
func Kappa(both, first, second, neither int) float64 {
	n := float64(both + first + second + neither)
	if n == 0 || first+second == 0 {
		return 1
	}
	agree := float64(both+neither) / n
	yes := float64(both+first) / n * float64(both+second) / n
	no := float64(second+neither) / n * float64(first+neither) / n
	return (agree - yes - no) / (1 - yes - no)
}

// marks are the judgements about one text, whoever made them, on the sentences
// of the labelled text. A nil family was not judged.
type marks struct {
	areas, vague, sensory, how, why [][]mark // by sentence
	has                             map[string]bool
	steps                           map[string]bool // "taste said", "taste detail" …
	cautions                        []markedCaution
}

// markedCaution is a danger in the sentences from first to last, from 1: in one
// of a reader, in all those of the labelled text that the rules took for one.
type markedCaution struct {
	kind        string
	first, last int
}

func (c markedCaution) String() string { return fmt.Sprintf("%s %d", c.kind, c.first) }

func (c markedCaution) overlaps(d markedCaution) bool {
	return c.kind == d.kind && c.first <= d.last && d.first <= c.last
}

// mark is one judged word: its place in the text and what is said of it.
type mark struct {
	span
	what string
	bare bool
}

// Compare scores a report against the labels of its text.
//
// Words (vague, sensory) agree when they overlap in the text; a sensory word
// must have the same sense too. How and why are decisions by sentence; areas
// are decisions for each area of each sentence; the three steps are decisions
// for each of the ten areas of the text. Cautions agree when they are of one kind
// and their sentences overlap. "bare" counts the vague words that
// are bare: those both have and call bare, against those only one does.
func Compare(t *Labelled, r *analyze.Report) (*Score, error) {
	spans, err := t.spans()
	if err != nil {
		return nil, err
	}
	return compare(t, goldMarks(t, spans), reportMarks(r, spans)), nil
}

// CompareLabels scores one reader's labels against another's of the same text,
// in the same way.
func CompareLabels(t, other *Labelled) (*Score, error) {
	spans, err := t.spans()
	if err != nil {
		return nil, err
	}
	if len(t.Sentences) != len(other.Sentences) {
		return nil, fmt.Errorf("text %q is divided into %d and %d sentences", t.ID, len(t.Sentences), len(other.Sentences))
	}
	return compare(t, goldMarks(t, spans), goldMarks(other, spans)), nil
}

func goldMarks(t *Labelled, spans []span) marks {
	m := newMarks(len(spans))
	for i, s := range t.Sentences {
		if s.Areas != nil {
			m.has["areas"] = true
			for _, a := range *s.Areas {
				m.areas[i] = append(m.areas[i], mark{what: string(a)})
			}
		}
		at := 0
		find := func(w string) span {
			k := strings.Index(s.Text[at:], w)
			if k < 0 {
				at, k = 0, strings.Index(s.Text, w)
				if k < 0 {
					return span{spans[i].start, spans[i].start}
				}
			}
			at += k + len(w)
			return span{spans[i].start + at - len(w), spans[i].start + at}
		}
		if s.Vague != nil {
			m.has["vague"] = true
			for _, v := range *s.Vague {
				m.vague[i] = append(m.vague[i], mark{span: find(v.Text), what: v.Text, bare: v.Bare})
			}
		}
		at = 0
		if s.Sensory != nil {
			m.has["sensory"] = true
			for _, v := range *s.Sensory {
				m.sensory[i] = append(m.sensory[i], mark{span: find(v.Text), what: string(v.Sense)})
			}
		}
		if s.How != nil {
			m.has["how"] = true
			if *s.How {
				m.how[i] = append(m.how[i], mark{})
			}
		}
		if s.Why != nil {
			m.has["why"] = true
			if *s.Why {
				m.why[i] = append(m.why[i], mark{})
			}
		}
	}
	if t.Areas != nil {
		m.has["steps"] = true
		for a, v := range t.Areas {
			m.steps[string(a)+" said"] = v.Said
			m.steps[string(a)+" detail"] = v.Detail
			m.steps[string(a)+" reason"] = v.Reason
		}
	}
	if t.Cautions != nil {
		m.has["cautions"] = true
		for _, c := range *t.Cautions {
			m.cautions = append(m.cautions, markedCaution{string(c.Kind), c.Sentence, c.Sentence})
		}
	}
	return m
}

func newMarks(n int) marks {
	return marks{
		areas: make([][]mark, n), vague: make([][]mark, n), sensory: make([][]mark, n), how: make([][]mark, n), why: make([][]mark, n),
		has: map[string]bool{}, steps: map[string]bool{},
	}
}

// reportMarks lays a report over the labelled division of the text.
func reportMarks(r *analyze.Report, spans []span) marks {
	m := newMarks(len(spans))
	place := func(start int) int {
		for i, s := range spans {
			if start < s.end {
				return i
			}
		}
		return len(spans) - 1
	}
	for _, f := range []string{"areas", "vague", "sensory", "how", "why", "steps", "cautions"} {
		m.has[f] = true
	}
	type parts struct{ first, last int }
	at := map[int]parts{}
	for _, s := range r.Sentences {
		if len(spans) == 0 {
			at[s.N] = parts{s.N - 1, s.N - 1} // the text was not divided: nothing to lay it over
			continue
		}
		i := place(s.Start)
		at[s.N] = parts{i, max(i, place(s.End-1))}
		// A sentence that the readers divided further speaks of its areas in
		// each part it covers only where its signs stand, which the report
		// does not tell; count it for its first part.
		for _, a := range s.Areas {
			dup := false
			for _, have := range m.areas[i] {
				dup = dup || have.what == string(a)
			}
			if !dup {
				m.areas[i] = append(m.areas[i], mark{what: string(a)})
			}
		}
		for _, v := range s.Vague {
			k := place(v.Start)
			m.vague[k] = append(m.vague[k], mark{span: span{v.Start, v.End}, what: v.Text, bare: v.Bare})
		}
		for _, v := range s.Sensory {
			k := place(v.Start)
			m.sensory[k] = append(m.sensory[k], mark{span: span{v.Start, v.End}, what: string(v.Sense)})
		}
		for _, v := range s.How {
			k := place(v.Start)
			m.how[k] = append(m.how[k], mark{})
		}
		for _, v := range s.Why {
			k := place(v.Start)
			m.why[k] = append(m.why[k], mark{})
		}
	}
	for _, row := range r.Areas {
		m.steps[string(row.Area)+" said"] = row.Said
		m.steps[string(row.Area)+" detail"] = row.Detail
		m.steps[string(row.Area)+" reason"] = row.Reason
	}
	for _, c := range r.Cautions {
		m.cautions = append(m.cautions, markedCaution{string(c.Kind), at[c.Sentence].first + 1, at[c.Sentence].last + 1})
	}
	return m
}
