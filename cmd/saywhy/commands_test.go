package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"unicode"

	"github.com/spf13/cobra"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// ran is what a command line did.
type ran struct {
	status   int
	out, err string
}

// sayWhy runs a command line with the text given as standard input.
func sayWhy(tb testing.TB, stdin string, args ...string) ran {
	tb.Helper()
	var out, errs bytes.Buffer
	status := run(args, streams{in: strings.NewReader(stdin), out: &out, err: &errs})
	return ran{status, out.String(), errs.String()}
}

// built is the tool as it is installed, built once for all tests.
var built struct {
	once sync.Once
	dir  string // for TestMain to remove
	name string
	err  error
}

// builtSayWhy returns the name of the built tool.
func builtSayWhy(tb testing.TB) string {
	tb.Helper()
	built.once.Do(func() {
		if built.dir, built.err = os.MkdirTemp("", "saywhy"); built.err != nil {
			return
		}
		built.name = filepath.Join(built.dir, "saywhy")
		var out []byte
		if out, built.err = exec.Command("go", "build", "-o", built.name, ".").CombinedOutput(); built.err != nil {
			built.err = fmt.Errorf("%w: %s", built.err, out)
		}
	})
	require.NoError(tb, built.err)
	return built.name
}

// file writes a file of the test's own folder and returns its name.
func file(tb testing.TB, name, content string) string {
	tb.Helper()
	path := filepath.Join(tb.TempDir(), name)
	require.NoError(tb, os.WriteFile(path, []byte(content), 0o600))
	return path
}

const evaluation = "I tied my hair back so that none fell in the bowl. The crumble was nice.\nThe top was golden and crunchy because I baked it on the top shelf."

func TestReadAsText(t *testing.T) {
	got := sayWhy(t, "", "read", file(t, "crumble.txt", evaluation), "--dish", "apple crumble")
	require.Equal(t, exitDone, got.status, got.err)
	assert.Empty(t, got.err)
	for _, want := range []string{"1  I tied my hair back", "2  The crumble was nice.", "golden, crunchy", "says why", "hygiene", "improvement", "1. "} {
		assert.Contains(t, got.out, want)
	}
	for _, line := range strings.Split(got.out, "\n") {
		assert.LessOrEqual(t, len([]rune(line)), plainWidth, "line %q", line)
	}
	assert.NotContains(t, got.out, "\x1b", "no bold where it was not asked for")
}

func TestReadAsJSON(t *testing.T) {
	got := sayWhy(t, "", "read", file(t, "crumble.txt", evaluation), "--dish", "apple crumble", "--format", "json", "--questions", "2", "--role", "learner")
	require.Equal(t, exitDone, got.status, got.err)
	assert.Empty(t, got.err)
	// Other programs rely on these names.
	var report struct {
		Dish, Title, Role string
		Words             int
		Sentences         []struct {
			N, Start, End int
			Text          string
		}
		Areas     []struct{ Area string }
		Questions []struct{ N int }
		Cautions  []any
	}
	require.NoError(t, json.Unmarshal([]byte(got.out), &report))
	assert.NotEmpty(t, report.Dish)
	assert.Equal(t, "apple crumble", report.Title, "a dish that a type covers is what was cooked")
	assert.Equal(t, "learner", report.Role)
	require.Len(t, report.Sentences, 3)
	for i, s := range report.Sentences {
		assert.Equal(t, i+1, s.N)
		assert.Equal(t, evaluation[s.Start:s.End], s.Text)
	}
	assert.Len(t, report.Areas, 10)
	assert.Len(t, report.Questions, 2)
	assert.NotNil(t, report.Cautions)
}

// TestReadTakesStandardInput: without a name and for "-" alike.
func TestReadTakesStandardInput(t *testing.T) {
	named := sayWhy(t, "", "read", file(t, "crumble.txt", evaluation), "--format", "json")
	require.Equal(t, exitDone, named.status, named.err)
	for _, args := range [][]string{{"read", "--format", "json"}, {"read", "-", "--format", "json"}} {
		assert.Equal(t, named, sayWhy(t, evaluation, args...), "%q", args)
	}
}

func TestReadAnAdultsText(t *testing.T) {
	got := sayWhy(t, evaluation, "read", "--role", "adult", "--format", "json")
	require.Equal(t, exitDone, got.status, got.err)
	assert.Contains(t, got.out, `"role": "adult"`)
}

