// Package grouppage makes the page that reports on a group.
package grouppage

import (
	"io"

	"saywhy/corpus"
)

// Write writes it.
func Write(out io.Writer, r *corpus.GroupReport) error { return nil }
