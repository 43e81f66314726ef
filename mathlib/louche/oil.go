package louche

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"swanneck/mathlib/compound"
	"swanneck/mathlib/quantity"
)

const gasJMolK = 8.314462618 // J/(mol K). Source: BIPM, SI Brochure, 9th edition (2019)

// How the solubility changes with the temperature, J/mol: an estimate. No measurement in spirit of 40 % vol was found;
// Henry's constants give 7 for anethole in pure water.
const defaultHeat, leastHeat, mostHeat = 25000.0, 15000.0, 35000.0

// Part is a compound of an essential oil and its share.
type Part struct {
	Compound string  // name or synonym, as package compound knows it
	SharePct float64 // of the oil's mass, per cent
}

// Amount is a compound and how much of it a litre of drink holds.
type Amount struct {
	Compound string
	GL       float64 // g/L of drink at 20 °C
}

// Oil is an essential oil: what it is made of and how well it dissolves. OilOf, OilFrom and OilFromAmounts make one from
// published numbers; Calibrate makes a better one of it. The zero value is no oil and is refused.
type Oil struct {
	parts   []part
	totalGL float64 // of OilFromAmounts; 0 otherwise
	inParts bool
	unnamed float64 // share of the oil that no part names, dimensionless

	// What a calibration changes: ln S = ln Sw + (σ + slope) f ln 10 + shift - (heat/R)(1/T - 1/refK).
	shift, slope            float64
	refK                    float64
	heat, heatLow, heatHigh float64 // J/mol
	spread                  float64 // the factor that the solubility is good to, dimensionless
	seen                    int     // how many observations made it; 0 for published numbers
	heatSeen                bool
	calibratedAt            string // temperature and strength of the drips, for String
	factor                  float64
}

type part struct {
	name           string
	share          float64 // of the mass, dimensionless
	molarG         float64
	densityKgM3    float64
	lnSw           float64 // ln of g/L in water at 25 °C
	sigma          float64
	water, sigFrom compound.Provenance
	cautions       []string
}

// OilOf returns the oil of one compound, such as trans-anethole. It fails with a *compound.UnknownError, which offers the
// nearest names, and for a compound whose solubility in water is not known.
func OilOf(name string) (Oil, error) {
	o, err := OilFrom(Part{name, 100})
	return o, as("louche.OilOf", err)
}

// OilFrom returns the oil of several compounds with their shares by mass. Shares may add up to less than 100 %, down to 50: the
// rest of the oil, of which nothing is known, is then taken to dissolve like the part that is named. It fails for shares
// below 0 or above 100 % together, for a compound named twice, and as OilOf does.
func OilFrom(parts ...Part) (Oil, error) {
	const fn = "louche.OilFrom"
	if len(parts) == 0 {
		return Oil{}, fmt.Errorf("%s: the oil has no compounds; name at least one", fn)
	}
	sum := 0.0
	o := Oil{refK: 298.15, heat: defaultHeat, heatLow: leastHeat, heatHigh: mostHeat, spread: 2, factor: 1}
	for _, p := range parts {
		if err := quantity.CheckRange(fn, "share of "+p.Compound, p.SharePct, 0, 100, "%", ""); err != nil {
			return Oil{}, err
		}
		q, err := partOf(fn, p.Compound)
		if err != nil {
			return Oil{}, err
		}
		if slices.ContainsFunc(o.parts, func(r part) bool { return r.name == q.name }) {
			return Oil{}, fmt.Errorf("%s: %s stands in the oil twice; give it one share", fn, q.name)
		}
		q.share = p.SharePct
		sum += p.SharePct
		if p.SharePct > 0 {
			o.parts = append(o.parts, q)
		}
	}
	if err := quantity.CheckRange(fn, "sum of the shares", sum, 50, 100*(1+1e-9), "%", "an oil is known when at least half of it is named"); err != nil {
		return Oil{}, err
	}
	for i := range o.parts {
		o.parts[i].share /= sum
	}
	o.unnamed = math.Max(0, 1-sum/100)
	if o.unnamed < 1e-9 {
		o.unnamed = 0
	}
	return o, nil
}

