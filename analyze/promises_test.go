package analyze

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/analyze/perceptron"
	"saywhy/lexicon"
)

// built is the one Analyzer of this package's tests, with its lexicon: both
// cost a good part of a second to build and never change.
var built = sync.OnceValue(func() (b struct {
	lex      *lexicon.Lexicon
	analyzer *Analyzer
	err      error
}) {
	lex, err := lexicon.Load()
	if err != nil {
		b.err = err
		return b
	}
	tagger, err := perceptron.New()
	if err != nil {
		b.err = err
		return b
	}
	b.lex, b.analyzer = lex, New(lex, tagger)
	return b
})

// shared returns the Analyzer and the lexicon that every test reads with.
func shared(tb testing.TB) (*Analyzer, *lexicon.Lexicon) {
	tb.Helper()
	b := built()
	require.NoError(tb, b.err)
	return b.analyzer, b.lex
}

// readPlain reads a learner's text for any dish and asks everything.
func readPlain(tb testing.TB, text string) *Report {
	tb.Helper()
	a, lex := shared(tb)
	return a.Read(Input{Text: text}, Brief{Dish: lex.General()})
}

// encode returns the report as JSON, as the contract names its fields.
func encode(r *Report) ([]byte, error) {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	err := e.Encode(r)
	return b.Bytes(), err
}

