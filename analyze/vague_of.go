package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// judged is the sort of thing that a judgement is of.
type judged int

const (
	judgedFood   judged = iota // a dish, a part of it, or how it strikes one sense
	judgedWork                 // how something was done or went
	judgedPerson               // somebody, for what they did
	judgedAct                  // one thing that was done ("which was clever")
	judgedTime                 // what it was like to do ("fun", "the best bit")
	judgedThing                // a tool or another thing that is no food
)

// judgement is what a judging word is said of.
type judgement struct {
	*vagueWord
	of      judged
	sense   lexicon.Sense // of food judged by one sense; "" where it is the whole
	topic   string        // the part or the portion; "" where it is the whole
	area    lexicon.Area  // of work named by its area ("Safety was good")
	alone   bool          // the sentence is the judgement and nothing else
	deeds   bool          // what was done tells of it too: of a note without noun or verb, of presentation
	dressed bool          // a remark on how it was dressed or laid out ("…, really pretty")
	verb    bool          // it belongs to a verb of doing ("coped well")
	named   namedWork     // a piece of work that has evidence of its own
	than    bool          // it is set against another's ("nicer than mine")
	ours    bool          // the writer's own group is praised ("we did well")
}

// judgementOf decides what a word is said of: what the word itself can be said
// of, then the noun it stands before, the verb it belongs to, and the subject.
func judgementOf(tokens []token, v *vagueWord) judgement {
	j := judgement{vagueWord: v, alone: countWords(tokens) <= v.to-v.from+1, than: setAgainst(tokens, v.to), ours: between(tokens, max(0, v.from-reach/2)-1, v.from, "we", "our", "us")}
	if of, ok := kindOfWord(tokens, v); ok {
		j.of = of
		j.area = judgedArea(tokens, v)
		return j
	}
	if v.to-v.from > 1 && tokens[v.to-1].in("job", "effort", "work", "attempt", "start", "cook", "lad", "lass", "girl", "boy", "call", "move", "choice", "decision", "idea") && j.byNoun(tokens, v.to-1) {
		return j // "top job"
	}
	if v.to < len(tokens) && tokens[v.to].in("session", "lesson", "practical") {
		j.of = judgedWork
		return j
	}
	if sense, ok := senseOfVerb(tokens[v.from].norm); ok && v.to-v.from > 1 {
		j.sense = sense
		return j // "looked the part"
	}
	if v.to < len(tokens) && tokens[v.to].norm == "looking" {
		j.sense = lexicon.Sight
		return j // "a smart looking cake"
	}
	if a := wiseArea(tokens, v.from); a != "" {
		j.of, j.area = judgedWork, a
		return j
	}
	if v.to < len(tokens) && pastime(tokens, v.to) {
		j.of = judgedTime
		return j
	}
	if v.to < len(tokens) && tokens[v.to].norm == "way" && v.from > 1 && tokens[v.from-2].norm == "in" {
		return j // "gritty in a pleasant way"
	}
	if n := shareOf(tokens, v.to); n >= 0 {
		j.topic = topicOf(&tokens[n])
		return j // "a lovely piece of fish"
	}
	if h := phraseHead(tokens, v.to-1); h >= 0 && !tokens[v.to].in("so", "but") && (tokens[h].kind == lexicon.Tool || !portion(&tokens[h])) {
		if j.byNoun(tokens, h) {
			return j
		}
	}
	if of, ok := kindOfVerb(tokens, v); ok {
		j.of, j.verb = of, true
		j.area = judgedArea(tokens, v)
		if start := clauseStart(tokens, v.from); of == judgedWork && j.area == "" && tokens[start].tag == "VBG" && !tokens[start].in("everything") {
			j.named = byHand // "shaping the rolls went badly"
		}
		return j
	}
	if tokens[v.to-1].in("disaster", "catastrophe", "fail", "shambles", "flop", "nightmare", "fiasco") {
		j.deeds = true // what was done to it tells of it: "a disaster, I dropped it"
	}
	if p := predicateOf(tokens, v.from); p >= 0 {
		j.sense, _ = senseOfVerb(tokens[p].norm)
		n := subject(tokens, p)
		if n < 0 && p > 0 && (tokens[p-1].tag == "VBG" || tokens[p-1].norm == "up") {
			n = p - 1 // "the clearing up was", "the filleting was"
		}
		if n >= 0 {
			j.bySubject(tokens, n, p)
		}
		return j
	}
	j.byNote(tokens)
	return j
}

