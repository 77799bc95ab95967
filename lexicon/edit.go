package lexicon

import (
	"bytes"
	"errors"
	"fmt"
	"slices"
	"sort"
	"strings"

	"go.yaml.in/yaml/v3"
)

// Change is one word to be set or taken out of a dish file.
type Change struct {
	Word   Word // with Sense and Word alone when it goes
	Remove bool
	Row    int // of the sheet it comes from, from 1; 0 when it comes from none
}

// EditDish returns a dish file with the changes made. The rows it does not
// touch stay as they are, byte by byte, and no comment is lost: where that
// cannot be kept, the error says which rows to write by hand.
//
// A row that goes goes from this file only. To leave out a word that lies
// below it, use LeaveOut.
func EditDish(data []byte, changes []Change) ([]byte, error) {
	var edits []rowEdit
	for _, c := range changes {
		e := rowEdit{section: []string{"words", string(c.Word.Sense)}, key: c.Word.Word}
		if !c.Remove {
			e.text = wordRow(c.Word)
		}
		edits = append(edits, e)
	}
	return editRows(data, edits)
}

// LeaveOut returns a dish file whose section "without" names the words as
// well: of their sense and headword only.
func LeaveOut(data []byte, words []Word) ([]byte, error) {
	d := parseDish(source{problems: &Problems{}}, data)
	if d == nil {
		return nil, errors.New("the file cannot be read as it is; mend it first")
	}
	lists := map[Sense][]string{}
	for _, k := range d.without {
		lists[k.sense] = append(lists[k.sense], k.word)
	}
	touched := map[Sense]bool{}
	for _, w := range words {
		if !slices.Contains(lists[w.Sense], w.Word) {
			lists[w.Sense] = append(lists[w.Sense], w.Word)
			touched[w.Sense] = true
		}
	}
	var edits []rowEdit
	for _, s := range Senses() {
		if touched[s] {
			edits = append(edits, rowEdit{section: []string{"without"}, key: string(s), text: yamlRow(string(s), yamlList(lists[s]))})
		}
	}
	return editRows(data, edits)
}

// rowEdit sets the row of a key in a section of a file, or takes it out when
// the text is "".
type rowEdit struct {
	section []string // names of sections, the outermost first
	key     string
	text    string
}

// splice puts lines in the place of those from start up to end, counted from 0.
type splice struct {
	start, end int
	lines      []string
}

// editor knows where the rows of a file stand.
type editor struct {
	lines []string // without line ends
	root  *yaml.Node
	order []*yaml.Node // every node in the order of the file
	place map[*yaml.Node]int
}

// editRows makes edits line by line. Positions come from the parsed file; what
// is written is checked by parsing it again.
func editRows(data []byte, edits []rowEdit) ([]byte, error) {
	if len(edits) == 0 {
		return data, nil
	}
	end := "\n"
	if bytes.Contains(data, []byte("\r\n")) {
		end = "\r\n"
	}
	e, err := newEditor(data)
	if err != nil {
		return nil, err
	}
	splices, err := e.splices(edits)
	if err != nil {
		return nil, err
	}
	// From the bottom up, so that the positions above stay true.
	sort.SliceStable(splices, func(i, j int) bool { return splices[i].start > splices[j].start })
	lines := e.lines
	for _, s := range splices {
		lines = slices.Concat(lines[:s.start], s.lines, lines[s.end:])
	}
	out := []byte(strings.Join(lines, end) + end)
	if err := checkEdit(data, out, edits); err != nil {
		return nil, err
	}
	return out, nil
}

func newEditor(data []byte) (*editor, error) {
	var doc yaml.Node
	if err := yaml.Unmarshal(data, &doc); err != nil || len(doc.Content) == 0 || doc.Content[0].Kind != yaml.MappingNode {
		return nil, errors.New("the file cannot be read as it is; mend it first")
	}
	text := strings.ReplaceAll(string(data), "\r\n", "\n")
	e := &editor{lines: strings.Split(strings.TrimRight(text, "\n"), "\n"), root: doc.Content[0], place: map[*yaml.Node]int{}}
	e.walk(e.root)
	return e, nil
}

func (e *editor) walk(n *yaml.Node) {
	e.place[n] = len(e.order)
	e.order = append(e.order, n)
	for _, c := range n.Content {
		e.walk(c)
	}
}

// splices plans the edits, new rows by section so that they come in order.
func (e *editor) splices(edits []rowEdit) ([]splice, error) {
	var out []splice
	fresh := map[string][]rowEdit{}
	var sections []string
	for _, edit := range edits {
		section, err := e.section(edit.section)
		if err != nil {
			return nil, err
		}
		k, v := child(section, edit.key)
		if k == nil {
			name := strings.Join(edit.section, "/")
			if edit.text == "" {
				continue // gone already
			}
			if fresh[name] == nil {
				sections = append(sections, name)
			}
			fresh[name] = append(fresh[name], edit)
			continue
		}
		if k.Line == section.Line && section.Style&yaml.FlowStyle != 0 {
			return nil, fmt.Errorf("the row of %q stands in braces in line %d; write every row of that section on a line of its own first", edit.key, k.Line)
		}
		out = append(out, e.replace(k, v, edit.text))
	}
	inside := map[string][]string{} // new sections of a section that is there or not
	var parents []string
	for _, name := range sections {
		rows := fresh[name]
		sort.SliceStable(rows, func(i, j int) bool { return rows[i].key < rows[j].key })
		path := rows[0].section
		if section, _ := e.section(path); section != nil {
			out = append(out, e.insert(path, section, rows)...)
			continue
		}
		// The innermost section is missing: it becomes a row of the one around.
		last := path[len(path)-1]
		lines := []string{last + ":"}
		for _, r := range rows {
			lines = append(lines, "  "+r.text)
		}
		parent := strings.Join(path[:len(path)-1], "/")
		if inside[parent] == nil {
			parents = append(parents, parent)
		}
		inside[parent] = append(inside[parent], lines...)
	}
	for _, parent := range parents {
		out = append(out, e.append(parent, inside[parent]))
	}
	return out, nil
}

