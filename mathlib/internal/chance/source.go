package chance

import (
	"math"
	"math/bits"
)

// Source is a stream of pseudo-random numbers. It is not safe for use by several goroutines at once.
type Source struct{ s [4]uint64 }

// New returns the stream that belongs to a seed; every seed is a good one, 0 too.
//
// Source: D. Blackman, S. Vigna, Scrambled linear pseudorandom number generators, ACM Transactions on Mathematical
// Software 47 (2021) 36, which starts the generator by SplitMix64 (G. L. Steele, D. Lea, C. H. Flood, OOPSLA 2014).
func New(seed uint64) *Source {
	var c Source
	for i := range c.s {
		c.s[i] = splitMix(&seed)
	}
	return &c
}

// splitMix returns the next number of SplitMix64.
func splitMix(x *uint64) uint64 {
	*x += 0x9e3779b97f4a7c15
	z := *x
	z = (z ^ z>>30) * 0xbf58476d1ce4e5b9
	z = (z ^ z>>27) * 0x94d049bb133111eb
	return z ^ z>>31
}

// Uint64 returns the next 64 bits.
func (c *Source) Uint64() uint64 {
	s := &c.s
	out := bits.RotateLeft64(s[0]+s[3], 23) + s[0]
	t := s[1] << 17
	s[2] ^= s[0]
	s[3] ^= s[1]
	s[1] ^= s[2]
	s[0] ^= s[3]
	s[2] ^= t
	s[3] = bits.RotateLeft64(s[3], 45)
	return out
}

// Unit returns a number between 0 and 1, evenly spread, dimensionless. It is never 0 and never 1, so it may be handed to
// the quantile function of a distribution without ends.
func (c *Source) Unit() float64 { return (float64(c.Uint64()>>12) + 0.5) * (1.0 / (1 << 52)) }

// Normal returns a number that is normally distributed with mean 0 and standard deviation 1, dimensionless. Each takes
// one draw of the stream, so a change of one input of a simulation leaves the draws of the others alone.
func (c *Source) Normal() float64 { return math.Sqrt2 * math.Erfinv(2*c.Unit()-1) }

// Below returns a whole number from 0 to n-1, each as likely as the others. It panics if n is not above 0.
func (c *Source) Below(n int) int {
	if n <= 0 {
		panic("chance: Below needs a number above 0")
	}
	// The high word of a product spreads 64 bits over n; the few low words that would favour some numbers are drawn again.
	unfair := -uint64(n) % uint64(n)
	for {
		high, low := bits.Mul64(c.Uint64(), uint64(n))
		if low >= unfair {
			return int(high)
		}
	}
}

// Shuffle brings n things into a random order, each order as likely as the others; swap exchanges two of them.
func (c *Source) Shuffle(n int, swap func(i, j int)) {
	for i := n - 1; i > 0; i-- {
		swap(i, c.Below(i+1))
	}
}
