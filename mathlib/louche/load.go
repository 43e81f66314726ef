package louche

import (
	"embed"
	"io/fs"
	"sync"

	"swanneck/mathlib/compound"
	"swanneck/mathlib/internal/datafile"
)

//go:embed data/*.csv
var files embed.FS

// figure is a number with where it comes from.
type figure struct {
	value float64
	from  compound.Provenance
}

// crystal is the melting of a pure oil.
type crystal struct {
	meltingK, fusionJMol float64
	from                 compound.Provenance
}

// tables are the data files of this package, by the name of the compound.
type tables struct {
	solubility map[string]figure // g/L
	slope      map[string]figure
	refraction map[string]figure
	crystal    map[string]crystal
	spirit     []spiritIndex
	tieLines   []TieLine
	tieFrom    compound.Provenance
	hazes      []hazeRow
}

// spiritIndex is the refractive index of a spirit.
type spiritIndex struct{ massPct, n float64 }

// embedded returns the data files. That they can be read is tested.
var embedded = sync.OnceValue(func() *tables {
	t, err := load(files)
	if err != nil {
		panic(err)
	}
	return t
})

func load(fsys fs.FS) (*tables, error) {
	t := &tables{solubility: map[string]figure{}, slope: map[string]figure{}, refraction: map[string]figure{}, crystal: map[string]crystal{}}
	for _, step := range []struct {
		file string
		read func(datafile.Row, compound.Provenance)
	}{
		{"solubility", func(r datafile.Row, p compound.Provenance) { t.solubility[r.Text("name")] = figure{r.Number("g_L"), p} }},
		{"slope", func(r datafile.Row, p compound.Provenance) { t.slope[r.Text("name")] = figure{r.Number("slope"), p} }},
		{"oil_refraction", func(r datafile.Row, p compound.Provenance) { t.refraction[r.Text("name")] = figure{r.Number("n"), p} }},
		{"crystal", func(r datafile.Row, p compound.Provenance) {
			t.crystal[r.Text("name")] = crystal{r.Number("melting_C") + 273.15, 1000 * r.Number("fusion_kJ_mol"), p}
		}},
		{"spirit_refraction", func(r datafile.Row, _ compound.Provenance) {
			t.spirit = append(t.spirit, spiritIndex{r.Number("mass_pct"), r.Number("n")})
		}},
		{"limonene_tie_lines", func(r datafile.Row, p compound.Provenance) {
			t.tieFrom = p
			t.tieLines = append(t.tieLines, TieLine{
				OilRich: Composition{r.Number("org_water"), r.Number("org_ethanol"), r.Number("org_oil")},
				Watery:  Composition{r.Number("aq_water"), r.Number("aq_ethanol"), r.Number("aq_oil")},
			})
		}},
		{"haze", func(r datafile.Row, _ compound.Provenance) { t.hazes = append(t.hazes, readHaze(r)) }},
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
