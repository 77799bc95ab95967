package main

import (
	"encoding/csv"
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"saywhy/cmd/internal/needs"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestWordsAsJSONKeepToTheContract(t *testing.T) {
	var rows []map[string]any
	require.NoError(t, json.Unmarshal([]byte(ok(t, "words", "soups", "--format", "json")), &rows))
	require.Greater(t, len(rows), 60)
	for _, r := range rows {
		for _, name := range []string{"word", "sense", "means", "forms", "scale", "step", "dish"} { // names that other programs rely on
			require.Contains(t, r, name)
		}
		require.Equal(t, "soups", r["dish"])
		require.NotNil(t, r["forms"])
	}
}

func TestWordsAsCSV(t *testing.T) {
	out := ok(t, "words", "soups", "--sense", "aroma", "--format", "csv")
	records, err := csv.NewReader(strings.NewReader(strings.TrimPrefix(out, "\ufeff"))).ReadAll()
	require.NoError(t, err)
	require.Greater(t, len(records), 8)
	for _, r := range records[1:] {
		assert.Equal(t, "aroma", r[0])
	}
}

func TestWordsToPrint(t *testing.T) {
	dir := course(t, map[string]string{"dishes/soups.yaml": "type: soups\nwords:\n  taste:\n    \"<b>\": {means: \"a <script>alert(1)</script> word & more\"}\n"})
	out := ok(t, "words", "lentil soup", "--format", "html", "--course", dir)
	assert.Contains(t, out, "@page { size: A4")
	assert.Contains(t, out, "@media print")
	assert.Contains(t, out, "For your lentil soup.")
	assert.NotRegexp(t, regexp.MustCompile(`(?i)https?:|//|<script|src=|@import|url\(`), out, "no other host and no script")
	assert.Contains(t, out, "&lt;script&gt;")
	for _, c := range regexp.MustCompile(`#[0-9a-fA-F]{3,6}\b`).FindAllString(out[:strings.Index(out, "</style>")], -1) {
		assert.Contains(t, []string{"#fff", "#000"}, c, "black on white")
	}
	assert.NotContains(t, out, "underline")
	small := regexp.MustCompile(`font[^;]*?(\d+)pt`).FindAllStringSubmatch(out, -1)
	require.NotEmpty(t, small)
	for _, m := range small {
		assert.GreaterOrEqual(t, len(m[1]), 2)
		assert.GreaterOrEqual(t, m[1], "12")
	}
}

// TestWordsPageInABrowser prints the page through Chromium.
func TestWordsPageInABrowser(t *testing.T) {
	browser := needs.Program(t, "chromium")
	dir := t.TempDir()
	page := filepath.Join(dir, "words.html")
	require.NoError(t, os.WriteFile(page, []byte(ok(t, "words", "soups", "--sense", "aroma", "--format", "html")), 0o600))
	pdf := filepath.Join(dir, "words.pdf")
	out, err := exec.Command(browser, "--headless", "--no-sandbox", "--disable-gpu", "--user-data-dir="+dir, "--no-pdf-header-footer", "--print-to-pdf="+pdf, page).CombinedOutput()
	require.NoError(t, err, "%s", out)
	data, err := os.ReadFile(pdf)
	require.NoError(t, err)
	assert.NotEmpty(t, regexp.MustCompile(`/Type\s*/Page\b[^s]`).FindAll(data, -1))
}

func TestWordsFind(t *testing.T) {
	out := ok(t, "words", "--find", "bits stick to my teeth")
	assert.Contains(t, out, "claggy")
	assert.Contains(t, out, "WORDS FOR “bits stick to my teeth”")
	assert.Contains(t, ok(t, "words", "soups", "--find", "xyzzy plugh"), "No word fits that")
	var rows []wordRow
	require.NoError(t, json.Unmarshal([]byte(ok(t, "words", "cakes", "--find", "it crumbles", "--sense", "texture", "--format", "json")), &rows))
	require.NotEmpty(t, rows)
	for _, r := range rows {
		assert.Equal(t, "texture", string(r.Sense))
	}
	assert.Equal(t, "[]\n", ok(t, "words", "--find", "xyzzy plugh", "--format", "json"))
	assert.Contains(t, refused(t, "words", "--find", "crumbly", "--format", "html"), "--format text")
	assert.NotContains(t, ok(t, "words", "--find", "bits\x1b[31m stick"), "\x1b")
}

func TestWordsToPrintAllAndLarge(t *testing.T) {
	few, all := ok(t, "words", "soups", "--format", "html"), ok(t, "words", "soups", "--format", "html", "--all", "--large")
	assert.NotContains(t, few, "<dt>gristly</dt>", "not typical of a soup")
	assert.Contains(t, all, "<dt>gristly</dt>")
	assert.Contains(t, all, `class="large"`)
	assert.Contains(t, refused(t, "words", "soups", "--all"), "--format html")
}
