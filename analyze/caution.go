package analyze

import (
	"slices"
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
		next := &sentence{}
		if i+1 < len(r.sentences) {
			next = &r.sentences[i+1]
		}
		for _, kind := range lexicon.CautionKinds() {
			if !d.told(r, i, kind) {
				continue
			}
			if r.cautioned(kind, s.n-1) {
				continue // the same event, told on
			}
			if kind == "unwell" && r.cautioned(kind, s.n-2) && !d.danger(r, i, kind) {
				continue // who was ill two sentences ago is cooking still
			}
			if kind == "equipment" && (r.cautioned("injury", s.n) || i+1 < len(r.sentences) && d.told(r, i+1, "injury")) {
				continue // the harm says it already
			}
			if kind == "injury" && d.told(r, i, "unwell") {
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

// told reports whether sentence i tells of a danger of the kind, by a sign or
// by a scene. Raw food stands in the scenes of three kinds: where a sign says
// which of them it is, the scenes of the others do not count.
func (d cautioning) told(r *reading, i int, kind string) bool {
	s := &r.sentences[i]
	if kind == "storage" && keptCold(r, i) {
		return false
	}
	if d.danger(r, i, kind) || kind == "undercooked" && d.tooCool(r, s) {
		return true
	}
	if rawKind(kind) {
		for _, other := range lexicon.CautionKinds() {
			if other != kind && rawKind(other) && slices.ContainsFunc(s.dangers, func(h hit) bool { return h.Label == other && h.danger() && h.Step != state }) {
				return false // also where that one was put right
			}
		}
	}
	return d.scene(r, i, kind)
}

// keptCold reports whether sentence i tells on of what the one before it put in
// the cold: "The rice went in the fridge. It sat in its tub overnight."
func keptCold(r *reading, i int) bool {
	s := &r.sentences[i]
	if i == 0 || len(s.tokens) == 0 || !s.tokens[0].in("it", "they", "this", "that") {
		return false
	}
	before := &r.sentences[i-1]
	return slices.ContainsFunc(before.dangers, func(h hit) bool {
		return h.Label == "storage" && h.Step == "unless" && before.tokens[h.to-1].in("fridge", "freezer") && !undone(before.tokens, h.from) && !planned(before.tokens, h.from)
	})
}

// heard returns how many rows of the lexicon hear a danger of the kind in sentence i:
// signs that stand there as facts, and scenes that it completes. What is certain,
// or measured by a probe, counts as heard twice.
func (d cautioning) heard(r *reading, i int, kind string) int {
	s := &r.sentences[i]
	n := d.scenes(r, i, kind, plainlyHeard)
	if kind == "undercooked" && d.tooCool(r, s) {
		n += plainlyHeard
	}
	for _, h := range s.dangers {
		if h.Label == kind && h.danger() && d.fact(s, h) && (h.Step != state || d.concerned(r, i, kind)) {
			n++
			if h.Step == certain {
				n++
			}
		}
	}
	return n
}

// rawKind reports whether dangers of the kind come of raw food.
func rawKind(kind string) bool {
	return kind == "undercooked" || kind == "cross-contact" || kind == "raw-tasting"
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
		r.titled = d.words.dangers.find(&title)
		mark(r.titled)
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

// danger reports whether a sign of the kind stands in sentence i as a fact.
func (d cautioning) danger(r *reading, i int, kind string) bool {
	s := &r.sentences[i]
	if kind == "undercooked" && pinkFish(r, i) && !restHas(s.tokens, 0, len(s.tokens), "raw", "bloody", "uncooked", "undercooked", "cold", "jelly", "see-through", "translucent") {
		return false
	}
	if supposition(s.tokens) || kind == "equipment" && (underChange(s) && !verbPast(s.tokens) || kitchenRule(s, r.Role)) {
		return false // "Change: cut them after boiling" is a plan
	}
	return slices.ContainsFunc(s.dangers, func(h hit) bool {
		return h.Label == kind && h.danger() && d.fact(s, h) && (h.Step != state || d.concerned(r, i, kind))
	})
}

// fact reports whether a sign is told as something that happened on this day
// and was left as it was.
func (d cautioning) fact(s *sentence, h hit) bool {
	switch tokens := s.tokens; {
	case imagined(tokens, h.from), supposedWithin(tokens, h):
		return false
	case h.Label == "equipment" && flared(tokens):
		return !before(tokens, h.from) && !nextTime(tokens, h.from) // what burned is not undone by what was turned off
	case h.Step != certain && averted(tokens, s.dangers, h):
		return false
	case before(tokens, h.from), before(tokens, h.to-1), nextTime(tokens, h.from):
		return false
	default:
		return !caughtInTime(tokens, h) && !foodFell(tokens, h) && !alwaysTrue(tokens, h)
	}
}

// flared reports whether a sentence tells of a fire, or of water on hot fat: "the oil
// caught fire so Mum turned off the gas". On purpose it is lit elsewhere ("to catch
// the flame", a barbecue).
func flared(tokens []token) bool {
	for i := range tokens {
		next := after(tokens, i, 1)
		switch t := &tokens[i]; {
		case t.in("caught", "went") && (next.in("fire", "light", "alight") || next.norm == "on" && after(tokens, i, 2).norm == "fire"), t.norm == "burst" && restHas(tokens, i+1, 2, "flames"):
			return !deniedBefore(tokens, i)
		case t.in("threw", "chucked", "poured", "tipped", "put", "splashed") && next.norm == "water" && restHas(tokens, 0, i, "smoking", "oil", "fat", "flames", "fire"):
			return !deniedBefore(tokens, i)
		}
	}
	return false
}

// alwaysTrue reports whether the sign tells what such a thing does to anybody,
// and not what it did: "hot sugar burns your tongue".
func alwaysTrue(tokens []token, h hit) bool {
	if h.Label != "injury" {
		return false
	}
	anybody := false
	for j := h.from; j < h.to; j++ {
		t := &tokens[j]
		if t.tag == "VBD" || t.tag == "VBN" {
			return false
		}
		anybody = anybody || t.norm == "your"
	}
	return anybody
}

// kitchenRule reports whether a sentence tells what happens always and to anybody, in the
// present and of nobody who was there: "Wet fish in hot oil spits and will not
// crisp.", "You can tell it's ready when the oil comes up to the top." What a thing
// is like ("the plug is cracked") is no rule; an adult says "you" to the cook.
func kitchenRule(s *sentence, role Role) bool {
	if verbPast(s.tokens) {
		return false
	}
	rule := false
	for i := range s.tokens {
		switch t := &s.tokens[i]; {
		case t.in("you", "your", "it", "they", "them"):
			if role == Adult && t.in("you", "your") {
				return false
			}
			rule = rule || t.norm == "you"
		case t.human(), t.in("my", "our", "his", "her", "still", "now", "kept", "left"), !rule && plainBe(t.norm):
			return false
		case t.in("will", "can", "wo"):
			rule = true
		}
	}
	return rule
}

// state marks a sign that is a danger of some foods only: pink is what berries
// are, and dough is left out to rise.
const state = "state"

// stateReach is how many sentences before may name the food of a state.
const stateReach = 3

// concerned reports whether a food that the kind of danger is about is named in
// sentence i, shortly before it, or in the title.
func (d cautioning) concerned(r *reading, i int, kind string) bool {
	food := func(h hit) bool { return h.Label == kind && h.Step == stateFood }
	if kind == "undercooked" && pinkFish(r, i) {
		return false
	}
	for j := max(0, i-stateReach); j <= i; j++ {
		if slices.ContainsFunc(r.sentences[j].dangers, food) {
			return true
		}
	}
	for _, hazard := range r.brief.Dish.Hazards {
		if kind == "undercooked" && (hazard == "raw meat" || hazard == "raw poultry") {
			return true
		}
	}
	return slices.ContainsFunc(r.titled, func(h hit) bool { return h.Label == kind && h.Step == stateFood })
}

// pinkFish reports whether sentence i tells of a pink colour and all the flesh that is
// named in it, before it or in the title is of a fish that stays pink when
// it is done.
func pinkFish(r *reading, i int) bool {
	if !restHas(r.sentences[i].tokens, 0, len(r.sentences[i].tokens), "pink", "pinkish", "pinky") {
		return false
	}
	fish, flesh := false, false
	look := func(tokens []token) {
		for k := range tokens {
			switch t := &tokens[k]; {
			case t.in("salmon", "trout", "prawn", "prawns", "shrimp", "shrimps", "langoustine", "langoustines", "crab", "lobster", "mullet"):
				fish = true
			case t.in("chicken", "turkey", "pork", "beef", "lamb", "mince", "sausage", "sausages", "burger", "burgers", "meat", "duck", "bacon", "liver", "kofta", "koftas", "meatball", "meatballs", "kebab", "kebabs"):
				flesh = true
			}
		}
	}
	for j := 0; j <= i; j++ {
		look(r.sentences[j].tokens) // what is cooked is named once, mostly at the start
	}
	look(tokenizer{}.tokens(r.Title))
	return fish && !flesh
}

// stateFood is the cue for the foods whose state is a danger.
const stateFood = "cue food"

// certain marks a sign that no "unless" beside it takes back: it tells the harm
// itself, or that the rule was known and broken ("although she is coeliac").
const certain = "certain"

// danger reports whether the hit is a sign of danger.
func (h hit) danger() bool { return h.Step == "sign" || h.Step == state || h.Step == certain }

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
		if sign.Label == "storage" && u.from >= sign.to && slices.ContainsFunc(tokens[sign.to:u.from], func(t token) bool { return t.norm == "then" }) {
			continue // "it sat out overnight then went back in the fridge"
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
	for j := max(0, h.from-3); j+1 < h.to; j++ {
		if tokens[j].norm == "about" && tokens[j+1].norm == "to" {
			return true // "was about to drop the knife in the suds, remembered"
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
		return tokens[s].kind.Food() || tokens[s].in("it", "they", "tongs", "fork", "teaspoon", "ladle", "spoon", "lid", "bowl", "plate", "box", "bag", "spatula", "whisk", "chair", "cloth")
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
