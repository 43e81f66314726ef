package equilibrium

import (
	"fmt"
	"math"

	"swanneck/mathlib/compound"
	"swanneck/mathlib/quantity"
)

// The temperatures at which a Mixture is reckoned, K.
const mixtureLowK, mixtureHighK = 200.0, 500.0

// Mixture is a liquid of any of the compounds at any concentration, in one UNIFAC method alone: no fitted parameters of
// ethanol and water and no anchor in water, which hold at infinite dilution only. For a spirit with traces in it use
// VolatilityOf or a Curve; a Mixture is for what is no trace.
//
// A Mixture works in room of its own and must not be used by two goroutines at once.
type Mixture struct {
	names  []string
	vapour []compound.VapourPressure
	set    *groupSet

	ln, lnBefore, perU []float64 // ln γ at the last two temperatures, and its slope by 1/T
	partial            []float64 // y p, as the logarithm and as it is
}

// NewMixture returns a liquid of the named compounds in the UNIFAC method base: compound.Original or compound.Dortmund.
// (Modified UNIFAC is a factor of 50 off for terpenes in water.) Names are those of compound.Find. It fails with a
// *compound.UnknownError, and if a compound is named twice or none is.
func NewMixture(base compound.Base, names ...string) (*Mixture, error) {
	const fn = "equilibrium.NewMixture"
	if len(names) == 0 {
		return nil, fmt.Errorf("%s: no compound is named; name one or more", fn)
	}
	if base != compound.Original && base != compound.Dortmund {
		return nil, fmt.Errorf("%s: the method is %q; it must be %q or %q", fn, base, compound.Original, compound.Dortmund)
	}
	m := &Mixture{}
	var mol []molecule
	seen := map[string]bool{}
	for _, name := range names {
		c, err := compound.Find(name)
		if err != nil {
			return nil, named(fn, err)
		}
		if seen[c.Name] {
			return nil, fmt.Errorf("%s: %s is named twice; name each compound once", fn, c.Name)
		}
		seen[c.Name] = true
		g, err := method(base).molecule(groupsOf(c, base))
		if err != nil {
			return nil, named(fn, err)
		}
		mol = append(mol, g)
		m.names = append(m.names, c.Name)
		m.vapour = append(m.vapour, c.Vapour)
	}
	var err error
	if m.set, err = newGroupSet(method(base), mol); err != nil {
		return nil, named(fn, err)
	}
	n := len(names)
	m.ln, m.lnBefore, m.perU, m.partial = make([]float64, n), make([]float64, n), make([]float64, n), make([]float64, n)
	return m, nil
}

// Names returns the compounds in the order of the fractions.
func (m *Mixture) Names() []string { return append([]string(nil), m.names...) }

// LnGamma puts the natural logarithm of the activity coefficient of each compound, dimensionless, into out, for a liquid
// of the mole fractions x at tempK. It fails with a *quantity.RangeError, and if the fractions are as many as the
// compounds but do not sum to 1 within 1e-9.
func (m *Mixture) LnGamma(x []float64, tempK float64, out []float64) error {
	const fn = "equilibrium.Mixture.LnGamma"
	if err := m.check(fn, x, out); err != nil {
		return err
	}
	if err := quantity.CheckRange(fn, "temperature", tempK, mixtureLowK, mixtureHighK, "K", "the groups were fitted from about 275 to 425 K"); err != nil {
		return err
	}
	m.set.setTemp(tempK)
	m.set.lnGamma(x, out)
	return nil
}

func (m *Mixture) check(function string, x, out []float64) error {
	if len(x) != len(m.names) || len(out) != len(m.names) {
		return fmt.Errorf("%s: there are %d fractions and %d places for %d compounds; give one of each for each", function, len(x), len(out), len(m.names))
	}
	sum := 0.0
	for i, f := range x {
		if !(f >= 0 && f <= 1) {
			return checkFraction(function, "mole fraction of "+m.names[i], f)
		}
		sum += f
	}
	if math.Abs(sum-1) > 1e-9 {
		return fmt.Errorf("%s: the mole fractions sum to %.12g; they must sum to 1", function, sum)
	}
	return nil
}

// SplitError says that a liquid does not stay one liquid.
type SplitError struct {
	Func     string  // the function
	Compound string  // what it sheds
	Activity float64 // mole fraction times activity coefficient of that compound, dimensionless
}

// Error gives the compound in one line.
func (e *SplitError) Error() string {
	return fmt.Sprintf("%s: the liquid splits in two: the activity of %s in it comes to %.3g and cannot pass 1; give less of it", e.Func, e.Compound, e.Activity)
}

