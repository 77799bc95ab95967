package lexicon_test

import (
	"bytes"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/lexicon"
)

// snowballData is where the Debian package snowball-data puts the reference
// vocabulary of the English stemmer.
const snowballData = "/usr/share/snowball/data/english"

// stemwords is the stemmer of the Debian package libstemmer-tools.
const stemwords = "/usr/bin/stemwords"

func TestStemEqualsTheSnowballVocabulary(t *testing.T) {
	// Source: Debian snowball-data 0+20210120, english/voc.txt and output.txt,
	// 29,417 pairs. The one known difference is a word of three apostrophes, of
	// which the reference leaves a lone one and the Go package none (counted
	// here).
	words := lines(t, need(t, filepath.Join(snowballData, "voc.txt")))
	stems := lines(t, need(t, filepath.Join(snowballData, "output.txt")))
	require.Len(t, words, 29417)
	require.Len(t, stems, len(words))
	var differ []string
	for i, word := range words {
		if lexicon.Stem(word) != stems[i] {
			differ = append(differ, word)
		}
	}
	assert.Equal(t, []string{"'''"}, differ)
}

func TestStemEqualsLibstemmerOnEveryWordAndForm(t *testing.T) {
	need(t, stemwords)
	var words []string
	for _, w := range load(t).Words() {
		for _, s := range append([]string{w.Word}, w.Forms...) {
			if !strings.Contains(s, " ") {
				words = append(words, strings.ToLower(s))
			}
		}
	}
	require.NotEmpty(t, words)
	slices.Sort(words)
	words = slices.Compact(words)

	var out, complaint bytes.Buffer
	cmd := exec.CommandContext(t.Context(), stemwords, "-l", "english", "-c", "UTF_8")
	cmd.Stdin = strings.NewReader(strings.Join(words, "\n") + "\n")
	cmd.Stdout, cmd.Stderr = &out, &complaint
	require.NoError(t, cmd.Run(), complaint.String())
	stems := strings.Split(strings.TrimSuffix(out.String(), "\n"), "\n")
	require.Len(t, stems, len(words), "stemwords gives one stem a line")
	for i, word := range words {
		assert.Equal(t, stems[i], lexicon.Stem(word), "the stem of %q", word)
	}
}

func TestStemJoinsFormsButNotEveryDerivedWord(t *testing.T) {
	// Source: stemwords -l english of Debian libstemmer-tools 2.2.0 (run once
	// by hand). crispy and crispness part, which is why the
	// word files list such forms.
	tests := []struct{ word, want string }{
		{"crumbly", "crumbl"},
		{"crumbled", "crumbl"},
		{"crumbling", "crumbl"},
		{"crispy", "crispi"},
		{"crispness", "crisp"},
	}
	for _, tt := range tests {
		t.Run(tt.word, func(t *testing.T) {
			assert.Equal(t, tt.want, lexicon.Stem(tt.word))
		})
	}
}
