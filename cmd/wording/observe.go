package wording

import "saywhy/lexicon"

// Observe asks the adult at home to notice something of an area.
func Observe(a lexicon.Area) string {
	switch a {
	case lexicon.Hygiene:
		return "How did they keep hands, tools and food clean? What was it for?"
	case lexicon.Safety:
		return "What did they do with heat and blades? Did you step in?"
	case lexicon.Organisation:
		return "What did they get ready first? How did they use the time?"
	case lexicon.Independence:
		return "What did they do alone? Where did you help?"
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
