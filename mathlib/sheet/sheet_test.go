package sheet_test

import (
	"math"
	"strings"
	"testing"

	"swanneck/mathlib/compound"
	"swanneck/mathlib/equilibrium"
	"swanneck/mathlib/mixing"
	. "swanneck/mathlib/sheet"
)

// stopped returns the line with which f stops the cell, or "".
func stopped(t *testing.T, f func()) (line string) {
	t.Helper()
	defer func() {
		switch r := recover().(type) {
		case nil:
		case *Stop:
			line = r.Error()
		default:
			t.Errorf("stopped with a %T: %v; want a *Stop", r, r)
		}
	}()
	f()
	return ""
}

func TestAMistakeStopsTheCellWithOneLine(t *testing.T) {
	nan := math.NaN()
	strong, unset := Spirit{VolumeL: 1, Strength: ABV(72.4)}, Strength{}
	hot := Celsius(90)
	for name, f := range map[string]func(){
		"ABV":                         func() { ABV(101) },
		"ABVAt":                       func() { ABVAt(40, hot) },
		"ABW":                         func() { ABW(-1) },
		"USProof":                     func() { USProof(201) },
		"MoleFraction":                func() { MoleFraction(2) },
		"Celsius":                     func() { Celsius(-300) },
		"Fahrenheit":                  func() { Fahrenheit(nan) },
		"Kelvin":                      func() { Kelvin(-1) },
		"KPa":                         func() { KPa(-1) },
		"MmHg":                        func() { MmHg(-1) },
		"Bar":                         func() { Bar(-1) },
		"Atm":                         func() { Atm(-1) },
		"PSI":                         func() { PSI(-1) },
		"AtAltitude":                  func() { AtAltitude(20000) },
		"DensityKgM3":                 func() { DensityKgM3(unset, Celsius(20)) },
		"DensityInAirKgM3":            func() { DensityInAirKgM3(ABV(40), hot) },
		"StrengthFromDensity":         func() { StrengthFromDensity(1100, Celsius(20)) },
		"FreezingPoint":               func() { FreezingPoint(ABV(96)) },
		"ContractionPct":              func() { ContractionPct(ABV(40), hot) },
		"Weighed":                     func() { Weighed(-1, ABV(40)) },
		"MassFromBalanceKg":           func() { MassFromBalanceKg(-1, ABV(40), Celsius(20)) },
		"BalanceFromMassKg":           func() { BalanceFromMassKg(1, unset, Celsius(20)) },
		"ProofGallons":                func() { ProofGallons(Spirit{VolumeL: 1}) },
		"TrueStrength":                func() { TrueStrength(40, Celsius(20), MarkedAt(hot)) },
		"TrueProof":                   func() { TrueProof(-1, Celsius(20)) },
		"Reading":                     func() { Reading(Water, Celsius(10)) },
		"ProofReading":                func() { ProofReading(unset, Celsius(10)) },
		"StrengthPlusMinus":           func() { StrengthPlusMinus(40, Celsius(20), Tolerances{TempC: -1}) },
		"Reduce":                      func() { Reduce(strong, ABV(80)) },
		"Make":                        func() { Make(strong, ABV(40)) },
		"Blend":                       func() { Blend() },
		"USGallons":                   func() { USGallons(nan) },
		"LitresToUSGallons":           func() { LitresToUSGallons(nan) },
		"ImperialGallons":             func() { ImperialGallons(nan) },
		"LitresToImperialGallons":     func() { LitresToImperialGallons(nan) },
		"USFluidOunces":               func() { USFluidOunces(nan) },
		"LitresToUSFluidOunces":       func() { LitresToUSFluidOunces(nan) },
		"ImperialFluidOunces":         func() { ImperialFluidOunces(nan) },
		"LitresToImperialFluidOunces": func() { LitresToImperialFluidOunces(nan) },
		"Millilitres":                 func() { Millilitres(nan) },
		"LitresToMillilitres":         func() { LitresToMillilitres(nan) },
		"Hectolitres":                 func() { Hectolitres(nan) },
		"LitresToHectolitres":         func() { LitresToHectolitres(nan) },
		"Pounds":                      func() { Pounds(nan) },
		"KgToPounds":                  func() { KgToPounds(nan) },
		"Ounces":                      func() { Ounces(nan) },
		"KgToOunces":                  func() { KgToOunces(nan) },
		"Grams":                       func() { Grams(nan) },
		"KgToGrams":                   func() { KgToGrams(nan) },
		"Altitude":                    func() { Altitude(-2000) },
		"Boil":                        func() { Boil(ABV(40), KPa(1)) },
		"BoilAt":                      func() { BoilAt(ABV(40), Celsius(200)) },
		"Condense":                    func() { Condense(unset, KPa(100)) },
		"CondenseAt":                  func() { CondenseAt(ABV(40), Celsius(0)) },
		"Azeotrope":                   func() { Azeotrope(KPa(5)) },
		"BoilPart":                    func() { BoilPart(ABV(40), KPa(100), 2) },
		"HoldAt":                      func() { HoldAt(ABV(40), Celsius(88), KPa(1)) },
		"BoilingLine":                 func() { BoilingLine(KPa(100), 1) },
		"BoilingLineAt":               func() { BoilingLineAt(Celsius(60), 11, UseModel("Margules")) },
		"FindCompound":                func() { FindCompound("metanol") },
		"RelativeVolatility":          func() { RelativeVolatility("metanol", ABV(40), KPa(100)) },
		"Volatility":                  func() { Volatility("camphor", ABV(40), KPa(5)) },
	} {
		line := stopped(t, f)
		if !strings.HasPrefix(line, name+": ") || strings.ContainsAny(line, "\n") {
			t.Errorf("%s stops with %q; want one line that begins with its name", name, line)
		}
		rest := strings.TrimPrefix(line, name+": ")
		for _, pkg := range []string{"quantity.", "alcoholometry.", "mixing.", "compound.", "equilibrium."} {
			if strings.Contains(rest, pkg) {
				t.Errorf("%s stops with %q, which names a package", name, line)
			}
		}
	}
}

