package duty

import (
	"fmt"
	"strconv"
	"strings"
	"unicode"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Row is a line of a ledger as text. Fields that do not apply are empty.
type Row struct {
	Line     int    // in messages; its place in the list if 0
	Date     string // "2026-03-31"
	Kind     string // opening, made, received, sent, sample, destroyed, closing; capital letters are the same
	Lot      string
	Volume   string // a figure, or a figure and a unit: "421" or "421 L"
	Strength string
	Temp     string
	Weight   string // as the balance shows it
	Pure     string // pure alcohol at 20 °C
}

// RowUnits are the units of figures that stand without one. An empty unit means that each figure must bring its own: a
// column in gallons must not pass for litres.
type RowUnits struct {
	Volume   string // L, mL, hL, gal (of the United States), imp gal
	Strength string // %vol, %mass, proof (of the United States)
	Temp     string // °C, °F
	Weight   string // kg, g, lb
	Pure     string // L, hL, proof gal (of the United States)
}

// ReadRows reads the lines of a ledger. A number has a decimal point or one decimal comma, and spaces between groups of
// three; "1,512" is refused, as it may be either. It fails with the line for a date, kind, number or unit that it cannot
// read. Whether the entry makes sense is seen by MakeReturn.
func ReadRows(rows []Row, units RowUnits) ([]Entry, error) {
	out := make([]Entry, len(rows))
	for i, r := range rows {
		if r.Line == 0 {
			r.Line = i + 1
		}
		e, err := readRow(r, units)
		if err != nil {
			return nil, as(fmt.Sprintf("duty.ReadRows: line %d", r.Line), err)
		}
		out[i] = e
	}
	return out, nil
}

func readRow(r Row, units RowUnits) (Entry, error) {
	e := Entry{Kind: Kind(strings.ToLower(strings.TrimSpace(r.Kind))), Lot: strings.TrimSpace(r.Lot), Line: r.Line}
	var err error
	if e.Date, err = ParseDate(strings.TrimSpace(r.Date)); err != nil {
		return e, fmt.Errorf("the date is %q; write it as year-month-day, such as 2026-03-31", r.Date)
	}
	if e.VolumeL, err = readIn("volume", r.Volume, units.Volume, volumeUnits); err != nil {
		return e, err
	}
	if e.WeightKg, err = readIn("weight", r.Weight, units.Weight, weightUnits); err != nil {
		return e, err
	}
	if e.PureL, err = readIn("pure alcohol", r.Pure, units.Pure, pureUnits()); err != nil {
		return e, err
	}
	if e.Strength, err = readStrength(r.Strength, units.Strength); err != nil {
		return e, err
	}
	e.Temp, err = readTemp(r.Temp, units.Temp)
	return e, err
}

// namedUnit is a unit and how many of the entry's unit it has.
type namedUnit struct {
	name  string
	times func(float64) float64
}

func times(f float64) func(float64) float64 { return func(x float64) float64 { return x * f } }

var (
	volumeUnits = []namedUnit{{"L", times(1)}, {"mL", quantity.MLToL}, {"hL", quantity.HLToL}, {"gal", quantity.USGallonsToL}, {"imp gal", quantity.ImperialGallonsToL}}
	weightUnits = []namedUnit{{"kg", times(1)}, {"g", quantity.GToKg}, {"lb", quantity.PoundsToKg}}
)

func pureUnits() []namedUnit {
	units := []namedUnit{{"L", times(1)}, {"hL", times(100)}}
	if l, err := usProofGallonL(); err == nil {
		units = append(units, namedUnit{"proof gal", times(l)})
	}
	return units
}

// readIn reads a figure in one of the units; an empty field is 0.
func readIn(what, text, unit string, known []namedUnit) (float64, error) {
	if strings.TrimSpace(text) == "" {
		return 0, nil
	}
	x, unit, err := split(what, text, unit)
	if err != nil {
		return 0, err
	}
	var names []string
	for _, u := range known {
		if same(u.name, unit) {
			return u.times(x), nil
		}
		names = append(names, u.name)
	}
	return 0, fmt.Errorf("the %s %q is in %q; give %s", what, text, unit, strings.Join(names, ", "))
}

func readStrength(text, unit string) (alcoholometry.Strength, error) {
	if strings.TrimSpace(text) == "" {
		return alcoholometry.Strength{}, nil
	}
	x, unit, err := split("strength", text, unit)
	if err != nil {
		return alcoholometry.Strength{}, err
	}
	switch {
	case same(unit, "%vol"):
		return alcoholometry.ABV(x)
	case same(unit, "%mass"):
		return alcoholometry.ABW(x)
	case same(unit, "proof"):
		return alcoholometry.USProof(x)
	}
	return alcoholometry.Strength{}, fmt.Errorf("the strength %q is in %q; give %%vol, %%mass, proof", text, unit)
}

func readTemp(text, unit string) (quantity.Temperature, error) {
	if strings.TrimSpace(text) == "" {
		return quantity.Temperature{}, nil
	}
	x, unit, err := split("temperature", text, unit)
	if err != nil {
		return quantity.Temperature{}, err
	}
	switch {
	case same(unit, "°C"):
		return quantity.Celsius(x)
	case same(unit, "°F"):
		return quantity.Fahrenheit(x)
	}
	return quantity.Temperature{}, fmt.Errorf("the temperature %q is in %q; give °C, °F", text, unit)
}

// same compares units without spaces and capital letters.
func same(a, b string) bool { return squeeze(a) == squeeze(b) }

func squeeze(s string) string { return strings.ToLower(strings.Join(strings.Fields(s), "")) }

// split parts a figure from its unit, the one that stands behind it or else the one given.
func split(what, text, unit string) (float64, string, error) {
	text = strings.TrimSpace(text)
	end := strings.IndexFunc(text, func(r rune) bool {
		return !(r >= '0' && r <= '9') && !strings.ContainsRune("+-−.,", r) && !unicode.IsSpace(r)
	})
	figure := text
	if end >= 0 {
		figure, unit = strings.TrimSpace(text[:end]), strings.TrimSpace(text[end:])
	}
	if strings.TrimSpace(unit) == "" {
		return 0, "", fmt.Errorf("the %s %q has no unit; write it behind the figure, or give the unit of the column", what, text)
	}
	x, err := number(figure)
	if err != nil {
		return 0, "", fmt.Errorf("the %s %q %w", what, text, err)
	}
	return x, unit, nil
}

// number reads a number with a decimal point or one decimal comma, and spaces between groups of three digits.
func number(figure string) (float64, error) {
	parts := strings.Fields(strings.ReplaceAll(figure, "−", "-"))
	for i, p := range parts {
		whole, _, _ := strings.Cut(strings.ReplaceAll(p, ",", "."), ".")
		if i > 0 && len(whole) != 3 || i < len(parts)-1 && len(whole) != len(p) {
			return 0, fmt.Errorf("is no number; write it as 1512 or 1512.5")
		}
	}
	s := strings.Join(parts, "")
	if whole, decimals, comma := strings.Cut(s, ","); comma {
		if digits := strings.TrimLeft(whole, "+-"); len(decimals) == 3 && digits != "0" && len(digits) <= 3 {
			return 0, fmt.Errorf("may be %s.%s or %s%s; write it one of these ways", whole, decimals, whole, decimals)
		}
		s = whole + "." + decimals
	}
	x, err := strconv.ParseFloat(s, 64)
	if err != nil {
		return 0, fmt.Errorf("is no number; write it as 1512 or 1512.5")
	}
	return x, nil
}
