package corpus

import (
	"context"
	"errors"
	"iter"
	"math/rand/v2"
	"runtime"
	"sync/atomic"
	"testing"
	"testing/synctest"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// upTo yields 0 to n-1 and counts how many were taken.
func upTo(n int, taken *atomic.Int64) iter.Seq[int] {
	return func(yield func(int) bool) {
		for i := range n {
			taken.Add(1)
			if !yield(i) {
				return
			}
		}
	}
}

func TestInOrderKeepsOrderUnderLoad(t *testing.T) {
	for _, o := range []Ordered{{}, {Workers: 1}, {Workers: 8}, {Workers: 3, Ahead: 40}} {
		var taken atomic.Int64
		var got []int
		err := InOrder(t.Context(), o, upTo(3000, &taken), func(i int) int {
			for range rand.IntN(300) { // some take long, some are done at once
				runtime.Gosched()
			}
			return i * 2
		}, func(i int) error {
			got = append(got, i)
			return nil
		})
		require.NoError(t, err)
		require.Len(t, got, 3000)
		for i, n := range got {
			require.Equal(t, 2*i, n, "%+v", o)
		}
	}
}

// TestInOrderUsesAllWorkers: in the bubble time passes only when all wait, so
// 40 items of a second each take ten seconds with four workers.
func TestInOrderUsesAllWorkers(t *testing.T) {
	synctest.Test(t, func(t *testing.T) {
		var taken atomic.Int64
		began := time.Now()
		err := InOrder(t.Context(), Ordered{Workers: 4, Ahead: 4}, upTo(40, &taken), func(i int) int {
			time.Sleep(time.Second)
			return i
		}, func(int) error { return nil })
		require.NoError(t, err)
		assert.Equal(t, 10*time.Second, time.Since(began))
	})
}

func TestInOrderHoldsNoMoreThanItSays(t *testing.T) {
	synctest.Test(t, func(t *testing.T) {
		var taken atomic.Int64
		out := 0
		err := InOrder(t.Context(), Ordered{Workers: 2, Ahead: 3}, upTo(100, &taken), func(i int) int { return i }, func(int) error {
			time.Sleep(time.Second) // all others have gone as far as they can
			synctest.Wait()
			assert.LessOrEqual(t, int(taken.Load())-out, 2+3+1, "held when %d are out", out)
			out++
			return nil
		})
		require.NoError(t, err)
		assert.Equal(t, 100, out)
	})
}

// TestInOrderEnds: the bubble fails when a goroutine is left over.
func TestInOrderEnds(t *testing.T) {
	full := errors.New("full")
	for name, c := range map[string]struct {
		run  func(ctx context.Context, taken *atomic.Int64, emitted *int) error
		want error
		out  int
	}{
		"at an error of emit": {func(ctx context.Context, taken *atomic.Int64, emitted *int) error {
			return InOrder(ctx, Ordered{Workers: 3, Ahead: 3}, upTo(1000, taken), func(i int) int { return i }, func(int) error {
				if *emitted == 7 {
					return full
				}
				*emitted++
				return nil
			})
		}, full, 7},
		"when cancelled": {func(ctx context.Context, taken *atomic.Int64, emitted *int) error {
			ctx, cancel := context.WithCancel(ctx)
			defer cancel()
			return InOrder(ctx, Ordered{Workers: 3, Ahead: 3}, upTo(1000, taken), func(i int) int { return i }, func(int) error {
				if *emitted++; *emitted == 5 {
					cancel()
				}
				return nil
			})
		}, context.Canceled, 5},
		"when cancelled before it began": {func(ctx context.Context, taken *atomic.Int64, emitted *int) error {
			ctx, cancel := context.WithCancel(ctx)
			cancel()
			return InOrder(ctx, Ordered{Workers: 3}, upTo(1000, taken), func(i int) int { return i }, func(int) error { *emitted++; return nil })
		}, context.Canceled, 0},
		"with nothing to do": {func(ctx context.Context, taken *atomic.Int64, emitted *int) error {
			return InOrder(ctx, Ordered{Workers: 3}, upTo(0, taken), func(i int) int { return i }, func(int) error { *emitted++; return nil })
		}, nil, 0},
	} {
		t.Run(name, func(t *testing.T) {
			synctest.Test(t, func(t *testing.T) {
				var taken atomic.Int64
				emitted := 0
				err := c.run(t.Context(), &taken, &emitted)
				assert.ErrorIs(t, err, c.want)
				assert.Equal(t, c.out, emitted)
				assert.LessOrEqual(t, int(taken.Load()), c.out+8, "it stops taking as well")
			})
		})
	}
}
