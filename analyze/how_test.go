package analyze

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// The sentences are our own; what counts follows the meaning of the label "how"
// (means or manner told in the sentence; not a step, a place, a time or help).
// No published source covers notes without verbs; these go by common practice.
func mannersToldOtherwise() []carrier {
	return []carrier{
		// How lid, food, cook and hand stood while the work went on.
		{"lid", "Left it to blip for an hour, lid ajar."},
		{"lid", "Braised two hours, lid on, turned the oven down at the end."},
		{"uncovered", "I dried the duck overnight in the fridge, uncovered."},
		{"skin side down", "Fried the sea bass skin side down."},
		{"upside down", "I turned the cake out upside down onto a plate."},
		{"stood", "She lifted the lid, stood well back, gloves on."},
		{"fingers", "Sliced the leeks, fingers tucked under."},
		{"handle", "She carried the pan, handle turned in."},
		{"fingertips", "Rub the butter in fingertips only."},
		{"no machine", "Made the pasta myself, no machine."},
		{"face", "I opened the parcel with my face turned away from the steam."},
		{"bowl", "Whisked the egg whites, bowl tilted, till they held."},
		{"knife", "I carried the knife pointing down."},
		// Flat and doubled adverbs.
		{"slow", "Kneading: slow, steady, ten minutes."},
		{"low and slow", "Cooked low and slow till it fell apart."},
		{"hard", "I boiled the beans hard the way the packet said."},
		{"little and little", "I added the milk little and little."},
		{"lengthways", "I cut the aubergines lengthways."},
		{"backwards", "Planned it backwards from tea time."},
		{"out loud", "I read the recipe out loud to my sister."},
		{"methodically", "I worked methodically and washed up between jobs."},
		// A way that was shown, and one that was left.
		{"the way", "I plaited it the way my aunt showed me."},
		{"how", "I rolled the vine leaves how Gran does it."},
		{"instead", "I folded instead of stirring."},
		{"rather", "Next time I will weigh it rather than guessing."},
		// Tools without "with".
		{"wi'", "She lifted the dumplings wi' a slotted spoon."},
		{"used", "I used tongs for the raw ones and a fish slice for the rest."},
		{"used", "I used a mug as a cutter."},
		{"used", "I used only my hands and worked fast."},
		{"over", "Stretched the strudel dough over my fists."},
		{"over", "I left the yoghurt to drain over a colander."},
		{"over", "He melted the chocolate over a pan of hot water."},
		{"on", "I sliced the cucumber on the mandolin."},
		{"on", "Drained the chips on newspaper."},
		{"on", "I chopped the herbs on a clean board."},
		{"in", "dressing: oil and lemon shook in jar"},
		{"in", "I steamed the pudding in a pan of simmering water."},
		{"from", "I poured the batter from a jug."},
		{"with", "I timed it with my phone."},
		{"with", "I worked fast, with cold hands."},
		{"with", "The sink was scrubbed with hot soapy water afterwards."},
		{"with", "Forty minutes with lid on."},
		{"with", "I brought the dough together with a palette knife."},
		{"with", "I let the gravy down with hot water."},
		{"with", "With the spatula I pull the edge in."},
		{"with", "I cook the beans two hours with small fire."},
		{"with", "I mixed it with a wisk."},
		{"with", "They rose by the radiator, covered with a tea towel."},
		{"with", "Brush it with milk."},
		{"with", "I stirred the flour in with about six strokes."},
		{"thru", "I pushed the raspberries thru a siv."},
		{"used", "Used a damp cloth under the bowl to hold it still."},
		{"used", "Rubbing in: used just finger tips."},
		{"in", "I lifted the crust off in one piece."},
		{"slow", "I put the milk in slow."},
		{"slowly", "I softened the leeks slowly for a quarter of an hour."},
		{"under", "I rested the dough under an upturned bowl."},
		{"between", "We rolled it between two sheets of baking paper."},
		{"off", "I tasted it off a clean spoon every time."},
		{"across", "I sliced the beef across the grain."},
		// Path, portion and heat.
		{"in", "I poured the syrup in a thin stream."},
		{"in", "I whisked it in short bursts."},
		{"in", "I did the pancakes in two lots."},
		{"off", "The lemon juice went in off the heat."},
		{"on", "I cooked it on the smallest ring."},
		{"in", "I cracked each egg in a cup first."},
		{"in", "We bashed the biscuits in a freezer bag."},
		{"in", "Vinaigrette shaken up in an old jar."},
		{"in", "I washed the mussels in a bucket of water."},
		{"on", "I stretched the dough on my fists."},
		{"on", "He stood the squash on its flat end to peel it."},
		{"on", "Grated the ginger on the fine side."},
		{"on", "She spread the rice on a tray to cool."},
		{"over", "The pasta was hung over a chair."},
		{"under", "He kept the pancakes warm under foil."},
		{"with", "I loosened the gravy with a splash of cider."},
		{"by", "I cut fish by small knife."},
		{"use", "First I use blender for the beans."},
		{"stirring", "I cooked the custard, stirring, until it coated the spoon."},
		{"working", "I wrote the times down, working back from six."},
		{"all the time", "I stirred it all the time."},
		{"like", "I folded it like a letter."},
		{"at", "We kept the stock at a bare simmer."},
		// Things no list of tools knows.
		{"with", "I cracked the coconut with a hammer."},
		{"with", "I greased the tin with a butter wrapper."},
		{"with", "I got the shell out with another bit of shell."},
		{"with", "She measured the slices with a ruler."},
		{"used", "I used an old ruler to measure the sides."},
		{"with", "He turned the pancake with a flick of the wrist."},
		{"with", "I let the tahini down with warm water."},
		// What hand and tool were held like, and how much was moved.
		{"like", "I held the piping bag like a pencil."},
		{"like", "He held the knife like Miss showed us."},
		{"like", "We whisked it like mad."},
		{"at", "I opened the oven door at arm's length."},
		{"handle", "He passed me the knife handle first."},
		{"lifting", "I rubbed the lard in, lifting my hands high to let air in."},
		{"holding", "I carried it holding both handles."},
		{"four", "I folded it in, four or five strokes."},
		{"one,", "The eggs go in one, one, one."},
		{"as", "I let it simmer as low as it goes."},
		{"fast", "I worked fast with the filo."},
		{"to", "We weighed the flour to the gram."},
		{"in", "He stirred in figures of eight."},
		{"in", "I warmed it in twenty second bursts."},
		{"in", "I laid the spices out in a line."},
		// Where it was worked.
		{"over", "I gutted the mackerel over newspaper."},
		{"on", "She cracked the eggs on the rim of the bowl."},
		{"on", "I timed each side on my phone."},
		{"in", "I baked the custards in a water bath."},
		{"in", "The potatoes were boiled in their skins."},
		{"in", "I rolled the meatballs in my hands."},
		{"under", "I peeled the eggs under running water."},
		{"from", "The crosses were piped from a sandwich bag."},
		{"by", "I judged it by the smell."},
	}
}

