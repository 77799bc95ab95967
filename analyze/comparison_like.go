package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// likens reports whether "like" at token i compares the food with something
// and is not a verb ("I like"), a filler or a manner of working ("like Mum
// does").
func (d sensing) likens(tokens []token, i int) bool {
	if i+1 >= len(tokens) {
		return false
	}
	next := &tokens[i+1]
	if next.tag == "WRB" || next.in("mine", "yours", "ours", "hers", "last", "when", "if") || next.in("my", "his", "her", "our", "the") && i+2 < len(tokens) && tokens[i+2].in("last", "first", "other", "usual", "one", "ones", "recipe", "picture", "photo", "previous", "nose", "mouth") {
		return false
	}
	if next.tag == "PRP" || next.in("i", "we", "that", "this", "to", "it", "them", "how", "him", "her", "lots", "crazy", "mad", "8", "an") && next.norm != "an" || next.tag == "CD" || next.kind == lexicon.Person || next.pause() || next.in("my", "his", "her", "your", "our", "their") && i+2 < len(tokens) && tokens[i+2].kind == lexicon.Person && !(i+3 < len(tokens) && (tokens[i+3].kind != lexicon.NoKind || tokens[i+3].isNoun() || tokens[i+3].norm == "'s")) {
		return false
	}
	for j := i - 1; j >= max(0, i-2); j-- {
		if tokens[j].isNoun() && tokens[j].kind == lexicon.Body && !strings.HasPrefix(tokens[i-1].norm, "look") {
			return false // "fingers curled like a claw"
		}
	}
	if i > 0 {
		prev := &tokens[i-1]
		if prev.human() || prev.in("would", "'d", "did", "do", "n't", "really", "to", "not") && subjectIsHuman(tokens, i) || strings.HasPrefix(prev.tag, "MD") {
			return false
		}
	}
	if end := likenessEnd(tokens, i+1); end < len(tokens) && tokens[end].in("does", "did", "do", "says", "said", "showed", "told", "taught") {
		return false
	}
	if s := subject(tokens, i); s >= 0 && tokens[s].human() {
		if v := predicateOf(tokens, i); v < 0 || !tokens[v].in("came", "went", "turned") {
			return false
		}
	}
	// The nearest verb must tie a quality to the food; "opened them like a
	// book" tells the manner of working.
	start := clauseStart(tokens, i)
	for j := i - 1; j >= start; j-- {
		t := &tokens[j]
		if t.describes() {
			break
		}
		if t.isVerb() && !d.judges(t) {
			if !linkingVerb(t.norm) && !t.in("set", "had", "has", "broke", "fell", "ate", "cut", "pulled", "hung", "sat", "stood", "rolled", "tore", "snapped", "melted", "landed") && (!swellsUp(t) || t.stem == "open" && t.tag == "VBG") {
				return false
			}
			break
		}
	}
	for j := i + 1; j < len(tokens) && j < i+6; j++ {
		if tokens[j].isNoun() || tokens[j].tag == "VBG" {
			return true
		}
	}
	return false
}

func subjectIsHuman(tokens []token, i int) bool {
	s := subject(tokens, i)
	return s >= 0 && tokens[s].human()
}

// likenessEnd returns the token behind the noun phrase that starts at i, with
// one "of" or "in" phrase.
func likenessEnd(tokens []token, i int) int {
	j, noun := i, false
	for j < len(tokens) && j < i+9 {
		t := &tokens[j]
		switch {
		case t.isNoun() || t.kind != lexicon.NoKind && !t.isVerb():
			noun = true
		case t.tag == "VBG" && !noun:
		case noun && t.in("of", "in", "on", "for", "from") && j+1 < len(tokens) && (tokens[j+1].isNoun() || tokens[j+1].tag == "DT" || tokens[j+1].isAdj() || tokens[j+1].tag == "PRP$"):
			if t.norm != "of" {
				return j
			}
			noun = false
		case noun && t.norm == "'s" && j+1 < len(tokens) && tokens[j+1].word:
			noun = false // "like my nan's kitchen"
		case noun:
			return j
		case t.tag == "DT" || t.isAdj() || t.tag == "VBN" || t.tag == "VBG" || t.tag == "PRP$" || t.tag == "CD" || t.isAdv() || t.in("'s"):
		default:
			return j
		}
		j++
	}
	return j
}

// likenessSense decides which sense a likeness speaks to: by the verb, by the
// listed word it stands beside, else texture, to which most likenesses belong.
func (d sensing) likenessSense(tokens []token, found []candidate, i int) lexicon.Sense {
	if v := predicateOf(tokens, i); v >= 0 {
		if s, ok := senseOfVerb(tokens[v].norm); ok {
			return s
		}
		if s := subject(tokens, v); s >= 0 {
			if sense, ok := senseOfNoun(tokens[s].norm); ok {
				return sense
			}
		}
	}
	if i > 1 && tokens[i-1].in("up", "out") && swellsUp(&tokens[i-2]) {
		return lexicon.Sight // "froths up like lava", "opened out like a flower"
	}
	if i > 0 && (tokens[i-1].in("rose", "risen", "towered") || i > 1 && tokens[i-2].in("rose", "risen") && tokens[i-1].norm == "up") {
		return lexicon.Sight
	}
	for j := i - 1; j >= 0 && j >= i-4; j-- {
		if s, ok := senseOfNoun(tokens[j].norm); ok {
			return s
		}
		if s, ok := senseOfVerb(tokens[j].norm); ok {
			return s
		}
	}
	if s, ok := d.named(tokens, i); ok && predicateOf(tokens, i) < 0 {
		return s
	}
	for j := i + 1; j < len(tokens) && j <= i+2; j++ {
		switch tokens[j].stem {
		case "lick", "drink", "suck", "swallow":
			return lexicon.Tongue
		case "bite", "chew", "eat":
			return lexicon.Touch
		}
	}
	best, at := lexicon.Touch, -1
	if seenThing(tokens, i) {
		best = lexicon.Sight
	}
	for n, c := range found {
		if c.to <= i && i-c.to <= 4 && c.from > at {
			best, at = d.choose(tokens, found, n, "").sense, c.from
		}
	}
	return best
}

