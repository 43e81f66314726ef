package botanical

import (
	"math"
	"slices"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Charge is a recipe in a spirit: masses of the plants, their oil and markers, and what they do to the liquid. Litres are at
// 20 °C.
type Charge struct {
	Recipe Recipe               // with what was filled in
	Spirit alcoholometry.Spirit // what the plants were put into
	// Steeped is the liquid with the water of the plants that are taken out before the run; without such plants it is Spirit.
	Steeped alcoholometry.Spirit
	// Pot is what the still is charged with, for still.Batch.Pot: what was not kept back, with the water of the plants in the
	// pot. Without volume if all is infused.
	Pot       alcoholometry.Spirit
	Items     []Item
	Loads     []Load
	Others    []Other
	RetainedL Range   // liquid that the plants taken out before the run hold back, L
	KeptL     float64 // liquid that is strained and not distilled, L
	MoistureL float64 // water that the plants bring along, L, as far as their moisture is known

	notes []string
}

// Item is a plant of a charge.
type Item struct {
	Plant    string
	MassG    float64 // as weighed
	DryG     float64 // without its water, as far as that is known
	OilG     Range   // unset if the oil content is not known
	Oil      OilContent
	Use      Use
	retained Range // L/kg of dry plant
	displace Range // L/kg of dry plant
}

// Load is what a plant brings along of a compound. Least and Most are the accounts for the least and the most that is known
// of oil content, share and release.
type Load struct {
	Plant, Compound string
	SumOf           string // the marker that the compound is a part of, such as "thujone"
	Least, Most     Account
	ReleasePerH     Range  // at which what is late comes out of a plant in the pot, 1/h; unset if nothing is late
	Label           string // what the carry-over rests on, in words
	Lot             string
	Analysed        bool  // oil content and share are both of the lot at hand
	inPlant         Range // grams to each gram of the plant as weighed
}

// Account says where the grams of a marker are. LoadG is the sum of the others.
type Account struct {
	LoadG     float64   // what the plant brought along
	PlantG    float64   // stays in the plant, with the liquid that it holds back
	MacerateG float64   // in strained liquid that is not distilled
	LateG     float64   // in a plant in the pot, to come out at ReleasePerH
	PotG      float64   // free in the pot
	CutsG     []float64 // in the cuts; none before a run
}

// ClosureG returns what the account is out by, grams: the load less everything that it came to.
func (a Account) ClosureG() float64 {
	sum := a.PlantG + a.MacerateG + a.LateG + a.PotG
	for _, g := range a.CutsG {
		sum += g
	}
	return a.LoadG - sum
}

// Other is a marker that is not followed, because package compound does not know it or nobody prints its share.
type Other struct {
	Plant, Marker string
	G             Range // in the charge, g; unset if no share is known
	Why           string
}

// NewCharge puts a recipe into a spirit. The plants' own water goes into the liquid.
//
// It fails with an *UnknownPlantError or a *compound.UnknownError, which offer the nearest names, with a
// *quantity.RangeError or an *alcoholometry.UnsetError for what is not set or out of range, and with an *InputError for an
// oil content without unit or basis, shares beyond 100 %, more than 500 g of dry plant to the litre of charge, or what does
// not go together.
func NewCharge(r Recipe, spirit alcoholometry.Spirit) (Charge, error) {
	return newCharge("botanical.NewCharge", r, spirit)
}

func newCharge(fn string, r Recipe, spirit alcoholometry.Spirit) (Charge, error) {
	full, err := r.filled(fn)
	if err != nil {
		return Charge{}, err
	}
	litres, err := full.litres(fn, spirit)
	if err != nil {
		return Charge{}, err
	}
	c := Charge{Recipe: full, Spirit: spirit}
	for _, b := range full.Items {
		item := Item{Plant: b.Plant, MassG: b.GPerL * litres, Oil: b.Oil, Use: b.Use, retained: b.RetainedLKg, displace: b.DisplacedLKg}
		item.DryG = item.MassG * (1 - b.MoisturePct/100)
		if !item.retained.IsSet() {
			item.retained = full.Straining.Retained()
		}
		if !item.displace.IsSet() {
			item.displace = figureOf("displaced by dry plant").Range
		}
		c.Items = append(c.Items, item)
	}
	if err := c.checkAmounts(fn); err != nil {
		return Charge{}, err
	}
	if err := c.liquids(fn); err != nil {
		return Charge{}, err
	}
	for i, b := range full.Items {
		if err := c.addLoads(fn, i, b); err != nil {
			return Charge{}, err
		}
	}
	c.makeNotes()
	return c, nil
}

func (c *Charge) checkAmounts(fn string) error {
	l := c.Spirit.VolumeAt(quantity.Temperature{})
	dry := 0.0
	for _, i := range c.Items {
		dry += i.DryG
		if i.DryG/l > mostGPerL || i.MassG/l >= 1000 {
			return inputf(fn, "%s comes to %s g to the litre of charge, %s g of it dry; at most %d g of dry plant can be covered", i.Plant, threeDigits(i.MassG/l), threeDigits(i.DryG/l), mostGPerL)
		}
	}
	if dry/l > mostGPerL {
		return inputf(fn, "the plants come to %s g of dry plant to the litre of charge; at most %d g can be covered", threeDigits(dry/l), mostGPerL)
	}
	if dry/l > muchGPerL {
		c.notes = append(c.notes, sprintf("%s g of dry plant to the litre of charge is much: see whether the spirit covers it", threeDigits(dry/l)))
	}
	return nil
}

// liquids works out what the plants add to the spirit and hold back of it.
func (c *Charge) liquids(fn string) error {
	before, after := 0.0, 0.0 // kg of water from the plants that are taken out, and from those in the pot
	var retained Range
	for _, i := range c.Items {
		water := (i.MassG - i.DryG) / 1000
		switch i.Use {
		case Strained, Infused:
			before += water
			retained = retained.plus(i.retained.scaled(i.DryG / 1000))
		case OnTheHerb:
			after += water
		}
	}
	var err error
	if c.Steeped, err = watered(fn, c.Spirit, before); err != nil {
		return err
	}
	c.RetainedL = retained
	c.MoistureL = (before + after) / waterKgL
	off := c.Steeped.VolumeL - retained.middle()
	if retained.High >= c.Steeped.VolumeL {
		return inputf(fn, "the plants hold back %v L of %s L of liquid; nothing to speak of drips off: take less plant or press it", retained, quantity.Figure(c.Steeped.VolumeL))
	}
	c.KeptL = off * c.Recipe.KeepPct / 100
	if c.infusion() {
		c.KeptL = off
		return nil
	}
	c.Pot, err = watered(fn, alcoholometry.Spirit{VolumeL: off - c.KeptL, Strength: c.Steeped.Strength}, after)
	return err
}

// waterKgL is the density of water at 20 °C, kg/L. Source: OIML R 22 (1975).
const waterKgL = 0.998201

// watered returns the spirit with waterKg kilograms of water in it, at 20 °C.
func watered(fn string, s alcoholometry.Spirit, waterKg float64) (alcoholometry.Spirit, error) {
	kg := s.MassKg()
	strength := s.Strength
	if waterKg > 0 {
		var err error
		if strength, err = alcoholometry.ABW(math.Min(100, kg*s.Strength.ABW()/(kg+waterKg))); err != nil {
			return alcoholometry.Spirit{}, as(fn, err)
		}
	}
	out, err := alcoholometry.Weighed(kg+waterKg, strength)
	return out, as(fn, err)
}

func (c *Charge) infusion() bool { return c.Recipe.Items[0].Use == Infused }

// addLoads adds the markers of a plant.
func (c *Charge) addLoads(fn string, i int, b Botanical) error {
	item := &c.Items[i]
	markers, err := resolveAll(fn, b.Plant, b.Markers, b.known)
	if err != nil {
		return err
	}
	if b.Unlisted && !b.Oil.Amount.IsSet() {
		if len(markers) > 0 {
			return inputf(fn, "the markers of %s are given and its oil content is not; give Oil", b.Plant)
		}
		c.Others = append(c.Others, Other{Plant: b.Plant, Marker: "its oil", Why: "oil content not known: assay it"})
		return nil
	}
	gKg, err := b.oil().gPerKg(fn, b.Plant, b.MoisturePct)
	if err != nil {
		return err
	}
	item.Oil = b.oil()
	item.OilG = gKg.scaled(item.MassG / 1000)
	inOil := 0
	for _, m := range markers {
		grams := Range{}
		if m.SharePct.IsSet() {
			grams = item.OilG.times(m.SharePct.scaled(0.01))
		}
		if len(m.compounds) == 0 || !m.SharePct.IsSet() {
			why := "no compound of that name is known here"
			if len(m.compounds) > 0 {
				why = "nobody prints its share"
			}
			c.Others = append(c.Others, Other{Plant: b.Plant, Marker: m.Compound, G: grams, Why: why})
			continue
		}
		inOil++
		for k, name := range m.compounds {
			l := Load{Plant: b.Plant, Compound: name, SumOf: m.sum, Lot: b.Lot, Analysed: b.Oil.Analysed && m.Analysed,
				inPlant: gKg.scaled(0.001).times(m.SharePct.scaled(0.01 * m.parts[k]))}
			c.place(&l, b, grams.scaled(m.parts[k]))
			c.Loads = append(c.Loads, l)
		}
	}
	if inOil == 0 {
		c.Others = append(c.Others, Other{Plant: b.Plant, Marker: "its oil", G: item.OilG, Why: "no marker that can be followed"})
	}
	return nil
}

// oil returns the oil content with a density: the stated or printed one, else that of the leading marker.
func (b Botanical) oil() OilContent {
	o := b.Oil
	if o.byVolume() && !o.DensityKgL.IsSet() {
		if kgL := leadingDensity(b.Markers); kgL > 0 {
			o.DensityKgL = Exactly(kgL)
		}
	}
	return o
}

// place opens the accounts of a load of grams.
func (c *Charge) place(l *Load, b Botanical, grams Range) {
	switch b.Use {
	case Strained, Infused:
		reached := b.ReachedPct
		l.Label = "taken out by the maceration as stated"
		if !reached.IsSet() {
			reached, l.Label = Exactly(100), "as if the maceration took out all of the oil: an upper bound"
		}
		share := c.RetainedL.middle() / c.Steeped.VolumeL
		kept := c.Recipe.KeepPct
		if b.Use == Infused {
			kept = 100
		}
		account := func(g, pct float64) Account {
			off := g * (pct / 100) * (1 - share)
			macerate := off * (kept / 100)
			return Account{LoadG: g, PlantG: g - off, MacerateG: macerate, PotG: off - macerate}
		}
		l.Least, l.Most = account(grams.Low, reached.Low), account(grams.High, reached.High)
	default:
		released, reached := b.ReleasedPct, b.ReachedPct
		l.Label = "released as stated"
		if !released.IsSet() {
			released, l.Label = Exactly(100), "as if all of the oil came out of the plant: an upper bound"
		}
		if !b.ReleasePerH.IsSet() {
			reached = Exactly(100)
			l.Label += "; free oil, equilibrium"
		} else {
			l.ReleasePerH = b.ReleasePerH
			l.Label += sprintf("; comes out of the plant at %v 1/h", b.ReleasePerH)
			if !reached.IsSet() {
				reached = Exactly(0)
			}
		}
		account := func(g, out, free float64) Account {
			moves := g * (out / 100) // so that all of it is exactly all
			pot := moves * (free / 100)
			return Account{LoadG: g, PlantG: g - moves, LateG: moves - pot, PotG: pot}
		}
		l.Least, l.Most = account(grams.Low, released.Low, reached.Low), account(grams.High, released.High, reached.High)
	}
}

// OilG returns the oil of all plants together, g; unset if no content is known.
func (c Charge) OilG() Range {
	var sum Range
	for _, i := range c.Items {
		if i.OilG.IsSet() {
			sum = sum.plus(i.OilG)
		}
	}
	return sum
}

// RetainedPureL returns the pure alcohol in the liquid that the plants taken out before the run hold back, L.
func (c Charge) RetainedPureL() Range {
	return c.RetainedL.scaled(c.Steeped.PureL() / c.Steeped.VolumeL)
}

// Notes lists what there is to say of the charge's figures: what is an upper bound, estimated, recalled or not followed.
func (c Charge) Notes() []string { return slices.Clone(c.notes) }
