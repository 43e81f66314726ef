package uncertainty

import (
	"fmt"
	"math"
)

// Budget is how far a result may be off, cause by cause, by the law of propagation of uncertainty.
type Budget struct {
	Name        string
	Unit        string
	Value       float64 // the result, in the unit named
	Standard    float64 // its combined standard uncertainty, in the unit named
	Degrees     float64 // effective degrees of freedom, dimensionless; +Inf if nothing limits them
	CoveragePct float64 // how often Value ± Expanded holds the true value, per cent
	Factor      float64 // the coverage factor k, dimensionless
	Expanded    float64 // the expanded uncertainty Factor × Standard, in the unit named

	Lines []Line // one for each part of each input, in their order, and one for each correlation

	LimitedBy        string  // the input that makes the largest share; empty if none moves the result
	LimitedPct       float64 // its share of the variance, per cent
	ExpandedIfHalved float64 // what Expanded would be at the same k if that input were twice as good, in the unit named

	Notes []string // what to keep in mind with these figures
}

// Line is one cause in a budget.
type Line struct {
	Input        string
	Part         string  // what of it; "correlation" for two inputs that go together
	Value        float64 // of the input, in the unit of the input
	InputUnit    string
	Shape        Shape
	Standard     float64 // the standard uncertainty, in the unit of the input
	Degrees      float64 // degrees of freedom, dimensionless; +Inf if nothing limits them
	Sensitivity  float64 // by how much the result moves, in its unit, if the input moves by one unit
	Contribution float64 // |Sensitivity| × Standard, in the unit of the result; 0 for a correlation
	SharePct     float64 // share of the variance, per cent; below 0 where a correlation takes some away
}

// FirstOrder works out how far the result of a measurement may be off, taking the model as straight within the
// tolerances (a linear model is exact). SecondOrderStandard and MonteCarlo tell whether that is good enough.
//
// It fails if the model has no answer for the readings or on both sides of one, for an input without a tolerance, and
// for correlations that name no input.
//
// Source: JCGM 100:2008, 5.1.2 and 5.2.2, equations (10) and (16); annex G for the coverage factor.
func FirstOrder(m Measurement) (Budget, error) {
	const fn = "uncertainty.FirstOrder"
	p, err := m.resolve(fn)
	if err != nil {
		return Budget{}, err
	}
	y, c, err := p.sensitivities()
	if err != nil {
		return Budget{}, err
	}
	return p.budget(y, c), nil
}

func (p *problem) budget(y float64, c []float64) Budget {
	b := Budget{Name: p.title(), Unit: p.Unit, Value: y, CoveragePct: p.coveragePct}
	var parts, degrees []float64
	for i, in := range p.inputs {
		for _, part := range in.Parts {
			l := Line{Input: in.Name, Part: part.What, Value: in.Value, InputUnit: in.Unit, Shape: part.Shape, Standard: part.Standard,
				Degrees: part.degrees(), Sensitivity: c[i], Contribution: math.Abs(c[i]) * part.Standard}
			b.Lines = append(b.Lines, l)
			parts, degrees = append(parts, l.Contribution), append(degrees, l.Degrees)
		}
	}
	variance := p.variance(c, -1)
	b.Standard = math.Sqrt(variance)
	b.Degrees = math.Inf(1)
	if b.Standard > 0 {
		b.Degrees = effectiveDegrees(b.Standard, parts, degrees)
	}
	if len(p.correlated) > 0 {
		b.Lines = append(b.Lines, p.correlationLines(c)...)
		if !math.IsInf(b.Degrees, 1) {
			b.Degrees = math.Inf(1)
			b.Notes = append(b.Notes, "the effective degrees of freedom are not known for correlated inputs: k is the one of the normal distribution, and may be too small")
		}
	}
	b.Factor = coverageFactor(b.CoveragePct, b.Degrees)
	b.Expanded = b.Factor * b.Standard
	p.blame(&b, c, variance)
	return b
}

