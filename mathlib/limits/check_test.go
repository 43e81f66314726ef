package limits_test

import (
	"errors"
	"math"
	"slices"
	"strings"
	"testing"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/limits"
	"swanneck/mathlib/quantity"
)

func second[T any](_ T, err error) error { return err }

// answer returns the line for a substance.
func answer(t *testing.T, r limits.Report, what string) limits.Line {
	t.Helper()
	for _, l := range r.Lines {
		if l.What == what {
			return l
		}
	}
	t.Fatalf("no line for %s in %v", what, r.Lines)
	return limits.Line{}
}

func TestConversionsAgainstPrint(t *testing.T) {
	for _, r := range table(t, "conversions.csv") {
		s := abv(r.number("pct_vol"))
		var c quantity.Concentration
		switch r.text("from_unit") {
		case "mg/kg":
			c = mgKg(r.number("from"))
		case "g/hL pa":
			c = ghlpa(r.number("from"))
		case "g/L":
			c = gL(r.number("from"))
		}
		var got float64
		switch r.text("to_unit") {
		case "mg/L":
			got = the(alcoholometry.ConcentrationMgL(c, s))
		case "g/L":
			got = the(alcoholometry.ConcentrationMgL(c, s)) / 1000
		case "g/hL pa":
			got = the(alcoholometry.ConcentrationGHLPure(c, s))
		case "% v/v":
			rep := the(limits.Check(limits.Case{Jurisdiction: "US", Scopes: []string{"brandy"}, Strength: s, Findings: []limits.Finding{limits.Measured("methanol", c)}}))
			got = answer(t, rep, "methanol").High
		}
		if math.Abs(got-r.number("to")) > r.number("tol") {
			t.Errorf("%s %s at %g %% vol = %.5g %s; print gives %s ± %g", r.text("from"), r.text("from_unit"), r.number("pct_vol"), got, r.text("to_unit"), r.text("to"), r.number("tol"))
		}
	}
}

func TestRulesAgainstPrint(t *testing.T) {
	for _, r := range table(t, "rules.csv") {
		found := false
		for _, l := range the(limits.Limits(r.text("jurisdiction"))) {
			if l.Substance == r.text("substance") && l.Key == r.text("key") {
				found = true
				if l.Rule != r.text("rule") || l.Source.Text == "" || l.Source.Date == "" {
					t.Errorf("%v; print gives %s", l, r.text("rule"))
				}
			}
		}
		if !found {
			t.Errorf("no limit of %s in %s for %q", r.text("substance"), r.text("jurisdiction"), r.text("key"))
		}
	}
}

// The main case: wormwood. What a finding rests on decides what it can say.
func TestThujone(t *testing.T) {
	at := func(f limits.Finding, scopes ...string) limits.Line {
		return answer(t, the(limits.Check(limits.Case{Jurisdiction: "EU", Scopes: scopes, Strength: abv(60), Findings: []limits.Finding{f}})), "thujone")
	}
	for _, c := range []struct {
		name   string
		f      limits.Finding
		scopes []string
		want   limits.Answer
	}{
		{"measured, under 35 mg/kg", limits.Measured("thujone", mgL(23)), []string{"artemisia"}, limits.Within},
		{"the same without Artemisia", limits.Measured("thujone", mgL(23)), []string{"not artemisia"}, limits.Over},
		{"31.8 mg/L is 34.98 mg/kg at 60 % vol", limits.Measured("thujone", mgL(31.8)), []string{"artemisia"}, limits.Within},
		{"32 mg/L is 35.2 mg/kg", limits.Measured("thujone", mgL(32)), []string{"artemisia"}, limits.Over},
		{"6 g/hL of pure alcohol is 36 mg/L", limits.Measured("thujone", ghlpa(6)), []string{"artemisia"}, limits.Over},
		{"exactly 35", limits.Measured("thujone", mgKg(35)), []string{"artemisia"}, limits.Within},
		{"across", limits.MeasuredBetween("thujone", mgKg(33), mgKg(37)), []string{"artemisia"}, limits.CannotTell},
		{"not detected", limits.NotDetected("thujone", mgL(0.5)), []string{"artemisia"}, limits.Within},
		{"oil analysed, bound below", limits.Analysed("thujone", mgL(23)), []string{"artemisia"}, limits.Within},
		{"oil analysed, bound above", limits.Analysed("thujone", mgL(76)), []string{"artemisia"}, limits.CannotTell},
		{"printed range", limits.Printed("thujone", mgL(0), mgL(76)), []string{"artemisia"}, limits.CannotTell},
		{"printed range below", limits.Printed("thujone", mgL(0), mgL(3)), []string{"artemisia"}, limits.CannotTell},
		{"printed range above", limits.Printed("thujone", mgL(50), mgL(90)), []string{"artemisia"}, limits.Over},
		{"nothing", limits.Unknown("thujone"), []string{"artemisia"}, limits.CannotTell},
		{"no scope", limits.Measured("thujone", mgL(2)), nil, limits.CannotTell},
	} {
		l := at(c.f, c.scopes...)
		if l.Answer != c.want || l.NoLimit {
			t.Errorf("%s: %v; want %v", c.name, l, c.want)
		}
		if c.want == limits.CannotTell && !strings.Contains(l.Analysis, "GC-MS") {
			t.Errorf("%s: %v names no analysis", c.name, l)
		}
	}
	if l := at(limits.Measured("thujone", mgL(2))); !strings.Contains(l.Why, `"artemisia", "not artemisia"`) && !strings.Contains(l.Why, `"not artemisia", "artemisia"`) {
		t.Errorf("no scope: %v does not name the scopes", l)
	}
}

