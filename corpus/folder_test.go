package corpus

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/lexicon"
)

// readFolder reads a folder whole: the texts, and "source: reason" of the rest.
func readFolder(tb testing.TB, fsys fs.FS, course *lexicon.Course) ([]Evaluation, []string) {
	tb.Helper()
	var texts []Evaluation
	var rest []string
	for e, err := range Folder(context.Background(), fsys, FolderOptions{Lexicon: builtin(tb), Course: course}) {
		if err == nil {
			texts = append(texts, e)
			continue
		}
		var u *Unplaced
		require.ErrorAs(tb, err, &u)
		rest = append(rest, u.Error())
	}
	return texts, rest
}

func file(text string) *fstest.MapFile { return &fstest.MapFile{Data: []byte(text)} }

func TestAFolderIsReadInTheOrderOfItsPaths(t *testing.T) {
	dir := fstest.MapFS{
		"ben/02 soda bread.md":       file("---\nlearner: Ben Ito\nsession: 4\ndate: 14/3/2026\nrole: adult\nmood: good\n---\nIt rose."),
		"Amina/01 leek soup.txt":     file("It was thick.\r\nIt was hot."),
		"amina/02 soda bread.txt":    file("\xef\xbb\xbfIt was brown."),
		"amina/03 leek soup.txt":     file("\xff\xfeI\x00t\x00 \x00\xe9\x00"),
		"amina/04 fish pie.txt":      file("cr\xe8me \x96 nice"),
		"amina/05 fish pie.txt":      file("  \n\n"),
		"amina/06 fish pie.txt":      file("PK\x03\x04abc"),
		"amina/07 fish pie.jpg":      file("x"),
		"amina/08 fish pie.xyz":      file("x"),
		"amina/~$3 leek soup.docx":   file("x"),
		"amina/.~lock.03.odt#":       file("x"),
		"__MACOSX/amina/._03.txt":    file("x"),
		".git/config":                file("x"),
		"course.yaml":                file("title: x"),
		"dishes/soups.yaml":          file("type: soups"),
		"amina/dishes/09 curry.txt":  file("It was mild."),
		"notes/02 soda bread/al.txt": file("---\nlerner: Al\n---\nIt rose."),
	}
	texts, rest := readFolder(t, dir, nil)
	var got []string
	for _, e := range texts {
		got = append(got, fmt.Sprintf("%s|%s|%s|%s|%q|%s", e.Learner, e.Session, e.Dish, e.Role, e.Text, e.Source))
	}
	assert.Equal(t, []string{
		`Amina|01|leek soup|learner|"It was thick.\nIt was hot."|Amina/01 leek soup.txt`,
		`Amina|02|soda bread|learner|"It was brown."|amina/02 soda bread.txt`,
		`Amina|03|leek soup|learner|"It é"|amina/03 leek soup.txt`,
		`Amina|04|fish pie|learner|"crème – nice"|amina/04 fish pie.txt`,
		`Amina|09|curry|learner|"It was mild."|amina/dishes/09 curry.txt`,
		`Ben Ito|04|soda bread|adult|"It rose."|ben/02 soda bread.md`,
	}, got)
	require.Len(t, rest, 5, strings.Join(rest, "\n"))
	for i, want := range []string{"05 fish pie.txt: holds no text", "06 fish pie.txt: is not a text file", "07 fish pie.jpg: is a picture", "08 fish pie.xyz: ends in .xyz", `notes/02 soda bread/al.txt: its row "lerner" is not known; did you mean "learner"?`} {
		assert.Contains(t, rest[i], want)
	}
}

