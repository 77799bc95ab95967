package analyze

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"
)

// splitter divides a text into sentences as a person would who reads what a
// child pasted: lines, bullets and headings count as much as full stops, and a
// missing capital does not join two sentences.
//
// A trained sentence model was weighed and left out: it knows newspaper
// abbreviations but not bullets, wrapped lines or "180C.Then", which are the
// work here. The tests count both on the published cases of prose's module.
type splitter struct{}

// wrapWidth is the shortest longest line, in bytes, of a paragraph whose lines
// can have been broken by a program instead of by the writer.
const wrapWidth = 40

func (d splitter) read(r *reading) {
	spans := d.split(r.Text)
	r.sentences = make([]sentence, 0, len(spans))
	for n, s := range spans {
		r.sentences = append(r.sentences, sentence{span: s, n: n + 1})
	}
}

// split returns the sentences as byte spans of text: in order, not
// overlapping, without the white space and bullets around them.
func (splitter) split(text string) []span {
	var out []span
	for _, para := range paragraphs(text) {
		first := len(out)
		out = appendSentences(out, text, para)
		for n := first; n < len(out); n++ {
			if long := out[n]; long.end-long.start > maxSentence {
				out = slices.Replace(out, n, n+1, cutUp(text, long)...)
			}
		}
	}
	return out
}

// maxSentence is the longest sentence that is read in one piece, in bytes: some
// 3,000 words. A sentence is weighed as a whole, word against word, so that one
// without an end would take time by the square of its length. Nobody writes
// such a thing; a stuck key and an attacker do.
const maxSentence = 16 << 10

// cutUp parts a sentence that is too long between words, where there are any.
func cutUp(text string, s span) []span {
	var out []span
	for s.end-s.start > maxSentence {
		at := strings.LastIndexFunc(text[s.start:s.start+maxSentence], unicode.IsSpace)
		if at < 0 {
			at = strings.IndexFunc(text[s.start+maxSentence:s.end], unicode.IsSpace)
			if at < 0 {
				break
			}
			at += maxSentence
		}
		piece := trim(text, span{s.start, s.start + at})
		if piece.end > piece.start {
			out = append(out, piece)
		}
		s = trim(text, span{s.start + at, s.end})
	}
	return append(out, s)
}

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

// appendSentences divides a run of text at its sentence ends. What holds no
// letter or digit joins the sentence before it ("Lovely. 😀"), or is no
// sentence at all.
func appendSentences(out []span, text string, run span) []span {
	first := len(out)
	add := func(s span) {
		s = trim(text, s)
		switch {
		case s.start >= s.end:
		case !strings.ContainsFunc(text[s.start:s.end], wordRune):
			if len(out) > first {
				out[len(out)-1].end = s.end
			}
		default:
			out = append(out, s)
		}
	}
	start := run.start
	for i := run.start; i < run.end; {
		r, n := utf8.DecodeRuneInString(text[i:run.end])
		if r != ' ' && r < firstSymbol && !terminal(r) {
			i += n // a letter, of which there are most
			continue
		}
		if !terminal(r) {
			at, ok := breaksOff(text, run, i, n)
			if ok {
				add(span{start, at})
				start = at
			}
			i = max(at, i+n)
			continue
		}
		end := afterTerminals(text, i, run.end)
		if endsSentence(text, run, i, end) {
			end = afterClosers(text, end, run.end)
			add(span{start, end})
			start = end
		}
		i = end
	}
	add(span{start, run.end})
	return out
}

// firstSymbol is where the arrows begin, behind which Unicode has its symbols
// and emoji.
const firstSymbol = 0x2190

