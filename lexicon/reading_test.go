package lexicon

import (
	"io/fs"
	"path"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestProblemsOfTheReadingFiles puts something wrong before a file's own words
// and expects to be told where it stands and how to mend it.
func TestProblemsOfTheReadingFiles(t *testing.T) {
	for _, c := range []struct {
		what, file, text, want string
	}{
		{"words that judge without a side", "vague.yaml", "judges:\n  - lovely\n", `vague.yaml:2:3: the rows of judges do not say whether they praise or blame; put each under "praise:" or "blame:"`},
		{"words that judge under another name", "vague.yaml", "judges:\n  praise: [lovely]\n  blame: [grim]\n  meh: [ok]\n", `vague.yaml:4:3: judges has no list "meh"; a word that judges stands under praise or blame`},
		{"one side alone", "vague.yaml", "slang:\n  praise: [peng]\n", `slang has no list "blame"; add one, with a row at least`},
		{"a hint of two areas", "areas.yaml", "taste:\n  hinted: [tap]\ntexture:\n  hinted: [tap]\n", `areas.yaml:4:12: "tap" hints at taste already; take it out of one of the two`},
		{"an area that there is none of", "areas.yaml", "mood:\n  named: [glad]\n", `no area is called "mood"`},
		{"a scene of an unknown cue", "cautions.yaml", "injury:\n  cue:\n    hot: [tray]\n  scene:\n    - hot cold\n", `no cue of injury is called "cold"; list it under cue, above the scenes`},
		{"a scene of one cue", "cautions.yaml", "injury:\n  cue:\n    hot: [tray]\n  scene:\n    - hot\n", "a scene needs two cues at least; write one as a sign"},
	} {
		t.Run(c.what, func(t *testing.T) {
			_, problems := parsedReading(t, path.Join("reading", c.file), c.text)
			assert.Contains(t, problems.Error(), c.want)
		})
	}
}

// TestAScene reads one scene with everything a scene may have.
func TestAScene(t *testing.T) {
	r, problems := parsedReading(t, "reading/cautions.yaml",
		"injury:\n  cue:\n    hot: [tray]\n    bare: [fingers]\n    gloved: [gloves]\n  scene:\n    - <hot then bare ! gloved\n")
	require.Empty(t, problems)
	assert.Equal(t, []Scene{{
		Kind:   "injury",
		Parts:  []ScenePart{{Cue: CueStep("hot"), Earlier: true}, {Cue: CueStep("bare"), Then: true}},
		Unless: []string{CueStep("gloved")},
	}}, r.Scenes)
}

// TestASceneInEitherOrder: "either" lets the first two cues change places, and
// "!!" keeps the kind's own "unless" rows out of it.
func TestASceneInEitherOrder(t *testing.T) {
	r, problems := parsedReading(t, "reading/cautions.yaml",
		"injury:\n  cue:\n    hot: [tray]\n    bare: [fingers]\n    red: [blister]\n    gloved: [gloves]\n  scene:\n    - either <hot bare red !! gloved\n    - hot bare ! gloved\n")
	require.Empty(t, problems)
	require.Len(t, r.Scenes, 3)
	assert.Equal(t, []ScenePart{{Cue: CueStep("hot"), Earlier: true}, {Cue: CueStep("bare")}, {Cue: CueStep("red")}}, r.Scenes[0].Parts)
	assert.Equal(t, []ScenePart{{Cue: CueStep("bare"), Earlier: true}, {Cue: CueStep("hot")}, {Cue: CueStep("red")}}, r.Scenes[1].Parts)
	assert.Equal(t, []ScenePart{{Cue: CueStep("hot")}, {Cue: CueStep("bare")}}, r.Scenes[2].Parts, "without it there is one order")
	for i, want := range []bool{true, true, false} {
		assert.Equal(t, want, r.Scenes[i].DespiteUnless, "scene %d", i)
		assert.Equal(t, []string{CueStep("gloved")}, r.Scenes[i].Unless, "scene %d", i)
	}
}

// parsedReading reads the built-in reading files with one of them in other words.
func parsedReading(t *testing.T, name, text string) (*Reading, Problems) {
	t.Helper()
	files := fstest.MapFS{}
	require.NoError(t, fs.WalkDir(builtin, "builtin/reading", func(p string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		data, err := fs.ReadFile(builtin, p)
		files[path.Join("reading", path.Base(p))] = &fstest.MapFile{Data: data}
		return err
	}))
	require.Contains(t, files, name)
	files[name] = &fstest.MapFile{Data: []byte(text)}
	var problems Problems
	r, err := parseReading(files, &problems)
	require.NoError(t, err)
	return r, problems
}
