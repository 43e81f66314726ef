package inputs_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"swanneck/kernel/symbols"
	"swanneck/worksheets/entry"
	"swanneck/worksheets/inputs"
)

// sheet asks for one input of each kind.
var sheet = []string{
	`const most = 1000
pot := InputStrength("pot strength", ABV(45), Between(ABV(20), USProof(140)), Help("before heating"))
volume := InputNumber("pot volume", 390, "L", Between(10, most))`,
	`func ask() Temperature { return InputTemperature("receiver", Fahrenheit(68)) }
if InputYesNo("filtered", false) {
	fmt.Println(InputDate("filled on", "2026-03-14"), InputText("lot", "T-1"))
}
InputChoice("still", "pot", []string{"pot", "column"})`,
	`lots := InputTable("lots", "volume (L); strength (%vol)\n300; 72.4\n90; 68")
log := InputFile("run log", "run.csv")
air := InputPressure("air", AtAltitude(0))`,
}

func find(t *testing.T) *inputs.Set {
	t.Helper()
	asked, err := inputs.Find(sheet, symbols.NewLibrary())
	if err != nil {
		t.Fatal(err)
	}
	return inputs.NewSet(asked)
}

func TestFind(t *testing.T) {
	s := find(t)
	var got []string
	for _, in := range s.Asked {
		got = append(got, strings.Join([]string{string(in.Kind), in.Name, in.Usual, in.Range(), in.Help}, "|"))
	}
	want := []string{
		"strength|pot strength|45 %vol|20 to 70.06127347 %vol|before heating", "number|pot volume|390 L|10 to 1000 L|",
		"temperature|receiver|20 °C||", "yes or no|filtered|no|yes or no|", "date|filled on|2026-03-14|year-month-day|",
		"text|lot|T-1||", "choice|still|pot|pot or column|",
		"table|lots|volume (L); strength (%vol)\n300; 72.4\n90; 68||", "file|run log|run.csv||", "pressure|air|101.325 kPa||",
	}
	for i := range want {
		if i >= len(got) || !strings.HasPrefix(got[i], want[i][:12]) {
			t.Fatalf("%q; want %q", got, want)
		}
	}
	for i, w := range want[1:] {
		if got[i+1] != w {
			t.Errorf("%q; want %q", got[i+1], w)
		}
	}
	if len(got) != len(want) || s.Asked[2].Cell != 2 || s.Asked[2].Line != 1 || s.Asked[4].Line != 3 {
		t.Errorf("places: %+v", s.Asked)
	}
}

func TestDeclarationsThatAreNotWrittenOut(t *testing.T) {
	for src, says := range map[string]string{
		`for i := range 3 { InputNumber(fmt.Sprint(i), 1, "L") }`:      "must be written out",
		`x := 1.0; InputNumber("a", x, "L")`:                           "must be written out",
		`InputStrength("a", Reading(ABV(40), Celsius(20)))`:            "cannot use",
		`s := ABV(40); InputStrength("a", s)`:                          "as ABV(45)",
		`InputNumber("a", 1, "L", Between(2, 3))`:                      "1 L is outside 2 to 3 L",
		`InputNumber("a", 1, "")`:                                      "needs a unit",
		`InputNumber("a", 1, "L", Between(ABV(2), 3))`:                 "must be written out",
		`o := Help("x"); InputNumber("a", 1, "L", o)`:                  "an option must be written out",
		`InputText("a", "b"); InputText("a", "c")`:                     "is declared in cell 1 already",
		`InputDate("a", "soon")`:                                       "want year-month-day",
		`list := []string{"a", "b"}; InputChoice("a", "b", list)`:      "choices must be written out",
		"InputNumber(\"a\", 1, \"L\")\nInputStrength(\"b\", ABV(120))": "line 2",
	} {
		if got, err := inputs.Find([]string{src}, symbols.NewLibrary()); err == nil || !strings.Contains(err.Error(), says) {
			t.Errorf("%s: %v, %v; want %q", src, got, err, says)
		}
	}
	// A name of the cell's own is no input.
	if got, err := inputs.Find([]string{"func InputText(a, b string) string { return a }\nInputText(fmt.Sprint(1), \"x\")"}, symbols.NewLibrary()); err != nil || len(got) != 0 {
		t.Errorf("%v, %v", got, err)
	}
}

