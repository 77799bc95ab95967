package lexicon_test

import (
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/lexicon"
)

// TestADishOfSeveralTypes: the course over the built-in files, more words over
// fewer, and where both leave several an error that names them.
func TestADishOfSeveralTypes(t *testing.T) {
	dir := fstest.MapFS{}
	for name, text := range map[string]string{
		"autumn":  "type: autumn\nfamily: pot\ntitle: Autumn pots\ndishes: [soda bread, pumpkin soup, marsh pie]\n",
		"harvest": "type: harvest\nfamily: pot\ntitle: Harvest\ndishes: [pie, marsh pie, harvest broth]\n",
		"soups":   "type: soups\ntitle: Broths\n",
	} {
		dir["dishes/"+name+".yaml"] = &fstest.MapFile{Data: []byte(text)}
	}
	lex, _, err := lexicon.LoadCourse(dir)
	require.NoError(t, err)
	for name, want := range map[string]string{
		"soda bread":           "autumn",  // quick-breads has it too, and the course counts
		"my gran's soda bread": "autumn",  // by its last words as well
		"pumpkin soup":         "autumn",  // a dish by its whole name before "soup" by its last word
		"plum pie":             "harvest", // no other type covers "pie" alone
		"harvest broth":        "harvest",
		"scotch broth":         "soups", // a changed title does not make its dishes the course's
	} {
		d, err := lex.Find(name)
		if assert.NoError(t, err, name) {
			assert.Equal(t, want, d.Name, name)
		}
	}
	for _, name := range []string{"marsh pie", "our marsh pies"} {
		_, err = lex.Find(name)
		require.ErrorIs(t, err, lexicon.ErrSeveralTypes, name)
		assert.Contains(t, err.Error(), `"autumn", "harvest"; name the type you mean`)
	}
}

// TestADishByItsLastWord: what a learner types is seldom the name on the list.
func TestADishByItsLastWord(t *testing.T) {
	lex := load(t)
	for name, want := range map[string]string{
		"brownies": "cakes", "my mum's brownies": "cakes", "pancakes": "batters", "muffins": "quick-breads",
		"a burger": "grilled-meat", "cheesecake": "custards", "cookies": "biscuits", "goujons": "fried-foods",
		"chilli": "stews", "chicken stir fry": "cooked-vegetables", "tacos": "pizza",
		"potato salad with dill": "salads", "Leek soup (for Gran)": "soups", "pizza on a stone, twice": "pizza",
	} {
		d, err := lex.Find(name)
		if assert.NoError(t, err, name) {
			assert.Equal(t, want, d.Name, name)
		}
	}
	_, err := lex.Find("turnip pie") // pies of pastry, of fish and of mince
	require.ErrorIs(t, err, lexicon.ErrSeveralTypes)
	_, err = lex.Find("xylophone quartet")
	require.ErrorIs(t, err, lexicon.ErrUnknownDish)
}

func TestNoBuiltInDishIsOfSeveralTypes(t *testing.T) {
	of := map[string]string{}
	for _, d := range load(t).Types() {
		for _, dish := range d.Dishes {
			assert.Empty(t, of[dish], "%q is of %s as well as of %s", dish, d.Name, of[dish])
			of[dish] = d.Name
		}
	}
}
