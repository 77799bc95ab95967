package lexicon_test

import (
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/lexicon"
)

// tutors is a file as a tutor may keep it: comments everywhere, blank lines,
// alignment and quotes of her own.
const tutors = `# My soups.
#   Second line.

type: soups      # do not change

# Mine, from the autumn.
words:
  # what the tongue tells
  taste:
    # from Wednesday's group
    figgy:    {means: 'like dried figs',   of: [jam]}   # ask Ann

    plummy: # a row over several lines
      means: "like plums"   # short
      # nouns to come
      of: [jam]
    zesty: {means: "like peel"}
    # end of taste

  texture:
    settish: {means: "keeps its shape"}
# last words
`

func set(sense lexicon.Sense, word, means string) lexicon.Change {
	return lexicon.Change{Word: lexicon.Word{Sense: sense, Word: word, Means: means}}
}

// edited makes changes and checks that the file still loads and that no
// comment is gone.
func edited(tb testing.TB, file string, changes ...lexicon.Change) string {
	tb.Helper()
	out, err := lexicon.EditDish([]byte(file), changes)
	require.NoError(tb, err)
	_, _, problems := courseProblems(tb, fstest.MapFS{"dishes/soups.yaml": {Data: out}})
	require.Empty(tb, problems, "%s", out)
	for _, line := range strings.Split(file, "\n") {
		if i := strings.IndexByte(line, '#'); i >= 0 {
			require.Contains(tb, string(out), strings.TrimSpace(line[i:]))
		}
	}
	return string(out)
}

func TestAnEditTouchesItsRowAlone(t *testing.T) {
	got := edited(t, tutors, set(lexicon.Tongue, "figgy", "like figs"))
	assert.Equal(t, strings.Replace(tutors, `    figgy:    {means: 'like dried figs',   of: [jam]}   # ask Ann`, `    figgy: {means: "like figs"} # ask Ann`, 1), got)
}

func TestAnEditOfSeveralLinesKeepsTheCommentsInThem(t *testing.T) {
	got := edited(t, tutors, set(lexicon.Tongue, "plummy", "like ripe plums"))
	assert.Contains(t, got, "    # nouns to come\n    plummy: {means: \"like ripe plums\"}\n    zesty:")
	assert.Contains(t, got, "    # short\n")
}

func TestANewRowStandsInTheAlphabet(t *testing.T) {
	got := edited(t, tutors, set(lexicon.Tongue, "quincy", "like quinces"), set(lexicon.Tongue, "appley", "like apples"), set(lexicon.Touch, "soft-set", "moves when you shake it"))
	assert.Contains(t, got, "      of: [jam]\n    quincy: {means: \"like quinces\"}\n    zesty:")
	assert.Contains(t, got, "    settish: {means: \"keeps its shape\"}\n    soft-set: {means: \"moves when you shake it\"}\n# last words\n")
	assert.Contains(t, got, "    appley: ")
}

func TestASectionThatIsMissingIsMade(t *testing.T) {
	got := edited(t, tutors, set(lexicon.Smell, "figgy", "like dried figs"), set(lexicon.Sight, "figgy", "brown like figs"))
	assert.Contains(t, got, "  appearance:\n    figgy: {means: \"brown like figs\"}\n")
	assert.Contains(t, got, "  aroma:\n    figgy: {means: \"like dried figs\"}\n")
	got = edited(t, "type: soups # mine\n", set(lexicon.Smell, "figgy", "like dried figs"))
	assert.Equal(t, "type: soups # mine\nwords:\n  aroma:\n    figgy: {means: \"like dried figs\"}\n", got)
	got = edited(t, "type: soups\nwords:\n  aroma: # none yet\n  taste:\n", set(lexicon.Smell, "figgy", "like dried figs"))
	assert.Equal(t, "type: soups\nwords:\n  aroma: # none yet\n    figgy: {means: \"like dried figs\"}\n  taste:\n", got)
	got = edited(t, "type: soups\nwords:\n", set(lexicon.Smell, "figgy", "like dried figs"))
	assert.Equal(t, "type: soups\nwords:\n  aroma:\n    figgy: {means: \"like dried figs\"}\n", got)
}

