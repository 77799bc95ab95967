package lexicon

import (
	"io/fs"
	"slices"
	"strings"
)

// With returns a folder that has one file more, or another in its place.
func With(dir fs.FS, name string, data []byte) fs.FS { return withFile{dir, name, data} }

type withFile struct {
	fs.FS
	name string
	data []byte
}

// ReadFile implements fs.ReadFileFS.
func (f withFile) ReadFile(name string) ([]byte, error) {
	if name == f.name {
		return f.data, nil
	}
	return fs.ReadFile(f.FS, name)
}

// Glob implements fs.GlobFS.
func (f withFile) Glob(pattern string) ([]string, error) {
	names, err := fs.Glob(f.FS, pattern)
	if err != nil {
		return nil, err
	}
	if !slices.Contains(names, f.name) && strings.HasPrefix(f.name, strings.TrimSuffix(pattern, "*.yaml")) {
		names = append(names, f.name)
		slices.Sort(names)
	}
	return names, nil
}
