package duty_test

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/duty"
	"swanneck/mathlib/quantity"
)

var usual = duty.RowUnits{Volume: "L", Strength: "%vol", Temp: "°C", Weight: "kg", Pure: "L"}

func TestReadRows(t *testing.T) {
	rows := []duty.Row{
		{Date: "2026-03-01", Kind: "Opening", Lot: "A", Volume: "421", Strength: "71.3", Temp: "16,5"},
		{Date: " 2026-03-02 ", Kind: "made", Lot: " B ", Weight: "1 512,5", Strength: "60 % mass"},
		{Date: "2026-03-03", Kind: "SENT", Lot: "A", Pure: "0,25 hL", Line: 9},
		{Date: "2026-03-04", Kind: "sample", Lot: "A", Volume: "3 gal", Strength: "120 proof", Temp: "60 °F"},
		{Date: "2026-03-31", Kind: "closing", Lot: "B"},
		{Date: "2026-03-31", Kind: "closing", Lot: "A", Pure: "2 proof gal"},
	}
	got := the(duty.ReadRows(rows, usual))
	want := []duty.Entry{
		{Date: day("2026-03-01"), Kind: duty.Opening, Lot: "A", VolumeL: 421, Strength: abv(71.3), Temp: celsius(16.5), Line: 1},
		{Date: day("2026-03-02"), Kind: duty.Made, Lot: "B", WeightKg: 1512.5, Strength: abw(60), Line: 2},
		{Date: day("2026-03-03"), Kind: duty.Sent, Lot: "A", PureL: 25, Line: 9},
		{Date: day("2026-03-04"), Kind: duty.Sample, Lot: "A", VolumeL: quantity.USGallonsToL(3), Strength: proof(120), Temp: fahrenheit(60), Line: 4},
		{Date: day("2026-03-31"), Kind: duty.Closing, Lot: "B", Line: 5},
		{Date: day("2026-03-31"), Kind: duty.Closing, Lot: "A", PureL: the(duty.PureLFrom(2, duty.USProofGallon)), Line: 6},
	}
	for i := range want {
		if got[i] != want[i] {
			t.Errorf("line %d: %+v; want %+v", i+1, got[i], want[i])
		}
	}
}

func TestReadRowsRefuses(t *testing.T) {
	fine := duty.Row{Line: 4, Date: "2026-03-01", Kind: "made", Lot: "A", Volume: "421", Strength: "71.3"}
	for name, change := range map[string]func(*duty.Row, *duty.RowUnits){
		"no date":              func(r *duty.Row, _ *duty.RowUnits) { r.Date = "" },
		"date turned round":    func(r *duty.Row, _ *duty.RowUnits) { r.Date = "01.03.2026" },
		"no such day":          func(r *duty.Row, _ *duty.RowUnits) { r.Date = "2026-02-30" },
		"no unit":              func(_ *duty.Row, u *duty.RowUnits) { u.Volume = "" },
		"unit of another kind": func(_ *duty.Row, u *duty.RowUnits) { u.Volume = "kg" },
		"unit unknown":         func(r *duty.Row, _ *duty.RowUnits) { r.Volume = "421 firkins" },
		"per cent of what":     func(r *duty.Row, _ *duty.RowUnits) { r.Strength = "71.3 %" },
		"too strong":           func(r *duty.Row, _ *duty.RowUnits) { r.Strength = "171" },
		"either way":           func(r *duty.Row, _ *duty.RowUnits) { r.Volume = "1,512" },
		"two points":           func(r *duty.Row, _ *duty.RowUnits) { r.Volume = "1.512.000" },
		"both marks":           func(r *duty.Row, _ *duty.RowUnits) { r.Volume = "1.512,5" },
		"a gap in the figure":  func(r *duty.Row, _ *duty.RowUnits) { r.Volume = "42 1" },
		"a word":               func(r *duty.Row, _ *duty.RowUnits) { r.Volume = "much" },
		"a dash":               func(r *duty.Row, _ *duty.RowUnits) { r.Volume = "-" },
		"weight":               func(r *duty.Row, u *duty.RowUnits) { r.Weight, u.Weight = "5", "stone" },
		"pure":                 func(r *duty.Row, u *duty.RowUnits) { r.Pure, u.Pure = "5", "" },
		"temperature":          func(r *duty.Row, u *duty.RowUnits) { r.Temp = "15 °" },
		"temperature no unit":  func(r *duty.Row, u *duty.RowUnits) { r.Temp, u.Temp = "15", "" },
		"too cold":             func(r *duty.Row, u *duty.RowUnits) { r.Temp = "-400" },
		"strength no unit":     func(r *duty.Row, u *duty.RowUnits) { u.Strength = "" },
	} {
		r, u := fine, usual
		change(&r, &u)
		_, err := duty.ReadRows([]duty.Row{r}, u)
		if err == nil || !strings.HasPrefix(err.Error(), "duty.ReadRows: line 4: ") || strings.Contains(err.Error(), "\n") {
			t.Errorf("%s: %v; want one line that names line 4", name, err)
		}
	}
	if _, err := duty.ReadRows([]duty.Row{fine}, usual); err != nil {
		t.Error(err)
	}
}

func TestNumbersOfRowsThereAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x := math.Round(rapid.Float64Range(0, 1e5).Draw(t, "x")*100) / 100
		text := strings.Replace(quantityText(x), ".", rapid.SampledFrom([]string{".", ","}).Draw(t, "mark"), 1)
		e := the(duty.ReadRows([]duty.Row{{Date: "2026-03-01", Kind: "made", Lot: "A", Pure: text}}, usual))[0]
		if math.Abs(e.PureL-x) > 1e-9 {
			t.Fatalf("%q was read as %g", text, e.PureL)
		}
	})
}

func TestDates(t *testing.T) {
	a, b := day("2024-02-29"), day("2024-03-01")
	if !a.Before(b) || b.Before(a) || a == b || a != day("2024-02-29") || a.String() != "2024-02-29" {
		t.Errorf("%v and %v", a, b)
	}
	if (duty.Date{}).IsSet() || !day("1970-01-01").IsSet() || (duty.Date{}).String() != "no date" || day("1900-01-01").String() != "1900-01-01" {
		t.Error("a day that is none, or the other way round")
	}
	for _, bad := range []string{"", "2026-13-01", "2026-02-29", "26-03-01", "03/04/2026", "2026-03-01T00:00:00Z"} {
		if d, err := duty.ParseDate(bad); err == nil {
			t.Errorf("%q is %v", bad, d)
		}
	}
}