func TestARowGoesAndItsCommentsStay(t *testing.T) {
	gone := lexicon.Change{Word: lexicon.Word{Sense: lexicon.Tongue, Word: "figgy"}, Remove: true}
	got := edited(t, tutors, gone)
	assert.NotContains(t, got, "figgy")
	assert.Contains(t, got, "    # ask Ann\n")
	assert.Equal(t, got, edited(t, got, gone), "what is gone can go again")
}

func TestOddWordsAreWrittenSoThatTheyComeBack(t *testing.T) {
	var changes []lexicon.Change
	for _, word := range []string{"yes", "null", "1 and a half", "a: b", "# hash", "it's", `say "so"`, "- dash", "{brace", "*star", "&and", "!bang", "%x", "@home", "crème", "a, b", "[x]", strings.Repeat("long", 30)} {
		changes = append(changes, lexicon.Change{Word: lexicon.Word{
			Sense: lexicon.Tongue, Word: word, Means: `a "b": c # d` + "\nnext", Of: []string{word, "no", "1"},
			Forms: []string{word + "xx", "p, q"}, Scale: "x: y", Step: 1, From: "soups",
		}})
	}
	out, err := lexicon.EditDish([]byte(tutors), changes)
	require.NoError(t, err)
	lex, _, problems := courseProblems(t, fstest.MapFS{"dishes/soups.yaml": {Data: out}})
	require.Empty(t, problems, "%s", out)
	d, _ := lex.Type("soups")
	for _, c := range changes {
		got, ok := finds(d.Words, lexicon.Tongue, c.Word.Word)
		require.True(t, ok, c.Word.Word)
		assert.Equal(t, c.Word, got)
	}
}

func TestAWordTooLongForARowIsRefused(t *testing.T) {
	_, err := lexicon.EditDish([]byte(tutors), []lexicon.Change{set(lexicon.Tongue, strings.Repeat("long", 40), "x")})
	require.Error(t, err)
	assert.Contains(t, err.Error(), "by hand")
}

func TestLineEndsStay(t *testing.T) {
	got := edited(t, strings.ReplaceAll(tutors, "\n", "\r\n"), set(lexicon.Tongue, "quincy", "like quinces"))
	assert.Equal(t, strings.Count(got, "\n"), strings.Count(got, "\r\n"))
}

func TestWordsAreLeftOut(t *testing.T) {
	out, err := lexicon.LeaveOut([]byte(tutors), []lexicon.Word{{Sense: lexicon.Sight, Word: "beige"}, {Sense: lexicon.Sight, Word: "amber"}})
	require.NoError(t, err)
	assert.Equal(t, tutors+"without:\n  appearance: [beige, amber]\n", string(out))
	again, err := lexicon.LeaveOut(out, []lexicon.Word{{Sense: lexicon.Sight, Word: "blue"}, {Sense: lexicon.Tongue, Word: "sweet"}, {Sense: lexicon.Sight, Word: "amber"}})
	require.NoError(t, err)
	assert.Equal(t, tutors+"without:\n  appearance: [beige, amber, blue]\n  taste: [sweet]\n", string(again))
}

func TestAFileThatCannotBeEditedIsLeftAlone(t *testing.T) {
	for name, c := range map[string]struct{ file, tell string }{
		"rows in braces":   {"type: soups\nwords: {taste: {figgy: {means: like figs}}}\n", "line of its own"},
		"sense in braces":  {"type: soups\nwords:\n  taste: {figgy: {means: like figs}}\n", "line of its own"},
		"broken":           {"type: [soups\n", "mend it first"},
		"empty":            {"", "mend it first"},
		"words as a list":  {"type: soups\nwords: [figgy]\n", "mend it first"},
		"an anchor in use": {"type: soups\nwords:\n  taste:\n    figgy: &a {means: like figs}\n    datey: *a\n", "by hand"},
	} {
		_, err := lexicon.EditDish([]byte(c.file), []lexicon.Change{set(lexicon.Tongue, "figgy", "like dried figs")})
		if assert.Error(t, err, name) {
			assert.Contains(t, err.Error(), c.tell, name)
			assert.NotContains(t, err.Error(), "\n")
		}
	}
}
