package botanical_test

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
	f, err := os.Open(filepath.Join("..", "..", "testdata", "botanical", file))
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
func celsius(c float64) quantity.Temperature { return the(quantity.Celsius(c)) }

func spirit(litres, pct float64) alcoholometry.Spirit {
	return alcoholometry.Spirit{VolumeL: litres, Strength: abv(pct)}
}

// panicked returns what f panics with, or nil.
func panicked(f func()) (v any) {
	defer func() { v = recover() }()
	f()
	return nil
}
