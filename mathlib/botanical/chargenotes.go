package botanical

import (
	"fmt"
	"slices"

	"swanneck/mathlib/compound"
	"swanneck/mathlib/quantity"
)

func sprintf(format string, args ...any) string { return fmt.Sprintf(format, args...) }

// leadingDensity returns the density, kg/L, of the compound that makes up at least half of an oil, or 0.
func leadingDensity(markers []Marker) float64 {
	for _, m := range markers {
		if m.SharePct.Low < 50 {
			continue
		}
		f, err := resolve("", m, nil)
		if err != nil || len(f.compounds) == 0 {
			return 0
		}
		c, err := compound.Find(f.compounds[0])
		if err != nil {
			return 0
		}
		return c.Density.KgM3 / 1000
	}
	return 0
}

func (c *Charge) makeNotes() {
	add := func(format string, args ...any) {
		if n := sprintf(format, args...); !slices.Contains(c.notes, n) {
			c.notes = append(c.notes, n)
		}
	}
	for i, item := range c.Items {
		b := c.Recipe.Items[i]
		if !item.OilG.IsSet() {
			continue // Others says so
		}
		if !b.Oil.Analysed && b.Oil.From.Known() {
			add("%s: oil content %s; an analysis of the lot comes before it", item.Plant, b.Oil.From.String())
		}
		if b.Oil.byVolume() {
			switch {
			case !item.Oil.DensityKgL.IsSet():
				add("%s: density of the oil %v kg/L (estimate)", item.Plant, figureOf("oil density").Range)
			case b.known != nil && item.Oil.DensityKgL == b.known.OilDensityKgL:
				add("%s: density of the oil %v kg/L, %s", item.Plant, item.Oil.DensityKgL, b.known.DensityFrom.Status.Words())
			case !b.Oil.DensityKgL.IsSet():
				add("%s: density of the oil %v kg/L, that of its leading marker", item.Plant, item.Oil.DensityKgL)
			}
		}
		c.noteMarkers(i, add)
		if item.Use == Basket {
			add("%s hangs in the vapour: reckoned as if its oil were free in the pot, which is out of this reckoning's scope", item.Plant)
		}
		if b.MoisturePct == 0 {
			add("%s: moisture not known, taken as none", item.Plant)
		}
	}
	if c.RetainedL.High > 0 {
		add("the plants taken out hold back %v L of liquid with %v L of pure alcohol (%s)", c.RetainedL, c.RetainedPureL(), c.retainedFrom())
	}
	for _, o := range c.Others {
		if o.G.IsSet() {
			add("%v g of %s from %s: %s", o.G, o.Marker, o.Plant, o.Why)
		} else {
			add("%s from %s: %s", o.Marker, o.Plant, o.Why)
		}
	}
}

// noteMarkers says of a plant's markers what they rest on; words that are the same for all of them are said once.
func (c *Charge) noteMarkers(i int, add func(string, ...any)) {
	plant := c.Items[i].Plant
	var labels, sources []string
	thujone, wide := false, false
	for _, l := range c.Loads {
		if l.Plant != plant {
			continue
		}
		if !slices.Contains(labels, l.Label) {
			labels = append(labels, l.Label)
		}
		thujone = thujone || l.SumOf == "thujone" || l.Compound == "alpha-thujone" || l.Compound == "beta-thujone"
	}
	for _, m := range c.Recipe.Items[i].Markers {
		wide = wide || plain(m.Compound) == "thujone" && !m.Analysed && !m.SharePct.IsPoint()
		if from := m.From.String(); !m.Analysed && m.From.Known() && m.SharePct.IsSet() && !slices.Contains(sources, from) {
			sources = append(sources, from)
		}
	}
	for _, l := range labels {
		add("%s: %s", plant, l)
	}
	for _, s := range sources {
		add("%s: shares of the markers %s", plant, s)
	}
	inPot := c.Items[i].Use == OnTheHerb || c.Items[i].Use == Basket
	if b := c.Recipe.Items[i]; thujone && inPot && !b.ReleasedPct.IsSet() {
		f := figureOf("thujone by steam")
		add("%s: steam brought over %v %% of the thujone in one study (%s); ReleasedPct takes such a figure", plant, f.Range, f.from.Source)
	}
	if wide {
		add("%s: the range of thujone has no middle that would mean anything; have the lot analysed", plant)
	}
}

