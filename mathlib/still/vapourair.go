package still

import (
	"embed"
	"fmt"
	"math"
	"strings"
	"sync"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/internal/datafile"
	"swanneck/mathlib/quantity"
)

//go:embed data/*.csv
var files embed.FS

// localRules ends every list of cautions.
const localRules = "local codes and licensed practice come first"

// Flammable says between which shares of the air a vapour burns.
type Flammable struct {
	Name     string
	LowerPct float64 // of the volume, per cent
	UpperPct float64 // of the volume, per cent
	LowerGM3 float64 // the lower limit as mass, 0 where the source does not print it; the unit is g/m³
	Source   string  // with its status where it was not read
}

// String gives the limits in one line.
func (f Flammable) String() string {
	return fmt.Sprintf("%s burns from %g to %g %% of the air (%s)", f.Name, f.LowerPct, f.UpperPct, f.Source)
}

var flammable = sync.OnceValue(func() []Flammable {
	rows, err := datafile.Read(files, "data/flammable.csv")
	if err != nil {
		panic(err) // a test reads it
	}
	var out []Flammable
	for _, r := range rows {
		out = append(out, Flammable{r.Text("name"), r.Number("lower_pct"), r.Number("upper_pct"), r.Number("lower_g_m3"), sourceOf(r)})
		if err := r.Err(); err != nil {
			panic(err)
		}
	}
	return out
})

// sourceOf returns the source of a row as it is shown, with its status and note.
func sourceOf(r datafile.Row) string {
	status, source, note := r.Source()
	if status != "seen" {
		source += ", from " + status
	}
	if note != "" {
		source += "; " + note
	}
	return source
}

// FlammableLimits returns the published limits of ethanol's and methanol's vapour.
func FlammableLimits() []Flammable { return append([]Flammable(nil), flammable()...) }

// Leak is spirit that gets into the air of a room as vapour.
type Leak struct {
	LH           float64 // spirit that evaporates, L/h at 20 °C
	Strength     alcoholometry.Strength
	MixingFactor float64 // how much more air a room takes than one that mixes at once, dimensionless, from 1; 5 if 0 (3 to 10 are usual)
	OfLowerPct   float64 // share of the lower flammable limit to stay under, per cent; 25 if 0
}

// Ventilation is the air that a leak needs.
type Ventilation struct {
	EthanolGH    float64 // vapour of ethanol; the unit is g/h
	AirM3H       float64 // air, with the mixing factor; the unit is m³/h
	PlainM3H     float64 // air if it mixed at once; the unit is m³/h
	ForPeopleM3H float64 // air to stay under 1000 parts per million, the usual limit for people, with the mixing factor; the unit is m³/h
	MixingFactor float64 // dimensionless
	OfLowerPct   float64 // share of the lower flammable limit, per cent
	CeilingGM3   float64 // ethanol in the air at that share; the unit is g/m³
	cautions     []string
}

// exposureGM3 is 1000 parts per million of ethanol by volume at 25 °C, g/m³. Source: 29 CFR 1910.1000, table Z-1
// (1000 ppm, 1900 mg/m³); 46.069 g over 24.47 L.
const exposureGM3 = 1.88

// VentilationFor returns the air that keeps the vapour of a leak under a share of its lower flammable limit: grams an hour over
// grams in a cubic metre, times the mixing factor. All of the ethanol is taken to evaporate.
//
// Source: dilution ventilation as industrial hygiene reckons it (from memory); the lower limit of 59 g/m³ is that of IEC
// 60079-20-1, the lowest published one.
func VentilationFor(l Leak) (Ventilation, error) {
	const fn = "still.VentilationFor"
	if err := alcoholometry.CheckSet(fn, "the strength of the leak", l.Strength); err != nil {
		return Ventilation{}, err
	}
	if l.MixingFactor == 0 {
		l.MixingFactor = 5
	}
	if l.OfLowerPct == 0 {
		l.OfLowerPct = 25
	}
	for _, c := range []struct {
		what      string
		v, lo, hi float64
		unit      string
	}{{"leak", l.LH, 0, math.Inf(1), "L/h"}, {"mixing factor", l.MixingFactor, 1, 100, ""}, {"share of the lower limit", l.OfLowerPct, 0.1, 100, "%"}} {
		if err := quantity.CheckRange(fn, c.what, c.v, c.lo, c.hi, c.unit, ""); err != nil {
			return Ventilation{}, err
		}
	}
	kg := alcoholometry.Spirit{VolumeL: l.LH, Strength: l.Strength}.MassKg()
	v := Ventilation{EthanolGH: 10 * kg * l.Strength.ABW(), MixingFactor: l.MixingFactor, OfLowerPct: l.OfLowerPct}
	v.CeilingGM3 = lowestLimitGM3() * l.OfLowerPct / 100
	v.PlainM3H = v.EthanolGH / v.CeilingGM3
	v.AirM3H = v.PlainM3H * l.MixingFactor
	v.ForPeopleM3H = v.EthanolGH / exposureGM3 * l.MixingFactor
	v.cautions = []string{
		fmt.Sprintf("ethanol burns from %g %% of the air on; its vapour is heavier than air and lies on the floor: draw the air off low down", lowestLimitPct()),
		"no flame, no unprotected switch or motor, nothing that can spark within reach of the vapour",
		localRules,
	}
	return v, nil
}

func lowestLimitGM3() float64 {
	low := math.Inf(1)
	for _, f := range flammable() {
		if f.Name == "ethanol" && f.LowerGM3 > 0 {
			low = math.Min(low, f.LowerGM3)
		}
	}
	return low
}

func lowestLimitPct() float64 {
	low := math.Inf(1)
	for _, f := range flammable() {
		if f.Name == "ethanol" {
			low = math.Min(low, f.LowerPct)
		}
	}
	return low
}

// String gives the air in one line.
func (v Ventilation) String() string {
	return fmt.Sprintf("%.0f g/h of ethanol need %.0f m³/h of air to stay under %g %% of the lower flammable limit (mixing factor %g), %.0f m³/h for people in it",
		v.EthanolGH, v.AirM3H, v.OfLowerPct, v.MixingFactor, v.ForPeopleM3H)
}

// Rows gives the air as a table, each row a label, a figure and a unit.
func (v Ventilation) Rows() [][]string {
	return [][]string{
		{"vapour of ethanol", fmt.Sprintf("%.0f", v.EthanolGH), "g/h"},
		{fmt.Sprintf("air to stay under %g %% of the lower flammable limit", v.OfLowerPct), fmt.Sprintf("%.0f", v.AirM3H), "m³/h"},
		{"of it if the air mixed at once", fmt.Sprintf("%.0f", v.PlainM3H), "m³/h"},
		{"air for people, under 1000 parts per million", fmt.Sprintf("%.0f", v.ForPeopleM3H), "m³/h"},
		{"cautions", strings.Join(v.cautions, "; "), ""},
	}
}

// Cautions lists what to mind, a line each.
func (v Ventilation) Cautions() []string { return append([]string(nil), v.cautions...) }
