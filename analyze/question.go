package analyze

import (
	"strings"

	"saywhy/lexicon"
)

// asking chooses the questions that move this writer furthest next, and the
// lines that name what the writer did. It only ever asks for what the three
// steps say is not there yet, in the writer's own words.
type asking struct{ words *vocabulary }

// wish is a question that could be asked.
type wish struct {
	area     lexicon.Area
	step     Step
	group    string // of the wordings: an area, "whole", or a kind of danger
	list     string // said, vague, work, detail, reason, danger or planned
	sentence int
	quote    string     // the writer's words in it; "" for none
	noun     string     // the food that was judged, where the text names it
	steps    []quotable // of a missing area: jobs of the writer's own at which to ask for it
	shorter  []string   // other quotes, for where the first makes a question too hard to read
	state    string     // of a danger: treated or planned against, where the text tells what came of it
	mixed    bool       // the quote speaks of another sense as well
	planned  bool       // the quote stands in the evaluation before this one
	praise   bool       // a judging word that praises
}

// danger returns the kind of danger that is asked about, or "".
func (q wish) danger() string {
	if q.list == "danger" {
		return q.group
	}
	return ""
}

func (d asking) read(r *reading) {
	if r.brief.Silent {
		r.praise = []string{}
		return
	}
	w := newWording(d.words, r)
	r.praise = d.praise(r, w.afresh())
	for _, q := range d.order(r) {
		if limit := r.brief.Questions; limit > 0 && len(r.questions) == limit {
			break
		}
		if q.quote != "" && w.quoted[q.quote] {
			continue
		}
		text, form, ok := w.ask(&q)
		if !ok {
			continue
		}
		w.quoted[q.quote], w.sentences[q.sentence] = true, true
		quotes := []string{}
		if q.quote != "" && !q.planned {
			quotes = append(quotes, q.quote)
		}
		r.questions = append(r.questions, Question{
			N: len(r.questions) + 1, Area: q.area, Step: q.step, Sentence: q.sentence, Quotes: quotes, Text: text,
			Look: w.look(&q), Danger: q.danger(), form: form, list: q.list,
		})
	}
}

// order puts what could be asked in the order in which it helps. First a
// danger, then a plan of last time, then what stands bare or only named; then
// missing areas and reasons in turn. A writer who has spoken of little is asked
// for more areas first, one who has spoken of much is asked why. Each area is
// asked about once before any is asked about twice, and what an earlier draft
// was asked comes last.
func (d asking) order(r *reading) []wish {
	var queue []wish
	sure := d.wishes(r)
	seen := map[lexicon.Area]bool{}
	if dangers := d.dangers(r); len(dangers) > 0 {
		queue = append(queue, dangers[0])
		seen[dangers[0].area] = true
		sure = append(dangers[1:], sure...)
	}
	queue = append(queue, d.plans(r)...)
	risky := d.risky(r)
	var once, again []wish
	for _, q := range sure {
		if q.list != "danger" && risky[q.sentence] {
			continue // that sentence is for the adult
		}
		if seen[q.area] {
			again = append(again, q)
			continue
		}
		seen[q.area] = true
		once = append(once, q)
	}
	return d.after(r, append(queue, append(once, again...)...))
}

// wishes lists what the steps lack, in turn. Left out is what the text may
// answer already in words that no list has, and, while there is anything else
// to ask, the area that is left in peace.
func (d asking) wishes(r *reading) []wish {
	peace, held, slight := d.peace(r), []wish(nil), []wish(nil)
	doubt := newDoubt(d.words, r)
	keep := func(list []wish) []wish {
		var kept []wish
		for _, q := range list {
			switch {
			case doubt.unseen(q):
			case doubt.slight(q):
				slight = append(slight, q)
			case doubt.of(q):
			case q.area == peace:
				held = append(held, q)
			default:
				kept = append(kept, q)
			}
		}
		return kept
	}
	queue, first, second := keep(d.thin(r, doubt)), keep(d.unexplained(r)), keep(d.missing(r))
	if r.saidAreas() < 4 {
		first, second = second, first
	}
	for len(first) > 0 || len(second) > 0 {
		if len(first) > 0 {
			queue, first = append(queue, first[0]), first[1:]
		}
		if len(second) > 0 {
			queue, second = append(queue, second[0]), second[1:]
		}
	}
	if len(queue) < fewQuestions {
		queue = append(queue, slight[:min(len(slight), fewQuestions-len(queue))]...)
	}
	if len(queue) == 0 {
		return held
	}
	return queue
}

