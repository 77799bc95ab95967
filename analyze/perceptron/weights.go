package perceptron

import (
	_ "embed"
	"errors"
)

// weightsFile holds the figures of prose's model. A test writes it from prose's
// own data and holds it to them. A number is a varint as encoding/binary has it,
// signed ones in zigzag; a list is its length and then its entries; a string is
// a list of bytes:
//
//	a list of the tags: a string each, those that the weights vote for first
//	how many tags are voted for
//	the row of the bias
//	a list of first bytes of a word: the byte, its row
//	for each tag its row before, and two before
//	a list of pairs of tags: the one before, the one two before, their row
//	a list of ends of words: a string, its rows here, before and after
//	a list of words: a string; one more than its fixed tag, or 0; its rows here,
//	    before, two before, after, two after; and a list of: the tag before, the
//	    row of both
//
// A row is one more than the number of its weights, and of each the tag and the
// signed thousandths; or 0 for a feature that the model does not know.
//
//go:embed weights.bin
var weightsFile string

// New reads the weights. It costs some milliseconds, so share the result. An
// error means that the embedded file is damaged, which the tests rule out.
func New() (*Tagger, error) { return parse(weightsFile) }

// parse makes a tagger of the content of a file of weights.
func parse(data string) (*Tagger, error) {
	t := &Tagger{weights: make([]int32, 1, 1<<18+1<<14)} // so that no row is 0
	in := reader{rest: data}
	for range in.length() {
		t.tags = append(t.tags, in.string())
	}
	t.classes = in.number(min(len(t.tags), lowMask) + 1)
	t.bias = t.row(&in)
	for range in.length() {
		first := in.number(len(t.firsts))
		t.firsts[first] = t.row(&in)
	}
	tags := len(t.tags)
	t.before, t.before2, t.both = make([]row, tags), make([]row, tags), make([]row, tags*tags)
	for i := range t.tags {
		t.before[i] = t.row(&in)
		t.before2[i] = t.row(&in)
	}
	for range in.length() {
		prev, prev2 := in.number(tags), in.number(tags)
		if r := t.row(&in); !in.bad {
			t.both[prev*tags+prev2] = r
		}
	}
	t.behind = make([]scores, tags*tags)
	for i := range t.behind {
		for _, r := range [...]row{t.bias, t.before[i/tags], t.before2[i%tags], t.both[i]} {
			t.add(&t.behind[i], r)
		}
	}
	n := in.length()
	t.ends = make(map[uint32]ends, n)
	for range n {
		end := endOf(in.string())
		t.ends[end] = ends{t.row(&in), t.row(&in), t.row(&in)}
	}
	n = in.length()
	t.words = make(map[string]int32, n)
	t.known = make([]word, 1, n+1)
	t.known[0].fixed = open
	for range n {
		name := in.string()
		t.words[name] = int32(len(t.known))
		w := word{fixed: tag(in.number(tags+1)) - 1, ends: t.ends[endOf(name)]} // no fixed tag: open
		w.here, w.before, w.before2, w.after, w.after2 = t.row(&in), t.row(&in), t.row(&in), t.row(&in), t.row(&in)
		w.tagged = int32(len(t.tagged))
		for range in.length() {
			t.tagged = append(t.tagged, taggedRow{tag(in.number(tags)), t.row(&in)})
		}
		w.tagEnd = int32(len(t.tagged))
		t.known = append(t.known, w)
	}
	ok := !in.bad && in.rest == "" && tags < int(open) && t.classes > 0
	for _, special := range []struct {
		tag  *tag
		name string
	}{{&t.start, "-START-"}, {&t.start2, "-START2-"}, {&t.empty, ""}, {&t.dash, "-"}, {&t.trace, "-NONE-"}, {&t.noun, "NN"}} {
		found := false
		for i, name := range t.tags {
			if name == special.name {
				*special.tag, found = tag(i), true
			}
		}
		ok = ok && found
	}
	if !ok {
		return nil, errors.New("perceptron: the file of weights is damaged; take weights.bin as it was published and build again")
	}
	t.outerLeft = [2]seen{t.look("-START-"), t.look("-START2-")}
	t.outerRight = [2]seen{t.look("-END-"), t.look("-END2-")}
	return t, nil
}

// row reads a row and adds its weights to the tagger's.
func (t *Tagger) row(in *reader) row {
	n := in.number(lowMask + 1)
	if n == 0 {
		return 0
	}
	r := row(len(t.weights)<<lowBits | n - 1)
	for range n - 1 {
		class := in.number(t.classes)
		t.weights = append(t.weights, in.signed()<<lowBits|int32(class))
	}
	return r
}

// reader reads a file of weights. From the first thing on that cannot be, all
// it reads is nought and bad is true.
type reader struct {
	rest string
	bad  bool
}

func (r *reader) uint() uint32 {
	var n uint32
	for i := 0; i < len(r.rest) && i < 4; i++ {
		b := r.rest[i]
		n |= uint32(b&0x7f) << (7 * i)
		if b < 0x80 {
			r.rest = r.rest[i+1:]
			return n
		}
	}
	r.rest, r.bad = "", true
	return 0
}

// number reads a number that is less than a limit.
func (r *reader) number(limit int) int {
	n := int(r.uint())
	if n >= limit {
		r.rest, r.bad = "", true
		return 0
	}
	return n
}

func (r *reader) signed() int32 {
	n := r.uint()
	return int32(n>>1) ^ -int32(n&1)
}

// length reads the length of a list, whose entries take a byte each at least.
func (r *reader) length() int { return r.number(len(r.rest) + 1) }

func (r *reader) string() string {
	n := r.length()
	if r.bad {
		return ""
	}
	s := r.rest[:n]
	r.rest = r.rest[n:]
	return s
}
