package analyze

import (
	"strconv"
	"strings"

	"saywhy/lexicon"
)

// cautioning finds what a responsible adult ought to look at. A danger that
// the text denies, avoids, puts right or only imagines is none.
type cautioning struct{ words *vocabulary }

func (d cautioning) read(r *reading) {
	topic := d.topics(r)
	for i := range r.sentences {
		s := &r.sentences[i]
		hits := s.dangers
		next := &sentence{}
		if i+1 < len(r.sentences) {
			next = &r.sentences[i+1]
		}
		for _, kind := range lexicon.CautionKinds() {
			if !d.danger(s, hits, kind) && !d.scene(r, i, kind) && !(kind == "undercooked" && d.tooCool(r, s)) {
				continue
			}
			if r.cautioned(kind, s.n-1) {
				continue // the same event, told on
			}
			if kind == "equipment" && r.cautioned("injury", s.n) {
				continue // the harm says it already
			}
			if kind == "injury" && (d.danger(s, hits, "unwell") || d.scene(r, i, "unwell")) {
				continue // an old cut without its plaster
			}
			if putRight(next.tokens, next.dangers, kind) || d.needsTopic(kind) && !topic[kind] {
				continue
			}
			c := d.words.lex.Reading.Cautions[kind]
			r.cautions = append(r.cautions, Caution{
				Kind: kind, Sentence: s.n, Text: r.Text[s.start:s.end], Advice: advice(c, r.Role), Source: c.Source,
			})
		}
	}
}

func (r *reading) cautioned(kind string, sentence int) bool {
	for _, c := range r.cautions {
		if c.Kind == kind && c.Sentence == sentence {
			return true
		}
	}
	return false
}

// advice is for the reader: a learner is sent to the adult first.
func advice(c lexicon.Caution, role Role) string {
	if role == Learner {
		return toAdult + c.Advice
	}
	return c.Advice
}

const toAdult = "Show this to the adult who cooks with you. "

// AdviceForAdult is the advice without the line that sends a learner to the
// adult: for a tutor, who reads what learners wrote.
func (c Caution) AdviceForAdult() string { return strings.TrimPrefix(c.Advice, toAdult) }

// topics finds which kinds the text gives ground for at all.
func (d cautioning) topics(r *reading) map[string]bool {
	out := map[string]bool{}
	mark := func(hits []hit) {
		for _, h := range hits {
			if h.Step == "topic" {
				out[h.Label] = true
			}
		}
	}
	for i := range r.sentences {
		mark(r.sentences[i].dangers)
	}
	if r.Title != "" {
		title := sentence{tokens: tokenizer{}.tokens(r.Title), meets: make(numbers, d.words.needs.size())}
		for i := range title.tokens {
			t := &title.tokens[i]
			c := d.words.card(t.norm)
			t.card, t.stem, t.kind = c, c.stem, c.kind
		}
		title.mark()
		mark(d.words.dangers.find(&title))
	}
	for _, h := range r.brief.Dish.Hazards {
		switch h {
		case "raw meat", "raw poultry":
			out["undercooked"], out["cross-contact"] = true, true
		case "cooling rice", "chilling", "reheating":
			out["storage"] = true
		}
	}
	return out
}

func (d cautioning) needsTopic(kind string) bool {
	for _, l := range d.words.dangers.all {
		if l.Label == kind && l.Step == "topic" {
			return true
		}
	}
	return false
}

// putRight reports whether the sentence that follows a danger tells how it was
// put right, and does not only plan to do so.
func putRight(tokens []token, hits []hit, kind string) bool {
	for _, h := range hits {
		if h.Label == kind && h.Step == "after" && !planned(tokens, h.from) {
			return true
		}
	}
	return false
}

// planned reports whether what is done at token i is only meant to be done:
// "next time I would cook it longer" leaves this chicken pink.
func planned(tokens []token, i int) bool {
	for j := i - 1; j >= 0 && j >= i-8; j-- {
		t := &tokens[j]
		if t.norm == "next" && tokens[j+1].norm == "time" {
			return true
		}
		if j >= i-3 && t.in("would", "'d", "should", "will", "'ll", "need", "must") {
			return true
		}
	}
	return false
}

// nextTime reports whether token i is part of a plan that opens before it:
// "next time weigh it first and leave the milk out". Why it is planned was
// true today: "next time longer, because it was pink".
func nextTime(tokens []token, i int) bool {
	for j := i - 1; j >= 1; j-- {
		if tokens[j].in("because", "as", "since", "cos", "so", "but", "this", "today", ".", ";", ":", "was", "were", "had") {
			return false
		}
		if tokens[j].norm == "time" && tokens[j-1].norm == "next" {
			return true
		}
	}
	return false
}

// danger reports whether a sign of the kind stands in the sentence as a fact.
func (d cautioning) danger(s *sentence, hits []hit, kind string) bool {
	if supposition(s.tokens) {
		return false
	}
	for _, h := range hits {
		if h.Label != kind || !h.danger() {
			continue
		}
		if !imagined(s.tokens, h.from) && (h.Step == certain || !averted(s.tokens, hits, h)) && !before(s.tokens, h.from) && !nextTime(s.tokens, h.from) && !caughtInTime(s.tokens, h) && !foodFell(s.tokens, h) {
			return true
		}
	}
	return false
}