// brokenPromises checks a report against what the comments of report.go
// promise whatever a text is like. It returns nil when
// everything is kept. It takes no testing.TB, so that the fuzz target and the
// very long inputs can use it at the cost of the check alone.
func brokenPromises(in Input, brief Brief, r *Report) error {
	var broken []error
	fail := func(format string, args ...any) {
		if len(broken) < 10 { // enough to see what is wrong
			broken = append(broken, fmt.Errorf(format, args...))
		}
	}
	role := in.Role
	if role == "" {
		role = Learner
	}
	if r.Role != role || r.Title != in.Title || r.Dish != brief.Dish.Name {
		fail("role, title or dish are not those given: %q %q %q", r.Role, r.Title, r.Dish)
	}

	end := 0
	for i := range r.Sentences {
		s := &r.Sentences[i]
		if s.N != i+1 {
			fail("sentence at place %d has n %d", i+1, s.N)
		}
		if s.Start < end || s.End <= s.Start || s.End > len(in.Text) {
			fail("sentence %d: span %d:%d after one that ends at %d in a text of %d bytes", s.N, s.Start, s.End, end, len(in.Text))
			break
		}
		end = s.End
		if s.Text != in.Text[s.Start:s.End] {
			fail("sentence %d: text is not text[%d:%d]", s.N, s.Start, s.End)
		}
		at := 0
		inside := func(list string, start, stop int, text string) {
			switch {
			case start < s.Start || stop > s.End || stop <= start:
				fail("sentence %d: %s %d:%d is not inside %d:%d", s.N, list, start, stop, s.Start, s.End)
			case start < at:
				fail("sentence %d: %s %d:%d stands before the one before it", s.N, list, start, stop)
			case in.Text[start:stop] != text:
				fail("sentence %d: %s text %q is not text[%d:%d]", s.N, list, text, start, stop)
			}
			at = start
		}
		for _, v := range s.Vague {
			inside("vague", v.Start, v.End, v.Text)
		}
		at = 0
		for _, w := range s.Sensory {
			inside("sensory", w.Start, w.End, w.Text)
			if !w.Sense.Known() {
				fail("sentence %d: sense %q", s.N, w.Sense)
			}
		}
		at = 0
		for _, h := range s.How {
			inside("how", h.Start, h.End, h.Text)
		}
		at = 0
		for _, w := range s.Why {
			inside("why", w.Start, w.End, w.Text)
			if w.Explains < 1 || w.Explains > len(r.Sentences) {
				fail("sentence %d: explains %d of %d", s.N, w.Explains, len(r.Sentences))
			}
		}
		last := -1
		for _, a := range s.Areas {
			place := slices.Index(lexicon.Areas(), a)
			if place <= last {
				fail("sentence %d: areas %v are not in the fixed order, once each", s.N, s.Areas)
			}
			last = place
		}
	}

	if len(r.Areas) != len(lexicon.Areas()) {
		fail("%d rows of areas", len(r.Areas))
	}
	speak := map[lexicon.Area][]int{}
	for i := range r.Sentences {
		for _, a := range r.Sentences[i].Areas {
			speak[a] = append(speak[a], r.Sentences[i].N)
		}
	}
	for i, row := range r.Areas {
		if i < len(lexicon.Areas()) && row.Area != lexicon.Areas()[i] {
			fail("row %d is %q", i+1, row.Area)
		}
		if (row.Detail || row.Reason) && !row.Said {
			fail("%s: detail %v, reason %v, but not said", row.Area, row.Detail, row.Reason)
		}
		if row.Said != (len(row.Sentences) > 0) {
			fail("%s: said %v with sentences %v", row.Area, row.Said, row.Sentences)
		}
		if !slices.Equal(row.Sentences, speak[row.Area]) {
			fail("%s: row names %v, sentences that speak of it are %v", row.Area, row.Sentences, speak[row.Area])
		}
	}

	if brief.Questions > 0 && len(r.Questions) > brief.Questions {
		fail("%d questions where %d were asked for", len(r.Questions), brief.Questions)
	}
	texts := map[string]bool{}
	for i, q := range r.Questions {
		if q.N != i+1 {
			fail("question at place %d has n %d", i+1, q.N)
		}
		if q.Sentence < 0 || q.Sentence > len(r.Sentences) {
			fail("question %d: sentence %d of %d", q.N, q.Sentence, len(r.Sentences))
		}
		if !q.Area.Known() || q.Step != Said && q.Step != Detail && q.Step != Reason {
			fail("question %d: area %q, step %q", q.N, q.Area, q.Step)
		}
		if texts[q.Text] {
			fail("question %d is asked twice: %q", q.N, q.Text)
		}
		texts[q.Text] = true
		own := q.Text
		for _, quote := range q.Quotes {
			if quote == "" || !strings.Contains(in.Text, quote) {
				fail("question %d quotes %q, which the text does not hold", q.N, quote)
			}
			if !strings.Contains(q.Text, "“"+quote+"”") {
				fail("question %d does not hold its quote %q: %q", q.N, quote, q.Text)
			}
			own = strings.ReplaceAll(own, "“"+quote+"”", "")
		}
		if strings.Count(own, "?") != 1 || !strings.HasSuffix(own, "?") {
			fail("question %d does not end with its only question mark: %q", q.N, q.Text)
		}
		if strings.ContainsAny(own, "{}") {
			fail("question %d has a slot left over: %q", q.N, q.Text)
		}
	}

	before := 0
	for _, c := range r.Cautions {
		if c.Sentence < 1 || c.Sentence > len(r.Sentences) {
			fail("caution %s: sentence %d of %d", c.Kind, c.Sentence, len(r.Sentences))
			continue
		}
		if c.Sentence < before {
			fail("caution %s of sentence %d stands after one of sentence %d", c.Kind, c.Sentence, before)
		}
		before = c.Sentence
		if c.Text != r.Sentences[c.Sentence-1].Text {
			fail("caution %s: text is not that of sentence %d", c.Kind, c.Sentence)
		}
		if !slices.Contains(lexicon.CautionKinds(), c.Kind) || c.Advice == "" || c.Source == "" {
			fail("caution %q of sentence %d lacks a known kind, advice or source", c.Kind, c.Sentence)
		}
	}
	return errors.Join(broken...)
}

// nullsIn returns the paths of what is null in the JSON of a report.
func nullsIn(data []byte) ([]string, error) {
	var v any
	if err := json.Unmarshal(data, &v); err != nil {
		return nil, err
	}
	var out []string
	var walk func(path string, v any)
	walk = func(path string, v any) {
		switch v := v.(type) {
		case nil:
			out = append(out, path)
		case map[string]any:
			for k, e := range v {
				walk(path+"."+k, e)
			}
		case []any:
			for i, e := range v {
				walk(fmt.Sprintf("%s[%d]", path, i), e)
			}
		}
	}
	walk("report", v)
	return out, nil
}