func TestThujoneIsTheSumOfTwo(t *testing.T) {
	at := func(f ...limits.Finding) (limits.Line, error) {
		r, err := limits.Check(limits.Case{Jurisdiction: "EU", Scopes: []string{"artemisia"}, Strength: abv(60), Findings: f})
		if err != nil {
			return limits.Line{}, err
		}
		return answer(t, r, "thujone"), nil
	}
	both := the(at(limits.Measured("alpha-thujone", mgKg(20)), limits.Measured("β-thujone", mgKg(16))))
	if both.Answer != limits.Over || math.Abs(both.Low-36) > 1e-9 {
		t.Errorf("20 + 16 mg/kg: %v", both)
	}
	one := the(at(limits.Measured("alpha-thujone", mgKg(20))))
	if one.Answer != limits.CannotTell || !strings.Contains(one.Why, "sum of alpha-thujone and beta-thujone") {
		t.Errorf("one isomer says nothing of the sum: %v", one)
	}
	if l := the(at(limits.Measured("alpha-thujone", mgKg(40)))); l.Answer != limits.Over {
		t.Errorf("one isomer above the limit of the sum: %v", l)
	}
	mixed := the(at(limits.Measured("alpha-thujone", mgKg(20)), limits.Printed("beta-thujone", mgKg(1), mgKg(2))))
	if mixed.Answer != limits.CannotTell {
		t.Errorf("a sum is as weak as its weakest part: %v", mixed)
	}
	for name, err := range map[string]error{
		"sum and part": second(at(limits.Measured("thujone", mgKg(20)), limits.Measured("alpha-thujone", mgKg(16)))),
		"part and sum": second(at(limits.Measured("alpha-thujone", mgKg(20)), limits.Measured("thujone", mgKg(16)))),
		"twice":        second(at(limits.Measured("thujone", mgKg(20)), limits.Measured("thujones", mgKg(16)))),
	} {
		if err == nil {
			t.Errorf("%s: no error", name)
		}
	}
}

func TestPlantsBringWhatMustBeMeasured(t *testing.T) {
	r := the(limits.Check(limits.Case{Jurisdiction: "EU", Strength: abv(60), Plants: []string{"wormwood", "Hyssopus officinalis", "lemon balm", "star anise"}, WarmInfusion: true}))
	th := answer(t, r, "thujone")
	if th.Answer != limits.CannotTell || !strings.Contains(th.Why, "to be expected of wormwood") || !strings.Contains(th.Rule, "35 mg/kg") {
		t.Errorf("%v: wormwood brings the limit for Artemisia", th)
	}
	if l := answer(t, r, "estragole"); !l.NoLimit || l.Text() != "no limit for this scope" || !strings.Contains(l.Why, "drinks without alcohol") {
		t.Errorf("%v: estragole has no limit in spirits", l)
	}
	if len(r.Cautions) != 4 || !strings.Contains(r.Cautions[1].Text, "pinocamphone") || r.Cautions[2].Listed || len(r.Hazards) != 3 {
		t.Errorf("cautions %v, hazards %v", r.Cautions, r.Hazards)
	}
	if n := r.Needed(); len(n) != 1 || !strings.Contains(n[0], "thujone") || r.Worst() != limits.CannotTell {
		t.Errorf("needed %v, worst %v", n, r.Worst())
	}
	if !strings.Contains(r.String(), limits.ComeFirst) || !strings.Contains(r.Rows()[len(r.Rows())-1][4], limits.ComeFirst) {
		t.Errorf("%v does not say what comes first", r)
	}
	var u *limits.UnknownError
	if err := second(limits.Cautions("wormwod")); !errors.As(err, &u) || !slices.Contains(u.Known, "wormwood") {
		t.Errorf("a misspelt plant goes without its caution: %v", err)
	}
	if c := the(limits.Cautions("cinnamon", "juniper")); c[0].Listed || c[1].Listed {
		t.Errorf("%v", c)
	}
	if _, err := limits.Cautions(""); err == nil {
		t.Error("a plant without a name")
	}
	// The user's own scope comes before what the plants bring.
	own := the(limits.Check(limits.Case{Jurisdiction: "EU", Strength: abv(60), Plants: []string{"wormwood"}, Scopes: []string{"not artemisia"}, Findings: []limits.Finding{limits.Measured("thujone", mgKg(20))}}))
	if l := answer(t, own, "thujone"); l.Answer != limits.Over {
		t.Errorf("%v", l)
	}
}

