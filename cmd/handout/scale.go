package handout

import (
	"slices"
	"sort"
	"strings"

	"saywhy/lexicon"
)

// Scale is the words of one scale, by step from low to high; a step that no
// word of the list stands on is left out.
type Scale struct {
	Name  string
	Steps [][]lexicon.Word
}

// Scales gathers the scales of a list in the order of their first words.
func Scales(list []lexicon.Word) []Scale {
	var out []Scale
	at := map[string]int{}
	for _, w := range list {
		if w.Scale == "" {
			continue
		}
		i, ok := at[w.Scale]
		if !ok {
			i = len(out)
			at[w.Scale] = i
			out = append(out, Scale{Name: w.Scale})
		}
		for len(out[i].Steps) < w.Step {
			out[i].Steps = append(out[i].Steps, nil)
		}
		out[i].Steps[w.Step-1] = append(out[i].Steps[w.Step-1], w)
	}
	for i, s := range out {
		out[i].Steps = slices.DeleteFunc(s.Steps, func(words []lexicon.Word) bool { return len(words) == 0 })
	}
	return out
}

// Words returns the words of each step, joined by what is given.
func (s Scale) Words(sep string) []string {
	var out []string
	for _, step := range s.Steps {
		names := make([]string, len(step))
		for i, w := range step {
			names[i] = w.Word
		}
		out = append(out, strings.Join(names, sep))
	}
	return out
}

// PartScales tells the scales that some words stand on from the others.
func PartScales(all []Scale, words []lexicon.Word) (with, without []Scale) {
	on := map[string]bool{}
	for _, w := range words {
		on[w.Scale] = true
	}
	for _, s := range all {
		if on[s.Name] {
			with = append(with, s)
		} else {
			without = append(without, s)
		}
	}
	return with, without
}

// near is the mean nearness of a scale's words.
func (s Scale) near(n lexicon.Nearness) float64 {
	sum, count := 0.0, 0
	for _, step := range s.Steps {
		for _, w := range step {
			sum += n.Of(w)
			count++
		}
	}
	return sum / float64(max(1, count))
}

// nearestScales returns at most n scales, those nearest to the dish type first,
// each with one word a step: one that describes the type's own food, else any;
// a single word before a phrase, one that fits any dish before a rare one, and
// then the one that describes most kinds of food.
func nearestScales(list []lexicon.Word, near lexicon.Nearness, n int) []Scale {
	scales := Scales(list)
	sort.SliceStable(scales, func(i, j int) bool { return scales[i].near(near) > scales[j].near(near) })
	scales = scales[:min(n, len(scales))]
	for i, s := range scales {
		for j, step := range s.Steps {
			sort.SliceStable(step, func(a, b int) bool {
				x, y := step[a], step[b]
				for _, d := range []int{
					boolInt(near.Described(y) > 0) - boolInt(near.Described(x) > 0),
					strings.Count(x.Word, " ") - strings.Count(y.Word, " "),
					boolInt(y.From == lexicon.Root) - boolInt(x.From == lexicon.Root),
					len(y.Of) - len(x.Of),
				} {
					if d != 0 {
						return d < 0
					}
				}
				return false
			})
			scales[i].Steps[j] = step[:1]
		}
	}
	return scales
}

func boolInt(b bool) int {
	if b {
		return 1
	}
	return 0
}
