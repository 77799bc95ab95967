package lexicon_test

import (
	"errors"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/lexicon"
)

func courseOf(text string) fstest.MapFS {
	return fstest.MapFS{"course.yaml": {Data: []byte(text)}}
}

// courseProblems loads a course and returns what is wrong with it.
func courseProblems(tb testing.TB, dir fstest.MapFS) (*lexicon.Lexicon, *lexicon.Course, lexicon.Problems) {
	tb.Helper()
	lex, course, err := lexicon.LoadCourse(dir)
	require.NotNil(tb, lex)
	require.NotNil(tb, course)
	var problems lexicon.Problems
	if err != nil {
		require.True(tb, errors.As(err, &problems), "%v", err)
	}
	return lex, course, problems
}

func TestACourseOverridesTwoTypesAndAddsOne(t *testing.T) {
	dir := fstest.MapFS{
		"dishes/soups.yaml":  {Data: []byte(rows("type: soups", "words:", "  taste:", `    figgy: {means: "like dried figs"}`))},
		"dishes/breads.yaml": {Data: []byte(rows("type: breads", "title: Loaves", "brief: [hygiene, texture]"))},
		"dishes/jams.yaml":   {Data: []byte(rows("type: jams", "family: sweet", "dishes: [plum jam]", "words:", "  texture:", `    settish: {means: "keeps its shape and moves a bit"}`))},
		"course.yaml": {Data: []byte(rows("title: Autumn", "sessions:", "  - {title: Week 1, dish: plum jam, brief: [hygiene, taste]}", "  - dish: tomato soup",
			"questions:", "  learner:", "    taste:", "      said:",
			`        - "What did your tongue tell you first?"`, `        - "What came after that?"`,
			`        - "Where in your mouth did you notice it?"`, `        - "How would you tell someone about it?"`,
			`        - "What did your tongue tell you last?"`))},
	}
	lex, course, problems := courseProblems(t, dir)
	require.Empty(t, problems)

	soups, err := lex.Find("soups")
	require.NoError(t, err)
	w, ok := finds(soups.Words, lexicon.Tongue, "figgy")
	require.True(t, ok)
	assert.True(t, lex.Laid(w))
	assert.Equal(t, "soups, your course", lex.Origin(w))
	breads, err := lex.Find("loaves")
	require.NoError(t, err)
	assert.Equal(t, []lexicon.Area{lexicon.Hygiene, lexicon.Texture}, breads.Brief)
	jams, err := lex.Find("plum jam")
	require.NoError(t, err)
	assert.Equal(t, "jams", jams.Name)
	for _, w := range jams.Words {
		assert.Equal(t, w.Word == "settish", lex.Laid(w), w.Word)
	}

	assert.Equal(t, "Autumn", course.Title)
	require.Len(t, course.Sessions, 2)
	for _, name := range []string{"week 1", "WEEK 1", "plum jam", "plum jams"} {
		s, ok := course.Session(name)
		assert.True(t, ok, name)
		assert.Equal(t, []lexicon.Area{lexicon.Hygiene, lexicon.Taste}, s.Brief, name)
	}
	s, ok := course.Session("tomato soup")
	assert.True(t, ok)
	assert.Nil(t, s.Brief)
	_, ok = course.Session("")
	assert.False(t, ok)

	built := load(t).Reading.Wordings
	own := lex.Reading.Wordings
	assert.Len(t, own["learner"]["taste"]["said"], 5)
	assert.Equal(t, built["learner"]["taste"]["vague"], own["learner"]["taste"]["vague"])
	assert.NotEqual(t, built["learner"]["taste"]["said"], own["learner"]["taste"]["said"], "the built-in lexicon stays as it was")
}

func TestACourseNamesLearnersColumnsAndHeadings(t *testing.T) {
	_, course, problems := courseProblems(t, courseOf(rows("learners: [Amina, Ben Ito]",
		"form:", "  learner: Your name", `  text: ["How did it go?", "And next time?"]`, "  feedback: Adult",
		"headings:", "  adult: What gran thought", "  other: [Recipe]")))
	require.Empty(t, problems)
	assert.Equal(t, []string{"Amina", "Ben Ito"}, course.Learners)
	assert.Equal(t, lexicon.Form{Learner: "Your name", Text: []string{"How did it go?", "And next time?"}, Feedback: []string{"Adult"}}, course.Form)
	assert.Equal(t, lexicon.Headings{Adult: []string{"What gran thought"}, Other: []string{"Recipe"}}, course.Headings)
}

