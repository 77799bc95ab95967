package analyze

import (
	"slices"
	"strings"

	"saywhy/lexicon"
)

// doubt knows where the text may answer already in words that no list has. A
// question that the writer has answered costs more trust than one that is not
// asked, so what is in doubt is held back.
type doubt struct {
	words *vocabulary
	r     *reading
	weak  map[lexicon.Area]int // how many words hint at it
	nosed bool                 // the nose is spoken of
	heard []bool               // by sentence: somebody else's words; asked for each question
	away  bool                 // an adult who did not see the work
	uneat bool                 // the writer did not eat of it
}

func newDoubt(words *vocabulary, r *reading) *doubt {
	thens := 0
	d := &doubt{words: words, r: r, weak: map[lexicon.Area]int{}, heard: make([]bool, len(r.sentences))}
	for i := range r.sentences {
		d.mark(&r.sentences[i])
		d.heard[i] = r.sentences[i].reportsSpeech(r.Text)
		thens += r.sentences[i].thens()
		d.uneat = d.uneat || r.sentences[i].leftToOthers()
		d.away = d.away || r.Role == Adult && r.sentences[i].missedIt()
	}
	if listedSteps(r.Text) >= fewestSteps {
		d.weak[lexicon.Organisation] += fewestSteps // a list of steps shows their order
	}
	if thens > 1 {
		d.weak[lexicon.Organisation] += thens // "… then … then …": the order is told
	}
	return d
}

// leftToOthers reports whether the writer tells of not having eaten of the dish: "I dont
// like fish much", "my brother ate mine".
func (s *sentence) leftToOthers() bool {
	for i := range s.tokens {
		t := &s.tokens[i]
		if t.in("ate", "had", "eat") && tokensIn(s.tokens, i+1, "mine") && i > 0 && s.tokens[i-1].human() && s.tokens[i-1].norm != "i" {
			return true
		}
		if t.in("dont", "didnt", "cant", "n't", "not", "never", "hate", "havent") && i > 0 && restHas(s.tokens, max(0, i-2), 1, "i") {
			next := after(s.tokens, i, 1)
			if t.norm == "hate" && next.kind.Food() || next.in("like", "eat", "try", "tasted", "taste", "tried", "eaten") && after(s.tokens, i, 2).kind.Food() ||
				next.in("eat", "try", "tasted", "tried", "eaten") && restHas(s.tokens, i+2, 1, "it", "any", "one", "them", "mine") {
				return true
			}
		}
	}
	return false
}

// missedIt reports whether an adult tells of not having been there while the cook
// worked: "I only saw the end of it".
func (s *sentence) missedIt() bool {
	for i := range s.tokens {
		t := &s.tokens[i]
		first := i == 0 || s.tokens[i-1].in("i", "we") || i > 1 && s.tokens[i-2].in("i", "we")
		switch {
		case t.norm == "only" && (tokensIn(s.tokens, i+1, "saw", "caught", "watched") && restHas(s.tokens, i+2, 5, "end", "tail", "last", "finish", "finished", "half", "part", "bits", "result") || tokensIn(s.tokens, i+1, "came", "there", "here", "back", "home")):
			return true
		case first && t.in("missed") && tokensIn(s.tokens, i+1, "most", "the", "all", "it"):
			return true
		case first && t.norm == "was" && tokensIn(s.tokens, i+1, "n't", "not") && tokensIn(s.tokens, i+2, "there", "here", "in", "home", "around", "about", "watching"),
			first && t.in("wasnt", "wasn't") && tokensIn(s.tokens, i+1, "there", "here", "in", "home", "around", "about", "watching"):
			return true
		case first && t.in("didnt", "did") && (tokensIn(s.tokens, i+1, "see") || tokensIn(s.tokens, i+1, "n't", "not") && tokensIn(s.tokens, i+2, "see")) && restHas(s.tokens, i, 6, "it", "much", "most", "all", "making", "cook", "cooking", "him", "her", "them"):
			return true
		case first && t.norm == "was" && tokensIn(s.tokens, i+1, "out", "upstairs", "working", "asleep", "away", "elsewhere"),
			first && t.norm == "was" && tokensIn(s.tokens, i+1, "at", "on") && restHas(s.tokens, i, 6, "work", "shift", "shifts", "nights", "lates", "late", "call"):
			return true
		case t.norm == "got" && tokensIn(s.tokens, i+1, "home", "in", "back") && restHas(s.tokens, i, 9, "when", "until", "before", "by", "time", "already", "from", "late"):
			return true
		}
	}
	return false
}

