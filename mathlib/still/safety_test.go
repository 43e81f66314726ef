package still_test

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
	"swanneck/mathlib/still"
)

const localRules = "local codes and licensed practice come first"

func TestVentilation(t *testing.T) {
	v := the(still.VentilationFor(still.Leak{LH: 1, Strength: abv(60), MixingFactor: 1}))
	got := map[string]float64{"ethanol_g_h": v.EthanolGH, "air_m3_h": v.AirM3H, "people_m3_h": v.ForPeopleM3H}
	for _, row := range table(t, "ventilation.csv") {
		g, ok := got[row.text("figure")]
		if !ok {
			t.Fatalf("no figure %q", row.text("figure"))
		}
		near(t, row.text("figure"), g, row.number("value"), row.number("tol"))
	}
	five := the(still.VentilationFor(still.Leak{LH: 1, Strength: abv(60)}))
	near(t, "with the usual mixing factor", five.AirM3H/v.AirM3H, 5, 1e-12)
	hasCautions(t, v.Cautions())
	for _, l := range []still.Leak{{LH: -1, Strength: abv(60)}, {LH: 1}, {LH: 1, Strength: abv(60), MixingFactor: 0.5}, {LH: 1, Strength: abv(60), OfLowerPct: 120}} {
		if _, err := still.VentilationFor(l); err == nil {
			t.Errorf("%+v is answered", l)
		}
	}
}

func hasCautions(t *testing.T, lines []string) {
	t.Helper()
	if len(lines) < 2 || lines[len(lines)-1] != localRules {
		t.Errorf("cautions %q; they must end with %q", lines, localRules)
	}
	for _, l := range lines {
		if strings.Contains(l, "\n") || l == "" {
			t.Errorf("a caution of more than one line: %q", l)
		}
	}
}

func TestFlammableLimitsHaveSources(t *testing.T) {
	limits := still.FlammableLimits()
	if len(limits) < 3 {
		t.Fatalf("only %d limits", len(limits))
	}
	for _, l := range limits {
		if l.Source == "" || !(l.LowerPct > 0 && l.LowerPct < l.UpperPct && l.UpperPct < 100) {
			t.Errorf("%+v", l)
		}
	}
}

// By hand: 1000 g/hL of pure alcohol is 10 g to the litre of it, 4 g to the litre at 40 % vol; 0.35 % of the volume is 3.5 mL
// of 0.79 g/mL to the litre.
func TestMethanolAgainstLimits(t *testing.T) {
	for _, c := range []struct {
		found    quantity.Concentration
		limit    string
		measured bool
		answer   string
		share    float64
	}{
		{mgL(4000), "eu-fruit", true, "within", 1},
		{mgL(4001), "eu-fruit", true, "over", 1},
		{mgL(3600), "eu-fruit", false, "cannot tell: measure", 0.9},
		{mgL(2000), "EU-Fruit", false, "within", 0.5},
		{mgL(8000), "eu-fruit", false, "over", 2},
		{quantity.Concentration{}, "eu-fruit", true, "cannot tell: measure", 0},
		{the(quantity.GHLPure(100)), "eu-wine", true, "within", 0.5},
		{mgL(1385), "us-brandy", true, "within", 0.5},
	} {
		v := the(still.CheckMethanol(c.found, abv(40), c.limit, c.measured))
		if v.Answer != c.answer || math.Abs(v.Share-c.share) > 0.01 {
			t.Errorf("%v against %s, measured %v: %s, %.3f; want %s, %.3f", c.found, c.limit, c.measured, v.Answer, v.Share, c.answer, c.share)
		}
		hasCautions(t, v.Cautions())
	}
	if _, err := still.CheckMethanol(mgL(1), abv(40), "eu-plum", true); err == nil || !strings.Contains(err.Error(), "eu-fruit") {
		t.Errorf("an unknown limit: %v", err)
	}
	if _, err := still.CheckMethanol(mgL(1), alcoholometry.Strength{}, "eu-fruit", true); err == nil {
		t.Error("a strength that is not set")
	}
	for _, m := range still.MethanolLimits() {
		if m.Source == "" || m.Region == "" || m.Category == "" || m.PerPure.IsSet() == (m.VolPct > 0) {
			t.Errorf("%+v", m)
		}
	}
}

// figureOf returns the figure of a hazard whose label begins so.
func figureOf(t *testing.T, h still.Hazard, label string) float64 {
	t.Helper()
	for _, r := range h.Figures {
		if strings.HasPrefix(r[0], label) {
			return the(strconv.ParseFloat(r[1], 64))
		}
	}
	t.Fatalf("no %q in %v", label, h.Figures)
	return 0
}

