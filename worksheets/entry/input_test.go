package entry

import (
	"math"
	"strings"
	"testing"
)

func TestRead(t *testing.T) {
	pot := Input{Kind: Strength, Name: "pot", Usual: "45 %vol", Unit: StrengthUnit, Ranged: true, Min: 20, Max: 70}
	volume := Input{Kind: Number, Name: "charge", Usual: "390 L", Unit: "L", Ranged: true, Min: 10, Max: 1000}
	for _, c := range []struct {
		in   Input
		text string
		ok   func(Value) bool
	}{
		{pot, "45,5 %vol", func(v Value) bool { return math.Abs(v.Strength.ABV()-45.5) < 1e-9 }},
		{pot, "70 %vol", func(v Value) bool { return math.Abs(v.Strength.ABV()-70) < 1e-9 }},
		{volume, "50 gal", func(v Value) bool { return math.Abs(v.Figure-189.2705892) < 1e-9 }}, // NIST Handbook 44 (2023), appendix C
		{volume, "1 000 L", func(v Value) bool { return v.Figure == 1000 }},
		{volume, "1000000 mL", func(v Value) bool { return v.Figure == 1000 }},
		{Input{Kind: Number, Name: "bottles", Usual: "7", Unit: "1"}, "12", func(v Value) bool { return v.Figure == 12 }},
		{Input{Kind: Temperature, Name: "receiver", Usual: "20 °C", Unit: TemperatureUnit}, "68 °F", func(v Value) bool { return math.Abs(v.Temp.C()-20) < 1e-9 }},
		{Input{Kind: Pressure, Name: "air", Usual: "101.325 kPa", Unit: PressureUnit}, "950 mbar", func(v Value) bool { return v.Pressure.KPa() == 95 }},
		{Input{Kind: Choice, Name: "still", Usual: "pot", Choices: []string{"pot", "column"}}, "Column", func(v Value) bool { return v.Text == "column" }},
		{Input{Kind: YesNo, Name: "filtered", Usual: "no"}, "Yes", func(v Value) bool { return v.Yes }},
		{Input{Kind: Date, Name: "day", Usual: "2026-01-01"}, "2026-03-14", func(v Value) bool { return v.Date.Hour() == 12 && v.Date.Day() == 14 }},
		{Input{Kind: Text, Name: "lot"}, "", func(v Value) bool { return v.Text == "" }},
		{Input{Kind: Table, Name: "lots", Usual: "a\n1"}, "a;b\n1;2\n", func(v Value) bool { return len(v.Table.Rows) == 1 }},
	} {
		if err := c.in.Check(); err != nil {
			t.Errorf("%s: %v", c.in.Name, err)
		}
		if v, err := c.in.Read(c.text); err != nil || !c.ok(v) {
			t.Errorf("%s: Read(%q) = %+v, %v", c.in.Name, c.text, v, err)
		}
	}
	for _, c := range []struct {
		in         Input
		text, says string
	}{
		{pot, "71 %vol", "pot: 71 %vol is outside 20 to 70 %vol"},
		{pot, "45", "pot: a strength of 45 has no unit"},
		{pot, "145 %vol", "pot: "},
		{pot, "NaN %vol", "does not begin with a number"},
		{volume, "5 L", "charge: 5 L is outside 10 to 1000 L"},
		{volume, "5 kg", `"kg" is no unit of volume`},
		{volume, "1,512 L", "may be 1.512 or 1512"},
		{volume, "", "charge: nothing is given"},
		{Input{Kind: Choice, Name: "still", Choices: []string{"pot", "column"}}, "keg", `"keg" is no choice; want pot, column`},
		{Input{Kind: YesNo, Name: "filtered"}, "perhaps", "neither yes nor no"},
		{Input{Kind: Date, Name: "day"}, "14.3.2026", "want year-month-day"},
		{Input{Kind: Date, Name: "day"}, "2026-02-30", "want year-month-day"},
		{Input{Kind: Text, Name: "lot"}, "a\x1b[2J", "one line"},
		{Input{Kind: Table, Name: "lots"}, "a;b\n1\n", "line 2 has 1 fields"},
	} {
		if v, err := c.in.Read(c.text); err == nil || !strings.Contains(err.Error(), c.says) || strings.Contains(err.Error(), "\n") {
			t.Errorf("%s: Read(%q) = %+v, %v; want %q", c.in.Name, c.text, v, err, c.says)
		}
	}
}

func TestDeclarationsThatDoNotFit(t *testing.T) {
	for says, in := range map[string]Input{
		"needs a name":              {Kind: Text, Name: " "},
		"space around it":           {Kind: Text, Name: " lot"},
		"no colon":                  {Kind: Text, Name: "lot: a"},
		"plain text":                {Kind: Text, Name: "lot", Help: "a\nb"},
		"needs a unit":              {Kind: Number, Name: "x", Usual: "1"},
		"two choices":               {Kind: Choice, Name: "x", Usual: "a", Choices: []string{"a"}},
		"the lower end first":       {Kind: Number, Name: "x", Unit: "L", Usual: "1 L", Ranged: true, Min: 2, Max: 1},
		"is outside 2 to 3 L":       {Kind: Number, Name: "x", Unit: "L", Usual: "1 L", Ranged: true, Min: 2, Max: 3},
		"lower end":                 {Kind: Number, Name: "x", Unit: "L", Usual: "1 L", Ranged: true, Min: math.NaN(), Max: 3},
		`"c" is no choice`:          {Kind: Choice, Name: "x", Usual: "c", Choices: []string{"a", "b"}},
		"what usually stands there": {Kind: Date, Name: "x", Usual: "soon"},
	} {
		if err := in.Check(); err == nil || !strings.Contains(err.Error(), says) {
			t.Errorf("%+v: %v; want %q", in, err, says)
		}
	}
}

func TestBare(t *testing.T) {
	in := Input{Kind: Number, Unit: "L"}
	for text, want := range map[string]string{"45,5": "45,5 L", "45 mL": "45 mL", "x": "x", "1,512": "1,512"} {
		if got := in.Bare(text); got != want {
			t.Errorf("Bare(%q) = %q; want %q", text, got, want)
		}
	}
}

func TestRangeInWords(t *testing.T) {
	in := Input{Kind: Number, Unit: "L", Ranged: true, Min: 0.00001, Max: 1000000}
	if got := in.Range(); got != "0.00001 to 1000000 L" {
		t.Errorf("%s", got)
	}
}
