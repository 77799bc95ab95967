package analyze

import "strings"

// verbForm says what a form of a verb can be.
type verbForm uint8

const (
	pastTense  verbForm = 1 << iota // "I took"
	participle                      // "I had taken"
	presentToo                      // it is the present as well: "I cut"
)

// irregular returns the plain form of a verb whose past is not made with -ed,
// and what the given form of it can be; "" of any other word. The verbs are those
// that tell of work in a kitchen; their forms stand in any grammar.
func irregular(form string) (plain string, is verbForm) {
	const both = pastTense | participle
	switch form {
	case "been":
		return "be", participle
	case "beat", "beaten":
		return "beat", both | presentToo
	case "began":
		return "begin", pastTense
	case "begun":
		return "begin", participle
	case "bent":
		return "bend", both
	case "blew":
		return "blow", pastTense
	case "bought":
		return "buy", both
	case "broke":
		return "break", pastTense
	case "broken":
		return "break", participle
	case "brought":
		return "bring", both
	case "built":
		return "build", both
	case "burnt":
		return "burn", both
	case "came":
		return "come", pastTense
	case "caught":
		return "catch", both
	case "chose":
		return "choose", pastTense
	case "chosen":
		return "choose", participle
	case "crept":
		return "creep", both
	case "cut":
		return "cut", both | presentToo
	case "dealt":
		return "deal", both
	case "done":
		return "do", participle
	case "drank":
		return "drink", pastTense
	case "drew":
		return "draw", pastTense
	case "drawn":
		return "draw", participle
	case "ate":
		return "eat", pastTense
	case "eaten":
		return "eat", participle
	case "fed":
		return "feed", both
	case "fell":
		return "fall", pastTense
	case "forgot":
		return "forget", both
	case "forgotten":
		return "forget", participle
	case "fought":
		return "fight", both
	case "found":
		return "find", both
	case "froze":
		return "freeze", both
	case "frozen":
		return "freeze", participle
	case "gave":
		return "give", pastTense
	case "given":
		return "give", participle
	case "gone":
		return "go", participle
	case "got":
		return "get", both
	case "grew":
		return "grow", pastTense
	case "ground":
		return "grind", both | presentToo
	case "had":
		return "have", both
	case "held":
		return "hold", both
	case "hung":
		return "hang", both
	}
	return irregularLater(form)
}

// irregularLater is irregular for the verbs from "keep" on.
func irregularLater(form string) (plain string, is verbForm) {
	const both = pastTense | participle
	switch form {
	case "kept":
		return "keep", both
	case "knew":
		return "know", pastTense
	case "laid":
		return "lay", both
	case "learnt":
		return "learn", both
	case "left":
		return "leave", both
	case "lit":
		return "light", both
	case "lost":
		return "lose", both
	case "made":
		return "make", both
	case "meant":
		return "mean", both
	case "ran":
		return "run", pastTense
	case "read":
		return "read", both | presentToo
	case "rose":
		return "rise", pastTense
	case "risen":
		return "rise", participle
	case "rung":
		return "ring", participle
	case "run":
		return "run", participle | presentToo
	case "said":
		return "say", both
	case "sank":
		return "sink", pastTense
	case "sat":
		return "sit", both
	case "sent":
		return "send", both
	case "shook":
		return "shake", pastTense
	case "shaken":
		return "shake", participle
	case "shrank":
		return "shrink", pastTense
	case "slept":
		return "sleep", both
	case "slid":
		return "slide", both
	case "spent":
		return "spend", both
	case "spilt":
		return "spill", both
	case "spoilt":
		return "spoil", both
	case "spoke":
		return "speak", pastTense
	case "stole":
		return "steal", pastTense
	case "stood":
		return "stand", both
	case "stuck":
		return "stick", both
	case "stung":
		return "sting", both
	case "swam":
		return "swim", pastTense
	case "swelled":
		return "swell", both
	case "swept":
		return "sweep", both
	case "swung":
		return "swing", both
	case "taught":
		return "teach", both
	case "thought":
		return "think", both
	case "threw":
		return "throw", pastTense
	case "thrown":
		return "throw", participle
	case "told":
		return "tell", both
	case "took":
		return "take", pastTense
	case "taken":
		return "take", participle
	case "tore":
		return "tear", pastTense
	case "torn":
		return "tear", participle
	case "went":
		return "go", pastTense
	case "wept":
		return "weep", both
	case "woke":
		return "wake", pastTense
	case "wore":
		return "wear", pastTense
	case "worn":
		return "wear", participle
	case "wound":
		return "wind", both
	case "written":
		return "write", participle
	case "wrung":
		return "wring", both
	}
	return "", 0
}

// regularPast reports whether the form has the -ed of a past, and is not a plain
// form that happens to end so ("shred", "feed", "seaweed").
func regularPast(form string) bool {
	if len(form) <= 4 || !strings.HasSuffix(form, "ed") || strings.HasSuffix(form, "eed") {
		return false
	}
	switch form {
	case "shred", "embed", "imbed", "behead", "hundred", "flatbed", "seabed", "naked", "wicked", "sacred", "crooked", "rugged", "ragged":
		return false
	}
	return true
}

// onlyPast reports whether the form of a verb is its past and never its present.
func onlyPast(form string) bool {
	_, is := irregular(form)
	return is&pastTense != 0 && is&presentToo == 0 || regularPast(form)
}

// pastForm reports whether the word is a past or a participle that is not made
// with -ed, which the tagger does not always know.
func pastForm(form string) bool {
	_, is := irregular(form)
	return is != 0
}
