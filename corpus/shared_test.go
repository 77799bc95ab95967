package corpus

import (
	"fmt"
	"math"
	"math/rand/v2"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func find(texts []Evaluation, task, list []string) []Shared {
	f := NewSharedFinder(task, list)
	for _, e := range texts {
		f.Add(e)
	}
	return f.Find()
}

func TestCopiedPassagesAreFoundAmongManyTexts(t *testing.T) {
	const planted = 30
	for seed := range uint64(3) {
		in := newInvented(seed)
		texts := in.class(200, 10, 110)
		require.Len(t, texts, 2000)
		pairs := in.copied(texts, planted, 35, 65)
		at := map[string]int{}
		for i, e := range texts {
			at[e.Source] = i
		}
		found, wrong := map[[2]int]bool{}, 0
		for _, s := range find(texts, nil, nil) {
			pair := [2]int{at[s.First.Evaluation.Source], at[s.Second.Evaluation.Source]}
			assert.Less(t, pair[0], pair[1])
			if !pairs[pair] {
				wrong++
				t.Logf("seed %d, by chance: %q and %q", seed, s.First.Text(), s.Second.Text())
				continue
			}
			found[pair] = true
		}
		assert.Len(t, found, planted, "seed %d", seed)
		assert.LessOrEqual(t, wrong, 2, "seed %d", seed)
	}
}

func TestTextsWrittenApartShareNothing(t *testing.T) {
	f, err := os.Open("../testdata/labelled/settled.jsonl")
	require.NoError(t, err)
	defer f.Close()
	labelled, err := ReadLabelled(f)
	require.NoError(t, err)
	require.NotEmpty(t, labelled)
	finder := NewSharedFinder(nil, nil)
	for _, l := range labelled {
		finder.Add(Evaluation{Learner: l.ID, Session: "01", Text: l.Text, Source: l.ID})
	}
	for _, s := range finder.Find() {
		t.Errorf("%s and %s: %q and %q", s.First.Evaluation.Source, s.Second.Evaluation.Source, s.First.Text(), s.Second.Text())
	}
}

const copied = "the top went dark because I had put it on the wrong shelf and my gran scraped the black bits off with her old bread knife"

func TestWhatIsSharedIsShownInItsPlace(t *testing.T) {
	texts := []Evaluation{
		{Learner: "noor", Session: "05", Text: "I made fish pie. And " + copied + ". It was salty.", Source: "a"},
		{Learner: "bryn", Session: "05", Text: "My evaluation: " + strings.Replace(strings.ToUpper(copied), "OLD", "really old", 1) + "! I liked it.", Source: "b"},
		{Learner: "Noor", Session: "05", Role: "adult", Text: "She wrote that " + copied + ", which is right.", Source: "c"},
		{Learner: "noor", Session: "06", Text: "Again " + copied, Source: "d"},
	}
	var got []string
	for _, s := range find(texts, nil, nil) {
		got = append(got, fmt.Sprintf("%s+%s %d %q %q", s.First.Evaluation.Source, s.Second.Evaluation.Source, s.Words, s.First.Text(), s.Second.Text()))
	}
	// The words behind the change are too few to go on with the passage.
	start := strings.TrimSuffix(copied, " old bread knife")
	assert.Equal(t, []string{
		fmt.Sprintf("a+d 26 %q %q", copied, copied),
		fmt.Sprintf("c+d 26 %q %q", copied, copied),
		fmt.Sprintf("a+b 23 %q %q", start, strings.ToUpper(start)),
		fmt.Sprintf("b+c 23 %q %q", strings.ToUpper(start), start),
		fmt.Sprintf("b+d 23 %q %q", strings.ToUpper(start), start),
	}, got, "the adult of the same practical may quote")
}

func TestTheTaskIsNotShared(t *testing.T) {
	task := "Describe the colour of the crust, the sound it makes when you tap it, and the smell of the kitchen while it bakes in the oven."
	list := []string{"golden", "crisp", "crumbly", "buttery", "sharp", "sticky", "dark brown", "smoky", "sweet", "chewy", "flaky", "hollow", "yeasty", "nutty", "soft", "springy"}
	said := "it was " + strings.Join(list, " and ")
	texts := []Evaluation{
		{Learner: "noor", Session: "02", Text: task + " Mine was pale. " + said},
		{Learner: "bryn", Session: "02", Text: task + " I tapped it twice. " + said},
	}
	words := func(task, list []string) (n int) {
		for _, s := range find(texts, task, list) {
			n += s.Words
		}
		return n
	}
	assert.Greater(t, words(nil, nil), 50)
	assert.Less(t, words([]string{task}, nil), 40)
	assert.NotZero(t, words([]string{task}, nil))
	assert.Empty(t, find(texts, []string{task}, list))

	// What nearly everyone writes is a way of speaking.
	var class []Evaluation
	for i := range 12 {
		class = append(class, Evaluation{Learner: fmt.Sprint(i), Session: "01", Text: fmt.Sprintf("%s learner %d made it", copied, i)})
	}
	assert.Empty(t, find(class, nil, nil))
	assert.NotEmpty(t, find(class[:6], nil, nil))
}

// The worked example of Broder, "On the resemblance and containment of
// documents" (1997): the words of "a rose is a rose is a rose" and of "a rose
// is a flower which is a rose" share 60, 50 and 42.85 per cent of their
// shingles of one, two and three words.
func TestResemblanceIsThatOfItsSource(t *testing.T) {
	set := func(text string, k int) []uint64 {
		words := strings.Fields(text)
		var out []uint64
		for i := 0; i+k <= len(words); i++ {
			out = append(out, hashWord(strings.Join(words[i:i+k], "x")))
		}
		return out
	}
	a, b := "a rose is a rose is a rose", "a rose is a flower which is a rose"
	for k, want := range map[int]float64{1: .6, 2: .5, 3: .4285} {
		assert.InDelta(t, want, jaccard(set(a, k), set(b, k)), .0001, "%d words", k)
	}
	four := set(a, 4)
	distinct := map[uint64]bool{}
	for _, s := range four {
		distinct[s] = true
	}
	assert.Equal(t, [2]int{5, 3}, [2]int{len(four), len(distinct)}, "shingles of four words, counted and distinct")
}

// The estimate is a mean of k independent trials with chance J, so its mean
// error is 0 and its variance J(1-J)/k (Broder 1997; the bounds on their means
// over many pairs are those of the normal distribution at 5 standard errors).
func TestMinHashEstimatesWithinItsStandardError(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 7))
	const pairs = 4000
	for _, j := range []float64{.05, .1, .3, .5, .7, .9} {
		sum, squares, exact := 0.0, 0.0, 0.0
		for range pairs {
			const size = 120
			shared := int(math.Round(2 * size * j / (1 + j)))
			var a, b []uint64
			for i := range 2*size - shared {
				x := r.Uint64()
				if i < size {
					a = append(a, x)
				}
				if i >= size-shared {
					b = append(b, x)
				}
			}
			exact = jaccard(a, b)
			s, u := minHash(a), minHash(b)
			err := s.resemblance(&u) - exact
			sum, squares = sum+err, squares+err*err
		}
		variance := exact * (1 - exact) / hashes
		assert.InDelta(t, 0, sum/pairs, 5*math.Sqrt(variance/pairs), "mean error at J = %.3f", exact)
		// The variance of a squared error is at most (3 + 1/(k J(1-J))) of its
		// own square, less 1.
		spread := math.Sqrt((2 + 1/(hashes*exact*(1-exact))) / pairs)
		assert.InEpsilon(t, variance, squares/pairs, 5*spread, "mean square of the error at J = %.3f", exact)
	}
}

func BenchmarkShared(b *testing.B) {
	for _, learners := range []int{100, 200, 400} {
		texts := newInvented(1).class(learners, 10, 140)
		b.Run(fmt.Sprintf("texts=%d", len(texts)), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				find(texts, nil, nil)
			}
			b.ReportMetric(float64(b.Elapsed().Microseconds())/float64(b.N*len(texts)), "µs/text")
		})
	}
}

func TestTheWordingOfTheProgramIsTheTask(t *testing.T) {
	lex := builtin(t)
	task, list := TaskWording(lex)
	asked := lex.Reading.Wordings["learner"]["taste"]["said"]
	var sheet []string
	for _, w := range lex.Words()[:60] {
		sheet = append(sheet, w.Word+": "+w.Means)
	}
	for name, said := range map[string]string{"the questions": strings.Join(asked, " "), "the word list": strings.Join(sheet, "\n")} {
		texts := []Evaluation{
			{Learner: "noor", Session: "02", Text: said + " Mine was all right."},
			{Learner: "bryn", Session: "02", Text: "I do not know. " + said},
		}
		assert.NotEmpty(t, find(texts, nil, nil), name)
		assert.Empty(t, find(texts, task, list), name)
	}
}
