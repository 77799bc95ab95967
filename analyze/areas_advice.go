package analyze

import (
	"slices"
	"strings"

	"saywhy/lexicon"
)

// advice finds what is to be done another time, told as an instruction: a bare
// verb at the start of a clause, with nobody before it who did it ("Turn the
// tins round after ten minutes"). An adult's always counts. A learner writes
// steps in the same way, so that theirs counts where it compares ("roll it
// thinner"), forbids ("don't scrape"), or stands as what follows from something
// ("so put the dressing on last").
func (d areas) advice(s *sentence, role Role) []sign {
	for i := range s.tokens {
		if !opensInstruction(s.tokens, i) || !instructs(s.tokens, i, role) {
			continue
		}
		if role == Adult || compares(s.tokens, i) || i > 0 && s.tokens[i-1].in("think", "reckon", "says", "reckons") || s.tokens[i].in("do", "don't") || concluded(s.tokens, i) {
			return []sign{{area: lexicon.Improvement, told: true, from: i, to: i + 1}}
		}
	}
	return nil
}

// mendsIt reports whether a learner's sentence is an instruction from its first
// word on ("Use a rack.", "Soak the sticks."). Behind a fault it tells what to do about it.
func mendsIt(s *sentence) bool {
	return len(s.tokens) > 2 && (s.tokens[0].tag == "VB" || actsOnNext(s.tokens, 0)) && instructs(s.tokens, 0, Learner) && !verbPast(s.tokens)
}

// verbPast reports whether a verb in the past stands among the tokens.
func verbPast(tokens []token) bool {
	return slices.ContainsFunc(tokens, func(t token) bool { return t.tag == "VBD" })
}

// opensInstruction reports whether an instruction can begin with token i.
func opensInstruction(tokens []token, i int) bool {
	if i == 0 {
		return true
	}
	before := &tokens[i-1]
	if before.norm == "," {
		return i > 2
	}
	if before.in("think", "reckon", "guess", "say", "suggest") {
		return i == 1 || tokens[i-2].norm == "i" // "and i think wrap them"
	}
	if before.in("says", "reckons") {
		return i > 1 && tokens[i-2].human() // "Gran says wait half an hour"
	}
	return before.in(";", ":", "--", "-", "...", "so", "maybe", "perhaps", "just", "please")
}

// instructs reports whether token i can be the bare verb of an instruction. A
// verb that is the same in the past ("cut", "put") tells a learner's step.
func instructs(tokens []token, i int, role Role) bool {
	t := &tokens[i]
	if i+1 >= len(tokens) || tokens[i+1].pause() || t.in("had", "did", "was", "mash") || strings.HasSuffix(t.norm, "ed") {
		return false
	}
	next := &tokens[i+1]
	switch {
	case t.norm == "give" && next.norm == "or":
		return false // "give or take five minutes"
	case role == Learner && i == 0 && pastAsWell(t) && !compares(tokens, i):
		return false
	case i == 0 && noteOf(tokens):
		return false
	case t.norm == "don't":
		return ordersNot(tokens, i+1)
	case t.norm == "do" && next.in("not", "n't"):
		return ordersNot(tokens, i+2)
	case t.norm == "do":
		return role == Adult && !next.in("know", "think", "mind", "like", "care", "want", "understand", "really", "have", "believe", "remember", "love", "enjoy", "prefer", "you")
	}
	if t.kind.Food() && !next.tagIn("DT", "PRP", "PRP$") {
		return false // "flour on the floor"
	}
	bare := t.tagIn("VB", "VBP") || t.norm == t.stem && t.card.works && (i == 0 || tokens[i-1].norm != ",")
	if !bare && next.tagIn("DT", "PRP", "PRP$") {
		bare = t.in("taste", "wipe", "hoover", "watch", "wear", "check", "wash", "grease", "flour", "line", "stand", "scrub", "dust", "oil", "butter", "salt", "time", "film", "sieve", "measure")
	}
	if t.tag == "VB" && next.tagIn("DT", "PRP", "PRP$") && compares(tokens, i) {
		return true // "pull it sooner", "plate it higher"
	}
	if actsOnNext(tokens, i) {
		return true
	}
	return bare && (t.card.works || t.in(
		"taste", "wipe", "hoover", "watch", "read", "wear", "ask", "use", "try", "check", "wash", "tidy", "start", "leave", "turn", "put", "cut", "move", "open", "close",
		"write", "aim", "practise", "practice", "save", "buy", "get", "take", "let", "make", "go", "spread", "trust", "serve", "keep", "give", "chuck", "pop", "remember",
		"grease", "flour", "line", "stand", "scrub", "dust", "oil", "time", "measure", "scrape", "rinse", "plan", "swap", "shut", "strip", "double", "halve", "tie", "drag", "add", "mark", "switch", "skip", "stick", "work", "wait", "bring", "hold",
	) || role == Adult && t.in("think", "have", "look"))
}

