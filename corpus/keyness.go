package corpus

import "math"

// LogLikelihood returns how surprising it is that a word stands a times among
// c words here and b times among d words elsewhere, if it were equally usual in
// both: 2(a ln(a/E1) + b ln(b/E2)) with E1 = c(a+b)/(c+d) and E2 = d(a+b)/(c+d).
// A count of 0 adds nothing. It says how sure the difference is and not which
// way it goes; see MoreUsual.
//
// Rayson and Garside, "Comparing corpora using frequency profiling" (2000).
func LogLikelihood(a, b, c, d int) float64 {
	if c+d <= 0 {
		return 0
	}
	both := float64(a + b)
	e1 := float64(c) * both / float64(c+d)
	e2 := float64(d) * both / float64(c+d)
	return 2 * (surprise(a, e1) + surprise(b, e2))
}

// LogLikelihoodTable returns the same over all four cells of the table: with
// the words that are not the one as well.
//
// Dunning, "Accurate methods for the statistics of surprise and coincidence"
// (1993).
func LogLikelihoodTable(n11, n12, n21, n22 int) float64 {
	all := float64(n11 + n12 + n21 + n22)
	if all <= 0 {
		return 0
	}
	cell := func(n, row, column int) float64 { return surprise(n, float64(row)*float64(column)/all) }
	r1, r2, c1, c2 := n11+n12, n21+n22, n11+n21, n12+n22
	return 2 * (cell(n11, r1, c1) + cell(n12, r1, c2) + cell(n21, r2, c1) + cell(n22, r2, c2))
}

func surprise(n int, expected float64) float64 {
	if n == 0 || expected <= 0 {
		return 0
	}
	return float64(n) * math.Log(float64(n)/expected)
}

// MoreUsual reports whether a word that stands a times among c words here and
// b times among d elsewhere is the more usual here.
func MoreUsual(a, b, c, d int) bool {
	return float64(a)*float64(d) > float64(b)*float64(c)
}
