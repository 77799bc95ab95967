package corpus

import (
	"archive/zip"
	"bytes"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"github.com/xuri/excelize/v2"
)

// zipped packs parts in the order of names and texts, name before text.
func zipped(tb testing.TB, parts ...string) []byte {
	tb.Helper()
	var b bytes.Buffer
	w := zip.NewWriter(&b)
	for i := 0; i < len(parts); i += 2 {
		p, err := w.Create(parts[i])
		require.NoError(tb, err)
		_, err = io.WriteString(p, parts[i+1])
		require.NoError(tb, err)
	}
	require.NoError(tb, w.Close())
	return b.Bytes()
}

const (
	docxHead = `<?xml version="1.0"?><w:document xmlns:w="http://schemas.openxmlformats.org/wordprocessingml/2006/main"><w:body>`
	docxFoot = `</w:body></w:document>`
	odtHead  = `<?xml version="1.0"?><office:document-content xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0"><office:body><office:text>`
	odtFoot  = `</office:text></office:body></office:document-content>`
)

func docxOf(tb testing.TB, body string) []byte {
	return zipped(tb, "word/document.xml", docxHead+body+docxFoot)
}

func odtOf(tb testing.TB, body string) []byte {
	return zipped(tb, "content.xml", odtHead+body+odtFoot)
}

func TestHostileFilesAreRefusedWithALineAndTheRestIsRead(t *testing.T) {
	paragraph := "<w:p><w:r><w:t>It was hot.</w:t></w:r></w:p>"
	entities := `<!DOCTYPE d [<!ENTITY a "hot hot hot"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;&a;">]>`
	deep := strings.Repeat("<w:tbl><w:tr><w:tc>", 200) + strings.Repeat("</w:tc></w:tr></w:tbl>", 200)
	var many []string
	for i := range maxEntries + 1 {
		many = append(many, fmt.Sprintf("%d.xml", i), "")
	}
	locked := excelize.NewFile()
	var lockedXLSX bytes.Buffer
	require.NoError(t, locked.Write(&lockedXLSX, excelize.Options{Password: "soup"}))
	for name, c := range map[string]struct {
		data []byte
		want string
	}{
		"bomb.docx":            {docxOf(t, strings.Repeat(" ", maxPart/2)), "becomes far too large"},
		"bomb.odt":             {odtOf(t, strings.Repeat(" ", maxPart/2)), "becomes far too large"},
		"bomb.xlsx":            {zipped(t, "xl/workbook.xml", "", "xl/worksheets/sheet1.xml", strings.Repeat(" ", maxPart/2)), "becomes far too large"},
		"entities.docx":        {zipped(t, "word/document.xml", entities+docxHead+paragraph+docxFoot), "declares a document type"},
		"entities.odt":         {zipped(t, "content.xml", entities+odtHead+"<text:p>&b;</text:p>"+odtFoot), "declares a document type"},
		"entity.docx":          {docxOf(t, "<w:p><w:r><w:t>&b;</w:t></w:r></w:p>"), "is damaged"},
		"nested.docx":          {docxOf(t, deep), "nested too deep"},
		"nested.odt":           {odtOf(t, strings.Repeat("<text:list><text:list-item>", 300)+strings.Repeat("</text:list-item></text:list>", 300)), "nested too deep"},
		"many.docx":            {zipped(t, many...), "has 10001 parts"},
		"manyxlsx.xlsx":        {zipped(t, many...), "has 10001 parts"},
		"text.docx":            {docxOf(t, "<w:p><w:r><w:t>"+strings.Repeat("hot & cold ", 1)+"</w:t></w:r></w:p>"), "is damaged"},
		"long.docx":            {docxOf(t, strings.Repeat("<w:p><w:r><w:t>"+strings.Repeat("soup is hot ", 30)+"</w:t></w:r></w:p>", 7000)), "more than 2 MB"},
		"long.odt":             {odtOf(t, strings.Repeat("<text:p>"+strings.Repeat("soup is hot ", 30)+"</text:p>", 7000)), "more than 2 MB"},
		"cut.docx":             {docxOf(t, paragraph)[:200], "is damaged and cannot be unpacked"},
		"unclosed.docx":        {zipped(t, "word/document.xml", docxHead+paragraph), "is damaged"},
		"empty.docx":           {nil, "is not the document its name says"},
		"other.docx":           {zipped(t, "readme.txt", "x"), "is not the document its name says"},
		"other.odt":            {zipped(t, "readme.txt", "x"), "is not the document its name says"},
		"other.xlsx":           {zipped(t, "readme.txt", "x"), "is not the workbook its name says"},
		"broken.xlsx":          {zipped(t, "xl/workbook.xml", "<x"), "is damaged"},
		"old.docx":             {[]byte("\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1 old"), "locked with a password, or saved in an old format"},
		"locked.xlsx":          {lockedXLSX.Bytes(), "locked with a password"},
		"locked.odt":           {zipped(t, "META-INF/manifest.xml", `<m:manifest xmlns:m="x"><m:file-entry><m:encryption-data/></m:file-entry></m:manifest>`, "content.xml", "\x00\x01"), "locked with a password"},
		"long.txt":             {bytes.Repeat([]byte("hot "), maxText/4+1), "more than 2 MB"},
		"zero.txt":             {[]byte("hot\x00cold"), "is not a text file"},
		"aliases.md":           {[]byte("---\nlearner: &a noor\ndish: *a\n---\nIt was hot."), "should hold one piece of text"},
		"two rows of a key.md": {[]byte("---\nsession: 2\nsession: 3\n---\nIt was hot."), "stands twice"},
	} {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			dir := fstest.MapFS{"noor/02 " + name: {Data: c.data}, "noor/99 fish pie.txt": file("It was salty.")}
			texts, rest := readFolder(t, dir, nil)
			require.Len(t, rest, 1)
			assert.Contains(t, rest[0], c.want)
			assert.NotContains(t, rest[0], "\n")
			require.Len(t, texts, 1, "the rest is read")
			assert.Equal(t, "99", texts[0].Session)
		})
	}
}

