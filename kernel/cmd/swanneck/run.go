package main

import (
	"context"
	"errors"
	"fmt"
	"os"
	"os/signal"
	"path/filepath"
	"time"

	"swanneck/worksheets/notebook"
	"swanneck/worksheets/runner"
)

type runCommand struct {
	limits
	Worksheets []string `arg:"" name:"worksheet" help:"Worksheets to run, one after the other."`
	Out        string   `help:"Folder for what comes out." default:"out"`
	Date       string   `help:"Date of the run, as 2026-03-14: printed in the report, and the clock in cells." placeholder:"DATE"`
}

func (c *runCommand) Run() error {
	var date, clock time.Time
	if c.Date != "" {
		d, err := time.Parse(time.DateOnly, c.Date)
		if err != nil {
			return withStatus(exitUsage, fmt.Errorf("--date %s: want year-month-day, as 2026-03-14", c.Date))
		}
		date, clock = d, d.Add(12*time.Hour)
	}
	eng, err := c.engine(clock)
	if err != nil {
		return withStatus(exitUsage, err)
	}
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	sheets := make([]*notebook.Notebook, len(c.Worksheets))
	for i, path := range c.Worksheets { // all are looked at before any is run
		if sheets[i], err = runner.Load(path); err != nil {
			return withStatus(exitUsage, err)
		}
	}
	if err := runner.Prepare(c.Out, c.Worksheets); errors.Is(err, runner.ErrInput) {
		return withStatus(exitUsage, err)
	} else if err != nil {
		return err
	}
	failed := false
	for i, path := range c.Worksheets {
		if i > 0 {
			fmt.Println()
		}
		ok, err := c.one(ctx, path, sheets[i], date, runner.Options{Engine: eng, Versions: versions()})
		if err != nil {
			return err
		}
		failed = failed || !ok
	}
	if failed {
		return &statusError{status: exitFailed}
	}
	return nil
}

// maxSaid is the number of lines printed by cells that the terminal shows.
const maxSaid = 20

// one runs a worksheet and says whether all of its cells succeeded.
func (c *runCommand) one(ctx context.Context, path string, sheet *notebook.Notebook, date time.Time, o runner.Options) (bool, error) {
	bar := newProgress(path)
	o.Progress = bar.at
	o.Engine.Folder = filepath.Dir(path)
	out, err := runner.Run(ctx, sheet, o)
	bar.end()
	if err != nil {
		return false, err
	}
	if len(out.Results) > 0 {
		fmt.Println()
		if err := runner.WriteTable(os.Stdout, out.Results); err != nil {
			return false, err
		}
		fmt.Println()
	}
	said := out.Said()
	for i, l := range said {
		if i == maxSaid {
			fmt.Printf("… and %d more lines, in the report\n", len(said)-i)
			break
		}
		fmt.Printf("cell %d: %s\n", l.Cell, l.Text)
	}
	if len(said) > 0 {
		fmt.Println()
	}
	ipynb, html, err := runner.Write(out, c.Out, path, date, o)
	if err != nil {
		return false, err
	}
	fmt.Printf("notebook  %s\nreport    %s\n", ipynb, html)
	if out.Failure != nil {
		fmt.Fprintf(os.Stderr, "swanneck: %s: %v\n", path, out.Failure)
		return false, nil
	}
	return true, nil
}
