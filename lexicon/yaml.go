package lexicon

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"regexp"
	"strconv"
	"strings"
	"unicode/utf8"

	"go.yaml.in/yaml/v3"
)

// source walks the YAML of one file and keeps every problem it meets, so that
// one reading lists them all.
type source struct {
	file     string
	layer    int // 0 for the built-in files, then the folders laid over them
	problems *Problems
	groups   map[string]string // of words, by the names that patterns of the file use
}

func (s source) problem(n *yaml.Node, format string, args ...any) {
	p := Problem{File: s.file, Layer: s.layer, Text: fmt.Sprintf(format, args...)}
	if n != nil {
		p.Line, p.Column = n.Line, n.Column
	}
	*s.problems = append(*s.problems, p)
}

var yamlLine = regexp.MustCompile(`line (\d+): `)

// root parses the file and returns its top mapping, or nil.
func (s source) root(data []byte) *yaml.Node {
	if !utf8.Valid(data) {
		line, column := 1, 1
		for len(data) > 0 {
			c, n := utf8.DecodeRune(data)
			if c == utf8.RuneError && n == 1 {
				break
			}
			column++
			if c == '\n' {
				line, column = line+1, 1
			}
			data = data[n:]
		}
		*s.problems = append(*s.problems, Problem{File: s.file, Layer: s.layer, Line: line, Column: column, Text: "this letter is not UTF-8; save the file again as plain text in UTF-8"})
		return nil
	}
	var doc yaml.Node
	in := yaml.NewDecoder(bytes.NewReader(data))
	err := in.Decode(&doc)
	if errors.Is(err, io.EOF) {
		err = nil
	}
	if err != nil {
		p := Problem{File: s.file, Layer: s.layer, Text: strings.TrimPrefix(err.Error(), "yaml: ")}
		if m := yamlLine.FindStringSubmatch(p.Text); m != nil {
			p.Line, _ = strconv.Atoi(m[1])
			if strings.Contains(p.Text, "did not find expected") {
				p.Line++ // the library counts these lines from nought
			}
			p.Column = 1
			p.Text = strings.Replace(p.Text, m[0], "", 1)
		}
		p.Text += "; check the quotes, commas and spaces of that row and the one before it"
		*s.problems = append(*s.problems, p)
		return nil
	}
	var second yaml.Node
	if in.Decode(&second) == nil {
		s.problem(&second, "a second document begins here; keep one type in a file and take the line of dashes out")
		return nil
	}
	if len(doc.Content) == 0 {
		s.problem(nil, "the file is empty; start it with a row such as \"type: breads\"")
		return nil
	}
	return doc.Content[0]
}

// each calls f for every key of a mapping, in order, and reports a key that
// stands twice. A missing value (an empty section) is passed over.
func (s source) each(n *yaml.Node, what string, f func(key string, k, v *yaml.Node)) {
	if n.Tag == "!!null" {
		return
	}
	if n.Kind != yaml.MappingNode {
		s.problem(n, "%s should be rows of \"name: value\"", what)
		return
	}
	seen := map[string]int{}
	for i := 0; i+1 < len(n.Content); i += 2 {
		k, v := n.Content[i], n.Content[i+1]
		if line, twice := seen[k.Value]; twice {
			s.problem(k, "%q stands twice in %s, first in line %d; keep one of them", k.Value, what, line)
			continue
		}
		seen[k.Value] = k.Line
		f(k.Value, k, v)
	}
}

// text returns a single value.
func (s source) text(n *yaml.Node, what string) string {
	if n.Kind != yaml.ScalarNode || n.Tag == "!!null" {
		s.problem(n, "%s should be a piece of text", what)
		return ""
	}
	return strings.TrimSpace(n.Value)
}

// list returns the values of a list, each with its node.
func (s source) list(n *yaml.Node, what string) []string {
	var out []string
	for _, item := range s.items(n, what) {
		if v := s.text(item, "each entry of "+what); v != "" {
			out = append(out, v)
		}
	}
	return out
}

func (s source) items(n *yaml.Node, what string) []*yaml.Node {
	if n.Tag == "!!null" {
		return nil
	}
	if n.Kind != yaml.SequenceNode {
		s.problem(n, "%s should be a list: [one, two, three]", what)
		return nil
	}
	return n.Content
}

// unknownKey reports a key that no file of this sort has.
func (s source) unknownKey(k *yaml.Node, what string, allowed []string) {
	mend := "use one of: " + strings.Join(allowed, ", ")
	if near := Nearest(k.Value, allowed, 1); len(near) > 0 {
		mend = fmt.Sprintf("did you mean %q?", near[0])
	}
	s.problem(k, "%s has no row called %q; %s", what, k.Value, mend)
}
