package corpus

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/analyze"
	"saywhy/lexicon"
)

// perClass returns the counts of one class from parallel labels, as scoring a
// family does: both, only the guess, only the gold.
func perClass(gold, guess []string, class string) Counts {
	var c Counts
	for i := range gold {
		switch g, d := gold[i] == class, guess[i] == class; {
		case g && d:
			c.Both++
		case d:
			c.Extra++
		case g:
			c.Missed++
		}
	}
	return c
}

// TestCountsMicroAndMacro works the example of scikit-learn's documentation
// for precision_recall_fscore_support (from memory; the figures computed
// with it): gold c d p c d p, guess c p d c c d.
func TestCountsMicroAndMacro(t *testing.T) {
	gold, guess := strings.Fields("c d p c d p"), strings.Fields("c p d c c d")
	var micro Counts
	var f1, precision, recall float64
	for _, class := range []struct {
		name string
		f1   float64
	}{{"c", 0.80}, {"d", 0}, {"p", 0}} {
		c := perClass(gold, guess, class.name)
		assert.InDelta(t, class.f1, c.F1(), 1e-9, "F1 of %s", class.name)
		f1, precision, recall = f1+c.F1()/3, precision+c.Precision()/3, recall+c.Recall()/3
		micro.Add(c)
	}
	assert.InDelta(t, 0.222, precision, 0.0005, "macro precision")
	assert.InDelta(t, 0.333, recall, 0.0005, "macro recall")
	assert.InDelta(t, 0.267, f1, 0.0005, "macro F1")
	assert.Equal(t, Counts{Both: 2, Extra: 4, Missed: 4}, micro)
	assert.InDelta(t, 1.0/3, micro.F1(), 1e-9, "micro F1")
	assert.InDelta(t, 1.0/3, micro.Precision(), 1e-9, "micro precision")
	assert.InDelta(t, 1.0/3, micro.Recall(), 1e-9, "micro recall")
}

// TestCountsShares: the definitions, worked by hand.
func TestCountsShares(t *testing.T) {
	for _, c := range []struct {
		name                  string
		counts                Counts
		precision, recall, f1 float64
	}{
		{"nothing", Counts{}, 0, 0, 0},
		{"all right", Counts{Both: 7}, 1, 1, 1},
		{"all wrong", Counts{Extra: 3, Missed: 2}, 0, 0, 0},
		{"one missed of four", Counts{Both: 3, Missed: 1}, 1, 0.75, 6.0 / 7},
		{"one too many of four", Counts{Both: 3, Extra: 1}, 0.75, 1, 6.0 / 7},
		{"both sorts", Counts{Both: 6, Extra: 2, Missed: 6}, 0.75, 0.5, 0.6},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.InDelta(t, c.precision, c.counts.Precision(), 1e-9)
			assert.InDelta(t, c.recall, c.counts.Recall(), 1e-9)
			assert.InDelta(t, c.f1, c.counts.F1(), 1e-9)
		})
	}
}

// TestKappa: 20 yes-yes, 5 and 10 in dispute, 15 no-no of 50 is the example of
// Wikipedia's page on Cohen's kappa (from memory), 0.40, confirmed with NLTK
// (computed). Scott's pi of the same is 0.394, so
// that the two are told apart here. The other rows are worked by hand.
func TestKappa(t *testing.T) {
	for _, c := range []struct {
		name                         string
		both, first, second, neither int
		want                         float64
	}{
		{"worked example", 20, 5, 10, 15, 0.40},
		{"judges swapped", 20, 10, 5, 15, 0.40},
		{"yes and no swapped", 15, 5, 10, 20, 0.40},
		{"never differ", 12, 0, 0, 8, 1},
		{"never differ, all yes", 12, 0, 0, 0, 1},
		{"never differ, all no", 0, 0, 0, 12, 1},
		{"nothing judged", 0, 0, 0, 0, 1},
		{"always differ, evenly", 0, 10, 10, 0, -1},
		{"no better than chance", 10, 10, 10, 10, 0},
		{"one judge says yes to all", 10, 10, 0, 0, 0},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.InDelta(t, c.want, Kappa(c.both, c.first, c.second, c.neither), 1e-9)
		})
	}
}

