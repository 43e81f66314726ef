package alcoholometry_test

import (
	"math"
	"testing"

	"swanneck/mathlib/alcoholometry"
)

func TestGaugingTables(t *testing.T) {
	checked := map[string]int{}
	for _, r := range table(t, "us_gauging_tables.csv") {
		name := r.text("quantity")
		s := proof(r.number("proof"))
		var got float64
		switch name {
		case "true_proof":
			continue // TestTrueProofAgainstTable1
		case "wine_gal_per_lb":
			got = the(alcoholometry.USWineGallonsPerPound(s))
		case "proof_gal_per_lb":
			got = the(alcoholometry.USProofGallonsPerPound(s))
		case "lb_per_wine_gal":
			got = the(alcoholometry.USPoundsPerWineGallon(s))
		case "lb_per_proof_gal":
			got = the(alcoholometry.USPoundsPerProofGallon(s))
		case "water_parts":
			got = the(alcoholometry.USWaterParts(s))
		case "sg_air":
			got = the(alcoholometry.USGravityInAir(s))
		case "sg_vac":
			got = the(alcoholometry.USGravityInVacuum(s))
		case "volume_factor":
			got = the(alcoholometry.USVolumeFactor(s, fahrenheit(r.number("t_F"))))
		default:
			t.Fatalf("nothing reckons %s", name)
		}
		checked[r.text("table")]++
		if want, tol := r.number("value"), r.number("tolerance"); math.Abs(got-want) > tol {
			t.Errorf("table %s, %s at %g proof = %.6f; %s gives %g ± %g", r.text("table"), name, r.number("proof"), got, r.text("source"), want, tol)
		}
	}
	for _, n := range []string{"4", "5", "6", "7"} {
		if checked[n] == 0 {
			t.Errorf("no points of table %s", n)
		}
	}
}

// 27 CFR 30.66, water for a reduction: parts of water at the lower proof times the ratio of the alcohols, less the
// parts at the higher proof, per 100 gallons.
func TestReductionOfSection30_66(t *testing.T) {
	water := func(from, to float64) float64 {
		return from/to*the(alcoholometry.USWaterParts(proof(to))) - the(alcoholometry.USWaterParts(proof(from)))
	}
	if got := water(112, 100); math.Abs(got-12.42) > 0.02 {
		t.Errorf("112 to 100 proof needs %.3f gal for 100; 27 CFR 30.66 gives 12.42 ± 0.02", got)
	}
	// For 191 to 188 proof the section prints 1.84 gal, because it cuts 95.5/94 = 1.016 off to 1.01. From the same
	// printed parts, 7.36 and 5.59, the ratio uncut gives 1.887: that is what physics has to agree with.
	const ratio = 95.5 / 94.0
	uncut, cut := 7.36*ratio-5.59, math.Round(7.36*math.Floor(ratio*100))/100-5.59
	if math.Abs(cut-1.84) > 1e-9 {
		t.Fatalf("with the ratio cut off: %.4f; 27 CFR 30.66 prints 1.84", cut)
	}
	got := water(191, 188)
	if math.Abs(got-uncut) > 0.01 {
		t.Errorf("191 to 188 proof needs %.3f gal for 100; the parts of 27 CFR 30.66 give %.3f ± 0.01", got, uncut)
	}
	if math.Abs(got-cut) < 0.03 {
		t.Errorf("191 to 188 proof needs %.3f gal for 100, which repeats the cut-off figure 1.84", got)
	}
}