// OilFromAmounts returns the oil of the compounds that a litre of drink holds; TotalGL gives them back together. It fails as
// OilFrom does, and for amounts that are all 0.
func OilFromAmounts(amounts ...Amount) (Oil, error) {
	const fn = "louche.OilFromAmounts"
	total := 0.0
	for _, a := range amounts {
		if err := quantity.CheckRange(fn, "amount of "+a.Compound, a.GL, 0, mostOilGL, "g/L", ""); err != nil {
			return Oil{}, err
		}
		total += a.GL
	}
	if total <= 0 {
		return Oil{}, fmt.Errorf("%s: there is no oil in it: 0 g/L; give at least one amount above 0 g/L", fn)
	}
	parts := make([]Part, len(amounts))
	for i, a := range amounts {
		parts[i] = Part{a.Compound, math.Min(100, 100*a.GL/total)}
	}
	o, err := OilFrom(parts...)
	o.totalGL, o.unnamed = total, 0
	return o, as(fn, err)
}

func partOf(function, name string) (part, error) {
	c, err := compound.Find(name)
	if err != nil {
		return part{}, as(function, err)
	}
	p := part{name: c.Name, molarG: c.MolarMassG, densityKgM3: c.Density.KgM3}
	t := embedded()
	switch f, ok := t.solubility[c.Name]; {
	case ok:
		p.lnSw, p.water = math.Log(f.value), f.from
	case c.Solubility.From.Known():
		p.lnSw, p.water = math.Log(c.Solubility.GL), c.Solubility.From
	case c.InWater.Measured() && c.InWater.GammaInf >= leastGamma:
		// In water so dilute, the mole fraction at saturation is 1/γ∞.
		p.lnSw = math.Log(waterMolL / c.InWater.GammaInf * c.MolarMassG)
		p.water = compound.Provenance{Status: compound.Estimated, Source: "activity coefficient in water, " + c.InWater.From.Source}
	case c.Octanol.From.Known() && c.Octanol.LogKow >= leastLogKow:
		p.lnSw = math.Log(math.Pow(10, 0.5-c.Octanol.LogKow) * c.MolarMassG)
		p.water = compound.Provenance{Status: compound.Estimated, Source: "log S = 0.5 - log Kow of a liquid, mol/L; Ran and Yalkowsky, J. Chem. Inf. Comput. Sci. 41 (2001) 354"}
	default:
		return part{}, fmt.Errorf("%s: nobody here knows how much %s water dissolves; leave it out of the oil", function, c.Name)
	}
	if p.densityKgM3 <= 0 {
		return part{}, fmt.Errorf("%s: the density of %s is not known; leave it out of the oil", function, c.Name)
	}
	if f, ok := t.slope[c.Name]; ok {
		p.sigma, p.sigFrom = f.value, f.from
	} else {
		p.sigma = 0.95*c.Octanol.LogKow + 0.30
		p.sigFrom = compound.Provenance{Status: compound.Memory, Source: sourceSlope, Note: fmt.Sprintf("log Kow %.2f, %v", c.Octanol.LogKow, c.Octanol.From)}
	}
	if !p.water.Sure() || p.water.Note != "" {
		p.cautions = append(p.cautions, "solubility of "+p.name+" in water "+p.water.String())
	}
	return p, nil
}

// Estimates of the solubility are for what parts from water: below these, a compound may mix with it in every share.
const leastGamma, leastLogKow = 100.0, 2.0

const (
	waterMolL   = 55.34 // moles in a litre of water at 25 °C, mol/L
	sourceSlope = "0.95 log Kow + 0.30, Millard, Alvarez-Nunez and Yalkowsky, Int. J. Pharm. 245 (2002) 153"
)

// InParts returns the oil for a spirit whose oil nobody has weighed: amounts of oil are then in parts of what the
// spirit holds that is dripped (1 for that spirit, 0.5 for the same spirit brought to twice its volume), and mean g/L
// nowhere. Such an oil must be calibrated with a drip first; turbidity and g/L stay unknown.
func (o Oil) InParts() Oil {
	o.inParts, o.totalGL = true, 0
	return o
}

// TotalGL returns the oil of OilFromAmounts in g/L, and 0 for any other.
func (o Oil) TotalGL() float64 { return o.totalGL }

// Calibrated reports whether the oil's solubility comes from observations.
func (o Oil) Calibrated() bool { return o.seen > 0 }

