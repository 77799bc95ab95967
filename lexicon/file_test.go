package lexicon_test

import (
	"errors"
	"fmt"
	"io/fs"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/lexicon"
)

// folder is a tutor's folder with the given files under dishes/.
func folder(files map[string]string) fstest.MapFS {
	out := fstest.MapFS{}
	for name, text := range files {
		out["dishes/"+name] = &fstest.MapFile{Data: []byte(text)}
	}
	return out
}

// rows joins the rows of a file, so that a row's line is its place in the list.
func rows(rows ...string) string { return strings.Join(rows, "\n") + "\n" }

// problemsOf loads the folder over the built-in files and returns what is
// wrong with it.
func problemsOf(tb testing.TB, layers ...fs.FS) (*lexicon.Lexicon, lexicon.Problems) {
	tb.Helper()
	lex, err := lexicon.Load(layers...)
	require.NotNil(tb, lex, "what could be read must be usable: %v", err)
	if err == nil {
		return lex, nil
	}
	var problems lexicon.Problems
	require.True(tb, errors.As(err, &problems), "an error of word files is of type Problems: %v", err)
	return lex, problems
}

// workingApart asserts that the built-in types are all there with all they
// have, but for those of the file.
func workingApart(tb testing.TB, lex *lexicon.Lexicon, changed ...string) {
	tb.Helper()
	for _, want := range load(tb).Types() {
		if slices.Contains(changed, want.Name) {
			continue
		}
		got, err := lex.Find(want.Name)
		if !assert.NoError(tb, err) {
			continue
		}
		// Comparing every word in full would double the time of these tests.
		assert.Len(tb, got.Words, len(want.Words), "the words of %s suffer from another type's file", want.Name)
		got.Words, want.Words = nil, nil
		assert.Equal(tb, want, got, "%s suffers from another type's file", want.Name)
	}
}

// complaint is where a problem must be reported and what its text must tell.
type complaint struct {
	line, column int // column 0: any from 1 (YAML's own reader gives no column)
	tells        []string
	orNext       bool // YAML's own reader may notice a row later
}

func assertComplaints(tb testing.TB, file string, want []complaint, got lexicon.Problems) {
	tb.Helper()
	require.Len(tb, got, len(want), "problems: %v", got)
	for i, w := range want {
		p := got[i]
		assert.Equal(tb, file, p.File, p.Error())
		if !w.orNext || p.Line != w.line+1 {
			assert.Equal(tb, w.line, p.Line, "line of %v", p)
		}
		if w.column > 0 || w.line == 0 {
			assert.Equal(tb, w.column, p.Column, "column of %v", p)
		} else {
			assert.Positive(tb, p.Column, "column of %v", p)
		}
		for _, tell := range w.tells {
			assert.Contains(tb, p.Text, tell)
		}
	}
}

