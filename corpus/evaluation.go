package corpus

import (
	"fmt"
	"time"

	"saywhy/analyze"
)

// Evaluation is one text of one person about one practical, and where it was
// found.
type Evaluation struct {
	Learner string // as the tutor wrote it first ("amina"), never ""
	Session string // "03", or a date as 2026-03-14 where no number is given; sorts in the order of the course
	Dish    string // as written ("leek soup"); "" when nowhere given
	Role    analyze.Role
	Date    time.Time // day only, in UTC; zero when nowhere given
	Text    string    // UTF-8, as a person reads the document; paragraphs apart by an empty line
	Source  string    // path below the folder with slashes, and where in the file: "forms.xlsx, row 12"
}

// Unplaced is something in a folder that could not be read, or whose learner
// or session cannot be told, with the reason and the mend in one line.
type Unplaced struct {
	Source string // as in Evaluation
	Reason string
}

func (u *Unplaced) Error() string { return u.Source + ": " + u.Reason }

// unplaced makes an Unplaced that still needs its Source.
func unplaced(format string, args ...any) *Unplaced {
	return &Unplaced{Reason: fmt.Sprintf(format, args...)}
}
