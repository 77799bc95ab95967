package corpus

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"time"
	"unicode"

	"saywhy/analyze"
)

// nameParts is what the name of one file or folder tells.
type nameParts struct {
	sessions []string // as in Evaluation, without repeats
	marked   bool     // a word such as "week", or a title of course.yaml, says that it is a session
	date     time.Time
	role     analyze.Role // "" when nothing is said
	dish     string
	runs     []run // the words that nothing claims, in order
}

// bothRoles marks a document that holds the evaluation and the feedback.
const bothRoles analyze.Role = "both"

// run is a piece of a name that no rule knows.
type run struct {
	text       string
	numbered   bool // it stands behind the session's number or the date
	beforeDish bool // it stands right before the dish, so that it may belong to it
	generic    bool // and that dish is only a type such as soup
	listed     bool // it is a learner of course.yaml
}

// nameWord is a word of a name: letters and digits, with what stands inside a
// word ("o'neil").
type nameWord struct {
	text       string // as written
	lower      string
	start, end int  // bytes of the name
	apart      bool // a strong mark stands before it: " - ", a bracket, a comma
	bracketed  bool // it stands alone in brackets: "(2)"
	used       bool
}

// placeName reads a name word by word and says what each tells. Hyphens,
// underscores and full stops are spaces, but where a name has spaces as well,
// underscores keep pieces apart, as " - ", commas and brackets do.
func placeName(name string, book nameBook) nameParts {
	words := nameWords(name)
	var out nameParts
	out.titled(words, book.titles)
	out.listed(words, book.learners)
	number := out.dates(name, words)
	at := book.dish(words)
	out.numbers(words, at, &number)
	out.roles(words)
	if at.found() {
		out.dish = name[words[at.from].start:words[at.to-1].end]
		use(words[at.from:at.to])
	}
	dropAround(words)
	out.rest(name, words, number, at)
	return out
}

func use(words []nameWord) {
	for i := range words {
		words[i].used = true
	}
}

// nameWords divides a name into its words.
func nameWords(name string) []nameWord {
	strong := "()[]{},;+&"
	if strings.Contains(name, " ") || strings.Contains(name, "-") && strings.Contains(name, "_") {
		strong += "_"
	}
	var out []nameWord
	start, apart := -1, false
	flush := func(end int) {
		if start < 0 {
			return
		}
		w := nameWord{text: name[start:end], start: start, end: end, apart: apart}
		w.lower = fold(w.text)
		w.bracketed = start > 0 && name[start-1] == '(' && strings.HasPrefix(name[end:], ")")
		out = append(out, w)
		start, apart = -1, false
	}
	for i, r := range name {
		inside := unicode.IsLetter(r) || unicode.IsDigit(r) || unicode.IsMark(r) || start >= 0 && (r == '\'' || r == '’')
		if inside {
			if start < 0 {
				start = i
			}
			continue
		}
		flush(i)
		spaced := (r == '-' || r == '–' || r == '—') && (strings.HasSuffix(name[:i], " ") || strings.HasPrefix(name[i+len(string(r)):], " "))
		apart = apart || spaced || strings.ContainsRune(strong, r)
	}
	flush(len(name))
	return out
}

// dates finds dates and returns the index of the word behind the first of
// them, or -1.
func (n *nameParts) dates(name string, words []nameWord) int {
	behind := -1
	for i := range words {
		var t time.Time
		var ok bool
		k := 1
		switch {
		case words[i].used:
		case i+2 < len(words) && allDigits(words[i].lower) && allDigits(words[i+2].lower) && words[i+2].end-words[i].start <= 10:
			if t, ok = parseDate(strings.ReplaceAll(name[words[i].start:words[i+2].end], "_", "-")); ok {
				k = 3
			}
		}
		if !ok && len(words[i].lower) == 8 && allDigits(words[i].lower) {
			d := words[i].lower
			t, ok = parseDate(d[:4] + "-" + d[4:6] + "-" + d[6:])
		}
		if !ok {
			continue
		}
		use(words[i : i+k])
		n.date = t
		if behind < 0 {
			behind = i + k
		}
	}
	return behind
}