// fewestSteps is how many lines of a list show the order of the work.
const fewestSteps = 3

// listedSteps counts the lines of a text that a dash, a dot or a number opens.
func listedSteps(text string) int {
	n := 0
	for line := range strings.Lines(text) {
		line = strings.TrimSpace(line)
		rest := strings.TrimLeft(line, "0123456789")
		if numbered := rest != line && strings.HasPrefix(strings.TrimLeft(rest, ".)"), " ") && rest[0] != ' '; numbered || strings.HasPrefix(line, "- ") || strings.HasPrefix(line, "* ") || strings.HasPrefix(line, "•") {
			n++
		}
	}
	return n
}

// mark notes the areas that something in the sentence could show, although it
// did not count: a describing word said of something else, a cue in passing.
func (d *doubt) mark(s *sentence) {
	for _, c := range s.listed {
		for _, r := range c.readings {
			d.weak[r.sense.Area()]++
		}
	}
	for i := range s.tokens {
		t := &s.tokens[i]
		if sense, ok := senseOfNoun(t.norm); ok {
			d.weak[sense.Area()]++
		}
		if a := d.hintsAt(t); a != "" {
			d.weak[a]++
			d.nosed = d.nosed || a == lexicon.Aroma
		}
		if t.tagIn("JJR", "RBR") && !(i+1 < len(s.tokens) && s.tokens[i+1].norm == "than") {
			d.weak[lexicon.Improvement]++ // "so a lower shelf"
		}
		if t.card.works && i+2 == len(s.tokens)-1 && i > 0 && s.tokens[i-1].norm == "so" && strings.HasSuffix(s.tokens[i+1].norm, "er") {
			d.weak[lexicon.Improvement]++ // "in big lumps so cut finer"
		}
		if t.in("more", "less", "much", "enough") && i+1 < len(s.tokens) && s.tokens[i+1].kind.Food() {
			d.weak[lexicon.Taste]++ // "a little more lemon"
		}
		if worksTogether(s.tokens, i) {
			d.weak[lexicon.Independence]++
		}
		if t.in("everything", "all") && i+2 < len(s.tokens) && (tokensIn(s.tokens, i+1, "apart", "except", "but", "bar", "myself", "alone")) {
			d.weak[lexicon.Independence]++ // "I did everything apart from the tray"
		}
		if t.in("cloud", "whiff", "waft", "wafted", "wave") && i+1 < len(s.tokens) && s.tokens[i+1].norm == "of" {
			d.nosed = true // "a cloud of cardamom came out"
		}
		if i == 0 && t.in("will", "would", "must", "should", "could", "need", "gonna") {
			d.weak[lexicon.Improvement]++ // "Will do it slower."
		}
		if i == 0 && len(s.tokens) > 2 && (t.tagIn("VB", "VBP") && t.card.works || t.opensAdvice()) && !s.tokens[1].isVerb() && !t.pause() {
			d.weak[lexicon.Improvement]++ // "Chill them for half an hour": advice to oneself
		}
		if t.in("different", "separate", "fresh", "own", "new", "another") && i+1 < len(s.tokens) && s.tokens[i+1].kind == lexicon.Tool {
			d.weak[lexicon.Hygiene]++ // "three different spoons"
		}
		if t.isVerb() && t.card.works && !t.in("taste", "tasted", "tastes", "check", "checked", "wash", "washed", "wipe", "wiped", "weighed", "measured", "tested") {
			d.weak[lexicon.Technique]++
		}
	}
	if last := &s.tokens[len(s.tokens)-1]; last.norm == "!" && (s.tokens[0].opensAdvice() || s.tokens[0].in("read", "put")) {
		d.weak[lexicon.Improvement]++ // "Read to the end of the recipe!"
	}
	if contrastNote(s.tokens) {
		d.weak[lexicon.Improvement]++ // "Honey on at the end not the start"
	}
	if len(s.signs) > 0 {
		return
	}
	// The signs of a heading or a question of the worksheet did not count.
	for _, h := range d.words.cues.find(s) {
		d.weak[lexicon.Area(h.Label)]++
	}
}

