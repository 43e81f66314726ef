package colour

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Keeping is a coloured spirit in its bottle. What is 0 or unset stands for the usual.
type Keeping struct {
	Fresh    Spectrum
	Browned  Spectrum // when all green is gone: a jar of one's own, or Browned of the same pigments
	Loss     Loss     // of FitLoss, at about the bottle's strength
	Strength alcoholometry.Strength
	PathCM   float64 // of the bottle, the unit is cm: about 7 for 700 mL (estimate); must be given, since a thick glass shows more
	Store    quantity.Temperature
	Warmth   Warmth  // ChlorophyllWarmth if unset
	Light    float64 // how many times faster in the light of the shelf than where the loss was read, dimensionless; 1 if 0
	PH       float64 // how many times faster at the bottle's acidity, dimensionless; 1 if 0
}

// Kept is a coloured spirit with its rate of loss worked out; KeepColour makes one.
type Kept struct {
	Keeping    Keeping
	PerDay     float64 // the rate in the store, a share of what is left, dimensionless
	LowPerDay  float64 // by the range of the loss alone, dimensionless
	HighPerDay float64 // by the range of the loss alone, dimensionless
	// The rate with what is not known of the warmth counted in too.
	SpanLowPerDay  float64 // the least, dimensionless
	SpanHighPerDay float64 // the most, dimensionless
	Notes          []string
}

// KeepColour works out how a coloured spirit fades in its store. It fails for a spectrum or a path that is not set, for a rate
// from a strength more than 3 % vol away, and for factors that are not above 0.
//
// Model: absorbance = browned + (fresh - browned) s, s the share of the green left, ds/dt = -k s; k by the equation of Arrhenius, times the
// user's factors for light and acidity. Light matters more than warmth, and no figure for it is published.
func KeepColour(k Keeping) (Kept, error) {
	const fn = "colour.KeepColour"
	if err := checkSpectrum(fn, "the fresh spectrum", k.Fresh); err != nil {
		return Kept{}, err
	}
	if err := checkSpectrum(fn, "the browned spectrum", k.Browned); err != nil {
		return Kept{}, err
	}
	if err := checkLoss(fn, k.Loss); err != nil {
		return Kept{}, err
	}
	if err := alcoholometry.CheckSet(fn, "the strength in the bottle", k.Strength); err != nil {
		return Kept{}, err
	}
	if err := sameStrength(fn, k.Loss.Strength, k.Strength); err != nil {
		return Kept{}, err
	}
	if k.PathCM == 0 {
		return Kept{}, fmt.Errorf("%s: the path is 0 cm; give how thick the bottle is, about 7 cm for 700 mL", fn)
	}
	if k.Light == 0 {
		k.Light = 1
	}
	if k.PH == 0 {
		k.PH = 1
	}
	if k.Warmth == (Warmth{}) {
		k.Warmth = ChlorophyllWarmth()
	}
	for _, c := range []struct {
		what             string
		value, low, high float64
		unit             string
	}{
		{"path", k.PathCM, 0.01, mostPathCM, "cm"},
		{"the factor for light", k.Light, 1e-6, 1e6, ""},
		{"the factor for acidity", k.PH, 1e-6, 1e6, ""},
		{"temperature of the store", k.Store.C(), -25, 60, "°C"},
		{"temperature of the loss", k.Loss.Temp.C(), -25, 60, "°C"},
		{"activation energy", k.Warmth.KJMol, 1, 300, "kJ/mol"},
		{"its lower end", k.Warmth.LowKJMol, -300, k.Warmth.KJMol, "kJ/mol"},
		{"its upper end", k.Warmth.HighKJMol, k.Warmth.KJMol, 600, "kJ/mol"},
	} {
		if err := quantity.CheckRange(fn, c.what, c.value, c.low, c.high, c.unit, ""); err != nil {
			return Kept{}, err
		}
	}
	f := k.Warmth.Factor(k.Loss.Temp, k.Store) * k.Light * k.PH
	low, high := k.Warmth.FactorRange(k.Loss.Temp, k.Store)
	notes := []string{"as light as where the loss was read; light matters more than warmth, and no figure for it is published"}
	if k.Light != 1 {
		notes = []string{fmt.Sprintf("light of the shelf counted as %g times that of the readings: your own figure", k.Light)}
	}
	if v := k.Strength.ABV(); v >= 30 && v <= 50 {
		notes = append(notes, "pure chlorophyll a fades fastest near 40 % of ethanol: at 20 °C from 0.013 per day at other strengths to 13.6 there (Shen and others, 2010)")
	}
	return Kept{Keeping: k, Notes: notes, PerDay: k.Loss.PerDay * f, LowPerDay: k.Loss.LowPerDay * f, HighPerDay: k.Loss.HighPerDay * f,
		SpanLowPerDay: k.Loss.LowPerDay * low * k.Light * k.PH, SpanHighPerDay: k.Loss.HighPerDay * high * k.Light * k.PH}, nil
}

