package analyze

import "saywhy/lexicon"

// hintsAt returns the area that a word often speaks of without showing it. For
// the smell that is also where it went: "bay and thyme all up the stairs".
func hintsAt(t *token) lexicon.Area {
	switch t.norm {
	case "should", "could", "would", "'d", "next", "wish", "needed", "improve", "supposed", "suppose", "meant", "maybe", "again", "longer", "sooner",
		"instead", "buy", "want", "wanted", "wants", "needs", "more", "less", "fewer", "extra", "change", "changes", "improvement", "wrong",
		"future", "target", "aim", "goal", "wud", "shud", "cud", "shoulda", "coulda", "woulda", "rather", "better":
		return lexicon.Improvement
	case "nose", "noses", "sniff", "sniffed", "scent", "scented", "whiff", "waft", "wafted", "wafting", "fragrant", "perfume", "perfumed", "fumes",
		"reeked", "reek", "stank", "stunk", "stink", "ponged", "pong", "aroma", "aromas", "stairs", "upstairs", "landing", "corridor", "hallway",
		"lane":
		return lexicon.Aroma
	case "help", "helped", "myself", "alone", "remind", "reminded", "told", "asked", "own", "prompt", "prompting", "hover", "hovering", "sat",
		"watched", "interfere", "solo", "unaided", "pair", "pairs", "partner", "together", "both", "us", "between", "carer", "assistance",
		"supervised", "hand", "asking":
		return lexicon.Independence
	}
	if t.kind == lexicon.Person {
		return lexicon.Independence
	}
	switch t.norm {
	case "knife", "knives", "blade", "boiling", "burn", "burnt", "slip", "slipped", "oil", "smoke", "smoking", "smoked", "glove", "gloves", "mitts",
		"guard", "mandoline", "mandolin", "handle", "careful", "carefully", "claw", "tucked", "sharp", "flame", "gas", "allergic", "allergy",
		"label", "labels", "nuts", "packet", "dog", "toddler", "baby", "cat", "steam", "spat", "spit", "splash", "splashed", "sleeves", "wobbly",
		"danger", "dangerous", "hurt", "safe", "safely", "ill", "poison", "poisonous", "badly", "plug", "plugged", "unplugged", "stood", "nearly",
		"almost", "dropped", "tipped", "fell", "finger", "fingers", "thumb", "wrist", "arm", "palm", "foot", "feet", "toe", "ouch", "blister",
		"scald", "scalded", "tongs", "gauntlet", "gauntlets", "hazy", "haze", "grabbed", "slippy", "slippery", "skidded", "socket", "flames", "fire",
		"caution", "cautious", "risk", "risks", "risky", "accident", "accidents", "sensible", "sensibly", "grip", "gripped", "peeler", "trip",
		"tripped", "supervised":
		return lexicon.Safety
	case "salt", "seasoning", "heat", "kick", "spice", "spices", "seasoned", "pepper", "sugar", "ginger", "chilli":
		return lexicon.Taste
	case "clean", "cleaned", "dirty", "cover", "covered", "drips", "sink", "mess", "messy", "spilt", "raw", "plaster", "rinsed", "tap", "lick",
		"licked", "apron", "hair", "cleaner", "washing", "wash", "germs", "cloth", "juices", "rings", "nails", "wiped", "wipe", "wiping", "board",
		"boards", "pots", "pans", "tidy", "tidied", "tidying", "scrub", "scrubbed", "swept", "mopped", "hoovered", "hoover", "soap", "spotless",
		"bench", "floor", "fridge", "bin", "probe", "thermometer", "pink", "sanitised", "sanitiser", "antibac", "bleach", "dishwasher", "dishcloth",
		"sponged", "grubby", "filthy", "crumb", "crumbs", "worktop", "worktops", "countertop", "surfaces", "surface", "sides", "counter", "paws",
		"sneezed", "coughed", "gloved", "bacteria", "bug", "bugs", "muck", "mucky", "splashes", "splattered",
		"leftovers", "use-by", "clear", "soak", "soaking", "sick", "dried":
		return lexicon.Hygiene
	case "wait", "waited", "waiting", "forgot", "hours", "rushed", "before", "already", "slow", "meanwhile", "late", "spread", "everywhere", "list",
		"plan", "planned", "timetable", "timer", "ticked", "recipe", "ready", "behind", "timing", "timings", "rush", "order", "time", "timed",
		"mins", "minutes", "start", "started", "finish", "finished", "finishing", "first", "earliest", "last", "prep", "prepped", "prepping",
		"advance", "beforehand", "laid", "organised", "lunch", "dinner", "dinnertime", "teatime", "overnight", "ahead", "halves", "batch", "batches",
		"peelings", "bowls", "lined", "tray", "cupboard", "dishes", "o'clock", "clock", "pm", "am", "bell", "deadline", "hurry", "hurried", "calm",
		"chaos", "faffing", "juggling", "every", "hour", "half":
		return lexicon.Organisation
	case "grain", "grains", "separate", "separately", "squashed", "bite", "chew", "crumble", "crumbled", "pips", "teeth", "tooth", "lump", "lumps",
		"set", "held", "knife-edge", "clump", "clumped", "clumps", "stodge":
		return lexicon.Texture
	case "colour", "colours", "picture", "photo", "shape", "shapes", "neat", "presented", "plated", "decorated", "garnish", "garnished", "sprinkled",
		"size", "sizes", "wonky", "round", "looked", "looks":
		return lexicon.Appearance
	case "flavour", "flavours", "flavoured", "zing", "tang", "bland", "punch", "tongue", "aftertaste":
		return lexicon.Taste
	}
	return ""
}
