package analyze

import "saywhy/lexicon"

// backing decides which judging words stay bare: nothing specific about the
// same thing is said in the sentence or the one right after. What is specific
// depends on what is judged. Food is told of by how it was, and not by how it
// was made; work is told of by what was done or came of it, and not by how the
// food was.
type backing struct{}

func (d backing) read(r *reading) {
	for i := range r.sentences {
		s := &r.sentences[i]
		var next *sentence
		if i+1 < len(r.sentences) {
			next = &r.sentences[i+1]
		}
		for n := range s.vague {
			s.vague[n].bare = !d.backed(s, next, &s.vague[n])
		}
	}
}

// backed reports whether the judged thing is told of.
func (d backing) backed(s, next *sentence, v *vagueWord) bool {
	if v.to+1 < len(s.tokens) && s.tokens[v.to].norm == "to" && s.tokens[v.to+1].in("have", "see", "cook", "watch", "hear", "spend", "get", "work") {
		return sawThemDo(s.tokens, v.to+1) // "it was lovely to have you": of the day, not of the dish
	}
	if namesWhat(s, v) || headsLine(s, next) {
		return true
	}
	j := judgementOf(s.tokens, v)
	if thatClause(s.tokens, v) {
		j.of = judgedAct
	}
	if soFar(s.tokens, v) || thanThat(s, v) {
		return true
	}
	if (j.of == judgedTime || j.of == judgedFood && j.topic == "") && next != nil && tellsHowItGoes(next.tokens) {
		return true
	}
	switch j.of {
	case judgedThing:
		return reasonFollows(s, j) || everythingDid(s.tokens, j.to)
	case judgedTime:
		return reasonFollows(s, j) || causeFollows(s.tokens, j) || deedBeside(s, j) || j.named != "" && toldOfNamed(s, next, j) || next != nil && badDay(s.tokens, next.tokens, j)
	case judgedWork, judgedPerson, judgedAct:
		if j.named != "" {
			return toldOfNamed(s, next, j) || reasonFollows(s, j) || colonTells(s.tokens, j)
		}
		return toldOfWork(s, j) || ofDeedBefore(s.tokens, j) || next != nil && workGoesOn(next, j, praised(s.tokens, j))
	}
	return describes(s, j) || madeSo(s.tokens, j) || j.dressed && deedBefore(s.tokens, j) || j.deeds && deedBeside(s, j) || next != nil && d.tellsOfFood(s, next, j)
}

// tellsOfFood reports whether the next sentence tells how the judged food was.
func (d backing) tellsOfFood(s, next *sentence, j judgement) bool {
	praise := praised(s.tokens, j)
	switch {
	case gotBetter(s.tokens, j) && len(next.tokens) > 0 && next.tokens[0].tag == "VBD" && len(next.why) > 0:
		return true // "After that it got better. Simmered it to get rid of the floury taste"
	case saidByOthers(s.tokens, j) && !agrees(next.tokens), pairedWith(s.tokens, j), praise && (faultOfPart(next) || j.sense == "" && !s.tokens[j.from].in("better", "best") && onlyFaults(next)):
		return false
	case !praise && s.tokens[j.from].in("disaster", "rubbish", "mess", "nightmare", "failure", "fail", "flop", "awful", "terrible", "horrible", "bad") && len(next.why) > 0 && !humanFirst(next.tokens) && !next.has(lexicon.Improvement):
		return true // "The first ones were a disaster. The pan was too hot, so the batter stuck"
	}
	return descriptionGoesOn(next, j, !praise)
}

// sawThemDo reports whether the verb at token i leads to what somebody was seen
// or heard to do ("good to see her wearing gloves").
func sawThemDo(tokens []token, i int) bool {
	for k := i + 1; k+1 < len(tokens) && k <= i+3; k++ {
		if tokens[k].human() {
			return tokens[k+1].tagIn("VBG", "VB") || tokens[k+1].card.works && !tokens[k+1].isAdv() || k+2 < len(tokens) && tokens[k+1].isNoun() && tokens[k+2].tagIn("DT", "PRP$")
		}
	}
	return false
}

// thatClause reports whether what somebody did follows the judgement ("it was
// good that I wore gloves", "great how she kept calm").
func thatClause(tokens []token, v *vagueWord) bool {
	return v.to+2 < len(tokens) && tokens[v.to].in("that", "how") && tokens[v.to+1].human()
}