// SpectrumAt returns the spectrum when the share left of the green is still there, dimensionless, from 0 to 1.
func (k Kept) SpectrumAt(left float64) Spectrum {
	const fn = "colour.Kept.SpectrumAt"
	if err := quantity.CheckRange(fn, "share left", left, 0, 1, "", ""); err != nil {
		panic(err)
	}
	k.must(fn)
	s := Spectrum{set: true, estimate: join(k.Keeping.Fresh.estimate, k.Keeping.Browned.estimate)}
	for i := range s.perCM {
		s.perCM[i] = k.Keeping.Browned.perCM[i]*(1-left) + k.Keeping.Fresh.perCM[i]*left
	}
	return s
}

func (k Kept) must(function string) {
	k.Keeping.Fresh.must(function)
	k.Keeping.Browned.must(function)
	if k.PerDay <= 0 {
		panic(&quantity.RangeError{Func: function, Param: "the loss", Value: k.PerDay, Min: math.SmallestNonzeroFloat64, Max: math.Inf(1), Unit: "per day", Source: "KeepColour makes it"})
	}
}

// Left returns the share of the green that is left after some days, dimensionless.
func (k Kept) Left(days float64) float64 {
	const fn = "colour.Kept.Left"
	k.must(fn)
	if err := quantity.CheckRange(fn, "time", days, 0, math.MaxFloat64, "days", ""); err != nil {
		panic(err)
	}
	return math.Exp(-k.PerDay * days)
}

// After returns the colour in the bottle after some days. It panics with a *quantity.RangeError for a time below 0.
func (k Kept) After(days float64) Seen { return k.SpectrumAt(k.Left(days)).Through(k.Keeping.PathCM) }

// Stay is a time at a temperature.
type Stay struct {
	Days float64 // the unit is days
	Temp quantity.Temperature
}

// AfterStays returns the share of the green left after several stays, one after the other, dimensionless, in the light of the
// Keeping.
func (k Kept) AfterStays(stays ...Stay) float64 {
	const fn = "colour.Kept.AfterStays"
	k.must(fn)
	sum := 0.0
	for i, s := range stays {
		if err := quantity.CheckRange(fn, fmt.Sprintf("time of stay %d", i+1), s.Days, 0, math.MaxFloat64, "days", ""); err != nil {
			panic(err)
		}
		sum += k.PerDay * k.Keeping.Warmth.Factor(k.Keeping.Store, s.Temp) * s.Days
	}
	return math.Exp(-sum)
}

// Series is how the colour looks on several days, in columns for charts.
type Series struct {
	Days       []float64 // the unit is days
	Difference []float64 // from the fresh colour, CIEDE2000, dimensionless
	L, A, B    []float64 // L*, a*, b*, dimensionless
	Labels     []string  // such as "day 30"
	Hex        []string  // colours for swatches, such as "#dfe8c4"
	Notes      []string  // what there is to say of each: mostly the difference, and whether a screen can show it
	PathCM     float64   // the unit is cm
	Estimate   string
}

// On returns how the colour looks on the days given, for a chart and for swatches.
func (k Kept) On(days ...float64) Series {
	fresh := k.SpectrumAt(1).Through(k.Keeping.PathCM)
	s := Series{PathCM: k.Keeping.PathCM, Estimate: fresh.Estimate}
	for _, d := range days {
		c := k.After(d)
		diff := Difference(fresh.Lab, c.Lab)
		s.Days, s.Difference = append(s.Days, d), append(s.Difference, diff)
		s.L, s.A, s.B = append(s.L, c.Lab.L), append(s.A, c.Lab.A), append(s.B, c.Lab.B)
		s.Labels, s.Hex = append(s.Labels, fmt.Sprintf("day %g", d)), append(s.Hex, c.Swatch.Hex())
		note := fmt.Sprintf("differs by %.1f", diff)
		if c.Swatch.Beyond {
			note += "; " + c.Swatch.Note()
		}
		s.Notes = append(s.Notes, note)
	}
	return s
}

// Rows gives the days, a head first, then day, share left, L*, a*, b*, difference and colour.
func (s Series) Rows() [][]string {
	how := ""
	if s.Estimate != "" {
		how = ", estimate"
	}
	rows := [][]string{{"day", "L*", "a*", "b*", "difference (CIEDE2000" + how + ")", fmt.Sprintf("through %g cm", s.PathCM)}}
	for i, d := range s.Days {
		rows = append(rows, []string{fmt.Sprintf("%g", d), fmt.Sprintf("%.1f", s.L[i]), fmt.Sprintf("%.1f", s.A[i]+0), fmt.Sprintf("%.1f", s.B[i]+0),
			fmt.Sprintf("%.1f", s.Difference[i]), s.Hex[i]})
	}
	return rows
}

