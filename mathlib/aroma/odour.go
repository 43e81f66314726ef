package aroma

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"swanneck/mathlib/compound"
)

// Matrix is what a compound is smelt from.
type Matrix string

// The matrices for which there are thresholds.
const (
	Water     Matrix = "water"               // drinks of up to 0.5 % vol
	Ethanol40 Matrix = "ethanol of 40 % vol" // drinks of 38 to 42 % vol
	Air       Matrix = "air"                 // the air over any drink
)

// How far a threshold may be off, either way (own choice). Published ones of one compound in one liquid spread over a decade and more. In air
// it is three: turned from water to air, the thresholds of linalool, limonene and alpha-pinene lie 10 to 2000 times off those that
// were measured in air. The air over a glass itself is good to a factor of two.
var (
	liquidSpread = math.Sqrt(10)
	airSpread    = math.Sqrt(1000) * 2
)

// Activity is by how many times a compound passes its odour threshold, with the span that the thresholds leave.
type Activity struct {
	Compound string
	Matrix   Matrix
	Amount   float64 // unit: µg/L of liquid, or µg/m³ of air
	Low      float64 // times the threshold, at least, dimensionless
	High     float64 // times the threshold, at most, dimensionless
	Sources  []string
}

// together are names that a threshold stands for as a sum.
var together = map[string][]string{"citral": {"geranial", "neral"}}

// OdourActivity returns by how many times a compound of the drink passes its odour threshold in the same matrix. A threshold in
// water says nothing of a drink of 20 % vol: without one for its very matrix there is no answer.
//
// The odour activity value of Rothe and Thomas (1963, from memory). Sources of the thresholds: the data files. Accuracy: a decade
// in a liquid, three in air.
func OdourActivity(d Drink, name string, m Matrix) (Activity, error) {
	const fn = "aroma.OdourActivity"
	g, err := look(fn, d)
	if err != nil {
		return Activity{}, err
	}
	if err := checkMatrix(fn, &g, m); err != nil {
		return Activity{}, err
	}
	n := nameOf(name)
	if _, ok := together[n]; !ok {
		if n, err = find(fn, name, g.names); err != nil {
			return Activity{}, err
		}
	}
	return g.activity(fn, n, m)
}

func checkMatrix(function string, g *glass, m Matrix) error {
	s := g.drink.Strength
	switch m {
	case Air:
		return nil
	case Water:
		if s.ABV() <= inWaterPct {
			return nil
		}
	case Ethanol40:
		if s.ABV() >= 38 && s.ABV() <= 42 {
			return nil
		}
	default:
		return fmt.Errorf("%s: the matrix %q is not known; give %q, %q or %q", function, m, Water, Ethanol40, Air)
	}
	return fmt.Errorf("%s: thresholds in %s are not for a drink of %v; %s", function, m, s, otherwise(s.ABV()))
}

func otherwise(pct float64) string {
	if pct >= 38 && pct <= 42 {
		return fmt.Sprintf("take %q or %q", Ethanol40, Air)
	}
	if pct <= inWaterPct {
		return fmt.Sprintf("take %q or %q", Water, Air)
	}
	return fmt.Sprintf("there are none for its strength; take %q, or the air relative to the bottle, which needs none", Air)
}

// activity returns the odour activity of a compound, or of compounds that a threshold counts together.
func (g *glass) activity(function, name string, m Matrix) (Activity, error) {
	t := embedded()
	members, sum := together[name]
	if !sum {
		members = []string{name}
	}
	found := t.thresholds[m][name]
	if len(found) == 0 {
		return Activity{}, fmt.Errorf("%s: no threshold in %s is known for %s; %s", function, m, name, nearestThreshold(t, name, m))
	}
	a := Activity{Compound: name, Matrix: m}
	have := 0
	for _, n := range members {
		i := slices.Index(g.names, n)
		if i < 0 {
			continue
		}
		have++
		if m != Air {
			a.Amount += 1000 * g.dissolved[i]
			continue
		}
		gas, err := g.gas(function, i)
		if err != nil {
			return Activity{}, err
		}
		a.Amount += 1000 * gas.GasUgL
	}
	if have == 0 {
		return Activity{}, fmt.Errorf("%s: the drink has no %s; it has %s", function, strings.Join(members, " or "), strings.Join(g.names, ", "))
	}
	low, high := math.Inf(1), 0.0
	for _, x := range found {
		low, high = math.Min(low, x.value), math.Max(high, x.value)
		if text := label(x.from); !slices.Contains(a.Sources, text) {
			a.Sources = append(a.Sources, text)
		}
	}
	spread := liquidSpread
	if m == Air {
		spread = airSpread
	}
	a.Low, a.High = a.Amount/high/spread, a.Amount/low*spread
	return a, nil
}

