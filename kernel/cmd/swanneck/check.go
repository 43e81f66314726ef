package main

import (
	"context"
	"errors"
	"fmt"
	"os"
	"os/signal"
	"path/filepath"
	"time"

	"swanneck/kernel/symbols"
	"swanneck/worksheets/runner"
)

type checkCommand struct {
	Worksheets []string `arg:"" name:"worksheet" help:"Executed worksheets, as run left them."`
	Folder     string   `help:"Folder where the worksheet's tables are, if not beside it." placeholder:"FOLDER"`
	Against    string   `help:"Compare with this results file of an earlier run (NAME.results.json); one worksheet, executed or not." placeholder:"FILE"`
	TimeLimit  string   `help:"Longest time a cell may run, as 90s or 5m; 0 for no limit." default:"60s"`
	Memory     int      `help:"Most memory the worker may hold, in MiB." default:"1024"`
}

// Run runs executed worksheets again and says what differs. Its status is the highest of theirs: 0 same, 1 differs or
// stopped in the same way, 2 cannot be checked.
func (c *checkCommand) Run() error {
	eng, err := limits{TimeLimit: c.TimeLimit, Memory: c.Memory}.engine(time.Time{})
	if err != nil {
		return withStatus(exitUsage, err)
	}
	if c.Against != "" && len(c.Worksheets) > 1 {
		return withStatus(exitUsage, fmt.Errorf("--against compares one worksheet, and %d are named", len(c.Worksheets)))
	}
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	o := runner.CheckOptions{Engine: eng, Versions: versions(), Library: symbols.NewLibrary(), Folder: c.Folder, Against: c.Against}
	status := exitOK
	for _, path := range c.Worksheets {
		found, err := runner.Check(ctx, path, o)
		if errors.Is(err, runner.ErrInput) {
			fmt.Fprintln(os.Stderr, "swanneck:", err)
			status = max(status, exitUsage)
			if ctx.Err() != nil {
				break // the person has had enough
			}
			continue
		}
		if err != nil {
			return err
		}
		if err := found.Write(os.Stdout, filepath.Base(path)); err != nil {
			return err
		}
		if !found.Same() {
			status = max(status, exitFailed)
		}
	}
	if status != exitOK {
		return &statusError{status: status}
	}
	return nil
}
