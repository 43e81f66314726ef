package still_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/compound"
	"swanneck/mathlib/quantity"
	"swanneck/mathlib/still"
)

// Each mistake in a batch is one line that names what is wrong, and never a plausible run.
func TestBatchesThatCannotBe(t *testing.T) {
	good := func() still.Batch { return still.Batch{Pot: litres(100, 0.1), UntilPot: mole(0.02)} }
	nan, inf := math.NaN(), math.Inf(1)
	for name, c := range map[string]struct {
		spoil func(*still.Batch)
		want  string
	}{
		"no strength":           {func(b *still.Batch) { b.Pot.Strength = alcoholometry.Strength{} }, "not set"},
		"no volume":             {func(b *still.Batch) { b.Pot.VolumeL = 0 }, "0 L"},
		"negative volume":       {func(b *still.Batch) { b.Pot.VolumeL = -3 }, "-3 L"},
		"water":                 {func(b *still.Batch) { b.Pot.Strength = alcoholometry.Water }, "no alcohol in the pot"},
		"beyond the azeotrope":  {func(b *still.Batch) { b.Pot.Strength = mole(0.95) }, "no weaker than the azeotrope"},
		"plates below 0":        {func(b *still.Batch) { b.Plates = -1 }, "number of plates is -1"},
		"plates are no number":  {func(b *still.Batch) { b.Plates = nan }, "number of plates is NaN"},
		"too many plates":       {func(b *still.Batch) { b.Plates = inf }, "number of plates is"},
		"reflux below 0":        {func(b *still.Batch) { b.Reflux = -0.5 }, "reflux is -0.5"},
		"efficiency":            {func(b *still.Batch) { b.PlateEfficiencyPct = 130 }, "efficiency of the plates is 130 %"},
		"pressure":              {func(b *still.Batch) { b.P = kPa(300) }, "pressure is 300 kPa"},
		"vacuum":                {func(b *still.Batch) { b.P = kPa(1) }, "pressure is 1 kPa"},
		"drop":                  {func(b *still.Batch) { b.PotDropKPa = 60 }, "pressure is 161.325 kPa"},
		"two ends":              {func(b *still.Batch) { b.Until = abv(30) }, "2 places to end"},
		"no end":                {func(b *still.Batch) { b.UntilPot = alcoholometry.Strength{} }, "not said where the run ends"},
		"end before the start":  {func(b *still.Batch) { b.UntilPot = mole(0.2) }, "begins beyond that"},
		"stronger than it runs": {func(b *still.Batch) { b.UntilPot = alcoholometry.Strength{}; b.Until = abv(90) }, "what runs is"},
		"never so weak":         {func(b *still.Batch) { b.UntilPot = mole(1e-6) }, "never comes to"},
		"never so much":         {func(b *still.Batch) { stopAt(b, still.AtVolume(99.9)) }, "never comes to 99.90 L collected"},
		"never so hot":          {func(b *still.Batch) { stopAt(b, still.AtHead(celsius(104))) }, "never comes to 104.0 °C"},
		"ends at the end":       {func(b *still.Batch) { stopAt(b, still.AtEnd()) }, "is to end at the end"},
		"unknown compound":      {func(b *still.Batch) { b.Congeners = []still.Congener{{Name: "methanole", MassG: 1}} }, "nearest names are methanol"},
		"no amount":             {func(b *still.Batch) { b.Congeners = []still.Congener{{Name: "methanol"}} }, "how much methanol"},
		"amount below 0":        {func(b *still.Batch) { b.Congeners = []still.Congener{{Name: "methanol", MassG: -1}} }, "mass of methanol is -1 g"},
		"ethanol as a congener": {func(b *still.Batch) { b.Congeners = []still.Congener{{Name: "ethanol", MassG: 1}} }, "ethanol is no congener"},
		"limit on a stranger":   {func(b *still.Batch) { stopAt(b, still.OverLimit("furfural", mgL(1))) }, "was not carried along"},
		"hold without plates":   {func(b *still.Batch) { b.Hold = abv(80) }, "without plates"},
		"hold and reflux":       {func(b *still.Batch) { b.Hold, b.Plates, b.Reflux = abv(80), 5, 2 }, "give one of the two"},
		"hold too much":         {func(b *still.Batch) { b.Hold, b.Plates = abv(98), 50 }, "azeotrope"},
		"hold from the start":   {func(b *still.Batch) { b.Hold, b.Plates = abv(94), 2 }, "cannot be held"},
		"a phase without end":   {func(b *still.Batch) { b.Plan = []still.Phase{{Reflux: 3}} }, "phase 1 of the plan"},
		"a phase below 0":       {func(b *still.Batch) { b.Plan = []still.Phase{{Reflux: -3, Until: still.AtVolume(1)}} }, "reflux is -3"},
		"condenser":             {func(b *still.Batch) { b.Condenser = "copper" }, `the condenser is "copper"`},
		"steps":                 {func(b *still.Batch) { b.Steps = 3 }, "number of steps is 3"},
		"model":                 {func(b *still.Batch) { b.Model = "Raoult" }, `no model is called "Raoult"`},
		"losses without power":  {func(b *still.Batch) { b.Heat.HeadLossKW = 1 }, "give the PowerKW"},
		"losses above power":    {func(b *still.Batch) { b.Heat = still.Heating{PowerKW: 1, PotLossKW: 2} }, "nothing boils"},
		"all lost at the head":  {func(b *still.Batch) { b.Heat = still.Heating{PowerKW: 1, HeadLossKW: 1} }, "nothing comes over"},
		"charge above boiling":  {func(b *still.Batch) { b.Heat.Charge = celsius(99) }, "above its boiling point"},
		"thumper half given":    {func(b *still.Batch) { b.Thumper.Charge.VolumeL = 3 }, "thumper's charge is not set"},
		"thumper never boils":   {func(b *still.Batch) { b.Thumper.Charge = litres(5000, 0.01) }, "boiling of the thumper"},
		"parrot frozen":         {func(b *still.Batch) { b.Parrot = still.Parrot{HoldUpL: 1, Temp: celsius(60)} }, "temperature of the parrot"},
	} {
		b := good()
		c.spoil(&b)
		r, err := still.Distil(b)
		if err == nil || !strings.Contains(err.Error(), c.want) || strings.Contains(err.Error(), "\n") || !strings.HasPrefix(err.Error(), "still.Distil: ") {
			t.Errorf("%s: %v; want one line of still.Distil with %q", name, err, c.want)
		}
		if err != nil && len(r.Steps) > 0 {
			t.Errorf("%s: fails and gives a run", name)
		}
	}
	if _, err := still.Distil(good()); err != nil {
		t.Errorf("the batch that nothing is wrong with: %v", err)
	}
}

