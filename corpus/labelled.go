// Package corpus handles bodies of texts: labelled texts and agreement with
// them, folders of evaluations, and what a group has in common.
package corpus

import (
	"bufio"
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"strings"

	"saywhy/analyze"
	"saywhy/lexicon"
)

// Labelled is a text with the labels of careful readers. A family of labels
// that is nil was not labelled and is not scored.
type Labelled struct {
	ID        string                   `json:"id"`
	Dish      string                   `json:"dish"`
	Role      analyze.Role             `json:"role"`
	Title     string                   `json:"title,omitempty"`
	Text      string                   `json:"text"`
	Sentences []LabelledSentence       `json:"sentences"`
	Areas     map[lexicon.Area]Reached `json:"areas,omitempty"`
	Cautions  *[]LabelledCaution       `json:"cautions,omitempty"`
}

// LabelledSentence is one sentence as the readers divided the text.
type LabelledSentence struct {
	Text    string             `json:"text"`
	Areas   *[]lexicon.Area    `json:"areas,omitempty"`
	Vague   *[]LabelledVague   `json:"vague,omitempty"`
	Sensory *[]LabelledSensory `json:"sensory,omitempty"`
	How     *bool              `json:"how,omitempty"`
	Why     *bool              `json:"why,omitempty"`
}

// LabelledVague is a judging word as it stands in the text.
type LabelledVague struct {
	Text string `json:"text"`
	Bare bool   `json:"bare"`
}

// LabelledSensory is a sensory word or phrase as it stands in the text.
type LabelledSensory struct {
	Text  string        `json:"text"`
	Sense lexicon.Sense `json:"sense"`
}

// LabelledCaution is a danger and the number of its sentence, from 1.
type LabelledCaution struct {
	Kind     string `json:"kind"`
	Sentence int    `json:"sentence"`
}

// Reached is how far a text got with an area.
type Reached struct {
	Said   bool `json:"said"`
	Detail bool `json:"detail"`
	Reason bool `json:"reason"`
}

// maxLine is the longest line of a labelled file, in bytes.
const maxLine = 16 << 20

// ReadLabelled reads labelled texts, one JSON object a line. Blank lines are
// passed over. The error names the line.
func ReadLabelled(r io.Reader) ([]Labelled, error) {
	var out []Labelled
	lines := bufio.NewScanner(r)
	lines.Buffer(make([]byte, 64<<10), maxLine)
	for n := 1; lines.Scan(); n++ {
		line := bytes.TrimSpace(lines.Bytes())
		if len(line) == 0 {
			continue
		}
		var t Labelled
		if err := json.Unmarshal(line, &t); err != nil {
			return nil, fmt.Errorf("line %d is not a labelled text: %w", n, err)
		}
		if _, err := t.spans(); err != nil {
			return nil, fmt.Errorf("line %d, text %q: %w", n, t.ID, err)
		}
		out = append(out, t)
	}
	if err := lines.Err(); err != nil {
		return nil, fmt.Errorf("reading labelled texts: %w", err)
	}
	return out, nil
}

// span is a half-open range of bytes.
type span struct{ start, end int }

// spans finds the labelled sentences in the text, in order.
func (t *Labelled) spans() ([]span, error) {
	var out []span
	at := 0
	for i, s := range t.Sentences {
		k := strings.Index(t.Text[at:], s.Text)
		if k < 0 {
			return nil, fmt.Errorf("sentence %d (%.40q) does not stand in the text after the one before it", i+1, s.Text)
		}
		out = append(out, span{at + k, at + k + len(s.Text)})
		at += k + len(s.Text)
	}
	return out, nil
}

// HeldBack reports whether a text is kept from those who write rules: every
// third by the number in its id, so that nobody chooses which.
func HeldBack(id string) bool {
	n := 0
	for _, r := range id {
		if r >= '0' && r <= '9' {
			n = n*10 + int(r-'0')
		}
	}
	return n > 0 && n%3 == 0
}
