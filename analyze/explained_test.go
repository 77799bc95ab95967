package analyze

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"saywhy/lexicon"
)

// TestReasonBelongsToItsArea reads sentences of our own, labelled by
// shared/guide/labels.md: the areas that the reason in them explains, and one
// that stands in the same sentence and is not explained.
func TestReasonBelongsToItsArea(t *testing.T) {
	a, lex := shared(t)
	for _, c := range []struct {
		text    string
		with    lexicon.Area // "" where none has a reason
		without lexicon.Area
	}{
		// Help is explained by what a person cannot or must not do.
		{"Mum lifted the pot out because it was too heavy for me.", lexicon.Independence, lexicon.Taste},
		{"Dad drained the pasta and I grated the cheese, as I'm not allowed near boiling water.", lexicon.Independence, lexicon.Taste},
		{"I rolled the pastry by myself and chilled it so it wouldn't shrink.", lexicon.Technique, lexicon.Independence},
		{"I fried the onions on my own, on a low heat so they went soft.", lexicon.Technique, lexicon.Independence},
		{"He washed the rice himself until the water was clear so that it didn't clump.", lexicon.Technique, lexicon.Independence},
		// What was wanted of the food, or always happens to it, explains a step.
		{"The tin stood in a tray of water so the custard didn't split.", lexicon.Technique, lexicon.Independence},
		{"Not for too long or it turns to rubber.", lexicon.Technique, lexicon.Hygiene},
		{"Herbs at the very end only, since they go black.", lexicon.Technique, lexicon.Hygiene},
		{"Mum had gone out, so she missed it.", "", lexicon.Technique},
		{"We had the fish cakes as it was a Friday.", "", lexicon.Technique},
		// A verdict explains nothing.
		{"The crust was golden, so I was pleased.", "", lexicon.Appearance},
		{"He wiped the side down, so fair play.", "", lexicon.Hygiene},
		// A fault is why for the change, and is not explained by it.
		{"The soup was bland so it needed more salt.", lexicon.Improvement, lexicon.Taste},
		// A hedge or a pointer before the cause divides nothing.
		{"The loaf had domed up on one side, I reckon because I cut it too shallow.", lexicon.Appearance, lexicon.Taste},
		{"The batter rose level, and that is down to you weighing the eggs.", lexicon.Appearance, lexicon.Taste},
		{"It's gone dark, damp and sticky, because the treacle draws in water.", lexicon.Appearance, lexicon.Taste},
		{"It was greasy cos I put double sausage in, so less next time.", lexicon.Texture, lexicon.Taste},
		// A cause that is only guessed at may stand as a sentence of its own.
		{"The crumb is tight. My theory is that I was rough with it.", lexicon.Texture, lexicon.Taste},
		{"The first one was pale. The pan wasn't hot enough.", lexicon.Appearance, lexicon.Taste},
		{"The first one was pale. The pan was on the big ring.", "", lexicon.Appearance},
		{"The first one was pale. My sister had that one.", "", lexicon.Appearance},
		// What is always so explains a step and tells nothing of this dish.
		{"The mussels are slippery so I tipped them out slowly.", lexicon.Technique, lexicon.Texture},
		{"I folded it in gently, since stirring makes it tough.", lexicon.Technique, lexicon.Texture},
		{"I spread the lamb right to the edge because thick bits stay soggy.", lexicon.Technique, lexicon.Texture},
		// A quality inside a cause is why, and is not explained by itself.
		{"I sieved the custard because there were stringy bits.", lexicon.Technique, lexicon.Texture},
		{"He wiped the bench as it was sticky.", lexicon.Hygiene, lexicon.Texture},
		// What came of it in the past is told, whatever is planned beside it.
		{"I boiled them too long so they went to mush, I should have tested one.", lexicon.Texture, lexicon.Taste},
		{"Onions went in last so they kept their crunch.", lexicon.Texture, lexicon.Taste},
		{"I used dry rice because fresh rice sticks.", lexicon.Technique, lexicon.Taste},
		{"Fried slowly, cos if you rush it tastes raw.", lexicon.Technique, lexicon.Taste},
		{"I simmered the shin first as it is tough otherwise.", lexicon.Technique, lexicon.Texture},
		// The cause of a quality may be what somebody did, which is a technique.
		{"The beans went to slop because I put them in first.", lexicon.Technique, lexicon.Taste},
		{"The beans were bland because we bought cheap ones.", lexicon.Taste, lexicon.Technique},
		{"The middle was pink, so back in for ten minutes.", lexicon.Technique, lexicon.Taste},
		{"The middle was pink, so my aunt got the phone back.", "", lexicon.Technique},
		// What somebody did stands as a sentence of its own behind the fault.
		{"Sauce was lumpy. I put the milk in all at once.", lexicon.Texture, lexicon.Taste},
		{"Sauce was bitter. I put the milk in all at once.", "", lexicon.Taste},
		{"Sauce was lumpy. I served it all the same.", "", lexicon.Texture},
		{"The base was soggy. The shelf was too low.", lexicon.Texture, lexicon.Taste},
		// A purpose that names a sense.
		{"Parsley on top for colour.", lexicon.Appearance, lexicon.Taste},
		{"I put peanuts in for crunch.", lexicon.Texture, lexicon.Taste},
	} {
		got := map[lexicon.Area]bool{}
		for _, row := range a.Read(Input{Text: c.text}, Brief{Dish: lex.General()}).Areas {
			got[row.Area] = row.Reason
		}
		if c.with != "" {
			assert.True(t, got[c.with], "%s: %s has a reason", c.text, c.with)
		}
		assert.False(t, got[c.without], "%s: %s has none", c.text, c.without)
	}
}
