package lexicon

import (
	"slices"
	"strings"
)

// kinOf returns, for the root of an everyday word, the roots of those it
// stands for when people tell what they noticed in food.
func kinOf() map[string][]string {
	out := map[string][]string{}
	for _, group := range kinGroups() {
		said, meant, _ := strings.Cut(group, ":")
		for _, a := range strings.Fields(said) {
			denied := ""
			if plain, ok := strings.CutPrefix(a, not); ok {
				a, denied = plain, not
			}
			for _, b := range strings.Fields(meant) {
				x, y := denied+root(a), root(b)
				if x != y && !slices.Contains(out[x], y) {
					out[x] = append(out[x], y)
				}
			}
		}
	}
	return out
}

// kinGroups lists what people say before the colon and what they may be after
// behind it; "!rise" stands for "did not rise". Everyday English, written for this project.
func kinGroups() []string {
	return []string{
		"bit bits : piece crumb lump",
		"piece pieces chunk : bit chunky",
		"break broke breaks snap snaps : crisp brittle snap crumble",
		"crack cracks cracked : crisp brittle crunchy",
		"noise loud noisy : crunch crunchy snap",
		"crumb crumbs : crumbly",
		"apart bits : crumbly crumble",
		"ages long hours : chewy tough",
		"chew chewing jaw : chewy tough",
		"leather boot : tough leathery chewy",
		"fork knife bone : tender",
		"rubber : rubbery chewy",
		"bounce bounces poke press : springy",
		"bend bendy floppy droopy : limp bendy flexible",
		"cloud feather pillow : light fluffy soft",
		"air bubbles bubble : airy bubbly light",
		"hole holes : open airy holey",
		"heavy solid brick : dense heavy stodgy",
		"tummy stomach fills filling full : heavy stodgy filling",
		"wet damp : soggy moist",
		"soaked juice : soggy juicy",
		"middle centre : underdone",
		"uncooked undercooked : raw underdone",
		"drink thirsty water : dry watery",
		"dusty dust flour : powdery floury",
		"sand beach : gritty sandy",
		"chalk : chalky powdery",
		"lump lumps : lumpy",
		"cream custard : creamy smooth",
		"silk velvet : silky smooth velvety",
		"slip slippery slime slug : slimy slippery",
		"oil fat grease : greasy oily fatty",
		"film coat coats : coating greasy",
		"run runs ran pour poured drip dripped : runny thin",
		"spoon : thick coating",
		"stand stands hold held shape : stiff firm thick",
		"stick sticks stuck glue : sticky claggy",
		"teeth tooth roof : claggy chewy sticky",
		"fingers finger : sticky greasy",
		"melt melts melted : melting",
		"layer layers : flaky layered",
		"fall falls fell : crumbly tender",
		"mush squash squashed baby : mushy",
		"wobble wobbles shake shakes jelly : wobbly",
		"set : set firm",
		"juice juices : juicy moist succulent",
		"chilli spice kick burn burns fire : hot spicy fiery",
		"lip lips tingle tingles fizz : tingly fizzy",
		"lemon lemons orange : citrusy zesty sharp",
		"vinegar : vinegary sharp sour",
		"face pucker screw : sour tart sharp",
		"sugar : sweet sugary sickly",
		"ill sick : sickly",
		"salt : salty",
		"sea seaside : salty briny fishy",
		"nothing boring flavour : bland",
		"coffee nasty back : bitter",
		"stock gravy : savoury meaty",
		"bonfire smoke barbecue : smoky",
		"burn burning burned toast : burnt scorched",
		"black dark : burnt charred scorched dark",
		"brown : golden browned",
		"white colour : pale",
		"light reflect reflects glass mirror : glossy shiny",
		"shiny : glossy",
		"side sides higher : lopsided uneven sloping",
		"different size sizes : uneven",
		"sunk sank sink dip : sunken",
		"rise rose rising puffed puff : risen puffy",
		"round top hill : domed",
		"line lines split : cracked",
		"scrambled egg grainy : curdled",
		"separate separated : split separated curdled",
		"pink blood : pink underdone rare",
		"see through : clear transparent translucent",
		"bread yeast : yeasty bready",
		"butter : buttery",
		"off rotten bin mould : stale sour rancid",
		"old : stale",
		"herb herbs : herby",
		"nut nuts : nutty",
		"soil mud mushroom mushrooms woods : earthy mushroomy",
		"caramel toffee : caramelised toffee-like",
		"perfume flower flowers : floral fragrant",
		"mint : minty cooling",
		"cold : icy cool",
		"string strings thread threads : stringy",
		"stretch stretches pull pulls : stretchy",
		"ice : icy",
		"hard : crisp crunchy firm",
		"gum : chewy gummy",
		"fudge brownie : fudgy gooey squidgy",
		"rough : coarse rough",
		"big large : chunky large",
		"grain grains rice : fluffy separate",
		"ball clump clumps : sticky claggy clumped",
		"cardboard : dry bland",
		"strong : strong overpowering",
		"stay stays after : lingering",
		"metal coin : metallic",
		"garlic : garlicky",
		"onion onions : oniony",
		"cinnamon : spiced warm",
		"speck specks dots : speckled flecked",
		"skin : skin",
		"!rise !rose !rising !risen : flat dense heavy",
		"!colour !brown !browned : pale",
		"!cooked !done : raw underdone doughy",
		"!shiny !shine : dull matt",
		"!lump !lumps : smooth",
		"!dry : moist juicy",
		"!set : runny",
		"!salt !flavour !taste : bland",
		"!sugar !sweet : bitter sour",
		"!straight !level : lopsided uneven",
		"!fresh : stale",
		"!soft : hard firm",
		"!hard : soft tender",
		"leaf leaves lettuce salad : wilted limp",
	}
}
