package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// half is one of two clauses set side by side, tokens[from:to]; start is where
// its subject begins, behind "and" and adverbs.
type half struct {
	tokens          []token
	from, to, start int
}

// regrets reports whether the half tells what ought to have been done.
func (h half) regrets() bool {
	for j := h.start; j+1 < h.to && j <= h.start+2; j++ {
		if h.tokens[j].in("should", "shoulda") && h.tokens[j+1].in("have", "of", "'ve") {
			return true
		}
	}
	return false
}

// wentWrong: "…, went all ragged": without a subject, what became of the food.
func (h half) wentWrong() bool {
	return h.first().in("went", "came", "turned", "stayed", "got", "tasted", "felt", "looked") && h.faulty() || h.first().in("went", "turned") && h.to-h.start <= 4
}

// entered reports whether the half tells when or where something was put in:
// "the paprika went in off the heat".
func (h half) entered() bool {
	s, v := h.verb()
	return s >= 0 && v >= 0 && v+1 < h.to && h.tokens[s].kind.Food() && h.tokens[v].in("went", "goes", "go") && h.tokens[v+1].in("in", "on", "last", "first")
}

// rushed reports whether the half is a rule of the kitchen about a way of
// working: "rushing them leaves a papery skin", "stirring makes crystals".
func (h half) rushed() bool {
	if h.first().tag != "VBG" {
		return false
	}
	for j := h.start + 1; j+1 < h.to && j <= h.start+4; j++ {
		if h.tokens[j].tagIn("VBZ", "VBP") && !linkingVerb(h.tokens[j].norm) {
			return !h.tokens[j].in("has", "does", "needs", "takes")
		}
	}
	return false
}

// did reports whether a person does or did something in the half.
func (h half) did() bool {
	s, v := h.verb()
	return s >= 0 && v >= 0 && h.tokens[s].human() && !linkingVerb(h.tokens[v].norm)
}

// does reports whether the half tells a step of a person rather than what came
// about: "I used the claw", not "I found a stringy bit".
func (h half) does() bool {
	s, v := h.verb()
	return s >= 0 && v >= 0 && h.tokens[s].human() && !h.tokens[v].in("found", "lost", "could", "nearly")
}

// hindered reports whether the half tells of a tool, a part of the body or a
// person that something was wrong with: "the knob's stiff", "her wrist is not
// strong yet", "the pan wasn't ready". Said beside a deed or a fault, it is why.
func (h half) hindered() bool {
	s, v := h.verb()
	if s < 0 || v < 0 || v+1 >= h.to || !h.tokens[v].in("is", "was", "were", "are", "'s", "'re", "'m", "am") {
		return false
	}
	sub := &h.tokens[s]
	body := bodily(sub) || sub.in("wrist", "wrists", "hand", "hands", "fingers", "back", "grip")
	if sub.kind != lexicon.Tool && !body && !(sub.human() && !sub.in("it", "they")) && !sub.in("knob", "oven", "lid", "blade", "whisk", "handle", "scales", "timer", "tin", "bowl", "fridge", "freezer", "board") {
		return false
	}
	for j := v + 1; j < h.to && j <= v+5; j++ {
		t := &h.tokens[j]
		if t.in("stiff", "wonky", "blunt", "broken", "slippery", "slippy", "faulty", "jammed", "loose", "fierce", "tired", "sore", "nervous", "scared", "frightened", "weak", "shaky", "aching") {
			return true
		}
		if t.in("n't", "not", "too") && j+1 < h.to {
			n := &h.tokens[j+1]
			return (n.isAdj() || n.isAdv()) && !n.in("sure", "happy", "good", "bad", "long", "really") && !(sub.human() && n.in("allowed", "here"))
		}
	}
	return false
}

// fellShort reports whether the half says of a thing that there was too much of
// a quality or not enough: "floppy, it wasn't hot enough", "tough, they were too
// thin for that long".
func (h half) fellShort() bool {
	s, v := h.verb()
	if s < 0 || v < 0 || h.tokens[s].human() || !h.tokens[v].in("was", "were", "is", "'s", "are", "had", "did") {
		return false
	}
	return h.placedBy(v, "too", "enough")
}