func TestABrokenFileIsReportedWithItsPlaceAndItsMend(t *testing.T) {
	// Every file has one mistake. "traybakes" is a type of our own.
	tests := []struct {
		name string
		text string
		want []complaint
	}{
		{"unknown row of the file", rows("type: traybakes", "family: food", "hazzards: [oven]"),
			[]complaint{{line: 3, column: 1, tells: []string{`"hazzards"`, `did you mean "hazards"`}}}},
		{"unknown row of the file, like no other", rows("type: traybakes", "family: food", "temperature: 180"),
			[]complaint{{line: 3, column: 1, tells: []string{`"temperature"`, "use one of", "techniques", "without"}}}},
		{"unknown row of a word", rows("type: traybakes", "family: food", "words:", "  taste:", `    figgy: {means: "like dried figs", froms: [figs]}`),
			[]complaint{{line: 5, column: 39, tells: []string{`"froms"`, `did you mean "forms"`}}}},
		{"unknown sense of words", rows("type: traybakes", "family: food", "words:", "  flavour:", `    figgy: {means: "like dried figs"}`),
			[]complaint{{line: 4, column: 3, tells: []string{`"flavour"`, "use one of", "taste"}}}},
		{"misspelt sense of words", rows("type: traybakes", "family: food", "words:", "  textur:", `    figgy: {means: "like dried figs"}`),
			[]complaint{{line: 4, column: 3, tells: []string{`"textur"`, `did you mean "texture"`}}}},
		{"unknown sense of moments", rows("type: traybakes", "family: food", "moments:", "  sound: when you snap it"),
			[]complaint{{line: 4, column: 3, tells: []string{`"sound"`, "use one of"}}}},
		{"unknown sense of words left out", rows("type: traybakes", "family: food", "without:", "  sound: [soft]"),
			[]complaint{{line: 4, column: 3, tells: []string{`"sound"`, "use one of"}}}},
		{"word twice", rows("type: traybakes", "family: food", "words:", "  taste:", `    figgy: {means: "like dried figs"}`, `    datey: {means: "like dates"}`, `    figgy: {means: "like fig jam"}`),
			[]complaint{{line: 7, column: 5, tells: []string{`"figgy"`, "twice", "line 5", "keep one"}}}},
		{"word twice, once with a capital", rows("type: traybakes", "family: food", "words:", "  taste:", `    figgy: {means: "like dried figs"}`, `    Figgy: {means: "like fig jam"}`),
			[]complaint{{line: 6, column: 5, tells: []string{"twice", "keep one"}}}},
		{"word without letters", rows("type: traybakes", "family: food", "words:", "  taste:", `    "": {means: "like dried figs"}`),
			[]complaint{{line: 5, column: 5, tells: []string{"word"}}}},
		{"section twice", rows("type: traybakes", "family: food", "hazards: [oven]", "hazards: [knife]"),
			[]complaint{{line: 4, column: 1, tells: []string{`"hazards"`, "twice", "line 3", "keep one"}}}},
		{"scale with a gap", rows("type: traybakes", "family: food", "words:", "  texture:", `    oaten: {means: "with bits of oats", scale: "oatiness 1"}`, `    oatiest: {means: "all oats", scale: "oatiness 3"}`),
			[]complaint{{line: 6, column: 5, tells: []string{`"oatiness"`, "step 2", `"oatiest"`, "step 3", "move"}}}},
		{"scale without a number", rows("type: traybakes", "family: food", "words:", "  texture:", `    oaten: {means: "with bits of oats", scale: oatiness}`),
			[]complaint{{line: 5, column: 48, tells: []string{`"oatiness"`, "a step from 1", "thickness 3"}}}},
		{"scale with a number that is none", rows("type: traybakes", "family: food", "words:", "  texture:", `    oaten: {means: "with bits of oats", scale: "oatiness 1x"}`),
			[]complaint{{line: 5, column: 48, tells: []string{`"oatiness 1x"`, "a step from 1"}}}},
		{"scale without a name", rows("type: traybakes", "family: food", "words:", "  texture:", `    oaten: {means: "with bits of oats", scale: 2}`),
			[]complaint{{line: 5, column: 48, tells: []string{`"2"`, "a name and a step"}}}},
		{"scale with step 0", rows("type: traybakes", "family: food", "words:", "  texture:", `    oaten: {means: "with bits of oats", scale: "oatiness 0"}`),
			[]complaint{{line: 5, column: 48, tells: []string{`"oatiness 0"`, "from 1 up"}}}},
		{"no family", rows("title: Traybakes", "type: traybakes"),
			[]complaint{{line: 2, column: 1, tells: []string{"no family", "family: food"}}}},
		{"family that is not there", rows("type: traybakes", "family: backed"),
			[]complaint{{line: 2, column: 1, tells: []string{`"backed"`, `did you mean "baked"`}}}},
		{"family like no other", rows("type: traybakes", "family: spaceships"),
			[]complaint{{line: 2, column: 1, tells: []string{`"spaceships"`, "use one of", "baked"}}}},
		{"family is the type itself", rows("type: traybakes", "family: traybakes"),
			[]complaint{{line: 2, column: 1, tells: []string{"inherits from itself", "another family"}}}},
		{"type without a name", rows("title: Traybakes", "family: baked"),
			[]complaint{{line: 1, column: 1, tells: []string{"no name", "type: breads"}}}},
		{"name of the type left empty", rows("type:", "family: baked"),
			[]complaint{{line: 1, column: 6, tells: []string{"type should be a piece of text"}}, {line: 1, column: 1, tells: []string{"no name", "type: breads"}}}},
		{"meaning missing", rows("type: traybakes", "family: food", "words:", "  taste:", "    figgy: {of: [bar]}"),
			[]complaint{{line: 5, column: 5, tells: []string{`"figgy"`, "no meaning", "means:", "16"}}}},
		{"word with nothing after it", rows("type: traybakes", "family: food", "words:", "  taste:", "    figgy:"),
			[]complaint{{line: 5, column: 5, tells: []string{`"figgy"`, "no meaning", "means:"}}}},
		{"meaning too long", rows("type: traybakes", "family: food", "words:", "  taste:", `    figgy: {means: "one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen"}`),
			[]complaint{{line: 5, column: 5, tells: []string{`"figgy"`, "17 words", "shorten", "16"}}}},
		{"judging word as headword", rows("type: traybakes", "family: food", "words:", "  taste:", `    lovely: {means: "makes you want more"}`),
			[]complaint{{line: 5, column: 5, tells: []string{`"lovely"`, "judges"}}}},
		{"judging word of several forms as headword", rows("type: traybakes", "family: food", "words:", "  taste:", `    delicious: {means: "makes you want more"}`),
			[]complaint{{line: 5, column: 5, tells: []string{`"delicious"`, "judges"}}}},
		{"form that is the headword", rows("type: traybakes", "family: food", "words:", "  taste:", `    figgy: {means: "like dried figs", forms: [figgy]}`),
			[]complaint{{line: 5, column: 5, tells: []string{`"figgy"`, "itself", "take it out"}}}},
		{"form that is a headword of another sense", rows("type: traybakes", "family: food", "words:", "  taste:", `    figgy: {means: "like dried figs", forms: [figlike]}`, "  aroma:", `    figlike: {means: "like dried figs"}`),
			[]complaint{{line: 5, column: 5, tells: []string{`"figlike"`, `"figgy"`, "aroma", "take it out"}}}},
		{"unknown hazard", rows("type: traybakes", "family: food", "hazards: [oven, grate]"),
			[]complaint{{line: 3, column: 17, tells: []string{`"grate"`, `did you mean "grater"`}}}},
		{"unknown hazard, like no other", rows("type: traybakes", "family: food", "hazards:", "  - oven", "  - dinosaur"),
			[]complaint{{line: 5, column: 5, tells: []string{`"dinosaur"`, "use one of", "raw poultry"}}}},
		{"unknown allergen", rows("type: traybakes", "family: food", "allergens: [nut]"),
			[]complaint{{line: 3, column: 13, tells: []string{`"nut"`, `did you mean "nuts"`}}}},
		{"unknown allergen, like no other", rows("type: traybakes", "family: food", "allergens: [milk, strawberries]"),
			[]complaint{{line: 3, column: 19, tells: []string{`"strawberries"`, "use one of", "lupin"}}}},
		{"unknown area in the brief", rows("type: traybakes", "family: food", "brief: [hygiene, tecnique]"),
			[]complaint{{line: 3, column: 18, tells: []string{`"tecnique"`, `did you mean "technique"`}}}},
		{"left out a word that the family lacks", rows("type: traybakes", "family: food", "without:", "  taste: [figgiest]"),
			[]complaint{{line: 4, column: 11, tells: []string{`"figgiest"`, "take it off"}}}},
		{"left out a word of another sense", rows("type: traybakes", "family: food", "without:", "  taste: [crunchy]"),
			[]complaint{{line: 4, column: 11, tells: []string{`"crunchy"`, "taste", "take it off"}}}},
		{"YAML: a colon in a text without quotes", rows("type: traybakes", "family: food", "title: Bars: all sorts"),
			[]complaint{{line: 3, tells: []string{"check the quotes"}}}},
		{"YAML: a tab at the start of a row", rows("type: traybakes", "family: food", "techniques:", "\t- baking"),
			[]complaint{{line: 4, tells: []string{"check"}}}},
		{"YAML: a quote that never ends", rows("type: traybakes", "family: food", "words:", "  taste:", `    figgy: {means: "like dried figs, of: [bar]}`, `    datey: {means: "like dates"}`),
			[]complaint{{line: 5, tells: []string{"check the quotes", "the one before"}, orNext: true}}},
		{"YAML: a comma missing", rows("type: traybakes", "family: food", "words:", "  taste:", `    figgy: {means: "like dried figs" of: [bar]}`),
			[]complaint{{line: 5, tells: []string{"check the quotes, commas"}}}},
		{"YAML: a row further in than it may be", rows("type: traybakes", "family: food", "   title: Traybakes"),
			[]complaint{{line: 3, tells: []string{"spaces"}}}},
		{"a letter that is not UTF-8", rows("type: traybakes", "family: food", "title: Caf\xe9 bars"),
			[]complaint{{line: 3, tells: []string{"UTF-8"}}}},
		{"a second document", rows("type: traybakes", "family: food", "---", "type: bars", "family: food"),
			[]complaint{{line: 3, orNext: true}}},
		{"a list where text should be", rows("type: traybakes", "family: food", "title: [Bars, Slices]"),
			[]complaint{{line: 3, column: 8, tells: []string{"title", "piece of text"}}}},
		{"text where a list should be", rows("type: traybakes", "family: food", "dishes: fig bar"),
			[]complaint{{line: 3, column: 9, tells: []string{"dishes", "should be a list", "[one, two"}}}},
		{"a list where rows should be", rows("type: traybakes", "family: food", "words:", "  taste: [figgy, datey]"),
			[]complaint{{line: 4, column: 10, tells: []string{"taste", "name: value"}}}},
		{"text where a word's row should be", rows("type: traybakes", "family: food", "words:", "  taste:", "    figgy: like dried figs"),
			[]complaint{{line: 5, column: 12, tells: []string{`"figgy"`, "name: value"}}, {line: 5, column: 5, tells: []string{"no meaning"}}}},
		{"an entry of a list left empty", rows("type: traybakes", "family: food", "dishes:", "  - fig bar", "  -"),
			[]complaint{{line: 5, column: 4, tells: []string{"dishes", "piece of text"}}}},
		{"grouping that says neither yes nor no", rows("type: traybakes", "family: food", "grouping: perhaps"),
			[]complaint{{line: 3, column: 11, tells: []string{"grouping", "yes"}}}},
		{"a file that is a list", rows("- traybakes", "- bars"),
			[]complaint{{line: 1, column: 1, tells: []string{"name: value"}}, {line: 1, column: 1, tells: []string{"no name"}}}},
		{"empty file", "", []complaint{{tells: []string{"empty", "type: breads"}}}},
		{"file of spaces", "\n  \n", []complaint{{tells: []string{"empty", "type: breads"}}}},
		{"file of remarks", rows("# bars and slices"), []complaint{{tells: []string{"empty", "type: breads"}}}},
	}
	require.GreaterOrEqual(t, len(tests), 15)
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			t.Parallel()
			lex, got := problemsOf(t, folder(map[string]string{"traybakes.yaml": tt.text}))
			assertComplaints(t, "dishes/traybakes.yaml", tt.want, got)
			workingApart(t, lex)
		})
	}
}

