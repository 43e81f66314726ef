package compound_test

import (
	"errors"
	"math"
	"slices"
	"strings"
	"testing"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/compound"
	"swanneck/mathlib/quantity"
)

func TestFind(t *testing.T) {
	for asked, want := range map[string]string{
		"isoamyl alcohol":         "isoamyl alcohol",
		"Isoamyl Alcohol":         "isoamyl alcohol",
		"3-methyl-1-butanol":      "isoamyl alcohol",
		"3 methylbutan-1-ol":      "isoamyl alcohol",
		"α-pinene":                "alpha-pinene",
		"Alpha Pinene":            "alpha-pinene",
		"anethole":                "trans-anethole",
		"1,8-cineole":             "eucalyptol",
		"β-Caryophyllene":         "beta-caryophyllene",
		"1,1-diethoxyethane":      "acetal",
		"methyl chavicol":         "estragole",
		"active amyl alcohol":     "2-methyl-1-butanol",
		"n-propanol":              "1-propanol",
		"phenethyl alcohol":       "2-phenylethanol",
		"acetaldehyde":            "acetaldehyde",
		"ethyl caproate":          "ethyl hexanoate",
		"2-methylpropan-1-ol":     "isobutanol",
		"4-allyl-2-methoxyphenol": "eugenol",
	} {
		if c, err := compound.Find(asked); err != nil || c.Name != want {
			t.Errorf("Find(%q) = %v, %v; want %s", asked, c, err, want)
		}
	}
}

func TestUnknownNamesOfferTheNearest(t *testing.T) {
	for asked, want := range map[string]string{
		"izoamyl alcohol": "isoamyl alcohol",
		"limonen":         "limonene",
		"furfurol":        "furfural",
		"metanol":         "methanol",
		"linaool":         "linalool",
		"izoamyl":         "isoamyl acetate",
		"caryophylene":    "beta-caryophyllene",
	} {
		_, err := compound.Find(asked)
		var u *compound.UnknownError
		if !errors.As(err, &u) || len(u.Nearest) != 3 || u.Nearest[0] != want {
			t.Errorf("Find(%q): %v; want %s first of three", asked, err, want)
		}
	}
	for _, nothing := range []string{"", " ", "--"} {
		if c, err := compound.Find(nothing); err == nil {
			t.Errorf("Find(%q) = %v; want an error", nothing, c)
		}
	}
}

func TestAllIsSortedAndItsNamesAreFound(t *testing.T) {
	names := compound.Names()
	for i, c := range compound.All() {
		if c.Name != names[i] || find(c.Name).Name != c.Name {
			t.Errorf("%d: %s, %s, found %s", i, c.Name, names[i], find(c.Name).Name)
		}
		for _, s := range c.Synonyms {
			if find(s).Name != c.Name {
				t.Errorf("%s finds %s; it is a synonym of %s", s, find(s).Name, c.Name)
			}
		}
	}
	if !slices.IsSortedFunc(names, func(a, b string) int {
		drop := strings.NewReplacer("-", "", " ", "")
		return strings.Compare(drop.Replace(a), drop.Replace(b))
	}) {
		t.Errorf("not sorted: %v", names)
	}
}

// Whoever changes what Find returned changes nothing for the next.
func TestFindReturnsACopy(t *testing.T) {
	c := find("limonene")
	c.MolarMassG, c.Synonyms[0], c.Groups.Original[0].Count = 1, "x", 99
	if d := find("limonene"); d.MolarMassG == 1 || d.Synonyms[0] == "x" || d.Groups.Original[0].Count == 99 {
		t.Errorf("a change to one copy shows in the next: %v", d)
	}
}

