package equilibrium

import (
	"fmt"
	"io/fs"
	"math"
	"strings"
	"sync"

	"swanneck/mathlib/compound"
	"swanneck/mathlib/internal/datafile"
)

// Model is a named activity model of ethanol and water.
type Model struct {
	Name     string
	Activity Activity
	From     compound.Provenance
}

// String gives the name and where the parameters come from.
func (m Model) String() string { return m.Name + ", " + m.From.String() }

// The model that is taken if none is named.
const defaultModel = "NRTL"

// Models returns the models that can be chosen by name, the default first.
func Models() []Model {
	var out []Model
	for _, m := range known() {
		out = append(out, m.model)
	}
	return out
}

type knownModel struct {
	model Model
	pair  func() *Pair
}

var known = sync.OnceValue(func() []knownModel {
	models, err := loadModels(files)
	if err != nil {
		panic(err) // a test loads them
	}
	var out []knownModel
	for _, m := range models {
		out = append(out, knownModel{m, sync.OnceValue(func() *Pair { return newPair(m.Name, m.Activity) })})
	}
	return out
})

// defaultPair is the pair of the default model.
var defaultPair = sync.OnceValue(func() *Pair { return known()[0].pair() })

func loadModels(fsys fs.FS) ([]Model, error) {
	rows, err := datafile.Read(fsys, "data/ethanol_water.csv")
	if err != nil {
		return nil, err
	}
	var out []Model
	for _, r := range rows {
		m := Model{Name: r.Text("name")}
		status, source, note := r.Source()
		m.From = compound.Provenance{Status: compound.Status(status), Source: source, Note: note}
		switch form := r.Text("form"); form {
		case "nrtl":
			m.Activity = NRTL{A12: r.Number("a12"), B12K: r.Number("b12_K"), A21: r.Number("a21"), B21K: r.Number("b21_K"), Alpha: r.Number("alpha")}
		case "wilson":
			m.Activity = Wilson{A12: r.Number("a12"), B12K: r.Number("b12_K"), A21: r.Number("a21"), B21K: r.Number("b21_K")}
		case "wilson_v":
			ratio := math.Log(r.Number("v2") / r.Number("v1"))
			m.Activity = Wilson{A12: ratio, B12K: -r.Number("b12_K"), A21: -ratio, B21K: -r.Number("b21_K")}
		case "uniquac":
			m.Activity = UNIQUAC{A12: r.Number("a12"), B12K: r.Number("b12_K"), A21: r.Number("a21"), B21K: r.Number("b21_K")}
		default:
			r.Fail("the form is %q; it must be nrtl, wilson, wilson_v or uniquac", form)
		}
		if err := r.Err(); err != nil {
			return nil, err
		}
		out = append(out, m)
	}
	if out[0].Name != defaultModel {
		return nil, fmt.Errorf("data/ethanol_water.csv: the first row is %s; it must be %s, the default", out[0].Name, defaultModel)
	}
	published := func(source string) compound.Provenance {
		return compound.Provenance{Status: compound.Seen, Source: source}
	}
	return append(out,
		Model{"UNIFAC", originalPair(), published("Hansen and others, Ind. Eng. Chem. Res. 30 (1991) 2352; Wittig and others, Ind. Eng. Chem. Res. 42 (2003) 183")},
		Model{"UNIFAC Dortmund", dortmundPair(), published("modified UNIFAC (Dortmund), parameters published to 2006")},
	), nil
}

// UnknownModelError says that no model has a name.
type UnknownModelError struct {
	Func  string   // the function
	Name  string   // the name asked for
	Names []string // the names there are
}

// Error gives the name and those there are in one line.
func (e *UnknownModelError) Error() string {
	return fmt.Sprintf("%s: no model is called %q; there are %s", e.Func, e.Name, strings.Join(e.Names, ", "))
}

// StopsCell marks the error as one that a worksheet prints as its one line, without a stack of calls.
func (e *UnknownModelError) StopsCell() {}

// Option chooses something other than the usual. The zero value chooses nothing.
type Option struct {
	model    string
	activity Activity
	noAnchor bool
}

// UseModel chooses the model of ethanol and water by its name: NRTL (the default), NRTL 2012, NRTL DECHEMA, Wilson,
// Wilson DECHEMA, Wilson DECHEMA 2, UNIQUAC, UNIFAC or UNIFAC Dortmund. Case does not matter.
func UseModel(name string) Option { return Option{model: name} }

// UseActivity chooses an activity model of one's own. It is refused if by it the liquid would split in two layers.
func UseActivity(a Activity) Option { return Option{activity: a} }

// WithoutAnchor takes the activity coefficients of compounds other than ethanol and water from the group method alone,
// and not from the measurement in water.
func WithoutAnchor() Option { return Option{noAnchor: true} }

// settings are what the options come to.
type settings struct {
	pair     *Pair
	noAnchor bool
}

func apply(function string, opts []Option) (settings, error) {
	s := settings{}
	for _, o := range opts {
		switch {
		case o.activity != nil:
			if err := checkOneLiquid(function, o.activity); err != nil {
				return settings{}, err
			}
			s.pair = newPair("own model", o.activity)
			s.pair.own = true
		case o.model != "":
			s.pair = nil
			var names []string
			for _, k := range known() {
				names = append(names, k.model.Name)
				if strings.EqualFold(strings.TrimSpace(o.model), k.model.Name) {
					s.pair = k.pair()
				}
			}
			if s.pair == nil {
				return settings{}, &UnknownModelError{function, o.model, names}
			}
		}
		s.noAnchor = s.noAnchor || o.noAnchor
	}
	if s.pair == nil {
		s.pair = defaultPair()
	}
	return s, nil
}

// checkOneLiquid returns an error if the model gives a number that is none, or a liquid of ethanol and water that would
// split: in one liquid the activity x γ of ethanol rises with x everywhere.
func checkOneLiquid(function string, a Activity) error {
	const n = 200
	for _, tempK := range []float64{280, 350, 450} {
		before := 0.0
		for i := range n + 1 {
			x := float64(i) / n
			ln1, ln2, perK1, perK2 := a.LnGamma(x, tempK)
			if sum := ln1 + ln2 + perK1 + perK2; math.IsNaN(sum) || math.IsInf(sum, 0) {
				return fmt.Errorf("%s: the activity model gives no finite number at a mole fraction of %g and %g K", function, x, tempK)
			}
			activity := x * math.Exp(ln1)
			if i > 0 && activity <= before {
				return fmt.Errorf("%s: by this activity model the liquid splits in two near a mole fraction of %g at %g K; ethanol and water do not", function, x, tempK)
			}
			before = activity
		}
	}
	return nil
}