// requirePromises reads a text twice and checks everything the report promises.
func requirePromises(tb testing.TB, in Input, brief Brief) *Report {
	tb.Helper()
	a, _ := shared(tb)
	r := a.Read(in, brief)
	require.NoError(tb, brokenPromises(in, brief, r), "text %s", short(in.Text))
	first, err := encode(r)
	require.NoError(tb, err, "text %s", short(in.Text))
	nulls, err := nullsIn(first)
	require.NoError(tb, err, "text %s", short(in.Text))
	require.Empty(tb, nulls, "what is null in the report of %s", short(in.Text))
	second, err := encode(a.Read(in, brief))
	require.NoError(tb, err)
	require.True(tb, bytes.Equal(first, second), "two readings of %s differ", short(in.Text))
	return r
}

// short quotes a text for a failure, the middle of a long one left out.
func short(text string) string {
	if len(text) > 600 {
		return fmt.Sprintf("%q … %q (%d bytes)", text[:300], text[len(text)-300:], len(text))
	}
	return fmt.Sprintf("%q", text)
}

// nasty returns inputs that have broken readers of text before: by name, so
// that a failure says which.
func nasty() map[string]Input {
	return map[string]Input{
		"empty":                         {},
		"one space":                     {Text: " "},
		"only white space":              {Text: " \t\r\n\u00a0\u3000\u2028\u2029\v\f"},
		"only marks":                    {Text: "?!...,;:—…()[]{}“”‘’\"'"},
		"only emoji":                    {Text: "😀🍲👩‍🍳"},
		"only a byte order mark":        {Text: "\ufeff"},
		"byte order mark and text":      {Text: "\ufeffThe soup was nice."},
		"two byte order marks":          {Text: "\ufeff\ufeffNice."},
		"byte order mark inside":        {Text: "The so\ufeffup was nice.\ufeff It was thin."},
		"one letter":                    {Text: "a"},
		"one digit":                     {Text: "7"},
		"one full stop":                 {Text: "."},
		"one question mark":             {Text: "?"},
		"question in the text":          {Text: "Was the soup nice? It was nice?? Why was it nice?"},
		"question in a quoted piece":    {Text: "I washed my hands? Then the texture? was good? hygiene?"},
		"curly quotes in the text":      {Text: "My gran said “lovely” and “why?” and I said the “taste” was “nice”."},
		"quotes that never close":       {Text: "\"The stew was “nice and \"thick and 'good"},
		"quotes that never open":        {Text: "nice” thick\" good’ stew)]}"},
		"CRLF":                          {Text: "The top was golden.\r\nIt was nice.\r\n\r\n- thin\r\n- dry\r\n"},
		"only CR":                       {Text: "The top was golden.\rIt was nice.\r"},
		"LF CR":                         {Text: "Golden\n\rNice\n\rThin"},
		"mixed line ends":               {Text: "Golden\r\n\nNice\r\rThin\u2028Dry\u2029Moist\u0085Hot\vSoft\fWet"},
		"NUL between words":             {Text: "The\x00soup\x00was\x00nice."},
		"NUL at both ends":              {Text: "\x00The soup was nice.\x00"},
		"control characters":            {Text: "\x01\x02\x1b[31mThe soup\x7f was nice\x1b[0m\b\b."},
		"invalid UTF-8 alone":           {Text: "\xff"},
		"invalid UTF-8 many":            {Text: "\xff\xfe\xc0\xaf\xed\xa0\x80\x80"},
		"invalid UTF-8 in a word":       {Text: "The so\xffup was ni\xc3ce because I st\xe2\x82irred it."},
		"invalid UTF-8 at the end":      {Text: "The soup was nice\xe2\x80"},
		"invalid UTF-8 at the start":    {Text: "\x80\xbfThe soup was nice."},
		"a cut emoji":                   {Text: "The soup was nice \xf0\x9f\x98"},
		"right to left":                 {Text: "המרק היה טעים. الحساء كان لذيذا! The soup was nice."},
		"direction marks":               {Text: "\u202eThe soup\u202c was \u200fnice\u200e.\u2066 Thin\u2069."},
		"ZWJ emoji":                     {Text: "Nice 👨‍👩‍👧‍👦 The soup 🏳️‍🌈was thin👩🏽‍🍳. It was hot 🧑‍🍳 I liked it"},
		"flags and keycaps":             {Text: "🇬🇧🇮🇪 3️⃣ soups, 10/10 #️⃣ nice ❤️‍🔥"},
		"combining marks":               {Text: "cre\u0301me bru\u0302le\u0301e was ni\u0323\u0307ce, co\u0308\u0304oked"},
		"combining marks first":         {Text: "\u0301\u0302 The soup was nice."},
		"a heap of combining marks":     {Text: "ni" + strings.Repeat("\u0336\u0489", 300) + "ce soup."},
		"full width":                    {Text: "Ｔｈｅ ｓｏｕｐ ｗａｓ ｎｉｃｅ。Ｉｔ was thin．"},
		"letters that change length":    {Text: "İSTANBUL soup was nice. ẞ ß ŉ ǰ ΐ ﬁrm and ﬂaky K Å"}, // İ, K and Å change length in lower case
		"long s and ligatures":          {Text: "The ſoup was criſp and ﬂuﬀy."},
		"figures of other scripts":      {Text: "Baked for ٣٥ minutes at १८० degrees, ½ a cup, ² ③ Ⅷ."},
		"zero-width spaces":             {Text: "The\u200bsoup\u200b was\u200b nice\u200b.\u200bIt was thin."},
		"soft hyphens":                  {Text: "The cara\u00admel was stick\u00ady."},
		"apostrophes of every sort":     {Text: "I didn't, didn’t, didn‘t, didn`t, didn´t, didnʼt, didnt stir'"},
		"apostrophes alone":             {Text: "' ’ 's n't 'll 'twas rock'n'roll o'clock d'"},
		"hyphens of every sort":         {Text: "golden-brown golden‑brown golden‐brown golden–brown - -- --- -golden golden-"},
		"numbers of every sort":         {Text: "180C 180c. 1.5 kg 1,000 1/2 20mins. 3:30pm 1.2.3 .5 5. 62 °C"},
		"full stops without spaces":     {Text: "Nice.thin.dry.golden.because.so.It.was"},
		"bullets alone":                 {Text: "-\n*\n•\n1.\n2)\na)\n# \n---\n***"},
		"bullets upon bullets":          {Text: "- - - • 1. 2) # nice\n>>> > thin"},
		"a heading and nothing":         {Text: "Taste:\nTexture:\nHygiene:"},
		"only connectives":              {Text: "because so as since for to by with using without which that then and if otherwise"},
		"connectives at the end":        {Text: "It was nice because. It was thin so. Golden as. Dry since. I did it by. To. In order. As a. Which"},
		"connectives at the start":      {Text: "Because. So. As. Since. To. Therefore! Otherwise? In case. Or else. That is why."},
		"one word":                      {Text: "nice"},
		"a word over and over":          {Text: strings.Repeat("nice ", 200)},
		"no spaces at all":              {Text: strings.Repeat("goldenbrown", 100)},
		"capitals":                      {Text: "THE SOUP WAS NICE BECAUSE I STIRRED IT!!! SO CREAMY"},
		"slots of the wordings":         {Text: "The {dish} was {word} and {words}. It tasted {moment}.", Title: "{dish} {word}"},
		"formats":                       {Text: "The %s was %d nice %!v(MISSING). $1 \\1 ${x}"},
		"markup":                        {Text: "<b>The soup</b> was &amp; nice <script>alert(1)</script> \u2028 </p>"},
		"JSON":                          {Text: `{"text": "The soup was nice because \"I\" stirred it", "n": null}`},
		"a title with a question mark":  {Text: "I made it.", Title: "What soup?"},
		"a title of marks":              {Text: "I made it.", Title: "?!"},
		"a title with quotes":           {Text: "I made it.", Title: "“soup” \"stew\""},
		"a title of several lines":      {Text: "I made it.", Title: "leek\r\nsoup\x00"},
		"a title of bad bytes":          {Text: "I made it.", Title: "\xff\xfe soup"},
		"a long title":                  {Text: "I made it.", Title: strings.Repeat("soup ", 500)},
		"an unknown role":               {Text: "The soup was nice.", Role: "gran"},
		"an adult":                      {Text: "You did well. Turn the tins round. The crust was nice? Wash up next time.", Role: Adult},
		"a danger in every sentence":    {Text: "The chicken was pink in the middle. I cut my finger. I left the rice out all night. I licked the bowl of cake mix."},
		"a quoted piece over two lines": {Text: "I washed my hands and\nwiped the\nworktop and\r\ntied my hair"},
	}
}

