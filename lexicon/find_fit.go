package lexicon

import (
	"slices"
	"strings"
)

// weightOf is how much a term of the query counts: little when it says where,
// when, by whom or how well rather than how the food is.
func weightOf(t string) float64 {
	if slices.Contains(weakTerms(), t) {
		return weakWeight
	}
	return 1
}

// weakTerms lists the roots of words that tell little of food.
func weakTerms() []string {
	return strings.Fields(`left each other another load nice love horribl awful good bad best better wors great
okay past later earlier morn morning even dinner kid mum dad friend brother sister famil put took take tak gave give
giv turn start stop tri tried pretti want need let us use used cook ate first second next last again ever alwai proper
almost near nearl basic actual super prett reall total complet absolut everi everyth everywher stuff way part time day
week minut hour see saw seen mean guess think thought know knew said same such only around home hous work school tell
told find found pass walk nan gran day`)
}

// fit is the BM25F score of a word for a query, and more when a form of it
// stands in what was noticed as it is. A term of a headword or form counts by
// how much of that headword or form the query has: of "fell over", "fell" alone
// says little.
func (f *Finder) fit(d *findDoc, query map[string]float64, topics, taken map[string]bool, plain []string) float64 {
	weights := fieldWeights()
	cover := [2]map[string]float64{{}, {}} // of headword and of forms, by term
	longest := 0.0
	for i, p := range d.phrases {
		field := min(i, formField)
		if len(p) > 1 && query[d.wholes[i]] > 0 {
			cover[field][d.wholes[i]] = 1
		}
		have, whole := 0.0, 0.0
		for _, t := range p {
			whole += f.idf[t]
			have += f.idf[t] * query[t]
		}
		for _, t := range p {
			if query[t] > 0 {
				cover[field][t] = max(cover[field][t], have/whole)
			}
		}
		if len(p) > 0 && contains(plain, p) && (len(p) > 1 || !topics[p[0]]) {
			if len(p) == 1 && taken[strings.TrimPrefix(p[0], not)] {
				whole *= takenWeight
			}
			longest = max(longest, whole)
		}
	}
	total := 0.0
	for _, t := range f.inOrder(query, d) {
		w := weights[headField]*cover[headField][t] + weights[formField]*cover[formField][t]
		for i := meansField; i < findFields; i++ {
			if n := d.freq[t][i]; n > 0 && (i != ofField || !topics[t]) {
				w += weights[i] * n / (1 + bm25B*(d.length[i]/f.mean[i]-1))
			}
		}
		if topics[t] {
			w *= topicWeight
			if d.freq[t][ofField] > 0 {
				w += topicOf
			}
		}
		total += query[t] * f.idf[t] * w / (bm25K + w)
	}
	return (total + phraseWeight*longest) * d.prior
}

// inOrder returns the terms of the query that the word has, sorted, so that
// sums come out the same every time.
func (f *Finder) inOrder(query map[string]float64, d *findDoc) []string {
	var out []string
	for t := range query {
		if d.freq[t] != nil {
			out = append(out, t)
		}
	}
	slices.Sort(out)
	return out
}

func contains(list, part []string) bool {
	for i := 0; i+len(part) <= len(list); i++ {
		if slices.Equal(list[i:i+len(part)], part) {
			return true
		}
	}
	return false
}
