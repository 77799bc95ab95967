package analyze

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// judgedIn returns the judging words of a text, with "!" behind those that stay
// bare.
func judgedIn(tb testing.TB, text string) string {
	tb.Helper()
	got := []string{}
	for _, s := range readPlain(tb, text).Sentences {
		for _, v := range s.Vague {
			w := v.Text
			if v.Bare {
				w += "!"
			}
			got = append(got, w)
		}
	}
	return strings.Join(got, " ")
}

// TestWhatBacksAJudgement pins what tells of the judged thing and what does
// not. Our own sentences.
func TestWhatBacksAJudgement(t *testing.T) {
	for _, group := range []struct {
		rule  string
		cases [][2]string
	}{
		{"food is backed by a description, also of its parts", [][2]string{
			{"The goulash was lovely, rich and peppery.", "lovely"},
			{"The goulash was lovely. The beef fell apart and the sauce was thick.", "lovely"},
			{"Really good flapjack, chewy all the way through.", "good"},
			{"It was alright, a little bland.", "alright"},
			{"Not bad. Salty, soft, a bit greasy.", "bad"},
			{"mine were rubbish they were hard as rocks", "rubbish"},
			{"These were delicious. They were sticky and dark.", "delicious"},
			{"It has a lovely crisp shell.", "lovely"},
			{"The custard was perfect, no lumps.", "perfect"},
			{"It smelt amazing, like my uncle's shop.", "amazing!"},
			{"It was alright but it needed more salt.", "alright"},
			{"My risotto was a flop because it was gluey.", "flop"},
			{"The flapjack was delicious. It was burnt and greasy.", "delicious!"},
			{"The flapjack was rubbish. It was burnt and greasy.", "rubbish"},
			{"The first waffles were a disaster. The iron was too cold, so the batter glued itself on.", "disaster"},
			{"The first waffles were a disaster. I ate mine outside because it was sunny.", "disaster!"},
		}},
		{"a heading is backed by what stands below it", [][2]string{
			{"Good\nthe smell was smoky and the sauce clung.", "Good"},
			{"BAD\nleft half of it in the tin.", "BAD"},
			{"Taste\nGood\nTexture\nsoft all through", "Good!"},
			{"Good.", "Good!"},
			{"Good", "Good!"},
			{"Lovely\nwe had it for tea with my cousins.", "Lovely!"},
		}},
		{"a sweet is food", [][2]string{
			{"The tablet was lovely, sugary and smooth.", "lovely"},
			{"My tablet was lovely. I stirred it for an hour.", "lovely!"},
		}},
		{"work is backed by what became of it", [][2]string{
			{"The rolling went terribly. It stuck to the pin.", "terribly"},
			{"Her dicing was poor. The pieces were all different.", "poor"},
			{"The rolling went terribly. Then we had a cup of tea.", "terribly!"},
			{"My timing was good, half six like I planned.", "good"},
			{"It did not go well. The lentils were still hard.", "well"},
			{"It went well. The lentils were still hard.", "well!"},
			{"My timing was good, ten to seven on the dot.", "good"},
			{"My organisation was great, I had a list.", "great"},
			{"My organisation was great, I had a time plan.", "great"},
			{"My organisation was great, we had a time.", "great!"},
			{"The rolling went terribly. My sister was at dance.", "terribly!"},
		}},
		{"food is not backed by how it was made or by who ate it", [][2]string{
			{"It was lovely and I made it by rubbing the butter in with my fingertips.", "lovely!"},
			{"The samosas were great. I folded them into triangles and sealed the edges with water.", "great!"},
			{"My quiche was amazing. I washed my hands and tied my hair back.", "amazing!"},
			{"The kedgeree was nice, mum helped me with the eggs.", "nice!"},
			{"We had it with salad and it was really nice.", "nice!"},
			{"I stirred it with a wooden spoon for twenty minutes and it was perfect.", "perfect!"},
			{"A smashing pie, and he did it on his own without being asked twice.", "smashing!"},
			{"Dad said it was horrible but he ate all of it.", "horrible!"},
			{"Everyone said they were delicious. I would use less flour next time.", "delicious!"},
			{"The gnocchi were good. I rolled them with a fork so that they had ridges.", "good"},
		}},
		{"a state on the way tells nothing of the dish", [][2]string{
			{"My sponge was good. I whisked the eggs and sugar until they were pale and thick.", "good!"},
			{"The fudge was nice. We boiled the sugar till it was golden.", "nice!"},
			{"It was yummy. First I kneaded the dough until it was smooth.", "yummy!"},
		}},
		{"a judgement by one sense is backed by that sense", [][2]string{
			{"It tasted amazing and it was golden on top.", "amazing!"},
			{"It smelt great. It was soft and chewy.", "great!"},
			{"It looked good, golden brown with a glossy top.", "good"},
			{"The texture was nice, quite crumbly.", "nice"},
			{"The flavour was good. It was salty.", "good"},
			{"It looked awful but it tasted sweet.", "awful!"},
			{"The smell was fantastic. The crust was brown.", "fantastic!"},
		}},
		{"a part is backed by what is said of that part", [][2]string{
			{"The filling was nice. The pastry was soggy.", "nice!"},
			{"The pastry was good and the filling was watery.", "good!"},
			{"The sauce was lovely. It was thick and tangy.", "lovely"},
			{"The edges were burnt but the middle was fine.", "fine!"},
			{"The first batch came out raw in the centre, the others were ok.", "ok!"},
			{"The rice was perfect, fluffy and dry.", "perfect"},
			{"The topping was great. Crunchy and sweet.", "great"},
			{"My half was alright but my sister's was burnt.", "alright!"},
		}},
		{"work is backed by what was done or came of it", [][2]string{
			{"My planning was good because I weighed everything out first.", "good"},
			{"Hygiene was excellent.", "excellent!"},
			{"My kneading went well. I pushed the dough away with the heel of my hand.", "well"},
			{"It went well. I washed up as I went along.", "well"},
			{"I worked safely and my hygiene was good.", "good!"},
			{"Timing was poor, the rice went cold while the curry was still cooking.", "poor"},
			{"My knife skills were bad. The soup was sweet.", "bad!"},
			{"I was well organised as I had read the recipe the night before.", "well organised"},
			{"Safety was good. The bread was crusty.", "good!"},
			{"Independence: fine.", "fine!"},
			{"My timings were bad so dinner was an hour late.", "bad"},
			{"She coped well.", "well!"},
			{"My rolling was better than last time because I turned the dough a quarter after each roll.", "better"},
		}},
		{"praise of a person is backed by what they did", [][2]string{
			{"Well done!", "Well done!"},
			{"Well done for keeping your fingers tucked in.", "Well done"},
			{"Good lad, he mopped the floor after.", "Good"},
			{"He did well. The soup was silky and hot.", "well!"},
			{"She did really well. She put the hot tray down on a mat and told her brother to keep back.", "well"},
			{"A brilliant effort for a first go.", "brilliant!"},
			{"You were great today.", "great!"},
			{"She turned the pan handle in, which was good because her little brother was about.", "good"},
		}},
		{"what it was like to do or to eat is no quality of the food", [][2]string{
			{"Making the pasta was fun.", "fun!"},
			{"I licked the spoon which was the best bit.", "best!"},
			{"Eating it was the best part. It was cold and creamy.", "best!"},
			{"The best bit was the crust, it was dark and crackly.", "best"},
			{"It was fun and I want to do it again.", "fun!"},
			{"Chopping the onions was horrible because my eyes stung.", "horrible"},
		}},
		{"a word alone is not backed by a heading or a step that follows", [][2]string{
			{"It was soft. Perfect. Then I washed the pan with hot soapy water.", "Perfect!"},
			{"Taste: nice. Texture: crumbly.", "nice!"},
			{"Good. Then she was too quick: the dough was still sticky.", "Good!"},
			{"Appearance: good. It was golden.", "good"},
		}},
		{"what any food is made up of tells of it", [][2]string{
			{"The barley was good, each grain was chewy.", "good"},
			{"The haddock was lovely, the flesh was flaky.", "lovely"},
			{"The haddock was lovely and the skin was soggy.", "lovely!"},
			{"The crust was great, the filling was runny.", "great!"},
			{"The noodles were terrible. They had gone to a sticky clump.", "terrible"},
			{"We had a cracking bowl of broth, peppery and thick.", "cracking"},
			{"It was even nicer on Monday, the spice had gone right through.", "nicer"},
			{"It was great. It went in the oven.", "great!"},
			{"It smelt lovely of ginger and treacle.", "lovely"},
			{"My dhal was tasty. You got the cumin first.", "tasty"},
			{"My dhal was tasty. You got the eggs out.", "tasty!"},
			{"It was ok. Needed more salt.", "ok"},
			{"It was ok. I needed more salt so I went to the shop.", "ok!"},
			{"The flatbreads were perfect but the last one curled up hard.", "perfect!"},
			{"The chutney went down a treat with my cousins.", "treat!"},
		}},
		{"work done with one's own hands", [][2]string{
			{"My piping was shocking, the lines wobbled.", "shocking"},
			{"My icing skills were shocking.", "shocking!"},
			{"I would grease the tin better because the sponge tore.", "better"},
			{"I would grease the tin better.", "better!"},
			{"She managed brilliantly, weighing it all out before she lit the hob.", "brilliantly"},
			{"I soaked the pans while it baked, that was good planning.", "good"},
			{"Frying them was a nightmare as the oil spat.", "nightmare"},
			{"For my kneading I did a good job.", "good!"},
			{"Plating was poor. The stew slid to one side.", "poor"},
			{"Good session. He wiped the board between the fish and the salad.", "Good"},
			{"Good session.", "Good!"},
			{"It was good that I had gloves on.", "good"},
			{"I did well at chopping.", "well!"},
			{"I did well at chopping because I tucked my fingers in.", "well"},
			{"Grand job. Niamh wiped the floor before anyone slipped.", "Grand"},
			{"Grand job. Pancakes went cold.", "Grand!"},
		}},
		{"what was told before or behind a mark", [][2]string{
			{"Organisation was poor: the pans were still in the sink at half six.", "poor"},
			{"Hygiene was great: ten out of ten.", "great!"},
			{"I lined it badly and we had to scrape it off the tray.", "badly"},
			{"I planned it badly and had a nice tea.", "badly! nice!"},
			{"I did my reading while it simmered, that was good planning.", "good"},
			{"Top job, he wiped every shelf down.", "Top job"},
			{"Top job, son.", "Top job!"},
			{"Top job. He kept one board for the raw pork.", "Top job"},
			{"Piped a rose on each corner, really pretty.", "pretty"},
			{"We ate it in the garden, really pretty.", "pretty!"},
			{"It was on the table by six so not bad.", "bad"},
			{"I added some butter so it was nice.", "nice!"},
			{"The floor was mopped before I came home, can't ask better than that.", "better"},
			{"It was better than that.", "better!"},
			{"Gorgeous with custard while still hot.", "Gorgeous!"},
			{"It was nice, crisp while warm.", "nice"},
			{"Set really well. It was firm and cold.", "well"},
		}},
		{"the judged verb tells nothing of itself", [][2]string{
			{"The custard thickened nicely.", "nicely!"},
			{"It thickened nicely. The topping was like sand.", "nicely!"},
			{"Set really well. Cuts clean.", "well"},
		}},
		{"named, shown or told to anybody", [][2]string{
			{"The best bit was licking the bowl.", "best"},
			{"Licking the bowl was the best bit.", "best!"},
			{"It had a nice kick from the mustard.", "nice"},
			{"It had a nice kick.", "nice!"},
			{"It was amazing. You chuck in the soda and it climbs up the pan.", "amazing"},
			{"It was amazing. You need to use less soda.", "amazing!"},
			{"It was good to see him wearing gloves.", "good"},
			{"It was good to see him.", "good!"},
			{"The presentation was great. I put basil on top.", "great"},
			{"The presentation was great. I ate two.", "great!"},
			{"Timing was bad. The chips were cold by the time the fish was done.", "bad"},
			{"It was a disaster, I dropped it on the floor.", "disaster"},
		}},
		{"one of several, or a purpose", [][2]string{
			{"The first one was rubbish but the second was golden.", "rubbish!"},
			{"It was nice. They were good but mine was a bit pink.", "nice! good!"},
			{"It was nice. The top was golden but the middle was pink.", "nice"},
			{"These were sick. I wet my hands so they didn't stick to me.", "sick!"},
		}},
		{"a place to work at and clearing it", [][2]string{
			{"My work station was better this week. I put a bowl out for peelings and wiped the board between jobs.", "better"},
			{"My side of the bench was a disgrace, flour up the tiles and eggshell in the sink.", "disgrace"},
			{"My section was good. We had the radio on and I made a lasagne.", "good!"},
			{"The tidying up was dreadful, I found peel in the sink.", "dreadful"},
			{"Washing up was a nightmare. The syrup had set on the pan.", "nightmare"},
			{"The washing up was fine. We watched a film after.", "fine!"},
		}},
		{"what became of what was handled", [][2]string{
			{"Folding the samosas was awful at first, three of them came undone in the oil.", "awful"},
			{"Shaping the rolls went badly. They were all different sizes.", "badly"},
			{"Plaiting it was lovely. Then we walked the dog.", "lovely!"},
			{"The filleting was superb: not a bone left in it.", "superb"},
		}},
		{"the knife is told of by how it was held and how the pieces came out", [][2]string{
			{"My knife skills were better. I used the bridge hold and every stick came out the same length.", "better"},
			{"I was told my knife skills are excellent. Then I beat the eggs with a fork.", "excellent!"},
			{"My cutting up was good, all the cubes were about the same.", "good"},
			{"My pastry skills are rubbish. I put the mince in at the end.", "rubbish!"},
			{"My pastry skills are rubbish. The pastry tore when I lifted it.", "rubbish"},
		}},
		{"food is backed by the deed that made it so, and by a comparison", [][2]string{
			{"The jelly was bad because I took it out of the fridge too early.", "bad"},
			{"My bread was good because my nan likes it.", "good!"},
			{"It is a better stew than mine. Mine goes watery.", "better"},
			{"It smelt amazing, all garlic and butter.", "amazing"},
			{"The crumb was sticky in a pleasant way.", "pleasant"},
		}},
		{"other people, other parts, other times", [][2]string{
			{"Proper job. The butcher's was shut so we had it with cheese.", "Proper job!"},
			{"A cracking effort from start to finish. We ate at seven.", "cracking!"},
			{"I'm rubbish at rolling so Sam rolled mine.", "rubbish!"},
			{"It went well overall. We had to wait for the oven because the others were in it.", "well!"},
			{"Nice bit of ham, that. The pickle was sharp.", "Nice!"},
			{"The mash was ok but the peas were hard.", "ok!"},
			{"Leeks perfect, potatoes waxy.", "perfect!"},
			{"The pink half was nicer. I pressed it in with a spatula.", "nicer!"},
			{"That bit was gross. The sauce was thick.", "gross!"},
			{"Teaching her to knead was a lovely way to spend a morning. We pushed it with the heel of our hands.", "lovely!"},
			{"Not my best day. The pastry cracked.", "best"},
			{"Presentation was good. I put it in my lunch box.", "good!"},
		}},
		{"what others said of it, what it was eaten with, and what was wrong with a part", [][2]string{
			{"My brother said it was the best ever. I left the tub out and it melted round the edge.", "best!"},
			{"Mummy called it beautiful. It was a bit eggy for me.", "beautiful!"},
			{"Auntie said it was lush. It was peppery and warm.", "lush"},
			{"The crumble was nice with custard. Apples were a bit sharp.", "nice!"},
			{"It looked lovely with almonds on top.", "lovely"},
			{"The stew was mega. The carrots had gone mushy.", "mega!"},
			{"The stew was awful. The carrots had gone mushy.", "awful"},
			{"Mine were fab. The first one was minging, white and oily.", "fab! minging"},
			{"It looked perfect from the top but underneath was pale.", "perfect!"},
		}},
		{"one of them, and what somebody else found", [][2]string{
			{"It cooked fine but one chop was tough.", "fine"},
			{"I think it was good but my mum found it too sweet.", "good"},
			{"Not bad for a first try but there was little holes in it.", "bad"},
			{"The rotis were decent. One had a hole in it.", "decent"},
			{"The rice was perfect. Every grain was separate.", "perfect"},
			{"That part was minging. The inside was soft.", "minging!"},
		}},
		{"how it came to be so", [][2]string{
			{"The gravy was champion, made from the sticky bits in the tin.", "champion"},
			{"The rest were better, I drained them on paper which got rid of the grease.", "better"},
			{"It was better than last time because I rested the dough.", "better"},
			{"It was a disaster. The bottom fell out of the tin.", "disaster"},
			{"It was an absolute shambles. I dropped half on the floor.", "shambles"},
			{"It was lovely. I dropped in at my nan's.", "lovely!"},
			{"The smell was horrible. Like burnt rubber.", "horrible"},
			{"The smell was horrible. Like my uncle's van.", "horrible!"},
			{"What a smart looking cake. The two halves rose evenly.", "smart"},
			{"The next pair were perfect. He lifted them out and let them drip.", "perfect!"},
		}},
		{"time, skill and the whole of it", [][2]string{
			{"Time wise it was good, half six like I planned.", "good"},
			{"My kitchen skills were better, I had a timeplan and everything.", "better"},
			{"The chopping was poor, all different sizes.", "poor"},
			{"My practical went well. I peeled the apples in one long strip.", "well!"},
			{"My practical went well because I laid everything out first.", "well"},
			{"Good lad for asking before lifting the pan.", "Good"},
			{"I did a good job of the washing up.", "good!"},
			{"Good thinking. Hygiene - hands washed without being asked.", "Good!"},
			{"I licked the paddle after, best part!", "best!"},
			{"That's the best part, the smoky bit.", "best"},
			{"One thing that was good was the crust.", "good"},
			{"After that it got better. Simmered it to get rid of the floury taste.", "better"},
			{"After that it got better. We had tea.", "better!"},
			{"Checking for bones was disgusting but I found three.", "disgusting!"},
		}},
		{"a thing that is no food", [][2]string{
			{"They were crisp and brown, and I cut them with that horrible knife.", "horrible!"},
		}},
	} {
		for _, c := range group.cases {
			assert.Equal(t, c[1], judgedIn(t, c[0]), "%s: %s", group.rule, c[0])
		}
	}
}
