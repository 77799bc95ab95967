package analyze

import (
	"slices"
	"strings"

	"saywhy/lexicon"
)

// sign is something in a sentence that shows an area.
type sign struct {
	area lexicon.Area
	told bool // something concrete is said, not only the area named
	from int  // token
	to   int
}

// areas decides what each sentence speaks of: by the sensory words in it, by
// the signs of the lexicon, and for a sentence that only points back ("This
// was so that …") by the one before.
type areas struct{ words *vocabulary }

func (d areas) read(r *reading) {
	changes := false // under a heading such as "Next time"
	for i := range r.sentences {
		s := &r.sentences[i]
		s.signs = d.signs(s)
		if isHeading(s) || isPrompt(s) {
			// A heading that stands alone tells nothing, nor does a question
			// of the worksheet; content decides.
			changes = false
			for _, g := range s.signs {
				changes = changes || g.area == lexicon.Improvement
			}
			s.signs = nil
		} else if startsWithHeading(s.tokens) {
			changes = false
		} else if changes && plansChange(s) {
			s.signs = append(s.signs, sign{area: lexicon.Improvement, told: true, from: 0, to: 1})
		}
		if underChange(s) || wishes(s) || endsInWish(s) || wouldDo(s) || suggests(s, r.Role) || noted(r, i) {
			s.signs = append(s.signs, sign{area: lexicon.Improvement, told: true, from: 0, to: 1})
		}
		s.signs = append(s.signs, d.advice(s, r.Role)...)
		if r.Role == Learner && i > 0 && mendsIt(s) && fault(&r.sentences[i-1]) {
			s.signs = append(s.signs, sign{area: lexicon.Improvement, told: true, from: 0, to: 1})
		}
		s.signs = append(s.signs, handled(s)...)
		s.signs = append(s.signs, lentHand(s, r.Role)...)
		s.signs = append(s.signs, accounted(s)...)
		s.signs = append(s.signs, aimed(s)...)
		s.signs = slices.DeleteFunc(s.signs, func(g sign) bool { return g.area == lexicon.Technique && advised(s, g) })
		slices.SortStableFunc(s.signs, func(a, b sign) int { return a.from - b.from })
		s.areas = inOrder(s.signs)
		if i > 0 && refersBack(s) {
			d.takeOver(s, &r.sentences[i-1])
		}
		for n := range s.why {
			w := &s.why[n]
			if w.explains < 0 && i > 0 {
				w.explains = r.sentences[i-1].n
			} else {
				w.explains = s.n
			}
		}
	}
}

// handled finds a technique that only its manner shows: "we sat the dish in a
// big tin with water", "I did it in two halves". Something was done by some
// means, and no other area of work is what it was done for.
func handled(s *sentence) []sign {
	if len(s.how) == 0 || isHeading(s) {
		return nil
	}
	for _, g := range s.signs {
		if contains(workAreas(), g.area) || g.area == lexicon.Improvement {
			return nil
		}
	}
	return []sign{{area: lexicon.Technique, told: true, from: s.how[0].from, to: s.how[0].to}}
}

// plansChange reports whether a sentence under a heading such as "Next time"
// tells a change: it compares or asks for something to be done. One that tells
// how things were has gone on to another matter.
func plansChange(s *sentence) bool {
	for i := range s.tokens {
		if s.tokens[i].in("because", "as", "since", "so", ",") {
			break
		}
		if s.tokens[i].tag == "VBD" || s.tokens[i].tag == "VBZ" {
			return false
		}
	}
	return compares(s.tokens, -1) || len(s.tokens) > 0 && (s.tokens[0].tagIn("VB", "VBP") || s.tokens[0].in("not", "no", "maybe", "more", "less"))
}

// conditional reports whether a sentence speaks of what is not yet so.
func conditional(tokens []token) bool {
	for i := range tokens {
		if tokens[i].in("would", "'d", "will", "'ll", "might", "could", "should", "may", "can") || tokens[i].in("is", "makes", "gives", "stops", "helps") {
			return true
		}
	}
	return false
}

// isHeading reports whether a sentence is only a heading: at most four words,
// no verb, all of them names of areas or words that join them.
func isHeading(s *sentence) bool {
	words := 0
	for i := range s.tokens {
		t := &s.tokens[i]
		if !t.word {
			if t.in(".", "!", "?") {
				return false
			}
			continue
		}
		words++
		switch t.norm {
		case "hygiene", "safety", "organisation", "independence", "technique", "skills", "appearance", "look", "looks", "aroma", "smell", "taste", "flavour", "texture", "feel",
			"improvement", "improvements", "improve", "next", "time", "and", "&", "the", "my", "how", "it", "to", "presentation", "method", "evaluation", "colour", "what", "went", "of", "food", "consistency", "timing", "work", "kitchen", "would", "i", "i'd", "'d", "change", "differently", "do", "cleanly", "working", "safely", "hygienically":
		default:
			return false
		}
	}
	return words > 0 && words <= 4 && (len(s.tokens) == 0 || !s.tokens[0].in("i", "work", "do", "it"))
}