// supposition reports whether the whole sentence only supposes: "If my cousin
// who has a peanut allergy had come I would have done it without."
func supposition(tokens []token) bool {
	if len(tokens) == 0 || tokens[0].norm != "if" {
		return false
	}
	for i := range tokens {
		if tokens[i].in("would", "'d", "could") {
			return true
		}
	}
	return false
}

// certain marks a sign that no "unless" beside it takes back: it tells the harm
// itself, or that the rule was known and broken ("although she is coeliac").
const certain = "certain"

// danger reports whether the hit is a sign of danger.
func (h hit) danger() bool { return h.Step == "sign" || h.Step == certain }

// beside is how many words a note that the danger was averted may stand away
// from its sign: in a sentence that runs on, more is about something else.
const beside = 16

// averted reports whether an "unless" of the sign's kind stands beside it.
func averted(tokens []token, hits []hit, sign hit) bool {
	for _, u := range hits {
		if u.Label != sign.Label || u.Step != "unless" || u.from > sign.to+beside || u.to < sign.from-beside {
			continue
		}
		if !tokens[u.from].negator() && undone(tokens, u.from) {
			continue // "no more clean plates", "forgot to put it in the fridge"
		}
		if planned(tokens, u.from) && sign.from < u.from {
			continue // "it was pink so next time I will cook it longer"
		}
		return true
	}
	return false
}

// undone reports whether what stands at token i was not there or not done.
func undone(tokens []token, i int) bool {
	for j := i - 1; j >= 0 && j >= i-6; j-- {
		t := &tokens[j]
		if t.in("but", "and", ",", ";", ".", "so") {
			return false
		}
		if t.negator() || t.in("forgot", "forgotten", "forget", "saved", "skipped") {
			return true
		}
	}
	return false
}

// caughtInTime reports whether a danger was noticed before it did harm: it
// only nearly came about ("I nearly used the chicken knife"), or the same
// sentence goes on to what somebody did about it at once ("the cloth was near
// the flame so I moved it"). What harmed somebody, or went on for hours, is not
// undone by what was done about it afterwards.
func caughtInTime(tokens []token, h hit) bool {
	switch h.Label {
	case "injury", "undercooked", "unwell":
		return false
	case "cross-contact", "raw-tasting", "allergen":
		for j := h.from - 1; j >= 0 && j >= h.from-4; j-- {
			if tokens[j].in("nearly", "almost") {
				return true
			}
			if tokens[j].pause() {
				break
			}
		}
	}
	for j := h.to - 1; j < len(tokens) && j <= h.to+10; j++ {
		if tokens[j].in("hours", "since", "bedtime", "overnight", "night", "morning", "realised", "later") {
			return false
		}
		if !tokens[j].in("so", "but", "then", "and") || j < h.from {
			continue
		}
		for k := j + 1; k < len(tokens) && k <= j+5; k++ {
			if mends(h.Label, tokens, k) {
				return true
			}
			if tokens[k].pause() {
				break
			}
		}
	}
	return false
}

// foodFell reports whether it was food, or a thing, that slipped or fell over
// and nobody: "the pie fell over on to its side".
func foodFell(tokens []token, h hit) bool {
	if h.Label != "injury" {
		return false
	}
	for j := h.from; j < h.to; j++ {
		if !tokens[j].in("fell", "fall", "slipped", "tripped", "toppled", "skidded", "skidding", "slipping") {
			continue
		}
		s := subject(tokens, j)
		if s < 0 || tokens[s].human() {
			return false
		}
		for k := j + 1; k < h.to; k++ {
			if tokens[k].kind == lexicon.Body || tokens[k].human() {
				return false // "the jar slipped on to my foot"
			}
		}
		return tokens[s].kind.Food() || tokens[s].in("it", "they", "tongs", "spoon", "lid", "bowl", "plate", "box", "bag", "spatula", "whisk", "chair", "cloth")
	}
	return false
}

// mends reports whether the verb at token k puts a danger of the kind right.
func mends(kind string, tokens []token, k int) bool {
	t := &tokens[k]
	near := func(words ...string) bool {
		for j := k + 1; j < len(tokens) && j <= k+4; j++ {
			if tokens[j].in(words...) {
				return true
			}
		}
		return false
	}
	switch kind {
	case "equipment":
		return t.in("moved", "tightened", "unplugged", "dried", "untangled", "lifted") || t.in("turned", "switched") && near("off", "down", "round", "it") || t.norm == "took" && near("out", "away", "it") || t.norm == "put" && near("away", "lid")
	case "storage":
		return t.in("threw", "binned", "chucked", "bought", "swapped") || t.in("opened", "got") && near("new", "fresh", "another")
	case "raw-tasting":
		return t.norm == "said" && near("no") || t.in("stopped", "refused") || t.norm == "n't" && k > 1 && tokens[k-1].norm == "did" && tokens[k-2].human()
	case "allergen":
		return t.in("did", "made", "cooked", "used", "chose", "bought", "swapped") && near("his", "hers", "theirs", "him", "her", "them", "without", "another", "own", "separate", "different", "flax", "oat", "soya") || t.norm == "left" && near("out")
	case "cross-contact":
		return t.in("stopped", "shouted", "remembered", "realised", "noticed", "swapped", "changed") && near("time", "before", "it", "me", "them", "and")
	}
	return false
}

