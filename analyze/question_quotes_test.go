package analyze

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/lexicon"
)

// TestADangerIsQuotedWhole gives dangers in the middle of long or spoken
// sentences: the writer must see what is meant. Common practice, no published
// source.
func TestADangerIsQuotedWhole(t *testing.T) {
	for _, c := range []struct {
		text, quote string
	}{
		{"I made the gravy first and then the peas and my uncle carved it and the chicken was still a bit pink inside but we were hungry and ate it.", "the chicken was still a bit pink inside"},
		{"We sliced the raw turkey and then I gave the board a quick wipe and did the cucumber on it.", "gave the board a quick wipe"},
		{"I been up in the night with a bad belly and on the loo most of the morning but I still cooked.", "bad belly"},
	} {
		qs := ask(t, Learner, 1, c.text)
		require.Len(t, qs, 1, c.text)
		require.NotEmpty(t, qs[0].Danger, c.text)
		require.Len(t, qs[0].Quotes, 1, qs[0].Text)
		assert.Contains(t, qs[0].Quotes[0], c.quote)
		assert.Contains(t, c.text, qs[0].Quotes[0])
	}
}

func TestATitleThatNamesADayIsNoDish(t *testing.T) {
	a, lex := shared(t)
	for title, want := range map[string]bool{"Curry night": false, "Cooking homework": false, "Chilli practical": false, "Tomato soup": true, "Sunday roast": true} {
		r := a.Read(Input{Text: "We ate at six.", Title: title}, Brief{Dish: lex.General()})
		named := false
		for _, q := range r.Questions {
			named = named || strings.Contains(q.Text, withinSentence(strings.Fields(title)))
		}
		assert.Equal(t, want, named, title)
	}
}

// TestASlipIsNotAskedWhatItWasFor rules out a purpose for what went amiss, and
// for another's view.
func TestASlipIsNotAskedWhatItWasFor(t *testing.T) {
	for _, text := range []string{"We ran out of butter.", "I ran out of flour", "It was rubbery, I think it had too long."} {
		for _, q := range ask(t, Learner, 0, text) {
			assert.NotEqual(t, Reason, q.Step, "%s, asked of %q", q.Text, text)
		}
	}
	for _, q := range ask(t, Learner, 0, "My cousin said tidy. My aunt said the taste was odd.") {
		assert.Empty(t, q.Quotes, q.Text)
	}
}

// TestASmellThatWentSomewhereIsTold keeps the question about the smell from a
// text that tells where the smell went.
func TestASmellThatWentSomewhereIsTold(t *testing.T) {
	for _, text := range []string{"Cloves all up the stairs.", "Garlic right down the corridor.", "The fish stank."} {
		for _, q := range ask(t, Learner, 0, text) {
			assert.False(t, q.Area == lexicon.Aroma && q.Step == Said, "%s, asked of %q", q.Text, text)
		}
	}
}

// TestADeniedWordIsQuotedWithItsDenial keeps a question from saying the opposite
// of what was written.
func TestADeniedWordIsQuotedWithItsDenial(t *testing.T) {
	for text, want := range map[string]string{
		"The shortbreads weren't very good.": "“weren't very good”",
		"It was not that nice.":              "“not that nice”",
		"Not my best one.":                   "“Not my best”",
		"The soup was good.":                 "“good”",
	} {
		all := ""
		for _, q := range ask(t, Learner, 0, text) {
			all += q.Text + "\n"
		}
		assert.Contains(t, all, want, text)
	}
}

// TestAListOfStepsShowsTheirOrder keeps the question in what order the jobs were done
// from a text that lists them.
func TestAListOfStepsShowsTheirOrder(t *testing.T) {
	asked := func(text string) bool {
		for _, q := range ask(t, Learner, 0, text) {
			if q.Area == lexicon.Organisation {
				return true
			}
		}
		return false
	}
	assert.True(t, asked("It was green and tasted salty."))
	for _, mark := range []string{"- ", "• ", "1. ", "2) "} {
		assert.False(t, asked(mark+"soaked the bulgur\n"+mark+"chopped parsley\n"+mark+"lemon and oil\n\nIt was green and tasted salty."), mark)
	}
}

