package main

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"

	"swanneck/kernel/cell"
	"swanneck/kernel/symbols"
	"swanneck/worksheets/inputs"
	"swanneck/worksheets/notebook"
	"swanneck/worksheets/runner"
)

// given are the flags by which a worksheet's inputs are given.
type given struct {
	Set    []string `help:"Give an input: --set \"pot strength=45 %vol\"; a table by its CSV file. May stand several times." placeholder:"NAME=VALUE" sep:"none"`
	Inputs string   `help:"Give inputs by a plain text file, as swanneck inputs writes it." placeholder:"FILE"`
	Ask    bool     `help:"Ask for every input on the terminal."`
}

// fit looks up what a worksheet asks for, and fits what is given to it. Nothing has run yet.
func (g given) fit(path string, sheet *notebook.Notebook) (*inputs.Set, error) {
	asked, err := inputs.Find(runner.Sources(sheet), symbols.NewLibrary())
	var refused cell.ErrorList
	if errors.As(err, &refused) && len(g.Set) == 0 && g.Inputs == "" {
		err = nil // the run will come to that cell and say so in its place
	}
	if err != nil {
		return nil, fmt.Errorf("%s: %w", path, err)
	}
	set := inputs.NewSet(asked)
	if g.Inputs != "" {
		text, err := os.ReadFile(g.Inputs)
		if err != nil {
			return nil, err
		}
		if err := set.ReadFile(g.Inputs, string(text), filepath.Dir(g.Inputs)); err != nil {
			return nil, err
		}
	}
	for _, s := range g.Set {
		if err := set.Assign(s, "."); err != nil {
			return nil, fmt.Errorf("--set: %w", err)
		}
	}
	if g.Ask {
		if err := set.Ask(os.Stdin, os.Stdout, "."); err != nil {
			return nil, fmt.Errorf("--ask: %w", err)
		}
	}
	return set, nil
}

type inputsCommand struct {
	given
	Worksheet string `arg:"" help:"Worksheet whose inputs are listed."`
}

// Run prints what a worksheet asks for, as a file that can be filled in.
func (c *inputsCommand) Run() error {
	sheet, err := runner.Load(c.Worksheet)
	if err != nil {
		return withStatus(exitUsage, err)
	}
	set, err := c.fit(c.Worksheet, sheet)
	if err != nil {
		return withStatus(exitUsage, err)
	}
	if len(set.Asked) == 0 {
		return withStatus(exitUsage, fmt.Errorf("%s asks for no inputs", c.Worksheet))
	}
	_, err = fmt.Print(set.Write(filepath.Base(c.Worksheet)))
	return err
}
