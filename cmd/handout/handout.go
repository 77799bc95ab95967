// Package handout makes what is printed and taken into the kitchen: the sheet
// for one practical, and the word list to pin up. Both are one HTML page that
// needs nothing but itself, black on white and set for A4. It reads no files:
// the commands and the pages hand it a dish type.
package handout

import (
	"bytes"
	"embed"
	"fmt"
	"html/template"
	"io"
	"unicode"
	"unicode/utf8"
)

//go:embed *.html
var files embed.FS

// render writes a page whole, or nothing of it when making it fails.
func render(out io.Writer, name string, data any) error {
	t, err := template.New(name).Funcs(template.FuncMap{"capital": capital}).ParseFS(files, name)
	if err != nil {
		return err
	}
	var b bytes.Buffer
	if err := t.Execute(&b, data); err != nil {
		return err
	}
	_, err = out.Write(b.Bytes())
	return err
}

// capital returns s with its first letter as a capital.
func capital(text any) string {
	s := fmt.Sprint(text)
	r, n := utf8.DecodeRuneInString(s)
	if n == 0 {
		return s
	}
	return string(unicode.ToUpper(r)) + s[n:]
}
