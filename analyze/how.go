package analyze

import "saywhy/lexicon"

// clause is a phrase of means or reason.
type clause struct {
	span
	from, to int // tokens
	explains int // of a reason: the number of the sentence it explains; 0 for its own
}

// means finds the phrases that tell the means or manner by which something was
// done: tools and cloths (how_tool.go), deeds (how_deed.go), portions, heat and
// place (how_portion.go), and the manner of the hand (how_manner.go).
type means struct{ words *vocabulary }

func (d means) read(r *reading) {
	for i := range r.sentences {
		s := &r.sentences[i]
		s.how = d.find(s)
	}
}

func (d means) find(s *sentence) []clause {
	tokens := s.tokens
	var out []clause
	add := func(from, to int) {
		if n := len(out); n > 0 && from < out[n-1].to {
			return
		}
		to = max(to, from+1)
		out = append(out, clause{span: span{tokens[from].start, tokens[to-1].end}, from: from, to: to})
	}
	for i := range tokens {
		if to, ok := d.at(tokens, i); ok {
			add(i, to)
		}
	}
	return out
}

// at reports whether a phrase of means begins at token i, and where it ends.
func (d means) at(tokens []token, i int) (int, bool) {
	if to, ok := d.opened(tokens, i); ok {
		return to, true
	}
	if n := doubled(tokens, i); n > 0 && d.cooking(tokens, i) {
		return i + n, true
	}
	if i+2 < len(tokens) && tokens[i+1].norm == "side" && sideUp(tokens, i) {
		return i + 3, true
	}
	if i > 0 && after(tokens, i, 1).in("end", "side") && after(tokens, i, 2).norm == "first" && !tokens[i].tagIn("DT", "PRP$", "IN") && !tokens[i-1].tagIn("DT", "PRP$") {
		return i + 3, d.cooking(tokens, i) || d.workedBefore(tokens, i, "fed", "feed", "put", "went", "laid", "lower") // "thin end first"
	}
	if i+2 < len(tokens) && tokens[i].word && tokens[i+1].norm == "by" && tokens[i+2].norm == tokens[i].norm && tokens[i].norm != "side" {
		return i + 3, true // "bit by bit", "spoon by spoon"
	}
	// ", shaking it the whole time": a participle clause behind an action.
	if tokens[i].tag == "VBG" && i > 0 && d.accompanies(tokens, i) {
		return clauseEnd(tokens, i), true
	}
	return i + 1, d.adverb(tokens, i)
}

// opened asks the rule of the word at token i, for phrases known by the word
// they open with.
func (d means) opened(tokens []token, i int) (int, bool) {
	if to, ok := d.byPreposition(tokens, i); ok {
		return to, true
	}
	switch tokens[i].norm {
	case "using", "useing":
		return d.using(tokens, i)
	case "used":
		return d.used(tokens, i)
	case "use":
		return d.usesTool(tokens, i)
	case "wearing":
		return d.wearingIt(tokens, i)
	case "left", "right", "wet", "dry":
		return d.handEach(tokens, i)
	case "claw", "bridge", "bear":
		return d.gripNamed(tokens, i)
	case "way":
		return d.wayNamed(tokens, i)
	case "test":
		return d.trialNamed(tokens, i)
	case "skin", "fat", "cut", "flesh", "seam", "join", "rind", "bone", "belly":
		return d.sideDown(tokens, i)
	case "one":
		return first(tokens, i, d.handEach, d.counted, d.atATime)
	case "a", "two", "three", "four", "five", "six", "seven", "eight", "few", "several", "couple", "some", "handful", "spoonful", "ladleful", "bit", "little", "half", "all":
		return first(tokens, i, d.counted, d.atATime)
	case "criss", "crisscross", "criss-cross", "one-handed", "onehanded", "two-handed", "bare-handed", "barehanded", "freehand", "free-hand":
		return d.inOneWord(tokens, i)
	case "slow", "slowly", "fast", "hard", "hot", "steady", "gentle", "careful", "gradual", "tight", "even", "thorough":
		return first(tokens, i, d.lowThenHigh, d.flat, d.plainAdverb)
	case "low", "high", "medium":
		return first(tokens, i, d.lowThenHigh, d.flat, d.heatNamed)
	case "again":
		return d.overAndOver(tokens, i)
	case "non", "non-stop", "nonstop":
		return min(i+2, len(tokens)), d.keptUp(tokens, i)
	case "the", "how":
		return first(tokens, i, d.wholeTime, d.wayShown)
	case "no":
		return i + 2, d.withNone(tokens, i)
	case "uncovered", "covered", "lid", "guard", "upside", "inside", "stood", "standing":
		return d.state(tokens, i)
	case "finger", "fingers", "fingertips", "tips", "thumb", "thumbs", "knuckles", "hands", "face", "palms", "wrist", "wrists", "elbows", "bowl", "pan", "tin", "knife", "spoon", "handle", "handles", "blade", "point":
		return d.held(tokens, i)
	case "diagonal", "slantways", "slantwise", "edgeways", "endways", "lengthways", "lengthwise", "longways", "widthways", "crossways", "crosswise", "diagonally", "clockwise", "anticlockwise", "backwards", "outwards", "inwards":
		return i + 1, d.direction(tokens, i)
	case "back":
		return d.backAndForth(tokens, i)
	case "aloud":
		return i + 1, i > 0
	case "out":
		return i + 2, after(tokens, i, 1).norm == "loud"
	}
	return 0, false
}

// byPreposition asks the rule of the preposition at token i, or of a word that
// stands as one ("thanks to", "instead of").
func (d means) byPreposition(tokens []token, i int) (int, bool) {
	switch tokens[i].norm {
	case "by":
		return d.byDeed(tokens, i)
	case "with", "wiv", "wi", "w":
		return d.with(tokens, i)
	case "without":
		return d.without(tokens, i)
	case "thanks": // "thanks to peeling everything first": by
		return clauseEnd(tokens, i), after(tokens, i, 1).norm == "to" && after(tokens, i, 2).tag == "VBG"
	case "in":
		return d.within(tokens, i)
	case "round", "around":
		return d.roundThing(tokens, i)
	case "to":
		return d.toTheGram(tokens, i)
	case "on", "at":
		return first(tokens, i, d.onOrOver, d.spread)
	case "over":
		return first(tokens, i, d.overAndOver, d.onOrOver, d.spread)
	case "through", "under", "between", "against", "across", "off":
		return d.past(tokens, i)
	case "away":
		return i + 3, d.awayFromSomebody(tokens, i)
	case "from":
		return first(tokens, i, leftToRight, d.fromMiddle, d.fromHand)
	case "like":
		return d.likeSomebody(tokens, i)
	case "instead", "rather":
		return d.insteadOf(tokens, i)
	case "as":
		return i + 5, asCould(tokens, i) && (i == 0 || !tokens[i-1].kind.Food() && tokens[i-1].kind != lexicon.Tool || clauseHasVerb(tokens, i))
	}
	return 0, false
}

// first returns what the first of the rules finds that holds at token i.
func first(tokens []token, i int, rules ...func([]token, int) (int, bool)) (int, bool) {
	for _, rule := range rules {
		if to, ok := rule(tokens, i); ok {
			return to, true
		}
	}
	return 0, false
}

// after returns the token n behind token i, or an empty one behind the last.
func after(tokens []token, i, n int) *token {
	if i+n < len(tokens) {
		return &tokens[i+n]
	}
	return &token{}
}