// signs lists what shows an area in the sentence.
func (d areas) signs(s *sentence) []sign {
	var out []sign
	for _, w := range s.sensory {
		if w.supposed || w.other {
			continue
		}
		out = append(out, sign{area: w.sense.Area(), told: true, from: w.from, to: w.to})
	}
	hits := d.words.cues.find(s)
	described := make([]bool, len(s.tokens))
	for _, w := range s.sensory {
		for i := w.from; i < w.to; i++ {
			described[i] = true
		}
	}
	for _, h := range hits {
		area := lexicon.Area(h.Label)
		if area == lexicon.Improvement && noPlan(s.tokens, h) {
			continue
		}
		if area == lexicon.Technique && (described[h.from] || !d.carriedOut(s, h, hits)) {
			continue
		}
		out = append(out, sign{area: area, told: h.Step != "named", from: h.from, to: h.to})
	}
	for _, h := range s.dangers {
		if a := dangerArea(h); a != "" && !imagined(s.tokens, h.from) && !(h.Label == "injury" && averted(s.tokens, s.dangers, h)) {
			out = append(out, sign{area: a, told: true, from: h.from, to: h.to})
		}
	}
	return withoutBareSteps(s, out)
}

// dangerArea returns the area that a sign of danger also speaks of.
func dangerArea(h hit) lexicon.Area {
	if !h.danger() {
		return ""
	}
	switch h.Label {
	case "injury", "equipment", "allergen":
		return lexicon.Safety
	case "cross-contact", "storage":
		return lexicon.Hygiene
	}
	return ""
}

// withoutBareSteps drops technique from a sentence under a heading of another
// area: there the step is only what was kept clean, safe or done alone.
func withoutBareSteps(s *sentence, signs []sign) []sign {
	heading := headingArea(s.tokens)
	if heading == "" || heading == lexicon.Technique {
		return signs
	}
	kept := signs[:0]
	for _, g := range signs {
		if g.area != lexicon.Technique {
			kept = append(kept, g)
		}
	}
	return kept
}

// headingArea returns the area that a sentence's heading names ("Safety: …").
func headingArea(tokens []token) lexicon.Area {
	if !startsWithHeading(tokens) {
		return ""
	}
	for i := 0; i < len(tokens) && i < 3; i++ {
		if a := lexicon.Area(tokens[i].norm); a.Known() {
			return a
		}
		switch tokens[i].norm {
		case "look", "looks", "colour", "presentation":
			return lexicon.Appearance
		case "smell":
			return lexicon.Aroma
		case "flavour":
			return lexicon.Taste
		case "improve", "improvements", "next", "change", "changes", "try", "tip", "tips", "suggestion", "suggestions":
			return lexicon.Improvement
		case "timing", "time":
			return lexicon.Organisation
		case "help":
			return lexicon.Independence
		case "method", "skills":
			return lexicon.Technique
		}
	}
	return ""
}

// isPrompt reports whether a sentence is a question put to the writer, such as
// a worksheet's ("How did you work safely?").
func isPrompt(s *sentence) bool {
	n := len(s.tokens)
	if n < 3 || s.tokens[n-1].norm != "?" || !s.tokens[0].in("how", "what", "which", "why", "did", "where", "when", "who") {
		return false
	}
	for i := range s.tokens {
		if s.tokens[i].in("you", "your") {
			return true
		}
	}
	return false
}

// inPassing reports whether a technique is only the time or the setting of
// what the clause tells ("while it was frying", "when I cut it"), or was
// carried out by somebody else than the cook ("Mum drained the pasta").
func inPassing(tokens []token, i int) bool {
	start := clauseStart(tokens, i)
	if start > 0 && tokens[start-1].in("while", "whilst", "when", "until", "till", "once") {
		return true
	}
	if s := subject(tokens, i); s >= 0 && tokens[s].kind == lexicon.Person && !afterLinkingVerb(tokens, i) {
		return true
	}
	t := &tokens[i]
	return t.tag == "VBG" && t.in("boiling", "frying", "cooking", "baking", "melting") && i+1 < len(tokens) && tokens[i+1].isNoun()
}

// passive reports a technique that only names the dish or its parts ("roast
// potatoes", "fried egg"), told by nobody's doing.
func passive(tokens []token, h hit) bool {
	t := &tokens[h.from]
	if strings.HasPrefix(t.norm, "over") || strings.HasPrefix(t.norm, "under") {
		return false // "was over-proved" tells how it was worked
	}
	return t.isNoun() || t.isAdj()
}

// inOrder lists the areas of signs without repeats, in the order of reports.
func inOrder(signs []sign) []lexicon.Area {
	var out []lexicon.Area
	for _, a := range lexicon.Areas() {
		for _, s := range signs {
			if s.area == a {
				out = append(out, a)
				break
			}
		}
	}
	return out
}

// refersBack reports whether the sentence speaks of what the one before said:
// it begins with "this", "that" or "it" and gives the reason or the result,
// and shows no area itself.
func refersBack(s *sentence) bool {
	if len(s.tokens) == 0 {
		return false
	}
	t := &s.tokens[0]
	if len(s.why) == 0 {
		return false
	}
	if len(s.areas) > 0 && !s.startsWithPointer() {
		return false
	}
	return s.startsWithPointer() || t.in("because", "so", "otherwise")
}

func (s *sentence) startsWithPointer() bool {
	for i := 0; i < len(s.tokens) && i < 3; i++ {
		t := &s.tokens[i]
		if t.in("this", "that", "thats") {
			return true
		}
		if t.in("i", "we", "and", "but", "so", "did", "it", "think") {
			continue
		}
		return false
	}
	return false
}

// takeOver gives the sentence the areas of the one it points at.
func (d areas) takeOver(s, before *sentence) {
	for _, a := range before.areas {
		if a == lexicon.Improvement && !conditional(s.tokens) {
			continue // "That way my fingers stayed clean": it was done
		}
		if !s.has(a) {
			s.signs = append(s.signs, sign{area: a})
		}
	}
	s.areas = inOrder(s.signs)
}
