package still_test

import (
	"math"
	"strings"
	"testing"

	"swanneck/mathlib/still"
)

// oilRun distils a little of a large charge, so that the spirit in it hardly changes, with massG of each oil.
func oilRun(t *testing.T, massG float64, names ...string) still.Run {
	t.Helper()
	b := still.Batch{Pot: litres(1000, 0.08), Stop: still.AtVolume(2), Steps: 50}
	for _, n := range names {
		b.Congeners = append(b.Congeners, still.Congener{Name: n, MassG: massG})
	}
	return the(still.Distil(b))
}

// Oil that is dissolved comes over in proportion to how much there is; from where it lies on the spirit as a layer, more of it
// changes nothing, because a layer gives off what pure oil does.
func TestAnOilLayerDoesNotHurry(t *testing.T) {
	over := func(g float64) float64 { return oilRun(t, g, "limonene").Congener("limonene").DistillateG }
	if a, b := over(2), over(1); math.Abs(a/b-2) > 1e-6 {
		t.Errorf("dissolved: 2 g give %.6g g and 1 g %.6g", a, b)
	}
	little, much := over(20000), over(40000)
	if math.Abs(much/little-1) > 0.02 {
		t.Errorf("as a layer: 20 kg give %.6g g and 40 kg %.6g", little, much)
	}
	if dissolved := 20000 * over(1); dissolved < 10*little {
		t.Errorf("a layer gives %.4g g, as if dissolved it would be %.4g: no limit shows", little, dissolved)
	}
	if notes := strings.Join(oilRun(t, 20000, "limonene").Notes(), "; "); !strings.Contains(notes, "second layer") {
		t.Errorf("the notes say nothing of the layer: %s", notes)
	}
	if notes := strings.Join(oilRun(t, 1, "limonene").Notes(), "; "); strings.Contains(notes, "second layer") {
		t.Errorf("the notes speak of a layer where there is none: %s", notes)
	}
}

// What a layer gives off is its vapour pressure: 7.1 kPa for limonene at 89 °C (Antoine's equation of package compound), so
// that its share of the moles is that over the pressure.
func TestALayerGivesOffItsVapourPressure(t *testing.T) {
	r := oilRun(t, 40000, "limonene")
	pot := r.Steps[0].Pot
	c := findCompound("limonene")
	pKPa := the(c.VapourPressureKPa(pot))
	share := r.Congener("limonene").DistillateG / c.MolarMassG / moles(r.Distillate)
	// The spirit dissolves in the layer too little to matter; a fiftieth of the limonene stays in the spirit.
	near(t, "moles of limonene per mole of spirit", share, pKPa/101.325, 0.03*pKPa/101.325)
}

// Two oils in one layer each give off their share.
func TestALayerOfTwoOils(t *testing.T) {
	alone := oilRun(t, 40000, "limonene").Congener("limonene").DistillateG
	both := oilRun(t, 20000, "limonene", "myrcene")
	near(t, "limonene beside as much myrcene, over limonene alone", both.Congener("limonene").DistillateG/alone, 0.5, 0.02)
}

func TestTooMuchOil(t *testing.T) {
	b := still.Batch{Pot: litres(100, 0.02), Stop: still.AtVolume(1), Congeners: []still.Congener{{Name: "acetaldehyde", MassG: 20000}}}
	if _, err := still.Distil(b); err == nil || !strings.Contains(err.Error(), "traces") {
		t.Errorf("20 kg of acetaldehyde in 100 L: %v", err)
	}
}
