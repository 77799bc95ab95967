package analyze

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func plansOf(tb testing.TB, text string) []Plan {
	tb.Helper()
	a, lex := shared(tb)
	return a.Plans(Input{Text: text}, Brief{Dish: lex.General()})
}

func TestPlansQuoteTheDeed(t *testing.T) {
	for text, want := range map[string]string{
		"It was nice. Next time I would leave it in for ten minutes more.": "leave it in for ten minutes more",
		"next week i will take the tin out sooner so its not dry":          "take the tin out sooner",
		"To improve I could chop the onions smaller.":                      "chop the onions smaller",
		"Next time I'd use less sugar and bake it 5 mins longer.":          "use less sugar",
		"More salt next time": "More salt next time",
	} {
		t.Run(text, func(t *testing.T) {
			plans := plansOf(t, text)
			require.NotEmpty(t, plans)
			assert.Equal(t, want, plans[0].Text)
			assert.Contains(t, text, plans[0].Text)
		})
	}
}

func TestNoPlanWithoutAChange(t *testing.T) {
	for _, text := range []string{"", "It was nice.", "Next time I will do it better.", "I chopped the onions."} {
		assert.Empty(t, plansOf(t, text), text)
	}
}

func TestPlanOfLastTimeIsAskedFirst(t *testing.T) {
	a, lex := shared(t)
	brief := Brief{Dish: lex.General(), Questions: 3, Last: plansOf(t, "The cake was dry. Next time I will take the tin out sooner.")}
	for _, c := range []struct {
		name, text string
		asked      bool
	}{
		{"not spoken of", "I made soup. It was nice.", true},
		{"spoken of in other words", "I made buns. I took the tin out at ten minutes, sooner than with the cake. It was nice.", false},
		{"spoken of over two sentences", "I watched the tin. After ten minutes I took it out. It was nice.", false},
		{"looked back at", "It was nice. Last time I planned something and I did it.", false},
		{"one word in common", "I greased the tin. It was nice.", true},
	} {
		t.Run(c.name, func(t *testing.T) {
			r := a.Read(Input{Text: c.text}, brief)
			require.NotEmpty(t, r.Questions)
			first := r.Questions[0]
			if !c.asked {
				assert.NotContains(t, first.Text, "take the tin out sooner")
				return
			}
			assert.Contains(t, first.Text, "“take the tin out sooner”")
			assert.Empty(t, first.Quotes, "quotes are words of this text")
			assert.Zero(t, first.Sentence)
			requireReadable(t, first, c.text)
			for _, q := range r.Questions[1:] {
				assert.NotContains(t, q.Text, "take the tin out sooner")
			}
		})
	}
}

func TestDangerComesBeforeAPlan(t *testing.T) {
	a, lex := shared(t)
	r := a.Read(Input{Text: "The chicken was still pink in the middle."}, Brief{Dish: lex.General(), Questions: 3, Last: plansOf(t, "Next time I will take the tin out sooner.")})
	require.Greater(t, len(r.Questions), 1)
	assert.Equal(t, "undercooked", r.Questions[0].Danger)
	assert.Contains(t, r.Questions[1].Text, "take the tin out sooner")
}
