package main

import (
	"archive/zip"
	"bytes"
	"encoding/json"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"github.com/xuri/excelize/v2"
)

func readBack(tb testing.TB, parts ...string) string {
	tb.Helper()
	data, err := os.ReadFile(filepath.Join(parts...))
	require.NoError(tb, err)
	return string(data)
}

func TestDishNewMakesAFileToFillIn(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "my course")
	out := ok(t, "dish", "new", "tray-bakes", "--from", "cakes", "--course", dir)
	assert.Contains(t, out, "tray-bakes.yaml")
	assert.Contains(t, ok(t, "dish", "check", "--course", dir), "All is well")
	assert.Contains(t, ok(t, "dish", "list", "--course", dir), "tray bakes")
	ok(t, "dish", "new", "soups", "--course", dir)

	assert.Contains(t, refused(t, "dish", "new", "soups", "--course", dir), "change that file")
	assert.Contains(t, refused(t, "dish", "new", "Tray bakes", "--course", dir), `"tray-bakes"`)
	assert.Contains(t, refused(t, "dish", "new", "pickles", "--course", dir), "--from")
	assert.Contains(t, refused(t, "dish", "new", "pickles", "--from", "braeds", "--course", dir), `"breads"`)
	assert.Contains(t, refused(t, "dish", "new", "pickles", "--from", "cakes"), "--course")
	assert.Contains(t, refused(t, "dish", "new", "breads", "--from", "cakes", "--course", dir), "already")
	refused(t, "dish", "new", "--course", dir)
}

func TestDishShowTellsWhereAWordComesFrom(t *testing.T) {
	out := ok(t, "dish", "show", "soups")
	for _, want := range []string{"[food]", "[pot]", "[soups]", "pot, and that from food", "what can hurt"} {
		assert.Contains(t, out, want)
	}
	var shown struct {
		Dish     string
		Families []string
		Words    json.RawMessage
	}
	require.NoError(t, json.Unmarshal([]byte(ok(t, "dish", "show", "pot", "--format", "json")), &shown))
	assert.Equal(t, "pot", shown.Dish)
	assert.Equal(t, []string{"food"}, shown.Families)
	assert.Contains(t, string(shown.Words), `"from"`)
	assert.Contains(t, refused(t, "dish", "show"), "dish list")
	assert.Contains(t, refused(t, "dish", "show", "lentil", "soup"), "quotation marks")
	assert.Contains(t, refused(t, "dish", "show", "soups", "--format", "csv"), "json")
}

func TestExportAndImportGoRound(t *testing.T) {
	dir := course(t, autumn())
	sheet := filepath.Join(t.TempDir(), "soups.csv")
	ok(t, "dish", "export", "soups", sheet, "--course", dir)
	before := readBack(t, dir, "dishes", "soups.yaml")
	assert.Contains(t, ok(t, "dish", "import", "soups", sheet, "--course", dir), "nothing to change")
	assert.Contains(t, ok(t, "dish", "import", "soups", sheet, "--course", dir, "--whole"), "nothing to change")
	assert.Equal(t, before, readBack(t, dir, "dishes", "soups.yaml"))

	// Into a course that has nothing of it yet, the same list comes out.
	other := course(t, nil)
	ok(t, "dish", "import", "soups", sheet, "--course", other, "--whole")
	list := func(dir string) string {
		return strings.ReplaceAll(ok(t, "dish", "export", "soups", "--course", dir), ", your course", "")
	}
	assert.Equal(t, list(dir), list(other))
}

