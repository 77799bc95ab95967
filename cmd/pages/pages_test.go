package pages

import (
	"io"
	"net/http"
	"net/http/httptest"
	"net/url"
	"os"
	"os/exec"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/analyze"
	"saywhy/analyze/perceptron"
	"saywhy/lexicon"
)

// builtin is the shelf of the built-in words, made once for all tests.
var builtin = sync.OnceValues(func() (*Shelf, error) {
	lex, err := lexicon.Load()
	if err != nil {
		return nil, err
	}
	tagger, err := perceptron.New()
	if err != nil {
		return nil, err
	}
	return &Shelf{Lexicon: lex, Course: &lexicon.Course{}, Analyzer: analyze.New(lex, tagger)}, nil
})

func shelf(tb testing.TB) *Shelf {
	tb.Helper()
	s, err := builtin()
	require.NoError(tb, err)
	return s
}

// handler is the pages as a person at home gets them.
func handler(tb testing.TB) http.Handler {
	tb.Helper()
	h, err := New(Options{Library: Fixed(shelf(tb)), Local: true})
	require.NoError(tb, err)
	return h
}

// ask sends one request to the handler itself.
func ask(h http.Handler, r *http.Request) (*http.Response, string) {
	w := httptest.NewRecorder()
	h.ServeHTTP(w, r)
	res := w.Result()
	body, _ := io.ReadAll(res.Body) // a recorder's body never fails
	return res, string(body)
}

func get(path string) *http.Request {
	return httptest.NewRequest(http.MethodGet, "http://localhost"+path, nil)
}

// post is a form sent from the pages themselves.
func post(path string, form url.Values) *http.Request {
	r := httptest.NewRequest(http.MethodPost, "http://localhost"+path, strings.NewReader(form.Encode()))
	r.Header.Set("Content-Type", "application/x-www-form-urlencoded")
	r.Header.Set("Sec-Fetch-Site", "same-origin")
	return r
}

const soup = "I made lentil soup and it was nice.\nI washed my hands so that no germs got in.\nThe soup was thick because I left the lid off."

func TestTheAnswerKeepsTheTextInView(t *testing.T) {
	res, body := ask(handler(t), post("/write", url.Values{"text": {soup}, "title": {"lentil soup"}}))
	require.Equal(t, http.StatusOK, res.StatusCode)
	for _, want := range []string{
		"What you wrote: lentil soup", "read as: Soups", "I made lentil soup and it was nice.", "says little by itself: “nice”",
		"describes: thick", "said, with detail, with a reason", "not there yet", "I have changed it: read again", "More questions",
	} {
		assert.Contains(t, body, want)
	}
	assert.Equal(t, 3, strings.Count(body, `<li class="card" id="q`), "three questions at first")
	assert.Contains(t, body, "<textarea id=\"text\" name=\"text\" rows=\"12\" spellcheck=\"false\" autocapitalize=\"sentences\">\n"+soup+"</textarea>", "the text comes back as it was")
}

func TestReadingAgainShowsWhatGrew(t *testing.T) {
	h := handler(t)
	_, same := ask(h, post("/write", url.Values{"text": {soup}, "title": {"lentil soup"}, "before": {soup}}))
	assert.Contains(t, same, "The text is the same as before")
	now := strings.Replace(soup, "it was nice", "it tasted sweet and smoky because I fried the onion slowly", 1)
	_, grown := ask(h, post("/write", url.Values{"text": {now}, "title": {"lentil soup"}, "before": {soup}, "asked": {"3"}}))
	for _, want := range []string{"What grew since your last draft", "<dt>taste</dt>", "with detail, with a reason", "went (old sentence 1)", ">changed</li>"} {
		assert.Contains(t, grown, want)
	}
}

// TestMoreQuestionsKeepThoseThereWere: who asks for more gets the same ones
// first, for every labelled text.
func TestMoreQuestionsKeepThoseThereWere(t *testing.T) {
	s := shelf(t)
	for _, text := range []string{soup, "It was nice.", "", "It was pink inside. Everything was good and I worked safely."} {
		few := s.Analyzer.Read(analyze.Input{Text: text}, analyze.Brief{Dish: s.Lexicon.General(), Questions: 3})
		many := s.Analyzer.Read(analyze.Input{Text: text}, analyze.Brief{Dish: s.Lexicon.General(), Questions: 7})
		require.GreaterOrEqual(t, len(many.Questions), len(few.Questions))
		assert.Equal(t, few.Questions, many.Questions[:len(few.Questions)], "%q", text)
	}
}

func TestTheLastPlanIsAskedAbout(t *testing.T) {
	_, body := ask(handler(t), post("/write", url.Values{
		"text": {"The soup was orange."}, "title": {"lentil soup"}, "last": {"The bread was dark. Next time I would take the tin out sooner."},
	}))
	assert.Contains(t, body, "Last time you planned: “take the tin out sooner”")
}

