package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// link is how a reason is joined to what it explains.
type link int

const (
	result link = iota
	cause
	purpose
	remedy
	plan
	origin
)

// kindOf tells how the reason w is joined to the rest of its sentence.
func kindOf(tokens []token, w clause) link {
	t := &tokens[w.from]
	switch {
	case t.norm == "from" || t.norm == "where":
		return origin
	case t.norm == "so" && (plansAhead(tokens, w.from) || soThen(tokens, w.from)), t.in("would", "'d", "might", "will", "'ll", "could", "should"), besidePlan(tokens, w.from):
		return plan
	case t.norm == "as" && w.from+2 < len(tokens) && tokens[w.from+2].in("result", "consequence"):
		return result
	case t.norm == "so" && w.from+1 < len(tokens) && tokens[w.from+1].human() && !wished(tokens, w.from):
		return remedy
	case t.in("because", "since", "as", "cause", "due", "owing", "given", "seeing", "now", "down") || t.norm == "for" && w.from > 0 && tokens[w.from-1].norm == ",":
		return cause
	case t.in("for", "if", "when"), t.norm == "to" || t.norm == "in" || t.norm == "before" || t.norm == "purpose":
		return purpose
	}
	return result
}

// besidePlan reports whether the clause at token i, set beside another without
// a word, tells a change: "crystals near the lid: I'd press paper on it".
func besidePlan(tokens []token, i int) bool {
	if i == 0 || i+1 >= len(tokens) || !tokens[i-1].in(",", ";", ":", "--", "-", "–") {
		return false
	}
	return tokens[i].human() && (tokens[i+1].norm == "would" || tokens[i+1].norm == "'d" && !hadBefore(tokens, i+1)) || tokens[i].tag == "VB"
}

// hadBefore reports whether "'d" at token i stands for "had": a participle
// follows that is no bare form ("I'd rolled it").
func hadBefore(tokens []token, i int) bool {
	j := i + 1
	for j < len(tokens) && tokens[j].isAdv() {
		if tokens[j].norm == "already" {
			return true
		}
		j++
	}
	if j >= len(tokens) {
		return false
	}
	t := &tokens[j]
	if tokens[i].norm == "'d" && (t.in("everything", "all", "a", "the", "no", "his", "her", "my", "two", "three") || t.kind.Food() && t.isNoun() && !t.card.works) {
		return true // "she'd everything set out", "we'd chicken at six"
	}
	if i > 0 && tokens[i].norm == "'d" && tokens[i-1].in("he", "she", "they") && t.in("let", "run", "put", "cut", "set", "come", "left", "spread", "beat", "split", "hit") && !compares(tokens, j) {
		return true // of others a text tells what they did: "he'd let them rise"
	}
	return t.tagIn("VBN", "VBD") && !t.in("put", "cut", "let", "set", "like", "love", "spread", "split", "come", "run", "read", "hit", "beat") || t.in("left", "lost", "gone", "been", "done", "made", "got", "broken", "forgotten") || strings.HasSuffix(t.norm, "ed") && t.isVerb()
}

// plansAhead reports whether a change for another time follows "so".
func plansAhead(tokens []token, i int) bool {
	if i+1 < len(tokens) && (tokens[i+1].tag == "VB" || tokens[i+1].in("put", "go") && i+2 < len(tokens) && tokens[i+2].tagIn("DT", "PRP", "RB")) {
		return true // "so put the dressing on last"
	}
	for j := i + 1; j < len(tokens) && j <= i+5; j++ {
		if tokens[j].in("need", "needs", "needed") && j+1 < len(tokens) && (tokens[j+1].in("more", "less", "longer", "another", "a", "some") || tokens[j+1].tag == "JJR") {
			return true // "so it needed longer"
		}
		if tokens[j].in("next", "would", "'d", "maybe", "perhaps", "should", "will", "'ll", "suggestion") {
			return true
		}
	}
	return false
}

