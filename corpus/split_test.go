package corpus

import (
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/lexicon"
)

// told lists texts in a line each: learner, session, dish, role, source and the
// text itself.
func toldIn(list []Evaluation) []string {
	var out []string
	for _, e := range list {
		out = append(out, strings.Join([]string{e.Learner, e.Session, e.Dish, string(e.Role), e.Source, e.Text}, " | "))
	}
	return out
}

func TestADocumentWithBothTextsIsPartedAtItsHeadings(t *testing.T) {
	for _, c := range []struct {
		name, file, text string
		course           *lexicon.Course
		want, rest       []string
	}{
		{
			"common headings", "idris/02 soda bread.txt",
			"Soda bread, session 2\n\nMy evaluation\nThe crust was hard.\n\nIt smelt of yeast.\n\nAdult feedback:\nHe used oven gloves.\n", nil,
			[]string{
				`idris | 02 | soda bread | learner | idris/02 soda bread.txt, "My evaluation" | The crust was hard.` + "\n\nIt smelt of yeast.",
				`idris | 02 | soda bread | adult | idris/02 soda bread.txt, "Adult feedback" | He used oven gloves.`,
			}, nil,
		},
		{
			"a heading on the line of its text, and the learner's text without one", "idris/02 soda bread.md",
			"The crust was hard.\nFeedback: He used oven gloves.\nHe was calm.", nil,
			[]string{
				"idris | 02 | soda bread | learner | idris/02 soda bread.md | The crust was hard.",
				`idris | 02 | soda bread | adult | idris/02 soda bread.md, "Feedback" | He used oven gloves.` + "\nHe was calm.",
			}, nil,
		},
		{
			"the tutor's headings", "idris/02 soda bread.txt",
			"WHAT I THINK\nThe crust was hard.\nMy evaluation\nof the crumb: soft.\nGRAN SAYS\nHe was calm.\nSAVED LINKS\nnone",
			&lexicon.Course{Headings: lexicon.Headings{Learner: []string{"What I think"}, Adult: []string{"Gran says"}, Other: []string{"Saved links"}}},
			[]string{
				`idris | 02 | soda bread | learner | idris/02 soda bread.txt, "WHAT I THINK" | The crust was hard.` + "\nMy evaluation\nof the crumb: soft.",
				`idris | 02 | soda bread | adult | idris/02 soda bread.txt, "GRAN SAYS" | He was calm.`,
			}, nil,
		},
		{
			"several sessions", "noor.md",
			"# My workbook\n\n## Session 1: lentil soup\n### My evaluation\nIt was thick.\n### Adult feedback\nA bit salty.\n## Session 2: shakshuka\n### My evaluation\nThe eggs were runny.\n", nil,
			[]string{
				`noor | 01 | lentil soup | learner | noor.md, "Session 1: lentil soup", "My evaluation" | It was thick.`,
				`noor | 01 | lentil soup | adult | noor.md, "Session 1: lentil soup", "Adult feedback" | A bit salty.`,
				`noor | 02 | shakshuka | learner | noor.md, "Session 2: shakshuka", "My evaluation" | The eggs were runny.`,
			}, nil,
		},
		{
			"a heading nobody named ends a text, an area does not", "noor/02 fish pie.md",
			"# My evaluation\nIt was hot.\n# Taste\nSalty.\n# Things for home\none two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen\n# Adult feedback\n\n", nil,
			[]string{`noor | 02 | fish pie | learner | noor/02 fish pie.md, "My evaluation" | It was hot.` + "\n# Taste\nSalty."},
			[]string{`noor/02 fish pie.md: 16 words below "Things for home" belong to neither`},
		},
		{
			"an evaluation nobody wrote", "noor/02 fish pie.txt", "My evaluation\n\nAdult feedback\nShe was calm.", nil,
			[]string{`noor | 02 | fish pie | adult | noor/02 fish pie.txt, "Adult feedback" | She was calm.`},
			[]string{`noor/02 fish pie.txt, "My evaluation": holds no text`},
		},
		{
			"no headings where the name tells of both", "noor/02 fish pie evaluation and feedback.txt", "It was hot.", nil, nil,
			[]string{"no heading parts them"},
		},
		{
			"labels at the top", "fish pie.txt", "Name: Noor A.\nDate: 3/4/2026\nWeek: 2\nDish: ____\n\nTaste: it was hot.", nil,
			[]string{"Noor A. | 02 | fish pie | learner | fish pie.txt | Taste: it was hot."}, nil,
		},
		{
			"names of files before labels", "noor/02 fish pie.txt", "Name: N.\nWeek: 3\n\nIt was hot.", nil,
			[]string{"noor | 02 | fish pie | learner | noor/02 fish pie.txt | It was hot."}, nil,
		},
		{
			"a heading within the learner's text", "noor/02 fish pie.txt", "What I did: I boiled the potatoes.\nHow it went: the top was crisp.", nil,
			[]string{"noor | 02 | fish pie | learner | noor/02 fish pie.txt | What I did: I boiled the potatoes.\nHow it went: the top was crisp."}, nil,
		},
		{
			"no parts", "noor/02 fish pie.txt", "It was hot.\nEquipment: a pan.\n\nNext time: less salt.", nil,
			[]string{"noor | 02 | fish pie | learner | noor/02 fish pie.txt | It was hot.\nEquipment: a pan.\n\nNext time: less salt."}, nil,
		},
	} {
		t.Run(c.name, func(t *testing.T) {
			texts, rest := readFolder(t, fstest.MapFS{c.file: file(c.text)}, c.course)
			assert.Equal(t, c.want, toldIn(texts))
			require.Len(t, rest, len(c.rest), strings.Join(rest, "\n"))
			for i, r := range c.rest {
				assert.Contains(t, rest[i], r)
			}
		})
	}
}
