package corpus

import (
	"strings"
	"unicode"

	"golang.org/x/text/unicode/norm"

	"saywhy/analyze"
)

// The words by which names of files and folders are read. They are common
// practice among tutors, no published source.

// sessionWord reports whether a number behind the word is that of a session.
func sessionWord(w string) bool {
	switch w {
	case "session", "sessions", "week", "wk", "lesson", "practical", "meeting", "s", "w", "l", "p", "no", "nr", "number":
		return true
	}
	return false
}

// groupWord reports whether a number behind the word is that of a group, a
// room or a time of the year.
func groupWord(w string) bool {
	switch w {
	case "year", "yr", "y", "group", "class", "set", "table", "room", "term", "unit", "module", "cohort", "course", "form", "key", "stage", "ks":
		return true
	}
	return false
}

// learnerWord reports whether a number behind the word stands for a name.
func learnerWord(w string) bool {
	switch w {
	case "learner", "student", "pupil", "cook", "kitchen":
		return true
	}
	return false
}

// draftWord reports whether a number behind the word counts drafts or copies.
func draftWord(w string) bool {
	switch w {
	case "draft", "version", "v", "copy", "part", "page", "attempt", "try":
		return true
	}
	return false
}

// adultWord reports whether the word says that the adult wrote.
func adultWord(w string) bool {
	switch w {
	case "feedback", "adult", "adults", "adult's", "parent", "parents", "parent's", "mum", "mums", "mum's", "mam", "mom",
		"dad", "dads", "dad's", "carer", "carers", "carer's", "guardian", "gran", "granny", "grandma", "grandad", "nan",
		"nana", "auntie", "uncle", "supervisor", "grownup":
		return true
	}
	return false
}

// learnerTextWord reports whether the word says that it is the learner's own
// text.
func learnerTextWord(w string) bool {
	switch w {
	case "evaluation", "evaluations", "eval", "reflection", "reflections":
		return true
	}
	return false
}

// fillerWord reports whether a word at the edge of a piece tells nothing of
// learner, session or dish.
func fillerWord(w string) bool {
	switch w {
	case "my", "the", "a", "of", "by", "from", "for", "and", "on", "in", "to", "final", "draft", "drafts", "version", "copy", "new",
		"doc", "docs", "form", "forms", "responses", "answers", "writeup", "text", "workbook", "workbooks", "sheet", "worksheet",
		"practical", "practicals", "session", "sessions", "week", "weeks", "lesson", "lessons", "homework",
		"learner", "learners", "student", "students", "pupil", "pupils", "learner's", "cookery", "cooking", "course",
		"self", "review", "dish", "dishes", "group", "class", "year", "term", "half", "cohort", "spring", "summer", "autumn", "winter",
		"monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday", "morning", "afternoon", "evening":
		return true
	}
	return false
}

// roleOf reads a role as a person writes it: learner or adult, or any word
// that a name of a file tells the same by.
func roleOf(s string) (analyze.Role, bool) {
	learner, adult := false, false
	for _, w := range nameWords(s) {
		switch {
		case adultWord(w.lower):
			adult = true
		case learnerWord(w.lower), learnerTextWord(w.lower), w.lower == "me", w.lower == "myself", w.lower == "child", w.lower == "self":
			learner = true
		}
	}
	switch {
	case learner == adult:
		return "", false
	case adult:
		return analyze.Adult, true
	}
	return analyze.Learner, true
}

// dropAround takes filler off both ends of every piece, and groups that a
// single letter or a class such as 7b names.
func dropAround(words []nameWord) {
	for i := 0; i < len(words); {
		j := i
		for j < len(words) && !words[j].used && (j == i || !words[j].apart) {
			j++
		}
		if j == i {
			i++
			continue
		}
		trimPiece(words[i:j])
		i = j
	}
}

func trimPiece(piece []nameWord) {
	// "learner 12" and "pupil 3" are names, so a filler word stays before a
	// number that stays.
	keep := func(k int) bool {
		return learnerWord(piece[k].lower) && k+1 < len(piece) && allDigits(piece[k+1].lower)
	}
	from, to := 0, len(piece)
	for from < to && !keep(from) && (fillerWord(piece[from].lower) || className(piece[from].lower)) {
		if groupWord(piece[from].lower) && from+1 < to && len(piece[from+1].lower) == 1 {
			piece[from+1].used = true
		}
		piece[from].used = true
		from++
		for from < to && piece[from].used {
			from++
		}
	}
	for to > from && (fillerWord(piece[to-1].lower) || className(piece[to-1].lower)) {
		to--
		piece[to].used = true
	}
}

// className reports whether a word is a class such as 7b.
func className(w string) bool {
	letters := strings.TrimLeft(w, "0123456789")
	return len(letters) == 1 && len(w)-len(letters) > 0 && len(w) <= 3
}

// fold is a name for comparison: in lower case, composed, with single spaces
// for hyphens, underscores and spaces.
func fold(s string) string {
	s = strings.ReplaceAll(norm.NFC.String(strings.ToLower(s)), "’", "'")
	gap := func(r rune) bool { return r == '-' || r == '_' || unicode.IsSpace(r) }
	if strings.IndexFunc(s, gap) < 0 {
		return s
	}
	return strings.Join(strings.FieldsFunc(s, gap), " ")
}