func TestTheLine(t *testing.T) {
	for _, c := range []struct {
		f    func()
		want string
	}{
		{func() { Reduce(Spirit{VolumeL: 10, Strength: ABV(72.4)}, ABV(80)) }, "Reduce: cannot raise 72.40 % vol to 80.00 % vol by adding water"},
		{func() { Reduce(Spirit{VolumeL: 10}, ABV(40)) }, "Reduce: the strength of the spirit is not set; give one, such as ABV(43), or Water for no alcohol"},
		{func() { Blend(Spirit{VolumeL: 1, Strength: Water}, Spirit{VolumeL: 2}) }, "Blend: the strength of spirit 2 is not set; give one, such as ABV(43), or Water for no alcohol"},
		{func() { ABV(430) }, "ABV: strength is 430 % vol; it must be from 0 to 100 % vol"},
		{func() { RelativeVolatility("izoamyl alcohol", ABV(40), KPa(100)) }, `RelativeVolatility: no compound "izoamyl alcohol" is known; the nearest names are isoamyl alcohol, isobutanol, 1-butanol`},
		{func() { Boil(Strength{}, KPa(100)) }, "Boil: the strength of the liquid is not set; give one, such as ABV(43), or Water for no alcohol"},
		{func() { DensityKgM3(ABV(40), Celsius(60)) }, "DensityKgM3: temperature is 60 °C; it must be from -20 to 40 °C (OIML R 22 (1975))"},
	} {
		if got := stopped(t, c.f); got != c.want {
			t.Errorf("got  %s\nwant %s", got, c.want)
		}
	}
}

