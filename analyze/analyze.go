// Package analyze reads an evaluation by rules and reports how far each area
// of it got, with a few questions for its writer.
//
// It is pure: from text, lexicon and brief to report, with no files, network,
// clock or package variables. A text passes through the steps that Analyzer
// lists, in order; each step is a small value in a file of its own.
package analyze

import (
	"sync"

	"saywhy/lexicon"
)

// Input is one text to read.
type Input struct {
	Text  string
	Title string // what was cooked, as the writer calls it; may be empty
	Role  Role   // Learner when empty
}

// Brief is what an evaluation is read for.
type Brief struct {
	Dish      lexicon.Dish
	Questions int  // how many to ask at once; 0 asks all there are
	Silent    bool // asks and praises nothing, for a report that nobody answers

	After *Report // of an earlier draft whose questions are not asked again; may be nil
	Last  []Plan  // of the writer's evaluation before this one; see Plans
}

// Analyzer reads texts. It is built once, never changes and is safe for many
// goroutines.
type Analyzer struct {
	lex    *lexicon.Lexicon
	words  *vocabulary
	tagger Tagger
	spare  sync.Pool // of *[]token: what readings that are over have left
}

// New builds an Analyzer. It costs some tens of milliseconds, so share it.
func New(lex *lexicon.Lexicon, tagger Tagger) *Analyzer {
	return &Analyzer{lex: lex, words: newVocabulary(lex, tagger), tagger: tagger}
}

// Read reads one text for a brief. The same input gives the same report,
// whatever the text is like; no input makes it fail.
func (a *Analyzer) Read(in Input, brief Brief) *Report {
	r := a.reading(in, brief)
	defer a.end(r)
	return r.report()
}

// reading takes a text through all steps.
func (a *Analyzer) reading(in Input, brief Brief) *reading {
	if in.Role == "" {
		in.Role = Learner
	}
	r := &reading{Input: in, brief: brief}
	for _, s := range a.steps() {
		s.read(r)
	}
	return r
}

// end gives back what a reading has borrowed, after which nobody may look into
// its sentences.
func (a *Analyzer) end(r *reading) {
	clear(*r.tokens)
	*r.tokens = (*r.tokens)[:0]
	a.spare.Put(r.tokens)
	r.sentences = nil
}

// step adds one layer to a reading.
type step interface{ read(*reading) }

// steps lists what a text passes through, in order. A step uses only what
// those before it have added.
func (a *Analyzer) steps() []step {
	return []step{
		splitter{},          // text → sentences
		tokenizer{&a.spare}, // sentences → words and marks
		tagging{tagger: a.tagger, words: a.words}, // tags, stems, kinds of noun
		sensing{words: a.words},                   // words for the food as sensed
		judging{words: a.words},                   // words that judge
		means{words: a.words},                     // how
		reasons{words: a.words},                   // why
		areas{words: a.words},                     // what each sentence speaks of
		backing{},                                 // which judging words stay bare
		table{},                                   // the three steps for the ten areas
		cautioning{words: a.words},                // what an adult ought to look at
		asking{words: a.words},                    // questions
	}
}

// reading is a text with the layers the steps have added so far. The text
// itself is never changed; everything points into it.
type reading struct {
	Input
	brief     Brief
	sentences []sentence
	tokens    *[]token // of all sentences; borrowed, see Analyzer.end
	rows      []AreaRow
	cautions  []Caution
	titled    []hit // what in the title may have to do with a danger
	questions []Question
	praise    []string
}

// sentence is one sentence with its layers.
type sentence struct {
	span
	n       int
	tokens  []token
	meets   numbers     // the places that patterns cannot do without, as far as some word fits them
	listed  []candidate // every form of the sensory list, whatever it describes
	sensory []sensoryWord
	vague   []vagueWord
	how     []clause
	why     []clause
	signs   []sign
	dangers []hit          // everything that may have to do with a danger
	areas   []lexicon.Area // in the order of lexicon.Areas
}

// has reports whether the sentence speaks of the area.
func (s *sentence) has(a lexicon.Area) bool {
	for _, b := range s.areas {
		if a == b {
			return true
		}
	}
	return false
}

func (r *reading) report() *Report {
	out := &Report{
		Dish: r.brief.Dish.Name, Title: r.Title, Role: r.Role,
		Sentences: make([]Sentence, 0, len(r.sentences)), Areas: r.rows, Questions: r.questions, Cautions: r.cautions, Praise: r.praise,
	}
	for i := range r.sentences {
		s := &r.sentences[i]
		o := Sentence{
			N: s.n, Start: s.start, End: s.end, Text: r.Text[s.start:s.end],
			Areas: s.areas, Vague: []Vague{}, Sensory: []Sensory{}, How: []Phrase{}, Why: []Reasoning{},
		}
		if o.Areas == nil {
			o.Areas = []lexicon.Area{}
		}
		out.Words += countWords(s.tokens)
		for _, v := range s.vague {
			o.Vague = append(o.Vague, Vague{v.start, v.end, r.Text[v.start:v.end], v.bare})
		}
		for _, w := range s.sensory {
			o.Sensory = append(o.Sensory, Sensory{w.start, w.end, r.Text[w.start:w.end], w.sense, w.word, w.denied, w.supposed})
		}
		for _, h := range s.how {
			o.How = append(o.How, Phrase{h.start, h.end, r.Text[h.start:h.end]})
		}
		for _, w := range s.why {
			o.Why = append(o.Why, Reasoning{w.start, w.end, r.Text[w.start:w.end], w.explains})
		}
		out.Sentences = append(out.Sentences, o)
	}
	if out.Questions == nil {
		out.Questions = []Question{}
	}
	if out.Cautions == nil {
		out.Cautions = []Caution{}
	}
	return out
}
