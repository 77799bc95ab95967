package analyze

import "saywhy/lexicon"

// saidByOthers reports whether the judgement is what somebody else said or thought
// ("my brother said it was the best ever").
func saidByOthers(tokens []token, j judgement) bool {
	for k := j.from - 1; k >= 0 && k >= j.from-8; k-- {
		t := &tokens[k]
		if !t.in("said", "says", "say", "sez", "called", "calls", "reckons", "reckoned", "thinks", "thought", "told", "goes", "declared", "pronounced", "rated") {
			continue
		}
		n := subject(tokens, k)
		if n < 0 {
			n = k - 1
		}
		return n >= 0 && !tokens[n].in("i", "we", "you", "it")
	}
	return false
}

// pairedWith reports whether the judgement is of the food with another beside it, and ends
// there ("it was nice with soup", "great with the sugar while hot").
func pairedWith(tokens []token, j judgement) bool {
	if j.to+1 >= len(tokens) || tokens[j.to].norm != "with" {
		return false
	}
	for k := j.to + 1; k < len(tokens) && k <= j.to+8; k++ {
		if tokens[k].in("on", "top", "over", "running", "sticking", "through", "scattered", "sprinkled", "dotted", "round") {
			return false // "looked lovely with almonds on top": that is how it looked
		}
	}
	h := objectHead(tokens, j.to)
	return h >= 0 && tokens[h].kind.Food() && h <= j.to+4 && clauseEnd(tokens, h) >= len(tokens)-4
}

// praised reports whether the judgement is praise: by a word of praise, or by one of
// blame that is denied.
func praised(tokens []token, j judgement) bool {
	blame := j.blames
	if tokens[j.from].norm == "decent" && phraseHead(tokens, j.to-1) >= 0 {
		blame = false // "a decent breakfast"
	}
	return blame == denied(tokens, j.from)
}

// faultOfPart reports whether a sentence opens with a part or an ingredient and what was
// wrong with it ("The carrots had gone mushy"): it tells nothing of what was praised.
func faultOfPart(s *sentence) bool {
	tokens := s.tokens
	if len(tokens) > 2 && (someOf(tokens[0].norm) || tokens[0].norm == "the" && someOf(tokens[1].norm)) && len(s.vague) > 0 && s.vague[0].from < reach/2 {
		return true // "Mine were fab. First one was minging"
	}
	n := -1
	for i := 0; i < len(tokens) && i < 4; i++ {
		if t := &tokens[i]; t.isVerb() || t.in("it", "they", "this", "that") || t.human() {
			return false
		} else if t.kind == lexicon.Ingredient || t.kind == lexicon.PartNoun {
			n = i
			break
		}
	}
	if n < 0 || n > 0 && tokens[n-1].isAdj() || n+1 >= len(tokens) || !tokens[n+1].isVerb() {
		return false
	}
	for i := n + 1; i < len(tokens) && i <= n+5; i++ {
		if t := &tokens[i]; t.in("too", "bit", "slightly", "touch", "tad", "trifle", "burnt", "lumps", "lumpy", "mushy", "dry", "tough", "raw", "watery", "greasy", "soggy", "claggy", "rubbery", "burned", "stuck", "split", "curdled", "gritty", "overdone", "undercooked", "overcooked", "hard", "stodgy") {
			return !denied(tokens, i)
		}
	}
	return false
}

// onlyFaults reports whether a sentence describes the food by faults alone ("They were
// sandy and dry", "Stuck to the pan"): that tells nothing of what was praised in it.
func onlyFaults(s *sentence) bool {
	faults := 0
	for _, w := range s.sensory {
		if w.supposed || w.other {
			continue
		}
		bad := false
		for i := w.from; i < w.to; i++ {
			bad = bad || s.tokens[i].faulty() || wentWrong(&s.tokens[i])
		}
		if !bad || w.denied || s.tokens[w.from].negator() {
			return false
		}
		faults++
	}
	return faults > 0
}

// oneOfThem reports whether the noun at token n is one or some of what was judged ("fine but
// one chop was tough").
func oneOfThem(tokens []token, n int) bool {
	return n > 0 && tokens[n-1].in("one", "some", "two", "three", "couple", "few", "half")
}

// foundIt reports whether the person at token n is said to have found the same food so, by
// "it" or "them" before token to ("good but my mum found it too sweet").
func foundIt(tokens []token, n, to int) bool {
	return tokens[n].human() && n+2 < len(tokens) && tokens[n+1].in("found", "finds", "thought", "thinks", "said", "says", "reckoned", "reckons", "called") && tokens[n+2].in("it", "they", "them", "that") && n+2 < to
}

// sideFirst reports whether another side of the food is set against the judged one behind the
// "but" at token k ("perfect from the top but underneath was pale").
func sideFirst(tokens []token, k int) bool {
	return k+2 < len(tokens) && tokens[k+1].in("underneath", "inside", "outside", "below", "underside") && linkingVerb(tokens[k+2].norm)
}

