package analyze

import (
	"slices"
	"strings"

	"saywhy/lexicon"
)

// toExplain returns a piece of the sentence of which it makes sense to ask why
// or how it came about, or "". Work must have been done, by whom it is asked
// of; a plan, advice, a rule of the kitchen or a slip has no purpose to tell.
// Food must be described by the sense that is asked about, in a way that
// something led to: that a thing looked green or tasted of lemon is no riddle.
func (d asking) toExplain(r *reading, s *sentence, a lexicon.Area) string {
	if s.has(lexicon.Improvement) != (a == lexicon.Improvement) {
		return ""
	}
	if len(s.vague) > 0 && resultArea(a) {
		return "" // "Layers lovely": what is meant is not told yet
	}
	quote := ""
	d.pieces(r, s, a, true, func(from, to int) bool {
		piece := s.tokens[from:to]
		if countWords(piece) < 2 {
			return false
		}
		ok := true
		switch a {
		case lexicon.Improvement:
		case lexicon.Independence:
			ok = done(piece) && handedOver(piece, r.Role)
		case lexicon.Hygiene, lexicon.Safety:
			ok = done(piece) && (doer(piece, r.Role) || isNote(piece)) && !slipped(piece) && !severalJobs(piece) &&
				(a == lexicon.Hygiene && keepsClean(piece) || a == lexicon.Safety && keepsSafe(piece)) &&
				!restHas(s.tokens, 0, len(s.tokens), "allergy", "allergies", "allergic")
		case lexicon.Organisation:
			ok = done(piece) && doer(piece, r.Role) && !slipped(piece) && !endedUp(piece) && getsReady(piece)
		case lexicon.Technique:
			ok = done(piece) && countWords(piece) > 2 && doer(piece, r.Role) && cooks(piece) && !plainest(piece) && !overdid(piece) && !severalJobs(piece) && !sharesModal(s.tokens, from) && !tellsOn(s.tokens, to) && s.tokens[0].norm != "but"
		default:
			// What is eaten raw is as it grew.
			ok = done(piece) && d.outcomeOf(s, from, to, a) && !likenessOf(piece, a) && !workBeside(s.tokens, from, to) && !(a == lexicon.Texture && r.brief.Dish.Name == "salads")
		}
		if ok {
			quote = r.Text[s.tokens[from].start:s.tokens[to-1].end]
		}
		return ok
	})
	return quote
}

// keepsSafe reports whether a piece tells of what people do only to keep from harm: that
// a lid was closed with a towel may have been for the rice.
func keepsSafe(piece []token) bool {
	if countWords(piece) < 3 || restHas(piece, 0, len(piece), "back", "away") {
		return false // "stood back" explains itself
	}
	for i := range piece {
		if t := &piece[i]; t.in("gloves", "glove", "mitts", "goggles", "bridge", "grip", "hold", "fingers", "fingertips", "claw", "guard", "handle", "handles", "careful", "carefully", "slowly", "unplugged", "off", "apron", "hair", "sleeves", "shoes", "windows", "window") {
			return true
		}
	}
	return false
}

// getsReady reports whether a piece tells of getting ready, which is done for a purpose.
func getsReady(piece []token) bool {
	for i := range piece {
		if t := &piece[i]; t.isVerb() && t.card.works || t.in("laid", "set", "weighed", "measured", "preheated", "lined", "cleared", "tidied", "prepared", "prepped", "sorted", "timer", "timers", "ready", "list") {
			return !restHas(piece, 0, len(piece), "felt", "feel")
		}
	}
	return false
}

// keepsClean reports whether a piece tells of hands, hair, a board or the like, which are
// kept clean for a purpose: that the sugar was swept up needs none.
func keepsClean(piece []token) bool {
	for i := range piece {
		if t := &piece[i]; t.kind == lexicon.Body || t.in("washed", "wash", "scrubbed", "board", "boards", "apron", "gloves", "hair", "separate", "soap", "soapy", "sleeves") {
			return true
		}
	}
	return false
}