func TestPromisesOverNastyInputs(t *testing.T) {
	_, lex := shared(t)
	inputs := nasty()
	require.NotEmpty(t, inputs)
	for name, in := range inputs {
		t.Run(name, func(t *testing.T) {
			for _, asked := range []int{0, 1, 3} {
				requirePromises(t, in, Brief{Dish: lex.General(), Questions: asked})
			}
		})
	}
}

// TestPromisesForEveryDishType holds the promises with every dish type's own
// words, moments and hazards, for both roles.
func TestPromisesForEveryDishType(t *testing.T) {
	_, lex := shared(t)
	require.NotEmpty(t, lex.Types())
	text := "I tied my hair back so that none fell in. It was nice.\nThe top went brown, the middle was cold and pink because I took it out too soon. Next time I'd leave it in"
	for _, d := range lex.Types() {
		for _, role := range []Role{Learner, Adult} {
			t.Run(d.Name+" "+string(role), func(t *testing.T) {
				title := ""
				if len(d.Dishes) > 0 {
					title = d.Dishes[0]
				}
				requirePromises(t, Input{Text: text, Title: title, Role: role}, Brief{Dish: d})
			})
		}
	}
}

// pieces are what generated texts are built of.
func pieces() []string {
	return []string{
		"the", "a", "I", "i", "it", "they", "my", "mum", "was", "were", "went", "made", "stirred", "chopped", "washed", "tied", "left",
		"soup", "crust", "dough", "chicken", "rice", "onions", "sauce", "hands", "knife", "board", "oven", "probe", "62", "75", "180C", "½", "3.5",
		"nice", "good", "lovely", "well", "better", "perfect", "sick", "golden", "crisp", "dry", "salty", "smoky", "creamy", "burnt", "pink", "raw",
		"because", "so", "so that", "as", "since", "for", "to", "in order to", "by", "using", "with", "without", "which", "that", "if", "when",
		"otherwise", "therefore", "then", "and", "but", "not", "n't", "didnt", "too", "very", "next time", "due to", "as a result", "in case",
		"taste", "texture", "smell", "colour", "hygiene", "safety", "cut", "finger", "licked", "reheated", "allergic", "yesterday", "overnight",
		"?", "!", ".", ",", ";", ":", "…", "...", "!!!", "?!", "-", "–", "•", "(", ")", "[", "]", "{word}", "{dish}", "“", "”", "\"", "'", "’", "°C", "&", "/", "#", "*",
		"😀", "👩‍🍳", "👨‍👩‍👧", "🏳️‍🌈", "❤️", "🇬🇧", "👍🏽", "☑", "\u200d", "\ufe0f",
		"\n", "\r\n", "\r", "\n\n", "\r\n\r\n", "\n- ", "\n1. ", "\u2028", "\t", "\u00a0", "\u3000", "\u200b",
		"\xff", "\xc3", "\xe2\x80", "\xed\xa0\x80", "\x80", "\x00", "\x1b[1m", "\ufeff", "\ufffd",
		"שלום", "مرق", "\u202e", "\u202c", "\u200f", "スープ", "汤", "суп", "İ", "ẞ", "ﬁ", "K",
		"e\u0301", "\u0301", "n\u0303", "o\u0336\u0336", "créme", "naïve", "e.g.", "no.", "Mr.", "tbsp.", "a.m.", "x@y.uk", "notes.txt",
	}
}

