package lexicon

import "sort"

// Distance is the optimal string alignment distance between two words in
// runes: insertions, deletions, substitutions and swaps of neighbours each
// count one. It stops counting above limit and then returns limit+1.
func Distance(a, b string, limit int) int {
	x, y := []rune(a), []rune(b)
	if d := len(x) - len(y); d > limit || -d > limit {
		return limit + 1
	}
	var before, prev, cur = make([]int, len(y)+1), make([]int, len(y)+1), make([]int, len(y)+1)
	for j := range prev {
		prev[j] = j
	}
	for i := 1; i <= len(x); i++ {
		cur[0] = i
		lowest := cur[0]
		for j := 1; j <= len(y); j++ {
			cost := 1
			if x[i-1] == y[j-1] {
				cost = 0
			}
			d := min(prev[j]+1, cur[j-1]+1, prev[j-1]+cost)
			if i > 1 && j > 1 && x[i-1] == y[j-2] && x[i-2] == y[j-1] {
				d = min(d, before[j-2]+1)
			}
			cur[j] = d
			lowest = min(lowest, d)
		}
		if lowest > limit {
			return limit + 1
		}
		before, prev, cur = prev, cur, before
	}
	return min(prev[len(y)], limit+1)
}

// Nearest returns the names closest to the one given, at most n of them and
// none further away than a third of its letters (at least two).
func Nearest(name string, names []string, n int) []string {
	limit := max(2, len([]rune(name))/3)
	type near struct {
		name string
		d    int
	}
	var found []near
	for _, c := range names {
		if d := Distance(name, c, limit); d <= limit {
			found = append(found, near{c, d})
		}
	}
	sort.SliceStable(found, func(i, j int) bool { return found[i].d < found[j].d })
	var out []string
	for _, f := range found[:min(n, len(found))] {
		out = append(out, f.name)
	}
	return out
}
