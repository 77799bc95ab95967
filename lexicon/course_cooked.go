package lexicon

import "strings"

// Cooked returns the dish type for a name that a person gave: of a session of
// the course, whose brief it then has, of a dish, or of a type; what fits any
// dish for "". What was cooked is "" where the name says no more than the type.
func (c *Course) Cooked(lex *Lexicon, name string) (dish Dish, what string, err error) {
	what = name
	session, ok := c.Session(name)
	if ok {
		what = session.Dish
	}
	if what == "" {
		dish = lex.General()
	} else if dish, err = lex.Find(what); err != nil {
		return dish, "", err
	}
	if ok && session.Brief != nil {
		dish.Brief = session.Brief
	}
	if strings.EqualFold(what, dish.Name) {
		what = ""
	}
	return dish, what, nil
}