// TestKappaOfAFamily: words have no number of places where both said nothing,
// so kappa is told only for decisions.
func TestKappaOfAFamily(t *testing.T) {
	s := NewScore()
	s.Counts["why"], s.Neither["why"] = Counts{Both: 20, Extra: 5, Missed: 10}, 15
	s.Counts["vague"] = Counts{Both: 3, Extra: 1}
	k, ok := s.Kappa("why")
	assert.True(t, ok)
	assert.InDelta(t, 0.40, k, 1e-9) // source: see TestKappa
	_, ok = s.Kappa("vague")
	assert.False(t, ok, "vague words")
	_, ok = s.Kappa("how")
	assert.False(t, ok, "a family that nothing was labelled for")
}

// TestKappaOfDecisionsWithoutASharedNo: a yes-or-no family has a kappa even
// where no sentence got a no from both.
func TestKappaOfDecisionsWithoutASharedNo(t *testing.T) {
	text := labelled("The flan set. It wobbled.")
	for i, why := range []bool{true, false} {
		text.Sentences[i].Why = &why
	}
	r := reported(text.Text)
	r.Sentences[0].Why = []analyze.Reasoning{{Start: 0, End: 3}}
	r.Sentences[1].Why = []analyze.Reasoning{{Start: 14, End: 16}}
	s := compared(t, text, r)
	require.Equal(t, Counts{Both: 1, Extra: 1}, s.Counts["why"])
	k, ok := s.Kappa("why")
	assert.True(t, ok, "why is a family of yes-or-no decisions")
	assert.InDelta(t, 0, k, 1e-9, "one judge says yes to all: worked by hand")
}

// labelled returns a text divided at ". ", with no label at all.
func labelled(text string) *Labelled {
	l := &Labelled{ID: "t1", Text: text}
	for _, s := range strings.SplitAfter(text, ". ") {
		l.Sentences = append(l.Sentences, LabelledSentence{Text: strings.TrimSpace(s)})
	}
	return l
}

// reported returns a report of the same division with nothing found in it.
func reported(text string) *analyze.Report {
	r := &analyze.Report{}
	at := 0
	for i, s := range strings.SplitAfter(text, ". ") {
		r.Sentences = append(r.Sentences, analyze.Sentence{N: i + 1, Start: at, End: at + len(strings.TrimSpace(s)), Text: strings.TrimSpace(s)})
		at += len(s)
	}
	for _, a := range lexicon.Areas() {
		r.Areas = append(r.Areas, analyze.AreaRow{Area: a})
	}
	return r
}

// word returns where a word stands in a text.
func word(tb testing.TB, text, w string) (start, end int) {
	tb.Helper()
	i := strings.Index(text, w)
	require.GreaterOrEqual(tb, i, 0, "%q is not in %q", w, text)
	return i, i + len(w)
}

func vague(tb testing.TB, text, w string, bare bool) analyze.Vague {
	tb.Helper()
	start, end := word(tb, text, w)
	return analyze.Vague{Start: start, End: end, Text: w, Bare: bare}
}

func sensory(tb testing.TB, text, w string, sense lexicon.Sense) analyze.Sensory {
	tb.Helper()
	start, end := word(tb, text, w)
	return analyze.Sensory{Start: start, End: end, Text: w, Sense: sense}
}

func compared(tb testing.TB, text *Labelled, r *analyze.Report) *Score {
	tb.Helper()
	s, err := Compare(text, r)
	require.NoError(tb, err)
	require.Equal(tb, 1, s.Texts)
	return s
}

