package corpus

import (
	"bytes"
	"os"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"github.com/xuri/excelize/v2"

	"saywhy/lexicon"
)

func TestAFormIsReadRowByRow(t *testing.T) {
	for _, c := range []struct {
		name, file, text string
		form             lexicon.Form
		want, rest       []string
	}{
		{
			"common names", "answers.csv",
			"Timestamp,Your name,Which session?,What did you make?,My evaluation,Adult feedback\n" +
				"14/03/2026 10:12:01,Noor,2,Soda bread,\"It was brown, and\nhot.\",She was calm.\n" +
				",,,,,\n" +
				"2026-03-21,Bryn,Week 3,lentil soup,It was thick.,\n" +
				"soon,Maya,4,fish pie,It was hot.,\n" +
				"2026-03-21,,3,lentil soup,It was thick.,\n" +
				"2026-03-21,Kofi,,,,\n",
			lexicon.Form{},
			[]string{
				"Noor | 02 | Soda bread | learner | answers.csv, row 2 | It was brown, and\nhot.",
				"Noor | 02 | Soda bread | adult | answers.csv, row 2 | She was calm.",
				"Bryn | 03 | lentil soup | learner | answers.csv, row 4 | It was thick.",
				"Maya | 04 | fish pie | learner | answers.csv, row 5 | It was hot.",
			},
			[]string{`row 5: its date "soon" cannot be read`, "row 6: names no learner; fill in the column \"Your name\"", "row 7: holds no text"},
		},
		{
			"the tutor's names, semicolons, and a title above", "03 leek soup answers.csv",
			"\xef\xbb\xbfCourse of spring;;;\nWho?;Part A;Part B;Who writes?\nNoor;It was hot.;Next time less.;me\nNoor;He was calm.;;her mum\n",
			lexicon.Form{Learner: "who", Text: []string{"Part B", "Part A"}, Role: "Who writes"},
			[]string{
				"Noor | 03 | leek soup | learner | 03 leek soup answers.csv, row 3 | Next time less.\n\nIt was hot.",
				"Noor | 03 | leek soup | adult | 03 leek soup answers.csv, row 4 | He was calm.",
			}, nil,
		},
		{
			"a column that course.yaml names wrongly", "answers.csv", "Name,Evaluation\nNoor,It was hot.\n",
			lexicon.Form{Learner: "Names"}, nil, []string{`answers.csv: has no column "Names", which course.yaml names for the learner; did you mean "Name"?`},
		},
		{
			"no column of text", "answers.csv", "Name,Thoughts\nNoor,It was hot.\n",
			lexicon.Form{}, nil, []string{`answers.csv: has no column that is surely the evaluation; name it in course.yaml, under form, as text (the columns are "Name", "Thoughts")`},
		},
		{
			"two columns of names", "answers.csv", "Name,Your name,Evaluation\nNoor,N,It was hot.\n",
			lexicon.Form{}, nil, []string{`two columns that could be the learner, "Name" and "Your name"`},
		},
		{
			"no column of learners", "answers.csv", "Session,Evaluation\n1,It was hot.\n2,It was cold.\n",
			lexicon.Form{}, nil, []string{"answers.csv: has no column that is surely the learner"},
		},
		{
			"a learner's own form", "noor/answers.tsv", "Session\tEvaluation\n1\tIt was \xe9paisse.\n",
			lexicon.Form{}, []string{"noor | 01 |  | learner | noor/answers.tsv, row 2 | It was épaisse."}, nil,
		},
		{
			"a mark that does not fit", "answers.csv", "Name,Session,Evaluation\nNoor,1,It was 5\" wide.\nNoor,2,It was hot.\nNoor,3,\"It was hot.\nNoor,4,It was hot.\n",
			lexicon.Form{}, []string{"Noor | 02 |  | learner | answers.csv, row 3 | It was hot."},
			[]string{"row 2: has a quotation mark that does not fit, from line 2", "row 4: has a quotation mark that does not fit, from line 4"},
		},
		{"nothing", "answers.csv", "", lexicon.Form{}, nil, []string{"holds no rows"}},
		{"no table", "answers.csv", "PK\x03\x04", lexicon.Form{}, nil, []string{"is no table as text"}},
		{
			"a mark never closed", "answers.csv", "Name,Session,Evaluation\nNoor,2,It was hot.\nNoor,3,\"" + strings.Repeat("hot ", maxRow/3), lexicon.Form{},
			[]string{"Noor | 02 |  | learner | answers.csv, row 2 | It was hot."},
			[]string{"row 3: is longer than 4 MB, and with it the rest of the file is not read"},
		},
		{
			"a huge cell", "answers.csv", "Name,Session,Evaluation\nNoor,1," + strings.Repeat("x", maxText+1) + "\nNoor,2,It was hot.\n", lexicon.Form{},
			[]string{"Noor | 02 |  | learner | answers.csv, row 3 | It was hot."},
			[]string{"row 2: holds more than 2 MB"},
		},
	} {
		t.Run(c.name, func(t *testing.T) {
			texts, rest := readFolder(t, fstest.MapFS{c.file: file(c.text)}, &lexicon.Course{Form: c.form})
			assert.Equal(t, c.want, toldIn(texts))
			require.Len(t, rest, len(c.rest), strings.Join(rest, "\n"))
			for i, r := range c.rest {
				assert.Contains(t, rest[i], r)
			}
		})
	}
}

