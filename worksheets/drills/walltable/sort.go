package walltable

import (
	"fmt"
	"strconv"
	"strings"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/mixing"
	"swanneck/mathlib/quantity"
)

// Sort is one sort of table, by the word that asks for it.
type Sort string

// The sorts of tables.
const (
	Strength Sort = "strength" // true strength at 20 °C, % vol, by reading and °C
	Proof    Sort = "proof"    // true proof at 60 °F by reading and °F
	Water    Sort = "water"    // litres of water to 100 L, by the strengths before and after, % vol
	Litres   Sort = "litres"   // what litres are multiplied by to give litres at 20 °C, by strength, % vol, and °C
	Gallons  Sort = "gallons"  // what gallons are multiplied by to give gallons at 60 °F, by proof and °F
	Mass     Sort = "mass"     // per cent by mass, by strength, % vol, in tens and units
	Weight   Sort = "weight"   // kilograms (true mass) of 1000 L at 20 °C, by strength, % vol, in tens and units
)

// Sorts lists all sorts, in the order in which a book of tables has them.
func Sorts() []Sort { return []Sort{Strength, Proof, Water, Litres, Gallons, Mass, Weight} }

// sort is what a Sort stands for.
type sort struct {
	title, short   string
	down, across   axis
	unit           string // of the figures, as printed; "" for a factor
	decimals       int
	tens           bool // down is tens, across units; they are added
	figure         func(down, across float64, at quantity.Temperature) (float64, error)
	reference      quantity.Temperature // the usual one
	otherReference bool                 // whether another one can be asked for
	notes          func(at string) []string
}

// axis is an edge of a table.
type axis struct {
	label, unit string
	usual       []float64
	strong      float64 // the row or column at which nothing is corrected, if hasStrong
	hasStrong   bool
}

const (
	source   = "Density of ethanol and water: OIML R 22 (1975), general formula."
	planning = " For planning: a label and a return need verified instruments and the tables of the authority."
)

