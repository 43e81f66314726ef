package mixing

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// check returns an error for an order that says something impossible in itself, and puts the usual choices where there
// are none.
func (o *BlendOrder) check(function string) error {
	if len(o.Lots) == 0 {
		return fmt.Errorf("%s: there are no lots to blend; give at least one", function)
	}
	for _, f := range []func(string) error{o.checkLots, o.checkTarget, o.checkLimits, o.checkShares, o.checkAim} {
		if err := f(function); err != nil {
			return err
		}
	}
	return nil
}

func (o *BlendOrder) checkLots(function string) error {
	seen := map[string]bool{}
	costs := false
	for i, l := range o.Lots {
		if l.Name == "" {
			return fmt.Errorf("%s: lot %d has no name; give each its own", function, i+1)
		}
		if seen[l.Name] {
			return fmt.Errorf("%s: two lots are named %s; give each its own name", function, l.Name)
		}
		seen[l.Name] = true
		if err := checkSpirit(function, "lot "+l.Name, l.Spirit); err != nil {
			return err
		}
		if err := quantity.CheckRange(function, "the cost of "+l.Name, l.CostPerL, 0, math.Inf(1), "for a litre", ""); err != nil {
			return err
		}
		if err := quantity.CheckRange(function, "the least of "+l.Name, l.LeastL, 0, l.Spirit.VolumeL, "L", "what there is"); err != nil {
			return err
		}
		costs = costs || l.CostPerL > 0
	}
	if costs && !currency(o.Currency) {
		return fmt.Errorf("%s: there are costs and the currency is %q; give its three letters, such as \"EUR\"", function, o.Currency)
	}
	return nil
}

// currency reports whether c is three capital letters.
func currency(c string) bool {
	if len(c) != 3 {
		return false
	}
	for _, r := range c {
		if r < 'A' || r > 'Z' {
			return false
		}
	}
	return true
}

func (o *BlendOrder) checkTarget(function string) error {
	if err := alcoholometry.CheckSet(function, "the strength of the blend", o.Strength); err != nil {
		return err
	}
	if !o.StrengthTo.IsSet() {
		o.StrengthTo = o.Strength
	}
	if o.StrengthTo.ABW() < o.Strength.ABW() {
		return fmt.Errorf("%s: the strength is to be from %v to %v; the second must not be below the first", function, o.Strength, o.StrengthTo)
	}
	if o.Strength.ABW() == 0 {
		return fmt.Errorf("%s: the strength of the blend is 0 %% vol; give one above 0", function)
	}
	if err := quantity.CheckRange(function, "the volume wanted", o.VolumeL, 0, math.Inf(1), "L", ""); err != nil {
		return err
	}
	if err := quantity.CheckRange(function, "the room in the tank", o.TankL, 0, math.Inf(1), "L", ""); err != nil {
		return err
	}
	switch {
	case o.AsMuch && o.VolumeL > 0:
		return fmt.Errorf("%s: both AsMuch and a volume of %g L; give one", function, o.VolumeL)
	case !o.AsMuch && o.VolumeL == 0:
		return fmt.Errorf("%s: the volume wanted is 0 L; give one above 0 L, or AsMuch", function)
	case o.TankL > 0 && o.VolumeL > o.TankL:
		return fmt.Errorf("%s: %s L are wanted and the tank holds %s L", function, quantity.Figure(o.VolumeL), quantity.Figure(o.TankL))
	}
	_, err := alcoholometry.DensityKgM3(o.Strength, o.Temp)
	if err != nil {
		return as(function, err)
	}
	return nil
}

