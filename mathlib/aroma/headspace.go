package aroma

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/compound"
	"swanneck/mathlib/equilibrium"
	"swanneck/mathlib/quantity"
)

const (
	gasJMolK = 8.314462618 // J/(mol K). Source: BIPM, SI Brochure, 9th edition (2019)
	tempK    = partition25 + 273.15
)

// What caps a compound over the glass.
const (
	BySolubility     = "solubility"      // the drink is cloudy: the droplets hold the rest
	ByVapourPressure = "vapour pressure" // not more than over the pure compound
)

// Gas is an aroma compound in the air over a drink that has stood closed at 25 °C.
type Gas struct {
	Compound      string
	Strength      alcoholometry.Strength
	LiquidMgL     float64 // all of it in the drink, mg/L
	DissolvedMgL  float64 // dissolved, mg/L
	GasUgL        float64 // in the air, µg/L
	LiquidOverGas float64 // concentration in the liquid over that in the air, dimensionless
	CappedBy      string  // BySolubility, ByVapourPressure or ""; the last cap that bites
	CapTimes      float64 // by how many times the vapour pressure caps the answer, dimensionless; 1 if it does not
	Notes         []string
}

// Headspace returns how much of a compound hangs in the air over the drink, closed and at 25 °C. Over an open glass it is less.
//
// Model: air = dissolved/K with log10 K = log10 K(water/gas) + log10 P, both by Abraham's descriptors, P straight in between its
// strengths; what is dissolved follows from louche.Separate with all compounds together; and the air never holds more than
// over the pure compound. Compounds without descriptors are answered in water (up to 0.5 % vol) by Henry's constant or solubility
// and vapour pressure, and elsewhere only with ByActivity.
//
// Source: Abraham and others, J. Chem. Soc. Perkin Trans. 2 (1994) 1777 (K) and Abraham and Acree, J. Solution Chem. 40 (2011) 1279 (P), both
// from memory. Accuracy: a factor of two against Henry's constants in water.
func Headspace(d Drink, name string) (Gas, error) {
	const fn = "aroma.Headspace"
	g, err := look(fn, d)
	if err != nil {
		return Gas{}, err
	}
	n, err := find(fn, name, g.names)
	if err != nil {
		return Gas{}, err
	}
	for i := range g.names {
		if g.names[i] == n {
			return g.gas(fn, i)
		}
	}
	panic("aroma: find named a compound that is not there")
}

// gas works out the air over the glass of the i-th compound.
func (g *glass) gas(function string, i int) (Gas, error) {
	r := Gas{Compound: g.names[i], Strength: g.drink.Strength, LiquidMgL: g.liquid[i], DissolvedMgL: g.dissolved[i], CapTimes: 1}
	var err error
	if r.LiquidOverGas, r.Notes, err = liquidOverGas(function, r.Compound, g.drink.Strength, g.drink.ByActivity); err != nil {
		return Gas{}, err
	}
	r.GasUgL = 1000 * r.DissolvedMgL / r.LiquidOverGas
	if r.DissolvedMgL < r.LiquidMgL*(1-1e-12) {
		r.CappedBy = BySolubility
	}
	if most, note, ok := saturatedUgL(r.Compound); ok {
		if note != "" {
			r.Notes = append(r.Notes, note)
		}
		if r.GasUgL > most {
			r.CapTimes, r.GasUgL, r.CappedBy = r.GasUgL/most, most, ByVapourPressure
			r.Notes = append(r.Notes, fmt.Sprintf("two models clash: the descriptors would put %.2g times the vapour of the pure compound over the glass", r.CapTimes))
		}
	}
	return r, nil
}

// mostStretchK is how far below its range a vapour pressure equation is followed, K: as far as distilling follows it.
const mostStretchK = 120.0

// saturatedUgL returns how much of the pure compound air holds at 25 °C, µg/L; false if its vapour pressure is not known.
func saturatedUgL(name string) (float64, string, bool) {
	c, err := compound.Find(name)
	if err != nil || !c.Vapour.From.Known() {
		return 0, "", false
	}
	if partition25 < c.Vapour.MinC-mostStretchK {
		return 0, "", false
	}
	ln, _ := c.Vapour.LnPa(tempK)
	note := ""
	switch {
	case partition25 < c.Vapour.MinC:
		note = fmt.Sprintf("vapour pressure extrapolated below %.0f °C", c.Vapour.MinC)
	case !c.Vapour.From.Sure():
		note = "vapour pressure " + c.Vapour.From.Status.Words()
	}
	return 1000 * math.Exp(ln) * c.MolarMassG / (gasJMolK * tempK), note, true
}

// inWaterPct is the strength up to which a drink counts as water, % vol.
const inWaterPct = 0.5

// liquidOverGas returns K, dimensionless, with what there is to say of it.
func liquidOverGas(function, name string, s alcoholometry.Strength, byActivity bool) (float64, []string, error) {
	t := embedded()
	if d, ok := t.descriptors[name]; ok {
		var notes []string
		if !d.from.Sure() {
			notes = append(notes, "descriptors "+d.from.Status.Words())
		}
		return math.Pow(10, d.logWaterOverGas()+t.logRelease(d, s.ABV())), notes, nil
	}
	if s.ABV() <= inWaterPct {
		if k, note, ok := waterOverGas(name); ok {
			return k, []string{"no descriptors: " + note}, nil
		}
	}
	if !byActivity {
		return 0, nil, fmt.Errorf("%s: no descriptors of %s are known, so nobody knows how it leaves %v; set ByActivity for a guess, or leave it out", function, name, s)
	}
	k, note, err := overGasByActivity(name, s)
	if err != nil {
		return 0, nil, as(function, err)
	}
	return k, []string{note}, nil
}

