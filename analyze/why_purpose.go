package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// forNot: "for it not to burn", "for not sticking", "for the dough not get dry":
// an end that one is spared, as those new to English often put it.
func forNot(tokens []token, i int) bool {
	for j := i + 1; j+1 < len(tokens) && j <= i+4 && !tokens[j].pause(); j++ {
		if tokens[j].in("not", "n't") {
			return i > 0 && (tokens[j+1].isVerb() || tokens[j+1].norm == "to" || strings.HasSuffix(tokens[j+1].norm, "ing"))
		}
		if tokens[j].isVerb() || tokens[j].isAdv() {
			return false
		}
	}
	return false
}

// purpose: an infinitive tells what something was done for when an action
// with its object or place stands before it, and nothing that takes an
// infinitive of itself ("need to", "too hot to", "time to"). One infinitive in
// seven is of this sort (GUM; one in five in how-to guides).
func (d reasons) purpose(tokens []token, i int) bool {
	v := i + 1
	for v < len(tokens) && tokens[v].isAdv() && v < i+3 {
		v++
	}
	if guards(tokens, v) && i > 1 && !takesInfinitive(&tokens[i-1]) && !nounTakesInfinitive(&tokens[i-1]) && !tokens[i-1].isVerb() && !(tokens[i-1].isAdj() && linkingVerb(tokens[i-2].norm)) && !tokens[i-1].in("how", "what", "not", "and", "or", "is", "was", "able", "enough", "up", "about", "me", "us", "him", "her") {
		return true
	}
	if v >= len(tokens) || !(tokens[v].tag == "VB" || tokens[i].tag == "TO" && tokens[v].in("keep", "let", "stop", "make", "cut", "get", "give", "see", "help", "avoid", "cool", "rest", "dry", "set", "balance", "taste", "test", "check", "thicken")) {
		return false
	}
	if after := v + 1; after < len(tokens) && (tokens[v].norm == "be" && tokens[after].in("fair", "honest", "sure", "precise") || tokens[v].norm == "look" && tokens[after].norm == "at" || tokens[v].norm == "die") {
		return false // "to be fair", "brown to look at"
	}
	if tokens[v].in("rise", "drain", "soak", "cool", "set", "rest", "prove", "chill", "settle", "stand", "simmer", "find", "go") {
		// "I left it to rise" tells what was left to happen, not an end.
		for j := i - 1; j >= 0 && j >= i-6; j-- {
			if tokens[j].in("left", "leave", "leaving", "let", "put") && tokens[v].norm != "go" || tokens[j].in("left", "leave") {
				return false
			}
		}
	}
	if tokens[v].in("be", "have") && i > 0 && !tokens[i-1].isNoun() {
		return false
	}
	for j := i - 1; j >= 0 && j >= i-3; j-- {
		if tokens[j].norm == "from" {
			return false // "from pink to deep red"
		}
	}
	if i == 0 || tokens[i-1].pause() && tokens[i-1].norm != "," {
		return i == 0 && !tokens[v].in("be", "begin", "start", "conclude", "sum", "summarise", "finish", "summarize", "say") && hasMainClause(tokens, v) && (tokens[v].norm != "improve" || v+1 < len(tokens) && !tokens[v+1].pause())
	}
	p := &tokens[i-1]
	if p.norm == "," {
		if i < 2 {
			return false
		}
		if tokens[v].in("be", "say", "summarise") {
			return false
		}
		return true
	}
	if p.in("not", "n't", "just", "only", "simply", "mainly", "also", "and", "or", "partly", "purely") {
		if i >= 2 {
			if p.in("just", "only", "mainly", "partly", "simply", "purely") {
				p = &tokens[i-2]
			} else if p.norm == "and" || p.norm == "or" {
				return d.earlierPurpose(tokens, i-1)
			} else {
				return false
			}
		}
	}
	if i > 1 && (p.in("time", "go", "turn") && tokens[i-2].in("each", "every") || p.norm == "half" && tokens[i-2].in("in", "by") || p.in("thing", "things", "one", "bit") && tokens[i-2].isNoun()) {
		return true // "a quarter turn each time to keep it round", "cut it in half to show me"
	}
	if p.in("was", "is", "were") && i > 1 && tokens[i-2].in("this", "that", "which", "these", "all") && (i == 2 || tokens[i-3].pause() || tokens[i-3].in("and", "all", "but")) {
		return tokens[v].norm != "be" // "this was to stop the base going soggy"
	}
	if takesInfinitive(p) || p.norm == "meaning" || p.norm == "on" && i >= 2 && tokens[i-2].in("go", "goes", "went", "going", "gone") {
		return false
	}
	if p.in("how", "what", "when", "where", "which", "who", "whether", "enough", "as", "than", "about", "but", "except", "from", "up", "due", "according", "used", "next", "close", "near", "able", "back", "down", "on", "in") {
		if !p.in("up", "back", "down", "on", "in") {
			return false
		}
	}
	// an adjective: "easy to", "ready to", "too hot to"
	if p.in("early", "late", "last", "first", "low", "high", "open") && i > 2 && tokens[i-2].in("in", "on", "out", "off", "it", "them", "one", "up", "down") {
		return true // "went in early to hold the purple"
	}
	if p.isAdj() && !(i >= 2 && (tokens[i-2].tag == "DT" || tokens[i-2].isVerb() && d.actionVerb(&tokens[i-2]))) || p.in("ready", "hard", "easy", "nice", "good", "able", "likely", "keen", "happy", "difficult", "first", "last", "possible", "impossible", "important", "best", "better", "sure", "lovely", "careful", "allowed", "supposed", "meant", "set", "due", "bound", "free", "willing", "unable", "proud", "glad", "afraid", "scared", "lucky", "tempted", "starving") {
		return false
	}
	// a degree earlier: "too long to", "so … as to"
	for j := i - 1; j >= 0 && j >= i-5; j-- {
		if tokens[j].norm == "too" && !tokens[i-1].isNoun() || tokens[j].norm == "enough" {
			return false
		}
	}
	if p.isVerb() && !p.tagIn("VBD", "VBN", "VBG", "VBZ", "VBP", "VB") {
		return false
	}
	if p.isVerb() {
		// Straight behind a verb: what was done, and to what end ("stopped to
		// check", "is used to"), unless the verb takes an infinitive of itself.
		return !passiveWithInfinitive(p.norm) || p.norm == "used" && i >= 2 && tokens[i-2].in("was", "is", "were", "are", "be", "been")
	}
	// An action must stand before.
	start := clauseStart(tokens, i)
	verb := -1
	for j := i - 1; j >= start; j-- {
		if tokens[j].isVerb() && tokens[j].tag != "MD" {
			verb = j
			break
		}
	}
	if verb < 0 {
		// notes without a subject: "Cross in the top to let heat in"
		return p.isNoun() && !tokens[v].in("be", "speak", "mention") && i-start >= 2 && i-start <= 9 && (start == 0 || tokens[start-1].norm == ",") && !nounTakesInfinitive(p) && !finiteAfter(tokens, i)
	}
	w := &tokens[verb]
	if takesInfinitive(w) && w.norm != "used" || w.in("is", "was", "are", "were", "'s", "be", "been", "being", "am", "'m", "'re", "seem", "seems", "seemed", "has", "ask", "asks", "asking", "invite", "invites", "inspire", "motivated", "persuade", "persuades", "plead", "pleaded", "summon", "summoned", "commission", "commissioned", "call", "called", "calls", "voted", "urged", "urging", "ordering", "costs", "cost", "takes", "precluded", "serve", "serves", "reminding", "asked", "told", "let", "got", "get", "getting", "remind", "reminded", "teach", "taught", "expect", "expected", "helped", "help", "allowed", "allow", "allows", "allowing", "forced", "force", "cause", "caused", "encourage", "encouraged", "encouraging", "enable", "enabled", "enables", "require", "required", "persuaded", "invite", "invited", "order", "ordered", "warned", "advise", "advised", "lead", "led", "wait", "prove", "proved", "tell", "showed", "show", "urge", "urged", "prompted", "requires", "permitted", "inspired") {
		if w.in("got", "get", "getting", "has") && p.isNoun() && !(p.human()) {
			return true
		}
		return w.in("is", "was", "were", "are") && i-verb <= 2 && tokens[max(0, verb-1)].in("this", "that", "which", "all")
	}
	if p.isNoun() && nounTakesInfinitive(p) && !lasted(tokens, i) && !(p.in("hours", "minutes", "hour", "bit") && tokens[v].in("set", "cool", "rest", "chill", "rise", "prove", "firm", "soften", "dry", "thicken")) {
		return false
	}
	// "the only one to", "the most reliable way to", "the first batch to"
	for j := i - 2; j >= 0 && j >= i-5; j-- {
		if tokens[j].in("only", "first", "second", "last", "next", "most", "best", "right") || tokens[j].tag == "JJS" || tokens[j].tag == "RBS" {
			return false
		}
		if tokens[j].isVerb() || tokens[j].pause() {
			break
		}
	}
	return true
}

