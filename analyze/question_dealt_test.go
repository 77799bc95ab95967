package analyze

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/lexicon"
)

// TestADangerThatWasSeenTo keeps the question which adult knows from a text that
// tells it, and asks it where it does not. Common practice, no published source.
func TestADangerThatWasSeenTo(t *testing.T) {
	for _, c := range []struct {
		role        Role
		text, state string
	}{
		{Learner, "I cut my finger on the grater and Mum put it under the tap.", dealt},
		{Learner, "I burnt my hand on the tray. I told my nan straight away.", dealt},
		{Learner, "My hand touched the edge of the pan and it went red, nan held it under the cold tap.", dealt},
		{Learner, "The knife slipped and just missed my thumb so Dad cut the rest of the swede.", dealt},
		{Learner, "The knife slipped and just missed my thumb so Dad had to wait.", ""},
		{Learner, "When Dad bit into the chicken it was still pink in the middle.", dealt},
		{Learner, "When my brother bit into the chicken it was still pink in the middle.", ""},
		{Learner, "When Dad ate the chicken it was still pink in the middle.", ""},
		{Learner, "I burnt my hand on the tray and ran it under the cold tap.", treated},
		{Learner, "I cut my finger on the grater. Mum loved the soup.", ""},
		{Learner, "I cut my finger on the grater. I never told my mum.", ""},
		{Learner, "I burnt my hand on the tray. Next time I will wear the gloves.", planForNext},
		{Learner, "Mum put my hand under the tap as I burnt it on the tray. Next time I will wear the gloves.", dealt},
		{Learner, "I rubbed my eye after the chillies and it stung for ages. It was hot and red. Next time: gloves for the chillies.", planForNext},
		{Learner, "The burgers were raw and pink in the middle. The coals were flaming. Moved them to the side with the lid down for another ten minutes.", dealt},
		{Learner, "The burgers were raw and pink in the middle. The coals were flaming. I would leave them another ten minutes.", ""},
		{Learner, "The juice was pink when I cut the chicken, so back it went for a quarter of an hour.", dealt},
		{Learner, "When I put them back on the plate of the raw koftas they touched it. Mum spotted it and swapped it.", dealt},
		{Learner, "I had the oil smoking before anything went in, so I slid the wok off the ring.", dealt},
		{Learner, "I burnt my wrist on the tray and it stung. It went red. Long sleeves next time I reckon.", planForNext},
		{Adult, "The sticks caught fire under the grill so I blew it out.", dealt},
		{Learner, "The oil caught fire so I took the pan off.", ""},
		{Learner, "I cut my finger on the knife. Gran says that knife needs to be sharp.", dealt},
		{Learner, "Oil splashed on my arm and it stung. After that I slid them in from the edge, away from me.", dealt},
		{Learner, "Oil splashed on my arm and it stung. After that I had tea.", ""},
		{Adult, "He left the soup out on the side all night. I told him, small boxes, then fridge.", dealt},
		{Adult, "He left the soup out on the side all night. I liked the noodles.", ""},
		{Adult, "He did rinse the raw chicken in the sink, so we had a chat about it.", dealt},
		{Adult, "He burnt his hand on the tray. We ran it under the cold tap.", dealt},
		{Adult, "She cut her finger on the grater.", ""},
		{Adult, "She cut her finger on the grater. Next time hold it flat and go slower.", givenAdvice},
	} {
		a, lex := shared(t)
		r := a.reading(Input{Text: c.text, Role: c.role}, Brief{Dish: lex.General()})
		require.NotEmpty(t, r.cautions, c.text)
		first := r.cautions[0]
		assert.Equal(t, c.state, seenTo(r, first.Sentence-1, first.Kind), c.text)
		told := c.state == dealt || c.state == givenAdvice
		assert.Equal(t, !told, openDanger(a, Input{Text: c.text, Role: c.role}, Brief{Dish: lex.General()}), c.text)
	}
}

// openDanger reports whether a text tells of a danger and leaves open what came of it.
func openDanger(a *Analyzer, in Input, brief Brief) bool {
	return len(asking{a.words}.dangers(a.reading(in, brief))) > 0
}

// TestOneEventIsAskedAboutOnce keeps a harm and what did it from being two
// questions, and other dangers from being one.
func TestOneEventIsAskedAboutOnce(t *testing.T) {
	asked := func(text string) (n int) {
		for _, q := range ask(t, Learner, 0, text) {
			if q.Danger != "" {
				n++
			}
		}
		return n
	}
	assert.Equal(t, 1, asked("When I blitzed it the lid popped off the blender and it went up my wrist, it is still red now."))
	assert.Equal(t, 2, asked("The chicken was still pink in the middle. I cut my finger on the grater."))
}

