package analyze

import "saywhy/lexicon"

// tastedOf adds what a dish tasted, smelt or had a hint of: each noun of the
// list behind "of".
func (d sensing) tastedOf(tokens []token, i int, add func(int, int, lexicon.Sense)) {
	t := &tokens[i]
	sense, ok := senseOfVerb(t.norm)
	if !ok {
		sense, ok = senseOfNoun(t.norm)
	}
	if !ok {
		sense = lexicon.Tongue
		for j := max(0, i-6); j < i; j++ {
			if s, ok := senseOfVerb(tokens[j].norm); ok {
				sense = s
			}
		}
	}
	j := i + 1
	if j < len(tokens) && plainBe(tokens[j].norm) {
		j++ // "the smell was mainly of orange"
	}
	for j < len(tokens) && j <= i+5 && (tokens[j].isAdv() || tokens[j].in("mostly", "mainly", "strongly", "more", "less", "a", "bit", "really", "lot", "only", "just", "faintly")) {
		j++
	}
	if j >= len(tokens) {
		return
	}
	if t.norm == "smell" && i > 0 && tokens[i-1].in("could", "can", "to", "you") && (tokens[j].isNoun() || tokens[j].tag == "DT" || tokens[j].isAdj()) {
		j-- // "you could smell warm bread"
	} else if tokens[j].norm != "of" {
		return
	}
	start := j + 1
	for k := j + 1; k < len(tokens) && k <= j+12; k++ {
		n := &tokens[k]
		switch {
		case n.isNoun() || n.kind.Food():
			if k+1 < len(tokens) && (tokens[k+1].isNoun() || tokens[k+1].kind.Food() && !tokens[k+1].isVerb()) {
				continue
			}
			for start < k && (tokens[start].tag == "DT" || tokens[start].tag == "PRP$" || tokens[start].in("some", "more")) {
				start++
			}
			if !tokens[k].human() && tokens[k].kind != lexicon.Time && !tokens[k].in("anything", "nothing", "everything", "it") {
				add(start, k+1, sense)
			}
			start = k + 1
		case n.in("and", ",", "&", "or"):
			if k+1 < len(tokens) && opensClause(tokens, k+1) {
				return
			}
			start = k + 1
		case n.norm == "with" && k+1 < len(tokens) && (tokens[k+1].isNoun() || tokens[k+1].tag == "DT" || tokens[k+1].in("some", "a", "loads", "lots")) && tokens[k-1].norm == ",":
			start = k + 1 // "of orange, with aniseed behind it"
		case n.isAdj() || n.tag == "DT" || n.tag == "VBN" || n.tag == "VBG" || n.tag == "PRP$" || n.isAdv():
		default:
			return
		}
	}
}

// tastedThe adds what could or could not be tasted or smelt: "you could taste
// the vinegar", "couldn't smell the basil". What somebody tasted to try it is no
// description ("I tasted the sauce"): that needs a verb of being able, and an
// ingredient.
func (d sensing) tastedThe(tokens []token, i int, add func(int, int, lexicon.Sense)) {
	t := &tokens[i]
	sense, ok := senseOfVerb(t.norm)
	if !ok || !t.in("taste", "smell") {
		return
	}
	able := false
	for j := i - 1; j >= 0 && j >= i-4 && !able; j-- {
		able = tokens[j].in("could", "can", "couldn't", "cant", "couldnt", "couldn", "can't", "only", "just", "still", "really", "barely", "hardly", "cannot")
		if !able && !tokens[j].isAdv() && tokens[j].tag != "PRP" {
			break
		}
	}
	if !able {
		return
	}
	start := i + 1
	for k := i + 1; k < len(tokens) && k <= i+9; k++ {
		n := &tokens[k]
		switch {
		case n.kind == lexicon.Ingredient:
			if k+1 < len(tokens) && tokens[k+1].kind == lexicon.Ingredient {
				continue
			}
			add(start, k+1, sense)
			start = k + 1
		case n.tag == "DT" || n.tag == "PRP$" || n.in("and", ",", "or", "all", "much", "of", "any") || n.isAdj() && !n.describes():
			start = k + 1
		default:
			return
		}
	}
}
