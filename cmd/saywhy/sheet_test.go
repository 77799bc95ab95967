package main

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestSheetForATerminal(t *testing.T) {
	out := ok(t, "sheet", "leek and potato soup")
	for _, want := range []string{
		"LEEK AND POTATO SOUP: FOR THE LEARNER", "SMELL when you ", "thickness: ", "saywhy words soups",
		"LEEK AND POTATO SOUP: FOR THE ADULT", "SAFETY", "HYGIENE", "ORGANISATION", "INDEPENDENCE", "THE TASTE TEST",
		"blender", "celery", "Food Standards Agency", "responsible adult",
	} {
		assert.Contains(t, out, want)
	}
	for _, line := range strings.Split(out, "\n") {
		assert.LessOrEqual(t, len([]rune(line)), plainWidth)
	}
}

func TestSheetToPrintUsesTheCourse(t *testing.T) {
	dir := course(t, map[string]string{
		"course.yaml":       "title: Saltmarsh Kitchen\nsessions:\n  - title: Week 3\n    dish: samphire broth\n",
		"dishes/soups.yaml": "type: soups\nmoments: {aroma: when the steam fogs your glasses}\nhazards: [bones]\nwords:\n  taste:\n    marshy: {means: \"salty and green, like the edge of the sea\", of: [soup]}\n",
		"dishes/sea.yaml":   "type: sea-soups\nfamily: soups\ntitle: Sea soups\ndishes: [samphire broth]\n",
	})
	for name, title := range map[string]string{"Week 3": "<h1>Samphire broth</h1>", "soups": "<h1>Soups</h1>"} {
		out := ok(t, "sheet", name, "--course", dir, "--format", "html")
		for _, want := range []string{title, "Saltmarsh Kitchen", "when the steam fogs your glasses", "<li>marshy</li>", "bones"} {
			assert.Contains(t, out, want)
		}
		assert.NotContains(t, out, "blender", "the course's hazards stand in place of the built-in ones")
	}
}

func TestSheetSaysWhatItNeeds(t *testing.T) {
	assert.Contains(t, refused(t, "sheet"), "sheet needs a dish")
	assert.Contains(t, refused(t, "sheet", "lentil", "soup"), "quotation marks")
	assert.Contains(t, refused(t, "sheet", "soops"), `"soups"`)
	assert.Contains(t, refused(t, "sheet", "soups", "--format", "pdf"), "--format html")
}
