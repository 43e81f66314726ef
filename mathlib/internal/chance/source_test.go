package chance

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/stat/distuv"
)

// The first ten outputs from the state (0, 0, 0, 1). Source: table of outputs of the authors' reference program
// xoshiro256plusplus.c in the test notes of a Fortran translation of it (repository DSCF-1224/xoshiro-fortran).
var published = []uint64{
	0x0000000000800000, 0x0000000000800011, 0x0002200000800011, 0x0002200044000020, 0x00022000448008A1,
	0x01102100802208A0, 0x0114002284200880, 0x0402896644A64095, 0x8A14A0A244ACC891, 0x8C88BA4680B20495,
}

func TestPublishedStream(t *testing.T) {
	c := Source{[4]uint64{0, 0, 0, 1}}
	for i, want := range published {
		if got := c.Uint64(); got != want {
			t.Errorf("output %d = %#016x; the reference program gives %#016x", i+1, got, want)
		}
	}
}

// Source: the outputs of SplitMix64 for the seed 1234567 that are widely used to check translations of it; from memory.
func TestPublishedStart(t *testing.T) {
	x := uint64(1234567)
	for i, want := range []uint64{6457827717110365317, 3203168211198807973, 9817491932198370423, 4593380528125082431, 16408922859458223821} {
		if got := splitMix(&x); got != want {
			t.Errorf("output %d = %d; want %d", i+1, got, want)
		}
	}
}

func TestUnitStaysInside(t *testing.T) {
	low, high := (float64(uint64(0)>>12)+0.5)*(1.0/(1<<52)), (float64(uint64(math.MaxUint64)>>12)+0.5)*(1.0/(1<<52))
	if low <= 0 || high >= 1 {
		t.Errorf("the ends of Unit are %g and %g; they must lie inside 0 and 1", low, high)
	}
	if n := math.Sqrt2 * math.Erfinv(2*low-1); math.IsInf(n, 0) || n > -8 {
		t.Errorf("the normal number of the smallest draw is %g; want a finite one below -8", n)
	}
}

// Chi-square over 20 equally likely classes: 19 degrees of freedom, so beyond 43.8 once in 1000 and below 5.4 once in 1000.
func TestEvenlySpread(t *testing.T) {
	const n, classes = 200_000, 20
	c := New(7)
	for name, draw := range map[string]func() float64{
		"Unit":   c.Unit,
		"Normal": func() float64 { return distuv.UnitNormal.CDF(c.Normal()) },
		"Below":  func() float64 { return (float64(c.Below(400)) + 0.5) / 400 },
	} {
		var count [classes]int
		for range n {
			count[int(draw()*classes)]++
		}
		var chi float64
		for _, k := range count {
			d := float64(k) - n/classes
			chi += d * d / (n / classes)
		}
		if chi > 43.8 || chi < 5.4 {
			t.Errorf("%s: chi-square of %d draws over %d classes is %.1f; want 5.4 to 43.8", name, n, classes, chi)
		}
	}
}

func TestShuffleReachesEveryOrder(t *testing.T) {
	c := New(3)
	const n = 24_000
	seen := map[[4]int]int{}
	for range n {
		order := [4]int{0, 1, 2, 3}
		c.Shuffle(4, func(i, j int) { order[i], order[j] = order[j], order[i] })
		seen[order]++
	}
	if len(seen) != 24 {
		t.Fatalf("%d orders of four things came up; want 24", len(seen))
	}
	for order, k := range seen {
		if k < 850 || k > 1150 { // 1000 ± 4.8 standard deviations
			t.Errorf("the order %v came up %d times in %d; want about 1000", order, k, n)
		}
	}
}

func TestSameSeedSameNumbers(t *testing.T) {
	a, b, other := New(42), New(42), New(43)
	same := 0
	for range 1000 {
		x := a.Uint64()
		if y := b.Uint64(); x != y {
			t.Fatalf("two streams of one seed differ: %d and %d", x, y)
		}
		if x == other.Uint64() {
			same++
		}
	}
	if same > 0 {
		t.Errorf("streams of two seeds share %d of 1000 numbers", same)
	}
}

func BenchmarkNormal(b *testing.B) {
	c := New(1)
	for b.Loop() {
		c.Normal()
	}
}

func BenchmarkUnit(b *testing.B) {
	c := New(1)
	for b.Loop() {
		c.Unit()
	}
}
