package sheet

import (
	"swanneck/mathlib/still"
)

// Column is a column that runs steadily.
type Column = still.Column

// ColumnFeed is what is fed into a column: LH or KmolH, Strength and VapourShare.
type ColumnFeed = still.Feed

// Staircase is McCabe and Thiele's construction for a column, with its rates and the corners for a chart.
type Staircase = still.Staircase

// RefluxPinch is the least reflux of a column and where its plates crowd.
type RefluxPinch = still.Pinch

// ColumnStages returns the stages of a column.
func ColumnStages(c Column) Staircase {
	v, err := still.ColumnStages(c)
	return must("ColumnStages", v, err)
}

// MinimumReflux returns the least reflux of a column and where its plates crowd.
func MinimumReflux(c Column) RefluxPinch {
	v, err := still.MinimumReflux(c)
	return must("MinimumReflux", v, err)
}

// FeedVapourShare returns the VapourShare of a liquid feed at t under the pressure p, dimensionless: below 0, because a cold
// feed condenses vapour.
func FeedVapourShare(s Strength, t Temperature, p Pressure) float64 {
	v, err := still.FeedVapourShare(s, t, p)
	return must("FeedVapourShare", v, err)
}
