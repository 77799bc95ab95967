package analyze

import (
	"slices"
	"strings"

	"saywhy/lexicon"
)

// comparisons adds what a list cannot hold: likenesses ("like wet cardboard",
// "as flat as a plate", "the colour of wet sand"), what a dish tasted or smelt
// of, and describing words found by their place after a verb of perception.
func (d sensing) comparisons(tokens []token, found []candidate) []candidate {
	taken := make([]bool, len(tokens))
	var more []candidate
	add := func(from, to int, sense lexicon.Sense) {
		if to <= from {
			return
		}
		for i := from; i < to; i++ {
			if taken[i] && i == from {
				return
			}
		}
		for i := from; i < to; i++ {
			taken[i] = true
		}
		more = append(more, candidate{from: from, to: to, readings: []sensed{{sense: sense}}, open: true})
	}
	d.asAThing(tokens, found)
	for n := range found {
		for i := found[n].from; i < found[n].to; i++ {
			taken[i] = true
		}
	}
	for i := range tokens {
		t := &tokens[i]
		d.stuckTo(tokens, i, add)
		heardSound(tokens, i, add)
		d.flavourFelt(tokens, i, found, add)
		d.became(tokens, i, add)
		seenThrough(tokens, i, add)
		switch {
		case t.norm == "like" && !driesLike(tokens, i) && d.likens(tokens, i) && namesThing(tokens[i+1:likenessEnd(tokens, i+1)]):
			add(i, likenessEnd(tokens, i+1), d.likenessSense(tokens, found, i))
		case t.norm == "as" && i+2 < len(tokens) && tokens[i+2].norm == "as" && (tokens[i+1].isAdj() || tokens[i+1].describes()) && i+3 < len(tokens) && (tokens[i+3].tag == "DT" || tokens[i+3].isNoun() || tokens[i+3].isAdj()):
			if tokens[i+1].in("soon", "long", "much", "well", "many", "good", "far", "bad", "quick", "fast", "easy") {
				continue
			}
			end := likenessEnd(tokens, i+3)
			sense := lexicon.Touch
			if r := d.words.singles[tokens[i+1].norm]; len(r) > 0 {
				sense = d.choose(tokens, []candidate{{from: i + 1, to: i + 2, readings: r}}, 0, "").sense
			} else if tokens[i+1].in("big", "small", "tall", "wide", "long", "thick", "thin", "flat", "black", "round") {
				sense = lexicon.Sight
			}
			// The likeness takes in the adjective.
			for n := range found {
				if found[n].from == i+1 {
					found[n].to = end
					for j := i + 1; j < end; j++ {
						taken[j] = true
					}
				}
			}
			if !taken[i+1] {
				add(i+1, end, sense)
			}
		case t.in("colour", "color", "texture", "consistency", "taste", "flavour", "smell") && i+1 < len(tokens) && tokens[i+1].norm == "of" && i > 0 && tokens[i-1].tag == "DT" && (predicateOf(tokens, i) >= 0 || i > 1 && tokens[i-1].norm == "the" && tokens[i-2].in("had", "has", "with")):
			sense, _ := senseOfNoun(t.norm)
			add(i-1, likenessEnd(tokens, i+2), sense)
		case (strings.HasPrefix(t.norm, "tast") || strings.HasPrefix(t.norm, "smel") || t.in("flavour", "aroma", "scent", "hint", "whiff", "note", "notes")) && i+1 < len(tokens) && t.norm != "tasting":
			d.tastedOf(tokens, i, add)
			d.tastedThe(tokens, i, add)
			d.onlyTasted(tokens, i, add)
		case t.in("colour", "color") && i > 0 && !taken[i-1] && (tokens[i-1].isNoun() || tokens[i-1].isAdj()) && !tokens[i-1].in("the", "food", "same", "right", "different", "main", "overall", "final", "original", "whole", "nice", "good", "lovely", "great", "natural", "more", "bad", "beautiful", "amazing", "other", "usual", "perfect", "first", "only"):
			add(i-1, i, lexicon.Sight)
		case i > 0 && d.colourOf(tokens, i):
			add(i, i+1, lexicon.Sight)
		case flavouring(t) && amountOf(tokens, i) >= 0:
			at := amountOf(tokens, i)
			add(at, i+1, lexicon.Tongue)
			for n := range found {
				if found[n].from == at { // heavy, listed by itself
					found[n] = candidate{from: at, to: i + 1, readings: []sensed{{sense: lexicon.Tongue}}, open: true}
				}
			}
		case underHeading(tokens, i) != "":
			add(i, i+1, underHeading(tokens, i))
		case closeCrumb(tokens, i):
			add(i, i+1, lexicon.Touch)
		case d.madeOfFood(t):
			add(i, i+1, foodSense(tokens, i))
		case d.openAdjective(tokens, i):
			add(i, i+1, d.likenessSense(tokens, found, i))
		}
	}
	if len(more) == 0 {
		return found
	}
	slices.SortStableFunc(more, func(a, b candidate) int { return a.from - b.from })
	return mergeCandidates(found, more)
}

