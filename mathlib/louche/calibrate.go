package louche

import (
	"errors"
	"fmt"
	"math"

	"gonum.org/v1/gonum/mat"
)

// Two temperatures, or two strengths, must be so far apart to say something of the slope between them. Own choice.
const (
	apartK      = 5.0
	apartShare  = 0.08
	sameK       = 1.0
	leastHeatOK = 5000.0  // J/mol: what an oil in spirit can have
	mostHeatOK  = 60000.0 // J/mol
)

var errTwoOils = errors.New("these observations do not fit one oil; look for wax or hard-water haze (WhichHaze), and read thermometer and alcoholometer again")

// Calibrate fits an oil's solubility to what was seen of it. Published numbers are the start, also for an oil that has been
// calibrated before.
//
// One drip fixes the solubility at its temperature. Drips 5 °C and more apart, or bottles that were clear and cloudy 5 °C and
// more away from the drips, fix its change with temperature; of bottles that is a range. Two drips 8 % vol and more apart at one
// temperature also fix the slope against strength. Bottles alone, clear and cloudy, give a range of the solubility. Every
// observation is used and none thrown out: what does not fit together is an error.
//
// After one drip the solubility at that temperature is as good as the oil's amount is known; ± 0.2 mL in 6 mL is ± 1.4 %.
func Calibrate(o Oil, seen ...Seen) (Calibration, error) {
	const fn = "louche.Calibrate"
	if err := checkOil(fn, o); err != nil {
		return Calibration{}, err
	}
	if len(seen) == 0 {
		return Calibration{}, fmt.Errorf("%s: nothing was seen; give at least one drip, such as Dripped(drink, 5.5)", fn)
	}
	base := o
	base.shift, base.slope, base.refK, base.heat, base.heatLow, base.heatHigh = 0, 0, 298.15, defaultHeat, leastHeat, mostHeat
	base.spread, base.seen, base.heatSeen, base.factor = 2, 0, false, 1
	fit := fitting{fn: fn, base: base, oil: base}
	for i, s := range seen {
		if err := checkSeen(fn, i, s, base); err != nil {
			return Calibration{}, err
		}
		if err := fit.take(s); err != nil {
			return Calibration{}, err
		}
	}
	var err error
	if len(fit.drips) > 0 {
		err = fit.byDrips()
	} else {
		err = fit.byBottles()
	}
	if err != nil {
		return Calibration{}, err
	}
	fit.oil.seen = len(seen)
	c := Calibration{Oil: fit.oil, Published: base, Factor: fit.oil.factor, Spread: fit.oil.spread, ResidualFactor: math.Exp(fit.residual),
		HeatKJMol: fit.oil.heat / 1000, HeatLowKJMol: fit.oil.heatLow / 1000, HeatHighKJMol: fit.oil.heatHigh / 1000, HeatSeen: fit.oil.heatSeen,
		SlopeChange: fit.oil.slope, Notes: fit.notes}
	for _, s := range seen {
		check, err := c.check(fn, s)
		if err != nil {
			return Calibration{}, err
		}
		c.Checks = append(c.Checks, check)
	}
	return c, nil
}

// place is where something was seen: ln of the load by published numbers, f, 1/T - 1/298.15, and how far the reading may
// shift the first.
type place struct {
	seen         Seen
	y, f, u, err float64
	tempK        float64
}

type fitting struct {
	fn       string
	base     Oil
	oil      Oil
	drips    []place
	bottles  []place
	residual float64 // root of the mean square of ln S, dimensionless
	notes    []string
}

func (t *fitting) take(s Seen) error {
	k := s.Drink.Temp.K()
	p := place{seen: s, tempK: k, u: 1/k - 1/298.15}
	if s.As != CloudedByWater {
		p.f = share(s.Drink.Strength)
		p.y = t.base.lnLoad(s.Drink.OilGL, p.f, k, middle)
		t.bottles = append(t.bottles, p)
		return nil
	}
	at := func(ml float64) (y, f float64, err error) {
		w, err := waterDown(t.fn, s.Drink, ml/s.spiritML())
		if err != nil {
			return 0, 0, err
		}
		f = share(w.strength)
		return t.base.lnLoad(w.oilGL, f, k, middle), f, nil
	}
	var err error
	if p.y, p.f, err = at(s.WaterML); err != nil {
		return err
	}
	low := math.Max(0, s.WaterML-s.readingML())
	less, _, err := at(low)
	if err != nil {
		return err
	}
	more, _, err := at(s.WaterML + s.readingML())
	if err != nil {
		return err
	}
	p.err = math.Abs(more-less) / (s.WaterML + s.readingML() - low) * s.readingML()
	t.drips = append(t.drips, p)
	return nil
}