var sorts = map[Sort]sort{
	Strength: {
		title: "True strength at 20 °C, % vol", short: "true strengths",
		down:   axis{label: "reading", unit: "% vol", usual: steps(30, 80, 1)},
		across: axis{label: "temperature of spirit and alcoholometer", unit: "°C", usual: steps(8, 32, 2), strong: 20, hasStrong: true},
		unit:   "% vol", decimals: 1, otherReference: true, figure: trueStrength,
		notes: func(at string) []string {
			return []string{
				"Read the alcoholometer (glass, marked in % vol at " + at + ") and the thermometer in the same jar. Row: the reading. Column: the temperature. The figure is the true strength at 20 °C. Between two rows take the share in between.",
				source + " Glass: ISO 1768, 25e-6 per °C. Sugar, extract and oil make any alcoholometer show too little." + planning,
			}
		},
	},
	Proof: {
		title: "True proof at 60 °F, US proof", short: "true proofs",
		down:   axis{label: "reading", unit: "proof", usual: steps(80, 150, 1)},
		across: axis{label: "temperature of spirit and hydrometer", unit: "°F", usual: steps(44, 88, 4), strong: 60, hasStrong: true},
		unit:   "proof", decimals: 1, figure: trueProof, reference: fahrenheit(60),
		notes: func(string) []string {
			return []string{
				"Read the hydrometer (glass, marked in US proof at 60 °F) and the thermometer in the same jar. Row: the reading. Column: the temperature. The figure is the true proof at 60 °F. Between two rows take the share in between.",
				source + " Glass: ISO 1768, 25e-6 per °C; air of 1.2 kg/m³. For a return use the printed gauging tables of 27 CFR part 30.",
			}
		},
	},
	Water: {
		title: "Litres of water to 100 L of spirit", short: "water to 100 L",
		down:   axis{label: "strength now", unit: "% vol", usual: steps(45, 96, 1)},
		across: axis{label: "strength wanted", unit: "% vol", usual: []float64{60, 55, 50, 48, 46, 45, 43, 42, 40, 38, 37.5, 35, 30}},
		unit:   "L", decimals: 1, otherReference: true, figure: water,
		notes: func(at string) []string {
			return []string{
				"Row: the true strength of the spirit. Column: the strength wanted. The figure is the litres of water to every 100 L of spirit. Strengths, spirit and water at " + at + ". The sum of the two is more than the volume that comes of it: the mixture shrinks.",
				source + planning,
			}
		},
	},
	Litres: {
		title: "Factor from litres as measured to litres at 20 °C", short: "factors to 20 °C",
		down:   axis{label: "true strength", unit: "% vol", usual: steps(30, 95, 5)},
		across: axis{label: "temperature of the spirit", unit: "°C", usual: steps(8, 32, 2), strong: 20, hasStrong: true},
		unit:   "", decimals: 4, figure: litres,
		notes: func(string) []string {
			return []string{
				"Multiply the litres in the tank by the factor to get the litres at 20 °C; divide litres at 20 °C by it to get the litres in the tank. Row: the true strength at 20 °C. Column: the temperature. The tank's own growth is not in it.",
				source + planning,
			}
		},
	},
	Gallons: {
		title: "Factor from gallons as measured to gallons at 60 °F", short: "factors to 60 °F",
		down:   axis{label: "true proof", unit: "proof", usual: steps(60, 190, 10)},
		across: axis{label: "temperature of the spirit", unit: "°F", usual: steps(44, 88, 4), strong: 60, hasStrong: true},
		unit:   "", decimals: 3, figure: gallons, reference: fahrenheit(60),
		notes: func(string) []string {
			return []string{
				"Multiply the gallons in the tank by the factor to get the gallons at 60 °F. Row: the true proof at 60 °F. Column: the temperature. The tank's own growth is not in it.",
				source + " For a return use the printed gauging tables of 27 CFR part 30.",
			}
		},
	},
	Mass: {
		title: "Per cent by mass for per cent by volume at 20 °C", short: "per cent by mass",
		down:   axis{label: "% vol, tens", unit: "% vol", usual: steps(0, 90, 10)},
		across: axis{label: "% vol, units", unit: "% vol", usual: steps(0, 9, 1)},
		unit:   "% mass", decimals: 2, tens: true, figure: massPct,
		notes: func(string) []string {
			return []string{
				"Row: the tens of the strength by volume. Column: its units. So 72 % vol stands in the row 70 and the column 2.",
				source + planning,
			}
		},
	},
	Weight: {
		title: "Kilograms of 1000 L at 20 °C", short: "weights of 1000 L",
		down:   axis{label: "% vol, tens", unit: "% vol", usual: steps(0, 90, 10)},
		across: axis{label: "% vol, units", unit: "% vol", usual: steps(0, 9, 1)},
		unit:   "kg", decimals: 1, tens: true, figure: weightKg,
		notes: func(string) []string {
			return []string{
				"Row: the tens of the strength by volume. Column: its units. So 72 % vol stands in the row 70 and the column 2. Masses are true masses; scales in air show about 0.1 % less.",
				source + planning,
			}
		},
	},
}

func trueStrength(reading, c float64, at quantity.Temperature) (float64, error) {
	t, err := quantity.Celsius(c)
	if err != nil {
		return 0, err
	}
	s, err := alcoholometry.TrueStrength(reading, t, alcoholometry.MarkedAt(at))
	if err != nil {
		return 0, err
	}
	return s.ABV(), nil
}

func trueProof(reading, f float64, _ quantity.Temperature) (float64, error) {
	t, err := quantity.Fahrenheit(f)
	if err != nil {
		return 0, err
	}
	s, err := alcoholometry.TrueProof(reading, t)
	if err != nil {
		return 0, err
	}
	return s.USProof(), nil
}

