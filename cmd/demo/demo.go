// Package demo holds the demo course: eight invented learners of Saltmarsh
// Kitchen, a course that does not exist, over six sessions.
package demo

import (
	"embed"
	"fmt"
	"io/fs"
	"path"
	"strings"

	"go.yaml.in/yaml/v3"
)

//go:embed course.yaml texts/*.yaml
var files embed.FS

// Broken is a file of the course that is cut short, so that a report shows
// what becomes of one that cannot be read.
const Broken = "Rafferty/06 apple crumble.docx"

// File is one file of the course.
type File struct {
	Name string // with slashes, below the folder of the course
	Data []byte
}

// texts is one file of texts/: what one learner's folder holds. A line that
// begins with "# " is a heading.
type texts struct {
	Learner string
	Texts   []struct{ File, Text string }
}

// Files returns all files of the course: course.yaml, and a folder for each
// learner with plain texts and documents of two word processors.
func Files() ([]File, error) {
	course, err := files.ReadFile("course.yaml")
	if err != nil {
		return nil, err
	}
	out := []File{{"course.yaml", course}}
	names, err := fs.Glob(files, "texts/*.yaml")
	if err != nil {
		return nil, err
	}
	for _, name := range names {
		data, err := files.ReadFile(name)
		if err != nil {
			return nil, err
		}
		var t texts
		if err := yaml.Unmarshal(data, &t); err != nil {
			return nil, fmt.Errorf("%s: %w", name, err)
		}
		for _, text := range t.Texts {
			data, err := written(path.Ext(text.File), text.Text)
			if err != nil {
				return nil, fmt.Errorf("%s, %s: %w", name, text.File, err)
			}
			out = append(out, File{t.Learner + "/" + text.File, data})
		}
	}
	whole, err := written(path.Ext(Broken), "The crumble was crunchy.")
	if err != nil {
		return nil, err
	}
	return append(out, File{Broken, whole[:len(whole)/2]}), nil
}

// written is a text as a file with that ending holds it.
func written(ext, text string) ([]byte, error) {
	switch ext {
	case ".txt":
		return []byte(text), nil
	case ".docx":
		return docx(paragraphs(text))
	case ".odt":
		return odt(paragraphs(text))
	}
	return nil, fmt.Errorf("no file ends in %q here", ext)
}

// paragraph is one line of a text.
type paragraph struct {
	text    string
	heading bool
}

func paragraphs(text string) []paragraph {
	var out []paragraph
	for line := range strings.Lines(text) {
		if line = strings.TrimSpace(line); line != "" {
			head, ok := strings.CutPrefix(line, "# ")
			out = append(out, paragraph{head, ok})
		}
	}
	return out
}
