package analyze

import (
	"slices"
	"strings"

	"saywhy/lexicon"
)

// supposition reports whether the whole sentence only supposes: "If my cousin
// who has a peanut allergy had come I would have done it without", "Had the
// pan boiled dry it would have cracked".
func supposition(tokens []token) bool {
	if len(tokens) < 2 || tokens[0].norm != "if" && !(tokens[0].norm == "had" && tokens[1].in("i", "he", "she", "we", "they", "it", "the", "my", "mum", "dad")) {
		return false
	}
	for i := range tokens {
		if tokens[i].in("would", "'d", "could") {
			return true
		}
	}
	return false
}

// planned reports whether what is done at token i is only meant to be done:
// "next time I would cook it longer" leaves this chicken pink.
func planned(tokens []token, i int) bool {
	for j := i - 1; j >= 0 && j >= i-8; j-- {
		t := &tokens[j]
		if t.norm == "next" && tokens[j+1].norm == "time" {
			return true
		}
		if j >= i-3 && t.in("would", "'d", "should", "will", "'ll", "need", "must") {
			return true
		}
	}
	return false
}

// whenReach is how many words a time that was named holds for: in a text
// without stops, what is told further on may be of any day.
const whenReach = 60

// nextTime reports whether token i is part of a plan that opens before it:
// "next time weigh it first and leave the milk out". Why it is planned was
// true today: "next time longer, because it was pink".
func nextTime(tokens []token, i int) bool {
	for j := i - 1; j >= 1 && j >= i-whenReach; j-- {
		if tokens[j].in("because", "as", "since", "cos", "so", "but", "this", "today", ".", ";", ":", "was", "were", "had") {
			return false
		}
		if tokens[j].norm == "time" && tokens[j-1].norm == "next" {
			return true
		}
		if tokens[j].tag == "VBD" {
			return false // by then something is told that was done
		}
	}
	return false
}

// before reports whether what stands at token i happened another time: "last
// time I cut my finger".
func before(tokens []token, i int) bool {
	if longAgo(tokens, i) || onTheLast(tokens, i) || whenYoung(tokens, i) {
		return true
	}
	for j := i - 1; j >= 1 && j >= i-whenReach; j-- {
		if tokens[j].in("this", "today", "but", ".", ";") {
			return false
		}
		if tokens[j-1].norm == "last" && tokens[j].in("time", "week", "month", "year", "attempt", "practical", "lesson", "session", "term", "summer", "winter", "autumn", "spring", "christmas", "easter", "holidays") {
			return true
		}
		if j > 2 && tokens[j-3].norm == "when" && tokens[j-1].in("was", "were") && tokens[j].in("little", "small", "younger", "tiny") {
			return true // "when I was little I used to eat it raw"
		}
		if tokens[j-1].norm == "back" && (atSeason(tokens, j) || tokens[j].norm == "in" && period(tokens, j+1)) {
			return true // "back in October I got a blister"
		}
		if asChild(tokens, j) {
			return true // "as a girl I scalded my foot"
		}
		if remembered(tokens, j) {
			return true // "she remembers burning her arm", "told me about the time he sliced his thumb"
		}
		if tokens[j].norm == "once" && tokens[j-1].human() && tokens[j+1].tag == "VBD" {
			return true // "Gran once showed me the scar"
		}
		if tokens[j].norm == "time" && tokens[j-1].norm == "first" && tokens[j+1].in("i", "we", "she", "he") {
			return true // "the first time I did thighs they were bloody"
		}
		if tokens[j].in("ago", "back") && tokens[j-1].in("year", "years", "month", "months", "ages", "weeks", "summers", "winters", "terms") || tokens[j-1].in("old", "other") && tokens[j].in("school", "house", "week") {
			return true // "two years ago I scalded my foot", "at my old school"
		}
		if tokens[j-1].norm == "used" && tokens[j].norm == "to" && j >= i-6 && (j < 2 || !tokens[j-2].in("was", "were", "is", "been", "got")) {
			return true // "I used to lick the beaters"
		}
		if tokens[j-1].norm == "year" && tokens[j].tag == "CD" && j > 1 && tokens[j-2].norm == "in" || tokens[j-1].norm == "in" && tokens[j].in("juniors", "infants", "primary", "reception") {
			return true // "in year 7 my chicken came out raw"
		}
		if atSeason(tokens, j-1) || namedYear(tokens, j-1) {
			return true // "at Christmas I burnt my arm", "in 2009 he sliced his thumb"
		}
	}
	return false
}

// remembered reports whether token i leads to something of long ago that is only
// told again.
func remembered(tokens []token, i int) bool {
	switch t := &tokens[i]; t.norm {
	case "remembers", "remember", "recalls":
		return i+1 < len(tokens) && tokens[i+1].tag == "VBG"
	case "time", "day":
		return tokens[i-1].norm == "the" && i > 1 && tokens[i-2].norm == "about"
	case "sixties", "seventies", "eighties", "nineties":
		return true
	case "husband", "wife", "mother", "father", "nan", "gran", "grandmother", "grandfather", "aunt", "uncle":
		return tokens[i-1].norm == "late" // "my late husband kept his on the stove"
	}
	return false
}

