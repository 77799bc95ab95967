package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// onlySense returns the sense that a heading which stands alone names.
func onlySense(s *sentence) (lexicon.Sense, bool) {
	if !isHeading(s) {
		return "", false
	}
	var found lexicon.Sense
	for i := range s.tokens {
		if sense, ok := senseOfNoun(s.tokens[i].norm); ok {
			if found != "" {
				return "", true
			}
			found = sense
		}
	}
	return found, true
}

// headingSense returns the sense that a sentence's heading names ("Taste:"),
// if it names just one.
func headingSense(tokens []token) (lexicon.Sense, bool) {
	var found lexicon.Sense
	for i := 0; i < len(tokens) && i < 5; i++ {
		if tokens[i].norm == ":" || tokens[i].norm == "-" || tokens[i].norm == "--" {
			return found, found != ""
		}
		if s, ok := senseOfNoun(tokens[i].norm); ok {
			if found != "" {
				return "", false
			}
			found = s
		}
	}
	return "", false
}

func startsWithHeading(tokens []token) bool {
	for i := 0; i < len(tokens) && i < 5; i++ {
		if tokens[i].norm == ":" {
			return true
		}
	}
	return false
}

// choose decides between the senses a form can speak to.
func (d sensing) choose(tokens []token, all []candidate, n int, heading lexicon.Sense) sensed {
	c := all[n]
	form := tokenText(tokens, c)
	if s, ok := d.likeBefore(tokens, all, n); ok {
		return sensed{head: c.readings[0].head, sense: s}
	}
	if tokens[c.from].norm == "sharp" && edged(tokens, phraseHead(tokens, c.from)) {
		return sensed{head: "", sense: lexicon.Sight} // "a sharp, level rim"
	}
	if s, ok := d.overruled(tokens, c, form); ok {
		return sensed{head: c.readings[0].head, sense: s}
	}
	if len(c.readings) == 1 {
		return c.readings[0]
	}
	head := phraseHead(tokens, c.to-1)
	verb := predicateOf(tokens, c.from)
	subj := -1
	if verb >= 0 {
		subj = subject(tokens, verb)
	}
	best, bestScore := c.readings[0], -1
	for _, r := range c.readings {
		score := prior(r.sense)
		if u, ok := d.words.lex.Reading.Usual[form]; ok && u == r.sense {
			score += 8
		} else if u, ok := d.words.lex.Reading.Usual[r.head]; ok && u == r.sense {
			score += 8
		}
		if verb >= 0 {
			if s, ok := senseOfVerb(tokens[verb].norm); ok && s == r.sense {
				score += 20
			}
		}
		for j := c.to; j < head; j++ {
			if s, ok := senseOfNoun(tokens[j].norm); ok && s == r.sense {
				score += 24
			}
		}
		for _, at := range []int{head, subj} {
			if at < 0 {
				continue
			}
			if s, ok := senseOfNoun(tokens[at].norm); ok && s == r.sense {
				score += 24
			}
			for _, of := range r.of {
				if tokens[at].norm == of || singular(tokens[at].norm) == of {
					score += 3
					break
				}
			}
		}
		if heading == r.sense {
			score += 8
		}
		if s, ok := d.named(tokens, c.from); ok && s == r.sense {
			switch {
			case verb >= 0 && plainBe(tokens[verb].norm) && subj >= 0 && subj < verb && !linkedTo(tokens, subj):
				// "it smelt of bay … it was a bit heavy": another clause, which
				// names no sense of its own.
			case verb < 0:
				score += 11
			default:
				score += 7
			}
		}
		for m := max(0, n-4); m < len(all) && m <= n+4; m++ {
			o := all[m]
			if m != n && len(o.readings) == 1 && o.readings[0].sense == r.sense && near(tokens, c, o) {
				score++
				break
			}
		}
		if score > bestScore {
			best, bestScore = r, score
		}
	}
	return best
}

// likeBefore returns the sense of a listed likeness that stands right behind a
// quality: the quality decides ("thin, like dishwater", "puffed up like
// pillows"), unless a verb names a sense itself.
func (d sensing) likeBefore(tokens []token, all []candidate, n int) (lexicon.Sense, bool) {
	c := all[n]
	if c.open || n == 0 || tokens[c.from].norm != "like" || c.from-all[n-1].to > 3 {
		return "", false
	}
	if v := predicateOf(tokens, c.from); v >= 0 {
		if _, ok := senseOfVerb(tokens[v].norm); ok {
			return "", false
		}
	}
	for j := all[n-1].to; j < c.from; j++ {
		if !tokens[j].isAdv() && !tokens[j].in(",", "more", "bit", "a", "and", "just") {
			return "", false
		}
	}
	return d.choose(tokens, all, n-1, "").sense, true
}

