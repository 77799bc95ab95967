// Package demogroup reads the demo course for tests.
package demogroup

import (
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"saywhy/analyze"
	"saywhy/analyze/perceptron"
	"saywhy/cmd/demo"
	"saywhy/corpus"
	"saywhy/lexicon"
)

// Report is the report on the demo course.
func Report(tb testing.TB) *corpus.GroupReport {
	tb.Helper()
	files, err := demo.Files()
	require.NoError(tb, err)
	folder := fstest.MapFS{}
	for _, f := range files {
		folder[f.Name] = &fstest.MapFile{Data: f.Data}
	}
	return Read(tb, folder)
}

// Read is the report on a folder of evaluations, with the course in it.
func Read(tb testing.TB, folder fstest.MapFS) *corpus.GroupReport {
	tb.Helper()
	lex, course, err := lexicon.LoadCourse(folder)
	require.NoError(tb, err)
	tagger, err := perceptron.New()
	require.NoError(tb, err)
	reader := corpus.GroupReader{Lexicon: lex, Course: course, Analyzer: analyze.New(lex, tagger), Ordered: corpus.Ordered{Workers: 2}}
	r, err := reader.Read(tb.Context(), corpus.Folder(tb.Context(), folder, corpus.FolderOptions{Lexicon: lex, Course: course}))
	require.NoError(tb, err)
	return r
}
