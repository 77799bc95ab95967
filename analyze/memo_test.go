package analyze

import (
	"strconv"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestMemoReturnsWhatWorkReturns asks from several goroutines for far more
// strings than there is room for, and for one that is too long to be kept.
func TestMemoReturnsWhatWorkReturns(t *testing.T) {
	m := newMemo[string](16)
	work := func(key string) string { return "of " + key }
	var all sync.WaitGroup
	for range 4 {
		all.Go(func() {
			for i := range 20_000 {
				key := strconv.Itoa(i % 101)
				assert.Equal(t, "of "+key, *m.get(key, work))
			}
		})
	}
	all.Wait()
	long := strings.Repeat("a", longestKept+1)
	assert.Equal(t, "of "+long, *m.get(long, work))
}

// TestMemoKeepsStringsOfOneHash asks again and again for as many strings as a
// hash has room for: each is worked out once.
func TestMemoKeepsStringsOfOneHash(t *testing.T) {
	m := newMemo[int](ways) // one hash
	worked := 0
	for range 3 {
		for i := range ways {
			m.get(strconv.Itoa(i), func(string) int { worked++; return i })
		}
	}
	assert.Equal(t, ways, worked)
}
