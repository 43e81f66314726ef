package figure

import (
	"math"
	"strings"
	"testing"
)

func TestNumber(t *testing.T) {
	for text, want := range map[string]float64{
		"45": 45, "45.5": 45.5, "45,5": 45.5, " 0,512 ": 0.512, "1.512": 1.512, "1512": 1512, "1512,375": 1512.375,
		"1 512": 1512, "1\u00a0512,5": 1512.5, "1\u202f512": 1512, "1.512,5": 1512.5, "1,512.5": 1512.5, "1'512.25": 1512.25,
		"1.234.567": 1234567, "1,234,567": 1234567, "1,234,567.5": 1234567.5, "-3,5": -3.5, "−3": -3, "+2": 2,
		"1e3": 1000, "1.5E-3": 0.0015, ".5": 0.5, ",5": 0.5, "5.": 5, "0,125": 0.125, "1,51": 1.51, "1,5125": 1.5125,
	} {
		if got, err := Number(text); err != nil || got != want {
			t.Errorf("Number(%q) = %v, %v; want %v", text, got, err, want)
		}
	}
	for text, says := range map[string]string{
		"1,512": "may be 1.512 or 1512", "-12,000": "may be -12.000 or -12000", "": "not a number", "x": "not a number",
		"1,2,3": "not a number", "1.23.456": "not a number", "12 34": "not a number", "1,234.567,8": "not a number",
		"NaN": "not a number", "Inf": "not a number", "0x10": "not a number", "1e400": "not a number", "1e": "not a number",
		".": "not a number", ",": "not a number", "--1": "not a number", "1 2345": "not a number", "1234 567": "not a number",
		"1..5": "not a number", "45, 5": "not a number", "1_000": "not a number",
	} {
		if got, err := Number(text); err == nil || !strings.Contains(err.Error(), says) {
			t.Errorf("Number(%q) = %v, %v; want %q", text, got, err, says)
		}
	}
}

func TestIn(t *testing.T) {
	for _, c := range []struct {
		text, unit string
		want       float64
	}{
		{"50 gal", "L", 189.2705892}, // NIST Handbook 44 (2023), appendix C: the gallon is 3.785 411 784 L
		{"10 imp gal", "L", 45.4609}, // Weights and Measures Act 1985 (UK): 4.546 09 L
		{"205,5 mL", "L", 0.2055},
		{"0,7L", "mL", 700},
		{"12 kg", "kg", 12},
		{"2 lb", "g", 907.18474}, // NIST Handbook 44: the pound is 0.453 592 37 kg
		{"760 Torr", "kPa", 101.325},
		{"10 mmHg", "kPa", 1.33322387415}, // conventional millimetre of mercury: 13.5951 g/cm³ at 9.80665 m/s²
		{"1013.25 mbar", "kPa", 101.325},
		{"90 min", "h", 1.5},
		{"1 d", "min", 1440},
		{"5 %", "1", 0.05},
		{"0,25", "%", 25},
		{"7 bottles", "bottles", 7},
		{"3e3 W", "kW", 3},
		{"2.5 g/100 mL", "g/L", 25},
	} {
		if c.text == "0,25" { // a bare number is of unit 1, and only that is taken bare
			if _, err := In(c.text, c.unit); err == nil {
				t.Errorf("In(%q, %q) is accepted", c.text, c.unit)
			}
			continue
		}
		if got, err := In(c.text, c.unit); err != nil || math.Abs(got-c.want) > 1e-12*math.Abs(c.want) {
			t.Errorf("In(%q, %q) = %v, %v; want %v", c.text, c.unit, got, err, c.want)
		}
	}
	for _, c := range []struct{ text, unit, says string }{
		{"50", "L", `"50" has no unit; want it as "50 L"`},
		{"50 kg", "L", `"kg" is no unit of volume; want L, mL`},
		{"50 flagons", "L", `"flagons" is no unit of volume`},
		{"50 L", "bottles", `"L" does not fit; want bottles`},
		{"L", "L", "does not begin with a number"},
		{"", "L", "does not begin with a number"},
		{"1,512 L", "L", "may be 1.512 or 1512"},
	} {
		if got, err := In(c.text, c.unit); err == nil || !strings.Contains(err.Error(), c.says) {
			t.Errorf("In(%q, %q) = %v, %v; want %q", c.text, c.unit, got, err, c.says)
		}
	}
}

func TestStrength(t *testing.T) {
	for text, abv := range map[string]float64{
		"45 %vol": 45, "45,5 % vol": 45.5, "45% ABV": 45, "43 % vol.": 43,
		"33.3 % mass": 40.00, // R 22: 40 % vol is 33.300 % by mass
		"120 proof":   60.05, // 27 CFR 30: proof at 60 °F; at 20 °C by R 22's own expansion
	} {
		s, err := Strength(text)
		if err != nil || math.Abs(s.ABV()-abv) > 0.005 {
			t.Errorf("Strength(%q) = %v, %v; want %v %%vol", text, s, err, abv)
		}
	}
	for text, says := range map[string]string{
		"45": "no unit", "45 %": "may be by volume or by mass", "70 UK proof": "Imperial", "45 kg": "no unit of strength",
		"145 %vol": "100", "-1 %vol": "0", "1,512 %vol": "may be",
	} {
		if s, err := Strength(text); err == nil || !strings.Contains(err.Error(), says) {
			t.Errorf("Strength(%q) = %v, %v; want %q", text, s, err, says)
		}
	}
}

