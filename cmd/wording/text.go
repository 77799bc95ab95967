package wording

import (
	"bytes"
	"fmt"
	"unicode/utf8"
)

// NotText says why data is no text that can be read and what to do about it,
// as the end of a sentence that begins with the name of a file; "" when it is
// text.
func NotText(data []byte) string {
	switch {
	case bytes.HasPrefix(data, []byte("PK\x03\x04")), bytes.HasPrefix(data, []byte("%PDF")):
		return "is a document, not a text file; save it as plain text first"
	case bytes.HasPrefix(data, []byte("\xff\xfe")), bytes.HasPrefix(data, []byte("\xfe\xff")):
		return "is saved as UTF-16; save it again as plain text in UTF-8"
	case bytes.IndexByte(data, 0) >= 0:
		return fmt.Sprintf("is not a text file (there is a zero byte at %d); save it as plain text first", bytes.IndexByte(data, 0))
	case !utf8.Valid(data):
		return fmt.Sprintf("is not UTF-8 text (see byte %d); save it again as plain text in UTF-8", FirstInvalid(data))
	}
	return ""
}

// FirstInvalid returns the byte at which data stops being UTF-8, or its length.
func FirstInvalid(data []byte) int {
	for i := 0; i < len(data); {
		r, n := utf8.DecodeRune(data[i:])
		if r == utf8.RuneError && n == 1 {
			return i
		}
		i += n
	}
	return len(data)
}
