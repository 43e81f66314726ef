package packing_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/packing"
	"swanneck/mathlib/quantity"
)

// A bottle of a gallon marked at 60 °F: the weight in air and the volume factors of 27 CFR part 30.
func TestFillAgainstTheGaugingTables(t *testing.T) {
	checked := map[string]int{}
	for _, r := range table(t, "gallon_weights.csv") {
		b := packing.Bottle{NominalL: quantity.USGallonsToL(1), Strength: proof(r.number("proof")), Temp: fahrenheit(r.number("t_F")), MarkedAt: fahrenheit(60)}
		var got float64
		switch r.text("quantity") {
		case "lb":
			b.NominalL *= r.number("gallons")
			got = quantity.KgToPounds(the(packing.FillBottle(b)).NetKg)
		case "factor":
			f := the(packing.FillBottle(b))
			got = f.ContentsL / f.VolumeL
		default:
			t.Fatalf("nothing reckons %s", r.text("quantity"))
		}
		checked[r.text("quantity")]++
		if want, tol := r.number("value"), r.number("tolerance"); math.Abs(got-want) > tol {
			t.Errorf("%s at %g proof, %g °F = %.5f; %s gives %g ± %g", r.text("quantity"), r.number("proof"), r.number("t_F"), got, r.text("source"), want, tol)
		}
	}
	if checked["lb"] == 0 || checked["factor"] == 0 {
		t.Errorf("only %v were checked", checked)
	}
}

func drawBottle(t *rapid.T) packing.Bottle {
	return packing.Bottle{
		NominalL: rapid.Float64Range(0.02, 5).Draw(t, "nominal"),
		OverL:    rapid.Float64Range(-0.005, 0.02).Draw(t, "over"),
		Strength: abw(rapid.Float64Range(0, 100).Draw(t, "strength")),
		Temp:     celsius(rapid.Float64Range(0, 40).Draw(t, "t")),
		TareKg:   rapid.Float64Range(0, 2).Draw(t, "tare"),
		MarkedAt: celsius(rapid.Float64Range(0, 40).Draw(t, "marked")),
	}
}

func TestWeighingGoesBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := drawBottle(t)
		f := the(packing.FillBottle(b))
		back := the(packing.ContentsL(packing.Weighing{GrossKg: f.GrossKg, TareKg: b.TareKg, Strength: b.Strength, Temp: b.Temp, MarkedAt: b.MarkedAt}))
		if math.Abs(back-f.ContentsL) > 1e-12*(1+b.TareKg/f.NetKg) {
			t.Fatalf("%.12g L weighed as %.12g L", f.ContentsL, back)
		}
		kg := f.VolumeL / 1000 * the(alcoholometry.DensityKgM3(b.Strength, b.Temp))
		if math.Abs(kg-f.MassKg) > 1e-12*kg {
			t.Fatalf("%.12g L at %v weigh %.12g kg; the filling says %.12g", f.VolumeL, b.Temp, kg, f.MassKg)
		}
		if f.NetKg >= f.MassKg {
			t.Fatalf("the balance shows %.12g kg of %.12g: the air does not lift", f.NetKg, f.MassKg)
		}
	})
}

func TestColdSpiritTakesLessRoom(t *testing.T) {
	last := 0.0
	for c := 0.0; c <= 40; c += 2 {
		f := the(packing.FillBottle(packing.Bottle{NominalL: 0.7, Strength: abv(60), Temp: celsius(c)}))
		if f.VolumeL <= last {
			t.Errorf("at %g °C a bottle takes %.6f L, at %g °C %.6f", c, f.VolumeL, c-2, last)
		}
		last = f.VolumeL
		if c == 20 && math.Abs(f.VolumeL-0.7) > 1e-15 {
			t.Errorf("at 20 °C a bottle of 0.7 L takes %.15g L", f.VolumeL)
		}
	}
}

func TestFillRefuses(t *testing.T) {
	fine := packing.Bottle{NominalL: 0.7, Strength: abv(40)}
	for name, change := range map[string]func(*packing.Bottle){
		"no nominal volume": func(b *packing.Bottle) { b.NominalL = 0 },
		"negative":          func(b *packing.Bottle) { b.NominalL = -0.7 },
		"no contents":       func(b *packing.Bottle) { b.OverL = -0.7 },
		"not a number":      func(b *packing.Bottle) { b.NominalL = math.NaN() },
		"no strength":       func(b *packing.Bottle) { b.Strength = alcoholometry.Strength{} },
		"hot":               func(b *packing.Bottle) { b.Temp = celsius(60) },
		"marked hot":        func(b *packing.Bottle) { b.MarkedAt = celsius(60) },
		"negative tare":     func(b *packing.Bottle) { b.TareKg = -1 },
	} {
		b := fine
		change(&b)
		if f, err := packing.FillBottle(b); err == nil {
			t.Errorf("%s: %v and no error", name, f)
		}
	}
	if _, err := packing.FillBottle(fine); err != nil {
		t.Error(err)
	}
	for name, w := range map[string]packing.Weighing{
		"tare above gross": {GrossKg: 0.5, TareKg: 0.6, Strength: abv(40)},
		"negative":         {GrossKg: -1, Strength: abv(40)},
		"no strength":      {GrossKg: 1},
		"hot":              {GrossKg: 1, Strength: abv(40), Temp: celsius(90)},
		"marked hot":       {GrossKg: 1, Strength: abv(40), MarkedAt: celsius(90)},
	} {
		if got, err := packing.ContentsL(w); err == nil {
			t.Errorf("%s: %g L and no error", name, got)
		}
	}
}