// What is not published for the very compound says so wherever the compound speaks.
func TestUnsureNumbersSaySo(t *testing.T) {
	for name, want := range map[string]string{
		"linalool":           "vapour pressure estimated",
		"gamma-terpinene":    "vapour pressure estimated",
		"sabinene":           "vapour pressure estimated",
		"citronellal":        "vapour pressure estimated",
		"beta-caryophyllene": "vapour pressure estimated",
		"terpinen-4-ol":      "vapour pressure estimated",
		"eugenol":            "vapour pressure estimated",
		"alpha-thujone":      "vapour pressure of another isomer",
		"neral":              "vapour pressure of another isomer",
		"trans-anethole":     "vapour pressure of another isomer",
		"water":              "density from memory",
		"ethyl lactate":      "octanol over water from memory",
		"camphor":            "activity coefficient in water estimated",
		"menthol":            "activity coefficient in water from memory",
		"acetaldehyde":       "activity coefficient in water estimated: none taken",
		"eucalyptol":         "groups from memory: own choice",
		"myrcene":            "4.3 K above",
	} {
		if got := strings.Join(find(name).Cautions(), "\n"); !strings.Contains(got, want) {
			t.Errorf("cautions of %s:\n%s\nwant %q", name, got, want)
		}
	}
	rows := find("linalool").Rows()
	if !slices.ContainsFunc(rows, func(r []string) bool { return strings.Contains(r[0], "boiling point at 101.33 kPa (estimated)") }) {
		t.Errorf("the rows of linalool do not say that its boiling point is estimated: %v", rows)
	}
	if got := find("methanol").Cautions(); len(got) != 0 {
		t.Errorf("methanol: %v; all its numbers are published", got)
	}
	if got := compound.Status("x").Words() + ", " + (compound.Provenance{}).String(); got != "not known, not known" {
		t.Errorf("got %q", got)
	}
	if got := find("water").Density.From.String(); got != "from memory" {
		t.Errorf("density of water %s; want from memory", got)
	}
}

func TestRangesAreHonoured(t *testing.T) {
	isRange := func(err error) bool { var r *quantity.RangeError; return errors.As(err, &r) }
	no := func(_ float64, err error) error { return err }
	for name, err := range map[string]error{
		"camphor at 78 °C":            no(find("camphor").VapourPressureKPa(celsius(78))),
		"isoamyl alcohol at 25 °C":    no(find("isoamyl alcohol").VapourPressureKPa(celsius(25))),
		"acetal at 110 °C":            no(find("acetal").VapourPressureKPa(celsius(110))),
		"water at 400 °C":             no(find("water").VapourPressureKPa(celsius(400))),
		"water below 0 °C":            no(find("water").VapourPressureKPa(celsius(-1))),
		"heat of vaporisation, water": no(find("water").VaporisationKJMol(celsius(400))),
		"heat capacity, ethanol":      no(find("ethanol").LiquidHeatCapacityJMolK(celsius(150))),
	} {
		if !isRange(err) {
			t.Errorf("%s: %v; want a RangeError", name, err)
		}
	}
	for _, name := range []string{"2-methyl-1-butanol", "camphor"} {
		_, err := find(name).BoilingPoint(the(quantity.KPa(2000)))
		if !isRange(err) {
			t.Errorf("%s at 2000 kPa: %v; want a RangeError", name, err)
		}
	}
	if err := no(find("limonene").VaporisationKJMol(celsius(25))); err == nil || isRange(err) {
		t.Errorf("heat of vaporisation of limonene: %v; want an error that it has none", err)
	}
	if err := no(find("limonene").LiquidHeatCapacityJMolK(celsius(25))); err == nil {
		t.Error("heat capacity of limonene: no error")
	}
	var none compound.Compound
	if err := no(none.VapourPressureKPa(celsius(25))); err == nil {
		t.Error("vapour pressure of nothing: no error")
	}
	if _, err := none.BoilingPoint(quantity.Pressure{}); err == nil {
		t.Error("boiling point of nothing: no error")
	}
}

// Density and the alcoholometric tables know ethanol from two sides: 0.2 kg/m³, the rounding of the handbook's line.
func TestDensityOfEthanolAgainstAlcoholometry(t *testing.T) {
	pure := the(alcoholometry.ABW(100))
	want := the(alcoholometry.DensityKgM3(pure, celsius(20)))
	if got := find("ethanol").Density; got.TempC != 20 || math.Abs(got.KgM3-want) > 0.2 {
		t.Errorf("density of ethanol %g kg/m³ at %g °C; OIML R 22 gives %.2f ± 0.2", got.KgM3, got.TempC, want)
	}
}
