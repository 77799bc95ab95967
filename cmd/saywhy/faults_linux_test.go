package main

import (
	"os"
	"path/filepath"
	"syscall"
	"testing"

	"saywhy/cmd/internal/needs"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestDiskFillsUp mounts a small disk and fills it: ENOSPC as it is met.
func TestDiskFillsUp(t *testing.T) {
	dir := t.TempDir()
	if err := syscall.Mount("tmpfs", dir, "tmpfs", 0, "size=1m"); err != nil {
		needs.Missing(t, "a disk that may be mounted ("+err.Error()+"); the limit on a file's size is tested without")
	}
	t.Cleanup(func() { require.NoError(t, syscall.Unmount(dir, 0)) })
	course, out := placeToFail(t, dir)
	fill(t, filepath.Join(dir, "big"))
	before := content(t, dir)
	for _, w := range writings(t) {
		line := failed(t, asChild(t, w.args(course, out)...))
		assert.Contains(t, line, w.says)
		assert.Contains(t, line, "no room")
		assert.Equal(t, before, content(t, dir), w.name)
	}
	require.NoError(t, os.Remove(filepath.Join(dir, "big")))
	for _, w := range writings(t)[:4] {
		said, err := asChild(t, w.args(course, out)...).CombinedOutput()
		assert.NoError(t, err, "%s, with room: %s", w.name, said)
	}
}
