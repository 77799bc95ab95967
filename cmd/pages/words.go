package pages

import (
	"net/http"
	"net/url"
	"sync"

	"saywhy/cmd/handout"
	"saywhy/lexicon"
)

// wordsPage is the word list of a dish type for one sense, and the words that
// fit what was noticed.
type wordsPage struct {
	frame
	Dish   string // the short name of the type; "" for any dish
	Cooked string // its title
	Kinds  []kindGroup
	Senses []senseLink
	Sense  lexicon.Sense
	Moment string
	Scales []handout.SheetScale
	Words  []lexicon.Word
	Others int    // how many words for other food there are besides
	All    bool   // those are shown as well
	More   string // the address with them, or without
	Size   string // the address in the other size of print
	Print  string // the address of the page to print

	Noticed string
	Found   []foundWord
	Looked  bool // something was looked for
}

type senseLink struct {
	Sense lexicon.Sense
	Path  string
	Here  bool
	Count int
}

type foundWord struct {
	lexicon.Word
	Senses string
}

// foundAtOnce is how many words a search shows.
const foundAtOnce = 8

// wordsQuery is which words to show. All of it may stand in an address: it is
// chosen from lists, and nothing anybody wrote.
type wordsQuery struct {
	dish  string
	sense lexicon.Sense
	all   bool
	large bool
}

func (q wordsQuery) path() string {
	v := url.Values{}
	if q.dish != "" {
		v.Set("dish", q.dish)
	}
	v.Set("sense", string(q.sense))
	if q.all {
		v.Set("all", "yes")
	}
	if q.large {
		v.Set("print", "large")
	}
	return "/words?" + v.Encode()
}

// wordsQueryOf reads which words are wanted; what it does not know counts as
// not said.
func wordsQueryOf(shelf *Shelf, get func(string) string) (wordsQuery, lexicon.Dish) {
	q := wordsQuery{sense: lexicon.Sense(get("sense")), all: get("all") == "yes", large: get("print") == "large"}
	if !q.sense.Known() {
		q.sense = lexicon.Sight
	}
	dish := shelf.Lexicon.General()
	if name := line(get("dish")); name != "" {
		if d, _, err := shelf.Course.Cooked(shelf.Lexicon, name); err == nil {
			dish, q.dish = d, name
		}
	}
	return q, dish
}

func (s *site) words(w http.ResponseWriter, r *http.Request) {
	shelf := s.library.Current()
	q, dish := wordsQueryOf(shelf, r.URL.Query().Get)
	s.show(w, r, http.StatusOK, "words", s.wordsPage(r, shelf, q, dish))
}

// findWords looks for words by what was noticed. That is somebody's own words,
// so it comes in the body and not in the address.
func (s *site) findWords(w http.ResponseWriter, r *http.Request) {
	if err := parse(r); err != nil {
		s.failForm(w, r, err)
		return
	}
	shelf := s.library.Current()
	q, dish := wordsQueryOf(shelf, r.PostFormValue)
	p := s.wordsPage(r, shelf, q, dish)
	p.Noticed = line(r.PostFormValue("noticed"))
	p.Looked = true
	var finder *lexicon.Finder
	if q.dish != "" {
		finder = lexicon.NewFinder(dish.Words)
	} else {
		finder = s.finders.all(shelf.Lexicon)
	}
	for _, f := range finder.Find(p.Noticed, foundAtOnce) {
		senses := string(f.Word.Sense)
		for _, also := range f.Also {
			senses += " or " + string(also)
		}
		p.Found = append(p.Found, foundWord{f.Word, senses})
	}
	s.show(w, r, http.StatusOK, "words", p)
}

// finders keeps what finds words of any dish, which takes longest to make.
type finders struct {
	mu     sync.Mutex
	lex    *lexicon.Lexicon
	finder *lexicon.Finder
}

// all returns the finder of a lexicon, made when it is first asked for.
func (f *finders) all(lex *lexicon.Lexicon) *lexicon.Finder {
	f.mu.Lock()
	defer f.mu.Unlock()
	if f.lex != lex {
		f.lex, f.finder = lex, lexicon.NewFinder(lex.Words())
	}
	return f.finder
}

func (s *site) wordsPage(r *http.Request, shelf *Shelf, q wordsQuery, dish lexicon.Dish) wordsPage {
	p := wordsPage{
		frame: s.frame(r, shelf, "/words", "Words for what you notice"),
		Dish:  q.dish, Kinds: kinds(shelf, q.dish), Sense: q.sense, Moment: dish.Moments[q.sense], All: q.all,
	}
	p.Large = q.large
	if q.dish != "" {
		p.Cooked = dish.Title
		p.Title += ": " + dish.Title
	}
	for _, sense := range lexicon.Senses() {
		typical, _ := dish.Typical(sense)
		there := q
		there.sense, there.all = sense, false
		p.Senses = append(p.Senses, senseLink{sense, there.path(), sense == q.sense, len(typical)})
	}
	typical, other := dish.Typical(q.sense)
	p.Words, p.Others = typical, len(other)
	if q.all {
		p.Words = dish.BySense(q.sense)
	}
	for _, scale := range handout.Scales(p.Words) {
		if steps := scale.Words(" or "); len(steps) > 1 {
			p.Scales = append(p.Scales, handout.SheetScale{Name: scale.Name, Steps: steps})
		}
	}
	more, size := q, q
	more.all, size.large = !q.all, !q.large
	p.More, p.Size, p.Print = more.path(), size.path(), printWordsPath(q.dish)
	return p
}
