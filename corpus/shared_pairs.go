package corpus

import (
	"cmp"
	"slices"
)

// A text is compared by windows of windowWords words, one every windowStep, so
// that a passage of minPassage words fills most of one. A window with fewer
// shingles that count than minWindow tells too little.
const (
	windowWords = 24
	windowStep  = 8
	minWindow   = 6
)

// textPair is two texts that may share a passage, by their places; a < b.
type textPair struct{ a, b uint32 }

// window is the signature of a window and the text it stands in.
type window struct {
	text uint32
	signature
}

// maxBucket is how many windows of one bucket are compared with each other.
// In a larger one, each is compared with the next nearBucket, so that a text
// handed in a thousand times costs a thousand comparisons and not a million.
const (
	maxBucket  = 40
	nearBucket = 8
)

// candidates returns the pairs of texts with windows that are likely to be
// alike, in the order of the texts.
func (f *SharedFinder) candidates() []textPair {
	windows := f.windows()
	var out []textPair
	type entry struct {
		key    uint64
		window uint32
	}
	bucket := make([]entry, len(windows))
	for band := range bands {
		for i := range windows {
			h := windows[i].signature[band*hashesPerBand : (band+1)*hashesPerBand]
			bucket[i] = entry{uint64(h[0])<<32 | uint64(h[1]), uint32(i)}
		}
		slices.SortFunc(bucket, func(a, b entry) int {
			return cmp.Or(cmp.Compare(a.key, b.key), cmp.Compare(a.window, b.window))
		})
		for i := 0; i < len(bucket); {
			j := i + 1
			for j < len(bucket) && bucket[j].key == bucket[i].key {
				j++
			}
			reach := j - i
			if reach > maxBucket {
				reach = nearBucket
			}
			for k := i; k < j; k++ {
				for l := k + 1; l < j && l <= k+reach; l++ {
					a, b := windows[bucket[k].window].text, windows[bucket[l].window].text
					if f.comparable(int(a), int(b)) {
						out = append(out, textPair{a, b})
					}
				}
			}
			i = j
		}
		out = distinctPairs(out)
	}
	return out
}

func distinctPairs(pairs []textPair) []textPair {
	slices.SortFunc(pairs, func(x, y textPair) int { return cmp.Or(cmp.Compare(x.a, y.a), cmp.Compare(x.b, y.b)) })
	return slices.Compact(pairs)
}

// windows returns the windows of all texts that tell something, in order.
func (f *SharedFinder) windows() []window { return onAllCores(len(f.texts), f.windowsOf) }

// windowsOf returns the windows of the texts from one to another.
func (f *SharedFinder) windowsOf(first, end int) []window {
	var out []window
	set := make([]uint64, 0, windowWords)
	for i := first; i < end; i++ {
		s, weights := f.texts[i].shingles, f.texts[i].weights
		words := len(s) + shingleWords - 1
		for from := 0; ; from += windowStep {
			last := from+windowWords >= words
			if last {
				from = max(0, words-windowWords)
			}
			set = set[:0]
			for k := from; k < min(len(s), from+windowWords-shingleWords+1); k++ {
				if weights[k] > 0 {
					set = append(set, s[k])
				}
			}
			if len(set) >= minWindow {
				out = append(out, window{uint32(i), minHash(set)})
			}
			if last {
				break
			}
		}
	}
	return out
}