func TestCategories(t *testing.T) {
	pastis := func(pct, anethole float64, f ...limits.Finding) limits.Report {
		return the(limits.Check(limits.Case{Jurisdiction: "EU", Category: "pastis", Strength: abv(pct), Findings: append(f, limits.Measured("anethole", gL(anethole)))}))
	}
	for _, c := range []struct {
		pct, anethole        float64
		strength, inAnethole limits.Answer
	}{{40, 1.8, limits.Within, limits.Within}, {39.9, 1.4, limits.Under, limits.Under}, {45, 2.1, limits.Within, limits.Over}, {45, 2, limits.Within, limits.Within}} {
		r := pastis(c.pct, c.anethole)
		if s, a := answer(t, r, "strength of pastis"), answer(t, r, "trans-anethole"); s.Answer != c.strength || a.Answer != c.inAnethole {
			t.Errorf("%g %% vol, %g g/L: %v; %v; want %v and %v", c.pct, c.anethole, s, a, c.strength, c.inAnethole)
		}
		if l := answer(t, r, "glycyrrhizic acid"); l.Answer != limits.CannotTell || !strings.Contains(l.Analysis, "HPLC") {
			t.Errorf("%v", l)
		}
		// Anethole has the category's rule and no other: no line says that there is no limit.
		for _, l := range r.Lines {
			if l.What == "trans-anethole" && l.NoLimit {
				t.Errorf("%v beside the category's rule", l)
			}
		}
	}
	near := the(limits.Check(limits.Case{Jurisdiction: "EU", Category: "gin", Strength: abv(37.6), PlusMinusABV: 0.2}))
	if l := answer(t, near, "strength of gin"); l.Answer != limits.CannotTell || !strings.Contains(l.Analysis, "pycnometer") {
		t.Errorf("37.6 ± 0.2 %% vol: %v", l)
	}
	exact := the(limits.Check(limits.Case{Jurisdiction: "EU", Category: "Gin", Strength: abv(37.5)}))
	if l := answer(t, exact, "strength of gin"); l.Answer != limits.Within {
		t.Errorf("37.5 %% vol: %v", l)
	}
	brandy := func(f ...limits.Finding) limits.Report {
		return the(limits.Check(limits.Case{Jurisdiction: "EU", Category: "brandy", Strength: abv(40), Findings: f}))
	}
	r := brandy(limits.Measured("volatile substances", ghlpa(120)), limits.Measured("methanol", gL(0.9)))
	if l := answer(t, r, "volatile substances"); l.Answer != limits.Under {
		t.Errorf("a minimum: %v", l)
	}
	if l := answer(t, r, "methanol"); l.Answer != limits.Over || math.Abs(l.Low-225) > 1e-6 {
		t.Errorf("0.9 g/L at 40 %% vol are 225 g/hL, above the 200 of a brandy: %v", l)
	}
	if l := answer(t, brandy(limits.Analysed("volatiles", ghlpa(500))), "volatile substances"); l.Answer != limits.CannotTell {
		t.Errorf("a minimum needs an analysis of the product: %v", l)
	}
	if r.Worst() != limits.Under && r.Worst() != limits.Over {
		t.Errorf("worst %v", r.Worst())
	}
	if c := limits.Categories(); len(c) != 17 || slices.Contains(c, "absinthe") {
		t.Errorf("%v", c)
	}
}