func TestImportChangesAddsAndLeavesOut(t *testing.T) {
	files := autumn()
	files["dishes/soups.yaml"] = "# mine\n" + files["dishes/soups.yaml"]
	dir := course(t, files)
	sheet := file(t, "s.csv", "word;sense;means\nfiggish;taste;\"=like figs; \"\"sort of\"\"\"\ngloopsome;texture;thick, and slow\nbeige;appearance;a very light brown\n")
	tried := ok(t, "dish", "import", "soups", sheet, "--course", dir, "--try")
	assert.Contains(t, tried, "Nothing was written")
	assert.Equal(t, files["dishes/soups.yaml"], readBack(t, dir, "dishes", "soups.yaml"))

	out := ok(t, "dish", "import", "soups", sheet, "--course", dir)
	for _, want := range []string{"2 added: gloopsome (texture), beige (appearance)", "1 changed: figgish (taste)", "left as it is"} {
		assert.Contains(t, out, want)
	}
	got := readBack(t, dir, "dishes", "soups.yaml")
	assert.True(t, strings.HasPrefix(got, "# mine\n"))
	assert.Contains(t, got, `figgish: {means: "=like figs; \"sort of\"", of: [soup]}`, "the column of was not there")
	assert.Contains(t, got, `gloopsome: {means: "thick, and slow"}`)
	assert.Contains(t, ok(t, "words", "soups", "--course", dir), "gloopsome")

	ok(t, "dish", "import", "soups", sheet, "--course", dir, "--whole")
	assert.Equal(t, 4, strings.Count(ok(t, "dish", "export", "soups", "--course", dir), "\r\n"))
}

func TestImportRefusesByRowAndWritesNothing(t *testing.T) {
	dir := course(t, autumn())
	before := readBack(t, dir, "dishes", "soups.yaml")
	for text, want := range map[string]string{
		"sense,word,means\ntaste,a,like a\ntaste,b,\n":                              "row 3: \"b\" has no meaning",
		"sense,word,means\ntaste,a,like a\ntaste,nice,like b\n":                     "row 3: \"nice\" judges",
		"sense,word,means,forms\ntaste,a,like a,\ntaste,b,like b,crunchy\n":         "row 3: the form \"crunchy\"",
		"sense,word,means,scale,step\ntaste,a,like a,,\ntaste,b,like b,oddness,3\n": "row 3: the scale \"oddness\"",
		"sense,word\ntaste,a\n": "row 1: the column \"means\" is missing",
	} {
		line := refused(t, "dish", "import", "soups", file(t, "s.csv", text), "--course", dir)
		assert.Contains(t, line, want)
		assert.Contains(t, line, "nothing was written")
		assert.Equal(t, before, readBack(t, dir, "dishes", "soups.yaml"))
	}
	got := sayWhy(t, "sense,word,means\ntaste,a,\n,b,c\n", "dish", "import", "soups", "-", "--course", dir)
	assert.Equal(t, exitUsage, got.status)
	assert.Contains(t, got.out, "the sheet row 2: ")
	assert.Contains(t, got.out, "the sheet row 3: ")
	assert.Equal(t, "saywhy: 2 things to mend in the sheet; the list says where and how, and nothing was written\n", got.err)
	assert.Contains(t, refused(t, "dish", "import", "soups", "x.csv"), "--course")
	assert.Contains(t, refused(t, "dish", "import", "soups", "--course", dir), "needs a file")
	assert.Contains(t, refused(t, "dish", "import", "soups", "nowhere.csv", "--course", dir), "no file called")
	assert.Contains(t, refused(t, "dish", "export"), "needs a dish")
	assert.Contains(t, refused(t, "dish", "export", "soups", dir), "folder")
}

// evaluationsFolder is a folder of texts with words that no list has.
func evaluationsFolder(tb testing.TB) string {
	tb.Helper()
	dir := tb.TempDir()
	for name, text := range map[string]string{
		"soups/ann.txt":           "My soup was squimpy because I did not blend it. It smelt of leeks.",
		"soups/ben.txt":           "The soup was squimpy. It was golden.",
		"cakes/cat.txt":           "The cake was golden. The sponge felt squidgeful.",
		"dev-lentil-soup.txt":     "The soup was very squimppy.",
		"soups/scan.pdf":          "%PDF-1.7",
		".hidden/secret-soup.txt": "The soup was hiddenish.",
	} {
		path := filepath.Join(dir, filepath.FromSlash(name))
		require.NoError(tb, os.MkdirAll(filepath.Dir(path), 0o755))
		require.NoError(tb, os.WriteFile(path, []byte(text), 0o600))
	}
	return dir
}

