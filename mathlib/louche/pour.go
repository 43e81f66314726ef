package louche

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Pouring says how water goes into the glass. What is 0 stands for the usual figure.
type Pouring struct {
	SpiritML float64 // the drink in the glass, mL; 20 if 0
	StepML   float64 // water added at a time, mL; a twentieth of the spirit if 0
	WaterML  float64 // water added in all, mL; 5 times the spirit if 0
}

// Step is a drink at one place on the way from the bottle to the glass.
type Step struct {
	WaterML     float64 // added so far, mL
	Strength    alcoholometry.Strength
	OilGL       float64 // all the oil, g/L; in parts if the oil is counted so
	DissolvedGL float64 // in the clear liquid, g/L
	OutGL       float64 // out as droplets, g/L
	Load        float64 // Σ c/S, dimensionless: cloudy above 1
	Turbidity   Turbidity
}

// Path is the way of a drink from the bottle to the glass, drop by drop.
type Path struct {
	Drink    Drink
	Oil      Oil
	SpiritML float64 // the drink in the glass, mL
	Steps    []Step  // the first without water

	Clouds   bool // it clouds somewhere between the bottle and 1 + 60
	Onset    Step // where it begins; without water if the bottle is cloudy already
	Thickest Step // with the most oil out

	ClearsAgain bool // so much water dissolves the oil again, at up to 1 + 60
	Clear       Step // where it does
}

// mostRatio is how much water a path is followed to, in volumes of the drink.
const mostRatio = 60.0

// Pour returns the way of a drink from the bottle to the glass as water is added at the drink's temperature: strength, oil
// dissolved and out, and turbidity at each step, where it clouds, where most oil is out, and where it clears again.
//
// Water is added by mass, so the contraction is counted in; the glass is taken to stay at its temperature (the mixing warms
// it by some degrees). For the model and its accuracy see SolubilityOf and TurbidityPerM.
func Pour(d Drink, o Oil, p Pouring) (Path, error) {
	const fn = "louche.Pour"
	if err := checkUsable(fn, o); err != nil {
		return Path{}, err
	}
	if err := checkDrink(fn, d, o); err != nil {
		return Path{}, err
	}
	if p.SpiritML == 0 {
		p.SpiritML = 20
	}
	if p.StepML == 0 {
		p.StepML = p.SpiritML / 20
	}
	if p.WaterML == 0 {
		p.WaterML = 5 * p.SpiritML
	}
	for _, c := range []struct {
		what             string
		value, low, high float64
	}{
		{"the drink in the glass", p.SpiritML, 0.1, 1e5},
		{"the water in all", p.WaterML, 0, mostRatio * p.SpiritML},
		{"the water at a time", p.StepML, p.WaterML / 2000, math.Inf(1)},
	} {
		if err := quantity.CheckRange(fn, c.what, c.value, c.low, c.high, "mL", ""); err != nil {
			return Path{}, err
		}
	}
	path := Path{Drink: d, Oil: o, SpiritML: p.SpiritML}
	for i := 0; ; i++ {
		ml := float64(i) * p.StepML
		last := ml >= p.WaterML*(1-1e-12)
		if last {
			ml = p.WaterML
		}
		s, err := stepAt(fn, d, o, ml, p.SpiritML)
		if err != nil {
			return Path{}, err
		}
		path.Steps = append(path.Steps, s)
		if last {
			break
		}
	}
	return path, path.turns(fn)
}

func stepAt(function string, d Drink, o Oil, waterML, spiritML float64) (Step, error) {
	w, err := waterDown(function, d, waterML/spiritML)
	if err != nil {
		return Step{}, err
	}
	s := separate(Drink{w.strength, w.oilGL, d.Temp}, o, share(w.strength))
	t, err := turbidityOf(s)
	if err != nil {
		return Step{}, as(function, err)
	}
	return Step{WaterML: waterML, Strength: w.strength, OilGL: w.oilGL, DissolvedGL: s.DissolvedGL, OutGL: s.OutGL, Load: s.Load, Turbidity: t}, nil
}

// loadAt returns ln Σ c/S with ratio volumes of water in the drink.
func loadAt(function string, d Drink, o Oil, ratio float64) (float64, error) {
	w, err := waterDown(function, d, ratio)
	if err != nil {
		return 0, err
	}
	return o.lnLoad(w.oilGL, share(w.strength), d.Temp.K(), middle), nil
}

// onset returns at how many volumes of water a drink clouds, and where it clears again. Both are looked for on a grid whose
// step grows with the water, then found by halving.
func onset(function string, d Drink, o Oil) (at, again float64, clouds, clears bool, err error) {
	const steps = 600
	load := func(ratio float64) float64 {
		v, e := loadAt(function, d, o, ratio)
		if e != nil {
			err = e
		}
		return v
	}
	if load(0) > 0 {
		clouds = true
	}
	before := 0.0
	for i := 1; i <= steps && err == nil; i++ {
		r := math.Expm1(float64(i) / steps * math.Log1p(mostRatio))
		switch v := load(r); {
		case !clouds && v > 0:
			clouds, at = true, bisect(func(x float64) float64 { return -load(x) }, before, r)
		case clouds && v <= 0:
			return at, bisect(load, before, r), true, true, err
		}
		before = r
	}
	return at, 0, clouds, false, err
}

