// Package needs finds what a test needs from outside the project. A user's
// machine may do without it, and the test is skipped; CI may not.
package needs

import (
	"image"
	"image/png"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
)

// Program returns the path of a program that Debian brings.
func Program(tb testing.TB, name string) string {
	tb.Helper()
	path, err := exec.LookPath(name)
	if err != nil {
		Missing(tb, name+" is not installed")
	}
	return path
}

// Module returns the path of a file in an npm package, below the folder that
// the variable SAYWHY_NODE_MODULES names.
func Module(tb testing.TB, name string) string {
	tb.Helper()
	modules := os.Getenv("SAYWHY_NODE_MODULES")
	path := filepath.Join(modules, filepath.FromSlash(name))
	if _, err := os.Stat(path); modules == "" || err != nil {
		Missing(tb, name+" is not below the folder that SAYWHY_NODE_MODULES names")
	}
	return path
}

// Missing skips a test that lacks something, and fails it in CI.
func Missing(tb testing.TB, what string) {
	tb.Helper()
	if os.Getenv("CI") != "" {
		tb.Fatal("CI needs this: ", what)
	}
	tb.Skip(what)
}

// CodeIn returns what Debian's zbarimg reads in the picture of a QR code.
func CodeIn(tb testing.TB, picture image.Image) string {
	tb.Helper()
	zbarimg := Program(tb, "zbarimg")
	file := filepath.Join(tb.TempDir(), "code.png")
	w, err := os.Create(file)
	if err != nil {
		tb.Fatal(err)
	}
	if err := png.Encode(w, picture); err != nil {
		tb.Fatal(err)
	}
	if err := w.Close(); err != nil {
		tb.Fatal(err)
	}
	out, err := exec.Command(zbarimg, "--quiet", "--raw", file).Output()
	if err != nil {
		tb.Fatal("no code is read: ", err)
	}
	return strings.TrimSpace(string(out))
}
