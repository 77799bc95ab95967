package lexicon

import (
	"slices"
	"strings"
	"unicode"
)

// not marks a term that is denied: "no lumps" holds not+lump.
const not = "!"

// findTerms returns the terms of a text: stems without the words that hold
// speech together, and with a mark on what is denied.
func findTerms(text string) []string { return termsBy(text, root) }

// termsBy is findTerms with roots that were maybe met before.
func termsBy(text string, root func(string) string) []string {
	var out []string
	denied := 0 // how many more words a denial reaches
	for _, w := range saidWords(text) {
		switch {
		case slices.Contains(denials(), w) || strings.HasSuffix(w, "n't"):
			denied = 3
			continue
		case denied > 0 && slices.Contains(senseVerbs(), w):
			// That it has a smell tells nothing; that it has none does.
			out = append(out, not+root(w))
			denied--
			continue
		case joins(w):
			if w == "and" || w == "but" {
				denied = 0
			}
			denied--
			continue
		}
		t := root(w)
		if t == "" {
			continue
		}
		if denied > 0 {
			t = not + t
		}
		denied--
		out = append(out, t)
	}
	return out
}

// saidWords returns the words of a text in lower case, with the apostrophe that
// many leave out of "didnt".
func saidWords(text string) []string {
	words := strings.FieldsFunc(strings.ToLower(strings.ReplaceAll(text, "’", "'")), func(r rune) bool {
		return r != '\'' && !unicode.IsLetter(r) && !unicode.IsDigit(r)
	})
	for i, w := range words {
		switch w {
		case "cant", "couldnt", "didnt", "doesnt", "dont", "hadnt", "hasnt", "havent", "isnt", "wasnt", "wont",
			"wouldnt", "arent", "werent", "shouldnt":
			words[i] = strings.TrimSuffix(w, "t") + "'t"
		}
	}
	return words
}

// root is the stem of a word without the -y that makes a describing word of a
// noun, and without a letter doubled before it, so that stringy and strings
// meet, and furry and fur.
func root(w string) string {
	s := Stem(strings.TrimSuffix(strings.Trim(w, "'"), "'s"))
	if n := len(s); n > 4 && (s[n-1] == 'i' || s[n-1] == 'y') {
		s = s[:n-1]
	}
	if n := len(s); n > 3 && s[n-1] == s[n-2] {
		s = s[:n-1]
	}
	return s
}

// rootsOnce returns root, worked out once for each word: stems take most of the
// time of an index.
func rootsOnce() func(string) string {
	met := map[string]string{}
	return func(w string) string {
		r, ok := met[w]
		if !ok {
			r = root(w)
			met[w] = r
		}
		return r
	}
}

// denials lists words that deny the next ones; of what should be so, it is known
// that it is not.
func denials() []string {
	return []string{
		"no", "not", "never", "without", "hardly", "cannot", "none", "neither", "nor",
		"should", "should've", "supposed", "meant", "lacked", "lacking", "lacks", "missing", "forgot", "barely",
	}
}

// joins reports whether a word holds speech together and tells nothing of food.
func joins(w string) bool {
	switch w {
	case "a", "an", "the", "it", "its", "it's", "i", "i'm", "my", "me", "mine", "you", "your", "we", "our", "he",
		"she", "they", "them", "their", "this", "that", "these", "those", "there", "here", "is", "was", "are",
		"were", "be", "been", "being", "am", "do", "does", "did", "done", "has", "have", "had", "having", "will",
		"would", "can", "could", "may", "might", "must", "of", "to", "in", "on", "at", "by", "for", "from",
		"with", "into", "onto", "as", "and", "but", "or", "so", "if", "when", "while", "then", "than", "because",
		"like", "just", "really", "very", "quite", "some", "any", "bit", "kind", "sort", "thing", "things", "what",
		"which", "who", "how", "where", "up", "out", "when's", "it'd", "got", "get", "gets", "make", "makes", "made",
		"go", "goes", "went", "gone", "going", "lot", "lots", "too", "all", "more", "most", "much", "many", "one",
		"feel", "feels", "felt", "look", "looks", "looked", "taste", "tastes", "tasted", "smell", "smells", "smelt",
		"smelled", "whiff", "what's", "called", "call", "word", "words", "why", "say", "ok", "anything", "something",
		"someone", "everyone", "still", "about", "after", "before", "over", "inside", "eat", "eating", "ate", "food":
		return true
	}
	return false
}
