package lexicon

import (
	"slices"
	"strings"
	"sync"
)

// kinOf returns, for the root of an everyday word, the roots of those it
// stands for when people tell what they noticed in food, the likeliest first;
// and by the root of their first word, what turns of speech stand for.
func kinOf() (kin map[string][]string, sayings map[string][]*saying) {
	kin, sayings = map[string][]string{}, map[string][]*saying{}
	rootOf := rootsOnce()
	for _, group := range slices.Concat(saidGroups(), turnGroups(), causeGroups(), kinGroups()) {
		said, meant, _ := strings.Cut(group, " : ")
		var terms []string
		for _, b := range strings.Fields(meant) {
			if t := asWhole(termsBy(b, rootOf)); t != "" && !slices.Contains(terms, t) {
				terms = append(terms, t)
			}
		}
		for _, a := range strings.Fields(said) {
			if strings.ContainsAny(a, "+&") {
				s := &saying{readTurn(a, rootOf), terms}
				for _, words := range s.parts[0][0] {
					sayings[words[0]] = append(sayings[words[0]], s)
				}
				continue
			}
			denied := ""
			if plain, ok := strings.CutPrefix(a, not); ok {
				a, denied = plain, not
			}
			x := denied + rootOf(a)
			for _, t := range terms {
				if x != t && !slices.Contains(kin[x], t) {
					kin[x] = append(kin[x], t)
				}
			}
		}
	}
	return kin, sayings
}

// everydayKin is kinOf, worked out once: it is the same for every list.
var everydayKin = sync.OnceValues(kinOf)

// saying is a turn of speech, and the terms of what it stands for. Its parts may
// stand anywhere in what was noticed.
type saying struct {
	parts []turn
	meant []string
}

// turn is a row of words that come in order and near each other, each any of
// several, by their roots; what stands for one of them may be several words.
type turn [][][]string

// readTurn reads a turn of speech as it is written down: its parts are joined
// with &, the words of a part with +; where words are parted by /, any of them
// will do, and ~ joins those of which one is several words.
func readTurn(pattern string, rootOf func(string) string) []turn {
	var out []turn
	for _, part := range strings.Split(pattern, "&") {
		var t turn
		for _, place := range strings.Split(part, "+") {
			var anyOf [][]string
			for _, a := range strings.Split(place, "/") {
				words := strings.Split(a, "~")
				for i, w := range words {
					words[i] = rootOf(w)
				}
				anyOf = append(anyOf, words)
			}
			t = append(t, anyOf)
		}
		out = append(out, t)
	}
	return out
}

// heard is a turn of speech in what was noticed.
type heard struct {
	*saying
	words  []string // the roots that make it up
	weight float64
}

// lesserWeight is the weight of a turn of speech within a longer one: "no
// flavour" in "no flavour was stronger than the others".
const lesserWeight = 0.4

// said returns the turns of speech in what was noticed, and the roots of the
// words that make them up.
func (f *Finder) said(noticed string) (out []heard, taken map[string]bool) {
	var roots []string
	for _, w := range saidWords(noticed) {
		roots = append(roots, root(w))
	}
	taken = map[string]bool{}
	met := map[*saying]bool{}
	for _, r := range roots {
		for _, s := range f.sayings[r] {
			if met[s] {
				continue
			}
			met[s] = true
			if words := s.in(roots); words != nil {
				out = append(out, heard{s, words, 1})
				for _, w := range words {
					taken[w] = true
				}
			}
		}
	}
	for i, s := range out {
		for _, longer := range out {
			if allIn(longer.words, s.words) && !allIn(s.words, longer.words) {
				out[i].weight = lesserWeight
				break
			}
		}
	}
	return out, taken
}

// allIn reports whether all words are in a list.
func allIn(list, words []string) bool {
	for _, w := range words {
		if !slices.Contains(list, w) {
			return false
		}
	}
	return true
}

// in returns the roots that make up a turn of speech, none if it is not there.
func (s *saying) in(roots []string) []string {
	var words []string
	for _, t := range s.parts {
		var has []string
		for i := 0; i < len(roots) && has == nil; i++ {
			has = t.at(roots[i:], 0)
		}
		if has == nil {
			return nil
		}
		words = append(words, has...)
	}
	return words
}

