package analyze

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// line is one line of the text without its line end.
type line struct {
	span
	item  bool // it starts with a bullet or number
	blank bool
}

// paragraphs joins the lines that belong to one run of text.
func paragraphs(text string) []span {
	lines := splitLines(text)
	var out []span
	for i := 0; i < len(lines); {
		if lines[i].blank {
			i++
			continue
		}
		j := i + 1
		for j < len(lines) && !lines[j].blank && !lines[j].item {
			j++
		}
		out = appendRuns(out, text, lines[i:j])
		i = j
	}
	return out
}

// appendRuns joins wrapped lines of one block and keeps the others apart.
func appendRuns(out []span, text string, block []line) []span {
	wrapped := isWrapped(text, block)
	run := block[0].span
	for i := 1; i < len(block); i++ {
		if continues(text, block[i-1].span, block[i].span, wrapped) {
			run.end = block[i].end
			continue
		}
		out = append(out, run)
		run = block[i].span
	}
	return append(out, run)
}

// isWrapped reports whether a program broke the lines of a block: it is wide,
// and every line but the last is full, so that the next word would not have
// fitted.
func isWrapped(text string, block []line) bool {
	longest := 0
	for _, l := range block {
		longest = max(longest, l.end-l.start)
	}
	if longest < wrapWidth {
		return false
	}
	for i := 0; i+1 < len(block); i++ {
		if !fillsLine(text[block[i].start:block[i].end], text[block[i+1].start:block[i+1].end], longest) {
			return false
		}
	}
	return true
}

// continues reports whether the second line goes on with the run of text of
// the first: the first ends in the middle of a phrase, or the second starts in
// the middle of one, or a program wrapped them.
func continues(text string, a, b span, wrapped bool) bool {
	first := text[a.start:a.end]
	next := text[b.start:b.end]
	last, _ := utf8.DecodeLastRuneInString(first)
	r, _ := utf8.DecodeRuneInString(next)
	switch {
	case last == ':':
		return false
	case strings.ContainsRune(".!?…;", last):
		return wrapped
	case hangs(lastWord(first)) || strings.HasSuffix(first, "-") && len(first) > 2:
		return true
	case !unicode.IsLower(r):
		return false
	case last == ',':
		return true
	}
	word := strings.ToLower(firstWord(next))
	return goesOnWith(word) || wrapped && !opensSentence(word)
}

// goesOnWith reports whether a line that starts with the word goes on with the
// one before it.
func goesOnWith(word string) bool {
	switch word {
	case "and", "or", "which", "because", "cos", "than", "that", "of":
		return true
	}
	return false
}

// opensSentence reports whether the word often starts a sentence, so that a
// line in lower case that starts with it may be a note of its own.
func opensSentence(word string) bool {
	switch word {
	case "i", "it", "they", "we", "he", "she", "my", "next", "the", "this", "there", "also", "then", "mum", "dad", "you", "im", "i'm", "its", "it's", "to", "didnt", "didn't", "was", "were":
		return true
	}
	return false
}

func firstWord(s string) string {
	if i := strings.IndexFunc(s, unicode.IsSpace); i >= 0 {
		return s[:i]
	}
	return s
}

// fillsLine reports whether the first word of next would have made the line
// longer than the longest of its block.
func fillsLine(first, next string, longest int) bool {
	return len(first)+1+len(firstWord(next)) > longest && len(first) >= wrapWidth/2
}

func lastWord(s string) string {
	i := strings.LastIndexFunc(s, func(r rune) bool { return !unicode.IsLetter(r) && r != '\'' })
	return strings.ToLower(s[i+1:])
}

// hangs reports whether a line that ends in the word cannot be over.
func hangs(word string) bool {
	switch word {
	case "the", "a", "an", "and", "or", "but", "because", "to", "of", "with", "so", "my", "our",
		"was", "were", "is", "very", "really", "for", "from", "into", "by", "that", "which", "had",
		"have", "i", "as", "then", "nearly", "some", "this", "these", "too", "it's", "quite", "if", "when", "than", "be", "their", "its":
		return true
	}
	return false
}

// splitLines finds the lines and takes bullets and white space off them.
func splitLines(text string) []line {
	var out []line
	for start := 0; start <= len(text); {
		end, next := len(text), len(text)+1
		for i, r := range text[start:] {
			if r == '\n' || r == '\r' || r == '\u2028' || r == '\u2029' || r == '\v' || r == '\f' || r == '\u0085' {
				end = start + i
				next = end + utf8.RuneLen(r)
				if r == '\r' && strings.HasPrefix(text[next:], "\n") {
					next++
				}
				break
			}
		}
		out = append(out, newLine(text, start, end))
		start = next
	}
	return out
}

func newLine(text string, start, end int) line {
	l := line{span: trim(text, span{start, end})}
	for {
		n := bullet(text[l.start:l.end])
		if n == 0 {
			break
		}
		l.item = true
		l.span = trim(text, span{l.start + n, l.end})
	}
	l.blank = l.start >= l.end
	return l
}

// bullet returns the length of a list mark at the start of a line, or 0.
func bullet(s string) int {
	r, n := utf8.DecodeRuneInString(s)
	rest := s[n:]
	switch {
	case s == "":
		return 0
	case strings.ContainsRune("•·▪◦‣●○■□►▸→✓✔✗☐☑◆★☆⁃", r):
		return n
	case strings.ContainsRune("-*–—+>#~", r):
		next, _ := utf8.DecodeRuneInString(rest)
		if rest == "" || unicode.IsSpace(next) || unicode.IsLetter(next) || next == r {
			return n
		}
	case unicode.IsDigit(r):
		i := 0
		for i < len(s) && i < 2 && s[i] >= '0' && s[i] <= '9' {
			i++
		}
		if i > 0 && i+1 < len(s) && (s[i] == ')' || s[i] == '.') && (s[i+1] == ' ' || s[i+1] == '\t') {
			return i + 1
		}
	case r < utf8.RuneSelf && unicode.IsLower(r):
		if strings.HasPrefix(rest, ") ") {
			return n + 1
		}
	}
	return 0
}

// trim takes white space and invisible marks off both ends of a span.
func trim(text string, s span) span {
	for s.start < s.end {
		r, n := utf8.DecodeRuneInString(text[s.start:s.end])
		if !padding(r) {
			break
		}
		s.start += n
	}
	for s.start < s.end {
		r, n := utf8.DecodeLastRuneInString(text[s.start:s.end])
		if !padding(r) {
			break
		}
		s.end -= n
	}
	return s
}

func padding(r rune) bool {
	switch r {
	case '\ufeff', '\u200b', '\u200e', '\u200f', '\u2060', 0:
		return true
	}
	return unicode.IsSpace(r)
}
