package pages

import (
	"net/http"
	"slices"
	"strconv"
	"strings"

	"saywhy/lexicon"
)

// row is the form of one word, as it comes and as it is shown again.
type row struct {
	Sense lexicon.Sense
	Was   string // the headword as the row had it; "" for a new word
	Row   string // the row as it stood when the form was shown; "" for none
	File  string // the stamp of the file then

	Word, Means, Of, Forms, Scale, Step string
}

func rowOf(r *http.Request) row {
	get := func(name string) string { return line(r.PostFormValue(name)) }
	return row{
		Sense: lexicon.Sense(get("sense")), Was: get("was"), Row: plain(r.PostFormValue("row")), File: get("file"),
		Word: strings.ToLower(get("word")), Means: get("means"), Of: get("of"), Forms: get("forms"), Scale: strings.ToLower(get("scale")), Step: get("step"),
	}
}

// rowFor is the form of a word as it stands.
func rowFor(w lexicon.Word, stamp string) row {
	r := row{
		Sense: w.Sense, Was: w.Word, Row: lexicon.WordRow(w), File: stamp,
		Word: w.Word, Means: w.Means, Of: strings.Join(w.Of, "; "), Forms: strings.Join(w.Forms, "; "), Scale: w.Scale,
	}
	if w.Scale != "" {
		r.Step = strconv.Itoa(w.Step)
	}
	return r
}

// word is the word that a form describes, or what is missing, a sentence.
func (r row) word() (w lexicon.Word, wrong string) {
	w = lexicon.Word{Word: r.Word, Sense: r.Sense, Means: r.Means, Of: listOf(r.Of), Forms: listOf(r.Forms), Scale: r.Scale}
	switch {
	case w.Word == "":
		return w, "The word is missing; write it in the first box."
	case w.Means == "":
		return w, "The meaning is missing; say in a few plain words what it means."
	case w.Scale == "" && r.Step != "":
		return w, "There is a step and no scale; name the scale, or empty the step."
	}
	if w.Scale != "" {
		step, err := strconv.Atoi(r.Step)
		if err != nil {
			return w, "The step on the scale should be a number, from 1 for the lowest."
		}
		w.Step = step
	}
	return w, ""
}

// listOf parts a list at semicolons and commas.
func listOf(s string) []string {
	var out []string
	for _, part := range strings.FieldsFunc(s, func(r rune) bool { return r == ';' || r == ',' }) {
		if part = strings.ToLower(strings.Join(strings.Fields(part), " ")); part != "" && !slices.Contains(out, part) {
			out = append(out, part)
		}
	}
	return out
}
