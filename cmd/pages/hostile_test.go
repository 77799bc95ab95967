package pages

import (
	"bufio"
	"bytes"
	"fmt"
	"io"
	"math/rand/v2"
	"net"
	"net/http"
	"net/http/httptest"
	"net/url"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// hostileTexts are what no box should be able to do harm with. The marker
// bites if any of it comes out as markup or script: it is never a part of our
// own pages.
func hostileTexts() []string {
	return []string{
		`<script>bite()</script>`, `"><script>bite()</script>`, `'><img src=x onerror=bite()>`, `</textarea><script>bite()</script>`,
		`</title><svg onload=bite()>`, `</select></form><form action=//bite.example>`, `javascript:bite()`, `{{.Frame}} {{template "layout.html"}} {{printf "%s" "bite"}}`,
		`{{define "main"}}bite{{end}}`, "${bite()} #{bite()} <%= bite() %>", `<a href="javascript:bite()">x</a>`, `<style>*{background:url(//bite.example)}</style>`,
		`<meta http-equiv=refresh content="0;url=//bite.example">`, `<base href=//bite.example>`, `--><script>bite()</script>`, `]]><script>bite()</script>`,
		"\x00<script>bite()</script>", "\xff\xfe<script>bite()</script>\xc0\xbc", "\xf4\x90\x80\x80", "\u202e\u2066bite\u2028\u2029", `&lt;script&gt;bite()&lt;/script&gt;`,
		"bite\r\nSet-Cookie: bite=1\r\n\r\n<script>bite()</script>", `"; filename="bite.exe`, `../../../../etc/passwd`, `..\..\bite`, `%2e%2e%2f%2e%2e%2fbite`,
		`=cmd|'/c bite'!A1`, strings.Repeat("bite ", 3000), strings.Repeat("(", 5000), strings.Repeat("because ", 2000), "", " ", "\n", "🍲🍲<🍲>", "bite: {means: [", "? !!bite &a *a", "- bite\n- bite: |",
	}
}

// hostileRequest makes one request of many kinds, the same for the same number.
func hostileRequest(n int) *http.Request {
	random := rand.New(rand.NewPCG(6, uint64(n)))
	pick := func(list []string) string { return list[random.IntN(len(list))] }
	texts := hostileTexts()
	paths := []string{
		"/", "/write", "/write/open", "/write/file", "/feedback", "/feedback/file", "/feedback/open", "/words", "/words/print", "/sheet", "/sheet/print",
		"/tutor", "/tutor/open", "/tutor/open/x", "/tutor/invite", "/tutor/leave", "/tutor/dish/soups", "/tutor/dish/nothing", "/tutor/missing", "/tutor/group", "/static/pages.css",
		"/static/..%2f..%2fetc%2fpasswd", "/static/../pages.go", "/tutor/dish/..%2f..%2fcourse", "/tutor/dish/%2e%2e", "/tutor/open/..%2f..", "//bite.example/", "/%00", "/%ff%fe", "/.git/config", "/debug/pprof/",
		"/write?text=" + url.QueryEscape(pick(texts)), "/words?dish=" + url.QueryEscape(pick(texts)) + "&sense=" + url.QueryEscape(pick(texts)),
		"/tutor/dish/soups?sense=" + url.QueryEscape(pick(texts)) + "&word=" + url.QueryEscape(pick(texts)) + "&done=" + url.QueryEscape(pick(texts)),
	}
	form := url.Values{}
	for _, field := range []string{"text", "title", "dish", "before", "last", "questions", "asked", "noticed", "sense", "print", "all", "key", "act", "was", "row", "file", "word", "means", "of", "forms", "scale", "step"} {
		if random.IntN(2) == 0 {
			form.Set(field, pick(texts))
		}
	}
	if random.IntN(3) == 0 {
		form.Set("act", pick([]string{"save", "remove", "undo", "fill", "keep"}))
		form.Set("sense", pick([]string{"texture", "taste", "aroma", "appearance"}))
	}
	method := "POST"
	switch random.IntN(10) {
	case 0:
		method = pick([]string{"PUT", "DELETE", "PATCH", "OPTIONS", "TRACE", "HEAD", "CONNECT", "BITE"})
	case 1, 2:
		method = "GET"
	}
	body, kind := []byte(form.Encode()), "application/x-www-form-urlencoded"
	switch random.IntN(8) {
	case 0: // half a multipart form
		kind = "multipart/form-data; boundary=b"
		body = []byte("--b\r\nContent-Disposition: form-data; name=\"file\"; filename=\"" + pick(texts) + "\"\r\n\r\n" + pick(texts) + pick([]string{"", "\r\n--b--\r\n", "\r\n--b"}))
	case 1:
		kind, body = pick([]string{"application/json", "text/plain", "", "multipart/form-data", "bite/bite; boundary"}), []byte(pick(texts))
	case 2: // giant
		body = bytes.Repeat([]byte("text=bite&"), (maxBody/10)+random.IntN(1000))
	case 3: // broken escapes
		body = []byte("text=%zz%&title=%ff%fe&" + pick(texts))
	}
	r := httptest.NewRequest(http.MethodGet, "http://localhost/", bytes.NewReader(body))
	r.Method = method
	if u, err := url.Parse("http://localhost" + pick(paths)); err == nil {
		r.URL = u
		r.RequestURI = u.RequestURI()
	}
	if kind != "" {
		r.Header.Set("Content-Type", kind)
	}
	r.Host = pick([]string{"localhost", "localhost:8350", "127.0.0.1", "[::1]:8350"})
	if random.IntN(6) == 0 {
		r.Host = pick([]string{"bite.example", "localhost.bite.example", "127.0.0.1.bite.example", "", "localhost@bite.example", "192.168.1.9", "a b"})
	}
	switch random.IntN(6) {
	case 0:
		r.Header.Set("Sec-Fetch-Site", pick([]string{"cross-site", "same-site", "none", "bite"}))
	case 1:
		r.Header.Set("Origin", pick([]string{"http://bite.example", "null", "file://", "http://localhost:1", pick(texts)}))
	case 2, 3:
		r.Header.Set("Sec-Fetch-Site", "same-origin")
	}
	for _, name := range []string{"Referer", "X-Forwarded-Host", "X-Forwarded-For", "X-HTTP-Method-Override", "Cookie", "Accept-Language", "If-None-Match", "Range"} {
		if random.IntN(4) == 0 {
			r.Header[name] = []string{pick(texts)}
		}
	}
	if random.IntN(4) == 0 {
		r.Header.Set("Cookie", sessionCookie+"="+pick(texts))
	}
	return r
}

// TestTwoThousandHostileRequests: nothing changes, nothing crashes, nothing of
// what was sent comes back as markup, and every answer is guarded.
func TestTwoThousandHostileRequests(t *testing.T) {
	c := newSchool(t)
	before := c.folder.snapshot()
	statuses := map[int]int{}
	for n := range 2000 {
		r := hostileRequest(n)
		name := fmt.Sprintf("request %d, %s %s", n, r.Method, r.URL.Path)
		foreign := !ownHost(r.Host, Options{Local: true})
		forged := r.Method == http.MethodPost && r.Header.Get("Sec-Fetch-Site") != "" && r.Header.Get("Sec-Fetch-Site") != "same-origin" && r.Header.Get("Sec-Fetch-Site") != "none"
		res, body := ask(c.h, r)
		statuses[res.StatusCode]++
		assert.NotEqual(t, http.StatusInternalServerError, res.StatusCode, name)
		assert.Contains(t, res.Header.Get("Content-Security-Policy"), "default-src 'none'", name)
		assert.NotContains(t, res.Header.Get("Content-Security-Policy"), "unsafe", name)
		assert.Equal(t, "nosniff", res.Header.Get("X-Content-Type-Options"), name)
		assert.Empty(t, res.Cookies(), name)
		if foreign {
			assert.Equal(t, http.StatusMisdirectedRequest, res.StatusCode, name)
		} else if forged && res.StatusCode < 300 {
			assert.Fail(t, "a forged request was answered", name)
		}
		if strings.HasPrefix(res.Header.Get("Content-Type"), "text/html") {
			harmless(t, name, body)
		}
		assert.NotRegexp(t, `^(//|[a-z]+:)`, res.Header.Get("Location"), name)
		for _, told := range []string{"goroutine", "runtime error", "panic", "/root", "/tmp", ".go:", "root:x:"} {
			assert.NotContains(t, body, told, name)
		}
		if t.Failed() {
			t.Logf("%s: %d", name, res.StatusCode)
			break
		}
	}
	t.Logf("answers by status: %v", statuses)
	assert.Equal(t, before, c.folder.snapshot(), "the course is as it was")
	for _, want := range []int{http.StatusOK, http.StatusForbidden, http.StatusNotFound, http.StatusMethodNotAllowed, http.StatusMisdirectedRequest, http.StatusRequestEntityTooLarge, http.StatusUnauthorized} {
		assert.Positive(t, statuses[want], "no request came as far as %d", want)
	}
	// And all is as usual afterwards.
	_, body := ask(c.h, post("/write", url.Values{"text": {soup}, "title": {"lentil soup"}}))
	assert.Contains(t, body, "describes: thick")
}

// TestASignedInTutorSendsHostileRows: what a tutor may write is still checked
// by the file, and nothing leaves the folder.
func TestASignedInTutorSendsHostileRows(t *testing.T) {
	c := newSchool(t).enter()
	for i, text := range hostileTexts() {
		for _, field := range [][]string{{"word"}, {"means", "of"}, {"forms", "scale"}}[i%3] {
			form := url.Values{"act": {"save"}, "sense": {"texture"}, "word": {fmt.Sprintf("zonky%d", i)}, "means": {"wobbles"}}
			form.Set(field, text)
			res, body := c.send("soups", form)
			require.NotEqual(t, http.StatusInternalServerError, res.StatusCode, "%s %q", field, text)
			harmless(t, field, body)
		}
		if t.Failed() {
			return
		}
	}
	names := []string{}
	for name := range c.folder.snapshot() {
		names = append(names, name)
	}
	assert.ElementsMatch(t, []string{"course.yaml", "dishes/soups.yaml"}, names)
	_, body := c.ask(get("/tutor"))
	assert.NotContains(t, body, "Something to mend", "whatever was taken is sound")
	_, body = c.ask(get("/tutor/dish/soups?sense=texture&all=yes"))
	harmless(t, "the table", body)
}

// harmless requires that a page holds no markup but our own: no tag or
// attribute that our templates do not use, no script but the one file, no way
// to another host.
func harmless(tb testing.TB, name, body string) {
	tb.Helper()
	tag := regexp.MustCompile(`<(/?[a-zA-Z!][^\s>]*)((?:[^>"']|"[^"]*"|'[^']*')*)>`)
	attribute := regexp.MustCompile(`([^\s="]+)(?:="([^"]*)")?`)
	tags := strings.Fields("!doctype html head meta title link script body a header p span nav ul li main h1 h2 h3 form input select label option optgroup textarea button details summary footer section div dl dt dd ol table tbody tr th td svg symbol rect use b g style i br figure figcaption thead sup small strong em article aside hr")
	attributes := strings.Fields("lang charset name content rel href type src defer class id tabindex aria-label aria-current aria-labelledby aria-describedby aria-hidden aria-live role method action value maxlength autocomplete rows spellcheck autocapitalize formaction formenctype accept data-role focusable viewbox width height x y rx fill target for label selected html open scope inputmode colspan shape-rendering fill aria-roledescription /")
	for _, m := range tag.FindAllStringSubmatch(body, -1) {
		at := strings.ToLower(strings.TrimPrefix(strings.TrimSuffix(m[1], "/"), "/"))
		assert.True(tb, slices.Contains(tags, at) || m[0] == "<style>" || m[0] == "</style>", "%s: a foreign tag in %.200s", name, m[0])
		for _, a := range attribute.FindAllStringSubmatch(m[2], -1) {
			key := strings.ToLower(a[1])
			assert.True(tb, slices.Contains(attributes, key), "%s: a foreign attribute in %.200s", name, m[0])
			switch key {
			case "href", "src", "action", "formaction":
				assert.Regexp(tb, `^(/([^/]|$)|#)`, a[2], "%s: a way elsewhere in %.200s", name, m[0])
			}
		}
	}
	assert.NotContains(tb, tag.ReplaceAllString(body, ""), "<", "%s: markup that is no tag", name)
	assert.LessOrEqual(tb, strings.Count(body, "<script"), 1, name)
}

// TestHostileTextsRunNothingInTheBrowser types them into the boxes of a real
// browser and watches for anything that runs.
func TestHostileTextsRunNothingInTheBrowser(t *testing.T) {
	on := open(t, chromium(t), serveTest(t, handler(t)), look{})
	for i, text := range hostileTexts() {
		if i%3 != 0 {
			continue // every one of them is sent without a browser, above
		}
		if len(text) > 1000 {
			text = text[:1000]
		}
		on.visit("/write")
		on.write("#title", text)
		on.write("#text", "It was nice. "+text)
		on.write("#last", text)
		on.press("button.main")
		on.do(`window.bite = () => { document.documentElement.dataset.bitten = "yes" }`)
		on.press("button.main")
		assert.Equal(t, "saywhy", on.text(".name a"), "%q", text)
		assert.Empty(t, get1[string](on, `document.documentElement.dataset.bitten ?? ""`), "%q", text)
		assert.Equal(t, 1, get1[int](on, `document.scripts.length`), "%q", text)
		assert.Zero(t, get1[int](on, `document.querySelectorAll("img, iframe, base, meta[http-equiv], [onload], [onerror]").length`), "%q", text)
	}
}

// TestTricklingAndBrokenConnections speaks to a real server below HTTP.
func TestTricklingAndBrokenConnections(t *testing.T) {
	server := httptest.NewServer(handler(t))
	defer server.Close()
	for name, bytes := range map[string]string{
		"half a head":        "POST /write HTTP/1.1\r\nHost: localhost\r\nContent-",
		"half a body":        "POST /write HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/x-www-form-urlencoded\r\nContent-Length: 100\r\n\r\ntext=half",
		"two lengths":        "POST /write HTTP/1.1\r\nHost: localhost\r\nContent-Length: 3\r\nContent-Length: 4\r\n\r\nabc",
		"no protocol":        "bite bite bite\r\n\r\n",
		"huge head":          "GET / HTTP/1.1\r\nHost: localhost\r\nX: " + strings.Repeat("a", 2<<20) + "\r\n\r\n",
		"two hosts":          "GET / HTTP/1.1\r\nHost: localhost\r\nHost: bite.example\r\n\r\n",
		"an address for one": "GET http://bite.example/ HTTP/1.1\r\nHost: localhost\r\n\r\n",
	} {
		t.Run(name, func(t *testing.T) {
			conn, err := net.Dial("tcp", server.Listener.Addr().String())
			require.NoError(t, err)
			defer conn.Close()
			_, _ = io.WriteString(conn, bytes) // the server may hang up before all is sent
			_ = conn.(*net.TCPConn).CloseWrite()
			answer, err := http.ReadResponse(bufio.NewReader(conn), nil)
			if err == nil {
				assert.GreaterOrEqual(t, answer.StatusCode, 400)
			}
		})
	}
	res, err := http.Get(server.URL)
	require.NoError(t, err)
	assert.Equal(t, http.StatusOK, res.StatusCode, "and it goes on")
}