func TestSuggestFindsWordsTheListLacks(t *testing.T) {
	dir := evaluationsFolder(t)
	out := ok(t, "dish", "suggest", dir)
	for _, want := range []string{"SOUPS: WORDS THAT THE LIST LACKS, FROM 3 TEXTS", "squimpy", "3 times, in 3 texts", "also written", "log-likelihood", `    squimpy: {means: "", of: [soup], forms: [squimppy]}`, "(soups/ann.txt)"} {
		assert.Contains(t, out, want)
	}
	assert.NotContains(t, out, "hiddenish")
	assert.Contains(t, out, "NOT READ\n  - soups/scan.pdf: is a PDF")
	assert.NotContains(t, ok(t, "dish", "suggest", dir, "--dish", "soups"), "squidgeful")
	assert.NotContains(t, ok(t, "dish", "suggest", filepath.Join(dir, "soups"), "--dish", "soups"), "log-likelihood", "with one dish there is nothing to compare")

	var rows []suggestionRow
	got := sayWhy(t, "", "dish", "suggest", dir, "--format", "json", "--most", "1")
	require.Equal(t, exitDone, got.status)
	assert.Contains(t, got.err, "not read: \"soups/scan.pdf\" is a PDF")
	assert.Equal(t, 1, strings.Count(got.err, "\n"))
	require.NoError(t, json.Unmarshal([]byte(got.out), &rows))
	require.NotEmpty(t, rows)
	assert.Len(t, rows[len(rows)-1].Examples, 2)
}

// TestAddingASuggestedWordIsOneStep pastes the row into the course file.
func TestAddingASuggestedWordIsOneStep(t *testing.T) {
	texts := evaluationsFolder(t)
	row := `    squimpy: {means: "", of: [soup], forms: [squimppy]}`
	require.Contains(t, ok(t, "dish", "suggest", texts), row)
	dir := course(t, map[string]string{"dishes/soups.yaml": "type: soups\nwords:\n  texture:\n" + row + "\n"})
	assert.Contains(t, refused(t, "words", "soups", "--course", dir), "has no meaning")
	dir = course(t, map[string]string{"dishes/soups.yaml": "type: soups\nwords:\n  texture:\n" + strings.Replace(row, `""`, `"wet and a bit lumpy"`, 1) + "\n"})
	assert.Contains(t, ok(t, "words", "soups", "--course", dir), "squimpy")
	assert.NotContains(t, ok(t, "dish", "suggest", texts, "--course", dir), "squimpy:")

	sheet := sayWhy(t, "", "dish", "suggest", texts, "--dish", "soups", "--format", "csv")
	require.Equal(t, exitDone, sheet.status)
	assert.Contains(t, sheet.err, "scan.pdf")
	assert.Contains(t, refused(t, "dish", "import", "soups", file(t, "s.csv", sheet.out), "--course", course(t, nil)), "has no meaning")
}

func TestSuggestSaysWhatItNeeds(t *testing.T) {
	dir := evaluationsFolder(t)
	assert.Contains(t, refused(t, "dish", "suggest"), "one folder")
	assert.Contains(t, refused(t, "dish", "suggest", filepath.Join(dir, "soups"), "--dish", "soops"), `"soups"`)
	assert.Contains(t, refused(t, "dish", "suggest", filepath.Join(dir, "nowhere")), "no folder called")
	assert.Contains(t, refused(t, "dish", "suggest", filepath.Join(dir, "dev-lentil-soup.txt")), "is a file")
	assert.Contains(t, refused(t, "dish", "suggest", t.TempDir()), "no evaluation")
	assert.Contains(t, refused(t, "dish", "suggest", dir, "--format", "csv"), "--dish")
	assert.Contains(t, refused(t, "dish", "suggest", dir, "--most", "-1"), "--most")
	mystery := filepath.Join(t.TempDir(), "texts")
	require.NoError(t, os.MkdirAll(mystery, 0o755))
	require.NoError(t, os.WriteFile(filepath.Join(mystery, "mystery.txt"), []byte("It was hot."), 0o600))
	assert.Contains(t, refused(t, "dish", "suggest", mystery), "cannot be told")
	ok(t, "dish", "suggest", mystery, "--dish", "soups")
	require.NoError(t, os.WriteFile(filepath.Join(mystery, "ann 01 xylophone quartet.txt"), []byte("It was hot."), 0o600))
	require.NoError(t, os.WriteFile(filepath.Join(mystery, "ann 02 leek soup.txt"), []byte("It was squimpy."), 0o600))
	out := strings.Join(strings.Fields(ok(t, "dish", "suggest", mystery)), " ")
	assert.Contains(t, out, "FROM 1 TEXT There is no other dish")
	assert.Contains(t, out, "ann 01 xylophone quartet.txt: its dish \"xylophone quartet\" is none that is known")
	assert.Contains(t, out, "mystery.txt: its dish cannot be told")
}

