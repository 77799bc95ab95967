package analyze

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/lexicon"
)

// TestAnAreaIsAskedAboutAtAJobOfTheWritersOwn: what the text leaves out is asked
// for where it would come in, in the writer's words; where no job suits, of the
// dish as a whole.
func TestAnAreaIsAskedAboutAtAJobOfTheWritersOwn(t *testing.T) {
	for _, c := range []struct {
		area  lexicon.Area
		role  Role
		quote string // "" where the dish as a whole is asked about
		text  string
	}{
		{lexicon.Aroma, Learner, "I fried the onions in butter", "I fried the onions in butter. The soup was thick and tasted salty. It was green."},
		{lexicon.Aroma, Learner, "", "I used a frying pan and baking paper. The pie was crisp and tasted salty. It was golden."},
		{lexicon.Aroma, Learner, "", "When I baked it, the pie got big. It was crisp and tasted salty. It was golden."},
		{lexicon.Aroma, Learner, "", "It did not set so we had toast. The jam was thick and tasted sweet. It was purple."},
		{lexicon.Aroma, Learner, "", "The filling was mashed potato, fried onion and leek. It was thick and tasted salty. It was yellow."},
		{lexicon.Aroma, Learner, "", "We fried them and two of them split. The pie was thick and tasted salty. It was yellow."},
		{lexicon.Aroma, Learner, "I toasted the seeds", "I toasted the seeds. The salad was crisp and tasted salty. It was green."},
		{lexicon.Aroma, Learner, "", "I could have cut it small and fried it longer. The hash was crisp and tasted salty. It was brown."},
		{lexicon.Aroma, Learner, "", "I put potato and fried onion inside. The pie was crisp and tasted salty. It was yellow."},
		{lexicon.Safety, Learner, "I drained the potatoes", "I drained the potatoes. It smelt of butter and looked yellow. It tasted salty and was smooth."},
		{lexicon.Safety, Learner, "", "Chilli was served separately, chopped in yoghurt. It smelt of butter and looked yellow. It tasted salty and was smooth."},
		{lexicon.Safety, Learner, "", "I cut the cake open. It smelt of lemon and looked yellow. It tasted sweet and was soft."},
		{lexicon.Safety, Learner, "", "I soaked the slices in cold water. It smelt of butter and looked yellow. It tasted salty and was smooth."},
		{lexicon.Safety, Learner, "", "We boiled the jars first. It smelt of butter and looked yellow. It tasted salty and was smooth."},
		{lexicon.Safety, Learner, "", "I peeled the boiled eggs. It smelt of butter and looked yellow. It tasted salty and was smooth."},
		{lexicon.Safety, Learner, "", "Next time I chop coriander also. It smelt of butter and looked yellow. It tasted salty and was smooth."},
		{lexicon.Safety, Adult, "", "Beans boiled hard for well over ten minutes. They smelt of butter and looked yellow. They tasted salty."},
		{lexicon.Hygiene, Learner, "", "I whisked it into the eggs. It smelt of butter and looked yellow. It tasted salty and was smooth."},
		{lexicon.Hygiene, Learner, "I cracked the eggs into a bowl", "I cracked the eggs into a bowl. It smelt of butter and looked yellow. It tasted salty and was smooth."},
		{lexicon.Hygiene, Learner, "", "I boiled the eggs with salt. It smelt of butter and looked yellow. It tasted salty and was smooth."},
		{lexicon.Improvement, Learner, "The bottom was a bit soggy", "The bottom was a bit soggy because the juice ran out. It smelt of butter and looked yellow."},
		{lexicon.Improvement, Learner, "", "The bottom was crisp and not soggy. It smelt of butter and looked yellow."},
		{lexicon.Safety, Adult, "She fried the strips", "She fried the strips. They looked brown and tasted salty. They were crisp."},
	} {
		var met bool
		for _, q := range ask(t, c.role, 0, c.text) {
			if q.Area != c.area || q.Step != Said || q.Danger != "" {
				continue
			}
			met = true
			if c.quote == "" {
				assert.Empty(t, q.Quotes, "%s: %s", c.text, q.Text)
				continue
			}
			if assert.Equal(t, []string{c.quote}, q.Quotes, "%s: %s", c.text, q.Text) {
				assert.Contains(t, q.Text, "“"+c.quote+"”")
				assert.Equal(t, 1+strings.Count(c.text[:strings.Index(c.text, c.quote)], ". "), q.Sentence)
			}
		}
		require.True(t, met, "%s is not asked about: %s", c.area, c.text)
	}
}

// TestOneSentenceIsNotQuotedTwiceForWhatIsMissing: two areas that one job could
// stand for are asked about at two jobs, or at none.
func TestOneSentenceIsNotQuotedTwiceForWhatIsMissing(t *testing.T) {
	quoted := map[int]int{}
	for _, q := range ask(t, Learner, 0, "I fried the chicken in oil. It was golden and crisp. It tasted salty.") {
		if q.Step == Said && len(q.Quotes) > 0 {
			quoted[q.Sentence]++
		}
	}
	assert.Equal(t, map[int]int{1: 1}, quoted)
}

// TestNobodyIsAskedWhyTheyChoppedAnOnion keeps the question what a step does to
// the food from what explains itself, from a list of steps and from what was
// only imagined.
func TestNobodyIsAskedWhyTheyChoppedAnOnion(t *testing.T) {
	for text, want := range map[string]string{
		"I chopped an onion. I simmered the lentils.":                      "I simmered the lentils",
		"I chopped an onion.":                                              "",
		"I strained and mixed and simmered the lentils. I fried the peas.": "I fried the peas",
		"I could have peeled it and simmered it longer. I fried the peas.": "I fried the peas",
	} {
		a, lex := shared(t)
		r := a.reading(Input{Text: text, Role: Learner}, Brief{Dish: lex.General()})
		var got string
		for i := range r.sentences {
			if got == "" {
				got = asking{a.words}.toExplain(r, &r.sentences[i], lexicon.Technique)
			}
		}
		assert.Equal(t, want, got, text)
	}
}
