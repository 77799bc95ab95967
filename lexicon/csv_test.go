package lexicon_test

import (
	"bytes"
	"encoding/csv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/lexicon"
)

// awkward are words that a spreadsheet or CSV has trouble with.
func awkward() []lexicon.Word {
	return []lexicon.Word{
		{Word: "comma, semi; tab", Sense: lexicon.Sight, Means: `says "so", and; so`, Of: []string{"a;b", `c\d`, "e, f", `\;`}},
		{Word: "=1+1 a", Sense: lexicon.Sight, Means: "=HYPERLINK(\"x\")", Forms: []string{"=a", "+b"}},
		{Word: "'=quoted", Sense: lexicon.Smell, Means: "''=twice", Of: []string{"'plain"}},
		{Word: "-minus", Sense: lexicon.Smell, Means: "@sum"},
		{Word: "+plus", Sense: lexicon.Tongue, Means: "line\nbreak\r\nand return"},
		{Word: "＝full width", Sense: lexicon.Tongue, Means: "'", Forms: []string{"''", "crème brûlée", "日本"}},
		{Word: "true", Sense: lexicon.Touch, Means: "1-2", Scale: "a, b; c", Step: 20},
		{Word: "'", Sense: lexicon.Touch, Means: "no letters, so it is refused"},
	}
}

func sheetOf(tb testing.TB, words []lexicon.Word) []byte {
	tb.Helper()
	var b bytes.Buffer
	require.NoError(tb, load(tb).WriteSheet(&b, words))
	return b.Bytes()
}

func wordsOf(sheet lexicon.Sheet) []lexicon.Word {
	var out []lexicon.Word
	for _, r := range sheet.Rows {
		out = append(out, r.Word)
	}
	return out
}

func TestASheetComesBackWithoutLoss(t *testing.T) {
	want := awkward()[:7]
	sheet, err := lexicon.ReadSheet("s.csv", sheetOf(t, want))
	require.NoError(t, err)
	assert.Equal(t, want, wordsOf(sheet))
	for i, r := range sheet.Rows {
		assert.Equal(t, i+2, r.Row)
	}
}

func TestEveryBuiltInTypeComesBackWithoutLoss(t *testing.T) {
	for _, d := range load(t).Types() {
		sheet, err := lexicon.ReadSheet("s.csv", sheetOf(t, d.Words))
		require.NoError(t, err, d.Name)
		require.Len(t, sheet.Rows, len(d.Words))
		assert.Empty(t, sheet.Changes(d, true), d.Name)
	}
}

// TestNoCellIsAFormula reads with another reader of CSV (RFC 4180) and looks at
// each cell by the list of OWASP's page on CSV injection.
func TestNoCellIsAFormula(t *testing.T) {
	data := sheetOf(t, awkward())
	require.True(t, bytes.HasPrefix(data, []byte("\xef\xbb\xbf")), "byte order mark")
	records, err := csv.NewReader(bytes.NewReader(data[3:])).ReadAll()
	require.NoError(t, err)
	require.Len(t, records, len(awkward())+1)
	for _, cells := range records {
		for _, c := range cells {
			assert.NotContains(t, []string{"=", "+", "-", "@", "\t", "\r", "\n", "＝", "＋", "－", "＠"}, string([]rune(c + " ")[:1]), c)
		}
	}
}

// resaved is the sheet as a spreadsheet may save it: other marks, line ends and
// order of columns.
func resaved(tb testing.TB, data []byte, mark rune, crlf bool, order []int) []byte {
	tb.Helper()
	records, err := csv.NewReader(bytes.NewReader(bytes.TrimPrefix(data, []byte("\xef\xbb\xbf")))).ReadAll()
	require.NoError(tb, err)
	var b bytes.Buffer
	w := csv.NewWriter(&b)
	w.Comma, w.UseCRLF = mark, crlf
	for _, cells := range records {
		var moved []string
		for _, i := range order {
			moved = append(moved, cells[i])
		}
		require.NoError(tb, w.Write(moved))
	}
	w.Flush()
	return b.Bytes()
}

func TestASheetMayBeSavedInOtherManners(t *testing.T) {
	words := awkward()[:4]
	words = append(words, awkward()[6])
	data := sheetOf(t, words)
	for _, mark := range []rune{',', ';', '\t'} {
		for _, order := range [][]int{{0, 1, 2, 3, 4, 5, 6, 7}, {7, 6, 5, 4, 3, 2, 1, 0}, {2, 1, 0, 4, 3, 6, 5}} {
			got, err := lexicon.ReadSheet("s.csv", resaved(t, data, mark, mark == ';', order))
			require.NoError(t, err)
			assert.Equal(t, words, wordsOf(got))
		}
	}
	text := strings.TrimPrefix(string(data), "\ufeff")
	for name, other := range map[string]string{
		"no byte order mark":    text,
		"line feeds":            strings.ReplaceAll(text, "\r\n", "\n"),
		"returns alone":         strings.ReplaceAll(text, "\r\n", "\r"),
		"no last line end":      strings.TrimRight(text, "\r\n"),
		"blank rows at the end": text + ",,,,,,,\r\n\r\n",
		"a named mark":          "sep=,\r\n" + text,
		"capitals in headings":  strings.Replace(text, "sense,word", "Sense, WORD ", 1),
		"an empty column":       strings.ReplaceAll(text, "\r\n", ",\r\n"),
		"apostrophes dropped":   strings.ReplaceAll(text, "'=1", "=1"),
	} {
		got, err := lexicon.ReadSheet("s.csv", []byte(other))
		require.NoError(t, err, name)
		assert.Equal(t, words, wordsOf(got), name)
	}
}