func (d descriptors) logWaterOverGas() float64 {
	return -0.994 + 0.577*d.e + 2.549*d.s + 3.813*d.a + 4.841*d.b - 0.869*d.v
}

// logRelease returns log10 P at a strength, straight between the rows and from 0 in water.
func (t *tables) logRelease(d descriptors, pct float64) float64 {
	at := func(r release) float64 { return r.c + r.e*d.e + r.s*d.s + r.a*d.a + r.b*d.b + r.v*d.v }
	beforePct, before := 0.0, 0.0
	for _, r := range t.release {
		v := at(r)
		if pct <= r.pct {
			return before + (v-before)*(pct-beforePct)/(r.pct-beforePct)
		}
		beforePct, before = r.pct, v
	}
	return before // at the last row, 100 % vol
}

// waterOverGas returns K in water from Henry's constant or from solubility and vapour pressure.
func waterOverGas(name string) (float64, string, bool) {
	c, err := compound.Find(name)
	if err != nil {
		return 0, "", false
	}
	if c.Henry.From.Known() {
		return c.Henry.MolM3Pa * gasJMolK * tempK, "Henry's constant in water", true
	}
	if most, _, ok := saturatedUgL(name); ok && c.Solubility.From.Known() {
		return 1e6 * c.Solubility.GL / most, "solubility in water over vapour pressure", true
	}
	return 0, "", false
}

// overGasByActivity returns K from the activity coefficient of a trace, as distilling takes it.
func overGasByActivity(name string, s alcoholometry.Strength) (float64, string, error) {
	t25, err := quantity.Celsius(partition25)
	if err != nil {
		return 0, "", err
	}
	b, err := equilibrium.BubblePressure(s, t25)
	if err != nil {
		return 0, "", err
	}
	v, err := equilibrium.VolatilityOf(name, s, b.P)
	if err != nil {
		return 0, "", err
	}
	rho, err := alcoholometry.DensityKgM3(s, t25)
	if err != nil {
		return 0, "", err
	}
	x := s.MoleFraction()
	molM3 := 1000 * rho / (x*alcoholometry.MolarMassEthanolG + (1-x)*alcoholometry.MolarMassWaterG)
	// Liquid x c over gas y p/RT.
	return molM3 * gasJMolK * tempK / (v.K * 1000 * b.P.KPa()), "no descriptors: activity coefficients of distilling, a guess good to a factor of four", nil
}

// WaterAir is the concentration of a compound in water over that in the air at 25 °C, by three ways; 0 for a way that is not
// known. They agree to a factor of about two, which is how sure each is.
type WaterAir struct {
	Compound      string
	ByDescriptors float64 // dimensionless
	ByHenry       float64 // Henry's constant, dimensionless
	BySolubility  float64 // solubility over vapour pressure, dimensionless
}

// WaterOverAir returns how a compound parts between water and air at 25 °C, by every way that is known.
func WaterOverAir(name string) (WaterAir, error) {
	const fn = "aroma.WaterOverAir"
	r := WaterAir{Compound: nameOf(name)}
	d, described := embedded().descriptors[r.Compound]
	if described {
		r.ByDescriptors = math.Pow(10, d.logWaterOverGas())
	}
	c, err := compound.Find(r.Compound)
	if err != nil {
		if described {
			return r, nil
		}
		return WaterAir{}, as(fn, err)
	}
	if c.Henry.From.Known() {
		r.ByHenry = c.Henry.MolM3Pa * gasJMolK * tempK
	}
	if most, _, ok := saturatedUgL(r.Compound); ok && c.Solubility.From.Known() {
		r.BySolubility = 1e6 * c.Solubility.GL / most
	}
	return r, nil
}

// String gives the three in one line.
func (w WaterAir) String() string {
	part := func(x float64) string {
		if x == 0 {
			return "not known"
		}
		return figure(x)
	}
	return fmt.Sprintf("%s, water over air at 25 °C: %s by descriptors, %s by Henry's constant, %s by solubility", w.Compound, part(w.ByDescriptors), part(w.ByHenry), part(w.BySolubility))
}

// String gives the air over the glass in one line.
func (g Gas) String() string {
	s := fmt.Sprintf("%s over %v: %s µg/L of air from %s mg/L (estimate)", g.Compound, g.Strength, figure(g.GasUgL), quantity.Figure(g.LiquidMgL))
	if g.CappedBy != "" {
		s += ", capped by " + g.CappedBy
	}
	return s
}

// Rows gives the air over the glass, each row a label, a figure and a unit.
func (g Gas) Rows() [][]string {
	rows := [][]string{
		{g.Compound + " in the drink", quantity.Figure(g.LiquidMgL), "mg/L"},
		{"dissolved (estimate)", quantity.Figure(g.DissolvedMgL), "mg/L"},
		{"in the air over it (estimate, factor of 2)", figure(g.GasUgL), "µg/L"},
	}
	if g.CappedBy != "" {
		rows = append(rows, []string{"capped by", g.CappedBy, ""})
	}
	for _, n := range g.Notes {
		rows = append(rows, []string{"note", n, ""})
	}
	return rows
}

// figure prints x, in the unit behind it, with three digits.
func figure(x float64) string {
	if x != 0 && (x < 0.001 || x >= 1e6) {
		return fmt.Sprintf("%.2e", x)
	}
	decimals := 2 - int(math.Floor(math.Log10(math.Max(x, 1e-9))))
	if x == 0 {
		return "0"
	}
	return fmt.Sprintf("%.*f", max(0, decimals), x)
}
