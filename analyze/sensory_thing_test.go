package analyze

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestWhatOnlyNamesAThing pins uses of listed words that name a piece, a rule of
// the kitchen or a step, each beside a sentence where the word describes. Our
// own sentences.
func TestWhatOnlyNamesAThing(t *testing.T) {
	for _, c := range []struct{ rule, text, want string }{
		{"the pieces of a fish", "It had yellow flakes and peas.", "yellow=appearance"},
		{"what it came apart in", "The fish fell into flakes.", "flakes=texture"},
		{"strings that were pulled", "It had stretchy strings of onion.", "stretchy=texture"},
		{"counted sheets", "I rolled out seven layers.", ""},
		{"the name of a dish", "My pasty had no hole in it.", ""},
		{"what was kept from happening", "Pricking stops the biscuit doming.", ""},
		{"what happened", "The top was doming in the middle.", "doming=appearance"},
		{"what one thing does to another", "Warm gravy melts the pastry.", ""},
		{"what it does in the mouth", "It melts on the tongue.", "melts on the tongue=texture"},
		{"where it was spilt", "Some of it slopped on my sock.", ""},
		{"thickness that is asked for", "She showed me how thin.", ""},
		{"a sign to go on", "I heated the milk to just steaming.", ""},
		{"a sign to go on", "I waited until the milk was just steaming.", ""},
		{"a sign to go on", "The oil was heated till a crumb floats.", ""},
		{"the harm of a crowded pan", "The mushrooms sat there steaming.", ""},
		{"how it was", "The oil floated on my soup.", "floated=appearance"},
		{"how it was", "My soup was just steaming when I sat down.", "steaming=appearance"},
		{"soda in the bowl", "The vinegar makes the bicarb fizz.", ""},
		{"fizz on the tongue", "The sherbet fizzed on my tongue.", "fizzed on my tongue=texture"},
		{"a kind of fish", "Sardines are an oily fish.", ""},
		{"a fault of the sauce", "The sauce was oily.", "oily=texture"},
		{"a kind of flour", "I mixed rye flour with the plain.", ""},
		{"little taste", "The dumplings were plain.", "plain=taste"},
		{"a rule for what goes in", "I dried them because wet chips spit.", ""},
		{"how it was", "The chips were wet and limp.", "wet=texture | limp=texture"},
		{"where it was served", "I laid it out on Mum's long white dish.", ""},
		{"a way to do it", "I chopped it the hard way.", ""},
		{"a joint that is hard", "The pork had a hard shoulder end.", "hard=texture"},
		{"melted over water", "Chocolate was melted over simmering water.", ""},
		{"how it was", "The chocolate was melted in the middle.", "melted=texture"},
		{"kept apart", "She kept the dressing separate.", ""},
		{"what it did", "The sauce was separated.", "separated=appearance"},
		{"a colour alone", "You get plain pink.", "pink=appearance"},
		{"beans by their name", "We had dried red kidney beans.", ""},
		{"shell in a raw egg", "One egg had shell in it so I got it out with the big bit of shell.", ""},
		{"shell in the mouth", "There was a bit of shell that crunched.", "bit of shell=texture | crunched=texture"},
		{"what to do with it", "Pat it dry.", ""},
		{"a degree", "It looked a touch grey.", "grey=appearance"},
		{"how little of it", "They had the faintest wobble.", "wobble=texture"},
		{"how little was smelt", "There was a faint smell of smoke.", "faint smell=aroma | smoke=aroma"},
		{"a piece", "The square of chocolate helps.", ""},
		{"a shape", "They were square.", "square=appearance"},
		{"what went away", "My lip was sore but had gone off by tea.", ""},
		{"what went bad", "The milk tasted like it had gone off.", "gone off=taste"},
		{"a home", "The whole flat stank of garlic.", "garlic=aroma"},
		{"what was scored", "I scored the flesh criss-cross.", ""},
		{"a sore", "I have a blister like a bubble.", ""},
		{"cold said thrice", "My aunt says cold, cold, cold.", ""},
		{"a misspelt adverb", "It was basicly done.", ""},
	} {
		assert.Equal(t, c.want, strings.Join(sensedIn(t, c.text), " | "), "%s: %s", c.rule, c.text)
	}
}
