package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// sensoryWord is a word or short phrase about the food that a reader can see,
// smell, taste or feel.
type sensoryWord struct {
	span
	from, to int // tokens
	sense    lexicon.Sense
	word     string // the list's headword; "" when the list has none
	denied   bool
	supposed bool // only imagined or meant: it says nothing of how the food was
	other    bool // of another time's dish
}

// sensing finds sensory words and decides their sense by what they describe.
type sensing struct{ words *vocabulary }

// candidate is a form of the list found at tokens[from:to].
type candidate struct {
	from, to int
	readings []sensed
	open     bool // found by its place in the sentence, not on the list
}

func (d sensing) read(r *reading) {
	var heading lexicon.Sense
	for i := range r.sentences {
		s := &r.sentences[i]
		if h, ok := onlySense(s); ok {
			heading = h
		} else if h, ok := headingSense(s.tokens); ok {
			heading = h
		} else if startsWithHeading(s.tokens) {
			heading = ""
		}
		s.sensory = d.find(s, heading)
	}
}

func (d sensing) find(s *sentence, heading lexicon.Sense) []sensoryWord {
	tokens := s.tokens
	for i := range tokens {
		if c, ok := d.at(tokens, i); ok {
			s.listed = append(s.listed, c)
		}
	}
	var blocked []bool
	if len(s.listed) > 0 {
		blocked = make([]bool, len(tokens))
		for _, h := range d.words.unsensed.find(s) {
			for i := h.from; i < h.to; i++ {
				blocked[i] = true
			}
		}
	}
	var found []candidate
	end := 0 // of the last one found
	for _, c := range s.listed {
		if c.from < end || allBlocked(blocked, c) || d.process(tokens, c) || picksOut(tokens, c) || manner(tokens, c) || cameOut(tokens, c) || hardWork(tokens, c.from) || atThePoint(tokens, c) || hotFat(tokens, c) || lumpsCut(tokens, c) || d.inPassing(tokens, c) || !d.describesFood(tokens, c) {
			continue
		}
		found = append(found, c)
		end = c.to
	}
	found = joinNeighbours(tokens, d.comparisons(tokens, found))
	var out []sensoryWord
	for n, c := range found {
		w := sensoryWord{
			span: span{tokens[c.from].start, tokens[c.to-1].end},
			from: c.from, to: c.to,
			denied:   denied(tokens, c.from) || denying(tokens, c),
			supposed: supposed(tokens, c.from),
			other:    otherTime(tokens, c.from),
		}
		if w.supposed && event(tokens, c) {
			continue // "so it could not drip": nothing dripped, and no quality is told
		}
		r := d.choose(tokens, found, n, heading)
		w.sense, w.word = r.sense, r.head
		out = append(out, w)
	}
	return out
}

// joinNeighbours makes one phrase of words that stand side by side with
// nothing between them: "dark brown", "creamy white", "big uneven holes". The
// last one gives the sense.
func joinNeighbours(tokens []token, found []candidate) []candidate {
	var out []candidate
	for _, c := range found {
		if n := len(out); n > 0 && joins(tokens, out[n-1], c) {
			c.from = out[n-1].from
			out[n-1] = c
			continue
		}
		out = append(out, c)
	}
	return out
}

// joins reports whether b goes on with the phrase a, which stands right before.
func joins(tokens []token, a, b candidate) bool {
	last, first := &tokens[a.to-1], &tokens[b.from]
	if a.to != b.from || a.open || b.open || !last.word || first.norm == "like" || first.isVerbForm() {
		return false
	}
	if namesSense(first) {
		// "a yellow tint", "an oily sheen": one thing seen.
		// "a mild tang": how strong the one thing was.
		return first.in("tint", "tinge", "sheen", "hue", "tang", "kick") && last.isAdj()
	}
	if tintOf(last, a) && len(b.readings) == 1 && b.readings[0].sense == lexicon.Sight {
		return true
	}
	if last.isNoun() && (first.tag == "VBN" || first.tag == "VBD") {
		return false
	}
	if last.norm == "one" && sizeWord(first) {
		return true // "spread into one | giant"
	}
	if endsInVerb(tokens, a) {
		// "went dark | brown": the colour goes on.
		return last.in("dark", "pale", "light", "deep", "bright") && sharesSense(a, b)
	}
	return sharesSense(a, b) && !gloss(last) || shades(tokens, a, b)
}

// tintOf reports whether a word in -y or -ish, which may be said of a colour,
// tints the colour after it: "orangey red".
func tintOf(t *token, c candidate) bool {
	if c.to-c.from != 1 || gloss(t) || !strings.HasSuffix(t.norm, "ey") && !strings.HasSuffix(t.norm, "ish") {
		return false
	}
	for _, r := range c.readings {
		if r.sense == lexicon.Sight {
			return true
		}
	}
	return false
}