// fewQuestions is how many questions a text should bring, where there is anything
// to ask that it hardly hints at.
const fewQuestions = 2

// saidAreas counts the areas that the text speaks of.
func (r *reading) saidAreas() int {
	n := 0
	for _, row := range r.rows {
		if row.Said {
			n++
		}
	}
	return n
}

// peace returns the most developed area: of those with detail the one with a
// reason, then the one most sentences speak of; or "".
func (d asking) peace(r *reading) lexicon.Area {
	var best AreaRow
	for _, row := range r.rows {
		switch {
		case !row.Detail:
		case best.Area == "", row.Reason && !best.Reason:
			best = row
		case row.Reason == best.Reason && len(row.Sentences) > len(best.Sentences):
			best = row
		}
	}
	return best.Area
}

// after takes out what an earlier draft was asked in the same words and puts
// what it was asked in others behind the rest.
func (d asking) after(r *reading, queue []wish) []wish {
	if r.brief.After == nil {
		return queue
	}
	type what struct {
		area lexicon.Area
		step Step
	}
	before := map[what]bool{}
	for _, q := range r.brief.After.Questions {
		before[what{q.Area, q.Step}] = true
	}
	var fresh, old []wish
	for _, q := range queue {
		if before[what{q.area, q.step}] && q.list != "danger" {
			old = append(old, q)
			continue
		}
		fresh = append(fresh, q)
	}
	return append(fresh, old...)
}

// thin lists bare judging words and areas that are only named.
func (d asking) thin(r *reading, doubt *doubt) []wish {
	var out []wish
	asked := map[lexicon.Area]bool{}
	for i := range r.sentences {
		s := &r.sentences[i]
		for n := range s.vague {
			if q, ok := d.judged(r, s, &s.vague[n], doubt); ok {
				out = append(out, q)
				asked[q.area] = true
			}
		}
	}
	for _, row := range r.rows {
		if !row.Said || row.Detail || !row.Expected || asked[row.Area] {
			continue
		}
		s := &r.sentences[row.Sentences[0]-1]
		if q := d.piece(r, s, row.Area, false); strings.Contains(q, " ") && !strings.HasSuffix(q, "n't") && !strings.HasSuffix(q, "n’t") && !strings.HasPrefix(strings.ToLower(q), "not ") {
			out = append(out, wish{area: row.Area, step: Detail, group: string(row.Area), list: "detail", sentence: s.n, quote: q})
		}
	}
	return out
}

