package main

import (
	"bytes"
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// drafts writes texts into a folder of the test's own and returns their names.
func drafts(t *testing.T, texts ...string) []string {
	t.Helper()
	dir := t.TempDir()
	var out []string
	for i, text := range texts {
		name := filepath.Join(dir, string(rune('a'+i))+".txt")
		require.NoError(t, os.WriteFile(name, []byte(text), 0o600))
		out = append(out, name)
	}
	return out
}

// runs runs a command line and returns its status and what it wrote.
func runs(in string, args ...string) (status int, out, errs string) {
	var o, e bytes.Buffer
	status = run(args, streams{in: strings.NewReader(in), out: &o, err: &e})
	return status, o.String(), e.String()
}

const (
	firstDraft  = "I made soup. It tasted nice. I worked safely.\n"
	secondDraft = "I worked safely by using oven gloves. I made soup. It tasted nice, salty and a bit smoky.\n"
)

func TestCompareAsText(t *testing.T) {
	f := drafts(t, firstDraft, secondDraft)
	status, out, errs := runs("", "compare", f[0], f[1])
	require.Zero(t, status, errs)
	for _, want := range []string{
		"9 words before, 18 words now",
		"taste           with detail",
		"“nice” now has something beside it that tells (sentence 3)",
		"answered    ", "still open  ",
		"~ changed, and moved from place 3",
		"  3  It tasted nice, salty and a bit smoky.",
	} {
		assert.Contains(t, out, want)
	}
	assert.NotContains(t, out, "%!")
}

func TestCompareAsJSON(t *testing.T) {
	f := drafts(t, firstDraft)
	status, out, errs := runs(secondDraft, "compare", f[0], "-", "--format", "json", "--questions", "0")
	require.Zero(t, status, errs)
	var c struct {
		Words struct{ Old, New int }
		Vague []struct {
			Text, Fate string
			Old, New   int
		}
		Questions []struct{ Text, Area, Step, Fate string }
		Sentences []struct {
			Old, New       int
			Changed, Moved bool
		}
	}
	require.NoError(t, json.Unmarshal([]byte(out), &c))
	assert.Equal(t, 9, c.Words.Old)
	require.Len(t, c.Vague, 1)
	assert.Equal(t, "backed", c.Vague[0].Fate)
	assert.Greater(t, len(c.Questions), 3)
	assert.Len(t, c.Sentences, 3)
	assert.NotContains(t, out, "null")
	again, same, _ := runs(secondDraft, "compare", f[0], "-", "--format", "json", "--questions", "0")
	require.Zero(t, again)
	assert.Equal(t, out, same)
}

func TestCompareOfNothing(t *testing.T) {
	f := drafts(t, "", "")
	status, out, errs := runs("", "compare", f[0], f[1])
	require.Zero(t, status, errs)
	assert.Contains(t, out, "nothing to compare yet")
}

func TestReadAfterAnEarlierDraft(t *testing.T) {
	f := drafts(t, firstDraft, firstDraft+"Mum liked it.\n")
	_, first, _ := runs("", "read", f[0])
	status, second, errs := runs("", "read", f[1], "--after", f[0])
	require.Zero(t, status, errs)
	asked := func(out string) []string {
		out = out[strings.Index(out, "TO THINK ABOUT NEXT"):]
		var list []string
		for _, l := range strings.Split(out, "\n") {
			if strings.Contains(l, ". ") && strings.HasPrefix(l, "  ") {
				list = append(list, l)
			}
		}
		return list
	}
	require.NotEmpty(t, asked(first))
	for _, q := range asked(first) {
		assert.NotContains(t, asked(second), q)
	}
}

func TestReadWithTheLastEvaluation(t *testing.T) {
	f := drafts(t, "I made soup. It was nice.\n", "The cake was dry. Next time I will take the tin out sooner.\n")
	status, out, errs := runs("", "read", f[0], "--last", f[1])
	require.Zero(t, status, errs)
	assert.Contains(t, out, "“take the tin out sooner”")
	status, out, errs = runs("I made buns. I took the tin out sooner this time.", "read", "--last", f[1])
	require.Zero(t, status, errs)
	assert.NotContains(t, out, "“take the tin out sooner”")
}

func TestWordListIsOfferedUnderAQuestion(t *testing.T) {
	f := drafts(t, "I made bread. I washed my hands. It smelt nice.\n")
	status, out, errs := runs("", "read", f[0], "--dish", "breads")
	require.Zero(t, status, errs)
	assert.Regexp(t, `\n     The word list has \d+ words for how it smells\.\n`, out)
}

func TestCompareMisuse(t *testing.T) {
	f := drafts(t, firstDraft, secondDraft)
	for name, c := range map[string]struct {
		args []string
		say  string
	}{
		"no files":            {[]string{"compare"}, "0 were named"},
		"one file":            {[]string{"compare", f[0]}, "1 were named"},
		"three files":         {[]string{"compare", f[0], f[1], f[0]}, "3 were named"},
		"both pasted":         {[]string{"compare", "-", "-"}, "only one of the two"},
		"no such file":        {[]string{"compare", f[0], f[1] + "x"}, "there is no file called"},
		"a folder":            {[]string{"compare", f[0], filepath.Dir(f[0])}, "is a folder"},
		"an unknown role":     {[]string{"compare", f[0], f[1], "--role", "gran"}, "there is no role"},
		"an unknown format":   {[]string{"compare", f[0], f[1], "--format", "xml"}, "there is no format"},
		"fewer than none":     {[]string{"compare", f[0], f[1], "--questions", "-1"}, "less than nought"},
		"after: no such file": {[]string{"read", f[0], "--after", "nowhere.txt"}, "there is no file called"},
		"last: no such file":  {[]string{"read", f[0], "--last", "nowhere.txt"}, "there is no file called"},
		"pasted twice":        {[]string{"read", "-", "--after", "-"}, "only one of the texts"},
	} {
		t.Run(name, func(t *testing.T) {
			status, out, errs := runs(firstDraft, c.args...)
			assert.Equal(t, 2, status)
			assert.Empty(t, out)
			assert.Contains(t, errs, c.say)
			assert.Equal(t, 1, strings.Count(errs, "\n"), errs)
		})
	}
}
