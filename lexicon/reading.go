package lexicon

import (
	"io/fs"
	"regexp"
	"slices"
	"sort"
	"strings"

	"go.yaml.in/yaml/v3"
)

// Reading is the words and patterns by which a text is read, whatever its
// dish: what judges without telling, what shows an area, what signals danger.
type Reading struct {
	Nouns     *Nouns
	Vague     []Labelled       // words that judge
	NotVague  []Labelled       // the same words in uses that do not judge
	Unsensed  []Labelled       // uses of sensory words that describe nothing sensed
	Usual     map[string]Sense // the usual sense of forms that have several
	States    map[string]bool  // qualities of ingredients before they are used
	Cues      []Labelled       // signs of the areas
	Hints     map[string]Area  // words that often speak of an area without showing it
	Steps     map[Area]Ranks   // words of the jobs at which an area matters
	Dangers   []Labelled       // signs of a caution
	Scenes    []Scene          // what makes a danger together; see Scene
	Cautions  map[string]Caution
	Hazards   []Hazard            // what to watch for, what hurts worst first
	Allergens map[string][]string // by group of UK law: words for foods that usually hold it
	Spelling  map[string]string   // common misspellings of the words that rules look for
	RealWords map[string]bool     // words that no slip is mended in

	// Opposites are pairs of headwords, in both directions, that no scale makes
	// opposites; see the method of Lexicon.
	Opposites map[string]map[string]bool

	// Wordings by section, group and list: questions by role, area and list
	// (said, vague, detail, reason), praise by step and area, questions about a
	// danger by role and kind. See wordingTree for all of them and their slots.
	Wordings map[string]map[string]map[string][]string

	vague      map[string]bool // these very words
	vagueStems map[string]bool // every form
}

// Ranks orders words by their stems: 0 is what matters most.
type Ranks map[string]int

// Slang is the step of words that judge only when they are said of something
// as a quality of it: "it was sick", not "I was sick".
const Slang = "slang"

// Praise and Blame are the labels of words that judge. Faint praise is blame here:
// who calls a dish edible does not praise it.
const (
	Praise = "praise"
	Blame  = "blame"
)

// Labelled is a pattern and what its being there means.
type Labelled struct {
	Pattern
	Label string // an area, a kind of caution, Praise or Blame, or "" where one list is all
	Step  string // of an area: "named" when it is only spoken of, "told" when something concrete is said
}

// Caution is what a responsible adult is told about one kind of danger.
type Caution struct {
	Kind   string
	Advice string // for the adult and the learner, in plain words
	Source string // the published guidance it follows
}

// Scene is what makes a danger only together: each of Parts is the name of a
// cue, found in the sentence or, where Earlier says so, in one of the two
// before it; none of Unless may stand in any of them. Nor may an "unless" of the
// kind stand in the last sentence, but where DespiteUnless says that only the
// scene's own Unless counts: "!!" in the place of "!".
type Scene struct {
	Kind          string
	Parts         []ScenePart
	Unless        []string
	DespiteUnless bool
}

// ScenePart is one cue of a scene.
type ScenePart struct {
	Cue     string
	Earlier bool // it may also stand in one of the two sentences before: "<name"
	Then    bool // it stands behind the part before it, in its sentence or a later one: "then name"
}

// CueStep is the step under which the patterns of a cue are listed.
func CueStep(name string) string { return "cue " + name }

// CautionKinds returns the eight kinds of danger.
func CautionKinds() []string {
	return []string{"undercooked", "cross-contact", "storage", "raw-tasting", "injury", "equipment", "allergen", "unwell"}
}

// IsVague reports whether the word by itself judges without telling.
func (r *Reading) IsVague(word string) bool { return r.vague[word] || r.vagueStems[Stem(word)] }

// Words returns every single lower-case word that a pattern asks for by
// itself, sorted: those in which a misspelling is worth mending.
func (r *Reading) Words() []string {
	set := map[string]bool{}
	for _, list := range [][]Labelled{r.Vague, r.Cues, r.Dangers} {
		for _, l := range list {
			for _, field := range strings.Fields(l.Text) {
				for _, w := range strings.Split(strings.Trim(field, "!?="), "|") {
					w = strings.TrimPrefix(w, "=")
					if w != "" && strings.Trim(w, "abcdefghijklmnopqrstuvwxyz") == "" {
						set[w] = true
					}
				}
			}
		}
	}
	out := make([]string, 0, len(set))
	for w := range set {
		out = append(out, w)
	}
	sort.Strings(out)
	return out
}

