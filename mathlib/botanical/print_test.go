package botanical_test

import (
	"math"
	"testing"

	"swanneck/mathlib/botanical"
)

func TestOilContents(t *testing.T) {
	for _, r := range table(t, "oil_content.csv") {
		o := botanical.OilContent{
			Amount: botanical.Exactly(r.number("amount")), Unit: botanical.OilUnit(r.text("unit")), Basis: botanical.Basis(r.text("basis")),
			DensityKgL: botanical.Exactly(r.number("density_kg_L")),
		}
		got, err := o.GPerKg(r.number("moisture_pct"))
		if want, tol := r.number("want_g_kg"), r.number("tol"); err != nil || !got.IsPoint() || math.Abs(got.Low-want) > tol {
			t.Errorf("%s: %v g/kg, %v; want %g ± %g", r.text("what"), got, err, want, tol)
		}
	}
}

func TestMassBalances(t *testing.T) {
	for _, r := range table(t, "mass_balance.csv") {
		b := botanical.Botanical{Plant: r.text("plant"), GPerL: r.number("g_L"), ReleasedPct: botanical.Exactly(r.number("released_pct"))}
		b.Oil = botanical.OilContent{Amount: botanical.Exactly(r.number("amount")), Unit: botanical.OilUnit(r.text("unit")), Basis: botanical.AsWeighed}
		if r.text("density_kg_L") != "" {
			b.Oil.DensityKgL = botanical.Exactly(r.number("density_kg_L"))
		}
		marker := r.text("compound")
		if marker != "oil" {
			b.Markers = []botanical.Marker{{Compound: marker, SharePct: botanical.Between(r.number("share_low_pct"), r.number("share_high_pct"))}}
		}
		c, err := botanical.NewCharge(botanical.Recipe{Per: botanical.PerChargeL, Items: []botanical.Botanical{b}}, spirit(1, 70))
		if err != nil {
			t.Errorf("%s: %v", r.text("plant"), err)
			continue
		}
		low, high := 0.0, 0.0
		for _, x := range c.Traces() {
			low += 1000 * x.LowG
			high += 1000 * x.HighG
		}
		if marker == "oil" {
			low, high = 1000*c.OilG().Low, 1000*c.OilG().High
		}
		if tol := r.number("tol"); math.Abs(low-r.number("want_low_mg_L")) > tol || math.Abs(high-r.number("want_high_mg_L")) > tol {
			t.Errorf("%g g/L of %s: %.2f to %.2f mg/L of %s; in print %s to %s ± %g", b.GPerL, b.Plant, low, high, marker, r.text("want_low_mg_L"), r.text("want_high_mg_L"), tol)
		}
	}
}

func TestSphere(t *testing.T) {
	for _, r := range table(t, "sphere.csv") {
		got, err := botanical.SphereShare(r.number("tau"))
		if want, tol := r.number("share"), r.number("tol"); err != nil || math.Abs(got-want) > tol {
			t.Errorf("SphereShare(%g) = %.6f, %v; %s %g ± %g", r.number("tau"), got, err, r.text("status"), want, tol)
		}
	}
}

func TestPeleg(t *testing.T) {
	near := func(got, want float64) bool { return math.Abs(got/want-1) < 5e-4 }
	for _, r := range table(t, "peleg.csv") {
		u, err := botanical.FromPeleg(r.number("K1")/60, r.number("K2"))
		if err != nil {
			t.Fatal(err)
		}
		if !near(u.RatePerH/60, r.number("rate_per_min")) || !near(u.End, r.number("end_pct")) || !near(60*u.HalfH(), r.number("half_min")) {
			t.Errorf("%s: rate %.7f 1/min, end %.4f, half %.1f min; in print %s, %s, %s", r.text("what"), u.RatePerH/60, u.End, 60*u.HalfH(), r.text("rate_per_min"), r.text("end_pct"), r.text("half_min"))
		}
		// What Peleg's law calls the end is an extrapolation, far above what came over.
		if u.End < 1.5*r.number("measured_pct") {
			t.Errorf("%s: end %.3f; the paper measured %s", r.text("what"), u.End, r.text("measured_pct"))
		}
	}
}

func TestFirstOrderInPrint(t *testing.T) {
	for _, r := range table(t, "first_order.csv") {
		u := botanical.Uptake{Model: botanical.FirstOrder, End: 100, RatePerH: 60 * r.number("rate_per_min")}
		if got := 60 * u.HoursTo(r.number("pct")); math.Abs(got-r.number("at_min")) > 0.02 {
			t.Errorf("%s: %s %% after %.2f min; in print %s", r.text("what"), r.text("pct"), got, r.text("at_min"))
		}
		want := -math.Log(1-r.number("pct")/100) / r.number("at_min")
		if math.Abs(want-r.number("rate_per_min")) > r.number("tol") {
			t.Errorf("%s: rate %.6f 1/min; the table says %s", r.text("what"), want, r.text("rate_per_min"))
		}
	}
}

func TestMeasuredYieldsLieInTheLists(t *testing.T) {
	for _, r := range table(t, "yields.csv") {
		b := the(botanical.Herb(r.text("plant"), 1))
		got, err := b.Oil.GPerKg(0)
		if x := 10 * r.number("g_100g"); err != nil || x < got.Low || x > got.High {
			t.Errorf("%s: %v g/kg, %v; measured %g", r.text("plant"), got, err, x)
		}
	}
}

func TestRetainedInPrint(t *testing.T) {
	const ounceKg, flozL = 0.028349523125, 0.0295735295625
	for _, r := range table(t, "retained.csv") {
		lKg := func(back float64) float64 { return (20 - back) * flozL / (4 * ounceKg) }
		low, high := lKg(r.number("back_high_floz")), lKg(r.number("back_low_floz"))
		if math.Abs(low-r.number("want_low_L_kg")) > 0.03 || math.Abs(high-r.number("want_high_L_kg")) > 0.03 {
			t.Errorf("%s: %.3f to %.3f L/kg; the table says %s to %s", r.text("straining"), low, high, r.text("want_low_L_kg"), r.text("want_high_L_kg"))
		}
		s := botanical.Pressed
		if r.text("straining") == "wrung by hand" {
			s = botanical.WrungByHand
		}
		if got := s.Retained(); got.Low > high+0.03 || got.High < low-0.03 || got.High > high+0.03 || got.Low < low-0.03 {
			t.Errorf("%s: %v L/kg; in print %.2f to %.2f", r.text("straining"), got, low, high)
		}
	}
}

func TestMinima(t *testing.T) {
	for _, r := range table(t, "minima.csv") {
		p, err := botanical.Find(r.text("plant"))
		if want := botanical.Exactly(r.number("mL_kg")); err != nil || p.Minimum.Amount != want || p.Minimum.Unit != botanical.OilMLPerKg || string(p.Minimum.Basis) != r.text("basis") {
			t.Errorf("%s: %v, %v; the pharmacopoeia asks for %s mL/kg, %s", r.text("plant"), p.Minimum, err, r.text("mL_kg"), r.text("basis"))
		}
		// On the dried drug it is less than on the anhydrous one by what water there is.
		p.Minimum.DensityKgL = botanical.Exactly(1)
		g := the(p.Minimum.GPerKg(10))
		want := r.number("mL_kg")
		if r.text("basis") == "anhydrous" {
			want *= 0.9
		}
		if !near(g.Low, want, 1e-12) {
			t.Errorf("%s with 10 %% of water: %v g/kg; want %g", p.Name, g, want)
		}
	}
}
