package simplex_test

import (
	"encoding/csv"
	"math"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"swanneck/mathlib/internal/simplex"
)

func numbers(t *testing.T, s string) []float64 {
	t.Helper()
	var out []float64
	for _, f := range strings.Fields(s) {
		x, err := strconv.ParseFloat(f, 64)
		if err != nil {
			t.Fatal(err)
		}
		out = append(out, x)
	}
	return out
}

func TestProgrammesFromPrint(t *testing.T) {
	f, err := os.Open(filepath.Join("..", "..", "..", "testdata", "mixing", "linear_programmes.csv"))
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	lines, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	if len(lines) < 5 {
		t.Fatalf("only %d rows", len(lines)-1)
	}
	for _, line := range lines[1:] {
		costs := numbers(t, line[1])
		p := &simplex.Problem{}
		for range costs {
			p.Low, p.High = append(p.Low, 0), append(p.High, math.Inf(1))
		}
		for row := range strings.SplitSeq(line[2], ";") {
			left, right, ok := strings.Cut(row, "<=")
			if !ok {
				t.Fatalf("%s: %q", line[0], row)
			}
			p.Rows = append(p.Rows, numbers(t, left))
			p.RowLow = append(p.RowLow, math.Inf(-1))
			p.RowHigh = append(p.RowHigh, numbers(t, right)[0])
		}
		want := numbers(t, line[3])[0]
		got := the(the(simplex.New(p)).Minimise(costs))
		if math.Abs(got.Value-want) > 1e-9*math.Abs(want) {
			t.Errorf("%s: least value %.12g; print gives %g", line[0], got.Value, want)
		}
	}
}

// the takes a value and the error that came with it, which must be nil.
func the[T any](v T, err error) T {
	if err != nil {
		panic(err)
	}
	return v
}
