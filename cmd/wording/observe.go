package wording

import "saywhy/lexicon"

// Observe asks the adult at home to notice something of an area, for those
// that the sheet has no line of its own for.
func Observe(a lexicon.Area) string {
	switch a {
	case lexicon.Technique:
		return "How did they do the main step?"
	case lexicon.Appearance:
		return "What did it look like on the plate? What would you add or change?"
	case lexicon.Aroma:
		return "What did it smell of, and when?"
	case lexicon.Taste:
		return "What did you taste first? What stayed?"
	case lexicon.Texture:
		return "How did it feel to cut and to chew?"
	}
	return "What would help next time?"
}
