package lexicon_test

import (
	"bufio"
	"os"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"

	"saywhy/lexicon"
)

// builtin loads the built-in lexicon once for all tests of the package: it is
// never changed after loading.
var builtin = sync.OnceValues(lexicon.Builtin)

func load(tb testing.TB) *lexicon.Lexicon {
	tb.Helper()
	lex, err := builtin()
	require.NoError(tb, err, "the built-in word files must be free of problems")
	require.NotEmpty(tb, lex.Words())
	require.NotEmpty(tb, lex.Types())
	return lex
}

// need returns a path that a Debian or npm package brings. A user's machine
// may do without it (the test is skipped); CI may not.
func need(tb testing.TB, path string) string {
	tb.Helper()
	if _, err := os.Stat(path); err != nil {
		if os.Getenv("CI") != "" {
			tb.Fatalf("CI needs %s: %v", path, err)
		}
		tb.Skipf("%s is not installed: %v", path, err)
	}
	return path
}

// lines returns the lines of a text file without their line ends.
func lines(tb testing.TB, path string) []string {
	tb.Helper()
	f, err := os.Open(path)
	require.NoError(tb, err)
	defer f.Close()
	var out []string
	s := bufio.NewScanner(f)
	for s.Scan() {
		out = append(out, s.Text())
	}
	require.NoError(tb, s.Err())
	require.NotEmpty(tb, out, "%s is empty", path)
	return out
}

// headwords returns every headword once, sorted.
func headwords(tb testing.TB) []string {
	tb.Helper()
	var out []string
	for _, w := range load(tb).Words() {
		out = append(out, w.Word)
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// singleWord reports whether a headword or form is one word: neither spaces
// nor hyphens join several.
func singleWord(s string) bool { return !strings.ContainsAny(s, " -") }

// finds returns the word of the sense that has the text as headword or form.
func finds(words []lexicon.Word, sense lexicon.Sense, text string) (lexicon.Word, bool) {
	for _, w := range words {
		if w.Sense == sense && w.Word == text {
			return w, true
		}
	}
	for _, w := range words {
		if w.Sense == sense && slices.Contains(w.Forms, text) {
			return w, true
		}
	}
	return lexicon.Word{}, false
}
