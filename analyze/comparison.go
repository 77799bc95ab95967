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
	d.asAThing(tokens, found)
	l := likening{sensing: d, tokens: tokens, found: found, taken: make([]bool, len(tokens))}
	for n := range found {
		l.take(found[n].from, found[n].to)
	}
	for i := range tokens {
		d.stuckTo(tokens, i, l.add)
		heardSound(tokens, i, l.add)
		d.flavourFelt(tokens, i, found, l.add)
		d.became(tokens, i, l.add)
		seenThrough(tokens, i, l.add)
		if !l.opens(i) {
			l.placed(i)
		}
	}
	if len(l.more) == 0 {
		return found
	}
	slices.SortStableFunc(l.more, func(a, b candidate) int { return a.from - b.from })
	return mergeCandidates(found, l.more)
}

// likening gathers what comparisons adds to the forms that were found.
type likening struct {
	sensing
	tokens []token
	found  []candidate // forms of the list
	taken  []bool      // tokens that belong to a form or to what was added
	more   []candidate // what was added
}

func (l *likening) take(from, to int) {
	for i := from; i < to; i++ {
		l.taken[i] = true
	}
}

// add adds tokens from to to with a sense, unless the first of them is taken.
func (l *likening) add(from, to int, sense lexicon.Sense) {
	if to <= from || l.taken[from] {
		return
	}
	l.take(from, to)
	l.more = append(l.more, candidate{from: from, to: to, readings: []sensed{{sense: sense}}, open: true})
}

// opens adds what the word at token i opens or names: a likeness, a size, the
// colour or taste of something. It reports whether the word is of that sort,
// though it may tell nothing here.
func (l *likening) opens(i int) bool {
	tokens, t := l.tokens, &l.tokens[i]
	switch {
	case t.norm == "like" && !driesLike(tokens, i) && l.likens(tokens, i) && (namesThing(tokens[i+1:likenessEnd(tokens, i+1)]) || smeltBefore(tokens, i)):
		l.add(i, likenessEnd(tokens, i+1), l.likenessSense(tokens, l.found, i))
	case likeAs(tokens, i):
		l.asMuchAs(i)
	case sizeOf(tokens, i) && !l.inertSubject(tokens, candidate{from: i - 1, to: i}):
		l.add(i-1, likenessEnd(tokens, i+2), lexicon.Sight)
	case t.in("colour", "color", "texture", "consistency", "taste", "flavour", "smell") && after(tokens, i, 1).norm == "of" && i > 0 && tokens[i-1].tag == "DT" && (predicateOf(tokens, i) >= 0 || i > 1 && tokens[i-1].norm == "the" && tokens[i-2].in("had", "has", "with")):
		sense, _ := senseOfNoun(t.norm)
		l.add(i-1, likenessEnd(tokens, i+2), sense)
	case (strings.HasPrefix(t.norm, "tast") || strings.HasPrefix(t.norm, "smel") || reeks(t.norm) || t.in("aftertaste", "flavour", "aroma", "scent", "hint", "whiff", "note", "notes")) && i+1 < len(tokens) && t.norm != "tasting":
		l.tastedOf(tokens, i, l.add)
		l.tastedThe(tokens, i, l.add)
		l.onlyTasted(tokens, i, l.add)
	case t.in("colour", "color") && i > 0 && !l.taken[i-1] && after(tokens, i, 1).norm != "of" && coloursNoun(&tokens[i-1]) && !l.judges(&tokens[i-1]):
		l.add(i-1, i, lexicon.Sight)
	default:
		return false
	}
	return true
}

// placed adds the word at token i where its place makes it tell of the food.
func (l *likening) placed(i int) {
	tokens := l.tokens
	if i > 0 && l.colourOf(tokens, i) {
		l.add(i, i+1, lexicon.Sight)
		return
	}
	if flavouring(&tokens[i]) {
		if at := amountOf(tokens, i); at >= 0 {
			l.amount(at, i)
			return
		}
	}
	if sense := underHeading(tokens, i); sense != "" {
		l.add(i, i+1, sense)
		return
	}
	if !l.taken[i] {
		if f := l.sensedByPlace(tokens, i, l.found); f.to > 0 {
			l.add(i, f.to, f.sense)
			return
		}
	}
	if f := feltAt(tokens, i); f.to > 0 {
		l.add(i, f.to, f.sense)
		return
	}
	switch {
	case l.madeOfFood(&tokens[i]):
		l.add(i, i+1, foodSense(tokens, i))
	case l.openAdjective(tokens, i):
		l.add(i, i+1, l.likenessSense(tokens, l.found, i))
	}
}

