package analyze

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/lexicon"
)

// tokensOf returns the tagged tokens of a text of one sentence.
func tokensOf(tb testing.TB, text string) []token {
	tb.Helper()
	a, lex := shared(tb)
	r := a.reading(Input{Text: text, Role: Learner}, Brief{Dish: lex.General()})
	require.Len(tb, r.sentences, 1, text)
	return r.sentences[0].tokens
}

// at returns the place of a word among tokens.
func at(tb testing.TB, tokens []token, word string) int {
	tb.Helper()
	for i := range tokens {
		if tokens[i].norm == word {
			return i
		}
	}
	require.Fail(tb, "no such word", word)
	return 0
}

func TestPieceIsShortAndWhole(t *testing.T) {
	for _, c := range []struct{ text, around, want string }{
		{"I tied my hair back.", "hair", "I tied my hair back"},
		{"I washed my hands and then I tied my hair back and put my apron on.", "hands", "I washed my hands"},
		{"and so I stirred it", "stirred", "I stirred it"},
		{"The cake had a flat top.", "flat", "The cake had a flat top"},
		{"It was crispy (on the outside) and dry.", "outside", "on the outside"},
		{"Gran said “it is crispy” and smiled.", "crispy", "it is crispy"},
		{"i stired it wiv a spoon", "spoon", "i stired it wiv a spoon"},
		{"The crust was golden, the middle pale.", "golden", "The crust was golden"},
	} {
		t.Run(c.text, func(t *testing.T) {
			tokens := tokensOf(t, c.text)
			i := at(t, tokens, c.around)
			assert.Equal(t, c.want, pieceAround(c.text, tokens, i, i+1))
		})
	}
}

// TestPieceOfLongSentences holds that a piece is exact, short, and about what
// it is meant to be about, wherever that stands.
func TestPieceOfLongSentences(t *testing.T) {
	text := "yesterday after school I chopped the big brown onions from my grandad's garden into really small dice on the green board with the sharp knife that mum gave me and fried them in butter and oil until they went soft and golden and smelt of toffee"
	tokens := tokensOf(t, text)
	found := 0
	for i := range tokens {
		q := pieceAround(text, tokens, i, i+1)
		if q == "" {
			continue
		}
		found++
		assert.Contains(t, text, q)
		assert.Contains(t, q, tokens[i].text)
		assert.LessOrEqual(t, len(strings.Fields(q)), maxQuote, q)
	}
	assert.Greater(t, found, len(tokens)/2)
}

func TestJudgedNoun(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{"The crust was nice.", "crust"},
		{"It had a lovely crust.", "crust"},
		{"The onions were good.", "onions"},
		{"It was nice.", ""},
		{"The crusst was nice.", ""}, // a slip would look like the question's own
		{"My effort was good.", ""},
	} {
		t.Run(c.text, func(t *testing.T) {
			a, lex := shared(t)
			r := a.reading(Input{Text: c.text, Role: Learner}, Brief{Dish: lex.General()})
			require.Len(t, r.sentences[0].vague, 1)
			assert.Equal(t, c.want, judgedNoun(r.sentences[0].tokens, &r.sentences[0].vague[0]))
		})
	}
}

// TestEveryWordingHoldsWithAnyQuote fills every wording with quotes of every
// sort: singular, plural, "it", misspelt, a fragment.
func TestEveryWordingHoldsWithAnyQuote(t *testing.T) {
	a, lex := shared(t)
	r := a.reading(Input{Text: "I made it.", Title: "fish cakes", Role: Learner}, Brief{Dish: lex.General()})
	quotes := []string{"it", "the crusts were lovley", "stirred", "i didnt burn it", "a bit", "well", "an egg on top", "10 mins", "so that no hair fell in the pan"}
	for section, groups := range lex.Reading.Wordings {
		if section == "look" {
			continue
		}
		for group, lists := range groups {
			for list, forms := range lists {
				for _, form := range forms {
					for _, quote := range quotes {
						w := newWording(a.words, r)
						text, ok := w.slots(form, &wish{group: group, quote: quote, noun: "onions"}, "fish cakes")
						if !ok {
							require.Contains(t, form, "{moment}", form)
							continue
						}
						require.NotContains(t, text, "{", form)
						require.NotContains(t, text, "  ", form)
						for _, bad := range []string{"a “", "an “", "the “", "your “", "“ ", " ”"} {
							require.NotContains(t, text, bad, "%s %s %s: no article fits every quote", section, group, list)
						}
						require.LessOrEqual(t, lexicon.Words(text), lexicon.MaxQuestionWords, text)
					}
				}
			}
		}
	}
}

func TestTitleWithOwnSlotsOrMarksIsLeftOut(t *testing.T) {
	a, lex := shared(t)
	for title, want := range map[string]string{
		"Leek and Potato Soup":           "leek and potato soup",
		"Leek and Lancashire cheese pie": "leek and Lancashire cheese pie",
		"Yorkshire Puddings":             "Yorkshire puddings",
		"VICTORIA SPONGE":                "Victoria sponge",
		"Tart from Leeds with leeks":     "tart from Leeds with leeks",
		"yorkshire puddings":             "yorkshire puddings", // as the writer has it
		"crispy chicken":                 "dish",               // a word the text lacks
		"{word}":                         "dish",
		"my “best” soup":                 "dish",
		"":                               "dish",
		"one two three four five six":    "dish",
	} {
		r := a.reading(Input{Text: "I made it.", Title: title, Role: Learner}, Brief{Dish: lex.General()})
		assert.Equal(t, want, newWording(a.words, r).title, title)
	}
}
