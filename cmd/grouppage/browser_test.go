package grouppage

import (
	"context"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/emulation"
	cdppage "github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/cmd/internal/demogroup"
	"saywhy/cmd/internal/needs"
	"saywhy/cmd/wording"
)

// opened opens the page of the demo course in Chromium, from a file as from a
// memory stick.
func opened(tb testing.TB) context.Context {
	tb.Helper()
	chromium := needs.Program(tb, "chromium")
	file := filepath.Join(tb.TempDir(), "group.html")
	require.NoError(tb, os.WriteFile(file, []byte(written(tb, demogroup.Report(tb))), 0o600))
	ctx, stop := context.WithTimeout(tb.Context(), 5*time.Minute)
	tb.Cleanup(stop)
	options := append(chromedp.DefaultExecAllocatorOptions[:], chromedp.ExecPath(chromium), chromedp.NoSandbox, chromedp.DisableGPU,
		chromedp.UserDataDir(tb.TempDir()), chromedp.WSURLReadTimeout(2*time.Minute), chromedp.Flag("disable-quic", true))
	ctx, stop = chromedp.NewExecAllocator(ctx, options...)
	tb.Cleanup(stop)
	ctx, stop = chromedp.NewContext(ctx)
	tb.Cleanup(stop)
	require.NoError(tb, chromedp.Do(ctx, chromedp.Navigate("file://"+file)))
	return ctx
}

// seen sets the window and the colour scheme.
func seen(tb testing.TB, ctx context.Context, width int64, scheme string) {
	tb.Helper()
	require.NoError(tb, chromedp.Do(ctx,
		chromedp.EmulateViewport(width, 900),
		chromedp.Func(func(ctx context.Context, t *chromedp.Target) error {
			_, err := cdp.Call(ctx, t, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{
				Features: []*emulation.MediaFeature{{Name: "prefers-color-scheme", Value: scheme}},
			})
			return err
		}),
	))
}

func evaluated[T any](tb testing.TB, ctx context.Context, expression string) T {
	tb.Helper()
	out, err := chromedp.Run(ctx, chromedp.Evaluate[T](expression, chromedp.EvalAwaitPromise))
	require.NoError(tb, err)
	return out
}

// pictured saves a picture for a person to look at, when SAYWHY_PICTURES names
// a folder.
func pictured(tb testing.TB, ctx context.Context, name string) {
	tb.Helper()
	dir := os.Getenv("SAYWHY_PICTURES")
	if dir == "" {
		return
	}
	picture, err := chromedp.Run(ctx, chromedp.FullScreenshot(100))
	require.NoError(tb, err)
	require.NoError(tb, os.WriteFile(filepath.Join(dir, name+".png"), picture, 0o600))
}

// axeRun lists violations, a line each: WCAG 2.2 A and AA, and contrast of 7 to
// 1 (success criterion 1.4.6).
const axeRun = `axe.run(document, {
	runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
	rules: {"color-contrast-enhanced": {enabled: true}},
}).then(r => r.violations.flatMap(v => v.nodes.map(n => v.id + ": " + n.target + " " + n.failureSummary)))`

// TestThePageInABrowser asks axe-core (npm axe-core) for violations, in light
// and dark, wide and at 320 pixels, where nothing may stick out of the page
// (success criterion 1.4.10).
func TestThePageInABrowser(t *testing.T) {
	axe, err := os.ReadFile(needs.Module(t, "axe-core/axe.min.js"))
	require.NoError(t, err)
	ctx := opened(t)
	evaluated[bool](t, ctx, string(axe)+"; true")
	for _, how := range []struct {
		name, scheme string
		width        int64
	}{{"light", "light", 1100}, {"dark", "dark", 1100}, {"narrow", "light", 320}, {"narrow-dark", "dark", 320}} {
		t.Run(how.name, func(t *testing.T) {
			seen(t, ctx, how.width, how.scheme)
			pictured(t, ctx, how.name)
			assert.Empty(t, evaluated[[]string](t, ctx, axeRun))
			assert.LessOrEqual(t, evaluated[int64](t, ctx, "document.documentElement.scrollWidth"), how.width, "something sticks out")
		})
	}
}

// TestThePagePrintsWhole prints to PDF and reads it with poppler's pdftotext:
// every learner's row to its last column, every section, and the last words.
func TestThePagePrintsWhole(t *testing.T) {
	pdftotext := needs.Program(t, "pdftotext")
	ctx := opened(t)
	var pdf []byte
	require.NoError(t, chromedp.Do(ctx, chromedp.Func(func(ctx context.Context, target *chromedp.Target) error {
		out, err := cdp.Call(ctx, target, cdppage.PrintToPDF, cdppage.PrintToPDFParams{PreferCSSPageSize: new(true)})
		if err == nil {
			pdf = out.Data
		}
		return err
	})))
	dir := t.TempDir()
	if pictures := os.Getenv("SAYWHY_PICTURES"); pictures != "" {
		dir = pictures
	}
	file := filepath.Join(dir, "group.pdf")
	require.NoError(t, os.WriteFile(file, pdf, 0o600))
	out, err := exec.Command(pdftotext, "-layout", file, "-").Output()
	require.NoError(t, err)
	text := strings.Join(strings.Fields(string(out)), " ")
	r := demogroup.Report(t)
	for _, p := range r.Learners.People {
		var cells []string
		for _, c := range p.Areas {
			cells = append(cells, wording.Reach(c))
		}
		assert.Contains(t, text, strings.Join(cells, " "), "the row of %s", p.Learner)
	}
	for _, c := range r.Cautions {
		assert.Contains(t, text, strings.Join(strings.Fields(c.Text), " ")[:20])
	}
	assert.Contains(t, text, r.Unplaced[0].File)
	assert.Contains(t, text, "looks back in so many words.", "the last words of the page")
}
