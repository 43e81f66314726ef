package still

import (
	"fmt"
	"strings"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/botanical"
	"swanneck/mathlib/quantity"
)

// Run is a batch as it was distilled. Litres are at 20 °C.
type Run struct {
	Charge     alcoholometry.Spirit // what was in the pot
	Distillate alcoholometry.Spirit // all that came over
	Pot        alcoholometry.Spirit // what is left in the pot
	Thumper    alcoholometry.Spirit // what is left in the thumper; without a strength if there is none
	Congeners  []Fate
	Heat       HeatBalance
	Steps      []Step
	P          quantity.Pressure // at the head
	Herbs      botanical.Charge  // the recipe in the charge; without items if there was none
	Ended      string            // why the run ended
	Model      string            // of ethanol and water

	batch Batch
	notes []string
	out   outflow
}

// Step is a moment of a run.
type Step struct {
	CollectedL  float64                // that have come over, in one vessel at 20 °C
	Strength    alcoholometry.Strength // running from the condenser
	Collected   alcoholometry.Strength // of all that has come over
	Head        quantity.Temperature   // of the vapour at the head
	Pot         quantity.Temperature   // of the pot
	PotStrength alcoholometry.Strength
	PotKg       float64
	Reflux      float64                // returned over taken, by moles (dimensionless), with the head's own
	Min         float64                // minutes since the heat was put on; 0 if the power is not given
	HeatKJ      float64                // put in since the beginning
	CondenserKJ float64                // into the cooling water since the beginning
	CoolingLH   float64                // cooling water, L/h; 0 if power or temperatures of the water are not given
	Parrot      alcoholometry.Strength // in the parrot, true; unset while it fills
	ParrotTemp  quantity.Temperature
}

// ReadingABV returns what an alcoholometer shows in the parrot, in per cent by volume on its scale, at the parrot's
// temperature: not the true strength unless that is 20 °C. It panics with an *alcoholometry.UnsetError while the parrot
// fills, and with a *quantity.RangeError where an instrument shows nothing.
func (s Step) ReadingABV() float64 {
	v, err := alcoholometry.Reading(s.Parrot, s.ParrotTemp)
	if err != nil {
		panic(as("still.Step.ReadingABV", err))
	}
	return v
}

// String gives the moment in one line.
func (s Step) String() string {
	return fmt.Sprintf("%s L over, %v running, head %v, pot %v", quantity.Figure(s.CollectedL), s.Strength, s.Head, s.Pot)
}

// Fate says where a congener went, in grams.
type Fate struct {
	Name        string
	ChargeG     float64
	DistillateG float64
	PotG        float64
	ThumperG    float64
	Notes       []string // what is estimated, extrapolated or from memory behind its volatility
}

// OverPct returns the share of the charge's compound that came over, per cent; 0 if there was none.
func (f Fate) OverPct() float64 {
	if f.ChargeG == 0 {
		return 0
	}
	return 100 * f.DistillateG / f.ChargeG
}

// String gives the fate in one line, with what there is to say of the numbers behind it.
func (f Fate) String() string {
	s := fmt.Sprintf("%s: %s g of %s g come over (%.1f %%)", f.Name, grams(f.DistillateG), grams(f.ChargeG), f.OverPct())
	if len(f.Notes) > 0 {
		s += " (" + strings.Join(f.Notes, "; ") + ")"
	}
	return s
}

// YieldPct returns the share of the charge's alcohol (pot and thumper) that came over, per cent.
func (r Run) YieldPct() float64 { return 100 * r.Distillate.PureL() / r.chargeL() }

// chargeL returns the pure alcohol of pot and thumper, L.
func (r Run) chargeL() float64 {
	l := r.Charge.PureL()
	if t := r.batch.Thumper.Charge; t.Strength.IsSet() {
		l += t.PureL()
	}
	return l
}

// String gives the run in one line.
func (r Run) String() string {
	return fmt.Sprintf("%v gives %v with %s L of pure alcohol (%.1f %% of the charge's), %v left in the pot; %s",
		r.Charge, r.Distillate, quantity.Figure(r.Distillate.PureL()), r.YieldPct(), r.Pot, r.Ended)
}

// Rows gives the run as a table, each row a label, a figure and a unit.
func (r Run) Rows() [][]string {
	first, last := r.Steps[0], r.Steps[len(r.Steps)-1]
	rows := [][]string{
		{"charge", quantity.Figure(r.Charge.VolumeL), "L"},
		{"its strength", fmt.Sprintf("%.2f", r.Charge.Strength.ABV()), "% vol"},
		{"distillate", quantity.Figure(r.Distillate.VolumeL), "L"},
		{"its strength", fmt.Sprintf("%.2f", r.Distillate.Strength.ABV()), "% vol"},
		{"pure alcohol in it", quantity.Figure(r.Distillate.PureL()), "L"},
		{"share of the charge's alcohol", fmt.Sprintf("%.1f", r.YieldPct()), "%"},
		{"left in the pot", quantity.Figure(r.Pot.VolumeL), "L"},
		{"its strength", fmt.Sprintf("%.2f", r.Pot.Strength.ABV()), "% vol"},
		{"running at the beginning", fmt.Sprintf("%.1f", first.Strength.ABV()), "% vol"},
		{"running at the end", fmt.Sprintf("%.1f", last.Strength.ABV()), "% vol"},
		{"head at the beginning", fmt.Sprintf("%.1f", first.Head.C()), "°C"},
		{"head at the end", fmt.Sprintf("%.1f", last.Head.C()), "°C"},
	}
	rows = append(rows, r.Heat.Rows()...)
	for _, f := range r.Congeners {
		rows = append(rows, []string{f.Name + " that comes over", grams(f.DistillateG), "g"}, []string{f.Name + ", share of the charge's", fmt.Sprintf("%.1f", f.OverPct()), "%"})
	}
	rows = append(rows, []string{"ended because", r.Ended, ""}, []string{"model", r.Model, ""})
	for _, n := range r.notes {
		rows = append(rows, []string{"note", n, ""})
	}
	return rows
}

// Notes lists what there is to say of the run's figures: what is estimated or extrapolated, an oil layer, too much of a
// trace.
func (r Run) Notes() []string { return append([]string(nil), r.notes...) }

// Congener returns where a compound went. It panics with a *compound.UnknownError or a *NotCarriedError.
func (r Run) Congener(name string) Fate {
	_, k, err := carried("still.Run.Congener", name, r.names())
	if err != nil {
		panic(err)
	}
	return r.Congeners[k]
}

func (r Run) names() []string {
	out := make([]string, len(r.Congeners))
	for k, f := range r.Congeners {
		out[k] = f.Name
	}
	return out
}

// grams prints a mass, g, to three digits where it is small.
func grams(g float64) string {
	if g > 0 && g < 0.9995 {
		return threeDigits(g)
	}
	return quantity.Figure(g)
}
