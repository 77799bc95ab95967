package corpus

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// The figures with two corpora are worked by the formula of Rayson and Garside
// (2000); those of four cells are the bigrams of Dunning (1993), table 1, and
// agree with NLTK's likelihood_ratio.
func TestLogLikelihoodOfWorkedExamples(t *testing.T) {
	for _, c := range []struct {
		a, b, c, d int
		want       float64
	}{
		{20, 10, 10000, 10000, 3.398},
		{30, 10, 1000, 2000, 29.04},
		{5, 0, 1000, 1000, 6.931}, // 5·2·ln 2
	} {
		assert.InDelta(t, c.want, LogLikelihood(c.a, c.b, c.c, c.d), 0.005, "%+v", c)
	}
}

func TestLogLikelihoodOfFourCells(t *testing.T) {
	for _, c := range []struct {
		a, b, c, d int
		want       float64
	}{
		{110, 2442, 111, 29114, 270.72},
		{29, 13, 123, 31612, 263.90},
		{31, 23, 139, 31584, 256.84},
		{10, 0, 3, 31764, 167.23},
		// 20 and 10 of 10000 each, 30 of 1000 and 10 of 2000, 5 and 0 of 1000.
		{20, 10, 9980, 9990, 3.403},
		{30, 10, 970, 1990, 29.46},
		{5, 0, 995, 1000, 6.944},
	} {
		assert.InDelta(t, c.want, LogLikelihoodTable(c.a, c.b, c.c, c.d), 0.005, "%+v", c)
	}
	// The two forms are not the same: Dunning's first bigram by two cells.
	assert.InDelta(t, 220.22, LogLikelihood(110, 2442, 110+111, 2442+29114), 0.005)
}

func TestLogLikelihoodOfNothing(t *testing.T) {
	assert.Zero(t, LogLikelihood(0, 0, 0, 0))
	assert.Zero(t, LogLikelihood(0, 0, 10, 10))
	assert.Zero(t, LogLikelihood(7, 0, 100, 0), "with nothing to compare with nothing surprises")
	assert.Zero(t, LogLikelihoodTable(0, 0, 0, 0))
	assert.True(t, MoreUsual(2, 1, 100, 100))
	assert.False(t, MoreUsual(1, 2, 100, 100))
	assert.False(t, MoreUsual(2, 4, 100, 200))
}
