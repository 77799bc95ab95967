package analyze

// takesInfinitive reports whether a verb takes an infinitive as its object.
func takesInfinitive(t *token) bool {
	switch t.norm {
	case "need", "needs", "needed", "want", "wants", "wanted", "try", "tries", "tried", "trying", "like", "likes", "liked", "love", "loved", "loves",
		"have", "has", "had", "having", "going", "gon", "decide", "decided", "decides", "start", "started", "starts", "starting", "begin", "began", "begins", "begun", "beginning",
		"forget", "forgot", "forgotten", "remember", "remembered", "learn", "learned", "learnt", "learning", "manage", "managed", "manages", "hope", "hoped", "hoping", "hopes", "plan", "planned", "planning", "plans",
		"wish", "prefer", "preferred", "continue", "continued", "continues", "seem", "seems", "seemed", "appear", "appears", "appeared", "tend", "tends", "tended", "fail", "failed", "fails", "offer", "offered", "refuse", "refused",
		"ought", "able", "agreed", "agree", "choose", "chose", "chosen", "expect", "expected", "expects", "promised", "promise", "supposed", "meant", "intend", "intended", "dare", "struggled", "struggle", "struggles", "afford", "attempt", "attempted", "attempts", "attempting", "aim", "aims", "aimed", "proceed", "proceeded", "threatened", "hate", "hated", "bothered", "bother", "dying", "got", "get", "happen", "happened", "happens", "said", "came", "come", "comes", "grew", "turned", "proved", "used", "allowed", "set", "determined", "claimed", "claims", "claim", "sought", "seek", "seeks", "cease", "ceased", "helped", "help", "known", "found", "believed", "thought", "considered", "reported", "estimated", "wanting", "needing", "liking":
		return true
	}
	return false
}

// nounTakesInfinitive reports whether a noun takes an infinitive that tells
// what it is, not what something was done for.
func nounTakesInfinitive(t *token) bool {
	switch t.norm {
	case "time", "way", "ways", "chance", "chances", "need", "ability", "abilities", "decision", "attempt", "attempts", "plan", "plans", "right", "reason", "reasons", "desire", "effort", "efforts", "opportunity", "opportunities", "thing", "things",
		"lot", "something", "anything", "nothing", "everything", "place", "places", "one", "person", "people", "job", "bit", "mistake", "idea", "tendency", "willingness", "power", "permission", "intention", "failure", "refusal", "promise", "goal", "aim", "task", "duty", "point", "part", "half", "moment", "someone", "anyone", "ones", "turn", "offer", "commitment", "potential", "capacity", "authority", "response", "obligation", "motivation", "freedom", "incentive", "pressure", "access", "approach", "approaches", "relation", "regard", "respect", "addition", "similar", "contrast", "year", "years", "hours", "minutes", "hour", "ages", "days", "weeks", "steps", "option", "step", "answer", "process", "campaign", "push", "occasion", "request", "requests", "direction", "theory", "invitation", "movement", "proposal", "proposals", "agreement", "requirement", "requirements", "conspiracy", "readiness", "inability", "hope", "hopes", "dream", "wish", "urge", "tool", "tools", "method", "methods", "work", "use", "member", "members", "kids", "subject":
		return true
	}
	return t.human()
}
