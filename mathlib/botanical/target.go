package botanical

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"gonum.org/v1/gonum/mat"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Profile is what a spirit holds of its markers, as measured or predicted.
type Profile struct {
	Name     string
	Strength alcoholometry.Strength
	Amounts  []Amount
	Complete bool // what is not named is not in it, as in neutral spirit
}

// Amount is how much of a compound a spirit holds. Compound may be a sum, "thujone" or "citral".
type Amount struct {
	Compound string
	Amount   quantity.Concentration
}

// Blend is a blend of several distillates that comes near a target.
type Blend struct {
	Parts   []BlendPart // in the order given
	WaterKg float64     // to bring them to the strength of the target; see mixing.Reduce
	Result  alcoholometry.Spirit
	Markers []BlendMarker // sorted by compound
	// WorstPct is by how much the marker that is farthest off is off, per cent of its target.
	WorstPct float64
}

// BlendPart is a spirit of a blend.
type BlendPart struct {
	Name    string
	VolumeL float64 // at 20 °C; 0 if it is not needed
}

// BlendMarker is a marker of a blend beside the target.
type BlendMarker struct {
	Compound  string
	WantedMgL float64
	GotMgL    float64
}

// leastWeight keeps a marker of which little is wanted from ruling the blend, dimensionless. Own choice.
const leastWeight = 0.05

// alcoholWeight makes the pure alcohol come out right before any marker does, dimensionless. Own choice.
const alcoholWeight = 1e4

// MatchTarget blends spirits to a target: it finds the volumes, none below 0, of which the blend, brought to the target's
// strength with water, is volumeL litres with marker amounts as near to the target's as can be, by the least sum of squares
// of relative deviations; amounts under a twentieth of the largest count as if they were that. The pure alcohol comes out
// right.
//
// Method: non-negative least squares (Lawson and Hanson). It fails if a spirit says nothing of a marker of the target and is
// not Complete, if all spirits are weaker than the target, and if the markers do not tell some of the spirits apart, which it
// then names: leave one of them out, or give one more marker.
func MatchTarget(target Profile, volumeL float64, spirits ...Profile) (Blend, error) {
	const fn = "botanical.MatchTarget"
	if err := quantity.CheckRange(fn, "volume", volumeL, 0, math.Inf(1), "L", ""); err != nil {
		return Blend{}, err
	}
	if volumeL == 0 {
		return Blend{}, inputf(fn, "the volume is 0 L; give one above 0 L")
	}
	if len(spirits) == 0 {
		return Blend{}, inputf(fn, "there are no spirits to blend; give at least one")
	}
	wanted, names, err := amounts(fn, "the target", target)
	if err != nil {
		return Blend{}, err
	}
	if len(names) == 0 {
		return Blend{}, inputf(fn, "the target names no marker; give at least one in Amounts")
	}
	most := 0.0
	for _, n := range names {
		most = math.Max(most, wanted[n])
	}
	if most == 0 {
		return Blend{}, inputf(fn, "all amounts of the target are 0 mg/L; give at least one above 0 mg/L")
	}
	m, n := len(names)+1, len(spirits)
	a, b := mat.NewDense(m, n, nil), make([]float64, m)
	held := make([]map[string]float64, n)
	strongest := 0.0
	for j, s := range spirits {
		if held[j], err = heldOf(fn, s, j, names); err != nil {
			return Blend{}, err
		}
		abv := s.Strength.ABV()
		strongest = math.Max(strongest, abv)
		for i, name := range names {
			a.Set(i, j, held[j][name]/math.Max(wanted[name], leastWeight*most))
		}
		a.Set(m-1, j, abv/target.Strength.ABV()*alcoholWeight)
	}
	if target.Strength.ABV() > strongest {
		return Blend{}, inputf(fn, "the target has %v and the strongest spirit %.2f %% vol; water only makes it weaker", target.Strength, strongest)
	}
	for i, name := range names {
		b[i] = wanted[name] / math.Max(wanted[name], leastWeight*most)
	}
	b[m-1] = alcoholWeight
	if err := toldApart(fn, a, spirits); err != nil {
		return Blend{}, err
	}
	x := nonNegative(a, b)
	// The weight leaves the alcohol a rounding off; volumes are drawn up to it, which changes no proportion.
	pure := 0.0
	for j, s := range spirits {
		pure += x[j] * s.Strength.ABV()
	}
	out := Blend{Result: alcoholometry.Spirit{VolumeL: volumeL, Strength: target.Strength}}
	kg := 0.0
	for j, s := range spirits {
		l := x[j] * volumeL * target.Strength.ABV() / pure
		out.Parts = append(out.Parts, BlendPart{nameOr(s.Name, fmt.Sprintf("spirit %d", j+1)), l})
		kg += alcoholometry.Spirit{VolumeL: l, Strength: s.Strength}.MassKg()
	}
	out.WaterKg = out.Result.MassKg() - kg
	if out.WaterKg < 0 && out.WaterKg > -1e-9*kg {
		out.WaterKg = 0
	}
	if out.WaterKg < 0 {
		return Blend{}, inputf(fn, "the blend nearest to the target is weaker than %v; give a stronger spirit", target.Strength)
	}
	for _, name := range names {
		got := 0.0
		for j := range spirits {
			got += out.Parts[j].VolumeL * held[j][name] / volumeL
		}
		out.Markers = append(out.Markers, BlendMarker{name, wanted[name], got})
		if wanted[name] > 0 {
			out.WorstPct = math.Max(out.WorstPct, 100*math.Abs(got/wanted[name]-1))
		}
	}
	return out, nil
}