func (c *Charge) retainedFrom() string {
	for _, b := range c.Recipe.Items {
		if b.RetainedLKg.IsSet() {
			return "as measured"
		}
	}
	name := map[Straining]string{WrungByHand: "retained when wrung by hand", Drained: "retained when drained", Pressed: "retained when pressed"}[c.Recipe.Straining]
	f := figureOf(name)
	return name + ", " + f.from.Status.Words()
}

// String gives the charge in one line.
func (c Charge) String() string {
	pot := fmt.Sprintf("the pot gets %v", c.Pot)
	if c.infusion() {
		pot = fmt.Sprintf("%s L at %v drip off", quantity.Figure(c.KeptL), c.Steeped.Strength)
	}
	return fmt.Sprintf("%s in %v: %s g of plants with %v g of oil (estimate unless analysed); %s", nameOr(c.Recipe.Name, "recipe"), c.Spirit, threeDigits(c.massG()), c.OilG(), pot)
}

func (c *Charge) massG() (g float64) {
	for _, i := range c.Items {
		g += i.MassG
	}
	return g
}

// Rows gives the charge as a table, each row a label, a figure and a unit.
func (c Charge) Rows() [][]string {
	rows := [][]string{{"spirit", quantity.Figure(c.Spirit.VolumeL), "L"}, {"its strength", fmt.Sprintf("%.2f", c.Spirit.Strength.ABV()), "% vol"}}
	for i, item := range c.Items {
		from := " (as stated)"
		if b := c.Recipe.Items[i]; b.Oil.Analysed {
			from = " (analysed)"
		} else if b.Oil.From.Known() {
			from = " (printed range: estimate)"
			if !b.Oil.From.Sure() {
				from = " (" + b.Oil.From.Status.Words() + ": estimate)"
			}
		}
		rows = append(rows, []string{c.Recipe.Items[i].name(), quantity.Figure(item.MassG), "g"})
		if item.OilG.IsSet() {
			rows = append(rows, []string{"oil of " + item.Plant + from, item.OilG.String(), "g"})
		}
	}
	for _, l := range c.Loads {
		name := l.Compound + " of " + l.Plant
		if !l.Analysed {
			name += " (estimate)"
		}
		rows = append(rows, []string{name, Between(l.Least.LoadG, l.Most.LoadG).String(), "g"})
	}
	if c.MoistureL > 0 {
		rows = append(rows, []string{"water that the plants bring", quantity.Figure(c.MoistureL), "L"})
	}
	if c.RetainedL.High > 0 {
		rows = append(rows, []string{"liquid that the plants hold back (estimate unless measured)", c.RetainedL.String(), "L"}, []string{"pure alcohol in that", c.RetainedPureL().String(), "L"})
	}
	if c.KeptL > 0 {
		rows = append(rows, []string{"strained and not distilled", quantity.Figure(c.KeptL), "L"})
	}
	if !c.infusion() {
		rows = append(rows, []string{"into the pot", quantity.Figure(c.Pot.VolumeL), "L"}, []string{"its strength", fmt.Sprintf("%.2f", c.Pot.Strength.ABV()), "% vol"})
	}
	for _, n := range c.notes {
		rows = append(rows, []string{"note", n, ""})
	}
	return rows
}

// String gives the trace in one line.
func (t Trace) String() string {
	return fmt.Sprintf("%s: %v g (estimate)", t.Compound, Between(t.LowG, t.HighG))
}

// String gives the load in one line.
func (l Load) String() string {
	return fmt.Sprintf("%s of %s: %v g (%s)", l.Compound, l.Plant, Between(l.Least.LoadG, l.Most.LoadG), l.Label)
}

// String gives the marker that is not followed in one line.
func (o Other) String() string {
	if !o.G.IsSet() {
		return fmt.Sprintf("%s of %s: %s", o.Marker, o.Plant, o.Why)
	}
	return fmt.Sprintf("%s of %s, %v g: %s", o.Marker, o.Plant, o.G, o.Why)
}