// atSeason reports whether token i leads to a time of the year, which is not the
// day of the practical when it must be named ("at Christmas", "in spring").
func atSeason(tokens []token, i int) bool {
	if !tokens[i].in("in", "at", "over", "during") || i+1 >= len(tokens) {
		return false
	}
	switch tokens[i+1].norm {
	case "spring", "summer", "autumn", "winter", "christmas", "easter", "halloween", "diwali", "eid", "january", "february", "april", "june", "july", "august", "september", "october", "november", "december":
		return true
	case "new":
		return i+2 < len(tokens) && tokens[i+2].norm == "year"
	}
	return false
}

// longAgo reports whether the time named behind token i, in its own clause, is
// another: "I burned my arm at camp last summer".
func longAgo(tokens []token, i int) bool {
	for j := i + 1; j < len(tokens) && j <= i+9; j++ {
		if tokens[j].norm == "before" && tokens[j-1].word && (j+1 == len(tokens) || tokens[j+1].pause() || tokens[j+1].in("and", "but", "so")) && becauseBefore(tokens, i) {
			return true // "with the guard on because my aunt cut her finger on it before"
		}
		if j+1 == len(tokens) {
			return false
		}
		if tokens[j].pause() || tokens[j].in("and", "but", "so", "because") {
			return false
		}
		if atSeason(tokens, j) || bygone(tokens, j) {
			return true // "choked on one at New Year", "set fire to it in 1961"
		}
		if tokens[j].norm == "last" && tokens[j+1].in("year", "summer", "winter", "autumn", "spring", "term", "christmas", "easter") {
			return true
		}
	}
	return false
}

// becauseBefore reports whether the clause of token i is the reason for what was
// done today, and tells of somebody else: the writer's own cut may be of this hour.
func becauseBefore(tokens []token, i int) bool {
	for j := i; j >= 0 && j >= i-6; j-- {
		if tokens[j].in("i", "we", "me", "my") && !(j+1 < len(tokens) && tokens[j+1].kind == lexicon.Person) {
			return false
		}
		if tokens[j].in("because", "cos", "as", "since", "cause") {
			return true
		}
	}
	return false
}

// asChild reports whether token i ends what tells when somebody was young: "as a
// lad I ate it raw".
func asChild(tokens []token, i int) bool {
	return i > 1 && tokens[i].in("girl", "boy", "child", "lad", "lass", "kid", "bairn", "youngster", "student", "teenager") &&
		tokens[i-1].in("a", "wee", "small", "young", "little") && slices.ContainsFunc(tokens[max(0, i-3):i-1], func(t token) bool { return t.norm == "as" })
}

// bygone reports whether token i leads to years that are long over: "back in
// eighty six", "through the sixties", "in 1961", "before I was born".
func bygone(tokens []token, i int) bool {
	next := &tokens[i+1]
	switch tokens[i].norm {
	case "back":
		return next.norm == "in" && i+2 < len(tokens) && period(tokens, i+2)
	case "the", "late", "early":
		return next.in("fifties", "sixties", "seventies", "eighties", "nineties", "noughties", "war")
	case "in":
		return namedYear(tokens, i)
	case "years", "year":
		return next.in("ago", "back")
	case "before":
		return i+3 < len(tokens) && tokens[i+2].norm == "was" && tokens[i+3].norm == "born"
	case "when":
		return i+3 < len(tokens) && tokens[i+2].in("was", "were") && young(tokens, i+3)
	}
	return false
}

// period reports whether token i names a time that a writer looks back at: a
// year, a decade, a season, a stage of school. A thing does not: "went back in
// the fridge".
func period(tokens []token, i int) bool {
	t := &tokens[i]
	if t.tag == "CD" || atSeason(tokens, i-1) {
		return true // "back in 1998", "back in eighty six", "back in the summer"
	}
	if t.in("the", "my", "our") && i+1 < len(tokens) {
		return period(tokens, i+1) || tokens[i+1].in("fifties", "sixties", "seventies", "eighties", "nineties", "noughties", "war", "day", "days")
	}
	return t.in("year", "primary", "juniors", "infants", "reception", "school", "term", "march", "may", "forty", "fifty", "sixty", "seventy", "eighty", "ninety")
}

// namedYear reports whether token i is the "in" before a year: "in 1961", "in
// 2009". A year is named only when it is not this one; "in 2000 ml" is none.
func namedYear(tokens []token, i int) bool {
	if tokens[i].norm != "in" || i+1 >= len(tokens) {
		return false
	}
	year := &tokens[i+1]
	if year.tag != "CD" || len(year.norm) != 4 || !strings.HasPrefix(year.norm, "19") && !strings.HasPrefix(year.norm, "20") {
		return false
	}
	return i+2 >= len(tokens) || !tokens[i+2].in("ml", "millilitres", "l", "litres", "g", "grams", "kg", "mg", "cc", "degrees", "watts", "w", "calories", "kcal", "kj", "seconds")
}