// guards reports whether an infinitive can only tell an end: "to stop it
// catching", "to get rid of the pips", "to save time".
func guards(tokens []token, v int) bool {
	if v+1 >= len(tokens) {
		return false
	}
	n := &tokens[v+1]
	switch tokens[v].norm {
	case "stop", "prevent", "avoid", "protect":
		return n.in("it", "them", "the", "my", "me", "any", "her", "his", "anyone", "anybody") || n.tag == "VBG"
	case "get":
		return n.norm == "rid" || n.in("the", "air", "all") && v+3 < len(tokens) && (tokens[v+3].in("off", "out", "in", "into") || tokens[v+2].in("into", "in"))
	case "give", "bulk", "lift", "balance", "brighten", "sharpen", "sweeten", "thicken", "loosen", "liven", "cut":
		return n.in("it", "them") || tokens[v].norm == "cut" && v+2 < len(tokens) && tokens[v+1].norm == "through"
	case "keep":
		return n.in("it", "them", "everything") && v+2 < len(tokens) && (tokens[v+2].isAdj() || tokens[v+2].in("from", "smooth", "still", "steady", "moist", "warm", "cold", "cool", "even", "flat"))
	case "save":
		return n.in("time", "on", "washing")
	}
	return false
}

// purposeNoun: "for crispness", "for extra flavour": a quality wanted.
func (d reasons) purposeNoun(tokens []token, i int) bool {
	for j := i + 1; j < len(tokens) && j <= i+4; j++ {
		t := &tokens[j]
		if t.in("flavour", "flavor", "crunch", "colour", "color", "crispness", "sweetness", "texture", "moisture", "safety", "hygiene", "decoration", "extra", "richness", "contrast", "freshness", "bite", "kick", "shine", "depth", "sharpness", "warmth", "taste", "gloss", "tenderness", "presentation", "garnish", "speed", "lightness", "effect", "tang", "show", "luck", "look", "looks", "zing", "snap", "chew", "steam", "grip", "comfort", "spice", "acidity", "creaminess", "smokiness", "saltiness", "sourness", "fragrance", "aroma", "balance", "height", "lift", "protection", "neatness") || t.in("heat", "life") && j > i+1 {
			return t.norm != "luck" && !(t.in("taste", "texture", "presentation", "hygiene", "safety") && j == i+1 && i > 0 && tokens[i-1].pause())
		}
		if !(t.isAdj() || t.tag == "DT" || t.in("a", "some", "more", "bit", "of", "and", "added", "that")) {
			return false
		}
	}
	return false
}

