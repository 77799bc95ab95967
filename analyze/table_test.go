package analyze

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"saywhy/lexicon"
)

// TestAPlanHasItsReasonWhereTheFaultIsTold follows the label guide (a reason for
// a change is the fault that it mends, told in its sentence or beside it); common
// practice, no published source.
func TestAPlanHasItsReasonWhereTheFaultIsTold(t *testing.T) {
	for text, want := range map[string]bool{
		"Two of the rolls cracked. Next time I would leave them to cool.":                true,
		"I hadn't greased the dish. I'd do that first next time.":                        true,
		"There was no kick to the sauce. Next time I would add a chilli.":                true,
		"The oil wasn't hot enough. Next time I would wait for it.":                      true,
		"The base was soggy, next time I would bake it blind.":                           true,
		"Next time I would leave the middle soft.":                                       false,
		"Next time I would take it out when it's lighter.":                               false,
		"We drained them so they were not greasy. Next time I would make a dip.":         false,
		"It was firm enough to slice. Next time I would put sesame seeds on.":            false,
		"The stew was not too salty for the baby. Next time I would add the barley.":     false,
		"Dad took the trays out. Next time I would roll it the same thickness all over.": false,
		"Mine was thinner than the others. Next time I would add a chilli.":              true,
		"Mine was better than the others. Next time I would add a chilli.":               false,
		"It was crispier than the rest. Next time I would add a chilli.":                 false,
		"The lamb fell off the bone. Next time I would add a chilli.":                    false,
		"I tore the basil. Next time I would add a chilli.":                              false,
		"The spinach wilted in the pan. Next time I would add a chilli.":                 false,
		"It slid out easily. Next time I would add a chilli.":                            false,
		"The middle fell. Next time I would leave the door shut.":                        true,
		"The wrap tore. Next time I would warm them.":                                    true,
		"The lettuce wilted. Next time I would add the dressing last.":                   true,
		"The top layer slid off. Next time I would add a skewer.":                        true,
		"It fell apart when I lifted it. Next time I would add a chilli.":                true,
	} {
		got := false
		for _, row := range readPlain(t, text).Areas {
			got = got || row.Area == lexicon.Improvement && row.Reason
		}
		assert.Equal(t, want, got, text)
	}
}
