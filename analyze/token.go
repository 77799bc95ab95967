package analyze

import (
	"strings"
	"sync"
	"unicode"
	"unicode/utf8"

	"saywhy/lexicon"
)

// span is a half-open range of bytes of the text as given.
type span struct{ start, end int }

// token is one word or mark of a sentence.
type token struct {
	span
	text string // the very bytes
	norm string // lower case, straight apostrophes, missing apostrophes put back
	tag  string // Penn Treebank
	stem string
	word bool // holds a letter or digit
	kind lexicon.Kind
	card *card // of norm; set with the tags

	turns  bool // another clause begins here
	closes bool // a clause ends here
}

// tokenizer divides a sentence into words and marks in the manner of the Penn
// Treebank ("do", "n't"), which the tagger was trained on.
type tokenizer struct{ spare *sync.Pool }

func (d tokenizer) read(r *reading) {
	all := d.memory(r.Text)
	for i := range r.sentences {
		s := &r.sentences[i]
		from := len(all)
		all = d.appendTokens(all, r.Text, s.span)
		s.tokens = all[from:len(all):len(all)]
	}
	r.tokens = &all
}

// memory is one piece for all tokens of a text: nearly a third of all that a
// reading takes, so that it is lent from reading to reading.
func (d tokenizer) memory(text string) []token {
	if spare, ok := d.spare.Get().(*[]token); ok {
		return *spare
	}
	return make([]token, 0, len(text)/4+8) // a word of English and its blank take rather more than four bytes
}

// tokens returns the tokens of a text that is no sentence of a reading.
func (d tokenizer) tokens(text string) []token {
	return d.appendTokens(nil, text, span{0, len(text)})
}

// appendTokens appends the tokens of text[s.start:s.end]. Every token's span
// slices back to its text.
func (tokenizer) appendTokens(out []token, text string, s span) []token {
	for i := s.start; i < s.end; {
		r, n := utf8.DecodeRuneInString(text[i:s.end])
		switch {
		case unicode.IsSpace(r) || padding(r):
			i += n
		case wordRune(r):
			end := wordEnd(text, i, s.end)
			out = appendWord(out, text, span{i, end})
			i = end
		default:
			end := i + n
			if !strings.ContainsRune("()[]{}\"“”‘’", r) {
				end = markEnd(text, i+n, s.end, r)
			}
			out = append(out, token{span: span{i, end}, text: text[i:end], norm: mark(r)})
			i = end
		}
	}
	return out
}

// mark folds a run of punctuation to what the tagger knows.
func mark(r rune) string {
	switch r {
	case '…':
		return "..."
	case '“', '”', '„', '«', '»':
		return `"`
	case '‘', '’', '`', '´':
		return "'"
	case '–', '—', '―', '−':
		return "--"
	}
	return string(r)
}

// markEnd takes in what repeats a mark ("!!!"), or, for an emoji, what is
// joined to it.
func markEnd(text string, i, limit int, first rune) int {
	ascii := first < utf8.RuneSelf
	for i < limit {
		r, n := utf8.DecodeRuneInString(text[i:limit])
		same := r == first
		joined := !ascii && (unicode.Is(unicode.M, r) || r == '\u200d' || unicode.Is(unicode.So, r) || unicode.Is(unicode.Sk, r))
		if !same && !joined {
			break
		}
		i += n
	}
	return i
}

func apostrophe(r rune) bool {
	return r == '\'' || r == '’' || r == '‘' || r == 'ʼ' || r == '`' || r == '´'
}

// wordEnd finds the end of a word: letters, digits and combining marks, with
// apostrophes and hyphens between letters and points between digits.
func wordEnd(text string, i, limit int) int {
	prev := rune(0)
	for i < limit {
		r, n := utf8.DecodeRuneInString(text[i:limit])
		if wordRune(r) || unicode.Is(unicode.M, r) || r == '\u200d' {
			prev = r
			i += n
			continue
		}
		next, _ := utf8.DecodeRuneInString(text[min(i+n, limit):limit])
		switch {
		case apostrophe(r) && unicode.IsLetter(prev) && unicode.IsLetter(next):
		case (r == '-' || r == '‑' || r == '‐') && wordRune(prev) && unicode.IsLetter(next):
		case (r == '.' || r == ',' || r == '/' || r == ':') && unicode.IsDigit(prev) && unicode.IsDigit(next):
		default:
			return i
		}
		prev = r
		i += n
	}
	return i
}

