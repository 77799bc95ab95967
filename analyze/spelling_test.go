package analyze

import (
	"bufio"
	"flag"
	"os"
	"sort"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywhy/analyze/perceptron"
	"saywhy/lexicon"
)

var update = flag.Bool("update", false, "rewrite lexicon/builtin/reading/realwords.txt")

// TestNoRealWordIsMended checks the mending of slips against word lists made
// elsewhere: Debian's wbritish and wamerican (SCOWL). No word of theirs may be
// taken for a misspelling of another. The words that would be stand in
// realwords.txt; -update finds them again after a word list has grown.
func TestNoRealWordIsMended(t *testing.T) {
	words := dictionary(t)
	tagger, err := perceptron.New()
	require.NoError(t, err)
	lex, err := lexicon.Load()
	require.NoError(t, err)
	if *update {
		lex.Reading.RealWords = map[string]bool{}
	}
	v := newVocabulary(lex, tagger)
	var mended []string
	for _, w := range words {
		if fixed := v.correct(w); fixed != w && len(lex.Reading.Spelling[w]) == 0 {
			mended = append(mended, w)
		}
	}
	if *update {
		sort.Strings(mended)
		require.NoError(t, os.WriteFile("../lexicon/builtin/reading/realwords.txt", []byte(strings.Join(mended, "\n")+"\n"), 0o644))
		return
	}
	require.Empty(t, mended, "real words that would be changed; run go test ./analyze -run RealWord -update")
}

// dictionary reads Debian's lists; CI installs them.
func dictionary(t *testing.T) []string {
	t.Helper()
	set := map[string]bool{}
	for _, name := range []string{"/usr/share/dict/british-english", "/usr/share/dict/american-english"} {
		f, err := os.Open(name)
		if err != nil && os.Getenv("CI") == "" {
			t.Skip("Debian's wbritish and wamerican are not installed")
		}
		require.NoError(t, err)
		lines := bufio.NewScanner(f)
		for lines.Scan() {
			w := lines.Text()
			if strings.Trim(w, "abcdefghijklmnopqrstuvwxyz") == "" {
				set[w] = true
			}
		}
		require.NoError(t, lines.Err())
		require.NoError(t, f.Close())
	}
	out := make([]string, 0, len(set))
	for w := range set {
		out = append(out, w)
	}
	sort.Strings(out)
	require.Greater(t, len(out), 60000)
	return out
}

// TestAMisspeltNounDescribesNothing: the tagger takes a noun it does not know
// for an adjective; behind "my" it is none.
func TestAMisspeltNounDescribesNothing(t *testing.T) {
	r := readPlain(t, "It smelt so good my neibour asked what we were having.")
	require.Len(t, r.Sentences, 1)
	require.Empty(t, r.Sentences[0].Sensory)
}