// Like returns o with the calibration of other: for oils so much alike that what was seen of one holds for the other, such
// as last year's and this year's of one recipe. It fails if either is no oil, or if just one is counted in parts.
func (o Oil) Like(other Oil) (Oil, error) {
	const fn = "louche.Like"
	for _, x := range []Oil{o, other} {
		if err := checkOil(fn, x); err != nil {
			return Oil{}, err
		}
	}
	if o.inParts != other.inParts {
		return Oil{}, fmt.Errorf("%s: one oil is counted in g/L and the other in parts; count both the same way", fn)
	}
	parts, total, unnamed, inParts := o.parts, o.totalGL, o.unnamed, o.inParts
	o = other
	o.parts, o.totalGL, o.unnamed, o.inParts = parts, total, unnamed, inParts
	return o, nil
}

// Compounds returns the names of the oil's compounds in the order given.
func (o Oil) Compounds() []string {
	out := make([]string, len(o.parts))
	for i, p := range o.parts {
		out[i] = p.name
	}
	return out
}

// Cautions says in plain words what stands on weak legs in the oil's numbers.
func (o Oil) Cautions() []string {
	var out []string
	for _, p := range o.parts {
		out = append(out, p.cautions...)
	}
	if o.unnamed > 0 {
		out = append(out, fmt.Sprintf("%.0f %% of the oil is not named and is taken to dissolve like the rest", 100*o.unnamed))
	}
	if o.seen == 0 {
		out = append(out, "solubility good to a factor of about 2: drip water into 20 mL and calibrate")
	}
	if !o.heatSeen {
		out = append(out, fmt.Sprintf("change with temperature is an estimate (%.0f kJ/mol, %.0f to %.0f): calibrate at a second temperature", o.heat/1000, o.heatLow/1000, o.heatHigh/1000))
	}
	return out
}

// String gives the oil in one line: its compounds with their shares, and how good its solubility is.
func (o Oil) String() string {
	if len(o.parts) == 0 {
		return "no oil"
	}
	names := make([]string, len(o.parts))
	for i, p := range o.parts {
		names[i] = fmt.Sprintf("%s %.3g %%", p.name, 100*p.share*(1-o.unnamed))
	}
	s := strings.Join(names, ", ")
	if len(o.parts) == 1 && o.unnamed == 0 {
		s = o.parts[0].name
	}
	if o.seen == 0 {
		return s + "; solubility not calibrated (estimate, factor of about 2)"
	}
	if o.inParts {
		return s + "; calibrated in parts " + o.calibratedAt
	}
	return fmt.Sprintf("%s; calibrated %s: %.3g times the published solubility", s, o.calibratedAt, o.factor)
}

// Rows gives the numbers the oil rests on, each as a label, a figure and a unit.
func (o Oil) Rows() [][]string {
	var rows [][]string
	for _, p := range o.parts {
		rows = append(rows,
			[]string{p.name + ", share of the oil", fmt.Sprintf("%.3g", 100*p.share*(1-o.unnamed)), "%"},
			[]string{p.name + ", solubility in water at 25 °C (" + p.water.Status.Words() + ")", quantity.Figure(math.Exp(p.lnSw)), "g/L"},
			[]string{p.name + ", slope against strength (" + p.sigFrom.Status.Words() + ")", fmt.Sprintf("%.2f", p.sigma+o.slope), ""})
	}
	heat := "estimate"
	if o.heatSeen {
		heat = "calibrated"
	}
	rows = append(rows, []string{"change with temperature (" + heat + ")", fmt.Sprintf("%.1f (%.1f to %.1f)", o.heat/1000, o.heatLow/1000, o.heatHigh/1000), "kJ/mol"})
	if o.seen > 0 && !o.inParts {
		rows = append(rows, []string{"calibrated " + o.calibratedAt + ", times the published solubility", fmt.Sprintf("%.3g", o.factor), ""})
	}
	return rows
}

func checkOil(function string, o Oil) error {
	if len(o.parts) == 0 {
		return fmt.Errorf("%s: there is no oil; make one with OilOf or OilFrom", function)
	}
	return nil
}

// checkUsable refuses an oil in parts that nobody has calibrated.
func checkUsable(function string, o Oil) error {
	if err := checkOil(function, o); err != nil {
		return err
	}
	if o.inParts && o.seen == 0 {
		return fmt.Errorf("%s: the oil is counted in parts and not calibrated; drip water into the spirit and calibrate it first, or weigh the oil", function)
	}
	return nil
}