func TestAMistakeInARowLaidOverABuiltInTypeHasItsOwnPlace(t *testing.T) {
	// The tutor's file speaks of breads, a type with a file of its own: the
	// place must be the one in the tutor's file.
	tests := []struct {
		name string
		text string
		want []complaint
	}{
		{"scale with a gap", rows("type: breads", "words:", "  texture:", `    oaten: {means: "with bits of oats", scale: "oatiness 2"}`),
			[]complaint{{line: 4, column: 5, tells: []string{`"oatiness"`, "step 1"}}}},
		{"judging word", rows("type: breads", "words:", "  taste:", `    lovely: {means: "makes you want more"}`),
			[]complaint{{line: 4, column: 5, tells: []string{`"lovely"`, "judges"}}}},
		{"form that is a headword of another sense", rows("type: breads", "words:", "  taste:", `    figgy: {means: "like dried figs", forms: [crunchy]}`),
			[]complaint{{line: 4, column: 5, tells: []string{`"crunchy"`, "texture"}}}},
		{"family that is not there", rows("# our breads", "type: breads", "", "family: backed"),
			[]complaint{{line: 4, column: 1, tells: []string{`"backed"`, `did you mean "baked"`}}}},
		{"left out a word that the family lacks", rows("type: breads", "without:", "  taste: [figgiest]"),
			[]complaint{{line: 3, column: 11, tells: []string{`"figgiest"`, "take it off"}}}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			t.Parallel()
			lex, got := problemsOf(t, folder(map[string]string{"our-breads.yaml": tt.text}))
			assertComplaints(t, "dishes/our-breads.yaml", tt.want, got)
			workingApart(t, lex, "breads")
		})
	}
}

