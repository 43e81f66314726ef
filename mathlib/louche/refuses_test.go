package louche_test

import (
	"errors"
	"math"
	"slices"
	"strings"
	"testing"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/compound"
	"swanneck/mathlib/louche"
	"swanneck/mathlib/quantity"
)

func TestOilRefuses(t *testing.T) {
	_, err := louche.OilOf("anetole")
	var u *compound.UnknownError
	if !errors.As(err, &u) || u.Func != "louche.OilOf" || !slices.Contains(u.Nearest, "trans-anethole") {
		t.Errorf("a misspelt oil: %v", err)
	}
	for name, err := range map[string]error{
		"shares over 100":    second(louche.OilFrom(louche.Part{Compound: "anethole", SharePct: 80}, louche.Part{Compound: "fenchone", SharePct: 30})),
		"negative share":     second(louche.OilFrom(louche.Part{Compound: "anethole", SharePct: -1})),
		"mostly unknown":     second(louche.OilFrom(louche.Part{Compound: "anethole", SharePct: 30})),
		"twice":              second(louche.OilFrom(louche.Part{Compound: "anethole", SharePct: 50}, louche.Part{Compound: "trans-anethole", SharePct: 50})),
		"nothing":            second(louche.OilFrom()),
		"no amount":          second(louche.OilFromAmounts(louche.Amount{Compound: "anethole"})),
		"negative amount":    second(louche.OilFromAmounts(louche.Amount{Compound: "anethole", GL: -2})),
		"a kilogram a litre": second(louche.OilFromAmounts(louche.Amount{Compound: "anethole", GL: 1000})),
		"no number":          second(louche.OilFrom(louche.Part{Compound: "anethole", SharePct: math.NaN()})),
		"mixes freely":       second(louche.OilOf("ethanol")),
	} {
		if err == nil || !strings.HasPrefix(err.Error(), "louche.Oil") {
			t.Errorf("%s: %v", name, err)
		}
	}
}

func TestDrinkRefuses(t *testing.T) {
	o := anethole()
	fine := louche.Drink{Strength: abv(45), OilGL: 2}
	for name, change := range map[string]func(*louche.Drink){
		"too strong": func(d *louche.Drink) { d.Strength = abv(91) },
		"too hot":    func(d *louche.Drink) { d.Temp = celsius(41) },
		"too cold":   func(d *louche.Drink) { d.Temp = celsius(-26) },
		"too much":   func(d *louche.Drink) { d.OilGL = 500 },
		"negative":   func(d *louche.Drink) { d.OilGL = -2 },
	} {
		d := fine
		change(&d)
		var r *quantity.RangeError
		if err := second(louche.Separate(d, o)); !errors.As(err, &r) || r.Func != "louche.Separate" {
			t.Errorf("Separate, %s: %v; want a RangeError", name, err)
		}
		if err := second(louche.Pour(d, o, louche.Pouring{})); !errors.As(err, &r) || r.Func != "louche.Pour" {
			t.Errorf("Pour, %s: %v; want a RangeError", name, err)
		}
	}
	var u *alcoholometry.UnsetError
	for name, err := range map[string]error{
		"Separate":     second(louche.Separate(louche.Drink{OilGL: 2}, o)),
		"CloudPointOf": second(louche.CloudPointOf(louche.Drink{OilGL: 2}, o)),
		"Pour":         second(louche.Pour(louche.Drink{OilGL: 2}, o, louche.Pouring{})),
		"ClearReduced": second(louche.ClearReduced(louche.Drink{OilGL: 2}, o)),
		"SolubilityOf": second(louche.SolubilityOf(o, alcoholometry.Strength{}, celsius(20))),
		"DilutionLine": second(louche.DilutionLine(louche.Drink{OilGL: 2}, o)),
	} {
		if !errors.As(err, &u) || u.Func != "louche."+name {
			t.Errorf("%s of an unset strength: %v", name, err)
		}
	}
	for name, err := range map[string]error{
		"too much for any strength": second(louche.ClearAt(o, 300, celsius(4))),
		"cloudy already":            second(louche.ClearReduced(louche.Drink{Strength: abv(30), OilGL: 5}, o)),
		"water":                     second(louche.ClearReduced(louche.Drink{Strength: alcoholometry.Water, OilGL: 0.01}, o)),
		"steps too small":           second(louche.Pour(fine, o, louche.Pouring{StepML: 1e-4})),
		"more than 1 + 60":          second(louche.Pour(fine, o, louche.Pouring{WaterML: 1e4})),
		"no drink":                  second(louche.Pour(fine, o, louche.Pouring{SpiritML: -20})),
		"no oil":                    second(louche.Pour(fine, louche.Oil{}, louche.Pouring{})),
	} {
		if err == nil || strings.Contains(err.Error(), "\n") {
			t.Errorf("%s: %v", name, err)
		}
	}
}

