package corpus

import (
	"fmt"
	"slices"

	"saywhy/lexicon"
)

// compare counts gold against tried.
func compare(t *Labelled, gold, tried marks) *Score {
	out := NewScore()
	out.Texts = 1
	count := func(family string, c Counts) {
		have := out.Counts[family]
		have.Add(c)
		out.Counts[family] = have
	}
	miss := func(family string, sentence int, what string, extra bool) {
		text := t.Text
		if sentence > 0 {
			text = t.Sentences[sentence-1].Text
		}
		out.Misses = append(out.Misses, Miss{t.ID, family, sentence, what, extra, text})
	}
	decide := func(family string, sentence int, what string, g, d bool) {
		out.Neither[family] += 0 // kappa has a value even where nobody says no
		switch {
		case g && d:
			count(family, Counts{Both: 1})
		case g:
			count(family, Counts{Missed: 1})
			miss(family, sentence, what, false)
		case d:
			count(family, Counts{Extra: 1})
			miss(family, sentence, what, true)
		default:
			count(family, Counts{})
			out.Neither[family]++
		}
	}
	for i, s := range t.Sentences {
		n := i + 1
		if gold.has["vague"] && tried.has["vague"] && s.Vague != nil {
			pairs, extra, missed := align(gold.vague[i], tried.vague[i], func(a, b mark) bool { return true })
			count("vague", Counts{len(pairs), len(extra), len(missed)})
			bare := Counts{}
			for _, p := range pairs {
				switch {
				case p[0].bare && p[1].bare:
					bare.Both++
				case p[0].bare:
					bare.Missed++
					miss("bare", n, p[0].what, false)
				case p[1].bare:
					bare.Extra++
					miss("bare", n, p[1].what, true)
				}
			}
			for _, e := range extra {
				miss("vague", n, e.what, true)
				if e.bare {
					bare.Extra++
				}
			}
			for _, e := range missed {
				miss("vague", n, e.what, false)
				if e.bare {
					bare.Missed++
				}
			}
			count("bare", bare)
		}
		if gold.has["sensory"] && tried.has["sensory"] && s.Sensory != nil {
			pairs, extra, missed := align(gold.sensory[i], tried.sensory[i], func(a, b mark) bool { return a.what == b.what })
			count("sensory", Counts{len(pairs), len(extra), len(missed)})
			for _, e := range extra {
				miss("sensory", n, fmt.Sprintf("%s=%s", t.Text[e.start:e.end], e.what), true)
			}
			for _, e := range missed {
				miss("sensory", n, fmt.Sprintf("%s=%s", t.Text[e.start:e.end], e.what), false)
			}
		}
		if s.How != nil && tried.has["how"] {
			decide("how", n, "", len(gold.how[i]) > 0, len(tried.how[i]) > 0)
		}
		if s.Why != nil && tried.has["why"] {
			decide("why", n, "", len(gold.why[i]) > 0, len(tried.why[i]) > 0)
		}
		if s.Areas != nil && tried.has["areas"] {
			for _, a := range lexicon.Areas() {
				decide("areas by sentence", n, string(a), holds(gold.areas[i], a), holds(tried.areas[i], a))
			}
		}
	}
	if gold.has["steps"] && tried.has["steps"] {
		for _, step := range []string{"said", "detail", "reason"} {
			for _, a := range lexicon.Areas() {
				key := string(a) + " " + step
				decide(step, 0, string(a), gold.steps[key], tried.steps[key])
			}
		}
	}
	if gold.has["cautions"] && tried.has["cautions"] {
		c := Counts{}
		extra := slices.Clone(tried.cautions)
		for _, g := range gold.cautions {
			k := slices.IndexFunc(extra, g.overlaps)
			if k < 0 {
				c.Missed++
				miss("cautions", g.first, g.String(), false)
				continue
			}
			c.Both++
			extra = slices.Delete(extra, k, k+1)
		}
		c.Extra = len(extra)
		for _, e := range extra {
			miss("cautions", e.first, e.String(), true)
		}
		count("cautions", c)
	}
	return out
}

func holds(ms []mark, a lexicon.Area) bool {
	for _, m := range ms {
		if m.what == string(a) {
			return true
		}
	}
	return false
}

// align pairs marks that overlap, in text order, each at most once.
func align(gold, tried []mark, same func(a, b mark) bool) (pairs [][2]mark, extra, missed []mark) {
	used := make([]bool, len(tried))
	for _, g := range gold {
		found := false
		for k, d := range tried {
			if !used[k] && g.start < d.end && d.start < g.end && same(g, d) {
				used[k] = true
				found = true
				pairs = append(pairs, [2]mark{g, d})
				break
			}
		}
		if !found {
			missed = append(missed, g)
		}
	}
	for k, d := range tried {
		if !used[k] {
			extra = append(extra, d)
		}
	}
	return pairs, extra, missed
}