// before reports whether what stands at token i happened another time: "last
// time I cut my finger".
func before(tokens []token, i int) bool {
	for j := i - 1; j >= 1; j-- {
		if tokens[j].in("this", "today", "but", ".", ";") {
			return false
		}
		if tokens[j-1].norm == "last" && tokens[j].in("time", "week", "month", "year", "attempt", "term") {
			return true
		}
		if tokens[j].in("ago", "back") && tokens[j-1].in("year", "years", "month", "months", "ages", "weeks") || tokens[j-1].in("old", "other") && tokens[j].in("school", "house", "week") {
			return true // "two years ago I scalded my foot", "at my old school"
		}
	}
	return false
}

// imagined reports whether what starts at token i is only imagined, advised or
// prevented: "if you", "would have", "so that it does not", "to avoid".
func imagined(tokens []token, i int) bool {
	start := clauseStart(tokens, i)
	for j := max(0, start-1); j < i; j++ {
		t := &tokens[j]
		if t.norm == "if" && j > 0 && tokens[j-1].in("see", "check", "know", "tell", "sure", "wondering", "asked", "ask", "asking", "checking") {
			continue // "to see if it needed salt": whether
		}
		if t.norm == "afraid" && j > 0 && tokens[j-1].in("am", "'m") {
			continue // "I'm afraid the middle was pink": it was
		}
		if t.norm == "stop" && j+1 < len(tokens) && (tokens[j+1].tag == "CD" || tokens[j+1].in("and", "to", "for", "twice")) {
			continue // "I had to stop twice to run to the loo"
		}
		if t.norm == "or" && j == start-1 {
			return true // "soak them or they catch fire"
		}
		if t.in("if", "would", "could", "might", "may", "can", "avoid", "prevent", "unless", "otherwise", "stop", "should", "must", "never", "tempted", "like", "pretended", "joked", "scared", "afraid") || t.in("about", "going", "wanted", "asked", "begged", "trying", "expected", "expecting", "tempted") && j+1 < len(tokens) && tokens[j+1].norm == "to" {
			if t.in("could", "can", "ca") && j+2 < len(tokens) && tokens[j+1].norm == "n't" && tokens[j+2].in("stop", "help", "resist", "find") {
				continue // "I couldn't stop eating it"
			}
			if t.in("could", "can") && j+1 < len(tokens) && tokens[j+1].in("see", "feel", "smell", "taste", "tell", "say") {
				continue
			}
			return true
		}
	}
	return false
}

// Limits of the core temperature that food which must be cooked through has to
// reach: 70 °C held for two minutes (Food Standards Agency; World Health
// Organization, Five keys), 158 °F.
const (
	coreCelsius    = 70
	coreFahrenheit = 158
)

// tooCool reports whether the sentence tells of a probe that read less than
// the limit in a food that must be cooked through.
func (d cautioning) tooCool(r *reading, s *sentence) bool {
	probe, protein := false, false
	for i := range s.tokens {
		t := &s.tokens[i]
		probe = probe || t.in("probe", "thermometer", "core", "probed") || strings.HasPrefix(t.norm, "thermo")
		protein = protein || t.card.mustCook
	}
	if !probe && protein {
		// "the temp of the turkey was 64"
		for i := range s.tokens {
			probe = probe || s.tokens[i].in("temp", "temperature")
		}
	}
	if !probe {
		return false
	}
	for i := range s.tokens {
		v, err := strconv.ParseFloat(s.tokens[i].norm, 64)
		if err != nil || v < 30 || v > 200 {
			continue
		}
		limit := float64(coreCelsius)
		for j := i + 1; j < len(s.tokens) && j <= i+2; j++ {
			if s.tokens[j].in("f", "fahrenheit") {
				limit = coreFahrenheit
			}
			if s.tokens[j].in("min", "mins", "minutes", "g", "ml", "hours") {
				v = 1000
			}
		}
		if v < limit {
			return !mendedLater(s.tokens, i)
		}
	}
	return false
}

// mendedLater reports whether the sentence goes on to say it was put right, or
// that a higher reading came.
func mendedLater(tokens []token, i int) bool {
	for j := i + 1; j < len(tokens); j++ {
		if tokens[j].in("back", "until", "till", "more", "longer", "again", "another") {
			return true
		}
		if v, err := strconv.ParseFloat(tokens[j].norm, 64); err == nil && v >= coreCelsius && v < 110 {
			return true
		}
	}
	return false
}
