package analyze

import (
	"slices"
	"strings"
)

// harmless marks a use of the words of a danger that is none ("the cross I cut
// had opened", "burn of the chillies"). Unlike an "unless", which speaks of the
// whole sentence, it takes away only the signs and cues made of its own words: "I
// cut my finger on the red board" stays what it is.
const harmless = "harmless"

// withoutHarmless leaves out the signs and cues that share a token with a
// harmless use of their kind; n is the number of tokens. Each token is marked
// once, so that a sentence that never ends costs no more than its length.
func withoutHarmless(hits []hit, n int) []hit {
	taken := map[string][]bool{}
	for _, h := range hits {
		if h.Step != harmless {
			continue
		}
		if taken[h.Label] == nil {
			taken[h.Label] = make([]bool, n)
		}
		for i := h.from; i < h.to; i++ {
			taken[h.Label][i] = true
		}
	}
	if len(taken) == 0 {
		return hits
	}
	return slices.DeleteFunc(hits, func(h hit) bool {
		marked := taken[h.Label]
		return marked != nil && (h.Step == "sign" || h.Step == state || strings.HasPrefix(h.Step, "cue ")) && slices.Contains(marked[h.from:h.to], true)
	})
}
