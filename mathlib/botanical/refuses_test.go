package botanical_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/botanical"
	"swanneck/mathlib/compound"
	"swanneck/mathlib/quantity"
)

func TestChargeRefuses(t *testing.T) {
	oil := botanical.OilContent{Amount: botanical.Exactly(10), Unit: botanical.OilMLPerKg, Basis: botanical.AsWeighed}
	with := func(change func(*botanical.Botanical)) botanical.Recipe {
		b := the(botanical.Herb("juniper", 20))
		change(&b)
		return botanical.Recipe{Items: []botanical.Botanical{b}}
	}
	marker := func(m ...botanical.Marker) botanical.Recipe {
		return with(func(b *botanical.Botanical) { b.Markers = m })
	}
	for name, c := range map[string]struct {
		r    botanical.Recipe
		want string
	}{
		"no plants":        {botanical.Recipe{}, "no plants"},
		"no name":          {botanical.Recipe{Items: []botanical.Botanical{{GPerL: 3}}}, "has no Plant"},
		"unknown plant":    {botanical.Recipe{Items: []botanical.Botanical{{Plant: "junipper", GPerL: 3}}}, "nearest names are juniper"},
		"half a name":      {botanical.Recipe{Items: []botanical.Botanical{{Plant: "fennel", GPerL: 3}}}, "bitter fennel, sweet fennel"},
		"another part":     {botanical.Recipe{Items: []botanical.Botanical{{Plant: "juniper", Part: "wood", GPerL: 3}}}, "of the cone, not of the wood"},
		"no amount":        {with(func(b *botanical.Botanical) { b.GPerL = 0 }), "0 g to the litre"},
		"negative":         {with(func(b *botanical.Botanical) { b.GPerL = -20 }), "-20 g to the litre"},
		"no number":        {with(func(b *botanical.Botanical) { b.GPerL = math.NaN() }), "NaN"},
		"a kilogram":       {with(func(b *botanical.Botanical) { b.GPerL = 2000 }), "can be covered"},
		"no basis":         {with(func(b *botanical.Botanical) { b.Oil = oil; b.Oil.Basis = "" }), "has no basis"},
		"no unit":          {with(func(b *botanical.Botanical) { b.Oil = oil; b.Oil.Unit = "" }), "has no unit"},
		"wrong unit":       {with(func(b *botanical.Botanical) { b.Oil = oil; b.Oil.Unit = "%" }), "must be mL/kg"},
		"anhydrous alone":  {with(func(b *botanical.Botanical) { b.Oil = oil; b.Oil.Basis = botanical.Anhydrous }), "moisture is not given"},
		"fresh as dried":   {with(func(b *botanical.Botanical) { b.MoisturePct = 70 }), "on the dried drug"},
		"too much oil":     {with(func(b *botanical.Botanical) { b.Oil = oil; b.Oil.Amount = botanical.Exactly(400) }), "more than any plant"},
		"oil backwards":    {with(func(b *botanical.Botanical) { b.Oil = oil; b.Oil.Amount = botanical.Between(20, 10) }), "lower end first"},
		"density":          {with(func(b *botanical.Botanical) { b.Oil = oil; b.Oil.DensityKgL = botanical.Exactly(900) }), "0.6 to 1.3"},
		"all water":        {with(func(b *botanical.Botanical) { b.MoisturePct = 100 }), "moisture of juniper is 100 %"},
		"share of 120":     {marker(botanical.Marker{Compound: "limonene", SharePct: botanical.Exactly(120)}), "0 to 100 %"},
		"shares of 120":    {marker(botanical.Marker{Compound: "limonene", SharePct: botanical.Exactly(60)}, botanical.Marker{Compound: "myrcene", SharePct: botanical.Exactly(60)}), "add up to 120 %"},
		"negative share":   {marker(botanical.Marker{Compound: "limonene", SharePct: botanical.Exactly(-1)}), "-1 %"},
		"unknown marker":   {marker(botanical.Marker{Compound: "limonen", SharePct: botanical.Exactly(3)}), "nearest names are limonene"},
		"marker twice":     {marker(botanical.Marker{Compound: "limonene", SharePct: botanical.Exactly(3)}, botanical.Marker{Compound: "dipentene", SharePct: botanical.Exactly(3)}), "give it one share"},
		"sum and part":     {marker(botanical.Marker{Compound: "thujone", SharePct: botanical.Exactly(3)}, botanical.Marker{Compound: "alpha-thujone", SharePct: botanical.Exactly(3)}), "give it one share"},
		"alcohol":          {marker(botanical.Marker{Compound: "ethanol", SharePct: botanical.Exactly(3)}), "no marker"},
		"nameless":         {marker(botanical.Marker{SharePct: botanical.Exactly(3)}), "has no Compound"},
		"reached on herb":  {with(func(b *botanical.Botanical) { b.ReachedPct = botanical.Exactly(50) }), "ReachedPct"},
		"released early":   {with(func(b *botanical.Botanical) { b.Use, b.ReleasedPct = botanical.Strained, botanical.Exactly(50) }), "ReleasedPct"},
		"released of 120":  {with(func(b *botanical.Botanical) { b.ReleasedPct = botanical.Exactly(120) }), "0 to 100 %"},
		"no use":           {with(func(b *botanical.Botanical) { b.Use = "thrown in" }), "must be OnTheHerb"},
		"markers, no oil":  {botanical.Recipe{Items: []botanical.Botanical{{Plant: "sage", GPerL: 3, Unlisted: true, Markers: []botanical.Marker{{Compound: "camphor", SharePct: botanical.Exactly(3)}}}}}, "give Oil"},
		"infused and not":  {botanical.Recipe{Items: []botanical.Botanical{{Plant: "juniper", GPerL: 3}, {Plant: "nettle", GPerL: 3, Use: botanical.Infused}}}, "recipe of its own"},
		"kept of nothing":  {botanical.Recipe{KeepPct: 20, Items: []botanical.Botanical{{Plant: "juniper", GPerL: 3}}}, "no plant is strained"},
		"per what":         {botanical.Recipe{Per: "bucket", Items: []botanical.Botanical{{Plant: "juniper", GPerL: 3}}}, "PerPureL or PerChargeL"},
		"straining":        {botanical.Recipe{Straining: "sieved", Items: []botanical.Botanical{{Plant: "juniper", GPerL: 3}}}, "WrungByHand"},
		"nothing drips":    {botanical.Recipe{Per: botanical.PerChargeL, Straining: botanical.Drained, Items: []botanical.Botanical{{Plant: "juniper", GPerL: 400, Use: botanical.Strained}}}, "hold back"},
		"plants together":  {botanical.Recipe{Per: botanical.PerChargeL, Items: []botanical.Botanical{{Plant: "juniper", GPerL: 300}, {Plant: "coriander", GPerL: 300}}}, "600 g of dry plant"},
		"negative release": {with(func(b *botanical.Botanical) { b.ReleasePerH = botanical.Exactly(-1) }), "ReleasePerH"},
	} {
		_, err := botanical.NewCharge(c.r, spirit(10, 60))
		if err == nil || !strings.Contains(err.Error(), c.want) || !strings.HasPrefix(err.Error(), "botanical.NewCharge: ") || strings.Contains(err.Error(), "\n") {
			t.Errorf("%s: %v; want one line of botanical.NewCharge with %q", name, err, c.want)
			continue
		}
		if _, stops := err.(interface{ StopsCell() }); !stops {
			t.Errorf("%s: a %T does not stop a cell in one line", name, err)
		}
	}
	ok := with(func(*botanical.Botanical) {})
	var unset *alcoholometry.UnsetError
	if _, err := botanical.NewCharge(ok, alcoholometry.Spirit{VolumeL: 3}); !errors.As(err, &unset) {
		t.Errorf("no strength: %v", err)
	}
	if _, err := botanical.NewCharge(ok, spirit(0, 60)); err == nil {
		t.Error("no volume: no error")
	}
	if _, err := botanical.NewCharge(ok, alcoholometry.Spirit{VolumeL: 3, Strength: alcoholometry.Water}); err == nil || !strings.Contains(err.Error(), "no pure alcohol") {
		t.Errorf("water: %v", err)
	}
	if _, err := ok.Traces(alcoholometry.Spirit{VolumeL: 3}); !errors.As(err, &unset) {
		t.Errorf("traces without a strength: %v", err)
	}
	var unknown *botanical.UnknownPlantError
	if _, err := botanical.Find(""); !errors.As(err, &unknown) || len(unknown.Nearest) != 3 {
		t.Errorf("no name: %v", err)
	}
	var kind *compound.UnknownError
	if _, err := botanical.NewCharge(marker(botanical.Marker{Compound: "limonen", SharePct: botanical.Exactly(3)}), spirit(1, 60)); !errors.As(err, &kind) {
		t.Errorf("unknown compound: %T", err)
	}
}

