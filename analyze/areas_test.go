package analyze

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"saywhy/lexicon"
)

// TestAreasOfSentences reads sentences of our own, written and labelled before
// the rules were tuned: what each speaks of, and that it speaks of nothing
// else. The last list speaks of no area at all, in the words that do.
func TestAreasOfSentences(t *testing.T) {
	for _, c := range []struct {
		areas     []lexicon.Area
		sentences []string
	}{
		{[]lexicon.Area{lexicon.Hygiene}, []string{
			"I scrubbed under my nails before I started.",
			"I washed my hands before I touched the fish so that no germs got in.",
			"i put my hair in a bun",
			"The chopping board went through the dishwasher.",
			"kept the raw mince on the bottom shelf of the fridge",
			"I covered the bowl so no flies could get in.",
			"I washed the grapes under the cold tap.",
			"She coughed into her elbow and washed her hands again.",
			"I used a clean teaspoon every time I tasted it.",
			"he forgot to wash his hands after stroking the dog",
			"i wiped the work surface down with antibac spray",
			"The leftovers went into a tub and into the fridge within an hour.",
			"I checked the date on the cream first.",
			"He wore a clean apron and rolled his sleeves up.",
			"washed up everything and dried it",
			"I sanitised the worktop before and after.",
			"We used one board for the fish and another for the salad.",
			"The probe said 78 in the middle of the burger.",
			"i kept touching my face so i had to keep washing my hands",
			"My hair kept falling in my eyes, so I tied it up.",
		}},
		{[]lexicon.Area{lexicon.Safety}, []string{
			"I held the knife by the handle with the blade pointing at the floor.",
			"I made a bridge with my hand over the onion.",
			"oven gloves on every time",
			"I turned the pan handles so nobody could catch them.",
			"The steam nearly got my face when I took the lid off.",
			"I opened the oven door and stood to one side.",
			"Nobody got hurt.",
			"i put a wet cloth under the board so it wouldnt slip",
			"She never left the frying pan on its own.",
			"I mopped the water off the floor in case someone fell.",
			"I let the oil cool right down before I moved the pan.",
			"He kept his little sister away from the cooker.",
			"I grated my knuckle.",
			"The blade is sharp so I went slowly and kept my fingers tucked in.",
			"i cut my thumb a tiny bit on the tin lid",
			"I turned the gas off before I opened the oven.",
			"My friend can't have dairy so I used oat milk.",
		}},
		{[]lexicon.Area{lexicon.Safety, lexicon.Independence}, []string{
			"I asked Dad to lift the hot tray out because I'm not allowed.",
		}},
		{[]lexicon.Area{lexicon.Organisation}, []string{
			"I got all my ingredients out and ticked them off the list.",
			"I weighed the flour and sugar before I turned the oven on.",
			"It took me two hours instead of one.",
			"i ran out of time at the end",
			"I set a timer for each part.",
			"She cleared up as she went.",
			"I read the recipe twice before starting.",
			"We ate at eight because I started too late.",
			"i forgot to turn the oven on so we had to wait",
			"While the potatoes boiled I made the sauce.",
			"Everything came out of the oven at the same time.",
			"I planned it so the rice and curry were ready together.",
			"I made the dough the night before.",
			"He kept losing the measuring spoons.",
			"I couldn't find the whisk and it held me up.",
		}},
		{[]lexicon.Area{lexicon.Independence}, []string{
			"I did it all on my own.",
			"Nan only helped me light the gas.",
			"I needed help getting the lid off the jar.",
			"He didn't ask me for anything.",
			"my brother had to remind me about the salt",
			"She made it without any help from us.",
			"I had to show him how to crack an egg.",
			"mum did the hard bit",
			"This was the first time I have used the hob by myself.",
			"I stayed out of the kitchen and she got on with it.",
		}},
		{[]lexicon.Area{lexicon.Technique}, []string{
			"I rubbed the butter into the flour with my fingertips.",
			"I kneaded it for ten minutes.",
			"i whisked the egg whites till they stood up",
			"I folded the flour in gently.",
			"I browned the mince in two batches.",
			"We simmered it for an hour with the lid off.",
			"I blind baked the case first.",
			"i creamed the butter and sugar",
			"I let the dough rise for an hour.",
			"I turned the heat down when it started to catch.",
			"She strained the custard through a sieve.",
			"I scored the fat with a sharp knife.",
			"he kept turning them every few minutes",
			"I added the egg a bit at a time.",
			"I cooked the onions slowly until they were soft.",
			"the oven was too hot and it burnt",
			"I sealed the edges with a fork.",
			"I chilled the pastry for half an hour.",
			"I mashed them with a bit of milk and butter.",
			"I didn't beat it enough.",
			"I greased the tin so it wouldn't stick.",
		}},
		{[]lexicon.Area{lexicon.Improvement}, []string{
			"Next time I will put less salt in.",
			"I would cook it for longer.",
			"It could have done with more lemon.",
			"nex time use a bigger tin",
			"Maybe add a bit of chilli.",
			"If I made it again I'd use brown sugar.",
			"I'd like to try it with lentils.",
			"Try rolling it thinner.",
			"A pinch of salt would bring it out.",
			"What I'd change is the topping.",
			"to make it better i would add cheese",
			"I'm going to leave it in longer next week.",
		}},
		{nil, []string{
			"We had it for tea.",
			"My gran had two helpings.",
			"I chose this because my dad loves it.",
			"I made vegetable curry for my family.",
			"The recipe came from my auntie.",
			"I put cheese on it.",
			"We ate it with rice and peas.",
			"It was my turn to cook.",
			"I was really proud of it.",
			"My brother ate the last piece before I could take a photo.",
			"I bought the fish from the market.",
			"Next week we are doing bread.",
			"We had cold water to drink.",
			"The dog sat under the table and watched.",
			"I want to be a chef one day.",
			"Everyone came back for more.",
			"I was hungry so I ate it straight away.",
			"Thank you for the recipe.",
			"He has been cooking since he was six.",
			"it was raining so we ate inside",
			"I put on some music.",
			"We had the rest for lunch the next day.",
			"My sister doesn't like mushrooms.",
			"It is a dish from my grandma's village.",
			"I used the recipe from the course.",
			"I bought the ingredients with my pocket money.",
			"It serves four people.",
		}},
	} {
		for _, text := range c.sentences {
			r := readPlain(t, text)
			var have []lexicon.Area
			for _, s := range r.Sentences {
				have = append(have, s.Areas...)
			}
			assert.ElementsMatch(t, c.areas, have, text)
		}
	}
}

