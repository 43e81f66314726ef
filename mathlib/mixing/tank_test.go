package mixing_test

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/mixing"
	"swanneck/mathlib/quantity"
)

func TestLyingCylinderAgainstPerry(t *testing.T) {
	c := mixing.Cylinder{DiameterMM: 1200, LengthMM: 2500, Lying: true}
	full := the(mixing.CylinderL(c, c.DiameterMM))
	if want := math.Pi * 0.36 * 2500; !near(full, want, 1e-12) {
		t.Errorf("full: %.6f L; want %.6f", full, want)
	}
	for _, r := range tableIn(t, "mixing", "lying_cylinder.csv") {
		got := the(mixing.CylinderL(c, r.number("height_over_diameter")*c.DiameterMM)) / full
		if want := r.number("share_of_volume"); math.Abs(got-want) > 1e-5 {
			t.Errorf("filled to %s of its height it is full to %.6f; Perry gives %.5f", r.text("height_over_diameter"), got, want)
		}
	}
	standing := mixing.Cylinder{DiameterMM: 1000, LengthMM: 2000}
	if got := the(mixing.CylinderL(standing, 1000)); !near(got, 250*math.Pi, 1e-12) {
		t.Errorf("a metre high and wide: %.6f L", got)
	}
}

// Tables with few rows, read between them.
func TestCoarseTablesOfALyingCylinder(t *testing.T) {
	c := mixing.Cylinder{DiameterMM: 1000, LengthMM: 2000, Lying: true}
	full := the(mixing.CylinderL(c, 1000))
	for step, tol := range map[float64]float64{100: 0.0035, 20: 0.0003} {
		table := the(mixing.CylinderTable(c, step))
		worst := 0.0
		for mm := 0.0; mm <= 1000; mm += 2 {
			worst = max(worst, math.Abs(the(mixing.DipL(table, mm, quantity.Temperature{}))-the(mixing.CylinderL(c, mm)))/full)
		}
		if worst > tol {
			t.Errorf("with a row for each %g mm it is off by %.5f of the tank; want at most %g", step, worst, tol)
		}
	}
}

func TestDipsRiseAndComeBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(2, 12).Draw(t, "rows")
		table := mixing.DipTable{Ullage: rapid.Bool().Draw(t, "ullage"), ShellPerC: rapid.SampledFrom([]float64{0, 50e-6}).Draw(t, "shell")}
		mm, litres := 0.0, 5.0
		for range n {
			table.DipsMM, table.VolumesL = append(table.DipsMM, mm), append(table.VolumesL, litres)
			mm += rapid.Float64Range(1, 200).Draw(t, "mm")
			litres += rapid.Float64Range(0.1, 300).Draw(t, "L")
		}
		if table.Ullage {
			for i := range n / 2 {
				table.VolumesL[i], table.VolumesL[n-1-i] = table.VolumesL[n-1-i], table.VolumesL[i]
			}
		}
		temp := celsius(28)
		grown := 1 + table.ShellPerC*8
		for i := range n { // through every row
			if got := the(mixing.DipL(table, table.DipsMM[i], temp)); !near(got, table.VolumesL[i]*grown, 1e-12) {
				t.Fatalf("row %d: %.9g L; the table has %.9g", i, got, table.VolumesL[i]*grown)
			}
		}
		before := math.Inf(-1)
		if table.Ullage {
			before = math.Inf(1)
		}
		for k := range 200 {
			mm := min(table.DipsMM[n-1]*float64(k)/199, table.DipsMM[n-1])
			got := the(mixing.DipL(table, mm, temp))
			if got == before || (got < before) != table.Ullage {
				t.Fatalf("%.9g L at %.6g mm, %.9g before", got, mm, before)
			}
			before = got
			if back := the(mixing.DipForMM(table, got, temp)); math.Abs(the(mixing.DipL(table, back, temp))-got) > 1e-9*got {
				t.Fatalf("%.12g L come back as %.12g", got, the(mixing.DipL(table, back, temp)))
			}
		}
	})
}

func TestDipsOutsideTheTable(t *testing.T) {
	fine := mixing.DipTable{Name: "tank 4", DipsMM: []float64{0, 100, 200}, VolumesL: []float64{10, 90, 170}}
	for want, c := range map[string]struct {
		table mixing.DipTable
		mm    float64
	}{
		"the dip is 200.1 mm; it must be from 0 to 200 mm (the table of tank 4)": {fine, 200.1},
		"the dip is -1 mm":                 {fine, -1},
		"the dip is NaN mm":                {fine, math.NaN()},
		"has 1 dips and 1 volumes":         {mixing.DipTable{DipsMM: []float64{1}, VolumesL: []float64{1}}, 1},
		"the dips must rise":               {mixing.DipTable{DipsMM: []float64{1, 1}, VolumesL: []float64{1, 2}}, 1},
		"set Ullage for dips":              {mixing.DipTable{DipsMM: []float64{1, 2}, VolumesL: []float64{2, 1}}, 1},
		"as dips from the top":             {mixing.DipTable{DipsMM: []float64{1, 2}, VolumesL: []float64{1, 2}, Ullage: true}, 1},
		"expansion of the tank is 0.5 for": {mixing.DipTable{DipsMM: []float64{1, 2}, VolumesL: []float64{1, 2}, ShellPerC: 0.5}, 1},
		"volume 1 is -1 L":                 {mixing.DipTable{DipsMM: []float64{1, 2}, VolumesL: []float64{-1, 2}}, 1},
	} {
		if v, err := mixing.DipL(c.table, c.mm, quantity.Temperature{}); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%v, %v; want %q", v, err, want)
		}
	}
	if v, err := mixing.DipForMM(fine, 171, quantity.Temperature{}); err == nil {
		t.Errorf("171 L stand at %v", v)
	}
	if s, err := mixing.DipSpirit(fine, 100, alcoholometry.Strength{}, quantity.Temperature{}); err == nil {
		t.Errorf("%v without a strength", s)
	}
	if s := the(mixing.DipSpirit(fine, 100, abv(60), celsius(12))); s.VolumeL != 90 || s.Temp != celsius(12) {
		t.Errorf("%v", s)
	}
	for want, c := range map[string]mixing.Cylinder{"give both above 0 mm": {DiameterMM: 100}, "the diameter is -1 mm": {DiameterMM: -1, LengthMM: 3}} {
		if v, err := mixing.CylinderL(c, 0); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%v, %v; want %q", v, err, want)
		}
	}
	if v, err := mixing.CylinderL(mixing.Cylinder{DiameterMM: 100, LengthMM: 300, Lying: true}, 101); err == nil {
		t.Errorf("%v above the tank", v)
	}
	if v, err := mixing.CylinderTable(mixing.Cylinder{DiameterMM: 100, LengthMM: 300}, 0); err == nil {
		t.Errorf("%v with no step", v)
	}
}
