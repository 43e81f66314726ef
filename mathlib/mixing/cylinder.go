package mixing

import (
	"fmt"
	"math"

	"swanneck/mathlib/quantity"
)

// Cylinder is a tank of even width with flat ends. Dished ends, slopes, coils and agitators are not in it: have the tank
// measured and use its table where litres are paid for.
type Cylinder struct {
	DiameterMM float64 // inside, mm (a length, not a unit of volume)
	LengthMM   float64 // inside: the height of a standing tank, the length of a lying one, mm (a length, not a unit of volume)
	Lying      bool
}

// CylinderL returns the litres in the tank when the liquid stands dipMM high, in mm. It fails for sizes that are not above
// 0 and for a dip above the tank.
//
// Source: geometry. Lying, with r the radius and h the dip: L (r² acos((r-h)/r) - (r-h) √(2rh - h²)).
func CylinderL(c Cylinder, dipMM float64) (float64, error) {
	const fn = "mixing.CylinderL"
	if err := c.check(fn, dipMM); err != nil {
		return 0, err
	}
	return c.litres(dipMM), nil
}

func (c Cylinder) check(function string, dipMM float64) error {
	if err := quantity.CheckRange(function, "the diameter", c.DiameterMM, 0, math.Inf(1), "mm", ""); err != nil {
		return err
	}
	if err := quantity.CheckRange(function, "the length", c.LengthMM, 0, math.Inf(1), "mm", ""); err != nil {
		return err
	}
	if c.DiameterMM == 0 || c.LengthMM == 0 {
		return fmt.Errorf("%s: the tank is %g mm wide and %g mm long; give both above 0 mm", function, c.DiameterMM, c.LengthMM)
	}
	return quantity.CheckRange(function, "the dip", dipMM, 0, c.high(), "mm", "the tank's height")
}

func (c Cylinder) high() float64 {
	if c.Lying {
		return c.DiameterMM
	}
	return c.LengthMM
}

func (c Cylinder) litres(dipMM float64) float64 {
	const mm3L = 1e-6 // L in a cubic millimetre
	r := c.DiameterMM / 2
	if !c.Lying {
		return math.Pi * r * r * dipMM * mm3L
	}
	up := r - dipMM
	return c.LengthMM * (r*r*math.Acos(up/r) - up*math.Sqrt(math.Max(dipMM*(2*r-dipMM), 0))) * mm3L
}

// CylinderTable returns the dip table of the tank with a row for each stepMM millimetres and one for the full tank. It
// fails as CylinderL does, and for a step that is not above 0 or makes more than 100,000 rows.
//
// Source: as for CylinderL.
func CylinderTable(c Cylinder, stepMM float64) (DipTable, error) {
	const fn = "mixing.CylinderTable"
	if err := c.check(fn, 0); err != nil {
		return DipTable{}, err
	}
	if err := quantity.CheckRange(fn, "the step", stepMM, c.high()/1e5, c.high(), "mm", "100,000 rows at most"); err != nil {
		return DipTable{}, err
	}
	var t DipTable
	for k := 0.0; k*stepMM < c.high()*(1-1e-12); k++ {
		t.DipsMM = append(t.DipsMM, k*stepMM)
		t.VolumesL = append(t.VolumesL, c.litres(k*stepMM))
	}
	t.DipsMM, t.VolumesL = append(t.DipsMM, c.high()), append(t.VolumesL, c.litres(c.high()))
	return t, nil
}

// String gives the tank in one line.
func (c Cylinder) String() string {
	way := "standing"
	if c.Lying {
		way = "lying"
	}
	return fmt.Sprintf("%s cylinder %g mm wide, %g mm long", way, c.DiameterMM, c.LengthMM)
}

// String gives the table in one line.
func (d DipTable) String() string {
	if len(d.DipsMM) == 0 || len(d.VolumesL) == 0 {
		return d.source() + ", empty"
	}
	return fmt.Sprintf("%s: %d rows from %g mm (%s L) to %g mm (%s L)", d.source(), len(d.DipsMM), d.DipsMM[0], quantity.Figure(d.VolumesL[0]),
		d.DipsMM[len(d.DipsMM)-1], quantity.Figure(d.VolumesL[len(d.VolumesL)-1]))
}

// Rows gives the table, a row a dip.
func (d DipTable) Rows() [][]string {
	rows := [][]string{{"dip, mm", "L"}}
	for i := range min(len(d.DipsMM), len(d.VolumesL)) {
		rows = append(rows, []string{fmt.Sprintf("%g", d.DipsMM[i]), quantity.Figure(d.VolumesL[i])})
	}
	return rows
}