func TestCompareVagueWords(t *testing.T) {
	const text = "The flan was nice and really good."
	for _, c := range []struct {
		name        string
		gold        []LabelledVague
		tried       []analyze.Vague
		vague, bare Counts
		misses      []string
	}{
		{"both none", nil, nil, Counts{}, Counts{}, nil},
		{
			"same word, both bare",
			[]LabelledVague{{"nice", true}},
			[]analyze.Vague{vague(t, text, "nice", true)},
			Counts{Both: 1}, Counts{Both: 1}, nil,
		},
		{
			"same word, neither bare",
			[]LabelledVague{{"nice", false}},
			[]analyze.Vague{vague(t, text, "nice", false)},
			Counts{Both: 1}, Counts{}, nil,
		},
		{
			"bare only for the labels",
			[]LabelledVague{{"nice", true}},
			[]analyze.Vague{vague(t, text, "nice", false)},
			Counts{Both: 1}, Counts{Missed: 1}, []string{"- bare nice"},
		},
		{
			"bare only for the tool",
			[]LabelledVague{{"nice", false}},
			[]analyze.Vague{vague(t, text, "nice", true)},
			Counts{Both: 1}, Counts{Extra: 1}, []string{"+ bare nice"},
		},
		{
			"overlap is enough",
			[]LabelledVague{{"really good", true}},
			[]analyze.Vague{vague(t, text, "good", true)},
			Counts{Both: 1}, Counts{Both: 1}, nil,
		},
		{
			"a bare word missed is missed twice",
			[]LabelledVague{{"nice", true}, {"good", false}},
			nil,
			Counts{Missed: 2}, Counts{Missed: 1}, []string{"- vague nice", "- vague good"},
		},
		{
			"a bare word too many is too many twice",
			nil,
			[]analyze.Vague{vague(t, text, "nice", true), vague(t, text, "good", false)},
			Counts{Extra: 2}, Counts{Extra: 1}, []string{"+ vague nice", "+ vague good"},
		},
		{
			"words that only neighbour do not agree",
			[]LabelledVague{{"nice", false}},
			[]analyze.Vague{vague(t, text, " and", false)},
			Counts{Extra: 1, Missed: 1}, Counts{}, []string{"+ vague  and", "- vague nice"},
		},
	} {
		t.Run(c.name, func(t *testing.T) {
			l := labelled(text)
			l.Sentences[0].Vague = &c.gold
			r := reported(text)
			r.Sentences[0].Vague = c.tried
			s := compared(t, l, r)
			assert.Equal(t, c.vague, s.Counts["vague"])
			assert.Equal(t, c.bare, s.Counts["bare"])
			var misses []string
			for _, m := range s.Misses {
				sign := "-"
				if m.Extra {
					sign = "+"
				}
				misses = append(misses, sign+" "+m.Family+" "+m.What)
			}
			assert.Equal(t, c.misses, misses)
		})
	}
}

