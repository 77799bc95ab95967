package main

import (
	"fmt"
	"io/fs"
	"os"
	"path"
)

// courseFolder is a tutor's folder as the pages see it: nothing outside is
// read or written, whatever links lie in it. A folder that is moved while it is
// served stays the same folder, and one put in its place is another.
type courseFolder struct {
	fs.FS
	root *os.Root
}

func openCourseFolder(dir string) (*courseFolder, error) {
	if err := isFolder(dir); err != nil {
		return nil, err
	}
	root, err := os.OpenRoot(dir)
	if err != nil {
		return nil, fmt.Errorf("the folder %q cannot be opened; check that you may read it", dir)
	}
	return &courseFolder{FS: root.FS(), root: root}, nil
}

// Write implements pages.Folder.
func (f *courseFolder) Write(name string, data []byte) error {
	if !fs.ValidPath(name) {
		return fs.ErrInvalid
	}
	if err := f.root.MkdirAll(path.Dir(name), 0o755); err != nil {
		return err
	}
	return replaceFile(f.root, name, data)
}

// Remove implements pages.Folder.
func (f *courseFolder) Remove(name string) error { return f.root.Remove(name) }
