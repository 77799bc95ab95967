package pages

import (
	"errors"
	"io"
	"io/fs"
	"maps"
	"net/http"
	"net/url"
	"regexp"
	"strings"
	"sync"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/analyze"
	"saywhy/analyze/perceptron"
	"saywhy/corpus"
)

// memory is a Folder in memory.
type memory struct {
	mu    sync.Mutex
	files fstest.MapFS
	full  bool // writing fails, as on a full disk
}

func (m *memory) snapshot() fstest.MapFS {
	m.mu.Lock()
	defer m.mu.Unlock()
	return maps.Clone(m.files)
}

func (m *memory) Open(name string) (fs.File, error) { return m.snapshot().Open(name) }

func (m *memory) Write(name string, data []byte) error {
	m.mu.Lock()
	defer m.mu.Unlock()
	if m.full {
		return errors.New("no space left")
	}
	if m.files == nil {
		m.files = fstest.MapFS{}
	}
	m.files[name] = &fstest.MapFile{Data: data}
	return nil
}

func (m *memory) Remove(name string) error {
	m.mu.Lock()
	defer m.mu.Unlock()
	delete(m.files, name)
	return nil
}

func (m *memory) read(name string) string {
	if f := m.snapshot()[name]; f != nil {
		return string(f.Data)
	}
	return ""
}

// school is the pages with a tutor's folder.
type school struct {
	tb     testing.TB
	folder *memory
	h      http.Handler
	cookie *http.Cookie

	library *CourseLibrary
	options Options
}

// invite returns a key for one more browser.
func (c *school) invite() string {
	if c.cookie == nil {
		c.enter()
	}
	_, body := c.ask(post("/tutor/invite", nil))
	return regexp.MustCompile(`tutor/open/(\w+)`).FindStringSubmatch(body)[1]
}

// address makes the pages as they are when others on the network reach them.
func (c *school) address(at string) {
	c.tb.Helper()
	c.options.Tutor.Address = at
	var err error
	c.h, err = New(c.options)
	require.NoError(c.tb, err)
}

const soups = "# My own words.\ntype: soups\nwords:\n  texture:\n    slurpy: {means: \"sucked up with a noise\"} # as my gran says\n"

func newSchool(tb testing.TB) *school {
	tb.Helper()
	tagger, err := perceptron.New()
	require.NoError(tb, err)
	c := &school{tb: tb, folder: &memory{files: fstest.MapFS{
		"course.yaml":       {Data: []byte("title: Saltmarsh Kitchen\nsessions:\n  - {title: Week 1, dish: lentil soup}\n")},
		"dishes/soups.yaml": {Data: []byte(soups)},
	}}}
	library, err := NewCourseLibrary(c.folder, tagger)
	require.NoError(tb, err)
	texts := func() ([]corpus.Reported, error) {
		s := library.Current()
		d, _, err := s.Course.Cooked(s.Lexicon, "lentil soup")
		r := s.Analyzer.Read(analyze.Input{Text: "The soup looked zonkish. It felt zonkish."}, analyze.Brief{Dish: d})
		return []corpus.Reported{{Name: "idris.txt", Dish: d.Name, Report: r}}, err
	}
	group := func(w io.Writer) error {
		_, err := io.WriteString(w, "<!doctype html><html><head><style>p{margin:0}</style></head><body><p>The group</p></body></html>")
		return err
	}
	c.library = library
	c.options = Options{Library: library, Local: true, Tutor: &Tutor{Folder: c.folder, Library: library, Key: "ONCE", Texts: texts, Group: group}}
	c.h, err = New(c.options)
	require.NoError(tb, err)
	return c
}

// enter signs the tutor in.
func (c *school) enter() *school {
	c.tb.Helper()
	res, _ := ask(c.h, post("/tutor/open", url.Values{"key": {"ONCE"}}))
	require.Equal(c.tb, http.StatusSeeOther, res.StatusCode)
	require.Len(c.tb, res.Cookies(), 1)
	c.cookie = res.Cookies()[0]
	return c
}

func (c *school) ask(r *http.Request) (*http.Response, string) {
	if c.cookie != nil {
		r.AddCookie(c.cookie)
	}
	return ask(c.h, r)
}

