package still_test

import (
	"encoding/csv"
	"math"
	"os"
	"path/filepath"
	"strconv"
	"testing"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/compound"
	"swanneck/mathlib/quantity"
	"swanneck/mathlib/still"
)

type row struct {
	t      testing.TB
	fields map[string]string
}

// table reads a file of testdata; a file without rows fails the test.
func table(t testing.TB, file string) []row {
	t.Helper()
	f, err := os.Open(filepath.Join("..", "..", "testdata", "still", file))
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	lines, err := r.ReadAll()
	if err != nil {
		t.Fatalf("%s: %v", file, err)
	}
	if len(lines) < 2 {
		t.Fatalf("%s holds no rows", file)
	}
	var rows []row
	for _, line := range lines[1:] {
		m := map[string]string{}
		for i, name := range lines[0] {
			m[name] = line[i]
		}
		rows = append(rows, row{t, m})
	}
	return rows
}

func (r row) text(name string) string {
	r.t.Helper()
	s, ok := r.fields[name]
	if !ok {
		r.t.Fatalf("no column %q", name)
	}
	return s
}

func (r row) number(name string) float64 {
	r.t.Helper()
	x, err := strconv.ParseFloat(r.text(name), 64)
	if err != nil {
		r.t.Fatalf("column %s: %v", name, err)
	}
	return x
}

// curve returns the equilibrium that a row asks for: through Perry's table, or nil for the model.
func curve(t testing.TB, how, file string) *still.Equilibrium {
	t.Helper()
	var x, y []float64
	for _, r := range table(t, file) {
		x, y = append(x, r.number("x")), append(y, r.number("y"))
	}
	switch how {
	case "smooth":
		return the(still.SmoothEquilibrium(x, y))
	case "straight":
		return the(still.StraightEquilibrium(x, y))
	case "model":
		return nil
	}
	t.Fatalf("no equilibrium %q", how)
	return nil
}

// the takes a value and the error that came with it, which must be nil.
func the[T any](v T, err error) T {
	if err != nil {
		panic(err)
	}
	return v
}

func celsius(c float64) quantity.Temperature { return the(quantity.Celsius(c)) }
func kPa(p float64) quantity.Pressure        { return the(quantity.KPa(p)) }
func abv(pct float64) alcoholometry.Strength { return the(alcoholometry.ABV(pct)) }
func mole(x float64) alcoholometry.Strength  { return the(alcoholometry.MoleFraction(x)) }
func mgL(x float64) quantity.Concentration   { return the(quantity.MgL(x)) }

// litres returns volumeL litres of a spirit with the mole fraction x.
func litres(volumeL, x float64) alcoholometry.Spirit {
	return alcoholometry.Spirit{VolumeL: volumeL, Strength: mole(x)}
}

// moles returns the moles in a spirit, ethanol and water together.
func moles(s alcoholometry.Spirit) float64 {
	x := s.Strength.MoleFraction()
	return 1000 * s.MassKg() / (x*alcoholometry.MolarMassEthanolG + (1-x)*alcoholometry.MolarMassWaterG)
}

func near(t testing.TB, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s = %.8g; want %.8g ± %g", what, got, want, tol)
	}
}

func findCompound(name string) *compound.Compound { return the(compound.Find(name)) }

func ghlPure(x float64) (quantity.Concentration, error) { return quantity.GHLPure(x) }
func kPaAt(heightM float64) (quantity.Pressure, error)  { return quantity.AtAltitude(heightM) }
