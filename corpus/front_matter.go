package corpus

import (
	"slices"
	"strings"
	"time"

	"go.yaml.in/yaml/v3"

	"saywhy/analyze"
	"saywhy/lexicon"
)

// facts are what is told outright of a text: by front matter, by the columns
// of a form or by headings. They go before what names of files tell.
type facts struct {
	learner string
	session string
	dish    string
	role    analyze.Role
	date    time.Time
}

// maxFront is how far into a text its front matter may reach, in bytes.
const maxFront = 8 << 10

// frontKeys are the rows of front matter that are read.
func frontKeys() []string { return []string{"learner", "session", "dish", "role", "date"} }

// frontMatter takes rows of YAML between two lines of three hyphens off the
// start of a text. A text that starts otherwise, or where no rows stand between
// such lines, has none and stays whole. Rows with other names are passed over,
// but for those that look like a slip.
func frontMatter(text string) (facts, string, error) {
	rest, ok := strings.CutPrefix(strings.TrimLeft(text, "\ufeff\n"), "---\n")
	if !ok {
		return facts{}, text, nil
	}
	end, after := frontEnd(rest)
	if end < 0 {
		return facts{}, text, nil
	}
	var doc yaml.Node
	if err := yaml.Unmarshal([]byte(rest[:end]), &doc); err != nil {
		return facts{}, "", unplaced("the rows between the lines of hyphens cannot be read; write each as \"learner: amina\", with quotes round a value that holds a colon")
	}
	if len(doc.Content) == 0 || doc.Content[0].Kind != yaml.MappingNode {
		return facts{}, text, nil
	}
	out, err := frontFacts(doc.Content[0])
	return out, rest[after:], err
}

// frontEnd returns where the rows end and where the text behind them starts,
// or -1.
func frontEnd(s string) (end, after int) {
	for at := 0; at < len(s) && at < maxFront; {
		line, _, _ := strings.Cut(s[at:], "\n")
		next := min(len(s), at+len(line)+1)
		if l := strings.TrimRight(line, " \t"); l == "---" || l == "..." {
			return at, next
		}
		at = next
	}
	return -1, -1
}

func frontFacts(rows *yaml.Node) (facts, error) {
	var out facts
	seen := map[string]bool{}
	for i := 0; i+1 < len(rows.Content); i += 2 {
		key, v := strings.ToLower(rows.Content[i].Value), rows.Content[i+1]
		if !slices.Contains(frontKeys(), key) {
			if near := lexicon.Nearest(key, frontKeys(), 1); len(near) > 0 {
				return out, unplaced("its row %q is not known; did you mean %q?", rows.Content[i].Value, near[0])
			}
			continue
		}
		if seen[key] {
			return out, unplaced("its row %q stands twice; keep one of them", key)
		}
		seen[key] = true
		if v.Tag == "!!null" {
			continue
		}
		if v.Kind != yaml.ScalarNode {
			return out, unplaced("its row %q should hold one piece of text, such as \"learner: amina\"", key)
		}
		if err := out.set(key, v.Value); err != nil {
			return out, err
		}
	}
	return out, nil
}

// set takes in one fact by its name.
func (f *facts) set(key, value string) error {
	value = strings.Join(strings.Fields(value), " ")
	if value == "" {
		return nil
	}
	switch key {
	case "learner":
		f.learner = value
	case "session":
		f.session = value
	case "dish":
		f.dish = value
	case "role":
		role, ok := roleOf(value)
		if !ok {
			return unplaced("its role is %q; write learner or adult", value)
		}
		f.role = role
	case "date":
		date, ok := parseDate(value)
		if !ok {
			return unplaced("its date is %q; write it as 2026-03-14", value)
		}
		f.date = date
	}
	return nil
}
