package corpus

import (
	"encoding/json"
	"fmt"
	"iter"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/analyze"
	"saywhy/analyze/perceptron"
	"saywhy/lexicon"
)

// groupReader is built once for all tests: it is never changed.
var groupReader = sync.OnceValues(func() (GroupReader, error) {
	lex, err := lexicon.Builtin()
	if err != nil {
		return GroupReader{}, err
	}
	tagger, err := perceptron.New()
	if err != nil {
		return GroupReader{}, err
	}
	return GroupReader{Lexicon: lex, Course: &lexicon.Course{}, Analyzer: analyze.New(lex, tagger), Ordered: Ordered{Workers: 4, Ahead: 4}}, nil
})

// group reads evaluations into a report.
func group(tb testing.TB, texts ...Evaluation) *GroupReport {
	tb.Helper()
	reader, err := groupReader()
	require.NoError(tb, err)
	r, err := reader.Read(tb.Context(), each(texts))
	require.NoError(tb, err)
	return r
}

func each(texts []Evaluation) iter.Seq2[Evaluation, error] {
	return func(yield func(Evaluation, error) bool) {
		for i, e := range texts {
			if e.Role == "" {
				e.Role = analyze.Learner
			}
			if e.Source == "" {
				e.Source = fmt.Sprintf("%s/%s %d.txt", e.Learner, e.Session, i)
			}
			if !yield(e, nil) {
				return
			}
		}
	}
}

func wrote(learner, session, text string) Evaluation {
	return Evaluation{Learner: learner, Session: session, Dish: "soda bread", Text: text}
}

func adult(learner, session, text string) Evaluation {
	e := wrote(learner, session, text)
	e.Role = analyze.Adult
	return e
}

// TestEveryDisagreementIsFound plants pairs of sentences in texts about the
// same dish. Which disagree is common sense, no published source.
func TestEveryDisagreementIsFound(t *testing.T) {
	disagree := []struct{ learner, adult string }{
		{"It was moist.", "The bread was dry."},
		{"The bread was dry and brown.", "It was lovely and moist."},
		{"The sauce was smooth.", "The sauce was lumpy, I thought."},
		{"The soup was thick because I left the lid off.", "The soup was thin."},
		{"It was soft.", "The bread was hard, we had to toast it."},
		{"The crust was crisp.", "The crust was soggy by the time we ate it."},
		{"The top was golden.", "The top was burnt."},
		{"The top was pale.", "The top was golden brown."},
		{"It tasted bland.", "It had a strong taste of cumin."},
		{"The curry was mild.", "The curry was very hot and spicy."},
		{"The sponge was light.", "The sponge was dense."},
		{"The meat was tender.", "The meat was tough."},
		{"The carrots were soft.", "The carrots were hard."},
		{"It was not dry.", "It was dry."},
		{"It was dry.", "It was not dry at all."},
		{"The topping was not soggy.", "The topping was soggy at the edge."},
		{"The custard was runny.", "The custard was set."},
		{"The loaf was well risen.", "The loaf was flat."},
		{"It tasted sweet.", "It tasted bitter."},
		{"The rice was fluffy.", "The rice was gluey."},
	}
	agree := []struct{ learner, adult string }{
		{"It was moist.", "The bread was moist."},
		{"It was moist.", "The crust was dry."}, // another part
		{"The crust was crisp and the inside was soft.", "The inside was soft."},
		{"The top was golden.", "The top was golden brown."},
		{"It was sweet.", "It was not too sweet."}, // a degree
		{"It was smooth.", "It might have been lumpy without the sieve."},
		{"It was soft.", "Last time it was hard."},
		{"The sauce went lumpy and then it was smooth.", "The sauce was smooth."},
		{"It was thick.", "It was creamy."},
		{"It was nice.", "It was horrible."}, // judged, not told
		{"Next time I would make it thinner.", "It was thick."},
		{"It tasted of cumin.", "It was spicy and warm."},
	}
	var texts []Evaluation
	for i, d := range append(slices.Clone(disagree), agree...) {
		name := fmt.Sprintf("L%02d", i)
		texts = append(texts,
			wrote(name, "02", "I washed my hands. "+d.learner),
			adult(name, "02", "Well organised. "+d.adult),
			adult(name, "03", "It was dry, lumpy, hard and burnt.")) // of another session
	}
	r := group(t, texts...)
	found := map[string]Disagreement{}
	for _, d := range r.Disagreements {
		found[d.Learner] = d
	}
	for i, d := range disagree {
		got, ok := found[fmt.Sprintf("L%02d", i)]
		if assert.True(t, ok, "not found: %q and %q", d.learner, d.adult) {
			assert.Equal(t, d.learner, got.Child.Sentence)
			assert.Equal(t, d.adult, got.Adult.Sentence)
		}
	}
	for i, d := range agree {
		assert.NotContains(t, found, fmt.Sprintf("L%02d", len(disagree)+i), "found: %q and %q", d.learner, d.adult)
	}
}

