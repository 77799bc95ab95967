package handout_test

import (
	"encoding/json"
	"html"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywhy/cmd/internal/needs"
)

// chromium runs the browser over a page and returns its standard output.
func chromium(tb testing.TB, page string, args ...string) string {
	tb.Helper()
	browser := needs.Program(tb, "chromium")
	dir := tb.TempDir()
	file := filepath.Join(dir, "page.html")
	require.NoError(tb, os.WriteFile(file, []byte(page), 0o600))
	args = append([]string{
		"--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
		"--disable-component-update", "--disable-sync", "--user-data-dir=" + filepath.Join(dir, "profile"),
	}, append(args, file)...)
	cmd := exec.Command(browser, args...)
	var said strings.Builder
	cmd.Stderr = &said
	out, err := cmd.Output()
	require.NoError(tb, err, "%s", said.String())
	return string(out)
}

// printed prints a page as a person would and returns the text of each sheet
// side, made solid.
func printed(tb testing.TB, page string) []string {
	tb.Helper()
	pdf := filepath.Join(tb.TempDir(), "page.pdf")
	text := needs.Program(tb, "pdftotext")
	chromium(tb, page, "--no-pdf-header-footer", "--print-to-pdf="+pdf)
	out, err := exec.Command(text, pdf, "-").Output()
	require.NoError(tb, err)
	sides := strings.Split(strings.TrimSuffix(string(out), "\f"), "\f")
	for i, s := range sides {
		sides[i] = solid(s)
	}
	return sides
}

// solid takes out the spaces of a text, the ligatures of fonts, and hyphens, as
// one at the end of a line is lost.
func solid(s string) string {
	s = strings.NewReplacer("ﬁ", "fi", "ﬂ", "fl", "ﬀ", "ff", "ﬃ", "ffi", "ﬄ", "ffl", "\u00ad", "", "-", "").Replace(s)
	return strings.Join(strings.Fields(s), "")
}

// flaw is something of a page that would be cut off, lie over something else or
// be too small to read.
type flaw struct{ What, Where string }

// flaws asks the browser what is wrong with a page whose sides are given by a
// selector; nothing may leave its side, overflow or be set below 12 pt (16 px).
func flaws(tb testing.TB, page, sides string) []flaw {
	tb.Helper()
	script := `<script>
addEventListener("load", () => {
  const found = [], say = (what, e) => found.push({What: what, Where: (e.className || e.tagName) + ": " + e.textContent.trim().slice(0, 60)});
  const all = document.querySelectorAll(` + "`" + sides + "`" + `);
  if (!all.length) found.push({What: "no side", Where: ""});
  for (const side of all) {
    const s = side.getBoundingClientRect();
    for (const e of [side, ...side.querySelectorAll("*")]) {
      const r = e.getBoundingClientRect(), style = getComputedStyle(e);
      if (parseFloat(style.fontSize) < 16 - 1e-3) say("font of " + style.fontSize, e);
      if (style.color !== "rgb(0, 0, 0)") say("colour " + style.color, e);
      if (r.bottom > s.bottom + 1 || r.right > s.right + 1 || r.top < s.top - 1 || r.left < s.left - 1) say("outside its side", e);
      if (style.display !== "inline" && (e.scrollHeight > e.clientHeight + 1 || e.scrollWidth > e.clientWidth + 1)) say("overflows", e);
    }
    // Texts may touch and must not lie over each other.
    const leaves = [...side.querySelectorAll("h1, h2, p, li, dt, dd, i")].filter(e => getComputedStyle(e).display !== "inline");
    leaves.forEach((a, n) => { for (const b of leaves.slice(n + 1)) {
      if (a.contains(b) || b.contains(a)) continue;
      const p = a.getBoundingClientRect(), q = b.getBoundingClientRect();
      if (Math.min(p.right, q.right) - Math.max(p.left, q.left) > 1 && Math.min(p.bottom, q.bottom) - Math.max(p.top, q.top) > 1) say("lies over " + b.textContent.slice(0, 40), a);
    } });
  }
  document.body.dataset.flaws = JSON.stringify(found);
});
</script></body>`
	dom := chromium(tb, strings.Replace(page, "</body>", script, 1), "--dump-dom")
	m := regexp.MustCompile(`data-flaws="([^"]*)"`).FindStringSubmatch(dom)
	require.NotNil(tb, m, "the browser did not say")
	var out []flaw
	require.NoError(tb, json.Unmarshal([]byte(html.UnescapeString(m[1])), &out))
	return out
}

// bound puts the bodies of pages that are styled alike into one page, as
// starting a browser is what takes the time.
func bound(pages []string) string {
	whole := strings.Replace(pages[0], "</body>", "", 1)
	whole = strings.Replace(whole, "</html>", "", 1)
	for _, p := range pages[1:] {
		from, to := strings.Index(p, "<body>")+len("<body>"), strings.Index(p, "</body>")
		whole += p[from:to]
	}
	return whole + "</body></html>"
}

// inWideFont sets a page in the widest of usual fonts.
func inWideFont(page string) string {
	page = regexp.MustCompile(`"Trebuchet MS"[^;]*sans-serif`).ReplaceAllString(page, `"DejaVu Sans"`)
	return regexp.MustCompile(`"Palatino Linotype"[^;]*serif`).ReplaceAllString(page, `"DejaVu Serif"`)
}