func TestAWorkbookIsReadSheetBySheet(t *testing.T) {
	book := excelize.NewFile()
	rows := func(sheet string, rows ...[]any) {
		_, err := book.NewSheet(sheet)
		require.NoError(t, err)
		for i, row := range rows {
			at, err := excelize.CoordinatesToCellName(1, i+1)
			require.NoError(t, err)
			require.NoError(t, book.SetSheetRow(sheet, at, &row))
		}
	}
	rows("Week 2 soda bread", []any{"Name", "Evaluation", "Date"}, []any{"Noor", "It was brown.", 46095}, nil, []any{"Bryn", "It rose.", "14 March 2026"})
	rows("Week 3", []any{"Name", "Evaluation", "Dish"}, []any{"Noor", "It was thick.", "lentil soup"})
	rows("Sums", []any{"Week", "Answers"}, []any{2, 40})
	rows("Away", []any{"Name", "Evaluation"}, []any{"Noor", "Hidden."})
	require.NoError(t, book.SetSheetVisible("Away", false))
	require.NoError(t, book.DeleteSheet("Sheet1"))
	var data bytes.Buffer
	require.NoError(t, book.Write(&data))
	texts, rest := readFolder(t, fstest.MapFS{"answers.xlsx": &fstest.MapFile{Data: data.Bytes()}}, nil)
	assert.Equal(t, []string{
		`Noor | 02 | soda bread | learner | answers.xlsx, sheet "Week 2 soda bread", row 2 | It was brown.`,
		`Bryn | 02 | soda bread | learner | answers.xlsx, sheet "Week 2 soda bread", row 4 | It rose.`,
		`Noor | 03 | lentil soup | learner | answers.xlsx, sheet "Week 3", row 2 | It was thick.`,
	}, toldIn(texts))
	require.Len(t, rest, 1)
	assert.Contains(t, rest[0], `answers.xlsx, sheet "Sums": has no column that is surely the evaluation`)
	require.NotEmpty(t, texts)
	for _, e := range texts[:2] {
		assert.Equal(t, "2026-03-14", e.Date.Format(dateForm))
	}
}

func TestAWorkbookOfLibreOfficeIsRead(t *testing.T) {
	texts, rest := readFolder(t, os.DirFS(convert(t, "xlsx", "answers.csv")), nil)
	assert.Empty(t, rest)
	assert.Equal(t, []string{
		"Elin | 04 | baked custard | learner | answers.xlsx, row 2 | It wobbled in the middle.\nThe skin was thin.",
		"Elin | 04 | baked custard | adult | answers.xlsx, row 2 | She tested it with a knife, \"as in the book\".",
	}, toldIn(texts))
	require.NotEmpty(t, texts)
	assert.Equal(t, "2026-03-14", texts[0].Date.Format(dateForm))
}
