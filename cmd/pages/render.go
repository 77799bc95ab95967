package pages

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"html/template"
	"io/fs"
	"net/http"
	"path"
	"strconv"
	"strings"
)

// page is one template with the layout around it.
type page = template.Template

// frame is what the layout needs of every page.
type frame struct {
	Title string // of the page, in the window and in the list of tabs
	Here  string // the path of the page's place in the navigation
	Large bool   // larger print

	Course  string // the title of the course
	Mending bool   // the course folder has problems; the last good words are in use
	Tutor   bool   // a tutor is signed in
}

// place is an entry of the navigation.
type place struct {
	Path, Name string
	Here       bool
}

func newPlace(path, name, here string) place { return place{path, name, path == here} }

// frame returns the frame of a page.
func (s *site) frame(r *http.Request, shelf *Shelf, here, title string) frame {
	return frame{Title: title, Here: here, Course: shelf.Course.Title, Mending: len(shelf.Problems) > 0,
		Tutor: s.desk != nil && s.desk.sessions.known(r)}
}

func (s *site) loadTemplates() error {
	s.templates = map[string]*page{}
	names, err := fs.Glob(files, "templates/*.html")
	if err != nil {
		return err
	}
	layout, err := template.New("layout.html").Funcs(template.FuncMap{"asset": s.assetPath, "place": newPlace, "say": newSay}).ParseFS(files, "templates/layout.html", "templates/parts.html")
	if err != nil {
		return err
	}
	for _, name := range names {
		base := path.Base(name)
		if base == "layout.html" || base == "parts.html" {
			continue
		}
		t, err := layout.Clone()
		if err != nil {
			return err
		}
		if s.templates[strings.TrimSuffix(base, ".html")], err = t.ParseFS(files, name); err != nil {
			return err
		}
	}
	return nil
}

// show answers with a page.
func (s *site) show(w http.ResponseWriter, r *http.Request, status int, name string, data any) {
	send(w, r, status, s.render(name, data))
}

// render makes a page, whole before its first byte goes out.
func (s *site) render(name string, data any) []byte {
	var b bytes.Buffer
	if err := s.templates[name].Execute(&b, data); err != nil {
		panic("the page " + name + " cannot be made") // with nothing of what was in it
	}
	return b.Bytes()
}

// send answers with a page that is made.
func send(w http.ResponseWriter, r *http.Request, status int, made []byte) {
	w.Header().Set("Content-Type", "text/html; charset=utf-8")
	w.Header().Set("Content-Length", strconv.Itoa(len(made)))
	w.WriteHeader(status)
	if r.Method != http.MethodHead {
		_, _ = w.Write(made) // a reader who has gone needs no answer
	}
}

// asset is an embedded file that pages load, under a name that changes with
// what is in it, so that browsers may keep it.
type asset struct {
	kind string
	data []byte
	path string
}

func assetKinds() map[string]string {
	return map[string]string{".css": "text/css; charset=utf-8", ".js": "text/javascript; charset=utf-8", ".svg": "image/svg+xml"}
}

func (s *site) loadAssets() error {
	s.assets = map[string]asset{}
	return fs.WalkDir(files, "static", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		data, err := files.ReadFile(name)
		if err != nil {
			return err
		}
		sum := sha256.Sum256(data)
		base := path.Base(name)
		s.assets[base] = asset{
			kind: assetKinds()[path.Ext(base)], data: data,
			path: "/static/" + base + "?v=" + hex.EncodeToString(sum[:6]),
		}
		return nil
	})
}

// assetPath is the address of an asset for a template.
func (s *site) assetPath(name string) string { return s.assets[name].path }

func (s *site) static(w http.ResponseWriter, r *http.Request) {
	a, ok := s.assets[r.PathValue("name")]
	if !ok {
		s.fail(w, r, http.StatusNotFound)
		return
	}
	if a.path == r.URL.RequestURI() {
		w.Header().Set("Cache-Control", "public, max-age=31536000, immutable")
	}
	w.Header().Set("Content-Type", a.kind)
	w.Header().Set("Content-Length", strconv.Itoa(len(a.data)))
	w.WriteHeader(http.StatusOK)
	if r.Method != http.MethodHead {
		_, _ = w.Write(a.data)
	}
}
