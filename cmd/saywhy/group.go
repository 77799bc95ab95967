package main

import (
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"saywhy/cmd/grouppage"
	"saywhy/corpus"
	"saywhy/lexicon"
)

type groupOptions struct {
	dir    string
	course string
	format string
	output string
	demo   bool
}

func newGroup(s streams) *cobra.Command {
	var o groupOptions
	c := &cobra.Command{
		Use:   "group DIR",
		Short: "Report on a group: a folder of evaluations and feedback",
		Long: `Reads every evaluation below a folder, the learners' and the adults', and reports
on the group:

  - what a responsible adult ought to look at, with its sentence
  - what the group has not reached yet, session by session
  - how far each learner got in each area, and their path over the sessions
  - where learner and adult tell the same dish differently
  - what learners planned to change, and whether they speak of it next time
  - the words the group leans on, and those that nobody uses

It gives no marks and ranks nobody. Whose text a file is, and of which session,
stands in front matter, in the form's columns, or in the names of the file and its
folders, such as "amina/03 leek soup.docx" and "amina/03 leek soup feedback.docx".
What cannot be read or placed is listed with the reason.

A course.yaml in the folder counts as your course, unless --course names another
folder. --format html makes one page that needs nothing else: it opens from a
memory stick and prints.`,
		Example: `  saywhy group --demo saltmarsh           (writes a demo course to try it on)
  saywhy group saltmarsh
  saywhy group saltmarsh --format html --output group.html
  saywhy group saltmarsh --format csv --output group.csv`,
		Args: func(_ *cobra.Command, args []string) error {
			switch len(args) {
			case 0:
				return fmt.Errorf("group needs a folder of evaluations; \"saywhy group --demo saltmarsh\" writes one to try")
			case 1:
				return nil
			}
			return fmt.Errorf("group takes one folder and %d were named; put a name of several words in quotation marks", len(args))
		},
		RunE: func(c *cobra.Command, args []string) error {
			o.dir = args[0]
			if o.demo {
				return groupDemo(s, o.dir)
			}
			return group(c.Context(), s, o)
		},
	}
	f := c.Flags()
	courseFlag(f, &o.course)
	f.StringVar(&o.format, "format", "text", "text for the terminal, html for a page to keep and print, csv for a spreadsheet, json for programs")
	f.StringVar(&o.output, "output", "", "write into this file, whole or not at all, and not to the terminal")
	f.BoolVar(&o.demo, "demo", false, "write a demo course into the folder, which must be new or empty")
	return c
}

// groupWriter writes a report in one format.
type groupWriter func(out io.Writer, on page, r *corpus.GroupReport) error

func groupFormats() map[string]groupWriter {
	return map[string]groupWriter{
		"text": writeGroupText,
		"csv":  func(out io.Writer, _ page, r *corpus.GroupReport) error { return writeGroupCSV(out, r) },
		"json": func(out io.Writer, _ page, r *corpus.GroupReport) error { return writeCompactJSON(out, r) },
		"html": func(out io.Writer, _ page, r *corpus.GroupReport) error { return grouppage.Write(out, r) },
	}
}

// writeCompactJSON writes the report without line breaks: with ten lines for
// every area of every text, those would be most of it.
func writeCompactJSON(out io.Writer, r *corpus.GroupReport) error {
	e := json.NewEncoder(out)
	e.SetEscapeHTML(false)
	return e.Encode(r)
}

func group(ctx context.Context, s streams, o groupOptions) error {
	write, ok := groupFormats()[o.format]
	if !ok {
		return fmt.Errorf("there is no format %q; use --format text, html, csv or json", o.format)
	}
	if err := isFolder(o.dir); err != nil {
		return err
	}
	o.course = courseOf(o.dir, o.course)
	lex, course, analyzer, err := loadCourseAnalyzer(o.course)
	if err != nil {
		return err
	}
	cores := runtime.GOMAXPROCS(0)
	progress := newProgress(s)
	reader := corpus.GroupReader{
		Lexicon: lex, Course: course, Analyzer: analyzer,
		Ordered:  corpus.Ordered{Workers: cores, Ahead: 4 * cores},
		Progress: progress.show,
	}
	report, err := reader.Read(ctx, corpus.Folder(ctx, os.DirFS(o.dir), corpus.FolderOptions{Lexicon: lex, Course: course}))
	progress.clear()
	if err != nil {
		return fmt.Errorf("the folder was not read to its end: %w; nothing was written", err)
	}
	if report.Learners.Texts+report.Adults.Texts == 0 {
		return nothingToReport(o.dir, report)
	}
	if o.output == "" {
		return write(s.out, s.page, report)
	}
	var b bytes.Buffer
	if err := write(&b, page{}, report); err != nil {
		return err
	}
	if err := writeFile(o.output, b.Bytes()); err != nil {
		return err
	}
	_, err = fmt.Fprintf(s.out, "Wrote the report to %s.\n", o.output)
	return err
}

// courseOf is the course that a folder of evaluations is read with: the one that
// was named, or else the folder itself when it has a course.yaml.
func courseOf(dir, course string) string {
	if course == "" {
		if _, err := os.Stat(filepath.Join(dir, lexicon.CourseFile)); err == nil {
			return dir
		}
	}
	return course
}

// nothingToReport says that a folder holds no evaluation, with the first thing
// in it that could not be read.
func nothingToReport(dir string, r *corpus.GroupReport) error {
	why := "put texts into it, such as \"amina/03 leek soup.txt\""
	if len(r.Unplaced) > 0 {
		u := r.Unplaced[0]
		why = fmt.Sprintf("%q %s", u.File, u.Reason)
		if n := len(r.Unplaced) - 1; n > 0 {
			why += fmt.Sprintf(" (and %d more)", n)
		}
	}
	return fmt.Errorf("there is no evaluation in %q that can be read: %s", dir, strings.TrimSuffix(why, "."))
}

// progress shows on a terminal how many texts were read, and nothing elsewhere.
type progress struct {
	out   io.Writer
	on    bool
	shown time.Time
	wide  int
}

func newProgress(s streams) *progress {
	return &progress{out: s.err, on: s.progress, shown: time.Now()}
}

// show is called after each text and writes at most ten times a second.
func (p *progress) show(done int) {
	if !p.on || time.Since(p.shown) < 100*time.Millisecond {
		return
	}
	p.shown = time.Now()
	line := fmt.Sprintf("%d texts read", done)
	p.wide = max(p.wide, len(line))
	fmt.Fprintf(p.out, "\r%s", line)
}

// clear takes the line away.
func (p *progress) clear() {
	if p.wide > 0 {
		fmt.Fprintf(p.out, "\r%s\r", strings.Repeat(" ", p.wide))
	}
}
