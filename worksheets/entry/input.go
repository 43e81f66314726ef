package entry

import (
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"time"
	"unicode"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
	"swanneck/worksheets/figure"
)

// Kind says what an input is.
type Kind string

// The kinds of inputs.
const (
	Number      Kind = "number" // with a unit
	Strength    Kind = "strength"
	Temperature Kind = "temperature"
	Pressure    Kind = "pressure"
	Choice      Kind = "choice"
	YesNo       Kind = "yes or no"
	Date        Kind = "date"
	Text        Kind = "text"
	Table       Kind = "table" // a small one, written in the worksheet
	File        Kind = "file"  // a table in a CSV file
)

// Input is an input as a worksheet declares it.
type Input struct {
	Kind     Kind
	Name     string
	Usual    string   // what stands there if nothing is given, as a person writes it; of a File its name
	Unit     string   // of a Number, and the one in which Min and Max are: %vol, °C, kPa
	Ranged   bool     // whether Min and Max bound it
	Min, Max float64  // dimensionless here: in Unit
	Choices  []string // of a Choice
	Help     string   // one line
	Cell     int      // where it is declared, from 1; 0 if not known
	Line     int
}

// Value is what an input was given. Which field holds it follows from the kind.
type Value struct {
	Figure   float64 // dimensionless here: in the input's unit
	Strength alcoholometry.Strength
	Temp     quantity.Temperature
	Pressure quantity.Pressure
	Yes      bool
	Date     time.Time // noon, UTC
	Text     string    // of a Choice or Text
	Table    *figure.Table
}

// Units of the kinds that have one.
const (
	StrengthUnit    = "%vol"
	TemperatureUnit = "°C"
	PressureUnit    = "kPa"
)

// Check says what is wrong with the declaration itself.
func (in Input) Check() error {
	switch {
	case strings.TrimSpace(in.Name) == "" || in.Name != strings.TrimSpace(in.Name):
		return fmt.Errorf("an input needs a name without space around it; %q is none", in.Name)
	case strings.ContainsFunc(in.Name+in.Help+in.Unit, unicode.IsControl):
		return fmt.Errorf("%q: a name, a unit and a help are plain text on one line", in.Name)
	case strings.ContainsAny(in.Name, ":=#;"):
		return fmt.Errorf("%q: a name of an input has no colon, semicolon, equals sign or #", in.Name)
	case in.Kind == Number && strings.TrimSpace(in.Unit) == "":
		return fmt.Errorf("%q needs a unit; a bare number has the unit \"1\"", in.Name)
	case in.Kind == Choice && len(in.Choices) < 2:
		return fmt.Errorf("%q needs two choices at least", in.Name)
	case in.Ranged && !(in.Min <= in.Max):
		return fmt.Errorf("%q: the range runs from %v to %v %s; want the lower end first", in.Name, in.Min, in.Max, in.Unit)
	}
	if in.Kind == File {
		return nil // its usual file is read when it is needed
	}
	if _, err := in.Read(in.Usual); err != nil {
		return fmt.Errorf("what usually stands there does not fit: %w", err)
	}
	return nil
}

// Read reads what a person gives, or says in a line why it does not fit. Tables and files are given as their CSV text.
func (in Input) Read(text string) (Value, error) {
	v, x, err := in.read(strings.TrimSpace(text))
	if err == nil && in.Ranged && !(x >= in.Min-slack(in.Min) && x <= in.Max+slack(in.Max)) {
		err = fmt.Errorf("%s is outside %s", in.figure(x), in.Range())
	}
	if err != nil {
		return Value{}, fmt.Errorf("%s: %w", in.Name, withoutName(err))
	}
	return v, nil
}

// slack lets the ends of a range in when a conversion of units has moved them by a rounding.
func slack(end float64) float64 { return 1e-9 * max(1, abs(end)) }

func abs(x float64) float64 {
	if x < 0 {
		return -x
	}
	return x
}