// mishap reports whether a verb tells what one guards against.
func mishap(t *token) bool {
	return t.in("slipped", "fell", "burnt", "burned", "dried", "caught", "spilt", "spilled", "dropped", "boiled", "split", "curdled", "tripped", "hurt", "melted", "overcooked", "stuck", "broke", "skidded", "scorched", "went")
}

// movedOn reports whether "went" at token i only tells where a thing was put:
// "before it went in the tin", not "before it went hard".
func movedOn(tokens []token, i int) bool {
	return tokens[i].norm == "went" && (i+1 >= len(tokens) || tokens[i+1].in("in", "into", "on", "to", "back", "even") || tokens[i+1].norm == "under")
}

// passiveWithInfinitive reports whether a verb form is followed by an
// infinitive that tells what is said, thought or allowed, not an end.
func passiveWithInfinitive(w string) bool {
	switch w {
	case "expected", "supposed", "said", "known", "believed", "intended", "meant", "allowed", "considered", "likely", "required", "forced", "thought", "found", "reported", "asked", "told", "made", "seen", "planned", "scheduled", "set", "determined", "inclined", "prepared", "encouraged", "proposed", "shown", "estimated", "assumed", "taken", "compelled", "invited", "obliged", "permitted", "tempted", "led", "lead", "leads", "happened", "used", "went", "came", "go", "come", "amounts", "amount", "according", "relates", "responded", "relating", "compared", "due", "related", "limited", "referred", "refers", "refer", "belongs", "similar", "subject", "committed", "dedicated", "opposed", "suggested", "alleged", "advised", "ordered", "instructed", "entitled", "wait", "waiting", "waited", "mean", "means", "bring", "live", "think", "do", "did", "done", "is", "was", "are", "were", "be", "been", "being", "does", "left", "gets", "gone", "let", "given", "ready", "needs", "kept", "keep", "keeps", "hard", "thanks", "promised", "doomed", "denied", "welcome", "motivated", "persuaded", "voted", "agreeing", "agreed", "accustomed", "likened", "prone", "contribute", "translates", "condenses", "rise", "rose", "precluded", "commanded", "elected", "appointed", "authorized", "designated", "inspired", "relieved", "pleased", "surprised", "delighted", "amazed", "pleaded", "sentenced", "added", "listen", "listened", "close", "closer", "speak", "spoke", "talk", "talked", "look", "looking", "say", "says", "write", "access", "returned", "return", "moved", "lived", "decides", "opted", "failing", "refusing", "deciding", "choosing", "hesitate", "struggling", "aiming", "seeking", "continuing", "proceeding", "working", "work", "worked":
		return true
	}
	return false
}