func water(from, to float64, at quantity.Temperature) (float64, error) {
	before, err := alcoholometry.ABVAt(from, at)
	if err != nil {
		return 0, err
	}
	after, err := alcoholometry.ABVAt(to, at)
	if err != nil {
		return 0, err
	}
	r, err := mixing.Reduce(alcoholometry.Spirit{VolumeL: 100, Strength: before, Temp: at}, after, mixing.WaterAt(at))
	if err != nil {
		return 0, err
	}
	return r.WaterL, nil
}

func litres(strength, c float64, _ quantity.Temperature) (float64, error) {
	s, err := alcoholometry.ABV(strength)
	if err != nil {
		return 0, err
	}
	t, err := quantity.Celsius(c)
	if err != nil {
		return 0, err
	}
	warm, err := alcoholometry.DensityKgM3(s, t)
	if err != nil {
		return 0, err
	}
	at20, err := alcoholometry.DensityKgM3(s, quantity.Temperature{})
	return warm / at20, err
}

func gallons(proof, f float64, _ quantity.Temperature) (float64, error) {
	s, err := alcoholometry.USProof(proof)
	if err != nil {
		return 0, err
	}
	t, err := quantity.Fahrenheit(f)
	if err != nil {
		return 0, err
	}
	return alcoholometry.USVolumeFactor(s, t)
}

func massPct(tens, units float64, _ quantity.Temperature) (float64, error) {
	s, err := alcoholometry.ABV(tens + units)
	if err != nil {
		return 0, err
	}
	return s.ABW(), nil
}

func weightKg(tens, units float64, _ quantity.Temperature) (float64, error) {
	s, err := alcoholometry.ABV(tens + units)
	if err != nil {
		return 0, err
	}
	return alcoholometry.DensityKgM3(s, quantity.Temperature{})
}

func fahrenheit(f float64) quantity.Temperature {
	t, err := quantity.Fahrenheit(f)
	if err != nil {
		panic(err) // of a constant above
	}
	return t
}

// steps returns the numbers from low to high.
func steps(low, high, step float64) []float64 {
	var out []float64
	for i := 0; ; i++ {
		x := low + float64(i)*step
		if x > high+step/1e6 {
			return out
		}
		out = append(out, x)
	}
}

// find returns what a sort stands for, or an error that lists the sorts there are.
func find(function string, s Sort) (sort, error) {
	d, ok := sorts[s]
	if !ok {
		names := make([]string, len(sorts))
		for i, n := range Sorts() {
			names[i] = string(n)
		}
		return sort{}, fmt.Errorf("walltable.%s: there is no table %q; want %s", function, string(s), strings.Join(names, ", "))
	}
	return d, nil
}

// Title is what stands above the table.
func (s Sort) Title() string { return sorts[s].title }

// Name is what the table is called in a sentence, behind "the table of".
func (s Sort) Name() string { return sorts[s].short }

// Unit is the unit of the table's figures; a factor has none.
func (s Sort) Unit() string { return sorts[s].unit }

// Decimals is the number of decimals that the table prints.
func (s Sort) Decimals() int { return sorts[s].decimals }

// Exact returns the figure that a cell rounds, in the unit of the table (dimensionless for a factor): at the row down and
// the column across, with the usual reference temperature. Mass and Weight take the strength as down and 0 as across.
// It fails for a sort that there is not, and where the packages of mathlib fail.
func (s Sort) Exact(down, across float64) (float64, error) {
	d, err := find("Exact", s)
	if err != nil {
		return 0, err
	}
	return d.figure(down, across, d.reference)
}

// Cell returns the figure as the table prints it, in the unit of the table (dimensionless for a factor). It fails as Exact
// does.
func (s Sort) Cell(down, across float64) (float64, error) {
	x, err := s.Exact(down, across)
	if err != nil {
		return 0, err
	}
	return Round(x, sorts[s].decimals), nil
}

// Round returns x rounded to so many decimals, as print shows it; dimensionless here: in the unit of x.
func Round(x float64, decimals int) float64 {
	y, err := strconv.ParseFloat(strconv.FormatFloat(x, 'f', decimals, 64), 64)
	if err != nil {
		panic(err) // a number that was just written
	}
	return y + 0 // no "-0"
}
