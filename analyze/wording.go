package analyze

import (
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"saywhy/lexicon"
)

// wording turns wishes into questions, for one reading.
type wording struct {
	words *vocabulary
	r     *reading
	title string          // what was cooked, as a question may call it
	own   map[string]bool // lower-case words of the text; see owns
	used  map[string]bool // wordings of this report
	asked map[string]bool // wordings and questions of an earlier draft

	textHash uint32 // see hash

	// quoted holds the pieces already put before the writer, so that one
	// report never asks twice about the same words.
	quoted    map[string]bool
	sentences map[int]bool // those it was quoted from
}

func newWording(words *vocabulary, r *reading) *wording {
	w := &wording{words: words, r: r, used: map[string]bool{}, asked: map[string]bool{}, quoted: map[string]bool{}, sentences: map[int]bool{}}
	if r.brief.After != nil {
		for _, q := range r.brief.After.Questions {
			w.asked[q.form], w.asked[q.Text] = true, true
		}
	}
	w.title = w.dish()
	w.textHash = fnv1a(fnvStart, r.Text)
	return w
}

// afresh returns a wording for other lines of the same report, with nothing
// used yet.
func (w *wording) afresh() *wording {
	out := *w
	out.used, out.quoted, out.sentences = map[string]bool{}, map[string]bool{}, map[int]bool{}
	return &out
}

// ask returns the question for a wish and the wording it was made from: the
// first, counted from a place that the text decides, that was not used yet, is
// easy to read with what it quotes, and says nothing for the writer.
func (w *wording) ask(q *wish) (text, form string, ok bool) {
	if text, form, ok = w.atStep(q); ok {
		return text, form, true
	}
	turn := w.inTurn(w.list(q), q)
	for _, quote := range append([]string{q.quote}, q.shorter...) {
		try := *q
		try.quote = quote
		if text, form, ok = w.fill(turn, &try); ok {
			q.quote = quote
			return text, form, true
		}
	}
	return "", "", false
}

// atStep asks about an area that the text does not speak of where it would come
// in: at a job of the writer's own, out of a sentence that nothing was quoted from.
func (w *wording) atStep(q *wish) (text, form string, ok bool) {
	list := w.words.lex.Reading.Wordings[string(w.r.Role)][q.group]["step"]
	for _, at := range q.steps {
		if w.sentences[at.sentence] {
			continue
		}
		try := *q
		try.quote, try.sentence = at.text, at.sentence
		if text, form, ok = w.fill(w.inTurn(list, &try), &try); ok {
			*q = try
			return text, form, true
		}
	}
	return "", "", false
}

// list returns the wordings for a wish.
func (w *wording) list(q *wish) []string {
	all := w.words.lex.Reading.Wordings
	switch q.list {
	case "danger":
		if list := all["danger"][string(w.r.Role)][q.state]; q.state != "" && len(list) > 0 {
			return list
		}
		return all["danger"][string(w.r.Role)][q.group]
	case "planned":
		return all["last"][string(w.r.Role)][q.list]
	}
	return all[string(w.r.Role)][q.group][q.list]
}

// inTurn returns the wordings in the order in which they are tried. An adult
// who makes no suggestion is asked for one with the look of the food.
func (w *wording) inTurn(list []string, q *wish) []string {
	if len(list) == 0 {
		return nil
	}
	first := int(w.hash(q.group+" "+q.list) % uint32(len(list)))
	turn := append(append([]string(nil), list[first:]...), list[:first]...)
	if q.list == "vague" && q.noun != "" && !strings.Contains(" "+w.title+" ", " "+q.noun+" ") {
		slices.SortStableFunc(turn, func(a, b string) int { return asksOfDish(a) - asksOfDish(b) }) // "Chocolate dip was gorgeous."
	}
	if q.list == "danger" && w.r.Role == Learner && namesGrownUp(q.quote) {
		slices.SortStableFunc(turn, func(a, b string) int { return asksWho(a) - asksWho(b) })
	}
	if q.list == "said" && q.area == lexicon.Safety && !w.tellsOfRisk() {
		slices.SortStableFunc(turn, func(a, b string) int { return supposesRisk(a) - supposesRisk(b) }) // a salad may hurt nobody
	}
	if w.r.Role != Adult || q.area != lexicon.Appearance || q.group != string(q.area) {
		return turn
	}
	var suggest, other []string
	for _, form := range turn {
		if strings.Contains(form, "suggest") {
			suggest = append(suggest, form)
		} else {
			other = append(other, form)
		}
	}
	if w.r.row(lexicon.Improvement).Said {
		return append(other, suggest...)
	}
	return append(suggest, other...)
}