func TestClearAtEveryStrength(t *testing.T) {
	o := the(louche.OilOf("linalool"))
	if c := the(louche.ClearAt(o, 0.1, celsius(20))); !c.EveryStrength || c.Strength.ABV() != 0 {
		t.Errorf("0.1 g/L of linalool: %v", c)
	}
	if c := the(louche.ClearReduced(louche.Drink{Strength: abv(45), OilGL: 0.1}, o)); !c.EveryStrength {
		t.Errorf("0.1 g/L of linalool: %v", c)
	}
	if p := the(louche.Pour(louche.Drink{Strength: abv(45), OilGL: 0.1}, o, louche.Pouring{})); p.Clouds || p.ClearsAgain {
		t.Errorf("0.1 g/L of linalool: %v", p)
	}
	if p := the(louche.Pour(louche.Drink{Strength: abv(20), OilGL: 3}, anethole(), louche.Pouring{})); !p.Clouds || p.Onset.WaterML != 0 || !strings.Contains(p.String(), "cloudy in the bottle") {
		t.Errorf("3 g/L at 20 %% vol: %v", p)
	}
}

func TestHazes(t *testing.T) {
	for _, c := range []struct {
		signs louche.HazeSigns
		found string
	}{
		{louche.HazeSigns{ClearsWarm: "yes", Flocs: "no", Needles: "no"}, "oil haze"},
		{louche.HazeSigns{ClearsWarm: "yes", Flocs: "yes"}, "fatty esters"},
		{louche.HazeSigns{ClearsWarm: "no", ClearsWithSpirit: "yes"}, "plant wax"},
		{louche.HazeSigns{ClearsWarm: "no", ClearsWithAcid: "Yes", WhiteSediment: "yes"}, "hard water (carbonate)"},
		{louche.HazeSigns{ClearsWarm: "no", ClearsWithAcid: "no", ClearsWithSpirit: "no"}, "hard water (sulphate)"},
		{louche.HazeSigns{Needles: "yes", ClearsWarm: "yes"}, "anethole crystals"},
		{louche.HazeSigns{}, ""},
		{louche.HazeSigns{Needles: "yes"}, ""},
		{louche.HazeSigns{ClearsWarm: "yes"}, ""},
		{louche.HazeSigns{ClearsWarm: "yes", WhiteSediment: "yes"}, ""},
	} {
		h := the(louche.WhichHaze(c.signs))
		if h.Found != c.found {
			t.Errorf("%+v: %v; want %q", c.signs, h, c.found)
		}
		if c.found == "" && !strings.HasPrefix(h.String(), "cannot tell") || c.found != "" && h.Advice == "" {
			t.Errorf("%+v: %v", c.signs, h)
		}
	}
	// Asking what it asks leads to a haze, whatever the true one is.
	if h := the(louche.WhichHaze(louche.HazeSigns{ClearsWarm: "yes"})); h.Ask == "" || len(h.Left) != 3 {
		t.Errorf("%+v", h)
	}
	if h := the(louche.WhichHaze(louche.HazeSigns{Needles: "yes"})); h.Ask == "" {
		t.Errorf("one answer is not enough, and nothing more is asked: %+v", h)
	}
	if _, err := louche.WhichHaze(louche.HazeSigns{ClearsWarm: "perhaps"}); err == nil {
		t.Error("perhaps is no answer")
	}
}