// tellsOn reports whether the sentence goes on behind the piece that ends at token i, as
// it may with what came of it: "I scored the skin and they stayed whole".
func tellsOn(tokens []token, i int) bool {
	for ; i < len(tokens); i++ {
		if tokens[i].tagIn("VBD", "VBZ", "VBP", "MD") {
			return true
		}
	}
	return false
}

// likenessOf reports whether a piece tells a look, a smell or a taste by what it was like:
// nobody has made it like slime or Christmas.
func likenessOf(piece []token, a lexicon.Area) bool {
	return a != lexicon.Texture && restHas(piece, 0, len(piece), "like")
}

// workBeside reports whether the sentence tells, around the piece, of a job or of what
// went in, which may be what led to it: "Three chillies was brave and | my mouth was on
// fire".
func workBeside(tokens []token, from, to int) bool {
	for i := range tokens {
		if t := &tokens[i]; (i < from || i >= to) && (t.kind == lexicon.Ingredient || t.kind == lexicon.Protein || t.isVerb() && t.card.works) {
			return true
		}
	}
	return false
}

// done reports whether a piece tells what was, not what is not, is to be,
// should be or always is.
func done(piece []token) bool {
	for i := range piece {
		t := &piece[i]
		switch {
		case t.imagines() && !(t.in("could", "can") && perceived(piece, i+1)), t.negator(), t.norm == "dont", t.norm == "didnt":
			return false
		case t.in("next", "if", "needs", "need", "always", "usually", "instead", "forgot", "nearly", "almost", "let's", "please", "ought", "gonna", "last"):
			return false
		case i == 0 && t.tagIn("VB", "VBP") && !t.in("had", "cut", "put", "set", "hit", "let", "spread", "split", "shut", "read", "beat"):
			return false // an instruction
		}
	}
	return true
}

// doer reports whether a piece tells what the cook did: a person did it, or, in
// a note, it begins with what was done. An adult may speak to the cook.
func doer(piece []token, role Role) bool {
	for i := range piece {
		t := &piece[i]
		switch {
		case role == Learner && (t.in("you", "he", "she", "they") || t.kind == lexicon.Person):
			return false // somebody else did it
		case i == 0 && t.tagIn("VBD", "VBN") && !t.describes() && !linkingVerb(t.norm) && !t.in("went", "came", "got", "had", "did"):
			return true
		case t.in("i", "we") && role == Adult:
			return false
		case t.in("i", "we", "he", "she", "they", "you") || t.kind == lexicon.Person:
			for j := i + 1; j < len(piece) && j <= i+3; j++ {
				if piece[j].tagIn("VBD", "VBN") || t.norm == "i" && piece[j].tagIn("VBP", "VB") && role == Learner {
					return !linkingVerb(piece[j].norm) && !piece[j].in("went", "came", "got", "think", "thought", "found", "liked", "loved", "wanted", "like", "love", "know", "knew", "missed", "fell", "kept", "took", "finished", "poured")
				}
			}
		}
	}
	return false
}

// slipped reports whether a piece tells of what went amiss, which nobody does
// for a purpose.
func slipped(piece []token) bool {
	for i := range piece {
		if piece[i].in("ran", "run", "out", "left", "forgot", "forgotten", "lost", "late", "dropped", "spilt", "spilled", "missed", "overran", "behind", "burnt", "rushed", "split", "burst", "stuck", "tore", "broke", "fell", "sank", "collapsed", "leaked") {
			return true
		}
	}
	return false
}

// endedUp reports whether a piece tells how the work came out, which was not
// done for a purpose: "finished eight minutes early".
func endedUp(piece []token) bool {
	for i := range piece {
		if piece[i].in("done", "in", "took", "after") && i+2 < len(piece) && piece[i+1].tag == "CD" && piece[i+2].kind == lexicon.Time {
			return true // "Done in 25 minutes"
		}
		if piece[i].in("finished", "ended", "managed", "early", "overtime", "struggled", "lasted", "waited", "began", "started", "spent") || piece[i].in("took") && i+2 < len(piece) && piece[i+2].tag == "CD" {
			return true
		}
	}
	return false
}