// byNote judges where a note has no verb that the tagger knows: by the words
// before ("smelt amazing", "spuds spot on") or by its heading.
func (j *judgement) byNote(tokens []token) {
	for i := j.from - 1; i >= max(0, j.from-2); i-- {
		if tokens[i].pause() && i > 1 {
			break // "bland before the lemon, perfect after"
		}
		if sense, ok := senseOfVerb(tokens[i].norm); ok {
			j.sense = sense
			return
		}
		if t := &tokens[i]; t.in("bit", "touch", "little") {
			return // "bit samey": how much
		} else if i > 0 && t.in("batch", "one", "lot", "try", "go") && someOf(tokens[i-1].norm) {
			j.topic = tokens[i-1].norm // "second batch tidy"
			return
		} else if t.isNoun() && t.kind.Food() {
			j.topic = topicOf(t)
			return
		} else if t.isNoun() && t.kind == lexicon.NoKind && i == 0 {
			if !j.byName(t) {
				j.topic = t.norm
			}
			return
		}
	}
	j.deeds = true
	j.dressed = tokens[j.from].in("pretty", "fancy", "handsome", "attractive", "posh", "smart", "elegant", "classy", "professional")
	if sense, ok := headingSense(tokens); ok {
		j.sense = sense
	} else if a := headingArea(tokens); contains(workAreas(), a) {
		j.of, j.area = judgedWork, a
	}
}

// kindOfWord returns what some judging words are always said of.
func kindOfWord(tokens []token, v *vagueWord) (judged, bool) {
	first, last := &tokens[v.from], &tokens[v.to-1]
	switch {
	case v.to-v.from == 2 && first.norm == "well" && last.norm == "done":
		return judgedPerson, true
	case first.norm == "fair" && last.norm == "play":
		return judgedPerson, true
	case first.norm == "well" && v.to-v.from == 2 && last.norm != "presented":
		return judgedWork, true
	case last.norm == "sailing", last.norm == "plan" && v.to-v.from > 1, last.in("clockwork", "hitch", "smoothly"):
		return judgedWork, true
	case last.norm == "fun":
		return judgedTime, true
	case last.in("clever", "cleverly"):
		return judgedAct, true
	}
	if last.in("best", "worst", "nicest", "hardest") && v.to < len(tokens) && tokens[v.to].in("bit", "part", "thing") {
		// "The best bit was the skin" names food; "the best bit was eating it"
		// and "which was the best bit" do not.
		if p := predicateOf(tokens, v.from); p >= 0 {
			n := subject(tokens, p)
			return judgedTime, n < 0 || tokens[n].in("which", "that", "this") || doneThing(tokens, n, p) || !tokens[n].kind.Food() && !tokens[n].in("it", "they")
		}
	}
	if last.in("best", "worst") && v.from > 2 && v.to < len(tokens) && tokens[v.to].in("bit", "part") && (v.to+1 == len(tokens) || !tokens[v.to+1].word) && actBefore(tokens, v.from) {
		return judgedTime, predicateOf(tokens, v.from) < 0 // "I licked the spoon, best part!"
	}
	return judgedFood, false
}

// byNoun judges by the noun that a word stands before ("a good texture", "nice
// timing", "that dreadful pan").
func (j *judgement) byNoun(tokens []token, n int) bool {
	t := &tokens[n]
	if n+1 < len(tokens) && t.kind == lexicon.Tool && tokens[n+1].norm == "of" {
		if h := objectHead(tokens, n+1); h >= 0 && tokens[h].kind.Food() {
			j.topic = topicOf(&tokens[h]) // "a cracking bowl of stew"
			return true
		}
	}
	if j.byName(t) {
		return true
	}
	switch {
	case t.in("job", "effort", "work", "start", "try", "attempt", "going", "lad", "lass", "cook", "boy", "girl", "chef"):
		j.of = judgedPerson
	case workPlace(tokens, n):
		j.of, j.named = judgedWork, tidying
	case pastime(tokens, n):
		j.of = judgedTime
	case t.in("go", "lesson", "session", "teamwork", "progress", "experience"):
		j.of = judgedWork
	case t.in("idea", "touch", "move", "thinking", "way", "decision", "trick", "plan", "call", "choice"):
		j.of = judgedAct
	case t.kind.Food():
		j.topic = topicOf(t)
	case t.kind == lexicon.Person:
		j.of = judgedPerson
	case t.kind == lexicon.Tool || t.kind == lexicon.Cloth || t.kind == lexicon.Place:
		j.of = judgedThing
	default:
		return false
	}
	return true
}

