package main

import (
	"fmt"
	"runtime"
	"runtime/debug"

	"swanneck/kernel/engine"
	"swanneck/worksheets/runner"
)

// programVersion moves when the program changes what it does; mathVersion when a published number moves (the change log
// of numbers in DEVELOPERS.md says which).
const (
	programVersion = "0.1.0"
	mathVersion    = "1"
)

// versions is what a number depends on, for `swanneck version` and for the provenance of a run.
func versions() []runner.Version {
	return []runner.Version{
		{What: "swanneck", Version: programVersion},
		{What: "mathlib", Version: mathVersion},
		{What: "Density of ethanol–water", Version: "OIML R 22 (1975), general formula, IPTS-68"},
		{What: "Heat of mixing", Version: "Larkin (1975), J. Chem. Thermodyn. 7, 137; coefficients from memory; an estimate"},
		{What: "Boiling of ethanol–water", Version: "NRTL, own fit to published measurements; vapour pressures by Wagner and IAPWS"},
		{What: "Volatility of compounds", Version: "UNIFAC, original and modified, with measured activities in water"},
		{What: "Compounds, plants, limits", Version: "the data files of this version of mathlib, with a source in each row"},
		{What: "Glass expansion", Version: "ISO 1768 (1975), 25e-6 per °C"},
		{What: "Built with", Version: fmt.Sprintf("%s for %s/%s", runtime.Version(), runtime.GOOS, runtime.GOARCH)},
	}
}

type versionCommand struct{}

func (versionCommand) Run() error {
	for _, v := range versions() {
		if _, err := fmt.Printf("%-26s %s\n", v.What, v.Version); err != nil {
			return err
		}
	}
	for _, c := range engine.Containment() {
		if _, err := fmt.Printf("%-26s %s\n", "Worker kept in by", c); err != nil {
			return err
		}
	}
	if info, ok := debug.ReadBuildInfo(); ok {
		for _, d := range info.Deps {
			switch d.Path {
			case "github.com/traefik/yaegi", "gonum.org/v1/gonum", "gonum.org/v1/plot":
				if _, err := fmt.Printf("%-26s %s\n", d.Path, d.Version); err != nil {
					return err
				}
			}
		}
	}
	return nil
}
