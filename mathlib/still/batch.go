package still

import (
	"slices"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/botanical"
	"swanneck/mathlib/quantity"
)

// Batch is a charge and the still it goes into. Pot and one place to end must be given: Until, UntilPot or Stop, or a Hold
// that can be held no longer. The zero value of every other field is the usual case: a plain pot still under one atmosphere.
type Batch struct {
	Pot alcoholometry.Spirit // the charge

	Plates             float64                // ideal plates above the pot, dimensionless, from 0; a fraction counts as such
	PlateEfficiencyPct float64                // Murphree's, of each plate; 100 if 0
	Reflux             float64                // returned over taken, by moles (dimensionless), from 0; the head's losses come on top
	Plan               []Phase                // what comes first; after the last phase the run goes on with Reflux or Hold
	Hold               alcoholometry.Strength // if set, the reflux is raised so that this strength keeps running
	MostReflux         float64                // where Hold gives up, dimensionless; 50 if 0
	Condenser          Returns                // of a partial condenser that makes the Reflux; unset: it condenses all and returns distillate
	P                  quantity.Pressure      // at the head, from 2 to 140 kPa
	PotDropKPa         float64                // by how much the pressure in the pot is higher, kPa
	Congeners          []Congener
	Botanicals         botanical.Recipe // plants in the pot: what they hold back and bring along is reckoned in
	Thumper            Thumper
	Steam              LiveSteam
	Heat               Heating
	Parrot             Parrot

	Until    alcoholometry.Strength // end when what runs falls to this strength
	UntilPot alcoholometry.Strength // end when the pot falls to this strength
	Stop     Mark                   // end there

	Steps       int          // of the reckoning, from 20 to 100000; 1000 if 0
	Model       string       // of ethanol and water, as equilibrium.UseModel names them; NRTL if empty
	Equilibrium *Equilibrium // of one's own, in place of the model's; temperatures, heats and traces stay the model's
}

// withHerbs puts the recipe of a batch into its pot: the charge is then what the plants leave of it, with the oil's
// compounds as congeners, each at the most that the plants may hold.
func (b Batch) withHerbs(function string) (Batch, botanical.Charge, error) {
	if len(b.Botanicals.Items) == 0 {
		return b, botanical.Charge{}, nil
	}
	c, err := botanical.NewCharge(b.Botanicals, b.Pot)
	if err != nil {
		return b, c, as(function, err)
	}
	b.Pot = c.Pot
	b.Congeners = slices.Clone(b.Congeners)
	for _, t := range c.Traces() {
		b.Congeners = append(b.Congeners, Congener{Name: t.Compound, MassG: t.MassG})
	}
	return b, c, nil
}

// Phase is a part of a run with a reflux of its own.
type Phase struct {
	Reflux float64                // returned over taken, by moles (dimensionless)
	Hold   alcoholometry.Strength // or the strength to hold
	Until  Mark                   // where the next phase begins
}

// Thumper is a second vessel, a doubler: the pot's vapour bubbles through it, warms it and boils it; plates and reflux stand
// above it. Without a charge there is none.
type Thumper struct {
	Charge  alcoholometry.Spirit
	Temp    quantity.Temperature // of the charge at the start
	LossPct float64              // share of the pot's vapour that the vessel's own loss of heat condenses, per cent
}

// LiveSteam is steam blown into the pot, saturated at the pot's pressure. Without it the pot is heated through its wall and
// no water is added.
type LiveSteam struct {
	Live      bool
	PerVapour float64 // moles of steam for each mole of vapour that leaves the pot, dimensionless; 1 if 0
}

// Heating is how the still is heated and cooled. Without PowerKW there are heats, but no times.
type Heating struct {
	PowerKW       float64              // of the heater; with live steam, of the boiler, from water of 25 °C
	EfficiencyPct float64              // share of it that comes into the still; 100 if 0
	PotLossKW     float64              // what the pot's wall loses; the unit is kW
	HeadLossKW    float64              // what head and neck lose (the unit is kW): vapour condenses there and falls back as reflux
	Charge        quantity.Temperature // of the charge at the start
	VesselKg      float64              // what is warmed along with the charge
	VesselKJKgK   float64              // its specific heat, kJ/(kg K); that of copper, 0.385, if 0
	Distillate    quantity.Temperature // as it leaves the condenser
	WaterIn       quantity.Temperature // cooling water; no flow is reckoned unless WaterOut is above it
	WaterOut      quantity.Temperature
}

// Parrot is the vessel in which the running spirit is read. What is in it mixes, so that a reading lags behind; cuts are
// made where the parrot is, and what is left in it at the end goes into the last cut.
type Parrot struct {
	HoldUpL float64              // what it holds, L
	Temp    quantity.Temperature // of the spirit in it, at which the alcoholometer is read
}