func TestTwoRulesForOneSubstance(t *testing.T) {
	r := the(limits.Check(limits.Case{Jurisdiction: "EU", Scopes: []string{"stone fruit spirit"}, Strength: abv(40), Findings: []limits.Finding{limits.Measured("HCN", mgL(30))}}))
	var answers []limits.Answer
	for _, l := range r.Lines {
		answers = append(answers, l.Answer)
	}
	// 30 mg/L is 31.6 mg/kg, within 35; but 7.5 g/hL of pure alcohol, over the 7 of a stone-fruit spirit.
	if len(answers) != 2 || answers[0] != limits.Within || answers[1] != limits.Over {
		t.Errorf("%v", r.Lines)
	}
	// Fruit spirit by category is 1000; the finer scope comes before it.
	for _, c := range []struct {
		scopes []string
		want   limits.Answer
	}{{nil, limits.Over}, {[]string{"Williams pear spirit"}, limits.Within}} {
		r := the(limits.Check(limits.Case{Jurisdiction: "EU", Category: "fruit spirit", Scopes: c.scopes, Strength: abv(40), Findings: []limits.Finding{limits.Measured("methanol", ghlpa(1300))}}))
		if l := answer(t, r, "methanol"); l.Answer != c.want {
			t.Errorf("%v: %v", c.scopes, l)
		}
	}
}

func TestUnitedStates(t *testing.T) {
	at := func(scope, substance string, c quantity.Concentration) limits.Line {
		var scopes []string
		if scope != "" {
			scopes = []string{scope}
		}
		return answer(t, the(limits.Check(limits.Case{Jurisdiction: "us", Scopes: scopes, Strength: abv(45), Findings: []limits.Finding{limits.Measured(substance, c)}})), substance)
	}
	if l := at("thujone-free", "thujone", mgKg(10)); l.Answer != limits.Over {
		t.Errorf("10 ppm is not less than 10 ppm: %v", l)
	}
	if l := at("thujone-free", "thujone", mgKg(9.9)); l.Answer != limits.Within {
		t.Errorf("%v", l)
	}
	if l := at("", "safrole", mgKg(0.01)); l.Answer != limits.Over {
		t.Errorf("any safrole is over: %v", l)
	}
	if l := at("", "coumarin", mgKg(1)); !l.NoLimit {
		t.Errorf("%v", l)
	}
	r := the(limits.Check(limits.Case{Jurisdiction: "US", Strength: abv(45), Findings: []limits.Finding{limits.NotDetected("safrole", mgKg(0.1))}}))
	if l := answer(t, r, "safrole"); l.Answer != limits.CannotTell {
		t.Errorf("not found down to a limit of detection does not show that there is none: %v", l)
	}
}

func TestLabels(t *testing.T) {
	at := func(j string, label, pct float64, scopes ...string) limits.Answer {
		return answer(t, the(limits.Check(limits.Case{Jurisdiction: j, LabelABV: label, Strength: abv(pct), Scopes: scopes})), "label").Answer
	}
	for _, c := range []struct {
		j          string
		label, pct float64
		scopes     []string
		want       limits.Answer
	}{
		{"EU", 43, 43.3, nil, limits.Within}, {"EU", 43, 42.69, nil, limits.Under}, {"EU", 43, 43.4, nil, limits.Over},
		{"EU", 43, 44.4, []string{"macerated"}, limits.Within}, {"EU", 43, 44.6, []string{"macerated"}, limits.Over},
		{"US", 60.02, 60, nil, limits.Within}, {"US", 60, 60.4, nil, limits.Over},
	} {
		if got := at(c.j, c.label, c.pct, c.scopes...); got != c.want {
			t.Errorf("%s: label %g, true %g %% vol: %v; want %v", c.j, c.label, c.pct, got, c.want)
		}
	}
	if l := answer(t, the(limits.Check(limits.Case{Jurisdiction: "EU", LabelABV: 43, Strength: abv(43.2), PlusMinusABV: 0.2})), "label"); l.Answer != limits.CannotTell {
		t.Errorf("%v", l)
	}
	if l := answer(t, the(limits.Check(limits.Case{Jurisdiction: "HMPC", LabelABV: 43, Strength: abv(43)})), "label"); !l.NoLimit {
		t.Errorf("%v", l)
	}
}