// opensAdvice reports whether the word, at the head of a note, is what people tell
// themselves to do next time, and no job of the kitchen: "Wait for them to cool." The
// past of "put", "let" and "read" looks the same, so they are not among them.
func (t *token) opensAdvice() bool {
	return t.in("remember", "check", "watch", "wear", "use", "keep", "leave", "ask", "start", "wait", "make", "get", "buy", "do", "dont", "open", "try", "give", "have", "be",
		"turn", "take", "add", "allow", "mind", "learn", "stand", "hold", "go", "stop", "never")
}

// contrastNote reports whether a sentence has no verb that tells what was, and sets
// one way of doing a thing against another: mostly advice to oneself.
func contrastNote(tokens []token) bool {
	not := 0
	for i := range tokens {
		if t := &tokens[i]; t.tagIn("VBD", "VBZ", "VBP", "MD") && !t.card.works {
			return false
		}
		if tokens[i].norm == "not" {
			not = i
		}
	}
	return not > 2 && not+1 < len(tokens) && tokens[not+1].tagIn("DT", "IN", "RB", "NN", "CD", "PRP$") && !tokens[not-1].pause()
}

// tokensIn reports whether token i is one of the words.
func tokensIn(tokens []token, i int, words ...string) bool {
	return i < len(tokens) && tokens[i].in(words...)
}

// thens counts the words that put one job behind another.
func (s *sentence) thens() int {
	n := 0
	for i := range s.tokens {
		if s.tokens[i].in("then", "afterwards", "firstly", "secondly", "finally") {
			n++
		}
	}
	return n
}

// worksTogether reports whether "we" did a job at token i: who did it is told.
func worksTogether(tokens []token, i int) bool {
	if tokens[i].norm != "we" {
		return false
	}
	for j := i + 1; j < len(tokens) && j <= i+3 && !tokens[j].pause(); j++ {
		if tokens[j].isVerb() && tokens[j].card.works {
			return true
		}
	}
	return false
}

// hinted reports whether a word of the sentence hints at the area.
func (d *doubt) hinted(s *sentence, a lexicon.Area) bool {
	return slices.ContainsFunc(s.tokens, func(t token) bool { return d.hintsAt(&t) == a })
}

// hintsAt returns the area that a word often speaks of without showing it: one
// that the lexicon lists, or help, where somebody is named.
func (d *doubt) hintsAt(t *token) lexicon.Area {
	if t.kind == lexicon.Person {
		return lexicon.Independence
	}
	return d.words.lex.Reading.Hints[t.norm]
}

// unseen reports whether the writer cannot know: who was not there cannot say what was
// done, and who did not eat cannot say how it tasted.
func (d *doubt) unseen(q wish) bool {
	return d.away && (contains(workAreas(), q.area) || q.list == "reason") ||
		d.uneat && q.list == "said" && (q.area == lexicon.Taste || q.area == lexicon.Texture)
}

// of reports whether the text may answer the question already.
func (d *doubt) of(q wish) bool {
	switch q.list {
	case "said":
		if q.area == lexicon.Aroma {
			return d.nosed // words that speak to the nose too are too common to tell
		}
		return d.weak[q.area] > 0
	case "vague", "work":
		if q.group == "whole" && (d.weak[q.area] > 0 || d.openedBeside(q)) {
			return true // every sense that is left is hinted at, or the next words say what is meant
		}
		if q.sentence < len(d.r.sentences) && resultArea(q.area) && d.hinted(&d.r.sentences[q.sentence], q.area) {
			return true // "It still tasted good. They were soft and toffee flavoured."
		}
		s := &d.r.sentences[q.sentence-1]
		if d.heard[q.sentence-1] {
			return true // another's view: the writer cannot say what was meant
		}
		if q.list == "work" && countWords(s.tokens) > 10 || q.area == lexicon.Improvement && countWords(s.tokens) > 7 {
			return true // "… so I did my homework next to it, that was good planning"
		}
		return contains(workAreas(), q.area) && !d.hollow(q.area)
	case "detail":
		// Who did what is told by a word ("by myself"), and so is a change
		// ("Next time none").
		return q.area == lexicon.Independence || q.area == lexicon.Improvement || !d.hollow(q.area) || d.toldBeside(q)
	case "reason":
		// Why somebody helped is seldom more than that they did.
		return q.area == lexicon.Independence || d.reasoned(q.area)
	}
	return false
}

