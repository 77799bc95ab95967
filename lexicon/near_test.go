package lexicon_test

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/lexicon"
)

func TestDistanceOfTextbookPairs(t *testing.T) {
	// Pairs and distances from memory; where only insertions, deletions and
	// substitutions are needed the optimal string alignment distance is the
	// Levenshtein distance.
	tests := []struct {
		a, b   string
		want   int
		source string
	}{
		{"kitten", "sitting", 3, "Wikipedia, Levenshtein distance"},
		{"saturday", "sunday", 3, "Wikipedia, Wagner-Fischer algorithm"},
		{"flaw", "lawn", 2, "Wikipedia, Levenshtein distance"},
		{"intention", "execution", 5, "Jurafsky & Martin, Speech and Language Processing, minimum edit distance"},
		{"ca", "abc", 3, "Wikipedia, Damerau-Levenshtein distance: 3 as optimal string alignment, 2 without its restriction"},
		{"martha", "marhta", 1, "the pair of Winkler 1990 for swaps of neighbours; counted here"},
	}
	for _, tt := range tests {
		t.Run(tt.a+" "+tt.b, func(t *testing.T) {
			assert.Equal(t, tt.want, lexicon.Distance(tt.a, tt.b, 10), tt.source)
			assert.Equal(t, tt.want, lexicon.Distance(tt.b, tt.a, 10), "the other way round")
		})
	}
}

func TestDistanceCountsEachKindOfSlip(t *testing.T) {
	tests := []struct {
		name, a, b string
		want       int
	}{
		{"the same", "crumbly", "crumbly", 0},
		{"both empty", "", "", 0},
		{"one empty", "", "soft", 4},
		{"a letter left out", "crumbly", "crumby", 1},
		{"a letter too many", "lumpy", "lummpy", 1},
		{"another letter", "dense", "tense", 1},
		{"two neighbours swapped", "crispy", "cripsy", 1},
		{"a letter of two bytes is one letter", "soufflé", "souffle", 1},
		{"capitals are other letters", "Soft", "soft", 1},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) { assert.Equal(t, tt.want, lexicon.Distance(tt.a, tt.b, 10)) })
	}
}

func TestDistanceStopsAboveItsLimit(t *testing.T) {
	words := []string{"", "a", "kitten", "sitting", "crumbly", "crumby", "cripsy", "crispy", "soufflé", "golden brown"}
	for _, a := range words {
		for _, b := range words {
			exact := lexicon.Distance(a, b, 100)
			assert.Equal(t, exact, lexicon.Distance(b, a, 100), "%q and %q the other way round", a, b)
			for limit := range 6 {
				assert.Equal(t, min(exact, limit+1), lexicon.Distance(a, b, limit), "%q and %q within %d", a, b, limit)
			}
		}
	}
}

func TestNearestNames(t *testing.T) {
	names := []string{"crunchy", "crumbly", "crumby", "crispy", "crisp", "soft"}
	tests := []struct {
		name, word string
		n          int
		want       []string
	}{
		{"the closest comes first", "crumbley", 3, []string{"crumbly", "crumby"}},
		{"equals keep their order", "crispi", 3, []string{"crispy", "crisp"}},
		{"no more than asked for", "crumbley", 1, []string{"crumbly"}},
		{"the very name is its nearest", "soft", 1, []string{"soft"}},
		{"none is near", "wobbling jelly", 3, nil},
		{"none asked for", "crumbly", 0, nil},
		{"a short name may be two away", "sift", 3, []string{"soft"}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) { assert.Equal(t, tt.want, lexicon.Nearest(tt.word, names, tt.n)) })
	}
}

func TestNearestOfNoNames(t *testing.T) {
	assert.Empty(t, lexicon.Nearest("crumbly", nil, 3))
}

// found returns the name of the type that Find gives.
func found(tb testing.TB, name string) string {
	tb.Helper()
	d, err := load(tb).Find(name)
	if !assert.NoError(tb, err, "Find(%q)", name) {
		return ""
	}
	return d.Name
}

func TestFindATypeByNameTitleAndNumber(t *testing.T) {
	for _, d := range load(t).Types() {
		t.Run(d.Name, func(t *testing.T) {
			assert.Equal(t, d.Name, found(t, d.Name))
			assert.Equal(t, d.Name, found(t, d.Title), "its title")
			assert.Equal(t, d.Name, found(t, strings.ToUpper(d.Name)), "in capitals")
			assert.Equal(t, d.Name, found(t, "  "+d.Name+" "), "with spaces around")
		})
	}
}