func TestNotFollowedIsListed(t *testing.T) {
	for _, c := range []struct {
		b    botanical.Botanical
		want string
		some bool // grams are known
	}{
		{the(botanical.Herb("hyssop", 5)), "pinocamphone", true},
		{the(botanical.Herb("cassia", 5)), "its oil", true},
		{the(botanical.Herb("chamomile", 5)), "bisabolol oxides or chamazulene", false},
		{the(botanical.Herb("lemon balm", 5)), "citronellal", false},
		{the(botanical.Herb("hyssop", 5)).WithMarker("pinocamphone", botanical.Exactly(40)), "pinocamphone", true},
		{botanical.Botanical{Plant: "a plant from the hill", GPerL: 5, Unlisted: true}, "its oil", false},
	} {
		charge, err := botanical.NewCharge(botanical.Recipe{Items: []botanical.Botanical{c.b}}, spirit(10, 60))
		if err != nil {
			t.Errorf("%s: %v", c.b.Plant, err)
			continue
		}
		found := false
		for _, o := range charge.Others {
			if o.Marker == c.want {
				found = true
				if o.G.IsSet() != c.some || o.Why == "" {
					t.Errorf("%v", o)
				}
			}
		}
		if !found {
			t.Errorf("%s: %q is not among %v", c.b.Plant, c.want, charge.Others)
		}
		for _, x := range charge.Traces() {
			if strings.Contains(x.Compound, "camphone") || x.Compound == "citronellal" {
				t.Errorf("%s: %v is followed without a figure", c.b.Plant, x)
			}
		}
	}
}