func stopAt(b *still.Batch, m still.Mark) { b.UntilPot, b.Stop = alcoholometry.Strength{}, m }

func TestErrorsAreTyped(t *testing.T) {
	b := still.Batch{Pot: litres(10, 0.1), UntilPot: mole(0.02), Congeners: []still.Congener{{Name: "metanol", MassG: 1}}}
	_, err := still.Distil(b)
	var unknown *compound.UnknownError
	if !errors.As(err, &unknown) || len(unknown.Nearest) == 0 {
		t.Errorf("an unknown compound: %T %v", err, err)
	}
	var never *still.NeverError
	b.Congeners, b.UntilPot, b.Stop = nil, alcoholometry.Strength{}, still.AtVolume(9.9)
	if _, err := still.Distil(b); !errors.As(err, &never) || never.Already {
		t.Errorf("a stop that is never reached: %T %v", err, err)
	}
	var r *quantity.RangeError
	b.Plates = -1
	if _, err := still.Distil(b); !errors.As(err, &r) || r.Func != "still.Distil" {
		t.Errorf("plates below 0: %T %v", err, err)
	}
}

func TestColumnsThatCannotBe(t *testing.T) {
	good := func() still.Column {
		return still.Column{Feeds: []still.Feed{{LH: 100, Strength: abv(10)}}, Distillate: abv(90), RecoveryPct: 98, Reflux: 4}
	}
	for name, c := range map[string]struct {
		spoil func(*still.Column)
		want  string
	}{
		"reflux too small":      {func(c *still.Column) { c.Reflux = 0.4 }, "the least is"},
		"reflux below 0":        {func(c *still.Column) { c.Reflux = -1 }, "reflux is -1"},
		"no feed":               {func(c *still.Column) { c.Feeds = nil }, "no feed"},
		"a feed without a rate": {func(c *still.Column) { c.Feeds[0].LH = 0 }, "0 L/h and 0 kmol/h"},
		"two rates":             {func(c *still.Column) { c.Feeds[0].KmolH = 3 }, "give one of the two"},
		"feed unset":            {func(c *still.Column) { c.Feeds[0].Strength = alcoholometry.Strength{} }, "not set"},
		"feed too strong":       {func(c *still.Column) { c.Feeds[0].Strength = abv(95) }, "needs no column"},
		"feeds upside down":     {func(c *still.Column) { c.Feeds = append(c.Feeds, still.Feed{LH: 1, Strength: abv(20)}) }, "from the top down"},
		"beyond the azeotrope":  {func(c *still.Column) { c.Distillate = abv(98) }, "azeotrope"},
		"both ends":             {func(c *still.Column) { c.Bottoms = abv(1) }, "give one of the two"},
		"neither end":           {func(c *still.Column) { c.RecoveryPct = 0 }, "give one of the two"},
		"bottoms too strong":    {func(c *still.Column) { c.RecoveryPct, c.Bottoms = 0, abv(20) }, "must be weaker than the feed"},
		"recovery":              {func(c *still.Column) { c.RecoveryPct = 101 }, "recovery is 101 %"},
		"efficiency":            {func(c *still.Column) { c.EfficiencyPct = -5 }, "efficiency of the plates is -5 %"},
		"vapour share":          {func(c *still.Column) { c.Feeds[0].VapourShare = 3 }, "vapour share of a feed is 3"},
		"pressure":              {func(c *still.Column) { c.P = kPa(500) }, "pressure is 500 kPa"},
	} {
		col := good()
		c.spoil(&col)
		_, err := still.ColumnStages(col)
		if err == nil || !strings.Contains(err.Error(), c.want) || strings.Contains(err.Error(), "\n") {
			t.Errorf("%s: %v; want one line with %q", name, err, c.want)
		}
	}
	if _, err := still.ColumnStages(good()); err != nil {
		t.Errorf("the column that nothing is wrong with: %v", err)
	}
}

