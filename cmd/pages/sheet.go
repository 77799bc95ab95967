package pages

import (
	"bytes"
	"crypto/sha256"
	"encoding/base64"
	"io"
	"net/http"
	"net/url"
	"strconv"
	"strings"

	"saywhy/cmd/handout"
	"saywhy/lexicon"
)

// sheetPage is where the sheet for a practical is asked for.
type sheetPage struct {
	frame
	Kinds []kindGroup
}

func (s *site) sheet(w http.ResponseWriter, r *http.Request) {
	shelf := s.library.Current()
	s.show(w, r, http.StatusOK, "sheet", sheetPage{s.frame(r, shelf, "/sheet", "A sheet for the kitchen"), kinds(shelf, line(r.URL.Query().Get("dish")))})
}

// printSheet shows the two sides to print. What was cooked is somebody's own
// words, so it comes in the body and not in the address.
func (s *site) printSheet(w http.ResponseWriter, r *http.Request) {
	if err := parse(r); err != nil {
		s.failForm(w, r, err)
		return
	}
	shelf := s.library.Current()
	dish, what := shelf.cooked(line(r.PostFormValue("title")), line(r.PostFormValue("dish")))
	sheet := handout.NewSheet(shelf.Lexicon, dish, what)
	sheet.Course = shelf.Course.Title
	s.showHandout(w, r, sheet.WriteHTML)
}

// printWords shows the words of a dish type to print and pin up.
func (s *site) printWords(w http.ResponseWriter, r *http.Request) {
	_, dish := wordsQueryOf(s.library.Current(), r.URL.Query().Get)
	s.showHandout(w, r, handout.NewWords(dish, "", lexicon.Senses()).WriteHTML)
}

func printWordsPath(dish string) string { return "/words/print?" + url.Values{"dish": {dish}}.Encode() }

// showHandout answers with a page that is complete in itself, as it is when it
// lies on a disk. Its own style is allowed by what is in it, and no other.
func (s *site) showHandout(w http.ResponseWriter, r *http.Request, write func(io.Writer) error) {
	var b bytes.Buffer
	if err := write(&b); err != nil {
		panic("the handout cannot be made")
	}
	h := w.Header()
	h.Set("Content-Security-Policy", strings.Replace(policy, "style-src 'self'", "style-src "+strings.Join(styleHashes(b.String()), " "), 1))
	h.Set("Content-Type", "text/html; charset=utf-8")
	h.Set("Content-Length", strconv.Itoa(b.Len()))
	if r.Method != http.MethodHead {
		_, _ = w.Write(b.Bytes())
	}
}

// styleHashes are the sources of a policy that allow the style elements of a
// page as they are.
func styleHashes(page string) []string {
	out := []string{"'none'"}
	for {
		_, rest, ok := strings.Cut(page, "<style>")
		if !ok {
			break
		}
		style, after, _ := strings.Cut(rest, "</style>")
		sum := sha256.Sum256([]byte(style))
		out = append(out, "'sha256-"+base64.StdEncoding.EncodeToString(sum[:])+"'")
		page = after
	}
	if len(out) > 1 {
		return out[1:] // "none" stands alone
	}
	return out
}
