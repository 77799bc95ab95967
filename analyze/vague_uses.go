package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// saidOf reports whether slang at token i is said of the food or the work as a
// quality: after a linking verb whose subject is no person, or alone.
func (d judging) saidOf(tokens []token, i int) bool {
	if i+1 < len(tokens) && tokens[i+1].in("ngl", "tbh", "lol", "man", "bro", "fr", "mate", "imo", "innit", "though", "tho", "haha", "too", "la", "lad", "mun", "butt", "bruv", "fam", "pal", "son", "love", "hen", "pet", "sis", "eh", "like", "m8", "bab", "hun") {
		tokens = tokens[:i+1] // what is only thrown in
	}
	if puffedUp(tokens, i) {
		return true
	}
	if i+1 < len(tokens) && tokens[i+1].word && (tokens[i+1].isAdj() || tokens[i+1].describes()) {
		return false // "dead colourful": very
	}
	if slangBefore(tokens, i) {
		return true
	}
	if i+1 < len(tokens) && (tokens[i+1].word && tokens[i+1].isNoun() && !tokens[i+1].human() || tokens[i+1].in("of", "the", "it")) && !tokens[i+1].pause() {
		return false
	}
	if tokens[i].norm == "mint" && i+2 < len(tokens) && tokens[i+1].norm == "and" && tokens[i+2].describes() {
		return false // "mint and lemony"
	}
	if i > 0 && i <= 3 && tokens[i-1].in("=", ":") || listedQuality(tokens, i) {
		return true // "colour = insane"
	}
	v := predicateOf(tokens, i)
	if v < 0 && i+3 < len(tokens) && tokens[i+1].norm == "to" && tokens[i+2].norm == "be" && i <= 2 && (i == 0 || tokens[0].isAdv() || tokens[0].in("pretty", "bit", "a")) {
		return true // "Pretty grim to be honest"
	}
	if v < 0 {
		return len(tokens) <= 3 || countWords(tokens) <= 3 && tokens[0].in("after", "then", "rest", "second", "others", "next") || i == 0 && len(tokens) > 2 && tokens[1].norm == "," && tokens[2].in("that", "this", "them", "those", "these", "it", "like", "mun", "la", "mate", "pal", "lad", "son", "hen", "pet", "butt", "bruv", "fam") || lastRemark(tokens, i)
	}
	if tokens[v].norm == "its" {
		return true
	}
	if i-v > 4 || tokens[v].in("get", "got", "feel", "felt", "go", "went") {
		return false
	}
	s := subject(tokens, v)
	if s < 0 && v == clauseStart(tokens, i) {
		return true // "smelt peng": in a note it is the food that is left out
	}
	if s >= 0 && tokens[s].in("hygiene", "safety", "planning", "organisation", "technique", "timing", "work") {
		return true // "Hygiene was sound"
	}
	if s >= 0 && tokens[s].human() {
		return i+1 < len(tokens) && tokens[i+1].norm == "at" // "my mate was pants at helping"
	}
	return s >= 0 && onlyJudges(&tokens[i]) || s >= 0 && tokens[s].kind != lexicon.Tool && tokens[s].kind != lexicon.Place && (tokens[s].kind != lexicon.Other || tokens[s].in("thing", "lot"))
}

// onlyJudges reports whether slang judges whatever it is said of: unlike "lit" or "dead",
// which tell of a hob or a phone how it is.
func onlyJudges(t *token) bool {
	return t.in("class", "quality", "minging", "mingin", "banging", "bangin", "peng", "lush", "grim", "bogging", "boggin", "elite", "insane", "mega", "wicked", "pants", "gash", "leng", "bussin", "bussing", "goated", "iconic", "unreal")
}

// puffedUp reports whether slang at token i tells how the food came to be ("it puffed up
// lush round the outside").
func puffedUp(tokens []token, i int) bool {
	return i > 1 && tokens[i-1].in("up", "out") && tokens[i-2].isVerb() && !tokens[i-2].human() && !tokens[i].in("dead", "well", "pure", "proper") &&
		(i+1 == len(tokens) || tokens[i+1].in("round", "around", "inside", "outside", "in", "on", "and", "with", "at", "after") || !tokens[i+1].word)
}

