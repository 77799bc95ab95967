package analyze

// usesTool matches "use" for "used", as those new to English put it: "I use
// machine to make it smooth".
func (d means) usesTool(tokens []token, i int) (int, bool) {
	if i == 0 || !tokens[i-1].in("i", "we", "you", "he", "she") {
		return 0, false
	}
	return d.used(tokens, i)
}

// wearingIt matches what was worn for the work: "turned it wearing the gloves".
func (d means) wearingIt(tokens []token, i int) (int, bool) {
	h := objectHead(tokens, i)
	return h + 1, i > 0 && h >= 0 && h-i <= 3 && tokens[h].in("glove", "gloves", "mitts", "goggles") && d.cooking(tokens, i)
}

// inOneWord matches a way of working that is one word, or two of one: "scored
// it criss cross", "did it freehand".
func (d means) inOneWord(tokens []token, i int) (int, bool) {
	to := i + 1
	if tokens[i].norm == "criss" {
		if after(tokens, i, 1).norm != "cross" {
			return 0, false
		}
		to++
	}
	return to, d.cooking(tokens, i) || d.deed(tokens, i)
}

// plainAdverb matches the adverb of manner at token i.
func (d means) plainAdverb(tokens []token, i int) (int, bool) {
	return i + 1, d.adverb(tokens, i)
}

// heatNamed matches a heat told without its preposition: "fried medium heat".
func (d means) heatNamed(tokens []token, i int) (int, bool) {
	return i + 2, after(tokens, i, 1).norm == "heat" && i > 0 && !tokens[i-1].in("a", "on", "over", "the", "too") && d.cooking(tokens, i)
}

// toTheGram matches how exactly something was measured or timed: "weighed it to
// the gram".
func (d means) toTheGram(tokens []token, i int) (int, bool) {
	return i + 3, after(tokens, i, 1).norm == "the" && after(tokens, i, 2).in("gram", "letter", "millimetre", "minute", "second", "drop", "ounce") && d.workedBefore(tokens, i, "weigh", "measur", "follow", "time", "plan", "cut", "did", "cook")
}

// overAndOver matches work that was repeated: "folded it over and over".
func (d means) overAndOver(tokens []token, i int) (int, bool) {
	return i + 3, after(tokens, i, 1).norm == "and" && after(tokens, i, 2).norm == tokens[i].norm && d.technique(tokens, clauseStart(tokens, i), i) && d.bySomebody(tokens, i)
}

// wholeTime matches work that was never left off: "stirred it the whole time".
func (d means) wholeTime(tokens []token, i int) (int, bool) {
	return i + 3, after(tokens, i, 1).in("whole", "hole", "entire") && after(tokens, i, 2).norm == "time" && d.keptUp(tokens, i)
}

// backAndForth matches a tool moved one way and the other: "rocked the knife
// back and forth".
func (d means) backAndForth(tokens []token, i int) (int, bool) {
	return i + 3, after(tokens, i, 1).norm == "and" && after(tokens, i, 2).in("forth", "forwards", "forward") && (d.cooking(tokens, i) || i > 2 && tokens[i-3].in("rocked", "moved", "slid", "pulled", "swung", "rock", "move"))
}

// leftToRight matches the order in which something was laid out: "from left to
// right".
func leftToRight(tokens []token, i int) (int, bool) {
	return i + 4, after(tokens, i, 1).norm == "left" && after(tokens, i, 2).norm == "to" && after(tokens, i, 3).norm == "right"
}
