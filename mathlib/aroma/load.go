package aroma

import (
	"embed"
	"io/fs"
	"strings"
	"sync"

	"swanneck/mathlib/compound"
	"swanneck/mathlib/internal/datafile"
)

//go:embed data/*.csv
var files embed.FS

// descriptors are those of Abraham, dimensionless.
type descriptors struct {
	e, s, a, b, v float64
	from          compound.Provenance
}

// release are the coefficients of one strength.
type release struct {
	pct, c, e, s, a, b, v float64
	from                  compound.Provenance
}

// threshold is the least that is smelt, in µg/L of liquid, or in µg/m³ of air.
type threshold struct {
	value float64
	from  compound.Provenance
}

type tables struct {
	release     []release // by rising strength, from 10 % vol
	descriptors map[string]descriptors
	thresholds  map[Matrix]map[string][]threshold
}

// embedded returns the data files. That they can be read is tested.
var embedded = sync.OnceValue(func() *tables {
	t, err := load(files)
	if err != nil {
		panic(err)
	}
	return t
})

// nameOf returns the name under which a compound is kept: that of package compound, or the name given, in small letters.
func nameOf(name string) string {
	if c, err := compound.Find(name); err == nil {
		return c.Name
	}
	return strings.ToLower(strings.TrimSpace(name))
}

func load(fsys fs.FS) (*tables, error) {
	t := &tables{descriptors: map[string]descriptors{}, thresholds: map[Matrix]map[string][]threshold{Water: {}, Ethanol40: {}, Air: {}}}
	matrices := map[string]Matrix{"water": Water, "ethanol40": Ethanol40}
	for _, step := range []struct {
		file string
		read func(datafile.Row, compound.Provenance)
	}{
		{"release", func(r datafile.Row, p compound.Provenance) {
			row := release{r.Number("pct_vol"), r.Number("c"), r.Number("e"), r.Number("s"), r.Number("a"), r.Number("b"), r.Number("v"), p}
			if n := len(t.release); n > 0 && row.pct <= t.release[n-1].pct {
				r.Fail("%g %% vol does not come after %g", row.pct, t.release[n-1].pct)
			}
			t.release = append(t.release, row)
		}},
		{"descriptors", func(r datafile.Row, p compound.Provenance) {
			name := nameOf(r.Text("name"))
			if _, twice := t.descriptors[name]; twice {
				r.Fail("%s stands here twice", name)
			}
			t.descriptors[name] = descriptors{r.Number("E"), r.Number("S"), r.Number("A"), r.Number("B"), r.Number("V"), p}
		}},
		{"air_thresholds", func(r datafile.Row, p compound.Provenance) { t.add(r, Air, r.Number("ug_m3"), p) }},
		{"liquid_thresholds", func(r datafile.Row, p compound.Provenance) {
			m, ok := matrices[r.Text("matrix")]
			if !ok {
				r.Fail("the matrix is %q; it must be water or ethanol40", r.Text("matrix"))
				return
			}
			t.add(r, m, r.Number("ug_L"), p)
		}},
	} {
		rows, err := datafile.Read(fsys, "data/"+step.file+".csv")
		if err != nil {
			return nil, err
		}
		for _, r := range rows {
			status, source, note := r.Source()
			p := compound.Provenance{Status: compound.Status(status), Source: source, Note: note}
			if p.Status.Words() == "not known" {
				r.Fail("the status is %q; it must be one of those of package compound", status)
			}
			step.read(r, p)
			if err := r.Err(); err != nil {
				return nil, err
			}
		}
	}
	return t, nil
}

func (t *tables) add(r datafile.Row, m Matrix, value float64, p compound.Provenance) {
	if value <= 0 {
		r.Fail("the threshold is %g; it must be above 0", value)
	}
	name := nameOf(r.Text("name"))
	t.thresholds[m][name] = append(t.thresholds[m][name], threshold{value, p})
}