// byDrips solves y = ln F + Δσ ln 10 f - (H - H0)/R u for the drips, then lets the bottles bound H if the drips do not.
func (t *fitting) byDrips() error {
	n := len(t.drips)
	freeSlope, freeHeat := false, false
	for i, a := range t.drips {
		for _, b := range t.drips[:i] {
			freeSlope = freeSlope || math.Abs(a.f-b.f) >= apartShare && math.Abs(a.tempK-b.tempK) <= sameK
			freeHeat = freeHeat || math.Abs(a.tempK-b.tempK) >= apartK
		}
	}
	if freeHeat && freeSlope && n < 3 {
		freeSlope = false
	}
	columns := 1
	design := mat.NewDense(n, 3, nil)
	for i, p := range t.drips {
		design.Set(i, 0, 1)
		c := 1
		if freeHeat {
			design.Set(i, c, -p.u/gasJMolK)
			c++
		}
		if freeSlope {
			design.Set(i, c, math.Ln10*p.f)
			c++
		}
		columns = c
	}
	a := design.Slice(0, n, 0, columns).(*mat.Dense)
	y := mat.NewVecDense(n, nil)
	for i, p := range t.drips {
		y.SetVec(i, p.y)
	}
	var x mat.VecDense
	if err := x.SolveVec(a, y); err != nil {
		return fmt.Errorf("%s: the drips lie too close together to tell strength from temperature; leave one out or add one", t.fn)
	}
	o := &t.oil
	next := 1
	dHeat := 0.0
	if freeHeat {
		dHeat = x.AtVec(next)
		next++
	}
	if freeSlope {
		o.slope = x.AtVec(next)
	}
	sum, meanU, reading := 0.0, 0.0, 0.0
	for i, p := range t.drips {
		fitted := mat.Dot(a.RowView(i), &x)
		sum += (p.y - fitted) * (p.y - fitted)
		meanU += p.u / float64(n)
		reading += p.err / float64(n)
	}
	if n > columns {
		t.residual = math.Sqrt(sum / float64(n-columns))
	}
	e := math.Max(reading, t.residual)
	o.spread = math.Exp(math.Max(e/math.Sqrt(float64(n)), 1e-3))
	o.heat = defaultHeat + dHeat
	o.refK = 1 / (1/298.15 + meanU)
	o.shift = x.AtVec(0) - o.heat/gasJMolK*meanU
	o.factor = math.Exp(mean(t.drips))
	o.calibratedAt = fmt.Sprintf("by %d drip%s at %.1f °C", n, plural(n), o.refK-273.15)
	if freeHeat {
		o.heatSeen = true
		var g mat.Dense
		g.Mul(a.T(), a)
		var inv mat.Dense
		if err := inv.Inverse(&g); err != nil {
			return fmt.Errorf("%s: the drips lie too close together to tell strength from temperature; leave one out or add one", t.fn)
		}
		half := 1.96 * e * math.Sqrt(inv.At(1, 1))
		if err := t.setHeat(o.heat-half, o.heat+half); err != nil {
			return err
		}
		o.heat = x.AtVec(1) + defaultHeat
	}
	if t.residual > 3*reading && t.residual > 0.05 {
		t.notes = append(t.notes, fmt.Sprintf("the drips disagree by a factor of %.2f, more than their reading explains", math.Exp(t.residual)))
	}
	return t.heatByBottles(!freeHeat)
}

func mean(places []place) float64 {
	sum := 0.0
	for _, p := range places {
		sum += p.y
	}
	return sum / float64(len(places))
}

func plural(n int) string {
	if n == 1 {
		return ""
	}
	return "s"
}

