package pages

import (
	"net"
	"net/http"
	"net/netip"
	"slices"
	"strings"
)

// policy lets a page load its own style sheet, script and pictures and send
// its forms home, and nothing else: no inline script or style runs, and no
// other host is asked for anything.
const policy = "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'"

// guard stands before every page.
//
//   - A name that resolves to this machine but is not its own is refused, so
//     that no web page can reach these by rebinding its name. An address in
//     digits cannot be rebound.
//   - What changes something must come from these pages themselves
//     (http.CrossOriginProtection).
//   - Bodies are limited; a handler that fails says so calmly, with nothing of
//     the text and nothing about the machine.
func (s *site) guard(next http.Handler, o Options) http.Handler {
	cross := http.NewCrossOriginProtection()
	cross.SetDenyHandler(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) { s.fail(w, r, http.StatusForbidden) }))
	inner := cross.Handler(next)
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		h := w.Header()
		h.Set("Content-Security-Policy", policy)
		h.Set("X-Content-Type-Options", "nosniff")
		// Not no-referrer: with it a browser sends "Origin: null" with our own
		// forms, which cannot be told from a forged one.
		h.Set("Referrer-Policy", "same-origin")
		h.Set("Cross-Origin-Opener-Policy", "same-origin")
		h.Set("Cross-Origin-Resource-Policy", "same-origin")
		h.Set("Permissions-Policy", "camera=(), geolocation=(), microphone=()")
		h.Set("Cache-Control", "no-store")
		defer func() {
			switch p := recover(); p {
			case nil:
			case http.ErrAbortHandler:
				panic(p)
			default:
				s.fail(w, r, http.StatusInternalServerError)
			}
		}()
		if !ownHost(r.Host, o) {
			s.fail(w, r, http.StatusMisdirectedRequest)
			return
		}
		if r.Method == http.MethodPost {
			r.Body = http.MaxBytesReader(w, r.Body, maxBody)
		}
		inner.ServeHTTP(w, r)
	})
}

// ownHost reports whether the pages answer under the name or address that was
// asked for.
func ownHost(hostport string, o Options) bool {
	host := hostport
	if h, _, err := net.SplitHostPort(hostport); err == nil {
		host = h
	}
	host = strings.ToLower(strings.TrimSuffix(strings.Trim(host, "[]"), "."))
	if host == "localhost" || slices.Contains(o.Hosts, host) {
		return true
	}
	ip, err := netip.ParseAddr(host)
	return err == nil && (ip.IsLoopback() || !o.Local)
}