func TestCompareSensoryWords(t *testing.T) {
	const text = "The skin was golden brown, crisp and crisp again."
	for _, c := range []struct {
		name  string
		gold  []LabelledSensory
		tried []analyze.Sensory
		want  Counts
	}{
		{
			"same words",
			[]LabelledSensory{{"golden brown", lexicon.Sight}, {"crisp", lexicon.Touch}},
			[]analyze.Sensory{sensory(t, text, "golden brown", lexicon.Sight), sensory(t, text, "crisp", lexicon.Touch)},
			Counts{Both: 2},
		},
		{
			"overlap is enough",
			[]LabelledSensory{{"golden brown", lexicon.Sight}},
			[]analyze.Sensory{sensory(t, text, "golden", lexicon.Sight)},
			Counts{Both: 1},
		},
		{
			"each word agrees once",
			[]LabelledSensory{{"golden brown", lexicon.Sight}},
			[]analyze.Sensory{sensory(t, text, "golden", lexicon.Sight), sensory(t, text, "brown", lexicon.Sight)},
			Counts{Both: 1, Extra: 1},
		},
		{
			"two labels on one word of the tool",
			[]LabelledSensory{{"golden", lexicon.Sight}, {"brown", lexicon.Sight}},
			[]analyze.Sensory{sensory(t, text, "golden brown", lexicon.Sight)},
			Counts{Both: 1, Missed: 1},
		},
		{
			"wrong sense",
			[]LabelledSensory{{"crisp", lexicon.Touch}},
			[]analyze.Sensory{sensory(t, text, "crisp", lexicon.Tongue)},
			Counts{Extra: 1, Missed: 1},
		},
		{
			"a word that stands twice is looked for further on",
			[]LabelledSensory{{"crisp", lexicon.Touch}, {"crisp", lexicon.Touch}},
			[]analyze.Sensory{sensory(t, text, "crisp", lexicon.Touch), sensory(t, text, "crisp again", lexicon.Touch)},
			Counts{Both: 2},
		},
		{
			"two senses of one word",
			[]LabelledSensory{{"crisp", lexicon.Touch}, {"crisp", lexicon.Tongue}},
			[]analyze.Sensory{sensory(t, text, "crisp", lexicon.Touch)},
			Counts{Both: 1, Missed: 1},
		},
	} {
		t.Run(c.name, func(t *testing.T) {
			l := labelled(text)
			l.Sentences[0].Sensory = &c.gold
			r := reported(text)
			r.Sentences[0].Sensory = c.tried
			assert.Equal(t, c.want, compared(t, l, r).Counts["sensory"])
		})
	}
}

func TestCompareHowAndWhyBySentence(t *testing.T) {
	const text = "I cut it thin. It was hot. I stirred it. It cooled."
	l := labelled(text)
	for i, yes := range []bool{true, true, false, false} {
		l.Sentences[i].How, l.Sentences[i].Why = &yes, &yes
	}
	r := reported(text)
	r.Sentences[0].How = []analyze.Phrase{{Start: 0, End: 5}, {Start: 6, End: 8}} // two of them count once
	r.Sentences[2].How = []analyze.Phrase{{Start: 28, End: 30}}
	r.Sentences[1].Why = []analyze.Reasoning{{Start: 15, End: 18}}
	s := compared(t, l, r)
	assert.Equal(t, Counts{Both: 1, Extra: 1, Missed: 1}, s.Counts["how"])
	assert.Equal(t, 1, s.Neither["how"])
	assert.Equal(t, Counts{Both: 1, Missed: 1}, s.Counts["why"])
	assert.Equal(t, 2, s.Neither["why"])
	k, ok := s.Kappa("how")
	assert.True(t, ok)
	assert.InDelta(t, 0, k, 1e-9, "one of each: no better than chance, worked by hand")
	k, ok = s.Kappa("why")
	assert.True(t, ok)
	assert.InDelta(t, 0.5, k, 1e-9, "1 0 / 1 2 of 4: p_o .75, p_e .5, worked by hand")
}

func TestCompareAreasBySentence(t *testing.T) {
	const text = "I tied my hair back. It was salty."
	l := labelled(text)
	l.Sentences[0].Areas = &[]lexicon.Area{lexicon.Hygiene, lexicon.Safety}
	l.Sentences[1].Areas = &[]lexicon.Area{}
	r := reported(text)
	r.Sentences[0].Areas = []lexicon.Area{lexicon.Hygiene}
	r.Sentences[1].Areas = []lexicon.Area{lexicon.Taste}
	s := compared(t, l, r)
	assert.Equal(t, Counts{Both: 1, Extra: 1, Missed: 1}, s.Counts["areas by sentence"])
	assert.Equal(t, 17, s.Neither["areas by sentence"], "two sentences of ten areas")
}

