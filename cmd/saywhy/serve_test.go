package main

import (
	"bufio"
	"context"
	"io"
	"io/fs"
	"net"
	"net/http"
	"net/http/cookiejar"
	"net/url"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// running is "saywhy serve", started.
type running struct {
	address string
	mu      sync.Mutex
	printed strings.Builder // what it has printed
	stop    func() ran
}

func (r *running) print(line string) {
	r.mu.Lock()
	defer r.mu.Unlock()
	r.printed.WriteString(line + "\n")
}

func (r *running) text() string {
	r.mu.Lock()
	defer r.mu.Unlock()
	return r.printed.String()
}

// serving starts the pages by a command line and waits for their address.
func serving(tb testing.TB, args ...string) *running {
	tb.Helper()
	ctx, cancel := context.WithCancel(context.Background())
	in, out := io.Pipe()
	var errs strings.Builder
	status := make(chan int, 1)
	go func() {
		status <- run(args, streams{in: strings.NewReader(""), out: out, err: &errs, until: ctx})
		out.Close()
	}()
	s := &running{}
	lines := bufio.NewScanner(in)
	for s.address == "" && lines.Scan() {
		s.print(lines.Text())
		if a := strings.TrimSpace(lines.Text()); strings.HasPrefix(a, "http://") {
			s.address = a
		}
	}
	if s.address == "" {
		cancel()
		require.Fail(tb, "the pages did not start", "%d %s", <-status, errs.String())
	}
	rest := make(chan struct{})
	go func() {
		for lines.Scan() {
			s.print(lines.Text())
		}
		close(rest)
	}()
	s.stop = func() ran {
		cancel()
		got := ran{status: <-status, err: errs.String()}
		<-rest
		got.out = s.text()
		return got
	}
	return s
}

func TestServeAnswersAndStops(t *testing.T) {
	s := serving(t, "serve", "--addr", "127.0.0.1:0")
	res, err := http.PostForm(s.address+"write", url.Values{"text": {evaluation}, "title": {"apple crumble"}})
	require.NoError(t, err)
	body, err := io.ReadAll(res.Body)
	require.NoError(t, err)
	assert.Contains(t, string(body), "golden, crunchy")
	got := s.stop()
	assert.Equal(t, exitDone, got.status, got.err)
	assert.Empty(t, got.err, "nothing is logged")
	assert.Contains(t, got.out, "Only this computer can open it")
	assert.NotContains(t, got.out, "crumble")
	_, err = http.Get(s.address)
	assert.Error(t, err, "it has stopped")
}

// TestServeLetsAnAnswerUnderWayFinish: Ctrl-C does not cut off who is being
// answered.
func TestServeLetsAnAnswerUnderWayFinish(t *testing.T) {
	s := serving(t, "serve", "--addr", "127.0.0.1:0")
	conn, err := net.Dial("tcp", strings.TrimSuffix(strings.TrimPrefix(s.address, "http://"), "/"))
	require.NoError(t, err)
	defer conn.Close()
	form := url.Values{"text": {evaluation}}.Encode()
	half := len(form) / 2
	_, err = io.WriteString(conn, "POST /write HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/x-www-form-urlencoded\r\nConnection: close\r\nContent-Length: "+
		strconv.Itoa(len(form))+"\r\n\r\n"+form[:half])
	require.NoError(t, err)
	time.Sleep(200 * time.Millisecond) // for the request to be taken up; too short a time only makes the test easier
	done := make(chan ran, 1)
	go func() { done <- s.stop() }()
	time.Sleep(50 * time.Millisecond)
	_, err = io.WriteString(conn, form[half:])
	require.NoError(t, err)
	answer, err := io.ReadAll(conn)
	require.NoError(t, err)
	assert.Contains(t, string(answer), "golden, crunchy")
	assert.Equal(t, exitDone, (<-done).status)
}

func TestServeForOthersSaysSo(t *testing.T) {
	s := serving(t, "serve", "--addr", "0.0.0.0:0")
	got := s.stop()
	assert.Contains(t, got.out, "Everybody on your network can open these pages")
}

func TestServeRefusesWhatCannotBe(t *testing.T) {
	taken, err := net.Listen("tcp", "127.0.0.1:0")
	require.NoError(t, err)
	defer taken.Close()
	assert.Contains(t, refused(t, "serve", "--addr", taken.Addr().String()), "choose another port")
	assert.Contains(t, refused(t, "serve", "--addr", "nonsense"), "host and port")
	assert.Contains(t, refused(t, "serve", "--course", "no-such-folder"), "no folder")
	assert.Contains(t, refused(t, "serve", "more"), "serve takes no")
}

// TestServeForATutor: the demo course, with its link, its group and an edit
// that stands in the file on the disk.
func TestServeForATutor(t *testing.T) {
	dir := demoCourse(t)
	s := serving(t, "serve", "--addr", "127.0.0.1:0", "--course", dir, "--group", dir)
	defer s.stop()
	var key string
	require.Eventually(t, func() bool {
		_, key, _ = strings.Cut(s.text(), "tutor/open/")
		return strings.Contains(key, "\n")
	}, 10*time.Second, 20*time.Millisecond)
	key, _, _ = strings.Cut(key, "\n")
	jar, err := cookiejar.New(nil)
	require.NoError(t, err)
	client := &http.Client{Jar: jar}
	fetch := func(res *http.Response, err error) string {
		require.NoError(t, err)
		defer res.Body.Close()
		body, err := io.ReadAll(res.Body)
		require.NoError(t, err)
		return string(body)
	}
	assert.Contains(t, fetch(client.PostForm(s.address+"tutor/open", url.Values{"key": {key}})), "The tutor’s desk")
	assert.Contains(t, fetch(client.Get(s.address+"tutor/group")), "Tamsin")
	assert.Contains(t, fetch(client.Get(s.address+"tutor/missing")), "Words that your learners used")
	fetch(client.PostForm(s.address+"tutor/dish/soups", url.Values{"act": {"save"}, "sense": {"texture"}, "word": {"zonky"}, "means": {"wobbles and then stops"}}))
	data, err := os.ReadFile(filepath.Join(dir, "dishes", "soups.yaml"))
	require.NoError(t, err)
	assert.Contains(t, string(data), "zonky: {means: \"wobbles and then stops\"}")
}

// TestTheCourseFolderCannotBeLeft: neither by a name nor by a link that lies
// in it.
func TestTheCourseFolderCannotBeLeft(t *testing.T) {
	outside := file(t, "secret.yaml", "type: soups\n")
	dir := t.TempDir()
	require.NoError(t, os.Mkdir(filepath.Join(dir, "dishes"), 0o755))
	require.NoError(t, os.Symlink(outside, filepath.Join(dir, "dishes", "soups.yaml")))
	folder, err := openCourseFolder(dir)
	require.NoError(t, err)
	for _, name := range []string{"../secret.yaml", "/etc/passwd", "dishes/../../x", "dishes/soups.yaml"} {
		assert.Error(t, folder.Write(name, []byte("changed")), name)
		_, err := fs.ReadFile(folder, name)
		assert.Error(t, err, name)
	}
	data, err := os.ReadFile(outside)
	require.NoError(t, err)
	assert.Equal(t, "type: soups\n", string(data))
	require.NoError(t, folder.Write("dishes/breads.yaml", []byte("type: breads\n")))
}