func TestReadAsksAsManyAsWanted(t *testing.T) {
	for asked, want := range map[string]func(int) bool{
		"0": func(n int) bool { return n > 3 }, // all there are
		"1": func(n int) bool { return n == 1 },
		"3": func(n int) bool { return n == 3 },
	} {
		got := sayWhy(t, "It was nice.", "read", "--questions", asked, "--format", "json")
		require.Equal(t, exitDone, got.status, got.err)
		var report struct{ Questions []any }
		require.NoError(t, json.Unmarshal([]byte(got.out), &report))
		assert.True(t, want(len(report.Questions)), "--questions %s asks %d", asked, len(report.Questions))
	}
}

// TestReadTextWithNothingInIt: a text may be like anything, so this is no
// wrong use.
func TestReadTextWithNothingInIt(t *testing.T) {
	for name, text := range map[string]string{
		"empty": "", "spaces": "   ", "line ends": "\r\n\n\r", "byte order mark": "\ufeff", "spaces up to the limit": strings.Repeat(" ", maxText),
	} {
		t.Run(name, func(t *testing.T) {
			got := sayWhy(t, "", "read", file(t, "nothing.txt", text))
			assert.Equal(t, exitDone, got.status, got.err)
			assert.NotEmpty(t, strings.TrimSpace(got.out), "a report all the same")
			assert.Empty(t, got.err)
		})
	}
	t.Run("as JSON", func(t *testing.T) {
		got := sayWhy(t, " \n", "read", "--format", "json")
		assert.Equal(t, exitDone, got.status, got.err)
		assert.Contains(t, got.out, `"sentences": []`)
		assert.NotContains(t, got.out, "null")
	})
}

// TestATextOfADishThatNobodyKnows: it is read as any dish is, here as on the
// pages and in a group, and one line on standard error says so and how to name
// a type. Common practice, no published source.
func TestATextOfADishThatNobodyKnows(t *testing.T) {
	good := file(t, "crumble.txt", evaluation)
	for dish, says := range map[string][]string{
		"sushi":             {`"sushi"`, "dish list"},
		"breds":             {`"breds"`, `"breads"`, "dish list"},
		"tomatto soop":      {`"tomato soup"`},
		"xylophone quartet": {"xylophone", "dish list"},
		"turnip pie":        {`"turnip pie"`, `"pastry"`, "name the type"},
	} {
		for name, args := range map[string][]string{"read": {"read", good}, "compare": {"compare", good, good}} {
			t.Run(name+" "+dish, func(t *testing.T) {
				plain := sayWhy(t, "", append(args, "--title", dish)...)
				require.Equal(t, exitDone, plain.status, plain.err)
				require.Empty(t, plain.err)
				got := sayWhy(t, "", append(args, "--dish", dish)...)
				assert.Equal(t, exitDone, got.status)
				assert.Equal(t, plain.out, got.out, "as without --dish")
				remarked(t, got.err, append(says, "any dish")...)
			})
		}
	}
}

// TestAListForADishThatNobodyKnows: the one for any dish. A slip of the fingers
// is an error: see TestOtherCommandsMisuse.
func TestAListForADishThatNobodyKnows(t *testing.T) {
	for _, dish := range []string{"sushi", "turnip pie"} {
		words := sayWhy(t, "", "words", dish, "--sense", "taste", "--format", "json")
		assert.Equal(t, sayWhy(t, "", "words", "--sense", "taste", "--format", "json").out, words.out)
		remarked(t, words.err, dish, "any dish")
		found := sayWhy(t, "", "words", dish, "--find", "it stuck to my teeth")
		assert.Equal(t, sayWhy(t, "", "words", "--find", "it stuck to my teeth").out, found.out)
		remarked(t, found.err, dish, "any dish")
		sheet := sayWhy(t, "", "sheet", dish)
		assert.Equal(t, exitDone, sheet.status)
		assert.Contains(t, sheet.out, strings.ToUpper(dish)+": FOR THE LEARNER")
		assert.Contains(t, sheet.out, "with what they mean: saywhy words\n", "a command that works")
		remarked(t, sheet.err, dish, "any dish")
	}
}

// remarked wants one line on standard error that holds all that is given.
func remarked(tb testing.TB, errs string, says ...string) {
	tb.Helper()
	assert.True(tb, strings.HasPrefix(errs, "saywhy: "), "%q", errs)
	assert.Equal(tb, 1, strings.Count(errs, "\n"), "one line: %q", errs)
	for _, want := range says {
		assert.Contains(tb, errs, want)
	}
}

// misuse is a command line that is wrong, or input that cannot be read.
type misuse struct {
	name  string
	stdin string
	args  []string
	says  []string // what the one line must hold for a person to mend it
}

