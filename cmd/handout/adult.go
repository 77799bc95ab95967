package handout

import (
	"slices"
	"strings"

	"saywhy/lexicon"
)

// What the sheet says to everyone; the rest of it comes from the dish type.
const (
	SheetLead = "Jot down what you notice, when you notice it. Beside it: what made it so?"
	WordsLead = "Take a word only if it is what you noticed."
	TasteLead = "Taste it when it is cooked and ready to serve, never before."
)

// SheetWatch is one thing for the adult to watch: what to ask oneself, and the
// hazards of the dish that belong to it.
type SheetWatch struct {
	Area    lexicon.Area
	Ask     string
	Hazards []lexicon.Hazard
}

// SheetNote is a usual caution.
type SheetNote struct{ Name, Text string }

func watches(lex *lexicon.Lexicon, dish lexicon.Dish) []SheetWatch {
	hands := lexicon.Hazard{Name: "hands", Area: lexicon.Hygiene, Watch: "20 seconds with soap, before and after"}
	return []SheetWatch{
		{lexicon.Safety, "What did they do so that nobody was hurt?", lex.Reading.HazardsOf(dish, lexicon.Safety)},
		{lexicon.Hygiene, "What did they do so that nobody falls ill?", append([]lexicon.Hazard{hands}, lex.Reading.HazardsOf(dish, lexicon.Hygiene)...)},
		{lexicon.Organisation, "What was ready before the cooking began? What was cleared on the way?", nil},
		{lexicon.Independence, "What did they do with no help? Where did they ask, and how did you help?", nil},
	}
}

// tasteTest is what the adult writes at the table: appearance and a suggestion,
// aroma, taste and texture.
func tasteTest() []string {
	return []string{
		"What do you see?",
		"One suggestion for how it looks:",
		"What do you smell?",
		"What do you taste, first and last?",
		"How does it feel as you bite and chew?",
	}
}

func notes(dish lexicon.Dish, watched []SheetWatch) []SheetNote {
	var out []SheetNote
	if len(dish.Allergens) > 0 {
		out = append(out, SheetNote{"Allergens often in it", strings.Join(dish.Allergens, ", ") + ". Read every label and ask each eater."})
	}
	return append(out,
		SheetNote{"Burn or scald", "20 minutes under cool running water, no ice, butter or cream."},
		SheetNote{"Guidance", strings.Join(guidance(watched), ". ") + ". Local rules and the responsible adult come first."})
}

// guidance returns who publishes guidance on what is watched, and on what,
// those of one publisher together. What holds for every dish comes with it.
func guidance(watched []SheetWatch) []string {
	sources := []string{"Food Standards Agency, allergens"}
	for _, w := range watched {
		for _, h := range w.Hazards {
			sources = append(sources, h.Source)
		}
	}
	var who []string
	on := map[string][]string{}
	for _, source := range append(sources, "British Burn Association, first aid") {
		name, what, _ := strings.Cut(source, ", ")
		if name == "" || slices.Contains(on[name], what) {
			continue
		}
		if len(on[name]) == 0 {
			who = append(who, name)
		}
		on[name] = append(on[name], what)
	}
	for i, name := range who {
		who[i] = name + ": " + strings.Join(on[name], ", ")
	}
	return who
}