// isNote reports whether a piece is a short note without a verb that says of
// something what it was like: "hair in a bobble".
func isNote(piece []token) bool {
	for i := range piece {
		if piece[i].tagIn("VBZ", "VBP", "MD", "VB") || linkingVerb(piece[i].norm) || piece[i].describes() {
			return false
		}
	}
	for i := range piece {
		if t := &piece[i]; t.kind == lexicon.Body || t.kind == lexicon.Cloth || t.in("hair", "apron", "sleeves", "gloves") {
			return countWords(piece) <= 6
		}
	}
	return false
}

// cooks reports whether a piece tells of a step of cooking.
func cooks(piece []token) bool {
	for i := range piece {
		if t := &piece[i]; t.isVerb() && t.card.works && !t.in("tasted", "served", "tested", "checked", "weighed", "measured", "washed", "wiped", "prepared", "cooked", "made", "used") {
			return true
		}
	}
	return false
}

// plainest reports whether a piece tells only that something was cut up, of which
// there is nothing to explain: "chopped onion".
func plainest(piece []token) bool {
	for i := range piece {
		if t := &piece[i]; (t.isVerb() || t.tagIn("JJ", "NN")) && t.card.works && t.kind != lexicon.Ingredient && !t.in("chopped", "cut", "sliced", "diced", "peeled", "grated", "chop", "slice", "peel", "grate", "jointed", "halved", "quartered", "cored", "trimmed", "shaped", "melted", "mixed") {
			return false
		}
	}
	return true
}

// overdid reports whether a piece tells of a job that went too far: "I overmixed it".
func overdid(piece []token) bool {
	return slices.ContainsFunc(piece, func(t token) bool { return strings.HasPrefix(t.norm, "over") && strings.HasSuffix(t.norm, "ed") })
}

// severalJobs reports whether a piece lists jobs one behind another, so that a
// question about it would not say which is meant: "sieved, mixed in cream".
func severalJobs(piece []token) bool {
	jobs := 0
	for i := range piece {
		if piece[i].norm == "," {
			return true // "Onions cut thin, I wore goggles"
		}
		if t := &piece[i]; (t.tagIn("VBD", "VBN") || strings.HasSuffix(t.norm, "ed") && !t.describes()) && t.card.works && (i == 0 || piece[i-1].in(",", "and", "then", "&", "+") || piece[i-1].human()) {
			jobs++
		}
	}
	return jobs > 1
}

// handedOver reports whether a piece tells of a job that somebody else did than
// the cook, or of help.
func handedOver(piece []token, role Role) bool {
	for i := range piece {
		t := &piece[i]
		if role == Learner && t.in("me", "i", "we") && i < 4 {
			return false // done together
		}
		if !(role == Learner && (t.in("he", "she", "they") || t.kind == lexicon.Person) || role == Adult && t.norm == "i") {
			continue
		}
		for j := i + 1; j < len(piece) && j <= i+2; j++ {
			if v := &piece[j]; v.in("scraped", "licked", "cleared", "finished", "tasted") {
				return false // "my brother scraped the dish": he ate
			} else if v.tag == "VBD" && (v.card.works || v.in("helped", "carried", "did", "held", "lifted", "opened", "poured", "drained", "lit", "turned", "took", "put", "showed", "opened", "reached")) {
				return j+1 < len(piece)
			}
		}
	}
	return false
}

