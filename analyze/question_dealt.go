package analyze

import (
	"slices"

	"saywhy/lexicon"
)

// How a danger ended, by the text: an adult knows of it or stepped in, the hurt
// was seen to and no adult is named, or the writer says what to do next time: a
// learner plans, an adult advises. What is told is not asked again.
const (
	dealt       = "dealt"
	treated     = "treated"
	planForNext = "planned"
	givenAdvice = "advised"
)

// seenTo returns what the sentence of a danger and the one behind it tell of
// what was done about it, or "".
func seenTo(r *reading, i int, kind string) string {
	told := toldForNextTime(r, i) || r.Role == Learner && plansAgainst(r, kind)
	if told && r.Role == Adult {
		return givenAdvice
	}
	first := firstOfDanger(&r.sentences[i], kind)
	if first > 0 && grownUp(&r.sentences[i].tokens[first-1]) {
		first-- // "nan held it under the tap": whose hand it was is told
	}
	hurt := kind == "injury"
	if kind == "equipment" && !flared(r.sentences[i].tokens) && (calmed(r.sentences[i].tokens, first) || i+1 < len(r.sentences) && calmed(r.sentences[i+1].tokens, 0)) {
		return dealt
	}
	for n := i; n <= i+1 && n < len(r.sentences); n++ {
		tokens, from := r.sentences[n].tokens, 0
		if n == i {
			from = first
			if r.Role == Learner && grownUpMet(tokens[:first]) {
				return dealt
			}
		}
		if grownUpActs(tokens, from, r.Role, n == i && r.sentences[n].vague == nil) {
			return dealt
		}
	}
	for n := i + 1; n <= i+2 && n < len(r.sentences); n++ {
		if tokens := r.sentences[n].tokens; r.Role == Learner && saysOf(tokens, kind) || r.Role == Adult && saidTo(tokens) || areaOfDanger(kind) == lexicon.Safety && otherWay(r.sentences[n].tokens) {
			return dealt
		}
	}
	if putRightLater(r, i, kind) {
		return dealt
	}
	if told {
		return planForNext
	}
	for n := i; hurt && n <= i+1 && n < len(r.sentences); n++ {
		if treats(r.sentences[n].tokens) {
			return treated
		}
	}
	return ""
}

// grownUpMet reports whether it is a grown-up who came upon the danger that the
// words behind tell of: "when dad bit into one it was still see through".
func grownUpMet(tokens []token) bool {
	for i := range tokens {
		if grownUp(&tokens[i]) && i+1 < len(tokens) && tokens[i+1].in("bit", "found", "noticed", "spotted", "saw", "discovered", "caught") {
			return true
		}
	}
	return false
}

// putRightLater reports whether a sentence further on tells how the danger was put right,
// in the signs that tell it in the next sentence, or that the food was cooked on: "raw
// pink in the middle. The coals were still flaming. Moved them to the side for another
// ten minutes."
func putRightLater(r *reading, i int, kind string) bool {
	if kind == "undercooked" && cookedOn(r.sentences[i].tokens) {
		return true
	}
	for n := i + 1; n <= i+mendedReach && n < len(r.sentences); n++ {
		s := &r.sentences[n]
		if s.has(lexicon.Improvement) {
			continue
		}
		if putRight(s.tokens, s.dangers, kind) || kind == "undercooked" && done(s.tokens) && cookedOn(s.tokens) {
			return true
		}
	}
	return false
}

// cookedOn reports whether food was given more heat: "moved to the side for another
// ten minutes".
func cookedOn(tokens []token) bool {
	for i := range tokens {
		if t := &tokens[i]; t.tagIn("VBD", "VBN") && (t.card.works || t.in("moved", "left", "went", "gave", "stuck", "got")) {
			if restHas(tokens, i, len(tokens), "another", "longer", "extra", "again") || t.norm == "went" && restHas(tokens, max(0, i-2), 1, "back") {
				return true // "so back it went for a quarter of an hour"
			}
		}
	}
	return false
}

// saidTo reports whether an adult has told the cook: "I told him, small boxes, cool
// quick, then fridge".
func saidTo(tokens []token) bool {
	for i := 0; i+2 < len(tokens); i++ {
		if tokens[i].in("i", "we") && tokens[i+1].in("told", "showed", "explained", "reminded") {
			return true
		}
	}
	return false
}

