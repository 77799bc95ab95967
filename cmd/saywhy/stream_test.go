package main

import (
	"bufio"
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// streamed runs stream over lines and returns the lines that answer.
func streamed(tb testing.TB, in string, args ...string) []string {
	tb.Helper()
	var out, errs bytes.Buffer
	status := run(append([]string{"stream"}, args...), streams{in: strings.NewReader(in), out: &out, err: &errs})
	require.Equal(tb, exitDone, status, errs.String())
	require.Empty(tb, errs.String())
	return answers(tb, out.String())
}

func answers(tb testing.TB, out string) []string {
	tb.Helper()
	if out == "" {
		return nil
	}
	require.True(tb, strings.HasSuffix(out, "\n"), "the last line ends")
	return strings.Split(strings.TrimSuffix(out, "\n"), "\n")
}

// inputLine is one line for stream.
func inputLine(tb testing.TB, fields map[string]any) string {
	tb.Helper()
	data, err := json.Marshal(fields)
	require.NoError(tb, err)
	return string(data) + "\n"
}

// labelledLines are the 150 labelled texts as lines for stream: they are of
// many dishes, both roles, and every kind of writing.
func labelledLines(tb testing.TB) []string {
	tb.Helper()
	data, err := os.ReadFile("../../testdata/labelled/settled.jsonl")
	require.NoError(tb, err)
	var out []string
	for _, line := range answers(tb, string(data)) {
		var fields map[string]any
		require.NoError(tb, json.Unmarshal([]byte(line), &fields))
		out = append(out, inputLine(tb, map[string]any{"id": fields["id"], "role": fields["role"], "text": fields["text"]}))
	}
	require.Len(tb, out, 150)
	return out
}

// TestStreamAnswersAsReadDoes holds the contract: the report of read with the
// id in front, the same bytes once the spaces between them are gone.
func TestStreamAnswersAsReadDoes(t *testing.T) {
	for _, c := range []struct {
		fields map[string]any
		read   []string
		stream []string
	}{
		{map[string]any{"id": "a", "text": evaluation}, nil, nil},
		{map[string]any{"id": "ü <&> \u2028", "text": "it was nice & 5 > 4 😀\r\nso there", "dish": "apple crumble"}, []string{"--dish", "apple crumble"}, nil},
		{map[string]any{"id": "c", "text": evaluation, "dish": "breads", "role": "adult", "title": "Loaf"}, []string{"--dish", "breads", "--role", "adult", "--title", "Loaf"}, nil},
		{map[string]any{"id": "d", "text": evaluation}, []string{"--dish", "tomato soup", "--role", "adult", "--questions", "0"}, []string{"--dish", "tomato soup", "--role", "adult", "--questions", "0"}},
		{map[string]any{"id": "e", "text": evaluation, "dish": "cakes", "role": "learner"}, []string{"--dish", "cakes"}, []string{"--dish", "tomato soup", "--role", "adult"}},
		{map[string]any{"id": "f", "text": ""}, nil, nil},
	} {
		got := streamed(t, inputLine(t, c.fields), c.stream...)
		require.Len(t, got, 1)
		read := sayWhy(t, c.fields["text"].(string), append([]string{"read", "--format", "json"}, c.read...)...)
		require.Equal(t, exitDone, read.status, read.err)
		id := bytes.TrimSpace(compact(c.fields["id"]))
		var want bytes.Buffer
		require.NoError(t, json.Compact(&want, []byte(read.out)))
		assert.Equal(t, `{"id":`+string(id)+","+want.String()[1:], got[0])
	}
}

func TestStreamAnswersEveryLine(t *testing.T) {
	cases := []struct {
		name string
		line string
		id   any
		says string // "" when the line is read
	}{
		{"good", `{"id": "a", "text": "It was nice."}`, "a", ""},
		{"good with a return", `{"id": "a", "text": "It was nice."}` + "\r", "a", ""},
		{"good with more fields", `{"group": [1, {"id": "z"}], "id": "a", "text": "It was nice."}`, "a", ""},
		{"good without an id", `{"text": "It was nice."}`, nil, ""},
		{"good with a number as id", `{"id": 12345678901234567890, "text": "It was nice."}`, json.Number("12345678901234567890"), ""},
		{"good with nothing in it", `{"id": "a", "text": " "}`, "a", ""},
		{"empty", "", nil, "empty"},
		{"empty with a return", "\r", nil, "empty"},
		{"blank", " \t ", nil, "empty"},
		{"no JSON", "It was nice.", nil, "byte 1"},
		{"half of it", `{"id": "a", "text": "It was`, "a", "breaks off"},
		{"a list", `["a"]`, nil, "array"},
		{"null", `null`, nil, "no text"},
		{"two in a line", `{"id": "a", "text": "b"} {"id": "c", "text": "d"}`, "a", "more than one"},
		{"no text", `{"id": "a"}`, "a", "no text"},
		{"text that is a number", `{"id": "a", "text": 7}`, "a", `"text" holds a JSON number`},
		{"an id that is a list", `{"id": ["a"], "text": "b"}`, nil, "id"},
		{"an unknown role", `{"id": "a", "role": "gran", "text": "b"}`, "a", `"gran"`},
		{"an unknown dish", `{"id": "a", "dish": "breds", "text": "b"}`, "a", `"breads"`},
		{"text with a zero byte", `{"id": "a", "text": "b\u0000"}`, "a", "zero byte at 1"},
		{"invalid UTF-8", "{\"id\": \"a\", \"text\": \"cr\xe8me\"}", "a", "byte 23"},
		{"a text beyond the limit", `{"id": "a", "text": "` + strings.Repeat("a ", maxText/2+1) + `"}`, "a", "2 MB"},
		{"a line beyond the limit", `{"id": "a", "text": "` + strings.Repeat("a ", maxStreamLine) + `"}`, "a", "4 MB"},
	}
	// A good line stands between all of them.
	good := inputLine(t, map[string]any{"id": "good", "text": evaluation})
	in := good
	for _, c := range cases {
		in += c.line + "\n" + good
	}
	got := streamed(t, in)
	require.Len(t, got, 2*len(cases)+1)
	require.Contains(t, got[0], `"id":"good"`)
	for i, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, got[0], got[2*i+2], "the rest goes on")
			d := json.NewDecoder(strings.NewReader(got[2*i+1]))
			d.UseNumber()
			var answer map[string]any
			require.NoError(t, d.Decode(&answer))
			assert.Equal(t, c.id, answer["id"])
			require.Contains(t, answer, "id", "null when there is none")
			if c.says == "" {
				assert.NotContains(t, answer, "error")
				assert.Contains(t, answer, "areas")
				return
			}
			assert.Len(t, answer, 3)
			assert.Equal(t, json.Number(fmt.Sprint(2*i+2)), answer["line"])
			assert.Contains(t, answer["error"], c.says)
		})
	}
}

