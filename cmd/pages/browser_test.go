package pages

import (
	"context"
	"encoding/json"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"testing"
	"time"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"

	"saywhy/cmd/internal/needs"
)

// tab is a tab of a real browser, with nothing kept from any other.
type tab struct {
	tb   testing.TB
	ctx  context.Context
	home string // the address of the pages it looks at
}

// look says how a tab looks at pages.
type look struct {
	width, height int64 // in CSS pixels; 0 for a desk
	dark          bool
	noScripts     bool
	print         bool
}

func phone() look { return look{width: 320, height: 640} }

// serveTest serves a handler on this machine for one test.
func serveTest(tb testing.TB, h http.Handler) string {
	tb.Helper()
	server := httptest.NewServer(h)
	tb.Cleanup(server.Close)
	return server.URL
}

// chromium starts Debian's browser, once a test.
func chromium(tb testing.TB) context.Context {
	tb.Helper()
	options := append(chromedp.DefaultExecAllocatorOptions[:], chromedp.ExecPath(needs.Program(tb, "chromium")), chromedp.NoSandbox, chromedp.DisableGPU,
		chromedp.UserDataDir(tb.TempDir()), chromedp.WSURLReadTimeout(2*time.Minute), chromedp.Flag("disable-quic", true))
	ctx, stop := chromedp.NewExecAllocator(context.Background(), options...)
	tb.Cleanup(stop)
	ctx, stop = chromedp.NewContext(ctx)
	tb.Cleanup(stop)
	require.NoError(tb, chromedp.Do(ctx))
	return ctx
}

// open opens a new tab on pages.
func open(tb testing.TB, browser context.Context, home string, how look) *tab {
	tb.Helper()
	ctx, stop := chromedp.NewContext(browser, chromedp.WithNewBrowserContext())
	tb.Cleanup(stop)
	ctx, stop = context.WithTimeout(ctx, 3*time.Minute)
	tb.Cleanup(stop)
	t := &tab{tb, ctx, home}
	t.set(how)
	return t
}

// set changes how the tab looks at pages.
func (t *tab) set(how look) {
	t.tb.Helper()
	if how.width == 0 {
		how.width, how.height = 1200, 900
	}
	scheme, media := "light", ""
	if how.dark {
		scheme = "dark"
	}
	if how.print {
		media = "print"
	}
	t.run(
		chromedp.EmulateViewport(how.width, how.height),
		command(emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Media: media, Features: []*emulation.MediaFeature{
			{Name: "prefers-color-scheme", Value: scheme}, {Name: "prefers-reduced-motion", Value: "reduce"},
		}}),
		command(emulation.SetScriptExecutionDisabled, emulation.SetScriptExecutionDisabledParams{Value: how.noScripts}),
	)
}

// command is a command of the browser's own protocol.
func command[P any](c cdp.Command[P, cdp.Empty], params P) chromedp.Action[chromedp.Void] {
	return chromedp.Func(func(ctx context.Context, t *chromedp.Target) error {
		_, err := cdp.Call(ctx, t, c, params)
		return err
	})
}

func (t *tab) run(actions ...chromedp.Action[chromedp.Void]) {
	t.tb.Helper()
	require.NoError(t.tb, chromedp.Do(t.ctx, actions...))
}

// visit opens a page by its path.
func (t *tab) visit(path string) {
	t.tb.Helper()
	t.run(chromedp.Navigate(t.home + path))
}

// write puts text into a field in place of what stands there, as typing does.
func (t *tab) write(field, text string) {
	t.tb.Helper()
	t.do(`const e = document.querySelector(` + quote(field) + `); e.focus(); e.value = ` + quote(text) + `; e.dispatchEvent(new Event("input", {bubbles: true}))`)
}

// press clicks and waits for the page that comes.
func (t *tab) press(button string) {
	t.tb.Helper()
	res, err := chromedp.RunResponse(t.ctx, chromedp.Click(chromedp.CSS(button)))
	require.NoError(t.tb, err, button)
	require.NotNil(t.tb, res)
}

// text returns what a person sees of a part of the page.
func (t *tab) text(selector string) string {
	t.tb.Helper()
	return get1[string](t, `document.querySelector(`+quote(selector)+`)?.innerText ?? ""`)
}

// do runs a script in the page for the test's own ends.
func (t *tab) do(script string) {
	t.tb.Helper()
	get1[bool](t, `(() => {`+script+`; return true})()`)
}

// get1 returns the value of an expression in the page; a promise is waited for.
func get1[T any](t *tab, expression string) T {
	t.tb.Helper()
	out, err := chromedp.Run(t.ctx, chromedp.Evaluate[T](expression, chromedp.EvalAwaitPromise))
	require.NoError(t.tb, err)
	return out
}

func quote(s string) string {
	b, _ := json.Marshal(s) // a string can always be written
	return string(b)
}

// shoot saves a picture of the whole page for a person to look at, when
// SAYWHY_PICTURES names a folder.
func (t *tab) shoot(name string) {
	t.tb.Helper()
	dir := os.Getenv("SAYWHY_PICTURES")
	if dir == "" {
		return
	}
	picture, err := chromedp.Run(t.ctx, chromedp.FullScreenshot(100))
	require.NoError(t.tb, err)
	require.NoError(t.tb, os.WriteFile(filepath.Join(dir, name+".png"), picture, 0o600))
}

// How long a test waits for what a browser does beside, and how often it looks.
const (
	waitLong = 30 * time.Second
	waitStep = 50 * time.Millisecond
)