func TestOwnEquilibriumThatCannotBe(t *testing.T) {
	for _, c := range []struct {
		x, y []float64
		want string
	}{
		{[]float64{0.1, 0.2}, []float64{0.4, 0.5}, "at least three"},
		{[]float64{0.1, 0.2, 0.3}, []float64{0.4, 0.5}, "at least three"},
		{[]float64{0.1, 0.3, 0.2}, []float64{0.4, 0.5, 0.6}, "must rise"},
		{[]float64{0.1, 0.2, 0.3}, []float64{0.4, 0.6, 0.5}, "must rise"},
		{[]float64{0.1, 0.2, 1.3}, []float64{0.4, 0.6, 0.7}, "from 0 to 1"},
		{[]float64{0.1, math.NaN(), 0.3}, []float64{0.4, 0.6, 0.7}, "from 0 to 1"},
		{[]float64{0.1, 0.2, 1}, []float64{0.4, 0.6, 0.7}, "belong together"},
	} {
		for _, make := range []func(x, y []float64) (*still.Equilibrium, error){still.SmoothEquilibrium, still.StraightEquilibrium} {
			if _, err := make(c.x, c.y); err == nil || !strings.Contains(err.Error(), c.want) {
				t.Errorf("%v, %v: %v; want %q", c.x, c.y, err, c.want)
			}
		}
	}
}
