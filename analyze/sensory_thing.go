package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// noQuality reports whether a listed form names a piece, a fault that was kept
// away, a rule of the kitchen or what was done to another thing, and not how
// the food was.
func (d sensing) noQuality(tokens []token, c candidate) bool {
	return pieceNamed(tokens, c) || stoppedFrom(tokens, c) || doneToOther(tokens, c) || spiltOn(tokens, c) ||
		howMuch(tokens, c) || onlySlight(tokens, c) || signOfHeat(tokens, c) || fizzOfSoda(tokens, c) || kindOfFood(tokens, c) || d.ruleOfThing(tokens, c)
}

// pieceNamed reports whether a noun that the list has for a quality names the
// pieces themselves: "yellow flakes", "stretchy strings", "seven layers", "one
// pasty". What food came apart in is a quality ("fell into flakes").
func pieceNamed(tokens []token, c candidate) bool {
	t := &tokens[c.from]
	if c.to-c.from != 1 || t.isVerbForm() {
		return false
	}
	prev := &token{}
	if c.from > 0 {
		prev = &tokens[c.from-1]
	}
	switch t.norm {
	case "flakes", "strings":
		for j := c.from - 1; j >= 0 && j >= c.from-3; j-- {
			if tokens[j].in("in", "into", "apart", "makes", "cheese", "mozzarella", "long") {
				return false
			}
		}
		return !prev.in("it", "they", "which", "that", "meat", "flesh", "fish")
	case "layers":
		return prev.tag == "CD" || prev.in("thin", "more", "fewer", "other", "few")
	case "pasty":
		return prev.tagIn("DT", "CD", "PRP$") && (c.to == len(tokens) || !tokens[c.to].isNoun() && !tokens[c.to].in(",", "and"))
	}
	return false
}

// stoppedFrom reports whether a verb tells what was kept from happening: "stops
// the biscuit doming", "kept them from curling up".
func stoppedFrom(tokens []token, c candidate) bool {
	if !strings.HasSuffix(tokens[c.from].norm, "ing") || tokens[c.from].tag != "VBG" && c.to-c.from == 1 && !tokens[c.from].in("doming") {
		return false
	}
	for j := c.from - 1; j >= 0 && j >= c.from-6; j-- {
		switch t := &tokens[j]; {
		case t.in("stop", "stops", "stopped", "stopping", "prevent", "prevents", "prevented", "avoid", "avoids"):
			return j < c.from-1
		case t.isVerb() || t.pause():
			return false
		}
	}
	return false
}

// doneToOther reports whether a finite verb of melting, thickening or crumbling
// tells what one thing does to another: "that thickens it", "it melts the
// pastry".
func doneToOther(tokens []token, c candidate) bool {
	if c.to-c.from != 1 || c.to >= len(tokens) || !tokens[c.from].isVerb() && !strings.HasSuffix(tokens[c.from].norm, "s") {
		return false
	}
	switch tokens[c.from].stem {
	case "melt", "crumbl", "curdl", "stain":
	case "thicken", "soften":
		if tokens[c.from].tag == "VBD" {
			return false // "that thickened it": so the dish was
		}
	default:
		return false
	}
	next := &tokens[c.to]
	if tokens[c.from].norm == "crumbled" && (next.norm == "on" || next.norm == "over" || next.kind == lexicon.Ingredient || next.in("feta", "goat")) {
		return true // "some feta crumbled on", "crumbled feta"
	}
	if extent(tokens, c.to) || tokens[c.from].isAdj() || c.from > 0 && plainBe(tokens[c.from-1].norm) {
		return false
	}
	return next.in("it", "them", "him") || next.tagIn("DT", "PRP$") && c.to+1 < len(tokens) && tokens[c.to+1].kind.Food()
}

// spiltOn reports whether a verb of running, dripping or slopping tells where
// some of it landed that is no food and no dish: "slopped on the floor",
// "dripped down the units".
func spiltOn(tokens []token, c candidate) bool {
	switch tokens[c.from].stem {
	case "slop", "drip", "splash", "leak", "squirt", "splat", "spill", "spilt":
	default:
		return false
	}
	for j := c.to; j < len(tokens) && j <= c.to+4; j++ {
		switch t := &tokens[j]; {
		case t.kind == lexicon.Place, t.kind == lexicon.Body && !t.in("mouth", "chin", "lips"), t.in("unit", "units", "sock", "socks", "shelf", "ceiling"):
			return true
		case t.in("on", "onto", "down", "over", "all", "off", "in", "up") || t.tagIn("DT", "PRP$", "JJ"):
		default:
			return false
		}
	}
	return false
}