// Methods panic with the error types of the packages behind; the engine knows all of them by StopsCell.
func TestMethodsStopCellsToo(t *testing.T) {
	for name, f := range map[string]func(){
		"unset strength":  func() { Strength{}.ABV() },
		"negative volume": func() { Spirit{VolumeL: -1, Strength: ABV(40)}.PureL() },
		"too hot":         func() { Spirit{VolumeL: 1, Strength: ABV(40)}.VolumeAt(Celsius(80)) },
		"a stop":          func() { ABV(-1) },
	} {
		func() {
			defer func() {
				r, ok := recover().(interface {
					error
					StopsCell()
				})
				if !ok || strings.Contains(r.Error(), "\n") {
					t.Errorf("%s: panics with %v; want an error of one line with StopsCell", name, r)
				}
			}()
			f()
		}()
	}
	type stops interface {
		error
		StopsCell()
	}
	for _, e := range []stops{
		&mixing.StrengthError{From: ABV(40), To: ABV(50)}, &compound.UnknownError{}, &equilibrium.UnknownModelError{}, &equilibrium.NoAzeotropeError{},
		&equilibrium.ConvergenceError{}, &equilibrium.SplitError{}, &equilibrium.NoTraceError{},
	} {
		if e.Error() == "" || strings.Contains(e.Error(), "\n") {
			t.Errorf("%T prints %q; want one line", e, e.Error())
		}
	}
}

