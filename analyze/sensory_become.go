package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// became adds what the food turned to, named by a thing it is not: "gone to
// soup", "it goes to crumbs", "from porridge to silk", "basically glue", "baked
// to a glossy chestnut".
func (d sensing) became(tokens []token, i int, add func(int, int, lexicon.Sense)) {
	from, sense := namedThing(tokens, i)
	if sense == "" {
		return
	}
	k := from
	graded := false
	for k > 0 && (tokens[k-1].in("a", "an") || tokens[k-1].isAdj()) && k > from-4 {
		k--
		graded = graded || tokens[k].isAdj()
	}
	if k == 0 {
		return
	}
	prev := &tokens[k-1]
	switch {
	case prev.norm == "between" && sense == lexicon.Touch && after(tokens, i, 1).norm == "and":
		for j := i + 2; j < len(tokens) && j <= i+4; j++ {
			if _, s := namedThing(tokens, j); s == lexicon.Touch {
				add(from, j+1, sense) // "between soup and porridge"
				return
			}
		}
	case graded && k > 1 && prev.in("with", "as") && !tokens[k].in("more", "some") && sense == lexicon.Touch && tokens[k-2].norm == "up" && k > 2 && tokens[k-3].in("ended", "end", "ends"):
		add(from, i+1, sense) // "ended up with yellow soup"
	case prev.in("to", "into", "tae", "from") && (sense != lexicon.Sight || graded || prev.norm == "from" || fromBefore(tokens, k-1)):
		if v := turning(tokens, k-1); v >= 0 && !subjectIsHuman(tokens, v) && !d.inertSubject(tokens, candidate{from: v, to: v + 1}) {
			add(from, i+1, sense)
		}
	case sense == lexicon.Touch && k > 1 && (prev.in("basically", "just", "practically", "nearly", "almost", "pure", "all", "total") || prev.in("of", "like") && tokens[k-2].in("kind", "sort", "more", "something", "bit")):
		if v := predicateOf(tokens, k); v >= 0 && k-v <= 5 && !subjectIsHuman(tokens, v) && (i+1 == len(tokens) || !tokens[i+1].isNoun()) {
			add(from, i+1, sense)
		}
	}
}

// turning returns the verb before token i by which food turns to something.
func turning(tokens []token, i int) int {
	for j := i - 1; j >= clauseStart(tokens, i) && j >= i-8; j-- {
		switch t := &tokens[j]; {
		case t.in("went", "go", "goes", "gone", "going", "turn", "turns", "turned", "turning", "set", "changed", "change", "changes", "cooked", "boiled", "collapsed", "reduced", "crumbled", "baked", "bakes", "roasted", "fried", "faded", "smeared", "melted", "melts", "caramelised", "dried", "dropped"):
			return j
		case t.isNoun() && t.kind == lexicon.NoKind && i-j == 1:
			return -1
		}
	}
	return -1
}

// fromBefore reports whether "from" stands a few words before "to" at token i.
func fromBefore(tokens []token, i int) bool {
	for j := i - 1; j >= 0 && j >= i-5; j-- {
		if tokens[j].norm == "from" {
			return true
		}
	}
	return false
}

// namedThing returns where the name that ends at token i of a thing food is
// likened to begins, and the sense it speaks to, or "".
func namedThing(tokens []token, i int) (int, lexicon.Sense) {
	t := &tokens[i]
	if i > 0 {
		switch tokens[i-1].norm + " " + t.norm {
		case "baby food", "wallpaper paste", "chewing gum", "cotton wool", "wet sand", "scrambled eggs", "scrambled egg", "whipped cream":
			return i - 1, lexicon.Touch
		}
	}
	switch t.norm {
	case "soup", "mush", "porridge", "porrige", "glue", "jelly", "rubber", "leather", "cement", "concrete", "sludge", "slush", "dust", "powder", "crumbs",
		"rock", "rocks", "stone", "bricks", "bullets", "silk", "velvet", "water", "pulp", "liquid", "mud", "slime", "sand", "cardboard", "plastic",
		"wood", "gum", "elastic", "clay", "putty", "goo", "gloop", "syrup", "paste", "mousse", "fluff", "rubble", "gravel", "pebbles", "batter", "custard":
		return i, lexicon.Touch
	case "chestnut", "straw", "cream", "toffee", "caramel", "mauve", "conker", "rust", "charcoal", "coal", "cinders", "lace", "copper", "mahogany", "honey", "bronze", "peach", "plum", "coffee":
		return i, lexicon.Sight
	}
	return i, ""
}

