package uncertainty

import (
	"fmt"
	"math"

	"swanneck/mathlib/quantity"
)

// Measurement is a result that is worked out from readings.
type Measurement struct {
	Name string // of the result, such as "water to add"
	Unit string // of the result

	// Model works the result out, in Unit, from the values of the inputs, in the order of Inputs: x[0] is the first.
	// It must give the same for the same x; x is only lent to it for the call. Where it has no answer it panics with an
	// error that has the method StopsCell, as everything in mathlib does.
	Model func(x []float64) float64

	Inputs       []Measured
	Correlations []Correlation // leave empty if no two inputs share a cause; an instrument used twice is one input
	CoveragePct  float64       // how often the interval is to hold the true value, per cent; 95 if 0
}

// Correlation says that the errors of two inputs go together.
type Correlation struct {
	First, Second string  // the names of the inputs
	R             float64 // the coefficient of correlation, dimensionless, from -1 to 1
}

// problem is a measurement that was found to be in order.
type problem struct {
	Measurement
	inputs      []Input
	x, u        []float64   // values and standard uncertainties of the inputs, each in its unit
	r           [][]float64 // correlations
	correlated  []int       // the inputs that have one, in order
	lower       [][]float64 // the root of the correlations among those
	coveragePct float64
	fn          string
}

// resolve asks the inputs for their values and checks everything that can be checked without calling the model.
func (m Measurement) resolve(function string) (*problem, error) {
	if m.Model == nil {
		return nil, fmt.Errorf("%s: %s has no model; give a function of the readings", function, m.title())
	}
	if len(m.Inputs) == 0 {
		return nil, fmt.Errorf("%s: %s has no inputs; give at least one", function, m.title())
	}
	p := &problem{Measurement: m, coveragePct: m.CoveragePct, fn: function}
	if p.coveragePct == 0 {
		p.coveragePct = 95
	}
	if err := quantity.CheckRange(function, "the coverage", p.coveragePct, 50, 99.99, "per cent", ""); err != nil {
		return nil, err
	}
	index := map[string]int{}
	for i, in := range m.Inputs {
		if in == nil {
			return nil, fmt.Errorf("%s: input %d is nil; give an instrument or an Input", function, i+1)
		}
		v, err := in.Input()
		if err != nil {
			return nil, fmt.Errorf("%s: %w", function, err)
		}
		if _, twice := index[v.Name]; twice {
			return nil, fmt.Errorf("%s: two inputs are called %s; give each a Name of its own, or use one input in both places", function, v.Name)
		}
		index[v.Name] = i
		p.inputs = append(p.inputs, v)
		p.x = append(p.x, v.Value)
		p.u = append(p.u, v.Standard())
	}
	return p, p.correlate(index)
}

func (m Measurement) title() string { return name(m.Name, "the result") }

// correlate fills the matrix of correlations.
func (p *problem) correlate(index map[string]int) error {
	n := len(p.inputs)
	p.r = make([][]float64, n)
	for i := range p.r {
		p.r[i] = make([]float64, n)
		p.r[i][i] = 1
	}
	for _, c := range p.Correlations {
		i, ok := index[c.First]
		if !ok {
			return fmt.Errorf("%s: there is no input %q to correlate", p.fn, c.First)
		}
		j, ok := index[c.Second]
		if !ok {
			return fmt.Errorf("%s: there is no input %q to correlate", p.fn, c.Second)
		}
		if i == j {
			return fmt.Errorf("%s: %s cannot be correlated with itself; name two inputs", p.fn, c.First)
		}
		if err := quantity.CheckRange(p.fn, "the correlation of "+c.First+" and "+c.Second, c.R, -1, 1, "", ""); err != nil {
			return err
		}
		p.r[i][j], p.r[j][i] = c.R, c.R
	}
	for i := range p.r {
		for j := range p.r {
			if i != j && p.r[i][j] != 0 {
				p.correlated = append(p.correlated, i)
				break
			}
		}
	}
	return p.root()
}

// root works out the lower triangular matrix whose product with its transpose gives the correlations (Cholesky), which
// exists only if they can hold together. A correlation of exactly 1 or -1 is allowed.
func (p *problem) root() error {
	const slack = 1e-12
	n := len(p.correlated)
	l := make([][]float64, n)
	for i := range l {
		l[i] = make([]float64, n)
		for j := 0; j <= i; j++ {
			rest := p.r[p.correlated[i]][p.correlated[j]]
			for k := range j {
				rest -= l[i][k] * l[j][k]
			}
			switch {
			case i == j && rest > slack:
				l[i][i] = math.Sqrt(rest)
			case i != j && l[j][j] > 0:
				l[i][j] = rest / l[j][j]
			case i == j && rest < -slack, i != j && math.Abs(rest) > math.Sqrt(slack):
				return fmt.Errorf("%s: the correlations contradict each other at %s; if two inputs each go with a third, they go with each other",
					p.fn, p.inputs[p.correlated[i]].Name)
			}
		}
	}
	p.lower = l
	return nil
}

// at works the model out. Where the model has no answer, why says so and y means nothing. A panic that is no refusal of
// the trade's math, such as an index out of range, is a fault of the model and goes on its way.
func (p *problem) at(x []float64) (y float64, why error) {
	defer func() {
		if r := recover(); r != nil {
			why = refusal(r)
		}
	}()
	y = p.Model(x)
	return y, finite(y)
}

// refusal returns the error a model refused with, or lets the panic go on.
func refusal(r any) error {
	if e, ok := r.(interface {
		error
		StopsCell()
	}); ok {
		return e
	}
	panic(r)
}

func finite(y float64) error {
	if math.IsNaN(y) || math.IsInf(y, 0) {
		return fmt.Errorf("the model gives %v", y)
	}
	return nil
}

// moved works the model out with some inputs moved, each by steps times its own step, in the input's unit.
func (p *problem) moved(step []float64, by map[int]float64) (float64, error) {
	x := append([]float64(nil), p.x...)
	for i, k := range by {
		x[i] += k * step[i]
	}
	return p.at(x)
}
