package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"saywhy/cmd/internal/needs"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// calc opens a file in LibreOffice Calc and saves it as something else; the
// filters are those of its command line.
func calc(tb testing.TB, home, in, to, dir string, more ...string) {
	tb.Helper()
	office := needs.Program(tb, "soffice")
	args := append([]string{"--headless", "-env:UserInstallation=file://" + filepath.ToSlash(home)}, more...)
	out, err := exec.Command(office, append(args, "--convert-to", to, "--outdir", dir, in)...).CombinedOutput()
	require.NoError(tb, err, "%s", out)
}

// awkward are words and meanings that a spreadsheet likes to take for something
// else: numbers, dates, formulas, booleans; and that a CSV file has to quote.
func awkward() map[string]string {
	return map[string]string{"dishes/soups.yaml": `type: soups
words:
  taste:
    "marsh, sea and \"salt\"": {means: "=like the sea, \"sort of\"; cold", of: [soup, "leek; soup"], forms: ["sea, salt", "+salt"]}
    "-briny": {means: "-1 and @home, like a date: 3-4", of: [soup]}
    "1/2 sharp": {means: "1/2", of: [soup], scale: "saltiness 3"}
    march: {means: "true", of: [soup], forms: ["1e3", "007", "10 %"]}
    crème-brûléeish: {means: "like burnt sugar – sweet & dark 🍮", of: [soup]}
`}
}

// TestASheetThroughARealSpreadsheet exports a list, opens it in Calc, saves it
// from there with commas and with semicolons, and takes each back with and
// without a byte order mark: nothing may have changed.
func TestASheetThroughARealSpreadsheet(t *testing.T) {
	if testing.Short() && os.Getenv("CI") == "" {
		t.Skip("it starts LibreOffice three times")
	}
	dir := course(t, awkward())
	work := t.TempDir()
	home := filepath.Join(work, "home")
	exported := filepath.Join(work, "soups.csv")
	ok(t, "dish", "export", "soups", exported, "--course", dir)
	// UTF-8 (76), commas (44), double quotes (34), from line 1.
	calc(t, home, exported, "ods", work, "--infilter=Text - txt - csv (StarCalc):44,34,76,1")
	before := readBack(t, dir, "dishes", "soups.yaml")
	for name, filter := range map[string]string{
		"comma":     "44,34,76,1",
		"semicolon": "59,34,76,1",
	} {
		out := filepath.Join(work, name)
		calc(t, home, filepath.Join(work, "soups.ods"), "csv:Text - txt - csv (StarCalc):"+filter, out)
		saved := readBack(t, out, "soups.csv")
		require.Greater(t, strings.Count(saved, "\n"), 800, name)
		for mark, text := range map[string]string{"": saved, " with a byte order mark": "\ufeff" + strings.TrimPrefix(saved, "\ufeff")} {
			got := sayWhy(t, text, "dish", "import", "soups", "-", "--course", dir, "--whole")
			assert.Equal(t, exitDone, got.status, "%s%s: %s%s", name, mark, got.out, got.err)
			assert.Contains(t, got.out, "nothing to change", name+mark)
		}
	}
	assert.Equal(t, before, readBack(t, dir, "dishes", "soups.yaml"))
}