// mergeCandidates puts two lists of candidates in text order and drops those
// that overlap an earlier one.
func mergeCandidates(a, b []candidate) []candidate {
	out := make([]candidate, 0, len(a)+len(b))
	for len(a) > 0 || len(b) > 0 {
		var c candidate
		if len(b) == 0 || len(a) > 0 && a[0].from <= b[0].from {
			c, a = a[0], a[1:]
		} else {
			c, b = b[0], b[1:]
		}
		if n := len(out); n > 0 && c.from < out[n-1].to {
			continue
		}
		out = append(out, c)
	}
	return out
}

// likens reports whether "like" at token i compares the food with something
// and is not a verb ("I like"), a filler or a manner of working ("like Mum
// does").
func (d sensing) likens(tokens []token, i int) bool {
	if i+1 >= len(tokens) {
		return false
	}
	next := &tokens[i+1]
	if next.tag == "WRB" || next.in("mine", "yours", "ours", "hers", "last", "when", "if") || next.in("my", "his", "her", "our", "the") && i+2 < len(tokens) && tokens[i+2].in("last", "first", "other", "usual", "one", "ones", "recipe", "picture", "photo", "previous", "nose", "mouth") {
		return false
	}
	if next.tag == "PRP" || next.in("i", "we", "that", "this", "to", "it", "them", "how", "him", "her", "lots", "crazy", "mad", "8", "an") && next.norm != "an" || next.tag == "CD" || next.kind == lexicon.Person || next.pause() || next.in("my", "his", "her", "your", "our", "their") && i+2 < len(tokens) && tokens[i+2].kind == lexicon.Person && !(i+3 < len(tokens) && (tokens[i+3].kind != lexicon.NoKind || tokens[i+3].isNoun() || tokens[i+3].norm == "'s")) {
		return false
	}
	if i > 0 {
		prev := &tokens[i-1]
		if prev.human() || prev.in("would", "'d", "did", "do", "n't", "really", "to", "not") && subjectIsHuman(tokens, i) || strings.HasPrefix(prev.tag, "MD") {
			return false
		}
	}
	if end := likenessEnd(tokens, i+1); end < len(tokens) && tokens[end].in("does", "did", "do", "says", "said", "showed", "told", "taught") {
		return false
	}
	if s := subject(tokens, i); s >= 0 && tokens[s].human() {
		if v := predicateOf(tokens, i); v < 0 || !tokens[v].in("came", "went", "turned") {
			return false
		}
	}
	// The nearest verb must tie a quality to the food; "opened them like a
	// book" tells the manner of working.
	start := clauseStart(tokens, i)
	for j := i - 1; j >= start; j-- {
		t := &tokens[j]
		if t.describes() {
			break
		}
		if t.isVerb() && !d.judges(t) {
			if !linkingVerb(t.norm) && !t.in("set", "had", "has", "broke", "fell", "ate", "cut", "pulled", "hung", "sat", "stood", "rolled", "tore", "snapped", "melted") {
				return false
			}
			break
		}
	}
	for j := i + 1; j < len(tokens) && j < i+6; j++ {
		if tokens[j].isNoun() || tokens[j].tag == "VBG" {
			return true
		}
	}
	return false
}

func subjectIsHuman(tokens []token, i int) bool {
	s := subject(tokens, i)
	return s >= 0 && tokens[s].human()
}

// likenessEnd returns the token behind the noun phrase that starts at i, with
// one "of" or "in" phrase.
func likenessEnd(tokens []token, i int) int {
	j, noun := i, false
	for j < len(tokens) && j < i+9 {
		t := &tokens[j]
		switch {
		case t.isNoun() || t.kind != lexicon.NoKind && !t.isVerb():
			noun = true
		case t.tag == "VBG" && !noun:
		case noun && t.in("of", "in", "on", "for", "from") && j+1 < len(tokens) && (tokens[j+1].isNoun() || tokens[j+1].tag == "DT" || tokens[j+1].isAdj() || tokens[j+1].tag == "PRP$"):
			if t.norm != "of" {
				return j
			}
			noun = false
		case noun && t.norm == "'s" && j+1 < len(tokens) && tokens[j+1].word:
			noun = false // "like my nan's kitchen"
		case noun:
			return j
		case t.tag == "DT" || t.isAdj() || t.tag == "VBN" || t.tag == "VBG" || t.tag == "PRP$" || t.tag == "CD" || t.isAdv() || t.in("'s"):
		default:
			return j
		}
		j++
	}
	return j
}

