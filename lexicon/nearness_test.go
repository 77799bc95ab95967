package lexicon_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"saywhy/lexicon"
)

func TestNearness(t *testing.T) {
	near := lexicon.NewNearness(lexicon.Dish{Name: "soups", Title: "Soups", Dishes: []string{"leek soup", "chowder"}})
	for _, c := range []struct {
		word lexicon.Word
		want float64
	}{
		{lexicon.Word{From: "soups"}, 2},
		{lexicon.Word{From: lexicon.Root, Of: []string{"soup"}}, 1},
		{lexicon.Word{From: lexicon.Root, Of: []string{"tomato soups", "cake"}}, 0.5},
		{lexicon.Word{From: "pot", Of: []string{"chowder", "stew"}}, 1},
		{lexicon.Word{From: "pot", Of: []string{"stew"}}, 0.5},
		{lexicon.Word{From: lexicon.Root, Of: []string{"leek"}}, 0},
		{lexicon.Word{From: lexicon.Root}, 0},
	} {
		assert.InDelta(t, c.want, near.Of(c.word), 1e-9, "%v", c.word)
	}
}