// kindOfVerb judges by a verb of doing that the word belongs to ("it went
// well", "he did good", "worked a treat", "crimped better than mine").
func kindOfVerb(tokens []token, v *vagueWord) (judged, bool) {
	start := clauseStart(tokens, v.from)
	if (tokens[v.from].in("better", "worse", "badly", "best") && tokens[v.from].isAdv() || v.from > 0 && tokens[v.from].in("bad", "good", "rubbish") && tokens[v.from-1].in("it", "them")) && somebodyWorks(tokens, start, v.from) {
		return judgedWork, true // "line the tin better"
	}
	if tokens[v.from].in("poorly", "badly", "well", "brilliantly", "beautifully", "perfectly") && between(tokens, start-1, v.from, "managed", "organised", "planned", "timed", "handled", "used") && tokens[start].human() {
		return judgedWork, true // "I managed my time poorly"
	}
	for i := v.from - 1; i >= start && i >= v.from-4; i-- {
		t := &tokens[i]
		switch {
		case t.in("did", "done", "do", "does", "cope", "coped"):
			return judgedPerson, true
		case t.in("came", "come", "turned", "turn"):
			return judgedFood, false
		case t.in("worked", "works", "work", "managed", "manage"):
			return judgedWork, true
		case t.in("went", "go", "goes", "gone") && tokens[i+1].norm == "down":
			return judgedFood, true // how it was liked
		case t.in("went", "go", "goes", "gone"):
			if v.to+1 < len(tokens) && tokens[v.to].norm == "with" {
				return judgedFood, true // "went lovely with the chilli"
			}
			n := subject(tokens, i)
			return judgedWork, n < 0 || !tokens[n].kind.Food() || tokens[n].kind == lexicon.DishNoun
		case t.in("kitchen", "worktop", "worktops", "bench", "side", "sides", "sink", "room") && between(tokens, start, i, "left", "kept", "keep", "leave"):
			return judgedWork, true // "I left the kitchen ok"
		case linkingVerb(t.norm) || t.isNoun():
			return judgedFood, false
		}
	}
	if v.from > 0 && foodDoes(tokens, v.from) {
		return judgedFood, true // "set really well"
	}
	return judgedWork, tokens[v.from].norm == "well" || strings.HasSuffix(tokens[v.from].norm, "ly") && tokens[v.from].norm != "lovely" && tokens[start].human()
}

// foodDoes reports whether the adverb at token i stands by a verb of what food
// does by itself.
func foodDoes(tokens []token, i int) bool {
	for k := i - 1; k >= 0 && k >= i-2; k-- {
		if tokens[k].in("set", "sets", "rose", "rises", "risen", "thickened", "puffed", "froze", "keeps", "kept", "melted", "reheated") {
			n := subject(tokens, k)
			return n < 0 || !tokens[n].human()
		}
	}
	return false
}

// byName judges by a noun that names a sense or an area of work.
func (j *judgement) byName(t *token) bool {
	if s, ok := senseOfNoun(t.norm); ok {
		j.sense, j.deeds = s, laidOut(t)
		return true
	}
	if laidOut(t) {
		j.sense, j.deeds = lexicon.Sight, true
		return true
	}
	if a := areaOfNoun(t.norm); a != "" {
		j.of, j.area = judgedWork, a
		return true
	}
	return false
}

// somebodyWorks reports whether somebody works on something in tokens[from:to].
func somebodyWorks(tokens []token, from, to int) bool {
	somebody := from < to && tokens[from].card.works && !tokens[from].isNoun() // "grease the tin better"
	for i := from; i < to; i++ {
		somebody = somebody || tokens[i].human()
		if somebody && tokens[i].card.works && !linkingVerb(tokens[i].norm) {
			return true
		}
	}
	return false
}

