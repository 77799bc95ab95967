package analyze

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

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
