package analyze

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
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
		{Learner, "I burnt my hand on the tray and ran it under the cold tap.", treated},
		{Learner, "I cut my finger on the grater. Mum loved the soup.", ""},
		{Learner, "I cut my finger on the grater. I never told my mum.", ""},
		{Adult, "He burnt his hand on the tray. We ran it under the cold tap.", dealt},
		{Adult, "She cut her finger on the grater.", ""},
		{Adult, "She cut her finger on the grater. Next time hold it flat and go slower.", givenAdvice},
	} {
		a, lex := shared(t)
		r := a.reading(Input{Text: c.text, Role: c.role}, Brief{Dish: lex.General()})
		dangers := asking{a.words}.dangers(r)
		require.NotEmpty(t, dangers, c.text)
		assert.Equal(t, c.state, dangers[0].state, c.text)
	}
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
