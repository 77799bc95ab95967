package analyze

import (
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// BenchmarkWorst reads texts made to cost the most, each beside ordinary
// evaluations of as many bytes, in turns, so that both meet the same machine.
// "x-ordinary" is the fastest reading of the one over the fastest of the other;
// it is meant to stay below 5.
//
//	go test ./analyze -run '^$' -bench Worst -benchtime 5x -cpu 1
func BenchmarkWorst(b *testing.B) {
	a, lex := shared(b)
	brief := Brief{Dish: lex.General(), Questions: 3}
	for _, words := range []int{5_000, 50_000} {
		ordinary := ordinaryText(b, words)
		for _, s := range shapes(b, ordinary) {
			b.Run(fmt.Sprintf("%d words/%s", words, s.name), func(b *testing.B) {
				var plain, odd time.Duration
				for b.Loop() {
					plain = quicker(plain, func() { a.Read(Input{Text: ordinary}, brief) })
					odd = quicker(odd, func() { a.Read(Input{Text: s.text}, brief) })
				}
				b.ReportMetric(odd.Seconds()/plain.Seconds(), "x-ordinary")
				b.ReportMetric(0, "ns/op") // of both together, which tells nothing
			})
		}
	}
}

// BenchmarkWorstComparison compares each of these texts with a draft of it in
// which other letters make other words, as BenchmarkWorst does, beside the same
// of ordinary evaluations.
func BenchmarkWorstComparison(b *testing.B) {
	a, lex := shared(b)
	brief := Brief{Dish: lex.General(), Questions: 3}
	ordinary := ordinaryText(b, 10_000)
	changed := strings.NewReplacer("c", "z", "a", "o")
	drafts := func(text string) (before, after *Report) {
		return a.Read(Input{Text: text}, brief), a.Read(Input{Text: changed.Replace(text)}, brief)
	}
	before, after := drafts(ordinary)
	for _, s := range shapes(b, ordinary) {
		b.Run(s.name, func(b *testing.B) {
			oddBefore, oddAfter := drafts(s.text)
			var plain, odd time.Duration
			for b.Loop() {
				plain = quicker(plain, func() { Compare(before, after) })
				odd = quicker(odd, func() { Compare(oddBefore, oddAfter) })
			}
			b.ReportMetric(odd.Seconds()/plain.Seconds(), "x-ordinary")
			b.ReportMetric(0, "ns/op")
		})
	}
}

// quicker runs f and returns the shorter of its time and an earlier one.
func quicker(before time.Duration, f func()) time.Duration {
	start := time.Now()
	f()
	took := time.Since(start)
	if before > 0 {
		return min(before, took)
	}
	return took
}

// ordinaryText is so many words of the labelled evaluations, over and over.
func ordinaryText(tb testing.TB, words int) string {
	tb.Helper()
	texts, _, _ := evaluations(tb)
	var b strings.Builder
	for n := 0; n < words; {
		for _, t := range texts {
			if n >= words {
				break
			}
			b.WriteString(t.Text + "\n")
			n += len(strings.Fields(t.Text))
		}
	}
	return b.String()
}

type shape struct{ name, text string }

// shapes are texts of odd kinds, each about as long as the ordinary one.
func shapes(tb testing.TB, ordinary string) []shape {
	tb.Helper()
	_, lex := shared(tb)
	size := len(ordinary)
	random := rand.New(rand.NewPCG(1, 2))
	fill := func(next func(i int) string) string {
		var b strings.Builder
		for i := 0; b.Len() < size; i++ {
			b.WriteString(next(i))
		}
		return b.String()
	}
	of := func(units ...string) string {
		return fill(func(i int) string { return units[i%len(units)] })
	}
	var sensory []string
	for _, w := range lex.Words() {
		sensory = append(sensory, w.Word)
	}
	require.Greater(tb, len(sensory), 100)
	slip := func(w string) string { // two letters in the wrong order
		if len(w) < 4 {
			return w + "q"
		}
		i := 1 + random.IntN(len(w)-3)
		return w[:i] + w[i+1:i+2] + w[i:i+1] + w[i+2:]
	}
	letters := func(n int) string {
		out := make([]byte, n)
		for i := range out {
			out[i] = 'a' + byte(random.IntN(26))
		}
		return string(out)
	}
	oneSentence := strings.NewReplacer(".", "", "!", "", "?", "", "\n", " ", "*", "", "#", "", "- ", "").Replace(strings.ToLower(ordinary))
	inWords := strings.Fields(oneSentence)
	connectives := []string{"because", "so", "since", "as", "so that", "in order to", "due to", "by", "which meant", "that is why", "therefore", "otherwise", "until", "when", "if", "to stop it", "with", "without", "using", "for"}
	return []shape{
		{"one sentence", oneSentence},
		{"one sentence of capitals", strings.ToUpper(oneSentence)},
		{"a line a word", strings.Join(inWords, "\n")},
		{"a sentence a word", strings.Join(inWords, ". ")},
		{"sentences of one letter", of("A. ", "B. ", "I. ", "X. ")},
		{"lines of one letter", of("a\n", "b\n", "I\n")},
		{"vague words", of("nice ", "good ", "great ", "lovely ", "amazing ", "ok ", "bad ", "fine ", "tasty ", "weird ")},
		{"vague sentences", of("It was nice. ", "It was really good. ", "The taste was great. ")},
		{"slips of sensory words", fill(func(i int) string { return slip(sensory[i%len(sensory)]) + " " })},
		{"slips of sensory words, a sentence each", fill(func(i int) string { return "It was " + slip(sensory[i%len(sensory)]) + ". " })},
		{"slips of ordinary words", fill(func(i int) string { return slip(inWords[i%len(inWords)]) + " " })},
		{"words that do not exist", fill(func(int) string { return letters(4+random.IntN(9)) + " " })},
		{"long words that do not exist", fill(func(int) string { return letters(40) + " " })},
		{"words of two letters", fill(func(int) string { return letters(2) + " " })},
		{"words that end in ing", fill(func(int) string { return letters(3) + "ing " })},
		{"sensory words", fill(func(i int) string { return sensory[i%len(sensory)] + " " })},
		{"sensory words with commas", fill(func(i int) string { return sensory[i%len(sensory)] + ", " })},
		{"sensory words with and", fill(func(i int) string { return sensory[i%len(sensory)] + " and " })},
		{"one sensory word", of("crisp ")},
		{"one sensory word, a sentence each", of("It was crisp. ")},
		{"likenesses", of("like a wet sponge ", "as dry as dust ")},
		{"denied", of("not crisp ", "never dry ")},
		{"lists in lists", fill(func(i int) string { return strings.Repeat("  ", i%50) + "- crisp\n" })},
		{"numbered lists", fill(func(i int) string { return fmt.Sprintf("%d. I mixed it\n", i+1) })},
		{"numbers in numbers", fill(func(i int) string { return strings.Repeat("1.", 1+i%30) + " ok\n" })},
		{"bullets", of("- ")},
		{"headings", of("# Taste\n", "## What I did\n", "Appearance:\n", "NEXT TIME\n")},
		{"commas", of(", ")},
		{"commas without blanks", of(",")},
		{"marks of all kinds", of("?", "!", ". ", ",", ";", ":", " - ", "(", ")", "\"", "'", "…")},
		{"full stops", of(".")},
		{"brackets", of("(")},
		{"brackets round words", of("(crisp) ")},
		{"quotation marks round words", of("\"crisp\" ", "'soft' ", "“dry” ")},
		{"apostrophes", of("isn't ", "its ", "it's ", "dont ", "o' ")},
		{"and", of("and ")},
		{"the", of("the ")},
		{"it was", of("it was ")},
		{"I", of("I ")},
		{"connectives", fill(func(i int) string { return connectives[i%len(connectives)] + " " })},
		{"connectives with clauses", fill(func(i int) string { return connectives[i%len(connectives)] + " it was crisp " })},
		{"because it was", of("because it was crisp ")},
		{"and it went", of("and it went soggy ")},
		{"to with verbs", of("to stir ", "to keep it soft ")},
		{"plans", of("Next time I would bake it longer because it was pale. ")},
		{"dangers", of("The chicken was raw in the middle and we ate it. ", "I left the cooked rice out overnight. ", "I cut my finger with the knife. ")},
		{"dangers in one sentence", of("the chicken was raw in the middle and we ate it and ")},
		{"temperatures", of("62 °C ", "180C ", "75 degrees ", "gas mark 6 ")},
		{"temperatures of a probe", "The probe in the chicken read " + of("62 and ", "75 and ")},
		{"times and amounts", of("2 hours ", "30 mins ", "250g ", "1/2 tsp ", "3-4 ")},
		{"digits", of("1234567890 ")},
		{"one number", of("1")},
		{"allergens", of("milk ", "egg ", "nuts ", "wheat ", "sesame ", "fish ")},
		{"what was done for safety", of("I washed my hands so that no germs got in. ", "I used oven gloves. ")},
		{"the same long sentence", of("I tied my hair back so that none fell in the crisp crust, and then I stirred the sauce slowly because it was lumpy. ")},
		{"one word", of("a")},
		{"one word with hyphens", of("soft-")},
		{"words with hyphens", of("soft-and-crisp ")},
		{"words of a thousand letters", of(strings.Repeat("crumble", 143) + " ")},
		{"emoji", of("🍲", "👩\u200d🍳", "❤️")},
		{"emoji with words", of("yum 🍲 ", "hot 🔥 ")},
		{"combining marks", of("e\u0301\u0323")},
		{"mixed scripts", of("вкусно ", "おいしい ", "لذيذ ", "स्वादिष्ट ", "好吃 ", "γλυκό ", "crisp ")},
		{"no blanks in Chinese", of("好吃的汤")},
		{"blanks", of(" ")},
		{"empty lines", of("\n")},
		{"addresses", of("https://example.org/a/b?c=d&e=f ")},
		{"bad bytes", of("\xff")},
		{"NUL bytes", of("\x00")},
	}
}