// form returns the hidden boxes of the form for a word as the page shows it.
func (c *school) form(dish, sense, word string) url.Values {
	c.tb.Helper()
	_, body := c.ask(get("/tutor/dish/" + dish + "?" + url.Values{"sense": {sense}, "word": {word}, "all": {"yes"}}.Encode()))
	_, body, ok := strings.Cut(body, `id="row"`)
	require.True(c.tb, ok, "no form for %s", word)
	out := url.Values{"act": {"save"}}
	for _, m := range regexp.MustCompile(`name="(\w+)" value="([^"]*)"`).FindAllStringSubmatch(body, -1) {
		if !out.Has(m[1]) {
			out.Set(m[1], html(m[2]))
		}
	}
	return out
}

func html(s string) string {
	return strings.NewReplacer("&#34;", `"`, "&#39;", "'", "&amp;", "&", "&lt;", "<", "&gt;", ">").Replace(s)
}

func (c *school) send(dish string, form url.Values) (*http.Response, string) {
	return c.ask(post("/tutor/dish/"+dish, form))
}

func TestTheTutorsLinkWorksOnce(t *testing.T) {
	c := newSchool(t)
	for _, path := range []string{"/tutor", "/tutor/dish/soups", "/tutor/missing", "/tutor/group", "/tutor/invite"} {
		res, body := c.ask(get(path))
		assert.Equal(t, http.StatusUnauthorized, res.StatusCode, path)
		assert.Contains(t, body, "This page is for the tutor")
	}
	// Looking at the link does not spend it.
	_, body := ask(c.h, get("/tutor/open/ONCE"))
	require.Contains(t, body, "Open the tutor’s desk")
	c.enter()
	assert.True(t, c.cookie.HttpOnly)
	assert.Equal(t, http.SameSiteStrictMode, c.cookie.SameSite)
	again, _ := ask(c.h, post("/tutor/open", url.Values{"key": {"ONCE"}}))
	assert.Equal(t, http.StatusUnauthorized, again.StatusCode)
	res, body := c.ask(get("/tutor"))
	require.Equal(t, http.StatusOK, res.StatusCode)
	assert.Contains(t, body, "Saltmarsh Kitchen")
	assert.Contains(t, body, "Week 1: lentil soup")
	left, _ := c.ask(post("/tutor/leave", nil))
	assert.Equal(t, http.StatusSeeOther, left.StatusCode)
	res, _ = c.ask(get("/tutor"))
	assert.Equal(t, http.StatusUnauthorized, res.StatusCode, "who has left is out")
}

func TestOneTutorLetsAnotherIn(t *testing.T) {
	c := newSchool(t).enter()
	_, body := c.ask(post("/tutor/invite", nil))
	link := regexp.MustCompile(`http://localhost/tutor/open/(\w+)`).FindStringSubmatch(body)
	require.NotNil(t, link)
	second, _ := ask(c.h, post("/tutor/open", url.Values{"key": {link[1]}}))
	assert.Equal(t, http.StatusSeeOther, second.StatusCode)
	third, _ := ask(c.h, post("/tutor/open", url.Values{"key": {link[1]}}))
	assert.Equal(t, http.StatusUnauthorized, third.StatusCode)
}

func TestWithoutACourseThereIsNoTutor(t *testing.T) {
	for _, path := range []string{"/tutor", "/tutor/open/x", "/tutor/dish/soups"} {
		res, _ := ask(handler(t), get(path))
		assert.Equal(t, http.StatusNotFound, res.StatusCode, path)
	}
}

// TestAWordTheTutorAddsIsRead: a learner's text is read with it at once.
func TestAWordTheTutorAddsIsRead(t *testing.T) {
	c := newSchool(t).enter()
	_, before := ask(c.h, post("/write", url.Values{"text": {"The soup was zonky."}, "title": {"lentil soup"}}))
	require.NotContains(t, before, "describes: zonky")

	res, body := c.send("soups", url.Values{"act": {"save"}, "sense": {"texture"}, "word": {"Zonky"}, "means": {"shakes when the bowl is moved"}, "of": {"soup, jelly"}, "forms": {"zonks"}})
	require.Equal(t, http.StatusSeeOther, res.StatusCode, body)
	file := c.folder.read("dishes/soups.yaml")
	assert.Contains(t, file, `zonky: {means: "shakes when the bowl is moved", of: [soup, jelly], forms: [zonks]}`)
	assert.Contains(t, file, "# My own words.")
	assert.Contains(t, file, "# as my gran says")
	_, words := ask(c.h, get("/words?dish=soups&sense=texture"))
	assert.Contains(t, words, "shakes when the bowl is moved")
	_, after := ask(c.h, post("/write", url.Values{"text": {"The soup was zonky."}, "title": {"lentil soup"}}))
	assert.Contains(t, after, "describes: zonky")
}

