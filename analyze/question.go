package analyze

import (
	"hash/fnv"
	"strings"
	"unicode"

	"saywhy/lexicon"
)

// asking chooses the questions that move this writer furthest next, and the
// lines that name what the writer did. It only ever asks for what the three
// steps say is not there yet, in the writer's own words.
type asking struct{ words *vocabulary }

// wish is a question that could be asked.
type wish struct {
	area     lexicon.Area
	step     Step
	list     string // the list of wordings: "said", "vague", "detail" or "reason"
	whole    bool   // a judging word about the whole dish
	sentence int
	quote    string
}

// maxQuote is how many words of the writer's a question quotes at most.
const maxQuote = 8

func (d asking) read(r *reading) {
	w := &wording{words: d.words, r: r, used: map[string]bool{}, quoted: map[string]bool{}, own: d.own(r)}
	limit := r.brief.Questions
	for _, q := range d.order(r) {
		if limit > 0 && len(r.questions) == limit {
			break
		}
		if w.quoted[q.quote] {
			continue
		}
		if text, ok := w.ask(q); ok {
			if q.quote != "" {
				w.quoted[q.quote] = true
			}
			quotes := []string{}
			if q.quote != "" {
				quotes = append(quotes, q.quote)
			}
			r.questions = append(r.questions, Question{
				N: len(r.questions) + 1, Area: q.area, Step: q.step, Sentence: q.sentence, Quotes: quotes, Text: text,
			})
		}
	}
	r.praise = d.praise(r, w)
}

// order puts what could be asked in the order in which it helps: first bare
// judging words and areas named without anything concrete, then reasons and
// missing areas in turn. A writer who has spoken of little is asked for more
// areas first, one who has spoken of much is asked why. Each area is asked
// about once before any is asked about twice.
func (d asking) order(r *reading) []wish {
	close, missing, why := d.thin(r), d.missing(r), d.unexplained(r)
	said := 0
	for _, row := range r.rows {
		if row.Said {
			said++
		}
	}
	first, second := why, missing
	if said < 4 {
		first, second = missing, why
	}
	queue := close
	for len(first) > 0 || len(second) > 0 {
		if len(first) > 0 {
			queue, first = append(queue, first[0]), first[1:]
		}
		if len(second) > 0 {
			queue, second = append(queue, second[0]), second[1:]
		}
	}
	var once, again []wish
	seen := map[lexicon.Area]bool{}
	for _, w := range queue {
		if seen[w.area] {
			again = append(again, w)
			continue
		}
		seen[w.area] = true
		once = append(once, w)
	}
	return append(once, again...)
}

// thin lists bare judging words and areas that are only named.
func (d asking) thin(r *reading) []wish {
	var out []wish
	for i := range r.sentences {
		s := &r.sentences[i]
		for n := range s.vague {
			v := &s.vague[n]
			if !v.bare {
				continue
			}
			w := wish{step: Detail, list: "vague", sentence: s.n, quote: r.Text[v.start:v.end]}
			switch sense, ok := judgedSense(s.tokens, v); {
			case ok:
				w.area = sense.Area()
			case onlyWorkArea(s) != "":
				w.area = onlyWorkArea(s)
			default:
				w.whole = true
				w.area = d.untold(r)
			}
			if w.area == "" || d.row(r, w.area).Detail || !d.row(r, w.area).Expected {
				continue
			}
			out = append(out, w)
		}
	}
	for _, row := range r.rows {
		if !row.Said || row.Detail || !row.Expected {
			continue
		}
		s := &r.sentences[row.Sentences[0]-1]
		if q := d.piece(r, s, row.Area, false); q != "" {
			out = append(out, wish{area: row.Area, step: Detail, list: "detail", sentence: s.n, quote: q})
		}
	}
	return out
}

// onlyWorkArea returns the work area of a sentence that speaks of just one.
func onlyWorkArea(s *sentence) lexicon.Area {
	var found lexicon.Area
	for _, a := range s.areas {
		switch a {
		case lexicon.Hygiene, lexicon.Safety, lexicon.Organisation, lexicon.Independence, lexicon.Technique:
			if found != "" {
				return ""
			}
			found = a
		}
	}
	return found
}

