package walltable

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// The figures are those of Table 1 in 27 CFR part 30 (directions for interpolation).
func ExampleNew() {
	t, err := New(Proof, Options{Down: []float64{80}, Across: []float64{68, 69}})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(t)
	// Output:
	// True proof at 60 °F, US proof
	// rows: reading, proof; columns: temperature of spirit and hydrometer, °F
	//       68    69
	// 80  76.4  76.0
}

// At the reference temperature nothing is corrected, water to the same strength is none, and figures go the way they must.
func TestLaws(t *testing.T) {
	for _, s := range Sorts() {
		tb, err := New(s, Options{})
		if err != nil {
			t.Fatal(err)
		}
		for i, row := range tb.Cells {
			for j, c := range row {
				switch {
				case j == tb.StrongColumn && s != Litres && s != Gallons && c != tb.Rows[i]+".0":
					t.Errorf("%s: the reading %s at the reference temperature is %s", s, tb.Rows[i], c)
				case j == tb.StrongColumn && (s == Litres || s == Gallons) && strings.Trim(c, "0") != "1.":
					t.Errorf("%s: the factor at the reference temperature is %s", s, c)
				case s == Water && tb.Rows[i] == tb.Heads[j] && c != "0.0":
					t.Errorf("water from %s to %s %% vol: %s", tb.Rows[i], tb.Heads[j], c)
				case s == Water && (c == "") != (less(tb.Rows[i], tb.Heads[j])):
					t.Errorf("water from %s to %s %% vol: %q", tb.Rows[i], tb.Heads[j], c)
				case s != Water && c == "":
					t.Errorf("%s: no figure at %s, %s", s, tb.Rows[i], tb.Heads[j])
				}
				if warm := j > 0 && s != Water && s != Mass && s != Weight; warm && !less(c, row[j-1]) && c != row[j-1] {
					t.Errorf("%s, row %s: %s at %s after %s: it must not rise with the temperature", s, tb.Rows[i], c, tb.Heads[j], row[j-1])
				}
			}
		}
	}
}

// Masses and ethanol add up, and litres of water are those of the reference temperature.
func TestWaterKeepsTheMass(t *testing.T) {
	at, err := quantity.Celsius(35)
	if err != nil {
		t.Fatal(err)
	}
	rho := func(s alcoholometry.Strength) float64 {
		d, err := alcoholometry.DensityKgM3(s, at)
		if err != nil {
			t.Fatal(err)
		}
		return d
	}
	for _, c := range [][2]float64{{96, 40}, {72, 43}, {60, 59}} {
		from, err1 := alcoholometry.ABVAt(c[0], at)
		to, err2 := alcoholometry.ABVAt(c[1], at)
		if err := errors.Join(err1, err2); err != nil {
			t.Fatal(err)
		}
		waterKg := 100 * rho(from) / 1000 * (from.ABW() - to.ABW()) / to.ABW()
		want := waterKg / rho(alcoholometry.Water) * 1000
		if got, err := water(c[0], c[1], at); err != nil || math.Abs(got-want) > 1e-9 {
			t.Errorf("water to 100 L at 35 °C, %v to %v %% vol: %v, %v; the masses give %v", c[0], c[1], got, err, want)
		}
	}
}

func less(a, b string) bool {
	var x, y float64
	_, err1 := fmt.Sscan(a, &x)
	_, err2 := fmt.Sscan(b, &y)
	return err1 == nil && err2 == nil && x < y
}

func TestReference(t *testing.T) {
	c15, err := quantity.Celsius(15)
	if err != nil {
		t.Fatal(err)
	}
	tb, err := New(Strength, Options{Reference: c15})
	if err != nil || !strings.Contains(tb.Title, "marked at 15 °C") || !strings.Contains(tb.Notes[0], "15 °C") {
		t.Errorf("marked at 15 °C: %q, %v", tb.Title, err)
	}
	if tb.StrongColumn != -1 {
		t.Errorf("no column is at 15 °C, and column %d is set off", tb.StrongColumn)
	}
	if tb, err = New(Water, Options{Reference: fahrenheit(60)}); err != nil || !strings.Contains(tb.Title, "60 °F") {
		t.Errorf("water at 60 °F: %q, %v", tb.Title, err)
	}
	for _, s := range []Sort{Proof, Litres, Gallons, Mass, Weight} {
		if _, err := New(s, Options{Reference: c15}); err == nil {
			t.Errorf("%s takes a reference of 15 °C", s)
		}
	}
}

func TestRefusals(t *testing.T) {
	cold, err := quantity.Celsius(-5)
	if err != nil {
		t.Fatal(err)
	}
	for want, f := range map[string]func() error{
		"no table \"height\"": func() error { _, err := New("height", Options{}); return err },
		"row 120":             func() error { _, err := New(Strength, Options{Down: []float64{60, 120}}); return err },
		"column 90": func() error {
			_, err := New(Water, Options{Across: []float64{40, 90}, Down: []float64{50}})
			return err
		},
		"finite":              func() error { _, err := New(Strength, Options{Down: []float64{math.NaN()}}); return err },
		"0 rows":              func() error { _, err := New(Strength, Options{Down: []float64{}}); return err },
		"units of a strength": func() error { _, err := New(Mass, Options{Across: []float64{10}}); return err },
		"-5 °C":               func() error { _, err := New(Strength, Options{Reference: cold}); return err },
	} {
		if err := f(); err == nil || !strings.Contains(err.Error(), want) || !strings.HasPrefix(err.Error(), "walltable.New: ") {
			t.Errorf("%v; want an error of walltable.New with %q", err, want)
		}
	}
}

func TestEdges(t *testing.T) {
	for text, want := range map[string][]float64{
		"30..45/5":     {30, 35, 40, 45},
		"8..10":        {8, 9, 10},
		"37,5; 40; 43": {37.5, 40, 43},
		"37.5":         {37.5},
		"1..1.3/0,1":   {1, 1.1, 1.2, 1.3},
		"30..44/5; 60": {30, 35, 40, 60},
	} {
		got, err := Edges(text)
		if err != nil || !slices.EqualFunc(got, want, func(a, b float64) bool { return math.Abs(a-b) < 1e-9 }) {
			t.Errorf("Edges(%q) = %v, %v; want %v", text, got, err, want)
		}
	}
	for _, bad := range []string{"", "warm", "30..", "50..30", "30..40/0", "30..40/-1", "0..1000000/1", "1,512", "30..40/NaN"} {
		if got, err := Edges(bad); err == nil || !strings.HasPrefix(err.Error(), "walltable.Edges: ") {
			t.Errorf("Edges(%q) = %v, %v; want an error", bad, got, err)
		}
	}
}