// edged reports whether the noun at token h is an outline, of which sharp is
// seen.
func edged(tokens []token, h int) bool {
	return h >= 0 && tokens[h].in("rim", "edge", "edges", "line", "lines", "corner", "corners", "pattern", "outline", "shape", "points", "folds", "crimp", "ridges")
}

// plainBe reports whether the verb ties a quality to its subject without saying
// by which sense.
func plainBe(w string) bool {
	switch w {
	case "is", "was", "are", "were", "'s", "be", "been":
		return true
	}
	return false
}

// linkedTo reports whether the subject at token s names a sense itself.
func linkedTo(tokens []token, s int) bool {
	_, ok := senseOfNoun(tokens[s].norm)
	return ok
}

// named returns the sense that a noun or verb of perception names earlier in
// the sentence, the nearest one.
func (d sensing) named(tokens []token, i int) (lexicon.Sense, bool) {
	with := false
	for j := i - 1; j >= 0 && j >= i-16; j-- {
		if with = with || tokens[j].norm == "with"; with && tokens[j].in("colour", "color", "shade") {
			break // "a cream colour with sticky bits"
		}
		if tokens[j].norm == "," && j > 0 && tokens[i].norm != "like" {
			if _, ok := senseOfNoun(tokens[j-1].norm); ok {
				break // "smoky smell, juicy inside"
			}
		}
		if s, ok := senseOfNoun(tokens[j].norm); ok && !tokens[j].in("kick", "bite", "crunch", "finish", "surface") && !(tokens[j].norm == "shade" && j+1 < len(tokens) && (j+1 == i || tokens[j+1].isAdj() || tokens[j+1].isAdv())) {
			if j+1 < len(tokens) && tokens[j+1].norm == "of" && s == lexicon.Sight && commaBetween(tokens, j, i) {
				break // "the colour of toffee, crackly, herby"
			}
			return s, true
		}
		if s, ok := senseOfVerb(tokens[j].norm); ok {
			return s, true
		}
		if tokens[j].norm == ";" || tokens[j].norm == "." {
			break
		}
	}
	return "", false
}

// commaBetween reports whether a comma stands between the tokens a and b.
func commaBetween(tokens []token, a, b int) bool {
	for j := a + 1; j < b; j++ {
		if tokens[j].norm == "," {
			return true
		}
	}
	return false
}

// overruled returns the sense where the list's own does not hold: a form whose
// usual sense is another, and words for taste after "smell" or for aroma after
// "taste", which serve for both.
func (d sensing) overruled(tokens []token, c candidate, form string) (lexicon.Sense, bool) {
	if c.open {
		return "", false
	}
	offers := func(s lexicon.Sense) bool {
		for _, r := range c.readings {
			if r.sense == s {
				return true
			}
		}
		return false
	}
	if seenThickness(tokens, c) || c.to-c.from > 1 && strings.HasPrefix(tokens[c.from].norm, "look") ||
		c.to < len(tokens) && tokens[c.to].norm == "looking" {
		return lexicon.Sight, true // "raw looking"
	}
	if s, ok := d.byNeighbours(tokens, c); ok {
		return s, true
	}
	if s, ok := ofTaste(tokens, c.from); ok {
		return s, true
	}
	if s, ok := headTaste(tokens, c); ok {
		return s, true
	}
	if topOf(tokens, c) {
		return lexicon.Sight, true
	}
	if u, ok := d.words.lex.Reading.Usual[form]; ok && !offers(u) {
		return u, true
	}
	for j := c.from; j < c.to; j++ {
		if s, ok := senseOfNoun(tokens[j].norm); ok && c.to-c.from > 1 && offers(s) {
			return "", false // "lemon flavour" names its sense itself
		}
	}
	s, ok := lexicon.Sense(""), false
	if h := phraseHead(tokens, c.to-1); h >= 0 {
		s, ok = senseOfNoun(tokens[h].norm)
	}
	if !ok {
		if v := predicateOf(tokens, c.from); v >= 0 {
			s, ok = senseOfVerb(tokens[v].norm)
		} else if h := phraseHead(tokens, c.to-1); !endsInVerb(tokens, c) && (h < 0 || !tokens[h].in("top", "crust", "base", "edge", "edges", "outside", "inside", "middle", "skin")) {
			s, ok = d.named(tokens, c.from)
		}
	}
	switch {
	case ok && tokens[c.from].norm == "like" && !offers(s):
		return s, true // "looked like baby food"
	case ok && s == lexicon.Smell && !offers(s) && (offers(lexicon.Tongue) || offers(lexicon.Sight)):
		return s, true
	case ok && s == lexicon.Sight && !offers(s) && offers(lexicon.Tongue) && !offers(lexicon.Touch):
		return s, true // "it looked fresh"
	case ok && s == lexicon.Tongue && !offers(s) && offers(lexicon.Smell):
		return s, true
	}
	return "", false
}

