package still

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// How full a pot may be with what foams and with what does not, per cent of its volume. Common practice, no source.
const fullFoamingPct, fullPct = 60.0, 75.0

// RoomForBoiling returns how much room a charge leaves in a pot of potL litres once it is hot, and whether that is enough; foams
// says that it holds herbs, fruit, lees or anything else that foams.
//
// Source: how full a pot may be is common practice, without source. A charge grows by about 4 % (water) to 8 % (ethanol)
// until it boils (steam tables and handbook densities, from memory; not measured for mixtures here).
func RoomForBoiling(charge alcoholometry.Spirit, potL float64, foams bool) (Hazard, error) {
	const fn = "still.RoomForBoiling"
	if err := alcoholometry.CheckSpirit(fn, charge); err != nil {
		return Hazard{}, err
	}
	if err := quantity.CheckRange(fn, "volume of the pot", potL, math.SmallestNonzeroFloat64, math.Inf(1), "L", ""); err != nil {
		return Hazard{}, err
	}
	hotL := charge.VolumeL * (1 + 0.04 + 0.04*charge.Strength.ABV()/100)
	full, most := 100*hotL/potL, fullPct
	if foams {
		most = fullFoamingPct
	}
	h := Hazard{What: "room in the pot", Figures: [][]string{
		{"charge when hot, about", quantity.Figure(hotL), "L"},
		{"pot full to, about", fmt.Sprintf("%.0f", full), "%"},
		{"usual limit (common practice, no source)", fmt.Sprintf("%.0f", most), "%"},
	}}
	if full > most {
		h.cautions = append(h.cautions, fmt.Sprintf("too full: charge at most %s L", quantity.Figure(charge.VolumeL*most/full)))
	}
	h.cautions = append(h.cautions,
		"foam rises into neck and condenser and blocks them: bring it up slowly and watch the first boil",
		localRules)
	return h, nil
}

// HeaterCover returns whether the heater in a pot stays covered to the end of a run: coverL is the charge that just covers
// it. It fails with a *quantity.RangeError.
func HeaterCover(r Run, coverL float64) (Hazard, error) {
	const fn = "still.HeaterCover"
	if len(r.Steps) == 0 {
		return Hazard{}, inputf(fn, "there is no run; Distil makes one")
	}
	if err := quantity.CheckRange(fn, "volume that covers the heater", coverL, 0, math.Inf(1), "L", ""); err != nil {
		return Hazard{}, err
	}
	h := Hazard{What: "heater", Figures: [][]string{
		{"left in the pot at the end", quantity.Figure(r.Pot.VolumeL), "L"},
		{"needed to cover the heater", quantity.Figure(coverL), "L"},
		{"over it at the end", quantity.Figure(r.Pot.VolumeL - coverL), "L"},
	}}
	if r.Pot.VolumeL <= coverL {
		h.cautions = append(h.cautions, "the heater falls dry before the run ends: end it earlier or charge more")
	}
	h.cautions = append(h.cautions,
		"a bare heater, or plant matter on one, glows and lights the vapour: keep herbs off it (a basket, a false bottom, a jacket) and have it cut off by level",
		"volumes are at 20 °C and without herbs, which hold back liquid of their own",
		localRules)
	return h, nil
}

// anetholeFreezesC is the temperature under which a distillate rich in anethole may set, °C. Source: melting point of
// trans-anethole, 21.3 °C, handbooks (from memory).
const anetholeFreezesC = 21.3

// Cautions lists what to mind in this run, a line each.
func (r Run) Cautions() []string {
	out := []string{"never close the outlet of a still, and vent it before the heat goes off: pressure bursts it, suction crushes it"}
	heat := r.batch.Heat
	if l := r.Heat.CoolingMostLH; l > 0 {
		out = append(out, fmt.Sprintf("the condenser needs at least %s L/h of water: without it vapour fills the room; have its failure cut off the heat", quantity.Figure(l)))
	} else {
		out = append(out, "have a failure of the cooling water cut off the heat: without it vapour fills the room")
	}
	if heat.PowerKW > 0 {
		last := r.Steps[len(r.Steps)-1]
		x, tempK := last.Strength.MoleFraction(), last.Head.K()
		kgH := 3600 * heat.PowerKW * percent(heat.EfficiencyPct) / heats().latent(x, tempK) * gramsOf(x, 1) // kW over J/mol times g/mol
		out = append(out, fmt.Sprintf("up to %s kg/h of vapour go through the head; all of it is in the room if the condenser fails (VentilationFor)", quantity.Figure(kgH)))
	}
	for _, f := range r.Congeners {
		switch {
		case f.Name == "trans-anethole" && f.DistillateG > 0 && (heat.Distillate.C() < anetholeFreezesC || heat.WaterIn.C() < anetholeFreezesC):
			out = append(out, fmt.Sprintf("anethole sets near %.0f °C: a condenser colder than that can clog and put the still under pressure", anetholeFreezesC))
		case f.Name == "methanol" && f.ChargeG > 0:
			out = append(out, "methanol comes over from the first drop to the last: no cut removes it")
		}
	}
	if r.Charge.Strength.ABV() > 40 {
		out = append(out, fmt.Sprintf("the charge of %v burns by itself: fill and empty the pot cold and earthed", r.Charge.Strength))
	}
	return append(out,
		fmt.Sprintf("%s L are left in the pot (at 20 °C): a heater that needs more falls dry (HeaterCover)", quantity.Figure(r.Pot.VolumeL)),
		localRules)
}