// outcomeOf reports whether a piece describes food by the sense in a way that
// something led to.
func (d asking) outcomeOf(s *sentence, from, to int, a lexicon.Area) bool {
	piece := s.tokens[from:to]
	described := false
	for _, w := range s.sensory {
		if w.sense.Area() != a || w.supposed || w.other || w.denied || w.from < from || w.to > to {
			continue
		}
		told := true
		for i := w.from; i < w.to; i++ {
			told = told && !ofItself(s.tokens[i].norm, a) && !doneTo(s.tokens, i)
		}
		described = described || told
	}
	if !described {
		return false
	}
	if a == lexicon.Aroma || a == lexicon.Appearance && restHas(piece, 0, len(piece), "with", "bits", "streaks", "spots", "specks") {
		return false // what smells, or shows in it, is what went in
	}
	for i := range piece {
		t := &piece[i]
		if t.in("of", "from") && (a == lexicon.Taste || a == lexicon.Aroma) {
			return false // "tasted of onion": told
		}
		if a == lexicon.Taste && t.kind == lexicon.Ingredient && i+1 < len(piece) && plainBe(piece[i+1].norm) {
			return false // "the lemon was strong": as lemons are
		}
		if t.human() && !(i+1 < len(piece) && (perceived(piece, i+2) || piece[i+1].in("saw", "felt", "noticed", "tasted", "smelt"))) {
			return false // somebody's doing, or liking
		}
	}
	if restHas(piece, 0, len(piece), "your", "you") && slices.ContainsFunc(piece, func(t token) bool { return t.tagIn("VBZ", "VBP") }) {
		return false // "it sticks in your teeth": as such food does
	}
	first := &piece[0]
	if first.isVerb() && first.card.works && len(piece) > 2 && piece[1].in("in", "on", "over", "through") && foodAt(piece, 2) {
		return false // "swirled in raspberries": what was done
	}
	if first.norm == "bit" && len(piece) > 1 && piece[1].norm == "heavy" || first.isVerb() && first.card.works && objectHead(piece, 0) > 0 || len(piece) > 1 && first.card.works && piece[1].norm == "by" {
		return false // "heavy on the salt"; "layered tatties on top"
	}
	return !(first.tagIn("VBD", "VBN", "VBG", "VB", "VBP") && !first.describes() && !linkingVerb(first.norm) && !first.in("came", "went", "got", "turned"))
}

// doneTo reports whether a word of look names what the cook did to the food, and
// no state it was in: "lamb browned in batches".
func doneTo(tokens []token, i int) bool {
	t := &tokens[i]
	if !t.in("browned", "seared", "charred", "toasted", "roasted", "caramelised", "melted", "blitzed", "whipped") || !t.isVerb() {
		return false
	}
	for j := i - 1; j >= 0 && j >= i-3; j-- {
		if linkingVerb(tokens[j].norm) || tokens[j].in("had", "has", "got", "came") {
			return false
		}
	}
	return i+1 < len(tokens) && tokens[i+1].tagIn("IN", "DT", "PRP$", "TO")
}

// ofItself reports whether a word tells what an ingredient brings of itself,
// the colour of a leaf or the taste of a fruit.
func ofItself(word string, a lexicon.Area) bool {
	switch a {
	case lexicon.Appearance:
		switch word {
		case "green", "red", "orange", "purple", "white", "yellow", "pink", "colourful", "beige", "blue", "multicoloured", "colours", "bright", "big", "small", "rainbow", "bubbled", "bubbling", "bubbles", "spat", "spitting", "steam", "steaming", "smoking", "sizzled", "sizzling", "sizzle":
			return true
		}
	case lexicon.Texture:
		switch word {
		case "juicy", "fresh", "cold", "icy", "frozen", "wobbled", "wobble", "wobbly", "stringy":
			return true
		}
	case lexicon.Taste, lexicon.Aroma:
		switch word {
		case "cheesy", "buttery", "creamy", "milky", "nutty", "fruity", "garlicky", "herby", "lemony", "limey", "citrusy", "minty", "gingery", "peppery", "oniony", "chocolatey",
			"chocolaty", "vanilla", "eggy", "meaty", "fishy", "spicy", "salty", "smoky", "smokey", "strong", "tart", "sour", "sharp", "burnty", "acidic", "under-seasoned", "underseasoned", "overseasoned", "over-seasoned", "seasoned", "mustardy", "vinegary", "tomatoey", "sweet", "savoury", "tangy", "hot", "malty", "fresh", "through", "came", "come", "comes":
			return true
		}
	}
	return false
}
