package duty_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/duty"
	"swanneck/mathlib/quantity"
)

func TestExamplesOfTheGaugingManual(t *testing.T) {
	checked := map[string]int{}
	for _, r := range table(t, "us_gauging_examples.csv") {
		a, p, second := r.number("a"), r.number("proof"), r.optional("apparent")
		f, f2 := r.optional("factor"), r.optional("factor2")
		var got float64
		var g duty.USGauge
		switch r.text("method") {
		case "weight":
			g = the(duty.USGaugeByWeight(duty.USWeight{WeightLb: a, Proof: p, ApparentProof: second, WineGalPerLb: f, ProofGalPerLb: f2}))
		case "table3":
			g = the(duty.USGaugeByTable3(duty.USWeight{WeightLb: a, Proof: p, ProofGalPerLb: f2}))
		case "volume":
			g = the(duty.USGaugeByVolume(duty.USVolume{ObservedGal: a, Proof: p, Factor: f}))
		case "draw":
			got = the(duty.USGallonsToDraw(a, duty.USVolume{Proof: p, Factor: f}))
		case "reduce":
			got = the(duty.USReduceByTable6(duty.USReduction{FromProof: p, ToProof: second, FromWater: f, ToWater: f2})).CutGal
		case "reduce_lb":
			got = the(duty.USReduceByTable4(duty.USReductionByWeight{WeightLb: a, FromProof: p, ToProof: second, FromGalPerLb: f, ToGalPerLb: f2}))
		default:
			t.Fatalf("nothing reckons %s", r.text("method"))
		}
		switch r.text("prints") {
		case "wine_gal":
			got = g.WineGal
		case "proof_gal":
			got = g.ProofGal
		}
		checked[r.text("method")]++
		if want := r.number("value"); got != want {
			t.Errorf("%s, %s = %g %v; %s (%s) prints %g", r.text("example"), r.text("prints"), got, g.Steps, r.text("section"), r.text("status"), want)
		}
	}
	if len(checked) != 6 {
		t.Errorf("only %v were checked", checked)
	}
}

// 27 CFR 30.66 has 1.84 gallons for 191 to 188 proof, because it cuts 1.016 off to 1.01. Physics gives 1.885: the rule's
// figure must not be that, nor UncutGal the rule's.
func TestCuttingOffIsTheRuleAndNotThePhysics(t *testing.T) {
	w := the(duty.USReduceByTable6(duty.USReduction{FromProof: 191, ToProof: 188, FromWater: 5.59, ToWater: 7.36}))
	physics := 191.0/188*the(alcoholometry.USWaterParts(proof(188))) - the(alcoholometry.USWaterParts(proof(191)))
	if math.Abs(w.UncutGal-physics) > 0.01 {
		t.Errorf("without cutting off %.4f gal; physics gives %.4f ± 0.01", w.UncutGal, physics)
	}
	if w.CutGal != 1.84 || math.Abs(w.CutGal-physics) < 0.03 {
		t.Errorf("by the rule %g gal, physics %.4f", w.CutGal, physics)
	}
}

func TestContainersAgainstTheRegulation(t *testing.T) {
	for _, r := range table(t, "us_containers.csv") {
		c := the(duty.USContainerFor(r.number("gallons"), r.number("proof"), 0))
		if float64(c.Lb) != r.number("lb") || float64(c.Ounces) != r.number("oz") {
			t.Errorf("%g gal at %g proof: %v; 27 CFR 30.44(b) gives %s lb %s oz", r.number("gallons"), r.number("proof"), c, r.text("lb"), r.text("oz"))
		}
		if r.text("hundredths") == "yes" && math.Abs(c.WeightLb-r.number("pounds")) > 1e-9 {
			t.Errorf("%g gal at %g proof: %.2f lb; 27 CFR 30.44(b) gives %s", r.number("gallons"), r.number("proof"), c.WeightLb, r.text("pounds"))
		}
	}
}

func TestCasesAgainstTheConversionTable(t *testing.T) {
	for _, r := range table(t, "us_cases.csv") {
		if got := the(duty.USGaugeCases(1, r.number("litres_per_case"), 80)).WineGal; math.Abs(got-r.number("gallons")) > 0.6e-6 {
			t.Errorf("a case of %g L is %.6f gal; the conversion table gives %s", r.number("litres_per_case"), got, r.text("gallons"))
		}
	}
}