// amount adds how much of a flavouring was tasted: "heavy on the salt".
func (l *likening) amount(at, i int) {
	l.add(at, i+1, lexicon.Tongue)
	for n := range l.found {
		if l.found[n].from == at { // heavy, listed by itself
			l.found[n] = candidate{from: at, to: i + 1, readings: []sensed{{sense: lexicon.Tongue}}, open: true}
		}
	}
}

// likeAs reports whether "as" at token i opens a likeness: "as flat as a plate".
func likeAs(tokens []token, i int) bool {
	if tokens[i].norm != "as" || after(tokens, i, 2).norm != "as" || i+3 >= len(tokens) {
		return false
	}
	q, thing := &tokens[i+1], &tokens[i+3]
	return (q.isAdj() || q.describes()) && (thing.tag == "DT" || thing.isNoun() || thing.isAdj())
}

// asMuchAs adds the likeness that "as" at token i opens, with its adjective.
func (l *likening) asMuchAs(i int) {
	tokens, q := l.tokens, &l.tokens[i+1]
	if q.in("soon", "long", "much", "well", "many", "good", "far", "bad", "quick", "fast", "easy") {
		return
	}
	end := likenessEnd(tokens, i+3)
	sense := lexicon.Touch
	listed := l.words.singles[q.norm]
	switch {
	case q.in("thick", "thin", "thicker") && seenThing(tokens, i+2):
		sense = lexicon.Sight // "as thick as my thumb"
	case len(listed) > 0:
		sense = l.choose(tokens, []candidate{{from: i + 1, to: i + 2, readings: listed}}, 0, "").sense
	case q.in("big", "small", "tall", "wide", "long", "thick", "thin", "flat", "black", "round"):
		sense = lexicon.Sight
	}
	for n := range l.found {
		if l.found[n].from == i+1 {
			l.found[n].to = end
			l.take(i+1, end)
		}
	}
	l.add(i+1, end, sense)
}

// sizeOf reports whether token i tells the size or shape of food by a thing:
// "it was the size of a coin", "shrank to the size of a coin".
func sizeOf(tokens []token, i int) bool {
	if !tokens[i].in("size", "shape") || i < 2 || after(tokens, i, 1).norm != "of" || i+2 >= len(tokens) || tokens[i-1].norm != "the" {
		return false
	}
	return plainBe(tokens[i-2].norm) || tokens[i-2].norm == "to" && i > 2 && tokens[i-3].in("shrank", "shrunk", "shrink", "grew", "swelled", "rose", "grown", "puffed")
}

// coloursNoun reports whether the word before "colour" tells which one it was:
// "a biscuit colour", but not "the right colour".
func coloursNoun(t *token) bool {
	return (t.isNoun() || t.isAdj()) && !t.in("the", "food", "same", "right", "different", "main", "overall", "final", "original", "whole", "nice", "good", "lovely", "great", "natural", "more", "bad", "beautiful", "amazing", "other", "usual", "perfect", "first", "only", "gorgeous", "stunning", "odd", "weird", "funny", "strange", "alarming")
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
	if base, ok := strings.CutSuffix(w, "ier"); ok {
		w = base + "y" // "fancier"
	}
	switch w {
	case "happy", "easy", "ready", "busy", "tricky", "angry", "early", "lucky", "sorry", "funny", "silly", "healthy", "hungry",
		"guilty", "crazy", "worthy", "wary", "scary", "messy", "dirty", "tidy", "pricey", "fussy", "handy", "risky", "lazy", "only", "likely", "daily", "homely", "friendly", "grumpy", "sleepy", "clumsy", "fiddly", "worry", "speedy", "greedy", "steady",
		"different", "same", "similar", "right", "wrong", "real", "sure", "able", "proud", "pleased", "confident", "nervous", "scared", "worried", "sad",
		"safe", "clean", "professional", "homemade", "home-made", "done", "finished", "more", "less", "other", "much", "little", "good", "expensive", "cheap",
		"complicated", "simple", "special", "normal", "strange", "stressed", "tired", "forward", "important", "necessary", "possible", "new", "old", "whole",
		"stressful", "difficult", "quick", "slow", "long", "short", "first", "last", "next", "second", "full", "used", "unsure", "odd", "weird", "bigger", "smaller", "careful", "independent", "organised", "hygienic", "proper", "dead", "well", "plenty", "many", "filthy", "sort", "kind", "bit", "lot", "thirsty", "noisy", "thirty", "twenty", "forty", "fifty", "comfy", "poorly", "unlucky", "hasty", "wobbly-legged", "comforting", "soothing", "moreish", "welcoming", "fancy", "posh", "impossible", "touch", "tad", "smidge":
		return true
	}
	return false
}
