package grouppage

import (
	"bytes"
	"html/template"
	"regexp"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/cmd/internal/demogroup"
	"saywhy/corpus"
)

func written(tb testing.TB, r *corpus.GroupReport) string {
	tb.Helper()
	var b bytes.Buffer
	require.NoError(tb, Write(&b, r))
	return b.String()
}

// TestThePageNeedsNothingElse: it opens from a memory stick, without scripts.
func TestThePageNeedsNothingElse(t *testing.T) {
	page := written(t, demogroup.Report(t))
	assert.NotRegexp(t, regexp.MustCompile(`(?i)<script|<link|<img|<iframe|@import|url\(|javascript:|\son[a-z]+=`), page)
	for _, m := range regexp.MustCompile(`(?:href|src)="([^"]*)"`).FindAllStringSubmatch(page, -1) {
		assert.True(t, strings.HasPrefix(m[1], "#"), "a link to elsewhere: %s", m[1])
		assert.Contains(t, page, `id="`+m[1][1:]+`"`, "a link to nowhere: %s", m[1])
	}
	assert.NotContains(t, page, "ZgotmplZ", "a value that the template took for unsafe")
	assert.NotContains(t, page, "<no value>")
}

// TestThePageHoldsTheWholeReport: everything that needs the tutor's eye.
func TestThePageHoldsTheWholeReport(t *testing.T) {
	r := demogroup.Report(t)
	page := written(t, r)
	held := func(s string) {
		t.Helper()
		assert.Contains(t, page, template.HTMLEscapeString(s))
	}
	require.NotEmpty(t, r.Cautions)
	for _, c := range r.Cautions {
		held(c.Text)
		held(c.Advice)
		held(c.Source)
	}
	require.NotEmpty(t, r.Disagreements)
	for _, d := range r.Disagreements {
		held(d.Child.Sentence)
		held(d.Adult.Sentence)
	}
	require.NotEmpty(t, r.Plans)
	for _, p := range r.Plans {
		held(p.Plan)
	}
	require.NotEmpty(t, r.Unplaced)
	for _, u := range r.Unplaced {
		held(u.File)
		held(u.Reason)
	}
	assert.Less(t, strings.Index(page, r.Cautions[0].Text), strings.Index(page, `id="teach"`), "what is to be looked at stands first")
	assert.Equal(t, len(r.Learners.People), strings.Count(page, "<figure>"))
}

// TestThePageTakesWhatPeopleWrite: markup in a text or a name stays text.
func TestThePageTakesWhatPeopleWrite(t *testing.T) {
	const evil = `<script>alert("x")</script>`
	r := demogroup.Read(t, fstest.MapFS{
		`A & "B"/01 lentil soup.txt`: {Data: []byte(`I ate it raw chicken ` + evil + `. I cut my finger ` + evil + `. It was </style> nice.`)},
	})
	page := written(t, r)
	assert.NotContains(t, page, "<script")
	assert.Equal(t, 1, strings.Count(page, "</style>"))
	assert.Contains(t, page, "A &amp; &#34;B&#34;")
}

// TestThePageOfVeryLittle: one text, no text by a learner, and nothing at all.
func TestThePageOfVeryLittle(t *testing.T) {
	for name, folder := range map[string]fstest.MapFS{
		"one evaluation": {"ana/01 lentil soup.txt": {Data: []byte("It was nice.")}},
		"one feedback":   {"ana/01 lentil soup feedback.txt": {Data: []byte("It was nice.")}},
		"nothing":        {},
	} {
		t.Run(name, func(t *testing.T) {
			page := written(t, demogroup.Read(t, folder))
			assert.Contains(t, page, "</html>")
			assert.NotContains(t, page, "<no value>")
		})
	}
}
