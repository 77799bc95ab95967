package corpus

import (
	"strings"
	"time"
)

// parseDate reads a date as people and forms write it: 2026-03-14, with or
// without a time of day, 14/3/2026, 14.3.26, 14 March 2026. Of two numbers the
// first is the day, as in the United Kingdom, unless only the other way round
// makes a date.
func parseDate(s string) (time.Time, bool) {
	s = strings.Join(strings.Fields(strings.ReplaceAll(s, ",", " ")), " ")
	if len(s) > 40 {
		return time.Time{}, false
	}
	if day, _, ok := strings.Cut(s, "T"); ok && len(day) == len("2026-03-14") {
		s = day
	}
	// The day may be followed by a time, which does not matter here.
	candidates := []string{s}
	if i := strings.IndexByte(s, ' '); i > 0 {
		candidates = append(candidates, s[:i])
		if fields := strings.Fields(s); len(fields) > 3 {
			candidates = append(candidates, strings.Join(fields[:3], " "))
		}
	}
	for _, c := range candidates {
		c = strings.NewReplacer("/", "-", ".", "-").Replace(strings.ToLower(c))
		for _, layout := range dateLayouts() {
			if t, err := time.Parse(layout, c); err == nil && t.Year() >= 1970 && t.Year() < 2200 {
				return t, true
			}
		}
	}
	return time.Time{}, false
}

// dateLayouts lists the ways to write a date, in the order in which they are
// tried, with hyphens for all marks.
func dateLayouts() []string {
	return []string{"2006-1-2", "2-1-2006", "2-1-06", "2 January 2006", "2 Jan 2006", "January 2 2006", "Jan 2 2006", "1-2-2006", "1-2-06"}
}
