package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// reach is how many tokens a rule looks to the left or right at most. It keeps
// the work linear in the length of a sentence that never ends.
const reach = 24

func (t *token) isNoun() bool { return strings.HasPrefix(t.tag, "NN") }

func (t *token) isVerb() bool { return strings.HasPrefix(t.tag, "VB") || t.tag == "MD" }

func (t *token) isAdj() bool { return strings.HasPrefix(t.tag, "JJ") }

func (t *token) isAdv() bool { return strings.HasPrefix(t.tag, "RB") }

// describes reports whether the word is on the sensory list.
func (t *token) describes() bool { return len(t.card.sensed) > 0 }

// in reports whether the token is one of the words.
func (t *token) in(words ...string) bool {
	for _, w := range words {
		if t.norm == w {
			return true
		}
	}
	return false
}

// pause reports whether the token is a mark between clauses.
func (t *token) pause() bool {
	if t.word {
		return false
	}
	switch t.norm {
	case ",", ";", ":", "--", "-", "(", ")", "...", ".", "!", "?", "=", "/":
		return true
	}
	return t.tag != "" && t.norm != "'" && t.norm != `"`
}

// joins reports whether the token can begin a new clause.
func (t *token) joins() bool {
	switch t.norm {
	case "but", "so", "because", "which", "when", "while", "whilst", "as", "since", "although", "though", "then",
		"if", "until", "till", "unless", "after", "before", "where", "who", "that", "whereas":
		return true
	}
	return false
}

// clauseStart returns the first token of the clause that token i stands in:
// behind the last mark or joining word, or behind an "and" that a new subject
// follows.
func clauseStart(tokens []token, i int) int {
	for j := i - 1; j >= 0 && j >= i-reach; j-- {
		t := &tokens[j]
		if t.norm == "," && listComma(tokens, j) {
			continue
		}
		if t.pause() {
			return j + 1
		}
		switch t.norm {
		case "so", "as", "that", "then", "after", "before", "until", "till", "since", "and", "or", "+", "&", "plus":
			if opensClause(tokens, j+1) {
				return j + 1
			}
		default:
			if t.joins() {
				return j + 1
			}
		}
	}
	return max(0, i-reach)
}

// listComma reports whether a comma only divides adjectives or nouns of a list.
func listComma(tokens []token, j int) bool {
	if j == 0 || j+1 >= len(tokens) {
		return false
	}
	a, b := &tokens[j-1], &tokens[j+1]
	return a.isAdj() && b.isAdj()
}

// clauseEnd returns the token behind the last of the clause token i stands in.
func clauseEnd(tokens []token, i int) int {
	for j := i + 1; j < len(tokens) && j <= i+reach; j++ {
		t := &tokens[j]
		if t.norm == "," && listComma(tokens, j) {
			continue
		}
		if t.pause() {
			return j
		}
		switch t.norm {
		case "that":
		case "and", "so", "as", "after", "before", "until", "till", "since":
			if opensClause(tokens, j+1) {
				return j
			}
		default:
			if t.joins() {
				return j
			}
		}
	}
	return min(len(tokens), i+reach)
}

// opensClause reports whether a subject and its verb begin at token i.
func opensClause(tokens []token, i int) bool {
	for i < len(tokens) && (tokens[i].isAdv() || tokens[i].in("then", "so", "also", "just")) {
		i++
	}
	if i >= len(tokens) {
		return false
	}
	t := &tokens[i]
	if t.tag == "PRP" && !t.in("them", "him", "me", "us") || t.points() {
		return i+1 < len(tokens) && (tokens[i+1].isVerb() || tokens[i+1].isAdv() || tokens[i+1].in("'s", "'m", "'ve", "'d", "'ll", "was", "did"))
	}
	if t.tag == "DT" || t.tag == "PRP$" || t.isNoun() || t.isAdj() || t.tag == "CD" {
		for j := i + 1; j < len(tokens) && j <= i+5; j++ {
			switch {
			case tokens[j].tag == "VBD" || tokens[j].tag == "VBZ" || tokens[j].tag == "VBP" || tokens[j].tag == "MD":
				return true
			case tokens[j].isNoun() || tokens[j].isAdj() || tokens[j].isAdv() || tokens[j].tag == "DT" || tokens[j].tag == "CD" || tokens[j].tag == "POS" || tokens[j].tag == "VBN":
			default:
				return false
			}
		}
	}
	return false
}

// points reports whether the token is a pronoun that can be the subject of a
// clause, however it is tagged.
func (t *token) points() bool {
	switch t.norm {
	case "this", "that", "these", "those", "there", "it", "he", "she":
		return true
	}
	return false
}

// phraseHead returns the noun that the word at token i stands before, or -1:
// the last noun of the run of adjectives and nouns that follows.
func phraseHead(tokens []token, i int) int {
	head := -1
	for j := i + 1; j < len(tokens) && j <= i+6; j++ {
		t := &tokens[j]
		switch {
		case t.kind == lexicon.Time || t.in("next", "last") && j+1 < len(tokens) && tokens[j+1].kind == lexicon.Time:
			return head // "tasted sour next time": no quality is said of a time
		case t.in("till", "until"):
			return head // tagged as a noun: "pink till Monday"
		case t.isNoun() || t.kind != lexicon.NoKind && !t.isVerb() && !t.isAdv() && t.tag != "IN" && !t.isAdj():
			head = j
		case head >= 0:
			return head
		case t.in("so", "then", "though", "because") && j > i+1 || t.norm == "so" && j+1 < len(tokens) && tokens[j+1].in("next", "last", "this", "it", "i", "we"):
			return head // "a bit wonky so next time"
		case t.isAdj() || t.tag == "VBN" || t.tag == "VBG" && j == i+1 || t.tag == "CD" || t.isAdv() && !linkingVerb(t.norm):
		case (t.norm == "," || t.norm == "and" || t.norm == "but" || t.norm == "or") && j+1 < len(tokens) && (tokens[j+1].isAdj() || tokens[j+1].tag == "VBN") && j > i:
		default:
			return head
		}
	}
	return head
}

