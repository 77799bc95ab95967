package analyze

import "saywhy/lexicon"

// lentHand finds help that is told only by who did a step: somebody of the
// household in a learner's text ("Grandad peeled the swede"), the adult in
// their own ("I drained it").
func lentHand(s *sentence, role Role) []sign {
	for i := range s.tokens {
		t := &s.tokens[i]
		// The tagger takes many a learner's past for a present or a participle
		// ("Grandad chop the swede", "Mum cut the onions"); an adult's present is
		// a habit or an instruction.
		told := t.tag == "VBD" || role == Learner && t.tagIn("VB", "VBP", "VBN") && i+1 < len(s.tokens) && s.tokens[i+1].tagIn("DT", "PRP", "NN", "NNS")
		if !told || !t.card.works && !t.in("lifted", "carried", "held", "opened", "lit", "reached", "dried", "switched", "steadied", "showed", "fetched", "unscrewed") || t.in("tasted", "checked", "tested", "had", "put", "poured", "cut") {
			continue
		}
		sub := subject(s.tokens, i)
		if sub < 0 || sub != i-1 && !(sub == i-2 && s.tokens[i-1].isAdv()) {
			continue
		}
		if start := clauseStart(s.tokens, i); start > 0 && s.tokens[start-1].in("when", "while", "till", "until", "once") || sub > 0 && s.tokens[sub-1].in("when", "once") {
			continue // "it crackled when dad carved it"
		}
		who := &s.tokens[sub]
		if role == Learner && who.kind == lexicon.Person && who.tag != "PRP" || role == Adult && who.norm == "i" {
			return []sign{{area: lexicon.Independence, told: true, from: sub, to: i + 1}}
		}
	}
	return nil
}
