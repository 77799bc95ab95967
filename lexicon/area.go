package lexicon

// Area is one of the ten things an evaluation can speak of.
type Area string

// The five areas of the work, the four of the result, and what to change next
// time.
const (
	Hygiene      Area = "hygiene"
	Safety       Area = "safety"
	Organisation Area = "organisation"
	Independence Area = "independence"
	Technique    Area = "technique"
	Appearance   Area = "appearance"
	Aroma        Area = "aroma"
	Taste        Area = "taste"
	Texture      Area = "texture"
	Improvement  Area = "improvement"
)

// Areas returns the ten areas in the order in which every report lists them.
func Areas() []Area {
	return []Area{
		Hygiene, Safety, Organisation, Independence, Technique,
		Appearance, Aroma, Taste, Texture, Improvement,
	}
}

// Known reports whether a is one of the ten areas.
func (a Area) Known() bool {
	for _, known := range Areas() {
		if a == known {
			return true
		}
	}
	return false
}

// Sense is the sense by which a word describes food. A crunch that is heard
// counts as texture, as in ISO 5492, clause 3.41.
type Sense string

// The four senses; each is also the result area of the same name.
const (
	Sight  Sense = "appearance"
	Smell  Sense = "aroma"
	Tongue Sense = "taste"
	Touch  Sense = "texture"
)

// Senses returns the four senses in the order of the areas.
func Senses() []Sense { return []Sense{Sight, Smell, Tongue, Touch} }

// Known reports whether s is one of the four senses.
func (s Sense) Known() bool {
	for _, known := range Senses() {
		if s == known {
			return true
		}
	}
	return false
}

// Area returns the result area that words of the sense speak of.
func (s Sense) Area() Area { return Area(s) }
