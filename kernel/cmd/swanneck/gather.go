package main

import (
	"errors"

	"swanneck/worksheets/runner"
	"swanneck/worksheets/sweep"
)

type gatherCommand struct {
	Paths   []string `arg:"" name:"path" help:"Journals of the parts of one sweep, or folders with them."`
	Chart   string   `help:"Result that the chart shows; the one that varies most if not given." placeholder:"RESULT"`
	Against string   `help:"Input that stands along the chart; the first that varies if not given." placeholder:"INPUT"`
	Out     string   `help:"Folder for what comes out." default:"out"`
}

// Run joins what the parts of a sweep have left.
func (c *gatherCommand) Run() error {
	table, err := sweep.Gather(c.Paths)
	if err != nil {
		return withStatus(exitUsage, err)
	}
	if err := runner.Prepare(c.Out, nil); errors.Is(err, runner.ErrInput) {
		return withStatus(exitUsage, err)
	} else if err != nil {
		return err
	}
	w, err := table.Write(c.Out, sweep.ChartChoice{Result: c.Chart, Against: c.Against})
	if err != nil {
		return err
	}
	return tell(table, w)
}
