package botanical

import (
	"fmt"
	"math"
	"slices"

	"swanneck/mathlib/quantity"
)

// Room is how much of a pot or another vessel a charge takes up. It is reckoned cold, at 20 °C, without foam.
type Room struct {
	VesselL float64
	LevelL  Range // liquid with the dry plant in it, L
	HeapL   Range // the wet heap of plants, L; 0 if no plant is in it
	FillPct Range // the greater of both, per cent of the vessel
	Notes   []string
}

// fullPct is the fill from which foam is to be feared, per cent of the pot. Common practice, no source.
const fullPct = 75

// RoomFor returns how high a charge stands in a pot of potL litres: by the level of the liquid with the plants in it, and
// by the wet heap that the plants make, whichever is more. A kilogram of dry plant raises the level by 0.667 L (from memory)
// unless its DisplacedLKg was measured; in the heap it holds what it does when drained (estimate), and the heap has 20 to 40 %
// of voids (estimate).
//
// It fails for a pot that is not above 0 L, for an infusion, and if the charge does not go into the pot.
func RoomFor(c Charge, potL float64) (Room, error) {
	const fn = "botanical.RoomFor"
	if len(c.Items) == 0 || c.infusion() {
		return Room{}, inputf(fn, "nothing of this charge goes into a pot")
	}
	return room(fn, c, "pot", potL, c.Pot.VolumeL, OnTheHerb)
}

// RoomToSteep returns how high the plants that are taken out before the run, or infused, stand with their liquid in a vessel
// of vesselL litres, as RoomFor does. It fails if there are none.
func RoomToSteep(c Charge, vesselL float64) (Room, error) {
	const fn = "botanical.RoomToSteep"
	if c.RetainedL.High == 0 {
		return Room{}, inputf(fn, "no plant of this charge is taken out; see RoomFor")
	}
	return room(fn, c, "vessel", vesselL, c.Steeped.VolumeL, Strained, Infused)
}

func room(fn string, c Charge, vessel string, potL, liquidL float64, uses ...Use) (Room, error) {
	if !(potL > 0) || math.IsInf(potL, 0) {
		return Room{}, inputf(fn, "the volume of the %s is %g L; give one above 0 L", vessel, potL)
	}
	r := Room{VesselL: potL, LevelL: Exactly(liquidL), HeapL: Exactly(0)}
	void := figureOf("void of a wet heap").Range
	for i, item := range c.Items {
		if !slices.Contains(uses, item.Use) {
			continue
		}
		solid := item.displace.scaled(item.DryG / 1000)
		r.LevelL = r.LevelL.plus(solid)
		wet := c.Recipe.Items[i].RetainedLKg
		if !wet.IsSet() {
			wet = figureOf("retained when drained").Range
		}
		wet = solid.plus(wet.scaled(item.DryG / 1000))
		r.HeapL = r.HeapL.plus(Between(wet.Low/(1-void.Low), wet.High/(1-void.High)))
	}
	r.FillPct = Between(100*math.Max(r.LevelL.Low, r.HeapL.Low)/potL, 100*math.Max(r.LevelL.High, r.HeapL.High)/potL)
	if r.FillPct.Low > 100 {
		return Room{}, inputf(fn, "the charge takes up %v L at least, and the %s holds %s L; charge less", threeDigits(r.FillPct.Low*potL/100), vessel, quantity.Figure(potL))
	}
	if r.FillPct.High > fullPct && vessel == "pot" {
		r.Notes = append(r.Notes, sprintf("more than %d %% of the pot may be full: it may foam over (common practice, no source)", fullPct))
	}
	if r.HeapL.High > r.LevelL.Low {
		r.Notes = append(r.Notes, "the wet plants may stand out of the liquid: in a pot they are steamed there and may scorch against the wall, in a jar they spoil")
	}
	return r, nil
}

// String gives the room in one line.
func (r Room) String() string {
	return fmt.Sprintf("level %v L, wet heap %v L (estimate): %v %% of %s L", r.LevelL, r.HeapL, r.FillPct, quantity.Figure(r.VesselL))
}

// Rows gives the room as a table, each row a label, a figure and a unit.
func (r Room) Rows() [][]string {
	rows := [][]string{
		{"level of the liquid with the plants in it (estimate unless measured)", r.LevelL.String(), "L"},
		{"wet heap of the plants (estimate)", r.HeapL.String(), "L"},
		{"of the vessel", r.FillPct.String(), "%"},
	}
	for _, n := range r.Notes {
		rows = append(rows, []string{"note", n, ""})
	}
	return rows
}
