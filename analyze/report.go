package analyze

import "saywhy/lexicon"

// Role is who wrote a text.
type Role string

// The learner evaluates what they cooked; the adult at home gives feedback.
const (
	Learner Role = "learner"
	Adult   Role = "adult"
)

// Step is how far a text got with an area.
type Step string

// The three steps, in order.
const (
	Said   Step = "said"   // the text speaks of the area at all
	Detail Step = "detail" // it says something concrete
	Reason Step = "reason" // it says why
)

// Report is what a careful reader would say of one text. Its lists are never
// nil, and stand in text order; offsets are bytes of the text as given, half
// open. The JSON names are part of the contract and do not change.
type Report struct {
	Dish      string     `json:"dish"`
	Title     string     `json:"title"`
	Role      Role       `json:"role"`
	Words     int        `json:"words"`
	Sentences []Sentence `json:"sentences"`
	Areas     []AreaRow  `json:"areas"`
	Questions []Question `json:"questions"`
	Cautions  []Caution  `json:"cautions"`
	Praise    []string   `json:"praise"` // lines that name what the writer did
}

// Sentence is one sentence and what was found in it.
type Sentence struct {
	N       int            `json:"n"` // from 1
	Start   int            `json:"start"`
	End     int            `json:"end"`
	Text    string         `json:"text"`
	Areas   []lexicon.Area `json:"areas"`
	Vague   []Vague        `json:"vague"`
	Sensory []Sensory      `json:"sensory"`
	How     []Phrase       `json:"how"`
	Why     []Reasoning    `json:"why"`
}

// Vague is a word that judges without telling. It is bare when nothing
// specific about the same thing is said in its sentence or the next.
type Vague struct {
	Start int    `json:"start"`
	End   int    `json:"end"`
	Text  string `json:"text"`
	Bare  bool   `json:"bare"`
}

// Sensory is a word or short phrase about the food as sensed. Word is the
// headword of the list, or "" for a likeness or a word that the list lacks.
// Denied marks a quality that the text says the food did not have; Supposed
// one that it only imagines or intends.
type Sensory struct {
	Start    int           `json:"start"`
	End      int           `json:"end"`
	Text     string        `json:"text"`
	Sense    lexicon.Sense `json:"sense"`
	Word     string        `json:"word"`
	Denied   bool          `json:"denied"`
	Supposed bool          `json:"supposed"`
}

// Phrase tells the means or manner by which something was done.
type Phrase struct {
	Start int    `json:"start"`
	End   int    `json:"end"`
	Text  string `json:"text"`
}

// Reasoning gives a purpose, cause or consequence of what sentence Explains
// says.
type Reasoning struct {
	Start    int    `json:"start"`
	End      int    `json:"end"`
	Text     string `json:"text"`
	Explains int    `json:"explains"`
}

// AreaRow is how far the text got with one area. Expected comes from the brief
// of the dish type and the role. Sentences are those that speak of the area.
type AreaRow struct {
	Area      lexicon.Area `json:"area"`
	Expected  bool         `json:"expected"`
	Said      bool         `json:"said"`
	Detail    bool         `json:"detail"`
	Reason    bool         `json:"reason"`
	Sentences []int        `json:"sentences"`
}

// Question is one thing to think about next. Sentence is 0 when it asks for
// something missing altogether; Quotes are the writer's own words in it. Look
// offers the word list as a place to look, "" when it has nothing to offer.
// Danger is the kind of caution it asks about, which is no step to be reached,
// and "" for every other question.
type Question struct {
	N        int          `json:"n"`
	Area     lexicon.Area `json:"area"`
	Step     Step         `json:"step"`
	Sentence int          `json:"sentence"`
	Quotes   []string     `json:"quotes"`
	Text     string       `json:"text"`
	Look     string       `json:"look"`
	Danger   string       `json:"danger"`

	form string // the wording it was made from
	list string // the list that stands in, as in the wording file
}

// Caution is something a responsible adult ought to look at.
type Caution struct {
	Kind     string `json:"kind"`
	Sentence int    `json:"sentence"`
	Text     string `json:"text"`
	Advice   string `json:"advice"`
	Source   string `json:"source"`
}

// Row returns the row of an area.
func (r *Report) Row(a lexicon.Area) AreaRow {
	for _, row := range r.Areas {
		if row.Area == a {
			return row
		}
	}
	return AreaRow{Area: a}
}
