package colour

import (
	"embed"
	"fmt"
	"io/fs"
	"slices"
	"sync"

	"swanneck/mathlib/internal/datafile"
)

//go:embed data/*.csv
var files embed.FS

// The grid of the CIE's tables, nm.
const firstNM, lastNM, stepNM, gridPoints = 380, 780, 5, 81

// band is a bell curve of an absorption spectrum.
type band struct{ middleNM, height, widthNM, absorbs float64 }

type tables struct {
	x, y, z, d65 [gridPoints]float64
	pigment      map[string][]float64 // by column of pigments.csv, from pigmentFirstNM at 1 nm
	firstNM      int
	pheophytin   map[string][]band
	loss         []lossRow
}

type lossRow struct {
	pigment         string
	kJ, low, high   float64
	source, caution string
}

// embedded returns the data files. That they can be read is tested.
var embedded = sync.OnceValue(func() *tables {
	t, err := load(files)
	if err != nil {
		panic(err)
	}
	return t
})

var statuses = []string{"seen", "memory", "estimated"}

func load(fsys fs.FS) (*tables, error) {
	t := &tables{pigment: map[string][]float64{}, pheophytin: map[string][]band{}}
	read := func(name string, take func(i int, r datafile.Row)) error {
		rows, err := datafile.Read(fsys, "data/"+name)
		if err != nil {
			return err
		}
		for i, r := range rows {
			if status, _, _ := r.Source(); !slices.Contains(statuses, status) {
				r.Fail("the status is %q; it must be seen, memory or estimated", status)
			}
			take(i, r)
			if err := r.Err(); err != nil {
				return err
			}
		}
		return nil
	}
	n := 0
	if err := read("observer_d65.csv", func(i int, r datafile.Row) {
		if n = i + 1; i >= gridPoints || r.Whole("nm") != firstNM+i*stepNM {
			r.Fail("row %d is not at %d nm, or there are too many", i+1, firstNM+i*stepNM)
			return
		}
		t.x[i], t.y[i], t.z[i], t.d65[i] = r.Number("x"), r.Number("y"), r.Number("z"), r.Number("d65")
	}); err != nil {
		return nil, err
	}
	if n != gridPoints {
		return nil, fmt.Errorf("data/observer_d65.csv: %d rows; there must be %d", n, gridPoints)
	}
	if err := read("pigments.csv", func(i int, r datafile.Row) {
		if i == 0 {
			t.firstNM = r.Whole("nm")
		}
		if r.Whole("nm") != t.firstNM+i {
			r.Fail("row %d is not at %d nm", i+1, t.firstNM+i)
		}
		for _, column := range []string{"chlorophyll_a", "chlorophyll_b", "lutein"} {
			t.pigment[column] = append(t.pigment[column], r.Number(column))
		}
	}); err != nil {
		return nil, err
	}
	if err := read("pheophytin.csv", func(_ int, r datafile.Row) {
		p := r.Text("pigment")
		t.pheophytin[p] = append(t.pheophytin[p], band{r.Number("middle_nm"), r.Number("height"), r.Number("width_nm"), r.Number("absorbs_L_gcm")})
	}); err != nil {
		return nil, err
	}
	err := read("loss.csv", func(_ int, r datafile.Row) {
		_, source, note := r.Source()
		t.loss = append(t.loss, lossRow{r.Text("pigment"), r.Optional("kJ_mol"), r.Number("low_kJ_mol"), r.Number("high_kJ_mol"), source, note})
	})
	return t, err
}
