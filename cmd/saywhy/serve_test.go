package main

import (
	"bufio"
	"context"
	"io"
	"net"
	"net/http"
	"net/url"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// running is "saywhy serve", started.
type running struct {
	address string
	printed *strings.Builder // all that it printed, once it has stopped
	stop    func() ran
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
	s := &running{printed: &strings.Builder{}}
	lines := bufio.NewScanner(in)
	for s.address == "" && lines.Scan() {
		s.printed.WriteString(lines.Text() + "\n")
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
			s.printed.WriteString(lines.Text() + "\n")
		}
		close(rest)
	}()
	s.stop = func() ran {
		cancel()
		got := ran{status: <-status, err: errs.String()}
		<-rest
		got.out = s.printed.String()
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
