package sensory

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/stat/distuv"
)

// Method is a way to ask tasters for a difference between two samples.
type Method int

// The methods.
const (
	Triangle Method = iota // three glasses, two of one sample: which is the odd one?
	DuoTrio                // a reference and two glasses: which one is like the reference?
	Tetrad                 // four glasses, two of each sample: which two belong together?
	Paired                 // two glasses: which one has more of a named property?
)

// String names the method.
func (m Method) String() string {
	switch m {
	case Triangle:
		return "triangle"
	case DuoTrio:
		return "duo-trio"
	case Tetrad:
		return "tetrad"
	case Paired:
		return "paired comparison"
	}
	return fmt.Sprintf("Method(%d)", int(m))
}

func (m Method) check(function string) error {
	if m < Triangle || m > Paired {
		return fmt.Errorf("%s: there is no method %d; take Triangle, DuoTrio, Tetrad or Paired", function, int(m))
	}
	return nil
}

// GuessPct returns how many of those who only guess are right, in per cent.
func (m Method) GuessPct() float64 { return 100 * m.guess() }

func (m Method) guess() float64 {
	if m == Triangle || m == Tetrad {
		return 1.0 / 3
	}
	return 0.5
}

// farthest is the d′ beyond which nobody is wrong to the precision of a float64, dimensionless.
const farthest = 30

// right returns the share of right answers for a sensory difference of d standard deviations, d from 0 up: the
// psychometric function of the method. Φ and φ are the normal distribution and its density.
//
// Source: J. M. Ennis, B. Ennis, D. Yip, M. O'Mahony, British Journal of Mathematical and Statistical Psychology 51
// (1998) 205–215, and J. M. Ennis, V. Jesionka, Journal of Sensory Studies 26 (2011) 371–382 (tetrad); formulas from
// memory, checked against printed values.
func (m Method) right(d float64) float64 {
	phi, density := distuv.UnitNormal.CDF, distuv.UnitNormal.Prob
	switch m {
	case Triangle:
		return 2 * integral(0, 9, func(z float64) float64 {
			return (phi(-z*math.Sqrt(3)+d*math.Sqrt(2.0/3)) + phi(-z*math.Sqrt(3)-d*math.Sqrt(2.0/3))) * density(z)
		})
	case DuoTrio:
		a, b := phi(d/math.Sqrt2), phi(d/math.Sqrt(6))
		return 1 - a - b + 2*a*b
	case Tetrad:
		return 1 - 2*integral(-9, 9, func(x float64) float64 {
			return density(x) * phi(x-d) * (2*phi(x) - phi(x-d))
		})
	default:
		return phi(d / math.Sqrt2)
	}
}

// dPrime returns the d′ at which a share of right answers is expected, dimensionless: 0 for guessing or less, +Inf for a
// share of 1.
func (m Method) dPrime(share float64) float64 {
	switch {
	case share <= m.guess():
		return 0
	case share >= 1:
		return math.Inf(1)
	}
	low, high := 0.0, float64(farthest)
	for range 200 {
		mid := low + (high-low)/2
		if mid == low || mid == high {
			break
		}
		if m.right(mid) < share {
			low = mid
		} else {
			high = mid
		}
	}
	return low + (high-low)/2
}