// listedQuality reports whether slang at token i stands in a list behind what was sensed
// ("cheesy, thick, lush on toast").
func listedQuality(tokens []token, i int) bool {
	return onlyJudges(&tokens[i]) && i > 1 && tokens[i-1].norm == "," && tokens[i-2].describes()
}

// slangBefore reports whether slang at token i stands before a dish, a part or
// what names a sense, behind an article or a word of degree ("a banging curry",
// "some peng wings", "had a weird taste"). Words that also name a thing or tell
// how much are left out: a mint sauce, a class teacher, dead meat.
func slangBefore(tokens []token, i int) bool {
	if i == 0 || i+1 >= len(tokens) || !tokens[i].in("banging", "bangin", "lush", "peng", "bussin", "bussing", "minging", "mingin", "grim", "rank", "wicked", "weird", "horrid", "grotty", "manky", "strange", "odd", "iconic", "insane", "elite", "unreal", "mega", "funky", "gnarly", "savage", "brutal", "sick", "cursed") {
		return false
	}
	if prev := &tokens[i-1]; !prev.in("a", "an", "some", "such", "proper", "well", "really", "very", "right", "most", "dead", "pretty", "this", "that", "my", "was", "slightly", "bit", "kinda") {
		return false
	}
	h := phraseHead(tokens, i)
	if h < 0 || h > i+3 {
		return false
	}
	if namesSense(&tokens[h]) {
		return true
	}
	if tokens[i].in("odd", "strange", "sick") {
		return false // "the odd crumb", "a strange lump"
	}
	return tokens[h].kind == lexicon.DishNoun || tokens[h].in("bit", "food", "meal", "tea", "dinner", "grub", "scran", "stuff", "job", "effort")
}

// lastRemark reports whether the word at token i is all that is said behind the
// last mark of a sentence ("I bit a clove, rank"), and no thing of a list.
func lastRemark(tokens []token, i int) bool {
	if tokens[i].in("mint", "dead", "fire", "sound", "class", "magic", "quality") {
		return false
	}
	start := i
	for start > 0 && tokens[start-1].isAdv() {
		start--
	}
	return start > 1 && tokens[start-1].pause() && (i+1 == len(tokens) || i+2 == len(tokens) && !tokens[i+1].word)
}

// aside reports uses that the neighbouring words rule out: "good" before a
// measure, "well" as a noun, "fine" of a person.
func (d judging) aside(tokens []token, from, to int) bool {
	return cookedThrough(tokens, from, to) || quotesBack(tokens, from, to) || beginsTalk(tokens, from, to) || measures(tokens, from, to) || ofState(tokens, from, to)
}

// quotesBack reports a word of the reader's that the writer only gives back: "you say it
// was tasty", "what was tasty about it?".
func quotesBack(tokens []token, from, to int) bool {
	if to < len(tokens) && tokens[to].norm == "about" && tokens[0].norm == "what" && tokens[len(tokens)-1].norm == "?" {
		return true
	}
	for j := from - 1; j > 0 && j >= from-4; j-- {
		if tokens[j].in("say", "said", "wrote", "write", "written", "put") && tokens[j-1].in("you", "you've", "'ve") {
			return true
		}
	}
	return false
}

// cutFine reports "fine" of how small something was cut: "sliced that fine".
func cutFine(tokens []token, from int) bool {
	if tokens[from].norm != "fine" {
		return false
	}
	for j := from - 1; j >= 0 && j >= from-4; j-- {
		if t := &tokens[j]; t.in("sliced", "chopped", "cut", "grated", "ground", "diced", "minced", "shredded", "slice", "chop", "grate", "grind") {
			return true
		} else if !t.isAdv() && !t.in("that", "so", "it", "them", "really", "very", "nice", "and") && !t.kind.Food() {
			return false
		}
	}
	return false
}

// cookedThrough reports "well done" of how far food was cooked ("it was well done in the
// middle").
func cookedThrough(tokens []token, from, to int) bool {
	if to-from != 2 || tokens[from].norm != "well" || to >= len(tokens) || !tokens[to].in("in", "inside", "outside", "on", "right", "all", "not") {
		return false
	}
	v := predicateOf(tokens, from)
	return v >= 0 && subject(tokens, v) >= 0 && !tokens[subject(tokens, v)].human()
}