// slight reports whether a single word of the text hints at a missing area, as
// may come by chance, so that it may be asked about where there is little else.
// Hygiene, help and a change are often told by one word ("rinsed", "Dad",
// "thinner"), and a smell too.
func (d *doubt) slight(q wish) bool {
	switch q.area {
	case lexicon.Aroma, lexicon.Hygiene, lexicon.Independence, lexicon.Improvement:
		return false
	}
	return q.list == "said" && d.weak[q.area] == 1
}

// openedBeside reports whether the sentences around a judgement of the whole say
// what it is of: "Grand effort. He poked the thigh with a skewer …", or, in a
// worksheet, "Yellowy brown with green bits. Decent."
func (d *doubt) openedBeside(q wish) bool {
	areas := resultAreas()
	if q.list == "work" {
		areas = workAreas()
		for _, a := range areas {
			if d.r.Role == Adult && d.r.row(a).Detail {
				return true // feedback opens with "Grand effort" and goes on to tell of it
			}
		}
		for i := range d.r.sentences {
			tokens := d.r.sentences[i].tokens
			if d.r.Role == Adult && (doer(tokens, Adult) || len(tokens) > 4 && tokens[0].in("he", "she") || i == q.sentence && countWords(tokens) > 8) {
				return true
			}
		}
	}
	if d.r.sentences[q.sentence-1].tokens[0].in("otherwise", "overall", "all") {
		return true // it sums up what was told
	}
	if q.sentence > 1 {
		if before := d.r.sentences[q.sentence-2].tokens; before[len(before)-1].norm == "?" {
			return true // the worksheet asked what is meant
		}
	}
	for n := max(1, q.sentence-1); n <= min(q.sentence+2, len(d.r.sentences)); n++ {
		if q.praise && q.list == "vague" && n != q.sentence && amiss(&d.r.sentences[n-1]) {
			continue // "It was good. Stuck to the pan a bit": a fault is not what was good
		}
		for _, g := range d.r.sentences[n-1].signs {
			if g.told && contains(areas, g.area) {
				return true
			}
		}
	}
	return false
}

// toldBeside reports whether the detail may stand under the area's own heading
// in words that no list has ("Taste: lemon lemon lemon"), or, for work, be the
// slip that the next sentence tells.
func (d *doubt) toldBeside(q wish) bool {
	if q.sentence < 1 {
		return false
	}
	s := &d.r.sentences[q.sentence-1]
	if d.heard[q.sentence-1] {
		return true // "My brother said tidy": another's view
	}
	for i := range s.tokens {
		if q.area == lexicon.Hygiene && s.tokens[i].in("kitchen", "worktop", "worktops", "side", "sides", "bench", "surfaces", "hob", "spotless", "gleaming") {
			return true // how the place was left is told
		}
	}
	if headingArea(s.tokens) == q.area && len(s.tokens) > 3 && len(s.vague) == 0 {
		return true
	}
	for i := range s.tokens {
		if resultArea(q.area) && i > 0 && s.tokens[i].in("tasted", "tried", "ate") && s.tokens[i-1].human() && s.tokens[i-1].norm != "i" {
			return true // "My sister tasted for me"
		}
		if q.area == lexicon.Taste && s.tokens[i].in("tastes", "tasted", "taste") && tokensIn(s.tokens, i+1, "of") {
			return true // "Tastes of cold melon": of what is told
		}
		if resultArea(q.area) && s.tokens[i].norm == "like" {
			return true // a likeness may tell it
		}
	}
	if q.area == lexicon.Organisation && countWords(s.tokens) > 5 {
		return true // "I organised my ingredients into bowls"
	}
	return contains(workAreas(), q.area) && q.sentence < len(d.r.sentences) && d.r.sentences[q.sentence].tellsSlip()
}