// bySubject judges by the subject at token n of the verb at token p.
func (j *judgement) bySubject(tokens []token, n, p int) {
	t := &tokens[n]
	if named := nameOfWork(tokens, n, p); named != "" {
		j.of, j.named = judgedWork, named
		return
	}
	if j.byName(t) {
		return
	}
	switch {
	case doneThing(tokens, n, p) || gerund(t):
		j.of = judgedTime
		if !tokens[j.to-1].in("fun", "boring", "enjoyable", "best", "worst", "part", "bit") {
			j.named = byHand
		}
		if n > 0 && n == p-1 && tokens[n-1].tag == "PRP$" {
			j.of = judgedWork // "my piping was shocking"
		}
	case t.human() && !(t.isNoun() && t.tag == "NNS" && n > 0 && tokens[n-1].tag == "PRP$"):
		j.of = judgedPerson // but "my sisters was nice": her portion
	case t.in("this", "that", "which") && n > 0 && actBefore(tokens, n), !t.kind.Food() && relative(tokens, p) && actBefore(tokens, n):
		j.of = judgedAct
	case t.isNoun() && !t.kind.Food() && !portion(t) && t.kind != lexicon.Tool && n > 0 && tokens[n-1].in("my", "your", "his", "her", "their"):
		j.of = judgedWork // "my timing was not good", and in any spelling
	case t.inert() && !portion(t):
		j.of = judgedThing
	case pickedOut(tokens, n):
		j.topic = t.norm // "that bit", "the pink half"
	default:
		j.topic = topicOf(t)
		if n > 0 && topicOf(&tokens[n-1]) != "" && !tokens[n-1].kind.Food() {
			j.topic = tokens[n-1].norm // "the first one"
		}
	}
}

// relative reports whether the clause of token i hangs on the one before by
// "which".
func relative(tokens []token, i int) bool {
	start := clauseStart(tokens, i)
	return start > 0 && tokens[start-1].norm == "which"
}

// actBefore reports whether the clause before token i tells what somebody did.
func actBefore(tokens []token, i int) bool {
	for k := i - 1; k >= 0 && k >= i-reach; k-- {
		if didThing(tokens, k) {
			return true
		}
	}
	return false
}

// didThing reports whether token i is a verb of what somebody did, not of being,
// saying, liking or eating.
func didThing(tokens []token, i int) bool {
	t := &tokens[i]
	object := i+1 < len(tokens) && (tokens[i+1].tagIn("DT", "PRP$", "CD") || tokens[i+1].isNoun() || tokens[i+1].kind.Food() || tokens[i+1].in("it", "them"))
	if t.tag == "VBG" && i > 0 {
		n := subject(tokens, i)
		return n >= 0 && tokens[n].human() && afterLinkingVerb(tokens, i) // "I was still washing up"
	}
	if !t.tagIn("VBD", "VBZ", "VBP", "VBN") || linkingVerb(t.norm) && !(object && t.in("turned", "kept", "keep", "turn", "got")) {
		return false
	}
	switch t.stem {
	case "do", "did", "done":
		if i+2 < len(tokens) && tokens[i+1].tagIn("DT", "PRP$") && tokens[i+2].isNoun() {
			break // "did my homework while it baked"
		}
		return false
	case "say", "said", "tell", "told", "think", "thought", "know", "knew", "like", "love", "enjoy", "want", "hope", "guess", "eat", "ate", "have", "has", "had",
		"prefer", "ask", "reckon", "wish", "agre", "agree", "finish", "deserv", "need", "seem", "work":
		return false
	}
	n := subject(tokens, i)
	return n < 0 || tokens[n].human()
}

// topicOf returns the noun where it names a part, an ingredient, or some of
// several ("the second", "the rest"); a dish is the whole.
func topicOf(t *token) string {
	if someOf(t.norm) {
		return t.norm
	}
	if portion(t) {
		return ""
	}
	if t.kind == lexicon.PartNoun || t.kind == lexicon.Ingredient {
		return t.norm
	}
	return ""
}
