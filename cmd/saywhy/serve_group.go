package main

import (
	"context"
	"errors"
	"io"
	"os"
	"runtime"
	"sync"

	"saywhy/cmd/grouppage"
	"saywhy/cmd/pages"
	"saywhy/corpus"
)

// servedGroup reads the tutor's folder of evaluations when the tutor asks for
// it: one reading at a time, and nothing of it is kept.
type servedGroup struct {
	dir     string
	library pages.Library
	mu      sync.Mutex
}

func (g *servedGroup) evaluations(shelf *pages.Shelf) func(func(corpus.Evaluation, error) bool) {
	return corpus.Folder(context.Background(), os.DirFS(g.dir), corpus.FolderOptions{Lexicon: shelf.Lexicon, Course: shelf.Course})
}

// report writes the report on the group.
func (g *servedGroup) report(out io.Writer) error {
	g.mu.Lock()
	defer g.mu.Unlock()
	shelf := g.library.Current()
	cores := runtime.GOMAXPROCS(0)
	reader := corpus.GroupReader{
		Lexicon: shelf.Lexicon, Course: shelf.Course, Analyzer: shelf.Analyzer,
		Ordered: corpus.Ordered{Workers: cores, Ahead: 4 * cores}, Progress: func(int) {},
	}
	report, err := reader.Read(context.Background(), g.evaluations(shelf))
	if err != nil {
		return err
	}
	return grouppage.Write(out, report)
}

// texts reads the learners' evaluations, for the words that a list lacks. What
// cannot be read or placed stands in the report on the group.
func (g *servedGroup) texts() ([]corpus.Reported, error) {
	g.mu.Lock()
	defer g.mu.Unlock()
	shelf := g.library.Current()
	words := learnersTexts{lex: shelf.Lexicon, course: shelf.Course, analyzer: shelf.Analyzer, otherwise: shelf.Lexicon.General()}
	out, _ := words.read(context.Background(), g.dir)
	if len(out) == 0 {
		return nil, errors.New("no evaluation was found in the folder")
	}
	return out, nil
}