// likenessSense decides which sense a likeness speaks to: by the verb, by the
// listed word it stands beside, else texture, to which most likenesses belong.
func (d sensing) likenessSense(tokens []token, found []candidate, i int) lexicon.Sense {
	if v := predicateOf(tokens, i); v >= 0 {
		if s, ok := senseOfVerb(tokens[v].norm); ok {
			return s
		}
		if s := subject(tokens, v); s >= 0 {
			if sense, ok := senseOfNoun(tokens[s].norm); ok {
				return sense
			}
		}
	}
	if i > 0 && (tokens[i-1].in("rose", "risen", "towered") || i > 1 && tokens[i-2].in("rose", "risen") && tokens[i-1].norm == "up") {
		return lexicon.Sight
	}
	for j := i - 1; j >= 0 && j >= i-4; j-- {
		if s, ok := senseOfNoun(tokens[j].norm); ok {
			return s
		}
		if s, ok := senseOfVerb(tokens[j].norm); ok {
			return s
		}
	}
	if s, ok := d.named(tokens, i); ok && predicateOf(tokens, i) < 0 {
		return s
	}
	for j := i + 1; j < len(tokens) && j <= i+2; j++ {
		switch tokens[j].stem {
		case "lick", "drink", "suck", "swallow":
			return lexicon.Tongue
		case "bite", "chew", "eat":
			return lexicon.Touch
		}
	}
	best, at := lexicon.Touch, -1
	for n, c := range found {
		if c.to <= i && i-c.to <= 4 && c.from > at {
			best, at = d.choose(tokens, found, n, "").sense, c.from
		}
	}
	return best
}

// tastedOf adds what a dish tasted, smelt or had a hint of: each noun of the
// list behind "of".
func (d sensing) tastedOf(tokens []token, i int, add func(int, int, lexicon.Sense)) {
	t := &tokens[i]
	sense, ok := senseOfVerb(t.norm)
	if !ok {
		sense, ok = senseOfNoun(t.norm)
	}
	if !ok {
		sense = lexicon.Tongue
		for j := max(0, i-6); j < i; j++ {
			if s, ok := senseOfVerb(tokens[j].norm); ok {
				sense = s
			}
		}
	}
	j := i + 1
	if j < len(tokens) && plainBe(tokens[j].norm) {
		j++ // "the smell was mainly of orange"
	}
	for j < len(tokens) && j <= i+5 && (tokens[j].isAdv() || tokens[j].in("mostly", "mainly", "strongly", "a", "bit", "really", "lot", "only", "just", "faintly")) {
		j++
	}
	if j >= len(tokens) {
		return
	}
	if t.norm == "smell" && i > 0 && tokens[i-1].in("could", "can", "to", "you") && (tokens[j].isNoun() || tokens[j].tag == "DT" || tokens[j].isAdj()) {
		j-- // "you could smell warm bread"
	} else if tokens[j].norm != "of" {
		return
	}
	start := j + 1
	for k := j + 1; k < len(tokens) && k <= j+12; k++ {
		n := &tokens[k]
		switch {
		case n.isNoun() || n.kind.Food():
			if k+1 < len(tokens) && (tokens[k+1].isNoun() || tokens[k+1].kind.Food() && !tokens[k+1].isVerb()) {
				continue
			}
			for start < k && (tokens[start].tag == "DT" || tokens[start].tag == "PRP$" || tokens[start].in("some", "more")) {
				start++
			}
			if !tokens[k].human() && tokens[k].kind != lexicon.Time && !tokens[k].in("anything", "nothing", "everything", "it") {
				add(start, k+1, sense)
			}
			start = k + 1
		case n.in("and", ",", "&", "or"):
			if k+1 < len(tokens) && opensClause(tokens, k+1) {
				return
			}
			start = k + 1
		case n.norm == "with" && k+1 < len(tokens) && (tokens[k+1].isNoun() || tokens[k+1].tag == "DT" || tokens[k+1].in("some", "a", "loads", "lots")) && tokens[k-1].norm == ",":
			start = k + 1 // "of orange, with aniseed behind it"
		case n.isAdj() || n.tag == "DT" || n.tag == "VBN" || n.tag == "VBG" || n.tag == "PRP$" || n.isAdv():
		default:
			return
		}
	}
}