// actsOnNext reports whether token i, whatever the tagger made of it, can only be
// the verb of an instruction, as the thing to be worked on follows at once: "Soak
// the sticks", "Double it", "Strip those out". What somebody likes or thanks for is
// told in that place too.
func actsOnNext(tokens []token, i int) bool {
	t, next := &tokens[i], after(tokens, i, 1)
	if !t.word || t.in("love", "like", "enjoy", "thank", "bless", "see", "hope", "look", "know", "think", "mind", "guess", "half", "bit", "lot", "all", "both", "cook", "taste", "believe", "find", "take", "did", "let", "well", "reckon", "feel", "prefer", "wish", "say", "bet", "forget", "hate", "is", "do", "was", "have", "hence") {
		return false
	}
	if t.tag == "VB" && !t.kind.Food() && t.kind != lexicon.Tool && (i == 0 || tokens[i-1].norm != ",") {
		return next.in("it", "them", "those", "these") || next.tagIn("DT", "PRP$") && !next.in("that", "this")
	}
	if i > 0 || !t.isNoun() && t.tag != "JJ" || t.norm != t.stem && !t.card.works || t.kind == lexicon.Time {
		return false
	}
	return next.in("it", "them", "those") || next.in("the", "your") && !after(tokens, i, 2).in("same", "next", "last", "first", "day", "best")
}

// ordersNot reports whether the verb at token v behind "don't" tells what is not to
// be done, and not what the writer does not think, like or have: "get the oil too
// hot", but "know what to say", "have much to add", "get to cook".
func ordersNot(tokens []token, v int) bool {
	if v < len(tokens) && tokens[v].in("even", "really", "ever") {
		v++
	}
	if v >= len(tokens) {
		return false
	}
	t, next := &tokens[v], after(tokens, v, 1)
	switch t.norm {
	case "get", "have":
		return !next.in("to", "much", "many", "any", "time", "a", "why", "what", "how", "enough", "it") && !next.pause()
	case "think":
		return next.in("about", "of")
	case "know", "mind", "like", "care", "want", "understand", "really", "believe", "remember", "love", "enjoy", "prefer":
		return false
	}
	return true
}

// noteOf reports whether a sentence that seems to begin with a bare verb only
// names a thing ("Skin was crisp", "Rest of it") or tells what was done, by a
// form that is past as well ("Cut it open and it was brown").
func noteOf(tokens []token) bool {
	first, next := &tokens[0], &tokens[1]
	if next.tagIn("VBD", "VBZ", "MD") || next.norm == "of" || first.norm == "left" {
		return true
	}
	return pastAsWell(first) && slices.ContainsFunc(tokens[1:], func(t token) bool { return t.tag == "VBD" && !pastAsWell(&t) })
}

// pastAsWell reports whether the bare form of the verb is its past too.
func pastAsWell(t *token) bool {
	return t.in("cut", "put", "set", "let", "spread", "beat", "read", "split", "burst", "shut")
}

// concluded reports whether what begins with token i follows from what stands
// before it: "it went limp so dress it last". Who says "so I dress it last", or
// "so put it back" of a thing done, tells what was done.
func concluded(tokens []token, i int) bool {
	if i == 0 || !tokens[i-1].in("so", "please", "maybe", "perhaps") {
		return false
	}
	return !pastAsWell(&tokens[i]) ||
		slices.ContainsFunc(tokens[i:halfEnd(tokens, i)], func(t token) bool { return t.in("last", "first", "next", "straight", "instead") })
}

// underChange reports whether a sentence stands behind a heading that asks for
// a change and tells one: "Change: croutons", "Target - all one size", "Note to
// self: salt last".
func underChange(s *sentence) bool {
	at := headingEnd(s.tokens)
	if at == 0 || at >= len(s.tokens) || s.tokens[at].in("none", "nothing", "no", "n", "nope", "not") && at+3 > len(s.tokens) {
		return false
	}
	if headingArea(s.tokens) == lexicon.Improvement {
		return true
	}
	return at == 2 && s.tokens[0].in("change", "changes", "target", "targets", "suggestion", "suggestions", "improvement", "improvements", "advice", "goal", "fix", "differently") || at <= 3 && at > 1 && s.tokens[at-2].in("fix", "differently", "different", "occasion") ||
		at > 2 && s.tokens[at-2].norm == "self" && s.tokens[0].in("note", "notes", "memo") || at > 2 && s.tokens[at-2].norm == "on" && s.tokens[at-3].norm == "work"
}

// compares reports whether a comparative follows token i within a few words.
func compares(tokens []token, i int) bool {
	for j := i + 1; j < len(tokens) && j <= i+6; j++ {
		if tokens[j].in("more", "less", "thinner", "thicker", "smaller", "bigger", "longer", "sooner", "earlier", "later", "slower", "hotter", "cooler", "higher", "lower", "not") || tokens[j].tag == "JJR" {
			return true
		}
	}
	return false
}
