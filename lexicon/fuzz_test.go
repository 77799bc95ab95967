package lexicon

import (
	"bytes"
	"fmt"
	"io/fs"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"
)

// small returns a lexicon with few words, so that a fuzzer gets through many
// files a second; its types, patterns and wordings are the built-in ones.
func small(tb testing.TB) *Lexicon {
	tb.Helper()
	lex := loadedCopy(tb)
	lex.all = lex.all[:60]
	return lex
}

// seedFiles adds built-in files and broken ones, whole and cut in the middle.
func seedFiles(f *testing.F, pattern string, more ...string) {
	f.Helper()
	names, err := fs.Glob(builtin, pattern)
	require.NoError(f, err)
	require.NotEmpty(f, names)
	for _, name := range names {
		data, err := fs.ReadFile(builtin, name)
		require.NoError(f, err)
		if len(data) < 10_000 { // food.yaml would slow the fuzzer down
			f.Add(data)
			f.Add(data[:len(data)/2])
		}
	}
	for _, text := range append(more, "", "a", "a: [", "a: b\na: c\n", "- a\n", "\xff", "a: &x [*x, *x]\n", "---\na: b\n---\nc: d\n", "? [a]\n: b\n", "a: !!binary b\n", "\ufeffa: b\n") {
		f.Add([]byte(text))
	}
}

// checkProblems holds what a list of problems promises: each names its file and
// says something, at a line that the file has.
func checkProblems(tb testing.TB, data []byte, problems Problems) {
	tb.Helper()
	lines := bytes.Count(data, []byte("\n")) + bytes.Count(data, []byte("\r")) + strings.Count(string(data), "\u0085") +
		strings.Count(string(data), "\u2028") + strings.Count(string(data), "\u2029") + 2
	for _, p := range problems {
		require.NotEmpty(tb, p.Text)
		require.NotEmpty(tb, p.File)
		require.True(tb, p.Line >= 0 && p.Line <= lines, "%v: the file has %d lines", p, lines)
	}
}

func FuzzDishFile(f *testing.F) {
	seedFiles(f, "builtin/dishes/*.yaml",
		"type: pies\nfamily: food\nwords:\n  taste:\n    figgy: {means: \"like figs\", of: [pie], forms: [figgier], scale: \"fig 1\"}\n",
		"type: food\nwords:\n  texture:\n    nice: {means: x, forms: [nice]}\nwithout:\n  taste: [sour]\n",
		"type: pies\nfamily: pies\nwords: {aroma: {}}\nbrief: [taste, colour]\n")
	lex := small(f)
	root := parseDish(source{file: "dishes/food.yaml", problems: &Problems{}}, []byte("type: food\nwords:\n  taste:\n    sour: {means: \"sharp, as lemon\"}\n"))
	f.Fuzz(func(t *testing.T, data []byte) {
		var problems Problems
		s := source{file: "dishes/x.yaml", layer: 1, problems: &problems}
		d := parseDish(s, data)
		if d == nil {
			require.NotEmpty(t, problems, "nothing was read and nothing said")
			checkProblems(t, data, problems)
			return
		}
		require.True(t, slices.IsSortedFunc(d.dish.Words, compareWords))
		for i, w := range d.dish.Words {
			require.Equal(t, d.dish.Name, w.From)
			require.False(t, i > 0 && compareWords(d.dish.Words[i-1], w) == 0, "%q stands twice", w.Word)
		}
		clean := len(problems) == 0

		// What could be read is laid over a root and resolved, whatever it is.
		types, order := map[string]*dishFile{Root: root}, []string{Root}
		over := d
		if d.dish.Name == Root {
			over = root.overlaid(d)
		} else {
			order = append(order, d.dish.Name)
		}
		types[d.dish.Name] = over
		out := newLexicon(lex.Reading)
		out.resolve(types, order)
		checkProblems(t, data, problems)
		got, ok := out.Type(d.dish.Name)
		require.True(t, ok)
		require.True(t, slices.IsSortedFunc(got.Words, compareWords))

		if !clean {
			return
		}
		// A word is added: everything else stays, or the editor says that it
		// cannot keep it.
		word := Word{Word: "zestful", Sense: Tongue, Means: "like lemon peel", Of: []string{"pie"}}
		edited, err := EditDish(data, []Change{{Word: word}})
		if err != nil {
			return
		}
		var after Problems
		again := parseDish(source{file: "dishes/x.yaml", problems: &after}, edited)
		require.NotNil(t, again, "%s", edited)
		require.Empty(t, after, "%s", edited)
		word.From = d.dish.Name
		want := mergeWords(d.dish.Words, []Word{word}, nil)
		require.Equal(t, fmt.Sprint(want), fmt.Sprint(again.dish.Words), "%s", edited)
	})
}

func FuzzWordings(f *testing.F) {
	seedFiles(f, "builtin/reading/v*.yaml",
		"learner:\n  taste:\n    said: [\"What did {dish} taste of?\", \"{moment} what?\", \"nice?\", \"{\"]\n",
		"praise:\n  reason:\n    taste: [\"You told why ({words}).\", \"You told why ({words}).\"]\n",
		"danger: {adult: {injury: [\"Who got hurt when {words}?\"]}}\nlast:\nlook:\n")
	f.Add([]byte(builtinWordings(f)[:6_000]))
	lex := small(f)
	f.Fuzz(func(t *testing.T, data []byte) {
		w := newWordingSource()
		require.NoError(t, w.parse(fstest.MapFS{wordingFileName: &fstest.MapFile{Data: data}}))
		got := w.read(lex)
		checkProblems(t, data, *w.problems)
		require.NotEmpty(t, *w.problems, "no fuzzer writes a whole file of wordings")
		rule := wordingRule{describing: lex.describing(), lex: lex, judges: map[string]bool{}}
		for _, section := range wordingTree() {
			for _, group := range section.groups {
				for _, list := range group.lists {
					for _, text := range got[section.name][group.name][list.name] {
						require.Empty(t, rule.wrong(text, list.place), "%q was let through", text)
					}
				}
			}
		}
	})
}

func FuzzCourseFile(f *testing.F) {
	seedFiles(f, "builtin/reading/s*.yaml",
		"title: Saltmarsh Kitchen\nsessions:\n  - title: Week 1\n    dish: tomato soup\n    brief: [taste, texture]\n  - dish: soda bread\n",
		"sessions: {}\nquestions:\n  learner:\n    taste:\n      said: [\"What did you taste?\"]\n",
		"sessions:\n  -\n  - dish:\n  - dish: xyzzy\n    brief: []\n  - title: Week 1\n")
	lex := small(f)
	f.Fuzz(func(t *testing.T, data []byte) {
		read := func() (Course, Problems) {
			own := *lex.Reading
			copied := *lex
			copied.Reading = &own
			var problems Problems
			var c Course
			parseCourse(source{file: CourseFile, layer: 1, problems: &problems}, data, &c, &copied)
			return c, problems
		}
		c, problems := read()
		checkProblems(t, data, problems)
		again, sameProblems := read()
		require.Equal(t, c, again)
		require.Equal(t, problems, sameProblems)
		for _, s := range c.Sessions {
			_, err := lex.Find(s.Dish)
			require.NoError(t, err, "a session without a dish")
			for _, a := range s.Brief {
				require.True(t, a.Known())
			}
		}
	})
}
