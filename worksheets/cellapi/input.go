package cellapi

import (
	"fmt"
	"strings"
	"time"

	"swanneck/kernel/display"
	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
	"swanneck/worksheets/entry"
)

// InputOption says more about an input: Between, Help.
type InputOption struct {
	low, high any
	help      string
}

// Between bounds an input: by numbers in its unit, or by two strengths, temperatures or pressures.
func Between(low, high any) InputOption { return InputOption{low: low, high: high} }

// Help adds a line that says what to put in.
func Help(words string) InputOption { return InputOption{help: words} }

// InputNumber asks for a number with a unit: its name, what usually stands there, and the unit, as in
// InputNumber("pot volume", 390, "L", Between(10, 1000)). Whoever runs the worksheet may give another one, in any unit
// of the same kind; the figure returned is in this unit (dimensionless here).
func InputNumber(name string, usual float64, unit string, more ...InputOption) float64 {
	in := declare(entry.Input{Kind: entry.Number, Name: name, Unit: unit}, more)
	in.Usual = in.Figure(usual)
	v, given := given(in)
	if !given {
		return usual
	}
	return v.Figure
}

// InputStrength asks for a strength, as in InputStrength("pot strength", ABV(45), Between(ABV(20), ABV(70))).
func InputStrength(name string, usual alcoholometry.Strength, more ...InputOption) alcoholometry.Strength {
	in := declare(entry.Input{Kind: entry.Strength, Name: name, Unit: entry.StrengthUnit}, more)
	if !usual.IsSet() {
		panic(&Stop{fmt.Sprintf("InputStrength: %q has an unset strength; write ABV(45) for 45 %%vol", name)})
	}
	in.Usual = in.Figure(usual.ABV())
	v, given := given(in)
	if !given {
		return usual
	}
	return v.Strength
}

// InputTemperature asks for a temperature, as in InputTemperature("receiver", Celsius(27)).
func InputTemperature(name string, usual quantity.Temperature, more ...InputOption) quantity.Temperature {
	in := declare(entry.Input{Kind: entry.Temperature, Name: name, Unit: entry.TemperatureUnit}, more)
	in.Usual = in.Figure(usual.C())
	v, given := given(in)
	if !given {
		return usual
	}
	return v.Temp
}

// InputPressure asks for an absolute pressure, as in InputPressure("air", KPa(101.3)).
func InputPressure(name string, usual quantity.Pressure, more ...InputOption) quantity.Pressure {
	in := declare(entry.Input{Kind: entry.Pressure, Name: name, Unit: entry.PressureUnit}, more)
	in.Usual = in.Figure(usual.KPa())
	v, given := given(in)
	if !given {
		return usual
	}
	return v.Pressure
}

// InputChoice asks for one of several words, as in InputChoice("still", "pot", []string{"pot", "column"}).
func InputChoice(name, usual string, choices []string, more ...InputOption) string {
	v, _ := given(declare(entry.Input{Kind: entry.Choice, Name: name, Usual: usual, Choices: choices}, more))
	return v.Text
}

// InputYesNo asks a question that is answered by yes or no.
func InputYesNo(name string, usual bool, more ...InputOption) bool {
	in := declare(entry.Input{Kind: entry.YesNo, Name: name, Usual: "no"}, more)
	if usual {
		in.Usual = "yes"
	}
	v, _ := given(in)
	return v.Yes
}

// InputDate asks for a day, written as year-month-day, as in InputDate("filled on", "2026-03-14"). It returns its noon, UTC.
func InputDate(name, usual string, more ...InputOption) time.Time {
	v, _ := given(declare(entry.Input{Kind: entry.Date, Name: name, Usual: usual}, more))
	return v.Date
}

// InputText asks for a line of text: a name, a remark.
func InputText(name, usual string, more ...InputOption) string {
	v, _ := given(declare(entry.Input{Kind: entry.Text, Name: name, Usual: usual}, more))
	return v.Text
}

// InputTable asks for a small table, written as CSV with its headings in the first line:
//
//	InputTable("lots", "volume (L); strength (%vol)\n300; 72.4\n90; 68")
//
// Whoever runs the worksheet gives a CSV file.
func InputTable(name, usual string, more ...InputOption) Grid {
	v, _ := given(declare(entry.Input{Kind: entry.Table, Name: name, Usual: usual}, more))
	return Grid{name, v.Table}
}

// InputFile asks for a CSV file. usual is a file in the worksheet's folder.
func InputFile(name, usual string, more ...InputOption) Grid {
	v, given := given(declare(entry.Input{Kind: entry.File, Name: name, Usual: usual}, more))
	if !given {
		return Table(usual)
	}
	return Grid{name, v.Table}
}

// declare fills in what the options say.
func declare(in entry.Input, more []InputOption) entry.Input {
	for _, o := range more {
		if o.help != "" {
			in.Help = o.help
		}
		if o.low != nil || o.high != nil {
			low, ok := bound(in.Kind, o.low)
			high, ok2 := bound(in.Kind, o.high)
			if !ok || !ok2 {
				panic(&Stop{fmt.Sprintf("Between: %q is a %s; its range cannot be from %v to %v", in.Name, in.Kind, o.low, o.high)})
			}
			in.Ranged, in.Min, in.Max = true, low, high
		}
	}
	return in
}

// bound returns an end of a range in the unit of its kind.
func bound(kind entry.Kind, end any) (x float64, ok bool) {
	switch e := end.(type) {
	case int:
		return float64(e), kind == entry.Number
	case float64:
		return e, kind == entry.Number
	case alcoholometry.Strength:
		return e.ABV(), kind == entry.Strength
	case quantity.Temperature:
		return e.C(), kind == entry.Temperature
	case quantity.Pressure:
		return e.KPa(), kind == entry.Pressure
	}
	return 0, false
}

// given returns what was given for an input, else what usually stands there.
func given(in entry.Input) (v entry.Value, given bool) {
	stop := func(err error) { panic(&Stop{"input " + strings.TrimPrefix(err.Error(), "input ")}) }
	if err := in.Check(); err != nil {
		stop(err)
	}
	text, given := display.Input(in.Name)
	if !given {
		if in.Kind == entry.File {
			return v, false
		}
		text = in.Usual
	} else if (in.Kind == entry.Table || in.Kind == entry.File) && !strings.Contains(text, "\n") {
		b, err := display.Read(text) // in a plain Go program a table is given by its file
		if err != nil {
			stop(err)
		}
		text = string(b)
	}
	v, err := in.Read(text)
	if err != nil {
		stop(err)
	}
	return v, given
}
