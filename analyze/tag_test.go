package analyze

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestTagsThatAreMended pins the tag of one word, by its place, in sentences of
// our own; the tags are those of the Penn Treebank (Santorini 1990).
func TestTagsThatAreMended(t *testing.T) {
	for _, c := range []struct {
		rule, text string
		word, tag  string
	}{
		{"a past in -ed", "I grated the cabbage.", "grated", "VBD"},
		{"a present in -ed", "They shred easily.", "shred", "VBP"},
		{"the same with its object", "Every week I shred the cabbage.", "shred", "VBP"},
		{"no past at the head", "Aniseed came through.", "aniseed", "NN"},
		{"a past with a sound of its own", "They kept their shape.", "kept", "VBD"},
		{"had, not would", "Once I'd torn it up it went in.", "had", "VBD"},
		{"'s for is", "The knob's stiff.", "'s", "VBZ"},
		{"'s for is, of a person", "My nan's busy.", "'s", "VBZ"},
		{"'s for is, in another clause", "I did it because my mum's busy.", "'s", "VBZ"},
		{"what somebody likes", "It was my mum's favourite.", "'s", "POS"},
		{"the best of somebody's", "It beats Nan's best.", "'s", "POS"},
		{"what somebody has", "I used my sister's new.", "'s", "POS"},
		{"before its noun", "We used Dad's sharp knife.", "'s", "POS"},
	} {
		found := false
		for _, tok := range tokensOf(t, c.text) {
			if tok.norm == c.word {
				found = true
				assert.Equal(t, c.tag, tok.tag, "%s: %s", c.rule, c.text)
				break
			}
		}
		assert.True(t, found, "%s: %s", c.rule, c.text)
	}
}

// TestPlainFormsOfVerbs checks the table of irregular verbs against the forms
// that grammars list (Quirk et al. 1985, 3.11 to 3.20; from memory).
func TestPlainFormsOfVerbs(t *testing.T) {
	for form, plain := range map[string]string{
		"took": "take", "taken": "take", "froze": "freeze", "tore": "tear", "torn": "tear", "slid": "slide",
		"lit": "light", "wept": "weep", "grated": "", "shred": "", "soup": "",
	} {
		got, is := irregular(form)
		assert.Equal(t, plain, got, form)
		assert.Equal(t, plain != "", is != 0, form)
	}
	for form, past := range map[string]bool{
		"kept": true, "fell": true, "grated": true, "cut": false, "read": false, "shred": false, "feed": false,
		"embed": false, "seaweed": false, "risen": false,
	} {
		assert.Equal(t, past, onlyPast(form), form)
	}
}