// appendWord splits a contraction and a number from its unit.
func appendWord(out []token, text string, s span) []token {
	w := text[s.start:s.end]
	norm := normalise(w)
	at := func(n int) int { return s.start + n }
	whole := func(sp span, norm string) token {
		return token{span: sp, text: text[sp.start:sp.end], norm: norm, word: true}
	}
	// "20mins", "180c", "2tbsp": the figure and its unit.
	if d := digits(w); d > 0 && d < len(w) {
		if isUnit(norm[min(d, len(norm)):]) {
			return append(out, whole(span{s.start, at(d)}, w[:d]), whole(span{at(d), s.end}, norm[d:]))
		}
	}
	head, tail := contraction(norm)
	if tail == "" {
		return append(out, whole(s, head))
	}
	// The tail's bytes in the text: as many letters from the end as it has,
	// with the apostrophe if there is one.
	cut := s.end
	letters := 0
	for _, r := range tail {
		if unicode.IsLetter(r) {
			letters++
		}
	}
	for cut > s.start && letters > 0 {
		r, n := utf8.DecodeLastRuneInString(text[s.start:cut])
		cut -= n
		if unicode.IsLetter(r) {
			letters--
		}
	}
	if r, n := utf8.DecodeLastRuneInString(text[s.start:cut]); apostrophe(r) && !strings.HasPrefix(tail, "n") {
		cut -= n
	}
	if cut <= s.start || cut >= s.end {
		return append(out, whole(s, norm))
	}
	return append(out, whole(span{s.start, cut}, head), whole(span{cut, s.end}, tail))
}

// digits counts the bytes of the figure a word starts with.
func digits(w string) int {
	i := 0
	for i < len(w) && (w[i] >= '0' && w[i] <= '9' || w[i] == '.' || w[i] == ',') {
		i++
	}
	return i
}

func isUnit(w string) bool {
	switch w {
	case "c", "f", "g", "kg", "ml", "l", "cm", "mm", "min", "mins", "minutes", "hr", "hrs", "hours", "secs",
		"tbsp", "tsp", "oz", "lb", "pm", "am", "degrees", "deg":
		return true
	}
	return false
}

// normalise lower-cases a word and straightens its apostrophes and hyphens.
func normalise(w string) string {
	ascii := true
	for i := range len(w) {
		if w[i] >= utf8.RuneSelf {
			ascii = false
			break
		}
	}
	w = strings.ToLower(w)
	if ascii {
		return strings.ReplaceAll(w, "`", "'")
	}
	return strings.Map(func(r rune) rune {
		switch {
		case apostrophe(r):
			return '\''
		case r == '‑' || r == '‐':
			return '-'
		}
		return r
	}, w)
}

// contraction splits a word as the treebank does and puts a missing
// apostrophe back: "don't" and "dont" are "do" and "n't". A word that is also
// another word (its, were, well, hell, id, ill, shed, wed) is left to the
// context: see repair.
func contraction(w string) (head, tail string) {
	switch w {
	case "dont", "didnt", "doesnt", "wasnt", "werent", "isnt", "arent", "couldnt", "wouldnt", "shouldnt", "hasnt", "havent", "hadnt", "aint", "dosnt", "dident", "wernt", "neednt", "mustnt":
		h := strings.TrimSuffix(strings.TrimSuffix(w, "ent"), "nt")
		switch w {
		case "dont", "dosnt", "dident", "werent", "arent", "havent", "wernt":
			h = map[string]string{"dont": "do", "dosnt": "does", "dident": "did", "werent": "were", "arent": "are", "havent": "have", "wernt": "were"}[w]
		}
		return h, "n't"
	case "cant", "can't":
		return "ca", "n't"
	case "wont", "won't":
		return "wo", "n't"
	case "im", "i'm":
		return "i", "'m"
	case "ive", "youve", "weve", "theyve":
		return w[:len(w)-2], "'ve"
	case "thats", "whats", "theres", "heres", "hes", "shes":
		return w[:len(w)-1], "'s"
	case "theyre", "youre":
		return w[:len(w)-2], "'re"
	case "itll", "youll", "theyll", "thatll":
		return w[:len(w)-2], "'ll"
	case "o'clock":
		return w, ""
	case "cannae", "canna":
		return "ca", "n't"
	case "dinnae", "dinna":
		return "do", "n't"
	case "wasnae", "didnae", "isnae", "couldnae", "wouldnae", "shouldnae", "hasnae", "havenae", "hadnae", "doesnae", "werenae", "arenae":
		// The Scots "not", joined to its verb; the next case has its other spelling.
		return strings.TrimSuffix(w, "nae"), "n't"
	case "wasny", "didny", "isny", "doesny", "couldny", "wouldny", "hasny":
		return strings.TrimSuffix(w, "ny"), "n't"
	}
	i := strings.LastIndexByte(w, '\'')
	if i <= 0 {
		return w, ""
	}
	if strings.HasSuffix(w, "'nt") && len(w) > 4 {
		return w[:len(w)-3], "n't" // should'nt
	}
	if strings.HasSuffix(w, "n't") && len(w) > 3 {
		return w[:len(w)-3], "n't"
	}
	switch w[i:] {
	case "'s", "'m", "'re", "'ve", "'ll", "'d":
		return w[:i], w[i:]
	}
	return w, ""
}
