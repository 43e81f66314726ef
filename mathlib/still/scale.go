package still

import (
	"fmt"
	"math"

	"swanneck/mathlib/quantity"
)

// Apparatus is the size of a still.
type Apparatus struct {
	ChargeL float64 // L
	PowerKW float64 // heating power that reaches the charge; the unit is kW
	NeckMM  float64 // inner diameter of the narrowest part that the vapour passes; the unit is mm
}

// Scaling is a run on a still of another size.
type Scaling struct {
	From, To Apparatus
	// SameTimeKW is the power of the larger still with which the run takes as long; the unit is kW.
	SameTimeKW float64
	// SameVapourKW is the power with which the vapour is as fast in the neck; the unit is kW.
	SameVapourKW float64
	// TimeRatio says how many times longer the run takes with the power given for the larger still, dimensionless.
	TimeRatio float64
	FromSpeed float64 // of the vapour in the neck; the unit is m/s
	ToSpeed   float64 // with the power given; the unit is m/s
	// FromLoad and ToLoad are speed times the root of density, the F-factor of columns; the unit is Pa^0.5.
	FromLoad, ToLoad float64
	SurfaceRatio     float64 // wall per litre of the larger over that of the smaller still, dimensionless
	Words            []string
}

// mostLoad is the F-factor that a plate bears before liquid is carried along; the unit is Pa^0.5. Common practice for sieve plates, no
// source.
const mostLoad = 2.0

// ScaleRun says what becomes of a run on a still of another size, and what does not scale. The stills are taken as of one
// shape. It fails with a *quantity.RangeError for sizes that are not above 0.
func ScaleRun(r Run, from, to Apparatus) (Scaling, error) {
	const fn = "still.ScaleRun"
	if len(r.Steps) == 0 {
		return Scaling{}, inputf(fn, "there is no run; Distil makes one")
	}
	for _, c := range []struct {
		what  string
		value float64
		unit  string
	}{{"charge", from.ChargeL, "L"}, {"charge to scale to", to.ChargeL, "L"}, {"power", from.PowerKW, "kW"}, {"power to scale to", to.PowerKW, "kW"},
		{"neck", from.NeckMM, "mm"}, {"neck to scale to", to.NeckMM, "mm"}} {
		if err := quantity.CheckRange(fn, c.what, c.value, math.SmallestNonzeroFloat64, math.Inf(1), c.unit, ""); err != nil {
			return Scaling{}, err
		}
	}
	litre := to.ChargeL / from.ChargeL
	area := math.Pow(to.NeckMM/from.NeckMM, 2)
	s := Scaling{From: from, To: to, SameTimeKW: from.PowerKW * litre, SameVapourKW: from.PowerKW * area}
	s.TimeRatio = s.SameTimeKW / to.PowerKW
	s.FromSpeed, s.FromLoad = vapourSpeed(r, from)
	s.ToSpeed, s.ToLoad = vapourSpeed(r, to)
	s.SurfaceRatio = math.Pow(litre, -1.0/3)
	add := func(format string, args ...any) { s.Words = append(s.Words, fmt.Sprintf(format, args...)) }
	add("plates, reflux, strengths and cuts by share of the charge stay as they are if the vapour is no faster and the reflux is set, not left to the head's losses")
	add("wall for each litre changes to %.2f of what it was: so do heat loss, the reflux that an uninsulated head makes by itself, and contact with copper", s.SurfaceRatio)
	add("the run takes %.2f times as long with %g kW: macerated and cooked aromas go with time, not with litres", s.TimeRatio, to.PowerKW)
	add("the heat through each square centimetre of the jacket changes to %.2f of what it was: scorching goes with it", to.PowerKW/from.PowerKW/math.Pow(litre, 2.0/3))
	add("foam stands as high as before while the pot is higher; lag and hold-up of parrot and condenser do not grow with the charge")
	if s.ToLoad > mostLoad {
		add("the vapour is too fast for plates: an F-factor of %.1f Pa^0.5, where about %.0f is borne (common practice, no source): liquid is carried along; give less power or a wider neck", s.ToLoad, mostLoad)
	}
	return s, nil
}

// vapourSpeed returns the speed of the vapour in the neck at the beginning of a run, m/s, and that times the root of its
// density, Pa^0.5. The vapour is ideal.
func vapourSpeed(r Run, a Apparatus) (speed, load float64) {
	const gas = 8.31446261815324 // J/(mol K); source: BIPM, SI Brochure, 9th edition (2019)
	first := r.Steps[0]
	x, tempK := first.Strength.MoleFraction(), first.Head.K()
	molS := 1000 * a.PowerKW / heats().latent(x, tempK)
	pPa := 1000 * r.P.KPa()
	area := math.Pi / 4 * a.NeckMM * a.NeckMM * 1e-6
	speed = molS * gas * tempK / pPa / area
	density := pPa * gramsOf(x, 1) / 1000 / (gas * tempK)
	return speed, speed * math.Sqrt(density)
}

// String gives the scaling in one line.
func (s Scaling) String() string {
	return fmt.Sprintf("from %g L to %g L: %s kW for the same time, %s kW for the same speed of the vapour; with %g kW %.2f times as long, vapour at %.2f m/s",
		s.From.ChargeL, s.To.ChargeL, threeDigits(s.SameTimeKW), threeDigits(s.SameVapourKW), s.To.PowerKW, s.TimeRatio, s.ToSpeed)
}

// Rows gives the scaling as a table, each row a label, a figure and a unit.
func (s Scaling) Rows() [][]string {
	rows := [][]string{
		{"power for the same time", threeDigits(s.SameTimeKW), "kW"},
		{"power for the same speed of the vapour", threeDigits(s.SameVapourKW), "kW"},
		{"time, with the power given", fmt.Sprintf("%.2f", s.TimeRatio), "times"},
		{"vapour in the neck of the smaller", fmt.Sprintf("%.2f", s.FromSpeed), "m/s"},
		{"vapour in the neck of the larger", fmt.Sprintf("%.2f", s.ToSpeed), "m/s"},
		{"F-factor of the larger", fmt.Sprintf("%.2f", s.ToLoad), "Pa^0.5"},
		{"wall per litre", fmt.Sprintf("%.2f", s.SurfaceRatio), "times"},
	}
	for _, w := range s.Words {
		rows = append(rows, []string{"note", w, ""})
	}
	return rows
}
