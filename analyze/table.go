package analyze

import (
	"saywhy/lexicon"
)

// table answers the three steps for the ten areas over the whole text.
type table struct{}

func (d table) read(r *reading) {
	why := make([]map[lexicon.Area]bool, len(r.sentences))
	for i := range r.sentences {
		why[i] = explained(&r.sentences[i])
	}
	for _, a := range lexicon.Areas() {
		row := AreaRow{Area: a, Expected: expects(r, a), Sentences: []int{}}
		for i := range r.sentences {
			s := &r.sentences[i]
			if !s.has(a) {
				continue
			}
			row.Said = true
			row.Sentences = append(row.Sentences, s.n)
			row.Detail = row.Detail || d.detail(s, a)
			row.Reason = row.Reason || why[i][a] || d.reason(r, i, a)
		}
		r.rows = append(r.rows, row)
	}
}

// expects reports whether the brief asks for the area: for an adult, what
// their own brief and the dish's have in common.
func expects(r *reading, a lexicon.Area) bool {
	if r.Role == Adult && !contains(adultBrief(), a) {
		return false
	}
	return r.brief.Dish.Expects(a)
}

// adultBrief is what the adult at home is asked for: what can be seen and
// tasted from beside the cook. A suggestion comes with the look of the food, so
// improvement is no area of its own here.
func adultBrief() []lexicon.Area {
	return []lexicon.Area{
		lexicon.Safety, lexicon.Hygiene, lexicon.Organisation, lexicon.Independence,
		lexicon.Appearance, lexicon.Taste, lexicon.Texture,
	}
}

// detail reports whether the sentence says something concrete of the area.
func (d table) detail(s *sentence, a lexicon.Area) bool {
	for _, g := range s.signs {
		if g.area == a && g.told {
			if a == lexicon.Improvement {
				return concreteChange(s)
			}
			return true
		}
	}
	return false
}

// concreteChange reports whether a plan for next time names the change: more
// than that it should be better.
func concreteChange(s *sentence) bool {
	for i := range s.tokens {
		t := &s.tokens[i]
		if t.in("more", "less", "longer", "smaller", "bigger", "thinner", "thicker", "lower", "higher", "earlier", "sooner", "slower", "fewer", "extra", "without", "instead", "slowly", "another") {
			return true
		}
		if t.kind.Food() && t.kind != lexicon.DishNoun || t.kind == lexicon.Tool || t.tag == "CD" {
			return true
		}
		if t.tag == "VB" && !t.in("be", "do", "make", "improve", "try", "change", "have", "go", "get", "know", "like", "say", "it", "better", "worse", "harder", "try", "work") {
			return true
		}
	}
	return len(s.sensory) > 0
}

// reason reports whether something other than a clause of reason in sentence i
// explains what it says of the area: for a change next time, the fault it
// mends, told in that sentence or in one beside it.
func (d table) reason(r *reading, i int, a lexicon.Area) bool {
	s := &r.sentences[i]
	if a != lexicon.Improvement {
		// "They spread into one. I didn't leave gaps.": a cause that stands
		// alone as the next sentence.
		if a == lexicon.Technique {
			return i > 0 && ledTo(s, &r.sentences[i-1])
		}
		return resultArea(a) && len(s.tokens) <= compact && i+1 < len(r.sentences) && !s.has(lexicon.Improvement) &&
			(confesses(&r.sentences[i+1]) || suspects(&r.sentences[i+1]) || a != lexicon.Taste && blamed(s, &r.sentences[i+1]))
	}
	return tellsQuality(s) || len(s.why) > 0 && len(s.tokens) <= compact || lacking(s) ||
		i > 0 && fault(&r.sentences[i-1]) || i+1 < len(r.sentences) && amiss(&r.sentences[i+1])
}

// tellsQuality reports whether the sentence, beside its plan, says how the food
// was, which is the fault that the plan mends. A quality behind the words of the
// plan belongs to it where no verb says that it was so ("I'd leave half lumpy"),
// and so does what is waited for ("stop when it's lighter").
func tellsQuality(s *sentence) bool {
	planned := len(s.tokens)
	for _, g := range s.signs {
		if g.area == lexicon.Improvement {
			planned = min(planned, g.from)
		}
	}
	for _, w := range s.sensory {
		if w.supposed || w.other {
			continue
		}
		if w.from < planned || stated(s.tokens, w.from) {
			return true
		}
	}
	return false
}