func (w *wording) fill(turn []string, q *wish) (text, form string, ok bool) {
	for _, form := range turn {
		if w.used[form] || w.asked[form] {
			continue
		}
		if q.list == "danger" && q.quote != "" && !strings.Contains(form, "{words}") {
			continue // for where nothing can be quoted
		}
		if q.mixed && callsItTasteOrLook(form) {
			continue
		}
		for _, title := range []string{w.title, "dish"} {
			text, ok := w.slots(form, q, title)
			if !ok || w.asked[text] || !readable(text) || w.leaks(withoutQuote(text)) {
				continue
			}
			w.used[form] = true
			return text, form, true
		}
	}
	return "", "", false
}

// callsItTasteOrLook reports whether a wording calls what it asks about a taste or a look,
// which a quote that speaks of more than that is not.
func callsItTasteOrLook(form string) bool {
	_, asked, _ := strings.Cut(form, "{words}")
	for _, word := range []string{"taste", "look", "saw"} {
		if strings.Contains(asked, word) {
			return true
		}
	}
	return false
}

// oneMoment returns the first of the moments that a dish file joins by "and" ("when it
// is done and as you serve it"): the sheet names both, a question asks one thing.
func oneMoment(moment string) string {
	for _, more := range []string{" and when ", " and as ", " and on ", " and you ", " and chew", " and wait ", " and bring "} {
		moment, _, _ = strings.Cut(moment, more)
	}
	return moment
}

// asksWho returns 1 for a wording that asks which adult knows or could help, and 0 for
// another. Where the quote has the adult in it, the others are tried first: "Mum had
// left it on the hob overnight".
func asksWho(form string) int {
	if strings.Contains(form, "hich adult") {
		return 1
	}
	return 0
}

// supposesRisk returns 0 for a wording that leaves open whether there was anything to
// ask about, and 1 for another.
func supposesRisk(form string) int {
	if strings.Contains(form, "if any") {
		return 0
	}
	return 1
}

// tellsOfRisk reports whether the text tells of a job or a tool by which people get hurt.
func (w *wording) tellsOfRisk() bool {
	risks := w.words.lex.Reading.Steps[lexicon.Safety]
	for i := range w.r.sentences {
		for j := range w.r.sentences[i].tokens {
			if _, ok := risks[w.r.sentences[i].tokens[j].stem]; ok {
				return true
			}
		}
	}
	return false
}

// asksOfDish returns 0 for a wording that names the food that was judged, and 1 for one
// that asks about the dish as a whole.
func asksOfDish(form string) int {
	if strings.Contains(form, "{noun}") {
		return 0
	}
	return 1
}

// namesGrownUp reports whether a piece of a text names a grown-up.
func namesGrownUp(piece string) bool {
	tokens := tokenizer{}.tokens(piece)
	return slices.ContainsFunc(tokens, func(t token) bool { return grownUp(&t) })
}

