package botanical

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Scaled is a recipe carried from one charge to another.
type Scaled struct {
	Recipe   Recipe
	From, To alcoholometry.Spirit
	Factor   float64 // by which the grams grow, dimensionless
	Items    []ScaledItem
	// SurfaceTimes is the surface of the still to each litre over that of the smaller one, dimensionless, for stills of one
	// shape: it goes with the cube root of the volume.
	SurfaceTimes float64
}

// ScaledItem is a plant of a scaled recipe.
type ScaledItem struct {
	Plant       string
	FromG       float64 // in the first charge
	ToG         float64 // in the second
	GPerL       float64 // grams to the litre that the recipe counts on; this does not change
	GPerChargeL float64 // grams to the litre of the second charge
}

// differABV is the difference of strengths, % vol, from which it matters by which rule a recipe is scaled. Own choice.
const differABV = 0.5

// Scale carries a recipe from a charge to another, say from the bench to the still. The rule is that grams stay the same to
// each litre of pure alcohol (PerPureL), or to each litre of charge (PerChargeL). Where the strengths of the two charges
// differ by more than 0.5 % vol the two rules give different amounts, so Per must then be set by name. Scaling is linear;
// what does not scale along with the grams, NotScaled says.
//
// It fails for a rule that is not named, with an *alcoholometry.UnsetError, with a *quantity.RangeError, and as the recipe's
// items demand.
func Scale(r Recipe, from, to alcoholometry.Spirit) (Scaled, error) {
	const fn = "botanical.Scale"
	full, err := r.filled(fn)
	if err != nil {
		return Scaled{}, err
	}
	a, err := full.litres(fn, from)
	if err != nil {
		return Scaled{}, err
	}
	b, err := full.litres(fn, to)
	if err != nil {
		return Scaled{}, err
	}
	fromL, toL := from.VolumeAt(quantity.Temperature{}), to.VolumeAt(quantity.Temperature{})
	if d := to.Strength.ABV() - from.Strength.ABV(); r.Per == "" && math.Abs(d) > differABV {
		return Scaled{}, inputf(fn, "the charges are %v and %v: by pure alcohol the grams grow %.4g times, by litres of charge %.4g times; name the rule, Per: PerPureL or PerChargeL", from.Strength, to.Strength, to.PureL()/from.PureL(), toL/fromL)
	}
	s := Scaled{Recipe: full, From: from, To: to, Factor: b / a, SurfaceTimes: math.Cbrt(fromL / toL)}
	for _, i := range full.Items {
		toG := i.GPerL * b
		s.Items = append(s.Items, ScaledItem{Plant: i.Plant, FromG: i.GPerL * a, ToG: toG, GPerL: i.GPerL, GPerChargeL: toG / toL})
	}
	return s, nil
}

// NotScaled says in words what does not grow along with the grams.
func (s Scaled) NotScaled() []string {
	way := "less"
	if s.SurfaceTimes > 1 {
		way = "more"
	}
	return []string{
		fmt.Sprintf("surface to each litre: %s times as much in stills of one shape, so that the wall loses %s of the heat and returns %s reflux by itself", threeDigits(s.SurfaceTimes), way, way),
		"hours: to heat up and at the boil; they follow the heater's power to each litre, and oil inside seed comes out by the hour, not by the litre",
		"hold-up of head, condenser and parrot: a larger share of a small run, so that its cuts smear more",
		"depth of the plants in the pot: a deep bed is steamed through less evenly, and scorches more easily at the bottom",
		"thickness of the layer where heat passes: plants on a wall of high load scorch",
		"time of straining and pressing, and what is left in the press",
	}
}

// String gives the scaling in one line.
func (s Scaled) String() string {
	return fmt.Sprintf("%v from %v to %v: %s times the grams, by the %s", nameOr(s.Recipe.Name, "recipe"), s.From, s.To, threeDigits(s.Factor), s.Recipe.per())
}

func nameOr(name, other string) string {
	if name == "" {
		return other
	}
	return name
}

// Rows gives the amounts for the second charge, each as a label, a figure and a unit, and what does not scale.
func (s Scaled) Rows() [][]string {
	rows := [][]string{{"grams grow", threeDigits(s.Factor), "times"}, {"rule", "the same to each " + string(s.Recipe.per()), ""}}
	for _, i := range s.Items {
		rows = append(rows, []string{fmt.Sprintf("%s, from %s g", i.Plant, threeDigits(i.FromG)), quantity.Figure(i.ToG), "g"})
	}
	for _, n := range s.NotScaled() {
		rows = append(rows, []string{"does not scale", n, ""})
	}
	return rows
}