// TestADangerIsQuotedWithWhatMakesItOne gives sentences in which the danger
// stands behind something harmless.
func TestADangerIsQuotedWithWhatMakesItOne(t *testing.T) {
	for text, want := range map[string]string{
		"Used up Friday's rice which had been sat in the pan on the side since, came in handy.":                  "on the side since",
		"The mix was the best part of all, we had about four big spoons each out the bowl before it went in.":    "spoons each out the bowl",
		"I felt rubbish that day, had been chucking up in the night but it was my turn so I did the omelettes.":  "chucking up in the night",
		"I used the stick blender and a stalk kept jamming round the blade, so I kept hooking it out by finger.": "hooking it out",
	} {
		for _, q := range ask(t, Learner, 0, text) {
			if q.Danger != "" {
				assert.Contains(t, q.Text, want, text)
			}
		}
	}
}

// TestOfTwoSentencesThePlainerOneIsAskedAbout: half of a danger is no sentence to
// put before the writer where another tells the whole.
func TestOfTwoSentencesThePlainerOneIsAskedAbout(t *testing.T) {
	a, lex := shared(t)
	grill, err := lex.Find("grilled-meat")
	require.NoError(t, err)
	r := a.reading(Input{Role: Learner, Text: "I cut the thighs up and they went in soy. Once they had stripes on I put them back on the plate they'd come out on, and poured the rest of the soy over, it ran into all the salad."}, Brief{Dish: grill})
	half, whole := Caution{Kind: "cross-contact", Sentence: 1}, Caution{Kind: "cross-contact", Sentence: 2}
	r.cautions = []Caution{half, whole, {Kind: "injury", Sentence: 1}}
	d := asking{words: a.words}
	assert.Equal(t, whole, d.plainest(r, half))
	assert.Equal(t, whole, d.plainest(r, whole))
}

// TestNobodyIsAskedToTasteWhatIsNotSafe: with a danger in the text no question
// has the writer lift another spoonful.
func TestNobodyIsAskedToTasteWhatIsNotSafe(t *testing.T) {
	a, lex := shared(t)
	rice, err := lex.Find("rice")
	require.NoError(t, err)
	moment := rice.Moments[lexicon.Sense(lexicon.Taste)]
	require.NotEmpty(t, moment)
	for n := range 40 {
		text := fmt.Sprintf("I left the rice in the pan overnight and we ate it cold on day %d.", n)
		r := a.Read(Input{Text: text, Role: Learner}, Brief{Dish: rice})
		require.NotEmpty(t, r.Cautions, text)
		for _, q := range r.Questions {
			assert.NotContains(t, q.Text, moment)
		}
	}
}

// TestAPromiseIsNoIllness: "Ill" without its mark opens a promise where a verb
// follows, and tells of an illness elsewhere.
func TestAPromiseIsNoIllness(t *testing.T) {
	a, lex := shared(t)
	for text, unwell := range map[string]bool{
		"My chicken pieces were big. Ill cut them smaller.":     false,
		"It was salty so ill add less next time.":               false,
		"I was ill in the night but I made the omelettes.":      true,
		"Was being ill all night, still did the salad for tea.": true,
	} {
		r := a.Read(Input{Text: text, Role: Learner}, Brief{Dish: lex.General()})
		found := false
		for _, c := range r.Cautions {
			found = found || c.Kind == "unwell"
		}
		assert.Equal(t, unwell, found, text)
	}
}

// TestADangerHeardOnceIsShownAndNotAskedAbout: of words that only one row of the lexicon
// hears, which may be none, the report tells, and a question is put about what is
// told plainly.
func TestADangerHeardOnceIsShownAndNotAskedAbout(t *testing.T) {
	a, lex := shared(t)
	for text, want := range map[string]string{
		"We passed it round and it was a laugh and then I licked the spoon.":                                                      "",
		"I used the same board for the chicken and the salad.":                                                                    "cross-contact",
		"I burnt my finger on the hot tray and got a blister.":                                                                    "injury",
		"The chicken was still pink and bloody in the middle when we cut it.":                                                     "undercooked",
		"We passed it round and it was a laugh and then I licked the spoon. I burnt my finger on the hot tray and got a blister.": "injury",
	} {
		r := a.Read(Input{Text: text, Role: Learner}, Brief{Dish: lex.General()})
		require.NotEmpty(t, r.Cautions, text)
		require.NotEmpty(t, r.Questions, text)
		assert.Equal(t, want, r.Questions[0].Danger, text)
		assert.Equal(t, want != "", strings.Contains(r.Questions[0].Text, "adult"), r.Questions[0].Text)
	}
}

// TestOfAHurtThatWasSeenToItsCauseIsAskedAbout: where only the cooling of a hurt is told,
// the question quotes what did it.
func TestOfAHurtThatWasSeenToItsCauseIsAskedAbout(t *testing.T) {
	for text, want := range map[string]string{
		"I grabbed the tray with a damp tea towel and it got really hot so I dropped it, I ran my hand under the tap and it was fine.": "damp tea towel",
		"I dropped the first one in from too high up and some splashed on my wrist so i ran it under the cold tap for ages.":           "splashed on my wrist",
	} {
		qs := ask(t, Learner, 1, text)
		require.NotEmpty(t, qs, text)
		assert.NotEmpty(t, qs[0].Danger, text)
		assert.Contains(t, qs[0].Text, want)
	}
}