// StopsCell marks the error as one that a worksheet prints as its one line, without a stack of calls.
func (e *SplitError) StopsCell() {}

// Bubble returns the temperature, in kelvin, at which a liquid of the mole fractions x boils under pKPa kilopascal, from 2
// to 1100, and puts the mole fractions of its vapour into y. It fails with a *quantity.RangeError, also where a vapour
// pressure is not known so far out, with a *SplitError if the liquid would not stay one (this is a sufficient sign, not
// a necessary one), and with a *ConvergenceError. It allocates nothing.
//
// Accuracy: that of the method. For ethanol and water see DEVIATIONS.md; a vapour pressure may be extrapolated, which
// Notes tells.
func (m *Mixture) Bubble(x []float64, pKPa float64, y []float64) (tempK float64, err error) {
	const fn = "equilibrium.Mixture.Bubble"
	if err := m.check(fn, x, y); err != nil {
		return 0, err
	}
	if err := checkPressure(fn, pKPa); err != nil {
		return 0, err
	}
	tempK, ok := m.boil(x, math.Log(pKPa*1000), y)
	if !ok {
		return 0, &ConvergenceError{Func: fn, Model: "UNIFAC", X: x[0], PKPa: pKPa}
	}
	for i, f := range x {
		if f == 0 {
			continue
		}
		if v := &m.vapour[i]; tempK-273.15 < v.MinC-stretchBelowK || tempK-273.15 > v.MaxC+stretchAboveK {
			_, err := stretch(fn, m.names[i], v, tempK-273.15, tempK-273.15)
			return 0, err
		}
		if a := f * math.Exp(m.ln[i]); a > 1+1e-9 {
			return 0, &SplitError{fn, m.names[i], a}
		}
	}
	return tempK, nil
}

// boil solves for the temperature by Newton's method in u = 1/T, with the activity coefficients taken as straight in u
// between the last two temperatures. Those are the dear part: three rounds do, of which each costs one reckoning of γ.
func (m *Mixture) boil(x []float64, lnP float64, y []float64) (tempK float64, ok bool) {
	u := 1.0/360 + (math.Log(101325)-lnP)/4900
	before := 0.0
	clear(m.perU)
	for round := 0; round < 30; round++ {
		copy(m.lnBefore, m.ln)
		m.set.setTemp(1 / u)
		m.set.lnGamma(x, m.ln)
		if round > 0 && u != before {
			for i := range m.perU {
				m.perU[i] = (m.ln[i] - m.lnBefore[i]) / (u - before)
			}
		}
		before = u
		// f = ln Σ x γ pS - ln p, first where γ was reckoned, then on with γ along its straight line.
		from := u
		for inner := 0; inner < 30; inner++ {
			t := 1 / u
			sum, slope := 0.0, 0.0
			for i, f := range x {
				if f == 0 {
					y[i] = 0
					continue
				}
				lnPa, perK := m.vapour[i].LnPa(t)
				part := f * math.Exp(m.ln[i]+m.perU[i]*(u-from)+lnPa-lnP)
				y[i] = part
				sum += part
				slope += part * (m.perU[i] - perK*t*t) // d/du
			}
			f := math.Log(sum)
			next := math.Min(math.Max(u-f*sum/slope, 1/mixtureHighK), 1/mixtureLowK)
			if math.IsNaN(next) {
				return 0, false
			}
			if inner == 0 && round > 0 && math.Abs(f) < 1e-8 { // γ is that of this very temperature
				for i, part := range y {
					y[i] = part / sum
				}
				return 1 / next, true
			}
			small := math.Abs(next-u) < 1e-6*u
			u = next
			if small {
				break
			}
		}
	}
	return 0, false
}

// Notes lists the compounds whose vapour pressures are estimated, from memory or extrapolated at tempK.
func (m *Mixture) Notes(tempK float64) []string {
	var out []string
	for i, name := range m.names {
		v := &m.vapour[i]
		if !v.From.Sure() {
			out = append(out, name+": vapour pressure "+v.From.String())
		}
		switch t := tempK - 273.15; {
		case t < v.MinC:
			out = append(out, fmt.Sprintf("%s: vapour pressure extrapolated below %.1f °C", name, v.MinC))
		case t > v.MaxC:
			out = append(out, fmt.Sprintf("%s: vapour pressure extrapolated above %.1f °C", name, v.MaxC))
		}
	}
	return out
}
