package main

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"

	"saywhy/cmd/demo"
)

// groupDemo writes the demo course into a new or empty folder.
func groupDemo(s streams, dir string) error {
	there, err := os.ReadDir(dir)
	switch {
	case err == nil && len(there) > 0:
		return fmt.Errorf("%q has something in it already; name a new folder for the demo course", dir)
	case err != nil && !errors.Is(err, os.ErrNotExist):
		return fmt.Errorf("%q cannot be used; name a new folder for the demo course", dir)
	}
	files, err := demo.Files()
	if err != nil {
		return err
	}
	for _, f := range files {
		name := filepath.Join(dir, filepath.FromSlash(f.Name))
		if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
			return fmt.Errorf("the folder %q cannot be made; check that you may write there", filepath.Dir(name))
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