// slots puts what they stand for in the place of the slots of a wording. It
// fails where the text or the dish has nothing to put there.
func (w *wording) slots(form string, q *wish, title string) (string, bool) {
	moment := oneMoment(w.r.brief.Dish.Moments[lexicon.Sense(q.group)])
	if len(w.r.cautions) > 0 {
		moment = "" // "what do you taste when you try a forkful?" of what nobody should eat
	}
	switch {
	case strings.Contains(form, "{noun}") && q.noun == "":
		return "", false
	case strings.Contains(form, "{moment}") && moment == "":
		return "", false
	case (strings.Contains(form, "{word}") || strings.Contains(form, "{words}")) && q.quote == "":
		return "", false
	}
	var out strings.Builder
	for {
		before, rest, found := strings.Cut(form, "{")
		out.WriteString(before)
		if !found {
			return out.String(), true
		}
		var slot string
		slot, form, _ = strings.Cut(rest, "}")
		switch slot {
		case "words", "word":
			out.WriteString("“" + q.quote + "”")
		case "noun":
			out.WriteString(q.noun)
		case "dish":
			out.WriteString(title)
		case "moment":
			out.WriteString(moment)
		}
	}
}

// readable reports whether a child of eleven can read the question at a glance.
func readable(text string) bool {
	return lexicon.Words(text) <= lexicon.MaxQuestionWords && lexicon.Grade(text) <= lexicon.MaxGrade
}

// look returns the line that offers the word list as a place to look, where a
// question asks for what words of the list can say; else "". It counts the
// words typical of the dish, which stand first in the list: a number a writer
// can read through. For any food there are too many to count.
func (w *wording) look(q *wish) string {
	switch q.list {
	case "said", "vague", "detail":
	default:
		return ""
	}
	list := w.words.lex.Reading.Wordings["look"]["words"][q.group]
	if len(list) == 0 {
		return ""
	}
	typical, _ := w.r.brief.Dish.Typical(lexicon.Sense(q.group))
	count := len(typical)
	if count == 0 {
		return ""
	}
	for _, line := range list {
		if strings.Contains(line, "{count}") == (count <= mostToCount) {
			return strings.ReplaceAll(line, "{count}", strconv.Itoa(count))
		}
	}
	return strings.ReplaceAll(list[0], "{count}", strconv.Itoa(count))
}

// mostToCount is the most words that a line offers by their number.
const mostToCount = 60

// longestTitle is how many words what was cooked may have in a question.
const longestTitle = 5

// dish returns what was cooked as a question may call it, or "dish" where the
// title would put a describing word before the writer that the text lacks.
func (w *wording) dish() string {
	title := withinSentence(strings.Fields(w.r.Title))
	if title == "" || namesOccasion(title) || len(strings.Fields(title)) > longestTitle || strings.ContainsFunc(title, notInName) || !strings.ContainsFunc(title, unicode.IsLetter) || w.leaks(title) {
		return "dish"
	}
	return title
}

// namesOccasion reports whether a title names a day or a task, which nobody eats.
func namesOccasion(title string) bool {
	words := strings.Fields(title)
	switch strings.ToLower(words[len(words)-1]) {
	case "night", "day", "evening", "morning", "afternoon", "weekend", "week", "party", "practical", "homework", "task", "session", "lesson", "project", "feedback",
		"evaluation", "challenge", "club", "review", "cooking", "baking", "cook", "bake", "test", "trial", "attempt", "go", "kitchen", "notes", "write-up":
		return true
	}
	return false
}

// withinSentence writes a title as it stands within a sentence: in lower case
// but for words with a capital of their own. Those are the proper adjectives
// of cookery, and, where the title is written as a sentence, whatever has a
// capital behind its first word.
func withinSentence(words []string) string {
	sentence := false // some later word is in lower case, so a capital means something
	for _, word := range words[min(1, len(words)):] {
		sentence = sentence || word == strings.ToLower(word) && !joinsTitle(word)
	}
	for i, word := range words {
		lower := strings.ToLower(word)
		first, n := utf8.DecodeRuneInString(word)
		switch {
		case properAdjective(strings.TrimSuffix(strings.TrimRight(lower, ","), "-style")) && unicode.IsUpper(first):
			words[i] = word[:n] + lower[min(n, len(lower)):]
		case !sentence || i == 0:
			words[i] = lower
		}
	}
	return strings.Join(words, " ")
}

// joinsTitle reports whether the word is written small in any title.
func joinsTitle(word string) bool {
	switch word {
	case "and", "with", "in", "of", "the", "a", "an", "on", "for", "to", "from", "or", "&", "my", "n", "al", "alla", "de", "en", "la", "au":
		return true
	}
	return false
}

