package analyze

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestTimesOfTheClock sets times that a clock shows beside how long things last.
func TestTimesOfTheClock(t *testing.T) {
	for text, want := range map[string]bool{
		"half six like I planned":        true,
		"ten to seven on the dot":        true,
		"it was quarter past four":       true,
		"all of it at half seven":        true,
		"five minutes early on Sunday":   true,
		"ten to fifteen minutes":         false,
		"five to ten minutes of resting": false,
		"half ten minutes":               false,
		"half past caring":               false,
	} {
		assert.Equal(t, want, clockTime(tokensOf(t, text), 0), text)
	}
}
