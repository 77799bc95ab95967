package main

import (
	"sync"

	"saywhy/analyze"
	"saywhy/analyze/perceptron"
	"saywhy/lexicon"
)

// What comes with the program is loaded when it is first needed and then
// shared: by commands run one after the other in a process, and by requests.
// None of it ever changes.
var (
	builtin         = sync.OnceValues(func() (*lexicon.Lexicon, error) { return lexicon.Load() })
	sharedTagger    = sync.OnceValues(perceptron.New)
	builtinAnalyzer = sync.OnceValues(func() (*analyze.Analyzer, error) { return newAnalyzer(builtin) })
)

// newAnalyzer builds what reads texts with a lexicon, which is loaded while the
// tagger is.
func newAnalyzer(load func() (*lexicon.Lexicon, error)) (*analyze.Analyzer, error) {
	go sharedTagger()
	lex, err := load()
	if err != nil {
		return nil, err
	}
	tagger, err := sharedTagger()
	if err != nil {
		return nil, err
	}
	return analyze.New(lex, tagger), nil
}

// loadAnalyzer returns what reads texts with the built-in lexicon.
func loadAnalyzer() (*lexicon.Lexicon, *analyze.Analyzer, error) {
	lex, _, analyzer, err := loadCourseAnalyzer("")
	return lex, analyzer, err
}

// loadCourseAnalyzer returns what reads texts for a course; "" is for none.
func loadCourseAnalyzer(dir string) (*lexicon.Lexicon, *lexicon.Course, *analyze.Analyzer, error) {
	if dir == "" {
		analyzer, err := builtinAnalyzer()
		if err != nil {
			return nil, nil, nil, err
		}
		lex, err := builtin()
		return lex, &lexicon.Course{}, analyzer, err
	}
	var lex *lexicon.Lexicon
	var course *lexicon.Course
	analyzer, err := newAnalyzer(func() (_ *lexicon.Lexicon, err error) {
		lex, course, err = loadLexicon(dir)
		return lex, err
	})
	return lex, course, analyzer, err
}
