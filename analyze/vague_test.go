package analyze

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestWhatJudges pins, for rules about words that judge, a sentence where the
// word judges and one where it does not, and whether it stays bare ("!"). Our
// own sentences.
func TestWhatJudges(t *testing.T) {
	for _, c := range []struct{ rule, text, want string }{
		{"the food", "The soup was awful.", "awful!"},
		{"the writer's own state", "I felt awful.", ""},
		{"ill", "He was being sick.", ""},
		{"a degree of nice", "These were the nicest carrots.", "nicest!"},
		{"well of work", "I was well organised.", "well organised!"},
		{"well of a person", "I was well again.", ""},
		{"work that is sound", "My planning was sound.", "sound!"},
		{"a sound that is heard", "It made a cracking sound.", ""},
		{"cracking as praise", "That was a cracking pie.", "cracking!"},
		{"cracking as a deed", "It rolled out without cracking.", ""},
		{"care", "She grated it with great care.", ""},
		{"backed by the same thing", "It was nice but a bit dry.", "nice"},
		{"not backed by another thing", "The pie was nice but the sauce was lumpy.", "nice!"},
		{"slang in a note", "Tasted peng.", "peng!"},
		{"slang, with nobody named", "came out lush!!", "lush!"},
		{"slang words as things", "I added mint.", ""},
		{"super as praise", "The pie was super.", "super!"},
		{"super as how much", "The batter was super wet.", ""},
		{"how small it was cut", "I chopped the chives very finely.", ""},
		{"a way to begin", "okay I made a stew.", ""},
		{"okay of the food", "okay texture", "okay!"},
		{"pretty in its degrees", "It could be prettier.", "prettier!"},
		{"a heading for what is named", "What went well: the shape.", "well"},
	} {
		assert.Equal(t, c.want, judgedIn(t, c.text), "%s: %s", c.rule, c.text)
	}
}