// properAdjective reports whether a word in titles of dishes keeps its capital.
func properAdjective(word string) bool {
	switch word {
	case "yorkshire", "lancashire", "cornish", "welsh", "scottish", "irish", "english", "british", "ulster", "french", "italian", "spanish", "portuguese", "greek",
		"turkish", "german", "austrian", "viennese", "swiss", "belgian", "dutch", "danish", "swedish", "norwegian", "finnish", "polish", "hungarian", "russian", "ukrainian",
		"romanian", "bulgarian", "indian", "punjabi", "bengali", "kashmiri", "goan", "pakistani", "thai", "chinese", "cantonese", "sichuan", "japanese", "korean",
		"vietnamese", "malaysian", "indonesian", "filipino", "singapore", "mexican", "american", "canadian", "brazilian", "argentinian", "peruvian", "jamaican",
		"caribbean", "cajun", "creole", "moroccan", "tunisian", "egyptian", "lebanese", "syrian", "persian", "iranian", "iraqi", "israeli", "afghan", "nigerian",
		"ghanaian", "ethiopian", "kenyan", "somali", "african", "asian", "european", "mediterranean", "victoria", "bakewell", "eccles", "chelsea", "caesar", "waldorf",
		"cumberland", "lincolnshire", "gloucester", "cheddar", "stilton", "wensleydale", "cheshire", "dundee", "battenberg", "madeira", "genoa", "dorset", "devon",
		"devonshire", "somerset", "norfolk", "staffordshire", "glamorgan", "cambridge", "manchester", "liverpool", "london", "northumbrian", "scotch", "christmas",
		"easter", "boston", "cullen", "shrewsbury", "arbroath", "selkirk", "aberdeen", "forfar", "balmoral", "grasmere", "banbury", "sussex", "kentish", "jersey", "shropshire", "florentine", "neapolitan", "sicilian", "roman":
		return true
	}
	return false
}

// notInName reports whether a mark has no place inside a question: the writer
// would read it as part of what is asked.
func notInName(r rune) bool {
	return !unicode.IsLetter(r) && !unicode.IsMark(r) && !unicode.IsDigit(r) && !strings.ContainsRune(" -'’&,", r)
}

// withoutQuote is a question without the writer's words in it.
func withoutQuote(text string) string {
	start, end := strings.Index(text, "“"), strings.LastIndex(text, "”")
	if start < 0 || end < start {
		return text
	}
	return text[:start] + "." + text[end:]
}

// leaks reports whether the words hold a sensory word or a judging one that
// the text lacks: then they would write for the writer.
func (w *wording) leaks(form string) bool {
	for _, word := range *w.words.telling.get(form, w.words.tellingWords) {
		if !w.owns(word) {
			return true
		}
	}
	return false
}

// owns reports whether a lower-case word stands in the text, as it is spelt or
// as it is meant.
func (w *wording) owns(word string) bool {
	if w.own == nil { // few questions hold a word for which it is asked
		w.own = map[string]bool{}
		for i := range w.r.sentences {
			for _, t := range w.r.sentences[i].tokens {
				w.own[t.norm] = true
				w.own[strings.ToLower(t.text)] = true
			}
		}
	}
	return w.own[word]
}

// tellingWords returns the words of a text that are sensory or judge, in lower
// case.
func (v *vocabulary) tellingWords(text string) []string {
	var out []string
	tokens := tokenizer{}.tokens(text)
	d := sensing{words: v}
	for i := range tokens {
		if c, ok := d.at(tokens, i); ok {
			for _, t := range tokens[c.from:c.to] {
				out = append(out, t.norm)
			}
		}
		if v.card(tokens[i].norm).judges {
			out = append(out, tokens[i].norm)
		}
	}
	return out
}

// hash returns a number that the text and a key decide, by FNV-1a.
func (w *wording) hash(key string) uint32 { return fnv1a(w.textHash, key) }