// objectHead returns the head of the noun phrase that begins behind token i,
// its article or possessive included, or -1.
func objectHead(tokens []token, i int) int {
	for i+1 < len(tokens) && (tokens[i+1].tag == "DT" || tokens[i+1].tag == "PRP$" || tokens[i+1].tag == "PDT" || tokens[i+1].in("a", "the", "my", "some", "her", "his", "their", "our", "your")) {
		i++
	}
	return phraseHead(tokens, i)
}

// subject returns the head of the subject of the verb at token v, or -1: the
// last noun or pronoun before the verb that stands in no phrase of its own
// ("the top of the pie was": top).
func subject(tokens []token, v int) int {
	start := clauseStart(tokens, v)
	// A pronoun right before the verb is its subject, even where a text without
	// marks runs two sentences together: "when I knocked on the bottom it
	// sounded hollow".
	for j := v - 1; j >= start; j-- {
		if t := &tokens[j]; t.in("it", "they", "i", "we", "he", "she", "you") {
			return j
		} else if !t.isAdv() && t.tag != "MD" && !t.in("had", "has", "have", "did", "does", "do", "all", "both") {
			break
		}
	}
	head, within := -1, -1
	inPhrase := false
	for j := start; j < v; j++ {
		t := &tokens[j]
		switch {
		case (t.tag == "IN" || t.tag == "TO") && !t.in("that"):
			inPhrase = true
		case t.in("and", "&", "or", ","):
			inPhrase = false
		case inPhrase && t.tag == "PRP" && !t.in("it", "them", "him", "her", "me", "us"):
			head, inPhrase = j, false
		case inPhrase:
			if t.isNoun() || t.in("it", "them") {
				within = j
			}
		case t.tag == "PRP" || t.isNoun() || t.tag == "EX" || t.in("this", "that", "these", "those", "mine", "one", "ones", "some", "which", "everything", "inside", "outside", "bit", "rest", "it"):
			head = j
		}
	}
	if head < 0 && within >= 0 {
		return within
	}
	if head < 0 && start > 0 {
		// "the sauce, which was thin": the noun before "which" or "that".
		if tokens[start-1].in("which", "that", "who") {
			for j := start - 2; j >= 0 && j >= start-6; j-- {
				if tokens[j].isNoun() {
					return j
				}
			}
		}
	}
	return head
}

// mainVerb returns the linking verb that token i is the predicate of, or -1.
func predicateOf(tokens []token, i int) int {
	start := clauseStart(tokens, i)
	for j := i - 1; j >= start; j-- {
		t := &tokens[j]
		if t.norm == "its" && t.tag == "PRP$" && (tokens[j+1].isAdj() || tokens[j+1].kind.Food()) {
			continue // "lost its shine": no verb in it
		}
		if linkingVerb(t.norm) && (!t.isNoun() || j == start && t.in("taste", "tastes", "smell", "smells", "look", "looks", "feel", "feels")) {
			return j
		}
	}
	return -1
}

// human reports whether the token names a person.
func (t *token) human() bool {
	switch t.norm {
	case "i", "we", "you", "he", "she", "me", "us", "him", "her", "who", "myself", "everyone", "everybody", "someone", "nobody":
		return true
	}
	return t.kind == lexicon.Person
}

// inert reports whether the token names a thing that is neither food nor
// person.
func (t *token) inert() bool {
	switch t.kind {
	case lexicon.Tool, lexicon.Body, lexicon.Cloth, lexicon.Place, lexicon.Time, lexicon.Other:
		return true
	}
	return false
}

// negator reports whether the token denies what follows.
func (t *token) negator() bool {
	switch t.norm {
	case "not", "n't", "no", "never", "without", "nor", "neither", "none", "hardly", "barely", "nothing", "isnt", "lacked", "lacking", "lack", "cannot":
		return true
	}
	return false
}

// denied reports whether token i is denied in its clause: "not dry", "no
// lumps", "did not go soggy", "rather than chewy". A "not" before "only" or
// behind a "but" does not reach.
func denied(tokens []token, i int) bool {
	for j := i - 1; j >= 0 && j >= i-7; j-- {
		t := &tokens[j]
		switch {
		case t.in("but", "however", "although", "though", "because", "so") && !(t.norm == "so" && j+1 < len(tokens) && (tokens[j+1].isAdj() || tokens[j+1].isAdv())):
			return false
		case t.norm == ";" || t.norm == ":" || t.norm == "." || t.norm == "!" || t.norm == "?" || t.norm == "--" || t.norm == "...":
			return false
		case t.norm == "," && j > 0 && !tokens[j-1].isAdj() && !(j+1 < len(tokens) && (tokens[j+1].in("or", "nor") || tokens[j+1].isAdj())):
			return false
		case t.negator():
			if j+1 < len(tokens) && tokens[j+1].in("only", "just", "quite") && tokens[j+1].norm == "only" {
				return false
			}
			if t.in("no", "without", "not") && i-j > 4 && verbBetween(tokens, j, i) && t.norm != "not" {
				return false
			}
			return true
		case t.in("than", "of") && j > 0 && tokens[j-1].in("rather", "instead"):
			return true
		case t.norm == "too" && i-j > 1:
			return false
		}
	}
	return false
}

func verbBetween(tokens []token, a, b int) bool {
	for j := a + 1; j < b; j++ {
		if tokens[j].isVerb() {
			return true
		}
	}
	return false
}
