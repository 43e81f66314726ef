package botanical

import (
	"fmt"

	"swanneck/mathlib/quantity"
)

// String gives the composition of the cut in one line.
func (p CutProfile) String() string {
	s := fmt.Sprintf("%s, %v:", nameOr(p.Name, "cut"), p.Spirit)
	for i, c := range p.Contents {
		if i > 0 {
			s += ","
		}
		s += fmt.Sprintf(" %s %s", c.Compound, c.mgLText())
	}
	return s + " mg/L (estimate)"
}

// kind says what the figure is.
func (c Content) kind() string {
	if c.Measured {
		return "measured"
	}
	return "estimate"
}

// mgL returns both ends, mg/L.
func (c Content) mgL() Range {
	if !c.Least.IsSet() {
		return Range{}
	}
	return Between(c.Least.Value(), c.Most.Value())
}

// nothing is the share of a load, dimensionless, that rounding may leave where nothing is.
const nothing = 1e-9

// leastMgL is the least content that is printed as a figure, mg/L: a nanogram to the litre, which nobody measures.
const leastMgL = 1e-6

// mgLText prints both ends, mg/L.
func (c Content) mgLText() string {
	r := c.mgL()
	switch {
	case r.High > leastMgL && r.Low < leastMgL:
		return "0 to " + threeDigits(r.High)
	case r.IsSet() && r.High > 0 && r.High <= leastMgL:
		return "under 0.000001"
	}
	return r.String()
}

// Rows gives the composition of the cut, each row a label, a figure and a unit.
func (p CutProfile) Rows() [][]string {
	rows := [][]string{{nameOr(p.Name, "cut"), quantity.Figure(p.Spirit.VolumeL), "L"}}
	if p.Spirit.Strength.IsSet() {
		rows = append(rows, []string{"its strength", fmt.Sprintf("%.2f", p.Spirit.Strength.ABV()), "% vol"})
	}
	for _, c := range p.Contents {
		rows = append(rows, []string{c.Compound + " (" + c.kind() + ")", c.mgLText(), "mg/L"})
		if len(c.From) > 1 && c.mgL().High > leastMgL {
			for _, f := range c.From {
				rows = append(rows, []string{"of that from " + f.Plant, f.SharePct.String(), "%"})
			}
		}
	}
	return rows
}

// String gives the carry-over in one line.
func (o CarryOver) String() string {
	s := fmt.Sprintf("%s of %s over %s (estimate)", count(o.compounds(), "marker"), count(o.plants(), "plant"), count(len(o.Cuts), "cut"))
	if n := len(o.Others); n > 0 {
		s += fmt.Sprintf("; %s not followed", count(n, "marker"))
	}
	return s
}

func count(n int, what string) string {
	if n != 1 {
		what += "s"
	}
	return fmt.Sprintf("%d %s", n, what)
}

func (o CarryOver) compounds() int {
	seen := map[string]bool{}
	for _, l := range o.Loads {
		seen[l.Compound] = true
	}
	return len(seen)
}

func (o CarryOver) plants() int {
	seen := map[string]bool{}
	for _, l := range o.Loads {
		seen[l.Plant] = true
	}
	return len(seen)
}

// Rows gives the composition of each cut, what is left in pot and plant, and the notes, each row a label, a figure and a
// unit.
func (o CarryOver) Rows() [][]string {
	var rows [][]string
	for _, c := range o.Cuts {
		rows = append(rows, c.Rows()...)
	}
	for _, l := range o.Loads {
		name := l.Compound + " of " + l.Plant
		rows = append(rows, []string{name + ", in the charge (estimate unless analysed)", Between(l.Least.LoadG, l.Most.LoadG).String(), "g"})
		for _, place := range []struct {
			where string
			g     Range
		}{{"left in the pot", inOrder(l.Least.PotG, l.Most.PotG)}, {"left in the plant", inOrder(l.Least.PlantG, l.Most.PlantG)}, {"in what was kept back", inOrder(l.Least.MacerateG, l.Most.MacerateG)}} {
			if place.g.High > nothing*l.Most.LoadG {
				rows = append(rows, []string{name + ", " + place.where + " (estimate)", place.g.String(), "g"})
			}
		}
	}
	for _, x := range o.Others {
		rows = append(rows, []string{"not followed", x.String(), ""})
	}
	for _, n := range o.notes {
		rows = append(rows, []string{"note", n, ""})
	}
	return rows
}

func inOrder(a, b float64) Range { return Between(min(a, b), max(a, b)) }
