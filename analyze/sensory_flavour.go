package analyze

import "saywhy/lexicon"

// flavourFelt adds the flavourings at token i that are told by how they reach
// tongue or nose, with no verb of tasting: "the ginger hits you later", "mint
// came through, feta didn't", "mustard up your nose", "bay all up the stairs",
// "hot with chilli".
func (d sensing) flavourFelt(tokens []token, i int, found []candidate, add func(int, int, lexicon.Sense)) {
	switch {
	case arrives(tokens, i):
		d.arriving(tokens, i, add)
	case !savour(&tokens[i]):
	case throughTheHouse(tokens, i+1):
		add(i, i+1, lexicon.Smell)
		if i >= 2 && tokens[i-1].in("and", ",", "&") && savour(&tokens[i-2]) {
			add(i-2, i-1, lexicon.Smell)
		}
	case !toldAsWork(tokens, i) && (reachesMouth(tokens, i+1) || firstThen(tokens, i)):
		add(i, i+1, lexicon.Tongue)
	case smeltFrom(tokens, i):
		add(i, i+1, lexicon.Smell)
	case frontedTaste(tokens, i):
		add(i, i+1, lexicon.Tongue)
	case withBehind(tokens, i) >= 0:
		w := withBehind(tokens, i)
		for n := range found {
			if found[n].to != w {
				continue
			}
			if s := d.choose(tokens, found, n, "").sense; s == lexicon.Tongue || s == lexicon.Smell {
				add(i, i+1, s)
			}
		}
	}
}

// savour reports whether the token names something that is put in for its
// taste, or that is tasted by itself among the rest.
func savour(t *token) bool {
	return flavouring(t) || t.kind == lexicon.Ingredient && !t.isVerb() && !t.in("flour", "water", "oil", "ingredient", "ingredients", "egg", "eggs", "stock", "soda", "yeast", "ice", "dripping", "fat")
}

// arrives reports whether the verb at token i tells how something reaches the
// tongue: "hits you", "came through", "kicks in", "lifted it".
func arrives(tokens []token, i int) bool {
	next, third := &token{}, &token{}
	if i+1 < len(tokens) {
		next = &tokens[i+1]
	}
	if i+2 < len(tokens) {
		third = &tokens[i+2]
	}
	switch tokens[i].norm {
	case "hit", "hits", "hitting", "got", "gets", "catches", "caught", "catching", "warms", "warmed", "burns", "burned", "burnt", "tingles", "tickles", "bites":
		if tokens[i].in("hit", "hits", "hitting") && next.in("you", "me", "us") {
			return true
		}
		return next.in("the", "your", "my", "his", "her", "you", "me") && (third.in("tongue", "throat", "nose", "mouth", "lips", "back") && next.in("the", "your", "my", "his", "her") || third.in("at", "in") && tokens[i].in("got", "gets"))
	case "came", "comes", "come", "coming", "shone", "shines", "shining":
		if comesLast(tokens, i) {
			return true
		}
		at := i + 1
		for at < len(tokens) && tokens[at].in("right", "really", "straight", "just", "strongly") {
			at++
		}
		return at < len(tokens) && tokens[at].in("through", "thru") && (at+1 == len(tokens) || tokens[at+1].tag != "DT" && tokens[at+1].tag != "PRP$" && !tokens[at+1].isNoun())
	case "lasts", "lasted", "builds", "built", "fades", "faded":
		return !next.isNoun() && !next.tagIn("CD", "DT", "PRP$", "RP") && next.kind != lexicon.Time && !next.in("up", "for", "until", "till", "in", "on", "about", "me", "us", "longer")
	case "arriving":
		return i > 0 && savour(&tokens[i-1])
	case "arrives", "arrived", "lingers", "lingered", "lingering", "overpowers", "overpowered", "overpowering", "dominates", "dominated":
		return true
	case "kicks", "kicked", "kick":
		return next.norm == "in"
	case "creeps", "crept", "sneaks", "sneaked", "snuck":
		return next.norm == "up"
	case "took", "takes", "taking":
		return next.norm == "over" && third.norm != "from"
	case "stands", "stood":
		return next.norm == "out"
	case "cuts", "cut", "cutting":
		return next.in("through", "thru")
	case "lifts", "lifted":
		return next.in("it", "everything", "the", "them") && !third.in("off", "out", "up", "lid")
	case "goes", "went":
		return (next.norm == "up" || next.norm == "right" && third.norm == "up") && noseAhead(tokens, i)
	case "gives", "gave", "giving", "adds", "added":
		for j := i + 1; j < len(tokens) && j <= i+6; j++ {
			if tokens[j].in("kick", "zing", "lift", "tang", "zip", "punch", "warmth", "heat", "freshness", "sharpness", "sweetness", "bite", "hit", "buzz", "twang", "depth") {
				return true
			}
			if tokens[j].pause() {
				return false
			}
		}
	}
	return false
}

