package analyze

import (
	"strings"
)

// beside reports whether two clauses set side by side by the mark at token i
// explain each other without a word that says so. What each of them is tells
// how: a quality and what the cook did, a step and the rule of the kitchen
// behind it, a change and the fault that asks for it.
func (d reasons) beside(tokens []token, i int) bool {
	if !(tokens[i].in(",", ";", ":", "--", "-", "–")) {
		return false
	}
	l, r, ok := halves(tokens, i)
	if !ok {
		return false
	}
	described := l.described() && !l.ofThing()
	if (described || l.acted() || l.entered() || l.did() || l.cameOut() || l.faulty()) && (r.fellShort() || r.isSo()) {
		return true
	}
	switch {
	case (d.plansChange(l) || l.regrets()) && (r.finite() == "VBD" || r.wentWrong()) && (!r.first().in("this", "that") || r.start+1 < r.to && r.tokens[r.start+1].norm == "one"):
		return !r.byOther() || r.befell() || r.ranOff() // "I'd chop them smaller; they kept catching"
	case l.instructs() && (r.finite() == "VBD" && !r.does() || r.befell() || r.ranOff()) && (d.ofCooking(l.words()) || d.ofCooking(r.words())):
		return true // "boil it down, there was no body"
	case described && (l.faulty() || r.regrets()) && !l.acted() && r.first().tag != "VB" && d.plansChange(r):
		return true // "a little pale; I would ask for more soy"
	case l.finite() == "VBD" && l.faulty() && !l.did() && r.first().card.works && r.instructs():
		return true // "they had gone a bit far, put them in nearer the end"
	case l.instructs() && (d.ofCooking(l.words()) || d.ofCooking(r.words())):
		return r.rule() // "use a bigger pan, it boils over in that one"
	case described && !l.acted():
		return r.deed(l.faulty()) || r.undone() || r.befell() || r.ranOff() || r.hindered() || r.present() || l.faulty() && (r.instructs() || r.first().in("soaked", "drank", "absorbed", "sat", "stewed", "stuck"))
	case l.acted() || l.entered():
		return r.rule() || r.hindered() || r.present() // "in three lots; a full pan goes grey"
	}
	return r.rushed() || (r.hindered() || r.present()) && (l.did() || l.faulty() || l.cameOut())
}

// hedgedCause: "stodgy, I think I squeezed it too hard": behind a quality, what
// somebody thinks was done too much or too little.
func hedgedCause(tokens []token, i int) bool {
	j := i + 1
	if j < len(tokens) && tokens[j].norm == "that" {
		j++
	}
	if !tokens[i-1].in("i", "we") && !tokens[i-1].pause() || j+2 >= len(tokens) || !tokens[j].human() {
		return false
	}
	wrong := strings.HasPrefix(tokens[j+1].norm, "over") && tokens[j+1].isVerb()
	for k := j + 1; k < len(tokens) && k < j+reach && !tokens[k].pause(); k++ {
		if tokens[k].tagIn("VBZ", "VBP") || tokens[k].in("would", "will", "'ll", "wo") {
			return false
		}
		wrong = wrong || tokens[k].in("too", "to", "enough", "only", "n't", "forgot") || k+1 < len(tokens) && tokens[k+1].in("much", "many") && tokens[k].norm == "so"
	}
	left := half{tokens: tokens, from: max(0, i-1-reach), to: i - 1}
	return wrong && (left.described() || left.cameOut())
}

// hadTo: "the dough was sticky and I had to add flour", "I splashed my wrist
// and had to hold it under the tap": what went before, and what it made somebody
// do. What one "then" had to do is the next step.
func hadTo(tokens []token, i int) bool {
	j := i + 1
	if i > 1 && j < len(tokens) && tokens[j].human() {
		j++
	}
	return i > 1 && j+2 < len(tokens) && tokens[j].norm == "had" && tokens[j+1].norm == "to"
}

// excessThen: "too much milk and the whole thing went runny", "I forgot the
// yeast and they stayed flat", "on far too early and had gone claggy": what was
// done too much or left out, and the state it led to.
func excessThen(tokens []token, i int) bool {
	excess := false
	for j := i - 1; j >= 0 && j >= i-10 && !tokens[j].in("because", "so", "but", ".", ";"); j-- {
		t := &tokens[j]
		excess = excess || t.norm == "forgot" || t.norm == "too" && tokens[j+1].in("much", "many", "long", "early", "late", "high", "hot", "few", "little", "soon", "hard", "fast")
	}
	if !excess {
		return false
	}
	for j := i + 1; j+1 < len(tokens) && j <= i+6; j++ {
		t := &tokens[j]
		if t.pause() || t.joins() || t.in("i", "we", "he", "she", "you") {
			return false
		}
		if t.in("was", "were") {
			n := &tokens[j+1]
			return n.isAdj() || n.isAdv() || n.describes() || n.in("like", "a", "all")
		}
		if t.in("went", "gone", "stayed", "turned", "came", "got", "became", "looked", "tasted", "felt", "burnt", "stuck", "split", "sank", "spread", "caught", "overflowed", "leaked", "dried", "ran") {
			return true
		}
	}
	return false
}

// lackSetApart: "Dad read it out (I'd lost my glasses)", "nan 7/10 (no teeth)":
// in brackets, what somebody had not or what had gone wrong before.
func lackSetApart(tokens []token, i int) bool {
	if i == 0 || i+2 >= len(tokens) {
		return false
	}
	if tokens[i+1].norm == "no" {
		return tokens[i+2].isNoun() && i+3 < len(tokens) && tokens[i+3].norm == "for"
	}
	h := half{tokens: tokens, from: i + 1, to: min(len(tokens), clauseEnd(tokens, i+1)), start: i + 1}
	s, v := h.verb()
	if s < 0 || v < 0 || v+1 >= h.to {
		return false
	}
	return h.tokens[v].in("had", "'d") && hadBefore(tokens, v) || h.tokens[v+1].norm == "n't" && h.tokens[s].human() || h.tokens[v].in("make", "makes", "hurt", "hurts")
}

// toldAs: "it paid off: nothing dried out", "that made all the difference: …":
// a step that told, and behind a colon how.
func toldAs(tokens []token, i int) bool {
	t := &tokens[i]
	switch {
	case t.norm == "paid" && !(i+1 < len(tokens) && tokens[i+1].norm == "off"):
		return false
	case t.norm == "difference":
		made := false
		for j := max(0, i-3); j < i; j++ {
			made = made || tokens[j].norm == "made"
		}
		if !made {
			return false
		}
	}
	if s := subject(tokens, i); s < 0 || !tokens[s].in("it", "that", "this", "which") {
		return false
	}
	return t.norm == "paid" || i+2 < len(tokens) && tokens[i+1].in(":", ";", "--", "–")
}

// plansChange reports whether the half tells of a change: a plan or an instruction
// about food.
func (d reasons) plansChange(h half) bool {
	if !d.ofCooking(h.words()) {
		return false
	}
	for j := h.from; j < h.to; j++ {
		t := &h.tokens[j]
		if t.in("would", "'d", "next") || j == h.from && t.tag == "VB" {
			return true
		}
		if t.in("needed", "needs", "wanted", "wants") && j+1 < h.to && (h.tokens[j+1].in("more", "less", "longer", "another", "a", "some", "extra") || h.tokens[j+1].tag == "JJR") {
			return true // "it needed more salt; it tasted of nothing"
		}
		if t.in("could", "should") && j+2 < h.to && h.tokens[j+1].in("have", "of", "'ve") {
			return true // "the swede could have been cut smaller, some lumps were hard"
		}
	}
	return false
}
