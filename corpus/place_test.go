package corpus

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"

	"saywhy/lexicon"
)

// placed is a place in one line: learner | session | dish | role | date, or
// "?" and a part of the reason.
func placed(p *places, name string) string {
	e, err := p.evaluation(name, facts{}, facts{})
	if err != nil {
		return "? " + asUnplaced(err).Reason
	}
	out := fmt.Sprintf("%s | %s | %s | %s", e.Learner, e.Session, e.Dish, e.Role)
	if !e.Date.IsZero() {
		out += " | " + e.Date.Format(dateForm)
	}
	return out
}

func TestThePlaceIsReadFromTheNames(t *testing.T) {
	p := newPlaces(builtin(t), nil)
	for name, want := range map[string]string{
		"amina/03 leek soup.docx":                         "amina | 03 | leek soup | learner",
		"amina/03 leek soup - feedback.docx":              "amina | 03 | leek soup | adult",
		"03 leek soup/amina.docx":                         "amina | 03 | leek soup | learner",
		"03 leek soup/amina feedback.docx":                "amina | 03 | leek soup | adult",
		"03 leek soup/feedback/amina.docx":                "amina | 03 | leek soup | adult",
		"03 leek soup/Amina's mum.txt":                    "Amina | 03 | leek soup | adult",
		"amina 03 leek soup.txt":                          "amina | 03 | leek soup | learner",
		"03 leek soup amina.txt":                          "amina | 03 | leek soup | learner",
		"03 leek soup - amina.txt":                        "amina | 03 | leek soup | learner",
		"amina-03-leek-soup.txt":                          "amina | 03 | leek-soup | learner",
		"mary-jane_3_leek-soup.txt":                       "mary-jane | 03 | leek-soup | learner",
		"Mary-Jane O'Neil/Week 3 - Leek Soup.txt":         "Mary-Jane O'Neil | 03 | Leek Soup | learner",
		"tamsin-lentil-soup-s2.txt":                       "tamsin | 02 | lentil-soup | learner",
		"s03/amina - leek soup.txt":                       "amina | 03 | leek soup | learner",
		"amina/2026-03-14 leek soup.txt":                  "amina | 2026-03-14 | leek soup | learner | 2026-03-14",
		"amina/leek soup 14.03.2026.txt":                  "amina | 2026-03-14 | leek soup | learner | 2026-03-14",
		"amina/03 leek soup 20260314.txt":                 "amina | 03 | leek soup | learner | 2026-03-14",
		"2026/Tuesday group/03 leek soup/amina.txt":       "amina | 03 | leek soup | learner",
		"Year 7/amina/03 leek soup (1).txt":               "amina | 03 | leek soup | learner",
		"Class 7b/2026-27/amina/03 leek soup draft 2.txt": "amina | 03 | leek soup | learner",
		"amina/03 leek soup v2 final.txt":                 "amina | 03 | leek soup | learner",
		"amina/03 my evaluation of the leek soup.txt":     "amina | 03 | leek soup | learner",
		"amina/03 shakshuka.txt":                          "amina | 03 | shakshuka | learner",
		"03 shakshuka and flatbreads/amina.txt":           "amina | 03 | shakshuka and flatbreads | learner",
		"amina 03 - shakshuka.txt":                        "amina | 03 | shakshuka | learner",
		"amina/03 leek soup with extra garlic.txt":        "amina | 03 | leek soup with extra garlic | learner",
		"Amina/02 Roast pork loin with crackling.txt":     "Amina | 02 | Roast pork loin with crackling | learner",
		"Amina/02 cheese sauce for cauliflower.txt":       "Amina | 02 | cheese sauce for cauliflower | learner",
		"Amina/01 chicken curry like my mother.txt":       "Amina | 01 | chicken curry like my mother | learner",
		"03 leek soup for Amina.txt":                      "Amina | 03 | leek soup | learner",
		"amina/02 Strawberry fluff (no churn).txt":        "amina | 02 | Strawberry fluff | learner",
		"amina/03 spicy peanut soup.txt":                  "amina | 03 | spicy peanut soup | learner",
		"amina/03 leek soup - Sarah's feedback.txt":       "amina | 03 | leek soup | adult",
		"learner 12/03 leek soup.txt":                     "learner 12 | 03 | leek soup | learner",
		"Learner 12 - session 3 - leek soup.txt":          "Learner 12 | 03 | leek soup | learner",
		"amina/03.txt":                                    "amina | 03 |  | learner",
		"amina/12 Leek soups.txt":                         "amina | 12 | Leek soups | learner",
		"amina/Week 3/leek soup.txt":                      "amina | 03 | leek soup | learner",
		"żaneta/03 leek soup.txt":                         "żaneta | 03 | leek soup | learner",
		"03 leek soup.txt":                                "? learner cannot be told",
		"amina/leek soup.txt":                             "? session cannot be told",
		"amina/03 leek soup 4.txt":                        "? session 03 and of session 04",
		"amina/05/03 leek soup.txt":                       "? session 05 and of session 03",
		"ben/amina/03 leek soup.txt":                      `? "ben" and "amina" could both be the learner`,
		"03 amina.txt":                                    `? "amina" could be the learner or the dish`,
		"03 amina soup.txt":                               `? cannot be told apart`,
		"amina/03 leek soup ben.txt":                      `? "amina" and "ben" could both`,
	} {
		got := placed(p, name)
		if want[0] == '?' {
			assert.Contains(t, got, want[2:], name)
			assert.Equal(t, byte('?'), got[0], "%s: %s", name, got)
			continue
		}
		assert.Equal(t, want, got, name)
	}
}

