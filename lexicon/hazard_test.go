package lexicon_test

import (
	"regexp"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/lexicon"
)

func TestEveryHazardHasSomethingToWatch(t *testing.T) {
	lex := load(t)
	var names []string
	for _, h := range lex.Reading.Hazards {
		names = append(names, h.Name)
		if h.Source == "" {
			// Common practice, no published source.
			assert.Contains(t, []string{"grater", "bones"}, h.Name)
			continue
		}
		assert.Regexp(t, `^[^,]+, .+`, h.Source, "%s: who, a comma, on what", h.Name)
	}
	assert.ElementsMatch(t, lexicon.Hazards(), names)
}

// The figures of the published guidance of the Food Standards Agency: 70 °C for
// 2 minutes (from memory), the fridge at 5 °C or below and within 1 to 2 hours,
// rice within 1 hour and kept 1 day at most (read).
func TestHazardsKeepToPublishedFigures(t *testing.T) {
	watch := map[string]string{}
	for _, h := range load(t).Reading.Hazards {
		watch[h.Name] = h.Watch
	}
	figures := regexp.MustCompile(`\d+(?: to \d+)? (?:°C|hours?|days?|minutes?)`)
	for name, want := range map[string][]string{
		"raw poultry":  {"70 °C", "2 minutes"},
		"raw meat":     {"70 °C", "2 minutes"},
		"chilling":     {"1 to 2 hours", "5 °C"},
		"cooling rice": {"1 hour", "1 day"},
	} {
		assert.Equal(t, want, figures.FindAllString(watch[name], -1), name)
		delete(watch, name)
	}
	for name, text := range watch {
		assert.NotRegexp(t, `\d`, text, "a figure without a source: %s", name)
	}
}

func TestHazardsOfADishComeWorstFirst(t *testing.T) {
	lex := load(t)
	d := lexicon.Dish{Hazards: []string{"grater", "raw egg", "hot oil"}}
	list := lex.Reading.HazardsOf(d, lexicon.Safety)
	require.Len(t, list, 2)
	assert.Equal(t, "hot oil", list[0].Name)
	require.Len(t, lex.Reading.HazardsOf(d, lexicon.Hygiene), 1)
}
