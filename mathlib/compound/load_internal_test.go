package compound

import (
	"io/fs"
	"strings"
	"testing"
	"testing/fstest"
)

// broken returns the data files with one text replaced by another in one file.
func broken(t *testing.T, file, old, new string) fs.FS {
	t.Helper()
	m := fstest.MapFS{}
	names, err := fs.Glob(files, "data/*.csv")
	if err != nil || len(names) < 10 {
		t.Fatalf("%d data files, %v", len(names), err)
	}
	for _, n := range names {
		b, err := fs.ReadFile(files, n)
		if err != nil {
			t.Fatal(err)
		}
		text := string(b)
		if n == "data/"+file {
			if strings.Count(text, old) < 1 {
				t.Fatalf("%s does not hold %q", file, old)
			}
			text = strings.Replace(text, old, new, 1)
		}
		m[n] = &fstest.MapFile{Data: []byte(text)}
	}
	return m
}

func TestTheDataFilesLoad(t *testing.T) {
	tab, err := load(files)
	if err != nil {
		t.Fatal(err)
	}
	if len(tab.list) < 45 {
		t.Errorf("%d compounds; want 45", len(tab.list))
	}
	for _, c := range tab.list {
		for _, f := range c.facts()[:3] {
			if !f.from.Known() {
				t.Errorf("%s has no %s", c.Name, f.what)
			}
		}
	}
}

// A number without a source is refused, in every file, and so is what else cannot be right.
func TestTheLoaderRefuses(t *testing.T) {
	for _, c := range []struct{ file, old, new, want string }{
		{"compounds.csv", ",memory,structure written out by hand; registry number and synonyms from memory", ",memory,", "water has no source"},
		{"vapour_pressure.csv", "\"Antoine equation of Landolt-Börnstein IV/20 for Carvone, 99-49-0\"", "", "carvone has no source"},
		{"density.csv", "801.8,20,seen,\"CRC Handbook of Chemistry and Physics, physical constants of organic compounds\"", "801.8,20,seen,  ", "isobutanol has no source"},
		{"octanol_water.csv", "ethyl lactate,-0.18,memory,from memory", "ethyl lactate,-0.18,memory,", "ethyl lactate has no source"},
		{"solubility.csv", "limonene,0.0194,25,seen,\"AqSolDB (2019), public domain\"", "limonene,0.0194,25,seen,", "limonene has no source"},
		{"henry.csv", "1.9,6300,seen,\"Sander, compilation of Henry's constants, version 4.0.2, literature review\"", "1.9,6300,seen,", "ethanol has no source"},
		{"groups.csv", "assigned by structure; checked against the assignments of the library thermo (MIT licence)", "", "has no source"},
		{"water_anchor.csv", "none taken: the group method alone", "", "acetaldehyde has no source"},
		{"heat_of_vaporisation.csv", "\"Perry's Chemical Engineers' Handbook, 8th edition, table 2-150\"", "", "ethanol has no source"},
		{"liquid_heat_capacity.csv", "\"Perry's Chemical Engineers' Handbook, 8th edition, table 2-153\"", "", "ethanol has no source"},
		{"density.csv", "998.2,20,memory", "998.2,20,sure", "the status is \"sure\""},
		{"density.csv", "998.2,20", "heavy,20", "kg_m3 is \"heavy\""},
		{"density.csv", "998.2,20", "NaN,20", "kg_m3 is \"NaN\""},
		{"density.csv", "\nwater,", "\nwatre,", "watre is not in compounds.csv"},
		{"density.csv", "\nethanol,", "\nwater,", "water stands here twice"},
		{"density.csv", "kg_m3", "density", "there is no column \"kg_m3\""},
		{"density.csv", "# Density", "Density", "there is no head"},
		{"vapour_pressure.csv", "carvone,antoine", "carvone,clapeyron", "the form is \"clapeyron\""},
		{"vapour_pressure.csv", "23.13674,5444.163,-31.98,,", "23.13674,5444.163,-31.98,1,", "carvone has more coefficients"},
		{"vapour_pressure.csv", ",330,501,", ",501,330,", "the range of carvone is empty"},
		{"groups.csv", "16:1", "16", "\"16\" is no group"},
		{"water_anchor.csv", "96,70,dortmund", "96,70,psrk", "the base is \"psrk\""},
		{"water_anchor.csv", "96,70,dortmund", "-96,70,dortmund", "gamma_inf is -96"},
		{"compounds.csv", "C2H6O", "C2H6Na", "no atom is called 'N'"},
		{"compounds.csv", "ethanal", "ethyl alcohol", "are both called \"ethyl alcohol\""},
	} {
		_, err := load(broken(t, c.file, c.old, c.new))
		if err == nil || !strings.Contains(err.Error(), c.want) || !strings.Contains(err.Error(), c.file) {
			t.Errorf("%s with %q for %q: %v; want an error with %q", c.file, c.new, c.old, err, c.want)
		}
	}
	if _, err := load(fstest.MapFS{}); err == nil {
		t.Error("no files: no error")
	}
}

func TestTheErrorNamesTheLine(t *testing.T) {
	_, err := load(broken(t, "density.csv", "998.2,20", "x,20"))
	// Three lines of head, the line of names, then water.
	if err == nil || !strings.Contains(err.Error(), "data/density.csv, line 5: ") {
		t.Errorf("got %v; want line 5 of data/density.csv", err)
	}
}
