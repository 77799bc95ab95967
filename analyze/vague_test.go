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
		{"an idiom that judges", "The chowder hit the spot.", "hit the spot!"},
		{"an idiom that judges", "It was nothing to write home about.", "to write home about!"},
		{"an idiom that judges", "It wasn't up to much.", "up to much!"},
		{"a noun that judges", "The glaze was the highlight.", "highlight!"},
		{"what struck a nose judges nothing", "The smell hit you in the hall.", ""},
		{"a treat for the writer", "What a treat to be given lunch.", ""},
		{"slang before what backs it", "My ramen was banging, hot and salty.", "banging"},
		{"a herb, and how it tasted", "It was mint and lemony.", ""},
		{"the writer's language", "My spelling is not very good.", ""},
		{"right of what was done", "I got it right in the end.", "right!"},
		{"right down: all the way", "I got right down to the bottom.", ""},
		{"how things went", "My kneading went well.", "well!"},
		{"how something was kneaded", "I kneaded it well.", ""},
		{"what the food did well", "The dough rolled out well.", "well!"},
		{"a way to go on", "It split and, well, I ate it.", ""},
		{"well before a comma", "I managed my time well, I laid the table early.", "well"},
		{"somebody's state", "She seemed ok.", ""},
		{"a helping hand well done", "So well done for waiting.", "well done"},
	} {
		assert.Equal(t, c.want, judgedIn(t, c.text), "%s: %s", c.rule, c.text)
	}
}