// comesLast reports whether the verb of coming at token i tells when in the
// mouthful a taste came: "mint comes in at the end".
func comesLast(tokens []token, i int) bool {
	at := i + 1
	if after(tokens, at, 0).norm == "in" {
		at++
	}
	if after(tokens, at, 0).in("first", "last", "later", "late", "afterwards") {
		return at+1 == len(tokens) || tokens[at+1].pause() || tokens[at+1].in("then", "and", "but")
	}
	return after(tokens, at, 0).norm == "at" && after(tokens, at, 1).norm == "the" && after(tokens, at, 2).in("end", "finish", "back", "last")
}

func noseAhead(tokens []token, i int) bool {
	for j := i + 1; j < len(tokens) && j <= i+5; j++ {
		if tokens[j].norm == "nose" {
			return true
		}
	}
	return false
}

// arriving adds what reaches the tongue by the verb at token v: its subject,
// the flavouring behind a measure ("a squeeze of lime"), those listed with it,
// and one of which the same is denied ("feta didn't").
func (d sensing) arriving(tokens []token, v int, add func(int, int, lexicon.Sense)) {
	s := subject(tokens, v)
	if tokens[v].tag == "VBG" && v > 0 && savour(&tokens[v-1]) {
		s = v - 1 // "with vanilla arriving late"
	}
	if s < 0 && tokens[v].in("lasts", "builds", "fades") && v > 0 && savour(&tokens[v-1]) {
		s = v - 1 // taken for a noun of two words
	}
	if s < 0 || v > 0 && tokens[v-1].in("to", "that", "which") {
		return
	}
	if tokens[s].in("squeeze", "bit", "hint", "touch", "pinch", "dash", "drop", "spoonful", "splash", "little", "tang", "taste", "flavour", "sharpness", "burn") {
		for j := s + 1; j < v && j <= s+3; j++ {
			if savour(&tokens[j]) {
				s = j
			}
		}
	}
	if !savour(&tokens[s]) {
		return
	}
	from := s
	for from > 0 && from > s-2 && savour(&tokens[from-1]) && tokens[from-1].isNoun() {
		from--
	}
	add(from, s+1, lexicon.Tongue)
	if s >= 2 && tokens[s-1].in("and", "&") && savour(&tokens[s-2]) {
		add(s-2, s-1, lexicon.Tongue)
	}
	for j := v + 1; j+1 < len(tokens) && j <= v+8; j++ {
		if savour(&tokens[j]) && (tokens[j+1].in("did", "does", "do", "was", "is", "didnt", "doesnt") && j+2 < len(tokens) && tokens[j+2].in("n't", "not") || tokens[j+1].in("didnt", "doesnt")) {
			add(j, j+1, lexicon.Tongue)
		}
	}
}

// throughTheHouse reports whether the words at token i tell how far a smell
// reached: "all up the stairs", "through the whole house", "everywhere".
func throughTheHouse(tokens []token, i int) bool {
	j := i
	for j < len(tokens) && j <= i+4 && tokens[j].in("all", "right", "just", "wafting", "drifting", "up", "down", "through", "over", "round", "around", "in", "the", "whole", "every", "our", "and", "smell", "smells") {
		j++
	}
	return j > i+1 && j < len(tokens) && tokens[j].in("stairs", "house", "landing", "hall", "hallway", "rooms", "room", "street", "flat", "corridor", "upstairs", "building", "everywhere") && !tokens[i].in("the", "and")
}

