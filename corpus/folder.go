package corpus

import (
	"context"
	"io/fs"
	"iter"
	"path"
	"runtime"
	"strings"
	"sync"

	"saywhy/lexicon"
)

// FolderOptions say how a folder is read. The zero value will do.
type FolderOptions struct {
	Lexicon *lexicon.Lexicon // tells dishes in names; may be nil
	Course  *lexicon.Course  // sessions, learners, columns and headings; may be nil
	Files   int              // how many files are read at a time; 0 is one a core

	// Anyone yields a text too whose learner or session cannot be told, with
	// what can be told of it, for those who care for the words alone.
	Anyone bool
}

// ahead is how many texts of one file may wait to be taken.
const ahead = 16

// Folder reads every evaluation below a folder. It yields each text with a nil
// error, and whatever could not be read or placed as an error of type
// *Unplaced beside the zero Evaluation; none of these stops the rest. Only when
// ctx ends does it end early, with the cause as its last error.
//
// Files come in the order of their paths, and texts of a file in its order, so
// that the same folder gives the same sequence. Files are read ahead by several
// goroutines and wait in bounded buffers, so that what is held does not grow
// with the folder. All of them have ended when the sequence has.
//
// Passed over without a word, as they are no one's writing: hidden files and
// folders (a name that begins with a full stop), "__MACOSX", "Thumbs.db" and
// "desktop.ini", the locks of open documents ("~$…"; those that begin
// ".~lock" are hidden), and the tutor's own course.yaml and dishes folder at
// the top. Links are not followed, wherever they lead: what lies in the folder
// is read once, and nothing outside it.
//
// A learner whose name is spelt in several ways that differ by case, spaces,
// hyphens or underscores keeps the first of them.
func Folder(ctx context.Context, fsys fs.FS, o FolderOptions) iter.Seq2[Evaluation, error] {
	return func(yield func(Evaluation, error) bool) {
		inner, cancel := context.WithCancel(ctx)
		course := courseOrEmpty(o.Course)
		r := &folderReader{
			ctx: inner, fsys: fsys, course: course, anyone: o.Anyone,
			places: newPlaces(o.Lexicon, course), headings: newSectionHeadings(course.Headings),
		}
		defer r.working.Wait()
		defer cancel()
		workers := o.Files
		if workers <= 0 {
			workers = runtime.GOMAXPROCS(0)
		}
		spelt := spellings{}
		for file := range r.files(workers) {
			for f := range file {
				switch {
				case f.Unplaced != nil:
					if !yield(Evaluation{}, f.Unplaced) {
						return
					}
				default:
					if f.Learner != "" {
						f.Learner = spelt.first(f.Learner)
					}
					if !yield(f.Evaluation, nil) {
						return
					}
				}
			}
			if ctx.Err() != nil {
				break
			}
		}
		if err := context.Cause(ctx); err != nil {
			yield(Evaluation{}, err)
		}
	}
}

// found is one text, or what could not be read or placed.
type found struct {
	Evaluation
	*Unplaced
}

// folderReader walks one folder and reads its files.
type folderReader struct {
	ctx      context.Context
	fsys     fs.FS
	places   *places
	headings sectionHeadings
	course   *lexicon.Course
	anyone   bool
	styles   styleCache
	working  sync.WaitGroup
}

// files walks the folder and returns a queue of files in the order of their
// paths, each a queue of what it holds. At most n files are open or read and
// not yet taken.
func (r *folderReader) files(n int) <-chan (<-chan found) {
	queue := make(chan (<-chan found), n)
	slots := make(chan struct{}, n)
	r.working.Go(func() {
		defer close(queue)
		// Walk passes every error on to the function, which returns none but
		// those that end the walk.
		_ = fs.WalkDir(r.fsys, ".", func(name string, d fs.DirEntry, err error) error {
			if r.ctx.Err() != nil {
				return fs.SkipAll
			}
			if name != "." && ignored(name, d) {
				if d.IsDir() {
					return fs.SkipDir
				}
				return nil
			}
			if err == nil && d.IsDir() {
				return nil
			}
			select {
			case slots <- struct{}{}:
			case <-r.ctx.Done():
				return fs.SkipAll
			}
			file := make(chan found, ahead)
			r.working.Go(func() {
				defer func() { <-slots }()
				defer close(file)
				r.file(name, d, err, file)
			})
			select {
			case queue <- file:
			case <-r.ctx.Done():
				return fs.SkipAll
			}
			if err != nil && d != nil && d.IsDir() {
				return fs.SkipDir
			}
			return nil
		})
	})
	return queue
}

// ignored reports whether a file or folder is no one's writing.
func ignored(name string, d fs.DirEntry) bool {
	base := path.Base(name)
	switch {
	case strings.HasPrefix(base, "."), strings.HasPrefix(base, "~$"), base == "__MACOSX":
		return true
	case strings.EqualFold(base, "Thumbs.db"), strings.EqualFold(base, "desktop.ini"):
		return true
	}
	return name == lexicon.CourseFile || name == "dishes" && d != nil && d.IsDir()
}

func courseOrEmpty(c *lexicon.Course) *lexicon.Course {
	if c == nil {
		return &lexicon.Course{}
	}
	return c
}

// spellings remembers how each learner was spelt first.
type spellings map[string]string

func (s spellings) first(name string) string {
	key := fold(name)
	if first, ok := s[key]; ok {
		return first
	}
	s[key] = name
	return name
}
