package corpus

import (
	"context"
	"iter"
	"sync"
)

// Ordered is how InOrder works.
type Ordered struct {
	Workers int // goroutines that work at the same time; at least 1
	Ahead   int // items that may be held beyond those being worked on; at least 0
}

// InOrder works on the items of a sequence with many goroutines and hands what
// comes of them to emit one at a time, in the order of the items, in the
// caller's goroutine. At most Workers + Ahead items and their results are held
// (one more waits in the hand of the sequence): when emit is slow, the sequence
// waits, so memory stays bounded however long it is.
//
// It stops at the first error of emit, or when ctx ends, and returns that
// error; nothing is emitted after it. Work under way is waited for. The
// sequence is not: it may hang in a read that nothing can end, and its
// goroutine then lasts as long as that read.
func InOrder[In, Out any](ctx context.Context, o Ordered, items iter.Seq[In], work func(In) Out, emit func(Out) error) error {
	type job struct {
		item In
		done chan Out // holds one, so that no worker waits for emit
	}
	ctx, stop := context.WithCancelCause(ctx)
	workers := max(1, o.Workers)
	held := make(chan struct{}, workers+max(0, o.Ahead)) // one token for each item held
	jobs := make(chan job)
	order := make(chan chan Out, cap(held)) // never full: a token comes first

	go func() {
		defer close(order)
		defer close(jobs)
		for item := range items {
			select {
			case held <- struct{}{}:
			case <-ctx.Done():
				return
			}
			j := job{item, make(chan Out, 1)}
			order <- j.done
			select {
			case jobs <- j:
			case <-ctx.Done():
				return
			}
		}
	}()
	var working sync.WaitGroup
	for range workers {
		working.Go(func() {
			for {
				select {
				case j, ok := <-jobs:
					if !ok {
						return
					}
					j.done <- work(j.item)
				case <-ctx.Done():
					return
				}
			}
		})
	}
	defer working.Wait()
	defer stop(nil)

	for {
		var done chan Out
		var ok bool
		select {
		case done, ok = <-order:
		case <-ctx.Done():
			return context.Cause(ctx)
		}
		if !ok {
			return context.Cause(ctx) // nil unless ctx ended while the last items were read
		}
		select {
		case out := <-done:
			if ctx.Err() != nil {
				return context.Cause(ctx)
			}
			if err := emit(out); err != nil {
				return err
			}
			<-held
		case <-ctx.Done():
			return context.Cause(ctx)
		}
	}
}