func TestFamiliesThatInheritInACircleAreReportedOnce(t *testing.T) {
	lex, got := problemsOf(t, folder(map[string]string{
		"bars.yaml":   rows("type: bars", "family: slices"),
		"slices.yaml": rows("type: slices", "title: Slices", "family: bars"),
	}))
	assertComplaints(t, "dishes/slices.yaml", []complaint{{line: 3, column: 1, tells: []string{"inherits from itself", `"bars"`, "another family"}}}, got)
	workingApart(t, lex)
}

func TestACircleThroughABuiltInFamilyIsTheTutorsFile(t *testing.T) {
	// The built-in files cannot be edited, so the row to mend is the one that
	// makes the family "baked" inherit from one of its own types.
	_, got := problemsOf(t, folder(map[string]string{"ours.yaml": rows("type: baked", "family: breads")}))
	assertComplaints(t, "dishes/ours.yaml", []complaint{{line: 2, column: 1, tells: []string{"inherits from itself", "another family"}}}, got)
}

func TestEveryMistakeIsReportedInTheOrderOfFilesAndLines(t *testing.T) {
	_, got := problemsOf(t, folder(map[string]string{
		"slices.yaml": rows("type: slices", "family: food", "allergens: [nut]"),
		"bars.yaml": rows("type: bars", "family: food", "words:", "  taste:", "    figgy: {of: [bar]}",
			"brief: [tecnique]", "hazards: [grate]"),
	}))
	var places []string
	for _, p := range got {
		places = append(places, fmt.Sprintf("%s:%d", p.File, p.Line))
	}
	assert.Equal(t, []string{"dishes/bars.yaml:5", "dishes/bars.yaml:6", "dishes/bars.yaml:7", "dishes/slices.yaml:3"}, places)
	assert.Equal(t, len(got), len(strings.Split(got.Error(), "\n")), "one line for each")
}