func TestAWordIsChangedLeftOutAndBroughtBack(t *testing.T) {
	c := newSchool(t).enter()
	form := c.form("soups", "texture", "slurpy")
	form.Set("means", "goes down with a happy noise")
	res, body := c.send("soups", form)
	require.Equal(t, http.StatusSeeOther, res.StatusCode, body)
	assert.Contains(t, c.folder.read("dishes/soups.yaml"), `slurpy: {means: "goes down with a happy noise"} # as my gran says`)
	// A new headword takes the old one's place.
	form = c.form("soups", "texture", "slurpy")
	form.Set("word", "slurpable")
	res, _ = c.send("soups", form)
	require.Equal(t, http.StatusSeeOther, res.StatusCode)
	_, words := ask(c.h, get("/words?dish=soups&sense=texture"))
	assert.Contains(t, words, "<dt>slurpable</dt>")
	assert.NotContains(t, words, "<dt>slurpy</dt>")
	// One that lies below the folder is left out by name.
	form = c.form("soups", "texture", "noodly")
	form.Set("act", "remove")
	res, _ = c.send("soups", form)
	require.Equal(t, http.StatusSeeOther, res.StatusCode)
	assert.Contains(t, c.folder.read("dishes/soups.yaml"), "texture: [slurpy, noodly]")
	// Step by step back to the file as it was, byte for byte.
	_, body = c.ask(get("/tutor/dish/soups?sense=texture"))
	assert.Contains(t, body, "Undo: left out noodly (texture)")
	for range 3 {
		res, _ = c.send("soups", url.Values{"act": {"undo"}, "sense": {"texture"}})
		require.Equal(t, http.StatusSeeOther, res.StatusCode)
	}
	assert.Equal(t, soups, c.folder.read("dishes/soups.yaml"))
	res, body = c.send("soups", url.Values{"act": {"undo"}, "sense": {"texture"}})
	assert.Equal(t, http.StatusUnprocessableEntity, res.StatusCode)
	assert.Contains(t, body, "There is nothing to undo")
}

// TestAFileMadeByAnEditGoesWithItsUndo: a type that the folder had no file of.
func TestAFileMadeByAnEditGoesWithItsUndo(t *testing.T) {
	c := newSchool(t).enter()
	res, body := c.send("breads", url.Values{"act": {"save"}, "sense": {"aroma"}, "word": {"hayloft"}, "means": {"dry and sweet like a barn"}})
	require.Equal(t, http.StatusSeeOther, res.StatusCode, body)
	require.NotEmpty(t, c.folder.read("dishes/breads.yaml"))
	c.send("breads", url.Values{"act": {"undo"}, "sense": {"aroma"}})
	assert.Empty(t, c.folder.read("dishes/breads.yaml"))
}

func TestTheFilesChecksAreShownInPlace(t *testing.T) {
	c := newSchool(t).enter()
	for name, c2 := range map[string]struct {
		form url.Values
		want string
	}{
		"no meaning":      {url.Values{"word": {"wibbly"}}, "The meaning is missing"},
		"no word":         {url.Values{"means": {"shakes"}}, "The word is missing"},
		"a judging word":  {url.Values{"word": {"nice"}, "means": {"pleasant to eat"}}, "nice"},
		"a step, no word": {url.Values{"word": {"wibbly"}, "means": {"shakes"}, "scale": {"wobble"}, "step": {"lots"}}, "should be a number"},
		"too long":        {url.Values{"word": {"wibbly"}, "means": {strings.Repeat("shakes ", 20)}}, "16"},
	} {
		t.Run(name, func(t *testing.T) {
			c2.form.Set("act", "save")
			c2.form.Set("sense", "texture")
			res, body := c.send("soups", c2.form)
			assert.Equal(t, http.StatusUnprocessableEntity, res.StatusCode)
			assert.Contains(t, body, c2.want)
			assert.Contains(t, body, `role="alert"`)
			assert.Contains(t, body, `value="`+c2.form.Get("word")+`"`, "what was typed is still there")
			assert.Equal(t, soups, c.folder.read("dishes/soups.yaml"), "nothing was written")
		})
	}
}