// lasted reports whether a length of time stands before token i: "for an hour
// to relax the gluten".
func lasted(tokens []token, i int) bool {
	if tokens[i-1].kind != lexicon.Time {
		return false
	}
	for j := i - 2; j >= 0 && j >= i-4; j-- {
		if tokens[j].norm == "for" {
			return true
		}
	}
	return false
}

// earlierPurpose: "to stop it sticking and to add colour".
func (d reasons) earlierPurpose(tokens []token, i int) bool {
	for j := i - 1; j >= 0 && j >= i-10; j-- {
		if tokens[j].norm == "to" {
			return d.purpose(tokens, j)
		}
	}
	return false
}

// finiteAfter reports whether a finite verb follows, so that what stands
// before token i is its subject and no note.
func finiteAfter(tokens []token, i int) bool {
	for j := i + 1; j < len(tokens) && j < i+reach; j++ {
		if t := &tokens[j]; t.tag == "VBZ" || t.tag == "VBD" || t.tag == "VBP" || t.tag == "MD" {
			return true
		}
	}
	return false
}

func hasMainClause(tokens []token, i int) bool {
	for j := i; j < len(tokens) && j < i+reach; j++ {
		if tokens[j].norm == "," || tokens[j].in("i", "we", "you", "he", "she", "they") {
			return true
		}
		if j > i+1 && j+1 < len(tokens) && tokens[j].card.works && tokens[j].isVerb() && (tokens[j+1].tagIn("DT", "PRP$", "NN", "NNS") || tokens[j+1].in("it", "them", "everything")) {
			return true // "to make it better cut everything small"
		}
	}
	return false
}

func (d reasons) actionVerb(t *token) bool { return !linkingVerb(t.norm) && !takesInfinitive(t) }
