package main

import (
	"bytes"
	"flag"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

var updateReadme = flag.Bool("update-readme", false, "write what the first command prints into README.md")

// TestReadmeShowsWhatTheToolPrints runs the README's first command and compares
// its output with the block that stands there.
func TestReadmeShowsWhatTheToolPrints(t *testing.T) {
	data, err := os.ReadFile("../../README.md")
	require.NoError(t, err)
	readme := string(data)

	const command = `go run ./cmd/saywhy read testdata/demo/tamsin-lentil-soup.txt --dish "lentil soup"`
	require.Contains(t, readme, "\n    "+command+"\n")
	var out, errs bytes.Buffer
	args := []string{"read", "../../testdata/demo/tamsin-lentil-soup.txt", "--dish", "lentil soup"}
	require.Zero(t, run(args, streams{in: strings.NewReader(""), out: &out, err: &errs}), errs.String())

	start := strings.Index(readme, "```\n")
	require.Positive(t, start)
	start += len("```\n")
	end := strings.Index(readme[start:], "```\n")
	require.GreaterOrEqual(t, end, 0)
	if *updateReadme {
		readme = readme[:start] + out.String() + readme[start+end:]
		require.NoError(t, os.WriteFile("../../README.md", []byte(readme), 0o644))
		return
	}
	require.Equal(t, out.String(), readme[start:start+end], "run go test ./cmd/saywhy -run Readme -update-readme")
}