// tastedThe adds what could or could not be tasted or smelt: "you could taste
// the vinegar", "couldn't smell the basil". What somebody tasted to try it is no
// description ("I tasted the sauce"): that needs a verb of being able, and an
// ingredient.
func (d sensing) tastedThe(tokens []token, i int, add func(int, int, lexicon.Sense)) {
	t := &tokens[i]
	sense, ok := senseOfVerb(t.norm)
	if !ok || !t.in("taste", "smell") {
		return
	}
	able := false
	for j := i - 1; j >= 0 && j >= i-4 && !able; j-- {
		able = tokens[j].in("could", "can", "couldn't", "cant", "couldnt", "couldn", "can't", "only", "just", "still", "really", "barely", "hardly", "cannot")
		if !able && !tokens[j].isAdv() && tokens[j].tag != "PRP" {
			break
		}
	}
	if !able {
		return
	}
	start := i + 1
	for k := i + 1; k < len(tokens) && k <= i+9; k++ {
		n := &tokens[k]
		switch {
		case n.kind == lexicon.Ingredient:
			if k+1 < len(tokens) && tokens[k+1].kind == lexicon.Ingredient {
				continue
			}
			add(start, k+1, sense)
			start = k + 1
		case n.tag == "DT" || n.tag == "PRP$" || n.in("and", ",", "or", "all", "much", "of", "any") || n.isAdj() && !n.describes():
			start = k + 1
		default:
			return
		}
	}
}

// openAdjective reports whether token i is a describing word that no list has:
// an adjective said of the food after taste, smell, look or feel, or one in -y
// after be.
func (d sensing) openAdjective(tokens []token, i int) bool {
	t := &tokens[i]
	if !t.isAdj() || t.describes() || len(t.norm) < 4 || i == 0 || d.judges(t) || t.card.stemJudges || plainAdjective(t.norm) {
		return false
	}
	if tokens[i-1].tag == "PRP$" {
		return false // "my neibour": a noun that the tagger does not know
	}
	v := predicateOf(tokens, i)
	if v < 0 || i-v > 4 {
		return false
	}
	_, perceives := senseOfVerb(tokens[v].norm)
	if !perceives && !(strings.HasSuffix(t.norm, "y") && tokens[v].in("was", "were", "is", "are", "went", "came", "turned", "got")) {
		return false
	}
	if i+1 < len(tokens) && (tokens[i+1].isNoun() || tokens[i+1].in("to", "that", "about", "with")) {
		return false
	}
	return !d.inertSubject(tokens, candidate{from: i, to: i + 1})
}

// namesThing reports whether a likeness names something it is like; "like
// proper golden" and "like a minute" only fill.
func namesThing(likeness []token) bool {
	for i := range likeness {
		switch t := &likeness[i]; {
		case t.kind == lexicon.Time:
			return false
		case t.isNoun() && t.norm != "nothing", t.kind != lexicon.NoKind, t.tag == "VBG":
			return true
		}
	}
	return false
}

// colourOf reports whether token i tells the colour in "the colour was (a)
// blazing marigold": the last noun or adjective of what is said of it.
func (d sensing) colourOf(tokens []token, i int) bool {
	t := &tokens[i]
	if !t.isNoun() && !t.isAdj() || t.describes() || d.judges(t) || t.card.stemJudges || plainAdjective(t.norm) {
		return false
	}
	if i+1 < len(tokens) && (tokens[i+1].isNoun() || tokens[i+1].isAdj()) {
		return false
	}
	v := predicateOf(tokens, i)
	if v < 0 || i-v > 4 || !tokens[v].in("was", "is", "'s", "were", "are", "turned", "went") {
		return false
	}
	s := subject(tokens, v)
	return s >= 0 && tokens[s].in("colour", "color", "colours")
}

func (d sensing) judges(t *token) bool { return t.card.judges || t.card.judging }

// plainAdjective reports whether an adjective, after a verb of perception or
// be, tells nothing that is sensed.
func plainAdjective(w string) bool {
	switch w {
	case "happy", "easy", "ready", "busy", "tricky", "angry", "early", "lucky", "sorry", "funny", "silly", "healthy", "hungry",
		"guilty", "crazy", "worthy", "wary", "scary", "messy", "dirty", "tidy", "pricey", "fussy", "handy", "risky", "lazy", "only", "likely", "daily", "homely", "friendly", "grumpy", "sleepy", "clumsy", "fiddly", "worry", "speedy", "greedy", "steady",
		"different", "same", "similar", "right", "wrong", "real", "sure", "able", "proud", "pleased", "confident", "nervous", "scared", "worried", "sad",
		"safe", "clean", "professional", "homemade", "home-made", "done", "finished", "more", "less", "other", "much", "little", "good", "expensive", "cheap",
		"complicated", "simple", "special", "normal", "strange", "stressed", "tired", "forward", "important", "necessary", "possible", "new", "old", "whole",
		"stressful", "difficult", "quick", "slow", "long", "short", "first", "last", "next", "second", "full", "used", "unsure", "odd", "weird", "bigger", "smaller", "careful", "independent", "organised", "hygienic":
		return true
	}
	return false
}
