package main

import (
	"bytes"
	"crypto/rand"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"runtime"
	"strings"
	"syscall"
	"time"
)

// readFile reads a file that a person named: whole, or its first limit bytes
// and one more when it is longer. The error says what to do.
func readFile(name string, limit int64) ([]byte, error) {
	f, err := os.Open(name)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil, fmt.Errorf("there is no file called %q; check the name and the folder", name)
	case err != nil:
		return nil, fmt.Errorf("%q cannot be opened; check that you may read it", name)
	}
	defer f.Close()
	before, err := f.Stat()
	if err == nil && before.IsDir() {
		return nil, fmt.Errorf("%q is a folder; name one file in it", name)
	}
	data, err := io.ReadAll(io.LimitReader(f, limit+1))
	if err != nil {
		return nil, fmt.Errorf("%q cannot be read; check that you may read it", name)
	}
	if after, err := f.Stat(); err == nil && before != nil && after.Mode().IsRegular() &&
		(after.Size() != before.Size() || !after.ModTime().Equal(before.ModTime())) {
		return nil, fmt.Errorf("%q was changed while it was read; let whatever writes it finish, and run this again", name)
	}
	return data, nil
}

// tempPrefix begins the name of a file that is being written. A full stop hides
// it from everything that reads a folder.
const tempPrefix = ".saywhy-"

// leftAlone is how long such a file is left alone, by the clock of the disk it
// lies on: longer than any writing takes, so that only what a killed program
// left is taken away.
const leftAlone = time.Hour

// writeFile writes a file whole or not at all: into a new file beside it, which
// takes its place when everything is on the disk. A link stays, and what it
// points to changes. What is no file and no folder, such as a pipe, is written
// into.
func writeFile(name string, data []byte) error {
	real := name
	if target, err := filepath.EvalSymlinks(name); err == nil {
		real = target
	}
	switch info, err := os.Stat(name); { // by its own name: a link to a pipe leads to no name
	case err == nil && info.IsDir():
		return fmt.Errorf("%q is a folder; name a file", name)
	case err == nil && !info.Mode().IsRegular():
		f, err := os.OpenFile(name, os.O_WRONLY, 0)
		if err == nil {
			_, err = f.Write(data)
			err = errors.Join(err, f.Close())
		}
		if err != nil {
			return fmt.Errorf("%q cannot be written: %s", name, mend(err))
		}
		return nil
	case errors.Is(err, fs.ErrNotExist):
		if _, err := os.Lstat(name); err == nil {
			return fmt.Errorf("%q is a link that leads nowhere; name the file itself", name)
		}
	}
	root, err := os.OpenRoot(filepath.Dir(real))
	if err == nil {
		defer root.Close()
		err = replaceFile(root, filepath.Base(real), data)
	}
	if err != nil {
		return fmt.Errorf("%q cannot be written: %s; nothing was changed", name, mend(err))
	}
	return nil
}

// replaceFile puts data in place of a file below root, whole or not at all.
func replaceFile(root *os.Root, name string, data []byte) (err error) {
	if name, err = linked(root, name); err != nil {
		return err
	}
	mode := os.FileMode(0o644)
	if info, err := root.Stat(name); err == nil {
		if !info.Mode().IsRegular() {
			return fmt.Errorf("%q is no file: %w", name, fs.ErrInvalid)
		}
		mode = info.Mode().Perm()
	}
	dir := path.Dir(filepath.ToSlash(name))
	temp := path.Join(dir, tempPrefix+rand.Text())
	f, err := root.OpenFile(temp, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o600)
	if err != nil {
		return err
	}
	defer func() {
		if err != nil {
			f.Close()
			_ = root.Remove(temp)
		}
	}()
	sweep(root, dir, f)
	if _, err := f.Write(data); err != nil {
		return err
	}
	if err := f.Chmod(mode); err != nil && runtime.GOOS != "windows" {
		return err
	}
	if err := f.Sync(); err != nil {
		return err
	}
	if err := f.Close(); err != nil {
		return err
	}
	if err := root.Rename(temp, name); err != nil {
		return err
	}
	if d, err := root.Open(dir); err == nil {
		_ = d.Sync() // some file systems cannot, and the file is safe already
		d.Close()
	}
	return nil
}

// linked follows a link to the name of the file that it stands for. A link that
// leads out of root is an error.
func linked(root *os.Root, name string) (string, error) {
	for range 10 {
		info, err := root.Lstat(name)
		if err != nil || info.Mode()&fs.ModeSymlink == 0 {
			return name, nil
		}
		if _, err := root.Stat(name); err != nil {
			return "", err // it leads nowhere, or out
		}
		target, err := root.Readlink(name)
		if err != nil {
			return "", err
		}
		name = path.Join(path.Dir(filepath.ToSlash(name)), filepath.ToSlash(target))
	}
	return "", fmt.Errorf("%q leads through too many links: %w", name, fs.ErrInvalid)
}

// sweep removes from a folder what killed programs left half written, to judge
// by a file of now on the same disk. What cannot be removed does no harm.
func sweep(root *os.Root, dir string, now *os.File) {
	at, err := now.Stat()
	if err != nil {
		return
	}
	d, err := root.Open(dir)
	if err != nil {
		return
	}
	defer d.Close()
	names, _ := d.Readdirnames(-1) // what was read before an error will do
	for _, n := range names {
		if !strings.HasPrefix(n, tempPrefix) {
			continue
		}
		old := path.Join(dir, n)
		if info, err := root.Lstat(old); err == nil && info.Mode().IsRegular() && at.ModTime().Sub(info.ModTime()) > leftAlone {
			_ = root.Remove(old)
		}
	}
}

// makeFolder makes a folder and those it lies in.
func makeFolder(dir string) error {
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return fmt.Errorf("the folder %q cannot be made: %s", dir, mend(err))
	}
	return nil
}

// mend says why something could not be written and what to do, for a person.
func mend(err error) string {
	switch {
	case noRoom(err):
		return "there is no room for it on the disk; delete something you no longer need, or name a place on another disk"
	case errors.Is(err, syscall.EROFS):
		return "the disk lets itself be read only; name a place on another disk"
	case errors.Is(err, fs.ErrPermission):
		return "you may not write in its folder; name another place, or ask whoever looks after the folder"
	case errors.Is(err, fs.ErrNotExist):
		return "its folder is not there; make the folder first, or check the name"
	case errors.Is(err, syscall.ENOTDIR):
		return "it lies below a file, not a folder; check the name"
	case errors.Is(err, syscall.EPIPE):
		return "whatever it was written to takes no more; run this again, or write into a file"
	case errors.Is(err, syscall.ENAMETOOLONG):
		return "its name is too long; choose a shorter one"
	}
	return "the disk does not take it; check that it is still connected, or name another place"
}

// noRoom reports whether a disk, a share of one or what a process may write is
// used up.
func noRoom(err error) bool {
	if runtime.GOOS == "windows" {
		const handleDiskFull, diskFull = syscall.Errno(39), syscall.Errno(112) // System Error Codes, Windows API
		return errors.Is(err, handleDiskFull) || errors.Is(err, diskFull)
	}
	return errors.Is(err, syscall.ENOSPC) || errors.Is(err, syscall.EDQUOT) || errors.Is(err, syscall.EFBIG)
}

// sameFile reports whether a file holds these bytes.
func sameFile(name string, data []byte) bool {
	have, err := os.ReadFile(name)
	return err == nil && bytes.Equal(have, data)
}
