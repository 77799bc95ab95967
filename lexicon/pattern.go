package lexicon

import (
	"fmt"
	"strconv"
	"strings"
)

// Pattern is a short sequence of words to be found in a sentence, as written
// in the reading files. Its parts stand with spaces between them:
//
//	wash            any word with the same stem: wash, washed, washing
//	=well           this very word
//	no_one          these very words, one after the other
//	hand|board      either
//	@tool           any noun of that kind (see Kind)
//	$body           any word of the file's own group of that name
//	/VB             any word whose tag begins so (Penn Treebank)
//	/=VB            any word with this very tag
//	roll+VB         any word with that stem whose tag begins so
//	~3              up to three words may stand here
//	~               up to six
//	~~12            up to twelve, also where another clause begins
//	really?         may be missing
//	!fork           the word here is not this one (and is not consumed);
//	                at the start it looks at the word before
type Pattern struct {
	Text  string // as written
	Parts []Part
}

// Part is one place of a pattern.
type Part struct {
	Words    []string // exact, lower case
	Phrases  [][]string
	Stems    []string
	Kinds    []Kind
	Tags     []string // prefixes of tags
	Tag      []string // whole tags
	Tagged   []Tagged // stems that count with a tag only
	Gap      int      // how many words may be passed over before it
	Wide     bool     // the gap may reach into another clause
	Optional bool
	Not      bool
}

// Tagged is a stem together with the beginning of a tag.
type Tagged struct{ Stem, Tag string }

// defaultGap is how many words a bare "~" passes over: about a short clause.
const defaultGap = 6

// ParsePattern reads a pattern. The error says which part is wrong.
func ParsePattern(text string) (Pattern, error) {
	p := Pattern{Text: text}
	gap, wide := 0, false
	for _, field := range strings.Fields(text) {
		if n, ok := strings.CutPrefix(field, "~"); ok {
			gap = defaultGap
			n, wide = strings.CutPrefix(n, "~")
			if n != "" {
				v, err := strconv.Atoi(n)
				if err != nil || v < 1 || v > 20 {
					return p, fmt.Errorf("the gap %q needs a number from 1 to 20 after the ~", field)
				}
				gap = v
			}
			continue
		}
		part := Part{Gap: gap, Wide: wide}
		gap, wide = 0, false
		field, part.Not = cut(field, strings.CutPrefix, "!")
		field, part.Optional = cut(field, strings.CutSuffix, "?")
		for _, alt := range strings.Split(field, "|") {
			switch {
			case strings.Trim(alt, "=+_/") == "" || strings.HasPrefix(alt, "+") || strings.HasPrefix(alt, "_") || strings.HasSuffix(alt, "_") || strings.HasSuffix(alt, "+") || strings.Contains(alt, "__"):
				return p, fmt.Errorf("an empty word in %q", text)
			case alt[0] == '@':
				kind := Kind(alt[1:])
				if !kind.Known() {
					return p, fmt.Errorf("no kind of noun is called %q", alt[1:])
				}
				part.Kinds = append(part.Kinds, kind)
			case strings.HasPrefix(alt, "/="):
				part.Tag = append(part.Tag, alt[2:])
			case alt[0] == '/':
				part.Tags = append(part.Tags, alt[1:])
			case strings.Contains(alt, "_"):
				part.Phrases = append(part.Phrases, strings.Split(strings.ToLower(strings.TrimPrefix(alt, "=")), "_"))
			case alt[0] == '=':
				part.Words = append(part.Words, strings.ToLower(alt[1:]))
			case strings.Contains(alt, "+"):
				word, tag, _ := strings.Cut(alt, "+")
				part.Tagged = append(part.Tagged, Tagged{Stem(word), tag})
			default:
				part.Stems = append(part.Stems, Stem(strings.ToLower(alt)))
			}
		}
		p.Parts = append(p.Parts, part)
	}
	if len(p.Parts) == 0 {
		return p, fmt.Errorf("a pattern without words")
	}
	if gap != 0 {
		return p, fmt.Errorf("%q ends in a gap; write the word that has to follow", text)
	}
	for _, part := range p.Parts {
		if !part.Optional && !part.Not {
			return p, nil
		}
	}
	return p, fmt.Errorf("%q has no word that must be there", text)
}

func cut(s string, f func(string, string) (string, bool), mark string) (string, bool) {
	return f(s, mark)
}