// The worked examples of part 30 use its tables, which rest on older densities: up to 1.2e-4 of the weight apart.
func TestWorkedExamplesOfPart30(t *testing.T) {
	const apart = 1.5e-4
	pg := func(p float64) float64 { return the(alcoholometry.USProofGallonsPerPound(proof(p))) }
	lbGal := func(p float64) float64 { return the(alcoholometry.USPoundsPerWineGallon(proof(p))) }
	factor := func(p, tF float64) float64 { // as printed, with three decimals
		return math.Round(1000*the(alcoholometry.USVolumeFactor(proof(p), fahrenheit(tF)))) / 1000
	}
	for _, c := range []struct {
		what      string
		got, want float64
		tol       float64
		source    string
	}{
		{"60378 lb at 190 proof, proof gallons", 60378 * pg(190), 16884.1, 16884.1 * apart, "27 CFR 30.63"},
		{"321.5 lb at 86 proof, proof gallons", 321.5 * pg(86), 35.1, 0.06, "27 CFR 30.63"},
		{"81000 lb at 190 proof, wine gallons", 81000 / lbGal(190), 11921.6, 11921.6 * apart, "27 CFR 30.64"},
		{"81000 lb at 190 proof, proof gallons", 81000 * pg(190), 22650.8, 22650.8 * apart, "27 CFR 30.64"},
		{"1000 lb at 200 proof, proof gallons", 1000 * pg(200), 302.58, 302.58 * apart, "27 CFR 30.64"},
		{"1000 lb of 200 proof brought to 190 proof, lb", 1000 * pg(200) / pg(190), 1082.03, 1082.03 * apart, "27 CFR 30.64"},
		{"5350 lb at 85.5 proof, wine gallons", 5350 / lbGal(85.5), 678.2, 678.2 * apart, "27 CFR 30.64, from memory"},
		{"100 wine gallons at 190 proof, lb", 100 * lbGal(190), 679.43, 679.43 * apart, "27 CFR 30.65"},
		{"100 proof gallons at 190 proof, lb", 100 / pg(190), 357.60, 357.60 * apart, "27 CFR 30.65"},
		{"141 proof, lb per gallon", lbGal(141), 7.40063, 7.40063 * apart, "27 CFR 30.66, from memory"},
		{"400 lb at 141 proof, wine gallons", 400 / lbGal(141), 54.05, 54.05 * apart, "27 CFR 30.66, from memory"},
		{"4308.48 gal at 72 °F of 86.8 proof, proof gallons", 4308.48 * factor(86.8, 72) * 0.868, 3721.06, 0.01, "27 CFR 30.51"},
		{"1000 gal at 76 °F of 190 proof, gallons at 60 °F", 1000 * factor(190, 76), 991, 0.5, "27 CFR 30.67"},
	} {
		if math.Abs(c.got-c.want) > c.tol {
			t.Errorf("%s: %.5f; %s gives %g ± %.2g", c.what, c.got, c.source, c.want, c.tol)
		}
	}
	// The rounding rules, apart from the physics: the printed factors multiplied out, rounded as the sections do.
	for _, c := range []struct {
		x, want float64
		source  string
	}{
		{60378 * 0.27964, 16884.1, "27 CFR 30.63"},
		{4308.48 * 0.995 * 0.868, 3721.1, "27 CFR 30.51"},
		{5350 * 0.12676, 678.2, "27 CFR 30.64, from memory"},
		{54.05 * 1.41, 76.2, "27 CFR 30.66, from memory"},
		{55.1 / 0.991, 55.6, "27 CFR 30.67"},
	} {
		if got := alcoholometry.USRoundTenth(c.x); got != c.want {
			t.Errorf("USRoundTenth(%.4f) = %g; %s gives %g", c.x, got, c.source, c.want)
		}
	}
}

// 27 CFR 30.44: the weight of the contents of containers, rounded up to the ounce.
func TestContainersOfSection30_44(t *testing.T) {
	for _, c := range []struct{ proof, gal, lb, oz float64 }{
		{190, 1, 6, 13}, {190, 2, 13, 10}, {190, 5, 34, 0}, {190, 10, 68, 0},
		{192, 1, 6, 13}, {192, 2, 13, 9}, {192, 5, 33, 13}, {192, 10, 67, 10},
		{200, 1, 6, 10}, {200, 2, 13, 4}, {200, 5, 33, 1}, {200, 10, 66, 2},
	} {
		oz := math.Ceil(c.gal * 16 * the(alcoholometry.USPoundsPerWineGallon(proof(c.proof))))
		if want := 16*c.lb + c.oz; oz != want {
			t.Errorf("%g gal at %g proof: %g oz; 27 CFR 30.44 gives %g", c.gal, c.proof, oz, want)
		}
	}
}

// 27 CFR 19.1: a proof gallon is a gallon at 60 °F of 50 % vol; so a gallon at 60 °F of p proof is p/100 of it.
func TestProofGallons(t *testing.T) {
	const gallonL = 3.785411784
	for p := 0.0; p <= 200; p += 12.5 {
		s := alcoholometry.Spirit{VolumeL: 250 * gallonL, Strength: proof(p), Temp: fahrenheit(60)}
		if got := the(alcoholometry.ProofGallons(s)); math.Abs(got-2.5*p) > 1e-9 {
			t.Errorf("250 gal at %g proof = %.10g proof gallons; want %g", p, got, 2.5*p)
		}
		warm := alcoholometry.Spirit{VolumeL: s.VolumeAt(fahrenheit(85)), Strength: s.Strength, Temp: fahrenheit(85)}
		if got := the(alcoholometry.ProofGallons(warm)); math.Abs(got-2.5*p) > 1e-9 {
			t.Errorf("the same at 85 °F = %.10g proof gallons; want %g", got, 2.5*p)
		}
	}
}

func TestUSRoundTenth(t *testing.T) {
	// 27 CFR part 30: to the nearest tenth, five hundredths upwards.
	for _, c := range []struct{ x, want float64 }{{189.972, 190}, {76.576, 76.6}, {76.55, 76.6}, {76.549, 76.5}, {0.25, 0.3}, {0.35, 0.4}, {1.005, 1}, {3721.06, 3721.1}} {
		if got := alcoholometry.USRoundTenth(c.x); got != c.want {
			t.Errorf("USRoundTenth(%g) = %g; want %g", c.x, got, c.want)
		}
	}
	if _, err := alcoholometry.USPoundsPerProofGallon(alcoholometry.Water); err == nil {
		t.Error("a proof gallon of water has a weight")
	}
}
