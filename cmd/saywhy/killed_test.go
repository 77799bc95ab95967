//go:build unix

package main

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// writeVar names, in a process that a test starts, the file that it writes in
// turns in place of running the tests.
const writeVar = "SAYWHY_TEST_WRITE"

func TestMain(m *testing.M) {
	if name := os.Getenv(writeVar); name != "" {
		writeInTurns(name)
	}
	status := m.Run()
	if built.dir != "" {
		_ = os.RemoveAll(built.dir)
	}
	os.Exit(status)
}

// versions are what writeInTurns writes: as long as a long dish file.
func versions() (a, b []byte) {
	row := func(word string) []byte {
		return []byte("type: soups\n# " + strings.Repeat(word+" ", 20_000) + "\n")
	}
	return row("old"), row("new")
}

// writeInTurns writes a file over and over until it is killed.
func writeInTurns(name string) {
	a, b := versions()
	for {
		for _, data := range [][]byte{a, b} {
			if err := writeFile(name, data); err != nil {
				fmt.Fprintln(os.Stderr, err)
				os.Exit(1)
			}
		}
	}
}

// TestKilledWhileWriting kills a process that does nothing but write, at sixty
// moments: the file is always one of the two versions, whole, and what is left
// beside it is hidden, read by nothing, and in the end swept away.
func TestKilledWhileWriting(t *testing.T) {
	dir := course(t, autumn())
	name := filepath.Join(dir, "dishes", "soups.yaml")
	a, b := versions()
	require.NoError(t, os.WriteFile(name, a, 0o600))
	seen := map[string]int{}
	for i := range 60 {
		self, err := os.Executable()
		require.NoError(t, err)
		c := exec.Command(self)
		c.Env = append(os.Environ(), writeVar+"="+name)
		var errs bytes.Buffer
		c.Stderr = &errs
		require.NoError(t, c.Start())
		time.Sleep(10*time.Millisecond + time.Duration(i)*977*time.Microsecond)
		require.NoError(t, c.Process.Kill())
		require.Error(t, c.Wait())
		require.Empty(t, errs.String())
		data, err := os.ReadFile(name)
		require.NoError(t, err)
		require.True(t, bytes.Equal(data, a) || bytes.Equal(data, b), "half a file of %d bytes at kill %d", len(data), i)
		seen[string(data[14:17])]++
	}
	assert.Len(t, seen, 2, "it was writing when it was killed")
	left, err := filepath.Glob(filepath.Join(dir, "dishes", tempPrefix+"*"))
	require.NoError(t, err)
	assert.NotEmpty(t, left, "no kill came in the midst of writing")

	assert.Contains(t, ok(t, "dish", "check", "--course", dir), "All is well")
	young := left[0]
	for _, l := range left[1:] {
		long := time.Now().Add(-2 * leftAlone)
		require.NoError(t, os.Chtimes(l, long, long))
	}
	ok(t, "dish", "new", "cakes", "--course", dir)
	now, err := filepath.Glob(filepath.Join(dir, "dishes", tempPrefix+"*"))
	require.NoError(t, err)
	assert.Equal(t, []string{young}, now, "another program may be writing it")
}

// TestCommandsKilled kills each command at moments over its whole run. Every
// file is the old one or the new one, and the same command then succeeds.
func TestCommandsKilled(t *testing.T) {
	for _, w := range writings(t) {
		t.Run(w.name, func(t *testing.T) {
			t.Parallel()
			dir := t.TempDir()
			course, out := placeToFail(t, dir)
			began := time.Now()
			said, err := asChild(t, w.args(course, out)...).CombinedOutput()
			require.NoError(t, err, "%s", said)
			took := time.Since(began)
			whole := byName(content(t, dir), dir)
			killed := 0
			for i := range 6 {
				dir := t.TempDir()
				course, out := placeToFail(t, dir)
				before := byName(content(t, dir), dir)
				c := asChild(t, w.args(course, out)...)
				require.NoError(t, c.Start())
				time.Sleep(took * time.Duration(i+2) / 8)
				_ = c.Process.Kill() // it may have ended
				if c.Wait() != nil {
					killed++
				}
				for name, data := range byName(content(t, dir), dir) {
					if !strings.HasPrefix(filepath.Base(name), tempPrefix) {
						assert.True(t, data == before[name] || data == whole[name], "%s is neither the old file nor the new one", name)
					}
				}
				again := asChild(t, w.args(course, out)...)
				if said, err := again.CombinedOutput(); err != nil {
					assert.Regexp(t, "holds the type|has something in it already", string(said), "done before the kill")
				}
				now := byName(content(t, dir), dir)
				for name, data := range whole {
					assert.True(t, data == now[name], "%s is not whole in the end", name)
				}
			}
			assert.Positive(t, killed)
		})
	}
}

// byName is content by names below the folder.
func byName(files map[string]string, dir string) map[string]string {
	out := map[string]string{}
	for name, data := range files {
		out[strings.TrimPrefix(name, dir)] = data
	}
	return out
}
