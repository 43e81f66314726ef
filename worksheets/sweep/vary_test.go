package sweep

import (
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"
)

func TestGrid(t *testing.T) {
	for _, c := range []struct {
		vary []string
		want []string
	}{
		{[]string{"pot strength=30..60/10 %vol"}, []string{"30 %vol", "40 %vol", "50 %vol", "60 %vol"}},
		{[]string{" Pot  Strength = 30 %vol .. 60/15%vol"}, []string{"30 %vol", "45 %vol", "60 %vol"}},
		{[]string{"pot volume=0,2..0,5/0,1 hL"}, []string{"20 L", "30 L", "40 L", "50 L"}},
		{[]string{"share (by volume)=0.1..0.4/0.1"}, []string{"0.1", "0.2", "0.3", "0.4"}},
		{[]string{"room=-10..10/10 °C"}, []string{"-10 °C", "0 °C", "10 °C"}},
		{[]string{"room=−5..5/10 °C"}, []string{"-5 °C", "5 °C"}},
		{[]string{"room=50;68;86 °F"}, []string{"10 °C", "20 °C", "30 °C"}},
		{[]string{"pot strength=30; 40,5; 50 %vol"}, []string{"30 %vol", "40.5 %vol", "50 %vol"}},
		{[]string{"pot strength=45 %vol; 100 proof"}, []string{"45 %vol", "50.0"}}, // 27 CFR part 30: proof is twice the strength at 60 °F
		{[]string{"pot volume=1 500 mL; 20 L"}, nil},                               // below the range
		{[]string{"pot volume=1 000 000..1 000 000,5/0.5 mL"}, []string{"1000 L", "1000.0005 L"}},
		{[]string{"still=POT; column"}, []string{"pot", "column"}},
		{[]string{"filtered=yes; no", "filled on=2026-03-01;2026-03-02"}, []string{"yes | 2026-03-01", "yes | 2026-03-02", "no | 2026-03-01", "no | 2026-03-02"}},
		{[]string{"pot volume=100..200/100 L", "still=pot;column", "pot strength=41;42 %vol"}, []string{
			"100 L | pot | 41 %vol", "100 L | pot | 42 %vol", "100 L | column | 41 %vol", "100 L | column | 42 %vol",
			"200 L | pot | 41 %vol", "200 L | pot | 42 %vol", "200 L | column | 41 %vol", "200 L | column | 42 %vol"}},
	} {
		p, err := NewGrid(set(t), c.vary, ".", 100)
		if c.want == nil || strings.Contains(c.vary[0], "1 000 000") {
			if err == nil || !strings.Contains(err.Error(), "is outside 10 to 1000 L") {
				t.Errorf("%q: %v; want a refusal", c.vary, err)
			}
			continue
		}
		if err != nil {
			t.Errorf("%q: %v", c.vary, err)
			continue
		}
		got := said(p)
		for i := range c.want {
			if len(got) != len(c.want) || !strings.HasPrefix(got[i], c.want[i]) {
				t.Errorf("%q: %q; want %q", c.vary, got, c.want)
				break
			}
		}
	}
}

// What is given by --set is a column too, behind those that vary, and every scenario has it.
func TestGridWithGiven(t *testing.T) {
	p, err := NewGrid(set(t, "pot volume=1 hL", "still=Column"), []string{"pot strength=41;42 %vol"}, ".", 100)
	if err != nil {
		t.Fatal(err)
	}
	if got, want := said(p), []string{"41 %vol | 100 L | column", "42 %vol | 100 L | column"}; !reflect.DeepEqual(got, want) {
		t.Errorf("%q; want %q", got, want)
	}
	want := []Column{{Name: "pot strength", Unit: "%vol", Figures: true, Varied: true}, {Name: "pot volume", Unit: "L", Figures: true}, {Name: "still"}}
	if !reflect.DeepEqual(p.Columns, want) {
		t.Errorf("%+v; want %+v", p.Columns, want)
	}
	if got := p.inputs(1); got["pot volume"] != "1 hL" || got["pot strength"] != "42 %vol" || len(got) != 3 {
		t.Errorf("cells get %q", got) // the text as it was given: the same number as in a run with --set
	}
}

