package lexicon

import (
	"slices"

	"go.yaml.in/yaml/v3"
)

// Hazard is what an adult watches for where one of the Hazards is about.
type Hazard struct {
	Name   string
	Area   Area   // Safety for what can hurt now, Hygiene for what can make ill later
	Watch  string // a short line for the adult
	Source string // who publishes guidance on it, a comma, and on what; "" for common practice
}

// HazardsOf returns what to watch at a dish type in one area, what hurts worst
// first.
func (r *Reading) HazardsOf(d Dish, a Area) []Hazard {
	var out []Hazard
	for _, h := range r.Hazards {
		if h.Area == a && slices.Contains(d.Hazards, h.Name) {
			out = append(out, h)
		}
	}
	return out
}

// readHazard reads one row of hazards.yaml.
func (s source) readHazard(name string, n *yaml.Node) (h Hazard) {
	h.Name = name
	if !slices.Contains(Hazards(), name) {
		s.problem(n, "no hazard is called %q", name)
	}
	s.each(n, name, func(part string, k, v *yaml.Node) {
		switch part {
		case "area":
			if h.Area = Area(s.text(v, part)); h.Area != Safety && h.Area != Hygiene {
				s.problem(v, "a hazard belongs to safety or to hygiene, not to %q", h.Area)
			}
		case "watch":
			h.Watch = s.text(v, part)
		case "source":
			h.Source = s.text(v, part)
		default:
			s.unknownKey(k, "a hazard", []string{"area", "watch", "source"})
		}
	})
	if h.Watch == "" || h.Area == "" {
		s.problem(n, "%q needs area and watch", name)
	}
	return h
}
