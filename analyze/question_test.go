package analyze

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"
	"unicode"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/lexicon"
)

// ask reads a text for any dish and returns its questions, all of them when n
// is 0.
func ask(tb testing.TB, role Role, n int, text string) []Question {
	tb.Helper()
	a, lex := shared(tb)
	return a.Read(Input{Text: text, Role: role}, Brief{Dish: lex.General(), Questions: n}).Questions
}

// outsideQuotes is a question without what it quotes.
func outsideQuotes(q string) string {
	var b strings.Builder
	depth := 0
	for _, r := range q {
		switch {
		case r == '“':
			depth++
			b.WriteString(" . ")
		case r == '”':
			depth = max(0, depth-1)
		case depth == 0:
			b.WriteRune(r)
		}
	}
	return b.String()
}

// plainWords divides a text without the help of the tokenizer under test.
func plainWords(s string) []string {
	return strings.FieldsFunc(strings.ToLower(s), func(r rune) bool { return !unicode.IsLetter(r) && r != '\'' })
}

// sensoryForms returns every form of every word of the lists, by first word.
func sensoryForms(tb testing.TB) map[string][][]string {
	tb.Helper()
	_, lex := shared(tb)
	out := map[string][][]string{}
	n := 0
	add := func(form string) {
		if w := plainWords(form); len(w) > 0 {
			out[w[0]] = append(out[w[0]], w)
			n++
		}
	}
	for _, w := range lex.Words() {
		add(w.Word)
		for _, f := range w.Forms {
			add(f)
		}
		for _, f := range w.Graded() {
			if lex.Reading.Nouns.Kind(f) == lexicon.NoKind { // "burner" is no form of burn
				add(f)
			}
		}
	}
	require.Greater(tb, n, 1000)
	return out
}

