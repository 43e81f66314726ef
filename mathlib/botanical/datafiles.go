package botanical

import (
	"embed"
	"io/fs"
	"strconv"
	"strings"
	"sync"

	"swanneck/mathlib/compound"
	"swanneck/mathlib/internal/datafile"
)

//go:embed data/*.csv
var files embed.FS

// sum is a marker that is printed as a sum of compounds.
type sum struct {
	compounds []string
	shares    []float64 // dimensionless, adding up to 1
	from      compound.Provenance
}

// figure is a figure of figures.csv.
type figure struct {
	Range
	unit string
	from compound.Provenance
}

// tables are the data files of this package.
type tables struct {
	plants  []*Plant
	index   map[string]int // plain name or synonym → place in plants
	sums    map[string]sum
	figures map[string]figure
	spread  map[string]figure // by the name of the compound
}

// embedded returns the data files. That they can be read is tested.
var embedded = sync.OnceValue(func() *tables {
	t, err := load(files)
	if err != nil {
		panic(err)
	}
	return t
})

// figureOf returns a figure of figures.csv. That every name asked for is there is tested.
func figureOf(name string) figure {
	f, ok := embedded().figures[name]
	if !ok {
		panic("botanical: figures.csv has no " + name)
	}
	return f
}

func load(fsys fs.FS) (*tables, error) {
	t := &tables{index: map[string]int{}, sums: map[string]sum{}, figures: map[string]figure{}, spread: map[string]figure{}}
	for _, step := range []struct {
		file string
		read func(datafile.Row, compound.Provenance)
	}{
		{"plants", t.readPlant},
		{"oil_content", t.readOil},
		{"oil_density", func(r datafile.Row, p compound.Provenance) {
			if plant := t.plantOf(r); plant != nil {
				plant.OilDensityKgL, plant.DensityFrom = Between(r.Number("low_kg_L"), r.Number("high_kg_L")), p
			}
		}},
		{"sums", t.readSum},
		{"markers", t.readMarker},
		{"figures", func(r datafile.Row, p compound.Provenance) {
			t.figures[r.Text("name")] = figure{Between(r.Number("low"), r.Number("high")), r.Text("unit"), p}
		}},
		{"volatility_spread", func(r datafile.Row, p compound.Provenance) {
			t.spread[r.Text("name")] = figure{Exactly(r.Number("factor")), "", p}
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

func (t *tables) plantOf(r datafile.Row) *Plant {
	i, ok := t.index[plain(r.Text("name"))]
	if !ok {
		r.Fail("%s is not in plants.csv", r.Text("name"))
		return nil
	}
	return t.plants[i]
}

func (t *tables) readPlant(r datafile.Row, p compound.Provenance) {
	plant := &Plant{Name: r.Text("name"), Synonyms: strings.Split(r.Text("synonyms"), ";"), Species: r.Text("species"), Part: r.Text("part"), Fresh: r.Text("weighed") == "fresh", From: p, partWords: strings.Split(r.Text("part_words"), ";")}
	for _, n := range append([]string{plant.Name}, plant.Synonyms...) {
		if i, taken := t.index[plain(n)]; taken && i != len(t.plants) {
			r.Fail("%s and %s are both called %q", t.plants[i].Name, plant.Name, n)
		}
		t.index[plain(n)] = len(t.plants)
	}
	t.plants = append(t.plants, plant)
}

func (t *tables) readOil(r datafile.Row, p compound.Provenance) {
	plant := t.plantOf(r)
	if plant == nil {
		return
	}
	plant.Oil = OilContent{Amount: Between(r.Number("low_pct_vw"), r.Number("high_pct_vw")), Unit: OilPctVW, Basis: Basis(r.Text("basis")), From: p}
	if r.Text("minimum_mL_kg") != "" {
		plant.Minimum = OilContent{Amount: Exactly(r.Number("minimum_mL_kg")), Unit: OilMLPerKg, Basis: Basis(r.Text("minimum_basis")), From: p}
	}
	for _, b := range []Basis{plant.Oil.Basis, plant.Minimum.Basis} {
		if b != Anhydrous && b != Dried && b != AsWeighed && b != "" {
			r.Fail("the basis is %q; it must be anhydrous, dried or as weighed", b)
		}
	}
}

func (t *tables) readSum(r datafile.Row, p compound.Provenance) {
	s := sum{compounds: strings.Split(r.Text("compounds"), ";"), from: p}
	total := 0.0
	for text := range strings.SplitSeq(r.Text("shares"), ";") {
		x, err := strconv.ParseFloat(text, 64)
		if err != nil {
			r.Fail("%q is no share", text)
		}
		total += x
		s.shares = append(s.shares, x)
	}
	if len(s.shares) != len(s.compounds) || total < 1-1e-12 || total > 1+1e-12 {
		r.Fail("the shares of %s are not one for each compound, adding up to 1", r.Text("name"))
	}
	for _, c := range s.compounds {
		if known, err := compound.Find(c); err != nil || known.Name != c {
			r.Fail("%s is not the name of a compound", c)
		}
	}
	t.sums[r.Text("name")] = s
}

func (t *tables) readMarker(r datafile.Row, p compound.Provenance) {
	plant := t.plantOf(r)
	if plant == nil {
		return
	}
	m := printed{name: r.Text("marker"), compound: r.Text("compound"), used: r.Text("used") == "yes", kind: r.Text("kind"), from: p}
	switch m.kind {
	case "range":
		m.share = Between(r.Number("low_pct"), r.Number("high_pct"))
	case "min":
		m.share = Between(r.Number("low_pct"), 100)
	case "max":
		m.share = Between(0, r.Number("high_pct"))
	case "named":
	default:
		r.Fail("the kind is %q; it must be range, min, max or named", m.kind)
	}
	if m.compound != "" {
		if _, isSum := t.sums[m.compound]; !isSum {
			if known, err := compound.Find(m.compound); err != nil || known.Name != m.compound {
				r.Fail("%s is not the name of a compound or of a sum", m.compound)
			}
		}
	}
	plant.printed = append(plant.printed, m)
}