func TestCompareTheThreeSteps(t *testing.T) {
	l := labelled("I tied my hair back. It was salty.")
	l.Areas = map[lexicon.Area]Reached{lexicon.Hygiene: {Said: true, Detail: true}, lexicon.Taste: {Said: true, Detail: true}}
	r := reported(l.Text)
	for i := range r.Areas {
		switch row := &r.Areas[i]; row.Area {
		case lexicon.Hygiene:
			row.Said, row.Detail, row.Reason = true, true, true
		case lexicon.Taste:
			row.Said = true
		}
	}
	s := compared(t, l, r)
	assert.Equal(t, Counts{Both: 2}, s.Counts["said"])
	assert.Equal(t, 8, s.Neither["said"])
	assert.Equal(t, Counts{Both: 1, Missed: 1}, s.Counts["detail"])
	assert.Equal(t, 8, s.Neither["detail"])
	assert.Equal(t, Counts{Extra: 1}, s.Counts["reason"])
	assert.Equal(t, 9, s.Neither["reason"])
}

// TestCompareStepsWithoutSentences: the contract lets a text leave out any
// family; one with the three steps alone still scores them.
func TestCompareStepsWithoutSentences(t *testing.T) {
	l := &Labelled{ID: "t1", Text: "It was salty.", Areas: map[lexicon.Area]Reached{lexicon.Taste: {Said: true}}}
	r := reported(l.Text)
	for i := range r.Areas {
		r.Areas[i].Said = r.Areas[i].Area == lexicon.Taste
	}
	assert.Equal(t, Counts{Both: 1}, compared(t, l, r).Counts["said"])
	assert.Contains(t, compared(t, l, r).Counts, "said")
}

func TestCompareCautions(t *testing.T) {
	const text = "It was pink. I cut my thumb. It healed."
	for _, c := range []struct {
		name  string
		gold  []LabelledCaution
		tried []analyze.Caution
		want  Counts
	}{
		{"none, and that was labelled", []LabelledCaution{}, nil, Counts{}},
		{"same kind and sentence", []LabelledCaution{{"injury", 2}}, []analyze.Caution{{Kind: "injury", Sentence: 2}}, Counts{Both: 1}},
		{"other sentence", []LabelledCaution{{"injury", 2}}, []analyze.Caution{{Kind: "injury", Sentence: 3}}, Counts{Extra: 1, Missed: 1}},
		{"other kind", []LabelledCaution{{"injury", 2}}, []analyze.Caution{{Kind: "unwell", Sentence: 2}}, Counts{Extra: 1, Missed: 1}},
		{
			"two kinds in another order",
			[]LabelledCaution{{"undercooked", 1}, {"injury", 2}},
			[]analyze.Caution{{Kind: "injury", Sentence: 2}, {Kind: "undercooked", Sentence: 1}},
			Counts{Both: 2},
		},
		{"one label, told twice", []LabelledCaution{{"injury", 2}}, []analyze.Caution{{Kind: "injury", Sentence: 2}, {Kind: "injury", Sentence: 2}}, Counts{Both: 1, Extra: 1}},
	} {
		t.Run(c.name, func(t *testing.T) {
			l := labelled(text)
			l.Cautions = &c.gold
			r := reported(text)
			r.Cautions = c.tried
			s := compared(t, l, r)
			assert.Contains(t, s.Counts, "cautions")
			assert.Equal(t, c.want, s.Counts["cautions"])
		})
	}
}

