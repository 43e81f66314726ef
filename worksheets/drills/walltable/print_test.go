package walltable

import (
	"encoding/csv"
	"math"
	"os"
	"path/filepath"
	"strconv"
	"testing"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// rows reads a file of printed figures; its source and tolerance stand in its head.
func rows(t *testing.T, file string) []map[string]string {
	t.Helper()
	f, err := os.Open(filepath.Join("..", "..", "..", "testdata", "alcoholometry", file))
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
	var out []map[string]string
	for _, line := range lines[1:] {
		m := map[string]string{}
		for i, name := range lines[0] {
			m[name] = line[i]
		}
		out = append(out, m)
	}
	if len(out) == 0 {
		t.Fatalf("%s holds no rows", file)
	}
	return out
}

func num(t *testing.T, row map[string]string, column string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(row[column], 64)
	if err != nil {
		t.Fatalf("column %s: %v", column, err)
	}
	return x
}

// cellAt returns the one cell of a table made with one row and one column.
func cellAt(t *testing.T, s Sort, down, across float64, at quantity.Temperature) float64 {
	t.Helper()
	tb, err := New(s, Options{Down: []float64{down}, Across: []float64{across}, Reference: at})
	if err != nil {
		t.Fatalf("%s at %v, %v: %v", s, down, across, err)
	}
	x, err := strconv.ParseFloat(tb.Cells[0][0], 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

func celsius(t *testing.T, c float64) quantity.Temperature {
	t.Helper()
	x, err := quantity.Celsius(c)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

// half is half a unit of the last decimal that a sort prints.
func half(s Sort) float64 { return 0.5 * math.Pow(10, -float64(s.Decimals())) }

// Source: State Pharmacopoeia of the USSR, dilution table at 20 °C, good to 0.25 mL in 1000.
func TestWaterAgainstThePharmacopoeia(t *testing.T) {
	n := 0
	for _, r := range rows(t, "pharmacopoeia_dilution_20C.csv") {
		from, to := num(t, r, "from_pct_vol"), num(t, r, "to_pct_vol")
		spirit, water := num(t, r, "spirit_mL"), num(t, r, "water_mL")
		want := 100 * water / spirit
		tolerance := 100*(0.25+0.25*water/spirit)/spirit + half(Water)
		if got := cellAt(t, Water, from, to, quantity.Temperature{}); math.Abs(got-want) > tolerance {
			t.Errorf("water to 100 L, %v to %v %% vol: %v; State Pharmacopoeia of the USSR gives %.2f ± %.2f", from, to, got, want, tolerance)
		}
		n++
	}
	if n < 9 {
		t.Errorf("only %d rows were checked", n)
	}
}

// Source: Gay-Lussac, Table de mouillage, at 15 °C, good to 0.5 % or 0.3 mL.
func TestWaterAgainstGayLussac(t *testing.T) {
	n := 0
	for _, r := range rows(t, "gay_lussac_dilution_15C.csv") {
		if r["flag"] != "" {
			continue
		}
		from, to, want := num(t, r, "from_pct_vol"), num(t, r, "to_pct_vol"), num(t, r, "water_mL")
		tolerance := max(0.005*want, 0.3) + half(Water)
		if got := cellAt(t, Water, from, to, celsius(t, 15)); math.Abs(got-want) > tolerance {
			t.Errorf("water to 100 L at 15 °C, %v to %v %% vol: %v; Gay-Lussac gives %v ± %.2f", from, to, got, want, tolerance)
		}
		n++
	}
	if n < 40 {
		t.Errorf("only %d rows were checked", n)
	}
}

// Source: 27 CFR part 30, Tables 1 and 7. Our cell and the printed one are both rounded, so that they could part by a unit
// of the last digit where the figure lies between two; none of these does.
func TestProofAndGallonsAgainstTheGaugingTables(t *testing.T) {
	seen, same := map[Sort]int{}, 0
	for _, r := range rows(t, "us_gauging_tables.csv") {
		s, ok := map[string]Sort{"true_proof": Proof, "volume_factor": Gallons}[r["quantity"]]
		if !ok {
			continue
		}
		proof, f, want := num(t, r, "proof"), num(t, r, "t_F"), num(t, r, "value")
		got := cellAt(t, s, proof, f, quantity.Temperature{})
		if tolerance := num(t, r, "tolerance") + half(s); math.Abs(got-want) > tolerance {
			t.Errorf("table %s at %v proof, %v °F: %v; %s gives %v ± %v", s, proof, f, got, r["source"], want, tolerance)
		}
		if got == want {
			same++
		}
		seen[s]++
	}
	if seen[Proof] < 4 || seen[Gallons] < 5 {
		t.Errorf("%v rows were checked", seen)
	}
	if same != seen[Proof]+seen[Gallons] {
		t.Errorf("%d of %v cells are those printed; want all", same, seen)
	}
}

// Source: a 19th-century table after Tralles, alcoholometer true at 60 °F, good to 0.2 % vol. It goes from true strength
// to reading; the wall table goes back.
func TestStrengthAgainstTralles(t *testing.T) {
	at := fahrenheit(60)
	n := 0
	for _, r := range rows(t, "tralles_glass_alcoholometer.csv") {
		truth, f, reading := num(t, r, "true_pct_vol_60F"), num(t, r, "t_F"), num(t, r, "reading_pct_vol")
		if r["flag"] != "" || reading < 5 {
			continue // at the bottom of the scale half a degree of reading is a degree of strength
		}
		c := (f - 32) / 1.8
		want, err := alcoholometry.ABVAt(truth, at)
		if err != nil {
			t.Fatal(err)
		}
		// 0.2 in the reading, and the reading's own decimal, move the strength by about as much.
		const tolerance = 0.25
		if got := cellAt(t, Strength, reading, c, at); math.Abs(got-want.ABV()) > tolerance+half(Strength) {
			t.Errorf("true strength of a reading of %v at %v °F, instrument true at 60 °F: %v; the table after Tralles has %.2f ± %v", reading, f, got, want.ABV(), tolerance)
		}
		n++
	}
	if n < 100 {
		t.Errorf("only %d rows were checked", n)
	}
}

// Source: CRC Handbook, 102nd edition, good to 3.5e-4 g/cm³; and the rows from memory of the European Pharmacopoeia's
// ethanol table in verification.csv.
func TestWeightAndMass(t *testing.T) {
	n := 0
	for _, r := range rows(t, "crc_density_20C.csv") {
		s, err := alcoholometry.ABW(num(t, r, "mass_pct"))
		if err != nil {
			t.Fatal(err)
		}
		want := 1000 * num(t, r, "density_g_cm3")
		if got := cellAt(t, Weight, s.ABV(), 0, quantity.Temperature{}); math.Abs(got-want) > 0.35+half(Weight) {
			t.Errorf("1000 L of %.3f %% vol: %v kg; CRC Handbook gives %v ± 0.35", s.ABV(), got, want)
		}
		if got := cellAt(t, Mass, math.Floor(s.ABV()/10)*10, math.Mod(s.ABV(), 10), quantity.Temperature{}); math.Abs(got-s.ABW()) > half(Mass)+1e-9 {
			t.Errorf("%.3f %% vol: %v %% mass; want %v", s.ABV(), got, s.ABW())
		}
		n++
	}
	if n < 30 {
		t.Errorf("only %d rows were checked", n)
	}
	memory := map[string][3]float64{ // name: sort (0 mass, 1 weight), strength, printed
		"abv50_mass_pct": {0, 50}, "abv70_mass_pct": {0, 70}, "abv96_mass_pct": {0, 96},
		"density_abv50_20C_kgM3": {1, 50}, "density_abv70_20C_kgM3": {1, 70}, "density_abv96_20C_kgM3": {1, 96},
	}
	seen := 0
	for _, r := range rows(t, "verification.csv") {
		m, ok := memory[r["quantity"]]
		if !ok {
			continue
		}
		seen++
		s := []Sort{Mass, Weight}[int(m[0])]
		got, err := s.Cell(m[1], 0)
		if err != nil {
			t.Fatal(err)
		}
		if want := num(t, r, "value"); math.Abs(got-want) > num(t, r, "tolerance")+half(s) {
			t.Errorf("%s: %v; %s gives %v", r["quantity"], got, r["source"], want)
		}
	}
	if seen != len(memory) {
		t.Errorf("%d of %d rows from memory were found", seen, len(memory))
	}
}
