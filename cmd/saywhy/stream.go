package main

import (
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"os/signal"
	"runtime"
	"syscall"
	"unicode/utf8"

	"github.com/spf13/cobra"

	"saywhy/analyze"
	"saywhy/cmd/wording"
	"saywhy/corpus"
)

// maxStreamLine is the longest line that is read, in bytes: a text of the
// longest kind, with room for what JSON escapes. Longer ones are answered with
// an error and never held.
const maxStreamLine = 2 * maxText

type streamOptions struct {
	dish      string
	role      string
	course    string
	questions int
}

func newStream(s streams) *cobra.Command {
	var o streamOptions
	c := &cobra.Command{
		Use:   "stream",
		Short: "Read very many evaluations: JSON Lines in, JSON Lines out",
		Long: `Reads evaluations from standard input, one JSON object a line:

  {"id": "7", "dish": "tomato soup", "role": "learner", "title": "", "text": "..."}

and answers each line with one line: the report of "saywhy read --format json"
with the id added, in the order of the lines. Only text must be there. A line that
cannot be read is answered with its id, its number and what is wrong, and the rest
goes on:

  {"id": "7", "line": 17, "error": "..."}

All cores are used (GOMAXPROCS=2 uses two), only a few lines are held at a time,
and it ends quietly when whoever reads the answers has had enough.`,
		Example: `  saywhy stream < evaluations.jsonl > reports.jsonl
  saywhy stream --dish "lentil soup" < evaluations.jsonl | head`,
		Args: func(_ *cobra.Command, args []string) error {
			if len(args) > 0 {
				return fmt.Errorf("stream reads standard input and takes no %q; give it the file with \"saywhy stream < FILE\"", args[0])
			}
			return nil
		},
		RunE: func(c *cobra.Command, _ []string) error {
			// A pipe that was closed is then an error of the write, not the end
			// of the process with a status of its own.
			signal.Ignore(syscall.SIGPIPE)
			return stream(c.Context(), s, o)
		},
	}
	f := c.Flags()
	f.StringVar(&o.dish, "dish", "", "the dish type or dish of lines that name none")
	f.StringVar(&o.role, "role", "learner", "who wrote the lines that do not say so: learner or adult")
	courseFlag(f, &o.course)
	f.IntVar(&o.questions, "questions", 3, "how many questions to ask at once; 0 asks them all")
	return c
}

// errClosed ends a stream whose answers nobody reads any more.
var errClosed = errors.New("the pipe was closed")

func stream(ctx context.Context, s streams, o streamOptions) error {
	check := reading{role: o.role, questions: o.questions, format: "json"}
	if err := check.check(); err != nil {
		return err
	}
	lex, course, analyzer, err := loadCourseAnalyzer(o.course)
	if err != nil {
		return err
	}
	if _, _, err := cooked(lex, course, o.dish); err != nil {
		return err
	}
	l := &lineReader{dishes: corpus.NewDishes(lex, course), analyzer: analyzer, options: o}
	return l.stream(ctx, s.in, s.live)
}

// lineReader answers lines. It is safe for many goroutines.
type lineReader struct {
	dishes   *corpus.Dishes
	analyzer *analyze.Analyzer
	options  streamOptions
}

// stream answers all lines of in on out.
func (l *lineReader) stream(ctx context.Context, in io.Reader, out io.Writer) error {
	cores := runtime.GOMAXPROCS(0)
	lines, ended := corpus.Lines(in, maxStreamLine)
	err := corpus.InOrder(ctx, corpus.Ordered{Workers: cores, Ahead: 2 * cores}, lines, l.answer, func(answer []byte) error {
		_, err := out.Write(answer)
		if errors.Is(err, syscall.EPIPE) || errors.Is(err, io.ErrClosedPipe) {
			return errClosed
		}
		return err
	})
	switch {
	case errors.Is(err, errClosed):
		return nil
	case err != nil && ctx.Err() != nil:
		return fmt.Errorf("the lines were not read to their end: %w; what was answered before is whole", err)
	case err != nil:
		return fmt.Errorf("the answers could not be written on: %s; every line but the last is whole", mend(err))
	}
	if err := ended(); err != nil {
		return errors.New("standard input cannot be read to its end; check the disk or the program it comes from; what was answered before is whole")
	}
	return nil
}

// streamLine is a line as the contract fixes it. A field that is missing is nil.
type streamLine struct {
	ID    any     `json:"id"`
	Dish  *string `json:"dish"`
	Role  *string `json:"role"`
	Title string  `json:"title"`
	Text  *string `json:"text"`
}

// streamReport is the report of a line, with its id in front.
type streamReport struct {
	ID any `json:"id"`
	*analyze.Report
}