// generated builds a text and a reading of it out of pieces, from a seed.
func generated(seed uint64, dishes []lexicon.Dish) (Input, Brief) {
	rnd := rand.New(rand.NewPCG(seed, 0x5ab0e))
	list := pieces()
	build := func(n int) string {
		var b strings.Builder
		for range n {
			b.WriteString(list[rnd.IntN(len(list))])
			// Mostly a space, at times nothing: marks and letters that meet
			// are where offsets go wrong.
			if rnd.IntN(6) > 0 {
				b.WriteByte(' ')
			}
		}
		return b.String()
	}
	in := Input{Text: build(1 + rnd.IntN(70)), Role: []Role{Learner, Adult}[rnd.IntN(2)]}
	if rnd.IntN(3) == 0 {
		in.Title = build(1 + rnd.IntN(4))
	}
	return in, Brief{Dish: dishes[rnd.IntN(len(dishes))], Questions: rnd.IntN(6)}
}

func TestPromisesOverGeneratedTexts(t *testing.T) {
	_, lex := shared(t)
	dishes := append(lex.Types(), lex.General())
	seeds := uint64(1500)
	if testing.Short() {
		seeds = 150
	}
	for seed := range seeds {
		in, brief := generated(seed, dishes)
		ok := t.Run(fmt.Sprintf("seed %d", seed), func(t *testing.T) { requirePromises(t, in, brief) })
		if !ok && testing.Short() {
			return
		}
	}
}

