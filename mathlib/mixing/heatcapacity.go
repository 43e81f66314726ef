package mixing

import (
	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// capacities holds measured specific heats, kJ/(kg K), by mass fraction and temperature, °C.
//
// Source: water: CRC Handbook of Chemistry and Physics, at one atmosphere (from memory); 11 to 60 % by mass: Å. Melinder,
// Properties of secondary working fluids for indirect systems (2010), from his fit; 80 and 100 %: Perry's Chemical
// Engineers' Handbook, 7th edition, table 2-206 (61 and 100 % by moles), times 4.184.
var capacities = []struct {
	w    float64
	tC   []float64
	cKJK []float64
}{
	{0, []float64{0, 20, 40}, []float64{4.2176, 4.1818, 4.1785}},
	{0.11, []float64{0, 10, 20}, []float64{4.3736, 4.3495, 4.3318}},
	{0.15, []float64{0, 10, 20}, []float64{4.3837, 4.3672, 4.3550}},
	{0.20, []float64{0, 10, 20}, []float64{4.3488, 4.3442, 4.3417}},
	{0.25, []float64{0, 10, 20}, []float64{4.2739, 4.2818, 4.2907}},
	{0.30, []float64{0, 10, 20}, []float64{4.1704, 4.1906, 4.2111}},
	{0.35, []float64{0, 10, 20}, []float64{4.0480, 4.0793, 4.1107}},
	{0.40, []float64{0, 10, 20}, []float64{3.9148, 3.9555, 3.9965}},
	{0.45, []float64{0, 10, 20}, []float64{3.7768, 3.8253, 3.8743}},
	{0.50, []float64{0, 10, 20}, []float64{3.6388, 3.6937, 3.7493}},
	{0.55, []float64{0, 10, 20}, []float64{3.5039, 3.5643, 3.6259}},
	{0.60, []float64{0, 10, 20}, []float64{3.3736, 3.4400, 3.5076}},
	{0.79998, []float64{3, 23, 41}, []float64{2.803, 3.042, 3.130}},
	{1, []float64{3, 23, 41}, []float64{2.259, 2.414, 2.598}},
}

// HeatCapacityKJKgK returns the specific heat of a mixture of ethanol and water, kJ/(kg K), at t from -20 to 60 °C. It
// fails with an *alcoholometry.UnsetError or a *quantity.RangeError.
//
// Source: Melinder (2010) and Perry, 7th edition, table 2-206; straight lines between their rows, and beyond them by
// temperature. The two differ by up to 5 % near 40 % by mass; take the figure as good to 5 %.
func HeatCapacityKJKgK(s alcoholometry.Strength, t quantity.Temperature) (float64, error) {
	const fn = "mixing.HeatCapacityKJKgK"
	if err := alcoholometry.CheckSet(fn, "the strength", s); err != nil {
		return 0, err
	}
	if err := quantity.CheckRange(fn, "temperature", t.C(), -20, 60, "°C", "Melinder (2010), Perry table 2-206"); err != nil {
		return 0, err
	}
	return capacityKJKgK(s.ABW()/100, t.C()), nil
}

func capacityKJKgK(w, tC float64) float64 {
	i := 1
	for i < len(capacities)-1 && w > capacities[i].w {
		i++
	}
	a, b := &capacities[i-1], &capacities[i]
	low, high := onLine(a.tC, a.cKJK, tC), onLine(b.tC, b.cKJK, tC)
	return low + (high-low)*(w-a.w)/(b.w-a.w)
}

// onLine interpolates straight between the rows, and goes on straight beyond the ends.
func onLine(xs, ys []float64, x float64) float64 {
	i := 1
	for i < len(xs)-1 && x > xs[i] {
		i++
	}
	return ys[i-1] + (ys[i]-ys[i-1])*(x-xs[i-1])/(xs[i]-xs[i-1])
}