func TestStreamKeepsOrder(t *testing.T) {
	var in strings.Builder
	for i := range 400 {
		text := "It was nice."
		if i%7 == 0 {
			text = strings.Repeat(evaluation, 5) // takes far longer than its neighbours
		}
		in.WriteString(inputLine(t, map[string]any{"id": fmt.Sprint(i / 2), "text": text})) // each id twice
	}
	got := streamed(t, in.String())
	require.Len(t, got, 400)
	for i, line := range got {
		require.True(t, strings.HasPrefix(line, fmt.Sprintf(`{"id":"%d",`, i/2)), "line %d: %.40s", i, line)
	}
}

func TestStreamOfNothing(t *testing.T) { assert.Empty(t, streamed(t, "")) }

func TestStreamMisuse(t *testing.T) {
	checkMisuse(t, []misuse{
		{"a file", "", []string{"stream", "evaluations.jsonl"}, []string{"evaluations.jsonl", "<"}},
		{"an unknown dish", "", []string{"stream", "--dish", "breds"}, []string{`"breads"`}},
		{"an unknown role", "", []string{"stream", "--role", "gran"}, []string{"gran"}},
		{"too few questions", "", []string{"stream", "--questions", "-1"}, []string{"-1"}},
		{"a course that is not there", "", []string{"stream", "--course", "gone"}, []string{"gone"}},
	})
}

