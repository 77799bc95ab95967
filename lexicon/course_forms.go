package lexicon

import "go.yaml.in/yaml/v3"

// form reads the names of a form's columns.
func (s source) form(n *yaml.Node) Form {
	var out Form
	s.each(n, "form", func(key string, k, v *yaml.Node) {
		switch key {
		case "learner":
			out.Learner = s.text(v, "learner")
		case "session":
			out.Session = s.text(v, "session")
		case "dish":
			out.Dish = s.text(v, "dish")
		case "role":
			out.Role = s.text(v, "role")
		case "date":
			out.Date = s.text(v, "date")
		case "text":
			out.Text = s.oneOrMore(v, "text")
		case "feedback":
			out.Feedback = s.oneOrMore(v, "feedback")
		default:
			s.unknownKey(k, "form", []string{"learner", "session", "dish", "role", "date", "text", "feedback"})
		}
	})
	return out
}

// headings reads the headings of a document that holds both texts. A heading
// may stand for one thing only.
func (s source) headings(n *yaml.Node) Headings {
	var out Headings
	first := map[string]string{}
	s.each(n, "headings", func(key string, k, v *yaml.Node) {
		var into *[]string
		switch key {
		case "learner":
			into = &out.Learner
		case "adult":
			into = &out.Adult
		case "other":
			into = &out.Other
		default:
			s.unknownKey(k, "headings", []string{"learner", "adult", "other"})
			return
		}
		*into = s.oneOrMore(v, key)
		for _, h := range *into {
			if before, twice := first[plainName(h)]; twice && before != key {
				s.problem(v, "the heading %q stands under %s as well; keep it in one of the two", h, before)
			}
			first[plainName(h)] = key
		}
	})
	return out
}

// oneOrMore reads one piece of text, or a list of them without repeats.
func (s source) oneOrMore(n *yaml.Node, what string) []string {
	if n.Kind == yaml.ScalarNode && n.Tag != "!!null" {
		if v := s.text(n, what); v != "" {
			return []string{v}
		}
		return nil
	}
	return s.distinct(n, what)
}

// distinct reads a list in which nothing may stand twice.
func (s source) distinct(n *yaml.Node, what string) []string {
	var out []string
	first := map[string]int{}
	for _, item := range s.items(n, what) {
		v := s.text(item, "each entry of "+what)
		if v == "" {
			continue
		}
		if line, twice := first[plainName(v)]; twice {
			s.problem(item, "%q stands twice under %s, first in line %d; keep one of them", v, what, line)
			continue
		}
		first[plainName(v)] = item.Line
		out = append(out, v)
	}
	return out
}
