//go:build unix

package main

import (
	"bytes"
	"fmt"
	"io"
	"io/fs"
	"net/http"
	"net/http/cookiejar"
	"net/url"
	"os"
	"os/exec"
	"path/filepath"
	"saywhy/cmd/internal/needs"
	"strings"
	"syscall"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// What becomes of a tutor's files when the machine fails: a disk that is full
// or can only be read, a program that is killed, files that change while they
// are read. The calls and their errors are those of POSIX.1-2017, write(2) and
// rename(2): rename puts the new file in place of the old in one step.

// asChild is the tool in a process of its own.
func asChild(tb testing.TB, args ...string) *exec.Cmd {
	tb.Helper()
	return exec.Command(builtSayWhy(tb), args...)
}

// underLimit is the tool in a process that cannot make a file longer than so
// many kilobytes, as on a disk with no more room.
func underLimit(tb testing.TB, kilobytes int, args ...string) *exec.Cmd {
	tb.Helper()
	c := asChild(tb, args...)
	c.Args = append([]string{"bash", "-c", fmt.Sprintf(`ulimit -f %d; exec "$0" "$@"`, kilobytes), c.Path}, args...)
	bash, err := exec.LookPath("bash")
	require.NoError(tb, err)
	c.Path = bash
	return c
}

// failed runs a process that has to fail as wrong input does: status 2, one
// line, nothing on standard output. It returns the line.
func failed(tb testing.TB, c *exec.Cmd) string {
	tb.Helper()
	var out, errs bytes.Buffer
	if c.Stdout == nil {
		c.Stdout = &out
	}
	c.Stderr = &errs
	err := c.Run()
	var status *exec.ExitError
	require.ErrorAs(tb, err, &status, "%s%s", &out, &errs)
	require.Equal(tb, exitUsage, status.ExitCode(), "%s", &errs)
	require.Empty(tb, out.String())
	line := errs.String()
	require.Equal(tb, 1, strings.Count(line, "\n"), line)
	require.True(tb, strings.HasPrefix(line, "saywhy: "), line)
	for _, machine := range []string{"no space left", "file too large", "errno", "write /", "permission denied", "read-only file system", tempPrefix} {
		require.NotContains(tb, line, machine, "the machine's own wording")
	}
	return line
}

// content is every file below a folder with what it holds.
func content(tb testing.TB, dir string) map[string]string {
	tb.Helper()
	out := map[string]string{}
	require.NoError(tb, filepath.WalkDir(dir, func(name string, e fs.DirEntry, err error) error {
		if err != nil || e.IsDir() {
			return err
		}
		data, err := os.ReadFile(name)
		out[name] = string(data)
		return err
	}))
	return out
}

// writing is a command that writes a file, run in a folder that has what it
// needs.
type writing struct {
	name string
	args func(course, out string) []string
	says string // the file its error names
}

func writings(tb testing.TB) []writing {
	sheet := file(tb, "soups.csv", "sense,word,means\ntaste,figgish,like figs\ntexture,gloopsome,thick and slow\n")
	texts := filepath.Join(tb.TempDir(), "texts")
	require.NoError(tb, os.Mkdir(texts, 0o755))
	require.NoError(tb, os.WriteFile(filepath.Join(texts, "ana 01 lentil soup.txt"), []byte(evaluation), 0o600))
	return []writing{
		{"dish new", func(course, _ string) []string { return []string{"dish", "new", "cakes", "--course", course} }, "cakes.yaml"},
		{"dish import", func(course, _ string) []string {
			return []string{"dish", "import", "soups", sheet, "--course", course}
		}, "soups.yaml"},
		{"dish import into a new file", func(course, _ string) []string {
			return []string{"dish", "import", "breads", sheet, "--course", course}
		}, "breads.yaml"},
		{"dish export", func(_, out string) []string {
			return []string{"dish", "export", "soups", filepath.Join(out, "old.txt")}
		}, "old.txt"},
		{"group as a page", func(_, out string) []string {
			return []string{"group", texts, "--format", "html", "--output", filepath.Join(out, "old.txt")}
		}, "old.txt"},
		{"group as a table", func(_, out string) []string {
			return []string{"group", texts, "--format", "csv", "--output", filepath.Join(out, "old.txt")}
		}, "old.txt"},
		{"group --demo", func(_, out string) []string { return []string{"group", "--demo", filepath.Join(out, "demo")} }, "demo"},
	}
}

// placeToFail is a course and a folder for output, below one folder.
func placeToFail(tb testing.TB, dir string) (course, out string) {
	tb.Helper()
	course, out = filepath.Join(dir, "course"), filepath.Join(dir, "out")
	require.NoError(tb, os.MkdirAll(filepath.Join(course, "dishes"), 0o755))
	require.NoError(tb, os.Mkdir(out, 0o755))
	require.NoError(tb, os.WriteFile(filepath.Join(course, "dishes", "soups.yaml"), []byte("# mine\n"+autumn()["dishes/soups.yaml"]), 0o644))
	require.NoError(tb, os.WriteFile(filepath.Join(out, "old.txt"), []byte("what was here before"), 0o644))
	return course, out
}

// TestFullDisk: each command says so, and every file is as it was. The limit on
// the length of files needs no rights; a real full disk is tried below.
func TestFullDisk(t *testing.T) {
	for _, w := range writings(t) {
		t.Run(w.name, func(t *testing.T) {
			dir := t.TempDir()
			course, out := placeToFail(t, dir)
			before := content(t, dir)
			line := failed(t, underLimit(t, 0, w.args(course, out)...))
			assert.Contains(t, line, w.says)
			assert.Contains(t, line, "no room")
			assert.Equal(t, before, content(t, dir))

			c := asChild(t, w.args(course, out)...)
			said, err := c.CombinedOutput()
			assert.NoError(t, err, "with room it goes: %s", said)
		})
	}
}

// fill writes a file until the disk takes no more.
func fill(tb testing.TB, name string) {
	tb.Helper()
	f, err := os.Create(name)
	require.NoError(tb, err)
	defer f.Close()
	for _, size := range []int{4096, 1} {
		for err = nil; err == nil; {
			_, err = f.Write(bytes.Repeat([]byte("x"), size))
		}
		require.ErrorIs(tb, err, syscall.ENOSPC)
	}
}

// TestFullDiskBehindStandardOutput: what cannot be written is told, with
// status 2. /dev/full is a disk without room (full(4) of Linux).
func TestFullDiskBehindStandardOutput(t *testing.T) {
	full, err := os.OpenFile("/dev/full", os.O_WRONLY, 0)
	if err != nil {
		needs.Missing(t, "/dev/full cannot be opened: "+err.Error())
	}
	defer full.Close()
	text := file(t, "x.txt", evaluation)
	for _, args := range [][]string{{"read", text}, {"words", "soups"}, {"dish", "export", "soups"}, {"--help"}, {"stream"}} {
		c := asChild(t, args...)
		c.Stdout = full
		c.Stdin = strings.NewReader(`{"text": "It was nice."}` + "\n")
		assert.Contains(t, failed(t, c), "no room", "%q", args)
	}
	assert.Contains(t, failed(t, asChild(t, "dish", "export", "soups", "/dev/full")), "no room")
	assert.Contains(t, failed(t, asChild(t, "group", filepath.Dir(text), "--output", "/dev/full")), "")
}

// TestWritingIntoWhatIsNoFile: a pipe or a device stays what it is.
func TestWritingIntoWhatIsNoFile(t *testing.T) {
	pipe := filepath.Join(t.TempDir(), "pipe")
	require.NoError(t, syscall.Mkfifo(pipe, 0o600))
	got := make(chan string, 1)
	go func() {
		data, _ := os.ReadFile(pipe)
		got <- string(data)
	}()
	ok(t, "dish", "export", "soups", pipe)
	assert.Contains(t, <-got, "sense,word,means")
	info, err := os.Lstat(pipe)
	require.NoError(t, err)
	assert.NotZero(t, info.Mode()&fs.ModeNamedPipe)

	nowhere := filepath.Join(t.TempDir(), "link")
	require.NoError(t, os.Symlink(filepath.Join(t.TempDir(), "gone"), nowhere))
	assert.Contains(t, refused(t, "dish", "export", "soups", nowhere), "leads nowhere")
}

// TestReadOnlyFolder runs each command as somebody who may not write there.
func TestReadOnlyFolder(t *testing.T) {
	for _, w := range writings(t) {
		t.Run(w.name, func(t *testing.T) {
			dir, run := forNobody(t)
			course, out := placeToFail(t, dir)
			for _, d := range []string{filepath.Join(course, "dishes"), course, out} {
				require.NoError(t, os.Chmod(d, 0o555))
			}
			before := content(t, dir)
			args := w.args(course, out)
			for i, a := range args { // what it reads has to be readable for it
				if info, err := os.Stat(a); err == nil && !strings.HasPrefix(a, dir) {
					args[i] = filepath.Join(dir, "input", filepath.Base(a))
					require.NoError(t, os.Mkdir(filepath.Dir(args[i]), 0o755))
					if info.IsDir() {
						require.NoError(t, os.CopyFS(args[i], os.DirFS(a)))
					} else {
						data, err := os.ReadFile(a)
						require.NoError(t, err)
						require.NoError(t, os.WriteFile(args[i], data, 0o644))
					}
					require.NoError(t, filepath.WalkDir(args[i], func(name string, e fs.DirEntry, err error) error {
						return os.Chmod(name, 0o755)
					}))
				}
			}
			line := failed(t, run(args...))
			assert.Contains(t, line, w.says)
			assert.Contains(t, line, "you may not write")
			after := content(t, dir)
			for name := range after {
				if strings.HasPrefix(name, filepath.Join(dir, "input")) {
					delete(after, name)
				}
			}
			assert.Equal(t, before, after)
		})
	}
}

// forNobody returns a folder that everybody can reach, and what starts the tool
// with no more rights than anybody: as root, rights would not bind it.
func forNobody(tb testing.TB) (dir string, run func(args ...string) *exec.Cmd) {
	tb.Helper()
	dir, err := os.MkdirTemp("", "saywhy-nobody")
	require.NoError(tb, err)
	tb.Cleanup(func() {
		_ = filepath.WalkDir(dir, func(name string, e fs.DirEntry, err error) error {
			if e.IsDir() {
				_ = os.Chmod(name, 0o755)
			}
			return nil
		})
		require.NoError(tb, os.RemoveAll(dir))
	})
	require.NoError(tb, os.Chmod(dir, 0o755))
	if os.Geteuid() != 0 {
		return dir, func(args ...string) *exec.Cmd { return asChild(tb, args...) }
	}
	tool := filepath.Join(dir, "tool")
	data, err := os.ReadFile(builtSayWhy(tb))
	require.NoError(tb, err)
	require.NoError(tb, os.WriteFile(tool, data, 0o755))
	return dir, func(args ...string) *exec.Cmd {
		c := asChild(tb, args...)
		c.Path, c.Dir = tool, dir
		const nobody = 65534 // Debian base-passwd: nobody and nogroup
		c.SysProcAttr = &syscall.SysProcAttr{Credential: &syscall.Credential{Uid: nobody, Gid: nobody}}
		return c
	}
}

// TestFileChangedWhileItIsRead: a file that grows under the reader is refused,
// not read by half.
func TestFileChangedWhileItIsRead(t *testing.T) {
	name := filepath.Join(t.TempDir(), "x.txt")
	require.NoError(t, os.WriteFile(name, bytes.Repeat([]byte("It was hot. "), 150_000), 0o600))
	stop, stopped := make(chan struct{}), make(chan struct{})
	go func() {
		defer close(stopped)
		f, err := os.OpenFile(name, os.O_WRONLY|os.O_APPEND, 0)
		if err != nil {
			return
		}
		defer f.Close()
		for {
			select {
			case <-stop:
				return
			default:
				_, _ = f.WriteString("x")
			}
		}
	}()
	var err error
	require.Eventually(t, func() bool {
		_, err = readFile(name, 16<<20)
		return err != nil
	}, 10*time.Second, time.Millisecond)
	close(stop)
	<-stopped
	assert.ErrorContains(t, err, "x.txt")
	assert.ErrorContains(t, err, "changed while it was read")
	data, err := readFile(name, 16<<20)
	require.NoError(t, err)
	have, err := os.ReadFile(name)
	require.NoError(t, err)
	assert.True(t, bytes.Equal(have, data))
}

// TestEndlessInputIsNotHeld: what never ends is refused like what is too long.
func TestEndlessInputIsNotHeld(t *testing.T) {
	assert.Contains(t, refused(t, "read", "/dev/zero"), "longer than 2 MB")
	assert.Contains(t, refused(t, "dish", "import", "soups", "/dev/zero", "--course", course(t, nil)), "longer than")
}

// TestStandardInputThatCannotBeRead: a folder in its place.
func TestStandardInputThatCannotBeRead(t *testing.T) {
	folder, err := os.Open(t.TempDir())
	require.NoError(t, err)
	defer folder.Close()
	for _, args := range [][]string{{"read"}, {"stream"}, {"dish", "import", "soups", "-", "--course", course(t, nil)}} {
		c := asChild(t, args...)
		c.Stdin = folder
		assert.Contains(t, failed(t, c), "cannot be read", "%q", args)
	}
}

// TestServedFolderIsMoved: an edit goes into the folder that was opened, where
// the pages read it, and not into one that has come into its place.
func TestServedFolderIsMoved(t *testing.T) {
	dir := course(t, autumn())
	folder, err := openCourseFolder(dir)
	require.NoError(t, err)
	moved := dir + "-moved"
	require.NoError(t, os.Rename(dir, moved))
	t.Cleanup(func() { _ = os.RemoveAll(moved) })
	require.NoError(t, os.MkdirAll(filepath.Join(dir, "dishes"), 0o755))
	require.NoError(t, folder.Write("dishes/soups.yaml", []byte("type: soups\n")))
	assert.Equal(t, "type: soups\n", readBack(t, moved, "dishes", "soups.yaml"))
	data, err := fs.ReadFile(folder, "dishes/soups.yaml")
	require.NoError(t, err)
	assert.Equal(t, "type: soups\n", string(data))
	entries, err := os.ReadDir(filepath.Join(dir, "dishes"))
	require.NoError(t, err)
	assert.Empty(t, entries)
}

// TestTheTutorsDeskOnAFullDisk: the pages go on, say so, and the row can be
// saved once there is room.
func TestTheTutorsDeskOnAFullDisk(t *testing.T) {
	dir := course(t, autumn())
	before := content(t, dir)
	c := underLimit(t, 0, "serve", "--addr", "127.0.0.1:0", "--course", dir)
	out, err := c.StdoutPipe()
	require.NoError(t, err)
	require.NoError(t, c.Start())
	defer func() {
		_ = c.Process.Signal(syscall.SIGTERM)
		_ = c.Wait()
	}()
	address, key := addressAndKey(t, out)
	jar, err := cookiejar.New(nil)
	require.NoError(t, err)
	client := &http.Client{Jar: jar}
	post := func(path string, form url.Values) string {
		res, err := client.PostForm(address+path, form)
		require.NoError(t, err)
		defer res.Body.Close()
		body, err := io.ReadAll(res.Body)
		require.NoError(t, err)
		return string(body)
	}
	post("tutor/open", url.Values{"key": {key}})
	page := post("tutor/dish/soups", url.Values{"act": {"save"}, "sense": {"texture"}, "word": {"zonky"}, "means": {"wobbles and then stops"}})
	assert.Contains(t, page, "room on the disk")
	assert.Contains(t, page, "wobbles and then stops", "what was typed is still in the form")
	assert.Equal(t, before, content(t, dir))
	assert.Contains(t, post("write", url.Values{"text": {evaluation}}), "golden, crunchy")
}

// addressAndKey waits for what serve prints.
func addressAndKey(tb testing.TB, out io.Reader) (address, key string) {
	tb.Helper()
	var printed strings.Builder
	buffer := make([]byte, 4096)
	for key == "" {
		n, err := out.Read(buffer)
		require.NoError(tb, err, printed.String())
		printed.Write(buffer[:n])
		if before, after, found := strings.Cut(printed.String(), "tutor/open/"); found && strings.Contains(after, "\n") {
			key, _, _ = strings.Cut(after, "\n")
			address = before[strings.LastIndex(before, "http://"):]
		}
	}
	return address, strings.TrimSpace(key)
}
