package corpus

import (
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// convert has LibreOffice turn files of testdata into another format, in a
// folder with a profile of its own, and returns the folder.
func convert(tb testing.TB, to string, files ...string) string {
	tb.Helper()
	office, err := exec.LookPath("soffice")
	if err != nil {
		if os.Getenv("CI") != "" {
			tb.Fatal("LibreOffice is not installed; .ci/run installs it")
		}
		tb.Skip("LibreOffice makes the documents for this test; on Debian, install libreoffice-writer and libreoffice-calc")
	}
	out, profile := tb.TempDir(), tb.TempDir()
	args := []string{"-env:UserInstallation=file://" + filepath.ToSlash(profile), "--headless", "--convert-to", to, "--outdir", out}
	for _, f := range files {
		args = append(args, filepath.Join("testdata", f))
	}
	said, err := exec.Command(office, args...).CombinedOutput()
	require.NoError(tb, err, "%s", said)
	return out
}

const workbookText = `The top was dark gold with peaks,  because I left it in ten minutes longer.

The recipe says thirty minutes.

It smelt of leeks and butter.
The sauce was smooth.

I used:

- the bridge hold for the leeks
- oven gloves
- both hands

Look at the drawing.

The crust split here.

Steam came out.

Taste

Salty from the fish.

A bit of lemon.

Texture

Flaky.`

func TestDocumentsOfLibreOfficeAreReadAsAPersonWould(t *testing.T) {
	// LibreOffice's own plain text has the same words.
	plain := convert(t, "txt:Text (encoded):UTF8", "columns.fodt")
	data, err := os.ReadFile(filepath.Join(plain, "columns.txt"))
	require.NoError(t, err)
	words := strings.Fields(strings.TrimPrefix(string(data), "\ufeff"))
	for ext, read := range map[string]func(fs.File) ([]block, error){"odt": odt, "docx": (&folderReader{}).docx} {
		dir := convert(t, ext, "workbook.fodt", "columns.fodt")
		require.NoError(t, os.MkdirAll(filepath.Join(dir, "noor"), 0o700))
		require.NoError(t, os.Rename(filepath.Join(dir, "workbook."+ext), filepath.Join(dir, "noor", "05 fish pie."+ext)))
		require.NoError(t, os.Rename(filepath.Join(dir, "columns."+ext), filepath.Join(dir, "02 soda bread."+ext)))
		texts, rest := readFolder(t, os.DirFS(dir), nil)
		assert.Empty(t, rest, ext)
		assert.Equal(t, []string{
			`Idris | 02 | soda bread | learner | 02 soda bread.` + ext + `, "My evaluation" | Hygiene` + "\n\nI washed my hands.\n\nTexture\n\nIt was lumpy.",
			`Idris | 02 | soda bread | adult | 02 soda bread.` + ext + `, "Adult feedback" | Hygiene` + "\n\nHe wiped the board.",
			`noor | 05 | fish pie | learner | noor/05 fish pie.` + ext + `, "My evaluation" | ` + workbookText,
			`noor | 05 | fish pie | adult | noor/05 fish pie.` + ext + `, "Adult feedback" | She turned the handle in` + "\twithout being told.",
		}, toldIn(texts), ext)
		require.NotEmpty(t, texts, ext)
		assert.Equal(t, "2026-03-14", texts[0].Date.Format(dateForm), ext)

		f, err := os.Open(filepath.Join(dir, "02 soda bread."+ext))
		require.NoError(t, err)
		blocks, err := read(f)
		require.NoError(t, err, ext)
		require.NoError(t, f.Close())
		var got []string
		for _, p := range paragraphsOf(blocks, nil) {
			got = append(got, strings.Fields(p.text)...)
		}
		assert.Equal(t, words, got, ext)
	}
}