// untold returns the first result area that nothing concrete is said of.
func (d asking) untold(r *reading) lexicon.Area {
	for _, a := range []lexicon.Area{lexicon.Taste, lexicon.Texture, lexicon.Appearance, lexicon.Aroma} {
		if row := d.row(r, a); row.Expected && !row.Detail {
			return a
		}
	}
	return ""
}

// missing lists the areas of the brief that the text does not speak of, the
// food first.
func (d asking) missing(r *reading) []wish {
	var out []wish
	for _, a := range []lexicon.Area{
		lexicon.Taste, lexicon.Texture, lexicon.Appearance, lexicon.Improvement, lexicon.Safety, lexicon.Hygiene,
		lexicon.Technique, lexicon.Organisation, lexicon.Independence, lexicon.Aroma,
	} {
		if row := d.row(r, a); row.Expected && !row.Said {
			out = append(out, wish{area: a, step: Said, list: "said"})
		}
	}
	return out
}

// unexplained lists the areas that are told but not explained, the longest
// told first: there the writer has most to explain.
func (d asking) unexplained(r *reading) []wish {
	var out []wish
	for _, a := range []lexicon.Area{
		lexicon.Texture, lexicon.Technique, lexicon.Hygiene, lexicon.Taste, lexicon.Appearance, lexicon.Safety,
		lexicon.Improvement, lexicon.Organisation, lexicon.Independence, lexicon.Aroma,
	} {
		row := d.row(r, a)
		if !row.Expected || !row.Detail || row.Reason {
			continue
		}
		for _, n := range row.Sentences {
			s := &r.sentences[n-1]
			if q := d.piece(r, s, a, true); q != "" {
				out = append(out, wish{area: a, step: Reason, list: "reason", sentence: n, quote: q})
				break
			}
		}
	}
	return out
}

func (d asking) row(r *reading, a lexicon.Area) AreaRow {
	for _, row := range r.rows {
		if row.Area == a {
			return row
		}
	}
	return AreaRow{}
}

// piece returns a short piece of the sentence around what shows the area, the
// very words of the text.
func (d asking) piece(r *reading, s *sentence, a lexicon.Area, told bool) string {
	for _, g := range s.signs {
		if g.area != a || told && !g.told || g.from >= len(s.tokens) {
			continue
		}
		start := clauseStart(s.tokens, g.from)
		end := max(clauseEnd(s.tokens, g.to-1), g.to)
		for start < g.from && (s.tokens[start].in("and", "but", "so", "then", "or", "also", "because") || !s.tokens[start].word) {
			start++
		}
		if words := countWords(s.tokens[start:end]); words > maxQuote {
			start = max(start, g.from-3)
			for end > g.to && countWords(s.tokens[start:end]) > maxQuote {
				end--
			}
		}
		for end > g.to && (!s.tokens[end-1].word || s.tokens[end-1].in("and", "but", "so", "the", "a", "to", "of", "in", "on", "with", "because", "my", "it's", "was", "i", "for")) {
			end--
		}
		if countWords(s.tokens[start:end]) > maxQuote+4 || end <= start {
			continue
		}
		q := r.Text[s.tokens[start].start:s.tokens[end-1].end]
		if i := strings.IndexAny(q, "\r\n"); i >= 0 {
			q = strings.TrimSpace(q[:i])
		}
		if q != "" {
			return q
		}
	}
	return ""
}

func countWords(tokens []token) int {
	n := 0
	for i := range tokens {
		if tokens[i].word {
			n++
		}
	}
	return n
}

// own returns the lower-case words of the text.
func (d asking) own(r *reading) map[string]bool {
	own := map[string]bool{}
	for i := range r.sentences {
		for _, t := range r.sentences[i].tokens {
			own[t.norm] = true
			own[strings.ToLower(t.text)] = true
		}
	}
	return own
}

// wording turns wishes into questions.
type wording struct {
	words *vocabulary
	r     *reading
	used  map[string]bool
	own   map[string]bool // words of the text

	// quoted holds the pieces already put before the writer, so that one
	// report never asks twice about the same words.
	quoted map[string]bool
}

