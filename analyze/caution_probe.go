package analyze

import (
	"strconv"
	"strings"
)

// Limits of the core temperature that food which must be cooked through has to
// reach: 70 °C held for two minutes (Food Standards Agency; World Health
// Organization, Five keys), 158 °F.
const (
	coreCelsius    = 70
	coreFahrenheit = 158
)

// tooCool reports whether the sentence tells of a probe that read less than
// the limit in a food that must be cooked through.
func (d cautioning) tooCool(r *reading, s *sentence) bool {
	probe, protein := false, false
	for i := range s.tokens {
		t := &s.tokens[i]
		probe = probe || t.in("probe", "thermometer", "core", "probed") || strings.HasPrefix(t.norm, "thermo")
		protein = protein || t.card.mustCook
	}
	if !probe && protein {
		// "the temp of the turkey was 64"
		for i := range s.tokens {
			probe = probe || s.tokens[i].in("temp", "temperature")
		}
	}
	if !probe {
		return false
	}
	for i := range s.tokens {
		v, err := strconv.ParseFloat(s.tokens[i].norm, 64)
		if err != nil || v < 30 || v > 200 {
			continue
		}
		limit := float64(coreCelsius)
		for j := i + 1; j < len(s.tokens) && j <= i+2; j++ {
			if s.tokens[j].in("f", "fahrenheit") {
				limit = coreFahrenheit
			}
			if s.tokens[j].in("min", "mins", "minutes", "g", "ml", "hours") {
				v = 1000
			}
		}
		if v < limit {
			return !mendedLater(s.tokens, i)
		}
	}
	return false
}

// mendedLater reports whether the sentence goes on to say it was put right, or
// that a higher reading came.
func mendedLater(tokens []token, i int) bool {
	for j := i + 1; j < len(tokens); j++ {
		if tokens[j].in("back", "until", "till", "more", "longer", "again", "another") {
			return true
		}
		if v, err := strconv.ParseFloat(tokens[j].norm, 64); err == nil && v >= coreCelsius && v < 110 {
			return true
		}
	}
	return false
}