func TestACourseSettlesWhatNamesLeaveOpen(t *testing.T) {
	p := newPlaces(builtin(t), &lexicon.Course{
		Sessions: []lexicon.Session{{Dish: "soda bread"}, {Title: "Week 2", Dish: "leek soup"}, {Title: "Pancake day", Dish: "pancakes"}, {Dish: "soda bread"}},
	})
	for name, want := range map[string]string{
		"amina/leek soup.txt":            "amina | 02 | leek soup | learner",
		"02 amina.txt":                   "amina | 02 | leek soup | learner",
		"amina/Pancake day.txt":          "amina | 03 | pancakes | learner",
		"Pancake day/amina feedback.txt": "amina | 03 | pancakes | adult",
		"amina/soda bread.txt":           "? sessions 01 and 04 both cook soda bread",
		"amina/04.txt":                   "amina | 04 | soda bread | learner",
		"amina/02 fish pie.txt":          "amina | 02 | fish pie | learner",
	} {
		got := placed(p, name)
		if want[0] == '?' {
			assert.Contains(t, got, want[2:], name)
			continue
		}
		assert.Equal(t, want, got, name)
	}
	p = newPlaces(builtin(t), &lexicon.Course{Learners: []string{"Amina", "Ben Ito", "Basil"}})
	for name, want := range map[string]string{
		"Saltmarsh Kitchen/amina/03 leek soup.txt": "Amina | 03 | leek soup | learner",
		"03 leek soup amina's gran sue.txt":        "Amina | 03 | leek soup | adult",
		"ben-ito_03_shakshuka.txt":                 "Ben Ito | 03 | shakshuka | learner",
		"03 amina soup.txt":                        "Amina | 03 | soup | learner",
		"basil/03 leek soup.txt":                   "Basil | 03 | leek soup | learner",
		"amena/03 leek soup.txt":                   `? did you mean "Amina"`,
		"amina/03 leek soup basil.txt":             `? "Amina" and of "Basil"`,
		"03 leek soup.txt":                         "? from the learners in course.yaml",
	} {
		got := placed(p, name)
		if want[0] == '?' {
			assert.Contains(t, got, want[2:], name)
			continue
		}
		assert.Equal(t, want, got, name)
	}
}