func TestAProblemReadsAsPlaceAndText(t *testing.T) {
	assert.Equal(t, "dishes/bars.yaml:3:8: mend it", lexicon.Problem{File: "dishes/bars.yaml", Line: 3, Column: 8, Text: "mend it"}.Error())
	assert.Equal(t, "dishes/bars.yaml: mend it", lexicon.Problem{File: "dishes/bars.yaml", Text: "mend it"}.Error(), "of the whole file")
}

// with lays a sound folder over the built-in files.
func with(tb testing.TB, layers ...fs.FS) *lexicon.Lexicon {
	tb.Helper()
	lex, problems := problemsOf(tb, layers...)
	require.Empty(tb, problems)
	return lex
}

// dish returns a type by its own name.
func dish(tb testing.TB, lex *lexicon.Lexicon, name string) lexicon.Dish {
	tb.Helper()
	d, err := lex.Find(name)
	require.NoError(tb, err)
	require.Equal(tb, name, d.Name)
	return d
}

// headword returns the row of a headword.
func headword(d lexicon.Dish, sense lexicon.Sense, word string) (lexicon.Word, bool) {
	for _, w := range d.Words {
		if w.Sense == sense && w.Word == word {
			return w, true
		}
	}
	return lexicon.Word{}, false
}

func TestALayerChangesOneWordOfABuiltInType(t *testing.T) {
	lex := with(t, folder(map[string]string{"breads.yaml": rows("type: breads", "words:", "  texture:",
		`    crumbly: {means: "drops bits when you slice it", of: [loaf], forms: [crumbliness]}`)}))
	got, ok := headword(dish(t, lex, "breads"), lexicon.Touch, "crumbly")
	require.True(t, ok)
	assert.Equal(t, lexicon.Word{
		Word: "crumbly", Sense: lexicon.Touch, Means: "drops bits when you slice it",
		Of: []string{"loaf"}, Forms: []string{"crumbliness"}, From: "breads",
	}, got)
	was, now := dish(t, load(t), "breads"), dish(t, lex, "breads")
	assert.Len(t, now.Words, len(was.Words), "changed, not added")
	assert.Equal(t, was.Title, now.Title)
	assert.Equal(t, was.Dishes, now.Dishes)
	assert.Equal(t, was.Brief, now.Brief)
	workingApart(t, lex, "breads")
}