// TestSuggestReadsWhatAGroupIsReadFrom: one text of each format, with the dish
// told in each of the ways there are, and nobody's name needed.
func TestSuggestReadsWhatAGroupIsReadFrom(t *testing.T) {
	dir := t.TempDir()
	paragraph := func(s string) string { return "<w:p><w:r><w:t>" + s + "</w:t></w:r></w:p>" }
	for name, data := range map[string]string{
		"soups/a.txt":              "The soup was squimpy.",
		"b.md":                     "---\ndish: leek soup\n---\nThe soup was squimpy.",
		"c 01 leek soup.docx":      zipped(t, "word/document.xml", `<w:document xmlns:w="http://schemas.openxmlformats.org/wordprocessingml/2006/main"><w:body>`+paragraph("The soup was squimpy.")+`</w:body></w:document>`),
		"d/tomato soup.odt":        zipped(t, "content.xml", `<office:document-content xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0"><office:body><office:text><text:p>The soup was squimpy.</text:p></office:text></office:body></office:document-content>`),
		"form.csv":                 "dish,evaluation,feedback\nleek soup,The soup was squimpy.,The soup was grandmaish.\n",
		"session 3/e.txt":          "The soup was squimpy.",
		"adult feedback soups.txt": "The soup was mumsome.",
		"course.yaml":              "sessions:\n  - {title: Week 3, dish: leek soup}\n",
		"soups/scan.jpg":           "\xff\xd8",
		"soups/broken.docx":        "PK\x03\x04",
	} {
		path := filepath.Join(dir, filepath.FromSlash(name))
		require.NoError(t, os.MkdirAll(filepath.Dir(path), 0o755))
		require.NoError(t, os.WriteFile(path, []byte(data), 0o600))
	}
	sheet := excelize.NewFile()
	require.NoError(t, sheet.SetSheetRow("Sheet1", "A1", &[]string{"dish", "evaluation"}))
	require.NoError(t, sheet.SetSheetRow("Sheet1", "A2", &[]string{"leek soup", "The soup was squimpy."}))
	require.NoError(t, sheet.SaveAs(filepath.Join(dir, "form.xlsx")))

	got := sayWhy(t, "", "dish", "suggest", dir, "--format", "json")
	require.Equal(t, exitDone, got.status, got.err)
	var rows []suggestionRow
	require.NoError(t, json.Unmarshal([]byte(got.out), &rows))
	require.Len(t, rows, 1, got.out)
	assert.Equal(t, "squimpy", rows[0].Word)
	assert.Equal(t, 7, rows[0].Texts, "%s", got.err)
	assert.Equal(t, 2, strings.Count(got.err, "\n"), got.err)
	assert.Contains(t, got.err, "soups/scan.jpg")
	assert.Contains(t, got.err, "soups/broken.docx")
}

// zipped is a packed file with one part.
func zipped(tb testing.TB, part, data string) string {
	tb.Helper()
	var b bytes.Buffer
	z := zip.NewWriter(&b)
	w, err := z.Create(part)
	require.NoError(tb, err)
	_, err = io.WriteString(w, data)
	require.NoError(tb, err)
	require.NoError(tb, z.Close())
	return b.String()
}
