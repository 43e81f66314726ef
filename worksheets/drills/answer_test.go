package drills

import (
	"fmt"
	"math"
	"strings"
	"testing"
)

// fixed is a problem with a round answer, so that answers can be written by hand.
func fixed(kind Kind, unit string, answer, tolerance float64) Problem {
	return Problem{Kind: kind, Unit: unit, Answer: answer, Tolerance: tolerance, Decimals: 1,
		Mistakes: []Mistake{{Name: volumesAdded, How: how[volumesAdded], Figure: answer * 0.9}}}
}

func TestAnswersInOtherUnits(t *testing.T) {
	for _, c := range []struct {
		problem Problem
		right   []string
		unread  map[string]string
	}{
		{fixed(Water, "kg", 250, 1), []string{"250 kg", "250,4 kg", "250 000 g", "0.25 t", "551,2 lb", "250 kg of water", " 250.0kg "},
			map[string]string{"250": "no unit", "250 L": "mass", "kg": "number", "1,250 kg": "1.250", "250 kg and a bit": "unit of mass"}},
		{fixed(Reduction, "L", 250, 1), []string{"250 L", "250 l of water", "2.5 hL", "66.04 gal"}, map[string]string{"250 kg": "volume"}},
		{fixed(TrueStrength, "% vol", 43, 0.1), []string{"43 %vol", "43,05 % vol", "43.0 vol%", "35.97 % mass"}, // 43 % vol are 35.97 % by mass
			map[string]string{"43 %": "by volume or by mass", "43 °C": "no unit of strength", "430 %vol": "0 to 100"}},
		{fixed(Reading, "% vol", 45.3, 0.1), []string{"45.3 %vol", "45,3 % vol", "45.3 %"}, map[string]string{"45.3 % mass": "scale", "90 proof": "scale"}},
		{fixed(TrueProof, "proof", 100, 0.2), []string{"100 proof", "100,1 US proof"}, map[string]string{"100": "no unit", "100 gal": "no unit of strength"}},
		{fixed(PureAlcohol, pureUnit, 282, 0.5), []string{"282 L", "282 LPA", "282,2 L of pure alcohol", "282 litres of pure alcohol", "2.82 hL"},
			map[string]string{"282 kg": "volume"}},
		{fixed(ProofGallons, proofGallonUnit, 250, 0.5), []string{"250 proof gallons", "250 PG", "250.2 proof gal"}, map[string]string{"250 gal": "want proof gallons"}},
		{fixed(Bottles, "bottles", 790, 0), []string{"790 bottles", "790 bottle"}, map[string]string{"790.4 bottles": "whole", "790 L": "want bottles"}},
	} {
		for _, a := range c.right {
			if v := c.problem.Check(a); !v.Right || v.Unread != "" {
				t.Errorf("%s: Check(%q) = %v; %v %s is right", c.problem.Kind, a, v, c.problem.Answer, c.problem.Unit)
			}
		}
		for a, want := range c.unread {
			if v := c.problem.Check(a); v.Right || !strings.Contains(v.Unread, want) || strings.Contains(v.Unread, "alcoholometry.") {
				t.Errorf("%s: Check(%q) = %v; want it not read, with %q", c.problem.Kind, a, v, want)
			}
		}
	}
}

func TestVerdictWords(t *testing.T) {
	p := fixed(Water, "kg", 250, 1)
	for answer, want := range map[string]string{
		"249.2 kg": "right",
		"225 kg":   "not right: volumes added. ",
		"260 kg":   "not right: 10.0 kg too much",
		"240 kg":   "not right: 10.0 kg too little",
		"much":     "not read: ",
		"":         `not read: there is no answer; write it as "… kg"`,
	} {
		if got := p.Check(answer).String(); !strings.HasPrefix(got, want) || strings.Contains(got, "\n") {
			t.Errorf("Check(%q) says %q; want %q", answer, got, want)
		}
	}
}

// A wrong route that leads near the right answer, or near another one, is not offered.
func TestTold(t *testing.T) {
	kept, fit := told([]Mistake{mistake(volumesAdded, 110), spare(massForVolume, 103), spare(notCorrected, 111), mistake(litresForKg, 90)}, 100, 2)
	if !fit || len(kept) != 2 || kept[0].Name != volumesAdded || kept[1].Name != litresForKg {
		t.Errorf("kept %v, %v; want volumes added and litres for kilograms", kept, fit)
	}
	if _, fit := told([]Mistake{mistake(volumesAdded, 103)}, 100, 2); fit {
		t.Error("a problem is set although its mistake leads to 103 where 100 ± 2 is right")
	}
}

func TestRoundUp(t *testing.T) {
	for x, want := range map[float64]float64{0.1: 0.1, 0.101: 0.15, 0.56: 0.6, 0.81: 1, 1.2: 1.5, 7: 8, 23: 30, 0.0082: 0.01} {
		if got := roundUp(x); math.Abs(got-want) > 1e-12 {
			t.Errorf("roundUp(%v) = %v; want %v", x, got, want)
		}
	}
}

// The bound of the rounding is no guess: rounding every figure of a step the worst way moves the answer that far.
func TestWorkBoundsTheRounding(t *testing.T) {
	solve := func(s *slate) float64 {
		a := s.reckon("a", "", 1, 10.04, "…")
		b := s.reckon("b", "", 0, 20.4, "…")
		return a.x * b.x
	}
	w := work(solve, 10.04*20.4)
	if want := 0.05*20.4 + 0.5*10.04; math.Abs(w.worst-want) > 1e-9 {
		t.Errorf("two roundings can move 10.04 × 20.4 by %v; want %v", w.worst, want)
	}
	if w.figure != 10.0*20 || len(w.steps) != 2 {
		t.Errorf("the person comes to %v in %d steps; want 200 in 2", w.figure, len(w.steps))
	}
}

func ExampleProblem_Check() {
	p, err := New(7, Water)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(p.Check("much"))
	fmt.Println(p.Check("150 L"))
	// Output:
	// not read: "much" does not begin with a number
	// not read: "L" is no unit of mass; want kg, g, mg, t, lb or oz
}
