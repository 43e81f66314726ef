package cellapi

import (
	"fmt"
	"path/filepath"
	"strings"

	"swanneck/kernel/display"
	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
	"swanneck/worksheets/figure"
	"swanneck/worksheets/nearest"
	"swanneck/worksheets/results"
)

// EarlierResults are the results of an earlier run, of this worksheet or another one. Results reads them.
type EarlierResults struct {
	from string // in messages
	f    *results.File
}

// Results reads the results that an earlier run left (run --results) from the worksheet's folder, as in
// Results("lot-17.results.json").
func Results(file string) EarlierResults {
	b, err := display.Read(file)
	if err != nil {
		panic(&Stop{"Results: " + err.Error()})
	}
	f, err := results.Read(b)
	if err != nil {
		panic(&Stop{fmt.Sprintf("Results: %s %v", filepath.Base(file), err)})
	}
	return EarlierResults{filepath.Base(file), f}
}

// Names lists the results in the order in which the worksheet declared them.
func (e EarlierResults) Names() []string {
	if e.f == nil {
		return nil
	}
	out := make([]string, len(e.f.Results))
	for i, r := range e.f.Results {
		out[i] = r.Name
	}
	return out
}

// Figure returns a result in the unit wanted (dimensionless here: in that unit), with all its digits. A name that is not
// there or a unit that does not fit stops the cell. Strengths and temperatures are not converted here: Strength and
// Temperature return them.
func (e EarlierResults) Figure(name, unit string) float64 {
	r := e.find("Figure", name)
	x, err := figure.Convert(r.Value, r.Unit, unit)
	e.check("Figure", r, err)
	return x
}

// PlusMinus returns the uncertainty of a result in the unit wanted (dimensionless here: in that unit); 0 if none was given.
func (e EarlierResults) PlusMinus(name, unit string) float64 {
	r := e.find("PlusMinus", name)
	x, err := figure.Convert(r.PlusMinus, r.Unit, unit)
	e.check("PlusMinus", r, err)
	return x
}

// Strength returns a result that is a strength: in per cent by volume at 20 °C, per cent by mass, or proof.
func (e EarlierResults) Strength(name string) alcoholometry.Strength {
	r := e.find("Strength", name)
	s, err := figure.StrengthIn(r.Value, r.Unit)
	e.check("Strength", r, err)
	return s
}

// Temperature returns a result that is a temperature: in °C, °F or K.
func (e EarlierResults) Temperature(name string) quantity.Temperature {
	r := e.find("Temperature", name)
	t, err := figure.TemperatureIn(r.Value, r.Unit)
	e.check("Temperature", r, err)
	return t
}

func (e EarlierResults) find(method, name string) results.Result {
	if e.f == nil {
		panic(&Stop{method + ": these results were not made by Results"})
	}
	for _, r := range e.f.Results {
		if r.Name == name {
			return r
		}
	}
	there := "it has no results at all"
	if near := nearest.Names(name, e.Names()); len(near) > 0 {
		there = "the nearest: " + strings.Join(near, ", ")
	}
	if e.f.Stopped != "" {
		there += "; its run stopped in " + e.f.Stopped
	}
	panic(&Stop{fmt.Sprintf("%s: %s has no result %q; %s", method, e.from, name, there)})
}

func (e EarlierResults) check(method string, r results.Result, err error) {
	if err != nil {
		panic(&Stop{fmt.Sprintf("%s: %s, %q: %v", method, e.from, r.Name, err)})
	}
}

// String returns the results as lines of text.
func (e EarlierResults) String() string {
	if e.f == nil {
		return "no results"
	}
	lines := make([]string, len(e.f.Results))
	for i, r := range e.f.Results {
		lines[i], _ = results.Bundle(r.ResultData)[display.Plain].(string)
	}
	return strings.Join(lines, "\n")
}

// HTML returns the results as a table.
func (e EarlierResults) HTML() string {
	if e.f == nil {
		return "<p>no results</p>"
	}
	rows := make([][]string, len(e.f.Results))
	for i, r := range e.f.Results {
		rows[i] = []string{r.Name, results.WithPlusMinus(r.ResultData), r.Unit, r.Note}
	}
	return display.Table(rows)
}