func TestALayerAddsAWordToABuiltInType(t *testing.T) {
	lex := with(t, folder(map[string]string{"breads.yaml": rows("type: breads", "words:", "  taste:",
		`    figgy: {means: "like dried figs", scale: "figginess 1"}`)}))
	got, ok := headword(dish(t, lex, "breads"), lexicon.Tongue, "figgy")
	require.True(t, ok)
	assert.Equal(t, lexicon.Word{Word: "figgy", Sense: lexicon.Tongue, Means: "like dried figs", Scale: "figginess", Step: 1, From: "breads"}, got)
	assert.Len(t, dish(t, lex, "breads").Words, len(dish(t, load(t), "breads").Words)+1)
	assert.True(t, slices.ContainsFunc(lex.Words(), func(w lexicon.Word) bool { return w.Word == "figgy" }), "a text is read with it")
	workingApart(t, lex, "breads")
}

func TestALayerAddsAWordToEveryType(t *testing.T) {
	lex := with(t, folder(map[string]string{"food.yaml": rows("type: food", "words:", "  taste:",
		`    figgy: {means: "like dried figs"}`)}))
	for _, d := range lex.Types() {
		_, ok := headword(d, lexicon.Tongue, "figgy")
		assert.True(t, ok, "%s does not inherit it", d.Name)
	}
}

func TestALayerLeavesOutAWordOfABuiltInType(t *testing.T) {
	general, breads := load(t).General(), dish(t, load(t), "breads")
	pick := func(from string) lexicon.Word {
		for _, w := range breads.Words {
			if w.From == from {
				return w
			}
		}
		t.Fatalf("breads has no word of %s", from)
		return lexicon.Word{}
	}
	tests := []struct {
		name string
		word lexicon.Word
	}{
		{"inherited from the root", pick(general.Name)},
		{"inherited from its family", pick(breads.Family)},
		{"its own", pick("breads")},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			t.Parallel()
			lex := with(t, folder(map[string]string{"breads.yaml": rows("type: breads", "without:",
				fmt.Sprintf("  %s: [%q]", tt.word.Sense, tt.word.Word))}))
			_, ok := headword(dish(t, lex, "breads"), tt.word.Sense, tt.word.Word)
			assert.False(t, ok, "%q is still there", tt.word.Word)
			assert.Len(t, dish(t, lex, "breads").Words, len(breads.Words)-1)
			workingApart(t, lex, "breads")
		})
	}
}

