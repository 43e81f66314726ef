package uncertainty

import (
	"fmt"
	"math"
	"slices"

	"swanneck/mathlib/internal/chance"
	"swanneck/mathlib/quantity"
)

// How many draws may be asked for. Fewer say nothing about the ends of an interval; more fill the memory.
const (
	fewestDraws = 1000
	mostDraws   = 10_000_000
)

// MonteCarlo draws the errors of all inputs by chance, as often as draws says, works the result out each time, and says
// where the results lie. 200 000 draws settle two digits of an interval of 95 %, a million three. The same seed gives the
// same draws, to the last bit.
//
// A draw for which the model has no answer (it refuses, or gives no finite number) is left out, counted in Stopped and
// told of in FirstStop. If more than a tenth of the share that the interval leaves out have none, MonteCarlo fails, since
// the interval would not mean what it says.
//
// It fails as FirstOrder does, for fewer than 1000 or more than 10 000 000 draws, for correlated inputs that are not
// normal, and for a Student t of fewer than 3 degrees of freedom (4 readings), which has no standard deviation.
//
// Source: JCGM 101:2008, clause 7; the shortest interval by 7.7.4.
func MonteCarlo(m Measurement, draws int, seed uint64) (Draws, error) {
	const fn = "uncertainty.MonteCarlo"
	p, err := m.resolve(fn)
	if err != nil {
		return Draws{}, err
	}
	if err := quantity.CheckRange(fn, "the number of draws", float64(draws), fewestDraws, mostDraws, "", ""); err != nil {
		return Draws{}, err
	}
	if left := float64(draws) * (1 - p.coveragePct/100); left < 10 {
		return Draws{}, fmt.Errorf("%s: %d draws leave %.1f outside an interval of %v %%, too few to find its ends; draw at least %.0f",
			fn, draws, left, p.coveragePct, math.Ceil(10/(1-p.coveragePct/100)))
	}
	if _, why := p.at(append([]float64(nil), p.x...)); why != nil {
		return Draws{}, fmt.Errorf("%s: %s cannot be worked out from the readings: %w", fn, p.title(), why)
	}
	s, err := p.newSimulation(draws, seed)
	if err != nil {
		return Draws{}, err
	}
	if err := s.run(draws); err != nil {
		return Draws{}, err
	}
	return s.draws(), nil
}

// simulation is a Monte Carlo run under way.
type simulation struct {
	*problem
	seed      uint64
	chance    *chance.Source
	samplers  []sampler
	z         []float64 // the independent normal numbers behind the correlated inputs
	results   []float64
	drawn     int
	stopped   int
	firstStop string
	mayStop   int
	argument  []float64
}

func (p *problem) newSimulation(draws int, seed uint64) (*simulation, error) {
	s := &simulation{problem: p, seed: seed, chance: chance.New(seed), results: make([]float64, 0, draws),
		z: make([]float64, len(p.correlated)), argument: make([]float64, len(p.x))}
	s.mayStop = int(float64(draws) * (1 - p.coveragePct/100) / 10)
	for i, in := range p.inputs {
		if slices.Contains(p.correlated, i) {
			if !in.normal() {
				return nil, fmt.Errorf("%s: %s is correlated and not spread normally; only normal parts can be drawn together", p.fn, in.Name)
			}
			continue
		}
		for _, part := range in.Parts {
			if part.Shape == ShapeStudentT && part.Degrees < 3 {
				return nil, fmt.Errorf("%s: %s rests on %d degrees of freedom; a Student t of fewer than 3 (4 readings) has no standard deviation", p.fn, in.Name, part.Degrees)
			}
			s.samplers = append(s.samplers, part.sampler(i))
		}
	}
	return s, nil
}

// run makes all draws.
func (s *simulation) run(draws int) error {
	for s.drawn < draws {
		why := s.untilStop(draws)
		if why == nil {
			continue
		}
		if s.stopped++; s.stopped == 1 {
			s.firstStop = why.Error()
		}
		if s.stopped > s.mayStop {
			return fmt.Errorf("%s: %s has no answer in %d of the first %d draws, too many for an interval of %v %%; the first: %s; make the tolerances smaller or let the model answer there",
				s.fn, s.title(), s.stopped, s.drawn, s.coveragePct, s.firstStop)
		}
	}
	return nil
}

// untilStop makes draws until all are made or the model has no answer for one, and says why. Guarding a whole stretch
// costs nothing a draw.
func (s *simulation) untilStop(draws int) (why error) {
	defer func() {
		if r := recover(); r != nil {
			why = refusal(r)
		}
	}()
	for s.drawn < draws {
		s.next()
		s.drawn++
		y := s.Model(s.argument)
		if err := finite(y); err != nil {
			return err
		}
		s.results = append(s.results, y)
	}
	return nil
}

// next puts the next readings into the argument of the model.
func (s *simulation) next() {
	copy(s.argument, s.x)
	if len(s.correlated) > 0 {
		for k := range s.z {
			s.z[k] = s.chance.Normal()
		}
		for k, i := range s.correlated {
			var sum float64
			for j := 0; j <= k; j++ {
				sum += s.lower[k][j] * s.z[j]
			}
			s.argument[i] += s.u[i] * sum
		}
	}
	for i := range s.samplers {
		p := &s.samplers[i]
		s.argument[p.input] += p.draw(s.chance)
	}
}

// draws sums the results up.
func (s *simulation) draws() Draws {
	d := Draws{Name: s.title(), Unit: s.Unit, Draws: s.drawn, Seed: s.seed, Stopped: s.stopped, FirstStop: s.firstStop, CoveragePct: s.coveragePct}
	n := float64(len(s.results))
	var shift float64
	for _, y := range s.results {
		shift += y - s.results[0]
	}
	d.Mean = s.results[0] + shift/n
	var squares float64
	for _, y := range s.results {
		squares += (y - d.Mean) * (y - d.Mean)
	}
	d.Standard = math.Sqrt(squares / (n - 1))
	slices.Sort(s.results)
	d.sorted = s.results
	d.Low, d.High = shortest(d.sorted, s.coveragePct)
	d.EvenLow, d.EvenHigh = d.Below((100-s.coveragePct)/2), d.Below((100+s.coveragePct)/2)
	return d
}
