package pages

import (
	"crypto/sha256"
	"errors"
	"io/fs"
	"sync"
	"sync/atomic"
	"time"

	"saywhy/analyze"
	"saywhy/lexicon"
)

// CourseLibrary is a Library over a tutor's folder. It looks now and then
// whether the folder has changed, and then reads it again. While something in
// it is wrong, the last good words stay in use and the shelf says what is.
type CourseLibrary struct {
	dir    fs.FS
	tagger analyze.Tagger
	now    func() time.Time

	shelf atomic.Pointer[Shelf]

	mu     sync.Mutex // held while the folder is looked at
	looked time.Time
	stamp  [sha256.Size]byte // of the files as they were read last
}

// lookEvery is how often the folder is looked at while pages are asked for.
const lookEvery = time.Second

// NewCourseLibrary reads a folder. A folder that is wrong from the start is no
// error when words can be had without it: the built-in ones are then in use,
// with the problems beside them.
func NewCourseLibrary(dir fs.FS, tagger analyze.Tagger) (*CourseLibrary, error) {
	l := &CourseLibrary{dir: dir, tagger: tagger, now: time.Now}
	if err := l.Reload(); err != nil {
		return nil, err
	}
	return l, nil
}

// Current returns the shelf in use. One request at a time looks at the folder;
// the others go on with what there is.
func (l *CourseLibrary) Current() *Shelf {
	if l.mu.TryLock() {
		if now := l.now(); now.Sub(l.looked) >= lookEvery || now.Before(l.looked) {
			_ = l.reload() // what was good before stays in use
		}
		l.mu.Unlock()
	}
	return l.shelf.Load()
}

// Reload looks at the folder at once.
func (l *CourseLibrary) Reload() error {
	l.mu.Lock()
	defer l.mu.Unlock()
	return l.reload()
}

func (l *CourseLibrary) reload() error {
	l.looked = l.now()
	stamp := stampOf(l.dir)
	if l.shelf.Load() != nil && stamp == l.stamp {
		return nil
	}
	lex, course, err := lexicon.LoadCourse(l.dir)
	var problems lexicon.Problems
	switch {
	case errors.As(err, &problems):
		if last := l.shelf.Load(); last != nil {
			kept := *last
			kept.Problems = problems
			l.shelf.Store(&kept)
			l.stamp = stamp
			return nil
		}
		if lex, err = lexicon.Load(); err != nil {
			return err
		}
		course = &lexicon.Course{}
	case err != nil:
		return err
	}
	l.shelf.Store(&Shelf{Lexicon: lex, Course: course, Analyzer: analyze.New(lex, l.tagger), Problems: problems})
	l.stamp = stamp
	return nil
}

// stampOf tells one state of the folder from another by what its files hold:
// clocks and the times of files can be wrong.
func stampOf(dir fs.FS) (sum [sha256.Size]byte) {
	h := sha256.New()
	names, _ := fs.Glob(dir, "*.y*ml") // the patterns are well formed
	more, _ := fs.Glob(dir, "dishes/*.y*ml")
	for _, name := range append(names, more...) {
		h.Write([]byte(name + "\x00"))
		data, err := fs.ReadFile(dir, name)
		if err != nil {
			h.Write([]byte{1})
			continue
		}
		inside := sha256.Sum256(data)
		h.Write(inside[:])
	}
	h.Sum(sum[:0])
	return sum
}
