package mixing

import (
	"fmt"
	"math"
	"time"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// What a step of a slow reduction does unless the order says otherwise: common practice, no source. Houses differ from one
// step of 10 % vol to many of 1 %, with a day or months between.
const (
	usualDropABV     = 5 // % vol
	usualHazeDropABV = 2 // % vol
	usualRestDays    = 1
)

// StepOrder says how a spirit is to be brought down slowly, so that it stays clear: in steps, with days of rest between.
type StepOrder struct {
	Spirit  alcoholometry.Spirit   // what the tank holds, at its temperature; for a sweetened one the strength of the whole
	SugarGL float64                // sugar in it, g/L at 20 °C; 0 for none
	To      alcoholometry.Strength // wanted at the end
	Start   string                 // the day of the first step, such as "2026-03-31"; steps are counted from day 0 if empty

	Strengths   []alcoholometry.Strength // after each step, falling, without the last; instead of the drops below
	DropABV     float64                  // the most that a step brings the strength down, % vol; 5 if 0 (common practice, no source)
	HazeBelow   alcoholometry.Strength   // below this strength the steps are smaller, because haze is near; unset for nowhere
	HazeDropABV float64                  // the most that such a step brings the strength down, % vol; 2 if 0 (common practice, no source)
	RestDays    int                      // days of rest after each step; 1 if 0 (common practice, no source)

	WaterTemp quantity.Temperature // of the water that is added; 20 °C if unset
	TankTemp  quantity.Temperature // of the tank after each rest, when it is read; 20 °C if unset
	MarkedAt  quantity.Temperature // what the alcoholometer is marked at; 20 °C if unset
	TankL     float64              // the room in the tank, L; 0 for no limit
}

// WaterStep is one addition of water.
type WaterStep struct {
	Number   int                    // from 1
	Day      int                    // days after the first day
	Date     string                 // the day, if the order has a start
	From, To alcoholometry.Strength // before and after
	WaterKg  float64                // to add, true mass, kg
	ScaleKg  float64                // to add, as scales show it in air, kg
	WaterL   float64                // to add, L at the water's temperature
	TankL    float64                // in the tank after the rest, L at TankTemp
	MixedAt  quantity.Temperature   // of the tank just after mixing, if no heat gets out (an estimate; sugar is left out of it)
	WarmingC float64                // of which the heat of mixing makes, °C

	// ReadingABV is what the alcoholometer shows after the rest, at TankTemp, in per cent by volume on its scale; with sugar
	// in the tank it is lower than the strength. If Readable is false there is none: the liquid is too heavy.
	ReadingABV float64
	Readable   bool
}

// StepPlan is a slow reduction, day by day.
type StepPlan struct {
	Order     StepOrder
	Steps     []WaterStep
	WaterKg   float64 // in all steps, true mass, kg
	ScaleKg   float64 // in all steps, as scales show it, kg
	WaterL    float64 // in all steps, L at the water's temperature
	Result    Liqueur // at TankTemp; without sugar, a spirit
	ReadyDay  int     // days after the first day: the end of the last rest
	ReadyDate string  // the day, if the order has a start
	OffABV    float64 // of a plan made anew: what the tank was found at less what was planned, % vol

	contents []sweet // before the first step and after each
	number   int     // of the step before the first
	day      int     // of the first step
}

// PlanSteps returns the dated steps, the water for each as weighed and as measured, and what the alcoholometer will show
// after each rest. Masses, pure alcohol and sugar add up over all steps to what one reduction would give.
//
// It fails with a *StrengthError for a strength that water cannot reach, for a Start that is no day, for a step that the
// tank has no room for, and as ReduceLiqueur does.
//
// Source: as for Reduce and, with sugar, LiqueurDensityKgM3. That small steps with rests keep a spirit clear is common
// practice without a source: whether yours hazes tells a jar that is brought down first.
func PlanSteps(o StepOrder) (StepPlan, error) {
	const fn = "mixing.PlanSteps"
	if err := o.check(fn); err != nil {
		return StepPlan{}, err
	}
	l := Liqueur{VolumeL: o.Spirit.VolumeL, Strength: o.Spirit.Strength, SugarGL: o.SugarGL, Temp: o.Spirit.Temp}
	s, err := l.open(fn, "the spirit")
	if err != nil {
		return StepPlan{}, err
	}
	p := StepPlan{Order: o}
	if err := p.fill(fn, s, o.Spirit.Strength, o.Spirit.Temp); err != nil {
		return StepPlan{}, err
	}
	return p, nil
}

// check returns an error for an order that cannot be planned, and puts the usual figures where there are none.
func (o *StepOrder) check(function string) error {
	if err := checkSpirit(function, "the spirit", o.Spirit); err != nil {
		return err
	}
	if err := checkStrengths(function, o.Spirit.Strength, o.To); err != nil {
		return err
	}
	for _, c := range []struct {
		what  string
		value *float64
		usual float64
		unit  string
	}{{"the drop of a step", &o.DropABV, usualDropABV, "% vol"}, {"the drop of a step below the haze", &o.HazeDropABV, usualHazeDropABV, "% vol"}, {"the room in the tank", &o.TankL, 0, "L"}} {
		if err := quantity.CheckRange(function, c.what, *c.value, 0, math.Inf(1), c.unit, ""); err != nil {
			return err
		}
		if *c.value == 0 {
			*c.value = c.usual
		} else if c.unit == "% vol" && *c.value < 0.1 {
			return fmt.Errorf("%s: %s is %g %% vol; give 0.1 or more", function, c.what, *c.value)
		}
	}
	if o.RestDays < 0 {
		return fmt.Errorf("%s: %d days of rest; give 1 or more, or 0 for the usual day", function, o.RestDays)
	}
	if o.RestDays == 0 {
		o.RestDays = usualRestDays
	}
	if o.Start != "" {
		if _, err := time.Parse(time.DateOnly, o.Start); err != nil {
			return fmt.Errorf("%s: the start %q is no day; write it as year-month-day, such as 2026-03-31", function, o.Start)
		}
	}
	return nil
}

// strengths returns the strength after each step, from a strength on.
func (o StepOrder) strengths(function string, from alcoholometry.Strength) ([]alcoholometry.Strength, error) {
	var out []alcoholometry.Strength
	if len(o.Strengths) > 0 {
		before := from
		for i, s := range o.Strengths {
			if err := alcoholometry.CheckSet(function, fmt.Sprintf("the strength after step %d", i+1), s); err != nil {
				return nil, err
			}
			if i > 0 && s.ABW() >= o.Strengths[i-1].ABW() || s.ABW() <= o.To.ABW() && differ(s, o.To) {
				return nil, fmt.Errorf("%s: step %d goes to %v; the strengths must fall and stay above the %v wanted", function, i+1, s, o.To)
			}
			if s.ABW() < before.ABW() && differ(s, before) && differ(s, o.To) {
				out = append(out, s)
				before = s
			}
		}
		return append(out, o.To), nil
	}
	low, high := o.To.ABV(), from.ABV()
	border := low
	if o.HazeBelow.IsSet() {
		border = math.Min(math.Max(o.HazeBelow.ABV(), low), high)
	}
	for _, part := range []struct{ from, to, drop float64 }{{high, border, o.DropABV}, {border, low, o.HazeDropABV}} {
		n := math.Ceil((part.from-part.to)/part.drop - 1e-9)
		if n > 1000 {
			return nil, fmt.Errorf("%s: %.0f steps; give a larger drop for each than %g %% vol", function, n, part.drop)
		}
		for k := 1.0; k <= n; k++ {
			s, err := alcoholometry.ABV(part.from + (part.to-part.from)*k/n)
			if err != nil {
				return nil, as(function, err)
			}
			out = append(out, s)
		}
	}
	if len(out) > 0 {
		out[len(out)-1] = o.To
	}
	return out, nil
}

// date returns the day so many days after the start, or nothing.
func (o StepOrder) date(days int) string {
	start, err := time.Parse(time.DateOnly, o.Start)
	if err != nil {
		return ""
	}
	return start.AddDate(0, 0, days).Format(time.DateOnly)
}