// madeOf reports whether it is added right behind the judgement what the food was made from
// ("the gravy was champion, made from the sticky bits").
func madeOf(tokens []token, j judgement) bool {
	return j.to+3 < len(tokens) && tokens[j.to].norm == "," && tokens[j.to+1].norm == "made" && tokens[j.to+2].in("from", "with", "of", "out") && tokens[j.to+3].norm != "love"
}

// deedThatMade reports whether the clause right behind the judgement tells a deed and what
// came of it ("the rest were better, I drained them which got rid of the grease").
func deedThatMade(s *sentence, j judgement) bool {
	tokens, at := s.tokens, j.to
	if at+3 >= len(tokens) || tokens[at].norm != "," || !tokens[at+1].human() {
		return false
	}
	if !praised(tokens, j) && didAmiss(tokens[at+1:]) {
		return true // "it was peak, I burnt them all"
	}
	if j.topic == "" && j.sense == "" || len(s.why) == 0 {
		return false
	}
	for i := at + 2; i < len(tokens) && i <= at+4; i++ {
		if didThing(tokens, i) && tokens[i].card.works {
			return s.why[len(s.why)-1].from > i
		}
	}
	return false
}

// agrees reports whether a sentence opens with how the food was and holds nothing back ("It
// was crisp and sweet", but not "It was a bit eggy for me").
func agrees(tokens []token) bool {
	if len(tokens) < 3 || !tokens[0].in("it", "they") || !linkingVerb(tokens[1].norm) && !tokens[1].in("had", "has", "have") {
		return false
	}
	for i := 2; i < len(tokens) && i < reach/2; i++ {
		if tokens[i].in("bit", "too", "but", "slightly", "needed", "n't", "not", "touch", "though") {
			return false
		}
	}
	return true
}

// faultInSome reports whether a sentence opens with what was wrong with one or some of what
// was judged ("One had a hole in it").
func faultInSome(tokens []token) bool {
	if len(tokens) < 4 || !tokens[0].in("one", "some", "two", "three", "most", "half", "several") || !tokens[1].in("had", "has", "have") {
		return false
	}
	for i := 2; i < len(tokens) && i < 7; i++ {
		if tokens[i].in("hole", "holes", "crack", "cracks", "lump", "lumps", "gap", "gaps", "bubble", "bubbles", "split", "splits", "tear", "tears", "patch", "patches", "edges", "bottoms", "bottom", "middle", "middles", "skin") {
			return true
		}
	}
	return false
}

// likened reports whether a sentence opens with what the food was like ("Like burnt rubber"),
// and not with whose it was like.
func likened(tokens []token) bool {
	if len(tokens) < 2 || tokens[0].norm != "like" || tokens[1].human() || tokens[1].in("my", "his", "her", "our", "your", "their", "at", "in", "when", "i", "we", "the", "last", "always", "it", "that", "this", "mum", "nan") {
		return false
	}
	for i := 1; i < len(tokens) && i < 6; i++ {
		if t := &tokens[i]; t.kind == lexicon.Person || t.kind == lexicon.Place || t.in("shop", "home", "takeaway", "restaurant", "cafe", "chippy", "bought", "usual") || t.tag == "POS" {
			return false
		}
	}
	return true
}

// dressedWith reports whether it is told what a dish was laid out or dressed with
// ("presentation was great, with parsley on top").
func dressedWith(tokens []token, j judgement) bool {
	if j.sense != lexicon.Sight {
		return false
	}
	for k := j.to; k < len(tokens) && k <= j.to+3; k++ {
		if placed(tokens, k) {
			return true // "they'd look smarter torn in a basket"
		}
	}
	for k := j.to; k+1 < len(tokens) && k <= j.to+1; k++ {
		if tokens[k].norm != "with" {
			continue
		}
		for n := k + 1; n < len(tokens) && n <= k+4; n++ {
			if (j.deeds || between(tokens, n, min(n+5, len(tokens)), "top", "over", "round")) && (tokens[n].kind == lexicon.Ingredient || tokens[n].kind == lexicon.PartNoun) {
				return true
			}
		}
	}
	return false
}

// didAmiss reports whether a sentence opens with what somebody did amiss ("I dropped half on
// the floor").
func didAmiss(tokens []token) bool {
	return len(tokens) > 2 && tokens[0].human() && tokens[1].in("burnt", "burned", "dropped", "forgot", "spilt", "spilled", "ruined", "overcooked", "undercooked", "split", "overmixed", "overdid", "mixed", "misread", "left")
}

// gotBetter reports whether the judgement is of a change ("after that it got better").
func gotBetter(tokens []token, j judgement) bool {
	return j.from > 0 && tokens[j.from].in("better", "worse") && tokens[j.from-1].in("got", "gets", "became", "turned")
}
