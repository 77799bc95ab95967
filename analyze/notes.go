package analyze

import (
	"slices"

	"saywhy/lexicon"
)

// Notes is a reading with what is needed to set it beside other texts: of the
// same writer at another time, or of another person about the same dish.
type Notes struct {
	Report    *Report
	Plans     []Plan     // as Analyzer.Plans returns them
	Qualities []Quality  // in text order
	Topics    [][]string // of each sentence, the words by which a plan is known; see SpeaksOf
	LooksBack bool       // the text speaks of the time before in so many words
}

// Quality is a sensory word with the thing it is said of.
type Quality struct {
	Sensory
	Sentence int    // from 1
	Of       string // the part or ingredient, in the singular ("crust"); "" for the dish as a whole
	Other    bool   // said of a dish made another time
	Partly   bool   // only a degree of it is denied: "not too sweet"
}

// Note reads one text as Read does and keeps its notes.
func (a *Analyzer) Note(in Input, brief Brief) *Notes {
	r := a.reading(in, brief)
	defer a.end(r)
	n := &Notes{Report: r.report(), Plans: a.plansIn(r), Topics: r.topics(), LooksBack: r.speaksOfLastTime()}
	for i := range r.sentences {
		s := &r.sentences[i]
		for k, w := range s.sensory {
			n.Qualities = append(n.Qualities, Quality{
				Sensory: n.Report.Sentences[i].Sensory[k], Sentence: s.n, Of: a.describedThing(s.tokens, w), Other: w.other, Partly: w.denied && onlyHowMuch(s.tokens, w.from),
			})
		}
	}
	return n
}

// SpeaksOf reports whether the text speaks of what an earlier plan was about:
// a sentence of it, or two that stand together, hold at least half of the
// plan's things and deeds, and two if there are so many.
func (n *Notes) SpeaksOf(p Plan) bool { return spokenOf(p, n.Topics) }

// describedThing returns what a sensory word is said of: the noun it stands
// before, the inside or outside if its clause names them, or else the subject of
// its clause. The dish itself, a pronoun, and
// what names only a sense ("the texture") stand for the dish as a whole.
func (a *Analyzer) describedThing(tokens []token, w sensoryWord) string {
	at := -1
	if !tokens[w.from].isVerbForm() {
		at = phraseHead(tokens, w.to-1)
		if tokens[w.to-1].isNoun() && at != w.to {
			at = -1 // a noun itself: only what follows at once is described by it
		}
	}
	named := at >= 0 && !within(&tokens[at])
	for j := clauseStart(tokens, w.from); !named && j < len(tokens) && j <= w.to; j++ {
		if within(&tokens[j]) {
			return tokens[j].norm // "inside it was soft", "soggy underneath"
		}
	}
	if at < 0 {
		v := predicateOf(tokens, w.from)
		if v < 0 && tokens[w.from].isVerb() {
			v = w.from
		}
		if v >= 0 {
			at = subject(tokens, v)
		}
	}
	if at < 0 || !tokens[at].isNoun() {
		return ""
	}
	t := &tokens[at]
	if _, sense := senseOfNoun(t.norm); sense || t.kind == lexicon.DishNoun || t.kind == lexicon.NoKind {
		return ""
	}
	return t.stem
}

func within(t *token) bool { return t.in("inside", "outside", "underneath") }

// onlyHowMuch reports whether the word before token i only says how much of it.
func onlyHowMuch(tokens []token, i int) bool {
	return i > 0 && tokens[i-1].in("too", "very", "so", "that", "really", "overly", "particularly", "especially", "quite", "completely", "totally", "all")
}

// topics lists the topic words of every sentence.
func (r *reading) topics() [][]string {
	out := make([][]string, len(r.sentences))
	for i := range r.sentences {
		out[i] = topicWords(r.sentences[i].tokens)
	}
	return out
}

// spokenOf reports whether a sentence, or two that stand together, hold at
// least half of what the plan is about, and two words of it if it has so many.
func spokenOf(p Plan, topics [][]string) bool {
	need := max((len(p.topic)+1)/2, min(2, len(p.topic)))
	for i := range topics {
		n := 0
		for _, w := range p.topic {
			if slices.Contains(topics[i], w) || i+1 < len(topics) && slices.Contains(topics[i+1], w) {
				n++
			}
		}
		if n >= need {
			return true
		}
	}
	return false
}
