package analyze

import (
	"saywhy/lexicon"
)

// backing decides which judging words stay bare: nothing specific about the
// same thing is said in the sentence or the one right after.
type backing struct{}

func (d backing) read(r *reading) {
	for i := range r.sentences {
		s := &r.sentences[i]
		var next *sentence
		if i+1 < len(r.sentences) {
			next = &r.sentences[i+1]
		}
		for n := range s.vague {
			v := &s.vague[n]
			v.bare = !d.backed(s, next, v)
		}
	}
}

// backed reports whether the judged thing is told of.
func (d backing) backed(s, next *sentence, v *vagueWord) bool {
	sense, sensed := judgedSense(s.tokens, v)
	topic := judgedTopic(s.tokens, v)
	if sensed {
		if d.senses(s, sense) {
			return true
		}
		return next != nil && d.senses(next, sense) && goesOn(next, topic)
	}
	if d.specific(s, v) {
		return true
	}
	return next != nil && goesOn(next, topic) && d.tells(next, v)
}

// senses reports whether the sentence describes by the sense.
func (d backing) senses(s *sentence, sense lexicon.Sense) bool {
	for _, w := range s.sensory {
		if w.sense == sense && !w.supposed && !w.other {
			return true
		}
	}
	return false
}

// specific reports whether the judging word's own sentence says something
// concrete besides it.
func (d backing) specific(s *sentence, v *vagueWord) bool {
	for _, w := range s.sensory {
		if !w.other && (w.to <= v.from || w.from >= v.to) {
			return true
		}
	}
	if len(s.why) > 0 || len(s.how) > 0 {
		return true
	}
	for _, g := range s.signs {
		if g.told && g.area != lexicon.Improvement && (g.to <= v.from || g.from >= v.to) {
			return true
		}
	}
	return false
}

// tells reports whether the next sentence describes the food.
func (d backing) tells(s *sentence, v *vagueWord) bool {
	for _, w := range s.sensory {
		if !w.supposed && !w.other {
			return true
		}
	}
	return false
}

// judgedSense returns the sense a judgement speaks of: by its verb ("tasted
// nice"), its noun ("a good texture") or its subject ("the colour was lovely").
func judgedSense(tokens []token, v *vagueWord) (lexicon.Sense, bool) {
	if h := phraseHead(tokens, v.to-1); h >= 0 {
		if s, ok := senseOfNoun(tokens[h].norm); ok {
			return s, true
		}
	}
	if p := predicateOf(tokens, v.from); p >= 0 {
		if s, ok := senseOfVerb(tokens[p].norm); ok {
			return s, true
		}
		if n := subject(tokens, p); n >= 0 {
			if s, ok := senseOfNoun(tokens[n].norm); ok {
				return s, true
			}
		}
	}
	return "", false
}

// judgedTopic returns the noun a judgement is of, or "" where it is the whole.
func judgedTopic(tokens []token, v *vagueWord) string {
	if h := phraseHead(tokens, v.to-1); h >= 0 && tokens[h].kind.Food() {
		return topicOf(&tokens[h])
	}
	if p := predicateOf(tokens, v.from); p >= 0 {
		if n := subject(tokens, p); n >= 0 && tokens[n].isNoun() {
			return topicOf(&tokens[n])
		}
	}
	return ""
}

// topicOf returns the noun where it names a part or an ingredient; a dish is
// the whole.
func topicOf(t *token) string {
	if t.kind == lexicon.PartNoun || t.kind == lexicon.Ingredient {
		return singular(t.norm)
	}
	return ""
}

// goesOn reports whether a sentence can still speak of the topic: it has no
// other part of the food as its first noun.
func goesOn(s *sentence, topic string) bool {
	if topic == "" {
		return true
	}
	for i := range s.tokens {
		t := &s.tokens[i]
		if t.in("it", "they", "this", "these") {
			return true
		}
		if t.isNoun() && t.kind.Food() {
			return singular(t.norm) == topic
		}
	}
	return true
}
