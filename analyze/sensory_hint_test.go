package analyze

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestWhatIsAQualityOnlyHere pins words that tell of taste, tooth or eye only by
// their place, each beside a sentence where they do not. Our own sentences.
func TestWhatIsAQualityOnlyHere(t *testing.T) {
	for _, c := range []struct{ rule, text, want string }{
		{"heat that arrives", "The heat creeps up on you.", "heat=taste"},
		{"heat of a spice", "The heat of the horseradish was too much.", "heat=taste"},
		{"hardly any", "There was hardly any heat.", "heat=taste"},
		{"heat of the hob", "I turned the heat down and the heat came up slowly.", ""},
		{"heat through a cloth", "The heat came straight through the towel.", ""},
		{"a flavour that is shy", "The mustard was timid.", "timid=taste"},
		{"a person who is shy", "My cousin was shy.", ""},
		{"a flavour behind", "It was meaty with thyme behind.", "meaty=taste | thyme=taste"},
		{"a thing behind", "I left the thyme behind.", ""},
		{"one of the tastes", "It tasted milky, vanilla, a bit sweet.", "milky=taste | vanilla=taste | sweet=taste"},
		{"what went in", "I added milk, vanilla and sugar.", ""},
		{"tart in a note", "Tart, then creamy.", "Tart=taste | creamy=texture"},
		{"a tart", "I made a lemon tart.", ""},
		{"not set", "The middle was a bit jelly.", "jelly=texture"},
		{"a jelly", "I made a jelly.", ""},
		{"peas in the mouth", "The peas popped.", "popped=texture"},
		{"what was done to them", "I popped them in the oven.", ""},
		{"what was heard at the bite", "They made a noise when you bite.", "made a noise=texture"},
		{"what a tool does", "I made noise with the pans.", ""},
		{"orange as a colour", "Beads of orange fat.", "orange=appearance"},
		{"orange before what is not the fruit's", "It had an orange stripe and orange edges.", "orange=appearance | stripe=appearance | orange=appearance"},
		{"orange before what is not the fruit's", "It was an orange lentil soup.", "orange=appearance"},
		{"orange as a fruit", "I squeezed the orange.", ""},
		{"of the fruit", "I added orange juice, orange zest and an orange slice.", ""},
		{"of the fruit", "We made orange curd and an orange cake.", ""},
		{"what went down", "The middle dipped.", "dipped=appearance"},
		{"what was dipped", "I dipped the chips.", ""},
		{"the colour it was taken to", "I took it to the colour of an old penny.", "colour of an old penny=appearance"},
		{"an adjective before it", "It went an odd colour of toffee.", "colour of toffee=appearance"},
		{"an adjective before it", "It was also an alarming shade of mustard.", "shade of mustard=appearance"},
		{"the colour of no thing", "I like this odd colour of my apron.", ""},
		{"the colour of a thing", "The colour of the sauce changed.", ""},
		{"a spelling by ear", "It went slimey and a bit crumbley.", "slimey=texture | crumbley=texture"},
		{"a word in -ey of its own", "I had money and a turkey.", ""},
		{"nearly so", "The onion was still crunchy-ish.", "crunchy-ish=texture"},
		{"about that many", "There were ten-ish.", ""},
		{"a flavour that stays", "The lemon lasts.", "lemon=taste"},
		{"a food that keeps", "The bread lasts two days.", ""},
		{"a flavour that comes late", "It was milky, with vanilla arriving late.", "milky=taste | vanilla=taste"},
		{"a guest who comes late", "It was milky, with Vincent arriving late.", "milky=taste"},
		{"what teeth meet", "It was silky, with a slight chew.", "silky=texture | chew=texture"},
		{"a thing bought", "I had a lovely pop.", ""},
		{"what went down", "It dipped slightly in the centre.", "dipped=appearance"},
		{"what was dipped", "It was the chip I dipped in the middle bowl.", ""},
		{"cheese that ran down", "Cheese melted down the sides.", "melted=appearance"},
		{"cheese in the mouth", "The cheese was melted.", "melted=texture"},
		{"a way that is smelt", "It was like the sea, not in a stinky way.", "like the sea=aroma | stinky=aroma"},
		{"a way of working", "I did it a sharp way.", ""},
		{"what sits on it", "It had that white stuff on.", "white=appearance"},
		{"things of no colour", "I put the dry stuff away.", ""},
		{"a spice is warm", "It had a warm ginger to it.", "warm=aroma"},
		{"milk is warm", "I added warm milk.", ""},
		{"what it became", "The apples had gone to fluff.", "fluff=texture"},
		{"what it was between", "It was somewhere between soup and porridge.", "soup and porridge=texture"},
		{"what it ended as", "I ended up with yellow soup.", "yellow=appearance | soup=texture"},
		{"what we ate", "We sat between soup and salad and ended up with more soup.", ""},
		{"a shape on the land", "They were like icebergs.", "like icebergs=appearance"},
		{"a stuff", "They were like leather.", "like leather=texture"},
		{"little on it", "It looked rather bare.", "bare=appearance"},
		{"hands", "I used my bare hands.", ""},
		{"how it was served", "It looks fancier.", ""},
	} {
		assert.Equal(t, c.want, strings.Join(sensedIn(t, c.text), " | "), "%s: %s", c.rule, c.text)
	}
}
