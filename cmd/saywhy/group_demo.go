package main

import (
	"errors"
	"fmt"
	"io/fs"
	"path/filepath"
	"strings"

	"saywhy/cmd/demo"
)

// groupDemo writes the demo course into a new or empty folder. A course that it
// has begun there, and was stopped at, it finishes.
func groupDemo(s streams, dir string) error {
	files, err := demo.Files()
	if err != nil {
		return err
	}
	if err := roomForDemo(dir, files); err != nil {
		return err
	}
	for _, f := range files {
		name := filepath.Join(dir, filepath.FromSlash(f.Name))
		if sameFile(name, f.Data) {
			continue
		}
		if err := makeFolder(filepath.Dir(name)); err != nil {
			return err
		}
		if err := writeFile(name, f.Data); err != nil {
			return err
		}
	}
	page := shellName(filepath.Clean(dir) + ".html")
	_, err = fmt.Fprintf(s.out, `Wrote %s of Saltmarsh Kitchen, a course that does not exist, to %s.
One of them is broken, so that you see what becomes of such a file.

Next:
  saywhy group %s
  saywhy group %s --format html --output %s
`, count(len(files)-1, "file"), dir, shellName(dir), shellName(dir), page)
	return err
}

// roomForDemo returns an error when a folder holds anything that is not of the
// demo course, or all of it.
func roomForDemo(dir string, files []demo.File) error {
	data := map[string][]byte{}
	for _, f := range files {
		data[filepath.Join(dir, filepath.FromSlash(f.Name))] = f.Data
	}
	there := 0
	err := filepath.WalkDir(dir, func(name string, e fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return err
		case name == dir && !e.IsDir():
			return fs.ErrExist
		case e.IsDir(), strings.HasPrefix(e.Name(), tempPrefix):
			return nil
		}
		whole, ours := data[name]
		if !ours || !e.Type().IsRegular() || !sameFile(name, whole) {
			return fs.ErrExist
		}
		there++
		return nil
	})
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil
	case errors.Is(err, fs.ErrExist), there == len(files):
		return fmt.Errorf("%q has something in it already; name a new folder for the demo course", dir)
	case err != nil:
		return fmt.Errorf("%q cannot be used; name a new folder for the demo course", dir)
	}
	return nil
}
