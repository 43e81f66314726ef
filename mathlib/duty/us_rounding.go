package duty

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// The files us_*.go reckon as 27 CFR part 30 does, with its rounding. The factors of its tables can be handed in as
// printed; those left 0 are reckoned by physics (package alcoholometry) to the tables' digits, and may differ from print
// in the last of them, because the tables rest on older densities. For a return hand in the printed ones.

// roundTo rounds to so many decimals, a half going up, as 27 CFR 30.64 does for tenths.
func roundTo(x float64, decimals int) float64 {
	scale := math.Pow10(decimals)
	return math.Floor(math.Round(x*scale*1e8)/1e8+0.5) / scale // eight digits first: 583.25 counts as a half
}

// cutTo cuts off after so many decimals, as the examples of 27 CFR 30.66 do.
func cutTo(x float64, decimals int) float64 {
	scale := math.Pow10(decimals)
	return math.Floor(math.Round(x*scale*1e8)/1e8) / scale
}

// proofStrength returns the proof rounded to a tenth, as 27 CFR 30.31 asks, and the strength of that.
func proofStrength(fn, what string, proof float64) (float64, alcoholometry.Strength, error) {
	if err := quantity.CheckRange(fn, what, proof, 0.1, 200, "US proof", ""); err != nil {
		return 0, alcoholometry.Strength{}, err
	}
	proof = alcoholometry.USRoundTenth(proof)
	s, err := alcoholometry.USProof(proof)
	if err != nil {
		return 0, alcoholometry.Strength{}, as(fn, err)
	}
	return proof, s, nil
}

// factorFrom returns the factor handed in, or the one reckoned and rounded to the table's decimals.
func factorFrom(fn, what string, given float64, decimals int, reckon func() (float64, error)) (float64, string, error) {
	if err := notBelow0(fn, what, given, ""); err != nil {
		return 0, "", err
	}
	if given > 0 {
		return given, "as given", nil
	}
	x, err := reckon()
	if err != nil {
		return 0, "", as(fn, err)
	}
	return roundTo(x, decimals), "reckoned", nil
}

// USGauge is a gauge by the arithmetic of 27 CFR part 30.
type USGauge struct {
	WineGal  float64  // gallons at 60 °F
	ProofGal float64  // proof gallons
	Steps    []string // the arithmetic, line by line
}

// String gives the gauge in one line.
func (g USGauge) String() string {
	return fmt.Sprintf("%s wine gallons, %s proof gallons", plain(g.WineGal), plain(g.ProofGal))
}

// Rows gives the gauge and its steps as a table.
func (g USGauge) Rows() [][]string {
	rows := [][]string{{"wine gallons at 60 °F", plain(g.WineGal), "gal"}, {"proof gallons", plain(g.ProofGal), "proof gal"}}
	for _, s := range g.Steps {
		rows = append(rows, []string{s, "", ""})
	}
	return rows
}

func (g *USGauge) step(format string, args ...any) {
	g.Steps = append(g.Steps, fmt.Sprintf(format, args...))
}