// isSo reports whether the half tells in the present what a thing is like in
// itself, not how this dish is: "Dad carried the pan, it's cast iron".
func (h half) isSo() bool {
	s, v := h.verb()
	if s < 0 || v < 0 || v+1 >= h.to || !h.tokens[s].in("it", "they") || !h.tokens[v].in("is", "are", "'s", "'re") || h.to-v < 3 {
		return false
	}
	for j := v + 1; j < h.to; j++ {
		if h.tokens[j].describes() || h.tokens[j].in("now", "from", "still", "nice", "good", "lovely", "called", "like", "made", "just") {
			return false
		}
	}
	return true
}

// ofThing reports whether the half tells how a room, a tool or a cloth was,
// which nothing done to the food explains: "the kitchen was left clean".
func (h half) ofThing() bool {
	s, v := h.verb()
	return s >= 0 && v >= 0 && h.tokens[s].inert()
}

// present reports whether the half says that something was there that had to
// be dealt with: "I rinsed it twice, there was sand".
func (h half) present() bool {
	if h.first().norm != "there" || h.start+2 >= h.to || !h.tokens[h.start+1].in("was", "were", "is", "'s") {
		return false
	}
	for j := h.start + 2; j < h.to && j <= h.start+5; j++ {
		if h.tokens[j].in("no", "n't", "not", "too", "sand", "grit", "mud", "soil", "dirt", "slime", "shell", "bones", "bone", "stones", "slugs", "scum", "scales", "flour", "sauce", "oil", "juice", "bits", "crumbs", "lumps", "mess") {
			return true
		}
	}
	return false
}

// cameOut reports whether the half tells how the food turned out, if only by a
// likeness or by what it did: "it tasted like soap", "they joined up".
func (h half) cameOut() bool {
	s, v := h.verb()
	if s < 0 && h.first().isVerb() {
		s, v = h.start, h.start // a note: "ripped to bits"
	}
	if s < 0 || v < 0 || s < v && h.tokens[s].human() {
		return false
	}
	t := &h.tokens[v]
	return t.in("tasted", "tastes", "smelt", "looked", "felt") && h.placedBy(v, "like", "of") ||
		t.in("spread", "joined", "stuck", "sank", "shrank", "split", "leaked", "burst", "collapsed", "broke", "tore", "ripped", "curdled", "fell", "flopped", "slid", "cracked", "exploded", "burnt", "burned", "caught", "melted")
}

// ranOff reports whether the half is a note that tells where the food went of
// itself: "gravy on the thin side, ran all over the plate".
func (h half) ranOff() bool {
	return h.first().in("ran", "slid", "oozed", "dripped") && h.first().tag == "VBD"
}

// placedBy reports whether one of the words stands within five behind token v.
func (h half) placedBy(v int, words ...string) bool {
	for j := v + 1; j < h.to && j <= v+5; j++ {
		if h.tokens[j].in(words...) {
			return true
		}
	}
	return false
}

// halves parts the sentence at the mark i, as far as the next strong mark on
// either side. It fails where one half is too short to be a clause, or begins
// with a word that joins it in another way.
func halves(tokens []token, i int) (l, r half, ok bool) {
	from, to := i, i+1
	for from > max(0, i-2*reach) && !tokens[from-1].in(";", ":", ".", "--", "–") && (tokens[from-1].norm != "," || listComma(tokens, from-1)) {
		from--
	}
	for to < min(len(tokens), i+2*reach) && !tokens[to].in(";", ":", ".", "--", "–", ",", "!") {
		to++
	}
	l, r = half{tokens: tokens, from: from, to: i, start: from}, half{tokens: tokens, from: i + 1, to: to, start: i + 1}
	for _, h := range []*half{&l, &r} {
		for h.start < h.to && (tokens[h.start].isAdv() || tokens[h.start].in("and", "i", "think") && h.start+1 < h.to && tokens[h.start+1].in("think", "it", "they")) {
			h.start++
		}
		if h.start == h.to {
			return l, r, false
		}
	}
	if l.to-l.from < 2 || r.to-r.start < 3 || r.first().joins() || r.first().in("and", "or") || l.tokens[l.from].tag == "IN" || l.tokens[l.from].in("once", "to", "after", "when", "as") {
		return l, r, false
	}
	for j := from; j < i; j++ {
		if tokens[j].in("because", "so", "but", "if", "when") {
			return l, r, false
		}
	}
	return l, r, true
}

func (h half) first() *token { return &h.tokens[h.start] }

func (h half) words() []token { return h.tokens[h.from:h.to] }

