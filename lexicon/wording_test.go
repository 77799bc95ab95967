package lexicon

import (
	"fmt"
	"io/fs"
	"maps"
	"slices"
	"strings"
	"sync"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const wordingFileName = "reading/questions.yaml"

func builtinWordings(tb testing.TB) string {
	tb.Helper()
	data, err := fs.ReadFile(builtin, "builtin/"+wordingFileName)
	require.NoError(tb, err)
	return string(data)
}

// loaded is the built-in lexicon, loaded once for these tests.
var loaded = sync.OnceValues(func() (*Lexicon, error) { return Load() })

// loadedCopy returns the built-in lexicon with a Reading of its own, whose
// wordings a test may change.
func loadedCopy(tb testing.TB) *Lexicon {
	tb.Helper()
	lex, err := loaded()
	require.NoError(tb, err)
	own, reading := *lex, *lex.Reading
	own.Reading = &reading
	return &own
}

// wordingProblems reads a wording file as the program does at start.
func wordingProblems(tb testing.TB, file string) (map[string]map[string]map[string][]string, Problems) {
	tb.Helper()
	lex := loadedCopy(tb)
	lex.Reading.Wordings = nil
	w := newWordingSource()
	require.NoError(tb, w.parse(fstest.MapFS{wordingFileName: &fstest.MapFile{Data: []byte(file)}}))
	return w.read(lex), *w.problems
}

func TestBuiltinWordingsAreFreeOfProblems(t *testing.T) {
	all, problems := wordingProblems(t, builtinWordings(t))
	require.Empty(t, problems)
	asked, hardest, sum := 0, 0.0, 0.0
	for _, section := range wordingTree() {
		for _, group := range section.groups {
			for _, list := range group.lists {
				wordings := all[section.name][group.name][list.name]
				require.GreaterOrEqual(t, len(wordings), list.place.fewest, "%s %s %s", section.name, group.name, list.name)
				if !list.place.asks {
					continue
				}
				for _, w := range wordings {
					asked++
					g := Grade(filled(w, longestQuote/2))
					hardest = max(hardest, g)
					sum += g
				}
			}
		}
	}
	t.Logf("%d questions, mean grade %.2f, hardest %.1f", asked, sum/float64(asked), hardest)
	require.Greater(t, asked, 400)
	assert.LessOrEqual(t, sum/float64(asked), 4.0)
}

// TestBrokenWordings breaks one thing at a time in the built-in file and wants
// the line, and what to do about it.
func TestBrokenWordings(t *testing.T) {
	const whole = `      - "Before you touched any food, what did you do about germs?"` + "\n"
	line := strings.Count(builtinWordings(t)[:strings.Index(builtinWordings(t), whole)], "\n") + 1
	for _, c := range []struct {
		name, with string
		say        []string
	}{
		{"an unknown slot", "What of your {dsh}?", []string{"no slot {dsh}", "did you mean {dish}?"}},
		{"a slot of another list", "You wrote {words}. What then?", []string{"no slot {words}", "use {dish}"}},
		{"a bracket alone", "What of your {dish?", []string{"curly bracket", "{dish}"}},
		{"no question mark", "Tell a reader about germs.", []string{"no question mark", "end it with one"}},
		{"two question marks", "Did you? What was it?", []string{"one thing", "only question mark"}},
		{"words behind the mark", "What did you do? Think.", []string{"one thing", "only question mark"}},
		{"a sensory word", "How did you get it so crispy?", []string{"crispy", "writer's mouth"}},
		{"a form of a sensory word", "How did you get it crispier?", []string{"crispier"}},
		{"a judging word", "How did you make it so nice?", []string{"nice", "writer's mouth"}},
		{"a verb for one only", "When your {dish} was ready, what did you do?", []string{"one or many", "got"}},
		{"too long", strings.Repeat("Think of it. ", 9) + "What did you do?", []string{"31 words", "shorten it to 30"}},
		{"too hard", "Which contamination considerations influenced your preparation?", []string{"hard to read", "shorter words"}},
		{"nothing", "", []string{"piece of text", "4 of"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			broken := strings.Replace(builtinWordings(t), whole, fmt.Sprintf("      - %q\n", c.with), 1)
			wordings, problems := wordingProblems(t, broken)
			if c.with == "" {
				return // an empty entry is passed over; the rest of the list is enough
			}
			require.Len(t, problems, 1, "%v", problems)
			assert.Equal(t, wordingFileName, problems[0].File)
			assert.Equal(t, line, problems[0].Line)
			assert.Equal(t, 9, problems[0].Column)
			for _, want := range c.say {
				assert.Contains(t, problems[0].Text, want)
			}
			assert.NotContains(t, wordings["learner"]["hygiene"]["said"], c.with, "what is wrong is not asked")
			assert.Len(t, wordings["learner"]["hygiene"]["said"], 5, "the others are")
		})
	}
}

func TestMissingAndUnknownParts(t *testing.T) {
	file := builtinWordings(t)
	cut := func(from, to string) string {
		i := strings.Index(file, from)
		require.GreaterOrEqual(t, i, 0, from)
		j := strings.Index(file[i:], to)
		require.Positive(t, j, to)
		return file[:i] + file[i+j:]
	}
	for _, c := range []struct {
		name, file string
		say        []string
	}{
		{"an area", cut("  safety:\n", "  organisation:\n"), []string{"learner has no safety", "add a row \"safety:\""}},
		{"a list", cut("    vague:\n", "    detail:\n"), []string{"hygiene of learner has no vague", "add a row"}},
		{"a section", cut("\nlast:\n", "\nlook:\n"), []string{"questions has no last"}},
		{"a kind of danger", cut("    storage:\n", "    raw-tasting:\n"), []string{"learner of danger has no storage"}},
		{"an unknown area", strings.Replace(file, "  safety:\n", "  saftey:\n", 1), []string{"no row called \"saftey\"", "did you mean \"safety\"?", "learner has no safety"}},
		{"an unknown list", strings.Replace(file, "    reason:\n", "    reasons:\n", 1), []string{"no row called \"reasons\"", "did you mean \"reason\"?", "has no reason"}},
		{"an empty area", strings.Replace(cut("  safety:\n", "  organisation:\n"), "  organisation:\n", "  safety:\n  organisation:\n", 1), []string{"safety of learner is empty"}},
		{"too few", "learner:\n  hygiene:\n    said: [\"What did you do?\"]\n", []string{"said of hygiene of learner has 1 of the 4 wordings it needs; add 3 more"}},
		{"a list that is none", strings.Replace(file, "    said:\n", "    said: What did you do?\n    old:\n", 1), []string{"should be a list", "no row called \"old\""}},
		{"twice the same", strings.Replace(file, "      - \"How did you keep germs away from your {dish}?\"\n", strings.Repeat("      - \"How did you keep germs away from your {dish}?\"\n", 2), 1), []string{"stands in line", "in another way"}},
		{"praise that asks", strings.Replace(file, "Now a reader can picture it.", "Now who can picture it?", 1), []string{"does not ask", "take out the question mark"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, problems := wordingProblems(t, c.file)
			require.NotEmpty(t, problems)
			for _, p := range problems {
				assert.NotZero(t, p.Line, p.Text)
				assert.NotZero(t, p.Column, p.Text)
			}
			for _, want := range c.say {
				assert.Contains(t, problems.Error(), want)
			}
		})
	}
}

// TestOwnWordingsLieOverTheBuiltIn holds what a tutor's own file does: a list
// takes the place of the one below, all else stays.
func TestOwnWordingsLieOverTheBuiltIn(t *testing.T) {
	lex := loadedCopy(t)
	below := lex.Reading.Wordings
	before := fmt.Sprint(below)
	var problems Problems
	s := source{file: "course.yaml", layer: 1, problems: &problems}
	root := s.root([]byte("learner:\n  taste:\n    said:\n      - \"What did you taste?\"\n      - \"Your {dish}: what did your tongue find?\"\n      - \"What taste came last?\"\n      - \"Which thing did you taste most?\"\n"))
	over := s.wordingFile(root, lex, below)
	require.Empty(t, problems)
	assert.Len(t, over["learner"]["taste"]["said"], 4)
	assert.Equal(t, "What did you taste?", over["learner"]["taste"]["said"][0])
	assert.Equal(t, below["learner"]["taste"]["vague"], over["learner"]["taste"]["vague"])
	assert.Equal(t, slices.Sorted(maps.Keys(below)), slices.Sorted(maps.Keys(over)))
	assert.Equal(t, before, fmt.Sprint(below), "what is below stays as it was")
}

// TestGrade checks the formula of Flesch and Kincaid by hand.
func TestGrade(t *testing.T) {
	for _, c := range []struct {
		text                        string
		words, sentences, syllables float64
	}{
		{"What did you do?", 4, 1, 4},
		{"You wrote “nice”. What did you taste first?", 8, 2, 8},
		{"Which vegetable did you peel before you began?", 8, 1, 12},
	} {
		want := 0.39*c.words/c.sentences + 11.8*c.syllables/c.words - 15.59
		assert.InDelta(t, want, Grade(c.text), 1e-9, c.text)
	}
	assert.Zero(t, Grade(""))
	assert.Zero(t, Grade("?!"))
	assert.Equal(t, 3, Words("don't stop-me"))
}

// TestSyllableCounts pins counts from the CMU Pronouncing Dictionary (npm
// cmu-pronouncing-dictionary 3.0.0); over the 5,026 words of the word files
// that it has, the estimate agrees for 97 in 100.
func TestSyllableCounts(t *testing.T) {
	for word, want := range map[string]int{
		"a": 1, "the": 1, "cake": 1, "baked": 1, "bakes": 1, "tasted": 2, "mixed": 1, "dishes": 2, "little": 2, "sprinkled": 2,
		"idea": 3, "create": 2, "special": 2, "onion": 2, "texture": 2, "appearance": 3, "hygiene": 2, "organisation": 5, "frying": 2,
		"tried": 1, "carried": 2, "golden": 2, "crumbling": 3, "didn't": 2, "because": 2, "something": 2, "recipe": 3, "use": 1, "used": 1,
		"quickly": 2, "beautiful": 3, "kitchen": 2, "safely": 2, "oven": 2, "area": 3, "people": 2, "whole": 1, "centre": 2, "tongue": 1,
		"smell": 1, "flavour": 2, "vegetables": 3, "minutes": 2, "being": 2, "eat": 1, "year": 1, "quiet": 2,
	} {
		assert.Equal(t, want, Syllables(word), word)
	}
}