// namesWhat reports whether the judgement is a heading for what follows ("What
// went well: the shape", "Good points, …"): what is meant is named there.
func namesWhat(s *sentence, v *vagueWord) bool {
	if v.to+1 < len(s.tokens) && s.tokens[v.to].in("point", "points", "bits", "things") && s.tokens[v.to+1].pause() {
		return true
	}
	if bestBitWas(s.tokens, v) {
		return true
	}
	if v.to+1 < len(s.tokens) && plainBe(s.tokens[v.to].norm) && s.tokens[v.to+1].tagIn("DT", "PRP$") {
		return between(s.tokens, max(0, v.from-6)-1, v.from, "thing", "bit", "part", "what") // "one thing that was good was the crust"
	}
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

// headsLine reports whether the judging word stands alone on its line, as a heading
// above what is meant ("Good", and below it "the smell was smoky").
func headsLine(s, next *sentence) bool {
	return len(s.tokens) == 1 && s.tokens[0].in("good", "bad", "best", "worst", "better", "worse") && next != nil && len(next.tokens) > 2 && !isHeading(next)
}

// bestBitWas reports whether it is named what was best or worst: "the best bit
// was the skin", "the worst part was chopping them".
func bestBitWas(tokens []token, v *vagueWord) bool {
	at := v.to
	if !tokens[v.to-1].in("best", "worst", "nicest", "hardest") || at+2 >= len(tokens) || !tokens[at].in("bit", "part", "thing", "bits", "parts") {
		return false
	}
	if !plainBe(tokens[at+1].norm) && !(tokens[at+1].norm == "," && tokens[at+2].norm == "the") {
		return false // but "that's the best part, the smoky bit"
	}
	next := &tokens[at+2]
	return next.tagIn("DT", "PRP$", "VBG", "WRB", "WP") || next.isNoun()
}

// describes reports whether the judgement's own sentence tells how the judged
// food was.
func describes(s *sentence, j judgement) bool {
	for _, g := range s.signs {
		if !g.told || !resultArea(g.area) || j.sense != "" && j.sense.Area() != g.area || g.from < j.to && g.to > j.from || familiar(s.tokens, g) || ownVerb(s.tokens, j, g) {
			continue
		}
		if closeTo(s.tokens, j, g.from) && !onTheWay(s.tokens, g.from) && !tellsWhichOne(s.tokens, j, g) && sameFood(s.tokens, j, g.from, g.to) {
			return true
		}
	}
	for _, w := range s.sensory { // those only wished for are no signs
		if w.supposed && !w.other && j.sense == "" && closeTo(s.tokens, j, w.from) && sameFood(s.tokens, j, w.from, w.to) {
			return true
		}
	}
	return elaborated(s, j) || madeOf(s.tokens, j) || deedThatMade(s, j) || namesTaste(s.tokens, j) || dressedWith(s.tokens, j)
}

// ownVerb reports whether a sign is nothing but the verb that is judged ("it
// thickened nicely"): how it thickened stays untold.
func ownVerb(tokens []token, j judgement, g sign) bool {
	at := j.from - 1
	for at > 0 && tokens[at].isAdv() {
		at--
	}
	return at >= 0 && tokens[j.from].isAdv() && tokens[at].isVerb() && g.to == at+1 && g.from >= at-1
}

// namesTaste reports whether it is told what the food smelt or tasted of
// ("smelt lovely, of oranges").
func namesTaste(tokens []token, j judgement) bool {
	if j.sense != lexicon.Smell && j.sense != lexicon.Tongue {
		return false
	}
	at := j.to
	if at < len(tokens) && (tokens[at].norm == "," || namesSense(&tokens[at])) {
		at++ // "a nice kick from the ginger"
		if at+1 < len(tokens) && tokens[at].in("all", "mostly", "mainly", "full") {
			return tokens[at+1].isNoun() || tokens[at+1].kind.Food() || tokens[at+1].norm == "of"
		}
	}
	if at+1 >= len(tokens) || !tokens[at].in("of", "from") {
		return false
	}
	if tokens[at+1].tag == "DT" && at+2 < len(tokens) {
		at++
	}
	return tokens[at+1].isNoun() || tokens[at+1].isAdj()
}

// familiar reports a likeness to a place or a person ("like my uncle's shop"):
// who was never there learns nothing of the food.
func familiar(tokens []token, g sign) bool {
	if g.to <= g.from || g.to > len(tokens) || tokens[g.from].norm != "like" {
		return false
	}
	last := &tokens[g.to-1]
	if tokens[g.from+1].in("a", "an") && last.in("garden", "bakery", "forest", "wood", "farm", "field", "beach", "bonfire", "campfire", "sweetshop", "brewery", "florist", "orchard", "sea") {
		return false // everybody knows what it smells of there
	}
	return last.kind == lexicon.Place || last.kind == lexicon.Person || last.in("shop", "home", "one", "ones", "restaurant", "cafe")
}

// elaborated reports whether a later clause tells what the judged food did or
// what it lacked: "it was a disaster, it slid off the plate", "looked fancy but
// the tomatoes were all on one side", "nice but needs salt".
func elaborated(s *sentence, j judgement) bool {
	tokens, lacks, apart := s.tokens, false, false
	for at := clauseEnd(tokens, j.to-1); at < len(tokens) && at < j.to+reach; {
		end := max(clauseEnd(tokens, min(at+1, len(tokens)-1)), at+1)
		added := tokens[at].in("and", "&", "then")
		for i := at; i < end && i < len(tokens) && !tokens[i].human(); i++ {
			lacks, apart = lacks || tokens[i].in("but", "just", "though", "only"), apart || tokens[i].in("but", "though", "although")
			if j.sense == "" && happened(tokens, i) && !((added || apart) && !tokens[subject(tokens, i)].in("it", "they") && !oneOfThem(tokens, subject(tokens, i))) {
				return true
			}
			if j.sense == lexicon.Sight && !added && placed(tokens, i) || lacks && tokens[i].kind == lexicon.Ingredient && tokens[i].isNoun() && !ownSubject(tokens, i) {
				return true
			}
		}
		at = end
	}
	return false
}

// happened reports whether token i is a verb of what the food did by itself
// ("it slid over to one side", "it stuck").
func happened(tokens []token, i int) bool {
	if i >= len(tokens) {
		return false
	}
	t := &tokens[i]
	if !t.tagIn("VBD", "VBN") || linkingVerb(t.norm) && !wentSomewhere(tokens, i) && !cameApart(tokens, i) {
		return false
	}
	switch t.stem {
	case "take", "took", "cook", "need", "make", "made", "bake", "have", "had", "serv", "finish", "cost", "last", "use", "boil", "simmer", "give", "gave", "remind", "did", "do", "done", "help", "eaten", "sold", "deserv":
		return false
	}
	n := subject(tokens, i)
	return n >= 0 && n < i && i-n <= 3 && (tokens[n].in("it", "they", "them", "one", "ones", "some", "most", "half", "two", "three", "four", "several", "mine") || oneOfThem(tokens, n) || tokens[n].isNoun() && tokens[n].kind.Food())
}

// wentSomewhere reports whether "went" at token i tells of a way and of no
// quality ("the flavour had gone right in").
func wentSomewhere(tokens []token, i int) bool {
	if !tokens[i].in("went", "gone") {
		return false
	}
	for k := i + 1; k < len(tokens) && k <= i+2; k++ {
		if tokens[k].in("through", "everywhere", "off", "over") || tokens[k].in("in", "into") && k == i+2 {
			return true // but "it went in the tin" is a step
		}
		if !tokens[k].isAdv() {
			return false
		}
	}
	return false
}

// placed reports whether token i begins the place where the food lay, which
// tells how it looked.
func placed(tokens []token, i int) bool {
	return tokens[i].in("on", "in", "to", "over", "off") && i+2 < len(tokens) && (tokens[i+2].in("side", "pile", "heap", "bowl", "plate", "middle", "corner", "rows", "row", "ring", "basket", "board", "stack", "tower", "pan", "tin", "jar", "glass", "dish") || tokens[i+1].in("rows", "squares", "rings"))
}

// closeTo reports whether the description at token i is near enough to speak
// of the same matter. Where a text without marks is one sentence, what was said
// some clauses before is another matter.
func closeTo(tokens []token, j judgement, i int) bool {
	if len(tokens) <= 3*reach {
		return true
	}
	return i > j.from-reach/2 && i < j.to+reach
}

// sameFood reports whether the description at tokens[i:to] can be of the judged
// food: no other part is its subject, and "but" with another subject does not
// stand between.
func sameFood(tokens []token, j judgement, i, to int) bool {
	if contrasted(tokens, j, i) || otherOfSome(tokens, j, i) {
		return false
	}
	if j.topic == "" {
		return true
	}
	if i >= j.to && otherPart(tokens, j, i) {
		return false
	}
	if i >= j.to && predicateOf(tokens, i) < 0 {
		return true // ", crisp edges", ", no lumps"
	}
	n := describedNoun(tokens, to-1)
	if someOf(j.topic) && i < j.from {
		return false // what comes before is said of the others
	}
	if n < 0 || n >= clauseStart(tokens, j.from) && n < clauseEnd(tokens, j.to-1) {
		return true
	}
	t := &tokens[n]
	if t.in("it", "they", "them", "which", "that") {
		return n > j.from && (!someOf(j.topic) || i < j.to+8)
	}
	_, sense := senseOfNoun(t.norm)
	return sense || singular(t.norm) == singular(j.topic) || !t.kind.Food() && n > j.from || n > j.to && ofWhole(tokens, n)
}

// otherPart reports whether another food stands between the judgement and the description at
// token i that follows it ("Carrots perfect, potatoes waxy").
func otherPart(tokens []token, j judgement, i int) bool {
	for k := j.to; k < i && k < j.to+reach; k++ {
		if t := &tokens[k]; t.isNoun() && t.kind.Food() && t.kind != lexicon.PartNoun && singular(t.norm) != singular(j.topic) && (k == j.to+1 || tokens[k-1].tagIn("DT", "PRP$")) {
			return true
		}
	}
	return false
}

// otherOfSome reports whether another one of several is named between the
// judgement of one and the description at token i ("the first one was rubbish
// but the second was golden").
func otherOfSome(tokens []token, j judgement, i int) bool {
	if !someOf(j.topic) || j.to < len(tokens) && tokens[j.to].norm == "than" {
		return false // "better than the second, which was charcoal"
	}
	for k := j.to; k < i && k < j.to+reach; k++ {
		if someOf(tokens[k].norm) && tokens[k].norm != j.topic {
			return true
		}
	}
	return false
}

// ofWhole reports whether the noun at token n names, after no "and" or "but", what any food
// is made up of, so that it tells of the food named before ("the rice was
// good, each grain was separate").
func ofWhole(tokens []token, n int) bool {
	if start := clauseStart(tokens, n); start > 0 && tokens[start-1].in("and", "but") || tokens[start].in("and", "but") {
		return false
	}
	switch singular(tokens[n].norm) {
	case "grain", "strand", "flake", "layer", "skin", "flesh", "outside", "inside", "middle", "centre", "surface", "edge", "piece":
		return true
	}
	return n > 0 && tokens[n-1].in("each", "every")
}

// describedNoun returns the noun that the description at token i stands before
// or is said of, or -1.
func describedNoun(tokens []token, i int) int {
	if h := phraseHead(tokens, i); h >= 0 && tokens[h].kind.Food() && predicateOf(tokens, i) < 0 {
		return h
	}
	if p := predicateOf(tokens, i); p >= 0 {
		return subject(tokens, p)
	}
	return -1
}

// contrasted reports whether "but" stands between judgement and description and
// what stands behind it has a subject of its own: "it was nice but the middle
// was raw" tells of the middle, and "nice" stays without a word to back it.
// "Nice but a bit dry" speaks of the same.
func contrasted(tokens []token, j judgement, i int) bool {
	from, to, later := j.to, i, i
	if i < j.from {
		from, to, later = i+1, j.from, j.from
	}
	return contrasts(tokens, from, min(to, from+2*reach), later)
}

// contrasts reports whether tokens[from:to] hold a "but" and what stands from there
// up to token later has a subject of its own.
func contrasts(tokens []token, from, to, later int) bool {
	for k := from; k < to; k++ {
		if !tokens[k].in("but", "however", "although", "though", "except") || k+1 >= len(tokens) {
			continue
		}
		p := predicateOf(tokens, later)
		if p < k {
			p = firstVerb(tokens, k+1, later+1)
		}
		if p < k {
			return false
		}
		n := subject(tokens, p)
		return n > k && !tokens[n].in("it", "they", "this", "that", "these", "i", "we", "you", "he", "she", "there") && !oneOfThem(tokens, n) && !foundIt(tokens, n, later) || sideFirst(tokens, k)
	}
	return false
}

// firstVerb returns the first finite verb in tokens[from:to], or -1.
func firstVerb(tokens []token, from, to int) int {
	for i := from; i < to; i++ {
		if tokens[i].tagIn("VBD", "VBZ", "VBP", "MD") {
			return i
		}
	}
	return -1
}
