package compound

import (
	"embed"
	"fmt"
	"io/fs"
	"math"
	"slices"
	"strconv"
	"strings"
	"sync"

	"swanneck/mathlib/internal/datafile"
)

//go:embed data/*.csv
var files embed.FS

// table is every compound, sorted by name.
type table struct {
	list  []*Compound
	index map[string]int // plain name or synonym → place in list
}

// embedded returns the compounds of the data files. That they can be read is tested.
var embedded = sync.OnceValue(func() *table {
	t, err := load(files)
	if err != nil {
		panic(err)
	}
	return t
})

// provenance reads where a row comes from: no number without a source.
func provenance(r datafile.Row) Provenance {
	status, source, note := r.Source()
	if _, ok := statusWords[Status(status)]; !ok {
		r.Fail("the status is %q; it must be seen, memory, estimated, fitted or isomer", status)
	}
	return Provenance{Status: Status(status), Source: source, Note: note}
}

// load reads the data files of fsys.
func load(fsys fs.FS) (*table, error) {
	t := &table{index: map[string]int{}}
	byName := map[string]*Compound{}
	steps := []struct {
		file string
		read func(*Compound, datafile.Row)
	}{
		{"compounds", nil},
		{"vapour_pressure", readVapour},
		{"density", func(c *Compound, r datafile.Row) {
			c.Density = Density{r.Number("kg_m3"), r.Number("at_C"), provenance(r)}
		}},
		{"octanol_water", func(c *Compound, r datafile.Row) { c.Octanol = OctanolWater{r.Number("log_kow"), provenance(r)} }},
		{"solubility", func(c *Compound, r datafile.Row) {
			c.Solubility = Solubility{r.Number("g_L"), r.Number("at_C"), provenance(r)}
		}},
		{"henry", func(c *Compound, r datafile.Row) {
			c.Henry = Henry{r.Number("mol_m3_Pa"), r.Optional("slope_K"), provenance(r)}
		}},
		{"groups", func(c *Compound, r datafile.Row) {
			c.Groups = Groups{readGroups(r, "original"), readGroups(r, "dortmund"), provenance(r)}
		}},
		{"water_anchor", readAnchor},
		{"heat_of_vaporisation", func(c *Compound, r datafile.Row) {
			c.Vaporisation = HeatOfVaporisation{MinC: r.Number("min_K") - 273.15, MaxC: r.Number("max_K") - 273.15, From: provenance(r),
				c: [4]float64{r.Number("c1_J_mol"), r.Number("c2"), r.Number("c3"), r.Number("c4")}, tcK: r.Number("tc_K")}
		}},
		{"liquid_heat_capacity", func(c *Compound, r datafile.Row) {
			c.Heat = LiquidHeat{MinC: r.Number("min_K") - 273.15, MaxC: r.Number("max_K") - 273.15, From: provenance(r),
				c: [5]float64{r.Number("c1"), r.Number("c2"), r.Number("c3"), r.Number("c4"), r.Number("c5")}}
		}},
	}
	for _, step := range steps {
		rows, err := datafile.Read(fsys, "data/"+step.file+".csv")
		if err != nil {
			return nil, err
		}
		seen := map[string]bool{}
		for _, r := range rows {
			name := r.Text("name")
			if seen[name] {
				r.Fail("%s stands here twice", name)
			}
			seen[name] = true
			if step.read == nil {
				byName[name] = readIdentity(r)
				t.list = append(t.list, byName[name])
			} else if c := byName[name]; c == nil {
				r.Fail("%s is not in compounds.csv", name)
			} else {
				step.read(c, r)
			}
			if err := r.Err(); err != nil {
				return nil, err
			}
		}
	}
	slices.SortFunc(t.list, func(a, b *Compound) int { return strings.Compare(plain(a.Name), plain(b.Name)) })
	for i, c := range t.list {
		for _, n := range append([]string{c.Name}, c.Synonyms...) {
			if j, taken := t.index[plain(n)]; taken && j != i {
				return nil, fmt.Errorf("data/compounds.csv: %s and %s are both called %q", t.list[j].Name, c.Name, n)
			}
			t.index[plain(n)] = i
		}
	}
	return t, nil
}

func readIdentity(r datafile.Row) *Compound {
	c := &Compound{Name: r.Text("name"), CAS: r.Text("cas"), Formula: r.Text("formula"), Identity: provenance(r)}
	if c.Name == "" {
		r.Fail("there is no name")
	}
	for s := range strings.SplitSeq(r.Text("synonyms"), ";") {
		if s != "" {
			c.Synonyms = append(c.Synonyms, s)
		}
	}
	var err error
	if c.MolarMassG, err = molarMassG(c.Formula); err != nil {
		r.Fail("%v", err)
	}
	return c
}

func readVapour(c *Compound, r datafile.Row) {
	v := VapourPressure{MinC: r.Number("min_K") - 273.15, MaxC: r.Number("max_K") - 273.15, From: provenance(r), form: formNames[r.Text("form")]}
	wanted := 3
	switch v.form {
	case antoine:
	case wagner25, iapws:
		wanted = 4
		if v.form == iapws {
			wanted = 6
		}
		v.tcK, v.lnPc = r.Number("tc_K"), math.Log(r.Number("pc_Pa"))
	default:
		r.Fail("the form is %q; it must be antoine, wagner25 or iapws", r.Text("form"))
	}
	for i := range v.a {
		name := string(rune('a' + i))
		if i < wanted {
			v.a[i] = r.Number(name)
		} else if r.Text(name) != "" {
			r.Fail("%s has more coefficients than the form %s takes", c.Name, r.Text("form"))
		}
	}
	if v.MinC >= v.MaxC {
		r.Fail("the range of %s is empty", c.Name)
	}
	c.Vapour = v
}

func readGroups(r datafile.Row, column string) []Group {
	var out []Group
	for part := range strings.FieldsSeq(r.Text(column)) {
		sub, count, ok := strings.Cut(part, ":")
		s, err1 := strconv.Atoi(sub)
		n, err2 := strconv.Atoi(count)
		if !ok || err1 != nil || err2 != nil || n < 1 {
			r.Fail("%q is no group; it must be subgroup:count", part)
			return nil
		}
		out = append(out, Group{s, n})
	}
	if len(out) == 0 {
		r.Fail("%s has no groups", r.Text("name"))
	}
	return out
}

func readAnchor(c *Compound, r datafile.Row) {
	a := WaterAnchor{Base: Base(r.Text("base")), From: provenance(r)}
	if a.Base != Original && a.Base != Dortmund {
		r.Fail("the base is %q; it must be original or dortmund", a.Base)
	}
	if r.Text("gamma_inf") != "" {
		a.GammaInf, a.TempC = r.Number("gamma_inf"), r.Number("at_C")
		if a.GammaInf <= 0 {
			r.Fail("gamma_inf is %g; it must be above 0", a.GammaInf)
		}
	}
	c.InWater = a
}