// otherWay reports whether a sentence tells that the cook did it in another way from
// then on: "After that I slid them in from the edge, away from me."
func otherWay(tokens []token) bool {
	from := 0
	for i := 0; i+1 < len(tokens) && i < 3; i++ {
		if tokens[i].in("after", "since") && tokens[i+1].norm == "that" || tokens[i].norm == "then" && tokens[i+1].norm == "on" {
			from = i + 2
		}
	}
	return from > 0 && restHas(tokens, from, len(tokens), "slid", "slowly", "gently", "carefully", "away", "gloves", "spoon", "tongs", "careful", "back")
}

// calmed reports whether it is told, behind token from, that the heat was turned down or
// the pan moved: "I slid the wok off the ring and waited".
func calmed(tokens []token, from int) bool {
	for i := from; i < len(tokens); i++ {
		if tokens[i].in("slid", "moved", "took", "turned", "switched", "pulled", "lifted", "shifted") && restHas(tokens, i+1, 5, "off", "down", "away") && !notTold(tokens, i) {
			return true
		}
	}
	return false
}

// saysOf reports whether a grown-up is quoted on the danger or on what did it, so that
// one knows: "Gran says that knife needs sharpening".
func saysOf(tokens []token, kind string) bool {
	if kind != "injury" && kind != "equipment" {
		return false
	}
	for i := 0; i+1 < len(tokens); i++ {
		if grownUp(&tokens[i]) && tokens[i+1].in("says", "said", "told", "reckons", "showed", "thinks") {
			return slices.ContainsFunc(tokens[i+2:], func(t token) bool { return t.kind == lexicon.Tool || t.kind == lexicon.Body })
		}
	}
	return false
}

// mendedReach is how many sentences behind a danger may tell that it was put right.
const mendedReach = 3

// toldForNextTime reports whether the sentence of a danger, or the one right behind it,
// tells what to do next time: that is what a question would ask for ("You grated
// your knuckle so slow down with that grater").
func toldForNextTime(r *reading, i int) bool {
	last := i + 1
	if last < len(r.sentences) && countWords(r.sentences[last].tokens) <= 3 {
		last++ // "Im fine."
	}
	for n := i; n <= last && n < len(r.sentences); n++ {
		for _, g := range r.sentences[n].signs {
			if g.told && g.area == lexicon.Improvement {
				return true
			}
		}
	}
	return false
}

// plansAgainst reports whether the text plans, wherever that stands, what keeps a danger of the
// kind away: "Change: gloves for the peppers".
func plansAgainst(r *reading, kind string) bool {
	var words []string
	switch kind {
	case "injury", "equipment":
		words = []string{"glove", "gloves", "mitt", "mitts", "careful", "carefully", "claw", "slower", "slowly", "tongs", "safer", "cloth", "cool", "cold", "guard", "sleeves"}
	case "undercooked":
		words = []string{"longer", "probe", "thermometer", "thinner", "smaller", "check", "hotter"}
	case "storage":
		words = []string{"fridge", "freezer", "chill"}
	case "cross-contact":
		words = []string{"board", "boards", "wash", "tongs"}
	default:
		return false
	}
	for i := range r.sentences {
		s := &r.sentences[i]
		if s.has(lexicon.Improvement) && restHas(s.tokens, 0, len(s.tokens), words...) {
			return true
		}
	}
	return false
}

// firstOfDanger returns the first token of the danger's signs, or 0.
func firstOfDanger(s *sentence, kind string) int {
	for _, h := range s.dangers {
		if h.Label == kind && h.danger() {
			return h.from
		}
	}
	return 0
}

// treats reports whether a hurt was cooled or covered.
func treats(tokens []token) bool {
	for i := range tokens {
		t := &tokens[i]
		if t.in("plaster", "bandage", "ice") || t.in("tap", "water") && i > 0 && tokens[i-1].in("cold", "running", "the") && i > 1 && tokens[i-2].in("under", "in", "the", "cold", "with") {
			return true
		}
	}
	return false
}

// dealtReach is how many words behind a person what they did may stand.
const dealtReach = 4

