package analyze

import (
	"encoding/json"
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/lexicon"
)

func compared(tb testing.TB, before, after string) *Comparison {
	tb.Helper()
	a, lex := shared(tb)
	brief := Brief{Dish: lex.General(), Questions: 3}
	return Compare(a.Read(Input{Text: before}, brief), a.Read(Input{Text: after}, brief))
}

func TestCompareSteps(t *testing.T) {
	c := compared(t, "I made soup. I worked safely.", "I made soup. I worked safely by using oven gloves so that I did not burn my hands. It was thick.")
	assert.Contains(t, c.Reached, StepReached{lexicon.Safety, Detail})
	assert.Contains(t, c.Reached, StepReached{lexicon.Safety, Reason})
	assert.Contains(t, c.Reached, StepReached{lexicon.Texture, Said})
	assert.NotContains(t, c.Reached, StepReached{lexicon.Safety, Said})
	assert.Empty(t, c.Lost)
	back := compared(t, "It was thick.", "I made soup.")
	assert.Contains(t, back.Lost, StepReached{lexicon.Texture, Said})
}

func TestCompareVagueWords(t *testing.T) {
	c := compared(t,
		"The soup tasted nice. The smell was lovely. The crust was good.",
		"The soup tasted nice, salty and a bit smoky. The smell was of cumin. The crust was good. Everything was amazing.")
	assert.Equal(t, []VagueFate{
		{Text: "nice", Fate: FateBacked, Old: 1, New: 1},
		{Text: "lovely", Fate: FateGone, Old: 2},
		{Text: "good", Fate: FateStill, Old: 3, New: 3},
		{Text: "amazing", Fate: FateNew, New: 4},
	}, c.Vague)
}

func TestCompareQuestions(t *testing.T) {
	before := "I made soup. It tasted nice. The chicken was still pink in the middle."
	a, lex := shared(t)
	brief := Brief{Dish: lex.General(), Questions: 0}
	old := a.Read(Input{Text: before}, brief)
	same := Compare(old, a.Read(Input{Text: before}, brief))
	require.Len(t, same.Questions, len(old.Questions))
	for _, q := range same.Questions {
		assert.Equal(t, FateOpen, q.Fate, q.Text)
	}
	now := Compare(old, a.Read(Input{Text: "I made soup. It tasted nice, salty and smoky. Mum checked the chicken was white right through."}, brief))
	fates := map[string]Fate{}
	for _, q := range now.Questions {
		fates[q.Danger+string(q.Area)+string(q.Step)] = q.Fate
	}
	assert.Equal(t, FateGone, fates["undercookedhygienesaid"])
	assert.Equal(t, FateAnswered, fates["tastedetail"])
	assert.Equal(t, FateOpen, fates["aromasaid"])
}

// pairsOf compares two lists of sentences by place: "2>1" for old 2 and new 1,
// "*" changed, "~" moved.
func pairsOf(before, after []string) string {
	var out []string
	for _, p := range pairSentences(before, after) {
		s := fmt.Sprintf("%d>%d", p.Old, p.New)
		if p.Changed {
			s += "*"
		}
		if p.Moved {
			s += "~"
		}
		out = append(out, s)
	}
	return strings.Join(out, " ")
}

