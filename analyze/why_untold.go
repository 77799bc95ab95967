package analyze

// generalTruth: "if you knead it it goes tough": what comes of something, told
// as a rule of the kitchen.
func (d reasons) generalTruth(tokens []token, i int) bool {
	if i+2 >= len(tokens) || !tokens[i+1].in("you", "u") {
		return false
	}
	for j := i + 3; j+1 < len(tokens) && j < i+16; j++ {
		if tokens[j].in("it", "they", "everything", "the") && tokens[j+1].in("goes", "go", "gets", "get", "turns", "turn", "sticks", "stick", "spits", "burns", "boils", "makes", "falls", "splits", "cooks", "puffs", "becomes") {
			return true
		}
	}
	return false
}

// wouldDiffer: "if I squeezed it in a towel it wouldn't go so wet": a step of
// cooking, imagined with what would come of it.
func (d reasons) wouldDiffer(tokens []token, i int) bool {
	cooked := false
	for j := i + 1; j+1 < len(tokens) && j < i+18; j++ {
		t := &tokens[j]
		if t.isVerb() && t.card.works {
			cooked = true
		}
		if t.norm == "again" {
			return false // "if I made it again I would": a plan
		}
		if cooked && j > i+3 && t.in("it", "they") && tokens[j+1].in("would", "'d", "'ll", "will", "wo", "might") {
			return true
		}
	}
	return false
}

// rewarded: "leave a bigger gap and they'll stay round": an instruction with
// what comes of it.
func rewarded(tokens []token, i int) bool {
	if i < 2 || i+2 >= len(tokens) || !tokens[i+1].in("it", "they", "you", "he", "she") || !tokens[i+2].in("will", "'ll", "wo") {
		return false
	}
	start := clauseStart(tokens, i-1)
	first := &tokens[start]
	return first.tagIn("VB", "VBP") || start == 0 && (first.isNoun() || first.isAdj()) && !tokens[1].isVerb()
}

// thenSpared: "…, then your fingers don't get clogged": what a step would
// bring or spare, behind "then" and with a modal or a denial.
func thenSpared(tokens []token, i int) bool {
	if i == 0 || i+3 >= len(tokens) || tokens[i-1].in("and", "since", "by", "until", "till", "only", "even", "just", "back") {
		return false
	}
	for j := i + 2; j < len(tokens) && j <= i+4; j++ {
		t := &tokens[j]
		if t.in("'ll", "will", "would", "wouldnt", "wo", "ca") || t.norm == "could" || t.in("do", "does") && j+1 < len(tokens) && tokens[j+1].norm == "n't" {
			return tokens[i+1].tagIn("PRP", "PRP$", "DT") || tokens[i+1].isNoun()
		}
	}
	return false
}

// outcome: a step of cooking, "and", and the state it brought the food to: "I
// added a squeeze of lemon and it was a lot better". Kitchen knowledge ties
// the two: what was done to heat, time or amount changes the food.
func (d reasons) outcome(tokens []token, i int) bool {
	start := clauseStart(tokens, i)
	if start < 3 || tokens[start-1].norm != "and" && tokens[start-1].norm != "then" || i+1 >= len(tokens) {
		return false
	}
	s := subject(tokens, i)
	if s < start || tokens[s].human() || !(tokens[s].in("it", "they", "some", "everything", "result") || tokens[s].kind.Food()) || i > start+5 {
		return false
	}
	state := false
	for j := i + 1; j < len(tokens) && j <= i+5; j++ {
		if tokens[j].pause() || tokens[j].in("that", "and") {
			break
		}
		state = state || tokens[j].describes() || tokens[j].in("better", "worse", "fine", "perfect", "shape", "ready", "done", "together", "bowl")
	}
	if !state {
		return false
	}
	for j := start - 2; j >= 0 && j >= start-16; j-- {
		p := &tokens[j]
		if p.in("because", "so", ".", ";", "but", "until", "till", "when", "while", "if") {
			return false
		}
		if p.isVerb() && (p.card.works || p.in("left", "let", "turned")) && !p.in("tasted", "taste", "cut", "served", "tried", "tested", "checked", "used") {
			return j == 0 || !(tokens[j-1].in("was", "were", "is", "be"))
		}
	}
	return false
}

