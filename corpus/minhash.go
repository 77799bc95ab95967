package corpus

// The signature of a window has hashesPerBand hashes in each of bands bands.
// Two windows are paired when all hashes of one band agree: with probability
// 1-(1-J^hashesPerBand)^bands for the Jaccard similarity J of their shingles,
// which is .97 at J = .4, .56 at .2 and .18 at .1.
const (
	bands         = 20
	hashesPerBand = 2
	hashes        = bands * hashesPerBand
)

// signature is the MinHash signature of a set: under each of several random
// orders, the least of its members. The share of places in which two
// signatures agree estimates the Jaccard similarity J of the sets, with
// standard error sqrt(J(1-J)/k) for k places (Broder 1997).
type signature [hashes]uint32

// minHash returns the signature of a set that is given as hashes. Members may
// repeat. The empty set has the greatest signature there is.
func minHash(set []uint64) signature {
	var sig signature
	for i := range sig {
		least := uint32(1<<32 - 1)
		seed := mix(uint64(i))
		for _, s := range set {
			least = min(least, uint32(mix(s^seed)>>32))
		}
		sig[i] = least
	}
	return sig
}

// resemblance estimates the Jaccard similarity of two sets by their signatures.
func (s *signature) resemblance(t *signature) float64 {
	same := 0
	for i := range s {
		if s[i] == t[i] {
			same++
		}
	}
	return float64(same) / hashes
}

// jaccard returns the similarity of two sets exactly: the size of what they
// share by that of both together; 0 for two empty sets.
func jaccard(a, b []uint64) float64 {
	in := map[uint64]int{}
	for _, s := range a {
		in[s] |= 1
	}
	for _, s := range b {
		in[s] |= 2
	}
	both := 0
	for _, of := range in {
		if of == 3 {
			both++
		}
	}
	if len(in) == 0 {
		return 0
	}
	return float64(both) / float64(len(in))
}
