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

// praised reports whether the judgement is praise.
func praised(tokens []token, j judgement) bool {
	t := &tokens[j.from]
	blame := t.in("bad", "badly", "rubbish", "horrible", "disgusting", "awful", "terrible", "dreadful", "vile", "gross", "worse", "worst", "disaster", "mess", "rank", "minging", "mingin", "grim", "poor", "pants", "disappointing",
		"ok", "okay", "alright", "fine", "meh", "average", "edible", "decent", "fair", "mid", "boring", "dodgy", "weird", "odd", "strange", "nightmare", "shambles", "failure", "fail", "flop", "up", "below")
	if t.norm == "decent" && phraseHead(tokens, j.to-1) >= 0 {
		blame = false // "a decent breakfast"
	}
	return blame == denied(tokens, j.from)
}

// faultOfPart reports whether a sentence opens with a part or an ingredient and what was
// wrong with it ("The carrots had gone mushy"): it tells nothing of what was praised.
func faultOfPart(s *sentence) bool {
	tokens := s.tokens
	if len(tokens) > 1 && someOf(tokens[0].norm) && len(s.vague) > 0 && s.vague[0].from < reach/2 {
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
	if at+3 >= len(tokens) || tokens[at].norm != "," || !tokens[at+1].human() || j.topic == "" && j.sense == "" || len(s.why) == 0 {
		return false
	}
	for i := at + 2; i < len(tokens) && i <= at+4; i++ {
		if didThing(tokens, i) && tokens[i].card.works {
			return s.why[len(s.why)-1].from > i
		}
	}
	return false
}
