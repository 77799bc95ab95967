package main

import (
	"bytes"
	"encoding/csv"
	"encoding/json"
	"fmt"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/cmd/demo"
	"saywhy/cmd/internal/needs"
	"saywhy/corpus"
)

// demoCourse writes the demo course and returns its folder.
func demoCourse(tb testing.TB) string {
	tb.Helper()
	dir := filepath.Join(tb.TempDir(), "saltmarsh")
	got := sayWhy(tb, "", "group", "--demo", dir)
	require.Equal(tb, exitDone, got.status, got.err)
	assert.Contains(tb, got.out, "saywhy group "+dir, "what to run next")
	return dir
}

func TestGroupDemoShowsEverything(t *testing.T) {
	dir := demoCourse(t)
	got := sayWhy(t, "", "group", dir)
	require.Equal(t, exitDone, got.status, got.err)
	assert.Empty(t, got.err)
	var r corpus.GroupReport
	asJSON := sayWhy(t, "", "group", dir, "--format", "json")
	require.NoError(t, json.Unmarshal([]byte(asJSON.out), &r))

	assert.Len(t, r.Learners.People, 8)
	assert.Len(t, r.Learners.Sessions, 6)
	assert.Equal(t, 46, r.Learners.Texts)
	assert.Equal(t, 30, r.Adults.Texts)
	assert.Empty(t, r.Remarks)
	require.Len(t, r.Unplaced, 1)
	assert.Equal(t, demo.Broken, r.Unplaced[0].File)

	// The two dangers, of which the adult tells as well.
	kinds := map[string]bool{}
	for _, c := range r.Cautions {
		kinds[c.Kind+" "+c.Learner+" "+c.Session] = true
	}
	assert.Equal(t, map[string]bool{"undercooked Rafferty 05": true, "injury Kofi 03": true}, kinds)
	for _, c := range r.Cautions {
		at := strings.Index(strings.Join(strings.Fields(got.out), " "), c.Text)
		require.GreaterOrEqual(t, at, 0, c.Text)
		assert.Less(t, at, strings.Index(strings.Join(strings.Fields(got.out), " "), "WHAT THE GROUP"), "dangers stand first")
	}
	// The disagreements that were written into it.
	var told []string
	for _, d := range r.Disagreements {
		told = append(told, d.Learner+" "+d.Session)
	}
	assert.Equal(t, []string{"Elin 06", "Idris 03", "Maya 02", "Tamsin 04"}, told)
	// The passage that was copied.
	require.Len(t, r.Shared, 1)
	assert.Equal(t, []string{"Bryn", "02", "Noor", "02"}, []string{r.Shared[0].A.Learner, r.Shared[0].A.Session, r.Shared[0].B.Learner, r.Shared[0].B.Session})
	assert.Contains(t, r.Shared[0].TextB, "round and round like a clock")
	assert.Contains(t, got.out, "WORDING THAT TWO TEXTS SHARE")
	spoken := 0
	for _, p := range r.Plans {
		if p.SpokenOf {
			spoken++
		}
	}
	assert.Greater(t, spoken, 5)
	for _, line := range strings.Split(got.out, "\n") {
		assert.LessOrEqual(t, len([]rune(line)), plainWidth, "line %q", line)
	}
}

func TestGroupDemoTakesOnlyAnEmptyFolder(t *testing.T) {
	dir := t.TempDir()
	got := sayWhy(t, "", "group", "--demo", dir)
	assert.Equal(t, exitDone, got.status, got.err)
	before, err := os.ReadFile(filepath.Join(dir, "course.yaml"))
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(filepath.Join(dir, "course.yaml"), append(before, "# mine\n"...), 0o600))
	checkMisuse(t, []misuse{
		{"a folder with something in it", "", []string{"group", "--demo", dir}, []string{"new folder"}},
		{"a file", "", []string{"group", "--demo", filepath.Join(dir, "course.yaml")}, []string{"new folder"}},
	})
	after, err := os.ReadFile(filepath.Join(dir, "course.yaml"))
	require.NoError(t, err)
	assert.Contains(t, string(after), "# mine")
}

func TestGroupMisuse(t *testing.T) {
	empty, good := t.TempDir(), t.TempDir()
	require.NoError(t, os.WriteFile(filepath.Join(good, "ana 01 lentil soup.txt"), []byte("It was nice."), 0o600))
	pictures := t.TempDir()
	require.NoError(t, os.WriteFile(filepath.Join(pictures, "soup.jpg"), []byte("\xff\xd8"), 0o600))
	checkMisuse(t, []misuse{
		{"no folder", "", []string{"group"}, []string{"--demo"}},
		{"two folders", "", []string{"group", good, empty}, []string{"one folder"}},
		{"a missing folder", "", []string{"group", filepath.Join(empty, "gone")}, []string{"gone"}},
		{"a file", "", []string{"group", filepath.Join(good, "ana 01 lentil soup.txt")}, []string{"folder"}},
		{"an empty folder", "", []string{"group", empty}, []string{"no evaluation"}},
		{"a folder of pictures", "", []string{"group", pictures}, []string{"soup.jpg", "picture"}},
		{"an unknown format", "", []string{"group", good, "--format", "pdf"}, []string{"pdf", "html"}},
		{"a missing course", "", []string{"group", good, "--course", filepath.Join(empty, "gone")}, []string{"gone"}},
		{"an output that cannot be", "", []string{"group", good, "--output", filepath.Join(empty, "gone", "r.html")}, []string{"r.html"}},
		{"an output that is a folder", "", []string{"group", good, "--output", empty}, []string{"folder"}},
	})
}

