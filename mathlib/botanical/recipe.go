package botanical

import (
	"fmt"
	"math"
	"strings"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Per says what the grams of a recipe are counted on. The zero value is PerPureL, not asked for by name (see Scale).
type Per string

// What the grams of a recipe are counted on.
const (
	PerPureL   Per = "litre of pure alcohol in the charge"
	PerChargeL Per = "litre of charge" // at 20 °C
)

// Use says what is done with a plant. The zero value is OnTheHerb.
type Use string

// What is done with a plant.
const (
	OnTheHerb Use = ""         // it lies in the pot during the run, steeped before or not
	Strained  Use = "strained" // it is steeped and taken out; what drips off goes into the pot
	Infused   Use = "infused"  // it is steeped and taken out, and nothing is distilled after that
	Basket    Use = "basket"   // it hangs in the vapour; reckoned as if its oil were in the pot
)

// Straining says how a wet plant is freed of liquid. The zero value is WrungByHand.
type Straining string

// How a wet plant is freed of liquid.
const (
	WrungByHand Straining = ""
	Drained     Straining = "drained"
	Pressed     Straining = "pressed"
)

// Retained returns how much liquid a kilogram of dry plant keeps back, L/kg: printed figures for WrungByHand and Pressed, an
// estimate for Drained. It is not set for a way that there is not.
//
// Source: Moore, Plant Tinctures (outlines).
func (s Straining) Retained() Range {
	switch s {
	case WrungByHand:
		return figureOf("retained when wrung by hand").Range
	case Drained:
		return figureOf("retained when drained").Range
	case Pressed:
		return figureOf("retained when pressed").Range
	}
	return Range{}
}

// Recipe is a list of plants with their amounts. Amounts do not depend on the size of the charge.
type Recipe struct {
	Name  string
	Per   Per
	Items []Botanical
	// KeepPct is the share of the strained liquid that is kept back and not distilled, per cent.
	KeepPct   float64
	Straining Straining // of plants that are Strained or Infused
}

// Botanical is a plant of a recipe. Plant and GPerL must be given. What is left unset is filled in from the printed figures
// of the plant, where there are some; Herb returns a Botanical with those, to be changed.
type Botanical struct {
	Plant   string
	Part    string  // empty: the part that the printed figures are of
	GPerL   float64 // grams as weighed to a litre of what the recipe counts on; above 0
	Oil     OilContent
	Markers []Marker // if there are any, these and no others
	// MoisturePct is the water in the plant as weighed, per cent; 0 if nobody knows.
	MoisturePct float64
	Use         Use
	// ReachedPct says which share of its oil a maceration takes out of the plant, per cent. Unset: all of it for a plant
	// that is taken out before the run, which is an upper bound.
	ReachedPct Range
	// ReleasedPct says which share of its oil comes out of a plant in the pot by the end of a long run, per cent. Unset: all
	// of it, which is an upper bound.
	ReleasedPct Range
	// ReleasePerH is the rate, 1/h, at which a plant in the pot gives off its oil during the run, beyond ReachedPct, which
	// was out before. Unset: all of it is free from the start, as in equilibrium.
	ReleasePerH Range
	// RetainedLKg is what a kilogram of the dry plant keeps back, L, as measured (see SpentHerbs). Unset: by Straining.
	RetainedLKg Range
	// DisplacedLKg is by how much a kilogram of the dry plant raises the level, L, as measured in a jug. Unset: 0.667.
	DisplacedLKg Range
	// Lot names the lot. Two trials with the same lot share what is not known of it (see Compare).
	Lot string
	// Unlisted says that the plant is in no list here, so that everything comes from you.
	Unlisted bool

	known *Plant
}

// WithMarker returns b with the share of one marker as analysed on the lot at hand, in the place of the printed one.
func (b Botanical) WithMarker(compound string, sharePct Range) Botanical {
	out := make([]Marker, 0, len(b.Markers)+1)
	for _, m := range b.Markers {
		if !sameMarker(m.Compound, compound) {
			out = append(out, m)
		}
	}
	b.Markers = append(out, Marker{Compound: compound, SharePct: sharePct, Analysed: true})
	return b
}

func sameMarker(a, b string) bool {
	x, errX := resolve("", Marker{Compound: a}, nil)
	y, errY := resolve("", Marker{Compound: b}, nil)
	if errX != nil || errY != nil {
		return plain(a) == plain(b)
	}
	return x.Compound == y.Compound
}

// WithOil returns b with the oil content as analysed on the lot at hand, in the place of the printed one.
func (b Botanical) WithOil(o OilContent) Botanical {
	o.Analysed = true
	if !o.DensityKgL.IsSet() {
		o.DensityKgL = b.Oil.DensityKgL
	}
	b.Oil = o
	return b
}

// Only these amounts of plant, g of dry plant to a litre of charge, are taken: up to the first without a word, up to the
// second with a note. Own choice: a litre of spirit no longer covers more.
const muchGPerL, mostGPerL = 150, 500

// filled returns b with printed figures in the place of what is unset, after checking it.
func (b Botanical) filled(fn string) (Botanical, error) {
	if strings.TrimSpace(b.Plant) == "" {
		return b, inputf(fn, "an item of the recipe has no Plant; give its name")
	}
	if !b.Unlisted {
		p, err := Find(b.Plant)
		if err != nil {
			return b, as(fn, err)
		}
		b.known, b.Plant = &p, p.Name
		own := b.Oil.Amount.IsSet() && len(b.Markers) > 0
		if !p.hasPart(b.Part) && !own {
			return b, inputf(fn, "the printed figures of %s are of the %s, not of the %s; give Oil and Markers of that", p.Name, p.Part, b.Part)
		}
		printed := p.herb(b.GPerL)
		if b.Part == "" {
			b.Part = p.Part
		}
		if !b.Oil.Amount.IsSet() {
			density := b.Oil.DensityKgL
			b.Oil = printed.Oil
			if density.IsSet() {
				b.Oil.DensityKgL = density
			}
		}
		if len(b.Markers) == 0 {
			b.Markers = printed.Markers
		}
		if !b.Oil.DensityKgL.IsSet() {
			b.Oil.DensityKgL = p.OilDensityKgL
		}
	}
	if !(b.GPerL > 0) || math.IsInf(b.GPerL, 0) {
		return b, inputf(fn, "the amount of %s is %g g to the litre; give one above 0", b.Plant, b.GPerL)
	}
	if err := checkMoisture(fn, b.Plant, b.MoisturePct); err != nil {
		return b, err
	}
	return b, b.checkShares(fn)
}

// checkMoisture: the wettest leaves hold about 95 % of water.
func checkMoisture(fn, plant string, pct float64) error {
	return quantity.CheckRange(fn, "moisture of "+plant, pct, 0, 97, "%", "")
}

func (b Botanical) checkShares(fn string) error {
	inPot := b.Use == OnTheHerb || b.Use == Basket
	for _, c := range []struct {
		what  string
		r     Range
		most  float64
		unit  string
		fits  bool
		where string
	}{
		{"ReachedPct", b.ReachedPct, 100, "%", !inPot || b.ReleasePerH.IsSet(), "plants that are strained or infused, and to those with a ReleasePerH"},
		{"ReleasedPct", b.ReleasedPct, 100, "%", inPot, "plants in the pot"},
		{"ReleasePerH", b.ReleasePerH, 1000, "1/h", inPot, "plants in the pot"},
		{"RetainedLKg", b.RetainedLKg, 20, "L/kg", true, ""},
		{"DisplacedLKg", b.DisplacedLKg, 10, "L/kg", true, ""},
	} {
		if err := c.r.check(fn, c.what+" of "+b.Plant, 0, c.most, c.unit); err != nil {
			return err
		}
		if c.r.IsSet() && !c.fits {
			return inputf(fn, "%s of %s is given, and it belongs to %s", c.what, b.Plant, c.where)
		}
	}
	switch b.Use {
	case OnTheHerb, Strained, Infused, Basket:
		return nil
	}
	return inputf(fn, "the use of %s is %q; it must be OnTheHerb, Strained, Infused or Basket", b.Plant, b.Use)
}

// filled returns the recipe with printed figures in the place of what is unset, after checking it.
func (r Recipe) filled(fn string) (Recipe, error) {
	if len(r.Items) == 0 {
		return r, inputf(fn, "the recipe has no plants; give at least one in Items")
	}
	if r.Per != "" && r.Per != PerPureL && r.Per != PerChargeL {
		return r, inputf(fn, "the recipe counts on a %q; it must be PerPureL or PerChargeL", r.Per)
	}
	if err := quantity.CheckRange(fn, "share kept back", r.KeepPct, 0, 100, "%", ""); err != nil {
		return r, err
	}
	if !r.Straining.Retained().IsSet() {
		return r, inputf(fn, "the straining is %q; it must be WrungByHand, Drained or Pressed", r.Straining)
	}
	items := make([]Botanical, len(r.Items))
	uses := map[Use]int{}
	for i, b := range r.Items {
		f, err := b.filled(fn)
		if err != nil {
			return r, err
		}
		items[i] = f
		uses[f.Use]++
	}
	if n := uses[Infused]; n > 0 && n < len(items) {
		return r, inputf(fn, "%d of %d plants are infused and the others are distilled; an infusion is a recipe of its own, for the spirit that it goes into", n, len(items))
	}
	if r.KeepPct > 0 && uses[Strained] == 0 {
		return r, inputf(fn, "%g %% of the strained liquid is kept back and no plant is strained; give one the use Strained", r.KeepPct)
	}
	r.Items = items
	return r, nil
}

// litres returns how many of the litres that the recipe counts on are in the charge.
func (r Recipe) litres(fn string, charge alcoholometry.Spirit) (float64, error) {
	if err := alcoholometry.CheckSpirit(fn, charge); err != nil {
		return 0, err
	}
	if charge.VolumeL == 0 {
		return 0, inputf(fn, "the volume of the charge is 0 L; give one above 0 L")
	}
	if r.Per == PerChargeL {
		return charge.VolumeAt(quantity.Temperature{}), nil
	}
	pure := charge.PureL()
	if pure <= 0 {
		return 0, inputf(fn, "the charge is %v, which has no pure alcohol to count on; count PerChargeL", charge.Strength)
	}
	return pure, nil
}

// GPerPureL returns the grams to a litre of pure alcohol that massG grams in a charge are. It fails with an
// *alcoholometry.UnsetError, with a *quantity.RangeError for a negative mass, and for a charge without alcohol.
func GPerPureL(massG float64, charge alcoholometry.Spirit) (float64, error) {
	return gPer("botanical.GPerPureL", massG, charge, PerPureL)
}

// GPerChargeL returns the grams to a litre of charge at 20 °C that massG grams in it are. It fails as GPerPureL does.
func GPerChargeL(massG float64, charge alcoholometry.Spirit) (float64, error) {
	return gPer("botanical.GPerChargeL", massG, charge, PerChargeL)
}

func gPer(fn string, massG float64, charge alcoholometry.Spirit, per Per) (float64, error) {
	if err := quantity.CheckRange(fn, "mass", massG, 0, math.Inf(1), "g", ""); err != nil {
		return 0, err
	}
	l, err := Recipe{Per: per}.litres(fn, charge)
	if err != nil {
		return 0, err
	}
	return massG / l, nil
}

// String gives the recipe in one line.
func (r Recipe) String() string {
	items := make([]string, len(r.Items))
	for i, b := range r.Items {
		items[i] = fmt.Sprintf("%s %s g", b.Plant, threeDigits(b.GPerL))
	}
	s := strings.Join(items, ", ") + " to the " + string(r.per())
	if r.Name != "" {
		s = r.Name + ": " + s
	}
	return s
}

func (r Recipe) per() Per {
	if r.Per == "" {
		return PerPureL
	}
	return r.Per
}

// Rows gives the recipe as a table, each row a label, a figure and a unit.
func (r Recipe) Rows() [][]string {
	rows := [][]string{{"counted on", string(r.per()), ""}}
	for _, b := range r.Items {
		rows = append(rows, []string{b.name(), threeDigits(b.GPerL), "g"})
	}
	return rows
}

// name gives the plant with its part, use and lot.
func (b Botanical) name() string {
	s := b.Plant
	if b.Part != "" && !strings.Contains(b.Plant, b.Part) {
		s += ", " + b.Part
	}
	if b.Use != OnTheHerb {
		s += ", " + string(b.Use)
	}
	if b.Lot != "" {
		s += " (lot " + b.Lot + ")"
	}
	return s
}

// String gives the item in one line.
func (b Botanical) String() string {
	return fmt.Sprintf("%s: %s g to the litre; %v", b.name(), threeDigits(b.GPerL), b.Oil)
}

// Rows gives the item as a table, each row a label, a figure and a unit.
func (b Botanical) Rows() [][]string {
	rows := [][]string{{b.name(), threeDigits(b.GPerL), "g to the litre"}, {"oil content", b.Oil.String(), ""}}
	if b.MoisturePct > 0 {
		rows = append(rows, []string{"moisture", threeDigits(b.MoisturePct), "%"})
	}
	for _, m := range b.Markers {
		rows = append(rows, []string{"marker", m.String(), ""})
	}
	return rows
}