// TestEveryCautionIsListed: whatever a text by itself shows, and by kind, name
// and session, earlier drafts included.
func TestEveryCautionIsListed(t *testing.T) {
	dangers := []string{
		"The chicken was still pink in the middle but we ate it.",
		"I cut my finger with the knife and it bled.",
		"I burnt my arm on the oven shelf.",
	}
	var texts []Evaluation
	for i := range 60 {
		text := "It was nice. I washed my hands."
		if i%5 == 0 {
			text = dangers[i/5%3] + " It was nice."
		}
		texts = append(texts, wrote(fmt.Sprintf("L%02d", 59-i), fmt.Sprintf("%02d", i%4), text))
	}
	texts = append(texts, wrote("L59", "00", "A later text without any.")) // supersedes the one of i = 0
	r := group(t, texts...)
	require.Len(t, r.Cautions, 12)
	var order []string
	for _, c := range r.Cautions {
		assert.True(t, slices.Contains(dangers, c.Text), c.Text)
		assert.NotEmpty(t, c.Advice)
		assert.NotContains(t, c.Advice, "the adult who cooks with you", "the report is for the tutor")
		order = append(order, fmt.Sprintf("%02d %s", slices.Index(lexicon.CautionKinds(), c.Kind), c.Learner))
	}
	assert.True(t, slices.IsSorted(order), "%q", order)

	var look, other []string
	for _, p := range r.Learners.People {
		if p.Cautions > 0 {
			assert.Empty(t, other, "those with a caution stand first")
			look = append(look, p.Learner)
			continue
		}
		other = append(other, p.Learner)
	}
	assert.Len(t, look, 12)
	assert.True(t, slices.IsSorted(look) && slices.IsSorted(other), "then by name")
}

func TestTheLastTextOfASessionCounts(t *testing.T) {
	early, late := time.Date(2026, 3, 14, 0, 0, 0, 0, time.UTC), time.Date(2026, 3, 15, 0, 0, 0, 0, time.UTC)
	second := wrote("Ana", "02", "The bread was brown because I baked it for longer.")
	second.Date = late
	first := wrote("Ana", "02", "It was nice.")
	first.Date = early
	for _, order := range [][]Evaluation{{first, second}, {second, first}} {
		r := group(t, order...)
		assert.Equal(t, 1, r.Learners.Texts)
		assert.Equal(t, 1, r.Learners.Earlier)
		require.Len(t, r.Learners.People, 1)
		require.Len(t, r.Learners.People[0].Path, 1)
		assert.Equal(t, 10, r.Learners.People[0].Path[0].Words)
	}
	r := group(t, wrote("Ana", "02", "It was nice."), wrote("Ana", "02", "It was brown and dry."))
	assert.Equal(t, 5, r.Learners.People[0].Path[0].Words, "without dates the one that comes later")
}

func TestWhatTheGroupHasNotReached(t *testing.T) {
	var texts []Evaluation
	for i := range 9 { // 9 give no reason for texture, of which 6 describe it
		text := "It was nice."
		if i < 6 {
			text = "It was soft."
		}
		texts = append(texts, wrote(fmt.Sprint("L", i), "02", text))
	}
	texts = append(texts, wrote("M", "02", "It was soft because I took it out early."), wrote("N", "01", "It was nice."))
	r := group(t, texts...)
	require.Len(t, r.Learners.Sessions, 2)
	s := r.Learners.Sessions[1]
	assert.Equal(t, "02", s.Session)
	assert.Equal(t, 10, s.Texts)
	assert.Equal(t, []string{"N"}, s.Without)
	assert.Equal(t, []string{"soda bread"}, s.Dishes)
	texture := s.Areas[slices.Index(lexicon.Areas(), lexicon.Area("texture"))]
	assert.Equal(t, AreaCount{"texture", 10, 7, 7, 1}, texture)
	assert.Equal(t, 9, texture.Missing(analyze.Reason))
	assert.Equal(t, 3, texture.Missing(analyze.Said))

	require.Len(t, s.Teach, 3, "at most three")
	areas := map[lexicon.Area]bool{}
	for i, p := range s.Teach {
		assert.False(t, areas[p.Area], "each area once")
		areas[p.Area] = true
		assert.GreaterOrEqual(t, p.Missing, p.Stopped)
		if i > 0 {
			assert.GreaterOrEqual(t, s.Teach[i-1].Stopped, p.Stopped)
		}
	}
	assert.Empty(t, r.Learners.Sessions[0].Teach, "one text teaches nothing about a group")
}

