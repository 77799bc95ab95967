package pages

import (
	"net/http"
	"strings"

	"saywhy/cmd/wording"
	"saywhy/corpus"
	"saywhy/lexicon"
)

// missingPage lists describing words that learners used of a dish and that its
// list lacks.
type missingPage struct {
	frame
	Wrong string // why there is none, a sentence
	Texts string // how many were read
	Kinds []missingKind
}

type missingKind struct {
	Name, Title string
	Words       []missingWord
}

type missingWord struct {
	Word      string
	Sense     lexicon.Sense
	Of, Forms string
	Count     string
	Examples  []string
}

// mostMissing is how many words of a dish are listed.
const mostMissing = 12

func (s *site) missing(w http.ResponseWriter, r *http.Request) {
	shelf := s.library.Current()
	p := missingPage{frame: s.frame(r, shelf, "/tutor", "Words the lists lack")}
	if s.desk.Texts == nil {
		s.fail(w, r, http.StatusNotFound)
		return
	}
	texts, err := s.desk.Texts()
	if err != nil {
		p.Wrong = "Your folder of evaluations has nothing to read. Put texts into it, then open this page again."
		s.show(w, r, http.StatusUnprocessableEntity, "missing", p)
		return
	}
	p.Texts = wording.Count(len(texts), "text")
	for _, d := range shelf.Lexicon.Types() {
		found := corpus.Suggest(shelf.Lexicon, texts, d.Name)
		kind := missingKind{Name: d.Name, Title: d.Title}
		for _, f := range found[:min(mostMissing, len(found))] {
			word := missingWord{
				Word: f.Word, Sense: f.Sense, Of: strings.Join(f.Of, "; "), Forms: strings.Join(f.Spelt, "; "),
				Count: wording.Count(f.Count, "time") + ", in " + wording.Count(f.Texts, "text"),
			}
			for _, e := range f.Examples {
				word.Examples = append(word.Examples, e.Text)
			}
			kind.Words = append(kind.Words, word)
		}
		if len(kind.Words) > 0 {
			p.Kinds = append(p.Kinds, kind)
		}
	}
	s.show(w, r, http.StatusOK, "missing", p)
}
