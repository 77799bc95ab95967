package analyze

import "saywhy/lexicon"

// heardDoing reports whether the verb at token i tells what the food was heard,
// felt or seen to do: "you could hear it crackle".
func heardDoing(tokens []token, i int) bool {
	if i < 2 || !tokens[i-1].in("it", "them", "crust", "top", "skin", "outside", "shell", "pastry") {
		return false
	}
	for j := i - 2; j >= 0 && j >= i-4; j-- {
		if tokens[j].in("hear", "heard", "feel", "felt") {
			return true
		}
	}
	return false
}

// heardSound adds the sound behind "hear the": "you could hear the crackling".
func heardSound(tokens []token, i int, add func(int, int, lexicon.Sense)) {
	if tokens[i].norm == "crackling" && heardDoing(tokens, i) {
		add(i, i+1, lexicon.Touch) // "you could hear the crust crackling"
		return
	}
	if i < 2 || !tokens[i].in("crackling", "crackle", "crunch", "snap", "fizz", "popping") || !tokens[i-1].in("the", "a") || !tokens[i-2].in("hear", "heard") {
		return
	}
	if i+1 < len(tokens) && tokens[i+1].norm == "of" && i+3 < len(tokens) && (tokens[i+2].inert() || tokens[i+3].inert()) {
		return // "the crackling of the fire"
	}
	add(i, i+1, lexicon.Touch)
}

// stuckTo adds what food stuck to, told of people and of other food: "stuck to
// all my fingers", "sticking to me", "clung to the yam", "stuck to each other".
// What sticks to a tin or a tray belongs to the work and stays with the list.
func (d sensing) stuckTo(tokens []token, i int, add func(int, int, lexicon.Sense)) {
	if !tokens[i].in("stuck", "stick", "sticks", "sticking", "sticked", "clung", "clings", "cling", "clinging", "glued") {
		return
	}
	to := i + 1
	for to < len(tokens) && to <= i+2 && tokens[to].in("up", "right", "all", "straight", "on", "itself", "like", "glue") {
		to++
	}
	if to >= len(tokens) || !tokens[to].in("to", "on", "onto", "in") || subjectIsHuman(tokens, i) {
		return
	}
	for j := to + 1; j < len(tokens) && j <= to+5; j++ {
		switch t := &tokens[j]; {
		case t.norm == "each" && j+1 < len(tokens) && tokens[j+1].norm == "other":
			add(i, j+2, lexicon.Touch)
			return
		case t.kind == lexicon.Body, t.in("me", "everything", "together", "itself", "themselves", "teeth", "spoon", "fork", "knife"), tokens[to].norm == "to" && t.kind == lexicon.Ingredient:
			add(i, j+1, lexicon.Touch)
			return
		case t.tag == "DT" || t.tag == "PDT" || t.tag == "PRP$" || t.isAdj() || t.in("all", "both", "me", "my"):
		default:
			return
		}
	}
}

// cameOut reports whether the verb at token i only leads to how the food came
// out, which is told right after it: "rose level", "spread out flat", "rose up
// like top hats".
func cameOut(tokens []token, c candidate) bool {
	if c.to >= len(tokens) || !tokens[c.from].in("rose", "spread", "risen") || c.to-c.from > 2 {
		return false
	}
	return tokens[c.to].in("level", "flat", "even", "evenly", "straight", "wonky", "lopsided", "thin", "crooked", "like")
}

// onlyTasted adds what was the only thing to be tasted or smelt: "all you could
// taste was the oregano".
func (d sensing) onlyTasted(tokens []token, i int, add func(int, int, lexicon.Sense)) {
	t := &tokens[i]
	if !t.in("taste", "smell") || i < 2 || i+2 >= len(tokens) || !plainBe(tokens[i+1].norm) || !tokens[i-1].in("could", "can") {
		return
	}
	from := i + 2
	for from < len(tokens) && (tokens[from].tag == "DT" || tokens[from].tag == "PRP$") {
		from++
	}
	if from < len(tokens) && (tokens[from].isNoun() || tokens[from].kind.Food()) {
		to := from + 1
		for to < len(tokens) && tokens[to].isNoun() {
			to++
		}
		sense, _ := senseOfVerb(t.norm)
		add(from, to, sense)
	}
}

// underHeading returns the sense of a flavouring noted behind a heading that
// names taste or smell, without a verb ("Taste: lemon, a bit of clove"), or "".
func underHeading(tokens []token, i int) lexicon.Sense {
	if i < 2 || !flavouring(&tokens[i]) && !tokens[i].in("caramel", "toffee", "butterscotch", "liquorice", "marzipan", "chocolate", "coffee", "apple", "orange", "banana", "coconut", "tomato") {
		return ""
	}
	sense, ok := headingSense(tokens)
	if !ok || sense != lexicon.Tongue && sense != lexicon.Smell {
		return ""
	}
	for j := range tokens {
		if tokens[j].isVerbForm() || tokens[j].in("more", "less", "add", "needs", "next") {
			return ""
		}
	}
	return sense
}

// closeCrumb reports whether "close" is said of a crumb: "the crumb was close".
func closeCrumb(tokens []token, i int) bool {
	if tokens[i].norm != "close" {
		return false
	}
	of := phraseHead(tokens, i)
	if v := predicateOf(tokens, i); of < 0 && v >= 0 {
		of = subject(tokens, v)
	}
	if of >= 0 && tokens[of].in("it", "'s") && of > 0 && tokens[of-1].in("inside", "middle") {
		return true // "inside it was quite close"
	}
	return of >= 0 && tokens[of].in("crumb", "texture", "inside", "sponge", "bread", "loaf", "middle") && (i+1 == len(tokens) || tokens[i+1].norm != "to")
}
