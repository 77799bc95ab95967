package analyze

import (
	"saywhy/lexicon"
)

// noteCause: the cause in the second half of a note without subjects:
// "Carrots mushy, went in too early", "gravy thin, didn't take the lid off".
func (d reasons) noteCause(tokens []token, i int) bool {
	if i < 2 || tokens[i-1].norm != "," || i+2 >= len(tokens) {
		return false
	}
	amiss := false
	for j := i; j < len(tokens) && j < i+8; j++ {
		if tokens[j].in("n't", "not", "too", "forgot", "enough") {
			amiss = true
		}
	}
	if !amiss {
		return false
	}
	for j := i - 2; j >= 0 && j >= i-8; j-- {
		if tokens[j].describes() {
			return true
		}
	}
	return false
}

// forgotten: "bit bland underneath i forgot mustard": a quality and what was
// left out, with no mark between.
func (d reasons) forgotten(tokens []token, i int) bool {
	if i < 2 || !tokens[i-1].in("i", "we") {
		return false
	}
	for j := i - 2; j >= 0 && j >= i-5; j-- {
		if tokens[j].pause() || tokens[j].in("and", "but", "because", "so") {
			return false
		}
		if tokens[j].describes() {
			return true
		}
	}
	return false
}

// faultThenEffect: "too much oil, they left a greasy patch", "not enough salt,
// it tasted of nothing": a note of too much or too little, then a clause with
// what it led to.
func faultThenEffect(tokens []token, i int) bool {
	fault := false
	for j := i - 1; j >= 0 && j >= i-6; j-- {
		t := &tokens[j]
		if t.pause() {
			break
		}
		if t.tagIn("VBD", "VBZ", "VBP", "MD") || t.joins() {
			return false
		}
		fault = fault || t.norm == "too" && j+2 < i || t.norm == "enough" && j > 0 && tokens[j-1].in("not", "nowhere")
	}
	if fault && i+3 < len(tokens) && tokens[i+1].in("could", "couldnt", "did") && negatedVerb(tokens, i+1) {
		return true // "too much chilli, couldn't taste anything else"
	}
	return fault && i+2 < len(tokens) && (tokens[i+1].in("it", "they", "we", "everyone") || tokens[i+1].tag == "DT") && (opensClause(tokens, i+1) || tokens[i+1].norm == "all" && opensClause(tokens, i+2))
}

// changeAndFault: a change without a verb beside the fault that it would mend:
// "bigger bowl, it was falling out", "the ends burnt, thicker ones next week".
func (d reasons) changeAndFault(tokens []token, i int) bool {
	note := func(from, to int) bool {
		if from >= to || to-from > 7 {
			return false
		}
		more := false
		for j := from; j < to; j++ {
			if tokens[j].isVerb() && tokens[j].tag != "VBN" {
				return false
			}
			more = more || tokens[j].tagIn("JJR", "RBR") && j <= from+1
		}
		return more
	}
	told := func(from, to int) bool {
		for j := from; j < to; j++ {
			if tokens[j].tag == "VBD" {
				return true
			}
		}
		return false
	}
	from, to := 0, len(tokens)
	for j := i - 1; j >= 0; j-- {
		if tokens[j].pause() {
			from = j + 1
			break
		}
	}
	for j := i + 1; j < len(tokens); j++ {
		if tokens[j].pause() {
			to = j
			break
		}
	}
	if !d.ofCooking(tokens[from:to]) {
		return false
	}
	next := i+1 < to && (tokens[to-1].in("time", "week", "go") || tokens[to-1].kind == lexicon.Time)
	return note(from, i) && told(i+1, to) && opensClause(tokens, i+1) || next && told(from, i) && note(i+1, to)
}

// ofCooking reports whether the tokens speak of food or of working with it.
func (d reasons) ofCooking(tokens []token) bool {
	for i := range tokens {
		t := &tokens[i]
		if t.kind.Food() || t.kind == lexicon.Tool || t.isVerb() && t.card.works && !generic(t.stem) || t.isAdj() && t.describes() {
			return true
		}
	}
	return false
}