func TestStreamWithACourse(t *testing.T) {
	dir := t.TempDir()
	require.NoError(t, os.WriteFile(filepath.Join(dir, "course.yaml"), []byte("sessions:\n  - {title: Week 2, dish: soda bread, brief: [taste]}\n"), 0o600))
	got := streamed(t, inputLine(t, map[string]any{"id": "a", "dish": "week 2", "text": "It was nice."}), "--course", dir)
	require.Len(t, got, 1)
	assert.Contains(t, got[0], `"title":"soda bread"`)
	assert.Equal(t, 1, strings.Count(got[0], `"expected":true`), "the brief of the session")
}

func TestStreamCancelled(t *testing.T) {
	ctx, cancel := context.WithCancel(t.Context())
	in, feed := io.Pipe() // stays open
	answered, out := io.Pipe()
	done := make(chan error, 1)
	go func() { done <- stream(ctx, streams{in: in, live: out}, streamOptions{role: "learner"}) }()
	_, err := io.WriteString(feed, inputLine(t, map[string]any{"id": "a", "text": evaluation}))
	require.NoError(t, err)
	line, err := bufio.NewReader(answered).ReadString('\n')
	require.NoError(t, err, "answered before more comes")
	assert.Contains(t, line, `"id":"a"`)
	cancel()
	select {
	case err := <-done:
		assert.ErrorIs(t, err, context.Canceled)
	case <-time.After(20 * time.Second):
		t.Fatal("it still waits")
	}
}

// TestStreamEndsQuietlyWhenThePipeIsClosed: status 0 and no word, as for head.
func TestStreamEndsQuietlyWhenThePipeIsClosed(t *testing.T) {
	c := exec.Command(builtSayWhy(t), "stream")
	var errs bytes.Buffer
	c.Stderr = &errs
	in, err := c.StdinPipe()
	require.NoError(t, err)
	out, err := c.StdoutPipe()
	require.NoError(t, err)
	require.NoError(t, c.Start())
	fed := make(chan struct{})
	go func() { // until nobody takes it
		defer close(fed)
		defer in.Close()
		line := inputLine(t, map[string]any{"id": "a", "text": evaluation})
		for {
			if _, err := io.WriteString(in, line); err != nil {
				return
			}
		}
	}()
	_, err = bufio.NewReader(out).ReadString('\n')
	require.NoError(t, err)
	require.NoError(t, out.Close())
	ended := make(chan error, 1)
	go func() { <-fed; ended <- c.Wait() }()
	select {
	case err := <-ended:
		assert.NoError(t, err)
		assert.Empty(t, errs.String())
	case <-time.After(60 * time.Second):
		_ = c.Process.Kill()
		t.Fatal("it goes on for nobody")
	}
}

// TestStreamSplitOverProcesses does what engines that pipe lines through a
// program do: parts of the lines go to processes of their own, and their
// answers are put behind one another.
func TestStreamSplitOverProcesses(t *testing.T) {
	bin := builtSayWhy(t)
	lines := labelledLines(t)
	lines[20] = "a line that is no JSON\n"
	ran := func(part []string) *exec.Cmd {
		c := exec.Command(bin, "stream")
		c.Stdin = strings.NewReader(strings.Join(part, ""))
		c.Stdout, c.Stderr = &bytes.Buffer{}, &bytes.Buffer{}
		require.NoError(t, c.Start())
		return c
	}
	finished := func(c *exec.Cmd) string {
		require.NoError(t, c.Wait())
		require.Empty(t, c.Stderr.(*bytes.Buffer).String())
		return c.Stdout.(*bytes.Buffer).String()
	}
	whole := finished(ran(lines))
	require.Len(t, answers(t, whole), len(lines))
	for _, parts := range []int{2, 4} {
		var running []*exec.Cmd
		for i := range parts {
			running = append(running, ran(lines[i*len(lines)/parts:(i+1)*len(lines)/parts]))
		}
		var joined strings.Builder
		for _, c := range running {
			joined.WriteString(finished(c))
		}
		assert.Equal(t, whole, joined.String(), "%d processes", parts)
	}
}
