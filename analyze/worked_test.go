package analyze

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"saywhy/lexicon"
)

// TestWorkedByTheCook: technique is what somebody did to food, told with how,
// how long or into what; food that does something by itself, a quality before a
// noun, what is put away, and what is to be done another time are none.
// Sentences of our own.
func TestWorkedByTheCook(t *testing.T) {
	for text, want := range map[string]bool{
		"Rolling took ages.":                                    true,
		"Plaited it tighter than mine.":                         true,
		"Pears halved and poached.":                             true,
		"The noodles I rinsed till they ran clear.":             true,
		"He got the batter into the tin within a minute.":       true,
		"The lentils went in straight after the garlic.":        true,
		"In went the yeast.":                                    true,
		"She let the caramel go dark before the cream.":         true,
		"I cut the swede too chunky.":                           true,
		"Two hours on a low heat.":                              true,
		"You mustn't open the oven door or it sinks.":           true,
		"Once I'd cooled the syrup I stirred the zest in.":      true,
		"It poured like paint.":                                 false,
		"The yoghurt cooled my mouth.":                          false,
		"It came with mashed potato.":                           false,
		"We ate it with fried onions.":                          false,
		"The rest went in the fridge.":                          false,
		"Next time I will chill the dough and roll it thinner.": false,
		"My brother stuck a note on the fridge.":                false,
	} {
		r := readPlain(t, text)
		assert.Equal(t, want, r.Row(lexicon.Technique).Said, text)
	}
}

// TestHadOrWould: "'d" before a past participle or a thing one has is "had"
// and plans nothing; before an infinitive it is "would".
func TestHadOrWould(t *testing.T) {
	for text, want := range map[string]bool{
		"I'd already rolled the pastry.":               false,
		"Once I'd cut them up I tossed them in oil.":   false,
		"You'd rubbed the butter right in.":            false,
		"He'd his apron on.":                           false,
		"I'd use a hotter oven.":                       true,
		"I'd cut them smaller.":                        true,
		"I'd have put the herbs in later.":             true,
		"She wanted a drink.":                          false,
		"It wanted a squeeze of lime.":                 true,
		"The peas couldn't roll off.":                  false,
		"Maybe a little pale on one side.":             false,
		"I am cooking this because my aunt taught me.": false,
		"He'd let them rise by the boiler.":            false,
		"She'd cut them thinner.":                      true,
	} {
		r := readPlain(t, text)
		assert.Equal(t, want, r.Row(lexicon.Improvement).Said, text)
	}
}

// TestWordsOfOtherThings: words of cleaning, danger and order said of food or
// in another sense show no area of work.
func TestWordsOfOtherThings(t *testing.T) {
	for text, area := range map[string]lexicon.Area{
		"It was like a sponge inside.":                      lexicon.Hygiene,
		"Rinsed the rice until it stopped clouding.":        lexicon.Hygiene,
		"The juice went bright pink.":                       lexicon.Hygiene,
		"I covered the pot with foil to keep the steam in.": lexicon.Hygiene,
		"They were hot like fire.":                          lexicon.Safety,
		"I looked inside in order to see the crumb.":        lexicon.Organisation,
		"The crumbs flew everywhere when I bit it.":         lexicon.Organisation,
		"He showed me the crust.":                           lexicon.Independence,
		"We had it on a plate.":                             lexicon.Appearance,
	} {
		r := readPlain(t, text)
		assert.False(t, r.Row(area).Said, "%s: %s", area, text)
	}
}

// TestHelpAndWishesInPassing: who did a step tells who helped, and the last
// words of a note what to change.
func TestHelpAndWishesInPassing(t *testing.T) {
	for text, want := range map[string][2]bool{
		"Grandad peeled the swede.":                         {true, false},
		"My sister quickly drained it.":                     {true, false},
		"Mum tasted it.":                                    {false, false},
		"I peeled the swede.":                               {false, false},
		"It all sank to one place so more holes.":           {false, true},
		"It was tart so more sugar went in.":                {false, false},
		"The top was pale so longer strips of it were left": {false, false},
	} {
		r := readPlain(t, text)
		assert.Equal(t, want, [2]bool{r.Row(lexicon.Independence).Said, r.Row(lexicon.Improvement).Said}, text)
	}
}

// TestNoPlan: what others had done, what was waited for, feared, kept from
// happening or met on the spot plans no change, nor does what always is done.
// Sentences of our own.
func TestNoPlan(t *testing.T) {
	for text, want := range map[string]bool{
		"He probed it twice before he would let us sit down.":                  false,
		"I stirred until you could draw a line through it.":                    false,
		"I thought she'd give up at the rolling.":                              false,
		"It looked like something you'd win at the fair.":                      false,
		"I used my fingertips, since warm palms would have melted it.":         false,
		"I stood behind him because if he'd spilt it there'd have been burns.": false,
		"I licked the spoon to see if it wanted sugar.":                        false,
		"I waited, where I'd usually poke it.":                                 false,
		"I'll be honest, I was scared of the squid.":                           false,
		"The knife could easily have slipped.":                                 false,
		"It came out a shade darker than I'd have liked.":                      false,
		"So Grandad put more flour down.":                                      false,
		"The recipe wanted ground rice.":                                       false,
		"It wanted salt.":                                                      true,
		"I'd say a pinch more salt.":                                           true,
		"What would you change: less water.":                                   true,
		"I think it would be nicer if I added lime before serving it.":         true,
		"It would have been better because it would have had more crunch.":     true,
		"I could have used more ginger.":                                       true,
		"A knob of butter inside before closing would cure it.":                true,
		"I will use less oil.":                                                 true,
	} {
		r := readPlain(t, text)
		assert.Equal(t, want, r.Row(lexicon.Improvement).Said, text)
	}
}