// namesSense reports whether the token is the noun of a sense: "a warm | smell
// of cinnamon" tells two things.
func namesSense(t *token) bool {
	_, ok := senseOfNoun(t.norm)
	return ok
}

// endsInVerb reports whether a candidate tells what the food did ("bubbled
// up", "sank"): what follows is said of it by itself.
func endsInVerb(tokens []token, c candidate) bool {
	last := &tokens[c.to-1]
	return last.isVerbForm() || c.to-c.from > 1 && (last.tag == "RP" || last.tag == "IN" || last.tag == "CD" || tokens[c.from].isVerbForm())
}

// shades reports whether the first word only tells the shade of the colour
// that follows: "strong orange", "creamy white".
func shades(tokens []token, a, b candidate) bool {
	return a.to-a.from == 1 && len(b.readings) == 1 && b.readings[0].sense == lexicon.Sight &&
		tokens[a.from].in("strong", "deep", "light", "dark", "rich", "warm", "dusty", "creamy", "muddy", "pale", "dull", "intense", "soft", "toasty", "burnt", "brick", "buttery") &&
		!(tokens[a.from].norm == "soft" && b.to < len(tokens) && tokens[b.to].isNoun() && tokens[b.to].kind.Food())
}

// gloss reports whether the word tells of a surface or an outline, which is
// another thing than the colour after it: "shiny brown", "a dull yellow".
func gloss(t *token) bool {
	return t.in("shiny", "glossy", "dull", "matt", "even", "uneven", "smooth", "neat", "round", "flat", "bubbly", "lacy", "patchy")
}

func sharesSense(a, b candidate) bool {
	return len(a.readings) == 1 && len(b.readings) == 1 && a.readings[0].sense == b.readings[0].sense
}

// denying reports whether the phrase itself holds its denial ("not sweet
// enough" listed as a whole is a quality, "n't" inside is not).
func denying([]token, candidate) bool { return false }

// otherTime reports whether the clause speaks of a dish made before.
func otherTime(tokens []token, i int) bool {
	for j := clauseStart(tokens, i); j < i; j++ {
		if j > 0 && tokens[j-1].in("than", "from", "unlike", "to", "like", "since") {
			continue // "worse than last time as the middle sank": of today's
		}
		if tokens[j].in("last", "previous", "previously", "usually", "normally") && j+1 < len(tokens) && (tokens[j+1].kind == lexicon.Time || tokens[j+1].in("time", "week", "month", "one", "ones", "batch") || tokens[j].norm != "last") {
			return true
		}
	}
	return false
}

// at looks the list up at token i, the longest phrase first.
func (d sensing) at(tokens []token, i int) (candidate, bool) {
	t := &tokens[i]
	if !t.word {
		return candidate{}, false
	}
	known := t.card
	if known == nil {
		known = d.words.card(t.norm)
	}
	if known.phrases != nil {
		for _, p := range known.phrases[secondWord(tokens, i)] {
			if to, ok := phraseAt(tokens, i, p.words); ok {
				return candidate{from: i, to: to, readings: p.readings}, true
			}
		}
	}
	if r := known.sensed; len(r) > 0 {
		return candidate{from: i, to: i + 1, readings: r}, true
	}
	// "reddish-brown", "semi-soft": the last part decides.
	if h := strings.LastIndexByte(t.norm, '-'); h > 0 {
		if r := d.words.singles[t.norm[h+1:]]; len(r) > 0 && !strings.HasPrefix(t.norm, "deep-") && !strings.HasPrefix(t.norm, "pan-") {
			return candidate{from: i, to: i + 1, readings: r}, true
		}
	}
	if base, ok := strings.CutSuffix(t.norm, "-ish"); ok && len(d.words.singles[base]) > 0 {
		return candidate{from: i, to: i + 1, readings: d.words.singles[base]}, true // "raw-ish"
	}
	return candidate{}, false
}

// secondWord returns the second word from token i on, counting as phraseAt does.
func secondWord(tokens []token, i int) string {
	_, second, hyphened := strings.Cut(tokens[i].norm, "-")
	if !hyphened && i+1 < len(tokens) {
		second = tokens[i+1].norm
	}
	second, _, _ = strings.Cut(second, "-")
	return second
}

// phraseAt reports whether the words stand at token i and where they end. A
// hyphen in the text is as good as a space.
func phraseAt(tokens []token, i int, words []string) (int, bool) {
	n := 0
	for j := i; j < len(tokens); j++ {
		for rest, more := tokens[j].norm, true; more; n++ {
			var part string
			part, rest, more = strings.Cut(rest, "-")
			if n == len(words) || part != words[n] {
				return 0, false
			}
		}
		if n == len(words) {
			return j + 1, true
		}
	}
	return 0, false
}

func tokenText(tokens []token, c candidate) string {
	parts := make([]string, 0, c.to-c.from)
	for _, t := range tokens[c.from:c.to] {
		parts = append(parts, t.norm)
	}
	return strings.Join(parts, " ")
}