// judged returns what could be asked about one judging word.
func (d asking) judged(r *reading, s *sentence, v *vagueWord, doubt *doubt) (wish, bool) {
	if !v.bare || s.tokens[len(s.tokens)-1].in(":") {
		return wish{}, false // what stands over a list ("What went well:") is the worksheet's
	}
	if tokensIn(s.tokens, v.to, "done") && r.Role == Adult {
		return wish{}, false // "Well done.": to the cook, not of anything
	}
	if cannotBe(s.tokens, v.from) || tokensIn(s.tokens, v.to, "at", "except", "apart", "but") || restHas(s.tokens, v.to, 1, "like") {
		return wish{}, false // "I want to get better at flipping": who is judged is the cook; "well except the flip"; "amazing, like holidays"
	}
	if v.from > 0 && s.tokens[v.from-1].in("sounds", "sounded", "sound") || supposedBefore(s.tokens, v.from) {
		return wish{}, false // "which sounds weird but works"; "it would be a winner"
	}
	if v.from > 0 && s.tokens[v.from-1].in("smelt", "smelled", "smells", "smell") && s.tokens[v.from].in("ok", "okay", "fine", "alright", "normal", "right") {
		return wish{}, false // it was not off
	}
	if end := headingEnd(s.tokens); v.from < end || end > 0 && (v.from > end+lineOpening || restHas(s.tokens, 0, end-1, "went", "go", "worked", "work")) {
		return wish{}, false // "What went well - the mixing"; "- sauce: passata, garlic and oregano, fine"; "How it went: fine mostly"
	}
	if r.Role == Adult && countWords(s.tokens) == v.to-v.from && s.n > 1 && r.sentences[s.n-2].tokens[0].in("you", "he", "she", "they", "well") {
		return wish{}, false // "You worked so hard. Lovely."
	}
	if v.to < len(s.tokens) && s.tokens[v.to].in("bit", "part", "thing", "moment", "job") && isNamed(s.tokens, v.from) {
		return wish{}, false
	}
	q := wish{step: Detail, list: "vague", sentence: s.n, quote: r.Text[s.tokens[denialOf(s.tokens, v)].start:v.end], noun: judgedNoun(s.tokens, v), praise: !v.blames}
	j, work := judgementOf(s.tokens, v), onlyWorkArea(s)
	if s.tokens[v.from].in("tasty", "delicious", "yummy", "scrumptious", "yum", "delish", "edible") && (j.of != judgedFood || j.sense == "") {
		j.of, j.sense, work = judgedFood, lexicon.Sense(lexicon.Taste), "" // such words are of food, whoever says them
	}
	if j.of == judgedFood && j.sense != "" {
		q.area, q.group = j.sense.Area(), string(j.sense)
	} else if s.has(lexicon.Improvement) {
		if v.to < len(s.tokens) && s.tokens[v.to].isNoun() {
			return q, false // "better paper next time": what to change is named
		}
		q.area, q.group = lexicon.Improvement, string(lexicon.Improvement)
	} else if work != "" {
		q.area, q.group = work, string(work)
	} else if j.of != judgedFood {
		q.area, q.group, q.list = d.untold(r, workAreas(), doubt), "whole", "work"
	} else {
		q.area, q.group = d.untold(r, resultAreas(), doubt), "whole"
	}
	if d.repeated(r, v) {
		// Which of them is meant, the word alone does not show.
		if from, to, ok := clauseAround(r.Text, s.tokens, v.from, v.to, maxQuote); ok && to-from > v.to-v.from {
			q.quote, q.noun = r.Text[s.tokens[from].start:s.tokens[to-1].end], ""
		}
	}
	row := r.row(q.area)
	return q, q.area != "" && row.Expected && !row.Detail
}

// lineOpening is how many words behind a heading a judgement may stand to be what the
// line says, and no afterthought to it.
const lineOpening = 2

// cannotBe reports whether the judgement at token i is one that is ruled out: "mum
// ate it so it can't be that bad".
func cannotBe(tokens []token, i int) bool {
	for j := i - 1; j >= 1 && j >= i-4; j-- {
		if tokens[j].norm == "be" && (tokens[j-1].in("n't", "not", "cant", "couldnt") || j > 1 && tokens[j-2].in("ca", "cant", "couldnt")) {
			return true
		}
	}
	return false
}

// supposedBefore reports whether the judgement at token i is of what would be, not of
// what was.
func supposedBefore(tokens []token, i int) bool {
	for j := i - 1; j > 0 && j >= i-4; j-- {
		if tokens[j].norm == "be" || tokens[j].in("look", "taste", "smell", "make") {
			return tokens[j-1].imagines() || tokens[j-1].isAdv() && j > 1 && tokens[j-2].imagines()
		}
	}
	return false
}

// isNamed reports whether it is said before token i what was the best or the worst:
// "snapping it was the best moment".
func isNamed(tokens []token, i int) bool {
	for i > 0 && (tokens[i-1].tag == "DT" || tokens[i-1].tag == "PRP$") {
		i--
	}
	if i < 2 || !plainBe(tokens[i-1].norm) {
		return false
	}
	return tokens[clauseStart(tokens, i-1)].tag == "VBG" || tokens[i-2].isNoun() && !tokens[i-2].human()
}