func TestPairSentences(t *testing.T) {
	a, b, c, d := "I washed my hands.", "The dough was sticky.", "Next time I will weigh the flour.", "It smelt of yeast."
	for _, x := range []struct {
		name          string
		before, after []string
		want          string
	}{
		{"the same", []string{a, b, c}, []string{a, b, c}, "1>1 2>2 3>3"},
		{"nothing", nil, nil, ""},
		{"all new", nil, []string{a}, "0>1"},
		{"all gone", []string{a}, nil, "1>0"},
		{"one put in", []string{a, c}, []string{a, b, c}, "1>1 0>2 2>3"},
		{"one taken out", []string{a, b, c}, []string{a, c}, "1>1 2>0 3>2"},
		{"capitals and marks are no change", []string{a}, []string{"i washed my hands!!"}, "1>1"},
		{"one moved to the end", []string{a, b, c, d}, []string{b, c, d, a}, "2>1 3>2 4>3 1>4~"},
		{"one grew", []string{a, b}, []string{a, "The dough was sticky and grey because I put in too much water."}, "1>1 2>2*"},
		{"one grew and moved", []string{b, a, d}, []string{a, d, "The dough was sticky and grey because I put in too much water."}, "2>1 3>2 1>3*~"},
		{"one reworded between neighbours", []string{a, "It was nice.", c}, []string{a, "It was thin and salty.", c}, "1>1 2>2* 3>3"},
		{"an answer is no rewording", []string{a, "It was nice.", c}, []string{a, "Grey mould grew overnight.", c}, "1>1 2>0 0>2 3>3"},
		{"twice the same", []string{a, a}, []string{a, a, a}, "1>1 2>2 0>3"},
		{"one split in two", []string{"The dough was sticky and the crust was pale."}, []string{"The dough was sticky.", "The crust was pale."}, "1>1* 0>2"},
	} {
		t.Run(x.name, func(t *testing.T) { assert.Equal(t, x.want, pairsOf(x.before, x.after)) })
	}
}

// TestPairSentencesPromises holds for any drafts: every sentence stands once,
// the new ones in order, and the same input gives the same pairs.
func TestPairSentencesPromises(t *testing.T) {
	rnd := rand.New(rand.NewPCG(9, 0x5ab0e))
	words := []string{"dough", "crust", "the", "it", "was", "nice", "sticky", "I", "stirred", "pale", "because"}
	draft := func() []string {
		var out []string
		for range rnd.IntN(12) {
			var s []string
			for range rnd.IntN(7) {
				s = append(s, words[rnd.IntN(len(words))])
			}
			out = append(out, strings.Join(s, " "))
		}
		return out
	}
	for range 2000 {
		before, after := draft(), draft()
		pairs := pairSentences(before, after)
		require.Equal(t, pairs, pairSentences(before, after))
		old, next := map[int]bool{}, 1
		for _, p := range pairs {
			if p.New > 0 {
				require.Equal(t, next, p.New, "%q %q", before, after)
				next++
			}
			if p.Old > 0 {
				require.False(t, old[p.Old])
				old[p.Old] = true
			}
			require.False(t, (p.Old == 0 || p.New == 0) && (p.Changed || p.Moved))
		}
		require.Len(t, old, len(before))
		require.Equal(t, len(after)+1, next)
	}
}

// TestPairSentencesOfBigDrafts gives matching what would be slow if it held
// every sentence against every other. Nothing asserts the time; -v logs it.
func TestPairSentencesOfBigDrafts(t *testing.T) {
	const n = 40_000
	drafts := map[string]func(i int, edited bool) string{
		"all alike":     func(int, bool) string { return "It was nice and the crust was crisp." },
		"all changed":   func(i int, e bool) string { return fmt.Sprintf("The crust was crisp in tin %d, %v.", i, e) },
		"few words":     func(i int, e bool) string { return fmt.Sprintf("It was %d %v", i%7, e) },
		"nothing alike": func(i int, e bool) string { return fmt.Sprintf("w%dx%v", i, e) },
	}
	for name, sentence := range drafts {
		t.Run(name, func(t *testing.T) {
			var before, after []string
			for i := range n {
				before = append(before, sentence(i, false))
				after = append(after, sentence(n-1-i, true))
			}
			start := time.Now()
			pairs := pairSentences(before, after)
			t.Logf("%d sentences in %.2f s", n, time.Since(start).Seconds())
			require.GreaterOrEqual(t, len(pairs), n)
		})
	}
}

func TestComparisonHasNoNulls(t *testing.T) {
	for _, c := range []*Comparison{compared(t, "", ""), compared(t, "It was nice.", ""), compared(t, "", "It was nice.")} {
		data, err := json.Marshal(c)
		require.NoError(t, err)
		nulls, err := nullsIn(data)
		require.NoError(t, err)
		assert.Empty(t, nulls)
	}
}
