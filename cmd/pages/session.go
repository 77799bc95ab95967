package pages

import (
	"crypto/rand"
	"net/http"
	"sync"
	"time"
)

// Sessions of tutors. A key opens one session, once; a session lives in a
// cookie that no script sees and no other site sends.
type sessions struct {
	mu   sync.Mutex
	now  func() time.Time
	keys map[string]time.Time // until when each opens a session; zero: until used
	open map[string]time.Time // until when each is good
}

const (
	sessionCookie = "saywhy-tutor"
	sessionTime   = 12 * time.Hour   // without a request
	keyTime       = 30 * time.Minute // of a key made for somebody else
	mostSessions  = 50
)

func newSessions(key string, now func() time.Time) *sessions {
	s := &sessions{now: now, keys: map[string]time.Time{}, open: map[string]time.Time{}}
	if key != "" {
		s.keys[key] = time.Time{}
	}
	return s
}

// invite makes a key for one more person.
func (s *sessions) invite() string {
	s.mu.Lock()
	defer s.mu.Unlock()
	s.sweep()
	key := rand.Text()
	s.keys[key] = s.now().Add(keyTime)
	return key
}

// enter spends a key and answers with the cookie of a new session.
func (s *sessions) enter(w http.ResponseWriter, key string) bool {
	s.mu.Lock()
	defer s.mu.Unlock()
	s.sweep()
	if _, ok := s.keys[key]; !ok || len(s.open) >= mostSessions {
		return false
	}
	delete(s.keys, key)
	token := rand.Text()
	s.open[token] = s.now().Add(sessionTime)
	http.SetCookie(w, &http.Cookie{Name: sessionCookie, Value: token, Path: "/", HttpOnly: true, SameSite: http.SameSiteStrictMode})
	return true
}

// known reports whether a request comes from a session.
func (s *sessions) known(r *http.Request) bool {
	c, err := r.Cookie(sessionCookie)
	if err != nil {
		return false
	}
	s.mu.Lock()
	defer s.mu.Unlock()
	s.sweep()
	if _, ok := s.open[c.Value]; !ok {
		return false
	}
	s.open[c.Value] = s.now().Add(sessionTime)
	return true
}

// leave ends the session of a request.
func (s *sessions) leave(w http.ResponseWriter, r *http.Request) {
	if c, err := r.Cookie(sessionCookie); err == nil {
		s.mu.Lock()
		delete(s.open, c.Value)
		s.mu.Unlock()
	}
	http.SetCookie(w, &http.Cookie{Name: sessionCookie, Path: "/", MaxAge: -1, HttpOnly: true, SameSite: http.SameSiteStrictMode})
}

// sweep drops what is past its time.
func (s *sessions) sweep() {
	for key, until := range s.keys {
		if !until.IsZero() && s.now().After(until) {
			delete(s.keys, key)
		}
	}
	for token, until := range s.open {
		if s.now().After(until) {
			delete(s.open, token)
		}
	}
}
