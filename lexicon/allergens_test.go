package lexicon_test

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"go.yaml.in/yaml/v3"

	"saywhy/lexicon"
)

// legalAllergens are the groups of Annex II of Regulation (EU) 1169/2011 as
// kept in UK law, under our short names. Read as lists of a university's food
// law pages and of a council (reading.ac.uk/foodlaw/label/allergens-list.htm,
// rochdale.gov.uk, food allergens).
var legalAllergens = []string{
	"cereals with gluten", "crustaceans", "eggs", "fish", "peanuts", "soybeans", "milk",
	"nuts", "celery", "mustard", "sesame", "sulphites", "lupin", "molluscs",
}

func TestTheAllergenGroupsAreThe14OfTheLaw(t *testing.T) {
	require.Len(t, legalAllergens, 14)
	assert.ElementsMatch(t, legalAllergens, lexicon.Allergens(), "the names a dish file may use")
	var groups []string
	for group, foods := range load(t).Reading.Allergens {
		groups = append(groups, group)
		assert.NotEmpty(t, foods, "no food is listed for %q", group)
	}
	assert.ElementsMatch(t, legalAllergens, groups, "the groups a text is read with")
}

func TestTheNamedNutsAreNuts(t *testing.T) {
	// The eight nuts that Annex II names (read, as above).
	nuts := load(t).Reading.Allergens["nuts"]
	require.NotEmpty(t, nuts)
	for _, nut := range []string{"almond", "hazelnut", "walnut", "cashew", "pecan", "brazil nut", "pistachio", "macadamia"} {
		t.Run(nut, func(t *testing.T) {
			assert.True(t, slices.ContainsFunc(nuts, func(food string) bool {
				return strings.TrimSuffix(strings.ToLower(food), " nut") == strings.TrimSuffix(nut, " nut")
			}), "%q is not listed under nuts", nut)
		})
	}
}

func TestFoodsCalledNutThatTheLawDoesNotCountAreNoNuts(t *testing.T) {
	// Annex II names eight nuts; none of these is among them (computed from
	// the lists read).
	groups := load(t).Reading.Allergens
	for _, food := range []string{"coconut", "chestnut", "pine nut"} {
		t.Run(food, func(t *testing.T) {
			holds := func(listed string) bool {
				return strings.Contains(strings.ToLower(listed), food) && !strings.Contains(listed, "water chestnut")
			}
			listed := false
			for _, foods := range groups {
				listed = listed || slices.ContainsFunc(foods, holds)
			}
			if !listed {
				t.Skipf("no group lists %s", food)
			}
			assert.False(t, slices.ContainsFunc(groups["nuts"], holds), "%q stands under nuts", food)
		})
	}
}

func TestEveryAllergenOfADishFileIsOneOfThe14(t *testing.T) {
	// Read from the files, not by the package: families that only pass words
	// on are no types that it would show.
	files, err := filepath.Glob("builtin/dishes/*.yaml")
	require.NoError(t, err)
	require.NotEmpty(t, files)
	seen := 0
	for _, file := range files {
		t.Run(filepath.Base(file), func(t *testing.T) {
			data, err := os.ReadFile(file)
			require.NoError(t, err)
			var dish struct {
				Allergens []string `yaml:"allergens"`
			}
			require.NoError(t, yaml.Unmarshal(data, &dish))
			seen += len(dish.Allergens)
			assert.Subset(t, legalAllergens, dish.Allergens)
		})
	}
	assert.NotZero(t, seen, "no dish file names an allergen")
}