// besideTaste reports whether "and" or a comma at token i ties what stands before
// it to a taste: "and bitter", ", meaty".
func (d sensing) besideTaste(tokens []token, i int) bool {
	if !after(tokens, i, 0).in("and", ",", "&") || i+1 >= len(tokens) {
		return false
	}
	rs := d.words.singles[tokens[i+1].norm]
	for _, r := range rs {
		if r.sense != lexicon.Tongue && r.sense != lexicon.Smell {
			return false
		}
	}
	return len(rs) > 0
}

// byNeighbours returns the sense that the words right beside a form decide.
func (d sensing) byNeighbours(tokens []token, c candidate) (lexicon.Sense, bool) {
	if tokens[c.from].in("flat", "round", "rounded") && c.to-c.from == 1 && (d.tastes(tokens, c.from) || tokens[c.from].norm == "flat" && saltNear(tokens, c.from)) && phraseHead(tokens, c.from) < 0 {
		return lexicon.Tongue, true // "flat and dusty on the tongue", "tasted round"
	}
	if tokens[c.from].in("melted", "melting", "melts") && c.to-c.from == 1 && after(tokens, c.to-1, 1).in("down", "over", "into", "through") {
		return lexicon.Sight, true // "cheese melted down the sides"
	}
	if tokens[c.from].in("bubble", "bubbles") && c.to-c.from == 1 && smoothWithout(tokens, c.from) {
		return lexicon.Touch, true
	}
	if biteFrom(tokens, c.to-1) {
		return lexicon.Tongue, true
	}
	if tokens[c.from].norm == "raw" && c.to-c.from == 1 {
		if v := predicateOf(tokens, c.from); v >= 0 && strings.HasPrefix(tokens[v].norm, "smel") {
			return lexicon.Smell, true
		}
	}
	return "", false
}

// saltNear reports whether salt or seasoning is told of a few words behind token
// i, so that flat means without savour: "a touch flat, I salted too timidly".
func saltNear(tokens []token, i int) bool {
	for j := i + 1; j < len(tokens) && j <= i+8; j++ {
		if tokens[j].in("salt", "salted", "season", "seasoned", "seasoning", "oregano", "lemon", "pepper", "spice", "spices") {
			return true
		}
	}
	return false
}

// near reports whether two candidates stand in one list: only adverbs, commas
// and "and" between them.
func near(tokens []token, a, b candidate) bool {
	if a.from > b.from {
		a, b = b, a
	}
	if b.from-a.to > 4 {
		return false
	}
	for j := a.to; j < b.from; j++ {
		if t := &tokens[j]; !t.isAdv() && !t.in("and", ",", "but", "or", "a", "bit", "with") && !t.isAdj() {
			return false
		}
	}
	return true
}

// prior is how much a sense is preferred where nothing else decides.
func prior(s lexicon.Sense) int {
	switch s {
	case lexicon.Touch:
		return 5
	case lexicon.Tongue:
		return 2
	case lexicon.Sight:
		return 1
	}
	return 0
}

// senseOfVerb returns the sense that a verb of perception names.
func senseOfVerb(w string) (lexicon.Sense, bool) {
	switch {
	case strings.HasPrefix(w, "tast"):
		return lexicon.Tongue, true
	case strings.HasPrefix(w, "smel"), reeks(w):
		return lexicon.Smell, true
	case strings.HasPrefix(w, "look"):
		return lexicon.Sight, true
	case strings.HasPrefix(w, "feel"), w == "felt", strings.HasPrefix(w, "sound"):
		return lexicon.Touch, true
	}
	return "", false
}

// reeks reports whether a verb tells of a strong smell.
func reeks(w string) bool {
	switch w {
	case "stank", "stinks", "stunk", "stink", "stinking", "reeked", "reeks", "reeking", "honked", "honks", "honking", "ponged", "pongs", "whiffed", "wafted":
		return true
	}
	return false
}

// senseOfNoun returns the sense that a noun names.
func senseOfNoun(w string) (lexicon.Sense, bool) {
	switch strings.TrimSuffix(w, "s") {
	case "taste", "flavour", "flavor", "aftertaste", "seasoning", "kick", "tang":
		return lexicon.Tongue, true
	case "smell", "aroma", "scent", "fragrance", "odour", "whiff", "pong", "stench":
		return lexicon.Smell, true
	case "colour", "color", "sheen", "hue", "tint", "tinge", "appearance", "look", "shade", "finish", "surface", "presentation", "shape":
		return lexicon.Sight, true
	case "texture", "consistency", "mouthfeel", "feel", "bite", "crunch":
		return lexicon.Touch, true
	}
	return "", false
}

func singular(w string) string { return strings.TrimSuffix(w, "s") }