// heatByBottles lets each bottle bound the heat of solution: a clear one in the cold from above, a cloudy one from below. If
// the drips have fixed the heat, or the bottle is as warm as the drips, it is only checked.
func (t *fitting) heatByBottles(free bool) error {
	o := &t.oil
	low, high := math.Inf(-1), math.Inf(1)
	for _, b := range t.bottles {
		du := 1/b.tempK - 1/o.refK
		if !free || math.Abs(b.tempK-o.refK) < apartK {
			load := o.lnLoad(b.seen.Drink.OilGL, b.f, b.tempK, middle)
			if load > math.Log(o.spread) && b.seen.As == WasClear || load < -math.Log(o.spread) && b.seen.As == WasCloudy {
				t.notes = append(t.notes, fmt.Sprintf("the bottle %s does not fit the drips by a factor of %.2f", b.seen.text(t.base), math.Exp(math.Abs(load))))
			}
			continue
		}
		flat := *o
		flat.heat = 0
		bound := -flat.lnLoad(b.seen.Drink.OilGL, b.f, b.tempK, middle) * gasJMolK / du // load is 0 here
		if (b.seen.As == WasClear) == (du > 0) {
			high = math.Min(high, bound)
		} else {
			low = math.Max(low, bound)
		}
	}
	switch {
	case math.IsInf(low, -1) && math.IsInf(high, 1):
		return nil
	case low > high:
		return fmt.Errorf("%s: bottles and drips need a heat of solution above %.1f and below %.1f kJ/mol at once: %w", t.fn, low/1000, high/1000, errTwoOils)
	case math.IsInf(low, -1):
		low = leastHeat
		if high < leastHeat {
			low = leastHeatOK
		}
		high = math.Min(high, math.Max(mostHeat, low))
		t.notes = append(t.notes, "change with temperature is bounded on one side only: a bottle that is cloudy would bound the other")
	case math.IsInf(high, 1):
		high = mostHeat
		if low > mostHeat {
			high = mostHeatOK
		}
		low = math.Max(low, math.Min(leastHeat, high))
		t.notes = append(t.notes, "change with temperature is bounded on one side only: a bottle that is clear would bound the other")
	default:
		o.heatSeen = true
	}
	if err := t.setHeat(low, high); err != nil {
		return err
	}
	o.heat = (o.heatLow + o.heatHigh) / 2
	return nil
}

// setHeat sets the range of the heat of solution, within what an oil can have.
func (t *fitting) setHeat(low, high float64) error {
	if low > mostHeatOK || high < leastHeatOK || low > high {
		return fmt.Errorf("%s: the heat of solution comes out as %.1f to %.1f kJ/mol, and an oil has 5 to 60: %w", t.fn, low/1000, high/1000, errTwoOils)
	}
	t.oil.heatLow, t.oil.heatHigh = math.Max(low, leastHeatOK), math.Min(high, mostHeatOK)
	return nil
}

// byBottles lets bottles alone bound the solubility, at the temperature that they share.
func (t *fitting) byBottles() error {
	low, high := math.Inf(-1), math.Inf(1) // of ln F
	coldest, warmest, meanU := math.Inf(1), math.Inf(-1), 0.0
	for _, b := range t.bottles {
		coldest, warmest = math.Min(coldest, b.tempK), math.Max(warmest, b.tempK)
		meanU += b.u / float64(len(t.bottles))
		if b.seen.As == WasClear {
			low = math.Max(low, b.y)
		} else {
			high = math.Min(high, b.y)
		}
	}
	if warmest-coldest >= apartK {
		return fmt.Errorf("%s: bottles alone, %.0f °C apart, cannot tell solubility from its change with temperature; drip water into the spirit too", t.fn, warmest-coldest)
	}
	if low > high {
		return fmt.Errorf("%s: a clear bottle holds %.2f times what a cloudy one says can be held: %w", t.fn, math.Exp(low-high), errTwoOils)
	}
	if math.IsInf(low, -1) || math.IsInf(high, 1) {
		if t.base.inParts {
			return fmt.Errorf("%s: bottles of an oil counted in parts must be clear and cloudy, both; or drip water into the spirit", t.fn)
		}
		low, high = math.Max(low, -math.Ln2), math.Min(high, math.Ln2)
		if low > high {
			return fmt.Errorf("%s: this bottle lies outside the factor of 2 that the model is good to; drip water into the spirit", t.fn)
		}
		t.notes = append(t.notes, "bounded on one side only by bottles: drip water into the spirit")
	}
	o := &t.oil
	o.spread = math.Exp((high - low) / 2)
	o.refK = 1 / (1/298.15 + meanU)
	o.shift = (low+high)/2 - o.heat/gasJMolK*meanU
	o.factor = math.Exp((low + high) / 2)
	o.calibratedAt = fmt.Sprintf("by %d bottle%s at %.1f °C", len(t.bottles), plural(len(t.bottles)), o.refK-273.15)
	return nil
}