// stated reports whether a verb in the past, or "is", in the clause of token i
// says that something was so, and not only when something is to be done.
func stated(tokens []token, i int) bool {
	start := clauseStart(tokens, i)
	if start > 0 && tokens[start-1].in("when", "till", "til", "until", "once", "if", "where") {
		return false
	}
	for j := i - 1; j >= start && j >= i-reach; j-- {
		if t := &tokens[j]; t.tag == "VBD" && !pastAsWell(t) || t.in("is", "are", "'s", "'re", "was", "were", "had") {
			return true
		}
	}
	return false
}

func resultArea(a lexicon.Area) bool { return len(resultOnly([]lexicon.Area{a})) > 0 }

// confesses reports whether a short sentence tells only what was done too much,
// too little or not at all: "Too much syrup.", "I didn't leave gaps.".
func confesses(s *sentence) bool {
	if len(s.tokens) > 14 || len(s.tokens) < 3 || s.has(lexicon.Improvement) || s.has(lexicon.Hygiene) || s.has(lexicon.Safety) {
		return false
	}
	first, second := &s.tokens[0], &s.tokens[1]
	if first.in("too", "not") && second.in("much", "many", "long", "enough", "hot", "early") || first.norm == "forgot" || first.norm == "overcooked" {
		return true
	}
	start := 0
	if first.in("i", "we", "you") && second.in("think", "suppose", "guess") || first.in("probably", "maybe", "perhaps") {
		start = 1
		for start < len(s.tokens)-1 && !s.tokens[start].in("i", "we", "you") {
			start++
		}
	}
	if !s.tokens[start].in("i", "we", "you", "he", "she") {
		return false
	}
	for i := start + 1; i < len(s.tokens); i++ {
		if s.tokens[i].in("too", "forgot", "enough") || s.tokens[i].norm == "n't" && s.tokens[i-1].norm == "did" {
			return true
		}
	}
	return false
}

// fault reports whether the sentence tells of something that was not as it
// should be: an excess, a lack, a quality that the dish ought not to have had,
// or a thing that went wrong.
func fault(s *sentence) bool {
	if amiss(s) {
		return true
	}
	if len(s.sensory) == 0 && len(s.vague) == 0 {
		return false
	}
	for i := range s.tokens {
		if s.tokens[i].in("bit", "but", "although", "though", "rather", "slightly", "little", "only", "nearly", "almost", "still", "very", "really", "quite", "should", "some") {
			return true
		}
	}
	return false
}

// lacking reports whether a sentence that plans a change tells the fault in
// it as well. A word of denial there is only part of the plan ("two lemons, not
// one").
func lacking(s *sentence) bool {
	for i := range s.tokens {
		if t := &s.tokens[i]; t.faulty() || t.in("too", "enough", "lacked", "problem", "wrong", "struggled", "messy", "late") {
			return true
		}
	}
	return false
}

// amiss reports whether a word of the sentence says by itself that something
// went wrong.
func amiss(s *sentence) bool {
	for i := range s.tokens {
		t := &s.tokens[i]
		if t.norm == "enough" {
			if deniedBefore(s.tokens, i) {
				return true // "wasn't hot enough", not "firm enough to cut"
			}
			continue
		}
		if (wentWrong(t) || cameDown(s.tokens, i)) && (!deniedBefore(s.tokens, i) || t.in("forgot", "forgotten")) || lackOf(s.tokens, i) || unlike(s.tokens, i) {
			return true
		}
	}
	return false
}

// unlike reports whether token i begins to tell that a part was not as it
// should be or not as the rest: "is not straight", "fatter than the other".
func unlike(tokens []token, i int) bool {
	t := &tokens[i]
	if t.norm == "than" && i > 0 && tokens[i-1].tag == "JJR" && i+2 < len(tokens) {
		return tokens[i+2].in("other", "others", "rest") && !wanted(&tokens[i-1])
	}
	if !t.in("n't", "not") || i == 0 || i+1 >= len(tokens) || !tokens[i-1].in("is", "was", "were", "are", "'s") {
		return false
	}
	j := i + 1
	if tokens[j].in("very", "that", "as", "really", "so") && j+1 < len(tokens) {
		j++
	}
	return tokens[j].in("straight", "even", "level", "thick", "crisp", "crispy", "smooth", "beautiful", "pretty", "neat", "done", "ripe", "strong", "hot", "cooked", "brown", "set", "sweet", "salty", "tidy", "organised", "soft", "tender", "clean")
}

