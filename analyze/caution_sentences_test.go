package analyze

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestCautionsOfSentences reads single sentences: each danger is found as its
// kind and no other, and none is seen where the usual words tell of none.
func TestCautionsOfSentences(t *testing.T) {
	data, err := os.ReadFile("testdata/cautions.tsv")
	require.NoError(t, err)
	counts := map[bool]int{}
	for _, line := range strings.Split(strings.TrimSpace(string(data)), "\n") {
		if strings.HasPrefix(line, "#") {
			continue
		}
		kind, text, ok := strings.Cut(line, "\t")
		require.True(t, ok, "no tab in %q", line)
		have := []string{}
		for _, c := range readPlain(t, text).Cautions {
			have = append(have, c.Kind)
		}
		want := []string{}
		if kind != "-" {
			want = append(want, kind)
		}
		assert.Equal(t, want, have, text)
		counts[kind != "-"]++
	}
	assert.GreaterOrEqual(t, counts[true], 150, "sentences with a danger")
	assert.GreaterOrEqual(t, counts[false], 150, "sentences without one")
}

// TestWhoseDanger: only a danger of this dish and of this day is one.
func TestWhoseDanger(t *testing.T) {
	for text, want := range map[string]int{
		"I cut my finger.":                                      1,
		"Last time I cut my finger.":                            0,
		"I soaked the skewers or they catch fire.":              0,
		"If you cut your finger you need a plaster.":            0,
		"The tea towel caught fire.":                            1,
		"I forgot to put the rice in the fridge overnight.":     0, // where it was is not told
		"The rice was on the side overnight.":                   1,
		"The rice was in the fridge overnight.":                 0,
		"The temperature of the chicken was 62.":                1,
		"The temperature of the oven was 160 for the meringue.": 0,
	} {
		assert.Len(t, readPlain(t, text).Cautions, want, text)
	}
}
