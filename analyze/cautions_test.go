package analyze

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/lexicon"
)

// Each figure of this file stands beside the place where it was read. The law
// binds businesses; at home it is guidance.

// TestCoreTemperatureLimits: the world aim is 70 °C (World Health Organization,
// Five keys, 2006, read in a copy at emedinexus.com/post/14641); the UK pairs are 70 °C for 2 min
// and 75 °C for 30 s (Food Standards Agency; figures read at eurohaccp.blogspot.com/2015/09, not on
// the agency's own page). 70 °C is 158 °F by arithmetic.
func TestCoreTemperatureLimits(t *testing.T) {
	assert.Equal(t, 70, coreCelsius)
	assert.Equal(t, 158, coreFahrenheit)
	assert.InDelta(t, coreFahrenheit, coreCelsius*9.0/5+32, 0.001, "the two limits are one temperature")
}

// TestAdviceNamesTheFigures checks each text of advice against what is published.
// A figure is given in the ways in which it may be written.
func TestAdviceNamesTheFigures(t *testing.T) {
	_, lex := shared(t)
	for _, c := range []struct {
		kind, source string
		ways         []string
	}{
		{"undercooked", "70 °C for 2 min: Food Standards Agency, read at eurohaccp.blogspot.com/2015/09", []string{"70 °C for two minutes", "70 °C for 2 minutes"}},
		{"undercooked", "75 °C for 30 s: the same", []string{"75 °C for half a minute", "75 °C for 30 seconds"}},
		{"undercooked", "pork, poultry, rolled joints and mince never pink: read at nibusinessinfo.co.uk, cooking and chilling food", []string{"rolled joints should never be eaten pink"}},
		{"cross-contact", "raw chicken is not washed, drops travel more than 50 cm: read at southend.gov.uk, campylobacter, and a copy of an NHS page at doctoori.net", []string{"half a metre", "50 cm"}},
		{"cross-contact", "raw chicken is not washed: read at southend.gov.uk, campylobacter", []string{"not wash raw chicken"}},
		{"storage", "cooked food at room temperature, not more than 2 h: WHO Five keys, read at emedinexus.com/post/14641", []string{"more than two hours", "more than 2 hours"}},
		{"storage", "fridge 0–5 °C: Food Standards Agency and Food Standards Scotland, read at nibusinessinfo.co.uk, cooking and chilling food, and foodstandards.gov.scot, storing food", []string{"5 °C or below", "0 to 5 °C"}},
		{"storage", "in the fridge within 1–2 h: read at a copy of the agency's page on chilling at militra.lt", []string{"one to two hours", "1 to 2 hours"}},
		{"storage", "rice cooled within 1 h: NHS advice, read at recycledevon.org, leftover rice", []string{"rice within one hour", "rice within 1 hour"}},
		{"storage", "rice in the fridge no more than 1 day: the same", []string{"rice one", "rice 1"}},
		{"storage", "leftovers within 2 days: Food Standards Scotland, read at foodstandards.gov.scot, storing food", []string{"leftovers two days", "leftovers 2 days"}},
		{"storage", "reheat once only, steaming hot: read at a copy of the agency's page on chilling at militra.lt, and recycledevon.org, leftover rice", []string{"reheat once only"}},
		{"storage", "steaming hot throughout: the same", []string{"steaming hot all the way through"}},
		{"raw-tasting", "raw dough, batter and flour are not tasted, flour is usually not treated: FDA, FSA, read at bbc.co.uk/news/health-42236702", []string{"flour is usually not treated"}},
		{"injury", "20 min of cool running water: British Burn Association 2018, read at adultburnsupportuk.org", []string{"cool running water for 20 minutes", "20 minutes of cool running water"}},
		{"injury", "within 3 h: the same", []string{"within three hours", "within 3 hours"}},
		{"injury", "no ice, creams or butter, then cling film: read at adultburnsupportuk.org, and nbt.nhs.uk, first aid burns", []string{"no ice, butter or cream"}},
		{"injury", "cling film laid on: read at adultburnsupportuk.org", []string{"lay cling film over it"}},
		{"unwell", "no open food until 48 h after symptoms stop: Food Standards Agency, read at food.gov.uk, fitness to work", []string{"48 hours after it has stopped"}},
	} {
		t.Run(c.kind+": "+c.ways[0], func(t *testing.T) {
			caution, ok := lex.Reading.Cautions[c.kind]
			require.True(t, ok)
			advice := strings.Join(strings.Fields(caution.Advice), " ")
			found := false
			for _, way := range c.ways {
				found = found || strings.Contains(advice, way)
			}
			assert.True(t, found, "advice for %s: %q\n lacks every way to say %s", c.kind, advice, c.source)
		})
	}
}

// TestFourteenAllergens: Annex II of Regulation 1169/2011, as UK law keeps it
// (read at reading.ac.uk/foodlaw and rochdale.gov.uk): 14 groups, eight of nuts named;
// coconut, chestnut and pine nut are not among them (counted there).
func TestFourteenAllergens(t *testing.T) {
	_, lex := shared(t)
	var groups []string
	for g := range lex.Reading.Allergens {
		groups = append(groups, g)
	}
	assert.Len(t, groups, 14, "%q", groups)
	for _, word := range []string{"gluten", "crustacean", "egg", "fish", "peanut", "soy", "milk", "nuts", "celery", "mustard", "sesame", "sulph", "lupin", "mollusc"} {
		assert.Contains(t, strings.Join(groups, " "), word)
	}
	nuts := strings.Join(lex.Reading.Allergens["nuts"], "|")
	require.NotEmpty(t, nuts)
	for _, nut := range []string{"almond", "hazelnut", "walnut", "cashew", "pecan", "brazil nut", "pistachio", "macadamia"} {
		assert.Contains(t, nuts, nut)
	}
	for _, other := range []string{"coconut", "chestnut", "pine nut"} {
		assert.NotContains(t, nuts, other)
	}
	caution := lex.Reading.Cautions["allergen"]
	assert.Contains(t, caution.Advice+" "+caution.Source, "14 allergens")
}

