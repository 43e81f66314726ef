package duty_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/duty"
	"swanneck/mathlib/quantity"
)

func TestUnitsAgainstPrint(t *testing.T) {
	for _, r := range table(t, "units.csv") {
		got := the(duty.PureLFrom(1, duty.Unit(r.text("unit"))))
		if want, tol := r.number("litres"), r.number("tolerance"); math.Abs(got-want) > tol {
			t.Errorf("a %s is %.5f L of pure alcohol; %s (%s) gives %g ± %g", r.text("unit"), got, r.text("source"), r.text("status"), want, tol)
		}
	}
	// 27 CFR 19.1: a proof gallon is a gallon at 60 °F of 50 % vol. So is every amount of ethanol that alcoholometry counts.
	spirit := alcoholometry.Spirit{VolumeL: quantity.USGallonsToL(137), Strength: proof(121.3), Temp: fahrenheit(60)}
	if got, want := the(duty.Count(spirit.PureL(), duty.USProofGallon)), 137*1.213; math.Abs(got-want) > 1e-9 {
		t.Errorf("137 gal at 121.3 proof are %.10g proof gallons; 27 CFR 19.1 gives %.10g", got, want)
	}
}

func TestUnitsThereAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		u := rapid.SampledFrom(duty.Units()).Draw(t, "unit")
		x := rapid.Float64Range(0, 1e7).Draw(t, "L")
		if x < 1e-290 {
			x = 0 // below there a float64 has fewer digits
		}
		if back := the(duty.PureLFrom(the(duty.Count(x, u)), u)); math.Abs(back-x) > 1e-15*4*x {
			t.Fatalf("%.17g L came back from %s as %.17g", x, u, back)
		}
	})
	for _, u := range []duty.Unit{"", "gallon", "L"} {
		if _, err := duty.Count(1, u); err == nil {
			t.Errorf("%q counts as a unit", u)
		}
		if _, err := duty.PureLFrom(1, u); err == nil {
			t.Errorf("%q counts as a unit", u)
		}
	}
	for _, x := range []float64{-1, math.NaN(), math.Inf(1)} {
		if _, err := duty.Count(x, duty.PureLitre); err == nil {
			t.Errorf("%g L count", x)
		}
		if _, err := duty.PureLFrom(x, duty.PureLitre); err == nil {
			t.Errorf("%g L count", x)
		}
	}
}

func TestImperialProofAgainstPrint(t *testing.T) {
	for _, r := range table(t, "imperial_proof.csv") {
		s := the(duty.FromImperialProof(min(r.number("degrees"), 175.5)))
		var got float64
		switch r.text("unit") {
		case "%vol at 60 F":
			got = s.ABVAt(fahrenheit(60))
		case "%vol at 20 C":
			got = s.ABV()
		case "%mass":
			got = s.ABW()
		default:
			t.Fatalf("nothing reckons %s", r.text("unit"))
		}
		if want, tol := r.number("value"), r.number("tolerance"); math.Abs(got-want) > tol {
			t.Errorf("%s of %g degrees: %.3f %s; %s gives %g ± %g", r.text("what"), r.number("degrees"), got, r.text("unit"), r.text("source"), want, tol)
		}
	}
}