// variance returns the square of the combined standard uncertainty, in the squared unit of the result, with the standard
// uncertainty of one input halved, or of none if halved is -1.
func (p *problem) variance(c []float64, halved int) float64 {
	var sum float64
	u := func(i int) float64 {
		if i == halved {
			return c[i] * p.u[i] / 2
		}
		return c[i] * p.u[i]
	}
	for i := range c {
		sum += u(i) * u(i)
		for j := range i {
			sum += 2 * p.r[i][j] * u(i) * u(j)
		}
	}
	return math.Max(sum, 0) // -1e-20 where correlations cancel everything
}

func (p *problem) correlationLines(c []float64) []Line {
	var out []Line
	for j := range p.inputs {
		for i := range j {
			if p.r[i][j] == 0 {
				continue
			}
			out = append(out, Line{Input: p.inputs[i].Name + " with " + p.inputs[j].Name, Part: "correlation", Degrees: math.Inf(1)})
		}
	}
	return out
}

// blame fills in the shares and which input limits the result.
func (p *problem) blame(b *Budget, c []float64, variance float64) {
	if variance == 0 {
		b.Notes = append(b.Notes, "no input moves the result to the first order: where the model is curved or has steps, only MonteCarlo can tell")
		return
	}
	k := 0
	worst := -1
	for i, in := range p.inputs {
		var share float64
		for range in.Parts {
			l := &b.Lines[k]
			l.SharePct = 100 * l.Contribution * l.Contribution / variance
			share += l.SharePct
			k++
		}
		if share > b.LimitedPct {
			b.LimitedBy, b.LimitedPct, worst = in.Name, share, i
		}
	}
	for j := range p.inputs {
		for i := range j {
			if p.r[i][j] != 0 {
				b.Lines[k].SharePct = 100 * 2 * p.r[i][j] * c[i] * c[j] * p.u[i] * p.u[j] / variance
				k++
			}
		}
	}
	if worst >= 0 {
		b.ExpandedIfHalved = b.Factor * math.Sqrt(p.variance(c, worst))
	}
}

// String gives the result with its uncertainty and what limits it, in one line.
func (b Budget) String() string {
	value, u := figures(b.Value, b.Expanded)
	s := fmt.Sprintf("%s = %s ± %s %s (%s %%, k = %.2f)", b.Name, value, u, b.Unit, plain(b.CoveragePct), b.Factor)
	if b.LimitedBy != "" {
		s += fmt.Sprintf("; %s makes %.0f %% of it", b.LimitedBy, b.LimitedPct)
	}
	for _, n := range b.Notes {
		s += "; " + n
	}
	return s
}

// Rows gives the budget as a table: a head, a row for each cause, and the result.
func (b Budget) Rows() [][]string {
	rows := [][]string{{"cause", "value", "unit", "standard uncertainty", "spread", "degrees of freedom", "result moves by", "share"}}
	for _, l := range b.Lines {
		what := l.Input
		if l.Part != "" {
			what += ", " + l.Part
		}
		if l.Standard == 0 { // a correlation
			rows = append(rows, []string{what, "", "", "", "", "", "", fmt.Sprintf("%.1f %%", l.SharePct)})
			continue
		}
		value, u := figures(l.Value, l.Standard)
		_, moves := figures(0, l.Contribution)
		rows = append(rows, []string{what, value, l.InputUnit, u, l.Shape.String(), degreesText(l.Degrees), moves + " " + b.Unit, fmt.Sprintf("%.1f %%", l.SharePct)})
	}
	value, u := figures(b.Value, b.Expanded)
	_, standard := figures(b.Value, b.Standard)
	all := "100 %"
	if b.Standard == 0 {
		all = ""
	}
	rows = append(rows, []string{b.Name, value, b.Unit, standard, "", degreesText(b.Degrees), "", all},
		[]string{fmt.Sprintf("expanded uncertainty, %s %%", plain(b.CoveragePct)), "± " + u, b.Unit, fmt.Sprintf("k = %.2f", b.Factor), "", "", "", ""})
	if b.LimitedBy != "" {
		_, halved := figures(0, b.ExpandedIfHalved)
		rows = append(rows, []string{"limited by " + b.LimitedBy + "; if that were twice as good", "± " + halved, b.Unit, "", "", "", "", ""})
	}
	for _, n := range b.Notes {
		rows = append(rows, []string{"note: " + n, "", "", "", "", "", "", ""})
	}
	return rows
}