// parseReading reads the files under reading/.
func parseReading(base fs.FS, problems *Problems) (*Reading, error) {
	r := &Reading{Hints: map[string]Area{}, Steps: map[Area]Ranks{}, Cautions: map[string]Caution{}, Allergens: map[string][]string{}, Spelling: map[string]string{}, RealWords: map[string]bool{}, vague: map[string]bool{}, vagueStems: map[string]bool{}, Opposites: map[string]map[string]bool{}, Usual: map[string]Sense{}, States: map[string]bool{}}
	open := func(name string) (source, *yaml.Node, error) {
		file := "reading/" + name + ".yaml"
		data, err := fs.ReadFile(base, file)
		if err != nil {
			return source{}, nil, err
		}
		s := source{file: file, problems: problems, groups: map[string]string{}}
		return s, s.root(data), nil
	}
	type section func(s source, key string, v *yaml.Node)
	kindWords := map[Kind][]string{}
	files := []struct {
		name string
		read section
	}{
		{"nouns", func(s source, key string, v *yaml.Node) {
			if !Kind(key).Known() {
				s.problem(v, "no kind of noun is called %q", key)
				return
			}
			kindWords[Kind(key)] = s.list(v, key)
		}},
		{"allergens", func(s source, key string, v *yaml.Node) { r.Allergens[key] = s.list(v, key) }},
		{"spelling", func(s source, key string, v *yaml.Node) {
			for _, wrong := range s.list(v, key) {
				r.Spelling[wrong] = key
			}
		}},
		{"opposites", func(s source, key string, v *yaml.Node) {
			for _, other := range s.list(v, key) {
				for _, p := range [][2]string{{key, other}, {other, key}} {
					if r.Opposites[p[0]] == nil {
						r.Opposites[p[0]] = map[string]bool{}
					}
					r.Opposites[p[0]][p[1]] = true
				}
			}
		}},
		{"vague", func(s source, key string, v *yaml.Node) {
			switch key {
			case "judges":
				r.Vague = append(r.Vague, s.judging(v, key, "")...)
			case "slang":
				r.Vague = append(r.Vague, s.judging(v, key, Slang)...)
			case "not":
				r.NotVague = append(r.NotVague, s.patterns(v, "", "")...)
			default:
				s.problem(v, "vague.yaml has no section %q", key)
			}
		}},
		{"senses", func(s source, key string, v *yaml.Node) {
			switch key {
			case "usual":
				s.senses(v, key, func(sense Sense, v *yaml.Node) {
					for _, w := range s.list(v, key) {
						r.Usual[w] = sense
					}
				})
			case "states":
				for _, w := range s.list(v, key) {
					r.States[w] = true
				}
			case "not":
				r.Unsensed = append(r.Unsensed, s.patterns(v, "", "")...)
			default:
				s.problem(v, "senses.yaml has no section %q", key)
			}
		}},
		{"areas", func(s source, key string, v *yaml.Node) {
			if !Area(key).Known() {
				s.problem(v, "no area is called %q", key)
				return
			}
			s.each(v, key, func(step string, k, v *yaml.Node) {
				if step == "hinted" {
					s.hints(v, Area(key), r.Hints)
					return
				}
				r.Cues = append(r.Cues, s.patterns(v, key, step)...)
			})
		}},
		{"steps", func(s source, key string, v *yaml.Node) {
			if !Area(key).Known() {
				s.problem(v, "no area is called %q", key)
				return
			}
			r.Steps[Area(key)] = Ranks{}
			for i, w := range s.list(v, key) {
				r.Steps[Area(key)][Stem(w)] = i
			}
		}},
		{"cautions", func(s source, key string, v *yaml.Node) {
			if key == "groups" {
				s.each(v, key, func(name string, k, v *yaml.Node) { s.groups[name] = s.text(v, name) })
				return
			}
			c := Caution{Kind: key}
			s.each(v, key, func(part string, k, v *yaml.Node) {
				switch part {
				case "advice":
					c.Advice = s.text(v, part)
				case "source":
					c.Source = s.text(v, part)
				case "cue":
					s.each(v, part, func(name string, k, v *yaml.Node) {
						r.Dangers = append(r.Dangers, s.patterns(v, key, CueStep(name))...)
					})
				case "scene":
					r.Scenes = append(r.Scenes, s.scenes(v, key, r.Dangers)...)
				default:
					r.Dangers = append(r.Dangers, s.patterns(v, key, part)...)
				}
			})
			r.Cautions[key] = c
		}},
		{"hazards", func(s source, key string, v *yaml.Node) { r.Hazards = append(r.Hazards, s.readHazard(key, v)) }},
	}
	for _, f := range files {
		s, root, err := open(f.name)
		if err != nil {
			return nil, err
		}
		if root != nil {
			s.each(root, f.name, func(key string, k, v *yaml.Node) { f.read(s, key, v) })
		}
	}
	r.Nouns = newNouns(kindWords)
	for _, l := range r.Vague {
		if len(l.Parts) == 1 && l.Step != Slang {
			for _, w := range l.Parts[0].Words {
				r.vague[w] = true
			}
			for _, w := range l.Parts[0].Stems {
				r.vagueStems[w] = true
			}
		}
	}
	data, err := fs.ReadFile(base, "reading/realwords.txt")
	if err != nil {
		return nil, err
	}
	for _, w := range strings.Fields(string(data)) {
		r.RealWords[w] = true
	}
	return r, nil
}