// ShelfLife is how long a bottle keeps its colour.
type ShelfLife struct {
	Limit    float64 // the difference from the fresh colour that ends it, CIEDE2000, dimensionless
	PathCM   float64 // the unit is cm
	Never    bool    // not even the browned colour is so far away
	Farthest float64 // how far the colour ever gets, CIEDE2000, dimensionless
	Left     float64 // share of the green left at the end, dimensionless
	Days     float64 // the unit is days
	LowDays  float64 // by the range of the loss; the unit is days
	HighDays float64 // by the range of the loss; the unit is days
	// With what is not known of the warmth counted in too; the same as above in a store as warm as the loss was read at.
	SpanLowDays  float64 // the unit is days
	SpanHighDays float64 // the unit is days
	NoUpperEnd   bool    // the loss may be too slow to end it: HighDays and SpanHighDays are 0
	Estimate     string
}

// ShelfLife returns after how many days the colour has moved by limit, CIEDE2000, from the fresh one. Time enters only as rate times
// days, so the range of the days is that of the rate. It panics with a *quantity.RangeError unless the limit is above 0 and at most
// 100; usual are 1, just seen side by side, and 2 to 3 (common practice, no source).
func (k Kept) ShelfLife(limit float64) ShelfLife {
	const fn = "colour.Kept.ShelfLife"
	k.must(fn)
	if err := quantity.CheckRange(fn, "limit", limit, 1e-3, 100, "", "CIEDE2000"); err != nil {
		panic(err)
	}
	fresh := k.SpectrumAt(1).Through(k.Keeping.PathCM)
	r := ShelfLife{Limit: limit, PathCM: k.Keeping.PathCM, Estimate: fresh.Estimate}
	moved := func(left float64) float64 {
		s := k.SpectrumAt(left)
		return Difference(fresh.Lab, lab(s.xyz(k.Keeping.PathCM), white()))
	}
	const steps = 200
	before, end := 1.0, -1.0
	for i := steps - 1; i >= 0; i-- {
		left := float64(i) / steps
		d := moved(left)
		r.Farthest = math.Max(r.Farthest, d)
		if end < 0 && d >= limit {
			a, b := before, left // not there yet at a, there at b
			for range 60 {
				if m := (a + b) / 2; moved(m) >= limit {
					b = m
				} else {
					a = m
				}
			}
			end = (a + b) / 2
		}
		before = left
	}
	if end <= 0 {
		r.Never = true
		return r
	}
	kt := -math.Log(end)
	r.Left, r.Days, r.LowDays, r.SpanLowDays = end, kt/k.PerDay, kt/k.HighPerDay, kt/k.SpanHighPerDay
	if k.SpanLowPerDay > 0 {
		r.HighDays, r.SpanHighDays = kt/k.LowPerDay, kt/k.SpanLowPerDay
	} else {
		r.NoUpperEnd = true
	}
	return r
}

// String gives the shelf life with its ranges in one line.
func (s ShelfLife) String() string {
	head := fmt.Sprintf("difference of %g through %g cm: ", s.Limit, s.PathCM)
	if s.Never {
		return head + fmt.Sprintf("never; fully browned it is %.1f away", s.Farthest)
	}
	head += fmt.Sprintf("%s days (%s to %s)", daysText(s.Days), daysText(s.LowDays), s.end(s.HighDays))
	if s.SpanLowDays != s.LowDays {
		head += fmt.Sprintf("; with what is not known of the warmth %s to %s", daysText(s.SpanLowDays), s.end(s.SpanHighDays))
	}
	if s.Estimate != "" {
		head += " (estimate: " + s.Estimate + ")"
	}
	return head
}

// daysText prints days without more digits than they have.
func daysText(days float64) string {
	if days < 9.95 {
		return fmt.Sprintf("%.1f", days)
	}
	return fmt.Sprintf("%.0f", days)
}

func (s ShelfLife) end(days float64) string {
	if s.NoUpperEnd {
		return "no end"
	}
	return daysText(days)
}

// Rows gives the shelf life, each row a label, a figure and a unit.
func (s ShelfLife) Rows() [][]string {
	how := ""
	if s.Estimate != "" {
		how = " (estimate)"
	}
	label := fmt.Sprintf("colour moves by %g (CIEDE2000, %g cm) in%s", s.Limit, s.PathCM, how)
	if s.Never {
		return [][]string{{label, "never", ""}, {"fully browned it is away by" + how, fmt.Sprintf("%.1f", s.Farthest), ""}}
	}
	return [][]string{
		{label, daysText(s.Days), "days"},
		{"range by the readings", daysText(s.LowDays) + " to " + s.end(s.HighDays), "days"},
		{"range with the warmth", daysText(s.SpanLowDays) + " to " + s.end(s.SpanHighDays), "days"},
		{"green left then", fmt.Sprintf("%.0f", 100*s.Left), "%"},
	}
}