// TestTeachCountsWhereTextsStop works the rule out by hand.
func TestTeachCountsWhereTextsStop(t *testing.T) {
	row := func(said, detail, reason bool) []analyze.AreaRow {
		return []analyze.AreaRow{{Area: "taste", Expected: true, Said: said, Detail: detail, Reason: reason}}
	}
	texts := []*entry{
		{rows: row(false, false, false)}, {rows: row(true, false, false)}, {rows: row(true, false, true)}, // a reason without detail stops at detail
		{rows: row(true, true, false)}, {rows: row(true, true, true)}, {rows: []analyze.AreaRow{{Area: "taste"}}}, // not asked for
	}
	counts := []AreaCount{{Area: "taste"}}
	for _, e := range texts {
		addAreas(counts, e.rows)
	}
	assert.Equal(t, AreaCount{"taste", 5, 4, 2, 2}, counts[0])
	assert.Equal(t, []TeachPoint{{Area: "taste", Step: analyze.Detail, Stopped: 2, Missing: 3, Texts: 5}}, teach(texts, counts))
}

func TestPlansAndTheNextEvaluation(t *testing.T) {
	r := group(t,
		wrote("Ana", "01", "The bread was pale. Next time I would leave it in the oven longer."),
		wrote("Ana", "03", "I left it in the oven longer and it was brown."),
		wrote("Ben", "01", "Next time I would leave it in the oven longer."),
		wrote("Ben", "02", "I chopped the onion. It was nice."),
		adult("Ben", "03", "He left it in the oven longer."), // no evaluation of his
		wrote("Cai", "01", "Next time I would leave it in the oven longer."),
		wrote("Dan", "01", "I held the knife so that it would not slip. It needed salt."), // no plan
	)
	assert.Equal(t, []KeptPlan{
		{"Ana", "01", "soda bread", "leave it in the oven longer", "03", true},
		{"Ben", "01", "soda bread", "leave it in the oven longer", "02", false},
		{"Cai", "01", "soda bread", "leave it in the oven longer", "", false},
	}, r.Plans)
}

func TestWordsOfTheGroup(t *testing.T) {
	r := group(t,
		wrote("Ana", "01", "It was Nice and nice. I stirred it for ages. It was crumbly."),
		wrote("Ben", "01", "It was nice because it was crumbly and brown."),
		adult("Ben", "01", "It was crumbly and dense."),
	)
	require.NotEmpty(t, r.Words.Vague)
	assert.Equal(t, VagueCount{"nice", 2, 1}, r.Words.Vague[0], "once a text, whatever its capitals")
	assert.Contains(t, r.Words.Sensory, SenseCount{"crumbly", "texture", 2})
	assert.Equal(t, []SenseCount{{"dense", "texture", 1}}, r.Words.AdultOnly)
	require.Len(t, r.Words.Unused, 4)
	for _, u := range r.Words.Unused {
		assert.NotContains(t, u.Words, "crumbly")
		assert.LessOrEqual(t, len(u.Words), u.Listed)
		assert.Equal(t, 2, u.Texts)
	}
}

func TestAdultsAreToldApart(t *testing.T) {
	r := group(t, wrote("Ana", "01", "It was nice."), adult("Ana", "01", "She washed her hands."))
	assert.Equal(t, 1, r.Learners.Texts)
	assert.Equal(t, 1, r.Adults.Texts)
	for _, c := range r.Adults.People[0].Areas {
		if c.Area == "improvement" || c.Area == "technique" || c.Area == "aroma" {
			assert.Zero(t, c.Texts, "%s is not asked of adults", c.Area)
		}
	}
}

// TestTheSameTextsGiveTheSameReport: byte for byte, and no list is null.
func TestTheSameTextsGiveTheSameReport(t *testing.T) {
	var texts []Evaluation
	for i := range 40 {
		texts = append(texts, wrote(fmt.Sprint("L", i%7), fmt.Sprintf("%02d", i%5), strings.Repeat("It was soft, crumbly, brown and nice. ", 1+i%3)))
	}
	first, err := json.Marshal(group(t, texts...))
	require.NoError(t, err)
	for range 3 {
		again, err := json.Marshal(group(t, texts...))
		require.NoError(t, err)
		require.Equal(t, string(first), string(again))
	}
	for _, r := range []*GroupReport{group(t, texts...), group(t)} {
		data, err := json.Marshal(r)
		require.NoError(t, err)
		assert.NotContains(t, string(data), "null")
	}
}

func TestUnknownDishIsReadAllTheSame(t *testing.T) {
	e := wrote("Ana", "01", "It was nice.")
	e.Dish = "xylophone"
	r := group(t, e)
	assert.Equal(t, 1, r.Learners.Texts)
	require.Len(t, r.Remarks, 1)
	assert.Contains(t, r.Remarks[0].Reason, "xylophone")
}

// TestOneDishInTwoSpellingsIsOne: a name with a capital is the same dish.
func TestOneDishInTwoSpellingsIsOne(t *testing.T) {
	assert.Equal(t, []string{"Leek soup", "dal"}, dishes([]*entry{{dish: "Leek soup"}, {dish: "dal"}, {dish: "leek soup"}}))
}
