package main

import (
	"context"
	"errors"
	"fmt"
	"os"
	"os/signal"
	"path/filepath"
	"strings"
	"time"

	"swanneck/worksheets/inputs"
	"swanneck/worksheets/notebook"
	"swanneck/worksheets/runner"
)

type runCommand struct {
	limits
	given
	Worksheets []string `arg:"" name:"worksheet" help:"Worksheets to run, one after the other."`
	Out        string   `help:"Folder for what comes out." default:"out"`
	Date       string   `help:"Date of the run, as 2026-03-14: printed in the report, and the clock in cells." placeholder:"DATE"`
	Results    bool     `help:"Write the results as JSON and CSV too."`
	Markdown   bool     `help:"Write the report as Markdown too, its pictures beside it."`
	KeepOut    bool     `name:"keep-inputs-out" help:"Keep what went in out of the report, for handing on: it shows declared results, charts and prose; no inputs, no code, nothing printed, no cells marked private. No notebook is written. Charts stay as drawn: see that their lettering does not tell."`
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
	if c.KeepOut && c.Results {
		return withStatus(exitUsage, errors.New("--keep-inputs-out with --results: the results files tell the inputs; give one or the other"))
	}
	eng, err := c.engine(clock)
	if err != nil {
		return withStatus(exitUsage, err)
	}
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	sheets := make([]*notebook.Notebook, len(c.Worksheets))
	sets := make([]*inputs.Set, len(c.Worksheets))
	for i, path := range c.Worksheets { // all are looked at before any is run
		if sheets[i], err = runner.Load(path); err != nil {
			return withStatus(exitUsage, err)
		}
		if sets[i], err = c.fit(path, sheets[i]); err != nil {
			return withStatus(exitUsage, err)
		}
	}
	if err := runner.Prepare(c.Out, c.Worksheets); errors.Is(err, runner.ErrInput) {
		return withStatus(exitUsage, err)
	} else if err != nil {
		return err
	}
	if c.Results {
		if err := runner.PrepareResults(c.Out, c.Worksheets); err != nil {
			return withStatus(exitUsage, err)
		}
	}
	if c.Markdown {
		if err := runner.PrepareMarkdown(c.Out, c.Worksheets); err != nil {
			return withStatus(exitUsage, err)
		}
	}
	failed := false
	for i, path := range c.Worksheets {
		if i > 0 {
			fmt.Println()
		}
		ok, err := c.one(ctx, path, sheets[i], date, runner.Options{Engine: eng, Versions: versions(), Inputs: sets[i], ResultsFiles: c.Results, Markdown: c.Markdown, KeepInputsOut: c.KeepOut})
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
			fmt.Printf("… and %d more lines%s\n", len(said)-i, map[bool]string{false: ", in the report"}[c.KeepOut])
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
	if ipynb == "" {
		ipynb = "not written: it would tell what went in"
	}
	fmt.Printf("notebook  %s\nreport    %s\n", ipynb, html)
	if c.Markdown {
		fmt.Printf("markdown  %s\n", runner.MarkdownName(c.Out, path))
	}
	if c.Results {
		json, csv := runner.ResultNames(c.Out, path)
		fmt.Printf("results   %s\n          %s\n", json, csv)
	}
	if c.KeepOut {
		fmt.Println("Look at the charts before you hand the report on: their lettering is as it was drawn.")
		if old := runner.Leftovers(c.Out, path, o); len(old) > 0 {
			fmt.Printf("From an earlier run, and they may tell what went in: %s\n", strings.Join(old, ", "))
		}
	}
	if out.Failure != nil {
		fmt.Fprintf(os.Stderr, "swanneck: %s: %v\n", path, out.Failure)
		return false, nil
	}
	return true, nil
}