// TestCompareSkipsWhatWasNotLabelled: a file with some families only must not
// count the others as empty (see Labelled).
func TestCompareSkipsWhatWasNotLabelled(t *testing.T) {
	const text = "It was nice and crisp. I stirred it."
	full := func() *analyze.Report {
		r := reported(text)
		r.Sentences[0].Vague = []analyze.Vague{vague(t, text, "nice", true)}
		r.Sentences[0].Sensory = []analyze.Sensory{sensory(t, text, "crisp", lexicon.Touch)}
		r.Sentences[0].How = []analyze.Phrase{{Start: 0, End: 2}}
		r.Sentences[0].Why = []analyze.Reasoning{{Start: 0, End: 2}}
		r.Sentences[0].Areas = []lexicon.Area{lexicon.Texture}
		r.Areas[8].Said = true
		r.Cautions = []analyze.Caution{{Kind: "injury", Sentence: 1}}
		return r
	}
	yes := true
	for _, c := range []struct {
		name  string
		label func(*Labelled)
		want  []string
	}{
		{"nothing", func(*Labelled) {}, nil},
		{"vague", func(l *Labelled) { l.Sentences[0].Vague = &[]LabelledVague{} }, []string{"vague", "bare"}},
		{"sensory", func(l *Labelled) { l.Sentences[0].Sensory = &[]LabelledSensory{} }, []string{"sensory"}},
		{"how", func(l *Labelled) { l.Sentences[0].How = &yes }, []string{"how"}},
		{"why", func(l *Labelled) { l.Sentences[0].Why = &yes }, []string{"why"}},
		{"areas by sentence", func(l *Labelled) { l.Sentences[0].Areas = &[]lexicon.Area{} }, []string{"areas by sentence"}},
		{"steps", func(l *Labelled) { l.Areas = map[lexicon.Area]Reached{} }, []string{"said", "detail", "reason"}},
		{"cautions", func(l *Labelled) { l.Cautions = &[]LabelledCaution{} }, []string{"cautions"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			l := labelled(text)
			c.label(l)
			s := compared(t, l, full())
			var have []string
			for _, f := range Families() {
				if _, ok := s.Counts[f]; ok {
					have = append(have, f)
				}
			}
			assert.Equal(t, c.want, have)
			assert.Len(t, s.Counts, len(c.want), "a family that is not in Families")
		})
	}
}

// TestCompareSkipsASentenceThatWasNotLabelled: within a family, too.
func TestCompareSkipsASentenceThatWasNotLabelled(t *testing.T) {
	const text = "It was nice. It was good."
	l := labelled(text)
	l.Sentences[0].Vague = &[]LabelledVague{{"nice", true}}
	r := reported(text)
	r.Sentences[0].Vague = []analyze.Vague{vague(t, text, "nice", true)}
	r.Sentences[1].Vague = []analyze.Vague{vague(t, text, "good", true)}
	assert.Equal(t, Counts{Both: 1}, compared(t, l, r).Counts["vague"])
}

// TestCompareWhereSentencesAreDividedOtherwise: what the report found is laid
// over the readers' sentences by its place in the text.
func TestCompareWhereSentencesAreDividedOtherwise(t *testing.T) {
	const text = "It was nice. I cut it by hand. It was pink."
	yes, no := true, false

	t.Run("the report joins what the labels divide", func(t *testing.T) {
		l := labelled(text)
		for i := range l.Sentences {
			l.Sentences[i].Vague, l.Sentences[i].How = &[]LabelledVague{}, &no
		}
		l.Sentences[0].Vague = &[]LabelledVague{{"nice", true}}
		l.Sentences[1].How = &yes
		l.Cautions = &[]LabelledCaution{{"undercooked", 2}}
		start, end := word(t, text, "by hand")
		r := &analyze.Report{Cautions: []analyze.Caution{{Kind: "undercooked", Sentence: 1}, {Kind: "storage", Sentence: 1}}, Sentences: []analyze.Sentence{{
			N: 1, Start: 0, End: len(text), Text: text,
			Vague: []analyze.Vague{vague(t, text, "nice", true)}, How: []analyze.Phrase{{Start: start, End: end, Text: "by hand"}},
		}}}
		s := compared(t, l, r)
		assert.Equal(t, Counts{Both: 1}, s.Counts["vague"])
		assert.Equal(t, Counts{Both: 1}, s.Counts["how"])
		assert.Equal(t, 2, s.Neither["how"])
		assert.Equal(t, Counts{Both: 1, Extra: 1}, s.Counts["cautions"], "the danger stands somewhere in what the report took for one sentence")
	})

	t.Run("the report divides what the labels join", func(t *testing.T) {
		l := &Labelled{ID: "t1", Text: text, Sentences: []LabelledSentence{{
			Text: text, Vague: &[]LabelledVague{{"nice", true}}, How: &yes, Areas: &[]lexicon.Area{lexicon.Taste},
		}}, Cautions: &[]LabelledCaution{{"undercooked", 1}}}
		r := reported(text)
		start, end := word(t, text, "by hand")
		r.Sentences[0].Vague = []analyze.Vague{vague(t, text, "nice", true)}
		r.Sentences[1].How = []analyze.Phrase{{Start: start, End: end, Text: "by hand"}}
		for i := range r.Sentences {
			r.Sentences[i].Areas = []lexicon.Area{lexicon.Taste}
		}
		r.Cautions = []analyze.Caution{{Kind: "undercooked", Sentence: 3}}
		s := compared(t, l, r)
		assert.Equal(t, Counts{Both: 1}, s.Counts["vague"])
		assert.Equal(t, Counts{Both: 1}, s.Counts["how"])
		assert.Equal(t, Counts{Both: 1}, s.Counts["areas by sentence"], "an area told three times counts once")
		assert.Equal(t, Counts{Both: 1}, s.Counts["cautions"], "its sentence is the third of the report, the first of the labels")
	})

	t.Run("labels that leave a part of the text out", func(t *testing.T) {
		l := &Labelled{ID: "t1", Text: text, Sentences: []LabelledSentence{{Text: "I cut it by hand.", How: &yes}}}
		r := reported(text)
		start, end := word(t, text, "by hand")
		r.Sentences[1].How = []analyze.Phrase{{Start: start, End: end, Text: "by hand"}}
		assert.Equal(t, Counts{Both: 1}, compared(t, l, r).Counts["how"])
	})
}