// breaksOff reports whether a sentence ends before the word behind offset i
// although no mark says so, and where to read on: behind an emoji that a new clause
// follows, and before a capital that only the start of a sentence explains
// ("… for the first time It went thick").
func breaksOff(text string, run span, i, n int) (int, bool) {
	r, _ := utf8.DecodeRuneInString(text[i:run.end])
	at := i + n
	if r >= firstSymbol && r != utf8.RuneError && (unicode.Is(unicode.So, r) || unicode.Is(unicode.Sk, r)) {
		for at < run.end {
			r, n := utf8.DecodeRuneInString(text[at:run.end])
			if !unicode.Is(unicode.So, r) && !unicode.Is(unicode.M, r) && !unicode.Is(unicode.Sk, r) && r != '\u200d' {
				break
			}
			at += n
		}
		rest := text[at:run.end]
		word := firstWord(strings.TrimLeftFunc(rest, unicode.IsSpace))
		first, _ := utf8.DecodeRuneInString(word)
		return at, strings.HasPrefix(rest, " ") && (unicode.IsUpper(first) || opensSentence(word) && word != "was" && word != "were")
	}
	if r != ' ' || i == run.start {
		return 0, false
	}
	before, _ := utf8.DecodeLastRuneInString(text[run.start:i])
	switch firstWord(text[at:min(run.end, at+16)]) {
	case "It", "They", "The", "This", "Next", "My", "When", "We", "He", "She", "There", "Inside", "Also":
		return at, unicode.IsLower(before) && !strings.Contains(text[max(run.start, i-12):i], ".") && text[max(run.start, i-3):i] != "and" && lowerAround(text, run, i)
	}
	return 0, false
}

// lowerAround reports whether the words before offset i are in lower case, so
// that a capital behind it is no part of a title.
func lowerAround(text string, run span, i int) bool {
	fields := strings.Fields(text[max(run.start, i-30):i])
	for k := max(0, len(fields)-3); k < len(fields); k++ {
		if r, _ := utf8.DecodeRuneInString(fields[k]); unicode.IsUpper(r) && fields[k] != "I" {
			return false
		}
	}
	return len(fields) >= 3
}

func terminal(r rune) bool { return r == '.' || r == '!' || r == '?' || r == '…' }

func wordRune(r rune) bool { return unicode.IsLetter(r) || unicode.IsDigit(r) }

// afterTerminals returns the offset behind the terminals at offset i: "?!",
// "...", and ". . ." with its spaces.
func afterTerminals(text string, i, limit int) int {
	for i < limit {
		r, n := utf8.DecodeRuneInString(text[i:limit])
		switch {
		case terminal(r):
			i += n
		case strings.HasPrefix(text[i:limit], " .") && text[i-1] == '.':
			i += 2
		default:
			return i
		}
	}
	return i
}

// afterClosers returns the offset behind the closing quotes and brackets that
// follow a terminal.
func afterClosers(text string, i, limit int) int {
	for i < limit {
		r, n := utf8.DecodeRuneInString(text[i:limit])
		if !strings.ContainsRune(`"')]}”’»`, r) {
			break
		}
		if following, _ := utf8.DecodeRuneInString(text[i+n : limit]); (r == '\'' || r == '’') && unicode.IsLetter(following) {
			break // "the Jr.'s"
		}
		i += n
	}
	return i
}