func TestAWordOfTheTutorsIsNoMistakeOfABuiltInWording(t *testing.T) {
	_, _, problems := courseProblems(t, fstest.MapFS{"dishes/soups.yaml": {Data: []byte(rows(
		"type: soups", "words:", "  taste:", `    homely: {means: "like what is cooked by people you know", forms: [home, friend, food]}`))}})
	assert.Empty(t, problems)
}

func TestABrokenCourseFileIsReportedWithItsPlaceAndItsMend(t *testing.T) {
	question := func(rest ...string) string {
		return rows(append([]string{"questions:", "  learner:"}, rest...)...)
	}
	for _, c := range []struct {
		name         string
		text         string
		line, column int
		tells        []string
	}{
		{"unknown row", rows("tittle: Autumn"), 1, 1, []string{`"tittle"`, `"title"`}},
		{"row twice", rows("title: A", "title: B"), 2, 1, []string{"twice", "line 1"}},
		{"title that is a list", rows("title: [A]"), 1, 8, []string{"text"}},
		{"sessions that are no list", rows("sessions: soups"), 1, 11, []string{"list", "- dish"}},
		{"session that is no row", rows("sessions:", "  - soups"), 2, 5, []string{"name: value"}},
		{"session without dish", rows("sessions:", "  - title: Week 1"), 2, 5, []string{"no dish", "dish:"}},
		{"session with an unknown dish", rows("sessions:", "  - dish: tomatto soop"), 2, 11, []string{`"tomato soup"`}},
		{"session with an unknown row", rows("sessions:", "  - dish: soups", "    breif: [taste]"), 3, 5, []string{`"brief"`}},
		{"two sessions of a name", rows("sessions:", "  - {title: One, dish: soups}", "  - {title: one, dish: cakes}"), 3, 5, []string{"line 2", "another title"}},
		{"unknown area in a brief", rows("sessions:", "  - dish: soups", "    brief: [flavour]"), 3, 13, []string{`"flavour"`}},
		{"empty brief", rows("sessions:", "  - dish: soups", "    brief: []"), 3, 12, []string{"empty", "at least one"}},
		{"brief that is no list", rows("sessions:", "  - dish: soups", "    brief: taste"), 3, 12, []string{"list"}},
		{"learner twice", rows("learners: [amina, ben, Amina]"), 1, 24, []string{"twice", "line 1", "keep one"}},
		{"learners that are no list", rows("learners: amina"), 1, 11, []string{"list"}},
		{"unknown row of a form", rows("form:", "  learnr: Name"), 2, 3, []string{`"learnr"`, `"learner"`}},
		{"column that is a list", rows("form:", "  learner: [Name]"), 2, 12, []string{"text"}},
		{"column of text twice", rows("form:", "  text: [How, how]"), 2, 15, []string{"twice"}},
		{"unknown row of headings", rows("headings:", "  adlut: [Feedback]"), 2, 3, []string{`"adlut"`, `"adult"`}},
		{"a heading of two kinds", rows("headings:", "  learner: Mine", "  adult: [mine, Hers]"), 3, 10, []string{`"mine"`, "learner", "one of the two"}},
		{"unknown role", rows("questions:", "  parent: {}"), 2, 3, []string{`"parent"`, "adult"}},
		{"unknown area of questions", question("    flavor: {}"), 3, 5, []string{`"flavor"`}},
		{"unknown list of questions", question("    taste: {sayd: []}"), 3, 13, []string{`"said"`}},
		{"broken quotes", rows(`title: "Autumn`), 0, 0, []string{"quotes"}},
		{"empty file", "", 0, 0, []string{"empty"}},
		{"not UTF-8", "title: Caf\xe9\n", 1, 11, []string{"UTF-8"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			t.Parallel()
			lex, _, problems := courseProblems(t, courseOf(c.text))
			require.NotEmpty(t, problems)
			p := problems[0]
			assert.Equal(t, lexicon.CourseFile, p.File)
			assert.Equal(t, 1, p.Layer)
			if c.line > 0 {
				assert.Equal(t, [2]int{c.line, c.column}, [2]int{p.Line, p.Column}, p.Error())
			}
			for _, tell := range c.tells {
				assert.Contains(t, p.Text, tell)
			}
			workingApart(t, lex)
			assert.NotEmpty(t, lex.Reading.Wordings["learner"]["taste"]["said"])
		})
	}
}