// leaked returns the sensory words and judging words of a question that stand
// outside its quotes and not in the text.
func leaked(forms map[string][][]string, vague func(string) bool, text, question string) []string {
	own := map[string]bool{}
	for _, w := range plainWords(text) {
		own[w] = true
	}
	var out []string
	words := plainWords(outsideQuotes(question))
	for i, w := range words {
		if vague(w) && !own[w] {
			out = append(out, w)
		}
		for _, form := range forms[w] {
			if i+len(form) > len(words) || !slices.Equal(words[i:i+len(form)], form) {
				continue
			}
			if slices.ContainsFunc(form, func(w string) bool { return !own[w] }) {
				out = append(out, strings.Join(form, " "))
			}
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// TestLeakedFindsLeaks tests the check that the tests below lean on.
func TestLeakedFindsLeaks(t *testing.T) {
	_, lex := shared(t)
	forms := sensoryForms(t)
	assert.Equal(t, []string{"crispy"}, leaked(forms, lex.Reading.IsVague, "It was nice.", "Was the top crispy?"))
	assert.Equal(t, []string{"delicious"}, leaked(forms, lex.Reading.IsVague, "It was nice.", "Was it delicious?"))
	assert.Empty(t, leaked(forms, lex.Reading.IsVague, "It was crispy.", "What made the top crispy?"))
	assert.Empty(t, leaked(forms, lex.Reading.IsVague, "It was nice.", "You wrote “crispy”. Why?"))
}

// written builds a text that makes sense, from a seed: sentences as learners
// and adults write them, with their slips.
func written(rnd *rand.Rand, dish string) string {
	parts := []string{
		"I made " + dish + ".", "It was nice.", "It was really good", "the taste was lovely.", "The texture was perfect!", "It looked amazing.",
		"I worked safely.", "I worked hygienically and safely.", "i washed my hands and wiped the side down so that germs didnt get in.", "I was organised.",
		"I stirred it slowly with a wooden spoon.", "The top was golden and crisp because I left it in longer.", "It smelt of cinnamon.", "Next time I will do it better.",
		"Next time I'd use less sugar.", "My mum helped me with the oven.", "I did it all by myself.", "The inside was a bit dry.", "The chicken was still pink in the middle.",
		"I cut my finger on the grater.", "We left the rice out all night", "The sauce was thin, salty and smoky and it stuck to the bottom of the pan when I wasnt looking.",
		"Everyone said it was delicious.", "She did well.", "Well done!", "Her knife skills were good.", "I would suggest a bit more salt.", "The crust was ok", "It went well.",
		"Presentation was lovely.", "I chopped the onion into small dice and fried it until it was soft and then I added the garlic, ginger and cumin that my aunty gave me.",
		"It tasted “a bit funny”, my brother said.", "taste: 9/10", "- sweet\n- crunchy\n- warm", "Timing was bad.", "Great effort.", "The carrots were lovley and the smell was nice.",
	}
	var b strings.Builder
	for range 1 + rnd.IntN(9) {
		b.WriteString(parts[rnd.IntN(len(parts))])
		b.WriteString([]string{" ", "\n", " ", "  "}[rnd.IntN(4)])
	}
	return b.String()
}

// TestQuestionsNeverWriteForThem reads texts for every dish type in both roles.
func TestQuestionsNeverWriteForThem(t *testing.T) {
	a, lex := shared(t)
	forms := sensoryForms(t)
	rnd := rand.New(rand.NewPCG(5, 0x5ab0e))
	each := 6
	if testing.Short() {
		each = 2
	}
	asked, offered := 0, 0
	for _, d := range append(lex.Types(), lex.General()) {
		for _, dish := range append([]string{"", d.Title}, d.Dishes...) {
			for n := range each {
				text := written(rnd, dish)
				in := Input{Text: text, Title: dish, Role: []Role{Learner, Adult}[n%2]}
				brief := Brief{Dish: d}
				r := a.Read(in, brief)
				require.NoError(t, brokenPromises(in, brief, r), text)
				if openDanger(a, in, brief) {
					require.NotEmpty(t, r.Questions[0].Danger, "a danger comes first: %q", text)
				}
				for _, q := range r.Questions {
					asked++
					require.Empty(t, leaked(forms, lex.Reading.IsVague, text, q.Text), "%s, asked of %q", q.Text, text)
					requireReadable(t, q, text)
					if q.Look != "" {
						offered++
						if typical, _ := d.Typical(lexicon.Sense(q.Area)); len(typical) <= mostToCount {
							require.Contains(t, q.Look, fmt.Sprintf(" %d words", len(typical)), "%s: the count of the dish type", d.Name)
						} else {
							require.Contains(t, q.Look, "has many words", "%s: too many to count", d.Name)
						}
						require.NotContains(t, q.Look, "?")
						require.NotEqual(t, Reason, q.Step)
					}
				}
				for _, line := range r.Praise {
					require.Empty(t, leaked(forms, lex.Reading.IsVague, text, line), "%s, of %q", line, text)
				}
			}
		}
	}
	require.Greater(t, asked, 500)
	require.Greater(t, offered, 50)
}

// requireReadable holds a question to what a child of eleven reads at a glance.
func requireReadable(tb testing.TB, q Question, text string) {
	tb.Helper()
	require.LessOrEqual(tb, lexicon.Grade(q.Text), 6.0, "%s, asked of %q", q.Text, text)
	require.LessOrEqual(tb, lexicon.Words(q.Text), 30, "%s, asked of %q", q.Text, text)
	require.Equal(tb, 1, strings.Count(outsideQuotes(q.Text), "?"), q.Text)
	require.True(tb, strings.HasSuffix(q.Text, "?"), q.Text)
}

func TestDangerComesFirst(t *testing.T) {
	dangers := map[string]string{
		"undercooked":   "The sauce was tasty. The chicken was still pink in the middle.",
		"injury":        "It was nice. I cut my finger on the grater.",
		"storage":       "We left the cooked rice out on the side all night. It was nice.",
		"cross-contact": "I chopped the raw chicken and then the lettuce on the same board. It was nice.",
		"raw-tasting":   "It was nice. I licked the bowl of raw cake batter.",
	}
	for kind, text := range dangers {
		for _, role := range []Role{Learner, Adult} {
			t.Run(kind+" "+string(role), func(t *testing.T) {
				r := ask(t, role, 3, text)
				require.NotEmpty(t, r)
				assert.Equal(t, kind, r[0].Danger)
				assert.NotZero(t, r[0].Sentence)
				if role == Learner {
					assert.Contains(t, r[0].Text, "adult")
				}
				for _, q := range r[1:] {
					assert.NotEqual(t, r[0].Sentence, q.Sentence, "the sentence of a danger is asked about once: %s", q.Text)
				}
			})
		}
	}
}

// TestDangerIsAskedAboutWhateverTheSentenceIsLike gives sentences that are
// hard to quote from.
func TestDangerIsAskedAboutWhateverTheSentenceIsLike(t *testing.T) {
	for _, text := range []string{
		"“I cut my finger” (on the grater)!",
		"Unfortunately immediately afterwards unintentionally I accidentally cut my finger unbelievably catastrophically.",
		"I\ncut\nmy\nfinger",
		"chicken: pink",
		strings.Repeat("incomprehensible ", 30) + "I burnt my hand " + strings.Repeat("extraordinarily ", 30),
	} {
		a, lex := shared(t)
		for _, role := range []Role{Learner, Adult} {
			r := a.Read(Input{Text: text, Role: role}, Brief{Dish: lex.General(), Questions: 1})
			if len(r.Cautions) > 0 {
				require.Len(t, r.Questions, 1, text)
				assert.Equal(t, r.Cautions[0].Kind, r.Questions[0].Danger, text)
				requireReadable(t, r.Questions[0], text)
			}
		}
	}
}

func TestOneDangerThenTheWriting(t *testing.T) {
	qs := ask(t, Learner, 0, "The chicken was still pink in the middle. I cut my finger on the grater. It was nice.")
	require.Greater(t, len(qs), 2)
	assert.Equal(t, "undercooked", qs[0].Danger)
	assert.Empty(t, qs[len(qs)-1].Danger)
}

func TestAreasBeforeAskingTwice(t *testing.T) {
	qs := ask(t, Learner, 3, "It was nice. The smell was lovely and the taste was good. It looked great. I worked safely.")
	seen := map[lexicon.Area]bool{}
	for _, q := range qs {
		assert.False(t, seen[q.Area], "%s is asked about twice: %s", q.Area, q.Text)
		seen[q.Area] = true
	}
	assert.Len(t, qs, 3)
}

func TestBareWordsBeforeMissingAreas(t *testing.T) {
	qs := ask(t, Learner, 1, "I washed my hands. The soup tasted nice.")
	require.Len(t, qs, 1)
	assert.Equal(t, lexicon.Taste, qs[0].Area)
	assert.Equal(t, []string{"nice"}, qs[0].Quotes)
}

func TestMostDevelopedAreaIsLeftInPeace(t *testing.T) {
	qs := ask(t, Learner, 0, "The top was golden. The middle was pale yellow. The edge was dark brown. I washed my hands.")
	require.NotEmpty(t, qs)
	for _, q := range qs {
		assert.NotEqual(t, lexicon.Appearance, q.Area, q.Text)
	}
}

// TestNothingAskedThatIsAnswered checks questions against the table of the
// same report: no step is asked for that some sentence reaches.
func TestNothingAskedThatIsAnswered(t *testing.T) {
	a, lex := shared(t)
	rnd := rand.New(rand.NewPCG(7, 0x5ab0e))
	for range 400 {
		text := written(rnd, "soup")
		r := a.Read(Input{Text: text}, Brief{Dish: lex.General()})
		for _, q := range r.Questions {
			if q.Danger == "" {
				require.False(t, r.Row(q.Area).Reached(q.Step), "%s, asked of %q", q.Text, text)
				require.True(t, r.Row(q.Area).Expected, "%s is not in the brief: %q", q.Area, text)
			}
		}
	}
}

// TestPraiseIsTrueByTheTable checks each line against the report it stands in.
func TestPraiseIsTrueByTheTable(t *testing.T) {
	a, lex := shared(t)
	rnd := rand.New(rand.NewPCG(8, 0x5ab0e))
	lines := 0
	for range 400 {
		text := written(rnd, "soup")
		r := a.Read(Input{Text: text}, Brief{Dish: lex.General()})
		require.LessOrEqual(t, len(r.Praise), 2)
		for _, line := range r.Praise {
			lines++
			quote := line[strings.Index(line, "“")+len("“") : strings.Index(line, "”")]
			require.Contains(t, text, quote)
			ok := false
			for step, areas := range lex.Reading.Wordings["praise"] {
				for area, list := range areas {
					if slices.Contains(list, strings.Replace(line, "“"+quote+"”", "{words}", 1)) {
						ok = ok || r.Row(lexicon.Area(area)).Reached(Step(step))
					}
				}
			}
			require.True(t, ok, "%s is not true of %q", line, text)
			for _, c := range r.Cautions {
				require.NotContains(t, c.Text, quote, "praise for a danger: %s", line)
			}
		}
	}
	require.Greater(t, lines, 200)
}

func TestAdultsAreAskedForTheirOwnBrief(t *testing.T) {
	r := readPlain(t, "") // learner
	for _, row := range r.Areas {
		assert.True(t, row.Expected, row.Area)
	}
	a, lex := shared(t)
	r = a.Read(Input{Text: "It was a soup.", Role: Adult}, Brief{Dish: lex.General()})
	var expected []lexicon.Area
	for _, row := range r.Areas {
		if row.Expected {
			expected = append(expected, row.Area)
		}
	}
	assert.Equal(t, []lexicon.Area{"hygiene", "safety", "organisation", "independence", "appearance", "taste", "texture"}, expected)
	for _, q := range r.Questions {
		assert.Contains(t, expected, q.Area, q.Text)
		if q.Area == lexicon.Appearance {
			assert.Contains(t, q.Text, "suggest", "a text without a suggestion is asked for one")
		}
	}
}

func TestSameTextSameQuestionsNoWordsTwice(t *testing.T) {
	text := "It was nice. The smell was lovely and the taste was good. It looked great. I worked safely. The filling was ok. The pastry was ok."
	first, again := ask(t, Learner, 0, text), ask(t, Learner, 0, text)
	assert.Equal(t, first, again)
	forms := map[string]bool{}
	for _, q := range first {
		assert.False(t, forms[q.form], "asked twice in the same words: %s", q.form)
		forms[q.form] = true
	}
}

// TestWordingsDifferFromTextToText rules out that every learner of a group
// reads the same questions.
func TestWordingsDifferFromTextToText(t *testing.T) {
	seen := map[string]bool{}
	for n := range 20 {
		qs := ask(t, Learner, 1, fmt.Sprintf("We ate at %d o'clock. It was nice.", n))
		require.Len(t, qs, 1)
		seen[qs[0].Text] = true
	}
	assert.Greater(t, len(seen), 4)
}

func TestJudgementsOfTheWorkAndOfTheFood(t *testing.T) {
	work := ask(t, Learner, 1, "It went well.")
	require.Len(t, work, 1)
	assert.Equal(t, "work", work[0].list, work[0].Text)
	food := ask(t, Learner, 1, "The crust was nice.")
	require.Len(t, food, 1)
	assert.Equal(t, "vague", food[0].list, food[0].Text)
	next := ask(t, Learner, 1, "Next time I would do it better.")
	require.Len(t, next, 1)
	assert.Equal(t, lexicon.Improvement, next[0].Area, next[0].Text)
}

// TestACauseBesideIsNotAskedFor keeps the question why from a text that tells it
// in the next or the last sentence without a word that joins the two. Common
// practice, no published source.
func TestACauseBesideIsNotAskedFor(t *testing.T) {
	for text, asked := range map[string]bool{
		"The bottoms were soggy. We had them with chutney after a long walk on the beach.": true,
		"The sauce was lumpy. I tipped all the stock in.":                                  false,
		"Gran had opened the door. The middle was soggy.":                                  false,
		"The bottoms were soggy. Juice had run out of the plums.":                          false,
		"The gravy was watery.\nWhy: not sure, my pan was small.":                          false,
	} {
		var got bool
		for _, q := range ask(t, Learner, 0, "It tasted of nutmeg. It tasted of lemon. "+text) {
			got = got || q.Step == Reason && q.Area == lexicon.Texture
		}
		assert.Equal(t, asked, got, text)
	}
}

// TestTheBestIsNotAskedForWhereItIsNamed: what was best stands before the word.
func TestTheBestIsNotAskedForWhereItIsNamed(t *testing.T) {
	for text, asked := range map[string]bool{
		"Plaiting it was the best moment.": false,
		"It was the best.":                 true,
	} {
		var got bool
		for _, q := range ask(t, Learner, 0, text) {
			got = got || slices.Contains(q.Quotes, "best")
		}
		assert.Equal(t, asked, got, text)
	}
}

func TestEarlierDraftIsAskedOn(t *testing.T) {
	a, lex := shared(t)
	brief := Brief{Dish: lex.General(), Questions: 3}
	old := a.Read(Input{Text: "I made soup. It was nice. I worked safely."}, brief)
	require.Len(t, old.Questions, 3)
	brief.After = old
	for _, text := range []string{"I made soup. It was nice. I worked safely.", "I made soup. It was nice. I worked safely. Mum ate it."} {
		now := a.Read(Input{Text: text}, brief)
		require.NotEmpty(t, now.Questions)
		for _, q := range now.Questions {
			for _, before := range old.Questions {
				assert.NotEqual(t, before.Text, q.Text)
				assert.NotEqual(t, before.form, q.form)
				assert.False(t, before.Area == q.Area && before.Step == q.Step, "there are other things to ask before %s", q.Text)
			}
		}
	}
}

func TestDangerOfAnEarlierDraftIsNotAskedAgain(t *testing.T) {
	a, lex := shared(t)
	text := "The chicken was still pink in the middle. It was nice."
	brief := Brief{Dish: lex.General(), Questions: 3}
	brief.After = a.Read(Input{Text: text}, brief)
	r := a.Read(Input{Text: text}, brief)
	require.NotEmpty(t, r.Cautions, "the caution itself stays")
	for _, q := range r.Questions {
		assert.Empty(t, q.Danger, q.Text)
	}
}
