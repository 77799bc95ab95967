package analyze

import (
	"cmp"
	"slices"

	"saywhy/lexicon"
)

// scene reports whether sentence i completes a scene of the kind: what is no
// danger by itself, but is one together with what stands beside it or was told
// just before. "I cut the chicken. Then I did the salad on that board."
func (d cautioning) scene(r *reading, i int, kind string) bool { return d.scenes(r, i, kind, 1) > 0 }

// scenes returns how many scenes of the kind sentence i completes, or most where
// they are as many.
func (d cautioning) scenes(r *reading, i int, kind string, most int) int {
	s := &r.sentences[i]
	if supposition(s.tokens) || underChange(s) && !verbPast(s.tokens) || kind == "equipment" && kitchenRule(s, r.Role) {
		return 0 // "Change: all the little ones go in first" is a plan
	}
	averted, n := saidAverted(s, kind), 0
	for _, scene := range d.words.lex.Reading.Scenes {
		if scene.Kind == kind && (scene.DespiteUnless || !averted) && !d.prevented(r, i, scene) && completes(r, i, scene) {
			if n++; n == most {
				break
			}
		}
	}
	return n
}

// sceneWords is how far apart in one sentence two parts of a scene may stand.
const sceneWords = 30

// sceneReach is how many sentences before may hold an earlier part of a scene.
const sceneReach = 2

// moment is a token of a sentence of the reading.
type moment struct{ sentence, token int }

// completes reports whether the parts of the scene are told as facts up to
// sentence i, the ones marked so before the place where the next one stands.
// It goes from the last part to the first and keeps every place a part may have
// had: each cue is then weighed once for a part, however often it is told.
func completes(r *reading, i int, scene lexicon.Scene) bool {
	var later []moment
	for n := len(scene.Parts) - 1; n >= 0; n-- {
		last := n == len(scene.Parts)-1
		then := !last && scene.Parts[n+1].Then
		var here []moment
		for _, m := range places(r, i, scene.Kind, scene.Parts[n]) {
			if last || follows(m, later, then) {
				here = append(here, m)
			}
		}
		if len(here) == 0 {
			return false
		}
		later = here
	}
	return true
}

// places lists where the part may stand for a scene that ends in sentence i, in
// the order of the text.
func places(r *reading, i int, kind string, part lexicon.ScenePart) []moment {
	first := i
	if part.Earlier {
		first = max(0, i-sceneReach)
	}
	var out []moment
	for j := first; j <= i; j++ {
		s := &r.sentences[j]
		for _, h := range s.dangers {
			if h.Label == kind && h.Step == part.Cue && factual(s.tokens, h) {
				out = append(out, moment{j, h.from})
			}
		}
	}
	slices.SortFunc(out, moment.compare)
	return out
}

func (m moment) compare(other moment) int {
	return cmp.Or(cmp.Compare(m.sentence, other.sentence), cmp.Compare(m.token, other.token))
}

// follows reports whether one of the later places, which are in order, can go
// with m: in another sentence, or near it in its own; only behind it, if then.
func follows(m moment, later []moment, then bool) bool {
	if later[len(later)-1].sentence > m.sentence || !then && later[0].sentence < m.sentence {
		return true
	}
	from := moment{m.sentence, m.token - sceneWords}
	if then {
		from.token = m.token + 1
	}
	k, _ := slices.BinarySearchFunc(later, from, moment.compare)
	// A text without stops goes on to something else: hence a limit of words.
	return k < len(later) && later[k].sentence == m.sentence && later[k].token <= m.token+sceneWords
}

// prevented reports whether something that takes the danger away stands in the
// sentence or in one that a part of the scene may stand in.
func (d cautioning) prevented(r *reading, i int, scene lexicon.Scene) bool {
	first := i
	if slices.ContainsFunc(scene.Parts, func(p lexicon.ScenePart) bool { return p.Earlier }) {
		first = max(0, i-sceneReach)
	}
	for j := first; j <= i; j++ {
		s := &r.sentences[j]
		for _, h := range s.dangers {
			if h.Label == scene.Kind && slices.Contains(scene.Unless, h.Step) && !undone(s.tokens, h.from) && !planned(s.tokens, h.from) {
				return true
			}
		}
	}
	return false
}

// saidAverted reports whether an "unless" of the kind stands in the sentence as
// a fact: then only a sign, which tells the danger itself, can still count.
func saidAverted(s *sentence, kind string) bool {
	return slices.ContainsFunc(s.dangers, func(h hit) bool {
		return h.Label == kind && h.Step == "unless" && (s.tokens[h.from].negator() || !undone(s.tokens, h.from)) && !planned(s.tokens, h.from)
	})
}

// spoiled is the cue for what came of a pan that nobody watched: to turn it down
// then does not undo that it was left ("it was smoking so I turned it down").
const spoiled = "cue spoiled"

// factual reports whether what a cue stands for is told as a fact of this day.
func factual(tokens []token, h hit) bool {
	if imagined(tokens, h.from) || before(tokens, h.from) || planned(tokens, h.from) || nextTime(tokens, h.from) || h.Step != spoiled && caughtInTime(tokens, h) {
		return false
	}
	return tokens[h.from].negator() || !undone(tokens, h.from)
}
