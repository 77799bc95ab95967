package analyze

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestWhatIsOnlySupposed reads qualities that the food had, and others that it
// would have had, might get or always gets. Our own sentences; common practice,
// no published source.
func TestWhatIsOnlySupposed(t *testing.T) {
	for _, c := range []struct {
		rule, text string
		supposed   bool
	}{
		{"how it is without the step", "I stewed it for hours because neck is chewy otherwise.", true},
		{"the same, of what it gets", "Line the tin, it goes soggy otherwise.", true},
		{"the rest of it", "The crust was burnt but otherwise crumbly.", false},
		{"the rest of it, behind the words", "One end caught, soft and golden otherwise.", false},
		{"the rest of it, in the past", "It was soft otherwise.", false},
		{"the next clause", "The top was soggy, otherwise I did all of it alone.", false},
		{"what always comes of a deed", "I left it alone, if you stir it it goes lumpy.", true},
		{"what comes of too much", "I stopped there because if you overmix it the crumb is rubbery.", true},
		{"what comes of not doing it", "I rinsed it, if you don't soak it it's salty.", true},
		{"an opinion", "If you ask me the sauce is too thick.", false},
		{"a turn of speech", "If you know what I mean it is dry.", false},
		{"a condition of the food", "If they are not brown the gravy comes out pale.", true},
		{"how it is put in", "If you tip it in at once it goes lumpy.", true},
		{"how one comes to sense it", "If you press it it is springy.", false},
		{"what is offered", "There is more if you fancy some, it is crunchy.", false},
	} {
		words := readPlain(t, c.text).Sentences[0].Sensory
		if assert.NotEmpty(t, words, "%s: %s", c.rule, c.text) {
			for _, w := range words[len(words)-1:] {
				assert.Equal(t, c.supposed, w.Supposed, "%s: %s", c.rule, c.text)
			}
		}
	}
}