// grownUpActs reports whether a grown-up is told of, behind token from, who knows
// or stepped in, or was told. Of a learner's text that is a person with a name
// such as "mum"; of an adult's it is the writer. With said, speech counts as well.
func grownUpActs(tokens []token, from int, role Role, said bool) bool {
	for i := from; i < len(tokens); i++ {
		t := &tokens[i]
		grown := role == Learner && grownUp(t) || role == Adult && (t.in("i", "we") || grownUp(t))
		if !grown {
			continue
		}
		if i > 0 && (tokens[i-1].in("told", "showed", "called") || i > 1 && tokens[i-2].in("told", "showed", "called") && tokens[i-1].tag == "PRP$") && role == Learner {
			return !notTold(tokens, i)
		}
		if actsOn(tokens, i, said) || role == Learner && steppedIn(tokens, i) {
			return true
		}
	}
	return false
}

// actsOn reports whether the person at token i knows of something, or laid hands
// on it or on someone.
func actsOn(tokens []token, i int, said bool) bool {
	for j := i + 1; j < len(tokens) && j <= i+dealtReach && !tokens[j].pause(); j++ {
		t := &tokens[j]
		switch {
		case t.negator() && !(j+1 < len(tokens) && tokens[j+1].in("happy", "pleased", "impressed")), t.in("dont", "didnt", "wasnt", "would", "will"):
			return false
		case t.in("knows", "knew", "saw", "stopped", "warned", "shouted", "cleaned", "bandaged", "rinsed", "bathed", "wrapped", "happy", "cross", "fuming", "furious", "reminded", "explained", "spotted", "swapped", "blew", "blow"):
			return true
		case said && t.in("said", "told", "asked"), t.in("words", "word", "chat", "talk") && (tokens[j-1].norm == "had" || j > i+1 && tokens[j-2].norm == "had"):
			return true
		case t.in("put", "ran", "held", "took", "got", "gave", "made", "pulled", "moved", "helped", "treated", "turned"):
			return aimedAtSomeone(tokens, j+1)
		}
	}
	return false
}

// steppedIn reports whether the grown-up at token i did something because of what
// was told before: "the knife slipped, so Mum sliced a flat bit off".
func steppedIn(tokens []token, i int) bool {
	if i == 0 || tokens[i-1].norm != "so" || i+2 >= len(tokens) {
		return false
	}
	did := &tokens[i+1]
	return did.tag == "VBD" && !linkingVerb(did.norm) && !did.in("ate", "had", "went", "got", "said", "thought", "wanted", "liked", "did", "could", "would")
}

// aimedAtSomeone reports whether what was done was done to someone, or to what
// was just spoken of.
func aimedAtSomeone(tokens []token, i int) bool {
	return slices.ContainsFunc(tokens[min(i, len(tokens)):min(i+2, len(tokens))], func(t token) bool {
		return t.in("cold", "water", "plaster", "ice", "cream", "it", "me", "him", "her", "them", "hers") || t.kind == lexicon.Body
	})
}

// notTold reports whether a denial stands shortly before token i: "I never told
// my mum".
func notTold(tokens []token, i int) bool {
	for j := i - 1; j >= 0 && j >= i-dealtReach; j-- {
		if tokens[j].negator() || tokens[j].in("dont", "didnt", "havent", "before", "havnt") {
			return true
		}
	}
	return false
}

// grownUp reports whether the token names a person who is no child of the house.
func grownUp(t *token) bool {
	return t.kind == lexicon.Person && !t.in("brother", "sister", "cousin", "friend", "mate", "pal", "boy", "girl", "lad", "kid", "kids", "baby", "son", "daughter", "niece", "nephew", "twin", "he", "she", "they", "we", "i", "you",
		"bro", "sis", "brothers", "sisters", "cousins", "friends", "mates", "child", "children", "everyone", "everybody", "nobody", "anyone", "someone", "guest", "guests", "people", "family", "class", "group", "partner") ||
		t.in("mum", "mummy", "mam", "mammy", "mom", "dad", "daddy", "da", "nan", "nana", "nanna", "gran", "granny", "grandma", "grandad", "grandpa", "auntie", "aunty", "aunt", "uncle", "teacher", "miss", "sir", "carer")
}
