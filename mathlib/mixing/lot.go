package mixing

import (
	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Lot is a spirit, or water, that may go into a blend.
type Lot struct {
	Name     string
	Spirit   alcoholometry.Spirit // what there is of it, as measured
	CostPerL float64              // money for a litre as measured, in the unit of the order's currency
	// Holds says how much there is of what the order limits, by name: congeners, aroma markers. A lot without alcohol need
	// not name what it has not; any other lot must name it, with 0 if it has none.
	Holds    map[string]quantity.Concentration
	LeastL   float64 // that must go in, L as measured
	LeastPct float64 // its least share of the blend, per cent of what SharesOf says
	MostPct  float64 // its greatest share, per cent likewise; 0 for no limit
}

// BlendLimit says how much of a compound or marker the blend may hold.
type BlendLimit struct {
	Name  string                 // as in Lot.Holds
	Least quantity.Concentration // unset for no limit
	Most  quantity.Concentration // unset for no limit; counted on the same thing as Least
}

// LotGroup limits the share of some lots together, such as of one grain, one year or one still.
type LotGroup struct {
	Name     string
	Lots     []string // their names
	LeastPct float64  // per cent of what SharesOf says
	MostPct  float64  // likewise; 0 for no limit
}

// BlendMarker is what a blend should hold of a compound or marker.
type BlendMarker struct {
	Name   string
	Wanted quantity.Concentration // above 0
	Weight float64                // what a deviation of 1 % counts beside those of the others, dimensionless; 1 if 0
}

// BlendAim says which of the blends that keep all limits is wanted.
type BlendAim string

// The aims of a blend.
const (
	Cheapest BlendAim = "cheapest" // the least cost
	Closest  BlendAim = "closest"  // the least sum of deviations from the profile; then the least cost
	Evenly   BlendAim = "evenly"   // the same part of each lot, with as few exceptions as may be; then the least cost
)

// ShareBasis says what a share of a blend is counted on.
type ShareBasis string

// What shares are counted on.
const (
	SharesOfMass        ShareBasis = "mass"
	SharesOfPureAlcohol ShareBasis = "pure alcohol"
)

// BlendOrder says what to blend from which lots.
type BlendOrder struct {
	Lots    []Lot
	VolumeL float64              // wanted, L at Temp
	AsMuch  bool                 // instead of VolumeL: as much as the lots and the tank allow
	Temp    quantity.Temperature // at which VolumeL and TankL are measured; 20 °C if unset
	TankL   float64              // the room in the tank, L at Temp; 0 for no limit

	Strength   alcoholometry.Strength // of the blend
	StrengthTo alcoholometry.Strength // if set, any strength from Strength to this one will do

	Limits   []BlendLimit
	Groups   []LotGroup
	SharesOf ShareBasis // SharesOfMass if empty
	Profile  []BlendMarker
	Aim      BlendAim // if empty: Closest with a profile, else Cheapest with costs, else Evenly
	Currency string   // three letters of ISO 4217, such as "EUR"; needed with costs
}

// BlendPart is what a blend takes of a lot.
type BlendPart struct {
	Lot      string
	VolumeL  float64 // as the lot was measured, L
	MassKg   float64 // true mass, kg
	ScaleKg  float64 // as scales show it, kg
	PureL    float64 // pure alcohol, L at 20 °C
	SharePct float64 // of the blend, per cent of what SharesOf says
	LeftL    float64 // what stays of the lot, as measured, L
	Cost     float64 // money in the unit of the currency
}

// BlendFigure is what the blend holds of a compound or marker that the order names.
type BlendFigure struct {
	Name   string
	Amount quantity.Concentration
	Limit  BlendLimit             // of that name, if there is one
	Wanted quantity.Concentration // of the profile, if it has the name
}

// BlendPlan is a blend.
type BlendPlan struct {
	Order    BlendOrder
	Parts    []BlendPart // the lots that go in, in the order given
	Result   alcoholometry.Spirit
	MassKg   float64 // true mass, kg
	PureL    float64 // pure alcohol, L at 20 °C
	Cost     float64 // money in the unit of the currency
	CostPerL float64 // the same for a litre of the blend at Temp
	Figures  []BlendFigure
	AtLimit  []string // the limits that the blend stands on: to move one of them would give a better one
	// DeviationPct is the mean deviation from the profile, in per cent of what is wanted, weighed; 0 without a profile.
	DeviationPct float64
	WarmingC     float64              // by how much the heat of mixing alone warms the tank, °C (an estimate, ±10 %)
	MixedAt      quantity.Temperature // of the tank just after mixing, if no heat gets out
}