// TestEveryCautionNamesItsSourceAndDefers: nothing here is law for a home, so
// each kind names whose guidance it follows and puts the people on the spot
// first.
func TestEveryCautionNamesItsSourceAndDefers(t *testing.T) {
	_, lex := shared(t)
	kinds := lexicon.CautionKinds()
	require.Len(t, kinds, 8, "a danger is of one of eight kinds (DEVELOPERS.md, What the labels mean)")
	for _, kind := range kinds {
		t.Run(kind, func(t *testing.T) {
			c, ok := lex.Reading.Cautions[kind]
			require.True(t, ok, "no advice for %s", kind)
			assert.NotEmpty(t, strings.TrimSpace(c.Advice))
			// A body that publishes guidance, by name.
			named := false
			for _, body := range []string{"Food Standards", "World Health Organization", "NHS", "British Burn Association", "fire and rescue", "Royal Society"} {
				named = named || strings.Contains(c.Source, body)
			}
			assert.True(t, named, "source %q names no body that publishes guidance", c.Source)
			deferring := strings.ToLower(c.Source + " " + c.Advice)
			assert.Contains(t, deferring, "local rules")
			assert.Contains(t, deferring, "responsible adult")
		})
	}
}

// TestAdviceSendsALearnerToTheAdult: a learner is never left alone with it.
func TestAdviceSendsALearnerToTheAdult(t *testing.T) {
	a, lex := shared(t)
	for _, role := range []Role{Learner, Adult} {
		r := a.Read(Input{Text: "The chicken was still pink in the middle.", Role: role}, Brief{Dish: lex.General()})
		require.NotEmpty(t, r.Cautions, "role %s", role)
		assert.Equal(t, role == Learner, strings.HasPrefix(r.Cautions[0].Advice, "Show this to the adult"), "role %s", role)
	}
}

// TestProbeReadings reads core temperatures of food that must be cooked
// through, against 70 °C and 158 °F (see TestCoreTemperatureLimits).
func TestProbeReadings(t *testing.T) {
	for _, c := range []struct {
		name, text string
		want       bool
	}{
		{"62 is too cool", "The probe read 62 in the thickest part of the chicken.", true},
		{"62 with a unit", "The probe said 62 °C in the chicken.", true},
		{"62 with a unit, no space", "The thermometer showed 62C in the chicken thigh.", true},
		{"62 degrees", "The probe showed 62 degrees in the turkey.", true},
		{"just below", "The probe read 69 °C in the chicken.", true},
		{"the limit itself", "The probe read 70 °C in the chicken.", false},
		{"75 is enough", "The probe read 75 in the thickest part of the chicken.", false},
		{"75 with a unit", "The thermometer showed 75 °C in the chicken.", false},
		{"145 °F is too cool", "The probe read 145 °F in the chicken.", true},
		{"145F, no space", "The probe read 145F in the chicken.", true},
		{"just below in °F", "The probe read 157 °F in the chicken.", true},
		{"the limit in °F", "The probe read 158 °F in the chicken.", false},
		{"170 °F is enough", "The probe read 170 °F in the chicken.", false},
		{"170 Fahrenheit", "The probe read 170 Fahrenheit in the chicken.", false},
		{"a time is no reading", "I put the probe in the chicken after 40 minutes and it read 78 °C.", false},
		{"put right", "The probe read 62 in the chicken so I cooked it until it read 76.", false},
		{"not a food that must be cooked through", "The probe read 38 in the milk for the yoghurt.", false},
		{"the oven is no core", "I roasted the chicken at 180 °C and the probe read 80.", false},
	} {
		t.Run(c.name, func(t *testing.T) {
			var kinds []string
			for _, caution := range readPlain(t, c.text).Cautions {
				kinds = append(kinds, caution.Kind)
			}
			if c.want {
				assert.Equal(t, []string{"undercooked"}, kinds, c.text)
				return
			}
			assert.NotContains(t, kinds, "undercooked", c.text)
		})
	}
}

// TestAPlanPutsNoDangerRight: what will be done next time leaves today's food
// as it was: a danger counts unless it was avoided.
func TestAPlanPutsNoDangerRight(t *testing.T) {
	a, lex := shared(t)
	dish, err := lex.Find("roast chicken")
	require.NoError(t, err)
	for _, c := range []struct {
		text string
		want []string
	}{
		{"It was pink inside. Next time I would cook it longer.", []string{"undercooked"}},
		{"It was pink inside so next time I will cook it longer.", []string{"undercooked"}},
		{"It was pink inside. I should have cooked it for longer.", []string{"undercooked"}},
		{"It was pink inside. I cooked it for ten minutes longer.", nil},
		{"It was pink inside so we put it back in the oven for longer.", nil},
		{"I had raw chicken on the board and then I cut the tomatoes on it.", []string{"cross-contact"}},
		{"I used the same knife for the raw chicken and the salad. Next time I will wash it first.", []string{"cross-contact"}},
	} {
		var got []string
		for _, found := range a.Read(Input{Text: c.text}, Brief{Dish: dish}).Cautions {
			got = append(got, found.Kind)
		}
		assert.Equal(t, c.want, got, c.text)
	}
}
