package sheet

import (
	"swanneck/mathlib/mixing"
)

// BlendLot is a spirit, or water, that may go into a blend.
type BlendLot = mixing.Lot

// BlendLimit says how much of a compound or marker a blend may hold.
type BlendLimit = mixing.BlendLimit

// LotGroup limits the share of some lots together.
type LotGroup = mixing.LotGroup

// BlendMarker is what a blend should hold of a compound or marker.
type BlendMarker = mixing.BlendMarker

// BlendAim says which blend is wanted: Cheapest, Closest or Evenly.
type BlendAim = mixing.BlendAim

// ShareBasis says what shares are counted on: SharesOfMass or SharesOfPureAlcohol.
type ShareBasis = mixing.ShareBasis

// BlendOrder says what to blend from which lots, within which limits.
type BlendOrder = mixing.BlendOrder

// BlendPart is what a blend takes of a lot.
type BlendPart = mixing.BlendPart

// BlendFigure is what a blend holds of a compound or marker.
type BlendFigure = mixing.BlendFigure

// BlendPlan is a blend: its parts, what it holds and costs, and the limits on which it stands.
type BlendPlan = mixing.BlendPlan

// Blockage says whether a blend can be made, and which limits stand in its way.
type Blockage = mixing.Blockage

// The aims of a blend, and what shares are counted on.
const (
	Cheapest            = mixing.Cheapest            // the least cost
	Closest             = mixing.Closest             // the least deviation from the profile
	Evenly              = mixing.Evenly              // the same part of each lot
	SharesOfMass        = mixing.SharesOfMass        // shares are per cent by mass
	SharesOfPureAlcohol = mixing.SharesOfPureAlcohol // shares are per cent of the pure alcohol
)

// BlendLots returns how much of each lot makes the wanted blend, within all limits.
func BlendLots(o BlendOrder) BlendPlan {
	v, err := mixing.BlendLots(o)
	return must("BlendLots", v, err)
}

// WhatBlocks says whether there is such a blend and, if there is none, which limits collide and what each would have to be.
func WhatBlocks(o BlendOrder) Blockage {
	v, err := mixing.WhatBlocks(o)
	return must("WhatBlocks", v, err)
}