func TestFindATypeInTheSingular(t *testing.T) {
	// singular, type; common English, no published source
	tests := []struct{ singular, want string }{
		{"bread", "breads"}, {"biscuit", "biscuits"}, {"cake", "cakes"}, {"soup", "soups"}, {"stew", "stews"},
		{"sauce", "sauces"}, {"salad", "salads"}, {"curry", "curries"}, {"custard", "custards"}, {"batter", "batters"},
		{"quick bread", "quick-breads"}, {"egg dish", "egg-dishes"},
	}
	for _, tt := range tests {
		t.Run(tt.singular, func(t *testing.T) {
			names := map[string]bool{}
			for _, d := range load(t).Types() {
				names[d.Name] = true
			}
			if !names[tt.want] {
				t.Skipf("there is no type %s any more", tt.want)
			}
			assert.Equal(t, tt.want, found(t, tt.singular))
		})
	}
}

// plural is the regular English plural of a name, with the one word in -f that
// the dish names have.
func plural(name string) string {
	switch {
	case strings.HasSuffix(name, "loaf"):
		return strings.TrimSuffix(name, "f") + "ves"
	case strings.HasSuffix(name, "ty"), strings.HasSuffix(name, "ly"), strings.HasSuffix(name, "ry"):
		return strings.TrimSuffix(name, "y") + "ies"
	case strings.HasSuffix(name, "ch"):
		return name + "es"
	}
	return name + "s"
}

func TestFindATypeByTheDishesItCovers(t *testing.T) {
	for _, d := range load(t).Types() {
		require.NotEmpty(t, d.Dishes, d.Name)
		for _, dish := range d.Dishes {
			t.Run(d.Name+" "+dish, func(t *testing.T) {
				assert.Equal(t, d.Name, found(t, dish))
				assert.Equal(t, d.Name, found(t, strings.ToUpper(dish[:1])+dish[1:]), "with a capital")
				assert.Equal(t, d.Name, found(t, "my gran's "+dish), "with words before it")
			})
		}
	}
}

func TestFindATypeByTheDishesItCoversInThePlural(t *testing.T) {
	// Words that people do write in the plural; rice and gravy are none.
	counted := strings.Fields(`pancake waffle crêpe oatcake cupcake cheesecake cake omelette quiche pasty lolly crumble
		casserole tagine trifle profiterole calzone apple loaf roll bun biscuit cookie pie tart burger curry soup stew
		pizza muffin fritter chop skewer potato eclair flapjack brownie sponge sandwich`)
	of := map[string]int{}
	for _, d := range load(t).Types() {
		for _, dish := range d.Dishes {
			of[dish]++
		}
	}
	tried := 0
	for _, d := range load(t).Types() {
		for _, dish := range d.Dishes {
			fields := strings.Fields(dish)
			if !slices.Contains(counted, fields[len(fields)-1]) || of[dish] > 1 {
				continue
			}
			tried++
			many := plural(dish)
			if strings.HasSuffix(dish, "potato") {
				many = dish + "es"
			}
			t.Run(d.Name+" "+many, func(t *testing.T) {
				assert.Equal(t, d.Name, found(t, many))
			})
		}
	}
	assert.NotZero(t, tried)
}

func TestNoDishIsCoveredByTwoTypes(t *testing.T) {
	of := map[string]string{}
	for _, d := range load(t).Types() {
		for _, dish := range d.Dishes {
			key := strings.ToLower(dish)
			first, twice := of[key]
			assert.False(t, twice, "%q is a dish of %s and of %s: only the first is found", dish, first, d.Name)
			of[key] = d.Name
		}
	}
}

func TestFindOffersNearNamesForAnUnknownDish(t *testing.T) {
	tests := []struct{ name, dish, offers string }{
		{"a type with two letters swapped", "braeds", `"breads"`},
		{"a type with a letter missing", "bisuits", `"biscuits"`},
		{"a covered dish misspelt", "focacia", `"focaccia"`},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			_, err := load(t).Find(tt.dish)
			require.ErrorIs(t, err, lexicon.ErrUnknownDish)
			assert.ErrorContains(t, err, tt.dish)
			assert.ErrorContains(t, err, "did you mean")
			assert.ErrorContains(t, err, tt.offers)
			assert.ErrorContains(t, err, "saywhy dish list")
		})
	}
}

func TestFindNamesTheListForADishFarFromAll(t *testing.T) {
	tests := []struct{ name, dish string }{
		{"nothing like it", "xylophone repair"},
		{"a family that only groups types", "baked"},
		{"nothing", ""},
		{"spaces", "   "},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			_, err := load(t).Find(tt.dish)
			require.ErrorIs(t, err, lexicon.ErrUnknownDish)
			assert.ErrorContains(t, err, "saywhy dish list")
		})
	}
}
