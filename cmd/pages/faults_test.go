package pages

import (
	"fmt"
	"io/fs"
	"maps"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/analyze/perceptron"
	"saywhy/lexicon"
)

// A machine's clock may be wrong and may be put right while the pages are open,
// forwards or back: nobody is put out, and no change is missed.

func TestSessionsWhenTheClockIsSetBack(t *testing.T) {
	now := time.Date(2026, 3, 14, 10, 0, 0, 0, time.UTC)
	s := newSessions("ONCE", func() time.Time { return now })
	enter := func(key string) *http.Request {
		w := httptest.NewRecorder()
		require.True(t, s.enter(w, key), key)
		r := httptest.NewRequest(http.MethodGet, "/tutor", nil)
		r.AddCookie(w.Result().Cookies()[0])
		return r
	}
	first := enter("ONCE")
	key := s.invite()
	now = now.AddDate(-2, 0, 0)
	assert.True(t, s.known(first), "who is in stays in")
	assert.False(t, s.enter(httptest.NewRecorder(), "ONCE"), "what was used stays used")
	second := enter(key)
	assert.False(t, s.enter(httptest.NewRecorder(), key))
	now = now.Add(sessionTime - time.Second)
	assert.True(t, s.known(first))
	assert.True(t, s.known(second))
	now = now.Add(sessionTime + time.Second)
	assert.False(t, s.known(first), "and goes when nothing was asked for so long")
}

// TestSessionsGoByTheTimeThatPassed: as long as both times come from time.Now,
// comparing them passes over the clock on the wall (package time, "Monotonic
// Clocks"). Round(0) takes what that goes by away.
func TestSessionsGoByTheTimeThatPassed(t *testing.T) {
	s := newSessions("ONCE", time.Now)
	require.True(t, s.enter(httptest.NewRecorder(), "ONCE"))
	s.invite()
	require.Len(t, s.open, 1)
	require.Len(t, s.keys, 1)
	for until := range maps.Values(s.open) {
		assert.NotEqual(t, until.String(), until.Round(0).String(), "a session")
	}
	for until := range maps.Values(s.keys) {
		assert.NotEqual(t, until.String(), until.Round(0).String(), "a key")
	}
}

func TestACourseIsReadAgainWhenTheClockIsSetBack(t *testing.T) {
	c := newSchool(t)
	now := time.Now()
	c.library.now = func() time.Time { return now }
	title := func() string {
		d, ok := c.library.Current().Lexicon.Type("soups")
		require.True(t, ok)
		return d.Title
	}
	for i, clock := range []time.Time{now.AddDate(3, 0, 0), now.AddDate(-3, 0, 0), now.AddDate(-9, 0, 0)} {
		now = clock
		want := fmt.Sprintf("Soups %d", i)
		// The file's own time goes back too, as that of a copy from a stick.
		c.folder.mu.Lock()
		files := maps.Clone(c.folder.files)
		files["dishes/soups.yaml"] = &fstest.MapFile{Data: []byte("type: soups\ntitle: " + want + "\n"), ModTime: clock.AddDate(-20, 0, 0)}
		c.folder.files = files
		c.folder.mu.Unlock()
		assert.Equal(t, want, title())
	}
}

// meddledFolder is a folder in which another program writes a file before that
// file or course.yaml, which is read beside it, is read for the n-th time.
type meddledFolder struct {
	*memory
	name   string
	reads  int
	before int
	write  func()
}

func (m *meddledFolder) Open(name string) (fs.File, error) {
	if name == m.name || name == lexicon.CourseFile {
		if m.reads++; m.reads == m.before {
			m.write()
		}
	}
	return m.memory.Open(name)
}

// TestTheCourseFileIsReplacedDuringASave: at whichever reading another
// program adds its row, that row stays. The tutor's own is there too,
// or the page says that it is not.
func TestTheCourseFileIsReplacedDuringASave(t *testing.T) {
	const name = "dishes/soups.yaml"
	tagger, err := perceptron.New()
	require.NoError(t, err)
	saved, refused := 0, 0
	for n, written := 1, false; !written; n++ {
		require.Less(t, n, 100)
		folder := &memory{files: fstest.MapFS{name: {Data: []byte(soups)}}}
		m := &meddledFolder{memory: folder, name: name, before: -1, write: func() {
			now := folder.read(name)
			written = strings.Contains(now, "zonky") // what comes later meets no save
			theirs := strings.Replace(now, "    slurpy", "    gloopish: {means: \"thick and slow\"}\n    slurpy", 1)
			require.NotEqual(t, now, theirs)
			require.NoError(t, folder.Write(name, []byte(theirs)))
		}}
		library, err := NewCourseLibrary(m, tagger)
		require.NoError(t, err)
		d := &desk{Tutor: Tutor{Folder: m, Library: library}}
		m.reads, m.before = 0, n
		out := d.save("soups", row{Sense: "texture", Word: "zonky", Means: "wobbles and then stops", File: stampOfData([]byte(soups))}, false)
		now := folder.read(name)
		require.GreaterOrEqual(t, m.reads, n, "it never looked at the course again")
		assert.Contains(t, now, "gloopish", "reading %d: the other row is lost", n)
		assert.Contains(t, now, "slurpy")
		if out.done != "" {
			saved++
			assert.Contains(t, now, "zonky", "reading %d: it says that it saved", n)
		} else {
			refused++
			assert.NotContains(t, now, "zonky", "reading %d: it says that it did not", n)
			assert.NotEmpty(t, out.problems, "reading %d", n)
		}
	}
	assert.Positive(t, saved)
	assert.Positive(t, refused)
}

// TestTheCourseFolderIsTakenAway, as a memory stick is: the last words stay in
// use, and an edit says what to check.
func TestTheCourseFolderIsTakenAway(t *testing.T) {
	c := newSchool(t).enter()
	now := time.Now()
	c.library.now = func() time.Time { now = now.Add(time.Hour); return now }
	form := c.form("soups", "texture", "slurpy")
	c.folder.mu.Lock()
	c.folder.files = fstest.MapFS{}
	c.folder.full = true
	c.folder.mu.Unlock()
	form.Set("means", "drunk with a noise")
	res, body := c.ask(post("/tutor/dish/soups", form))
	assert.Equal(t, http.StatusConflict, res.StatusCode)
	assert.Contains(t, body, "drunk with a noise", "what was typed is still there")
	assert.Empty(t, c.folder.snapshot())
	res, _ = c.ask(get("/"))
	assert.Equal(t, http.StatusOK, res.StatusCode)
}