// reachesMouth reports whether the words at token i tell where in mouth or nose
// something is felt: "later in your throat", "up your nose", "at the back of
// the tongue", "catching your throat".
func reachesMouth(tokens []token, i int) bool {
	j := i
	for j < len(tokens) && j <= i+2 && (tokens[j].isAdv() || tokens[j].in("later", "first", "right", "catching", "tickling", "hitting")) {
		j++
	}
	if j >= len(tokens) || j == i && !tokens[j].in("in", "on", "up", "at", "down") {
		return false
	}
	for k := j; k < len(tokens) && k <= j+5; k++ {
		switch t := &tokens[k]; {
		case t.in("throat", "nose", "tongue"):
			return true
		case t.in("in", "on", "up", "at", "the", "your", "my", "back", "of", "end", "tip", "down", "roof"):
		default:
			return false
		}
	}
	return false
}

// firstThen reports whether the flavouring at token i is what is tasted first
// ("coconut first, then a tingle"), or comes behind another ("sharp raspberry,
// then the cream").
func firstThen(tokens []token, i int) bool {
	if i+1 >= len(tokens) || !tokens[i+1].in("first", "after", "afterwards") {
		return false
	}
	for j := i + 2; j < len(tokens) && j <= i+5; j++ {
		if tokens[j].norm == "then" {
			return true
		}
	}
	return false
}

// toldAsWork reports whether a person does something in the clause of token i
// other than getting or tasting, so that a flavouring in it is put in.
func toldAsWork(tokens []token, i int) bool {
	for j := clauseStart(tokens, i); j < i; j++ {
		t := &tokens[j]
		if t.isVerb() && !linkingVerb(t.norm) && !t.in("got", "get", "gets", "could", "can", "had", "has", "have") {
			return true
		}
	}
	return clauseStart(tokens, i) == i && tokens[i].isVerb()
}

// smeltFrom reports whether the flavouring at token i is told as what a smell
// came from: "smelt like Christmas from the cinnamon", "cos of the cloves".
func smeltFrom(tokens []token, i int) bool {
	at := i - 1
	for at > 0 && (tokens[at].tagIn("DT", "PRP$") || tokens[at].in("all", "of")) {
		at--
	}
	if at < 1 || !tokens[at].in("from", "because", "cos", "with") || tokens[at].norm != "from" && tokens[at+1].norm != "of" {
		return false
	}
	for j := at - 1; j >= 0 && j >= at-7 && !tokens[j].pause(); j-- {
		if s, ok := senseOfVerb(tokens[j].norm); ok {
			return s == lexicon.Smell
		}
	}
	return false
}

// frontedTaste reports whether the flavouring at token i stands before the clause
// that tells whether it was tasted: "the chilli I couldn't taste".
func frontedTaste(tokens []token, i int) bool {
	if i == 0 || !tokens[i-1].tagIn("DT", "PRP$") && i > 1 || !after(tokens, i, 1).in("i", "we", "you") || !after(tokens, i, 2).in("could", "can", "couldn't", "couldnt", "cant", "can't") {
		return false
	}
	for n := 3; n <= 5; n++ {
		if t := after(tokens, i, n); t.in("taste", "find", "notice") {
			return !after(tokens, i, n+1).isNoun() && !after(tokens, i, n+1).tagIn("DT", "PRP$", "PRP")
		}
	}
	return false
}

// withBehind returns the token "with" that ties the flavouring at token i to a
// quality ("hot with chilli", "sweet with a hint of vanilla"), or -1.
func withBehind(tokens []token, i int) int {
	for j := i - 1; j >= 0 && j >= i-5; j-- {
		t := &tokens[j]
		if t.norm == "with" {
			return j
		}
		if !t.in("a", "hint", "touch", "trace", "of", "lots", "loads", "plenty", "bit", "whiff", "note", "tang", "all", "fresh") {
			return -1
		}
	}
	return -1
}

// tellsArrival reports whether a listed form only tells how a flavouring that is
// named with it was tasted ("mint | came through", "a slow heat that | crept up
// on you"), or tells of no taste at all ("it came through on my fingers").
func (d sensing) tellsArrival(tokens []token, c candidate) bool {
	v := c.from
	through := tokens[v].in("came", "comes", "coming", "come") && tokens[c.to-1].in("through", "thru")
	if !through && !arrives(tokens, v) || tokens[v].in("gives", "gave", "adds", "added") {
		return false
	}
	if through && !arrives(tokens, v) {
		return true
	}
	s := subject(tokens, v)
	if s < 0 {
		return through
	}
	return savour(&tokens[s]) || tokens[s].in("heat", "spice", "warmth", "kick") || tokens[s].inert()
}
