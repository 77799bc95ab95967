package corpus

import (
	"io"
	"io/fs"
	"strings"
	"sync"
	"testing"
	"testing/fstest"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// meddled is a folder in which somebody meddles with one file: when it is
// listed and not yet opened, or while it is read. The folder is listed further
// meanwhile, so the map behind it is kept by a lock.
type meddled struct {
	files   fstest.MapFS
	name    string
	listed  func() // called before the file is looked at again
	reading func() // called when its first bytes were read
	mu      sync.Mutex
}

func (m *meddled) Lstat(name string) (fs.FileInfo, error) {
	m.mu.Lock()
	defer m.mu.Unlock()
	if name == m.name && m.listed != nil {
		m.listed()
	}
	return m.files.Lstat(name)
}

func (m *meddled) ReadLink(name string) (string, error) {
	m.mu.Lock()
	defer m.mu.Unlock()
	return m.files.ReadLink(name)
}

func (m *meddled) Stat(name string) (fs.FileInfo, error) {
	m.mu.Lock()
	defer m.mu.Unlock()
	return m.files.Stat(name)
}

func (m *meddled) ReadDir(name string) ([]fs.DirEntry, error) {
	m.mu.Lock()
	defer m.mu.Unlock()
	return m.files.ReadDir(name)
}

func (m *meddled) Open(name string) (fs.File, error) {
	m.mu.Lock()
	defer m.mu.Unlock()
	f, err := m.files.Open(name)
	if name != m.name || m.reading == nil || err != nil {
		return f, err
	}
	return &meddledFile{File: f, m: m}, nil
}

type meddledFile struct {
	fs.File
	m    *meddled
	done bool
}

func (f *meddledFile) Read(p []byte) (int, error) {
	n, err := f.File.Read(p)
	if !f.done {
		f.done = true
		f.m.mu.Lock()
		defer f.m.mu.Unlock()
		f.m.reading()
	}
	return n, err
}

// Stat tells of the file as it is now, as fstat(2) does of one that is open.
func (f *meddledFile) Stat() (fs.FileInfo, error) { return f.m.Stat(f.m.name) }

// TestFileReplacedBetweenListingAndReading: what has come into its place is read
// if it is a file, and listed if it is not; the rest of the folder goes on.
func TestFileReplacedBetweenListingAndReading(t *testing.T) {
	const name = "ben/01 leek soup.txt"
	for what, tt := range map[string]struct {
		becomes *fstest.MapFile // nil: it is gone
		text    string          // what is read of it
		says    string
	}{
		"by another text": {file("It was thin."), "It was thin.", ""},
		"by nothing":      {nil, "", "was taken away while the folder was read"},
		"by a link":       {&fstest.MapFile{Data: []byte("../../secret.txt"), Mode: fs.ModeSymlink}, "", "in place of a file"},
		"by a pipe":       {&fstest.MapFile{Mode: fs.ModeNamedPipe}, "", "in place of a file"},
		"by a folder":     {&fstest.MapFile{Mode: fs.ModeDir | 0o755}, "", "in place of a file"},
	} {
		t.Run(what, func(t *testing.T) {
			dir := &meddled{files: fstest.MapFS{name: file("It was thick."), "cat/01 leek soup.txt": file("It was hot.")}, name: name}
			dir.listed = func() {
				dir.listed = nil
				delete(dir.files, name)
				if tt.becomes != nil {
					dir.files[name] = tt.becomes
				}
			}
			var texts, rest []string
			for e, err := range Folder(t.Context(), dir, FolderOptions{Lexicon: builtin(t), Files: 1}) {
				if err != nil {
					rest = append(rest, err.Error())
				} else {
					texts = append(texts, e.Text)
				}
			}
			require.NotEmpty(t, texts)
			assert.Equal(t, "It was hot.", texts[len(texts)-1])
			if tt.says == "" {
				assert.Equal(t, []string{tt.text, "It was hot."}, texts)
				assert.Empty(t, rest)
				return
			}
			assert.Len(t, texts, 1)
			require.Len(t, rest, 1)
			assert.True(t, strings.HasPrefix(rest[0], name+": "), rest[0])
			assert.Contains(t, rest[0], tt.says)
		})
	}
}

// TestFileChangedWhileItIsRead: a text may then be half the old one and half the
// new, and nothing in it tells.
func TestFileChangedWhileItIsRead(t *testing.T) {
	for _, name := range []string{"ben/01 leek soup.txt", "ben/forms.csv"} {
		const table = "learner,session,dish,evaluation\nBen,1,leek soup,It was thick.\n"
		dir := &meddled{files: fstest.MapFS{name: file(table)}, name: name}
		for what, change := range map[string]func(*fstest.MapFile){
			"longer":  func(f *fstest.MapFile) { f.Data = append(f.Data, '\n') },
			"as long": func(f *fstest.MapFile) { f.ModTime = time.Date(2026, 3, 14, 9, 0, 0, 1, time.UTC) },
			"older":   func(f *fstest.MapFile) { f.ModTime = time.Date(1999, 1, 1, 0, 0, 0, 0, time.UTC) }, // a clock set back
		} {
			t.Run(name+" "+what, func(t *testing.T) {
				dir.files[name] = file(table)
				dir.reading = func() {
					changed := *dir.files[name]
					change(&changed)
					dir.files[name] = &changed
				}
				texts, rest := readFolder(t, dir, nil)
				assert.Len(t, texts, 1)
				require.Len(t, rest, 1)
				assert.Contains(t, rest[0], name+": was changed while it was read")
				dir.reading = nil
				texts, rest = readFolder(t, dir, nil)
				assert.Len(t, texts, 1)
				assert.Empty(t, rest)
			})
		}
	}
}

// TestFileThatCannotBeReadToItsEnd: a disk that fails in the midst of a file.
func TestFileThatCannotBeReadToItsEnd(t *testing.T) {
	for _, name := range []string{"ben/01 leek soup.txt", "ben/01 leek soup.docx", "ben/01 leek soup.odt", "ben/forms.csv", "ben/forms.xlsx"} {
		dir := failing{fstest.MapFS{name: file("learner,session,dish,evaluation\nBen,1,leek soup,It was thick.\n"), "cat/01 leek soup.txt": file("It was hot.")}, name}
		texts, rest := readFolder(t, dir, nil)
		require.Len(t, texts, 1, name)
		assert.Equal(t, "It was hot.", texts[0].Text)
		require.NotEmpty(t, rest, name)
		assert.True(t, strings.HasPrefix(rest[0], name), rest[0])
		assert.Regexp(t, "; .*(check|save)", rest[0], "what to do")
	}
}

// failing is a folder in which one file breaks off.
type failing struct {
	fstest.MapFS
	name string
}

func (f failing) Open(name string) (fs.File, error) {
	file, err := f.MapFS.Open(name)
	if name != f.name || err != nil {
		return file, err
	}
	return brokenFile{file}, nil
}

type brokenFile struct{ fs.File }

func (f brokenFile) Read([]byte) (int, error)          { return 0, io.ErrUnexpectedEOF }
func (f brokenFile) ReadAt([]byte, int64) (int, error) { return 0, io.ErrUnexpectedEOF }