// streamError answers a line that cannot be read.
type streamError struct {
	ID    any    `json:"id"`
	Line  int    `json:"line"`
	Error string `json:"error"`
}

// answer returns the line that answers a line.
func (l *lineReader) answer(line corpus.Line) []byte {
	id, report, err := l.read(line)
	if err != nil {
		return compact(streamError{ID: id, Line: line.N, Error: oneLine(err.Error())})
	}
	return compact(streamReport{ID: id, Report: report})
}

// read reads one line. Its id is returned with an error too, if it can be told.
func (l *lineReader) read(line corpus.Line) (id any, report *analyze.Report, err error) {
	data := line.Data
	switch {
	case line.Long:
		return idOf(data), nil, fmt.Errorf("the line is longer than %d MB; send one evaluation a line", maxStreamLine>>20)
	case !utf8.Valid(data):
		return idOf(data), nil, fmt.Errorf("the line is not UTF-8 text (see byte %d); save it again in UTF-8", wording.FirstInvalid(data))
	case len(bytes.TrimSpace(data)) == 0:
		return nil, nil, errors.New(`the line is empty; send one JSON object a line, such as {"text": "..."}`)
	}
	var in streamLine
	if err := decodeLine(data, &in); err != nil {
		return idOf(data), nil, err
	}
	switch in.ID.(type) {
	case nil, string, json.Number:
	default:
		return nil, nil, errors.New("the id is neither text nor a number; give it as \"id\": \"...\"")
	}
	if in.Text == nil {
		return in.ID, nil, errors.New("the line has no text; add \"text\": \"...\"")
	}
	if err := checkText("the text", []byte(*in.Text)); err != nil {
		return in.ID, nil, err
	}
	dishName, role := l.options.dish, l.options.role
	if in.Dish != nil && *in.Dish != "" {
		dishName = *in.Dish
	}
	if in.Role != nil && *in.Role != "" {
		role = *in.Role
	}
	if role != string(analyze.Learner) && role != string(analyze.Adult) {
		return in.ID, nil, fmt.Errorf("there is no role %q; write learner or adult", role)
	}
	dish, what, err := l.dishes.Cooked(dishName)
	if err != nil {
		return in.ID, nil, err
	}
	if in.Title == "" {
		in.Title = what
	}
	report = l.analyzer.Read(
		analyze.Input{Text: *in.Text, Title: in.Title, Role: analyze.Role(role)},
		analyze.Brief{Dish: dish, Questions: l.options.questions},
	)
	return in.ID, report, nil
}

// decodeLine decodes the one JSON object of a line. Fields that are not known
// are passed over: who pipes lines through may keep their own beside ours.
func decodeLine(data []byte, in *streamLine) error {
	d := json.NewDecoder(bytes.NewReader(data))
	d.UseNumber()
	if err := d.Decode(in); err != nil {
		var kind *json.UnmarshalTypeError
		var syntax *json.SyntaxError
		switch {
		case errors.As(err, &kind) && kind.Field != "":
			return fmt.Errorf("%q holds a JSON %s; it should hold text in quotation marks", kind.Field, kind.Value)
		case errors.As(err, &kind):
			return fmt.Errorf("the line is a JSON %s, not an object; send {\"id\": \"...\", \"text\": \"...\"}", kind.Value)
		case errors.As(err, &syntax):
			return fmt.Errorf("the line is not JSON (see byte %d); send one JSON object a line", syntax.Offset)
		}
		return errors.New("the line is JSON that breaks off; send one whole JSON object a line")
	}
	if rest := bytes.TrimSpace(data[d.InputOffset():]); len(rest) > 0 {
		return fmt.Errorf("more than one JSON value stands in the line (see byte %d); send one object a line", d.InputOffset())
	}
	return nil
}

// idOf finds the id at the head of a line that is wrong further on; nil when it
// cannot be told.
func idOf(data []byte) any {
	d := json.NewDecoder(bytes.NewReader(data))
	d.UseNumber()
	if t, err := d.Token(); err != nil || t != json.Delim('{') {
		return nil
	}
	for d.More() {
		key, err := d.Token()
		if err != nil {
			return nil
		}
		value, err := d.Token()
		if err != nil {
			return nil
		}
		if _, nested := value.(json.Delim); nested {
			return nil // what follows is not worth the search
		}
		if key == "id" {
			switch value.(type) {
			case string, json.Number:
				return value
			}
			return nil
		}
	}
	return nil
}

// compact encodes a value as one line of JSON with the text's own characters.
func compact(v any) []byte {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	if err := e.Encode(v); err != nil {
		panic("a report that JSON cannot hold: " + err.Error()) // it is made of text, numbers and lists
	}
	return b.Bytes()
}