// verb returns the place of the first finite verb, and of the subject before
// it; -1 where there is none.
func (h half) verb() (subject, verb int) {
	subject = -1
	for j := h.start; j < h.to; j++ {
		t := &h.tokens[j]
		if t.tagIn("VBD", "VBZ", "VBP", "MD") || t.in("'d", "'ve") || subject >= 0 && j > h.start && occurs(t) && h.closes(j+1) {
			return subject, j
		}
		if t.isNoun() || t.tag == "PRP" || t.tag == "EX" {
			subject = j
		}
		if subject >= 0 && j > subject+2 {
			break
		}
	}
	return subject, -1
}

// closes reports whether nothing that a noun could be joined to stands at
// token j: "the oil spits.", "the butter firms up".
func (h half) closes(j int) bool {
	return j >= h.to || h.tokens[j].tagIn("RP", "RB", "IN", "PRP", "DT")
}

// finite returns the tag of the finite verb, "" where there is no subject or no
// verb.
func (h half) finite() string {
	if s, v := h.verb(); s >= 0 && v >= 0 {
		return h.tokens[v].tag
	}
	return ""
}

// described reports whether an adjective of the senses stands in the half.
func (h half) described() bool {
	for j := h.from; j < h.to; j++ {
		if t := &h.tokens[j]; t.describes() && (t.isAdj() || t.tag == "VBN") || t.faulty() || t.in("heat", "kick") {
			return true
		}
	}
	return false
}

// faulty reports whether the half tells of something that one would not have
// wished: too much, too little, or a quality that is nowhere wanted.
func (h half) faulty() bool {
	for j := h.from; j < h.to; j++ {
		if t := &h.tokens[j]; t.faulty() || t.in("too", "bit", "abit", "slightly", "enough", "rather") {
			return true
		}
	}
	return false
}

// acted reports whether somebody worked the food in the half. A verb of
// everyday life as well needs a food beside it.
func (h half) acted() bool {
	worked, food := false, false
	for j := h.from; j < h.to; j++ {
		t := &h.tokens[j]
		if t.tag == "VBD" && t.card.works && !generic(t.stem) {
			return true
		}
		worked = worked || t.tag == "VBD" && t.card.works
		food = food || t.kind.Food()
	}
	return worked && food
}

// instructs reports whether the half tells the reader what to do: a bare verb
// of work at its head, with an object or a particle.
func (h half) instructs() bool {
	if h.start+1 >= h.to {
		return false
	}
	t, n := h.first(), h.tokens[h.start+1]
	if t.norm == "do" && n.norm == "n't" {
		return true
	}
	bare := t.tag == "VB" || t.card.works && !strings.HasSuffix(t.norm, "ed") && !strings.HasSuffix(t.norm, "ing") && !strings.HasSuffix(t.norm, "s")
	if !bare && !t.in("stand", "keep", "watch", "leave", "mind") {
		return false
	}
	return n.tagIn("DT", "PRP$", "RP", "RB", "JJR") || n.in("it", "them", "back", "up", "off", "out", "over", "well")
}

// rule reports whether the half tells what always happens, in the present and
// of a thing: "the oil spits", "it takes two seconds".
func (h half) rule() bool {
	s, v := h.verb()
	if s < 0 || v < 0 || v > s+3 {
		return false
	}
	sub, verb := &h.tokens[s], &h.tokens[v]
	if !verb.tagIn("VBZ", "VBP") && !occurs(verb) || sub.human() || verb.kind == lexicon.Tool || verb.in("set", "cut", "put", "let", "spread", "split", "burst") {
		return false
	}
	return !verb.in("is", "are", "'s", "'re", "has", "have", "looks", "tastes", "smells", "feels", "look", "taste", "smell", "feel", "seems", "do", "does", "am") && !(v+1 < h.to && h.tokens[v+1].isAdj() && sub.in("it", "they") && !verb.in("goes", "gets", "turns", "go", "get"))
}

