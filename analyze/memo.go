package analyze

import (
	"strings"
	"sync/atomic"
)

// memo keeps what was worked out for strings met lately: texts of a kind share
// most of their words, and reports most of their questions. It has a fixed
// number of slots, some for each hash; where they are full, a string takes the
// place of another. It is safe for many goroutines: two that write to a slot
// write what is right for either, and nothing that is kept is ever changed.
type memo[T any] struct {
	slots [][ways]atomic.Pointer[kept[T]]
}

// ways is how many strings of one hash are kept. With one, a few hundred of the
// words of a text's kind would push each other out again and again.
const ways = 4

type kept[T any] struct {
	key   string
	value T
}

// longestKept is the most bytes of a string that is kept.
const longestKept = 256

func newMemo[T any](slots int) *memo[T] {
	return &memo[T]{make([][ways]atomic.Pointer[kept[T]], slots/ways)}
}

// get returns what work returns for the key. Work must depend on nothing else.
func (m *memo[T]) get(key string, work func(string) T) *T {
	if len(key) > longestKept {
		value := work(key)
		return &value
	}
	hash := fnv1a(fnvStart, key)
	slots := &m.slots[hash%uint32(len(m.slots))]
	free := int(hash >> 28 % ways) // where none is
	for i := range slots {
		k := slots[i].Load()
		if k == nil {
			free = i
			break
		}
		if k.key == key {
			return &k.value
		}
	}
	key = strings.Clone(key) // not the text around it
	k := &kept[T]{key, work(key)}
	slots[free].Store(k)
	return &k.value
}

// fnv1a adds a string to a hash (Fowler, Noll and Vo, 32 bits).
func fnv1a(h uint32, s string) uint32 {
	for i := range len(s) {
		h = (h ^ uint32(s[i])) * 16777619
	}
	return h
}

const fnvStart = 2166136261