// wished reports whether the clause behind "so" tells what was meant to come
// of a step ("so I could see", "so you don't burn yourself"), not what somebody
// did next.
func wished(tokens []token, i int) bool {
	for j := i + 1; j < len(tokens) && j <= i+4; j++ {
		if tokens[j].in("could", "can", "would", "wo", "n't", "not", "did", "do", "does", "was", "were") {
			return true
		}
	}
	return false
}

// senseNamed returns the area of the sense that a noun of purpose names.
func senseNamed(t *token) []lexicon.Area {
	switch t.norm {
	case "colour", "show", "looks", "shine", "decoration":
		return []lexicon.Area{lexicon.Appearance}
	case "crunch", "bite", "texture", "crispness", "creaminess":
		return []lexicon.Area{lexicon.Texture}
	case "flavour", "taste", "sweetness", "heat", "sharpness", "tang", "zing", "kick":
		return []lexicon.Area{lexicon.Taste}
	}
	return nil
}

// dealtWith reports whether what somebody did behind "so" follows from the
// quality before it: any step but to eat it all the same.
func dealtWith(tokens []token, i int) bool {
	if asRule(tokens, i) {
		return false // "leeks are slippy so I cut them flat": how leeks are
	}
	for j := i + 2; j < len(tokens) && j <= i+6; j++ {
		t := &tokens[j]
		if !t.isVerb() {
			continue
		}
		if t.in("had", "have") {
			return j+1 < len(tokens) && tokens[j+1].norm == "to"
		}
		return !t.in("ate", "eat", "could", "can", "did", "served", "knew", "know", "guess", "guessed", "was", "were", "gave", "thought", "told")
	}
	return false
}

// verdict reports whether a clause behind "so" only says what somebody thinks of
// it all ("so fair play", "so I was satisfied", "so the wait was worth it").
func verdict(tokens []token, w clause) bool {
	if tokens[w.from].norm != "so" {
		return false
	}
	for i := w.from + 1; i < w.to && i <= w.from+6; i++ {
		t := &tokens[i]
		if t.in("satisfied", "pleased", "chuffed", "proud", "happy", "worth", "complaints", "complain", "liar", "impressed", "fair", "wrong") && !(i > 0 && tokens[i-1].norm == "went") {
			return true
		}
	}
	return false
}

// ofHelp reports whether a reason says why somebody had help or had none: no
// other work stands in its sentence, or it tells what a person could not or
// must not do ("because it was heavy", "as I've never used one").
func ofHelp(s *sentence, w clause) bool {
	other := false
	for _, a := range s.areas {
		other = other || a == lexicon.Technique || a == lexicon.Hygiene || a == lexicon.Organisation
	}
	for i := w.from; i < w.to && other; i++ {
		t := &s.tokens[i]
		if t.in("heavy", "hot", "scared", "frightened", "nervous", "strong", "strength", "weak", "allowed", "trust", "reach", "tall", "small", "young", "old", "wrist", "arm", "arms", "hands", "stiff", "stuck", "tight", "sharp", "dangerous", "safe", "safely", "burn", "cut", "hurt", "never", "first", "know", "knew", "sure", "able", "cannot", "tricky", "hard", "difficult", "alone", "help", "learn", "learnt", "practise", "independent", "allergic", "busy") ||
			t.human() && i+2 < w.to && s.tokens[i+1].in("ca", "could", "can") && s.tokens[i+2].norm == "n't" {
			return true
		}
	}
	return !other
}

// asRule reports whether the clause before "so" at token i says in the present
// how something always is, although what somebody did about it is past.
func asRule(tokens []token, i int) bool {
	for j := i - 1; j >= 0 && j >= i-reach; j-- {
		switch t := &tokens[j]; {
		case t.tag == "VBD" || t.pause():
			return false
		case t.in("is", "are", "'s", "'re", "gets", "goes", "go", "get"):
			for k := i + 1; k < len(tokens) && k <= i+4; k++ {
				if tokens[k].tag == "VBD" {
					return true
				}
			}
			return false
		}
	}
	return false
}
