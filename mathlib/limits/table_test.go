package limits_test

import (
	"encoding/csv"
	"os"
	"path/filepath"
	"strconv"
	"testing"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

type row struct {
	t      testing.TB
	fields map[string]string
}

// table reads a file of testdata; a file without rows fails the test.
func table(t testing.TB, file string) []row {
	t.Helper()
	f, err := os.Open(filepath.Join("..", "..", "testdata", "limits", file))
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

// the takes a value and the error that came with it, which must be nil.
func the[T any](v T, err error) T {
	if err != nil {
		panic(err)
	}
	return v
}

func abv(pct float64) alcoholometry.Strength { return the(alcoholometry.ABV(pct)) }
func mgKg(x float64) quantity.Concentration  { return the(quantity.MgKg(x)) }
func mgL(x float64) quantity.Concentration   { return the(quantity.MgL(x)) }
func gL(x float64) quantity.Concentration    { return the(quantity.GL(x)) }
func ghlpa(x float64) quantity.Concentration { return the(quantity.GHLPure(x)) }