func TestReadMisuse(t *testing.T) {
	good := file(t, "crumble.txt", evaluation)
	folder := t.TempDir()
	long := strings.Repeat("a ", maxText/2) + "b"
	checkMisuse(t, []misuse{
		{"binary file", "", []string{"read", file(t, "photo.png", "\x89PNG\r\n\x1a\n\xde\xad\xbe\xef")}, []string{"photo.png", "UTF-8"}},
		{"binary on standard input", "\x89PNG\r\n\x1a\n\x00\x00\xde\xad", []string{"read"}, []string{"pasted"}},
		{"a word processor's document", "", []string{"read", file(t, "crumble.docx", "PK\x03\x04\x14\x00\x06\x00")}, []string{"crumble.docx", "plain text"}},
		{"a page document", "", []string{"read", file(t, "crumble.pdf", "%PDF-1.7\n")}, []string{"crumble.pdf", "plain text"}},
		{"UTF-16", "", []string{"read", file(t, "wide.txt", "\xff\xfeI\x00 \x00")}, []string{"wide.txt", "UTF-8"}},
		{"UTF-16, big end first", "", []string{"read", file(t, "wide.txt", "\xfe\xff\x00I")}, []string{"wide.txt", "UTF-8"}},
		{"NUL bytes", "", []string{"read", file(t, "nul.txt", "It was\x00nice.")}, []string{"nul.txt", "6"}},
		{"invalid UTF-8", "", []string{"read", file(t, "latin.txt", "It was a cr\xe8me.")}, []string{"latin.txt", "11", "UTF-8"}},
		{"more than the limit", "", []string{"read", file(t, "long.txt", long)}, []string{"long.txt", "2 MB"}},
		{"more than the limit on standard input", long, []string{"read", "-"}, []string{"2 MB"}},
		{"a missing file", "", []string{"read", filepath.Join(folder, "gone.txt")}, []string{"gone.txt"}},
		{"an empty file name", "", []string{"read", ""}, nil},
		{"a folder", "", []string{"read", folder}, []string{"folder"}},
		{"two files", "", []string{"read", good, good}, []string{"2 files", "one"}},
		{"--questions -1", "", []string{"read", good, "--questions", "-1"}, []string{"-1", "0"}},
		{"--questions=-1", "", []string{"read", good, "--questions=-1"}, []string{"-1", "0"}},
		{"--questions many", "", []string{"read", good, "--questions", "many"}, []string{"many", "number"}},
		{"--questions 1.5", "", []string{"read", good, "--questions", "1.5"}, []string{"1.5", "number"}},
		{"--questions beyond counting", "", []string{"read", good, "--questions", "99999999999999999999"}, []string{"number"}},
		{"--questions without a number", "", []string{"read", good, "--questions"}, []string{"questions"}},
		{"an unknown role", "", []string{"read", good, "--role", "gran"}, []string{"gran", "learner", "adult"}},
		{"an unknown format", "", []string{"read", good, "--format", "xml"}, []string{"xml", "text", "json"}},
		{"an unknown flag", "", []string{"read", good, "--colour"}, []string{"--colour", "--help"}},
		{"an unknown short flag", "", []string{"read", good, "-z"}, []string{"z", "--help"}},
		{"an unknown command", "", []string{"reed", good}, []string{"reed"}},
		{"a file where a command belongs", "", []string{good}, []string{"crumble.txt"}},
		{"a flag where a command belongs", "", []string{"--dish", "soups"}, []string{"--dish"}},
	})
}

func TestOtherCommandsMisuse(t *testing.T) {
	folder := t.TempDir()
	checkMisuse(t, []misuse{
		{"words: an unknown dish", "", []string{"words", "soops"}, []string{`"soops"`, `"soups"`}},
		{"words: two dishes", "", []string{"words", "soups", "breads"}, nil},
		{"words: an unknown sense", "", []string{"words", "--sense", "touch"}, []string{"touch", "texture"}},
		{"words: an unknown format", "", []string{"words", "--format", "xml"}, []string{"xml", "json"}},
		{"dish: an unknown command", "", []string{"dish", "lst"}, []string{"lst"}},
		{"dish list: an unknown format", "", []string{"dish", "list", "--format", "xml"}, []string{"xml", "json"}},
		{"dish list: an argument too many", "", []string{"dish", "list", "soups"}, []string{"soups"}},
		{"score: no file", "", []string{"score"}, nil},
		{"score: a missing file", "", []string{"score", filepath.Join(folder, "gone.jsonl")}, []string{"gone.jsonl"}},
		{"score: a folder", "", []string{"score", folder}, []string{"folder"}},
		{"score: no labelled text", "", []string{"score", file(t, "bad.jsonl", "\nsoup\n")}, []string{"bad.jsonl", "line 2"}},
		{"score: an empty file", "", []string{"score", file(t, "none.jsonl", "")}, []string{"none.jsonl"}},
		{"score: an unknown part", "", []string{"score", file(t, "none.jsonl", ""), "--part", "half"}, []string{"half", "open", "held"}},
		{"score: one reader", "", []string{"score", file(t, "none.jsonl", ""), "--reader", "x.jsonl"}, []string{"--reader", "two"}},
		{"help: an unknown command", "", []string{"help", "reed"}, []string{"reed"}},
	})
}

