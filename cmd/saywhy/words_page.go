package main

import (
	"bytes"
	"html/template"
	"io"
	"strings"

	"saywhy/lexicon"
)

// wordsPage is the data of a word list to print and pin up.
type wordsPage struct {
	Title  string
	Cooked string // the dish itself, when the type was not what was asked for
	Parts  []wordsPagePart
}

// wordsPagePart is one sense.
type wordsPagePart struct {
	Sense  string
	Moment string
	Scales []wordsPageScale
	Words  []lexicon.Word
}

// wordsPageScale is one scale from low to high, the words of a step together.
type wordsPageScale struct {
	Name  string
	Steps []string
}

// writeWordsPage writes a page that needs nothing but itself: black on white,
// set for A4, no script and no other host.
func writeWordsPage(out io.Writer, dish lexicon.Dish, what string, senses []lexicon.Sense) error {
	page := wordsPage{Title: dish.Title, Cooked: what}
	for _, s := range senses {
		list := dish.BySense(s)
		part := wordsPagePart{Sense: string(s), Moment: dish.Moments[s], Words: list}
		for _, sc := range scales(list) {
			row := wordsPageScale{Name: sc.name}
			for _, words := range sc.steps {
				if len(words) > 0 {
					row.Steps = append(row.Steps, strings.Join(words, ", "))
				}
			}
			part.Scales = append(part.Scales, row)
		}
		page.Parts = append(page.Parts, part)
	}
	t, err := template.New("words").Parse(wordsPageHTML)
	if err != nil {
		return err
	}
	// The page is made whole before any of it goes out.
	var b bytes.Buffer
	if err := t.Execute(&b, page); err != nil {
		return err
	}
	_, err = out.Write(b.Bytes())
	return err
}

const wordsPageHTML = `<!doctype html>
<html lang="en-GB">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>{{.Title}}: words for what you notice</title>
<style>
@page { size: A4; margin: 14mm; }
html { background: #fff; color: #000; font: 12pt/1.35 Georgia, "Times New Roman", serif; }
body { max-width: 64em; margin: 0 auto; padding: 1em; overflow-wrap: break-word; }
h1 { font-size: 20pt; margin: 0 0 .2em; }
h2 { font-size: 15pt; margin: 1.2em 0 .2em; border-top: 2px solid #000; padding-top: .3em; text-transform: capitalize; break-after: avoid; }
p { margin: .2em 0 .5em; }
h3 { font-size: 12pt; margin: .6em 0 .2em; break-after: avoid; }
.scales { margin: 0 0 .6em; padding: 0; list-style: none; }
.scales li { margin: .15em 0; break-inside: avoid; }
.scales ol { display: inline; margin: 0; padding: 0; }
.scales ol li { display: inline; }
.scales ol li + li::before { content: " \2013  "; }
dl { columns: 19em 2; column-gap: 2em; margin: 0; }
dl > div { break-inside: avoid; margin: 0 0 .3em; }
dt { font-weight: bold; display: inline; }
dt::after { content: ":"; }
dd { display: inline; margin: 0; }
@media print { body { padding: 0; max-width: none; } }
</style>
</head>
<body>
<h1>{{.Title}}: words for what you notice</h1>
{{if .Cooked}}<p>For your {{.Cooked}}.</p>
{{end}}<p>Look for a word because you noticed it. Then say what made it so.</p>
{{range .Parts}}<section>
<h2>{{.Sense}}</h2>
{{if .Moment}}<p>Notice it {{.Moment}}.</p>
{{end}}{{if .Scales}}<h3>From low to high</h3>
<ul class="scales">
{{range .Scales}}<li><b>{{.Name}}:</b> <ol>{{range .Steps}}<li>{{.}}</li>{{end}}</ol></li>
{{end}}</ul>
{{end}}<dl>
{{range .Words}}<div><dt>{{.Word}}</dt> <dd>{{.Means}}</dd></div>
{{end}}</dl>
</section>
{{end}}</body>
</html>
`