// By hand: 10 L of 10 % vol hold about 41 kJ/K; 2 kW for 5 min warm them by 14.6 °C, from 92 to 107 °C, where the vapour presses
// about 1.71 times as hard (water: 75.6 and 129.4 kPa at 92 and 107 °C, steam tables, from memory).
func TestBlockedOutlet(t *testing.T) {
	h := the(still.BlockedOutlet(alcoholometry.Spirit{VolumeL: 10, Strength: abv(10)}, kPa(101.325), 2, 5))
	near(t, "pressure above the air", figureOf(t, h, "pressure"), 72, 4)
	near(t, "pull on a square decimetre, kg", figureOf(t, h, "pull"), 73, 4)
	hasCautions(t, h.Cautions())
	if _, err := still.BlockedOutlet(alcoholometry.Spirit{VolumeL: 10, Strength: abv(10)}, kPa(101.325), 2, 500); err == nil || !strings.Contains(err.Error(), "burst") {
		t.Errorf("500 minutes: %v", err)
	}
	if _, err := still.BlockedOutlet(alcoholometry.Spirit{VolumeL: 10, Strength: abv(10)}, kPa(101.325), -2, 5); err == nil {
		t.Error("a power below 0")
	}
}

// At 20 °C a wash of 10 % vol has a vapour pressure of about 3 kPa (water alone 2.3 kPa): nearly the whole air presses.
func TestClosedHotPot(t *testing.T) {
	h := the(still.ClosedHotPot(abv(10), kPa(101.325), celsius(20)))
	near(t, "suction", figureOf(t, h, "suction"), 98.3, 0.7)
	near(t, "weight on a square decimetre, kg", figureOf(t, h, "weight"), 100, 1)
	hasCautions(t, h.Cautions())
	if _, err := still.ClosedHotPot(abv(10), kPa(4), celsius(60)); err == nil {
		t.Error("a pot that still boils")
	}
}

func TestPotAndHeater(t *testing.T) {
	charge := alcoholometry.Spirit{VolumeL: 35, Strength: abv(30)}
	full := the(still.RoomForBoiling(charge, 50, true))
	if !strings.Contains(fmt.Sprint(full.Cautions()), "too full") {
		t.Errorf("35 L that foam in a pot of 50: %v", full.Cautions())
	}
	if ok := the(still.RoomForBoiling(charge, 50, false)); strings.Contains(fmt.Sprint(ok.Cautions()), "too full") {
		t.Errorf("35 L that do not foam in a pot of 50: %v", ok.Cautions())
	}
	r := the(still.Distil(still.Batch{Pot: charge, Until: abv(40)}))
	if bare := the(still.HeaterCover(r, 30)); !strings.Contains(fmt.Sprint(bare.Cautions()), "falls dry") {
		t.Errorf("a heater that needs 30 L: %v", bare.Cautions())
	}
	if wet := the(still.HeaterCover(r, 5)); strings.Contains(fmt.Sprint(wet.Cautions()), "falls dry") {
		t.Errorf("a heater that needs 5 L: %v", wet.Cautions())
	}
	if _, err := still.RoomForBoiling(charge, 0, false); err == nil {
		t.Error("a pot of 0 L")
	}
	if _, err := still.HeaterCover(r, -1); err == nil {
		t.Error("a heater that needs -1 L")
	}
}

func TestCautionsOfARun(t *testing.T) {
	b := still.Batch{Pot: alcoholometry.Spirit{VolumeL: 30, Strength: abv(45)}, Until: abv(40),
		Congeners: []still.Congener{{Name: "trans-anethole", MassG: 20}, {Name: "methanol", MassG: 5}},
		Heat:      still.Heating{PowerKW: 3, WaterIn: celsius(12), WaterOut: celsius(45), Distillate: celsius(18)}}
	r := the(still.Distil(b))
	hasCautions(t, r.Cautions())
	text := strings.Join(r.Cautions(), "\n")
	for _, want := range []string{"anethole sets near 21 °C", "no cut removes it", "burns by itself", "L/h of water", "kg/h of vapour"} {
		if !strings.Contains(text, want) {
			t.Errorf("the cautions do not say %q:\n%s", want, text)
		}
	}
	b.Congeners, b.Heat.WaterIn, b.Heat.Distillate = nil, celsius(25), celsius(30)
	b.Pot.Strength = abv(20)
	if text := fmt.Sprint(the(still.Distil(b)).Cautions()); strings.Contains(text, "anethole") || strings.Contains(text, "methanol") || strings.Contains(text, "by itself") {
		t.Errorf("cautions that do not belong here: %s", text)
	}
}
