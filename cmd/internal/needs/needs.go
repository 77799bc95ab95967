// Package needs finds what a test needs from outside the project. A user's
// machine may do without it, and the test is skipped; CI may not.
package needs

import (
	"os"
	"os/exec"
	"path/filepath"
	"testing"
)

// Program returns the path of a program that Debian brings.
func Program(tb testing.TB, name string) string {
	tb.Helper()
	path, err := exec.LookPath(name)
	if err != nil {
		missing(tb, name+" is not installed")
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
		missing(tb, name+" is not below the folder that SAYWHY_NODE_MODULES names")
	}
	return path
}

func missing(tb testing.TB, what string) {
	tb.Helper()
	if os.Getenv("CI") != "" {
		tb.Fatal("CI needs this: ", what)
	}
	tb.Skip(what)
}
