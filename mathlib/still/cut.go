package still

import (
	"fmt"
	"strings"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Cut is what came over between two places of a run, or in several jars together.
type Cut struct {
	From, To string               // the marks
	FromL    float64              // collected until its beginning, L at 20 °C in one vessel
	ToL      float64              // collected until its end
	Spirit   alcoholometry.Spirit // at 20 °C
	YieldPct float64              // its share of the charge's pure alcohol, per cent
	Contents []Content
}

// Content is how much of a compound a spirit holds.
type Content struct {
	Name    string
	MassG   float64
	Amount  quantity.Concentration // in a litre at 20 °C
	PerPure quantity.Concentration // to the pure alcohol; unset if there is none
	Notes   []string               // what is estimated, extrapolated or from memory
}

// String gives the content in one line, with what there is to say of the numbers behind it.
func (c Content) String() string {
	s := fmt.Sprintf("%s: %s g, %v", c.Name, grams(c.MassG), c.Amount)
	if c.PerPure.IsSet() {
		s += fmt.Sprintf(", %v", c.PerPure)
	}
	if len(c.Notes) > 0 {
		s += " (" + strings.Join(c.Notes, "; ") + ")"
	}
	return s
}

// String gives the cut in one line.
func (c Cut) String() string {
	if !c.Spirit.Strength.IsSet() {
		return "nothing"
	}
	return fmt.Sprintf("from %s to %s: %v with %s L of pure alcohol (%.1f %% of the charge's)", c.From, c.To, c.Spirit, quantity.Figure(c.Spirit.PureL()), c.YieldPct)
}

// Rows gives the cut as a table, each row a label, a figure and a unit.
func (c Cut) Rows() [][]string {
	if !c.Spirit.Strength.IsSet() {
		return [][]string{{"cut", "nothing", ""}}
	}
	rows := [][]string{
		{"from", c.From, ""},
		{"to", c.To, ""},
		{"volume", quantity.Figure(c.Spirit.VolumeL), "L"},
		{"strength", fmt.Sprintf("%.2f", c.Spirit.Strength.ABV()), "% vol"},
		{"pure alcohol", quantity.Figure(c.Spirit.PureL()), "L"},
		{"share of the charge's alcohol", fmt.Sprintf("%.1f", c.YieldPct), "%"},
	}
	for _, x := range c.Contents {
		rows = append(rows, []string{x.Name, threeDigits(x.Amount.Value()), string(x.Amount.Per())})
		if x.PerPure.IsSet() {
			rows = append(rows, []string{x.Name, threeDigits(x.PerPure.Value()), string(x.PerPure.Per())})
		}
	}
	return rows
}

// Content returns how much of a compound the cut holds. It panics with a *compound.UnknownError or a *NotCarriedError.
func (c Cut) Content(name string) Content {
	names := make([]string, len(c.Contents))
	for k, x := range c.Contents {
		names[k] = x.Name
	}
	_, k, err := carried("still.Cut.Content", name, names)
	if err != nil {
		panic(err)
	}
	return c.Contents[k]
}

// CutBetween returns what came over between two marks; to is looked for from from on. It fails with a *NeverError if the
// run does not come to one of them, and if nothing lies between.
func (r Run) CutBetween(from, to Mark) (Cut, error) {
	const fn = "still.Run.Cut"
	a, err := r.find(fn, from, place{})
	if err != nil {
		return Cut{}, err
	}
	b, err := r.find(fn, to, a)
	if err != nil {
		return Cut{}, err
	}
	return r.between(fn, a, b, from.String(), to.String())
}

// Cut returns what came over between two marks, as in Cut(AtStart(), AtStrength(ABV(75))); to is looked for from from on. It
// panics with the error of CutBetween.
func (r Run) Cut(from, to Mark) Cut {
	c, err := r.CutBetween(from, to)
	if err != nil {
		panic(err)
	}
	return c
}

// between returns the cut between two places.
func (r *Run) between(function string, a, b place, from, to string) (Cut, error) {
	fa, fb := r.flowTo(a), r.flowTo(b)
	if !(fb.g > fa.g) {
		return Cut{}, inputf(function, "nothing comes over between %s and %s; give the earlier mark first", from, to)
	}
	c := Cut{From: from, To: to, FromL: litresOf(flow{}, fa), ToL: litresOf(flow{}, fb)}
	var err error
	if c.Spirit, err = alcoholometry.Weighed((fb.g-fa.g)/1000, byGrams(fb.e-fa.e, fb.g-fa.g)); err != nil {
		return Cut{}, as(function, err)
	}
	c.YieldPct = 100 * c.Spirit.PureL() / r.chargeL()
	for k, f := range r.Congeners {
		x, err := newContent(f.Name, r.traceTo(b, k)-r.traceTo(a, k), c.Spirit)
		if err != nil {
			return Cut{}, as(function, err)
		}
		x.Notes = f.Notes
		c.Contents = append(c.Contents, x)
	}
	return c, nil
}

// newContent returns massG grams of a compound in a spirit at 20 °C as a content.
func newContent(name string, massG float64, s alcoholometry.Spirit) (Content, error) {
	massG = max(massG, 0) // a difference of rounded sums
	c := Content{Name: name, MassG: massG}
	var err error
	if c.Amount, err = quantity.MgL(1000 * massG / s.VolumeL); err != nil {
		return Content{}, err
	}
	if pure := s.PureL(); pure > 0 {
		c.PerPure, err = quantity.GHLPure(massG / pure * 100)
	}
	return c, err
}

// Jars returns what each of a row of jars holds if each is filled with eachL litres (at 20 °C) as it comes; the last one
// takes the rest. It panics with a *quantity.RangeError unless eachL makes 1 to 1000 jars.
func (r Run) Jars(eachL float64) []Cut {
	const fn = "still.Run.Jars"
	all := litresOf(flow{}, r.flowTo(r.end()))
	if err := quantity.CheckRange(fn, "size of a jar", eachL, all/1000, max(all, eachL), "L", "at most 1000 jars"); err != nil {
		panic(err)
	}
	var jars []Cut
	at, left := place{}, all
	for left > 0 {
		next := r.end()
		if left > eachL*(1+1e-9) {
			p, err := r.findVolume(fn, AtVolume(eachL), r.flowTo(at), at)
			if err != nil {
				panic(err)
			}
			next = p
		}
		c, err := r.between(fn, at, next, fmt.Sprintf("jar %d", len(jars)+1), fmt.Sprintf("jar %d", len(jars)+2))
		if err != nil {
			panic(err)
		}
		jars = append(jars, c)
		if next == r.end() {
			return jars
		}
		at = next
		left = litresOf(r.flowTo(at), r.flowTo(r.end()))
	}
	return jars
}
