package mixing

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/interp"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// DipTable is the table of a tank: so many litres at such a dip. Between its rows a smooth curve runs that rises all the
// way and passes through every row; beyond them there is no answer.
type DipTable struct {
	Name      string
	DipsMM    []float64            // rising
	VolumesL  []float64            // the same number of them, rising; falling if Ullage
	Ullage    bool                 // the dip is taken from the top down to the liquid, so more of it is less
	ShellPerC float64              // cubic expansion of the tank, dimensionless for each °C, such as 50e-6 for stainless steel; 0 for none
	MarkedAt  quantity.Temperature // at which the table holds; 20 °C if unset. It matters with ShellPerC only
}

// DipL returns the litres in a tank at the dip dipMM, in mm, with the tank at t. What comes out is litres at t: put it into
// a Spirit with Temp t. It fails with a *quantity.RangeError for a dip outside the table, and for a table that does not rise.
//
// Source: the table is the user's; between rows the monotone curve of F. N. Fritsch and J. Butland, SIAM J. Sci. Stat.
// Comput. 5 (1984) 300–304. For a lying cylinder with a row for each tenth of its diameter it is within 0.35 % of the
// tank's volume, with one for each fiftieth within 0.03 %.
func DipL(table DipTable, dipMM float64, t quantity.Temperature) (float64, error) {
	return table.litres("mixing.DipL", dipMM, t)
}

func (d DipTable) litres(function string, dipMM float64, t quantity.Temperature) (float64, error) {
	curve, err := d.curve(function)
	if err != nil {
		return 0, err
	}
	first, last := d.DipsMM[0], d.DipsMM[len(d.DipsMM)-1]
	if err := quantity.CheckRange(function, "the dip", dipMM, first, last, "mm", d.source()); err != nil {
		return 0, err
	}
	grown, err := d.growth(function, t)
	if err != nil {
		return 0, err
	}
	return curve.Predict(dipMM) * grown, nil
}

// DipForMM returns the dip, in mm, at which the tank holds volumeL litres with the tank at t. It fails as DipL does, for
// litres outside the table.
//
// Source: as for DipL, of which it is the way back.
func DipForMM(table DipTable, volumeL float64, t quantity.Temperature) (float64, error) {
	const fn = "mixing.DipForMM"
	curve, err := table.curve(fn)
	if err != nil {
		return 0, err
	}
	grown, err := table.growth(fn, t)
	if err != nil {
		return 0, err
	}
	low, high := 0, len(table.VolumesL)-1
	least, most := math.Min(table.VolumesL[low], table.VolumesL[high]), math.Max(table.VolumesL[low], table.VolumesL[high])
	if err := quantity.CheckRange(fn, "the volume", volumeL, least*grown, most*grown, "L", table.source()); err != nil {
		return 0, err
	}
	want := volumeL / grown
	a, b := table.DipsMM[low], table.DipsMM[high]
	for range 200 {
		mid := a + (b-a)/2
		if mid <= a || mid >= b {
			break
		}
		if (curve.Predict(mid) < want) != table.Ullage {
			a = mid
		} else {
			b = mid
		}
	}
	return a + (b-a)/2, nil
}

// DipSpirit returns the spirit of strength s in a tank at t whose dip is dipMM, in mm. It fails as DipL does, and with an
// *alcoholometry.UnsetError.
//
// Source: as for DipL.
func DipSpirit(table DipTable, dipMM float64, s alcoholometry.Strength, t quantity.Temperature) (alcoholometry.Spirit, error) {
	const fn = "mixing.DipSpirit"
	v, err := table.litres(fn, dipMM, t)
	if err != nil {
		return alcoholometry.Spirit{}, err
	}
	spirit := alcoholometry.Spirit{VolumeL: v, Strength: s, Temp: t}
	if err := alcoholometry.CheckSpirit(fn, spirit); err != nil {
		return alcoholometry.Spirit{}, err
	}
	return spirit, nil
}

func (d DipTable) source() string {
	if d.Name == "" {
		return "the tank's table"
	}
	return "the table of " + d.Name
}

// curve returns the curve through the rows.
func (d DipTable) curve(function string) (*interp.FritschButland, error) {
	if len(d.DipsMM) != len(d.VolumesL) || len(d.DipsMM) < 2 {
		return nil, fmt.Errorf("%s: %s has %d dips and %d volumes; give as many of both, two or more", function, d.source(), len(d.DipsMM), len(d.VolumesL))
	}
	for i := range d.DipsMM {
		if err := quantity.CheckRange(function, fmt.Sprintf("dip %d", i+1), d.DipsMM[i], 0, math.Inf(1), "mm", d.source()); err != nil {
			return nil, err
		}
		if err := quantity.CheckRange(function, fmt.Sprintf("volume %d", i+1), d.VolumesL[i], 0, math.Inf(1), "L", d.source()); err != nil {
			return nil, err
		}
		if i == 0 {
			continue
		}
		if d.DipsMM[i] <= d.DipsMM[i-1] {
			return nil, fmt.Errorf("%s: in %s the dip %g mm follows %g mm; the dips must rise", function, d.source(), d.DipsMM[i], d.DipsMM[i-1])
		}
		if !d.Ullage && d.VolumesL[i] <= d.VolumesL[i-1] || d.Ullage && d.VolumesL[i] >= d.VolumesL[i-1] {
			way := "rise; set Ullage for dips taken from the top"
			if d.Ullage {
				way = "fall, as dips from the top (Ullage) go"
			}
			return nil, fmt.Errorf("%s: in %s %g L at %g mm follow %g L at %g mm; the volumes must %s", function, d.source(), d.VolumesL[i], d.DipsMM[i], d.VolumesL[i-1], d.DipsMM[i-1], way)
		}
	}
	var c interp.FritschButland
	if err := c.Fit(d.DipsMM, d.VolumesL); err != nil {
		return nil, fmt.Errorf("%s: %s: %w", function, d.source(), err)
	}
	return &c, nil
}

// growth returns by what the tank has grown since its table was made, dimensionless.
func (d DipTable) growth(function string, t quantity.Temperature) (float64, error) {
	if err := quantity.CheckRange(function, "the expansion of the tank", d.ShellPerC, 0, 1e-3, "for each °C", ""); err != nil {
		return 0, err
	}
	return 1 + d.ShellPerC*(t.C()-d.MarkedAt.C()), nil
}
