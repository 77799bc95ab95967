package corpus

import (
	"saywhy/analyze"
	"saywhy/lexicon"
)

// GroupReport is what a tutor needs to know of a group across a course. Its
// lists are never nil. It ranks nobody: people stand with those first whose
// texts hold a caution, then by name.
type GroupReport struct {
	Title         string          `json:"title"` // of the course; may be empty
	Learners      GroupPart       `json:"learners"`
	Adults        GroupPart       `json:"adults"`
	Cautions      []GroupCaution  `json:"cautions"`      // by kind, name and session; of every text, earlier drafts too
	Disagreements []Disagreement  `json:"disagreements"` // by name and session
	Plans         []KeptPlan      `json:"plans"`         // by name and session
	Words         GroupWords      `json:"words"`         // of the learners
	Shared        []SharedWording `json:"shared"`        // the longest first
	Unplaced      []SourceNote    `json:"unplaced"`      // could not be read or placed
	Remarks       []SourceNote    `json:"remarks"`       // were read all the same
}

// SourceNote says something of a file, or of a place in it.
type SourceNote struct {
	File   string `json:"file"`
	Reason string `json:"reason"`
}

// GroupPart is the texts of one role: of the learners, or of the adults at home.
type GroupPart struct {
	Texts    int            `json:"texts"`   // that count
	Earlier  int            `json:"earlier"` // earlier drafts, which do not
	People   []GroupPerson  `json:"people"`
	Sessions []GroupSession `json:"sessions"` // in the order of the course
}

// GroupPerson is one learner, or the adult at one learner's home.
type GroupPerson struct {
	Learner  string      `json:"learner"`
	Cautions int         `json:"cautions"` // in their texts
	Areas    []AreaCount `json:"areas"`    // all ten, in their order
	Path     []PathPoint `json:"path"`     // by session
}

// AreaCount is how many texts got how far with an area. Texts counts those
// whose brief asks for it; the three steps are counted among these.
type AreaCount struct {
	Area   lexicon.Area `json:"area"`
	Texts  int          `json:"texts"`
	Said   int          `json:"said"`
	Detail int          `json:"detail"`
	Reason int          `json:"reason"`
}

// PathPoint is one text on a person's path: of how many areas that the brief
// asks for it spoke, gave a detail and gave a reason.
type PathPoint struct {
	Session string       `json:"session"`
	Dish    string       `json:"dish"`
	File    string       `json:"file"`
	Words   int          `json:"words"`
	Asked   int          `json:"asked"`
	Said    int          `json:"said"`
	Detail  int          `json:"detail"`
	Reason  int          `json:"reason"`
	Areas   []ReachedRow `json:"areas"` // all ten
}

// ReachedRow is how far one text got with one area.
type ReachedRow struct {
	Area     lexicon.Area `json:"area"`
	Expected bool         `json:"expected"`
	Said     bool         `json:"said"`
	Detail   bool         `json:"detail"`
	Reason   bool         `json:"reason"`
}

// GroupSession is what a session's texts did not reach.
type GroupSession struct {
	Session string       `json:"session"`
	Dishes  []string     `json:"dishes"` // the commonest first
	Texts   int          `json:"texts"`
	Areas   []AreaCount  `json:"areas"`   // all ten
	Teach   []TeachPoint `json:"teach"`   // at most three
	Without []string     `json:"without"` // people of the group with no text of it
}

// TeachPoint is a step at which many texts of a session stop: they reached
// those before it in the area, and not this one.
type TeachPoint struct {
	Area    lexicon.Area `json:"area"`
	Step    analyze.Step `json:"step"`
	Stopped int          `json:"stopped"` // texts that stop here
	Missing int          `json:"missing"` // texts without the step, wherever they stop
	Texts   int          `json:"texts"`   // texts asked for the area
}

// Place says where in the body of texts something stands.
type Place struct {
	Learner string       `json:"learner"`
	Session string       `json:"session"`
	Dish    string       `json:"dish"`
	Role    analyze.Role `json:"role"`
	File    string       `json:"file"`
}

// GroupCaution is a caution and where it stands.
type GroupCaution struct {
	Place
	analyze.Caution
}

// Disagreement is a quality of one dish that the learner's text and the adult's
// tell differently.
type Disagreement struct {
	Learner string `json:"learner"`
	Session string `json:"session"`
	Dish    string `json:"dish"`
	Of      string `json:"of"` // the part, as the learner's sentence has it; "" for the dish as a whole
	Child   Told   `json:"child"`
	Adult   Told   `json:"adult"`
}

// Told is one side of a disagreement.
type Told struct {
	Word     string `json:"word"` // as written
	Denied   bool   `json:"denied"`
	Sentence string `json:"sentence"`
	File     string `json:"file"`
}

// KeptPlan is a change that a learner named for next time. Next is the session
// of their next evaluation, "" when there is none yet.
type KeptPlan struct {
	Learner  string `json:"learner"`
	Session  string `json:"session"`
	Dish     string `json:"dish"`
	Plan     string `json:"plan"` // the very words
	Next     string `json:"next"`
	SpokenOf bool   `json:"spoken_of"` // the next evaluation speaks of it
}

// GroupWords is what words the learners' texts lean on.
type GroupWords struct {
	Texts     int           `json:"texts"`
	Vague     []VagueCount  `json:"vague"`      // the commonest first
	Sensory   []SenseCount  `json:"sensory"`    // the commonest first
	Unused    []UnusedWords `json:"unused"`     // by dish type
	AdultOnly []SenseCount  `json:"adult_only"` // what adults wrote and no learner did
}

// VagueCount is a word that judges, with the number of texts it stands in and
// of those in which it stays bare.
type VagueCount struct {
	Word  string `json:"word"`
	Texts int    `json:"texts"`
	Bare  int    `json:"bare"`
}

// SenseCount is a headword of the list and the number of texts it stands in.
type SenseCount struct {
	Word  string        `json:"word"`
	Sense lexicon.Sense `json:"sense"`
	Texts int           `json:"texts"`
}

// UnusedWords is what of a dish type's list no learner wrote about it.
type UnusedWords struct {
	Dish   string        `json:"dish"` // the type's title
	Sense  lexicon.Sense `json:"sense"`
	Texts  int           `json:"texts"`  // of the dish type
	Listed int           `json:"listed"` // words of the type's list for the sense
	Words  []string      `json:"words"`  // those that no text has
}

// SharedWording is a passage that two texts have in common.
type SharedWording struct {
	A     Place  `json:"a"`
	B     Place  `json:"b"`
	TextA string `json:"text_a"`
	TextB string `json:"text_b"`
	Words int    `json:"words"` // of the first passage
}
