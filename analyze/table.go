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
// mends, told in that sentence or the one before.
func (d table) reason(r *reading, i int, a lexicon.Area) bool {
	s := &r.sentences[i]
	if a == lexicon.Improvement {
		return tellsQuality(s) || i > 0 && fault(&r.sentences[i-1])
	}
	return false
}

// tellsQuality reports whether the sentence says how the food was, which
// beside a change for next time is the fault it mends.
func tellsQuality(s *sentence) bool {
	for _, w := range s.sensory {
		if !w.supposed && !w.other {
			return true
		}
	}
	return false
}

// fault reports whether the sentence tells of something amiss.
func fault(s *sentence) bool {
	if len(s.sensory) == 0 && len(s.vague) == 0 {
		return false
	}
	for i := range s.tokens {
		t := &s.tokens[i]
		if t.in("too", "bit", "but", "although", "n't", "not", "rather", "slightly", "enough", "little", "only", "lacked", "forgot", "wrong", "problem", "nearly", "almost", "still", "stuck", "burnt", "very", "really", "quite", "should") {
			return true
		}
	}
	return false
}