// follows: two halves of one sentence where the second is what the first led
// to: somebody did something, or there was too much or too little of it, "and
// it went soggy".
func (d reasons) follows(tokens []token, i int) bool {
	t := &tokens[i]
	if t.in("went", "came") && d.noteCause(tokens, i) {
		return true
	}
	if !t.isVerb() {
		return false
	}
	s := subject(tokens, i)
	if s < 0 || tokens[s].human() || !(tokens[s].in("it", "they", "which", "that") || tokens[s].kind.Food()) {
		return false
	}
	start := clauseStart(tokens, i)
	if start < 2 || !tokens[start-1].in("and", ",", "=", "--", "-") {
		return false
	}
	if t.in("came", "went", "goes") && i+1 < len(tokens) && tokens[i+1].in("to", "on", "into", "in", "well") {
		return false
	}
	// the half before
	too, acted := false, false
	for j := start - 2; j >= 0 && j >= start-reach; j-- {
		p := &tokens[j]
		if p.in("too", "enough", "forgot", "less") || p.in("to") && j+1 < len(tokens) && tokens[j+1].in("much", "long", "many", "hot", "early", "little") {
			too = true
		}
		if p.in("i", "we", "you") && j+1 < len(tokens) && (tokens[j+1].isVerb() || tokens[j+1].isAdv() || tokens[j+1].in("did")) {
			acted = true
		}
		if p.in("because", "so", ".") {
			break
		}
	}
	if too {
		return true
	}
	return acted && !t.in("came", "rose") && tokens[start-1].norm == "and" && (tokens[s].in("it", "they"))
}

// beside reports whether two clauses set side by side by the mark at token i
// explain each other without a word that says so: how the food was and what the
// cook did ("the skin was crisp, you'd rubbed the butter in"); a step and the
// rule of the kitchen behind it ("in three lots; a full pan goes grey"); a
// change and the fault that asks for it ("I'd chop them smaller; they kept
// catching").
func (d reasons) beside(tokens []token, i int) bool {
	from, to := i, i+1
	for from > max(0, i-2*reach) && !tokens[from-1].in(";", ":", ".", "--", "–") && (tokens[from-1].norm != "," || listComma(tokens, from-1)) {
		from--
	}
	for to < min(len(tokens), i+2*reach) && !tokens[to].in(";", ":", ".", "--", "–", ",", "!") {
		to++
	}
	first := i + 1
	for first < to && (tokens[first].isAdv() || tokens[first].norm == "and") {
		first++
	}
	if i-from < 3 || to-first < 3 || tokens[first].in("so", "but", "because", "which", "who", "that", "then", "when", "if", "where", "as", "or") {
		return false
	}
	described, acted, plan := false, false, false
	for j := from; j < i; j++ {
		t := &tokens[j]
		if t.in("because", "so", "but", "if", "when") {
			return false
		}
		described = described || t.describes() && t.isAdj()
		plan = plan || t.in("would", "'d", "next") || j == from && t.tag == "VB"
		acted = acted || t.tag == "VBD" && t.card.works && !generic(t.stem)
	}
	subjectAt, verb := -1, -1
	for j := first; j < to; j++ {
		if tokens[j].tagIn("VBD", "VBZ", "VBP", "MD") || tokens[j].in("'d", "'ve") {
			verb = j
			break
		}
		if tokens[j].isNoun() || tokens[j].tag == "PRP" {
			subjectAt = j
		}
	}
	if subjectAt < 0 || verb < 0 || verb > subjectAt+3 {
		return false
	}
	v, s := &tokens[verb], &tokens[subjectAt]
	deed := func() bool {
		for j := verb; j < to && j < verb+3; j++ {
			if tokens[j].card.works && tokens[j].isVerb() && !tokens[j].in("made", "had", "took", "cut") || tokens[j].in("forgot", "left") {
				return true
			}
		}
		return false
	}
	switch {
	case plan && d.ofCooking(tokens[from:i]):
		return v.tag == "VBD" && tokens[i].norm != ":" && !tokens[first].in("this", "that")
	case described && !acted:
		return s.in("i", "you", "we") && (v.tag == "VBD" || v.in("'d", "had")) && deed()
	case acted:
		return tokens[i].norm != "," && tokens[i].norm != ":" && v.tagIn("VBZ", "VBP") && !s.human() && !s.in("it")
	}
	return false
}
