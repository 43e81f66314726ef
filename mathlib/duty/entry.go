package duty

import (
	"fmt"
	"strings"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Kind says what an entry of the ledger is.
type Kind string

// The kinds of entry.
const (
	Opening   Kind = "opening"   // stock found at the beginning of the period
	Made      Kind = "made"      // distilled, or made otherwise
	Received  Kind = "received"  // from elsewhere
	Sent      Kind = "sent"      // to elsewhere or to the market
	Sample    Kind = "sample"    // drawn and not put back
	Destroyed Kind = "destroyed" // under supervision, or declared
	Closing   Kind = "closing"   // stock found at the end of the period
)

// Kinds returns the kinds of entry.
func Kinds() []Kind { return []Kind{Opening, Made, Received, Sent, Sample, Destroyed, Closing} }

// Entry is a line of the ledger. Its amount is given in one of three ways: a volume with strength and temperature, a
// weight with strength, or litres of pure alcohol. An opening or closing of nothing has none.
type Entry struct {
	Date     Date
	Kind     Kind
	Lot      string
	VolumeL  float64                // as measured at Temp, L
	Strength alcoholometry.Strength // for a volume or a weight
	Temp     quantity.Temperature   // of the spirit; 20 °C if unset
	WeightKg float64                // as the balance shows it in air, without the vessel, kg
	PureL    float64                // pure alcohol at 20 °C, L
	Line     int                    // of the ledger, in messages; its place in the list if 0
}

// PureLOf returns the litres of pure alcohol at 20 °C in an entry. A weight is brought to the true mass first (the air
// lifts spirit by about 0.11 per cent on the balance). It fails if the amount is given in more than one way or, unless
// the entry is an opening or a closing, in none; for a volume or a weight without a strength; and with a
// *quantity.RangeError for negative amounts.
//
// Source: alcoholometry: OIML R 22 (1975), OIML D 28 (2004).
func PureLOf(e Entry) (float64, error) {
	return pureLOf("duty.PureLOf", e)
}

func pureLOf(fn string, e Entry) (float64, error) {
	ways := 0
	for _, c := range []struct {
		what, unit string
		x          float64
	}{{"the volume", "L", e.VolumeL}, {"the weight", "kg", e.WeightKg}, {"the pure alcohol", "L", e.PureL}} {
		if err := notBelow0(fn, c.what, c.x, c.unit); err != nil {
			return 0, err
		}
		if c.x > 0 {
			ways++
		}
	}
	switch {
	case ways > 1:
		return 0, fmt.Errorf("%s: the amount is given in %d ways; give a volume, a weight or litres of pure alcohol", fn, ways)
	case ways == 0 && (e.Kind == Opening || e.Kind == Closing):
		return 0, nil
	case ways == 0:
		return 0, fmt.Errorf("%s: there is no amount; give a volume, a weight or litres of pure alcohol", fn)
	case e.PureL > 0:
		return e.PureL, nil
	}
	spirit := alcoholometry.Spirit{VolumeL: e.VolumeL, Strength: e.Strength, Temp: e.Temp}
	if err := alcoholometry.CheckSpirit(fn, spirit); err != nil {
		return 0, err
	}
	if e.VolumeL > 0 {
		return spirit.PureL(), nil
	}
	kg, err := alcoholometry.MassFromBalanceKg(e.WeightKg, e.Strength, e.Temp)
	if err != nil {
		return 0, as(fn, err)
	}
	weighed, err := alcoholometry.Weighed(kg, e.Strength)
	if err != nil {
		return 0, as(fn, err)
	}
	return weighed.PureL(), nil
}

// check returns an error unless the entry says when, what and of which lot.
func (e Entry) check(fn string) error {
	known := false
	var names []string
	for _, k := range Kinds() {
		known = known || k == e.Kind
		names = append(names, string(k))
	}
	switch {
	case !e.Date.IsSet():
		return fmt.Errorf("%s: there is no date; give one, such as ParseDate(\"2026-03-31\")", fn)
	case !known:
		return fmt.Errorf("%s: %q is no kind of entry; give %s", fn, string(e.Kind), strings.Join(names, ", "))
	case e.Lot == "":
		return fmt.Errorf("%s: there is no lot; name one, or give all the same name", fn)
	}
	return nil
}

// in reports whether the entry brings spirit into the lot.
func (k Kind) in() bool { return k == Made || k == Received }