// section returns the mapping of a section, or nil when it is not there.
func (e *editor) section(path []string) (*yaml.Node, error) {
	n := e.root
	for _, name := range path {
		k, v := child(n, name)
		switch {
		case k == nil:
			return nil, nil
		case v.Kind == yaml.MappingNode && v.Style&yaml.FlowStyle != 0:
			return nil, fmt.Errorf("the section %q stands in braces in line %d; write every row of it on a line of its own first", name, k.Line)
		case v.Kind != yaml.MappingNode && v.Tag != "!!null":
			return nil, fmt.Errorf("the section %q in line %d holds no rows; mend it first", name, k.Line)
		}
		n = v
	}
	return n, nil
}

func child(n *yaml.Node, key string) (k, v *yaml.Node) {
	if n == nil || n.Kind != yaml.MappingNode {
		return nil, nil
	}
	for i := 0; i+1 < len(n.Content); i += 2 {
		if strings.ToLower(strings.TrimSpace(n.Content[i].Value)) == key {
			return n.Content[i], n.Content[i+1]
		}
	}
	return nil, nil
}

// last returns the line behind the last one of a value, counted from 0: what
// stands between it and the next row, comments and blank lines, is not its own.
func (e *editor) last(k, v *yaml.Node) int {
	deepest := v
	for len(deepest.Content) > 0 {
		deepest = deepest.Content[len(deepest.Content)-1]
	}
	end := len(e.lines)
	if next := e.place[deepest] + 1; next < len(e.order) {
		end = e.order[next].Line - 1
	}
	for end > k.Line {
		if line := strings.TrimSpace(e.lines[end-1]); line != "" && line[0] != '#' {
			break
		}
		end--
	}
	return end
}

// replace puts a row in the place of another, or of nothing, and keeps the
// comments that stand in it.
func (e *editor) replace(k, v *yaml.Node, text string) splice {
	s := splice{start: k.Line - 1, end: e.last(k, v)}
	indent := strings.Repeat(" ", max(0, k.Column-1))
	comments := e.comments(k, v, strings.Join(e.lines[s.start:s.end], "\n"))
	if text != "" && len(comments) == 1 && s.end == s.start+1 {
		s.lines = []string{indent + text + " " + comments[0]}
		return s
	}
	for _, c := range comments {
		s.lines = append(s.lines, indent+c)
	}
	if text != "" {
		s.lines = append(s.lines, indent+text)
	}
	return s
}

// comments returns the comments of a row that stand in its own lines.
func (e *editor) comments(k, v *yaml.Node, raw string) []string {
	var out []string
	add := func(c string) {
		for _, line := range strings.Split(c, "\n") {
			if line = strings.TrimSpace(line); line != "" && strings.Contains(raw, line) {
				out = append(out, line)
			}
		}
	}
	add(k.LineComment)
	var walk func(*yaml.Node)
	walk = func(n *yaml.Node) {
		add(n.HeadComment)
		add(n.LineComment)
		for _, c := range n.Content {
			walk(c)
		}
		add(n.FootComment)
	}
	walk(v)
	return out
}

// insert puts new rows into a section, each behind the row that comes before
// it in the alphabet.
func (e *editor) insert(path []string, section *yaml.Node, rows []rowEdit) []splice {
	k := e.key(path)
	if len(section.Content) == 0 { // "taste:" with nothing under it
		s := splice{start: k.Line, end: k.Line}
		for _, r := range rows {
			s.lines = append(s.lines, strings.Repeat(" ", k.Column+1)+r.text)
		}
		return []splice{s}
	}
	first := section.Content[0]
	indent := strings.Repeat(" ", max(0, first.Column-1))
	var out []splice
	for _, r := range rows {
		at := -1
		for i := 0; i+1 < len(section.Content); i += 2 {
			if strings.ToLower(section.Content[i].Value) < r.key {
				at = e.last(section.Content[i], section.Content[i+1])
			}
		}
		switch {
		case at >= 0:
		case first.HeadComment == "":
			at = first.Line - 1
		default: // the comment may be about the section
			n := len(section.Content)
			at = e.last(section.Content[n-2], section.Content[n-1])
		}
		if n := len(out); n > 0 && out[n-1].start == at {
			out[n-1].lines = append(out[n-1].lines, indent+r.text)
			continue
		}
		out = append(out, splice{start: at, end: at, lines: []string{indent + r.text}})
	}
	return out
}

// key returns the key of a section that is there.
func (e *editor) key(path []string) *yaml.Node {
	n := e.root
	var k *yaml.Node
	for _, name := range path {
		k, n = child(n, name)
	}
	return k
}

// append puts lines at the end of a section, or of the file for "", and adds
// the section when it is missing.
func (e *editor) append(name string, lines []string) splice {
	if name == "" {
		return splice{start: len(e.lines), end: len(e.lines), lines: lines}
	}
	k, v := child(e.root, name)
	if k == nil {
		s := splice{start: len(e.lines), end: len(e.lines), lines: []string{name + ":"}}
		for _, l := range lines {
			s.lines = append(s.lines, "  "+l)
		}
		return s
	}
	indent := strings.Repeat(" ", k.Column+1)
	if len(v.Content) > 0 {
		indent = strings.Repeat(" ", max(0, v.Content[0].Column-1))
	}
	at := e.last(k, v)
	s := splice{start: at, end: at}
	for _, l := range lines {
		s.lines = append(s.lines, indent+l)
	}
	return s
}