func TestLinksAreListedAndNeverFollowed(t *testing.T) {
	dir, outside := t.TempDir(), t.TempDir()
	require.NoError(t, os.WriteFile(filepath.Join(outside, "02 fish pie.txt"), []byte("secret"), 0o600))
	require.NoError(t, os.MkdirAll(filepath.Join(dir, "amina"), 0o700))
	require.NoError(t, os.WriteFile(filepath.Join(dir, "amina", "01 leek soup.txt"), []byte("It was thick."), 0o600))
	for name, to := range map[string]string{"amina/02 fish pie.txt": filepath.Join(outside, "02 fish pie.txt"), "ben": outside, "loop": "."} {
		err := os.Symlink(to, filepath.Join(dir, filepath.FromSlash(name)))
		if err != nil && os.Getenv("CI") == "" {
			t.Skip("this system makes no links:", err)
		}
		require.NoError(t, err)
	}
	texts, rest := readFolder(t, os.DirFS(dir), nil)
	require.Len(t, texts, 1)
	require.Len(t, rest, 3)
	for _, r := range rest {
		assert.Contains(t, r, "is a link")
	}
}

func TestAFolderThatCannotBeReadSaysSoAndTheRestGoesOn(t *testing.T) {
	texts, rest := readFolder(t, os.DirFS(filepath.Join(t.TempDir(), "none")), nil)
	assert.Empty(t, texts)
	require.Len(t, rest, 1)
	assert.Contains(t, rest[0], "cannot be opened")
	if os.Getuid() == 0 {
		return // no folder is closed to the superuser
	}
	dir := t.TempDir()
	require.NoError(t, os.MkdirAll(filepath.Join(dir, "amina"), 0))
	require.NoError(t, os.WriteFile(filepath.Join(dir, "ben 01 leek soup.txt"), []byte("It was thick."), 0o600))
	texts, rest = readFolder(t, os.DirFS(dir), nil)
	assert.Len(t, texts, 1)
	assert.Len(t, rest, 1)
}

func TestReadingEndsWhenItsContextOrItsConsumerDoes(t *testing.T) {
	dir := fstest.MapFS{}
	for i := range 500 {
		dir[fmt.Sprintf("amina/%03d leek soup.txt", i)] = file("It was thick.")
	}
	n := 0
	for range Folder(context.Background(), dir, FolderOptions{}) {
		if n++; n == 3 {
			break
		}
	}
	assert.Equal(t, 3, n)
	ctx, cancel := context.WithCancelCause(context.Background())
	defer cancel(nil)
	why := errors.New("enough")
	var last error
	for _, err := range Folder(ctx, dir, FolderOptions{Files: 3}) {
		last = err
		cancel(why)
	}
	assert.Equal(t, why, last)
}

// TestAnyonesTextsAreReadWhenOnlyTheirWordsMatter: what names do not tell is
// then empty, and what they tell is there all the same.
func TestAnyonesTextsAreReadWhenOnlyTheirWordsMatter(t *testing.T) {
	dir := fstest.MapFS{
		"leek soup.txt":             file("It was thick."),
		"soups/feedback.txt":        file("It was hot."),
		"ann or ben/2 fish pie.txt": file("It was pale."),
		"form.csv":                  file("dish,evaluation\nleek soup,It was thin.\n"),
		"empty.txt":                 file(" "),
	}
	var got, rest []string
	for e, err := range Folder(t.Context(), dir, FolderOptions{Lexicon: builtin(t), Anyone: true}) {
		if err != nil {
			rest = append(rest, err.Error())
			continue
		}
		got = append(got, fmt.Sprintf("%s|%s|%s|%s", e.Source, e.Dish, e.Role, e.Text))
	}
	assert.Equal(t, []string{
		"ann or ben/2 fish pie.txt|fish pie|learner|It was pale.", "form.csv, row 2|leek soup|learner|It was thin.",
		"leek soup.txt|leek soup|learner|It was thick.", "soups/feedback.txt|soups|adult|It was hot.",
	}, got)
	require.Len(t, rest, 1)
	assert.Contains(t, rest[0], "empty.txt: holds no text")
	texts, rest := readFolder(t, dir, nil)
	assert.Len(t, texts, 1, "the others have no session or no learner")
	assert.Len(t, rest, 4)
}
