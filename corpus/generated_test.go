package corpus

import (
	"fmt"
	"math/rand/v2"
	"strings"

	"saywhy/analyze"
)

// invented writes texts of the kind learners write, by putting clauses
// together. They are for tests of quantity: nothing is measured on them but
// counts, time and memory.
type invented struct{ *rand.Rand }

func newInvented(seed uint64) invented { return invented{rand.New(rand.NewPCG(seed, 1))} }

func (in invented) one(list ...string) string { return list[in.IntN(len(list))] }

// text returns a text of at least the number of words.
func (in invented) text(words int) string {
	var b strings.Builder
	for n := 0; n < words; {
		s := in.sentence()
		n += len(strings.Fields(s))
		b.WriteString(s)
		b.WriteString(in.one(" ", " ", " ", "\n"))
	}
	return strings.TrimSpace(b.String())
}

func (in invented) sentence() string {
	s := in.clause()
	switch in.IntN(5) {
	case 0:
		s = in.one("Before that", "After a while", "At first", "In the end", "This time", "When the timer rang", "Halfway through", "To begin with", "Later on", "Just before serving") + " " + s
	case 1:
		s += " " + in.one("because", "so", "but", "and then", "although", "while", "since", "as") + " " + in.clause()
	case 2:
		s += ", " + in.one("and", "but", "so", "which meant that", "even though") + " " + in.clause() + " " + in.one("as well", "in the end", "after all", "by then", "anyway", "a second time", "too")
	case 3:
		s = in.one("I think", "My brother said", "I noticed", "Mum told me", "It turned out", "I could tell", "My aunt reckoned", "I was glad") + " " + s
	}
	s = in.varied(s)
	return strings.ToUpper(s[:1]) + s[1:] + in.one(".", ".", ".", "!", "")
}

// varied puts other little words into a sentence, as no two people tell a thing
// in the same ones.
func (in invented) varied(s string) string {
	words := strings.Fields(s)
	for i, w := range words {
		switch {
		case w == "the" && in.IntN(5) < 2:
			words[i] = in.one("my", "our", "that", "all the", "this", "mum's")
		case w == "I" && in.IntN(5) < 2:
			words[i] += " " + in.one("just", "quickly", "then", "carefully", "also", "nearly", "finally", "only", "always")
		case w == "was" && in.IntN(5) < 2:
			words[i] += " " + in.one("quite", "rather", "still", "a bit", "more or less", "really", "suddenly")
		case w == "and" && in.IntN(5) < 2:
			words[i] += " " + in.one("also", "then", "of course", "at last", "oddly")
		case len(w) > 4 && in.IntN(14) == 0:
			words[i] += " " + in.one("I think", "at that point", "that day", "luckily", "as usual", "somehow")
		}
	}
	return strings.Join(words, " ")
}

// clause is a clause, every second with something more said of it.
func (in invented) clause() string {
	c := in.plainClause()
	if in.IntN(2) == 0 {
		return c
	}
	who := in.one("my mum", "dad", "grandma", "my sister", "my cousin", "the neighbours", "nobody", "the cat", "our lodger", "Aunt Bea")
	what := in.one("the phone", "a bus", "the washing", "my homework", "the kettle", "a football match", "the back door", "rain", "the doorbell", "a jigsaw")
	tail := in.one(
		"with "+what+" on my mind", "just as "+who+" walked in", "the moment "+what+" got in the way", "exactly like in the photo",
		"which surprised "+who, "more than I had hoped", "less than last week", "for no reason I can see", "and "+who+" laughed",
		"where the draught comes in", "next to "+what, "until "+who+" called", "in spite of "+what, "as far as the second mark",
		"without any help from "+who, "long before teatime", "with a bit of luck", "apart from one corner", "by the light of the oven",
		"to the sound of "+what, "after all that fuss about "+what, "because of "+what, "before "+who+" could stop me", "almost by accident",
		"for the very first time", "on the count of three", "right to the rim", "all down one side", "although "+who+" had warned me", "as neatly as I could",
	)
	return c + " " + tail
}