func TestCompareRefusesASentenceThatIsNotInTheText(t *testing.T) {
	l := labelled("It was nice. It was thin.")
	l.Sentences[1].Text = "It was thick."
	_, err := Compare(l, reported(l.Text))
	require.Error(t, err)
	assert.Contains(t, err.Error(), "sentence 2")
}

func TestCompareLabelsOfTwoReaders(t *testing.T) {
	one := func(bare, why bool) *Labelled {
		l := labelled("It was nice. It set.")
		l.Sentences[0].Vague, l.Sentences[1].Vague = &[]LabelledVague{{"nice", bare}}, &[]LabelledVague{}
		l.Sentences[0].Why, l.Sentences[1].Why = &why, new(bool)
		return l
	}
	t.Run("the same labels", func(t *testing.T) {
		s, err := CompareLabels(one(true, true), one(true, true))
		require.NoError(t, err)
		for f, c := range s.Counts {
			assert.InDelta(t, 1, c.F1(), 1e-9, f)
		}
		assert.Empty(t, s.Misses)
		k, ok := s.Kappa("why")
		assert.True(t, ok)
		assert.InDelta(t, 1, k, 1e-9)
	})
	t.Run("other labels", func(t *testing.T) {
		s, err := CompareLabels(one(true, true), one(false, false))
		require.NoError(t, err)
		assert.Equal(t, Counts{Both: 1}, s.Counts["vague"])
		assert.Equal(t, Counts{Missed: 1}, s.Counts["bare"])
		assert.Equal(t, Counts{Missed: 1}, s.Counts["why"])
	})
	t.Run("another division", func(t *testing.T) {
		other := one(true, true)
		other.Sentences = other.Sentences[:1]
		_, err := CompareLabels(one(true, true), other)
		require.Error(t, err)
		assert.Contains(t, err.Error(), "2 and 1 sentences")
	})
}

// TestScoreAdds: scores of texts add up family by family, so that shares are
// over all decisions (micro) and not a mean of means.
func TestScoreAdds(t *testing.T) {
	a, b := NewScore(), NewScore()
	a.Texts, b.Texts = 1, 2
	a.Counts["why"], b.Counts["why"] = Counts{Both: 1, Extra: 2, Missed: 3}, Counts{Both: 4, Extra: 5, Missed: 6}
	b.Counts["how"] = Counts{Both: 1}
	a.Neither["why"], b.Neither["why"] = 7, 8
	a.Misses, b.Misses = []Miss{{ID: "x"}}, []Miss{{ID: "y"}}
	a.Add(b)
	assert.Equal(t, 3, a.Texts)
	assert.Equal(t, map[string]Counts{"why": {Both: 5, Extra: 7, Missed: 9}, "how": {Both: 1}}, a.Counts)
	assert.Equal(t, 15, a.Neither["why"])
	assert.Len(t, a.Misses, 2)
}