// withoutName takes the name of our own function from an error of the mathlib.
func withoutName(err error) error {
	s := err.Error()
	for _, p := range []string{"alcoholometry.", "quantity."} {
		if strings.HasPrefix(s, p) {
			if _, rest, ok := strings.Cut(s, ": "); ok {
				return errors.New(rest)
			}
		}
	}
	return err
}

// read returns the value and, of what can have a range, its figure in the input's unit.
func (in Input) read(s string) (v Value, x float64, err error) {
	if s == "" && in.Kind != Text {
		return v, 0, errors.New("nothing is given")
	}
	switch in.Kind {
	case Number:
		v.Figure, err = figure.In(s, in.Unit)
		return v, v.Figure, err
	case Strength:
		if v.Strength, err = figure.Strength(s); err == nil {
			x = v.Strength.ABV()
		}
	case Temperature:
		if v.Temp, err = figure.Temperature(s); err == nil {
			x = v.Temp.C()
		}
	case Pressure:
		if v.Pressure, err = figure.Pressure(s); err == nil {
			x = v.Pressure.KPa()
		}
	case Choice:
		at := slices.IndexFunc(in.Choices, func(c string) bool { return strings.EqualFold(c, s) })
		if at < 0 {
			return v, 0, fmt.Errorf("%q is no choice; want %s", s, strings.Join(in.Choices, ", "))
		}
		v.Text = in.Choices[at]
	case YesNo:
		switch strings.ToLower(s) {
		case "yes", "y", "true":
			v.Yes = true
		case "no", "n", "false":
		default:
			return v, 0, fmt.Errorf("%q is neither yes nor no", s)
		}
	case Date:
		if v.Date, err = time.Parse(time.DateOnly, s); err != nil {
			return v, 0, fmt.Errorf("%q is no date; want year-month-day, as 2026-03-14", s)
		}
		v.Date = v.Date.Add(12 * time.Hour)
	case Text:
		if strings.ContainsFunc(s, unicode.IsControl) {
			return v, 0, errors.New("a text stands on one line")
		}
		v.Text = s
	case Table, File:
		v.Table, err = figure.ReadTable(s)
	default:
		err = fmt.Errorf("the kind %q is not known", in.Kind)
	}
	return v, x, err
}

// Bare adds the input's unit to a number that was given without one, for where the unit was shown just before.
func (in Input) Bare(text string) string {
	if in.Unit == "" || in.Unit == "1" {
		return text
	}
	if _, unit, err := figure.Split(text); err == nil && unit == "" {
		return strings.TrimSpace(text) + " " + in.Unit
	}
	return text
}

// Range says in words what fits: "20 to 70 %vol", "pot or column"; empty if everything does.
func (in Input) Range() string {
	switch {
	case in.Kind == Choice:
		return strings.Join(in.Choices, " or ")
	case in.Kind == YesNo:
		return "yes or no"
	case in.Kind == Date:
		return "year-month-day"
	case !in.Ranged:
		return ""
	}
	return plain(in.Min, 10) + " to " + in.figure(in.Max)
}

// plain writes a number with so many digits, without an exponent where people write none.
func plain(x float64, digits int) string {
	s := strconv.FormatFloat(x, 'g', digits, 64)
	if a := abs(x); strings.Contains(s, "e") && a < 1e12 && a > 1e-7 {
		y, _ := strconv.ParseFloat(s, 64)
		s = strconv.FormatFloat(y, 'f', -1, 64)
	}
	return s
}

// figure writes a figure in the input's unit.
func (in Input) figure(x float64) string {
	digits := 10 // hides what a conversion leaves behind
	if in.Kind == Number {
		digits = -1
	}
	s := plain(x, digits)
	if in.Unit == "1" || in.Unit == "" {
		return s
	}
	return s + " " + in.Unit
}

// Figure writes a figure (dimensionless here: in the input's unit) as a person would give it.
func (in Input) Figure(x float64) string { return in.figure(x) }