func TestFilesThatWouldNotBeReadAreReported(t *testing.T) {
	soups := []byte("type: soups\n")
	for name, tell := range map[string]string{
		"dishes/soups.yml": "end in .yaml",
		"soups.yaml":       "dishes",
		"course.yml":       "course.yaml",
	} {
		_, _, problems := courseProblems(t, fstest.MapFS{name: {Data: soups}})
		if assert.Len(t, problems, 1, name) {
			assert.Equal(t, name, problems[0].File)
			assert.Contains(t, problems[0].Text, tell)
		}
	}
	_, _, problems := courseProblems(t, fstest.MapFS{"dishes/soups.yaml": {Data: soups}, "dishes/soups copy.yaml": {Data: soups}})
	if assert.Len(t, problems, 1) {
		assert.Contains(t, problems[0].Text, "keep one of the two files")
	}
}

func TestAnEmptyFolderIsACourse(t *testing.T) {
	lex, course, problems := courseProblems(t, fstest.MapFS{"notes.txt": {Data: []byte("mine")}})
	assert.Empty(t, problems)
	assert.Empty(t, course.Sessions)
	workingApart(t, lex)
}

func TestANewDishFileIsValidAsItStands(t *testing.T) {
	lex := load(t)
	soups, _ := lex.Type("soups")
	for _, name := range append(lex.Families(), "soups") {
		below, ok := lex.Type(name)
		require.True(t, ok, name)
		got, _, problems := courseProblems(t, fstest.MapFS{"dishes/x.yaml": {Data: lexicon.NewDish("tray-bakes", below, false)}})
		require.Empty(t, problems, name)
		d, err := got.Find("tray bakes")
		require.NoError(t, err)
		assert.Equal(t, name, d.Family)
		assert.Len(t, d.Words, len(below.Words))
	}
	got, _, problems := courseProblems(t, fstest.MapFS{"dishes/x.yaml": {Data: lexicon.NewDish("soups", soups, true)}})
	require.Empty(t, problems)
	d, _ := got.Type("soups")
	assert.Equal(t, soups, d, "as made, the file changes nothing")
}

// TestTheNotesOfANewDishFileAreRows takes the note marks away, as its first
// comment says a tutor may.
func TestTheNotesOfANewDishFileAreRows(t *testing.T) {
	soups, _ := load(t).Type("soups")
	var out []string
	for _, line := range strings.Split(string(lexicon.NewDish("soups", soups, true)), "\n") {
		for _, key := range []string{"dishes:", "techniques:", "hazards:", "allergens:", "moments:", "  appearance: ", "  aroma: ", "  taste: ", "  texture: when", "brief:"} {
			if strings.HasPrefix(line, "# "+key) {
				line = line[2:]
			}
		}
		out = append(out, line)
	}
	got, _, problems := courseProblems(t, fstest.MapFS{"dishes/x.yaml": {Data: []byte(strings.Join(out, "\n"))}})
	require.Empty(t, problems)
	d, _ := got.Type("soups")
	assert.Equal(t, soups, d)
}

func TestNamesOfDishTypes(t *testing.T) {
	for _, good := range []string{"jams", "tray-bakes", "week-2"} {
		assert.Empty(t, lexicon.DishNameProblem(good))
	}
	for bad, tell := range map[string]string{"Tray bakes": `"tray-bakes"`, "../x": `"x"`, "": "letters", "a/b": `"a-b"`, "naïve": "-"} {
		assert.Contains(t, lexicon.DishNameProblem(bad), tell, bad)
	}
}
