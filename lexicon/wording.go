package lexicon

import (
	"fmt"
	"io/fs"
	"slices"
	"strings"

	"go.yaml.in/yaml/v3"
)

// Limits of a wording. The grade is that of Flesch and Kincaid, in years of
// school; a question for a child of eleven stays well below the one they are in.
const (
	MaxGrade         = 6  // school years
	MaxQuestionWords = 30 // the quoted words included
	longestQuote     = 8  // words that {words} may stand for
	fewestWordings   = 4  // of a list of questions or of praise
)

// wordingPlace is where a wording stands and so what it must keep to.
type wordingPlace struct {
	slots  []string // those it may have
	asks   bool     // it ends with its only question mark; others ask nothing
	fewest int      // wordings its list needs
}

// wordingTree lists the places of questions.yaml: the sections, under each its
// groups, and under each group its lists, in the order of the file.
func wordingTree() []wordingSection {
	tree := []wordingSection{}
	for _, role := range []string{"learner", "adult"} {
		s := wordingSection{name: role}
		for _, a := range areaNames() {
			said := []string{"{dish}"}
			if Sense(a).Known() {
				said = append(said, "{moment}")
			}
			lists := []wordingList{
				{"said", wordingPlace{said, true, fewestWordings}},
				{"vague", wordingPlace{[]string{"{word}", "{noun}", "{dish}"}, true, fewestWordings}},
				{"detail", wordingPlace{[]string{"{words}", "{dish}"}, true, fewestWordings}},
				{"reason", wordingPlace{[]string{"{words}", "{dish}"}, true, fewestWordings}},
			}
			if slices.Contains(stepAreas(), Area(a)) {
				lists = append(lists, wordingList{"step", wordingPlace{[]string{"{words}", "{dish}"}, true, fewestWordings}})
			}
			s.groups = append(s.groups, wordingGroup{a, lists})
		}
		s.groups = append(s.groups, wordingGroup{"whole", []wordingList{
			{"vague", wordingPlace{[]string{"{word}", "{noun}", "{dish}"}, true, fewestWordings}},
			{"work", wordingPlace{[]string{"{word}", "{dish}"}, true, fewestWordings}},
		}})
		tree = append(tree, s)
	}
	praise := wordingSection{name: "praise"}
	for _, step := range []string{"detail", "reason"} {
		g := wordingGroup{name: step}
		for _, a := range areaNames() {
			g.lists = append(g.lists, wordingList{a, wordingPlace{[]string{"{words}"}, false, fewestWordings}})
		}
		praise.groups = append(praise.groups, g)
	}
	danger, last, look := wordingSection{name: "danger"}, wordingSection{name: "last"}, wordingSection{name: "look"}
	for _, role := range []string{"learner", "adult"} {
		kinds := wordingGroup{name: role}
		for _, k := range CautionKinds() {
			kinds.lists = append(kinds.lists, wordingList{k, wordingPlace{[]string{"{words}", "{dish}"}, true, 3}})
		}
		for _, state := range dangerStates(role) {
			kinds.lists = append(kinds.lists, wordingList{state, wordingPlace{[]string{"{words}", "{dish}"}, true, 3}})
		}
		danger.groups = append(danger.groups, kinds)
		last.groups = append(last.groups, wordingGroup{role, []wordingList{
			{"planned", wordingPlace{[]string{"{words}", "{dish}"}, true, fewestWordings}},
		}})
	}
	places := wordingGroup{name: "words"}
	for _, sense := range senseNames() {
		places.lists = append(places.lists, wordingList{sense, wordingPlace{[]string{"{count}"}, false, 1}})
	}
	look.groups = append(look.groups, places)
	return append(tree, praise, danger, last, look)
}

// dangerStates lists how a danger may have ended by a text so that it is asked about
// in another way.
func dangerStates(role string) []string {
	if role == "adult" {
		return []string{"treated"} // what an adult advised is told
	}
	return []string{"treated", "planned"}
}

// stepAreas returns the areas that are asked about at a job of the writer's own,
// where the text does not speak of them.
func stepAreas() []Area { return []Area{Hygiene, Safety, Organisation, Aroma, Improvement} }

type wordingSection struct {
	name   string
	groups []wordingGroup
}

type wordingGroup struct {
	name  string
	lists []wordingList
}

type wordingList struct {
	name  string
	place wordingPlace
}

func senseNames() []string {
	var out []string
	for _, s := range Senses() {
		out = append(out, string(s))
	}
	return out
}

// wordingSource is reading/questions.yaml: parsed at once with all the others,
// but read strictly only when the word lists are known, for a wording may hold
// none of their words.
type wordingSource struct {
	source
	root *yaml.Node // nil when nothing of it can be read
}

func newWordingSource() *wordingSource {
	return &wordingSource{source: source{file: "reading/questions.yaml", problems: &Problems{}}}
}