func TestAssign(t *testing.T) {
	s := find(t)
	dir := t.TempDir()
	if err := os.WriteFile(filepath.Join(dir, "two.csv"), []byte("volume (L);strength (%vol)\n1;2\n"), 0o600); err != nil {
		t.Fatal(err)
	}
	for _, a := range []string{"pot strength=120 proof", " Pot  Volume = 50 gal ", "receiver=68 °F", "still=column", "lots=two.csv", "lot="} {
		if err := s.Assign(a, dir); err != nil {
			t.Errorf("%s: %v", a, err)
		}
	}
	changed := map[string]bool{}
	for _, r := range s.Rows() {
		changed[r.Name] = r.Changed
	}
	for name, want := range map[string]bool{"pot strength": true, "pot volume": true, "receiver": false, "still": true, "lots": true, "air": false} {
		if changed[name] != want {
			t.Errorf("%s changed: %v; want %v", name, changed[name], want)
		}
	}
	for a, says := range map[string]string{
		"pot strenth=45 %vol": "the nearest: pot strength", "volume=5 L": "the nearest: pot volume", "pot volume": "want name=value",
		"pot volume=5 kg": "no unit of volume", "pot volume=5 L": "outside 10 to 1000 L", "lots=none.csv": "no such file",
		"pot strength=45": "no unit", "pot volume=1,512 L": "may be",
	} {
		if err := s.Assign(a, dir); err == nil || !strings.Contains(err.Error(), says) || strings.Contains(err.Error(), dir) {
			t.Errorf("%s: %v; want %q", a, err, says)
		}
	}
}

// What Write writes, ReadFile reads: the file that goes to a client comes back.
func TestFileRoundTrip(t *testing.T) {
	s := find(t)
	for _, a := range []string{"pot strength=45,5 %vol", "filtered=yes"} {
		if err := s.Assign(a, "."); err != nil {
			t.Fatal(err)
		}
	}
	if err := s.Give("lots", "volume (L); strength (%vol)\n1; 2\n", "."); err != nil {
		t.Fatal(err)
	}
	dir := t.TempDir()
	if err := os.WriteFile(filepath.Join(dir, "run.csv"), []byte("a\n1\n"), 0o600); err != nil {
		t.Fatal(err)
	}
	text := s.Write("sheet.ipynb")
	back := find(t)
	if err := back.ReadFile("inputs.txt", strings.ReplaceAll("\ufeff"+text, "\n", "\r\n"), dir); err != nil {
		t.Fatalf("%v\n%s", err, text)
	}
	v := back.Values()
	if v["pot strength"] != "45,5 %vol" || v["filtered"] != "yes" || v["pot volume"] != "390 L" || !strings.Contains(v["lots"], "1; 2") || !strings.HasPrefix(v["run log"], "a\n1\n") {
		t.Errorf("%q\n%s", v, text)
	}
}

func TestFileThatDoesNotFit(t *testing.T) {
	for text, says := range map[string]string{
		"pot strength 45":                             `in.txt:1: want name: value`,
		"# x\n\npot strenth: 45 %vol":                 `in.txt:3: no input is called "pot strenth"`,
		"pot volume: 50 L\npot volume: 60 L":          `in.txt:2: "pot volume" stands in line 1 already`,
		"pot volume: 5 L":                             `in.txt:1: pot volume: 5 L is outside`,
		"  300; 72.4":                                 `in.txt:1: a line that begins with a space`,
		"pot volume: 50 L\n  300; 72.4":               `in.txt:2: a line that begins with a space`,
		"lots:\n  volume (L); strength (%vol)\n  300": "line 2 has 1 fields",
		"pot volume:":                                 "nothing is given",
	} {
		s := find(t)
		if err := s.ReadFile("in.txt", text, "."); err == nil || !strings.Contains(err.Error(), says) {
			t.Errorf("%q: %v; want %q", text, err, says)
		}
		if len(s.Values()) != 0 {
			t.Errorf("%q: something is given all the same: %v", text, s.Values())
		}
	}
}

func TestAsk(t *testing.T) {
	s := inputs.NewSet([]entry.Input{
		{Kind: entry.Number, Name: "pot volume", Unit: "L", Usual: "390 L", Ranged: true, Min: 10, Max: 1000},
		{Kind: entry.Strength, Name: "pot strength", Unit: entry.StrengthUnit, Usual: "45 %vol"},
	})
	var w strings.Builder
	if err := s.Ask(strings.NewReader("1,512\n5000\n400\n\n"), &w, "."); err != nil {
		t.Fatal(err)
	}
	if v := s.Values(); v["pot volume"] != "400 L" || len(v) != 1 {
		t.Errorf("%v", v)
	}
	for _, part := range []string{"pot volume (10 to 1000 L) [390 L]: ", "may be 1.512 or 1512", "5000 L is outside", "pot strength [45 %vol]: "} {
		if !strings.Contains(w.String(), part) {
			t.Errorf("%q is not asked:\n%s", part, w.String())
		}
	}
	if err := s.Ask(strings.NewReader("400\n"), &w, "."); err == nil || !strings.Contains(err.Error(), `ended at "pot strength"`) {
		t.Errorf("an end of the answers: %v", err)
	}
}