// amounts returns the markers of a profile, mg/L, and their names, sorted.
func amounts(fn, what string, p Profile) (map[string]float64, []string, error) {
	if err := alcoholometry.CheckSet(fn, "the strength of "+what, p.Strength); err != nil {
		return nil, nil, err
	}
	if p.Strength.ABV() <= 0 {
		return nil, nil, inputf(fn, "the strength of %s is 0 %% vol; give a spirit", what)
	}
	out := map[string]float64{}
	var names []string
	for _, x := range p.Amounts {
		_, name, err := compoundsOf(fn, x.Compound)
		if err != nil {
			return nil, nil, err
		}
		if _, twice := out[name]; twice {
			return nil, nil, inputf(fn, "%s stands twice in %s; give it one amount", name, what)
		}
		if out[name], err = alcoholometry.ConcentrationMgL(x.Amount, p.Strength); err != nil {
			return nil, nil, as(fn, err)
		}
		names = append(names, name)
	}
	slices.Sort(names)
	return out, names, nil
}

func heldOf(fn string, s Profile, j int, names []string) (map[string]float64, error) {
	what := nameOr(s.Name, fmt.Sprintf("spirit %d", j+1))
	held, _, err := amounts(fn, what, s)
	if err != nil {
		return nil, err
	}
	for _, n := range names {
		if _, ok := held[n]; !ok && !s.Complete {
			return nil, inputf(fn, "nothing is said of %s in %s; give its amount, 0 mg/L if there is none, or set Complete", n, what)
		}
	}
	return held, nil
}

// toldApart returns an error that names the spirits whose volumes the equations leave open.
func toldApart(fn string, a *mat.Dense, spirits []Profile) error {
	m, n := a.Dims()
	// Columns of length 1, and the row of the alcohol no heavier than the others: the weights must not hide a likeness.
	b := mat.DenseCopyOf(a)
	for j := range n {
		b.Set(m-1, j, a.At(m-1, j)/alcoholWeight)
		length := 0.0
		for i := range m {
			length += b.At(i, j) * b.At(i, j)
		}
		for i := range m {
			b.Set(i, j, b.At(i, j)/math.Sqrt(length))
		}
	}
	var svd mat.SVD
	if !svd.Factorize(b, mat.SVDFull) {
		return inputf(fn, "the equations could not be solved; give other markers")
	}
	values := svd.Values(nil)
	if n <= m && values[n-1] > 1e-6*values[0] {
		return nil
	}
	var v mat.Dense
	svd.VTo(&v)
	var alike []string
	for j, s := range spirits {
		open := 0.0
		for k := range n {
			if k >= len(values) || values[k] <= 1e-6*values[0] {
				open = math.Max(open, math.Abs(v.At(j, k)))
			}
		}
		if open > 1e-6 {
			alike = append(alike, nameOr(s.Name, fmt.Sprintf("spirit %d", j+1)))
		}
	}
	return inputf(fn, "%d markers and the strength do not tell these spirits apart: %s; leave one out, or give one more marker", m-1, strings.Join(alike, ", "))
}

// ProfileOf returns a cut as a profile for MatchTarget, with the upper ends of its predicted contents if most is true and
// with the lower ends otherwise. It has no range; blend with both.
func (p CutProfile) ProfileOf(most bool) Profile {
	out := Profile{Name: p.Name, Strength: p.Spirit.Strength, Complete: true}
	for _, c := range p.Contents {
		x := c.Least
		if most {
			x = c.Most
		}
		out.Amounts = append(out.Amounts, Amount{c.Compound, x})
	}
	return out
}

// String gives the blend in one line.
func (b Blend) String() string {
	var parts []string
	for _, p := range b.Parts {
		parts = append(parts, fmt.Sprintf("%s L of %s", quantity.Figure(p.VolumeL), p.Name))
	}
	return fmt.Sprintf("%s, %s kg of water: %v, markers within %.1f %% of the target", strings.Join(parts, ", "), quantity.Figure(b.WaterKg), b.Result, b.WorstPct)
}

// Rows gives the blend as a table, each row a label, a figure and a unit.
func (b Blend) Rows() [][]string {
	var rows [][]string
	for _, p := range b.Parts {
		rows = append(rows, []string{p.Name, quantity.Figure(p.VolumeL), "L"})
	}
	rows = append(rows, []string{"water", quantity.Figure(b.WaterKg), "kg"}, []string{"blend", quantity.Figure(b.Result.VolumeL), "L"}, []string{"its strength", fmt.Sprintf("%.2f", b.Result.Strength.ABV()), "% vol"})
	for _, m := range b.Markers {
		rows = append(rows, []string{m.Compound + ", wanted", threeDigits(m.WantedMgL), "mg/L"}, []string{m.Compound + ", reckoned", threeDigits(m.GotMgL), "mg/L"})
	}
	return rows
}
