package wording

import (
	"fmt"
	"strconv"
	"strings"

	"saywhy/analyze"
	"saywhy/corpus"
)

// Headings of a report on a group, and the lines below them that say how to
// read what follows.
const (
	GroupCautions   = "To look at first"
	GroupNoCautions = "No text tells of anything that the rules know as a danger. They cannot see what was not written."

	GroupTeach     = "What the group has not reached yet"
	GroupTeachRule = "Named are up to three steps of a session at which most texts stop: at least a third of them, and at least two."

	GroupReach     = "How far each got"
	GroupReachRule = "Three numbers for each area: the texts that said it, gave a detail and gave a reason. Those with something to look at stand first, then by name."

	GroupPaths     = "Each one’s path"
	GroupPathsRule = "For each session, how many of the areas asked for were said, got a detail and got a reason."

	GroupDisagree     = "Where learner and adult tell it differently"
	GroupDisagreeNote = "Both may be right: they may have tasted another piece, or mean something else by the word. A question for both."
	GroupNoDisagree   = "Nowhere, as far as the rules can see."

	GroupPlans   = "What they planned to change"
	GroupNoPlans = "No evaluation names a change that could be followed."

	GroupWords = "The group’s words"

	GroupShared     = "Wording that two texts share"
	GroupSharedNote = "A question, not a charge: they may have cooked together, shared a computer, or learnt a phrase from the same person."

	GroupUnread   = "Not read, or not placed"
	GroupUnreadNo = "Everything in the folder was read."
	GroupRemarks  = "Read, but look at these"
)

// Session is a session's number or date as a person reads it.
func Session(session string) string {
	if n, err := strconv.Atoi(session); err == nil {
		return fmt.Sprintf("session %d", n)
	}
	return "session of " + session
}

// SessionDish is a session with what was cooked in it.
func SessionDish(session string, dishes ...string) string {
	if len(dishes) == 0 || dishes[0] == "" {
		return Session(session)
	}
	if len(dishes) > fewDishes {
		return fmt.Sprintf("%s, %d dishes", Session(session), len(dishes))
	}
	return Session(session) + ", " + strings.Join(dishes, " and ")
}

// fewDishes is the most dishes that a line names; where everybody cooked
// something else their number tells more.
const fewDishes = 4

// Title is s with a capital at its head.
func Title(s string) string {
	if s == "" {
		return s
	}
	return strings.ToUpper(s[:1]) + s[1:]
}

// FewTexts says that a number is too small to lean on; "" when it is not.
func FewTexts(n int) string {
	if n >= corpus.Small || n == 0 {
		return ""
	}
	return "only " + Count(n, "text") + ", so read it with care"
}

// Teach says what a session's texts did not reach: "31 of 40 gave no reason
// for texture; 20 of these stop there".
func Teach(p corpus.TeachPoint) string {
	s := fmt.Sprintf("%d of %d ", p.Missing, p.Texts)
	switch p.Step {
	case analyze.Said:
		return s + fmt.Sprintf("did not speak of %s", p.Area)
	case analyze.Detail:
		s += fmt.Sprintf("gave no detail for %s", p.Area)
		if p.Stopped < p.Missing {
			s += fmt.Sprintf("; %d of these spoke of it", p.Stopped)
		}
	default:
		s += fmt.Sprintf("gave no reason for %s", p.Area)
		if p.Stopped < p.Missing {
			s += fmt.Sprintf("; %d of these gave a detail", p.Stopped)
		}
	}
	return s
}

// Reach is the three numbers of an area: "6·4·1"; "–" when no text was asked
// for it.
func Reach(c corpus.AreaCount) string {
	if c.Texts == 0 {
		return "–"
	}
	return fmt.Sprintf("%d·%d·%d", c.Said, c.Detail, c.Reason)
}

// ReachWords says the same for who cannot see the place of a number.
func ReachWords(c corpus.AreaCount) string {
	if c.Texts == 0 {
		return "not asked for"
	}
	return fmt.Sprintf("said in %d, with detail in %d, with a reason in %d of %s", c.Said, c.Detail, c.Reason, Count(c.Texts, "text"))
}

// PlanKept says what became of a plan.
func PlanKept(p corpus.KeptPlan) string {
	switch {
	case p.Next == "":
		return "no evaluation after it yet"
	case p.SpokenOf:
		return Session(p.Next) + " speaks of it"
	}
	return Session(p.Next) + " does not speak of it"
}

// ToldOf says what one side of a disagreement says: "dry", or "not dry".
func ToldOf(t corpus.Told) string {
	if t.Denied {
		return "not “" + t.Word + "”"
	}
	return "“" + t.Word + "”"
}

// Writer is who wrote a text: "Tamsin", or "Tamsin's adult".
func Writer(p corpus.Place) string {
	if p.Role == analyze.Adult {
		return p.Learner + "’s adult"
	}
	return p.Learner
}

// CautionKind is a kind of danger as a heading.
func CautionKind(kind string) string {
	switch kind {
	case "undercooked":
		return "Food that may not be cooked through"
	case "cross-contact":
		return "Raw food near food that is eaten as it is"
	case "storage":
		return "Keeping and cooling food"
	case "raw-tasting":
		return "Raw food that was tasted"
	case "injury":
		return "Someone was hurt"
	case "equipment":
		return "Hot, sharp or electric things"
	case "allergen":
		return "Food that some people must not eat"
	case "unwell":
		return "Cooking while unwell"
	}
	return kind
}

// GroupTitle is what a report on a group is called.
func GroupTitle(r *corpus.GroupReport) string {
	if r.Title != "" {
		return r.Title
	}
	return "The group across the course"
}

// GroupSize says how much was read.
func GroupSize(r *corpus.GroupReport) string {
	s := fmt.Sprintf("%s by %s", Count(r.Learners.Texts, "evaluation"), Count(len(r.Learners.People), "learner"))
	if r.Learners.Earlier > 0 {
		s += fmt.Sprintf(" (and %s, which do not count below)", Count(r.Learners.Earlier, "earlier draft"))
	}
	if r.Adults.Texts > 0 {
		s += fmt.Sprintf(", %s by adults of %s", Count(r.Adults.Texts, "text"), Count(len(r.Adults.People), "home"))
	}
	return s + fmt.Sprintf(", over %s.", Count(len(r.Learners.Sessions), "session"))
}

// WordLines says what words the learners' texts lean on, n of each kind.
func WordLines(w corpus.GroupWords, n int) []string {
	var judged, sensed, adults []string
	for _, v := range w.Vague[:min(n, len(w.Vague))] {
		judged = append(judged, fmt.Sprintf("%s (%d, alone in %d)", v.Word, v.Texts, v.Bare))
	}
	for _, s := range w.Sensory[:min(n, len(w.Sensory))] {
		sensed = append(sensed, fmt.Sprintf("%s (%d)", s.Word, s.Texts))
	}
	for _, s := range w.AdultOnly[:min(n, len(w.AdultOnly))] {
		adults = append(adults, s.Word)
	}
	lines := []string{}
	add := func(what string, words []string) {
		if len(words) > 0 {
			lines = append(lines, what+strings.Join(words, ", "))
		}
	}
	of := fmt.Sprintf(", with the number of the %s they stand in: ", Count(w.Texts, "text"))
	add("words that say little by themselves"+of, judged)
	add("words for what was seen, smelt, tasted or felt"+of, sensed)
	add("words that only the adults used: ", adults)
	return lines
}