func (in invented) plainClause() string {
	food := func() string {
		return in.one("onions", "leeks", "carrots", "lentils", "apples", "potatoes", "flour", "butter", "custard", "stock", "cod", "crumble topping", "dough", "celery", "mushrooms", "cream", "yoghurt", "spinach", "chickpeas", "parsley", "cheese", "cinnamon", "raisins", "milk", "eggs")
	}
	quality := func() string {
		return in.one("golden", "lumpy", "silky", "crumbly", "sharp", "sweet", "watery", "thick", "pale", "crisp", "chewy", "smoky", "buttery", "grainy", "sticky", "bitter", "dry", "fluffy", "peppery", "tangy", "flaky", "hard")
	}
	tool := func() string {
		return in.one("wooden spoon", "balloon whisk", "small knife", "box grater", "rolling pin", "big saucepan", "blue bowl", "peeler", "sieve", "palette knife", "ladle", "hand blender", "baking tray", "pastry brush", "colander", "measuring jug")
	}
	person := func() string {
		return in.one("my mum", "dad", "grandma", "my little sister", "my cousin", "our neighbour", "my uncle", "my best friend", "nan", "my stepdad")
	}
	number := func() string {
		return in.one("three", "five", "eight", "ten", "twelve", "fifteen", "twenty", "thirty", "forty")
	}
	manner := func() string {
		return in.one("slowly", "in a hurry", "with both hands", "one at a time", "on a damp cloth", "a little at a time", "without looking", "over the sink", "on the lowest heat", "with my sleeves rolled up", "in thin slices", "the way the video showed")
	}
	switch in.IntN(58) {
	case 0:
		return fmt.Sprintf("I chopped the %s %s", food(), manner())
	case 1:
		return fmt.Sprintf("the %s went %s after %s minutes", food(), quality(), number())
	case 2:
		return fmt.Sprintf("I stirred the %s with the %s %s", food(), tool(), manner())
	case 3:
		return fmt.Sprintf("%s found it too %s near the edge", person(), quality())
	case 4:
		return fmt.Sprintf("the kitchen smelt of %s and hot %s", food(), food())
	case 5:
		return fmt.Sprintf("it came out %s on top and %s inside", quality(), quality())
	case 6:
		return fmt.Sprintf("I had left the %s beside the %s", tool(), food())
	case 7:
		return fmt.Sprintf("%s held the %s for me", person(), tool())
	case 8:
		return fmt.Sprintf("I turned the oven down by %s degrees", number())
	case 9:
		return fmt.Sprintf("the %s stuck to the bottom of the pan", food())
	case 10:
		return fmt.Sprintf("I weighed out %s grams of %s %s", number(), food(), manner())
	case 11:
		return fmt.Sprintf("you could hear the %s bubbling from the hall", food())
	case 12:
		return fmt.Sprintf("the middle felt %s when I pressed it with the %s", quality(), tool())
	case 13:
		return fmt.Sprintf("I rinsed the %s and the %s %s", tool(), food(), manner())
	case 14:
		return fmt.Sprintf("%s asked why the %s looked so %s", person(), food(), quality())
	case 15:
		return fmt.Sprintf("next time I will add the %s before the %s", food(), food())
	case 16:
		return fmt.Sprintf("I waited %s minutes for the %s to cool", number(), food())
	case 17:
		return fmt.Sprintf("the first spoonful was %s but the last was %s", quality(), quality())
	case 18:
		return fmt.Sprintf("I wiped the worktop twice and put the %s away", tool())
	case 19:
		return fmt.Sprintf("it needed more %s than the card said", food())
	case 20:
		return fmt.Sprintf("I swapped the %s for some %s from the freezer", food(), food())
	case 21:
		return fmt.Sprintf("a %s crust had formed round the %s", quality(), food())
	case 22:
		return fmt.Sprintf("%s and I shared the %s jobs between us", person(), number())
	case 23:
		return fmt.Sprintf("I tasted the %s %s and it was %s", food(), manner(), quality())
	case 24:
		return fmt.Sprintf("the %s slid off the %s onto the floor", food(), tool())
	case 25:
		return fmt.Sprintf("I kept the handle of the %s turned inwards", tool())
	case 26:
		return fmt.Sprintf("we ate it %s with %s", manner(), person())
	case 27:
		return fmt.Sprintf("steam from the %s fogged up the window", food())
	case 28:
		return fmt.Sprintf("I only used half of the %s", food())
	case 29:
		return fmt.Sprintf("the skin on the %s wrinkled as it cooled", food())
	case 30:
		return fmt.Sprintf("%s timed me with an old stopwatch", person())
	case 31:
		return fmt.Sprintf("I cracked the eggs into a cup first and then into the %s", tool())
	case 32:
		return fmt.Sprintf("there was hardly any %s left for the second batch", food())
	case 33:
		return fmt.Sprintf("the lid rattled until I moved the %s across", tool())
	case 34:
		return fmt.Sprintf("I could not find the %s anywhere so I borrowed one", tool())
	case 35:
		return fmt.Sprintf("a lump of %s had sunk right down", food())
	case 36:
		return fmt.Sprintf("we counted %s bubbles in one slice", number())
	case 37:
		return fmt.Sprintf("the radio was on and I forgot the %s for a moment", food())
	case 38:
		return fmt.Sprintf("%s drew a line on the jug where the %s should come to", person(), food())
	case 39:
		return fmt.Sprintf("my arm ached from beating the %s", food())
	case 40:
		return fmt.Sprintf("the recipe wanted it %s but ours was more %s", quality(), quality())
	case 41:
		return fmt.Sprintf("I dabbed the %s dry with kitchen paper", food())
	case 42:
		return fmt.Sprintf("the smell reminded %s of a holiday by the sea", person())
	case 43:
		return fmt.Sprintf("I filled the %s only to the second line", tool())
	case 44:
		return fmt.Sprintf("the edges curled up and turned %s", quality())
	case 45:
		return fmt.Sprintf("I set the table while the %s rested", food())
	case 46:
		return fmt.Sprintf("something %s got caught between my teeth", quality())
	case 47:
		return fmt.Sprintf("the bowl slipped and some %s splashed my apron", food())
	case 48:
		return fmt.Sprintf("I checked the date on the %s before I opened it", food())
	case 49:
		return fmt.Sprintf("the dog waited under the table for the %s", food())
	case 50:
		return fmt.Sprintf("%s poured and I held the %s steady", person(), tool())
	case 51:
		return fmt.Sprintf("I made a hollow in the %s with my thumb", food())
	case 52:
		return fmt.Sprintf("the crumbs were %s and got everywhere", quality())
	case 53:
		return fmt.Sprintf("it took us %s tries to flip it out of the tin", number())
	case 54:
		return fmt.Sprintf("I put the %s at the back of the fridge, low down", food())
	case 55:
		return fmt.Sprintf("when I cut it the %s ran out", food())
	case 56:
		return fmt.Sprintf("the second tray looked far more %s than the first", quality())
	}
	return fmt.Sprintf("the %s was still %s at the %s minute check", food(), quality(), number())
}