// beginsTalk reports "ok", "right" and "well" as a way to begin or to go on.
func beginsTalk(tokens []token, from, to int) bool {
	t := &tokens[from]
	if to >= len(tokens) || to-from > 1 || !t.in("ok", "okay", "right", "well") {
		return false
	}
	next := &tokens[to]
	if from == 0 && t.norm != "well" && next.tag == "NNP" && countWords(tokens) == 2 {
		return true // "OK Callum."
	}
	if t.norm == "well" && next.norm == "," && from > 0 && (tokens[from-1].pause() || tokens[from-1].in("and", "but", "so")) {
		return true // "and, well, I dropped it"
	}
	for k := 0; k < from; k++ { // "Right, ok, first"
		if !tokens[k].in("right", "ok", "okay", "so", "um", "erm", "well", "yeah", "yes", "and", ",") {
			return false
		}
	}
	if from > 0 && !next.pause() && !next.in("first", "firstly", "next", "then", "i", "we", "so", "um", "this", "my", "the") {
		return false // "So ok it was"
	}
	return next.in(",", "so", "um", "well", "then", "right", "basically", "next", "first", "firstly", "step", "now", "here") ||
		t.norm != "well" && (subjectPronoun(next.norm) || next.human() || next.in("the", "my", "here", "today", "first")) // "ok mum says"
}

// measures reports words that tell how much, how fine or what was done to a
// thing, and not how good it was.
func measures(tokens []token, from, to int) bool {
	t := &tokens[from]
	if t.norm == "finely" || cutFine(tokens, from) {
		return true // tells how small something was cut
	}
	if to >= len(tokens) || tokens[to].pause() {
		return false
	}
	next := &tokens[to]
	quality := next.isAdj() || next.isAdv() || next.describes()
	switch {
	case next.norm == "bit" && from <= 1 && shareOf(tokens, to) >= 0:
		return false // "Nice bit of ham, that"
	case t.in("good", "nice", "decent") && next.in("few", "bit", "while", "amount", "deal"):
		return true
	case t.in("pretty", "super") && quality && !(from > 0 && tokens[from-1].in("very", "so", "really")):
		return true // "pretty good", "super wet": how much
	case t.in("awfully", "terribly", "horribly", "amazingly", "insanely", "incredibly", "unbelievably", "remarkably", "extraordinarily", "exceptionally", "shocking", "shockingly") && quality:
		return true // "awfully hot"
	case t.in("nice", "lovely") && next.norm == "and" && ofManner(tokens, from):
		return true // "rose nice and high", "chop it nice and fine"
	case t.norm == "good" && next.norm == "and" && to+1 < len(tokens) && tokens[to+1].describes():
		return true // "good and hot": thoroughly
	case t.norm == "good" && from > 0 && tokens[from-1].norm == "a" && countsOut(tokens, to):
		return true // "a good forty minutes": at least
	case t.in("fine", "finer") && (next.kind == lexicon.Tool || next.in("cornmeal", "semolina", "oatmeal", "polenta", "flour", "sugar", "salt", "breadcrumbs", "crumbs", "mesh", "powder", "dust", "sand", "bulgur", "cuts", "slices", "strips")):
		return true
	}
	return t.in("smashing", "cracking", "banging", "belting", "touching") && (next.tagIn("DT", "PRP$") || next.in("them", "it", "up", "open") || strikes(tokens, from))
}

// countsOut reports whether a number or a stretch of time stands at token i.
func countsOut(tokens []token, i int) bool {
	t := &tokens[i]
	return t.tag == "CD" || strings.HasSuffix(t.norm, "teen") || strings.HasSuffix(t.norm, "ty") && t.norm[0] != 'p' && lexicon.Time == kindBehind(tokens, i) ||
		t.in("minutes", "hours", "hour", "half", "fortnight", "week", "month", "decade", "inch", "metre", "foot")
}

// kindBehind returns the kind of the noun behind token i.
func kindBehind(tokens []token, i int) lexicon.Kind {
	if i+1 >= len(tokens) {
		return lexicon.NoKind
	}
	return tokens[i+1].kind
}