func TestALayerAddsAType(t *testing.T) {
	lex := with(t, folder(map[string]string{"traybakes.yaml": rows(
		"type: traybakes", "family: baked", "dishes: [fig bar, oat slice]", "hazards: [oven]", "allergens: [nuts, milk]",
		"moments:", "  texture: when you snap a bar in two",
		"words:", "  taste:", `    figgy: {means: "like dried figs"}`)}))
	d := dish(t, lex, "traybakes")
	assert.Equal(t, "Traybakes", d.Title, "made from its name")
	assert.Equal(t, []string{"fig bar", "oat slice"}, d.Dishes)
	assert.Equal(t, []string{"oven"}, d.Hazards)
	assert.Equal(t, []string{"nuts", "milk"}, d.Allergens)
	assert.Equal(t, "when you snap a bar in two", d.Moments[lexicon.Touch])
	assert.Equal(t, dish(t, load(t), "breads").Brief, d.Brief, "the brief of the family")
	for _, sense := range lexicon.Senses() {
		assert.NotEmpty(t, d.Moments[sense], "the moment of %s is inherited", sense)
		assert.NotEmpty(t, d.BySense(sense), "the words of %s are inherited", sense)
	}
	byDish, err := lex.Find("oat slice")
	require.NoError(t, err)
	assert.Equal(t, "traybakes", byDish.Name)
	workingApart(t, lex)
}

func TestTheTitleOfATypeIsMadeFromItsName(t *testing.T) {
	tests := []struct{ name, title string }{
		{"oat-slices", "Oat slices"},
		{"éclairs", "Éclairs"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			t.Parallel()
			lex := with(t, folder(map[string]string{"new.yaml": rows("type: "+tt.name, "family: food")}))
			assert.Equal(t, tt.title, dish(t, lex, tt.name).Title)
		})
	}
}

func TestALaterLayerLiesOverAnEarlierOne(t *testing.T) {
	figgy := func(means string) fs.FS {
		return folder(map[string]string{"breads.yaml": rows("type: breads", "words:", "  taste:", fmt.Sprintf("    figgy: {means: %q}", means))})
	}
	lex := with(t, figgy("like dried figs"), figgy("like fig jam"))
	got, ok := headword(dish(t, lex, "breads"), lexicon.Tongue, "figgy")
	require.True(t, ok)
	assert.Equal(t, "like fig jam", got.Means)
}

func TestASectionOfALayerReplacesTheOneBelow(t *testing.T) {
	lex := with(t, folder(map[string]string{"breads.yaml": rows("type: breads", "title: Loaves", "hazards: [knife]", "brief: [taste, texture]")}))
	was, now := dish(t, load(t), "breads"), dish(t, lex, "breads")
	assert.Equal(t, "Loaves", now.Title)
	assert.Equal(t, []string{"knife"}, now.Hazards)
	assert.Equal(t, []lexicon.Area{lexicon.Taste, lexicon.Texture}, now.Brief)
	assert.Equal(t, was.Allergens, now.Allergens, "a section that the file lacks stays")
	assert.Equal(t, was.Words, now.Words)
}

func TestALayerMakesATypeAGrouping(t *testing.T) {
	lex := with(t, folder(map[string]string{"breads.yaml": rows("type: breads", "grouping: yes")}))
	assert.False(t, slices.ContainsFunc(lex.Types(), func(d lexicon.Dish) bool { return d.Name == "breads" }))
}

func TestOtherFilesOfAFolderAreLeftAlone(t *testing.T) {
	layer := fstest.MapFS{
		"dishes/notes.txt":      {Data: []byte("type: [")},
		"bars.yaml":             {Data: []byte("type: [")},
		"dishes/old/bars.yaml":  {Data: []byte("type: [")},
		"dishes/bars.yaml.orig": {Data: []byte("type: [")},
	}
	assert.Equal(t, load(t).Types(), with(t, layer).Types())
}

func TestAnEmptyFolderChangesNothing(t *testing.T) {
	assert.Equal(t, load(t).Types(), with(t, fstest.MapFS{}).Types())
}