func TestPartsOfADocumentMayHaveTheNamesOfWindows(t *testing.T) {
	data := zipped(t, `word\document.xml`, docxHead+"<w:p><w:r><w:t>It was hot.</w:t></w:r></w:p>"+docxFoot)
	texts, rest := readFolder(t, fstest.MapFS{"noor/02 fish pie.docx": {Data: data}}, nil)
	assert.Empty(t, rest)
	require.Len(t, texts, 1)
	assert.Equal(t, "It was hot.", texts[0].Text)
}

func TestAFormControlThatNobodyFilledInIsNotTheLearners(t *testing.T) {
	data := docxOf(t, `<w:p><w:r><w:t xml:space="preserve">It was </w:t></w:r><w:sdt><w:sdtPr><w:showingPlcHdr/></w:sdtPr><w:sdtContent><w:r><w:t>Click here to write</w:t></w:r></w:sdtContent></w:sdt><w:sdt><w:sdtPr/><w:sdtContent><w:r><w:t>hot.</w:t></w:r></w:sdtContent></w:sdt></w:p>`)
	texts, _ := readFolder(t, fstest.MapFS{"noor/02 fish pie.docx": {Data: data}}, nil)
	require.Len(t, texts, 1)
	assert.Equal(t, "It was hot.", texts[0].Text)
}

// officeSeeds are documents and tables of testdata, made where LibreOffice is
// at hand, and small ones made here.
func officeSeeds(f *testing.F, ext string, made ...[]byte) {
	f.Helper()
	for _, m := range made {
		f.Add(m)
	}
	files, err := filepath.Glob(filepath.Join("testdata", "*."+ext))
	require.NoError(f, err)
	for _, name := range files {
		data, err := os.ReadFile(name)
		require.NoError(f, err)
		f.Add(data)
	}
}