// denialOf returns the token where the quote of a judging word begins: at the
// word, or at the verb or the "not" that denies it ("weren't very good"), as the
// word alone would say the opposite.
func denialOf(tokens []token, v *vagueWord) int {
	for i := v.from - 1; i >= 0 && i >= v.from-4; i-- {
		switch t := &tokens[i]; {
		case t.norm == "n't":
			return max(0, i-1)
		case t.in("not", "never", "hardly"):
			return i
		case !t.isAdv() && !t.in("that", "all", "a", "so", "as", "too", "very", "the") && t.tag != "PRP$":
			return v.from
		}
	}
	return v.from
}

// repeated reports whether the text judges by the same word more than once.
func (d asking) repeated(r *reading, v *vagueWord) bool {
	word, n := strings.ToLower(r.Text[v.start:v.end]), 0
	for i := range r.sentences {
		for _, o := range r.sentences[i].vague {
			if strings.ToLower(r.Text[o.start:o.end]) == word {
				n++
			}
		}
	}
	return n > 1
}

func resultAreas() []lexicon.Area {
	return []lexicon.Area{lexicon.Taste, lexicon.Texture, lexicon.Appearance, lexicon.Aroma}
}

func workAreas() []lexicon.Area {
	return []lexicon.Area{lexicon.Organisation, lexicon.Technique, lexicon.Independence, lexicon.Hygiene, lexicon.Safety}
}

// onlyWorkArea returns the work area of a sentence that speaks of just one.
func onlyWorkArea(s *sentence) lexicon.Area {
	var found lexicon.Area
	for _, a := range s.areas {
		if contains(workAreas(), a) {
			if found != "" {
				return ""
			}
			found = a
		}
	}
	return found
}

// untold returns the first of the areas that nothing concrete is said of, one
// that no word of the text hints at before one that is hinted at.
func (d asking) untold(r *reading, areas []lexicon.Area, doubt *doubt) lexicon.Area {
	var hinted lexicon.Area
	for _, a := range areas {
		if row := r.row(a); !row.Expected || row.Detail {
			continue
		}
		if doubt.weak[a] == 0 {
			return a
		}
		if hinted == "" {
			hinted = a
		}
	}
	return hinted
}

// missing lists the areas of the brief that the text does not speak of, the
// food first.
func (d asking) missing(r *reading) []wish {
	var out []wish
	risky := d.risky(r)
	for _, a := range []lexicon.Area{
		lexicon.Taste, lexicon.Texture, lexicon.Appearance, lexicon.Improvement, lexicon.Aroma, lexicon.Safety,
		lexicon.Hygiene, lexicon.Technique, lexicon.Organisation, lexicon.Independence,
	} {
		if row := r.row(a); row.Expected && !row.Said {
			out = append(out, wish{area: a, step: Said, group: string(a), list: "said", steps: d.stepsFor(r, a, risky)})
		}
	}
	return out
}

// unexplained lists the areas that are told but not explained, the longest
// told first: there the writer has most to explain.
func (d asking) unexplained(r *reading) []wish {
	var out []wish
	for _, a := range []lexicon.Area{
		lexicon.Texture, lexicon.Technique, lexicon.Hygiene, lexicon.Taste, lexicon.Appearance, lexicon.Safety,
		lexicon.Improvement, lexicon.Organisation, lexicon.Independence, lexicon.Aroma,
	} {
		row := r.row(a)
		if !row.Expected || !row.Detail || row.Reason {
			continue
		}
		for _, n := range row.Sentences {
			if q := d.toExplain(r, &r.sentences[n-1], a); q != "" {
				out = append(out, wish{area: a, step: Reason, group: string(a), list: "reason", sentence: n, quote: q, mixed: mixed(r, &r.sentences[n-1], q, a)})
				break
			}
		}
	}
	return out
}

// mixed reports whether a quote from the sentence describes food by another
// sense than that of the area.
func mixed(r *reading, s *sentence, quote string, a lexicon.Area) bool {
	for _, w := range s.sensory {
		if w.sense.Area() != a && strings.Contains(quote, r.Text[s.tokens[w.from].start:s.tokens[w.to-1].end]) {
			return true
		}
	}
	return false
}

// row returns the row of an area.
func (r *reading) row(a lexicon.Area) AreaRow {
	for _, row := range r.rows {
		if row.Area == a {
			return row
		}
	}
	return AreaRow{}
}