// howMuch reports whether thick or thin is only asked for: "she told me how
// thin", "I can decide how thick".
func howMuch(tokens []token, c candidate) bool {
	return c.to-c.from == 1 && c.from > 0 && tokens[c.from-1].norm == "how" && (c.to == len(tokens) || tokens[c.to].pause())
}

// onlySlight reports whether faint tells how little there was of something that
// is no smell: "the faintest wobble".
func onlySlight(tokens []token, c candidate) bool {
	if c.to-c.from != 1 || !tokens[c.from].in("faint", "faintest", "fainter") {
		return false
	}
	next := after(tokens, c.to, 0)
	return (next.isNoun() || next.in("wobble", "crunch", "crackle", "snap", "chew", "bite")) && !namesSense(next) && !flavourNoun(next)
}

// signOfHeat reports whether steam or floating fat is the sign to go on ("until
// it was just steaming", "when the oil floats", "heated the milk to just
// steaming") or the harm of a crowded pan ("they sit there steaming").
func signOfHeat(tokens []token, c candidate) bool {
	if c.to-c.from != 1 || !tokens[c.from].in("steaming", "floats", "floated", "floating") {
		return false
	}
	liquid := false
	for j := c.from - 1; j >= 0 && j >= c.from-6 && !tokens[j].pause(); j-- {
		switch t := &tokens[j]; {
		case t.in("until", "till", "heated", "heat", "warmed", "warm", "sit", "sits", "sat"):
			return true
		case t.norm == "to" && j+2 == c.from && tokens[j+1].in("just", "barely"):
			return true
		case t.in("when", "once"):
			return liquid
		case t.in("milk", "oil", "fat", "cream", "water", "stock"):
			liquid = true
		}
	}
	return false
}

// fizzOfSoda reports whether fizz is what soda and acid do in the bowl, and is
// not felt on the tongue.
func fizzOfSoda(tokens []token, c candidate) bool {
	if tokens[c.from].stem != "fizz" || c.to-c.from > 2 {
		return false
	}
	for j := c.from - 1; j >= 0 && j >= c.from-6; j-- {
		if tokens[j].in("soda", "bicarb", "bicarbonate", "vinegar", "buttermilk", "acid", "powder", "yeast") {
			return true
		}
	}
	return false
}

// kindOfFood reports whether the word only names which kind was used: "an oily
// fish", "plain oats", "floury ones", "windowpane test", "the long white dish".
func kindOfFood(tokens []token, c candidate) bool {
	if c.to-c.from != 1 {
		return false
	}
	t, next := &tokens[c.from], &token{}
	if c.to < len(tokens) {
		next = &tokens[c.to]
	}
	switch t.norm {
	case "oily":
		return next.in("fish", "fishes")
	case "windowpane":
		return next.in("test", "stretch", "trick", "thing")
	case "plain":
		return next.in("pink", "white", "brown", "yellow", "green", "red", "black") || next.kind == lexicon.Ingredient || c.from > 0 && tokens[c.from-1].norm == "the" && (!next.word || next.in("to", "and", "flour"))
	case "loose":
		return next.in("starch", "flour", "skin", "skins", "leaves", "tea")
	case "hard":
		return next.norm == "way"
	}
	return next.norm == "dish" && c.from > 0 && vesselOf(tokens, c.from)
}

// vesselOf reports whether "on" or "in" stands before the words that lead to the
// dish behind token i: "on Mum's long white dish".
func vesselOf(tokens []token, i int) bool {
	for j := i - 1; j >= 0 && j >= i-5; j-- {
		switch t := &tokens[j]; {
		case t.in("on", "in", "into", "onto"):
			return true
		case t.isAdj() || t.tagIn("DT", "PRP$") || t.norm == "'s" || t.kind == lexicon.Person:
		default:
			return false
		}
	}
	return false
}

// ruleOfThing reports whether an ingredient's state stands in the reason for a
// step, told of that ingredient at any time: "because wet chips spit", "since
// warm filling melts the fat", "as damp skin goes leathery".
func (d sensing) ruleOfThing(tokens []token, c candidate) bool {
	if c.to-c.from != 1 || c.to+1 >= len(tokens) || c.from == 0 || !d.words.lex.Reading.States[tokens[c.from].norm] {
		return false
	}
	prev, head, verb := &tokens[c.from-1], &tokens[c.to], &tokens[c.to+1]
	if !prev.in("because", "cause", "cos", "coz", "bc", "since", "as", "for") {
		return false
	}
	return (head.kind.Food() || head.in("ones", "spud", "spuds", "skin", "filling", "bits")) && (verb.tagIn("VBZ", "VBP", "VB", "NNS", "NN") || verb.in("makes", "make", "goes", "go"))
}