// ask returns the question for a wish: the first wording, counted from a place
// that the text decides, that was not used yet and says nothing for the writer.
func (w *wording) ask(q wish) (string, bool) {
	area := string(q.area)
	if q.whole {
		area = "whole"
	}
	list := w.words.lex.Reading.Wordings[string(w.r.Role)][area][q.list]
	return w.fill(list, area+" "+q.list, q.quote)
}

func (w *wording) fill(list []string, key, quote string) (string, bool) {
	if len(list) == 0 {
		return "", false
	}
	first := int(w.hash(key) % uint32(len(list)))
	for n := range list {
		form := list[(first+n)%len(list)]
		if w.used[form] || w.leaks(form) {
			continue
		}
		dish := w.dish()
		if strings.Contains(form, "{moment}") {
			moment := w.r.brief.Dish.Moments[lexicon.Sense(strings.Fields(key)[0])]
			if moment == "" || w.leaks(moment) {
				continue
			}
			form = strings.ReplaceAll(form, "{moment}", moment)
			w.used[list[(first+n)%len(list)]] = true
		}
		w.used[form] = true
		marked := "“" + quote + "”"
		return strings.NewReplacer("{word}", marked, "{words}", marked, "{dish}", dish).Replace(form), true
	}
	return "", false
}

// dish returns what was cooked in lower case, or "dish" where the title would
// put a describing word before the writer that the text lacks.
func (w *wording) dish() string {
	title := strings.Join(strings.Fields(strings.ToLower(w.r.Title)), " ")
	if title == "" || len(strings.Fields(title)) > 5 || w.leaks(title) || strings.ContainsFunc(title, notInName) {
		return "dish"
	}
	return title
}

// notInName reports whether a mark has no place inside a question: the writer
// would read it as part of what is asked.
func notInName(r rune) bool {
	return !unicode.IsLetter(r) && !unicode.IsMark(r) && !unicode.IsDigit(r) && !strings.ContainsRune(" -'’&,", r)
}

// leaks reports whether the words hold a sensory word or a judging one that
// the text lacks: then they would write for the writer.
func (w *wording) leaks(form string) bool {
	form = strings.NewReplacer("{word}", " ", "{words}", " ", "{dish}", " ", "{moment}", " ").Replace(form)
	tokens := tokenizer{}.tokens(form, span{0, len(form)})
	d := sensing{words: w.words}
	for i := range tokens {
		if c, ok := d.at(tokens, i); ok {
			for _, t := range tokens[c.from:c.to] {
				if !w.own[t.norm] {
					return true
				}
			}
		}
		if w.words.lex.Reading.IsVague(tokens[i].norm) && !w.own[tokens[i].norm] {
			return true
		}
	}
	return false
}

func (w *wording) hash(key string) uint32 {
	h := fnv.New32a()
	_, _ = h.Write([]byte(w.r.Text))
	_, _ = h.Write([]byte(key))
	return h.Sum32()
}

// maxPraise is how many lines name what the writer did.
const maxPraise = 2

// praise returns lines that are true by the table: a reason before a detail,
// each for another area.
func (d asking) praise(r *reading, w *wording) []string {
	out := []string{}
	praised := map[string]bool{}
	for _, step := range []Step{Reason, Detail} {
		for _, row := range r.rows {
			if len(out) == maxPraise {
				return out
			}
			if step == Reason && !row.Reason || step == Detail && (!row.Detail || row.Reason) {
				continue
			}
			for _, n := range row.Sentences {
				s := &r.sentences[n-1]
				if step == Reason && len(s.why) == 0 {
					continue
				}
				q := d.piece(r, s, row.Area, true)
				if q == "" || praised[q] {
					continue
				}
				praised[q] = true
				list := d.words.lex.Reading.Wordings["praise"][string(step)][string(row.Area)]
				if line, ok := w.fill(list, "praise "+string(step)+string(row.Area), q); ok {
					out = append(out, line)
				}
				break
			}
		}
	}
	return out
}
