package botanical

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/compound"
	"swanneck/mathlib/quantity"
)

// CutProfile is the predicted aroma composition of a cut.
type CutProfile struct {
	Name     string
	Spirit   alcoholometry.Spirit
	Contents []Content // sorted by compound
}

// Content is how much of a compound a cut holds, and from which plants it came.
type Content struct {
	Compound    string
	G           Range                  // in the cut, g
	Least, Most quantity.Concentration // in a litre at 20 °C; unset in a cut of no volume
	From        []Contribution         // sorted by plant
	Measured    bool                   // Calibrate took it from an analysis of this cut
	Notes       []string
}

// Contribution is what a plant gives to a compound of a cut.
type Contribution struct {
	Plant    string
	G        Range // g
	SharePct Range // of the compound in the cut, per cent
}

// gift is what a plant gives of a compound, g. The ends are those of the two accounts and need not be in order.
type gift struct {
	plant, compound string
	g               Range
}

// newProfile sums up what is in a spirit.
func newProfile(fn, name string, spirit alcoholometry.Spirit, gifts []gift) (CutProfile, error) {
	out := CutProfile{Name: name, Spirit: spirit}
	for _, x := range gifts {
		i := slices.IndexFunc(out.Contents, func(c Content) bool { return c.Compound == x.compound })
		if i < 0 {
			i = len(out.Contents)
			out.Contents = append(out.Contents, Content{Compound: x.compound})
		}
		c := &out.Contents[i]
		j := slices.IndexFunc(c.From, func(f Contribution) bool { return f.Plant == x.plant })
		if j < 0 {
			j = len(c.From)
			c.From = append(c.From, Contribution{Plant: x.plant})
		}
		c.From[j].G = c.From[j].G.plus(x.g)
	}
	for i := range out.Contents {
		if err := out.Contents[i].finish(fn, spirit); err != nil {
			return CutProfile{}, err
		}
	}
	slices.SortFunc(out.Contents, func(a, b Content) int { return strings.Compare(a.Compound, b.Compound) })
	return out, nil
}

func (c *Content) finish(fn string, spirit alcoholometry.Spirit) error {
	low, high := 0.0, 0.0
	for i := range c.From {
		g := &c.From[i].G
		*g = Between(math.Min(g.Low, g.High), math.Max(g.Low, g.High))
		low += g.Low
		high += g.High
	}
	c.G = Between(low, high)
	for i := range c.From {
		f := &c.From[i]
		f.SharePct = Between(share(f.G.Low, high-f.G.High), share(f.G.High, low-f.G.Low))
	}
	slices.SortFunc(c.From, func(a, b Contribution) int { return strings.Compare(a.Plant, b.Plant) })
	if spirit.VolumeL == 0 {
		if high > 0 {
			return inputf(fn, "a cut of 0 L gets %s g of %s; give its volume", threeDigits(high), c.Compound)
		}
		return nil
	}
	l := spirit.VolumeAt(quantity.Temperature{})
	var err error
	if c.Least, err = quantity.MgL(1000 * low / l); err != nil {
		return as(fn, err)
	}
	c.Most, err = quantity.MgL(1000 * high / l)
	return as(fn, err)
}

// share returns which part of both together x is, per cent.
func share(x, others float64) float64 {
	if x <= 0 {
		return 0
	}
	return 100 * x / (x + math.Max(others, 0))
}

// Macerate returns what is in the liquid that is strained and not distilled: an infusion, or what was kept back. It panics
// with an *InputError if there is no such liquid.
func (c Charge) Macerate() CutProfile {
	const fn = "botanical.Charge.Macerate"
	if c.KeptL == 0 {
		panic(inputf(fn, "no liquid is strained and kept; give a plant the use Infused, or Strained and the recipe a KeepPct"))
	}
	var rows []gift
	for _, l := range c.Loads {
		if l.Least.MacerateG > 0 || l.Most.MacerateG > 0 {
			rows = append(rows, gift{l.Plant, l.Compound, Between(l.Least.MacerateG, l.Most.MacerateG)})
		}
	}
	p, err := newProfile(fn, "macerate", alcoholometry.Spirit{VolumeL: c.KeptL, Strength: c.Steeped.Strength}, rows)
	if err != nil {
		panic(err)
	}
	return p
}

// Content returns how much of a compound the cut holds. It panics with a *compound.UnknownError for a name that nobody
// knows, and with an *InputError if no plant brings it.
func (p CutProfile) Content(name string) Content {
	const fn = "botanical.CutProfile.Content"
	known, err := compound.Find(name)
	if err != nil {
		panic(as(fn, err))
	}
	for _, c := range p.Contents {
		if c.Compound == known.Name {
			return c
		}
	}
	panic(inputf(fn, "no plant brings %s into %s", known.Name, nameOr(p.Name, "the cut")))
}

// Sum returns how much of a printed sum, "thujone" or "citral", the cut holds, as one content. It panics as Content does.
func (p CutProfile) Sum(name string) Content {
	const fn = "botanical.CutProfile.Sum"
	s, ok := embedded().sums[name]
	if !ok {
		panic(inputf(fn, "%q is no sum; thujone and citral are", name))
	}
	var rows []gift
	measured := true
	for _, c := range p.Contents {
		if slices.Contains(s.compounds, c.Compound) {
			measured = measured && c.Measured
			for _, f := range c.From {
				rows = append(rows, gift{f.Plant, name, f.G})
			}
		}
	}
	if len(rows) == 0 {
		panic(inputf(fn, "no plant brings %s into %s", name, nameOr(p.Name, "the cut")))
	}
	q, err := newProfile(fn, p.Name, p.Spirit, rows)
	if err != nil {
		panic(err)
	}
	q.Contents[0].Measured = measured
	return q.Contents[0]
}

// String gives the content in one line.
func (c Content) String() string {
	s := fmt.Sprintf("%s: %v g", c.Compound, c.G)
	if c.Least.IsSet() {
		s += fmt.Sprintf(", %s %s (%s)", c.mgLText(), c.Least.Per(), c.kind())
	}
	if len(c.From) > 1 {
		for i, f := range c.From {
			sep := ", "
			if i == 0 {
				sep = "; from "
			}
			s += fmt.Sprintf("%s%s %v %%", sep, f.Plant, f.SharePct)
		}
	}
	return s
}
