package corpus

import "strings"

// labelLines is how many lines at the start of a text may be labels.
const labelLines = 8

// labels takes lines such as "Name: Amina", "Dish: leek soup" and "Date:
// 14/3/2026" off the start of a text, as printed sheets have them. They tell
// what names of files leave open. A title may stand before them. A label that
// nobody filled in goes as well.
func labels(list []paragraph) (facts, []paragraph) {
	var hint facts
	var kept []paragraph
	found := false
	for i, p := range list {
		label, value, ok := strings.Cut(p.text, ":")
		key := ""
		if ok && len(value) <= maxLabel && !strings.Contains(value, "\n") {
			key = labelKey(fold(label))
		}
		if key == "" {
			if blank := strings.TrimSpace(p.text) == ""; i >= labelLines || found && !blank || !blank && p.level == 0 {
				return hint, append(kept, list[i:]...)
			}
			kept = append(kept, p)
			continue
		}
		found = true
		if value = strings.Trim(value, " \t_"); strings.Trim(value, ".…-") != "" {
			if err := hint.set(key, value); err != nil {
				kept = append(kept, p) // a date nobody can read stays in the text
			}
		}
	}
	return hint, kept
}

// maxLabel is the longest value of a label, in bytes.
const maxLabel = 60

func labelKey(label string) string {
	switch label {
	case "name", "my name", "your name", "learner", "cook":
		return "learner"
	case "session", "session number", "week", "practical", "lesson":
		return "session"
	case "dish", "my dish", "recipe", "what i made":
		return "dish"
	case "date":
		return "date"
	}
	return ""
}