// wanted reports whether the comparative tells of more of what food is meant to
// be: to be crispier or nicer than the rest is no fault.
func wanted(t *token) bool {
	return t.in("better", "nicer", "crispier", "crisper", "crunchier", "softer", "lighter", "fluffier", "juicier", "moister", "tastier", "creamier", "smoother", "silkier", "tenderer", "flakier", "fresher", "richer", "glossier", "shinier", "prettier", "neater", "tidier", "cleaner", "easier", "quicker", "faster", "safer", "yummier", "lovelier")
}

// deniedBefore reports whether "not", "no" or "never" stands up to four words
// before token i in its clause ("it wasn't too sweet", "not a bit soggy").
func deniedBefore(tokens []token, i int) bool {
	for j := i - 1; j >= 0 && j >= i-4 && !tokens[j].pause() && !tokens[j].in(",", "and", "but", "because", "so"); j-- {
		if tokens[j].in("not", "n't", "no", "never", "without", "nothing", "wasnt", "werent", "hardly") {
			return true
		}
	}
	return false
}

// lackOf reports whether what begins at token i tells of something missing or
// left undone: "no kick", "there wasn't any left", "I hadn't lined the tins".
func lackOf(tokens []token, i int) bool {
	if i+1 >= len(tokens) {
		return false
	}
	t, next := &tokens[i], &tokens[i+1]
	switch {
	case t.norm == "no":
		return next.in("kick", "flavour", "taste", "body", "crunch", "colour", "smell", "sauce", "filling", "bite", "zing", "rise", "depth", "seasoning")
	case t.in("had", "could") && i+2 < len(tokens) && next.norm == "n't":
		return i > 0 && tokens[i-1].human() && (t.norm == "had" && tokens[i+2].tag == "VBN" || tokens[i+2].in("taste", "find", "smell", "tell", "get", "see", "cut", "reach"))
	case t.in("was", "were") && i+3 < len(tokens) && next.norm == "n't":
		return tokens[i+2].norm == "any" && tokens[i+3].norm == "left"
	}
	return false
}

// wentWrong reports whether a word by itself tells of a mishap or a fault.
func wentWrong(t *token) bool {
	return t.in("too", "lacked", "forgot", "forgotten", "wrong", "problem", "stuck", "burnt", "burned", "broke", "split", "spread", "leaked", "sank", "sunk", "collapsed", "spilt", "spilled", "dropped", "late", "slow", "messy", "overcooked", "undercooked", "overdone", "underdone", "wonky", "uneven", "lumpy", "soggy", "bland", "greasy", "rubbery", "gritty", "watery", "stodgy", "claggy", "tasteless", "muddle", "struggled", "difficult", "worst", "couldnt",
		"lumps", "cracked", "slumped", "curdled", "slipped", "crumbled", "scorched", "singed", "catching", "overflowed", "limp", "slimy", "bent", "pooled", "ragged", "patchy", "squashed", "oozed", "clumped", "ripped", "deflated", "droopy", "beige", "missing", "doughy", "mushy", "underbaked", "overbaked", "tough", "shrank", "shrunk", "lopsided", "rushed")
}

// cameDown reports whether the food did at token i what is a mishap only where it
// does it by itself and was not meant to: it fell, tore, slid or wilted. Meat is to
// fall off the bone, a tart to slide out, spinach to wilt, and who tears basil
// works.
func cameDown(tokens []token, i int) bool {
	t, next := &tokens[i], after(tokens, i, 1)
	if !t.in("fell", "tore", "slid", "wilted") {
		return false
	}
	n := subject(tokens, i)
	if n >= 0 && tokens[n].human() || next.tagIn("DT", "PRP$") && t.norm != "fell" {
		return false
	}
	switch t.norm {
	case "fell":
		return !(next.norm == "off" && restHas(tokens, i+2, 1, "bone", "bones")) && next.norm != "out" &&
			!(next.norm == "apart" && (restHas(tokens, i, 8, "fork", "tender", "soft", "melted") || n >= 0 && tokens[n].in("meat", "lamb", "beef", "pork", "shin", "brisket", "chicken", "shoulder", "oxtail", "fish")))
	case "slid":
		return !next.in("out", "in", "into", "onto", "easily", "straight")
	case "wilted":
		return n < 0 || !tokens[n].in("spinach", "kale", "chard", "greens", "leaves", "cabbage", "onions", "onion", "leeks", "leek", "nettles", "rocket")
	}
	return true
}
