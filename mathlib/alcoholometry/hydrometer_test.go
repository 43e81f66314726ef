package alcoholometry_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/alcoholometry"
)

func TestTrueProofAgainstTable1(t *testing.T) {
	n := 0
	for _, r := range table(t, "us_gauging_tables.csv") {
		if r.text("table") != "1" {
			continue
		}
		n++
		reading, temp := r.number("proof"), fahrenheit(r.number("t_F"))
		got := the(alcoholometry.TrueProof(reading, temp)).USProof()
		if want, tol := r.number("value"), r.number("tolerance"); math.Abs(got-want) > tol {
			t.Errorf("TrueProof(%g, %g °F) = %.3f; %s gives %.1f ± %g", reading, temp.F(), got, r.text("source"), want, tol)
		}
	}
	if n == 0 {
		t.Fatal("no points of table 1")
	}
	// Two worked examples that interpolate in the table, before rounding.
	for _, c := range []struct {
		reading, tF, want float64
		source            string
	}{
		{192.82, 72.15, 189.972, "27 CFR 30.23"},
		{80.32, 68.36, 76.576, "TTB, directions for interpolation"},
	} {
		if got := the(alcoholometry.TrueProof(c.reading, fahrenheit(c.tF))).USProof(); math.Abs(got-c.want) > 0.05 {
			t.Errorf("TrueProof(%g, %g °F) = %.3f; %s gives %.3f ± 0.05", c.reading, c.tF, got, c.source, c.want)
		}
	}
}

func TestReadingAgainstGlassAlcoholometerTable(t *testing.T) {
	const tol = 0.2
	mark := alcoholometry.MarkedAt(fahrenheit(60))
	checked, worst := 0, 0.0
	for _, r := range table(t, "tralles_glass_alcoholometer.csv") {
		truth, tF, want := r.number("true_pct_vol_60F"), r.number("t_F"), r.number("reading_pct_vol")
		s, temp := the(alcoholometry.ABVAt(truth, fahrenheit(60))), fahrenheit(tF)
		got, err := alcoholometry.Reading(s, temp, mark)
		switch {
		case truth == 0 && tF < 60: // ice, or above the zero mark: the table prints a figure below 0
			if err == nil {
				t.Errorf("Reading(%g %% vol, %g °F) = %.2f; want an error, the instrument floats above its scale", truth, tF, got)
			}
			continue
		case err != nil:
			t.Errorf("Reading(%g %% vol, %g °F): %v", truth, tF, err)
			continue
		case r.text("flag") == "misprint":
			if math.Abs(got-want) <= tol {
				t.Errorf("Reading(%g %% vol, %g °F) = %.2f agrees with the row held to be a misprint", truth, tF, got)
			}
			continue
		}
		checked++
		worst = math.Max(worst, math.Abs(got-want))
		if math.Abs(got-want) > tol {
			t.Errorf("Reading(%g %% vol, %g °F) = %.2f; the table after Tralles gives %.1f ± %g", truth, tF, got, want, tol)
		}
	}
	if checked < 100 {
		t.Fatalf("only %d rows checked", checked)
	}
	t.Logf("%d rows, largest difference %.2f %% vol", checked, worst)
}

func TestReadingThereAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, temp := liquid(t)
		mark := alcoholometry.MarkedAt(celsius(rapid.Float64Range(0, 40).Draw(t, "markC")))
		inProof := rapid.Bool().Draw(t, "proof")
		var back alcoholometry.Strength
		if inProof {
			reading, err := alcoholometry.ProofReading(s, temp)
			if err != nil {
				t.Skip("off the scale")
			}
			back = the(alcoholometry.TrueProof(reading, temp))
		} else {
			reading, err := alcoholometry.Reading(s, temp, mark)
			if err != nil {
				t.Skip("off the scale")
			}
			back = the(alcoholometry.TrueStrength(reading, temp, mark))
		}
		if math.Abs(back.ABV()-s.ABV()) > 1e-6 {
			t.Fatalf("%.9g %% vol at %v came back as %.9g", s.ABV(), temp, back.ABV())
		}
	})
}

func TestReadingIsTheStrengthAtTheMark(t *testing.T) {
	for _, markC := range []float64{0, 15, 20, 30} {
		mark := celsius(markC)
		for pct := 1.0; pct < 100; pct += 7 {
			s := the(alcoholometry.ABVAt(pct, mark))
			if got := the(alcoholometry.Reading(s, mark, alcoholometry.MarkedAt(mark))); math.Abs(got-pct) > 1e-9 {
				t.Errorf("Reading(%g %% vol at %v, %v) = %.10g; at its own mark the instrument is right", pct, mark, mark, got)
			}
		}
	}
	for p := 1.0; p < 200; p += 7 {
		if got := the(alcoholometry.ProofReading(proof(p), fahrenheit(60))); math.Abs(got-p) > 1e-9 {
			t.Errorf("ProofReading(%g proof, 60 °F) = %.10g; at its own mark the instrument is right", p, got)
		}
	}
}