func TestGroupFormats(t *testing.T) {
	dir := t.TempDir()
	for name, text := range map[string]string{
		"=Ana/01 lentil soup.txt": "It was thick because I left the lid off.",
		"Ben/01 lentil soup.txt":  "It was nice.",
	} {
		require.NoError(t, os.MkdirAll(filepath.Join(dir, filepath.Dir(name)), 0o700))
		require.NoError(t, os.WriteFile(filepath.Join(dir, name), []byte(text), 0o600))
	}
	t.Run("csv", func(t *testing.T) {
		got := sayWhy(t, "", "group", dir, "--format", "csv")
		require.Equal(t, exitDone, got.status, got.err)
		rows, err := csv.NewReader(strings.NewReader(got.out)).ReadAll()
		require.NoError(t, err)
		require.Len(t, rows, 1+2*10)
		for _, row := range rows[1:] {
			assert.NotEqual(t, byte('='), row[0][0], "a spreadsheet would take it for a formula")
		}
	})
	t.Run("html", func(t *testing.T) {
		file := filepath.Join(t.TempDir(), "r.html")
		toFile := sayWhy(t, "", "group", dir, "--format", "html", "--output", file)
		require.Equal(t, exitDone, toFile.status, toFile.err)
		assert.Contains(t, toFile.out, file)
		page, err := os.ReadFile(file)
		require.NoError(t, err)
		assert.Equal(t, sayWhy(t, "", "group", dir, "--format", "html").out, string(page))
		assert.True(t, strings.HasPrefix(string(page), "<!doctype html>"))
	})
	t.Run("text", func(t *testing.T) {
		got := sayWhy(t, "", "group", dir)
		assert.Contains(t, got.out, "only 2 texts", "small numbers are called small")
	})
}

// TestGroupCountsAgain has the figures of the report counted from its CSV by a
// script that shares nothing with this program.
func TestGroupCountsAgain(t *testing.T) {
	python := needs.Program(t, "python3")
	course, dir := demoCourse(t), t.TempDir()
	for _, format := range []string{"csv", "json"} {
		got := sayWhy(t, "", "group", course, "--format", format, "--output", filepath.Join(dir, "group."+format))
		require.Equal(t, exitDone, got.status, got.err)
	}
	recount := func() (string, error) {
		out, err := exec.Command(python, "testdata/recount.py", filepath.Join(dir, "group.csv"), filepath.Join(dir, "group.json")).CombinedOutput()
		return string(out), err
	}
	out, err := recount()
	require.NoError(t, err, out)
	assert.Contains(t, out, "76 texts counted again")

	// The script sees one figure that is off by one.
	data, err := os.ReadFile(filepath.Join(dir, "group.csv"))
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(filepath.Join(dir, "group.csv"), bytes.Replace(data, []byte(",1,1,1,1,"), []byte(",1,1,1,0,"), 1), 0o600))
	out, err = recount()
	assert.Error(t, err, out)
}

// TestGroupProgress: on a terminal that someone watches, and nowhere else.
func TestGroupProgress(t *testing.T) {
	var shown bytes.Buffer
	p := &progress{out: &shown, on: true, shown: time.Now().Add(-time.Hour)}
	p.show(1)
	p.show(2) // at once: not shown
	p.clear()
	assert.Equal(t, "\r1 texts read\r            \r", shown.String())
	quiet := &progress{out: &shown}
	shown.Reset()
	quiet.show(1)
	quiet.clear()
	assert.Empty(t, shown.String())
}

// TestGroupKilled kills the program at any moment: the report is the old one,
// whole, or the new one, whole.
func TestGroupKilled(t *testing.T) {
	bin, course := builtSayWhy(t), demoCourse(t)
	file := filepath.Join(t.TempDir(), "report.html")
	run := func(kill time.Duration) bool {
		c := exec.Command(bin, "group", course, "--format", "html", "--output", file)
		require.NoError(t, c.Start())
		if kill > 0 {
			timer := time.AfterFunc(kill, func() { _ = c.Process.Kill() })
			defer timer.Stop()
		}
		return c.Wait() == nil
	}
	began := time.Now()
	require.True(t, run(0))
	took := time.Since(began)
	whole, err := os.ReadFile(file)
	require.NoError(t, err)

	killed := 0
	for i := range 12 {
		old := fmt.Sprintf("old report %d", i)
		require.NoError(t, os.WriteFile(file, []byte(old), 0o600))
		at := took * time.Duration(i+1) / 12
		if i >= 4 { // mostly near the end, where it writes
			at = took*8/10 + time.Duration(rand.Int64N(int64(took/3)))
		}
		if !run(at) {
			killed++
		}
		got, err := os.ReadFile(file)
		require.NoError(t, err)
		assert.True(t, string(got) == old || bytes.Equal(got, whole), "half a report of %d bytes", len(got))
	}
	assert.Positive(t, killed)
}