func TestCautionsStandFirst(t *testing.T) {
	_, body := ask(handler(t), post("/feedback", url.Values{"text": {"The chicken was pink inside and we ate it."}, "title": {"roast chicken"}}))
	require.Contains(t, body, "For the adult to look at first")
	assert.Less(t, strings.Index(body, "For the adult to look at first"), strings.Index(body, "Sentence by sentence"))
	assert.Contains(t, body, "Guidance: Food Standards Agency")
	assert.Contains(t, body, "Allergens often in it")
}

func TestTheAdultSeesTheBrief(t *testing.T) {
	_, body := ask(handler(t), get("/feedback"))
	for _, area := range []string{"safety", "hygiene", "organisation", "independence", "appearance", "taste", "texture"} {
		assert.Contains(t, body, "<dt>"+area+"</dt>")
	}
	assert.NotContains(t, body, "<dt>aroma</dt>", "not asked of an adult")
}

func TestATextIsSavedAndOpenedAgain(t *testing.T) {
	h := handler(t)
	res, saved := ask(h, post("/write/file", url.Values{"text": {"Crème brûlée\r\n\r\nIt set."}, "title": {"Crème brûlée!"}}))
	assert.Equal(t, "Crème brûlée\n\nIt set.", saved)
	assert.Equal(t, `attachment; filename="cr-me-br-l-e.txt"`, res.Header.Get("Content-Disposition"))
	var form strings.Builder
	form.WriteString("--b\r\nContent-Disposition: form-data; name=\"title\"\r\n\r\ncustard\r\n")
	form.WriteString("--b\r\nContent-Disposition: form-data; name=\"file\"; filename=\"a.txt\"\r\nContent-Type: text/plain\r\n\r\n\ufeff" + saved + "\r\n--b--\r\n")
	r := httptest.NewRequest(http.MethodPost, "http://localhost/write/open", strings.NewReader(form.String()))
	r.Header.Set("Content-Type", "multipart/form-data; boundary=b")
	res, body := ask(h, r)
	require.Equal(t, http.StatusOK, res.StatusCode)
	assert.Contains(t, body, ">\n"+saved+"</textarea>")
	assert.Contains(t, body, `value="custard"`)
}

func TestWordsByDishSenseAndWhatWasNoticed(t *testing.T) {
	h := handler(t)
	_, body := ask(h, get("/words?dish=soups&sense=texture"))
	for _, want := range []string{"Words for what you notice: Soups", "Notice it when a spoonful runs over your tongue", "<dt>slurpy</dt>", "thickness", "for other food", "Large print"} {
		assert.Contains(t, body, want)
	}
	_, large := ask(h, get("/words?dish=soups&sense=texture&print=large&all=yes"))
	assert.Contains(t, large, `<body class="large">`)
	assert.Contains(t, large, "<dt>crusty</dt>")
	res, found := ask(h, post("/words", url.Values{"noticed": {"bits stick to my teeth"}}))
	require.Equal(t, http.StatusOK, res.StatusCode)
	assert.Contains(t, found, "<dt>claggy</dt>")
	_, none := ask(h, post("/words", url.Values{"noticed": {"xyzzy plugh"}, "dish": {"soups"}}))
	assert.Contains(t, none, "No word fits that yet")
}

func TestHandoutsBringTheirOwnStyleAndNoOther(t *testing.T) {
	h := handler(t)
	for name, r := range map[string]*http.Request{
		"words": get("/words/print?dish=soups"), "sheet": post("/sheet/print", url.Values{"title": {"leek and potato soup"}}),
	} {
		t.Run(name, func(t *testing.T) {
			res, body := ask(h, r)
			require.Equal(t, http.StatusOK, res.StatusCode)
			csp := res.Header.Get("Content-Security-Policy")
			assert.Contains(t, csp, "style-src 'sha256-")
			assert.NotContains(t, csp, "unsafe")
			assert.NotContains(t, body, " style=")
			assert.NotContains(t, body, "<script")
		})
	}
	_, sheet := ask(h, post("/sheet/print", url.Values{"title": {"leek and potato soup"}}))
	assert.Contains(t, sheet, "Leek and potato soup")
}

// TestBuildsForTheBrowser builds the pages for WebAssembly, where there are no
// files.
func TestBuildsForTheBrowser(t *testing.T) {
	if testing.Short() && os.Getenv("CI") == "" {
		t.Skip("building for another system takes a while")
	}
	build := exec.Command("go", "build", "-o", os.DevNull, ".")
	build.Env = append(os.Environ(), "GOOS=js", "GOARCH=wasm", "CGO_ENABLED=0")
	out, err := build.CombinedOutput()
	require.NoError(t, err, "%s", out)
}
