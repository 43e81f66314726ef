package drills

import "math"

// Mistake is a wrong route that people take, and where it leads.
type Mistake struct {
	Name   string
	How    string  // what is wrong with it, one sentence
	Figure float64 // where it leads, in the unit of the problem
	spare  bool    // a problem without it is still a good one
}

// The usual mistakes, by name.
const (
	volumesAdded     = "volumes added"
	contraction      = "contraction forgotten"
	massForVolume    = "per cent by mass taken for per cent by volume"
	volumeForMass    = "per cent by volume taken for per cent by mass"
	litresForKg      = "litres taken for kilograms"
	kgForLitres      = "kilograms taken for litres"
	wrongDirection   = "temperature correction in the wrong direction"
	notCorrected     = "forgot to correct for temperature"
	strengthOnly     = "only the strength was corrected for temperature"
	volumeOnly       = "only the volume was corrected for temperature"
	averaged         = "strengths averaged without their amounts"
	wrongWayRound    = "strengths the wrong way round"
	perHundred       = "the table's figure for 100 L, not the one for the lot"
	finishedNotWater = "the finished volume given in place of the water"
	halfProof        = "per cent by volume taken for proof"
	nothingStaysBack = "forgot what stays behind"
	roundedUp        = "rounded up"
	decimalPoint     = "decimal point in the wrong place"
)

var how = map[string]string{
	volumesAdded:     "Spirit and water take up less room together than apart: add masses, not volumes.",
	contraction:      "The blend takes up less room than its parts: add the masses and divide by the density of the blend.",
	massForVolume:    "A strength by mass goes with kilograms; litres go with strengths by volume.",
	volumeForMass:    "A strength by volume goes with litres; kilograms go with strengths by mass.",
	litresForKg:      "A litre of spirit weighs less than a kilogram: find the mass from the table of weights first.",
	kgForLitres:      "A kilogram of spirit fills more than a litre: divide by the density of the blend.",
	wrongDirection:   "In warm spirit the instrument shows too much, and warm spirit fills more than it will at the reference temperature; in cold spirit it is the other way.",
	notCorrected:     "Reading and volume are those of the day; strength and duty are those of the reference temperature.",
	strengthOnly:     "The volume is that of the day as well: bring it to the reference temperature too.",
	volumeOnly:       "What the instrument shows is not the true strength unless it stands at the reference temperature.",
	averaged:         "The larger lot counts for more.",
	wrongWayRound:    "It takes fewer litres of the stronger spirit than of the weaker one.",
	perHundred:       "The table is made for 100 L: multiply by the litres of the lot over 100.",
	finishedNotWater: "That is what there will be; what goes in is less.",
	halfProof:        "US proof is twice the per cent by volume at 60 °F.",
	nothingStaysBack: "What stays in filter and hoses fills no bottle.",
	roundedUp:        "The last bottle would not be full.",
	decimalPoint:     "Ten times too much or too little: look at the decimal point.",
}

func mistake(name string, figure float64) Mistake {
	return Mistake{Name: name, How: how[name], Figure: figure}
}

func spare(name string, figure float64) Mistake {
	m := mistake(name, figure)
	m.spare = true
	return m
}

// apart says how many tolerances lie at least between a right answer and a wrong one.
const apart = 2

// told returns the wrong routes that can be told from the right one and from each other, and whether the problem is fit to
// be set: only spare ones may be missing.
func told(all []Mistake, answer, tolerance float64) (kept []Mistake, fit bool) {
	for _, m := range all {
		near := math.Abs(m.Figure-answer) <= apart*tolerance || m.Figure <= 0
		for _, k := range kept { // of two routes to one figure the first is kept
			near = near || math.Abs(k.Figure-m.Figure) <= tolerance
		}
		switch {
		case !near:
			kept = append(kept, m)
		case !m.spare:
			return nil, false
		}
	}
	return kept, true
}
