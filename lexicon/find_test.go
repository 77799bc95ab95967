package lexicon_test

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/lexicon"
)

// foundShare returns the share of a file's phrasings whose word is among the
// first three found, in the whole list, and those that are not.
func foundShare(t *testing.T, path string) (share float64, missed []string) {
	t.Helper()
	f := lexicon.NewFinder(load(t).Words())
	total, hits := 0, 0
	for _, line := range lines(t, path) {
		if strings.HasPrefix(line, "#") {
			continue
		}
		fields := strings.Split(line, "\t")
		require.GreaterOrEqual(t, len(fields), 2, line)
		phrase, wanted := fields[0], strings.Join(fields[1:], "|")
		total++
		hit := false
		var got []string
		for _, w := range f.Find(phrase, 3) {
			got = append(got, w.Word.Word)
			hit = hit || slices.Contains(strings.Split(wanted, "|"), w.Word.Word)
		}
		if hit {
			hits++
			continue
		}
		missed = append(missed, phrase+" → "+wanted+"; got "+strings.Join(got, ", "))
	}
	require.GreaterOrEqual(t, total, 60, "phrasings in %s", path)
	return float64(hits) / float64(total), missed
}

// The phrasings were written without sight of the list. The search was tuned on
// the first file, and has learnt from the odd rows of the blind one (first sight:
// 0.60 by the words of their writer alone, 0.83 with the first three answers
// judged as well) and from the second one (first sight: 0.55 and 0.78).
//
// The half of the second that was held back stood at 0.66 and 0.81 before the search
// learnt from it too.
//
// Nobody has learnt from phrasings-held and phrasings-third-held, so their floors
// show what a phrasing that nobody tuned for may hope for. The first was never looked
// at; for 3 of its 62 rows the list has none of the words wanted. The rows of the
// other were measured on before and after the search learnt from phrasings-third,
// 0.67 and 0.71 by the words of their writer alone, 0.79 and 0.85 with the answers
// judged as well, and looked at only then, to judge the answers of both times without
// knowing which was which.
func TestEverydayPhrasingsFindTheWord(t *testing.T) {
	for path, floor := range map[string]float64{
		"testdata/phrasings.tsv":             0.95,
		"testdata/phrasings-blind.tsv":       0.93,
		"testdata/phrasings-second.tsv":      0.96,
		"testdata/phrasings-second-held.tsv": 0.95,
		"testdata/phrasings-third.tsv":       0.89,
		"testdata/phrasings-held.tsv":        0.85,
		"testdata/phrasings-third-held.tsv":  0.84,
	} {
		share, missed := foundShare(t, path)
		t.Logf("%s: %.3f", path, share)
		if path == "testdata/phrasings.tsv" {
			t.Log(strings.Join(missed, "\n"))
		}
		assert.GreaterOrEqual(t, share, floor, path)
	}
}

// little is a list of our own, small enough to reckon with.
func little() []lexicon.Word {
	return []lexicon.Word{
		{Word: "claggy", Sense: lexicon.Touch, Means: "sticks to your teeth", Forms: []string{"clagginess"}, From: lexicon.Root},
		{Word: "matt", Sense: lexicon.Sight, Means: "not shiny at all", From: lexicon.Root},
		{Word: "shiny", Sense: lexicon.Sight, Means: "throws back the light", From: lexicon.Root},
		{Word: "stringy", Sense: lexicon.Touch, Means: "full of thin lines that do not part", From: lexicon.Root},
		{Word: "furry", Sense: lexicon.Touch, Means: "with a soft dry layer", From: lexicon.Root},
		{Word: "odourless", Sense: lexicon.Smell, Means: "gives off no smell at all", From: lexicon.Root},
		{Word: "smoky", Sense: lexicon.Smell, Means: "like a wood fire", From: lexicon.Root},
		{Word: "smoky", Sense: lexicon.Tongue, Means: "like a wood fire on your tongue", From: lexicon.Root},
	}
}

func TestFindByMeaningFormAndSlip(t *testing.T) {
	f := lexicon.NewFinder(little())
	for noticed, want := range map[string]string{
		"it was sticking to my teeth":  "claggy",
		"the clagginess of it":         "claggy",
		"strings in the meat":          "stringy",
		"it is not shiny":              "matt",
		"it was shiny":                 "shiny",
		"it tasted a bit smokey":       "smoky",
		"teeeth":                       "claggy",
		"fur on my tongue":             "furry",
		"I could not smell it":         "odourless",
		"smelt like a fire":            "smoky",
		"IT STICKS TO YOUR TEETH!!! 😬": "claggy",
	} {
		got := f.Find(noticed, 1)
		if assert.NotEmpty(t, got, noticed) {
			assert.Equal(t, want, got[0].Word.Word, noticed)
		}
	}
}

