package still

import (
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Column is a column that runs steadily: feeds come in, distillate and bottoms go out, nothing changes with time.
type Column struct {
	Feeds         []Feed                 // from the top down
	Distillate    alcoholometry.Strength // wanted
	RecoveryPct   float64                // share of the feeds' alcohol wanted in the distillate, per cent; or
	Bottoms       alcoholometry.Strength // the strength wanted at the bottom
	Reflux        float64                // returned over taken, by moles (dimensionless)
	OpenSteam     bool                   // live steam below the last plate, in place of a reboiler, which is a stage of its own
	EfficiencyPct float64                // Murphree's, of each plate; 100 if 0
	P             quantity.Pressure      // the same everywhere, from 2 to 140 kPa
	Model         string                 // of ethanol and water, as equilibrium.UseModel names them; NRTL if empty
	Equilibrium   *Equilibrium           // of one's own, in place of the model's
}

// Feed is what is fed into a column, by one of the two rates.
type Feed struct {
	LH          float64 // L/h at 20 °C
	KmolH       float64 // kilomoles an hour; the unit is kmol/h
	Strength    alcoholometry.Strength
	VapourShare float64 // of its moles that arrive as vapour, dimensionless: 0 for a boiling liquid, 1 for vapour, below 0 for a colder liquid
}

// FeedVapourShare returns the VapourShare of a liquid feed at the temperature t under the pressure p, dimensionless: below
// 0 for a liquid colder than its boiling point, because it condenses vapour as it warms up. It fails with an
// *alcoholometry.UnsetError, and with a *quantity.RangeError from the boiling point on.
func FeedVapourShare(s alcoholometry.Strength, t quantity.Temperature, p quantity.Pressure) (float64, error) {
	const fn = "still.FeedVapourShare"
	if err := alcoholometry.CheckSet(fn, "the strength of the feed", s); err != nil {
		return 0, err
	}
	l, err := newLine(fn, p, "", nil, nil)
	if err != nil {
		return 0, err
	}
	x := s.MoleFraction()
	boilK := l.TempK(x)
	if err := quantity.CheckRange(fn, "temperature of the feed", t.C(), -20, boilK-273.15, "°C", "its boiling point"); err != nil {
		return 0, err
	}
	y, _ := l.vapour(x)
	h := heats()
	return (h.liquid(x, t.K()) - h.liquid(x, boilK)) / h.latent(y, boilK), nil
}

// section is a part of a column between two feeds: moles of liquid and vapour an hour, and the intercept of its line,
// y V = L x + b.
type section struct{ liquid, vapour, b float64 }

func (s section) y(x float64) float64 { return (s.liquid*x + s.b) / s.vapour }

// tower is a column made ready, at one reflux.
type tower struct {
	line      *line
	sections  []section
	crossings []float64 // mole fraction of the liquid at which the lines of two sections meet
	xD, xB    float64
	d, b      float64 // distillate and bottoms, kmol/h
	reflux    float64
	steam     bool
}

// plan checks a column and returns what makes a tower of it at a reflux.
func (c Column) plan(function string) (func(reflux float64) (*tower, error), error) {
	l, err := newLine(function, c.P, c.Model, c.Equilibrium, nil)
	if err != nil {
		return nil, err
	}
	if err := alcoholometry.CheckSet(function, "the strength of the distillate", c.Distillate); err != nil {
		return nil, err
	}
	if len(c.Feeds) == 0 {
		return nil, inputf(function, "there is no feed; give at least one")
	}
	if (c.RecoveryPct != 0) == c.Bottoms.IsSet() {
		return nil, inputf(function, "RecoveryPct is %g %% and Bottoms is %v; give one of the two", c.RecoveryPct, c.Bottoms)
	}
	if c.RecoveryPct != 0 {
		if err := quantity.CheckRange(function, "recovery", c.RecoveryPct, 1, 99.9999, "%", ""); err != nil {
			return nil, err
		}
	}
	xD := c.Distillate.MoleFraction()
	if xD >= l.most {
		return nil, &TooStrongError{Func: function, Charge: c.Distillate, Azeotrope: strengthOf(l.most), P: l.P()}
	}
	type in struct{ f, z, q float64 }
	var feeds []in
	sumF, sumFz, sumQ := 0.0, 0.0, 0.0
	for i, f := range c.Feeds {
		rate, err := f.kmolH(function, i)
		if err != nil {
			return nil, err
		}
		z := f.Strength.MoleFraction()
		if z >= xD {
			return nil, inputf(function, "feed %d of %v is no weaker than the distillate of %v; that needs no column", i+1, f.Strength, c.Distillate)
		}
		if i > 0 && z > feeds[i-1].z {
			return nil, inputf(function, "feed %d of %v is stronger than the one above it, %v; give the feeds from the top down", i+1, f.Strength, c.Feeds[i-1].Strength)
		}
		feeds = append(feeds, in{rate, z, 1 - f.VapourShare})
		sumF, sumFz, sumQ = sumF+rate, sumFz+rate*z, sumQ+rate*(1-f.VapourShare)
	}
	xB := 0.0
	if c.Bottoms.IsSet() {
		if xB = c.Bottoms.MoleFraction(); xB <= 0 || xB >= feeds[len(feeds)-1].z {
			return nil, inputf(function, "the bottoms of %v must be weaker than the feed, and hold some alcohol", c.Bottoms)
		}
	}
	return func(reflux float64) (*tower, error) {
		t := &tower{line: l, xD: xD, reflux: reflux, steam: c.OpenSteam}
		switch {
		case xB == 0:
			t.d = c.RecoveryPct / 100 * sumFz / xD
		case c.OpenSteam: // bottoms B = R D + Σ q F, alcohol Σ F z = D xD + B xB
			t.d = (sumFz - sumQ*xB) / (xD + reflux*xB)
		default:
			t.d = (sumFz - sumF*xB) / (xD - xB)
		}
		s := section{reflux * t.d, (reflux + 1) * t.d, t.d * xD}
		t.sections = append(t.sections, s)
		for _, f := range feeds {
			above := s
			s = section{s.liquid + f.q*f.f, s.vapour - (1-f.q)*f.f, s.b - f.f*f.z}
			if s.vapour <= 0 {
				return nil, inputf(function, "the feeds bring in more vapour than a reflux of %g takes up; give a higher one", reflux)
			}
			t.sections = append(t.sections, s)
			t.crossings = append(t.crossings, (s.b/s.vapour-above.b/above.vapour)/(above.liquid/above.vapour-s.liquid/s.vapour))
		}
		if t.b = s.liquid; !c.OpenSteam {
			t.b -= s.vapour
		}
		t.xB = (sumFz - t.d*xD) / t.b
		if !(t.b > 0 && t.xB > 0) {
			return nil, inputf(function, "the balance does not close: %.4g kmol/h of bottoms with a mole fraction of %.3g; ask for less recovery", t.b, t.xB)
		}
		return t, nil
	}, nil
}

// kmolH returns the rate of the feed, kmol/h.
func (f Feed) kmolH(function string, i int) (float64, error) {
	if err := alcoholometry.CheckSet(function, "the strength of a feed", f.Strength); err != nil {
		return 0, err
	}
	if (f.LH != 0) == (f.KmolH != 0) {
		return 0, inputf(function, "feed %d has %g L/h and %g kmol/h; give one of the two, above 0", i+1, f.LH, f.KmolH)
	}
	for _, c := range []struct {
		unit  string
		value float64
	}{{"L/h", f.LH}, {"kmol/h", f.KmolH}} {
		if err := quantity.CheckRange(function, "rate of a feed", c.value, 0, math.Inf(1), c.unit, ""); err != nil {
			return 0, err
		}
	}
	if err := quantity.CheckRange(function, "vapour share of a feed", f.VapourShare, -1, 2, "", ""); err != nil {
		return 0, err
	}
	if f.KmolH != 0 {
		return f.KmolH, nil
	}
	_, all := moles(alcoholometry.Spirit{VolumeL: f.LH, Strength: f.Strength})
	return all / 1000, nil
}

// at returns the section whose line holds at the liquid x: the one with the least vapour for it.
func (t *tower) at(x float64) int {
	k := 0
	for k < len(t.crossings) && x < t.crossings[k] {
		k++
	}
	return k
}
