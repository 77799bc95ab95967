package demo

import (
	"archive/zip"
	"bytes"
	"encoding/xml"
	"strings"
)

// part is one file inside a document.
type part struct{ name, data string }

// docx writes the least that a word processor takes for a document: Office Open
// XML (ISO/IEC 29500-1), a package with its content types, one relationship and
// the main part.
func docx(text []paragraph) ([]byte, error) {
	var body strings.Builder
	for _, p := range text {
		style := ""
		if p.heading {
			style = `<w:pPr><w:pStyle w:val="Heading1"/></w:pPr>`
		}
		body.WriteString("<w:p>" + style + `<w:r><w:t xml:space="preserve">` + escaped(p.text) + "</w:t></w:r></w:p>")
	}
	return zipped([]part{
		{"[Content_Types].xml", xml.Header + `<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">` +
			`<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>` +
			`<Default Extension="xml" ContentType="application/xml"/>` +
			`<Override PartName="/word/document.xml" ContentType="application/vnd.openxmlformats-officedocument.wordprocessingml.document.main+xml"/>` +
			`<Override PartName="/word/styles.xml" ContentType="application/vnd.openxmlformats-officedocument.wordprocessingml.styles+xml"/></Types>`},
		{"_rels/.rels", xml.Header + `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">` +
			`<Relationship Id="rId1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/officeDocument" Target="word/document.xml"/></Relationships>`},
		{"word/_rels/document.xml.rels", xml.Header + `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">` +
			`<Relationship Id="rId1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/styles" Target="styles.xml"/></Relationships>`},
		{"word/styles.xml", xml.Header + `<w:styles xmlns:w="http://schemas.openxmlformats.org/wordprocessingml/2006/main">` +
			`<w:style w:type="paragraph" w:styleId="Heading1"><w:name w:val="heading 1"/><w:pPr><w:outlineLvl w:val="0"/></w:pPr><w:rPr><w:b/></w:rPr></w:style></w:styles>`},
		{"word/document.xml", xml.Header + `<w:document xmlns:w="http://schemas.openxmlformats.org/wordprocessingml/2006/main"><w:body>` +
			body.String() + `</w:body></w:document>`},
	})
}

// odt writes the least that a word processor takes for a text: OpenDocument 1.3
// (OASIS), whose type stands first and unpacked.
func odt(text []paragraph) ([]byte, error) {
	var body strings.Builder
	for _, p := range text {
		if p.heading {
			body.WriteString(`<text:h text:outline-level="1">` + escaped(p.text) + "</text:h>")
			continue
		}
		body.WriteString("<text:p>" + escaped(p.text) + "</text:p>")
	}
	const kind = "application/vnd.oasis.opendocument.text"
	return zipped([]part{
		{"mimetype", kind},
		{"META-INF/manifest.xml", xml.Header + `<manifest:manifest xmlns:manifest="urn:oasis:names:tc:opendocument:xmlns:manifest:1.0" manifest:version="1.3">` +
			`<manifest:file-entry manifest:full-path="/" manifest:media-type="` + kind + `"/>` +
			`<manifest:file-entry manifest:full-path="content.xml" manifest:media-type="text/xml"/></manifest:manifest>`},
		{"content.xml", xml.Header + `<office:document-content xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" ` +
			`xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" office:version="1.3"><office:body><office:text>` +
			body.String() + `</office:text></office:body></office:document-content>`},
	})
}

// zipped packs the parts, the same into the same bytes. A part called mimetype
// stays as it is.
func zipped(parts []part) ([]byte, error) {
	var b bytes.Buffer
	z := zip.NewWriter(&b)
	for _, p := range parts {
		method := zip.Deflate
		if p.name == "mimetype" {
			method = zip.Store
		}
		w, err := z.CreateHeader(&zip.FileHeader{Name: p.name, Method: method})
		if err != nil {
			return nil, err
		}
		if _, err := w.Write([]byte(p.data)); err != nil {
			return nil, err
		}
	}
	if err := z.Close(); err != nil {
		return nil, err
	}
	return b.Bytes(), nil
}

func escaped(s string) string {
	var b strings.Builder
	_ = xml.EscapeText(&b, []byte(s)) // a Builder never fails
	return b.String()
}