func (w *wordingSource) parse(base fs.FS) error {
	data, err := fs.ReadFile(base, w.file)
	if err == nil {
		w.root = w.source.root(data)
	}
	return err
}

func (w *wordingSource) read(l *Lexicon) map[string]map[string]map[string][]string {
	if w.root == nil {
		return nil
	}
	return w.wordingFile(w.root, l, nil)
}

// wordingFile reads a tree of wordings and reports everything that is wrong
// with it. Below are the wordings it is laid over, list by list; with none the
// file must have every list. What is wrong is left out of what is returned.
func (s source) wordingFile(root *yaml.Node, lex *Lexicon, below map[string]map[string]map[string][]string) map[string]map[string]map[string][]string {
	out := map[string]map[string]map[string][]string{}
	for section, groups := range below {
		out[section] = map[string]map[string][]string{}
		for group, lists := range groups {
			out[section][group] = map[string][]string{}
			for list, wordings := range lists {
				out[section][group][list] = wordings
			}
		}
	}
	rule := wordingRule{describing: lex.describing(), lex: lex, judges: map[string]bool{}}
	tree := wordingTree()
	found := s.branch(root, "questions", names(tree, func(x wordingSection) string { return x.name }), below == nil)
	for _, section := range tree {
		at, ok := found[section.name]
		if !ok {
			continue
		}
		if out[section.name] == nil {
			out[section.name] = map[string]map[string][]string{}
		}
		seen := map[string]int{}
		groups := s.branch(at, section.name, names(section.groups, func(x wordingGroup) string { return x.name }), below == nil)
		for _, group := range section.groups {
			at, ok := groups[group.name]
			if !ok {
				continue
			}
			if out[section.name][group.name] == nil {
				out[section.name][group.name] = map[string][]string{}
			}
			what := group.name + " of " + section.name
			lists := s.branch(at, what, names(group.lists, func(x wordingList) string { return x.name }), below == nil)
			for _, list := range group.lists {
				if at, ok := lists[list.name]; ok {
					out[section.name][group.name][list.name] = s.wordingsOf(at, list.name+" of "+what, list.place, rule, seen)
				}
			}
		}
	}
	return out
}

func names[T any](list []T, name func(T) string) []string {
	var out []string
	for _, x := range list {
		out = append(out, name(x))
	}
	return out
}

// branch returns the values under a node by their names, and reports names
// that do not belong there and, where all must be there, those that are missing.
func (s source) branch(n *yaml.Node, what string, allowed []string, all bool) map[string]*yaml.Node {
	out := map[string]*yaml.Node{}
	s.each(n, what, func(key string, k, v *yaml.Node) {
		switch {
		case !slices.Contains(allowed, key):
			s.unknownKey(k, what, allowed)
		case v.Tag == "!!null":
			s.problem(k, "%s of %s is empty; write what belongs under it, or take the row out", key, what)
			out[key] = v
		default:
			out[key] = v
		}
	})
	for _, name := range allowed {
		if out[name] == nil && all && (n.Kind == yaml.MappingNode || n.Tag == "!!null") {
			s.problem(n, "%s has no %s; add a row \"%s:\" with its wordings", what, name, name)
		}
	}
	return out
}

// wordingsOf reads one list of wordings. Seen holds those of the section that
// came before, by line.
func (s source) wordingsOf(n *yaml.Node, what string, place wordingPlace, rule wordingRule, seen map[string]int) []string {
	var out []string
	for _, item := range s.items(n, what) {
		text := s.text(item, "each wording of "+what)
		if text == "" {
			continue
		}
		if line, twice := seen[text]; twice {
			s.problem(item, "this wording stands in line %d already; word one of the two in another way", line)
			continue
		}
		seen[text] = item.Line
		complaints := rule.wrong(text, place)
		for _, c := range complaints {
			s.problem(item, "%s", c)
		}
		if len(complaints) == 0 {
			out = append(out, text)
		}
	}
	if have := len(n.Content); n.Kind == yaml.SequenceNode && have < place.fewest {
		s.problem(n, "%s has %d of the %d wordings it needs; add %d more", what, have, place.fewest, place.fewest-have)
	}
	return out
}

// wordingRule checks single wordings.
type wordingRule struct {
	lex        *Lexicon
	describing map[string][]string // see Lexicon.describing
	judges     map[string]bool     // the words met so far, and whether they judge
}

func (r wordingRule) isVague(word string) bool {
	judges, met := r.judges[word]
	if !met {
		judges = r.lex.Reading.IsVague(word)
		r.judges[word] = judges
	}
	return judges
}

