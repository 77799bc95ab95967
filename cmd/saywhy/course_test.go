package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// course makes a course folder with the given files and returns its name.
func course(tb testing.TB, files map[string]string) string {
	tb.Helper()
	dir := tb.TempDir()
	require.NoError(tb, os.Mkdir(filepath.Join(dir, "dishes"), 0o755))
	for name, text := range files {
		require.NoError(tb, os.WriteFile(filepath.Join(dir, filepath.FromSlash(name)), []byte(text), 0o600))
	}
	return dir
}

// autumn is a course that changes two types and adds one.
func autumn() map[string]string {
	return map[string]string{
		"dishes/soups.yaml":  "type: soups\nwords:\n  taste:\n    figgish: {means: \"like dried figs\", of: [soup]}\nwithout:\n  appearance: [beige]\n",
		"dishes/breads.yaml": "type: breads\ntitle: Loaves\n",
		"dishes/jams.yaml":   "type: jams\nfamily: sweet\ndishes: [plum jam]\nwords:\n  texture:\n    setsome: {means: \"keeps its shape and moves a bit\"}\n",
		"course.yaml":        "title: Autumn\nsessions:\n  - {title: Week 1, dish: plum jam, brief: [hygiene, texture]}\nquestions:\n  learner:\n    taste:\n      said:\n        - \"What did your tongue tell you first?\"\n        - \"What came after that?\"\n        - \"Where in your mouth did you notice it?\"\n        - \"How would you tell someone about it?\"\n",
	}
}

// ok runs a command that has to succeed and returns what it prints.
func ok(tb testing.TB, args ...string) string {
	tb.Helper()
	got := sayWhy(tb, "", args...)
	require.Equal(tb, exitDone, got.status, "%v: %s", args, got.err)
	require.Empty(tb, got.err)
	return got.out
}

// refused runs a command that has to fail and returns its one line.
func refused(tb testing.TB, args ...string) string {
	tb.Helper()
	got := sayWhy(tb, "", args...)
	require.Equal(tb, exitUsage, got.status, "%v", args)
	require.Empty(tb, got.out, "%v", args)
	require.Equal(tb, 1, strings.Count(got.err, "\n"), got.err)
	return got.err
}

func TestACourseIsUsedByEveryCommand(t *testing.T) {
	dir := course(t, autumn())
	jam := file(t, "jam.txt", "The jam was setsome because it had cooled. It tasted figgish.")

	out := ok(t, "read", jam, "--course", dir, "--dish", "week 1", "--format", "json")
	assert.Contains(t, out, `"dish": "jams"`)
	assert.Contains(t, out, `"title": "plum jam"`)
	assert.Contains(t, out, `"word": "setsome"`)
	assert.Contains(t, out, `"word": "figgish"`)
	assert.Contains(t, strings.Join(strings.Fields(out), " "), `"area": "technique", "expected": false`, "the brief of the session")
	assert.NotContains(t, ok(t, "read", jam, "--format", "json"), `"setsome",`, "without the course the list lacks it")

	assert.Contains(t, ok(t, "read", file(t, "x.txt", "I washed my hands."), "--course", dir, "--dish", "soups", "--questions", "0"), "tongue")
	assert.Contains(t, ok(t, "words", "plum jam", "--course", dir), "setsome")
	assert.NotContains(t, ok(t, "words", "soups", "--course", dir), "\n  beige ")
	assert.Contains(t, ok(t, "words", "soups"), "\n  beige ")
	assert.Contains(t, ok(t, "words", "--find", "like a dried fig", "--course", dir), "figgish")
	assert.Contains(t, ok(t, "sheet", "plum jam", "--course", dir), "setsome")
	assert.Contains(t, ok(t, "sheet", "soups", "--course", dir), "figgish")
	assert.Contains(t, ok(t, "dish", "list", "--course", dir), "plum jam")
	assert.Contains(t, ok(t, "dish", "show", "soups", "--course", dir), "[soups, your course]")
	assert.Contains(t, ok(t, "dish", "show", "loaves", "--course", dir), "LOAVES")
	assert.Contains(t, ok(t, "dish", "export", "jams", "--course", dir), "setsome")
	assert.Contains(t, ok(t, "dish", "check", "--course", dir), "1 session")
	assert.Contains(t, ok(t, "dish", "check"), "All is well")
}

