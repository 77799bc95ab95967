package lexicon

import "github.com/kljensen/snowball/english"

// Stem returns the stem of a lower-case English word by the Snowball (Porter2)
// algorithm. Words that share a stem are forms of one word for the reader:
// crumbly, crumbled and crumbling do; crispy and crispness do not, which is
// why the word files list such forms.
func Stem(word string) string { return english.Stem(word, true) }
