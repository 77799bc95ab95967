package analyze

import (
	"slices"

	"saywhy/lexicon"
)

// noted reports whether sentence i, which need not have a verb, is a note of
// what to have or do another time. What came of it this time would be told with
// a verb in the past; without one, an amount set against another, a share, a
// question for a thing, or a thing called out to the cook can only be a wish.
func noted(r *reading, i int) bool {
	s := &r.sentences[i]
	if len(s.tokens) < 2 || isHeading(s) {
		return false
	}
	mends := i > 0 && fault(&r.sentences[i-1])
	return amountsSet(s, mends) || offered(s) || calledOut(s, r.Role) || amountNote(s, mends) || notSo(s, mends) || mends && (inOtherOrder(s) || thatMends(s))
}

// tellsFinite reports whether a verb with its time stands among the tokens. A
// noun of the kitchen that the tagger takes for a verb is none.
func tellsFinite(tokens []token) bool {
	return slices.ContainsFunc(tokens, func(t token) bool {
		return t.tag == "MD" || t.in("'s", "'re", "is", "was", "are", "were", "had", "has", "did", "got") || t.tagIn("VBD", "VBZ", "VBP") && (t.kind == lexicon.NoKind || t.kind == lexicon.Other)
	})
}

// amountsSet reports whether one amount is set against another that is not to be,
// with no verb that says it was so: "three eggs not two", "slice six leeks, not
// four". How long something took is told in the same way, so that a time counts
// only behind a fault or where somebody says it: "it was too dry. Ten minutes, not
// fifteen".
func amountsSet(s *sentence, mends bool) bool {
	for j := 1; j+1 < len(s.tokens); j++ {
		if s.tokens[j].norm != "not" || !counts(&s.tokens[j+1]) {
			continue
		}
		from, timed := j, spanOfTime(after(s.tokens, j, 2))
		for from > 0 && from > j-6 && (!s.tokens[from-1].pause() || s.tokens[from-1].norm == "," && from == j) && !s.tokens[from-1].in("and", "but", "so") {
			from--
			timed = timed || spanOfTime(&s.tokens[from])
		}
		if tellsFinite(s.tokens[from:j]) || !slices.ContainsFunc(s.tokens[from:j], func(t token) bool { return counts(&t) }) {
			continue
		}
		if !timed || mends || fault(s) || restHas(s.tokens, 0, len(s.tokens), "says", "reckons", "please") {
			return true
		}
	}
	return false
}

// counts reports whether the token is a number, in figures or as a word.
func counts(t *token) bool {
	return t.tag == "CD" || t.in("ten", "fifteen", "twenty", "thirty", "forty", "fifty", "sixty", "half", "two", "three")
}

// offered reports a short question that only names a thing to have: "A squeeze of
// lime?", "Or oats?", "Some mint on top, possibly?".
func offered(s *sentence) bool {
	n := len(s.tokens)
	if n > 12 || s.tokens[n-1].norm != "?" || tellsFinite(s.tokens) || restHas(s.tokens, 0, n, "anyone", "seconds", "left", "you", "who", "why", "what") {
		return false
	}
	first := &s.tokens[0]
	hedged := restHas(s.tokens, 0, n, "maybe", "perhaps", "possibly")
	if !hedged && !first.in("a", "an", "some", "more", "less", "fewer", "extra", "another", "or", "half", "bit") && first.tag != "JJR" {
		return false
	}
	return slices.ContainsFunc(s.tokens, func(t token) bool { return t.kind == lexicon.Ingredient || t.kind == lexicon.Tool })
}

// calledOut reports a thing without a verb that an adult calls out to the cook:
// "Lid on, love!", "A dry cloth, pal, every time". Praise and what the food is like
// are called out too.
func calledOut(s *sentence, role Role) bool {
	if role != Adult || len(s.tokens) > 14 || len(s.vague) > 0 || len(s.sensory) > 0 || tellsFinite(s.tokens) || slices.ContainsFunc(s.tokens, func(t token) bool { return t.in("thanks", "thank", "no", "what", "i") }) {
		return false
	}
	for i := 1; i < len(s.tokens); i++ {
		if s.tokens[i-1].norm == "," && s.tokens[i].in("son", "love", "pet", "sweetheart", "darling", "mate", "lad", "lass", "hen", "duck", "dear", "kid", "kiddo", "champ", "buddy", "flower", "pal", "petal", "babe", "hun", "sweetie", "poppet") {
			return slices.ContainsFunc(s.tokens, func(t token) bool {
				return t.kind == lexicon.Ingredient || t.kind == lexicon.Tool || t.kind == lexicon.Cloth
			})
		}
	}
	return false
}