func TestTrueStrengthRisesWithTheReadingAndFallsWithTheTemperature(t *testing.T) {
	// Below about 12 % vol spirit is densest some degrees above 0 °C, as water is, and the second half does not hold.
	for reading := 15.0; reading <= 90; reading += 5 {
		for tC := 0.0; tC < 40; tC += 2.5 {
			here := the(alcoholometry.TrueStrength(reading, celsius(tC))).ABV()
			more := the(alcoholometry.TrueStrength(reading+1, celsius(tC))).ABV()
			warmer := the(alcoholometry.TrueStrength(reading, celsius(tC+2.5))).ABV()
			if more <= here || warmer >= here {
				t.Errorf("reading %g at %g °C: true %.3f, a mark higher %.3f, warmer %.3f", reading, tC, here, more, warmer)
			}
		}
	}
}

// Goldens: our own figures, which show that nothing moved and are no source.
func TestInstrumentsGolden(t *testing.T) {
	for _, c := range []struct{ reading, tC, golden float64 }{{40, 15, 42.00}, {72, 32, 68.05}, {50, 10, 53.67}} {
		if got := the(alcoholometry.TrueStrength(c.reading, celsius(c.tC))).ABV(); math.Abs(got-c.golden) > 6e-3 {
			t.Errorf("TrueStrength(%g, %g °C) = %.4f; golden %.2f", c.reading, c.tC, got, c.golden)
		}
	}
	if got := the(alcoholometry.Reading(abv(43), celsius(26))); math.Abs(got-45.33) > 6e-3 {
		t.Errorf("Reading(43 %% vol, 26 °C) = %.4f; golden 45.33", got)
	}
}

func TestInstrumentsRefuse(t *testing.T) {
	t20, t30, t10 := celsius(20), celsius(30), celsius(10)
	for name, err := range map[string]error{
		"below the scale":        second(alcoholometry.TrueStrength(-1, t20)),
		"above the scale":        second(alcoholometry.TrueStrength(100.1, t20)),
		"not a number":           second(alcoholometry.TrueStrength(math.NaN(), t20)),
		"lighter than ethanol":   second(alcoholometry.TrueStrength(99.9, t10)),
		"heavier than water":     second(alcoholometry.TrueStrength(0, t30)),
		"too warm":               second(alcoholometry.TrueStrength(40, celsius(41))),
		"a scale marked at 60":   second(alcoholometry.TrueStrength(40, t20, alcoholometry.MarkedAt(celsius(60)))),
		"proof above the scale":  second(alcoholometry.TrueProof(201, t20)),
		"water below its mark":   errOf(alcoholometry.Reading(alcoholometry.Water, t10)),
		"ethanol above its mark": errOf(alcoholometry.Reading(abv(100), t30)),
	} {
		if err == nil {
			t.Errorf("%s: no error", name)
		}
	}
}

func TestPlusMinus(t *testing.T) {
	// At the mark of the instrument a mark's error is the strength's error; and the two effects add as squares
	// (JCGM 100:2008, 5.1.2).
	tol := alcoholometry.Tolerances{ReadingABV: 0.3}
	if got := the(alcoholometry.StrengthPlusMinus(43, celsius(20), tol)); math.Abs(got-0.3) > 1e-6 {
		t.Errorf("StrengthPlusMinus(43, 20 °C, ±0.3) = %.6f; want 0.3", got)
	}
	a := the(alcoholometry.StrengthPlusMinus(43, celsius(26), tol))
	b := the(alcoholometry.StrengthPlusMinus(43, celsius(26), alcoholometry.Tolerances{TempC: 0.5}))
	both := the(alcoholometry.StrengthPlusMinus(43, celsius(26), alcoholometry.Tolerances{ReadingABV: 0.3, TempC: 0.5}))
	if math.Abs(both-math.Hypot(a, b)) > 1e-12 || a <= 0 || b <= 0 {
		t.Errorf("±%.4f and ±%.4f together ±%.4f; want the root of the sum of squares", a, b, both)
	}
	// Against the difference over the whole tolerance.
	up := the(alcoholometry.TrueStrength(43, celsius(26.5))).ABV()
	down := the(alcoholometry.TrueStrength(43, celsius(25.5))).ABV()
	if math.Abs(b-(down-up)/2) > 1e-3 {
		t.Errorf("±0.5 °C moves 43 at 26 °C by ±%.4f; the difference over the whole step gives %.4f", b, (down-up)/2)
	}
	for _, ends := range []struct{ reading, tC float64 }{{0, 20}, {100, 20}, {40, -20}, {40, 40}} {
		if _, err := alcoholometry.StrengthPlusMinus(ends.reading, celsius(ends.tC), tol); err != nil {
			t.Errorf("StrengthPlusMinus(%g, %g °C): %v", ends.reading, ends.tC, err)
		}
	}
	for _, bad := range []alcoholometry.Tolerances{{ReadingABV: -1}, {TempC: -1}, {TempC: math.NaN()}} {
		if _, err := alcoholometry.StrengthPlusMinus(43, celsius(20), bad); err == nil {
			t.Errorf("StrengthPlusMinus with %+v gave no error", bad)
		}
	}
}