// deed reports whether somebody did something to the food that would tell how
// it came out: a verb of working food, or, behind a fault, one of putting,
// leaving and keeping it somewhere.
func (h half) deed(fault bool) bool {
	s, v := h.verb()
	if s < 0 || v < 0 || v > s+3 || !h.tokens[s].human() || !(h.tokens[v].tag == "VBD" || h.tokens[v].in("'d", "had")) {
		return false
	}
	for j := v; j < h.to && j < v+3; j++ {
		t := &h.tokens[j]
		if t.card.works && t.isVerb() && !t.in("made", "had", "took", "cut", "shared", "served") || t.in("forgot", "left") {
			return true
		}
	}
	earlier := h.tokens[v].in("'d", "had")
	for j := v; j < h.to && j < v+3; j++ {
		t := &h.tokens[j]
		if !t.in("put", "took", "taken", "made", "kept", "left", "had", "went", "got", "did", "set", "used") || j+1 >= h.to {
			continue
		}
		n := &h.tokens[j+1]
		if t.norm == "had" {
			return fault && j+2 < h.to && (n.tag == "DT" || n.in("it", "them")) && h.placed(j+2)
		}
		return (fault || earlier) && (n.in("it", "them", "at", "too") || n.tagIn("DT", "PRP$"))
	}
	return false
}

// byOther reports whether somebody other than the writer does or did what the
// half tells.
func (h half) byOther() bool {
	s, _ := h.verb()
	if s < 0 {
		return false
	}
	t := &h.tokens[s]
	return t.kind == lexicon.Person && !t.in("i", "we") || t.in("he", "she")
}

// placed reports whether what stands behind token j tells where or at what heat.
func (h half) placed(j int) bool {
	for ; j < h.to; j++ {
		if h.tokens[j].in("on", "in", "at", "under", "over", "too", "right") {
			return true
		}
	}
	return false
}

// undone reports whether the half tells of work that was left out: "it wasn't
// rinsed", "I hadn't drained it", "the eggs weren't beaten enough".
func (h half) undone() bool {
	s, v := h.verb()
	if s < 0 || v < 0 || v+2 >= h.to || h.tokens[v+1].norm != "n't" && h.tokens[v+1].norm != "not" {
		return false
	}
	w := &h.tokens[v+2]
	if h.tokens[v].in("was", "were", "had") && w.tag == "VBN" {
		return !w.describes() && !w.in("been", "burnt", "expected", "supposed", "meant")
	}
	return h.tokens[v].norm == "did" && h.tokens[s].human() && w.card.works
}

// befell reports whether the half tells what the food did to who ate it: "I had
// to drink a lot", "my eyes were streaming".
func (h half) befell() bool {
	if h.first().norm == "had" && h.start+1 < h.to && h.tokens[h.start+1].norm == "to" {
		return true // a note: "thick when it stood, had to let it down"
	}
	s, v := h.verb()
	if s < 0 || v < 0 || v+1 >= h.to {
		return false
	}
	if h.tokens[v].norm == "had" && h.tokens[v+1].norm == "to" {
		return true
	}
	if h.tokens[v].norm == "found" && h.tokens[s].human() {
		return true
	}
	if h.tokens[s].human() && h.tokens[v].in("could", "can") && v+2 < h.to && h.tokens[v+1].norm == "n't" {
		return h.tokens[v+2].in("finish", "manage", "eat", "stop", "swallow", "chew", "feel", "bite") // "so rich, I couldn't finish it"
	}
	return s > 0 && h.tokens[s-1].norm == "my" && h.tokens[s].in("nose", "eyes", "mouth", "tongue", "lips", "throat", "jaw", "teeth")
}

// occurs reports whether a form is the present of a verb that tells what food
// or fire does of itself, whatever the tagger took it for.
func occurs(t *token) bool {
	switch t.norm {
	case "spits", "shrinks", "firms", "boils", "sticks", "burns", "catches", "soaks", "dries", "splits", "sinks", "melts", "leaks", "spreads", "rises", "puffs", "cracks", "scorches", "slides", "slips", "sets", "curdles", "sweats", "steams", "hardens", "softens", "thickens", "toughens", "collapses", "flops", "weeps", "bubbles", "cools", "splashes":
		return true
	}
	return false
}

// faulty reports whether a word by itself tells of a fault of food.
func (t *token) faulty() bool {
	switch t.norm {
	case "burnt", "burned", "doughy", "rubbery", "pale", "greasy", "gluey", "lumpy", "watery", "soggy", "flat", "dry", "tough", "hard", "bland", "runny", "stodgy", "claggy", "heavy", "dense", "raw", "gritty", "grainy", "oily", "mushy", "sloppy", "tasteless", "uneven", "wonky", "bitter", "salty", "sour", "leathery", "underdone", "overdone", "undercooked", "overcooked", "wept", "sunk", "sank", "split", "stuck", "collapsed", "cracked", "pasty", "floury", "stringy", "squashed", "scorched", "singed", "charred", "peppery", "spicy", "hot":
		return true
	}
	return false
}
