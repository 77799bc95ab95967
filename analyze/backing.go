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
	if v.to+1 < len(s.tokens) && s.tokens[v.to].norm == "to" && s.tokens[v.to+1].in("have", "see", "cook", "watch", "hear", "spend", "get", "work") {
		return false // "it was lovely to have you": of the day, not of the dish
	}
	if namesWhat(s, v) {
		return true
	}
	sense, sensed := judgedSense(s.tokens, v)
	topic := judgedTopic(s.tokens, v)
	if next != nil && next.has(lexicon.Improvement) {
		next = nil // a wish for next time tells nothing of what was judged
	}
	if a := judgedWork(s.tokens, v); a != "" {
		return tellsOf(s, a) || next != nil && tellsOf(next, a)
	}
	if sensed {
		if d.senses(s, sense) {
			return true
		}
		return next != nil && d.senses(next, sense) && goesOn(next, topic)
	}
	if d.specific(s, v) {
		return true
	}
	if next == nil {
		return false
	}
	if work, ofWork := judgedDoing(s.tokens, v); ofWork {
		return !work && toldWork(next)
	}
	return goesOn(next, topic) && d.tells(next, v)
}

// namesWhat reports whether the judgement is a heading for what follows ("What
// went well: the shape", "What I did well:"): what is meant is named there.
func namesWhat(s *sentence, v *vagueWord) bool {
	if v.to >= len(s.tokens) || s.tokens[v.to].norm != ":" {
		return false
	}
	for j := v.from - 1; j >= 0 && j >= v.from-4; j-- {
		if s.tokens[j].norm == "what" {
			return true
		}
	}
	return false
}

// judgedWork returns the area that a judgement names ("Safety was good").
func judgedWork(tokens []token, v *vagueWord) lexicon.Area {
	p := predicateOf(tokens, v.from)
	if p < 0 {
		return ""
	}
	n := subject(tokens, p)
	if n < 0 {
		return ""
	}
	switch tokens[n].norm {
	case "safety":
		return lexicon.Safety
	case "hygiene", "cleanliness":
		return lexicon.Hygiene
	case "organisation", "timing", "planning", "timekeeping":
		return lexicon.Organisation
	case "independence":
		return lexicon.Independence
	case "technique", "chopping", "kneading", "skills", "rolling":
		return lexicon.Technique
	}
	return ""
}

// judgedDoing reports whether a judgement is of what somebody did ("He did
// well", "It went badly") and, if so, whether of the person as a whole.
func judgedDoing(tokens []token, v *vagueWord) (person, ok bool) {
	for j := v.from - 1; j >= 0 && j >= v.from-4; j-- {
		if tokens[j].in("went", "go", "goes", "worked") {
			return false, true
		}
		if tokens[j].in("did", "done", "do", "cope", "coped") {
			return true, true
		}
	}
	return false, tokens[v.from].norm == "well" && v.to-v.from == 2
}

func tellsOf(s *sentence, a lexicon.Area) bool {
	for _, g := range s.signs {
		if g.area == a && g.told {
			return true
		}
	}
	return false
}

func toldWork(s *sentence) bool {
	for _, a := range []lexicon.Area{lexicon.Technique, lexicon.Organisation, lexicon.Hygiene, lexicon.Safety, lexicon.Independence} {
		if tellsOf(s, a) {
			return true
		}
	}
	return false
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
		if !w.other && (w.to <= v.from || w.from >= v.to) && !contrasted(s.tokens, v, w.from) {
			return true
		}
	}
	if len(s.how) > 0 {
		return true
	}
	for _, g := range s.signs {
		if g.told && g.area != lexicon.Improvement && (g.to <= v.from || g.from >= v.to) && !contrasted(s.tokens, v, g.from) {
			return true
		}
	}
	return false
}

// contrasted reports whether a description at token at stands behind "but" and of another
// thing: "it was nice but the middle was raw" tells of the middle, and "nice"
// stays without a word to back it. "Nice but a bit dry" speaks of the same.
func contrasted(tokens []token, v *vagueWord, at int) bool {
	for j := v.to; j < at && j < v.to+reach; j++ {
		if !tokens[j].in("but", "however", "although", "though", "except") || j+1 >= len(tokens) {
			continue
		}
		p := predicateOf(tokens, at)
		if p < j {
			return false
		}
		n := subject(tokens, p)
		return n > j && !tokens[n].in("it", "they", "this", "that", "these", "i", "we", "you", "he", "she")
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
	if t.in("slice", "piece", "bite", "mouthful", "plate", "portion", "batch", "meal", "one", "result", "bit", "part") {
		return ""
	}
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