func TestMeasuredRefuses(t *testing.T) {
	for name, err := range map[string]error{
		"layer above the sample": second(botanical.SaltedOut(botanical.OilLayer{LayerML: 20, OfML: 10})),
		"negative layer":         second(botanical.SaltedOut(botanical.OilLayer{LayerML: -1, OfML: 10})),
		"no sample":              second(botanical.SaltedOut(botanical.OilLayer{LayerML: 1})),
		"density of the layer":   second(botanical.SaltedOut(botanical.OilLayer{LayerML: 1, OfML: 10, DensityKgL: botanical.Exactly(9)})),
		"no plant":               second(botanical.AssayedOil(0.4, 0.02, 0)),
		"no oil":                 second(botanical.AssayedOil(0, 0.02, 20)),
		"no number":              second(botanical.AssayedOil(math.NaN(), 0.02, 20)),
		"no dried sample":        second(botanical.DryExtract(1, 0)),
		"negative extract":       second(botanical.DryExtract(-1, 50)),
		"syrup":                  second(botanical.DryExtract(50, 50)),
		"strength rose":          second(botanical.MoistureFromReadings(spirit(1, 60), 50, abv(61))),
		"more water than plant":  second(botanical.MoistureFromReadings(spirit(1, 60), 50, abv(50))),
		"no reading":             second(botanical.MoistureFromReadings(spirit(1, 60), 50, alcoholometry.Strength{})),
		"no dry mass":            second(botanical.SpentHerbs(botanical.Spent{WetKg: 1, Strength: abv(40)})),
		"lighter when wet":       second(botanical.SpentHerbs(botanical.Spent{WetKg: 1, DryKg: 2, Strength: abv(40)})),
		"no strength":            second(botanical.SpentHerbs(botanical.Spent{WetKg: 2, DryKg: 1})),
		"too strong":             second(botanical.UsualReach(14, abv(80), quantity.Temperature{}, 0)),
		"hours back":             second(botanical.UsualReach(-1, abv(50), quantity.Temperature{}, 0)),
		"tau below 0":            second(botanical.SphereShare(-1)),
		"constants":              second(botanical.FromPeleg(0, 1)),
		"negative grams":         second(botanical.GPerPureL(-1, spirit(1, 60))),
	} {
		if err == nil || !strings.HasPrefix(err.Error(), "botanical.") {
			t.Errorf("%s: %v; want an error of botanical", name, err)
		}
	}
}

func TestMeasured(t *testing.T) {
	e, err := botanical.SaltedOut(botanical.OilLayer{LayerML: 0.3, OfML: 200, DensityKgL: botanical.Exactly(0.98)})
	if err != nil || !near(e.Low, 1.47, 1e-12) || e.HasHigh {
		t.Errorf("0.3 mL out of 200 mL: %v, %v; want at least 1.47 g/L", e, err)
	}
	o, err := botanical.AssayedOil(0.4, 0.02, 20)
	if err != nil || !near(o.Amount.Low, 19, 1e-12) || !near(o.Amount.High, 21, 1e-12) || !o.Analysed || o.Basis != botanical.AsWeighed {
		t.Errorf("0.4 mL out of 20 g: %v, %v; want 19 to 21 mL/kg", o, err)
	}
	c, err := botanical.DryExtract(0.2, 50)
	if err != nil || c.String() != "4000.0 mg/L" {
		t.Errorf("0.2 g of 50 mL: %v, %v; want 4 g/L", c, err)
	}
	g := the(botanical.GPerPureL(24, spirit(0.8, 60)))
	if !near(g, 50, 1e-9) {
		t.Errorf("24 g in 0.8 L of 60 %% vol are %g g/L; want 50", g)
	}
	if g := the(botanical.GPerChargeL(24, spirit(0.8, 60))); !near(g, 30, 1e-9) {
		t.Errorf("24 g in 0.8 L are %g g/L; want 30", g)
	}
}
