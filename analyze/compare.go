package analyze

import "saywhy/lexicon"

// Comparison is what changed between two drafts of a text. Its lists are never
// nil.
type Comparison struct {
	Words     DraftWords     `json:"words"`
	Reached   []StepReached  `json:"reached"`   // steps that the new draft has and the old had not
	Lost      []StepReached  `json:"lost"`      // the other way round
	Vague     []VagueFate    `json:"vague"`     // by old sentence, then those that are new
	Questions []QuestionFate `json:"questions"` // of the old draft, in the order in which they were asked
	Sentences []SentencePair `json:"sentences"` // by new sentence; those gone stand where they were
}

// DraftWords is how many words each draft has.
type DraftWords struct {
	Old int `json:"old"`
	New int `json:"new"`
}

// StepReached is one of the three steps of an area.
type StepReached struct {
	Area lexicon.Area `json:"area"`
	Step Step         `json:"step"`
}

// Fate is what became of something between two drafts.
type Fate string

// What becomes of a bare judging word: it went, something concrete now stands
// beside it, it is still bare, or it is new. What becomes of a question: it is
// answered, still open, or what it asked about was taken out.
const (
	FateGone     Fate = "gone"
	FateBacked   Fate = "backed"
	FateStill    Fate = "still"
	FateNew      Fate = "new"
	FateAnswered Fate = "answered"
	FateOpen     Fate = "open"
)

// VagueFate is what became of one bare judging word. A sentence is 0 where the
// word stands in none of that draft.
type VagueFate struct {
	Text string `json:"text"`
	Fate Fate   `json:"fate"`
	Old  int    `json:"old"`
	New  int    `json:"new"`
}

// QuestionFate is what became of one question of the old draft.
type QuestionFate struct {
	Question
	Fate Fate `json:"fate"`
}

// Compare tells what changed between two drafts, each read for the same dish
// and role. The questions are those that the old report asks.
func Compare(before, after *Report) *Comparison {
	c := &Comparison{
		Words:   DraftWords{before.Words, after.Words},
		Reached: []StepReached{}, Lost: []StepReached{}, Vague: []VagueFate{}, Questions: []QuestionFate{},
	}
	for _, a := range lexicon.Areas() {
		for _, step := range []Step{Said, Detail, Reason} {
			was, is := before.Row(a).Reached(step), after.Row(a).Reached(step)
			switch {
			case is && !was:
				c.Reached = append(c.Reached, StepReached{a, step})
			case was && !is:
				c.Lost = append(c.Lost, StepReached{a, step})
			}
		}
	}
	c.Sentences = pairSentences(sentenceTexts(before), sentenceTexts(after))
	c.Vague = vagueFates(before, after, c.Sentences)
	for _, q := range before.Questions {
		c.Questions = append(c.Questions, QuestionFate{q, questionFate(q, after, c)})
	}
	return c
}

func sentenceTexts(r *Report) []string {
	var out []string
	for i := range r.Sentences {
		out = append(out, r.Sentences[i].Text)
	}
	return out
}

// Reached reports whether the area got as far as the step.
func (row AreaRow) Reached(s Step) bool {
	switch s {
	case Said:
		return row.Said
	case Detail:
		return row.Detail
	}
	return row.Reason
}

// vagueFates follows the bare judging words of the old draft into the new one.
func vagueFates(before, after *Report, pairs []SentencePair) []VagueFate {
	out := []VagueFate{}
	to, from := map[int]int{}, map[int]int{}
	for _, p := range pairs {
		if p.Old > 0 && p.New > 0 {
			to[p.Old], from[p.New] = p.New, p.Old
		}
	}
	for i := range before.Sentences {
		s := &before.Sentences[i]
		here := map[string][]Vague{} // by their words, those not yet met first
		if n := to[s.N]; n > 0 {
			here = vagueByWords(after.Sentences[n-1].Vague)
		}
		for _, v := range s.Vague {
			fate := VagueFate{Text: v.Text, Fate: FateGone, Old: s.N}
			words := normalise(v.Text)
			if left := here[words]; len(left) > 0 {
				here[words] = left[1:]
				fate.New, fate.Fate = to[s.N], FateStill
				if !left[0].Bare {
					fate.Fate = FateBacked
				}
			}
			if v.Bare {
				out = append(out, fate)
			}
		}
	}
	for i := range after.Sentences {
		s := &after.Sentences[i]
		there := map[string][]Vague{}
		if n := from[s.N]; n > 0 {
			there = vagueByWords(before.Sentences[n-1].Vague)
		}
		for _, v := range s.Vague {
			if v.Bare && len(there[normalise(v.Text)]) == 0 {
				out = append(out, VagueFate{Text: v.Text, Fate: FateNew, New: s.N})
			}
		}
	}
	return out
}

func vagueByWords(list []Vague) map[string][]Vague {
	out := map[string][]Vague{}
	for _, v := range list {
		words := normalise(v.Text)
		out[words] = append(out[words], v)
	}
	return out
}

// questionFate tells whether the new draft answers a question of the old one:
// the step that was asked for is reached, or the judging word is backed up, or
// the danger is no longer told.
func questionFate(q Question, after *Report, c *Comparison) Fate {
	if q.Danger != "" {
		for _, x := range after.Cautions {
			if x.Kind == q.Danger {
				return FateOpen
			}
		}
		return FateGone
	}
	if after.Row(q.Area).Reached(q.Step) {
		return FateAnswered
	}
	if len(q.Quotes) == 0 {
		return FateOpen
	}
	for _, v := range c.Vague {
		if v.Old == q.Sentence && v.Text == q.Quotes[0] {
			switch v.Fate {
			case FateBacked:
				return FateAnswered
			case FateGone:
				return FateGone
			}
			return FateOpen
		}
	}
	for _, p := range c.Sentences {
		if p.Old == q.Sentence && p.New == 0 {
			return FateGone
		}
	}
	return FateOpen
}