// The definition itself: x degrees over proof and as much water as brings 100 volumes to 100 + x at 50 °F are proof
// spirit (Alcoholic Liquor Duties Act 1979, section 2(3) as enacted), and proof spirit weighs 12/13 of water at 51 °F.
func TestImperialProofByItsDefinition(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		degrees := rapid.Float64Range(100, 175).Draw(t, "degrees")
		s := the(duty.FromImperialProof(degrees))
		if back := the(duty.ImperialProof(s)); math.Abs(back-degrees) > 1e-9 {
			t.Fatalf("%.12g degrees came back as %.12g", degrees, back)
		}
		t50, t51 := fahrenheit(50), fahrenheit(51)
		ethanol := alcoholometry.Spirit{VolumeL: 100, Strength: s, Temp: t50}.PureL()
		proofSpirit := the(duty.FromImperialProof(100))
		brought := alcoholometry.Spirit{VolumeL: degrees, Strength: proofSpirit, Temp: t50}.PureL()
		if math.Abs(ethanol-brought) > 1e-9*ethanol {
			t.Fatalf("100 volumes of %.6g degrees hold %.9g of pure alcohol, %.6g of proof spirit %.9g", degrees, ethanol, degrees, brought)
		}
		weighs := the(alcoholometry.DensityInAirKgM3(proofSpirit, t51)) / the(alcoholometry.DensityInAirKgM3(alcoholometry.Water, t51))
		if math.Abs(weighs-12.0/13) > 1e-9 {
			t.Fatalf("proof spirit weighs %.9g of water; the Act says 12/13", weighs)
		}
	})
	// 91 gallons at 21 over proof are 110.11 proof gallons (Cooley, 1880).
	if got := 91 * the(duty.ImperialProof(the(duty.FromImperialProof(121)))) / 100; math.Abs(got-110.11) > 1e-6 {
		t.Errorf("91 gallons at 21 over proof: %.6f proof gallons; Cooley gives 110.11", got)
	}
	for _, bad := range []float64{-1, 180, math.NaN()} {
		if s, err := duty.FromImperialProof(bad); err == nil {
			t.Errorf("%g degrees: %v and no error", bad, s)
		}
	}
	if _, err := duty.ImperialProof(alcoholometry.Strength{}); err == nil {
		t.Error("an unset strength has degrees")
	}
}

func TestDue(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := duty.Rate{Money: rapid.Float64Range(0, 100).Draw(t, "money"), Currency: "XTS", Per: rapid.SampledFrom(duty.Units()).Draw(t, "unit")}
		a, b := rapid.Float64Range(0, 1e5).Draw(t, "a"), rapid.Float64Range(0, 1e5).Draw(t, "b")
		sum := the(duty.Due(r, a+b)).Money
		if parts := the(duty.Due(r, a)).Money + the(duty.Due(r, b)).Money; math.Abs(parts-sum) > 1e-9*(1+sum) {
			t.Fatalf("the parts pay %.9g and the whole %.9g", parts, sum)
		}
		r.Step = 0.1
		d := the(duty.Due(r, a))
		if n := the(duty.Count(a, r.Per)); math.Abs(d.Quantity-n) > 0.05+1e-9*n || math.Abs(d.Quantity*10-math.Round(d.Quantity*10)) > 1e-6 {
			t.Fatalf("%.9g rounded to tenths is %.9g", n, d.Quantity)
		}
	})
	// By hand: 2.5 hL of pure alcohol at 1303 for a hectolitre are 3257.50.
	if d := the(duty.Due(duty.Rate{Money: 1303, Currency: "EUR", Per: duty.PureHectolitre}, 250)); math.Abs(d.Money-3257.5) > 1e-9 {
		t.Errorf("%v; by hand 3257.50", d)
	}
	fine := duty.Rate{Money: 1, Currency: "EUR", Per: duty.PureLitre}
	for name, change := range map[string]func(*duty.Rate){
		"no currency":   func(r *duty.Rate) { r.Currency = "" },
		"a sign":        func(r *duty.Rate) { r.Currency = "€" },
		"small letters": func(r *duty.Rate) { r.Currency = "eur" },
		"no unit":       func(r *duty.Rate) { r.Per = "" },
		"other unit":    func(r *duty.Rate) { r.Per = "bottle" },
		"negative":      func(r *duty.Rate) { r.Money = -1 },
		"not a number":  func(r *duty.Rate) { r.Money = math.NaN() },
		"negative step": func(r *duty.Rate) { r.Step = -1 },
	} {
		r := fine
		change(&r)
		if d, err := duty.Due(r, 1); err == nil {
			t.Errorf("%s: %v and no error", name, d)
		}
	}
	if d, err := duty.Due(fine, -1); err == nil {
		t.Errorf("negative alcohol: %v and no error", d)
	}
}
