package analyze

import (
	"bytes"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// TestWorstInputsFinish reads texts made to cost the most: what no writer
// writes but a stuck key, a paste or an attacker does. They finish, and the
// promises hold for them too. Nothing asserts the time; -v logs it.
func TestWorstInputsFinish(t *testing.T) {
	a, lex := shared(t)
	type worst struct{ name, text string }
	inputs := []worst{
		{"10,000 exclamation marks", strings.Repeat("!", 10_000)},
		{"10,000 exclamation marks behind words", "It rose" + strings.Repeat("!", 10_000)},
		{"10,000 exclamation marks with spaces", strings.Repeat("! ", 10_000)},
		{"20,000 straight quotes", strings.Repeat(`"`, 20_000)},
		{"20,000 curly quotes", strings.Repeat("“", 20_000)},
		{"20,000 apostrophes", strings.Repeat("'", 20_000)},
		{"20,000 brackets opened", strings.Repeat("(", 20_000)},
		{"20,000 brackets closed behind a full stop", "Thin." + strings.Repeat(")", 20_000) + " Thick."},
		{"20,000 full stops and closing quotes", strings.Repeat(`."`, 20_000)},
		{"because 20,000 times", strings.Repeat("because ", 20_000)},
		{"a 50,000 times", strings.Repeat("a ", 50_000)},
		{"one word of 1 MB", strings.Repeat("a", 1<<20)},
		{"one word of 1 MB that ends", strings.Repeat("crumble", 150_000) + "."},
		{"one word of 1 MB with hyphens", strings.Repeat("soft-", 210_000)},
		{"one word of 1 MB with apostrophes", strings.Repeat("n't", 350_000)},
		{"digits and points of 1 MB", strings.Repeat("1.", 520_000)},
		{"1 MB of blanks", strings.Repeat(" ", 1<<20)},
		{"100,000 line ends", strings.Repeat("\n", 100_000)},
		{"50,000 bullets", strings.Repeat("- ", 50_000)},
		{"50,000 bullets on lines", strings.Repeat("-\n", 50_000)},
		{"20,000 lines of a word", strings.Repeat("crisp\n", 20_000)},
		{"20,000 lines that hang", strings.Repeat("the\n", 20_000)},
		{"50,000 emoji", strings.Repeat("🍲", 50_000)},
		{"20,000 emoji with joiners", strings.Repeat("👩\u200d🍳 ", 20_000)},
		{"100,000 combining marks", "e" + strings.Repeat("\u0301", 100_000)},
		{"200,000 bad bytes", strings.Repeat("\xff", 200_000)},
		{"100,000 NUL bytes", strings.Repeat("\x00", 100_000)},
		{"20,000 sensory words", strings.Repeat("crisp ", 20_000)},
		{"20,000 judging words", strings.Repeat("nice ", 20_000)},
		{"10,000 sensory words with and", strings.Repeat("crisp and ", 10_000)},
		{"5,000 short sentences", strings.Repeat("It was nice. ", 5_000)},
		{"5,000 full sentences", strings.Repeat("I tied my hair back so that none fell in the crisp crust. ", 5_000)},
		{"10,000 probe readings in a sentence", "The probe in the chicken read " + strings.Repeat("62 and ", 10_000)},
		{"10,000 denials", strings.Repeat("not dry ", 10_000)},
		{"10,000 commas", strings.Repeat("crisp, ", 10_000)},
		{"and it went", strings.Repeat("and it went ", 7_000)},
		{"and it went soggy", "I left it too long " + strings.Repeat("and it went soggy ", 5_000)},
	}
	// Each connective of connectives_test.go, alone and with a clause.
	for _, word := range []string{
		"so", "so that", "as", "since", "for", "to", "to stop it", "in order to", "by", "by stirring", "using", "with", "with a spoon",
		"without", "which", "which meant", "that", "if", "if you stir it it goes thick", "when", "while", "until", "then", "and", "but", "or", "otherwise", "therefore",
		"due to", "as a result", "in case", "that is why", "given", "from", "not", "too", "would", "like", "in three goes", "a bit at a time",
	} {
		inputs = append(inputs,
			worst{word + ", 7,000 times", strings.Repeat(word+" ", 7_000)},
			worst{word + " it was crisp, 3,000 times", strings.Repeat(word+" it was crisp ", 3_000)},
		)
	}
	require.NotEmpty(t, inputs)
	for _, in := range inputs {
		t.Run(in.name, func(t *testing.T) {
			input, brief := Input{Text: in.text}, Brief{Dish: lex.General(), Questions: 3}
			start := time.Now()
			r := a.Read(input, brief)
			if d := time.Since(start); d > time.Second/2 {
				t.Logf("SLOW %s: %.1f s for %d bytes", in.name, d.Seconds(), len(in.text))
			}
			require.NoError(t, brokenPromises(input, brief, r), "text %s", short(in.text))
			data, err := encode(r)
			require.NoError(t, err)
			require.False(t, bytes.Contains(data, []byte(":null")), "a list is null")
		})
	}
}