// TestANoteThatSetsOneWayAgainstAnotherIsAChange keeps the question what to change
// from a text that tells it without a verb.
func TestANoteThatSetsOneWayAgainstAnotherIsAChange(t *testing.T) {
	for text, want := range map[string]bool{
		"The parsnips were burnt. Honey on at the end not the start!!": false,
		"The parsnips were burnt. It was not the start of the week.":   true,
		"The mayo went oily. Wait for them to cool.":                   false,
		"The mayo went oily. Open tins first.":                         false,
		"The mayo went oily. Wait was long.":                           true,
		"The bacon was in big lumps so cut finer.":                     false,
		"i wuld toste the crums first.":                                false,
	} {
		asked := false
		for _, q := range ask(t, Learner, 0, text) {
			asked = asked || q.Area == lexicon.Improvement
		}
		assert.Equal(t, want, asked, text)
	}
}

// TestAQuestionAsksOfOneMoment: the sheet names two moments at which to look, a
// question asks of one.
func TestAQuestionAsksOfOneMoment(t *testing.T) {
	for moment, want := range map[string]string{
		"when the food is done and as you serve it":    "when the food is done",
		"when you cut into the food and chew":          "when you cut into the food",
		"when you bite through edge and middle":        "when you bite through edge and middle",
		"while the food cooks and when you serve it":   "while the food cooks",
		"when you lift the lid":                        "when you lift the lid",
		"when you mix the bowl and bring a spoon near": "when you mix the bowl",
	} {
		assert.Equal(t, want, oneMoment(moment))
	}
}

// TestWhoSawOnlyTheEndIsNotAskedWhatWasDone: an adult who was elsewhere can speak of
// the dish and of the kitchen, not of the work.
func TestWhoSawOnlyTheEndIsNotAskedWhatWasDone(t *testing.T) {
	for text, want := range map[string]bool{
		"Busy night so only saw the end of it. The rice was stodgy.":                false,
		"I wasn't there for most of it. The rice was stodgy.":                       false,
		"I was at work. The rice was stodgy.":                                       false,
		"I got home when it was on the plates. The rice was stodgy.":                false,
		"I was at the sink next to her. The rice was stodgy.":                       true,
		"She was out of the kitchen once. The rice was stodgy.":                     true,
		"I only saw one thing that worried me, his cuff. The rice was stodgy.":      true,
		"He only got the rice on at six and I was on hand. The rice was stodgy.":    true,
		"I did not see any mess. The rice was stodgy, and the sauce was thin.":      true,
		"We were both at the table by seven and the rice was stodgy, he stirred it": true,
	} {
		asked := false
		for _, q := range ask(t, Adult, 0, text) {
			asked = asked || contains(workAreas(), q.Area) || q.Step == Reason
		}
		assert.Equal(t, want, asked, text)
	}
}

// TestAJudgementOfSomethingElseIsNotAskedAbout: of the cook's skill, of food that was
// tried for being off, of one line of a list.
func TestAJudgementOfSomethingElseIsNotAskedAbout(t *testing.T) {
	for text, want := range map[string]bool{
		"I want to get better at flipping.":                       false,
		"Next time I would do it better.":                         true,
		"The chicken was left over but it smelt ok.":              false,
		"It smelt lovely.":                                        true,
		"Sauce: passata, garlic and oregano, fine.":               false,
		"Sauce: fine.":                                            true,
		"How it went: Fine mostly.":                               false,
		"- sauce: passata, garlic and oregano, fine\n- dough: ok": true,
	} {
		asked := false
		for _, q := range ask(t, Learner, 0, text) {
			asked = asked || q.Step == Detail && len(q.Quotes) > 0
		}
		assert.Equal(t, want, asked, text)
	}
}

// TestWhatNobodyMadeIsNotAskedWhy: a likeness, a look or a taste with what led to it
// beside it, a chore, or two things at once bring no question for a reason.
func TestWhatNobodyMadeIsNotAskedWhy(t *testing.T) {
	for text, want := range map[string]bool{
		"I rested the batter in the fridge an hour. We had it with jam.":       true,
		"I cut the carrot in sticks. We had it with jam.":                      false,
		"I scored the skin and they stayed whole. We had it with jam.":         false,
		"Onions sliced thin, I looked silly. We had it with jam.":              false,
		"The crumb was springy. We had it with jam.":                           true,
		"Lovely springy crumb. We had it with jam.":                            false,
		"Three eggs went in and the crumb was springy. We had it with jam.":    false,
		"I washed my hands with hot soap. We had it with jam.":                 true,
		"I swept up all the sugar with a brush. We had it with jam.":           false,
		"I asked about nuts first, nobody has allergies. We had it with jam.":  false,
		"I read the list and felt ill. We had it with jam.":                    false,
		"I weighed everything into bowls. We had it with jam.":                 true,
		"It looked like a bright dinosaur. It looked dark. We had it with jam": false,
		"Pale with dark red streaks. We had it with jam.":                      false,
		"It smelt smoky. We had it with jam.":                                  false,
		"I overmixed it. We had it with jam.":                                  false,
		"It was slightly under-seasoned. We had it with jam.":                  false,
		"It sticks in your teeth. We had it with jam.":                         false,
		"The bottom was soggy. I guess that was the tin.":                      false,
	} {
		var asked []string
		for _, q := range ask(t, Learner, 0, "It tasted of nutmeg. It tasted of lemon. "+text) {
			if q.Step == Reason {
				asked = append(asked, q.Text)
			}
		}
		assert.Equal(t, want, len(asked) > 0, "%s: %s", text, asked)
	}
}