func TestVaryThatDoesNotFit(t *testing.T) {
	for _, c := range []struct{ vary, says string }{
		{"pot strenth=30..60/5 %vol", `no input is called "pot strenth"; the nearest: pot strength`},
		{"volume=30;40 L", "the nearest: pot volume"},
		{"pot strength", "want name=values"},
		{"pot strength=30..60 %vol", "a range without a step"},
		{"pot strength=30..60/7 %vol", "want 58 or 65 as the end"},
		{"pot strength=30..60/40 %vol", "a step of 40 is more than the range"},
		{"pot strength=30..60/0 %vol", "a step of 0"},
		{"pot strength=30..60/-5 %vol", "a step of -5"},
		{"pot strength=60..30/5 %vol", "the lower end first"},
		{"pot strength=30..30/5 %vol", "the lower end first"},
		{"pot strength=30..60/5", "has no unit"},
		{"pot strength=30..60/5 L", "no unit of strength"},
		{"pot strength=30 proof..60/5 %vol", "two units"},
		{"pot strength=a..60/5 %vol", "does not begin with a number"},
		{"pot strength=10..60/5 %vol", "10 %vol is outside 20 to 70 %vol"},
		{"pot strength=30,40,50 %vol", "set values apart by semicolons"},
		{"pot strength=30,40 %vol", "is one value, which does not vary"},
		{"pot strength=30;40", "has no unit"},
		{"pot strength=30; 40 L", "no unit of strength"},
		{"pot strength=30; 1,512 %vol", "may be 1.512 or 1512"},
		{"pot strength=30; ; 40 %vol", "an empty value"},
		{"pot strength=90 proof; 45,0 %vol; 45 %vol", "45,0 %vol and 45 %vol are one value"},
		{"still=pot; kettle", `"kettle" is no choice; want pot, column`},
		{"lot=a; b\xff", "the text is not UTF-8"},
		{"still=pot", "is one value"},
		{"still=pot; POT", "are one value"},
		{"filtered=yes; perhaps", "neither yes nor no"},
		{"filled on=2026-03-01; soon", "want year-month-day"},
		{"pot volume=10..1000/0.001 L", "these are 990001 scenarios, and at most 100 are run; if you mean it, say --most 990001"},
		{"pot volume=10..1000/1e-300 L", "at most 100 are run"},
	} {
		p, err := NewGrid(set(t), []string{c.vary}, ".", 100)
		if err == nil || !strings.Contains(err.Error(), c.says) || strings.Contains(err.Error(), "\n") {
			t.Errorf("%q: %v, %v; want %q", c.vary, p, err, c.says)
		}
	}
	for _, c := range []struct {
		given string
		vary  []string
		says  string
	}{
		{"pot strength=50 %vol", []string{"pot strength=30;40 %vol"}, "it is varied, and given one value too"},
		{"", []string{"still=pot;column", "Still=pot;column"}, "it is varied twice"},
		{"", nil, "nothing varies"},
	} {
		s := set(t)
		if c.given != "" {
			s = set(t, c.given)
		}
		if _, err := NewGrid(s, c.vary, ".", 100); err == nil || !strings.Contains(err.Error(), c.says) {
			t.Errorf("%q: %v; want %q", c.vary, err, c.says)
		}
	}
}

func TestList(t *testing.T) {
	table := "\ufeffpot strength (%vol); Pot Volume; still; share (by volume)\n" +
		"# a remark\n41,5; 1 hL; column; 0,25\n\n90 proof; 200 L; pot; 1\n"
	p, err := NewList(set(t, "filtered=yes"), "trial.csv", table, ".", 100)
	if err != nil {
		t.Fatal(err)
	}
	got := said(p)
	if len(got) != 2 || got[0] != "41.5 %vol | 100 L | column | 0.25 | yes" || !strings.HasPrefix(got[1], "45.0") || !strings.HasSuffix(got[1], " | 200 L | pot | 1 | yes") {
		t.Errorf("%q", got)
	}
	// A column that says the same in every row does not vary.
	p, err = NewList(set(t), "trial.csv", "pot volume (L),still\n100,pot\n100.0,column\n", ".", 100)
	if err != nil || p.Columns[0].Varied || !p.Columns[1].Varied {
		t.Errorf("%+v, %v", p, err)
	}
	for text, says := range map[string]string{
		"pot strength (%vol)\n41\n10\n":                       "trial.csv, line 3: pot strength: 10 %vol is outside",
		"pot strength\n41 %vol\n\n42\n":                       "trial.csv, line 4: pot strength: a strength of 42 has no unit",
		"pot strength (%vol),pot volume (L)\n41,\n":           "trial.csv, line 2: pot volume: nothing is given",
		"pot strength (%vol),pot volume (L)\n41,300\n42\n":    "line 3 has 1 fields and the headings 2",
		"pot strenth (%vol)\n41\n":                            `heading 1: no input is called "pot strenth"; the nearest: pot strength`,
		"still,pot strength (%vol)\nkettle,41\n":              "trial.csv, line 2: still: \"kettle\" is no choice",
		"still (L)\npot\n":                                    "has the unit L",
		"pot strength (%vol),Pot  strength [% mass]\n41,42\n": "stands above two columns",
		"pot strength (L)\n41\n":                              "no unit of strength",
		"filtered,pot volume (L)\nyes,300\n":                  `"filtered" is a column, and given one value too`,
		"pot volume (L)\n":                                    "no scenario stands below the headings",
		"":                                                    "nothing is in the table",
		"pot volume (L)\n" + strings.Repeat("100\n", 101):     "at most 100 are run",
	} {
		_, err := NewList(set(t, "filtered=yes"), "trial.csv", text, ".", 100)
		if err == nil || !strings.Contains(err.Error(), says) || strings.Contains(err.Error(), "\n") {
			t.Errorf("%q: %v; want %q", text, err, says)
		}
	}
}

// A table as an input is varied by its files.
func TestTablesVary(t *testing.T) {
	dir := t.TempDir()
	for name, text := range map[string]string{"a.csv": "volume (L)\n1\n", "b.csv": "volume (L)\n2\n"} {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	s := setOf(t, `InputTable("lots", "volume (L)\n300")`)
	p, err := NewGrid(s, []string{"lots=a.csv; b.csv"}, dir, 10)
	if err != nil {
		t.Fatal(err)
	}
	if got := said(p); got[1] != "b.csv" || !strings.HasPrefix(p.inputs(1)["lots"], "volume (L)\n2\n") {
		t.Errorf("%q, %q", got, p.inputs(1))
	}
}