// endsSentence reports whether the terminals text[i:end] end a sentence.
func endsSentence(text string, run span, i, end int) bool {
	after := afterClosers(text, end, run.end)
	closed := after > end
	rest := text[after:run.end]
	next, _ := utf8.DecodeRuneInString(strings.TrimLeftFunc(rest, unicode.IsSpace))
	if rest == "" {
		return true
	}
	gap, _ := utf8.DecodeRuneInString(rest)
	spaced := unicode.IsSpace(gap)
	mark := text[i:end]
	dots := strings.Trim(mark, ".… ") == "" && len(mark) > 1

	switch {
	case dots:
		// "lovely… but dry" goes on; "dry... Next time" does not.
		return unicode.IsUpper(next) && !strings.HasPrefix(strings.TrimLeftFunc(rest, unicode.IsSpace), "I ")
	case mark != ".":
		// "Yum!" said Mum: a lower-case word after a closed quotation.
		if closed && unicode.IsLower(next) {
			return false
		}
		return spaced || wordRune(gap) || closed
	}
	word := wordBefore(text[run.start:i])
	lower := strings.ToLower(word)
	if spaced {
		if closed && unicode.IsLower(next) {
			return false // "It wants salt." said Grandpa: likewise
		}
		if !closed && (abbreviation(lower) || itemNumber(text[run.start:i], word)) {
			return false
		}
		if titled(lower) && unicode.IsUpper(next) {
			return false
		}
		if unitAbbreviation(lower) && unicode.IsLower(next) && !closed {
			return false
		}
		if isInitial(word) && unicode.IsUpper(next) && word != "I" {
			return false
		}
		if strings.Contains(word, ".") && !unicode.IsUpper(next) {
			return false // "a.m. on Monday"
		}
		if (lower == "no" || lower == "p" || lower == "pp") && unicode.IsDigit(next) {
			return false
		}
		return true
	}
	// No space: "180C.Then", "nice.the crust", but not "3.5", "e.g.x" or a
	// file name.
	if closed {
		return wordRune(gap)
	}
	if !unicode.IsLetter(gap) || isInitial(word) || strings.ContainsAny(word, ".@/") {
		return false
	}
	following := wordAfter(rest)
	if unicode.IsUpper(gap) {
		return len(word) > 1 && !strings.Contains(following, ".")
	}
	return len(word) > 1 && len(following) > 1 && !webEnding(following) && unicode.IsLetter(lastRune(word))
}

func lastRune(s string) rune {
	r, _ := utf8.DecodeLastRuneInString(s)
	return r
}

// wordBefore returns the chunk without spaces at the end of s, at most 40
// bytes of it.
func wordBefore(s string) string {
	s = s[max(0, len(s)-40):]
	i := strings.LastIndexFunc(s, func(r rune) bool {
		return unicode.IsSpace(r) || strings.ContainsRune("(\"“‘[,;", r)
	})
	if i < 0 {
		return s
	}
	_, n := utf8.DecodeRuneInString(s[i:])
	return s[i+n:]
}

func wordAfter(s string) string {
	s = s[:min(len(s), 40)]
	if i := strings.IndexFunc(s, func(r rune) bool { return unicode.IsSpace(r) }); i >= 0 {
		s = s[:i]
	}
	return strings.TrimRight(s, ".!?,;:")
}

// itemNumber reports whether the word at the end of before is the number of a
// list that was pasted into one line: "… jobs. 1. I peeled them.".
func itemNumber(before, word string) bool {
	if word == "" || len(word) > 2 || strings.Trim(word, "0123456789") != "" {
		return false
	}
	before = strings.TrimRightFunc(strings.TrimSuffix(before, word), unicode.IsSpace)
	return before == "" || terminal(lastRune(before)) || lastRune(before) == ':'
}

func isInitial(word string) bool {
	return utf8.RuneCountInString(word) == 1 && unicode.IsLetter(lastRune(word))
}

// abbreviation reports whether a full stop after the word never ends a
// sentence in these texts.
func abbreviation(w string) bool {
	switch w {
	case "e.g", "i.e", "eg", "ie", "approx", "vs", "cf", "viz", "fig":
		return true
	}
	return false
}

// titled reports whether the word stands before a name.
func titled(w string) bool {
	switch w {
	case "mr", "mrs", "ms", "dr", "st", "prof", "rev", "sgt", "capt", "mt", "jr", "sr", "gov", "gen", "messrs":
		return true
	}
	return false
}

// unitAbbreviation reports whether the word is a measure that is often written
// with a full stop inside a sentence.
func unitAbbreviation(w string) bool {
	switch w {
	case "tbsp", "tsp", "mins", "min", "hrs", "hr", "secs", "sec", "oz", "lb", "lbs", "deg", "temp", "etc", "ml", "kg", "incl", "dept", "co", "inc", "ltd":
		return true
	}
	return false
}

func webEnding(w string) bool {
	w = strings.ToLower(w)
	for _, end := range []string{"com", "co.uk", "uk", "org", "net", "txt", "doc", "docx", "pdf", "jpg", "png", "md", "odt"} {
		if w == end || strings.HasPrefix(w, end+"/") {
			return true
		}
	}
	return false
}