// young reports whether the predicate that opens at token i tells of a child: "a
// boy", "only little", "so small". "Holding the boy" does not.
func young(tokens []token, i int) bool {
	for j := i; j < len(tokens) && j <= i+3; j++ {
		t := &tokens[j]
		switch {
		case t.in("kid", "lad", "lass", "girl", "boy", "bairn", "child", "younger"):
			return true
		case t.in("little", "small", "tiny", "wee", "young"):
			if j+1 >= len(tokens) || !strings.HasPrefix(tokens[j+1].tag, "NN") {
				return true
			}
		case !t.in("a", "an", "only", "just", "very", "so", "quite", "still", "really"):
			return false
		}
	}
	return false
}

// imagined reports whether what starts at token i is only imagined, advised or
// prevented: "if you", "would have", "so that it does not", "to avoid".
func imagined(tokens []token, i int) bool {
	start := clauseStart(tokens, i)
	for j := max(0, start-1); j < i; j++ {
		t := &tokens[j]
		if t.norm == "if" && j > 0 && tokens[j-1].in("see", "check", "know", "tell", "sure", "wondering", "asked", "ask", "asking", "checking") {
			continue // "to see if it needed salt": whether
		}
		if t.norm == "afraid" && j > 0 && tokens[j-1].in("am", "'m") {
			continue // "I'm afraid the middle was pink": it was
		}
		if t.norm == "stop" && j+1 < len(tokens) && (tokens[j+1].tag == "CD" || tokens[j+1].in("and", "to", "for", "twice")) {
			continue // "I had to stop twice to run to the loo"
		}
		if t.norm == "or" && j == start-1 {
			return true // "soak them or they catch fire"
		}
		if t.in("if", "would", "could", "might", "may", "can", "avoid", "prevent", "unless", "otherwise", "stop", "should", "must", "never", "tempted", "like", "pretended", "joked", "scared", "afraid") || t.in("about", "going", "wanted", "asked", "begged", "trying", "expected", "expecting", "tempted") && j+1 < len(tokens) && tokens[j+1].norm == "to" {
			if t.in("could", "can", "ca") && j+2 < len(tokens) && tokens[j+1].norm == "n't" && tokens[j+2].in("stop", "help", "resist", "find") {
				continue // "I couldn't stop eating it"
			}
			if t.in("could", "can") && j+1 < len(tokens) && tokens[j+1].in("see", "feel", "smell", "taste", "tell", "say") {
				continue
			}
			return true
		}
	}
	return false
}

// supposedWithin reports whether the sign itself only tells what might have
// come about: "no blood from the liver could drip on them". That somebody could
// have been hurt is a near miss, which counts.
func supposedWithin(tokens []token, h hit) bool {
	if h.Label == "injury" || h.Label == "equipment" {
		return false
	}
	for j := h.from + 1; j+1 < h.to && j+1 < len(tokens); j++ {
		if tokens[j].in("could", "would", "might") && !tokens[j+1].in("see", "feel", "smell", "taste", "tell", "say", "n't", "not", "have", "still") {
			return true
		}
	}
	return false
}

// whenYoung reports whether what begins at token i befell somebody when they were a
// child: "has a scar from a tin lid when she was my age".
func whenYoung(tokens []token, i int) bool {
	for j := i; j+3 < len(tokens) && j <= i+whenReach && !tokens[j].divides(); j++ {
		if tokens[j].norm != "when" || !tokens[j+1].in("i", "he", "she", "they", "we") || !tokens[j+2].in("was", "were") {
			continue
		}
		if tokens[j+3].in("little", "small", "young", "younger", "tiny", "six", "seven") || tokens[j+3].in("my", "your") && j+4 < len(tokens) && tokens[j+4].norm == "age" ||
			tokens[j+3].norm == "a" && j+4 < len(tokens) && tokens[j+4].in("girl", "boy", "kid", "child", "lad", "baby", "toddler") {
			return true
		}
	}
	return false
}

// onTheLast reports whether what begins at token i befell somebody with an earlier
// batch: "having burnt his tongue on the last lot".
func onTheLast(tokens []token, i int) bool {
	for j := i; j+3 < len(tokens) && j <= i+whenReach && !tokens[j].pause(); j++ {
		if tokens[j].in("on", "with") && tokens[j+1].norm == "the" && tokens[j+2].in("last", "previous") && tokens[j+3].in("lot", "batch", "time", "go", "attempt") {
			return tokens[max(0, i-1)].in("having", "had", "'d") || i > 1 && tokens[i-2].in("having", "had", "'d")
		}
	}
	return false
}