func TestMedicinesAndRepealedRules(t *testing.T) {
	r := the(limits.Check(limits.Case{Jurisdiction: "HMPC", Strength: abv(45), Findings: []limits.Finding{limits.Measured("thujone", mgKg(1))}}))
	if l := answer(t, r, "thujone"); !l.NoLimit {
		t.Errorf("a dose for a person is no limit for a drink: %v", l)
	}
	c := the(limits.Check(limits.Case{Jurisdiction: "EU", Strength: abv(45), Findings: []limits.Finding{limits.Measured("coumarin", mgKg(20))}}))
	if l := answer(t, c, "coumarin"); !l.NoLimit || !strings.Contains(l.Why, "2011") {
		t.Errorf("coumarin: %v", l)
	}
	for _, name := range []string{"88/388/EEC", "Directive 88/388"} {
		if _, err := limits.Check(limits.Case{Jurisdiction: name, Strength: abv(45)}); err == nil || !strings.Contains(err.Error(), "repealed since 20 January 2011") {
			t.Errorf("%s: %v", name, err)
		}
	}
}

func TestRefuses(t *testing.T) {
	fine := limits.Case{Jurisdiction: "EU", Strength: abv(60), Scopes: []string{"artemisia"}, Findings: []limits.Finding{limits.Measured("thujone", mgKg(20))}}
	for name, c := range map[string]struct {
		change func(*limits.Case)
		says   string
	}{
		"nowhere":          {func(c *limits.Case) { c.Jurisdiction = "Atlantis" }, "EU, HMPC, US"},
		"no jurisdiction":  {func(c *limits.Case) { c.Jurisdiction = "" }, "EU, HMPC, US"},
		"no strength":      {func(c *limits.Case) { c.Strength = alcoholometry.Strength{} }, "not set"},
		"no category":      {func(c *limits.Case) { c.Category = "absinthe" }, "there are gin"},
		"category abroad":  {func(c *limits.Case) { c.Jurisdiction, c.Scopes, c.Category = "US", nil, "gin" }, "EU only"},
		"no scope":         {func(c *limits.Case) { c.Scopes = []string{"green"} }, "artemisia"},
		"unknown":          {func(c *limits.Case) { c.Findings[0].Substance = "thujon" }, "the nearest are thujone"},
		"unset":            {func(c *limits.Case) { c.Findings[0] = limits.Measured("thujone", quantity.Concentration{}) }, "not set"},
		"turned round":     {func(c *limits.Case) { c.Findings[0] = limits.MeasuredBetween("thujone", mgKg(30), mgKg(20)) }, "above its high end"},
		"hearsay":          {func(c *limits.Case) { c.Findings[0].Support = "hearsay" }, "hearsay"},
		"nothing measured": {func(c *limits.Case) { c.Findings[0].Support = limits.ByNothing }, "nothing measured"},
		"label":            {func(c *limits.Case) { c.LabelABV = 143 }, "143"},
		"plus minus":       {func(c *limits.Case) { c.PlusMinusABV = -1 }, "-1"},
		"per pure water": {func(c *limits.Case) {
			c.Strength = alcoholometry.Water
			c.Findings[0] = limits.Measured("thujone", ghlpa(5))
		}, "no pure alcohol"},
		"misspelt plant": {func(c *limits.Case) { c.Plants = []string{"wormwod"} }, "wormwood"},
	} {
		k := fine
		k.Findings = slices.Clone(fine.Findings)
		c.change(&k)
		if _, err := limits.Check(k); err == nil || !strings.Contains(err.Error(), c.says) || !strings.HasPrefix(err.Error(), "limits.Check: ") || strings.Contains(err.Error(), "\n") {
			t.Errorf("%s: %v; want one line with %q", name, err, c.says)
		}
	}
	for name, err := range map[string]error{"Limits": second(limits.Limits("Mars")), "Scopes": second(limits.Scopes("Mars"))} {
		if err == nil || !strings.HasPrefix(err.Error(), "limits."+name) {
			t.Errorf("%s: %v", name, err)
		}
	}
}

// No line ever shows a rule without its source.
func TestEveryRuleHasItsSource(t *testing.T) {
	for _, j := range limits.Jurisdictions() {
		for _, l := range the(limits.Limits(j)) {
			if l.Source.Text == "" || l.Source.Date == "" || !strings.Contains(l.String(), l.Source.Text) {
				t.Errorf("%v has no source", l)
			}
			if l.Source.Status == "memory" && !strings.Contains(l.String(), "from memory") {
				t.Errorf("%v does not say that it is from memory", l)
			}
		}
	}
	for _, c := range limits.Categories() {
		for _, l := range the(limits.Check(limits.Case{Jurisdiction: "EU", Category: c, Strength: abv(40)})).Lines {
			if l.Source.Text == "" || l.Rule == "" {
				t.Errorf("%s: %v", c, l)
			}
		}
	}
}
