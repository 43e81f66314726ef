package equilibrium

import (
	"encoding/csv"
	"math"
	"os"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"

	"swanneck/mathlib/compound"
)

func rows(t *testing.T, file string) []map[string]string {
	t.Helper()
	f, err := os.Open("../../testdata/equilibrium/" + file)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	lines, err := r.ReadAll()
	if err != nil || len(lines) < 2 {
		t.Fatalf("%s: %d lines, %v", file, len(lines), err)
	}
	var out []map[string]string
	for _, l := range lines[1:] {
		m := map[string]string{}
		for i, h := range lines[0] {
			m[h] = l[i]
		}
		out = append(out, m)
	}
	return out
}

func numbers(t *testing.T, s string) []float64 {
	t.Helper()
	var out []float64
	for f := range strings.FieldsSeq(s) {
		x, err := strconv.ParseFloat(f, 64)
		if err != nil {
			t.Fatal(err)
		}
		out = append(out, x)
	}
	return out
}

func TestPublishedGammasOfNRTLAndWilson(t *testing.T) {
	for _, r := range rows(t, "gamma_nrtl_wilson.csv") {
		n := func(s string) float64 {
			if r[s] == "" {
				return 0
			}
			return numbers(t, r[s])[0]
		}
		var a Activity = NRTL{A12: n("p12"), A21: n("p21"), Alpha: n("alpha")}
		if r["model"] == "wilson" {
			a = Wilson{A12: math.Log(n("p12")), A21: math.Log(n("p21"))}
		}
		ln1, ln2, _, _ := a.LnGamma(n("x1"), 350)
		if g1, g2 := math.Exp(ln1), math.Exp(ln2); math.Abs(g1-n("gamma1")) > 1e-6 || math.Abs(g2-n("gamma2")) > 1e-6 {
			t.Errorf("%s at x1 = %s: %.9f, %.9f; %s gives %s, %s ± 1e-6", r["model"], r["x1"], g1, g2, r["source"], r["gamma1"], r["gamma2"])
		}
	}
}

// The formula takes the fractions as they stand: those of the Dortmund sample sum to 0.9 in print.
func TestPublishedGammasOfUNIFAC(t *testing.T) {
	published := 0
	for _, r := range rows(t, "gamma_unifac.csv") {
		m := method(compound.Base(r["method"]))
		var mol []molecule
		for part := range strings.SplitSeq(r["groups"], "/") {
			var g []compound.Group
			for s := range strings.FieldsSeq(part) {
				sub, count, _ := strings.Cut(s, ":")
				g = append(g, compound.Group{Sub: int(numbers(t, sub)[0]), Count: int(numbers(t, count)[0])})
			}
			c, err := m.molecule(g)
			if err != nil {
				t.Fatal(err)
			}
			mol = append(mol, c)
		}
		set, err := newGroupSet(m, mol)
		if err != nil {
			t.Fatal(err)
		}
		x, want := numbers(t, r["x"]), numbers(t, r["gamma"])
		got := make([]float64, len(x))
		set.setTemp(numbers(t, r["T_K"])[0])
		set.lnGamma(x, got)
		for i := range x {
			if g := math.Exp(got[i]); math.Abs(g-want[i]) > 1e-6 {
				t.Errorf("%s, component %d: %.9f; %s (%s) gives %.9f ± 1e-6", r["method"], i+1, g, r["source"], r["status"], want[i])
			}
		}
		if r["status"] == "published" {
			published++
		}
	}
	if published < 3 {
		t.Errorf("%d published cases; want 3", published)
	}
}

// Figures of another program from the same parameters: goldens to the digits it printed.
func TestGammasGolden(t *testing.T) {
	for name, want := range map[string][2]float64{
		"NRTL":            {1.929008, 1.143551},
		"Wilson":          {1.902170, 1.145915},
		"UNIQUAC":         {1.944642, 1.145828},
		"UNIFAC":          {1.868869, 1.170614},
		"UNIFAC Dortmund": {1.925003, 1.145807},
	} {
		p, err := NewPair(UseModel(name))
		if err != nil {
			t.Fatal(err)
		}
		ln1, ln2, _, _ := p.LnGamma(0.252, 343.15)
		if g1, g2 := math.Exp(ln1), math.Exp(ln2); math.Abs(g1-want[0]) > 6e-7 || math.Abs(g2-want[1]) > 6e-7 {
			t.Errorf("%s at x = 0.252 and 343.15 K: %.7f, %.7f; golden %v", name, g1, g2, want)
		}
	}
}