func TestAColumnThatIsNotThereChangesNothing(t *testing.T) {
	soups, _ := load(t).Type("soups")
	sheet, err := lexicon.ReadSheet("s.csv", resaved(t, sheetOf(t, soups.Words), ',', true, []int{1, 0, 2}))
	require.NoError(t, err)
	assert.Empty(t, sheet.Changes(soups, true))
}

func TestABrokenSheetIsReportedByItsRow(t *testing.T) {
	head := "sense,word,means,of,forms,scale,step\n"
	good := "taste,figgy,like dried figs,,,,\n"
	for _, c := range []struct {
		name, text string
		row        string
		tells      []string
	}{
		{"no meaning", head + good + "taste,datey,,,,,\n", "row 3", []string{`"datey"`, "no meaning", "16"}},
		{"no sense", head + ",datey,like dates,,,,\n", "row 2", []string{`"datey"`, "no sense", "aroma"}},
		{"no word", head + good + good[:6] + ",like dates,,,,\n", "row 3", []string{"word is empty"}},
		{"unknown sense", head + "flavour,datey,like dates,,,,\n", "row 2", []string{`"flavour"`, "taste"}},
		{"meaning too long", head + "taste,datey," + strings.Repeat("long ", 17) + ",,,,\n", "row 2", []string{"17 words", "shorten"}},
		{"scale without step", head + "taste,datey,like dates,,,dates,\n", "row 2", []string{"no step"}},
		{"step without scale", head + "taste,datey,like dates,,,,2\n", "row 2", []string{"no scale"}},
		{"step that is no number", head + "taste,datey,like dates,,,dates,two\n", "row 2", []string{`"two"`, "whole number"}},
		{"step that is a fraction", head + "taste,datey,like dates,,,dates,1.5\n", "row 2", []string{`"1.5"`}},
		{"word twice", head + good + "\n" + good, "row 4", []string{"twice", "row 2"}},
		{"cell too many", head + "taste,datey,like dates, and figs,,,,,more\n", "row 2", []string{`"more"`, "split"}},
		{"word without letters", head + "taste,12,like dates,,,,\n", "row 2", []string{"no letters"}},
		{"word with a line break", head + "taste,\"da\ntey\",like dates,,,,\n", "row 2", []string{"line break"}},
		{"after a cell of two lines", head + "taste,figgy,\"like\nfigs\",,,,\ntaste,datey,,,,,\n", "row 3", []string{"no meaning"}},
		{"open quotation mark", head + good + "taste,\"datey,like dates,,,,\n", "row 3", []string{"never closed"}},
		{"behind a quotation mark", head + "taste,\"da\"tey,like dates,,,,\n", "row 2", []string{"written twice"}},
		{"column missing", "sense,word\ntaste,figgy\n", "row 1", []string{`"means"`, "missing"}},
		{"column misspelt", strings.Replace(head, "forms", "form", 1) + good, "row 1", []string{`"form"`, `"forms"`}},
		{"column unknown", strings.Replace(head, "forms", "remarks", 1) + good, "row 1", []string{`"remarks"`, "take the column out"}},
		{"column twice", strings.Replace(head, "forms", "of", 1) + good, "row 1", []string{"two columns"}},
		{"scale column alone", "sense,word,means,scale\ntaste,figgy,like figs,\n", "row 1", []string{"belong together"}},
		{"no headings", good, "row 1", []string{"no headings"}},
		{"nothing", "", "row 1", []string{"empty"}},
		{"headings alone", head, "row 2", []string{"no word"}},
		{"another encoding", head + "taste,cr\xe8me,like cream,,,,\n", "row 2", []string{"UTF-8"}},
		{"sixteen bits", "\xff\xfes\x00e\x00", "row 1", []string{"UTF-16", "CSV"}},
		{"a workbook", "PK\x03\x04rest", "row 1", []string{"save it as CSV"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := lexicon.ReadSheet("s.csv", []byte(c.text))
			problems, ok := err.(lexicon.Problems)
			require.True(t, ok, "%v", err)
			require.Len(t, problems, 1, "%v", problems)
			assert.Equal(t, "s.csv "+c.row, problems[0].File)
			for _, tell := range c.tells {
				assert.Contains(t, problems[0].Text, tell)
			}
		})
	}
}

func TestEveryProblemOfASheetIsListed(t *testing.T) {
	_, err := lexicon.ReadSheet("s.csv", []byte("sense,word,means\ntaste,a,\n,b,c\ntaste,,d\ntaste,e,f\n"))
	problems, ok := err.(lexicon.Problems)
	require.True(t, ok)
	assert.Len(t, problems, 3)
}

func FuzzReadSheet(f *testing.F) {
	f.Add([]byte("sense,word,means\ntaste,figgy,\"like, figs\"\n"))
	f.Add([]byte("\ufeffword;sense;means;of\r\nfiggy;taste;x;a\\;b; c\r\n"))
	f.Add([]byte("sep=;\nsense;word;means\n\"\";\"\"\"\";"))
	f.Fuzz(func(t *testing.T, data []byte) {
		sheet, err := lexicon.ReadSheet("s.csv", data)
		if err != nil {
			return
		}
		again, err := lexicon.ReadSheet("s.csv", sheetOf(t, wordsOf(sheet)))
		require.NoError(t, err)
		require.Equal(t, wordsOf(sheet), wordsOf(again))
	})
}
