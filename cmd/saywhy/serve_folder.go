package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path"
	"path/filepath"
)

// courseFolder is a tutor's folder as the pages see it: nothing outside is
// read or written, whatever links lie in it.
type courseFolder struct {
	fs.FS
	root *os.Root
	dir  string
}

func openCourseFolder(dir string) (*courseFolder, error) {
	if err := isFolder(dir); err != nil {
		return nil, err
	}
	root, err := os.OpenRoot(dir)
	if err != nil {
		return nil, fmt.Errorf("the folder %q cannot be opened; check that you may read it", dir)
	}
	return &courseFolder{FS: root.FS(), root: root, dir: dir}, nil
}

// Write implements pages.Folder.
func (f *courseFolder) Write(name string, data []byte) error {
	if !fs.ValidPath(name) {
		return fs.ErrInvalid
	}
	if err := f.root.MkdirAll(path.Dir(name), 0o755); err != nil {
		return err
	}
	// A link that leads out is refused here, before anything follows it.
	if _, err := f.root.Stat(name); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return err
	}
	return writeFile(filepath.Join(f.dir, filepath.FromSlash(name)), data)
}

// Remove implements pages.Folder.
func (f *courseFolder) Remove(name string) error { return f.root.Remove(name) }
