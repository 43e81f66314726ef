package louche

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"swanneck/mathlib/quantity"
)

// CloudState says whether a drink has a cloud temperature.
type CloudState string

// The three states.
const (
	CloudsBelow CloudState = "clouds below"
	AlwaysClear CloudState = "clear down to -25 °C"
	AlwaysCloud CloudState = "cloudy at every temperature up to 60 °C"
)

const cloudMostC = 60.0

// CloudPoint is the temperature below which a drink turns cloudy.
type CloudPoint struct {
	Drink Drink
	Oil   Oil
	State CloudState
	TempC float64 // cloudy below this, °C; -25 or 60 if State says that there is none
	LowC  float64 // the lowest it may be, °C; -25 if lower
	HighC float64 // the highest it may be, °C; 60 if higher

	// Crystals of the pure compound (anethole) can grow below CrystalsBelowC, °C, in weeks or when seeded, also in a bottle that
	// would stay clear; MayCrystallise is false if there are none down to -25 °C.
	MayCrystallise bool
	CrystalsBelowC float64
	Crystals       string // the compound
}

// CloudPointOf returns the temperature below which a bottle turns cloudy, with the range that the model leaves open: the
// wider of what the solubility's factor and the heat of solution do, each alone. The drink's own temperature plays no
// part.
//
// For the model and its accuracy see SolubilityOf. Without a calibration the range is tens of degrees wide: that is the
// truth, and a drip of water narrows it.
func CloudPointOf(d Drink, o Oil) (CloudPoint, error) {
	const fn = "louche.CloudPointOf"
	if err := checkUsable(fn, o); err != nil {
		return CloudPoint{}, err
	}
	d.Temp = quantity.Temperature{}
	if err := checkDrink(fn, d, o); err != nil {
		return CloudPoint{}, err
	}
	p := CloudPoint{Drink: d, Oil: o, State: CloudsBelow}
	raw := o.cloudC(d, middle)
	switch {
	case raw <= coldestC:
		p.State, raw = AlwaysClear, coldestC
	case raw >= cloudMostC:
		p.State, raw = AlwaysCloud, cloudMostC
	}
	p.TempC, p.LowC, p.HighC = raw, raw, raw
	for _, v := range variants {
		c := math.Max(coldestC, math.Min(cloudMostC, o.cloudC(d, v))) // the ends are named as ends, see LowC
		p.LowC, p.HighC = math.Min(p.LowC, c), math.Max(p.HighC, c)
	}
	p.crystals()
	return p, nil
}

// cloudC returns the cloud temperature, °C, or an infinity. Since one heat serves all compounds, Σ c/S = 1 has a solution in
// 1/T: 1/T = 1/Tref - (R/ΔH) ln Σ c/S(Tref).
func (o Oil) cloudC(d Drink, v variant) float64 {
	h := o.heat
	switch v.heat {
	case -1:
		h = o.heatLow
	case 1:
		h = o.heatHigh
	}
	perK := 1/o.refK - gasJMolK/h*o.lnLoad(d.OilGL, share(d.Strength), o.refK, v)
	if perK <= 0 {
		return math.Inf(1)
	}
	return 1/perK - 273.15
}

// crystals finds the temperature at which the dissolved compound is as active as its crystals.
func (p *CloudPoint) crystals() {
	for k, q := range p.Oil.parts {
		c, ok := embedded().crystal[q.name]
		if !ok {
			continue
		}
		// ln of the activity over that of the crystal: above 0, crystals can grow.
		over := func(tempK float64) float64 {
			t, err := quantity.Kelvin(tempK)
			if err != nil {
				return 0
			}
			d := p.Drink
			d.Temp = t
			return math.Log(separate(d, p.Oil, share(d.Strength)).Compounds[k].Activity) + c.fusionJMol/gasJMolK*(1/tempK-1/c.meltingK)
		}
		low, high := coldestC+273.15, c.meltingK
		if over(low) <= 0 {
			return
		}
		p.MayCrystallise, p.Crystals = true, q.name
		for range 60 {
			if m := (low + high) / 2; over(m) > 0 {
				low = m
			} else {
				high = m
			}
		}
		p.CrystalsBelowC = low - 273.15
		return
	}
}

