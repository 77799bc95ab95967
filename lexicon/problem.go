package lexicon

import (
	"fmt"
	"sort"
	"strings"
)

// Problem is one thing wrong with a word file: where it stands and how to mend
// it, in a line for the person who edits the file.
type Problem struct {
	File   string
	Line   int // from 1; 0 when it concerns the whole file
	Column int // from 1
	Layer  int // 0 for the built-in files, then the folders laid over them
	Text   string
}

func (p Problem) Error() string {
	if p.Line == 0 {
		return fmt.Sprintf("%s: %s", p.File, p.Text)
	}
	return fmt.Sprintf("%s:%d:%d: %s", p.File, p.Line, p.Column, p.Text)
}

// Problems is every problem found in a set of word files, in the order of the
// files and lines.
type Problems []Problem

func (ps Problems) Error() string {
	lines := make([]string, len(ps))
	for i, p := range ps {
		lines[i] = p.Error()
	}
	return strings.Join(lines, "\n")
}

// sort puts problems in the order of the folders, files and lines.
func (ps Problems) sort() {
	sort.SliceStable(ps, func(i, j int) bool {
		a, b := ps[i], ps[j]
		if a.Layer != b.Layer {
			return a.Layer < b.Layer
		}
		if a.File != b.File {
			return a.File < b.File
		}
		return a.Line < b.Line
	})
}
