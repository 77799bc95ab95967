package analyze

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestQualitiesAndWhatTheyAreSaidOf(t *testing.T) {
	a, lex := shared(t)
	for _, c := range []struct {
		text string
		want []string // word, and behind a colon the thing, if not the whole dish
	}{
		{"The crust was hard and the bread was dry.", []string{"hard:crust", "dry"}},
		{"It had a crispy crust.", []string{"crispy:crust"}},
		{"It was moist.", []string{"moist"}},
		{"The texture was smooth.", []string{"smooth"}},
		{"The carrots were soft.", []string{"soft:carrot"}},
		{"moist bread", []string{"moist"}},
		{"The middle was soggy but the edges were crisp.", []string{"soggy:middl", "crispy:edg"}},
		{"The bread was firm with a crisp crust.", []string{"firm", "crispy:crust"}},
		{"Inside it was moist and it was brown.", []string{"moist:inside", "brown"}},
		{"It was not soggy underneath.", []string{"soggy:underneath"}},
		{"I liked it.", nil},
	} {
		n := a.Note(Input{Text: c.text}, Brief{Dish: lex.General()})
		var got []string
		for _, q := range n.Qualities {
			s := q.Word
			if q.Of != "" {
				s += ":" + q.Of
			}
			got = append(got, s)
			assert.Equal(t, c.text[q.Start:q.End], q.Text)
		}
		assert.Equal(t, c.want, got, c.text)
	}
}

func TestNotesHoldTheReportAndThePlans(t *testing.T) {
	a, lex := shared(t)
	in, brief := Input{Text: "The bread was dry. Next time I would take it out sooner."}, Brief{Dish: lex.General()}
	n := a.Note(in, brief)
	assert.Equal(t, a.Read(in, brief), n.Report)
	assert.Equal(t, a.Plans(in, brief), n.Plans)
	require.Len(t, n.Plans, 1)
	assert.False(t, n.LooksBack)

	for text, want := range map[string]bool{
		"I took the crumble out sooner.": true,
		"I set a timer. It was golden.":  false,
		"":                               false,
		"I kept looking and took it out sooner so the top stayed pale.": true,
	} {
		later := a.Note(Input{Text: text}, brief)
		assert.Equal(t, want, later.SpeaksOf(n.Plans[0]), text)
	}
	assert.True(t, a.Note(Input{Text: "Last time it was dry."}, brief).LooksBack)
}
