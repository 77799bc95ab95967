package pages

import (
	"net/http"
	"net/url"
	"testing"

	"github.com/stretchr/testify/require"
)

// BenchmarkPage makes each kind of page once, without a network between; a
// text of 200 words is read for those that take one.
func BenchmarkPage(b *testing.B) {
	h := handler(b)
	text := url.Values{"text": {twoHundred}, "title": {"lentil soup"}}
	drafts := url.Values{"text": {twoHundred + " It tasted smoky."}, "title": {"lentil soup"}, "before": {twoHundred}, "asked": {"3"}}
	for _, page := range []struct {
		name string
		make func() *http.Request
	}{
		{"first", func() *http.Request { return get("/") }},
		{"write", func() *http.Request { return post("/write", text) }},
		{"write again", func() *http.Request { return post("/write", drafts) }},
		{"feedback", func() *http.Request { return post("/feedback", text) }},
		{"words", func() *http.Request { return get("/words?dish=soups") }},
		{"find words", func() *http.Request { return post("/words", url.Values{"noticed": {"bits stick to my teeth"}}) }},
		{"find words of a dish", func() *http.Request {
			return post("/words", url.Values{"noticed": {"bits stick to my teeth"}, "dish": {"soups"}})
		}},
		{"sheet", func() *http.Request { return post("/sheet/print", url.Values{"dish": {"lentil soup"}}) }},
	} {
		b.Run(page.name, func(b *testing.B) {
			for b.Loop() {
				res, _ := ask(h, page.make())
				require.Equal(b, http.StatusOK, res.StatusCode)
			}
		})
	}
}