// fuzzFile reads whatever bytes under a name: nothing may panic past the
// reader, and every text and every refusal must be whole. Bytes that are no
// archive are packed as the part of one, so that the XML is reached as well.
func fuzzFile(f *testing.F, name, part string) {
	f.Fuzz(func(t *testing.T, data []byte) {
		if len(data) > 1<<16 {
			t.Skip()
		}
		if part != "" && !bytes.HasPrefix(data, []byte("PK")) {
			data = zipped(t, part, string(data))
		}
		for e, err := range Folder(t.Context(), fstest.MapFS{name: {Data: data}}, FolderOptions{}) {
			if err != nil {
				u := asUnplaced(err)
				require.NotEmpty(t, u.Reason)
				require.NotContains(t, u.Reason, "\n")
				require.True(t, strings.HasPrefix(u.Source, name), u.Source)
				continue
			}
			require.NotEmpty(t, strings.TrimSpace(e.Text))
			require.NotEmpty(t, e.Learner)
			require.NotEmpty(t, e.Session)
			require.Contains(t, []string{"learner", "adult"}, string(e.Role))
			require.True(t, strings.HasPrefix(e.Source, name), e.Source)
		}
	})
}

func FuzzDocx(f *testing.F) {
	officeSeeds(f, "docx", docxOf(f, "<w:p><w:pPr><w:rPr><w:del/></w:rPr></w:pPr><w:r><w:t>It was</w:t></w:r></w:p><w:tbl><w:tr><w:tc><w:p><w:r><w:t>hot</w:t></w:r></w:p></w:tc></w:tr></w:tbl>"))
	f.Add([]byte(docxHead + `<w:p><w:ins><w:r><w:t>It was</w:t></w:r></w:ins><w:del><w:r><w:delText>cold</w:delText></w:r></w:del></w:p>` + docxFoot))
	fuzzFile(f, "noor/02 fish pie.docx", "word/document.xml")
}

func FuzzOdt(f *testing.F) {
	officeSeeds(f, "odt", odtOf(f, `<text:p>It was<text:s text:c="3"/>hot</text:p><table:table><table:table-row><table:table-cell><text:p>a</text:p></table:table-cell></table:table-row></table:table>`))
	f.Add([]byte(odtHead + `<text:h text:outline-level="2">Feedback</text:h><text:p>It was<text:line-break/>hot</text:p>` + odtFoot))
	fuzzFile(f, "noor/02 fish pie.odt", "content.xml")
}

func FuzzXLSX(f *testing.F) {
	book := excelize.NewFile()
	require.NoError(f, book.SetSheetRow("Sheet1", "A1", &[]any{"Name", "Session", "Evaluation"}))
	require.NoError(f, book.SetSheetRow("Sheet1", "A2", &[]any{"Noor", 2, "It was hot."}))
	var data bytes.Buffer
	require.NoError(f, book.Write(&data))
	officeSeeds(f, "xlsx", data.Bytes())
	fuzzFile(f, "noor/02 fish pie.xlsx", "")
}

func FuzzCSV(f *testing.F) {
	officeSeeds(f, "csv", []byte("Name;Session;Evaluation\nNoor;2;\"It was\nhot\"\n"), []byte("\xff\xfeN\x00a\x00"))
	fuzzFile(f, "noor/02 fish pie.csv", "")
}

func FuzzText(f *testing.F) {
	for _, s := range []string{
		"---\nlearner: noor\n---\nMy evaluation\nIt was hot.\nAdult feedback: calm", "\xff\xfeh\x00", "# Session 3: soup\n## Feedback\nhot",
		"Name: Noor\nDate: 1/2/2026\n\nIt was hot.", "---\n- a\n---\nx",
	} {
		f.Add([]byte(s))
	}
	fuzzFile(f, "noor/02 fish pie.md", "")
}

func FuzzPlace(f *testing.F) {
	for _, s := range []string{"amina/03 leek soup.docx", "2026-03-14_Amina's-mum (2).txt", "year 7/week 3/learner 12.md", "a–b/s03 .odt"} {
		f.Add(s)
	}
	p := newPlaces(builtin(f), nil)
	f.Fuzz(func(t *testing.T, name string) {
		if len(name) > 300 || !fs.ValidPath(name) || name == "." {
			t.Skip()
		}
		e, err := p.evaluation(name, facts{}, facts{})
		if err == nil {
			require.NotEmpty(t, e.Learner)
			require.NotEmpty(t, e.Session)
		}
	})
}