// TestTheFoodThatWasJudgedIsAskedAbout: a judgement of a part is not asked about as if
// it were of the dish, and what is supposed, or only sounds so, is not asked about.
func TestTheFoodThatWasJudgedIsAskedAbout(t *testing.T) {
	for text, want := range map[string]string{
		"I used a big nozzle. The dip was gorgeous.":                       "dip",
		"I used a big nozzle. It was gorgeous.":                            "“gorgeous”",
		"It was gorgeous. Stuck to the pan a bit.":                         "“gorgeous”",
		"It was gorgeous. Soft and lemony.":                                "",
		"It would be a winner.":                                            "",
		"It smelt amazing, like holidays.":                                 "",
		"I put chocolate in at the end which sounds weird.":                "",
		"It still tasted good. They were soft and toffee flavoured.":       "",
		"It still tasted good. They were soft and we ate them in the yard": "“good”",
	} {
		got := ""
		for _, q := range ask(t, Learner, 0, text) {
			if q.Step == Detail && len(q.Quotes) > 0 {
				got = q.Text
			}
		}
		assert.Equal(t, want == "", got == "", "%s: %s", text, got)
		assert.Contains(t, got, want, text)
	}
}

// TestWhoDidNotEatIsNotAskedForTheTaste: a dish that was left to others.
func TestWhoDidNotEatIsNotAskedForTheTaste(t *testing.T) {
	for text, want := range map[string]bool{
		"I don't like fish much. It was golden.":      false,
		"My brother ate mine. It was golden.":         false,
		"I never tried it. It was golden.":            false,
		"I hate salmon. It was golden.":               false,
		"I don't like washing up. It was golden.":     true,
		"My brother ate his. It was golden.":          true,
		"I did not try to turn them. It was golden.":  true,
		"I do not like to wait, but it was golden.":   true,
		"He does not like fish much. It was golden.":  true,
		"I didn't eat with my hands. It went golden.": true,
	} {
		asked := false
		for _, q := range ask(t, Learner, 0, text) {
			asked = asked || q.Area == lexicon.Taste || q.Area == lexicon.Texture
		}
		assert.Equal(t, want, asked, text)
	}
}

// TestASaladMayHurtNobody: where nothing hot or sharp is told of, the question about
// safety leaves open whether there was anything.
func TestASaladMayHurtNobody(t *testing.T) {
	for text, open := range map[string]bool{
		"I mashed the chickpeas with lemon. It smelt fresh and was grainy, sour and yellow.": true,
		"I mashed the tuna. It smelt salty and was smooth, sour and pink.":                   true,
	} {
		met := false
		for _, q := range ask(t, Learner, 0, text) {
			if q.Area == lexicon.Safety {
				met = true
				assert.Equal(t, open, strings.Contains(q.Text, "if any"), "%s: %s", text, q.Text)
			}
		}
		assert.True(t, met, text)
	}
}

// TestSalmonIsPinkWhereverItIsNamed: the fish is named at the start of a text, its colour
// at the end. Salmon is pink by nature: common practice, no published source.
func TestSalmonIsPinkWhereverItIsNamed(t *testing.T) {
	for text, want := range map[string]int{
		"I made salmon cakes with potato. My mash was wet. I chilled them. I used crumbs. They were fried for 4 mins. One broke. Inside was soft and pink.":     0,
		"I made chicken cakes with potato. My mash was wet. I chilled them. I used crumbs. They were fried for 4 mins. One broke. The chicken inside was pink.": 1,
	} {
		a, lex := shared(t)
		assert.Len(t, a.reading(Input{Text: text, Role: Learner}, Brief{Dish: lex.General()}).cautions, want, text)
	}
}
