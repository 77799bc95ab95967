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
