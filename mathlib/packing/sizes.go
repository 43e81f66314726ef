package packing

import (
	"fmt"
	"math"
	"slices"
	"strings"
)

// Sizes is a list of nominal volumes that a law allows for spirits.
type Sizes struct {
	Name   string    // of the law
	Date   string    // as of when the list stands
	Source string    // where it was read
	ListML []float64 // the sizes, mL, rising
	FromML float64   // the list binds from this size on, mL
	ToML   float64   // up to this one, mL
}

// EUSizes returns the nominal volumes for spirit drinks in the European Union. From 100 to 2000 mL only these may be
// sold; below and above any size may.
//
// Source: Directive 2007/45/EC, annex, 1 and 2; the directive itself from memory, the list and its range read in the
// guidance of the United Kingdom on specified quantities, which keeps them.
func EUSizes() Sizes {
	return Sizes{"Directive 2007/45/EC, annex", "in force from 11 April 2009",
		"Directive 2007/45/EC (from memory); the same list in the guidance of the United Kingdom",
		[]float64{100, 200, 350, 500, 700, 1000, 1500, 1750, 2000}, 100, 2000}
}

// USSizes returns the standards of fill for distilled spirits in the United States, the same for cans and bottles since
// 10 January 2025. Containers of more than a gallon are bulk and not in this list.
//
// Source: 27 CFR 5.203 as amended by T.D. TTB-200 (90 FR 1868) and T.D. TTB-165 (29 December 2020): the sizes added by
// both were read in the notices of the authority, the older ones (1.75 and 1 L, 750, 375, 200, 100, 50 mL) in its
// conversion table.
func USSizes() Sizes {
	return Sizes{"27 CFR 5.203", "as of 10 January 2025 (T.D. TTB-200)", "notices and conversion table of the authority",
		[]float64{50, 100, 187, 200, 250, 331, 350, 355, 375, 475, 500, 570, 700, 710, 720, 750, 900, 945, 1000, 1500, 1750, 1800, 2000, 3000, 3750},
		0, gallonML}
}

// gallonML is the United States gallon, mL. Source: NIST Handbook 44 (2023), appendix C. That larger containers are bulk
// (27 CFR 5.2 and 1.10) is from memory.
const gallonML = 3785.411784

// Size says whether a nominal volume is one of a list.
type Size struct {
	NominalML float64 // mL
	Allowed   bool    // it is on the list, or outside the range in which the list binds
	List      Sizes
	Warning   string // empty if allowed; else what is wrong, the list and its date
}

// CheckSize says whether the nominal volume nominalL (L) is allowed by a list, EUSizes() or USSizes(). A size that is not
// allowed is a warning and no error: the list may have changed, and what is sold elsewhere may have another size. It
// fails for a nominal volume not above 0.
func CheckSize(nominalL float64, list Sizes) (Size, error) {
	const fn = "packing.CheckSize"
	if err := above0(fn, "the nominal volume", nominalL, "L"); err != nil {
		return Size{}, err
	}
	if len(list.ListML) == 0 {
		return Size{}, fmt.Errorf("%s: the list has no sizes; take EUSizes() or USSizes()", fn)
	}
	ml := 1000 * nominalL
	same := func(x float64) bool { return math.Abs(x-ml) < 1e-6*x }
	s := Size{NominalML: ml, List: list}
	below, above := ml < list.FromML*(1-1e-9), ml > list.ToML*(1+1e-9)
	s.Allowed = below || above || slices.ContainsFunc(list.ListML, same)
	if !s.Allowed {
		var sizes []string
		for _, x := range list.ListML {
			sizes = append(sizes, plain(x))
		}
		s.Warning = fmt.Sprintf("%s mL is no size of %s (%s), which has %s mL; check the text in force",
			plain(math.Round(ml*1000)/1000), list.Name, list.Date, strings.Join(sizes, ", "))
	}
	return s, nil
}
