package wording

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestASessionNamesFewDishes: where everybody cooked something else their number
// tells more than thirty names.
func TestASessionNamesFewDishes(t *testing.T) {
	assert.Equal(t, "session 3", SessionDish("03"))
	assert.Equal(t, "session 3, leek soup and dal", SessionDish("03", "leek soup", "dal"))
	assert.Equal(t, "session 3, 5 dishes", SessionDish("03", "leek soup", "dal", "naan", "fudge", "chips"))
}