// seenThrough adds what could be seen through a thing as thin as that: "see my
// hand through it", "you could see light thru", "the pattern showed through". A
// window and a door are no food.
func seenThrough(tokens []token, i int, add func(int, int, lexicon.Sense)) {
	t := &tokens[i]
	if !t.in("see", "let", "lets", "letting", "showed", "shows", "shone", "shines", "came") {
		return
	}
	for j := i + 1; j < len(tokens) && j <= i+7; j++ {
		if tokens[j].pause() || tokens[j].isVerb() {
			return
		}
		if !tokens[j].in("through", "thru") {
			continue
		}
		next := &token{}
		if j+1 < len(tokens) {
			next = &tokens[j+1]
		}
		if next.in("the", "a", "my", "our") || t.norm == "see" && tokens[i+1].in("it", "them", "him", "her", "me") {
			return
		}
		to := j + 1
		if next.in("it", "them") {
			to++
		}
		switch {
		case t.norm == "see" && j > i+1, strings.HasPrefix(t.norm, "let") && lightNear(tokens, i+1, j):
			add(i, to, lexicon.Sight)
		case t.norm != "see" && j == i+1 && i > 0 && lightNear(tokens, max(0, i-6), i):
			add(i, to, lexicon.Sight)
		}
		return
	}
}

// lightNear reports whether light, or what one sees through a thin thing,
// stands among the tokens from a to b.
func lightNear(tokens []token, a, b int) bool {
	for j := a; j < b; j++ {
		if tokens[j].in("light", "sun", "daylight", "pattern", "hand", "fingers", "tablecloth", "colour", "colours", "filling", "fruit", "jam") {
			return true
		}
	}
	return false
}

// asAThing widens a quality to the thing it is measured by: "thin | as
// pennies", "green as grass", "soft as a pillow". Of flat and stiff things,
// thick and thin are seen.
func (d sensing) asAThing(tokens []token, found []candidate) {
	for n := range found {
		c := &found[n]
		if c.to+1 >= len(tokens) || c.open || tokens[c.to].norm != "as" || !tokens[c.to-1].isAdj() {
			continue
		}
		if next := &tokens[c.to+1]; next.in("anything", "hell", "ever") || !next.isNoun() && !(next.in("a", "an", "my", "your") && c.to+2 < len(tokens) && (tokens[c.to+2].isNoun() || tokens[c.to+2].isAdj())) {
			continue
		}
		end := likenessEnd(tokens, c.to+1)
		if end < len(tokens) && tokens[end].isVerbForm() || tokens[c.to+1].human() {
			continue
		}
		r := d.choose(tokens, found, n, "")
		if tokens[c.from].in("thick", "thin", "fat") && !pours(tokens[c.to+1:end]) {
			r.sense = lexicon.Sight
		}
		c.to, c.readings, c.open = end, []sensed{r}, true
	}
}

// pours reports whether the likeness is to something that pours or spreads.
func pours(likeness []token) bool {
	for i := range likeness {
		switch singular(likeness[i].norm) {
		case "porridge", "custard", "cream", "soup", "paste", "glue", "mud", "treacle", "honey", "cement", "yoghurt", "yogurt", "water", "dishwater", "milk", "syrup", "jam", "tar", "oil", "gravy", "paint":
			return true
		}
	}
	return false
}