// Clarity says whether a bottle stays clear.
type Clarity string

// The three answers.
const (
	StaysClear  Clarity = "clear"
	TurnsCloudy Clarity = "cloudy"
	Undecided   Clarity = "cannot tell: put a bottle there overnight"
)

// At says whether a bottle stays clear at t: clear or cloudy only where the whole range of the cloud temperature says so.
func (p CloudPoint) At(t quantity.Temperature) Clarity {
	switch c := t.C(); {
	case c > p.HighC && p.HighC < cloudMostC:
		return StaysClear
	case c < p.LowC && p.LowC > coldestC:
		return TurnsCloudy
	case p.HighC <= coldestC && c >= coldestC:
		return StaysClear
	}
	return Undecided
}

// MarginC returns by how many °C a store at t is warmer than the cloud temperature; below 0 the bottle is expected to be
// hazy. At says whether the margin can be trusted. For a drink that is clear down to -25 °C, or cloudy up to 60 °C, it counts from
// there.
func (p CloudPoint) MarginC(t quantity.Temperature) float64 { return t.C() - p.TempC }

// String gives the cloud temperature in one line, with its range and what it rests on.
func (p CloudPoint) String() string {
	how := "estimate, not calibrated"
	if p.Oil.Calibrated() {
		how = "calibrated"
		if !p.Oil.heatSeen {
			how += " at one temperature"
		}
	}
	head := string(p.State)
	if p.State == CloudsBelow {
		head = "clouds below " + degrees(p.TempC, 1)
	}
	s := fmt.Sprintf("%v with %s: %s (%s; %s)", p.Drink.Strength, amountText(p.Drink, p.Oil), head, p.rangeText(), how)
	if p.MayCrystallise {
		s += fmt.Sprintf("; crystals of %s can grow below %s (estimate)", p.Crystals, degrees(p.CrystalsBelowC, 0))
	}
	return s
}

func amountText(d Drink, o Oil) string {
	if o.inParts {
		return fmt.Sprintf("%.3g parts of oil", d.OilGL)
	}
	return quantity.Figure(d.OilGL) + " g/L of oil"
}

func (p CloudPoint) rangeText() string {
	low, high := strings.TrimSuffix(degrees(p.LowC, 1), " °C"), degrees(p.HighC, 1)
	if p.LowC <= coldestC {
		low = "below -25"
	}
	if p.HighC >= cloudMostC {
		high = "above 60 °C"
	}
	return low + " to " + high
}

// degrees prints a temperature in °C, never as -0.
func degrees(c float64, decimals int) string {
	scale := math.Pow10(decimals)
	return strconv.FormatFloat(math.Round(c*scale)/scale+0, 'f', decimals, 64) + " °C"
}

// Rows gives the cloud temperature and its range, each as a label, a figure and a unit.
func (p CloudPoint) Rows() [][]string {
	how := " (estimate)"
	if p.Oil.Calibrated() {
		how = " (calibrated)"
	}
	rows := [][]string{{"cloud temperature" + how, strings.TrimSuffix(degrees(p.TempC, 1), " °C"), "°C"}}
	if p.State != CloudsBelow {
		rows[0] = []string{"cloud temperature" + how, string(p.State), ""}
	}
	rows = append(rows, []string{"its range", p.rangeText(), ""})
	if p.MayCrystallise {
		rows = append(rows, []string{"crystals of " + p.Crystals + " can grow below (estimate)", strings.TrimSuffix(degrees(p.CrystalsBelowC, 0), " °C"), "°C"})
	}
	return rows
}
