package analyze

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestReasonsToldWithoutAConnective reads sentences whose reason only the sense
// of two clauses tells, or a turn of speech, and others of the same build that
// give none. They follow what the labels mean (DEVELOPERS.md): no published treebank marks them so, and what connectives mean is checked
// against two in connectives_test.go.
func TestReasonsToldWithoutAConnective(t *testing.T) {
	data, err := os.ReadFile("testdata/reasons.tsv")
	require.NoError(t, err)
	read := map[string]int{}
	for _, line := range strings.Split(string(data), "\n") {
		label, text, ok := strings.Cut(line, "\t")
		if !ok || strings.HasPrefix(line, "#") {
			continue
		}
		read[label]++
		found := false
		for _, s := range readPlain(t, text).Sentences {
			found = found || len(s.Why) > 0
		}
		assert.Equal(t, label == "y", found, text)
	}
	require.GreaterOrEqual(t, read["y"], 60)
	require.GreaterOrEqual(t, read["n"], 60)
}