// turns finds where the path clouds, is cloudiest and clears.
func (p *Path) turns(function string) error {
	at, again, clouds, clears, err := onset(function, p.Drink, p.Oil)
	if err != nil || !clouds {
		return err
	}
	p.Clouds, p.ClearsAgain = clouds, clears
	to := mostRatio
	if clears {
		to = again
	}
	// The oil out rises to one maximum and falls: golden section on the logarithm of the water.
	step := func(x float64) Step {
		s, e := stepAt(function, p.Drink, p.Oil, math.Expm1(x)*p.SpiritML, p.SpiritML)
		if e != nil {
			err = e
		}
		return s
	}
	const golden = 0.6180339887498949
	a, b := math.Log1p(at), math.Log1p(to)
	for range 80 {
		if c, e := b-golden*(b-a), a+golden*(b-a); step(c).OutGL >= step(e).OutGL {
			b = e
		} else {
			a = c
		}
	}
	p.Thickest = step((a + b) / 2)
	p.Onset = step(math.Log1p(at))
	if clears {
		p.Clear = step(math.Log1p(again))
	}
	return err
}

// StrengthsABV returns the strength of each step in % vol, for a chart.
func (p Path) StrengthsABV() []float64 {
	return column(p.Steps, func(s Step) float64 { return s.Strength.ABV() })
}

// WatersML returns the water of each step in mL, for a chart.
func (p Path) WatersML() []float64 { return column(p.Steps, func(s Step) float64 { return s.WaterML }) }

// OilsGL returns all the oil of each step in g/L (in parts if it is counted so), for a chart.
func (p Path) OilsGL() []float64 { return column(p.Steps, func(s Step) float64 { return s.OilGL }) }

// DissolvedGL returns the oil dissolved at each step in g/L (in parts if it is counted so), for a chart.
func (p Path) DissolvedGL() []float64 {
	return column(p.Steps, func(s Step) float64 { return s.DissolvedGL })
}

// OutGL returns the oil out at each step in g/L (in parts if it is counted so), for a chart.
func (p Path) OutGL() []float64 { return column(p.Steps, func(s Step) float64 { return s.OutGL }) }

func column(steps []Step, of func(Step) float64) []float64 {
	out := make([]float64, len(steps))
	for i, s := range steps {
		out[i] = of(s)
	}
	return out
}

// WaterToSpirit returns the water of a step in volumes of the spirit in the glass, dimensionless: 1 + 0.3 is 0.3.
func (p Path) WaterToSpirit(s Step) float64 { return s.WaterML / p.SpiritML }

// String gives the path in one line: where it clouds, where most oil is out and where it clears again.
func (p Path) String() string {
	how := "estimate, not calibrated"
	if p.Oil.Calibrated() {
		how = "calibrated"
	}
	head := p.Drink.text(p.Oil)
	if !p.Clouds {
		return fmt.Sprintf("%s: does not cloud down to 1 + %g (%s)", head, mostRatio, how)
	}
	if p.Onset.WaterML == 0 {
		head += ": cloudy in the bottle"
	} else {
		head += fmt.Sprintf(": clouds at 1 + %.2f (%.1f mL in %.4g mL; %.1f %% vol)", p.WaterToSpirit(p.Onset), p.Onset.WaterML, p.SpiritML, p.Onset.Strength.ABV())
	}
	head += fmt.Sprintf("; most oil out, %s, at 1 + %.2f (%.1f %% vol), %s", unitText(p.Thickest.OutGL, p.Oil), p.WaterToSpirit(p.Thickest), p.Thickest.Strength.ABV(), p.Thickest.Turbidity.Look())
	if p.ClearsAgain {
		head += fmt.Sprintf("; clears again at 1 + %.1f (%.1f %% vol)", p.WaterToSpirit(p.Clear), p.Clear.Strength.ABV())
	}
	return head + " (" + how + ")"
}

// Rows gives the drip table: a head, then water, strength, oil, oil out and look of each step.
func (p Path) Rows() [][]string {
	unit := "g/L"
	if p.Oil.inParts {
		unit = "parts"
	}
	rows := [][]string{{fmt.Sprintf("water in %.4g mL (mL)", p.SpiritML), "strength (% vol)", "oil (" + unit + ")", "oil out (" + unit + ", estimate)", "looks"}}
	for _, s := range p.Steps {
		rows = append(rows, []string{fmt.Sprintf("%.1f", s.WaterML), fmt.Sprintf("%.1f", s.Strength.ABV()), quantity.Figure(s.OilGL), quantity.Figure(s.OutGL), s.lookText()})
	}
	return rows
}

func (s Step) lookText() string {
	if !s.Turbidity.Known {
		if s.Load > 1 {
			return "cloudy"
		}
		return "clear"
	}
	return s.Turbidity.Look()
}

// String gives the step in one line.
func (s Step) String() string {
	return fmt.Sprintf("%.1f mL of water: %v, %s of oil out of %s, %s", s.WaterML, s.Strength, quantity.Figure(s.OutGL), quantity.Figure(s.OilGL), s.lookText())
}