// broken are fifteen files, each with one mistake, and what is told of it.
func broken() map[string][2]string {
	word := "type: soups\nwords:\n  taste:\n"
	return map[string][2]string{
		"unknown row":         {"type: soups\nhazzards: [oven]\n", ":2:1:"},
		"word twice":          {word + "    a: {means: \"x y\"}\n    a: {means: \"x z\"}\n", ":5:5:"},
		"no meaning":          {word + "    a: {of: [jam]}\n", ":4:5:"},
		"long meaning":        {word + "    a: {means: \"" + strings.Repeat("a ", 17) + "\"}\n", ":4:5:"},
		"scale with a gap":    {word + "    a: {means: \"x y\", scale: \"oddness 3\"}\n", ":4:5:"},
		"no such parent":      {"type: pickles\nfamily: sweat\n", ":2:1:"},
		"own parent":          {"type: pickles\nfamily: pickles\n", ":2:1:"},
		"vague word":          {word + "    nice: {means: \"x y\"}\n", ":4:5:"},
		"colliding form":      {word + "    a: {means: \"x y\", forms: [beige]}\n", ":4:5:"},
		"unknown sense":       {"type: soups\nwords:\n  flavour:\n", ":3:3:"},
		"unknown hazard":      {"type: soups\nhazards: [ovn]\n", ":2:11:"},
		"no type":             {"title: Soups\n", ":1:1:"},
		"left out, not there": {"type: soups\nwithout:\n  taste: [xyzzy]\n", ":3:11:"},
		"broken quotes":       {"type: soups\ntitle: \"Soups\nfamily: pot\n", "check the quotes"},
		"not UTF-8":           {"type: soups\ntitle: Caf\xe9\n", ":2:11:"},
	}
}

func TestBrokenFilesAreListedAndTheRestGoesOn(t *testing.T) {
	require.GreaterOrEqual(t, len(broken()), 15)
	for name, b := range broken() {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			files := autumn()
			delete(files, "dishes/soups.yaml")
			files["dishes/odd.yaml"] = b[0]
			dir := course(t, files)

			got := sayWhy(t, "", "dish", "check", "--course", dir)
			assert.Equal(t, exitUsage, got.status)
			require.Equal(t, 1, strings.Count(got.out, "\n"), "one mistake is one line: %s", got.out)
			assert.True(t, strings.HasPrefix(got.out, filepath.Join(dir, "dishes", "odd.yaml")+strings.TrimSuffix(b[1], "check the quotes")), got.out)
			assert.Contains(t, got.out, b[1])
			assert.Equal(t, "saywhy: 1 thing to mend in 1 file; the list says where and how\n", got.err)

			line := refused(t, "read", file(t, "x.txt", "It was hot."), "--course", dir)
			assert.Contains(t, line, "odd.yaml")
			assert.Contains(t, line, "saywhy dish check --course "+dir)
			refused(t, "words", "cakes", "--course", dir)
			ok(t, "words", "cakes")
		})
	}
}

func TestAllProblemsAreListedAtOnce(t *testing.T) {
	files := map[string]string{"course.yaml": "tittle: x\n"}
	n := 1
	for _, b := range broken() {
		if strings.HasPrefix(b[0], "type: soups\n") && !strings.HasPrefix(b[1], "check") && !strings.Contains(b[0], "\xe9") {
			files[fmt.Sprintf("dishes/odd%d.yaml", n)] = strings.Replace(b[0], "type: soups", fmt.Sprintf("type: odd%d\nfamily: food", n), 1)
			n++
		}
	}
	got := sayWhy(t, "", "dish", "check", "--course", course(t, files))
	assert.Equal(t, exitUsage, got.status)
	assert.GreaterOrEqual(t, strings.Count(got.out, "\n"), n)
	assert.Contains(t, got.err, fmt.Sprintf("in %d files", n))
	assert.Equal(t, 1, strings.Count(got.err, "\n"))
}

func TestACourseFolderThatIsNone(t *testing.T) {
	assert.Contains(t, refused(t, "words", "--course", filepath.Join(t.TempDir(), "nowhere")), "no folder called")
	assert.Contains(t, refused(t, "dish", "list", "--course", file(t, "x.txt", "x")), "is a file")
}

func TestAFileIsWrittenWholeOrNotAtAll(t *testing.T) {
	dir := t.TempDir()
	name := filepath.Join(dir, "a.yaml")
	require.NoError(t, os.WriteFile(name, []byte("old"), 0o640))
	link := filepath.Join(dir, "link.yaml")
	require.NoError(t, os.Symlink(name, link))
	require.NoError(t, writeFile(link, []byte("new")))
	data, err := os.ReadFile(name)
	require.NoError(t, err)
	assert.Equal(t, "new", string(data))
	info, err := os.Lstat(link)
	require.NoError(t, err)
	assert.NotZero(t, info.Mode()&os.ModeSymlink, "the link stays")
	info, err = os.Stat(name)
	require.NoError(t, err)
	assert.Equal(t, os.FileMode(0o640), info.Mode().Perm())

	assert.Error(t, writeFile(filepath.Join(dir, "nowhere", "a.yaml"), nil))
	assert.Error(t, writeFile(dir, nil))
	entries, err := os.ReadDir(dir)
	require.NoError(t, err)
	assert.Len(t, entries, 2, "no half file is left")
}