// reportsSpeech reports whether the sentence tells what somebody else said of the
// food, or quotes it.
func (s *sentence) reportsSpeech(text string) bool {
	for i := range s.tokens {
		t := &s.tokens[i]
		if i > 0 && s.tokens[i-1].in("everyone", "everybody", "they", "he", "she", "people") && t.in("say", "loved", "love", "thought", "liked", "think", "reckon") {
			return true // "Everybody say is very tasty"
		}
		if t.in("said", "says", "reckons", "reckoned", "called", "calls", "thinks", "told") && i > 0 && s.tokens[i-1].norm != "i" {
			return true
		}
	}
	return strings.ContainsAny(text[s.tokens[0].start:s.tokens[len(s.tokens)-1].end], "\"“”")
}

// hollowWords is the most words of a sentence that names an area and tells
// nothing of it ("I worked safely at all times.").
const hollowWords = 6

// hollow reports whether every sentence that speaks of the area is too short
// to tell anything.
func (d *doubt) hollow(a lexicon.Area) bool {
	for _, n := range d.r.row(a).Sentences {
		s := &d.r.sentences[n-1]
		if countWords(s.tokens) > hollowWords || len(s.how) > 0 {
			return false
		}
	}
	return true
}

// longSentence is how many words of one sentence can well hold a reason that
// no connective shows.
const longSentence = 15

// reasoned reports whether a sentence that speaks of the area holds what often
// brings a reason, or the one beside it does: a connective, for the work so
// many words, for a change the fault that it mends, for what was sensed the
// slip that led to it ("The middle was soggy. Too much sauce.").
func (d *doubt) reasoned(a lexicon.Area) bool {
	if a == lexicon.Improvement {
		for _, n := range d.r.row(a).Sentences {
			if d.heard[n-1] {
				return true // "Dad said it needs more lemon": he knows why
			}
		}
		// Whatever was amiss is what a change is to mend.
		for i := range d.r.sentences {
			if fault(&d.r.sentences[i]) {
				return true
			}
		}
	}
	if resultArea(a) && d.headsWhy() {
		return true
	}
	for _, n := range d.r.row(a).Sentences {
		s := &d.r.sentences[n-1]
		if resultArea(a) && amiss(s) && (n > 1 && deedTold(&d.r.sentences[n-2]) || n < len(d.r.sentences) && deedTold(&d.r.sentences[n])) {
			return true // "The sauce was lumpy. I put all the milk in at once."
		}
		if resultArea(a) && n < len(d.r.sentences) && deedTold(&d.r.sentences[n]) {
			return true // "It tasted a bit bitter. I took the sugar darker than the picture."
		}
		if resultArea(a) && n < len(d.r.sentences) && toldBefore(&d.r.sentences[n]) {
			return true // "The bottoms were soggy. Fat had come out of the meat."
		}
		if resultArea(a) && (n > 1 && d.r.sentences[n-2].has(lexicon.Improvement) || n < len(d.r.sentences) && d.r.sentences[n].has(lexicon.Improvement)) {
			return true // what is to be done in another way is what led to it
		}
		if len(s.why) > 0 || s.mayReason() || resultArea(a) && s.tellsSlip() || contains(workAreas(), a) && countWords(s.tokens) > longSentence {
			return true
		}
		if a == lexicon.Independence && n < len(d.r.sentences) && d.r.sentences[n].denies() {
			return true // "My uncle carried it. I don't like doing that bit"
		}
		if n > 1 && resultArea(a) && len(d.r.sentences[n-2].why) > 0 {
			return true // "The honey went on last, since it scorches. They were dark at the tips"
		}
		if a == lexicon.Technique && s.tellsSlip() {
			return true // the slip is the cause itself
		}
		if n < len(d.r.sentences) && d.explainedBy(a, &d.r.sentences[n]) {
			return true
		}
		if n > 1 && !contains(workAreas(), a) && (d.r.sentences[n-2].tellsSlip() || a == lexicon.Improvement && d.r.sentences[n-2].looksBack()) {
			return true
		}
	}
	return false
}