// The special forms for ethanol and water, and for traces in them, are the general one.
func TestSpecialFormsAreTheGeneralOne(t *testing.T) {
	for _, base := range []compound.Base{compound.Original, compound.Dortmund} {
		pair := solventPair(base)
		m := method(base)
		for _, c := range compound.All() {
			mol, err := m.molecule(groupsOf(c, base))
			if err != nil {
				t.Fatal(err)
			}
			set, err := newGroupSet(m, []molecule{pair.ethanol, pair.water, mol})
			if err != nil {
				t.Fatal(err)
			}
			tr, err := newTraceOf(c, base, false)
			if err != nil {
				t.Fatal(err)
			}
			out := make([]float64, 3)
			for _, x := range []float64{0, 1e-6, 0.03, 0.3, 0.9, 1} {
				for _, tempK := range []float64{298.15, 352, 373.15} {
					set.setTemp(tempK)
					set.lnGamma([]float64{x, 1 - x, 0}, out)
					s := solvent{pair: pair}
					s.set(x, tempK)
					if got := tr.lnGamma(&s); math.Abs(got-out[2]) > 1e-11*(1+math.Abs(out[2])) {
						t.Errorf("%s, %s at x = %g, %g K: ln γ = %.14g; the general form %.14g", c.Name, base, x, tempK, got, out[2])
					}
					ln1, ln2, _, _ := pair.LnGamma(x, tempK)
					if math.Abs(ln1-out[0]) > 1e-12 || math.Abs(ln2-out[1]) > 1e-12 {
						t.Errorf("%s at x = %g, %g K: %.14g, %.14g; the general form %.14g, %.14g", base, x, tempK, ln1, ln2, out[0], out[1])
					}
				}
			}
		}
	}
}

func TestTheLoadersRefuse(t *testing.T) {
	all := func(file, old, new string) fstest.MapFS {
		m := fstest.MapFS{}
		for _, n := range []string{"ethanol_water.csv", "unifac_original_subgroups.csv", "unifac_original_pairs.csv"} {
			b, err := files.ReadFile("data/" + n)
			if err != nil {
				t.Fatal(err)
			}
			text := string(b)
			if n == file {
				if !strings.Contains(text, old) {
					t.Fatalf("%s does not hold %q", file, old)
				}
				text = strings.Replace(text, old, new, 1)
			}
			m["data/"+n] = &fstest.MapFile{Data: []byte(text)}
		}
		return m
	}
	for _, c := range []struct{ file, old, new, want string }{
		{"ethanol_water.csv", "NRTL,nrtl", "NRTL,nrlt", "the form is \"nrlt\""},
		{"ethanol_water.csv", "NRTL,nrtl", "NRTL own,nrtl", "it must be NRTL"},
		{"ethanol_water.csv", "\"Gmehling and Onken, DECHEMA Chemistry Data Series I/1: -109.6339 and 1332.312 cal/mol, from memory\"", "", "NRTL DECHEMA has no source"},
		{"ethanol_water.csv", "358.22738915184794", "", "b12_K is \"\""},
		{"unifac_original_subgroups.csv", "as in the head", "", "no source"},
		{"unifac_original_subgroups.csv", "1,CH3,1", "1,CH3,main", "main is \"main\""},
		{"unifac_original_pairs.csv", "as in the head", " ", "no source"},
		{"unifac_original_pairs.csv", "1,2,86.02", "1,2,86,02", "wrong number of fields"},
	} {
		fsys := all(c.file, c.old, c.new)
		_, err1 := loadModels(fsys)
		_, err2 := loadGroups(fsys, compound.Original)
		err := err1
		if err == nil {
			err = err2
		}
		if err == nil || !strings.Contains(err.Error(), c.want) || !strings.Contains(err.Error(), c.file) {
			t.Errorf("%s with %q for %q: %v; want an error with %q", c.file, c.new, c.old, err, c.want)
		}
	}
}