func label(p compound.Provenance) string {
	s := p.Status.Words()
	if p.Source != s {
		s += ": " + p.Source
	}
	return s
}

// nearestThreshold names what there is in other matrices, so that nobody takes it by mistake.
func nearestThreshold(t *tables, name string, m Matrix) string {
	for _, group := range []string{"citral"} {
		if slices.Contains(together[group], name) && len(t.thresholds[m][group]) > 0 {
			return "it is counted in " + group
		}
	}
	var parts []string
	for _, o := range []Matrix{Water, Ethanol40, Air} {
		unit := "µg/L"
		if o == Air {
			unit = "µg/m³"
		}
		for _, x := range t.thresholds[o][name] {
			if o != m {
				parts = append(parts, fmt.Sprintf("%s %g %s", o, x.value, unit))
			}
		}
	}
	if len(parts) == 0 {
		return "nor in any other matrix"
	}
	return "there is one elsewhere, which does not count here: " + strings.Join(parts, ", ")
}

// String gives the activity with its span in one line.
func (a Activity) String() string {
	unit := "µg/L"
	if a.Matrix == Air {
		unit = "µg/m³"
	}
	return fmt.Sprintf("%s in %s: %s %s, %s to %s times its threshold (%s)", a.Compound, a.Matrix, figure(a.Amount), unit, figure(a.Low), figure(a.High), strings.Join(a.Sources, "; "))
}

// Order is the compounds of a drink by how far they pass their thresholds in one matrix.
type Order struct {
	Drink      Drink
	Matrix     Matrix
	Activities []Activity // by the middle of their spans, the strongest first
	Unplaced   []string   // compounds without a threshold in this matrix, with the reason
	Leads      string     // the compound that leads; empty if the spans overlap
}

// OrderOf returns the compounds of a drink by how far they pass their odour thresholds in a matrix. It fails if none has a
// threshold there: no profile without a matching matrix. One leads only if the lower end of its span lies above the upper end of every
// other's.
func OrderOf(d Drink, m Matrix) (Order, error) {
	const fn = "aroma.OrderOf"
	g, err := look(fn, d)
	if err != nil {
		return Order{}, err
	}
	if err := checkMatrix(fn, &g, m); err != nil {
		return Order{}, err
	}
	o := Order{Drink: d, Matrix: m}
	done := map[string]bool{}
	for _, name := range g.names {
		for _, group := range []string{"citral"} {
			if slices.Contains(together[group], name) && len(embedded().thresholds[m][group]) > 0 {
				name = group
			}
		}
		if done[name] {
			continue
		}
		done[name] = true
		a, err := g.activity(fn, name, m)
		if err != nil {
			_, why, _ := strings.Cut(err.Error(), ": ")
			o.Unplaced = append(o.Unplaced, name+": "+why)
			continue
		}
		o.Activities = append(o.Activities, a)
	}
	if len(o.Activities) == 0 {
		return Order{}, fmt.Errorf("%s: no threshold in %s is known for any of %s; the air relative to the bottle needs none", fn, m, strings.Join(g.names, ", "))
	}
	slices.SortStableFunc(o.Activities, func(a, b Activity) int {
		// The middle of a span on the logarithm; equal ones by name.
		switch x, y := a.Low*a.High, b.Low*b.High; {
		case x > y:
			return -1
		case x < y:
			return 1
		}
		return strings.Compare(a.Compound, b.Compound)
	})
	first := o.Activities[0]
	leads := first.High > 1
	for _, a := range o.Activities[1:] {
		leads = leads && first.Low > a.High
	}
	if leads {
		o.Leads = first.Compound
	}
	return o, nil
}

// String says in one line which compound leads, or that nobody can tell.
func (o Order) String() string {
	names := make([]string, len(o.Activities))
	for i, a := range o.Activities {
		names[i] = fmt.Sprintf("%s %s to %s", a.Compound, figure(a.Low), figure(a.High))
	}
	head := "cannot tell which leads"
	if o.Leads != "" {
		head = o.Leads + " leads"
	}
	return fmt.Sprintf("%v in %s: %s; times the threshold: %s", o.Drink.Strength, o.Matrix, head, strings.Join(names, ", "))
}

// Rows gives the order: a row a compound with its span and sources, and what was left out.
func (o Order) Rows() [][]string {
	rows := [][]string{{"compound", "times its threshold in " + string(o.Matrix) + " (one to three decades unsure)", "threshold"}}
	for _, a := range o.Activities {
		rows = append(rows, []string{a.Compound, figure(a.Low) + " to " + figure(a.High), strings.Join(a.Sources, "; ")})
	}
	for _, u := range o.Unplaced {
		rows = append(rows, []string{"left out", u, ""})
	}
	if o.Leads == "" {
		return append(rows, []string{"leads", "cannot tell", ""})
	}
	return append(rows, []string{"leads", o.Leads, ""})
}
