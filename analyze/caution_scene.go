package analyze

import (
	"slices"

	"saywhy/lexicon"
)

// scene reports whether sentence i completes a scene of the kind: what is no
// danger by itself, but is one together with what stands beside it or was told
// just before. "I cut the chicken. Then I did the salad on that board."
func (d cautioning) scene(r *reading, i int, kind string) bool {
	if s := &r.sentences[i]; supposition(s.tokens) || saidAverted(s, kind) {
		return false
	}
	for _, scene := range d.words.lex.Reading.Scenes {
		if scene.Kind == kind && !d.prevented(r, i, scene) && completes(r, i, scene, len(scene.Parts)-1, moment{sentence: -1}) {
			return true
		}
	}
	return false
}

// sceneWords is how far apart in one sentence two parts of a scene may stand.
const sceneWords = 30

// sceneReach is how many sentences before may hold an earlier part of a scene.
const sceneReach = 2

// moment is a token of a sentence of the reading.
type moment struct{ sentence, token int }

func (m moment) isBefore(other moment) bool {
	return m.sentence < other.sentence || m.sentence == other.sentence && m.token < other.token
}

// completes reports whether parts 0 to n of the scene are told as facts, the
// ones marked so before the place where the later one stands.
func completes(r *reading, i int, scene lexicon.Scene, n int, later moment) bool {
	if n < 0 {
		return true
	}
	part := scene.Parts[n]
	first := i
	if part.Earlier {
		first = max(0, i-sceneReach)
	}
	bound := n+1 < len(scene.Parts) && scene.Parts[n+1].Then
	for j := i; j >= first; j-- {
		s := &r.sentences[j]
		for _, h := range s.dangers {
			if h.Label != scene.Kind || h.Step != part.Cue || bound && !(moment{j, h.from}).isBefore(later) {
				continue
			}
			if j == later.sentence && max(h.from-later.token, later.token-h.from) > sceneWords {
				continue // a text without stops: told of something else
			}
			if factual(s.tokens, h) && completes(r, i, scene, n-1, moment{j, h.from}) {
				return true
			}
		}
	}
	return false
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

// factual reports whether what a cue stands for is told as a fact of this day.
func factual(tokens []token, h hit) bool {
	if imagined(tokens, h.from) || before(tokens, h.from) || planned(tokens, h.from) || nextTime(tokens, h.from) || caughtInTime(tokens, h) {
		return false
	}
	return tokens[h.from].negator() || !undone(tokens, h.from)
}
