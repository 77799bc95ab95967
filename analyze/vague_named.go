package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// namedWork is a piece of work that is told of by evidence of its own, and not by
// whatever else was done that day.
type namedWork string

const (
	tidying namedWork = "tidying"  // a place to work at, or clearing it: what was put away, wiped, left lying
	cutting namedWork = "cutting"  // how the knife was held, how the pieces came out
	byHand  namedWork = "handling" // "sealing them", "getting it out of the tin": what became of them
	skills  namedWork = "skills"   // "my pastry skills": what was done to the pastry
)

// nameOfWork returns the piece of work that the subject at token n of the verb at
// token p names.
func nameOfWork(tokens []token, n, p int) namedWork {
	start := clauseStart(tokens, p)
	for k := start; k < p && k < start+4; k++ {
		if tokens[k].in("clearing", "tidying", "washing", "washing-up", "clear-up", "cleaning", "clean-up") && (k+1 < p && tokens[k+1].norm == "up" || k+1 == p || tokens[k].norm[len(tokens[k].norm)-1] == 'p' || k == n) {
			return tidying
		}
	}
	if workPlace(tokens, n) {
		return tidying
	}
	t := &tokens[n]
	before := &tokens[max(0, n-1)]
	switch {
	case t.in("skills", "skill", "work") && before.norm == "knife", t.in("up", "dicing", "slicing") && before.in("cutting", "chopping", "my", "his", "her", "your", "the"):
		return cutting
	case t.in("skills", "skill") && n > 0 && before.kind.Food():
		return skills
	}
	return ""
}

// workPlace reports whether the noun at token n names where somebody works.
func workPlace(tokens []token, n int) bool {
	t := &tokens[n]
	if t.in("workstation", "workspace", "bench", "worktop", "worktops", "workbench", "kitchen", "sink") {
		return true
	}
	if n == 0 || !t.in("area", "station", "section", "space", "side", "sides", "surfaces", "counter", "unit") {
		return false
	}
	return tokens[n-1].in("my", "your", "his", "her", "our", "their", "work", "cooking", "prep", "working") || tokens[n-1].norm == "'s"
}

// pastime reports whether the noun at token n is of the time that was spent ("a lovely
// afternoon", "a lovely way to spend a wet day").
func pastime(tokens []token, n int) bool {
	if tokens[n].in("day", "evening", "morning", "afternoon", "time", "hour", "weekend") {
		return n == 0 || !tokens[n-1].in("cooking", "prep", "this", "next", "last", "resting")
	}
	return tokens[n].norm == "way" && between(tokens, n, min(n+5, len(tokens)), "spend", "pass", "start", "end", "finish", "celebrate")
}

// shareOf returns the food of which the judged share or helping at token i is ("piece of fish"),
// or -1.
func shareOf(tokens []token, i int) int {
	if i+2 >= len(tokens) || !tokens[i].in("bit", "piece", "slice", "plate", "bowl", "lump", "cut", "slab", "hunk", "mug", "chunk", "joint", "drop", "batch", "plateful", "bowlful") || tokens[i+1].norm != "of" {
		return -1
	}
	if h := objectHead(tokens, i+1); h >= 0 && tokens[h].kind.Food() {
		return h
	}
	return -1
}

// setAgainst reports whether "than mine" or the like follows within a few words of token i.
func setAgainst(tokens []token, i int) bool {
	for k := i; k+1 < len(tokens) && k < i+4; k++ {
		if tokens[k].norm == "than" {
			return tokens[k+1].in("mine", "yours", "hers", "his", "ours", "theirs")
		}
	}
	return false
}

// pickedOut reports whether the noun at token n is one of several, told apart by the word
// before it ("that bit", "the pink half", "the square ones").
func pickedOut(tokens []token, n int) bool {
	if n == 0 || someOf(tokens[n-1].norm) {
		return false
	}
	before := &tokens[n-1]
	told := before.isAdj() || before.isNoun() || before.describes()
	return tokens[n].in("bit", "part", "side", "half", "end") && (told || before.in("that", "this")) || tokens[n].in("one", "ones") && told
}

// gerund reports whether a noun names something done ("Piping was fun").
func gerund(t *token) bool {
	return strings.HasSuffix(t.norm, "ing") && !t.kind.Food() && len(t.norm) > 5 && !t.in("everything", "something", "anything", "nothing")
}

// laidOut reports whether a noun names how food was laid out, which is told by
// doing it as much as by how it looked.
func laidOut(t *token) bool { return t.in("presentation", "decoration", "plating") }

// judgedArea returns the area of work that the clause names.
func judgedArea(tokens []token, v *vagueWord) lexicon.Area {
	for i := clauseStart(tokens, v.from); i < clauseEnd(tokens, v.to-1); i++ {
		if a := areaOfNoun(tokens[i].norm); a != "" {
			return a
		}
	}
	return ""
}

// areaOfNoun returns the area of work that a noun names.
func areaOfNoun(w string) lexicon.Area {
	switch singular(w) {
	case "safety":
		return lexicon.Safety
	case "hygiene", "cleanliness":
		return lexicon.Hygiene
	case "organisation", "timing", "planning", "timekeeping", "time", "management":
		return lexicon.Organisation
	case "independence":
		return lexicon.Independence
	case "technique", "skill", "chopping", "kneading", "rolling", "crimping", "whisking", "folding", "slicing":
		return lexicon.Technique
	}
	return ""
}

// portion reports whether a noun names a helping or a share and no thing of its
// own.
func portion(t *token) bool {
	return t.in("slice", "piece", "bite", "mouthful", "plate", "portion", "batch", "meal", "one", "ones", "result", "bit", "part", "bits", "thing", "go", "time", "mine")
}

// someOf reports whether a word picks out some of several.
func someOf(w string) bool {
	switch w {
	case "rest", "other", "others", "second", "first", "last", "third":
		return true
	}
	return false
}

// wiseArea returns the area of work that a sentence opens with ("Time wise it was good").
func wiseArea(tokens []token, before int) lexicon.Area {
	if before < 2 || len(tokens) < 3 {
		return ""
	}
	if w, ok := strings.CutSuffix(tokens[0].norm, "-wise"); ok {
		return areaOfNoun(w)
	}
	if tokens[1].norm == "wise" || tokens[1].norm == "-" && tokens[2].norm == "wise" {
		return areaOfNoun(tokens[0].norm)
	}
	return ""
}
