package botanical

import (
	"io/fs"
	"strings"
	"testing"
	"testing/fstest"

	"swanneck/mathlib/compound"
)

// withFile returns the data files with one of them changed.
func withFile(t *testing.T, name string, change func(string) string) fs.FS {
	t.Helper()
	out := fstest.MapFS{}
	entries, err := fs.ReadDir(files, "data")
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		text, err := fs.ReadFile(files, "data/"+e.Name())
		if err != nil {
			t.Fatal(err)
		}
		s := string(text)
		if e.Name() == name {
			changed := change(s)
			if changed == s {
				t.Fatalf("%s was not changed", name)
			}
			s = changed
		}
		out["data/"+e.Name()] = &fstest.MapFile{Data: []byte(s)}
	}
	return out
}

func TestLoad(t *testing.T) {
	all := embedded()
	if len(all.plants) != 24 {
		t.Errorf("%d plants; want the 24 of the list", len(all.plants))
	}
	rows := 0
	for _, p := range all.plants {
		rows += len(p.printed)
		if !p.Oil.Amount.IsSet() || p.Oil.Unit == "" || p.Oil.Basis == "" || !p.From.Known() || !p.Oil.From.Known() {
			t.Errorf("%s has no oil content with unit, basis and source: %+v", p.Name, p.Oil)
		}
		for _, m := range p.printed {
			if !m.from.Known() || m.share.Low > m.share.High {
				t.Errorf("%s: %+v", p.Name, m)
			}
		}
		b := p.herb(1)
		b.MoisturePct = 10
		if _, err := b.Oil.GPerKg(10); err != nil {
			t.Errorf("%s: %v", p.Name, err)
		}
		if p.Minimum.Amount.IsSet() {
			// No list is worth much whose richest lot would fail the pharmacopoeia.
			if least := p.Minimum.Amount.Low / 10; least > p.Oil.Amount.High {
				t.Errorf("%s: at least %g %% v/w by the pharmacopoeia, and lots hold %v", p.Name, least, p.Oil.Amount)
			}
		}
	}
	if rows != 67 {
		t.Errorf("%d rows of markers; want 67", rows)
	}
}

// Every figure that the code asks for by name is there, in the unit that it takes.
func TestFigures(t *testing.T) {
	for name, unit := range map[string]string{
		"first-order rate": "1/h", "diffusion": "m²/s", "activation energy": "kJ/mol", "usual activation energy": "kJ/mol", "retained when drained": "L/kg",
		"retained when wrung by hand": "L/kg", "retained when pressed": "L/kg", "displaced by dry plant": "L/kg", "void of a wet heap": "dimensionless",
		"oil density": "kg/L", "thujone by steam": "%",
	} {
		if f := figureOf(name); f.unit != unit || !f.from.Known() || f.Low > f.High {
			t.Errorf("%s: %+v; want it in %s", name, f, unit)
		}
	}
	if len(embedded().figures) != 11 {
		t.Errorf("%d figures; all of them must be asked for", len(embedded().figures))
	}
	for name := range embedded().spread {
		if c, err := compound.Find(name); err != nil || c.Name != name {
			t.Errorf("volatility_spread.csv: %q is no compound", name)
		}
	}
}

// The compounds of a sum go the same way in a still, so that its split does not matter: as the note in the data says.
func TestThujonesAreAlike(t *testing.T) {
	a, errA := compound.Find("alpha-thujone")
	b, errB := compound.Find("beta-thujone")
	if errA != nil || errB != nil {
		t.Fatal(errA, errB)
	}
	x, _ := a.Vapour.LnPa(350)
	y, _ := b.Vapour.LnPa(350)
	if x != y || a.InWater.GammaInf != b.InWater.GammaInf {
		t.Errorf("alpha- and beta-thujone differ: ln p %v, %v", x, y)
	}
}

func TestLoadRefuses(t *testing.T) {
	replace := func(from, to string) func(string) string {
		return func(s string) string { return strings.Replace(s, from, to, 1) }
	}
	for _, c := range []struct {
		file   string
		change func(string) string
		want   string
	}{
		{"oil_content.csv", replace("juniper,", "junipper,"), "not in plants.csv"},
		{"oil_content.csv", replace("0.2,0.6,as weighed", "0.2,0.6,wet"), "the basis is"},
		{"oil_density.csv", replace("juniper,", "junipper,"), "not in plants.csv"},
		{"markers.csv", replace("juniper,alpha-pinene,alpha-pinene", "juniper,alpha-pinene,alpha-pinen"), "not the name of a compound"},
		{"markers.csv", replace("24.1,55.4,range", "24.1,55.4,rough"), "the kind is"},
		{"markers.csv", replace("juniper,alpha-pinene", "junipper,alpha-pinene"), "not in plants.csv"},
		{"markers.csv", replace("yes,seen,\"European Pharmacopoeia 10, on the oil\"", "yes,heard,\"x\""), "the status is"},
		{"sums.csv", replace("0.6;0.4", "0.6;0.5"), "adding up to 1"},
		{"sums.csv", replace("0.6;0.4", "0.6;few"), "is no share"},
		{"sums.csv", replace("geranial;neral", "geranal;neral"), "not the name of a compound"},
		{"plants.csv", replace("aniseed,anise;", "aniseed,badian;"), "are both called"},
		{"figures.csv", replace("0.05,0.3", "little,0.3"), "must be a number"},
	} {
		if _, err := load(withFile(t, c.file, c.change)); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s: %v; want an error with %q", c.file, err, c.want)
		}
	}
}
