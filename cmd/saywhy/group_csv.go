package main

import (
	"encoding/csv"
	"io"
	"strconv"
	"strings"

	"saywhy/analyze"
	"saywhy/corpus"
)

// writeGroupCSV writes one row for each learner, session and area, of the
// learners' texts and then the adults': the figures of the report can be made
// again from it. A step that was reached is 1, so that a column can be added up.
func writeGroupCSV(out io.Writer, r *corpus.GroupReport) error {
	w := csv.NewWriter(out)
	if err := w.Write([]string{"learner", "role", "session", "dish", "words", "area", "asked", "said", "detail", "reason", "file"}); err != nil {
		return err
	}
	for _, part := range []struct {
		role analyze.Role
		corpus.GroupPart
	}{{analyze.Learner, r.Learners}, {analyze.Adult, r.Adults}} {
		for _, p := range part.People {
			for _, at := range p.Path {
				for _, a := range at.Areas {
					row := []string{
						cell(p.Learner), string(part.role), at.Session, cell(at.Dish), strconv.Itoa(at.Words), string(a.Area),
						bit(a.Expected), bit(a.Said), bit(a.Detail), bit(a.Reason), cell(at.File),
					}
					if err := w.Write(row); err != nil {
						return err
					}
				}
			}
		}
	}
	w.Flush()
	return w.Error()
}

// cell keeps a spreadsheet from taking a text for a formula, as OWASP's page
// "CSV Injection" advises: an apostrophe before what could begin one.
func cell(s string) string {
	if strings.HasPrefix(s, "=") || strings.HasPrefix(s, "+") || strings.HasPrefix(s, "-") || strings.HasPrefix(s, "@") || strings.HasPrefix(s, "\t") || strings.HasPrefix(s, "\r") {
		return "'" + s
	}
	return s
}

func bit(b bool) string {
	if b {
		return "1"
	}
	return "0"
}