// TestFindTellsTheFoodFromALikeness: what the noticing is about is no quality of
// it, what it is likened to is.
func TestFindTellsTheFoodFromALikeness(t *testing.T) {
	f := lexicon.NewFinder([]lexicon.Word{
		{Word: "garlicky", Sense: lexicon.Tongue, Means: "like garlic"},
		{Word: "slack", Sense: lexicon.Tongue, Means: "slow and quiet", Of: []string{"garlic"}},
		{Word: "sandy", Sense: lexicon.Sight, Means: "like a lake"},
		{Word: "grainy", Sense: lexicon.Touch, Means: "like a lake"},
	})
	assert.Equal(t, "slack", f.Find("garlic cooked slow", 1)[0].Word.Word)
	assert.Equal(t, "garlicky", f.Find("tasted of garlic", 1)[0].Word.Word)
	assert.Equal(t, "grainy", f.Find("it feels like a lake", 1)[0].Word.Word)
	assert.Equal(t, "sandy", f.Find("it looks like a lake", 1)[0].Word.Word)
}

// finding is what was noticed, a word that is among the first three found for
// it, and one that is not.
type finding struct{ noticed, has, hasNot string }

func findsFirst(t *testing.T, cases []finding) {
	t.Helper()
	f := lexicon.NewFinder(load(t).Words())
	for _, c := range cases {
		var got []string
		for _, w := range f.Find(c.noticed, 3) {
			got = append(got, w.Word.Word)
		}
		assert.Contains(t, got, c.has, c.noticed)
		assert.NotContains(t, got, c.hasNot, c.noticed)
	}
}

// TestFindKnowsTurnsOfSpeech: they count as a whole, whatever stands between
// their words; their words alone say something else.
func TestFindKnowsTurnsOfSpeech(t *testing.T) {
	findsFirst(t, []finding{
		{"it made my eyes water", "pungent", "watery"},
		{"it made my eyes really, really water", "pungent", "watery"},
		{"all the water came to the top", "watery", "pungent"},
		{"you could stand a spoon in it", "gloopy", "spoonable"},
	})
}

// TestFindKnowsWhatShouldHaveBeen: what should be so is not.
func TestFindKnowsWhatShouldHaveBeen(t *testing.T) {
	f := lexicon.NewFinder([]lexicon.Word{
		{Word: "snappy", Sense: lexicon.Touch, Means: "breaks with a snap"},
		{Word: "soggy", Sense: lexicon.Touch, Means: "full of water"},
	})
	assert.Equal(t, "snappy", f.Find("biscuits that snap", 1)[0].Word.Word)
	assert.Equal(t, "soggy", f.Find("biscuits that should snap", 1)[0].Word.Word)
}

// TestASlipThatSoundsTheSameCountsMore than one that makes another word.
func TestASlipThatSoundsTheSameCountsMore(t *testing.T) {
	f := lexicon.NewFinder([]lexicon.Word{
		{Word: "claggy", Sense: lexicon.Touch, Means: "thick"},
		{Word: "grainy", Sense: lexicon.Touch, Means: "like sand"},
	})
	alike, other := f.Find("cleggy", 1), f.Find("cladgy", 1)
	require.NotEmpty(t, alike)
	require.NotEmpty(t, other)
	assert.Greater(t, alike[0].Fit, other[0].Fit)
}

func TestFindGivesAHeadwordOnce(t *testing.T) {
	got := lexicon.NewFinder(little()).Find("like a wood fire", 5)
	require.Len(t, got, 1)
	assert.Len(t, got[0].Also, 1)
}

func TestFindOfNothing(t *testing.T) {
	f := lexicon.NewFinder(little())
	for _, noticed := range []string{"", "   ", "the and of it", "xyzzy plugh", "!!!", "\x00\xff"} {
		assert.Empty(t, f.Find(noticed, 3), "%q", noticed)
	}
	assert.Empty(t, lexicon.NewFinder(nil).Find("crunchy", 3))
}

// TestFindTellsShortageFromPlenty: how much of a thing there was turns what it
// stands for round.
func TestFindTellsShortageFromPlenty(t *testing.T) {
	findsFirst(t, []finding{
		{"too much salt in it", "salty", "bland"},
		{"it needed more salt", "under-salted", "briny"},
		{"I put in too much lemon", "sour", "bland"},
		{"I ran out of butter", "dry", "greasy"},
		{"far too much butter", "greasy", "dry"},
		{"it didnt rise", "flat", "risen"},
	})
}

// TestFindTakesTheLongerTurnOfSpeech: what is part of it says less than the whole.
func TestFindTakesTheLongerTurnOfSpeech(t *testing.T) {
	f := lexicon.NewFinder(load(t).Words())
	for noticed, want := range map[string]string{
		"there was no flavour":                        "flavourless",
		"no one flavour was stronger than the others": "balanced",
	} {
		var got []string
		for _, w := range f.Find(noticed, 3) {
			got = append(got, w.Word.Word)
		}
		assert.Contains(t, got, want, noticed)
	}
}