// TestStepsInPassing: a step told for the sake of another area, of another
// time or of the recipe is no technique.
func TestStepsInPassing(t *testing.T) {
	for text, want := range map[string]bool{
		"I chopped everything before I started.":               false,
		"I used the blue board for the fish.":                  false,
		"He lowered them in away from him.":                    false,
		"I drained the pasta away from my face.":               false,
		"Leave it in the tin next time.":                       false,
		"I'd wring it out in a cloth next time.":               false,
		"I put some coriander on top.":                         false,
		"I added a pinch of salt.":                             false,
		"We cut two in half to see.":                           false,
		"It was soft enough to cut.":                           false,
		"I added the milk a little at a time.":                 true,
		"I put all the milk in at once.":                       true,
		"I used cold butter.":                                  true,
		"I cut the carrots into thin sticks.":                  true,
		"I put too much water in.":                             true,
		"My hands were clean before I kneaded it on the table": true,
	} {
		r := readPlain(t, text)
		assert.Equal(t, want, r.Row(lexicon.Technique).Said, text)
	}
}

// TestAdviceForAnotherTime reads notes that tell what to do another time, and
// others with the same words that tell what was done.
func TestAdviceForAnotherTime(t *testing.T) {
	a, lex := shared(t)
	for _, c := range []struct {
		role Role
		text string
		want bool
	}{
		{Learner, "Change: parsnips.", true},
		{Learner, "Target - all the slices one size.", true},
		{Learner, "Change: none.", false},
		{Learner, "Cut them thinner.", true},
		{Learner, "The rice stuck so stir it at the start.", true},
		{Learner, "It went soggy so I put the dressing on last.", false},
		{Learner, "I burnt my thumb so put it under the tap.", false},
		{Learner, "Don't open the door.", true},
		{Learner, "I wud leave wider gaps.", true},
		{Learner, "Id line the tin.", true},
		{Learner, "I lined the tin.", false},
		{Learner, "Need a wider pan.", true},
		{Learner, "The beans needed longer than the rice.", false},
		{Learner, "More pepper needed.", true},
		{Learner, "A softer cheese would have been wiser.", true},
		{Learner, "They could go in half an hour later.", true},
		{Learner, "Cut the fattest one open.", false},
		{Learner, "Perhaps chill the dough.", true},
		{Learner, "Would put seeds in it.", true},
		{Learner, "Would make again.", false},
		{Learner, "I'd do the same soup again.", false},
		{Learner, "Would go well with custard.", false},
		{Learner, "Would make a good breakfast.", false},
		{Learner, "Would work with chicken too.", false},
		{Learner, "It wouldn't go amiss with mint.", true},
		{Learner, "Would work better with smaller potatoes.", true},
		{Learner, "Would make the dough thinner.", true},
		{Learner, "Don't get the oil too hot.", true},
		{Learner, "Don't have the pan so full.", true},
		{Learner, "Don't have much to say.", false},
		{Learner, "Don't get any time to myself.", false},
		{Learner, "Don't get to stir it often.", false},
		{Learner, "Don't even think about opening the door.", true},
		{Learner, "Don't even like cabbage.", false},
		{Learner, "It was grey, so parsley on top.", true},
		{Learner, "Bit more salt.", true},
		{Learner, "It was soggy underneath. Use a rack.", true},
		{Learner, "I warmed it so it wouldn't go to mush.", false},
		{Learner, "I don't know what to write.", false},
		{Adult, "Chives maybe?", true},
		{Adult, "Shells in the bin please.", true},
		{Adult, "Some mint would give freshness.", true},
		{Adult, "Grease the tray.", true},
		{Adult, "Please rinse the sieve.", true},
		{Adult, "My one grumble: the hob.", true},
		{Adult, "She greased the tray.", false},
		{Adult, "Do keep the lid on.", true},
		{Adult, "Do like the lid on it.", false},
		{Adult, "Clean knife and tidy board every time, lovely.", false},
		{Adult, "Clean spoon every time.", false},
		{Adult, "Clean spoon every time please.", true},
		{Adult, "Flour everywhere.", false},
		{Learner, "Three eggs not two.", true},
		{Learner, "I used three eggs not two.", false},
		{Adult, "It was too chewy. Ten minutes, not fifteen.", true},
		{Adult, "One hour, not two.", false},
		{Learner, "It fell apart. A bit of flour?", true},
		{Learner, "Any left for me?", false},
		{Adult, "Lid on the pan, love!", true},
		{Adult, "Lovely crisp crust, love!", false},
		{Learner, "One onion fewer.", true},
		{Learner, "One onion fewer than last time was in it.", false},
		{Learner, "Half the garlic.", true},
		{Learner, "Half the garlic went in.", false},
		{Learner, "Not so thick - they were raw inside.", true},
		{Learner, "Not so salty.", false},
		{Learner, "The peas burnt. Rice in first, then the peas.", true},
		{Learner, "Rice in first, then the peas.", false},
		{Learner, "It stuck. A wet spoon stops that.", true},
		{Learner, "A wet spoon stops that.", false},
		{Learner, "The sauce was too thin. Double it.", true},
		{Learner, "Taste the same.", false},
		{Learner, "My nan says leave it an hour.", true},
		{Learner, "My nan says it was fine.", false},
		{Learner, "I think wrap them in foil.", true},
		{Learner, "I think it rose.", false},
		{Learner, "Could toast the nuts.", true},
		{Learner, "Could smell the nuts.", false},
		{Learner, "Will use two tins.", true},
		{Learner, "Will do.", false},
		{Learner, "Note to self: salt the water.", true},
		{Learner, "Needed something sharp.", true},
		{Learner, "It needed five minutes of whisking.", false},
		{Adult, "I wouldn't change a thing.", false},
		{Adult, "No need for more salt.", false},
		{Adult, "It couldn't have been better.", false},
		{Learner, "I could have bought pastry but I made mine.", false},
		{Learner, "If I had stopped it would have been lumpy.", false},
		{Learner, "I am going to make these buns again.", false},
		{Learner, "I'm going to make it thinner.", true},
		{Adult, "Some mint would be nice with it.", true},
		{Adult, "A spoon of honey would do the trick.", true},
		{Adult, "It was nice with the mint.", false},
		{Learner, "The pasta wants to go in later.", true},
		{Learner, "My brother wants to go in.", false},
		{Learner, "Why didn't I weigh it?", true},
	} {
		r := a.Read(Input{Text: c.text, Role: c.role}, Brief{Dish: lex.General()})
		assert.Equal(t, c.want, r.Row(lexicon.Improvement).Said, c.text)
	}
}