// class returns texts of learners over sessions, in the order of the sessions.
func (in invented) class(learners, sessions, words int) []Evaluation {
	dishes := []string{"lentil soup", "soda bread", "vegetable curry", "baked custard", "fish pie", "apple crumble"}
	var out []Evaluation
	for s := range sessions {
		for l := range learners {
			out = append(out, Evaluation{
				Learner: fmt.Sprintf("learner %d", l+1), Session: fmt.Sprintf("%02d", s+1), Dish: dishes[s%len(dishes)],
				Role: analyze.Learner, Text: in.text(words), Source: fmt.Sprintf("learner %d/%02d.txt", l+1, s+1),
			})
		}
	}
	return out
}

// copied plants passages of from words on in other texts and returns the pairs.
// Every second has about one word in twelve changed.
func (in invented) copied(texts []Evaluation, n, from, to int) map[[2]int]bool {
	pairs := map[[2]int]bool{}
	used := map[int]bool{}
	for len(pairs) < n {
		a, b := in.IntN(len(texts)), in.IntN(len(texts))
		if a == b || used[a] || used[b] || texts[a].Learner == texts[b].Learner && texts[a].Session == texts[b].Session {
			continue
		}
		words := strings.Fields(texts[a].Text)
		length := min(len(words)-1, from+in.IntN(to-from))
		at := in.IntN(len(words) - length)
		passage := append([]string(nil), words[at:at+length]...)
		if len(pairs)%2 == 1 {
			for i := 5 + in.IntN(5); i < len(passage); i += 10 + in.IntN(5) {
				passage[i] = in.one("then", "really", "some", "later", "that", "mostly")
			}
		}
		into := strings.Fields(texts[b].Text)
		k := in.IntN(len(into))
		texts[b].Text = strings.Join(into[:k], " ") + " " + strings.Join(passage, " ") + " " + strings.Join(into[k:], " ")
		used[a], used[b] = true, true
		pairs[[2]int{min(a, b), max(a, b)}] = true
	}
	return pairs
}