// TestSameInputSameBytesFromAnotherAnalyzer rules out an order that depends on
// a map: two Analyzers built apart, and many goroutines on one, agree byte for
// byte.
func TestSameInputSameBytesFromAnotherAnalyzer(t *testing.T) {
	a, lex := shared(t)
	again, err := lexicon.Load()
	require.NoError(t, err)
	tagger, err := perceptron.New()
	require.NoError(t, err)
	other := New(again, tagger)
	dishes, otherDishes := append(lex.Types(), lex.General()), append(again.Types(), again.General())
	for seed := uint64(5000); seed < 5040; seed++ {
		in, brief := generated(seed, dishes)
		want, err := encode(a.Read(in, brief))
		require.NoError(t, err)
		_, brief = generated(seed, otherDishes)
		got, err := encode(other.Read(in, brief))
		require.NoError(t, err)
		assert.Equal(t, string(want), string(got), "seed %d, text %s", seed, short(in.Text))
	}
}

func TestManyGoroutinesShareOneAnalyzer(t *testing.T) {
	a, lex := shared(t)
	in := Input{Text: "I tied my hair back so that none fell in. The crust was nice, golden and crisp. Next time I'd bake it less.", Title: "loaf"}
	brief := Brief{Dish: lex.General(), Questions: 3}
	want, err := encode(a.Read(in, brief))
	require.NoError(t, err)
	var wg sync.WaitGroup
	for range 8 {
		wg.Go(func() {
			for range 20 {
				got, err := encode(a.Read(in, brief))
				assert.NoError(t, err)
				assert.Equal(t, string(want), string(got))
			}
		})
	}
	wg.Wait()
}

// TestWhatIsKeptOutlivesTheReading reads text after text, as a later one takes
// over the memory of those before, and looks at what was kept of the first.
func TestWhatIsKeptOutlivesTheReading(t *testing.T) {
	a, lex := shared(t)
	dishes := append(lex.Types(), lex.General())
	type kept struct {
		was   string
		notes *Notes
	}
	var all []kept
	spoken := func(n *Notes) string { // with its topics, which tell what became of a plan
		b, err := json.Marshal(n)
		require.NoError(t, err)
		return string(b)
	}
	for seed := uint64(6000); seed < 6040; seed++ {
		in, brief := generated(seed, dishes)
		n := a.Note(in, brief)
		all = append(all, kept{spoken(n), n})
		a.Read(in, brief)
		a.Plans(in, brief)
	}
	for i, k := range all {
		assert.Equal(t, k.was, spoken(k.notes), "text %d", i)
	}
}