// amountNote reports a sentence that is only an amount beside what it was: "One
// onion fewer.", "Half the chilli.", "Double the sauce.", behind a fault also a
// time: "A minute longer under the grill."
func amountNote(s *sentence, mends bool) bool {
	tokens := s.tokens
	for len(tokens) > 2 && tokens[0].in("and", "so", "but", "maybe", "perhaps", "just", "about", "he", "she", "i", "reckons", "reckon", "says", "think", ",") {
		tokens = tokens[1:]
	}
	end := 0
	for end < len(tokens) && !tokens[end].pause() && !tokens[end].in("because", "as", "so", "or", "when", "if", "and") {
		end++
	}
	if end < 2 || end > 9 || tellsFinite(tokens[:end]) {
		return false
	}
	first := &tokens[0]
	if first.in("half", "double", "twice") {
		return tokens[1].in("the", "that", "as", "it") && (end == len(tokens) || !tokens[end].in("and", "or")) && !tellsPastSo(tokens[end:])
	}
	if first.tag != "CD" && !first.in("a", "an", "another", "bit", "couple", "minute") {
		return false
	}
	for j := 1; j < end; j++ {
		if tokens[j].in("fewer", "less", "longer", "sooner", "earlier", "more") && !after(tokens, j, 1).in("than", "or") && (tokens[j-1].isNoun() || tokens[j-1].in("bit", "little", "minute", "minutes")) {
			return mends || tokens[j].in("fewer", "less") && !spanOfTime(&tokens[j-1]) || j == end-1 && !tellsPastSo(tokens[end:])
		}
	}
	return false
}

// tellsPastSo reports whether what follows tells on of what was done.
func tellsPastSo(tokens []token) bool {
	return slices.ContainsFunc(tokens, func(t token) bool { return t.tag == "VBD" })
}

// notSo reports a measure that is not to be as it was: "Not so thick - it was raw
// inside", behind a fault also alone.
func notSo(s *sentence, mends bool) bool {
	t := s.tokens
	if len(t) < 3 || t[0].norm != "not" || !t[1].in("so", "as", "quite") {
		return false
	}
	if !t[2].in("big", "much", "many", "long", "thick", "thin", "full", "hot", "early", "late", "high", "deep", "close", "fast", "near", "small") {
		return false
	}
	end := 3
	for end < len(t) && !t[end].pause() && t[end].norm != "because" {
		end++
	}
	return !tellsFinite(t[:end]) && (mends || tellsPastSo(t[end:]))
}

// inOtherOrder reports, behind a fault, what is to come first and what then,
// told without saying that it did: "Rice on first, then the fish."
func inOtherOrder(s *sentence) bool {
	first := slices.IndexFunc(s.tokens, func(t token) bool { return t.in("first", "in", "on", "out", "empty") })
	then := slices.IndexFunc(s.tokens, func(t token) bool { return t.norm == "then" })
	return first > 0 && then > first && !tellsFinite(s.tokens[:then])
}

// thatMends reports, behind a fault, a thing that is said to do in general what was
// not done this time: "A warm spoon lets it slide off."
func thatMends(s *sentence) bool {
	t := s.tokens
	if !t[0].in("a", "an", "some", "half") && t[0].tag != "CD" {
		return false
	}
	thing := false
	for j := 1; j < len(t) && j <= 7; j++ {
		if thing && t[j].in("lets", "stops", "keeps", "helps", "fills", "sorts", "fixes", "holds", "does", "prevents", "saves", "fits", "cures") {
			return true
		}
		if t[j].pause() || t[j].tagIn("VBD", "MD", "VBP") && t[j].kind == lexicon.NoKind {
			return false
		}
		thing = thing || t[j].kind == lexicon.Tool || t[j].kind == lexicon.Ingredient || t[j].kind == lexicon.Cloth
	}
	return false
}