// namesThing reports whether a likeness names something it is like; "like
// proper golden" and "like a minute" only fill.
func namesThing(likeness []token) bool {
	for i := range likeness {
		switch t := &likeness[i]; {
		case t.kind == lexicon.Time:
			return false
		case t.isNoun() && !t.in("nothing", "something", "anything"), t.kind != lexicon.NoKind, t.tag == "VBG":
			return true
		}
	}
	return false
}

// seenThing reports whether the likeness at token i names what is known by its
// shape or its colour ("like hockey pucks", "like a hedge"). Most other things
// that food is like are known by touch.
func seenThing(tokens []token, i int) bool {
	for j := i + 1; j < len(tokens) && j <= i+5; j++ {
		t := &tokens[j]
		if j > i+1 && (t.pause() || t.in("and", "but", "so", "when", "because")) {
			return false
		}
		switch singular(t.norm) {
		case "coin", "hedge", "puck", "log", "sock", "lace", "bootlace", "shoelace", "frisbee", "pillow", "cushion", "balloon", "page", "snake", "hat",
			"volcano", "flower", "puddle", "riverbed", "map", "moon", "sun", "sunset", "conker", "tower", "spider", "caterpillar", "worm", "slug", "bird", "nest", "crown",
			"face", "cat", "dog", "cow", "frog", "giraffe", "leopard", "tiger", "zebra", "dalmatian", "ladybird", "dinosaur", "hedgehog", "ufo", "spaceship", "star", "heart",
			"football", "confetti", "paint", "painting", "rainbow", "ink", "mud", "mudslide", "bog", "crater", "pennie", "penny", "finger", "thumb", "fist", "hand", "foot",
			"tail", "umbrella", "parachute", "tent", "mushroom", "boat", "ship", "canoe", "roadkill", "alien", "monster", "ghost", "brain", "eye", "eyeball", "teeth", "jewel", "ruby", "rubie",
			"emerald", "gold", "rust", "doily", "jigsaw", "mosaic", "patchwork", "chessboard", "ladder", "stair", "wave", "rope", "plait", "corkscrew", "curtain", "wig", "beard",
			"tree", "forest", "jungle", "grass", "mountain", "hill", "window", "mirror", "button", "doorstop", "doorstep", "plank", "matchstick", "pencil", "shell",
			"fan", "petal", "leaf", "cowpat", "bomb", "explosion", "crash", "teardrop", "pyramid", "triangle", "wheel", "plate", "saucer", "dome", "igloo", "roof", "wall", "cap", "bell", "bowtie",
			"meatball", "ribbon", "marble", "pea", "domino", "dominoe", "sail", "wing", "butterfly", "butterflie", "starfish", "octopus", "mummy", "mouse", "rat", "swan", "chick", "canary", "lobster", "flamingo", "tomb", "grave", "freckle",
			// the land and the sky
			"iceberg", "island", "canyon", "desert", "cliff", "valley", "beach", "lake", "lagoon", "pond", "cloud", "lava", "pavement", "path", "motorway",
			// what grows
			"primrose", "daisy", "daisie", "rose", "buttercup", "sunflower", "daffodil", "bluebell", "poppy", "poppie", "moss", "hay", "twig", "branch", "branche", "acorn",
			// what is worn and carried
			"boot", "raincoat", "coat", "scarf", "glove", "belt", "tie", "skirt", "shirt", "jumper", "bag", "handbag", "purse", "necklace", "bead", "lipstick", "slipper", "shoe",
			// what stands or lies in a house and a street
			"coaster", "mat", "sofa", "lampshade", "candle", "lantern", "frame", "book", "envelope", "parcel", "present", "drum", "tyre", "brush", "mop", "broom", "chimney", "door", "fence", "flag", "kite", "car", "bus", "train", "rocket", "lighthouse", "castle", "church", "skyscraper", "stick",
			"horse", "pig", "sheep", "duck", "hen", "fish", "whale", "shark", "elephant", "snail", "bee", "beetle", "turtle", "tortoise", "crocodile", "dragon", "unicorn", "bear", "rabbit", "tadpole":
			return true
		}
	}
	return false
}

// swellsUp reports whether a verb tells how food rose or opened.
func swellsUp(t *token) bool {
	switch t.stem {
	case "froth", "foam", "puff", "blow", "blew", "swell", "open", "rise", "rose", "balloon", "spread", "climb", "shoot", "shot", "boil", "fizz", "bubbl", "fan":
		return true
	}
	return false
}

// smeltBefore reports whether a smell is told just before the likeness at token
// i, so that it may be like a day of the week, too ("meaty, like a Sunday").
func smeltBefore(tokens []token, i int) bool {
	if i+2 >= len(tokens) || !strings.HasSuffix(tokens[i+1].norm, "day") && !strings.HasSuffix(tokens[i+2].norm, "day") {
		return false
	}
	for j := max(0, i-6); j < i; j++ {
		if s, ok := senseOfVerb(tokens[j].norm); ok && s == lexicon.Smell {
			return true
		}
		if s, ok := senseOfNoun(tokens[j].norm); ok && s == lexicon.Smell {
			return true
		}
	}
	return false
}
