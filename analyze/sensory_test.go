package analyze

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// sensed lists what a report found by the senses, "word=sense" in text order.
func sensedIn(tb testing.TB, text string) []string {
	tb.Helper()
	out := []string{}
	for _, s := range readPlain(tb, text).Sentences {
		for _, w := range s.Sensory {
			out = append(out, w.Text+"="+string(w.Sense))
		}
	}
	return out
}

// TestWhatAWordDescribes pins, for each rule of what a listed word describes, a
// sentence where it counts and one where it does not. Our own sentences.
func TestWhatAWordDescribes(t *testing.T) {
	for _, c := range []struct {
		rule, text string
		want       string // "" for none; several with " | "
	}{
		{"an adjective in -ly describes", "The edges were frilly.", "frilly=appearance"},
		{"an adverb made from a quality does not", "It smelt faintly of bay.", "bay=aroma"},
		{"a degree is no object", "The top cracked a bit.", "cracked=appearance"},
		{"an object makes it a deed", "I browned the mince.", ""},
		{"a quality in a note without a verb", "Soft, sweet onions.", "Soft=texture | sweet=taste"},
		{"a quality of what went in", "I used soft onions.", ""},
		{"cold as it was eaten", "The middle was cold.", "cold=texture"},
		{"cold as a step", "I let the rice go cold.", ""},
		{"cold in a list of qualities", "The dip was minty and cool.", "minty=taste | cool=texture"},
		{"hot fat", "The oil was hot.", ""},
		{"hot of spice", "The curry sauce was hot.", "hot=taste"},
		{"warm behind smell", "It smelt warm.", "warm=aroma"},
		{"a warm kitchen", "I left it in a warm place.", ""},
		{"risen", "The loaf was well risen.", "well risen=appearance"},
		{"to rise", "I left the dough to rise.", ""},
		{"set as it was", "The custard was set.", "set=texture"},
		{"set as a step", "It set in the fridge.", ""},
		{"even, the same all over", "It came out even.", "even=appearance"},
		{"even, to a surprise", "He even dried up.", ""},
		{"a size that describes", "The slices were thick.", "thick=appearance"},
		{"thick of a liquid", "The gravy was thick.", "thick=texture"},
		{"a size of the finished food", "They were huge.", "huge=appearance"},
		{"a size that counts out pieces", "I cut a big cross in the top.", ""},
		{"what one could taste", "You could taste the vinegar.", "vinegar=taste"},
		{"what somebody tried", "I tasted the sauce.", ""},
		{"what it smelt of, in a list", "The kitchen smelt of cinnamon and cloves.", "cinnamon=aroma | cloves=aroma"},
		{"heavy to lift", "I lifted the casserole because it was heavy.", ""},
		{"another clause names no sense", "It smelt of bay and it was a bit heavy.", "bay=aroma | heavy=texture"},
		{"looked decides", "It looked fresh.", "fresh=appearance"},
		{"a degree before a name", "Really flaky pastry.", "flaky=texture"},
		{"the name itself", "I made flaky pastry.", ""},
		{"anybody could", "You could stand a spoon up in it.", "stand a spoon up in it=texture"},
		{"what it turned from and to", "It changed from shiny to dull.", "shiny=appearance | dull=appearance"},
		{"a person's kitchen is a likeness", "It smelt like my nan's kitchen.", "like my nan's kitchen=aroma"},
		{"what a person does is none", "I did it like my nan does.", ""},
		{"a holed lid", "I poked holes in the lid.", ""},
		{"a size that picks out", "I put the probe in the thick end.", ""},
		{"a pronoun right before the verb", "when I knocked on the bottom it sounded hollow", "sounded hollow=texture"},
		{"it, said of before, goes on", "I tasted it with a spoon and it was peppery.", "peppery=taste"},
		{"it, of a tool", "I dropped the tray and it was heavy.", ""},
		{"a doing is no food", "Rolling them was messy.", ""},
		{"fingers are no food", "I kept my fingers curled.", ""},
		{"well done as praise", "Well done.", ""},
		{"well done of meat", "The steak was well done.", "well done=appearance"},
		{"to for too", "It was way to garlicky.", "garlicky=taste"},
		{"like mine is no likeness", "It was not dry like mine.", "dry=texture"},
		{"round, the way it was turned", "I turned the tins round halfway.", ""},
		{"round, the shape", "They were round and golden.", "round=appearance | golden=appearance"},
		{"flat, how it was held", "I put them on a rack not flat in the tray.", ""},
		{"flat, what became of it", "The soufflé came out flat.", "flat=appearance"},
		{"flat on the tongue", "It was flat and dusty on the tongue.", "flat=taste | dusty=texture"},
		{"a colour goes on", "It went dark brown.", "went dark brown=appearance"},
		{"a tint is of its colour", "The rice had a yellow tint.", "yellow tint=appearance"},
		{"what was spread is seen to be thin", "I rolled it so it came out thin.", "thin=appearance"},
		{"a sauce is felt to be thin", "The sauce was thin.", "thin=texture"},
		{"a word of looking decides", "The middle was raw looking.", "raw=appearance"},
		{"what the colour was like names no sense for the rest", "It went the colour of toffee, crackly and minty.", "the colour of toffee=appearance | crackly=texture | minty=taste"},
		{"made of a spice's name", "It was creamy and cardamomy.", "creamy=texture | cardamomy=taste"},
		{"how much of it was tasted", "There was too much ginger for me.", "too much ginger=taste"},
		{"heavy of an amount", "It was a bit heavy on the salt.", "heavy on the salt=taste"},
		{"how much was put in", "I put too much ginger in.", ""},
		{"how much is planned", "Next time not too much sugar.", ""},
		{"like, to fill", "It was in there like a minute.", ""},
		{"what did not happen", "I kept the chicken low so it could not drip.", ""},
		{"what happened", "The juice dripped everywhere.", "dripped=appearance"},
		{"who got burnt", "I got burnt on the tray.", ""},
		{"what got burnt", "The edges got burnt.", "burnt=appearance"},
		{"what only food can be", "The legs were juicier.", "juicier=texture"},
		{"legs of a person", "My legs were soft.", ""},
		{"a tray of several", "The lower tray came out pale.", "pale=appearance"},
		{"the tray itself", "The tray was black.", ""},
		{"participles before a part", "That gave bronzed, curling edges.", "bronzed=appearance | curling=appearance"},
		{"a sharp outline", "It had a sharp rim.", "sharp=appearance"},
		{"sharp on the tongue", "It had a sharp taste.", "sharp=taste"},
		{"a likeness of a quality seen", "They puffed up like pillows.", "puffed up=appearance | like pillows=appearance"},
		{"a likeness of a quality felt", "It was thin, like dishwater.", "thin=texture | like dishwater=texture"},
		{"a likeness smelt", "It smelt like dishwater.", "like dishwater=aroma"},
		{"a shade, to grade", "The icing was a shade sweet for me.", "sweet=taste"},
		{"spread into one", "They spread into one massive biscuit.", "spread into one=appearance | massive=appearance"},
		{"the same, smelt", "There was a leeky smell.", "leeky=aroma"},
		{"stuck to a person", "The dough stuck to all my fingers.", "stuck to all my fingers=texture"},
		{"stuck to food", "They stuck to everything.", "stuck to everything=texture"},
		{"kept to", "I stuck to the recipe.", ""},
		{"heard to do", "I could feel it crumble in my fingers.", "crumble=texture"},
		{"a person heard it", "She heard me crack the eggs.", ""},
		{"the only thing tasted", "All you could taste was the dill.", "dill=taste"},
		{"a note under a heading", "Taste: garlic and a bit of lemon.", "garlic=taste | lemon=taste"},
		{"a need under a heading", "Taste: needs more salt.", ""},
		{"spreading leads to what came of it", "They spread out flat.", "flat=appearance"},
		{"spreading by itself", "They spread into a puddle.", "spread=appearance | puddle=appearance"},
		{"close of a crumb", "The loaf was close and heavy.", "close=texture | heavy=texture"},
		{"close to", "It was close to the edge.", ""},
		{"a first name", "It was Ruby who stirred it.", ""},
		{"a colour that is a name", "The jam was ruby red.", "ruby red=appearance"},
		{"by hand is a deed", "The parsnip was mashed by hand.", ""},
		{"what it does when bitten", "It crumbles when I bite it.", "crumbles when=texture"},
		{"how strong the one thing was", "It had a mild tang.", "mild tang=taste"},
		{"a colour tints another", "The sauce was an orangey red.", "orangey red=appearance"},
		{"water coloured by food", "The water turned pink.", "pink=appearance"},
		{"what was waited for", "I left the dough until it had doubled.", ""},
		{"what was kept from happening", "I slashed the skin so it would not curl.", ""},
		{"one lump", "There was not one lump.", "not one lump=texture"},
		{"the name of a biscuit", "I made ginger snaps.", ""},
		{"a surface and its colour are two", "It was shiny brown.", "shiny=appearance | brown=appearance"},
	} {
		assert.Equal(t, c.want, strings.Join(sensedIn(t, c.text), " | "), "%s: %s", c.rule, c.text)
	}
}
