package lexicon

import (
	"iter"
	"slices"
	"strings"
	"unicode"
)

// Grade is the reading grade of a text in US school years by the formula of
// Flesch and Kincaid: 0.39 × words a sentence + 11.8 × syllables a word − 15.59
// (Kincaid, Fishburne, Rogers and Chissom, Research Branch Report 8-75, 1975).
// A text without words has grade 0.
func Grade(text string) float64 {
	words, syllables := 0, 0
	for w := range eachWord(text) {
		words++
		syllables += Syllables(w)
	}
	if words == 0 {
		return 0
	}
	n := float64(words)
	return 0.39*n/float64(sentences(text)) + 11.8*float64(syllables)/n - 15.59
}

// Words counts the words of a text.
func Words(text string) int {
	n := 0
	for range eachWord(text) {
		n++
	}
	return n
}

// wordsOf returns the words of a text.
func wordsOf(text string) []string { return slices.Collect(eachWord(text)) }

// eachWord yields the words of a text: letters and digits, with apostrophes
// between letters. A hyphen divides.
func eachWord(text string) iter.Seq[string] {
	return strings.FieldsFuncSeq(text, func(r rune) bool {
		return !unicode.IsLetter(r) && !unicode.IsDigit(r) && r != '\'' && r != '’' && !unicode.Is(unicode.M, r)
	})
}

// sentences counts the runs of words that end in a full stop, a question or
// exclamation mark or the end of the text. At least one.
func sentences(text string) int {
	n, open := 0, false
	for _, r := range text {
		switch {
		case unicode.IsLetter(r) || unicode.IsDigit(r):
			open = true
		case open && (r == '.' || r == '?' || r == '!' || r == '…'):
			n++
			open = false
		}
	}
	if open || n == 0 {
		n++
	}
	return n
}

// Syllables estimates the syllables of an English word from its spelling, at
// least one: groups of vowels, without the silent ones at the end. Figures
// count as one.
func Syllables(word string) int {
	w := strings.ToLower(strings.ReplaceAll(strings.ReplaceAll(word, "’", ""), "'", ""))
	if n, ok := oddSyllables(w); ok {
		return n
	}
	n := 0
	before := byte(0)
	for i := range len(w) {
		if isVowel(w, i) && (before == 0 || !isVowel(w, i-1) || splits(w, i)) {
			n++
		}
		before = w[i]
	}
	return max(1, n-silent(w)+hidden(w))
}

// isVowel reports whether the letter at i sounds as a vowel; y does but at the
// start of a word and before another vowel ("beyond"), where that is no ending
// ("frying").
func isVowel(w string, i int) bool {
	switch w[i] {
	case 'a', 'e', 'i', 'o', 'u':
		return !(w[i] == 'u' && i > 0 && w[i-1] == 'q')
	case 'y':
		return i > 0 && (i+1 == len(w) || w[i+1] == 'i' || strings.IndexByte("aeou", w[i+1]) < 0)
	}
	return false
}

// splits reports whether two vowels that stand together are said apart, the
// second at i: "di-et", "cre-ate", "flu-id", "dri-est", "fry-ing".
func splits(w string, i int) bool {
	rest := w[i:]
	switch pair := w[i-1 : i+1]; pair {
	case "ia":
		return !(i >= 2 && strings.IndexByte("ctl", w[i-2]) >= 0) // "special", "initial", "brilliant"
	case "io":
		return !(i >= 2 && strings.IndexByte("tscgxnl", w[i-2]) >= 0) // "-tion", "region", "onion"
	case "iu":
		return true
	case "ie":
		return strings.HasPrefix(rest, "et") || strings.HasPrefix(rest, "er") && len(rest) <= 3 || strings.HasPrefix(rest, "est") && len(rest) == 3 || strings.HasPrefix(rest, "ent")
	case "eo":
		return !strings.HasPrefix(w, "people")
	case "ea":
		return strings.HasPrefix(w, "creat") || strings.HasPrefix(w, "react")
	case "ua":
		return true
	case "ue":
		return strings.HasPrefix(rest, "el") || strings.HasPrefix(rest, "et") && i >= 3
	case "ui":
		return i >= 2 && strings.IndexByte("lr", w[i-2]) >= 0 && !strings.HasPrefix(rest, "it")
	case "oi", "ai", "ei":
		return strings.HasPrefix(rest, "ing")
	case "yi", "oe":
		return strings.HasPrefix(rest, "ing") || strings.HasPrefix(rest, "em")
	}
	return false
}

// silent counts the vowels at the end that are not heard: "bake", "baked",
// "bakes", but not "mixed up" in "tasted", "dishes", "little".
func silent(w string) int {
	n := len(w)
	switch {
	case n < 4 && !(n == 3 && strings.HasSuffix(w, "e") && !isVowel(w, 1)):
		if n == 3 && w[2] == 'e' && isVowel(w, 0) && !isVowel(w, 1) {
			return 1 // "use", "ate"
		}
		return 0
	case strings.HasSuffix(w, "e") && !isVowel(w, n-2):
		if w[n-2] == 'l' && !isVowel(w, n-3) && w[n-3] != 'l' {
			return 0 // "little", but not "grille"
		}
		return 1
	case strings.HasSuffix(w, "ed") && !isVowel(w, n-3):
		if w[n-3] == 't' || w[n-3] == 'd' {
			return 0
		}
		if w[n-3] == 'l' && n > 4 && !isVowel(w, n-4) && w[n-4] != 'l' && w[n-4] != 'r' && w[n-4] != 'w' {
			return 0 // "sprinkled": the l is a syllable
		}
		return 1
	case strings.HasSuffix(w, "es") && !isVowel(w, n-3):
		if strings.IndexByte("sxzcg", w[n-3]) >= 0 || strings.HasSuffix(w, "ches") || strings.HasSuffix(w, "shes") {
			return 0
		}
		if w[n-3] == 'l' && n > 4 && !isVowel(w, n-4) && w[n-4] != 'l' {
			return 0
		}
		return 1
	case strings.HasSuffix(w, "ely") || strings.HasSuffix(w, "eful") || strings.HasSuffix(w, "eless") || strings.HasSuffix(w, "ement"):
		return 1
	}
	return 0
}

// hidden counts the syllables at the end that no vowel of their own shows:
// "didn't", "crumbling", "centre".
func hidden(w string) int {
	n := len(w)
	switch {
	case n > 4 && strings.HasSuffix(w, "nt") && strings.IndexByte("ds", w[n-3]) >= 0:
		return 1 // the apostrophe is gone
	case n > 5 && strings.HasSuffix(w, "ling") && strings.IndexByte("bdgkpt", w[n-5]) >= 0:
		return 1
	case n > 4 && (strings.HasSuffix(w, "tre") || strings.HasSuffix(w, "bre")):
		return 1
	}
	return 0
}

// oddSyllables knows common words that their spelling misleads about.
func oddSyllables(w string) (int, bool) {
	switch w {
	case "whole", "tongue":
		return 1, true
	case "every", "evening", "cupboard", "business", "something", "sometimes", "someone", "somewhere", "lovely", "biscuit", "biscuits",
		"saucepan", "maybe", "doing", "going", "being", "seeing", "quiet", "minutes", "onion", "onions", "safety", "homemade", "cheesecake", "ragged", "gooey":
		return 2, true
	case "area", "areas", "idea", "ideas", "recipe", "recipes", "video", "vegetable", "vegetables", "different", "difference", "anyone", "carefully", "everything", "everyone":
		return 3, true
	case "temperature", "interesting":
		return 4, true
	}
	return 0, false
}