// patterns reads a list of patterns, each with the same label and step; a
// row may hold several with " / " between them.
func (s source) patterns(n *yaml.Node, label, step string) []Labelled {
	var out []Labelled
	for _, item := range s.items(n, label+" "+step) {
		for _, text := range strings.Split(s.text(item, "a pattern"), " / ") {
			p, err := ParsePattern(s.withGroups(item, text))
			if err != nil {
				s.problem(item, "%v", err)
				continue
			}
			out = append(out, Labelled{Pattern: p, Label: label, Step: step})
		}
	}
	return out
}

// judging reads the words of a section that judge, which stand under praise or
// under blame.
func (s source) judging(n *yaml.Node, section, step string) []Labelled {
	if n.Kind == yaml.SequenceNode {
		s.problem(n, "the rows of %s do not say whether they praise or blame; put each under \"praise:\" or \"blame:\"", section)
		return nil
	}
	var out []Labelled
	found := map[string]bool{}
	s.each(n, section, func(side string, k, v *yaml.Node) {
		if side != Praise && side != Blame {
			s.problem(k, "%s has no list %q; a word that judges stands under praise or blame", section, side)
			return
		}
		found[side] = true
		out = append(out, s.patterns(v, side, step)...)
	})
	for _, side := range []string{Praise, Blame} {
		if !found[side] {
			s.problem(n, "%s has no list %q; add one, with a row at least", section, side)
		}
	}
	return out
}

// hints reads the words that hint at an area. A word hints at one area only.
func (s source) hints(n *yaml.Node, area Area, into map[string]Area) {
	for _, item := range s.items(n, "hinted") {
		w := s.text(item, "each entry of hinted")
		if other, twice := into[w]; twice {
			s.problem(item, "%q hints at %s already; take it out of one of the two", w, other)
		}
		into[w] = area
	}
}

// scenes reads a list of scenes: "<raw then ready ! washed". Their cues stand
// above them in the file.
func (s source) scenes(n *yaml.Node, kind string, known []Labelled) []Scene {
	var out []Scene
	for _, item := range s.items(n, kind+" scene") {
		scene := Scene{Kind: kind}
		unless, then, either := false, false, false
		for _, name := range strings.Fields(s.text(item, "a scene")) {
			switch name {
			case "!", "!!":
				unless, scene.DespiteUnless = true, name == "!!"
				continue
			case "then":
				then = true
				continue
			case "either":
				either = true
				continue
			}
			cue, earlier := strings.CutPrefix(name, "<")
			if !slices.ContainsFunc(known, func(l Labelled) bool { return l.Label == kind && l.Step == CueStep(cue) }) {
				s.problem(item, "no cue of %s is called %q; list it under cue, above the scenes", kind, cue)
			}
			if unless {
				scene.Unless = append(scene.Unless, CueStep(cue))
				continue
			}
			scene.Parts = append(scene.Parts, ScenePart{Cue: CueStep(cue), Earlier: earlier, Then: then})
			then = false
		}
		if len(scene.Parts) < 2 {
			s.problem(item, "a scene needs two cues at least; write one as a sign")
		}
		out = append(out, scene)
		if either && len(scene.Parts) >= 2 {
			out = append(out, scene.otherOrder())
		}
	}
	return out
}

// otherOrder is the scene with the cues of its first two parts told the other
// way about: what "either <ban use lapse" means besides "<ban use lapse".
func (s Scene) otherOrder() Scene {
	s.Parts = slices.Clone(s.Parts)
	s.Parts[0].Cue, s.Parts[1].Cue = s.Parts[1].Cue, s.Parts[0].Cue
	return s
}

// withGroups puts the words of a group in the place of its name: "$body" is
// what the file lists under "groups: body".
func (s source) withGroups(n *yaml.Node, pattern string) string {
	return groupName.ReplaceAllStringFunc(pattern, func(name string) string {
		words, ok := s.groups[name[1:]]
		if !ok {
			s.problem(n, "no group of words is called %q; list it under groups, above the patterns that use it", name[1:])
			return name
		}
		return words
	})
}

var groupName = regexp.MustCompile(`\$[a-z]+`)