// With factors reckoned, the regulation's arithmetic and the physics differ by no more than its rounding.
func TestRuleAgainstPhysics(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := float64(rapid.IntRange(10, 2000).Draw(t, "tenths of proof")) / 10
		gal := rapid.Float64Range(10, 5000).Draw(t, "gal")
		temp := celsius(rapid.Float64Range(0, 38).Draw(t, "t"))
		spirit := alcoholometry.Spirit{VolumeL: quantity.USGallonsToL(gal), Strength: proof(p), Temp: temp}
		pg := the(alcoholometry.ProofGallons(spirit))
		g := the(duty.USGaugeByVolume(duty.USVolume{ObservedGal: gal, Temp: temp, Proof: p}))
		if bound := 0.06 + 0.0005*1.01*gal*p/100; math.Abs(g.ProofGal-pg) > bound {
			t.Fatalf("by volume %g proof gallons; physics %.4f ± %.4f", g.ProofGal, pg, bound)
		}
		lb := quantity.KgToPounds(the(alcoholometry.BalanceFromMassKg(spirit.MassKg(), spirit.Strength, fahrenheit(60))))
		w := the(duty.USGaugeByWeight(duty.USWeight{WeightLb: lb, Proof: p}))
		if bound := 0.06 + 5.1e-6*lb + 1e-4*pg; math.Abs(w.ProofGal-pg) > bound {
			t.Fatalf("by weight %g proof gallons; physics %.4f ± %.4f", w.ProofGal, pg, bound)
		}
		whole := math.Floor(lb)
		if whole < 1 {
			return
		}
		parts := the(duty.USGaugeByTable3(duty.USWeight{WeightLb: whole, Proof: p}))
		sum := the(duty.USGaugeByWeight(duty.USWeight{WeightLb: whole, Proof: p}))
		if math.Abs(parts.ProofGal-sum.ProofGal) > 0.05*float64(len(parts.Steps)+1)+1e-9 {
			t.Fatalf("table 3 gives %g and table 4 %g", parts.ProofGal, sum.ProofGal)
		}
		to := float64(rapid.IntRange(5, int(p*10)-1).Draw(t, "to, tenths of proof")) / 10
		r := the(duty.USReduceByTable6(duty.USReduction{FromProof: p, ToProof: to}))
		exact := p/to*the(alcoholometry.USWaterParts(proof(to))) - the(alcoholometry.USWaterParts(proof(p)))
		if math.Abs(r.UncutGal-exact) > 0.0051*(1+p/to) {
			t.Fatalf("%g to %g proof: %.4f gal without cutting off; physics %.4f", p, to, r.UncutGal, exact)
		}
		if r.CutGal > r.UncutGal+0.006 || r.CutGal < r.UncutGal-1.03 {
			t.Fatalf("%g to %g proof: cut off %.2f gal, not cut off %.4f", p, to, r.CutGal, r.UncutGal)
		}
	})
}

func TestUSRefuses(t *testing.T) {
	nan := math.NaN()
	bad := map[string]error{}
	_, bad["no weight"] = duty.USGaugeByWeight(duty.USWeight{Proof: 100})
	_, bad["no proof"] = duty.USGaugeByWeight(duty.USWeight{WeightLb: 100})
	_, bad["proof of 201"] = duty.USGaugeByWeight(duty.USWeight{WeightLb: 100, Proof: 201})
	_, bad["apparent proof of -1"] = duty.USGaugeByWeight(duty.USWeight{WeightLb: 100, Proof: 90, ApparentProof: -1})
	_, bad["negative factor"] = duty.USGaugeByWeight(duty.USWeight{WeightLb: 100, Proof: 90, WineGalPerLb: -1})
	_, bad["no factor"] = duty.USGaugeByWeight(duty.USWeight{WeightLb: 100, Proof: 90, ProofGalPerLb: nan})
	_, bad["table 3, thousandths"] = duty.USGaugeByTable3(duty.USWeight{WeightLb: 100.125, Proof: 90})
	_, bad["table 3, no weight"] = duty.USGaugeByTable3(duty.USWeight{Proof: 90})
	_, bad["table 3, no proof"] = duty.USGaugeByTable3(duty.USWeight{WeightLb: 1})
	_, bad["no volume"] = duty.USGaugeByVolume(duty.USVolume{Proof: 90})
	_, bad["hot"] = duty.USGaugeByVolume(duty.USVolume{ObservedGal: 1, Proof: 90, Temp: celsius(60)})
	_, bad["volume, no proof"] = duty.USGaugeByVolume(duty.USVolume{ObservedGal: 1})
	_, bad["nothing to draw"] = duty.USGallonsToDraw(0, duty.USVolume{Proof: 90})
	_, bad["no cases"] = duty.USGaugeCases(0, 9, 80)
	_, bad["empty case"] = duty.USGaugeCases(1, 0, 80)
	_, bad["case, no proof"] = duty.USGaugeCases(1, 9, 0)
	_, bad["raise"] = duty.USReduceByTable6(duty.USReduction{FromProof: 80, ToProof: 100})
	_, bad["same"] = duty.USReduceByTable6(duty.USReduction{FromProof: 80, ToProof: 80})
	_, bad["to water"] = duty.USReduceByTable6(duty.USReduction{FromProof: 80})
	_, bad["from water"] = duty.USReduceByTable6(duty.USReduction{ToProof: 80})
	_, bad["raise by weight"] = duty.USReduceByTable4(duty.USReductionByWeight{WeightLb: 1, FromProof: 80, ToProof: 100})
	_, bad["no weight to reduce"] = duty.USReduceByTable4(duty.USReductionByWeight{FromProof: 100, ToProof: 80})
	_, bad["large container"] = duty.USContainerFor(11, 190, 0)
	_, bad["empty container"] = duty.USContainerFor(0, 190, 0)
	_, bad["container, no proof"] = duty.USContainerFor(5, 0, 0)
	for name, err := range bad {
		if err == nil {
			t.Errorf("%s: no error", name)
		}
	}
}