// checkMisuse holds the exit status and the voice of errors (see the
// comment in root.go).
func checkMisuse(t *testing.T, cases []misuse) {
	t.Helper()
	require.NotEmpty(t, cases)
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			got := sayWhy(t, c.stdin, c.args...)
			assert.Equal(t, exitUsage, got.status)
			assert.Empty(t, got.out, "standard output")
			require.True(t, strings.HasPrefix(got.err, "saywhy: "), "standard error: %q", got.err)
			assert.Equal(t, 1, strings.Count(got.err, "\n"), "one line: %q", got.err)
			require.True(t, strings.HasSuffix(got.err, "\n"), "%q", got.err)
			line := strings.TrimSuffix(strings.TrimPrefix(got.err, "saywhy: "), "\n")
			require.NotEmpty(t, line)
			assert.False(t, unicode.IsUpper([]rune(line)[0]), "a capital: %q", line)
			assert.False(t, strings.HasSuffix(line, "."), "a full stop: %q", line)
			for _, machine := range []string{"strconv", "syscall", "goroutine", "no such file", "EOF", "errno"} {
				assert.NotContains(t, line, machine, "wording of the machine's own")
			}
			for _, want := range c.says {
				assert.Contains(t, line, want)
			}
		})
	}
}

// TestAnErrorLineStaysOneLine: whatever a person types.
func TestAnErrorLineStaysOneLine(t *testing.T) {
	for _, name := range []string{"so\r\nup\x1b[2J", "\xff\xfe", strings.Repeat("xyzzy ", 400)} {
		wrong, remark := sayWhy(t, "", "dish", "show", name), sayWhy(t, "I made soup.", "read", "--dish", name)
		assert.Equal(t, exitUsage, wrong.status, "%q", name)
		assert.Equal(t, exitDone, remark.status, "%q", name)
		for _, got := range []string{wrong.err, remark.err} {
			assert.Equal(t, 1, strings.Count(got, "\n"), "%q", got)
			assert.NotContains(t, got, "\x1b")
		}
	}
}

// everyCommand returns the paths of all commands, the root's own first.
func everyCommand() [][]string {
	out := [][]string{{}}
	var walk func(c *cobra.Command, path []string)
	walk = func(c *cobra.Command, path []string) {
		for _, sub := range c.Commands() {
			p := append(append([]string(nil), path...), sub.Name())
			out = append(out, p)
			walk(sub, p)
		}
	}
	walk(newRoot(streams{}), nil)
	return out
}

func TestHelpOfEveryCommand(t *testing.T) {
	commands := everyCommand()
	require.Greater(t, len(commands), 5)
	for _, path := range commands {
		name := strings.TrimSpace("saywhy " + strings.Join(path, " "))
		t.Run(name, func(t *testing.T) {
			for _, args := range [][]string{
				append(append([]string(nil), path...), "--help"),
				append(append([]string(nil), path...), "-h"),
				append([]string{"help"}, path...),
			} {
				got := sayWhy(t, "", args...)
				assert.Equal(t, exitDone, got.status, "%q: %s", args, got.err)
				assert.Contains(t, got.out, "Usage:", "%q", args)
				assert.Contains(t, got.out, name, "%q", args)
				assert.Empty(t, got.err, "%q", args)
			}
		})
	}
}

// TestCommandWithoutMoreShowsItsHelp: nothing to do is no wrong use.
func TestCommandWithoutMoreShowsItsHelp(t *testing.T) {
	for _, args := range [][]string{{"dish"}} {
		got := sayWhy(t, "", args...)
		assert.Equal(t, exitDone, got.status, "%q: %s", args, got.err)
		assert.Contains(t, got.out, "Usage:", "%q", args)
	}
}

func TestATextWithoutADishHasNoTitleOfAnyDish(t *testing.T) {
	name := file(t, "x.txt", "It was golden.")
	assert.Contains(t, ok(t, "read", name), "WHAT YOU WROTE: 3 words\n")
	assert.Contains(t, ok(t, "read", name, "--dish", "leek soup"), "WHAT YOU WROTE: leek soup, 3 words\n")
	assert.Contains(t, ok(t, "read", name, "--dish", "soups"), "WHAT YOU WROTE: Soups, 3 words\n")
}