// The sheet hands through; the numbers are checked in the packages behind. Here: each function reaches the one it names.
func TestTheSheetHandsThrough(t *testing.T) {
	c20 := Celsius(20)
	s := ABV(40)
	for name, c := range map[string]struct{ got, want float64 }{
		"ABV":                    {s.ABV(), 40},
		"ABVAt":                  {ABVAt(40, Celsius(15)).ABVAt(Celsius(15)), 40},
		"ABW":                    {ABW(40).ABW(), 40},
		"USProof":                {USProof(80).USProof(), 80},
		"MoleFraction":           {MoleFraction(0.25).MoleFraction(), 0.25},
		"Fahrenheit":             {Fahrenheit(50).C(), 10},
		"Kelvin":                 {Kelvin(300).K(), 300},
		"KPa":                    {KPa(90).KPa(), 90},
		"MmHg":                   {MmHg(700).MmHg(), 700},
		"Bar":                    {Bar(2).Bar(), 2},
		"Atm":                    {Atm(0.5).Atm(), 0.5},
		"PSI":                    {PSI(12).PSI(), 12},
		"AtAltitude":             {AtAltitude(0).KPa(), 101.325},
		"StrengthFromDensity":    {StrengthFromDensity(DensityKgM3(s, c20), c20).ABV(), 40},
		"TrueStrength":           {TrueStrength(Reading(s, Celsius(27)), Celsius(27)).ABV(), 40},
		"TrueStrength MarkedAt":  {TrueStrength(40, Celsius(15), MarkedAt(Celsius(15))).ABVAt(Celsius(15)), 40},
		"TrueProof":              {TrueProof(ProofReading(s, Celsius(27)), Celsius(27)).ABV(), 40},
		"StrengthPlusMinus":      {math.Round(1e5*StrengthPlusMinus(40, c20, Tolerances{ReadingABV: 0.2})) / 1e5, 0.2},
		"Weighed":                {Weighed(3, s).MassKg(), 3},
		"Mass and balance":       {MassFromBalanceKg(BalanceFromMassKg(2, s, c20), s, c20), 2},
		"DensityInAirKgM3":       {DensityInAirKgM3(s, c20), BalanceFromMassKg(DensityKgM3(s, c20), s, c20)},
		"ContractionPct":         {ContractionPct(Water, c20), 0},
		"FreezingPoint":          {FreezingPoint(Water).C(), 0},
		"ProofGallons":           {ProofGallons(Spirit{VolumeL: USGallons(50), Strength: USProof(120), Temp: Fahrenheit(60)}), 60},
		"Reduce":                 {Reduce(Spirit{VolumeL: 1, Strength: s}, ABV(20), ResultAt(c20), WaterAt(c20)).Result.PureL(), 0.4},
		"Make":                   {Make(Spirit{VolumeL: 1, Strength: ABV(20)}, s, SpiritAt(c20)).Spirit.PureL(), 0.2},
		"Blend":                  {Blend(Spirit{VolumeL: 1, Strength: s}, Spirit{VolumeL: 1, Strength: Water}).PureL(), 0.4},
		"USGallons":              {LitresToUSGallons(USGallons(3)), 3},
		"USGallons, L":           {USGallons(1), 3.785411784},
		"ImperialGallons":        {LitresToImperialGallons(ImperialGallons(3)), 3},
		"ImperialGallons, L":     {ImperialGallons(1), 4.54609},
		"USFluidOunces":          {LitresToUSFluidOunces(USFluidOunces(128)), LitresToUSFluidOunces(USGallons(1))},
		"ImperialFluidOunces":    {LitresToImperialFluidOunces(ImperialGallons(1)), 160},
		"ImperialFluidOunces, L": {ImperialFluidOunces(160), 4.54609},
		"Millilitres":            {Millilitres(750), 0.75},
		"LitresToMillilitres":    {LitresToMillilitres(0.75), 750},
		"Hectolitres":            {Hectolitres(6), 600},
		"LitresToHectolitres":    {LitresToHectolitres(600), 6},
		"Pounds":                 {Pounds(1), 0.45359237},
		"KgToPounds":             {KgToPounds(0.45359237), 1},
		"Ounces":                 {Ounces(16), 0.45359237},
		"KgToOunces":             {KgToOunces(0.45359237), 16},
		"Grams":                  {Grams(250), 0.25},
		"KgToGrams":              {KgToGrams(0.25), 250},
		"Altitude":               {Altitude(1200).KPa(), AtAltitude(1200).KPa()},
		"Boil":                   {Condense(Boil(s, KPa(90)).Vapour, KPa(90)).Liquid.ABV(), 40},
		"Boil, UseModel":         {Boil(Water, KPa(90), UseModel("Wilson")).Temp.C(), Boil(Water, KPa(90)).Temp.C()},
		"BoilAt":                 {BoilAt(s, Boil(s, KPa(90)).Temp).P.KPa(), 90},
		"CondenseAt":             {CondenseAt(s, Condense(s, KPa(90)).Temp).P.KPa(), 90},
		"Azeotrope":              {Azeotrope(KPa(90)).Liquid.ABV(), Azeotrope(KPa(90)).Vapour.ABV()},
		"BoilPart":               {BoilPart(s, KPa(90), 0).Liquid.ABV(), 40},
		"HoldAt":                 {HoldAt(s, c20, KPa(90)).VapourShare, 0},
		"BoilingLine":            {BoilingLine(KPa(90), 3)[1].Liquid.MoleFraction(), 0.5},
		"BoilingLineAt":          {BoilingLineAt(Celsius(60), 5)[4].Liquid.ABV(), 100},
		"FindCompound":           {FindCompound("ethyl alcohol").MolarMassG, 46.069},
		"CompoundNames":          {FindCompound(CompoundNames()[0]).MolarMassG, 74.123},
		"RelativeVolatility":     {RelativeVolatility("methanol", s, KPa(90)), Volatility("methanol", s, KPa(90)).ToEthanol},
		"WithoutAnchor":          {RelativeVolatility("acetaldehyde", s, KPa(90), WithoutAnchor()), RelativeVolatility("acetaldehyde", s, KPa(90))},
	} {
		if math.Abs(c.got-c.want) > 1e-9*math.Max(1, math.Abs(c.want)) {
			t.Errorf("%s: %.12g; want %.12g", name, c.got, c.want)
		}
	}
}