// wrong says what is wrong with a wording and how to mend it, one line each.
func (r wordingRule) wrong(text string, place wordingPlace) []string {
	var out []string
	complain := func(format string, args ...any) { out = append(out, fmt.Sprintf(format, args...)) }
	slots, rest, ok := slotsOf(text)
	if !ok {
		complain("a curly bracket stands alone; write a slot as in {dish}")
		return out
	}
	for _, slot := range slots {
		if slices.Contains(place.slots, slot) {
			continue
		}
		mend := "use " + strings.Join(place.slots, ", ")
		if near := Nearest(slot, place.slots, 1); len(near) > 0 {
			mend = fmt.Sprintf("did you mean %s?", near[0])
		}
		complain("there is no slot %s here; %s", slot, mend)
	}
	if len(out) > 0 {
		return out
	}
	marks := strings.Count(text, "?")
	switch {
	case place.asks && marks == 0:
		complain("the question has no question mark; end it with one")
	case place.asks && (marks > 1 || !strings.HasSuffix(text, "?")):
		complain("a question asks one thing; end it with its only question mark")
	case !place.asks && marks > 0:
		complain("this line tells and does not ask; take out the question mark")
	}
	if verb := agreeing(text); verb != "" {
		complain("what was cooked may be one or many, so %q is right for one of them only; use a verb that fits both, such as \"got\"", verb)
	}
	if n := len(wordsOf(filled(text, longestQuote))); n > MaxQuestionWords {
		complain("with a quote of %d words it has %d words; shorten it to %d", longestQuote, n, MaxQuestionWords)
	}
	if grade := Grade(filled(text, longestQuote/2)); grade > MaxGrade {
		complain("it is hard to read (grade %.1f, the most is %d); use shorter words and sentences", grade, MaxGrade)
	}
	for _, w := range r.telling(rest) {
		complain("%q would put words into the writer's mouth; ask without it", w)
	}
	return out
}

// agreeing returns a verb behind a slot for food that fits only one thing or
// only many ("{dish} was"), or "".
func agreeing(text string) string {
	for _, slot := range []string{"{dish}", "{noun}"} {
		for _, after := range strings.Split(text, slot)[1:] {
			words := wordsOf(after)
			if len(words) == 0 || !strings.HasPrefix(after, " ") {
				continue // a mark ends it there
			}
			switch verb := strings.ToLower(words[0]); verb {
			case "is", "was", "has", "are", "were", "isn't", "wasn't", "aren't", "weren't":
				return verb
			}
		}
	}
	return ""
}

// slotsOf returns the slots of a wording and the wording with a bar in the
// place of each. It fails on a bracket that stands alone.
func slotsOf(text string) (slots []string, rest string, ok bool) {
	var b strings.Builder
	for {
		open := strings.IndexAny(text, "{}")
		if open < 0 {
			b.WriteString(text)
			return slots, b.String(), true
		}
		end := strings.IndexByte(text[open:], '}')
		if text[open] == '}' || end < 0 || strings.IndexByte(text[open+1:open+end], '{') >= 0 {
			return nil, "", false
		}
		slots = append(slots, text[open:open+end+1])
		b.WriteString(text[:open] + "|")
		text = text[open+end+1:]
	}
}

// filled puts plain words in the place of the slots, a quote of so many.
func filled(text string, quote int) string {
	for _, slot := range []struct{ name, words string }{
		{"{words}", strings.TrimSpace(strings.Repeat("stir ", quote))}, {"{word}", "lovely"}, {"{noun}", "crust"},
		{"{dish}", "pea soup"}, {"{moment}", "when you lift the lid"}, {"{count}", "40"},
	} {
		text = strings.ReplaceAll(text, slot.name, slot.words)
	}
	return text
}

// telling returns the words of a text that judge or describe food as sensed.
func (r wordingRule) telling(text string) []string {
	var out []string
	words := wordsOf(strings.ToLower(strings.ReplaceAll(text, "|", " . ")))
	for i, w := range words {
		if r.isVague(w) {
			out = append(out, w)
			continue
		}
		for _, form := range r.describing[w] {
			parts := strings.Fields(form)
			if i+len(parts) <= len(words) && slices.Equal(words[i:i+len(parts)], parts) {
				out = append(out, form)
				break
			}
		}
	}
	return out
}

// describing returns every form of every word of the lists by its first word.
func (l *Lexicon) describing() map[string][]string {
	out := map[string][]string{}
	add := func(form string) {
		words := wordsOf(strings.ToLower(form))
		if len(words) == 0 {
			return
		}
		if form = strings.Join(words, " "); !slices.Contains(out[words[0]], form) {
			out[words[0]] = append(out[words[0]], form)
		}
	}
	for _, w := range l.all {
		add(w.Word)
		for _, f := range w.Forms {
			add(f)
		}
		for _, f := range w.Graded() {
			if l.Reading.Nouns.Kind(f) == NoKind {
				add(f)
			}
		}
	}
	return out
}