func (o *BlendOrder) checkLimits(function string) error {
	for _, l := range o.Limits {
		if l.Name == "" || !l.Least.IsSet() && !l.Most.IsSet() {
			return fmt.Errorf("%s: the limit named %q limits nothing; give it a name and Least, Most or both", function, l.Name)
		}
		if l.Least.IsSet() && l.Most.IsSet() {
			if l.Least.Per() != l.Most.Per() {
				return fmt.Errorf("%s: %s is to be from %v to %v; count both on the same thing", function, l.Name, l.Least, l.Most)
			}
			if l.Least.Value() > l.Most.Value() {
				return fmt.Errorf("%s: %s is to be from %v to %v; the least must not be above the most", function, l.Name, l.Least, l.Most)
			}
		}
	}
	seen := map[string]bool{}
	for _, m := range o.Profile {
		if m.Name == "" || seen[m.Name] || !m.Wanted.IsSet() || m.Wanted.Value() == 0 {
			return fmt.Errorf("%s: the profile's %q is wanted at %v; give each marker once, above 0 (a limit keeps one at 0)", function, m.Name, m.Wanted)
		}
		seen[m.Name] = true
		if err := quantity.CheckRange(function, "the weight of "+m.Name, m.Weight, 0, math.Inf(1), "", ""); err != nil {
			return err
		}
	}
	return nil
}

func (o *BlendOrder) checkShares(function string) error {
	switch o.SharesOf {
	case "":
		o.SharesOf = SharesOfMass
	case SharesOfMass, SharesOfPureAlcohol:
	default:
		return fmt.Errorf("%s: shares of %q; give SharesOfMass or SharesOfPureAlcohol", function, o.SharesOf)
	}
	least, most, open := 0.0, 0.0, false
	for _, l := range o.Lots {
		if err := checkShare(function, l.Name, l.LeastPct, l.MostPct); err != nil {
			return err
		}
		least += l.LeastPct
		most += l.MostPct
		open = open || l.MostPct == 0
	}
	if least > 100+1e-9 {
		return fmt.Errorf("%s: the least shares of all lots add up to %.4g %%; they may be 100 %% at most", function, least)
	}
	if !open && most < 100-1e-9 {
		return fmt.Errorf("%s: the greatest shares of all lots add up to %.4g %%; they must reach 100 %%", function, most)
	}
	names := map[string]bool{}
	for _, l := range o.Lots {
		names[l.Name] = true
	}
	for _, g := range o.Groups {
		if err := checkShare(function, "group "+g.Name, g.LeastPct, g.MostPct); err != nil {
			return err
		}
		in := map[string]bool{}
		for _, n := range g.Lots {
			if !names[n] || in[n] {
				return fmt.Errorf("%s: group %s names %q, which is no lot or stands there twice", function, g.Name, n)
			}
			in[n] = true
		}
		if len(g.Lots) == 0 || g.LeastPct == 0 && g.MostPct == 0 {
			return fmt.Errorf("%s: group %s limits nothing; give it lots and a share", function, g.Name)
		}
	}
	return nil
}

func checkShare(function, name string, leastPct, mostPct float64) error {
	if err := quantity.CheckRange(function, "the least share of "+name, leastPct, 0, 100, "per cent", ""); err != nil {
		return err
	}
	if err := quantity.CheckRange(function, "the greatest share of "+name, mostPct, 0, 100, "per cent", ""); err != nil {
		return err
	}
	if mostPct > 0 && leastPct > mostPct {
		return fmt.Errorf("%s: the share of %s is to be from %g to %g %%; the least must not be above the greatest", function, name, leastPct, mostPct)
	}
	return nil
}

func (o *BlendOrder) checkAim(function string) error {
	switch o.Aim {
	case "":
		o.Aim = Evenly
		for _, l := range o.Lots {
			if l.CostPerL > 0 {
				o.Aim = Cheapest
			}
		}
		if len(o.Profile) > 0 {
			o.Aim = Closest
		}
	case Closest:
		if len(o.Profile) == 0 {
			return fmt.Errorf("%s: the aim is to come closest to a profile and there is none; give Profile", function)
		}
	case Cheapest, Evenly:
	default:
		return fmt.Errorf("%s: the aim is %q; give Cheapest, Closest or Evenly", function, o.Aim)
	}
	return nil
}
