package corpus

import (
	"context"
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"runtime/metrics"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywhy/analyze"
	"saywhy/analyze/perceptron"
)

// BenchmarkPlaces is what a folder costs before its first file.
func BenchmarkPlaces(b *testing.B) {
	lex := builtin(b)
	for b.Loop() {
		newPlaces(lex, nil)
	}
}

// BenchmarkFolder reads invented evaluations of 150 words from files, in one
// format after the other.
func BenchmarkFolder(b *testing.B) {
	lex := builtin(b)
	for _, ext := range []string{"txt", "docx", "odt", "csv"} {
		b.Run(ext, func(b *testing.B) {
			dir := evaluationsOnDisk(b, ext, 1000)
			for b.Loop() {
				n := 0
				for _, err := range Folder(context.Background(), os.DirFS(dir), FolderOptions{Lexicon: lex}) {
					require.NoError(b, err)
					n++
				}
				require.Equal(b, 1000, n)
			}
			b.ReportMetric(float64(b.Elapsed().Microseconds())/float64(b.N*1000), "µs/text")
		})
	}
}

// BenchmarkFolderAnalyzed reads 10,000 evaluations of 150 words from a folder
// and analyses each, on all cores; its share is its throughput by that of
// analysing the same texts from memory on the same cores. The issue asks for
// 0.8 at least. SAYWHY_TEXTS sets another number of texts.
func BenchmarkFolderAnalyzed(b *testing.B) {
	texts := 10_000
	if n, err := strconv.Atoi(os.Getenv("SAYWHY_TEXTS")); err == nil {
		texts = n
	}
	lex := builtin(b)
	tagger, err := perceptron.New()
	require.NoError(b, err)
	a := analyze.New(lex, tagger)
	brief := analyze.Brief{Dish: lex.General()}
	dir := evaluationsOnDisk(b, "txt", texts)
	analysed := func(yield func(func(Evaluation))) {
		queue := make(chan Evaluation, 64)
		done := make(chan int)
		workers := runtime.GOMAXPROCS(0)
		for range workers {
			go func() {
				n := 0
				for e := range queue {
					a.Read(analyze.Input{Text: e.Text, Role: e.Role}, brief)
					n++
				}
				done <- n
			}()
		}
		yield(func(e Evaluation) { queue <- e })
		close(queue)
		n := 0
		for range workers {
			n += <-done
		}
		require.Equal(b, texts, n)
	}
	var whole, alone float64
	for b.Loop() {
		start := b.Elapsed()
		analysed(func(add func(Evaluation)) {
			for e, err := range Folder(context.Background(), os.DirFS(dir), FolderOptions{Lexicon: lex}) {
				require.NoError(b, err)
				add(e)
			}
		})
		read := b.Elapsed()
		whole += (read - start).Seconds()
		in := newInvented(1)
		var all []Evaluation
		for range texts {
			all = append(all, Evaluation{Text: in.text(150)})
		}
		made := b.Elapsed()
		analysed(func(add func(Evaluation)) {
			for _, e := range all {
				add(e)
			}
		})
		alone += (b.Elapsed() - made).Seconds()
	}
	b.ReportMetric(alone/whole, "share")
	heap := []metrics.Sample{{Name: "/memory/classes/total:bytes"}}
	metrics.Read(heap)
	b.ReportMetric(float64(heap[0].Value.Uint64())/(1<<20), "MB")
}

// evaluationsOnDisk writes n invented evaluations of 150 words, as files of a
// format or as the rows of one table.
func evaluationsOnDisk(tb testing.TB, ext string, n int) string {
	tb.Helper()
	dir := tb.TempDir()
	in := newInvented(1)
	if ext == "csv" {
		f, err := os.Create(filepath.Join(dir, "answers.csv"))
		require.NoError(tb, err)
		defer f.Close()
		fmt.Fprintln(f, "Name,Session,Evaluation")
		for i := range n {
			fmt.Fprintf(f, "learner %d,%d,%q\n", i/10, i%10+1, strings.ReplaceAll(in.text(150), "\n", " "))
		}
		return dir
	}
	for i := range n {
		at := filepath.Join(dir, fmt.Sprintf("learner %d", i/10))
		require.NoError(tb, os.MkdirAll(at, 0o700))
		data := []byte(in.text(150))
		switch ext {
		case "docx":
			data = docxOf(tb, "<w:p><w:r><w:t>"+string(data)+"</w:t></w:r></w:p>")
		case "odt":
			data = odtOf(tb, "<text:p>"+string(data)+"</text:p>")
		}
		require.NoError(tb, os.WriteFile(filepath.Join(at, fmt.Sprintf("%02d lentil soup.%s", i%10+1, ext)), data, 0o600))
	}
	return dir
}
