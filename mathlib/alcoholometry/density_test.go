package alcoholometry_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

func TestDensityAgainstBureauOfStandards1913(t *testing.T) {
	const oldML = 1.000028 // cm³
	const tol = 1e-4
	for _, file := range []string{"nbs_1913_density.csv", "nbs_1913_recalled.csv"} {
		worst := 0.0
		for _, r := range table(t, file) {
			s, temp := abw(r.number("mass_pct")), celsius(r.number("t_C"))
			want := r.number("density_g_mL") / oldML
			got := density(s, temp) / 1000
			worst = math.Max(worst, math.Abs(got-want))
			if math.Abs(got-want) > tol {
				t.Errorf("DensityKgM3(%v, %v) = %.5f g/cm³; NBS Bulletin 9 (1913) gives %.5f ± %g", s, temp, got, want, tol)
			}
		}
		t.Logf("%s: largest difference %.1e g/cm³", file, worst)
	}
}

func TestDensityAgainstHandbook(t *testing.T) {
	const tol = 3.5e-4
	for _, r := range table(t, "crc_density_20C.csv") {
		s := abw(r.number("mass_pct"))
		got, want := density(s, celsius(20))/1000, r.number("density_g_cm3")
		if math.Abs(got-want) > tol {
			t.Errorf("DensityKgM3(%v, 20 °C) = %.5f g/cm³; CRC Handbook gives %.4f ± %g", s, got, want, tol)
		}
	}
}

// bettinSpieweck returns the density by the formula of 1990, kg/m³; t is on the scale of 1990.
func bettinSpieweck(t testing.TB) func(p, tC float64) float64 {
	type term struct {
		i, k int
		v    float64
	}
	var terms []term
	for _, r := range table(t, "bettin_spieweck_1990.csv") {
		terms = append(terms, term{int(r.number("i_power_of_(t-20)")), int(r.number("k_power_of_(p-0.5)")), r.number("value")})
	}
	if len(terms) != 54 {
		t.Fatalf("%d coefficients; Bettin and Spieweck give 54", len(terms))
	}
	return func(p, tC float64) float64 {
		sum := 0.0
		for _, c := range terms {
			sum += c.v * math.Pow(tC-20, float64(c.i)) * math.Pow(p-0.5, float64(c.k))
		}
		return sum
	}
}

func TestDensityAgainstBettinSpieweck1990(t *testing.T) {
	const tol = 2e-4
	reference := bettinSpieweck(t)
	for t90 := 10.0; t90 <= 39.99; t90 += 0.5 { // 40 °C of 1990 is just beyond 40 °C of 1968
		t68 := celsius(1.00025 * t90)
		for w := 0.0; w <= 100; w++ {
			got, want := density(abw(w), t68), reference(w/100, t90)
			if math.Abs(got-want) > tol {
				t.Errorf("DensityKgM3(%g %% mass, %v) = %.5f; Bettin and Spieweck (1990) give %.5f ± %g", w, t68, got, want, tol)
			}
		}
	}
	for w := 0.0; w <= 100; w++ {
		if got, want := density(abw(w), celsius(20)), reference(w/100, 20); math.Abs(got-want) > 0.005 {
			t.Errorf("DensityKgM3(%g %% mass, 20 °C) = %.5f; Bettin and Spieweck (1990) give %.5f ± 0.005", w, got, want)
		}
	}
}

func TestDensityAgainstTralles1811(t *testing.T) {
	const waterMaxKgM3 = 999.97
	for _, r := range table(t, "tralles_1811_60F.csv") {
		pct := r.number("pct_vol_60F")
		tol := 3e-4
		if pct > 92 {
			tol = 9e-4
		}
		s := the(alcoholometry.ABVAt(pct, fahrenheit(60)))
		got, want := density(s, fahrenheit(60))/waterMaxKgM3, r.number("specific_gravity")
		if math.Abs(got-want) > tol {
			t.Errorf("gravity at 60 °F of %g %% vol = %.5f; Tralles (1811) gives %.4f ± %g", pct, got, want, tol)
		}
	}
}

func TestAgainstUSPharmacopeia(t *testing.T) {
	for _, r := range table(t, "usp_alcoholometric_60F.csv") {
		var s alcoholometry.Strength
		var other float64
		given := r.number("strength")
		switch kind := r.text("row_kind"); kind {
		case "by_volume":
			s = proof(2 * given)
			other = s.ABW()
		case "by_weight":
			s = abw(given)
			other = s.ABVAt(fahrenheit(60))
		default:
			t.Fatalf("row kind %q", kind)
		}
		if want := r.number("other_pct"); math.Abs(other-want) > 0.011 {
			t.Errorf("%s %g %% = %.3f %%; USP 29 gives %.2f ± 0.011", r.text("row_kind"), given, other, want)
		}
		if got, want := the(alcoholometry.USGravityInAir(s)), r.number("sg_air_15_56"); math.Abs(got-want) > 1e-4 {
			t.Errorf("USGravityInAir(%v) = %.5f; USP 29 gives %.4f ± 0.0001", s, got, want)
		}
		warm := celsius(25)
		got := the(alcoholometry.DensityInAirKgM3(s, warm)) / the(alcoholometry.DensityInAirKgM3(alcoholometry.Water, warm))
		if want := r.number("sg_air_25_25"); math.Abs(got-want) > 1e-4 {
			t.Errorf("gravity in air at 25 °C of %v = %.5f; USP 29 gives %.4f ± 0.0001", s, got, want)
		}
	}
}

