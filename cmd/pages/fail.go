package pages

import (
	"errors"
	"net/http"
)

// failPage is a page that says what went wrong and what to do.
type failPage struct {
	frame
	Text string
	Then string // what to do
}

// fail answers with a calm page. It says nothing of the request, so that no
// text comes back by a way nobody looks at, and nothing about the machine.
func (s *site) fail(w http.ResponseWriter, r *http.Request, status int) {
	p := failPage{frame: s.frame(r, s.library.Current(), "", "Something is not right")}
	const back = "Go back in your browser. If you were writing, your text should still be in the box."
	switch status {
	case http.StatusNotFound:
		p.Title, p.Text, p.Then = "There is no such page", "The address leads nowhere.", "Choose a page from the list at the top."
	case http.StatusMethodNotAllowed:
		p.Title, p.Text, p.Then = "That does not work here", "This page cannot be used in that way.", "Choose a page from the list at the top."
	case http.StatusRequestEntityTooLarge:
		p.Title, p.Text, p.Then = "That is too much at once", "It is longer than an evaluation can be.", back+" Make it shorter, or read it in two parts."
	case http.StatusUnauthorized:
		p.Title, p.Text, p.Then = "This page is for the tutor", "It opens with the link that saywhy prints when it starts. A link works once.", "If yours has been used, start saywhy again, or ask the tutor who has the page open for a new link."
	case http.StatusForbidden:
		p.Title, p.Text, p.Then = "That did not come from these pages", "To keep you safe, only these pages themselves may send something here.", "Open the page you want from the list at the top, and try again there."
	case http.StatusMisdirectedRequest:
		p.Title, p.Text, p.Then = "This is not the right address", "These pages do not answer under that name.", "Use the address that saywhy printed when it started."
	case http.StatusBadRequest:
		p.Title, p.Text, p.Then = "That could not be read", "Some of it did not arrive as it should.", back+" Then try once more."
	case http.StatusServiceUnavailable:
		p.Title, p.Text, p.Then = "Too many at once", "Many texts are being read just now.", back+" Wait a moment, then press the button again."
	default:
		p.Title, p.Text, p.Then = "Something went wrong", "saywhy could not do that. It is not your fault.", back+" Then try once more."
	}
	w.Header().Del("Content-Length")
	w.Header().Set("Cache-Control", "no-store")
	s.show(w, r, status, "fail", p)
}

// failForm answers a form that could not be read.
func (s *site) failForm(w http.ResponseWriter, r *http.Request, err error) {
	if errors.Is(err, errTooLong) {
		s.fail(w, r, http.StatusRequestEntityTooLarge)
		return
	}
	s.fail(w, r, http.StatusBadRequest)
}