func TestTemperatureAndPressure(t *testing.T) {
	for text, c := range map[string]float64{"20 °C": 20, "68 °F": 20, "68F": 20, "293.15 K": 20, "−5 C": -5, "18,5°C": 18.5} {
		if got, err := Temperature(text); err != nil || math.Abs(got.C()-c) > 1e-9 {
			t.Errorf("Temperature(%q) = %v, %v; want %v °C", text, got, err, c)
		}
	}
	for text, says := range map[string]string{"20": "no scale", "20 °": "no scale", "20 L": "no unit of temperature", "-300 °C": "-273.15"} {
		if got, err := Temperature(text); err == nil || !strings.Contains(err.Error(), says) {
			t.Errorf("Temperature(%q) = %v, %v; want %q", text, got, err, says)
		}
	}
	if p, err := Pressure("1 atm"); err != nil || p.KPa() != 101.325 {
		t.Error(p, err)
	}
	if _, err := Pressure("-1 kPa"); err == nil {
		t.Error("a pressure below zero is accepted")
	}
}

func TestUnitsAreNamedOnce(t *testing.T) {
	n := 0
	for _, u := range units {
		for _, name := range u.names {
			n++
			if unitByName[squeeze(name)].times != u.times || unitByName[squeeze(name)].kind != u.kind {
				t.Errorf("%q is the name of two units", name)
			}
			if x, err := Convert(12, name, name); x != 12 || err != nil {
				t.Errorf("Convert(12, %q, %q) = %v, %v", name, name, x, err)
			}
			for _, v := range units {
				if v.kind != u.kind {
					continue
				}
				y, err := Convert(12, name, v.names[0])
				back, err2 := Convert(y, v.names[0], name)
				if err != nil || err2 != nil || math.Abs(back-12) > 1e-13 {
					t.Errorf("12 %s is %v %s is %v %s", name, y, v.names[0], back, name)
				}
			}
		}
	}
	if n < 60 {
		t.Errorf("only %d names of units", n)
	}
}

func TestReadTable(t *testing.T) {
	for text, want := range map[string]string{
		"jar;volume (mL)\n1;200\n2;205,5\n":                "jar|volume (mL) / 1|200 / 2|205,5",
		"\ufeffjar,volume\r\n1,200\r\n\r\n2,\"205,5\"\r\n": "jar|volume / 1|200 / 2|205,5",
		"# a trial of ours\njar\tvolume\n1\t200\n":         "jar|volume / 1|200",
		"jar; note\n1; \"two words; and more\"\n":          "jar|note / 1|two words; and more",
		"jar,note\n1,2\n,\n":                               "jar|note / 1|2",
		"lot\n1\n":                                         "lot / 1",
	} {
		got, err := ReadTable(text)
		if err != nil {
			t.Errorf("%q: %v", text, err)
			continue
		}
		lines := []string{strings.Join(got.Headings, "|")}
		for _, r := range got.Rows {
			lines = append(lines, strings.Join(r, "|"))
		}
		if s := strings.Join(lines, " / "); s != want {
			t.Errorf("%q: %s; want %s", text, s, want)
		}
	}
	for text, says := range map[string]string{
		"": "nothing is in the table", "\n\n": "nothing is in the table", "# only words\n": "nothing is in the table",
		"a;b\n1\n": "line 2 has 1 fields and the headings 2", "a;a\n": "stands twice", "a (L);a (kg)\n": "stands twice",
		"a;;b\n": "heading 2 is empty", "a;b\n1;\xff\n": "UTF-8", "a;b\n\"1;2\n": "not a table",
	} {
		if got, err := ReadTable(text); err == nil || !strings.Contains(err.Error(), says) {
			t.Errorf("ReadTable(%q) = %v, %v; want %q", text, got, err, says)
		}
	}
	if got, _ := ReadTable("a\n\n# x\n1\n"); len(got.Line) != 1 || got.Line[0] != 4 {
		t.Errorf("line of the only row: %v; want 4", got.Line)
	}
}

func TestHeading(t *testing.T) {
	for h, want := range map[string][2]string{
		"volume (L)": {"volume", "L"}, "volume [mL]": {"volume", "mL"}, "volume": {"volume", ""}, "(L)": {"(L)", ""},
		"take (fl oz (US))": {"take", "fl oz (US)"}, "a (b) c": {"a (b) c", ""},
	} {
		if n, u := Heading(h); n != want[0] || u != want[1] {
			t.Errorf("Heading(%q) = %q, %q; want %q", h, n, u, want)
		}
	}
}

func FuzzFigure(f *testing.F) {
	for _, s := range []string{"45,5 %vol", "1,512", "1 512 L", "68 °F", "−3", "1e3", "\u202f1", "."} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		x, _, err := Split(s)
		if err == nil && (math.IsNaN(x) || math.IsInf(x, 0)) {
			t.Errorf("Split(%q) = %v", s, x)
		}
		_, _ = Strength(s)
		_, _ = Temperature(s)
		_, _ = ReadTable(s)
	})
}
