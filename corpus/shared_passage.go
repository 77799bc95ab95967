package corpus

import (
	"cmp"
	"slices"
)

// A passage goes on over up to maxGap words that differ, and while the words
// that one of the texts puts in or leaves out stay within maxShift: a changed
// word spoils the shingles of the three before it.
const (
	maxGap   = shingleWords + 4
	maxShift = 3
)

// passagePair is a passage in two texts.
type passagePair struct {
	a, b  span
	words int // of the first
}

// maxPlaces is how many places of one shingle in a text are tried: a text that
// says the same over and over is not worth the square of its length.
const maxPlaces = 8

// comparison holds the places of the shingles of one text, while others are
// compared with it.
type comparison struct {
	text   *sharedText
	places map[uint64][]int32
}

// begin takes a text, unless it is the one already taken.
func (c *comparison) begin(t *sharedText) {
	if c.text == t {
		return
	}
	c.text = t
	c.places = make(map[uint64][]int32, len(t.shingles))
	for i, s := range t.shingles {
		if len(c.places[s]) < maxPlaces {
			c.places[s] = append(c.places[s], int32(i))
		}
	}
}

// mayShare reports whether the shingles that another text shares with it,
// wherever they stand, weigh enough.
func (c *comparison) mayShare(t *sharedText) bool {
	weight := float32(0)
	for k, s := range t.shingles {
		if t.weights[k] > 0 && c.places[s] != nil {
			weight += t.weights[k]
		}
	}
	return weight >= minWeight
}

// passages compares the text with another word by word and returns the
// passages that they share, in their order; none overlaps another in either
// text.
func (c *comparison) passages(t *sharedText) []passagePair {
	var kept []chain
	for _, n := range c.chains(t) {
		overlaps := slices.ContainsFunc(kept, func(k chain) bool {
			return n.firstA < k.endA+shingleWords && k.firstA < n.endA+shingleWords || n.firstB < k.endB+shingleWords && k.firstB < n.endB+shingleWords
		})
		if n.weight >= minWeight && n.endA-n.firstA+shingleWords >= minPassage && !overlaps {
			kept = append(kept, n)
		}
	}
	if len(kept) == 0 {
		return nil
	}
	slices.SortFunc(kept, func(x, y chain) int { return cmp.Compare(x.firstA, y.firstA) })
	a, b := wordsIn(c.text.Text), wordsIn(t.Text)
	var out []passagePair
	for _, n := range kept {
		out = append(out, passagePair{
			a:     span{a[n.firstA].start, a[n.endA+shingleWords-1].end},
			b:     span{b[n.firstB].start, b[n.endB+shingleWords-1].end},
			words: n.endA + shingleWords - n.firstA,
		})
	}
	return out
}

// chain is a run of shingles that two texts share, in order.
type chain struct {
	firstA, firstB int // of the shingle that counts and begins it
	lastA, lastB   int // of the last that belongs to it
	endA, endB     int // of the last that counts
	weight         float32
}

// chains gathers the shared shingles into runs and returns them, the heaviest
// first. Those that do not count, as many use them, carry a run on and never
// begin or end it.
func (c *comparison) chains(t *sharedText) []chain {
	var open, closed []chain
	for j, s := range t.shingles {
		open = slices.DeleteFunc(open, func(o chain) bool {
			over := j-o.lastB > maxGap
			if over {
				closed = append(closed, o)
			}
			return over
		})
		for _, place := range c.places[s] {
			i, w := int(place), t.weights[j]
			if best := heaviest(open, i, j); best != nil {
				best.lastA, best.lastB = i, j
				if w > 0 {
					best.endA, best.endB = i, j
					best.weight += w
				}
			} else if w > 0 {
				open = append(open, chain{i, j, i, j, i, j, w})
			}
		}
	}
	closed = append(closed, open...)
	slices.SortStableFunc(closed, func(x, y chain) int { return cmp.Compare(y.weight, x.weight) })
	return closed
}

// heaviest returns the chain that the shingle at i and j goes on, or nil.
func heaviest(open []chain, i, j int) *chain {
	var best *chain
	for k := range open {
		o := &open[k]
		da, db := i-o.lastA, j-o.lastB
		if da < 1 || db < 1 || da > maxGap || max(da-db, db-da) > maxShift {
			continue
		}
		if best == nil || o.weight > best.weight {
			best = o
		}
	}
	return best
}
