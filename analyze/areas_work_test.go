package analyze

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"saywhy/lexicon"
)

// TestWorkToldOtherwise: the areas of work in words that do not name them, and
// the same words where they tell of something else. Sentences of our own, by
// shared/guide/labels.md.
func TestWorkToldOtherwise(t *testing.T) {
	for _, c := range []struct {
		area    lexicon.Area
		yes, no []string
	}{
		{lexicon.Independence,
			[]string{
				"Crumble, all him.", "Nice to see, and all her own work.", "The rest was me.", "I sat on my hands the whole time.",
				"Ben took charge today.", "She did it under her own steam.", "I only lit the gas.", "me and my mate did it at hers",
				"He put it away after being asked.", "My sister wouldn't let me near it.", "She grated and I did the sauce.",
				"I never lifted a finger.", "Nan talked me through the folding.", "She needed no prompting.",
				"Baba lifted the tray out.", "Nobody was in so I did it.", "I stood next to him for the frying.", "You only called me for the jar.", "I hardly left my chair.",
			},
			[]string{
				"The dog sat and watched.", "The rest was soft.", "It was all me fingers.", "He took the lid off.", "I had it with my tea.",
				"It crackled when Dad carved it.", "The pair of them ate it.",
				"Golden all over except for one corner near the hot side.",
			}},
		{lexicon.Organisation,
			[]string{
				"I worked backwards from six o'clock.", "I made it the day before.", "I was still peeling when the pan boiled.", "We sat down at ten past.",
				"It was meant to be 40 minutes.", "She left every drawer open, so every drawer open, every pan out.", "I fell behind.", "It took us two hours.",
				"I wrote each job on a sticky note.", "He stayed calm.",
			},
			[]string{
				"I waited till the oil calmed down.", "Whisking took three minutes.", "Crumbs went everywhere when you bit it.", "He couldn't find the onion in it.",
				"I forgot to take the bay leaf out.", "We sat down to a film.",
			}},
		{lexicon.Hygiene,
			[]string{
				"Flour everywhere!", "The bench was a snowstorm.", "I gave my arms a proper scrub.", "The leeks had grit in so I ran them under the tap.",
				"It went in a lidded box in the fridge.", "The sieve was still dirty.", "He used a pair of tongs for the raw ones.", "The bowl sat in a sink of cold water to cool fast.",
			},
			[]string{
				"I turned the ring off.", "I stood back by the fridge.", "It looked like snow.",
			}},
		{lexicon.Safety,
			[]string{
				"I kept my free hand behind the blade.", "She poured it at arm's length.", "I didn't want it sloshing over me.", "My aunt's expecting so I swapped the raw eggs.",
				"Nobody got burnt.", "I didn't burn myself.", "Mum lifted the pot because it was heavy.", "I wore gloves for the chillies.", "Wet chips spit.", "Dad steadied the tin.",
			},
			[]string{
				"The bottom didn't burn.", "I halved them with a small knife.", "I added the milk a splash at a time.",
			}},
		{lexicon.Improvement,
			[]string{"I'd cut them smaller.", "Before it burns I'd turn it down."},
			[]string{
				"I'd already washed it.", "It went in late or it would have burnt.", "She'd everything laid out.", "Skin was crisp.", "Cut it open and it was brown.", "The rest was smooth.",
			}},
	} {
		for _, text := range c.yes {
			assert.True(t, readPlain(t, text).Row(c.area).Said, "%s: %s", c.area, text)
		}
		for _, text := range c.no {
			assert.False(t, readPlain(t, text).Row(c.area).Said, "no %s: %s", c.area, text)
		}
	}
}