// strikes reports whether "smashing" or "cracking" at token i is what somebody
// does to a thing ("dad was smashing garlic", "she began cracking eggs").
func strikes(tokens []token, i int) bool {
	if i == 0 || !tokens[i+1].isNoun() && !tokens[i+1].kind.Food() {
		return false
	}
	switch prev := &tokens[i-1]; {
	case prev.in("is", "was", "are", "were", "'m", "'s", "'re", "am"):
		n := subject(tokens, i-1)
		return n >= 0 && tokens[n].human()
	default:
		return prev.in("started", "start", "began", "kept", "keep", "by", "for", "of", "before", "after", "when", "while", "tried", "try", "like", "love", "at", "stopped", "been", "enjoyed", "busy")
	}
}

// handy reports whether "with" at token i brings what somebody has a way with
// elsewhere than in the kitchen ("good with numbers", "better with animals").
func handy(tokens []token, i int) bool {
	if i+1 >= len(tokens) || tokens[i].norm != "with" {
		return false
	}
	h := objectHead(tokens, i)
	if h < 0 {
		return false
	}
	switch t := &tokens[h]; t.kind {
	case lexicon.Person:
		return t.in("animals", "dogs", "dog", "horses", "kids", "children", "people", "babies")
	case lexicon.Tool, lexicon.Body, lexicon.Cloth:
		return false
	default:
		return t.isNoun() && !t.kind.Food() && !t.in("heat", "safety", "hygiene", "time", "timing", "seasoning", "spices", "flavours", "knife", "hob", "oven")
	}
}

// ofManner reports whether what "nice and" leads to tells how something was
// done, moved or kept, and not how the food was: it is tied to no food by a verb
// of being and stands before no noun, but belongs to a verb ("roll it nice and
// thin"), or it is said of a thing ("the oven was nice and hot").
func ofManner(tokens []token, i int) bool {
	if i+2 >= len(tokens) || !tokens[i+2].word || phraseHead(tokens, i+2) >= 0 {
		return false
	}
	v := predicateOf(tokens, i)
	if v < 0 {
		for k := i - 1; k >= max(clauseStart(tokens, i), i-reach); k-- {
			if tokens[k].isVerb() || k == clauseStart(tokens, i) && tokens[k].card != nil && tokens[k].card.works {
				return true
			}
		}
		return false
	}
	if tokens[v].in("keep", "kept", "stay", "stayed") {
		return true
	}
	s := subject(tokens, v)
	return s >= 0 && tokens[s].inert() && !tokens[s].human()
}

// ofState reports a word that tells of somebody's health, mood or lot: "I felt
// awful", "my belly was dodgy", "poor Megan".
func ofState(tokens []token, from, to int) bool {
	t := &tokens[from]
	if t.norm == "poor" && to < len(tokens) && (tokens[to].human() || tokens[to].tag == "NNP" && tokens[to].kind == lexicon.NoKind && !tokens[to].describes()) {
		return true
	}
	if from == 0 || to-from > 1 {
		return false
	}
	if tokens[0].norm == "feeling" && from <= 4 {
		return true // "Feeling a lot better now"
	}
	v := predicateOf(tokens, from)
	if v < 0 || from-v > 4 {
		return false
	}
	if s := subject(tokens, v); s >= 0 && tokens[s].kind == lexicon.Body && tokens[s].norm != "grip" && phraseHead(tokens, from) < 0 {
		return true
	}
	if tokens[v].in("feel", "feels", "felt", "feeling") && (subjectIsHuman(tokens, from)) && phraseHead(tokens, from) < 0 {
		return true
	}
	if s := subject(tokens, v); t.in("good", "great", "better", "bad", "brilliant", "best") && s >= 0 && tokens[s].human() && handy(tokens, to) {
		return true
	}
	if !t.in("fine", "alright", "ok", "okay", "well", "better", "good", "poorly", "great", "bad", "grand") {
		return false
	}
	if tokens[v].in("is", "'s", "was", "'m", "am", "seem", "seems", "seemed", "feel", "feels", "felt", "feeling", "be", "are", "were") {
		if s := subject(tokens, v); s >= 0 && tokens[s].human() && s < v && from-v <= 3 && !(to < len(tokens) && (tokens[to].norm == "at" || t.in("better", "good", "great") && tokens[to].in("with", "than", "on"))) {
			return t.norm != "good" && t.norm != "great" || tokens[v].in("'m", "am", "feel", "felt", "feeling", "feels")
		}
	}
	return false
}