func TestDensityGolden(t *testing.T) {
	temps := []float64{0, 5, 10, 15, 20, 25, 30, 40}
	names := []string{"rho_0C", "rho_5C", "rho_10C", "rho_15C", "rho_20C", "rho_25C", "rho_30C", "rho_40C"}
	for _, r := range table(t, "density_by_volume.golden") {
		s := abv(r.number("pct_vol_20C"))
		if got, want := s.ABW(), r.number("pct_mass"); math.Abs(got-want) > 6e-5 {
			t.Errorf("%v.ABW() = %.5f; golden %.4f", s, got, want)
		}
		for i, name := range names {
			if got, want := density(s, celsius(temps[i])), r.number(name); math.Abs(got-want) > 6e-4 {
				t.Errorf("DensityKgM3(%v, %g °C) = %.4f; golden %.3f", s, temps[i], got, want)
			}
		}
		if got, want := the(alcoholometry.DensityInAirKgM3(s, celsius(20))), r.number("rho20_in_air"); math.Abs(got-want) > 6e-3 {
			t.Errorf("DensityInAirKgM3(%v, 20 °C) = %.3f; golden %.2f", s, got, want)
		}
	}
}

// liquid draws a strength and a temperature for which the mixture is liquid.
func liquid(t *rapid.T) (alcoholometry.Strength, quantity.Temperature) {
	temp := celsius(rapid.Float64Range(-20, 40).Draw(t, "tC"))
	low := 0.0
	if c := temp.C(); c < 0 {
		for the(alcoholometry.FreezingPoint(abw(low))).C() > c {
			low += 0.25
		}
	}
	return abw(rapid.Float64Range(low, 100).Draw(t, "massPct")), temp
}

func TestDensityThereAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, temp := liquid(t)
		back, err := alcoholometry.StrengthFromDensity(density(s, temp), temp)
		if err != nil || math.Abs(back.ABV()-s.ABV()) > 1e-6 {
			t.Fatalf("StrengthFromDensity(DensityKgM3(%.9g %% vol, %v)) = %v, %v", s.ABV(), temp, back, err)
		}
	})
}

// One density belongs to one strength: at each temperature the density falls from water to ethanol without a break,
// so that a strength from a density is never a guess.
func TestDensityFallsWithStrength(t *testing.T) {
	for tenthC := -200; tenthC <= 400; tenthC += 5 {
		temp := celsius(float64(tenthC) / 10)
		before, rows := math.Inf(1), 0
		for i := 0; i <= 2000; i++ {
			rho, err := alcoholometry.DensityKgM3(abw(float64(i)/20), temp)
			if err != nil {
				continue // frozen
			}
			if rho >= before {
				t.Fatalf("density at %v does not fall at %g %% by mass", temp, float64(i)/20)
			}
			before = rho
			rows++
		}
		if rows < 1000 {
			t.Fatalf("only %d densities at %v", rows, temp)
		}
	}
}

func TestDensityRefuses(t *testing.T) {
	for _, c := range []struct {
		s        alcoholometry.Strength
		tC       float64
		min, max float64
	}{
		{abv(40), 40.01, -20, 40},
		{abv(40), -20.01, -20, 40},
		{abv(100), 1000, -20, 40},
		{alcoholometry.Water, -0.1, 0, 40},
		{abw(20), -11, -10.92, 40}, // CRC Handbook: freezes at -10.92 °C
	} {
		rho, err := alcoholometry.DensityKgM3(c.s, celsius(c.tC))
		var out *quantity.RangeError
		if !errors.As(err, &out) || rho != 0 || out.Min != c.min || out.Max != c.max || out.Value != c.tC {
			t.Errorf("DensityKgM3(%v, %g °C) = %g, %v; want a RangeError from %g to %g", c.s, c.tC, rho, err, c.min, c.max)
		}
	}
	var unset *alcoholometry.UnsetError
	if _, err := alcoholometry.DensityKgM3(alcoholometry.Strength{}, celsius(20)); !errors.As(err, &unset) {
		t.Errorf("DensityKgM3 of an unset strength: %v; want an UnsetError", err)
	}
	for _, kgM3 := range []float64{998.21, 789.23, 0, -1, math.NaN(), math.Inf(1)} {
		var out *quantity.RangeError
		if s, err := alcoholometry.StrengthFromDensity(kgM3, celsius(20)); !errors.As(err, &out) || s.IsSet() {
			t.Errorf("StrengthFromDensity(%g, 20 °C) = %v, %v; want a RangeError", kgM3, s, err)
		}
	}
}

func TestFreezingPoint(t *testing.T) {
	const tol = 0.8
	for _, r := range table(t, "melinder_freezing.csv") {
		s := abw(r.number("mass_pct"))
		got, want := the(alcoholometry.FreezingPoint(s)).C(), r.number("freezing_C")
		if math.Abs(got-want) > tol {
			t.Errorf("FreezingPoint(%v) = %.2f °C; Melinder (2010) gives %.2f ± %g", s, got, want, tol)
		}
	}
	if _, err := alcoholometry.FreezingPoint(abw(70)); err == nil {
		t.Error("FreezingPoint of 70 % by mass gave no error; the handbook ends at 68 %")
	}
}
