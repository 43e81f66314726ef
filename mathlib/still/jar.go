package still

import (
	"fmt"
	"math"
	"strings"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/mixing"
	"swanneck/mathlib/quantity"
)

// Jar is one of the vessels in which a small run was collected, as it was measured: a mass or a volume, and a reading, a
// strength or a density bottle.
type Jar struct {
	Name       string
	MassG      float64                // spirit as a balance shows it in air, without the jar; or
	VolumeML   float64                // its volume at Temp
	Temp       quantity.Temperature   // of the spirit when it was measured
	ReadingABV float64                // what an alcoholometer marked at 20 °C shows at Temp, % vol; or
	Strength   alcoholometry.Strength // the true strength; or
	Bottle     DensityBottle          // where there is too little for an alcoholometer
	Note       string                 // what the nose says
}

// DensityBottle is a small bottle that is filled to the brim, as a balance shows it in air: empty, with water, with spirit,
// both at Temp.
type DensityBottle struct {
	EmptyG  float64
	WaterG  float64 // the bottle with water in it, g
	SpiritG float64 // the bottle with spirit in it, g
	Temp    quantity.Temperature
}

// Strength returns the strength of the spirit in the bottle. It fails with a *quantity.RangeError for masses that make no
// spirit, and for a temperature outside 0 to 40 °C.
//
// Source: the usual density by pycnometer (from memory): ρ = 1.2 + (m_spirit/m_water)(ρ_water - 1.2) kg/m³, with the air's
// 1.2. Accuracy: with 25 mL and a balance that shows 0.01 g, 0.3 % vol.
func (b DensityBottle) Strength() (alcoholometry.Strength, error) {
	const fn = "still.DensityBottle.Strength"
	if !(b.EmptyG >= 0 && b.WaterG > b.EmptyG && b.SpiritG > b.EmptyG) || math.IsInf(b.WaterG, 0) || math.IsInf(b.SpiritG, 0) {
		return alcoholometry.Strength{}, inputf(fn, "the bottle weighs %g g empty, %g g with water and %g g with spirit; both fillings must weigh more than the empty bottle", b.EmptyG, b.WaterG, b.SpiritG)
	}
	if err := quantity.CheckRange(fn, "temperature", b.Temp.C(), 0, 40, "°C", "OIML R 22 (1975), water liquid"); err != nil {
		return alcoholometry.Strength{}, err
	}
	water, err := alcoholometry.DensityKgM3(alcoholometry.Water, b.Temp)
	if err != nil {
		return alcoholometry.Strength{}, as(fn, err)
	}
	const air = alcoholometry.AirKgM3
	s, err := alcoholometry.StrengthFromDensity(air+(b.SpiritG-b.EmptyG)/(b.WaterG-b.EmptyG)*(water-air), b.Temp)
	return s, as(fn, err)
}

func (j Jar) called(i int) string {
	if j.Name != "" {
		return "jar " + j.Name
	}
	return fmt.Sprintf("jar %d", i+1)
}

// spirit returns what is in the jar, at its temperature.
func (j Jar) spirit(function, called string) (alcoholometry.Spirit, error) {
	bottle := j.Bottle != DensityBottle{}
	ways := 0
	for _, given := range []bool{j.ReadingABV != 0, j.Strength.IsSet(), bottle} {
		if given {
			ways++
		}
	}
	if ways != 1 {
		return alcoholometry.Spirit{}, inputf(function, "%s has %d of ReadingABV, Strength and Bottle; give one (Strength: Water for no alcohol)", called, ways)
	}
	if (j.MassG != 0) == (j.VolumeML != 0) {
		return alcoholometry.Spirit{}, inputf(function, "%s has %g g and %g mL; give one of the two, above 0", called, j.MassG, j.VolumeML)
	}
	for _, c := range []struct {
		what, unit string
		value      float64
	}{{"mass of " + called, "g", j.MassG}, {"volume of " + called, "mL", j.VolumeML}} {
		if err := quantity.CheckRange(function, c.what, c.value, 0, math.Inf(1), c.unit, ""); err != nil {
			return alcoholometry.Spirit{}, err
		}
	}
	s := alcoholometry.Spirit{VolumeL: j.VolumeML / 1000, Strength: j.Strength, Temp: j.Temp}
	var err error
	switch {
	case bottle:
		s.Strength, err = j.Bottle.Strength()
	case j.ReadingABV != 0:
		s.Strength, err = alcoholometry.TrueStrength(j.ReadingABV, j.Temp)
	}
	if err != nil {
		return alcoholometry.Spirit{}, inJar(function, called, err)
	}
	if j.MassG != 0 {
		kg, err := alcoholometry.MassFromBalanceKg(j.MassG/1000, s.Strength, j.Temp)
		if err != nil {
			return alcoholometry.Spirit{}, inJar(function, called, err)
		}
		rho, err := alcoholometry.DensityKgM3(s.Strength, j.Temp)
		if err != nil {
			return alcoholometry.Spirit{}, inJar(function, called, err)
		}
		s.VolumeL = kg / rho * 1000
	}
	return s, nil
}

func inJar(function, called string, err error) error {
	_, rest, _ := strings.Cut(err.Error(), ": ")
	return inputf(function, "%s: %s", called, rest)
}

// Measured returns what is in the jar: true strength and volume at its temperature. It panics with an *InputError if a
// measurement is missing, there twice or impossible.
func (j Jar) Measured() alcoholometry.Spirit {
	s, err := j.spirit("still.Jar.Measured", j.called(0))
	if err != nil {
		panic(err)
	}
	return s
}

// String gives the jar in one line.
func (j Jar) String() string {
	s, err := j.spirit("", j.called(0))
	if err != nil {
		return j.called(0)
	}
	out := fmt.Sprintf("%s: %v", j.called(0), s)
	if j.Note != "" {
		out += ", " + j.Note
	}
	return out
}

// Blended is what several jars come to together.
type Blended struct {
	Jars   []string
	Spirit alcoholometry.Spirit // at the jars' temperature if they have one, else at 20 °C
	MassG  float64              // true mass
}

// String gives the blend in one line.
func (b Blended) String() string {
	return fmt.Sprintf("%s: %v with %s L of pure alcohol", strings.Join(b.Jars, " + "), b.Spirit, quantity.Figure(b.Spirit.PureL()))
}

// Rows gives the blend as a table, each row a label, a figure and a unit.
func (b Blended) Rows() [][]string {
	return append([][]string{{"jars", strings.Join(b.Jars, ", "), ""}}, b.Spirit.Rows()...)
}

// CombineJars returns what comes of putting jars together: masses and ethanol add up, the volume follows. It fails with an
// *InputError for a jar that is not measured, measured twice or named twice.
func CombineJars(jars ...Jar) (Blended, error) {
	const fn = "still.CombineJars"
	if len(jars) == 0 {
		return Blended{}, inputf(fn, "there are no jars; give at least one")
	}
	var b Blended
	var spirits []alcoholometry.Spirit
	seen := map[string]bool{}
	for i, j := range jars {
		called := j.called(i)
		if seen[called] {
			return Blended{}, inputf(fn, "%s is there twice; give each jar once", called)
		}
		seen[called] = true
		s, err := j.spirit(fn, called)
		if err != nil {
			return Blended{}, err
		}
		spirits = append(spirits, s)
		b.Jars = append(b.Jars, called)
		b.MassG += 1000 * s.MassKg()
	}
	var err error
	b.Spirit, err = mixing.Blend(spirits...)
	return b, as(fn, err)
}