// at returns the roots that make up a turn whose first word stands at most
// reach words on, none if it does not.
func (t turn) at(roots []string, reach int) []string {
	if len(t) == 0 {
		return []string{}
	}
	for i := 0; i < min(len(roots), reach+1); i++ {
		for _, words := range t[0] {
			if !slices.Equal(words, roots[i:min(len(roots), i+len(words))]) {
				continue
			}
			if rest := t[1:].at(roots[i+len(words):], sayReach); rest != nil {
				return append(rest, words...)
			}
		}
	}
	return nil
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
		"ages hours : chewy tough",
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
		"nothing boring : bland",
		"coffee nasty : bitter",
		"stock gravy : savoury meaty",
		"bonfire smoke barbecue : smoky",
		"burn burning burned toast : burnt scorched",
		"black dark : burnt charred scorched dark",
		"brown : golden browned",
		"white : pale",
		"light reflect reflects glass mirror : glossy shiny",
		"shiny : glossy",
		"side sides higher : lopsided uneven sloping",
		"different size sizes : uneven",
		"sunk sank sink dip : sunken",
		"rise rose rising puffed puff : risen puffy",
		"hill : domed",
		"line lines split : cracked",
		"scrambled egg grainy : curdled",
		"separate separated : split separated curdled",
		"pink blood : pink underdone rare",
		"bread yeast : yeasty bready",
		"butter : buttery",
		"rotten bin mould : stale sour rancid",
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
		"fudge : fudgy gooey squidgy",
		"rough : coarse rough",
		"big large : chunky large",
		"grain grains : fluffy separate",
		"ball clump clumps : sticky claggy clumped",
		"cardboard : dry bland",
		"strong : strong overpowering",
		"stay stays after : lingering aftertaste",
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
		"hear heard sound sounds : crunchy crackly snappy crispy",
		"slid slide slides glide glides : smooth slippery silky",
		"thirsty : salty dry",
		"wince squint : sour sharp",
		"covers covered hides hid drowns drowned : overpowering strong",
		"street house filled : wafting strong fragrant",
		"socks feet dog cellar : musty stinky pongy",
		"bin : rotten stinky rancid",
		"!smell : odourless faint",
		"stone rock : hard",
		"tyre shoe shoes sole boots : tough rubbery leathery",
		"wool : dry woolly",
		"grass lawn : grassy green fresh",
		"hospital medicine cough : medicinal chemical",
		"soap shampoo washing : soapy",
		"petrol paint plastic : chemical plasticky",
		"ash match matches : smoky burnt acrid",
		"wine beer : boozy",
		"puddle pool leaks leaked : watery weeping runny leaking",
		"crisps : crunchy salty",
		"sponge : spongy springy airy",
		"marshmallow : fluffy marshmallowy",
		"paste wallpaper : gluey claggy pasty",
		"mud : sludgy muddy",
		"snow frost freezer : icy frosty",
		"needles pins : prickly tingly",
		"numb numbs : numbing",
		"ache aches : sickly sweet",
		"pinch : under-seasoned under-salted",
		"fluff hairs peach : furry",
		"balloon : puffy puffed",
		"tower : lopsided tall",
		"tidy ruler same : even neat identical",
		"freckles spot spots : speckled spotty flecked",
		"stripe stripes zebra : striped",
		"rainbow : colourful",
		"coal : black burnt charred",
		"ghost : pale white",
		"wrinkles wrinkly : wrinkled",
		"burst bursts pop pops : juicy bursts",
		"block : set firm dense",
		"swallow throat : dry claggy",
		"tickle tickles : fizzy tingly",
		"seed seeds pip pips : seedy",
		"grit : gritty",
		"dissolve dissolves disappear disappears vanish vanishes : melting",
		"blended mash mashed : smooth mushy",
		"cling clings grips : sticky clinging claggy",
		"hits punch : hot spicy punchy",
		"basil thyme rosemary parsley oregano : herby",
		"cumin curry turmeric : spicy spiced",
		"nutmeg ginger : spiced warm",
		"honey syrup : sticky syrupy honeyed",
		"roast beef : meaty beefy roasty",
		"sweets candy : sugary sweet",
		"sock wardrobe attic : musty",
		"drain drains : drain-like stinky",
		"wood stick sticks : woody",
		"lightning sherbet : sherbetty fizzy",
		"tin : metallic",
		"cement concrete : stodgy heavy",
		"mirror face : glossy shiny",
		"gummed cemented : claggy gummy",
		"droops drooping sad : limp wilted droopy",
		"sprang springs spring : springy",
		"squeezed squeeze : juicy springy",
		"squirts squirted : juicy",
		"!stick !stuck : loose separate",
		"!bend !bent : stiff rigid brittle",
		"!move !run !moving : set thick stiff",
		"!smooth : lumpy grainy rough",
		"!strong : mild weak faint",
		"!light : heavy dense",
		"!heavy : light airy",
		"!thick : thin runny",
		"!runny : thick set",
		"!even : uneven patchy",
		"!wet : dry",
		"!crunch !crisp !snap !crunchy !crispy : soft soggy limp stale",
		"!bounce !spring : dense flat",
		"!juicy : dry",
		"!chewy : tender soft",
		"!greasy !oily : light clean",
		"!spicy !hot : mild",
		"!cut !chew !swallow : tough hard",
		"!clear : cloudy murky",
		"!round : misshapen uneven",
		"noise : squeaky",
		"solid : set",
		"gap gaps : holey open",
		"swirl swirls : marbled rippled swirly",
		"massive enormous giant : huge large risen",
		"grandad gran grandma nan : wrinkled",
		"gag gags gagged bad : rotten rancid sour",
		"fart farts : eggy sulphury pongy",
		"cough coughs : pungent acrid",
		"nose : pungent sharp",
		"thread threads : stringy fibrous",
		"leaves sheets pages : flaky layered",
		"glass jewel : clear translucent",
		"cuddle cuddles blanket : warming comforting",
		"hair hairs : stringy hairy",
		"elastic : stretchy springy rubbery",
		"teabag tea : tannic bitter",
		"spit saliva : dry",
		"fight resistance : chewy firm",
		"harbour harbor beach tide : fishy salty briny",
		"crayons paints confetti : colourful vibrant",
		"sun sunny sunshine : golden yellow",
		"pond puddles : murky watery",
		"fur mould mold growing : mouldy furry",
		"toddler baby babies : mild mushy",
		"suck sucks sucked : dry",
		"leaf leaves lettuce salad : wilted limp",
	}
}
