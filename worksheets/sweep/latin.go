package sweep

import (
	"fmt"
	"math"
	"math/bits"
	"math/rand/v2"
	"strconv"

	"swanneck/worksheets/inputs"
)

// NewLatin draws n scenarios as a Latin hypercube: the range of each input is parted into n strata of one width, and each
// stratum holds one scenario, somewhere in it; which strata come together is left to chance. The values of a list take
// equal shares of the strata, as nearly as n allows. The same seed draws the same. A figure is rounded to a thousandth of
// its stratum, and stays in it. The rest is as for NewGrid.
//
// Source: McKay, Beckman and Conover (1979), Technometrics 21(2), 239–245 (citation from memory).
func NewLatin(set *inputs.Set, vary []string, n int, seed int64, folder string, most int) (*Plan, error) {
	list, err := parseAll(set, vary)
	if err != nil {
		return nil, err
	}
	if n < 2 {
		return nil, fmt.Errorf("%d scenarios; want 2 or more", n)
	}
	if err := few(float64(n), most); err != nil {
		return nil, err
	}
	p := &Plan{Design: Latin, Scenarios: make([][]Value, n)}
	for i := range list {
		v := &list[i]
		p.Columns = append(p.Columns, column(v.in, true))
		draw := chance{rand.NewPCG(uint64(seed), uint64(i))}
		strata := draw.order(n)
		var items []Value
		if v.ranged {
			if v.step != 0 {
				return nil, fmt.Errorf("%s: points are drawn from the whole range; leave out the step", v.in.Name)
			}
			for _, end := range []float64{v.low, v.high} {
				if _, err := read(v.in, v.at(end), folder); err != nil {
					return nil, err
				}
			}
		} else if items, err = v.values(folder); err != nil {
			return nil, err
		}
		for k := range p.Scenarios {
			var x Value
			if v.ranged {
				if x, err = read(v.in, v.drawn(strata[k], n, draw.share()), folder); err != nil {
					return nil, err
				}
			} else {
				x = items[strata[k]*len(items)/n]
			}
			p.Scenarios[k] = append(p.Scenarios[k], x)
		}
	}
	return p, p.fix(set)
}

// drawn writes the figure at a share (dimensionless, 0 to 1) of stratum k of n.
func (v *variation) drawn(k, n int, share float64) string {
	width := (v.high - v.low) / float64(n)
	x := v.low + width*(float64(k)+0.001+0.998*share) // so far from the stratum's ends that rounding keeps it inside
	decimals := max(0, int(math.Ceil(-math.Log10(width/1000))))
	if y, err := strconv.ParseFloat(strconv.FormatFloat(x, 'f', decimals, 64), 64); err == nil {
		x = y
	}
	return v.at(x)
}

// chance draws. It is written here, on top of one well-known generator, so that a seed draws the same next year.
type chance struct{ *rand.PCG }

// share draws from 0 to 1 (dimensionless), 1 left out.
func (c chance) share() float64 { return float64(c.Uint64()>>11) / (1 << 53) }

// order draws an order of the numbers below n.
func (c chance) order(n int) []int {
	out := make([]int, n)
	for i := range out {
		out[i] = i
	}
	for i := n - 1; i > 0; i-- {
		high, _ := bits.Mul64(c.Uint64(), uint64(i+1))
		k := int(high)
		out[i], out[k] = out[k], out[i]
	}
	return out
}