// TestTwoTutorsLoseNothing: different rows go side by side; of the same row the
// second is shown both.
func TestTwoTutorsLoseNothing(t *testing.T) {
	c := newSchool(t).enter()
	mine, theirs, other := c.form("soups", "texture", "slurpy"), c.form("soups", "texture", "slurpy"), c.form("soups", "texture", "sippable")
	theirs.Set("means", "what the second tutor wrote")
	res, _ := c.send("soups", theirs)
	require.Equal(t, http.StatusSeeOther, res.StatusCode)
	other.Set("means", "thin enough to drink")
	res, _ = c.send("soups", other)
	require.Equal(t, http.StatusSeeOther, res.StatusCode)
	assert.Contains(t, res.Header.Get("Location"), "done=beside", "told that there was another change")
	mine.Set("means", "what the first tutor wrote")
	res, body := c.send("soups", mine)
	require.Equal(t, http.StatusConflict, res.StatusCode)
	assert.Contains(t, body, "Somebody else changed this row meanwhile")
	assert.Contains(t, body, "what the second tutor wrote")
	assert.Contains(t, body, "what the first tutor wrote")
	file := c.folder.read("dishes/soups.yaml")
	assert.Contains(t, file, "what the second tutor wrote", "nothing is written over")
	assert.Contains(t, file, "thin enough to drink")
	// Having seen both, one may choose.
	_, body, _ = strings.Cut(body, "As you wrote it")
	again := url.Values{"act": {"save"}}
	for _, m := range regexp.MustCompile(`name="(\w+)" value="([^"]*)"`).FindAllStringSubmatch(body, -1) {
		if !again.Has(m[1]) {
			again.Set(m[1], html(m[2]))
		}
	}
	res, _ = c.send("soups", again)
	require.Equal(t, http.StatusSeeOther, res.StatusCode)
	assert.Contains(t, c.folder.read("dishes/soups.yaml"), "what the first tutor wrote")
}

// TestUndoLosesNoOtherChange: a file that was changed in an editor since stays.
func TestUndoLosesNoOtherChange(t *testing.T) {
	c := newSchool(t).enter()
	c.send("soups", url.Values{"act": {"save"}, "sense": {"texture"}, "word": {"wibbly"}, "means": {"shakes"}})
	changed := c.folder.read("dishes/soups.yaml") + "# a note by hand\n"
	require.NoError(t, c.folder.Write("dishes/soups.yaml", []byte(changed)))
	res, body := c.send("soups", url.Values{"act": {"undo"}, "sense": {"texture"}})
	assert.Equal(t, http.StatusUnprocessableEntity, res.StatusCode)
	assert.Contains(t, body, "has been changed since")
	assert.Equal(t, changed, c.folder.read("dishes/soups.yaml"))
}

func TestABrokenCourseKeepsTheLastGoodWords(t *testing.T) {
	c := newSchool(t).enter()
	require.NoError(t, c.folder.Write("dishes/soups.yaml", []byte("type: soups\nwords:\n  texture:\n    slurpy: {maens: oops}\n")))
	// The next edit looks at the folder at once.
	res, body := c.send("soups", url.Values{"act": {"save"}, "sense": {"texture"}, "word": {"wibbly"}, "means": {"shakes"}})
	assert.Equal(t, http.StatusUnprocessableEntity, res.StatusCode)
	assert.Contains(t, body, "dishes/soups.yaml:4")
	_, words := ask(c.h, get("/words?dish=soups&sense=texture"))
	assert.Contains(t, words, "sucked up with a noise", "the last good words")
	assert.Contains(t, words, "is being mended")
	_, desk := c.ask(get("/tutor"))
	assert.Contains(t, desk, "Something to mend in your files")
}

func TestAFullDiskLosesNothing(t *testing.T) {
	c := newSchool(t).enter()
	c.folder.full = true
	res, body := c.send("soups", url.Values{"act": {"save"}, "sense": {"texture"}, "word": {"wibbly"}, "means": {"shakes when moved"}})
	assert.Equal(t, http.StatusUnprocessableEntity, res.StatusCode)
	assert.Contains(t, body, "could not be written")
	assert.Contains(t, body, `value="shakes when moved"`)
	assert.NotContains(t, body, "no space left", "nothing about the machine")
	assert.Equal(t, soups, c.folder.read("dishes/soups.yaml"))
}

func TestWordsTheListsLackCanBeAdded(t *testing.T) {
	c := newSchool(t).enter()
	_, body := c.ask(get("/tutor/missing"))
	require.Contains(t, body, "zonkish")
	assert.Contains(t, body, "2 times, in 1 text")
	res, body := c.send("soups", url.Values{"act": {"fill"}, "sense": {"texture"}, "word": {"zonkish"}, "of": {"soup"}})
	require.Equal(t, http.StatusOK, res.StatusCode)
	assert.Contains(t, body, `name="word" value="zonkish"`)
	_, body = c.ask(get("/tutor/group"))
	assert.Contains(t, body, "The group")
}
