package uncertainty_test

import (
	"encoding/csv"
	"os"
	"path/filepath"
	"strconv"
	"testing"
)

type row struct {
	t      testing.TB
	fields map[string]string
}

// table reads a file of testdata; a file without rows fails the test.
func table(t testing.TB, file string) []row {
	t.Helper()
	f, err := os.Open(filepath.Join("..", "..", "testdata", "uncertainty", file))
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
		r.t.Fatalf("column %q: %v", name, err)
	}
	return x
}

// optional returns a number, and whether the field holds one.
func (r row) optional(name string) (float64, bool) {
	r.t.Helper()
	if r.text(name) == "" {
		return 0, false
	}
	return r.number(name), true
}

// printed returns a figure of a worked example, or the length of its interval, if it is printed.
func (r row) printed(what string) (float64, bool) {
	r.t.Helper()
	if what != "length" {
		return r.optional(what)
	}
	low, ok := r.optional("low")
	high, ok2 := r.optional("high")
	return high - low, ok && ok2
}

func the[T any](v T, err error) T {
	if err != nil {
		panic(err)
	}
	return v
}
