package corpus

import (
	"bytes"
	"io/fs"
	"strings"
	"unicode/utf8"

	"golang.org/x/text/encoding"
	"golang.org/x/text/encoding/charmap"
	"golang.org/x/text/encoding/unicode"
)

// readPlain reads a text file: front matter if it has any, and the text.
func (r *folderReader) readPlain(name string, f fs.File, send func(found) bool) {
	data, u := all(f, maxText)
	if u != nil {
		send(found{Unplaced: u})
		return
	}
	text, u := decode(data)
	if u != nil {
		send(found{Unplaced: u})
		return
	}
	given, text, err := frontMatter(text)
	if err != nil {
		send(found{Unplaced: asUnplaced(err)})
		return
	}
	r.sendTexts(name, given, lines(text), send)
}

// lines returns the lines of a text as paragraphs. A line that begins with
// number signs and a space is a heading of Markdown.
func lines(text string) []paragraph {
	split := strings.Split(text, "\n")
	out := make([]paragraph, len(split))
	for i, l := range split {
		out[i] = paragraph{text: l, line: true}
		if signs := len(l) - len(strings.TrimLeft(l, "#")); signs > 0 && signs <= 6 && strings.HasPrefix(l[signs:], " ") {
			out[i].level = signs
		}
	}
	return out
}

// decode returns a text file as UTF-8. A byte order mark tells UTF-8 and both
// kinds of UTF-16; a file without one that is not UTF-8 is taken for
// Windows-1252, which Western Windows programs write when they say ANSI.
func decode(data []byte) (string, *Unplaced) {
	var from encoding.Encoding
	switch {
	case bytes.HasPrefix(data, []byte("\xef\xbb\xbf")):
		data = data[3:]
	case bytes.HasPrefix(data, []byte("\xff\xfe")):
		from = unicode.UTF16(unicode.LittleEndian, unicode.ExpectBOM)
	case bytes.HasPrefix(data, []byte("\xfe\xff")):
		from = unicode.UTF16(unicode.BigEndian, unicode.ExpectBOM)
	case !utf8.Valid(data) && bytes.IndexByte(data, 0) < 0:
		from = charmap.Windows1252
	}
	if from != nil {
		decoded, err := from.NewDecoder().Bytes(data)
		if err != nil {
			return "", unplaced("is not text that can be read; save it again as plain text in UTF-8")
		}
		data = decoded
	}
	if bytes.IndexByte(data, 0) >= 0 || bytes.HasPrefix(data, []byte("PK\x03\x04")) || bytes.HasPrefix(data, []byte("%PDF")) {
		return "", unplaced("is not a text file, whatever its name says; save it as plain text, or let its name end in what it is")
	}
	if len(data) > maxText {
		return "", tooLong()
	}
	return strings.ReplaceAll(string(bytes.ToValidUTF8(data, []byte("\uFFFD"))), "\r\n", "\n"), nil
}
