package analyze

import (
	"go/ast"
	"go/parser"
	gotoken "go/token"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// impure lists what the reading may not import directly, each with the reason
// that a failure prints.
func impure() map[string]string {
	return map[string]string{
		"os":           "the reading gets its text and words as values; files, arguments and the environment belong to cmd",
		"net":          "nothing a learner writes leaves the machine",
		"net/http":     "nothing a learner writes leaves the machine; pages are served by cmd",
		"time":         "the same input gives the same bytes whatever the clock says",
		"io/fs":        "files are read by lexicon and cmd, never while reading a text",
		"embed":        "data files are embedded by lexicon; the reading gets them as values",
		"log":          "a report is all that a reading says; a log would hold a learner's text",
		"math/rand":    "the same input gives the same bytes",
		"math/rand/v2": "the same input gives the same bytes",
		"syscall":      "the reading builds for the browser too, where there is no system",
		"unsafe":       "no input makes it fail, so memory is not touched by hand",
	}
}

// sources returns the parsed Go files of the packages under dir that are no
// tests, by path.
func sources(tb testing.TB, dir string, mode parser.Mode) (*gotoken.FileSet, map[string]*ast.File) {
	tb.Helper()
	set, files := gotoken.NewFileSet(), map[string]*ast.File{}
	require.NoError(tb, filepath.WalkDir(dir, func(path string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if d.IsDir() && d.Name() == "testdata" {
			return filepath.SkipDir
		}
		if d.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
			return nil
		}
		f, err := parser.ParseFile(set, path, nil, mode)
		if err != nil {
			return err
		}
		files[path] = f
		return nil
	}))
	require.NotEmpty(tb, files, "no Go files under %s", dir)
	return set, files
}

// importsOf returns the paths a file imports.
func importsOf(tb testing.TB, f *ast.File) []string {
	tb.Helper()
	var out []string
	for _, i := range f.Imports {
		path, err := strconv.Unquote(i.Path.Value)
		require.NoError(tb, err)
		out = append(out, path)
	}
	return out
}

func TestReadingImportsNothingImpure(t *testing.T) {
	forbidden := impure()
	_, files := sources(t, ".", parser.ImportsOnly)
	for path, f := range files {
		for _, i := range importsOf(t, f) {
			reason, bad := forbidden[i]
			if i == "embed" && filepath.Dir(path) == "perceptron" {
				continue // the tagger knows no lexicon and brings its own figures
			}
			assert.False(t, bad, "analyze/%s imports %s: %s", path, i, reason)
		}
	}
}

// TestLayers holds the order in which packages may know each other: words,
// reading, bodies of texts, commands.
func TestLayers(t *testing.T) {
	for _, c := range []struct {
		dir, reason string
		never       []string
	}{
		{"../lexicon", "the lexicon knows nothing of texts", []string{"saywhy/analyze", "saywhy/corpus", "saywhy/cmd"}},
		{".", "the reading knows one text at a time and no command", []string{"saywhy/corpus", "saywhy/cmd"}},
		{"perceptron", "the tagger tags words and knows nothing of what is made of them", []string{"saywhy/lexicon", "saywhy/corpus", "saywhy/cmd"}},
		{"../corpus", "bodies of texts are handled the same whichever command asks", []string{"saywhy/cmd"}},
	} {
		t.Run(filepath.Base(c.dir), func(t *testing.T) {
			_, files := sources(t, c.dir, parser.ImportsOnly)
			for path, f := range files {
				for _, i := range importsOf(t, f) {
					for _, never := range c.never {
						assert.False(t, i == never || strings.HasPrefix(i, never+"/"), "%s imports %s: %s", path, i, c.reason)
					}
				}
			}
		})
	}
}

// TestNoPackageVariables: a variable of the package could be changed by one
// reading and seen by another; the blank identifier holds nothing, and the string
// of an embedded file cannot be changed in place.
func TestNoPackageVariables(t *testing.T) {
	set, files := sources(t, ".", parser.SkipObjectResolution|parser.ParseComments)
	for _, f := range files {
		for _, d := range f.Decls {
			g, ok := d.(*ast.GenDecl)
			if !ok || g.Tok != gotoken.VAR {
				continue
			}
			if embedsString(g) {
				continue
			}
			for _, spec := range g.Specs {
				for _, name := range spec.(*ast.ValueSpec).Names {
					assert.Equal(t, "_", name.Name, "%s: a package variable", set.Position(name.Pos()))
				}
			}
		}
	}
}

// embedsString reports whether a declaration is one string that holds an
// embedded file.
func embedsString(g *ast.GenDecl) bool {
	if g.Doc == nil || len(g.Specs) != 1 {
		return false
	}
	kind, ok := g.Specs[0].(*ast.ValueSpec).Type.(*ast.Ident)
	last := g.Doc.List[len(g.Doc.List)-1].Text
	return ok && kind.Name == "string" && strings.HasPrefix(last, "//go:embed ")
}

// TestBuildsForTheBrowser builds the reading for WebAssembly, where there are
// no files and no network.
func TestBuildsForTheBrowser(t *testing.T) {
	if testing.Short() && os.Getenv("CI") == "" {
		t.Skip("building for another system takes a while")
	}
	build := exec.Command("go", "build", "-o", os.DevNull, "./...")
	build.Env = append(os.Environ(), "GOOS=js", "GOARCH=wasm", "CGO_ENABLED=0")
	out, err := build.CombinedOutput()
	require.NoError(t, err, "%s", out)
}
