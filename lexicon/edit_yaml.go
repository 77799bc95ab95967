package lexicon

import (
	"errors"
	"fmt"
	"strings"

	"go.yaml.in/yaml/v3"
)

// wordRow is the row of a word, without indentation or line end.
func wordRow(w Word) string {
	row := &yaml.Node{Kind: yaml.MappingNode, Style: yaml.FlowStyle}
	add := func(key string, v *yaml.Node) { row.Content = append(row.Content, yamlText(key), v) }
	means := yamlText(w.Means)
	means.Style = yaml.DoubleQuotedStyle
	add("means", means)
	if len(w.Of) > 0 {
		add("of", yamlList(w.Of))
	}
	if len(w.Forms) > 0 {
		add("forms", yamlList(w.Forms))
	}
	if w.Scale != "" {
		scale := yamlText(fmt.Sprintf("%s %d", w.Scale, w.Step))
		scale.Style = yaml.DoubleQuotedStyle
		add("scale", scale)
	}
	return yamlRow(w.Word, row)
}

func yamlText(s string) *yaml.Node {
	n := &yaml.Node{}
	n.SetString(s)
	n.Style = 0
	if strings.ContainsAny(s, "\r\n\t") {
		n.Style = yaml.DoubleQuotedStyle // a row stays on one line
	}
	return n
}

func yamlList(list []string) *yaml.Node {
	n := &yaml.Node{Kind: yaml.SequenceNode, Style: yaml.FlowStyle}
	for _, s := range list {
		n.Content = append(n.Content, yamlText(s))
	}
	return n
}

func yamlRow(key string, value *yaml.Node) string {
	out, err := yaml.Marshal(&yaml.Node{Kind: yaml.MappingNode, Content: []*yaml.Node{yamlText(key), value}})
	if err != nil {
		return "" // nodes of text alone can always be written
	}
	return strings.TrimSuffix(string(out), "\n")
}

// checkEdit makes sure that an edit did what it should and lost no comment.
func checkEdit(before, after []byte, edits []rowEdit) error {
	e, err := newEditor(after)
	if err != nil {
		return errors.New("the rows cannot be put into this file by the program; write them by hand")
	}
	for _, edit := range edits {
		section, err := e.section(edit.section)
		if err != nil {
			return err
		}
		k, v := child(section, edit.key)
		if (k == nil) != (edit.text == "") || k != nil && yamlRow(edit.key, plainNode(v)) != edit.text {
			return fmt.Errorf("the row of %q cannot be put into this file by the program; write it by hand", edit.key)
		}
	}
	old, err := newEditor(before)
	if err != nil {
		return err
	}
	left := commentCounts(e)
	for c, n := range commentCounts(old) {
		if left[c] < n {
			return fmt.Errorf("the comment %q would be lost; move it to a line of its own first", c)
		}
	}
	return nil
}

// plainNode is a node without its comments.
func plainNode(n *yaml.Node) *yaml.Node {
	out := *n
	out.HeadComment, out.LineComment, out.FootComment = "", "", ""
	out.Content = nil
	for _, c := range n.Content {
		out.Content = append(out.Content, plainNode(c))
	}
	return &out
}

// commentCounts counts the lines of a file that are or hold comments, by what
// they say.
func commentCounts(e *editor) map[string]int {
	out := map[string]int{}
	add := func(c string) {
		for _, line := range strings.Split(c, "\n") {
			if line = strings.TrimSpace(line); line != "" {
				out[line]++
			}
		}
	}
	for _, n := range e.order {
		add(n.HeadComment)
		add(n.LineComment)
		add(n.FootComment)
	}
	return out
}

// WordRow is the row of a word as it stands in a dish file.
func WordRow(w Word) string { return wordRow(w) }