// noManners are sentences with words of manner that tell a step, a place, a
// quality or a result.
func noManners() []carrier {
	return []carrier{
		{"a step", "I took the pan off the heat."},
		{"a step", "I put the lid on."},
		{"a step", "We wiped the side down."},
		{"a step", "I used the last of the milk."},
		{"a step", "We used the big oven."},
		{"a place", "She stood back when it spat."},
		{"a place", "The bread was on the board."},
		{"a place", "I put the eggs in a bowl."},
		{"a place", "We ate them on a tray."},
		{"a place", "There was grit in the sink."},
		{"a place", "He sat by the big oven."},
		{"a place", "The flour is on the top shelf."},
		{"a place", "The milk came from a jug in the fridge."},
		{"a place", "The peas went straight under the cold tap."},
		{"a place", "I put foil under the lid."},
		{"what a vessel holds", "There was a bowl with water in it."},
		{"what went in", "I simmered them with a carrot."},
		{"a plan", "Next time I will stir it slowly."},
		{"a liking", "I don't like touching raw chicken with my hands."},
		{"a quality", "Evenly cracked, conker brown."},
		{"a quality", "The lid is stuck."},
		{"a quality", "It was a slow, steady heat on the tongue."},
		{"a quality", "The toffee set hard."},
		{"a quality", "It tasted good on its own."},
		{"a quality", "I like the way it crunches."},
		{"a quality", "I love how it smells."},
		{"how tender it was", "The joint pulled apart with a fork."},
		{"how tender it was", "It sliced cleanly with a bread knife."},
		{"what the food does", "The filling quivered without flowing."},
		{"what it was cut into", "I cut the parsnips in sticks."},
		{"which one, to keep food apart", "I used a new spoon."},
		{"a burn", "There's a red mark on her thumb, we ran it under the tap."},
		{"a result", "The sauce split instead of thickening."},
		{"a result", "They came out in lumps."},
		{"an ingredient", "I used lentils instead of mince."},
		{"what went over what", "I poured the gravy over the meat."},
		{"how tender it was", "The meat could be pulled apart with a fork."},
		{"a skill", "You were slow with the knife."},
		{"trouble", "I had trouble with the whisk."},
		{"help", "I needed a hand with the tin opener."},
		{"a wish", "I could do with a bigger pan."},
		{"a part", "I picked up the knife with the red handle."},
		{"a part", "They were golden with a darker ring."},
		{"a place", "I kept the lid on and stood back."},
		{"a place", "The thick bit by the bone was pink."},
		{"a time", "By serving time it had set."},
		{"a quality", "I broke it between my teeth."},
		{"a quality", "The tin was shiny like a mirror."},
		{"a result", "The tart was all in one piece."},
		{"an accident", "I slipped with the knife."},
		{"what was lacking", "There was no whisk in the drawer."},
	}
}

func TestMannerToldOtherwise(t *testing.T) {
	for _, c := range mannersToldOtherwise() {
		t.Run(c.word+": "+c.text, func(t *testing.T) {
			got := howIn(t, c.text)
			assert.True(t, begins(got, c.word), "%q tells no manner by %q; found: %q", c.text, c.word, got)
		})
	}
}

func TestNoMannerInSteps(t *testing.T) {
	for _, c := range noManners() {
		t.Run(c.word+": "+c.text, func(t *testing.T) {
			assert.Empty(t, howIn(t, c.text), "%q tells no manner", c.text)
		})
	}
}