// headsWhy reports whether a line of the text opens with "why", as a heading over
// the causes of what came out: "Why: not sure, the dry cider maybe".
func (d *doubt) headsWhy() bool {
	for i := range d.r.sentences {
		if t := d.r.sentences[i].tokens; t[0].norm == "why" && (len(t) == 1 || t[1].pause() || t[1].in(":", "-", "–")) {
			return true
		}
	}
	return false
}

// toldBefore reports whether a sentence opens with what had come about before the
// thing told last, which is mostly how that came about.
func toldBefore(s *sentence) bool {
	for i := 1; i+1 < len(s.tokens) && i < 5; i++ {
		if s.tokens[i].in("had", "'d") && s.tokens[i+1].tagIn("VBN", "VBD") {
			return true
		}
	}
	return false
}

// deedTold reports whether a sentence opens with what somebody did, or had done;
// notes leave out who ("Mixed it while they were hot").
func deedTold(s *sentence) bool {
	if first := &s.tokens[0]; first.tagIn("VBD", "VBN") && first.card.works && len(s.tokens) > 2 {
		return true
	}
	for i := 0; i+1 < len(s.tokens) && i < 4; i++ {
		if !s.tokens[i].human() {
			continue
		}
		next := after(s.tokens, i, 1)
		if next.isAdv() {
			next = after(s.tokens, i, 2)
		}
		return next.tag == "VBD" && !linkingVerb(next.norm) && !next.in("ate", "liked", "loved", "said", "thought", "tried", "enjoyed", "tasted", "had", "could", "would") || toldBefore(s)
	}
	return false
}

// explainedBy reports whether the sentence after one that speaks of the area
// may give its reason.
func (d *doubt) explainedBy(a lexicon.Area, next *sentence) bool {
	switch {
	case next.startsWithPointer():
		return true
	case a == lexicon.Technique:
		// What a step is for is often told by what came of it.
		return len(next.why) > 0 || len(next.sensory) > 0 || next.general()
	case contains(workAreas(), a):
		return len(next.why) > 0 && len(next.areas) == 0 || next.general()
	}
	return next.tellsSlip()
}

// general reports whether the sentence tells what happens always, as a reason
// for a step does: "If you mess about with it it goes tough."
func (s *sentence) general() bool {
	for i := range s.tokens {
		if s.tokens[i].in("if", "goes", "makes", "otherwise", "you") {
			return true
		}
	}
	return false
}

// tellsSlip reports whether the sentence has a word by which a writer tells
// what went amiss, or guesses at it.
func (s *sentence) tellsSlip() bool {
	for i := range s.tokens {
		t := &s.tokens[i]
		if t.in("too", "enough", "think", "thought", "reckon", "probably", "guess", "suppose", "spose", "maybe", "perhaps", "might", "forgot", "left", "should", "must", "didnt", "longer", "extra", "over", "need", "needed", "needs", "more", "less", "so") {
			return true
		}
	}
	return false
}

// denies reports whether the sentence holds a denial, or says that something was
// hard or feared.
func (s *sentence) denies() bool {
	for i := range s.tokens {
		if t := &s.tokens[i]; t.negator() || t.in("dont", "cant", "wont", "didnt", "scared", "scary", "heavy", "hard", "afraid", "hate", "nervous") {
			return true
		}
	}
	return false
}

// mayReason reports whether the sentence has a word that often brings a reason.
func (s *sentence) mayReason() bool {
	for i := range s.tokens {
		t := &s.tokens[i]
		if t.in("as", "before", "that", "when", "where", "to", "from", "for", "which", "needed", "could", "so", "since", "if", "otherwise", "until", "because", "after", "went", "had", "made", "maybe", "perhaps", "probably", ":", "--", "–",
			"till", "til", "cos", "coz", "bc", "once", "while", "means", "meant", "cause", "lets", "keeps", "kept", "stops", "stopped", "helps", "saved", "saves", "only") || strings.HasPrefix(t.norm, "mak") {
			return true
		}
	}
	return false
}

// looksBack reports whether the sentence tells how something was.
func (s *sentence) looksBack() bool {
	for i := range s.tokens {
		if s.tokens[i].in("was", "were", "went", "had", "did", "came", "got", "is") {
			return true
		}
	}
	return len(s.sensory) > 0
}
