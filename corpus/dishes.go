package corpus

import (
	"sync"

	"saywhy/lexicon"
)

// Dishes tells the dish type for a name, as lexicon.Course.Cooked does, and
// remembers what it told: many texts are about few dishes. It is safe for many
// goroutines.
type Dishes struct {
	lex    *lexicon.Lexicon
	course *lexicon.Course

	mu    sync.RWMutex
	known map[string]cookedDish
}

type cookedDish struct {
	dish lexicon.Dish
	what string
	err  error
}

// rememberedDishes is how many names are remembered at most, so that a stream
// in which every line names another holds no more.
const rememberedDishes = 1000

// NewDishes returns a Dishes that remembers nothing yet.
func NewDishes(lex *lexicon.Lexicon, course *lexicon.Course) *Dishes {
	return &Dishes{lex: lex, course: course, known: map[string]cookedDish{}}
}

// Cooked returns the dish type, and what was cooked where the name says more.
func (d *Dishes) Cooked(name string) (lexicon.Dish, string, error) {
	d.mu.RLock()
	c, ok := d.known[name]
	d.mu.RUnlock()
	if ok {
		return c.dish, c.what, c.err
	}
	c.dish, c.what, c.err = d.course.Cooked(d.lex, name)
	d.mu.Lock()
	defer d.mu.Unlock()
	if len(d.known) < rememberedDishes {
		d.known[name] = c
	}
	return c.dish, c.what, c.err
}