func TestMissIsOneLine(t *testing.T) {
	m := Miss{ID: "t7", Family: "sensory", Sentence: 2, What: "crisp=texture", Extra: true, Text: "It was\r\n  crisp."}
	assert.Equal(t, "+ t7 sensory 2 crisp=texture | It was crisp.", m.String())
	m.Extra = false
	assert.True(t, strings.HasPrefix(m.String(), "- "))
}

func TestReadLabelled(t *testing.T) {
	const good = `{"id":"t1","dish":"soup","role":"adult","text":"It set. It was nice.","sentences":[{"text":"It set.","why":false},{"text":"It was nice.","vague":[{"text":"nice","bare":true}]}],"areas":{"taste":{"said":true}},"cautions":[]}`
	texts, err := ReadLabelled(strings.NewReader("\n" + good + "\r\n\n  \n" + good + "\n"))
	require.NoError(t, err)
	require.Len(t, texts, 2)
	l := texts[0]
	assert.Equal(t, "t1", l.ID)
	assert.Equal(t, analyze.Adult, l.Role)
	assert.Nil(t, l.Sentences[0].Vague, "a family left out is not an empty one")
	require.NotNil(t, l.Sentences[0].Why)
	assert.False(t, *l.Sentences[0].Why)
	require.NotNil(t, l.Sentences[1].Vague)
	assert.Equal(t, []LabelledVague{{"nice", true}}, *l.Sentences[1].Vague)
	assert.True(t, l.Areas[lexicon.Taste].Said)
	require.NotNil(t, l.Cautions)
	assert.Empty(t, *l.Cautions)

	texts, err = ReadLabelled(strings.NewReader(""))
	require.NoError(t, err)
	assert.Empty(t, texts)
}

func TestReadLabelledErrorsNameTheLine(t *testing.T) {
	const good = `{"id":"t1","text":"It set.","sentences":[{"text":"It set."}]}`
	for _, c := range []struct{ name, in, want string }{
		{"no JSON", "soup", "line 1"},
		{"cut off", good + "\n" + good[:20], "line 2"},
		{"behind blank lines", good + "\n\n\n" + "{", "line 4"},
		{"a list", good + "\n[]", "line 2"},
		{"a wrong kind of value", `{"id":7}`, "line 1"},
		{"a sentence that is not in the text", good + "\n" + `{"id":"t2","text":"It set.","sentences":[{"text":"It sank."}]}`, "line 2"},
		{"sentences out of order", `{"id":"t3","text":"It set. It sank.","sentences":[{"text":"It sank."},{"text":"It set."}]}`, "line 1"},
		{"that text is named", `{"id":"t4","text":"","sentences":[{"text":"It sank."}]}`, `"t4"`},
	} {
		t.Run(c.name, func(t *testing.T) {
			texts, err := ReadLabelled(strings.NewReader(c.in))
			require.Error(t, err)
			assert.Nil(t, texts)
			assert.Contains(t, err.Error(), c.want)
		})
	}
}

func TestHeldBackIsEveryThirdByNumber(t *testing.T) {
	for id, want := range map[string]bool{
		"t1": false, "t2": false, "t3": true, "t003": true, "t004": false, "t150": true, "t151": false,
		"gum-12-1": false, // 121
		"gum-12-3": true,  // 123
		"":         false,
		"soup":     false,
		"t0":       false,
	} {
		assert.Equal(t, want, HeldBack(id), "id %q", id)
	}
	held := 0
	for n := 1; n <= 150; n++ {
		if HeldBack(fmt.Sprintf("t%03d", n)) {
			held++
		}
	}
	assert.Equal(t, 50, held)
}
