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
		case t.norm == "like" && !driesLike(tokens, i) && d.likens(tokens, i) && (namesThing(tokens[i+1:likenessEnd(tokens, i+1)]) || smeltBefore(tokens, i)):
			add(i, likenessEnd(tokens, i+1), d.likenessSense(tokens, found, i))
		case t.norm == "as" && i+2 < len(tokens) && tokens[i+2].norm == "as" && (tokens[i+1].isAdj() || tokens[i+1].describes()) && i+3 < len(tokens) && (tokens[i+3].tag == "DT" || tokens[i+3].isNoun() || tokens[i+3].isAdj()):
			if tokens[i+1].in("soon", "long", "much", "well", "many", "good", "far", "bad", "quick", "fast", "easy") {
				continue
			}
			end := likenessEnd(tokens, i+3)
			sense := lexicon.Touch
			if r := d.words.singles[tokens[i+1].norm]; len(r) > 0 {
				sense = d.choose(tokens, []candidate{{from: i + 1, to: i + 2, readings: r}}, 0, "").sense
			}
			if tokens[i+1].in("thick", "thin", "thicker") && seenThing(tokens, i+2) {
				sense = lexicon.Sight // "as thick as my thumb"
			} else if sense == lexicon.Touch && len(d.words.singles[tokens[i+1].norm]) == 0 && tokens[i+1].in("big", "small", "tall", "wide", "long", "thick", "thin", "flat", "black", "round") {
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
		case t.in("size", "shape") && i > 1 && i+2 < len(tokens) && tokens[i+1].norm == "of" && tokens[i-1].norm == "the" && (plainBe(tokens[i-2].norm) || tokens[i-2].norm == "to" && i > 2 && tokens[i-3].in("shrank", "shrunk", "shrink", "grew", "swelled", "rose", "grown", "puffed")) && !d.inertSubject(tokens, candidate{from: i - 1, to: i}):
			add(i-1, likenessEnd(tokens, i+2), lexicon.Sight)
		case t.in("colour", "color", "texture", "consistency", "taste", "flavour", "smell") && i+1 < len(tokens) && tokens[i+1].norm == "of" && i > 0 && tokens[i-1].tag == "DT" && (predicateOf(tokens, i) >= 0 || i > 1 && tokens[i-1].norm == "the" && tokens[i-2].in("had", "has", "with")):
			sense, _ := senseOfNoun(t.norm)
			add(i-1, likenessEnd(tokens, i+2), sense)
		case (strings.HasPrefix(t.norm, "tast") || strings.HasPrefix(t.norm, "smel") || reeks(t.norm) || t.in("aftertaste", "flavour", "aroma", "scent", "hint", "whiff", "note", "notes")) && i+1 < len(tokens) && t.norm != "tasting":
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
		case !taken[i] && d.hinted(tokens, i, found).to > 0:
			f := d.hinted(tokens, i, found)
			add(i, f.to, f.sense)
		case feltAt(tokens, i).to > 0:
			f := feltAt(tokens, i)
			add(i, f.to, f.sense)
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

// openAdjective reports whether token i is a describing word that no list has:
// an adjective said of the food after taste, smell, look or feel, or one in -y
// after be.
func (d sensing) openAdjective(tokens []token, i int) bool {
	t := &tokens[i]
	if !t.isAdj() || t.describes() || len(t.norm) < 4 || i == 0 || d.judges(t) || t.card.stemJudges || plainAdjective(t.norm) {
		return false
	}
	if tokens[i-1].tag == "PRP$" || strings.HasSuffix(t.norm, "ly") || t.text[0] >= 'A' && t.text[0] <= 'Z' && i > 0 && strings.ToUpper(t.text) != t.text {
		return false // "my neibour", "basicly", "Molly": words that the tagger does not know
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
		"stressful", "difficult", "quick", "slow", "long", "short", "first", "last", "next", "second", "full", "used", "unsure", "odd", "weird", "bigger", "smaller", "careful", "independent", "organised", "hygienic", "proper", "dead", "well", "plenty", "many", "filthy", "sort", "kind", "bit", "lot", "thirsty", "noisy", "thirty", "twenty", "forty", "fifty", "comfy", "poorly", "unlucky", "hasty", "wobbly-legged", "comforting", "soothing", "moreish", "welcoming":
		return true
	}
	return false
}