// numbers finds the session's number, and takes away the numbers of classes,
// drafts and copies.
func (n *nameParts) numbers(words []nameWord, dish phraseAt, behind *int) {
	found := func(number string, i int) {
		if v, err := strconv.Atoi(number); err == nil {
			if s := fmt.Sprintf("%02d", v); !slices.Contains(n.sessions, s) {
				n.sessions = append(n.sessions, s)
			}
		}
		if *behind < 0 {
			*behind = i + 1
		}
	}
	for i := range words {
		w := &words[i]
		if w.used || dish.holds(i) {
			continue
		}
		mark, number := splitNumber(w.lower)
		if number == "" {
			continue
		}
		before := i - 1
		if mark == "" && before >= 0 && !words[before].used && !w.apart {
			mark = words[before].lower
		} else {
			before = -1
		}
		switch {
		case sessionWord(mark):
			if !n.marked {
				n.sessions, n.marked = nil, true // a marked number is surer than a bare one
			}
			found(number, i)
		case learnerWord(mark):
			continue // "learner 12" is a name
		case groupWord(mark), draftWord(mark):
		case w.bracketed:
			before = -1
		case len(number) == 4 && (number[:2] == "19" || number[:2] == "20") && w.lower == number:
			before = -1 // a year, or the first half of 2026-27
			if i+1 < len(words) && len(words[i+1].lower) == 2 && allDigits(words[i+1].lower) {
				words[i+1].used = true
			}
		case w.lower != number || len(number) > 3:
			continue // "7b", "amina2"
		default:
			before = -1
			if !n.marked {
				found(number, i)
			}
		}
		w.used = true
		if before >= 0 {
			words[before].used = true
		}
	}
}

// splitNumber returns the letters and the digits of a word that is letters
// and then digits, or only digits.
func splitNumber(w string) (mark, number string) {
	i := len(w)
	for i > 0 && w[i-1] >= '0' && w[i-1] <= '9' {
		i--
	}
	if strings.ContainsFunc(w[:i], unicode.IsDigit) {
		return "", ""
	}
	return w[:i], w[i:]
}

func allDigits(s string) bool {
	return s != "" && strings.Trim(s, "0123456789") == ""
}

// roles finds who wrote.
func (n *nameParts) roles(words []nameWord) {
	learner, adult := false, false
	for i := range words {
		w := &words[i]
		switch {
		case w.used:
		case adultWord(w.lower):
			adult, w.used = true, true
			if i > 0 && !words[i-1].used {
				words[i-1].unpossess()
			}
		case learnerTextWord(w.lower):
			learner, w.used = true, true
		}
	}
	switch {
	case learner && adult:
		n.role = bothRoles
	case adult:
		n.role = analyze.Adult
	case learner:
		n.role = analyze.Learner
	}
}

// unpossess takes the ending off "Amina's" before "mum".
func (w *nameWord) unpossess() {
	for _, end := range []string{"'s", "’s"} {
		if t, ok := strings.CutSuffix(w.text, end); ok && t != "" {
			w.text, w.end = t, w.start+len(t)
		}
	}
}

// rest gathers the words that nothing claims into runs.
func (n *nameParts) rest(name string, words []nameWord, behind int, dish phraseAt) {
	for i := 0; i < len(words); {
		if words[i].used {
			i++
			continue
		}
		j := i + 1
		for j < len(words) && !words[j].used && !words[j].apart {
			j++
		}
		next := dish.found() && j == dish.from && !words[j].apart
		n.runs = append(n.runs, run{
			text: name[words[i].start:words[j-1].end], numbered: behind >= 0 && i >= behind,
			beforeDish: next, generic: next && dish.generic,
		})
		i = j
	}
}
