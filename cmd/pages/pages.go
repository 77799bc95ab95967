// Package pages serves saywhy to people who do not open a terminal: a learner
// who writes, the adult who gives feedback and looks for words, the tutor who
// sets them.
//
// New returns one http.Handler. It touches no file system and no network of its
// own: words come through a Library, the tutor's folder through a Folder. Every
// page works without scripts. What a person writes is read, answered and
// forgotten: it is never kept here, never logged, and never part of an address.
package pages

import (
	"embed"
	"errors"
	"net/http"
	"runtime"
	"time"
)

//go:embed static templates
var files embed.FS

// Options are what the pages are made of.
type Options struct {
	Library Library

	// Tutor is what the tutor's pages work on; nil for none.
	Tutor *Tutor

	// Hosts are the names, besides localhost, under which the pages may be asked
	// for; see guard. Addresses in digits need not be named.
	Hosts []string

	// Local says that only this machine reaches the pages, so that no address
	// but its own is answered.
	Local bool
}

// site answers requests. It holds no text of anybody's.
type site struct {
	library   Library
	templates map[string]*page
	assets    map[string]asset
	reading   chan struct{} // as many places as texts are read at once
	desk      *desk         // nil without a tutor
	finders   finders
}

// route is what answers one path. A method without a handler is refused.
type route struct {
	path string
	get  http.HandlerFunc
	post http.HandlerFunc
}

func (s *site) routes() []route {
	return []route{
		{path: "/{$}", get: s.write},
		{path: "/write", get: s.write, post: s.readLearner},
		{path: "/write/open", get: s.write, post: s.openLearner},
		{path: "/write/file", get: s.write, post: s.download},
		{path: "/feedback", get: s.feedback, post: s.readAdult},
		{path: "/feedback/open", get: s.feedback, post: s.openAdult},
		{path: "/feedback/file", get: s.feedback, post: s.download},
		{path: "/words", get: s.words, post: s.findWords},
		{path: "/words/print", get: s.printWords},
		{path: "/sheet", get: s.sheet},
		{path: "/sheet/print", get: s.sheet, post: s.printSheet},
		{path: "/static/{name}", get: s.static},
	}
}

// New returns the pages. They answer at the root of whatever address they are
// served at.
func New(o Options) (http.Handler, error) {
	if o.Library == nil {
		return nil, errors.New("pages need a library to read with")
	}
	s := &site{library: o.Library, reading: make(chan struct{}, runtime.GOMAXPROCS(0))}
	if err := s.loadAssets(); err != nil {
		return nil, err
	}
	if err := s.loadTemplates(); err != nil {
		return nil, err
	}
	mux := http.NewServeMux()
	routes := s.routes()
	if o.Tutor != nil {
		s.desk = &desk{Tutor: *o.Tutor, sessions: newSessions(o.Tutor.Key, time.Now)}
		routes = append(routes, s.tutorRoutes()...)
	}
	for _, r := range routes {
		mux.HandleFunc(r.path, s.methods(r))
	}
	mux.HandleFunc("/", func(w http.ResponseWriter, r *http.Request) { s.fail(w, r, http.StatusNotFound) })
	return s.guard(mux, o), nil
}

// methods answers a route's path by the method that was used.
func (s *site) methods(r route) http.HandlerFunc {
	return func(w http.ResponseWriter, req *http.Request) {
		switch {
		case r.get != nil && (req.Method == http.MethodGet || req.Method == http.MethodHead):
			r.get(w, req)
		case r.post != nil && req.Method == http.MethodPost:
			r.post(w, req)
		default:
			allow := "GET, HEAD"
			if r.post != nil {
				allow += ", POST"
			}
			w.Header().Set("Allow", allow)
			s.fail(w, req, http.StatusMethodNotAllowed)
		}
	}
}
