package pages

import (
	"errors"
	"mime"
	"net/http"
	"strconv"
	"strings"
)

// Limits of what a form takes.
const (
	maxText  = 64 << 10     // bytes of one text: some 11,000 words
	maxTitle = 200          // bytes of what was cooked
	maxBody  = 10 * maxText // three texts, each byte of them escaped
	maxAsked = 40           // questions at once: more than there ever are
	atOnce   = 3            // questions to begin with, and how many more each time
)

// writing is what a person sends to have it read.
type writing struct {
	Text   string
	Title  string // what was cooked, in their words
	Kind   string // a dish type or a session, as chosen; "" finds it by Title
	Before string // the draft that was read last; "" for the first
	Last   string // the evaluation before this one, of another dish
	Asked  int    // how many questions to ask at once
	Was    int    // how many were asked of Before
}

// errTooLong is the error of a body beyond the limit.
var errTooLong = errors.New("the form is too long")

// writingOf reads the form. Its error means that the form could not be read at
// all.
func writingOf(r *http.Request) (writing, error) {
	if err := parse(r); err != nil {
		return writing{}, err
	}
	w := writing{
		Text: plain(r.PostFormValue("text")), Title: line(r.PostFormValue("title")), Kind: line(r.PostFormValue("dish")),
		Before: plain(r.PostFormValue("before")), Last: plain(r.PostFormValue("last")),
		Asked: number(r.PostFormValue("questions")), Was: number(r.PostFormValue("asked")),
	}
	return w, nil
}

// parse reads a form, plain or with a file in it. The body is limited and
// smaller than what is kept in memory, so that no part of it is ever put into
// a temporary file.
func parse(r *http.Request) error {
	// First by itself: ParseMultipartForm passes over what goes wrong with a
	// plain body.
	err := r.ParseForm()
	if kind, _, _ := mime.ParseMediaType(r.Header.Get("Content-Type")); err == nil && kind == "multipart/form-data" {
		err = r.ParseMultipartForm(2 * maxBody)
	}
	var long *http.MaxBytesError
	if errors.As(err, &long) {
		return errTooLong
	}
	return err
}

// plain is a text as it is read: UTF-8, with plain line ends. A browser sends
// the line ends of a text box as two characters.
func plain(s string) string {
	s = strings.ToValidUTF8(s, "\uFFFD")
	return strings.NewReplacer("\r\n", "\n", "\r", "\n", "\x00", "\uFFFD").Replace(s)
}

// line is a short entry on one line.
func line(s string) string {
	s = strings.Join(strings.Fields(plain(s)), " ")
	if len(s) > maxTitle {
		s = strings.ToValidUTF8(s[:maxTitle], "")
	}
	return s
}

// number is how many questions are asked; what is no such number counts as the
// usual one.
func number(s string) int {
	n, err := strconv.Atoi(s)
	if err != nil || n < 1 || n > maxAsked {
		return atOnce
	}
	return n
}
