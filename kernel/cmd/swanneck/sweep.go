package main

import (
	"context"
	"crypto/sha256"
	"errors"
	"fmt"
	"io"
	"os"
	"os/signal"
	"path/filepath"
	"runtime"
	"strings"
	"syscall"
	"time"

	"swanneck/kernel/symbols"
	"swanneck/worksheets/inputs"
	"swanneck/worksheets/runner"
	"swanneck/worksheets/sweep"
)

type sweepCommand struct {
	limits
	Worksheet string   `arg:"" help:"Worksheet to run with many inputs."`
	Vary      []string `help:"Vary an input: --vary \"pot strength=30..60/5 %vol\", --vary \"still=pot; column\". Several are combined, each value with each." placeholder:"NAME=VALUES" sep:"none"`
	Latin     int      `help:"Draw N scenarios from ranges, as --vary \"pot strength=30..60 %vol\", so that each range is covered evenly; --seed draws others." placeholder:"N"`
	Scenarios string   `help:"Take the scenarios from the rows of a CSV file; its headings are names of inputs, with units as \"pot strength (%vol)\"." placeholder:"FILE"`
	Set       []string `help:"Give an input that does not vary: --set \"pot volume=300 L\". May stand several times." placeholder:"NAME=VALUE" sep:"none"`
	Inputs    string   `help:"Give inputs that do not vary by a plain text file, as swanneck inputs writes it." placeholder:"FILE"`
	Workers   int      `help:"How many scenarios run at once; 0 is two for each processor." default:"0"`
	Most      int      `help:"Refuse more scenarios than this." default:"10000"`
	Part      string   `help:"Run one share of the sweep, as 2/4; swanneck gather joins the shares." placeholder:"I/N"`
	Again     bool     `help:"Start anew, though an earlier run has left rows."`
	Chart     string   `help:"Result that the chart shows; the one that varies most if not given." placeholder:"RESULT"`
	Against   string   `help:"Input that stands along the chart; the first that varies if not given." placeholder:"INPUT"`
	Out       string   `help:"Folder for what comes out." default:"out"`
	Date      string   `help:"Date of the run, as 2026-03-14: the clock in cells." placeholder:"DATE"`
}

func (c *sweepCommand) Run() error {
	job, err := c.job()
	if err != nil {
		return withStatus(exitUsage, err)
	}
	if err := runner.Prepare(c.Out, nil); errors.Is(err, runner.ErrInput) {
		return withStatus(exitUsage, err)
	} else if err != nil {
		return err
	}
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	defer stop()
	context.AfterFunc(ctx, stop) // whoever interrupts a second time will not wait
	bar := newSweepProgress(filepath.Base(c.Worksheet), job.Workers)
	job.Progress = bar.at
	out, err := job.Run(ctx)
	bar.end()
	if errors.Is(err, sweep.ErrInput) {
		return withStatus(exitUsage, err)
	}
	if err != nil {
		return err
	}
	if out.Table == nil {
		return withStatus(exitFailed, fmt.Errorf("interrupted: %d of %d rows are done and kept in %s; the same command goes on from there", out.Done, out.Total, out.Journal))
	}
	if out.Taken > 0 {
		fmt.Printf("%d of %d rows were taken from %s; --again runs all anew\n", out.Taken, out.Total, out.Journal)
	}
	return tell(out.Table, out.Written)
}

// job puts together what is to be run. Everything that is given is looked at here; nothing has run yet.
func (c *sweepCommand) job() (*sweep.Job, error) {
	var clock time.Time
	if c.Date != "" {
		d, err := time.Parse(time.DateOnly, c.Date)
		if err != nil {
			return nil, fmt.Errorf("--date %s: want year-month-day, as 2026-03-14", c.Date)
		}
		clock = d.Add(12 * time.Hour)
	}
	eng, err := c.engine(clock)
	if err != nil {
		return nil, err
	}
	eng.Folder = filepath.Dir(c.Worksheet)
	job := &sweep.Job{
		Worksheet: strings.TrimSuffix(filepath.Base(c.Worksheet), filepath.Ext(c.Worksheet)), Engine: eng, Versions: versions(),
		Workers: c.Workers, Folder: c.Out, Again: c.Again, Chart: sweep.ChartChoice{Result: c.Chart, Against: c.Against},
	}
	if c.Workers < 0 || c.Workers > 1024 {
		return nil, fmt.Errorf("--workers %d: want 1 to 1024, or 0 for two for each processor", c.Workers)
	}
	if c.Most < 1 {
		return nil, fmt.Errorf("--most %d: want 1 or more", c.Most)
	}
	if c.Part != "" {
		if job.Part, err = sweep.ParsePart(c.Part); err != nil {
			return nil, fmt.Errorf("--part: %w", err)
		}
	}
	sheet, err := runner.Load(c.Worksheet)
	if err != nil {
		return nil, err
	}
	job.Sources = runner.Sources(sheet)
	if _, err := inputs.Find(job.Sources, symbols.NewLibrary()); err != nil {
		return nil, fmt.Errorf("%s: %w", c.Worksheet, err) // no scenario would come to an end
	}
	set, err := given{Set: c.Set, Inputs: c.Inputs}.fit(c.Worksheet, sheet)
	if err != nil {
		return nil, err
	}
	if job.Plan, err = c.plan(set); err != nil {
		return nil, err
	}
	if err := job.Plan.CheckAgainst(c.Against); err != nil {
		return nil, fmt.Errorf("--against: %w", err)
	}
	if job.Workers == 0 {
		job.Workers = 2 * runtime.GOMAXPROCS(0) // a scenario waits half of its time for its worker or its parent
	}
	job.Workers = min(job.Workers, len(job.Plan.Scenarios))
	job.Program, err = ownHash()
	return job, err
}

func (c *sweepCommand) plan(set *inputs.Set) (*sweep.Plan, error) {
	switch {
	case c.Scenarios != "" && (len(c.Vary) > 0 || c.Latin != 0):
		return nil, errors.New("--scenarios names every scenario; leave out --vary and --latin, or it")
	case c.Scenarios != "":
		text, err := os.ReadFile(c.Scenarios)
		if err != nil {
			return nil, err
		}
		p, err := sweep.NewList(set, c.Scenarios, string(text), filepath.Dir(c.Scenarios), c.Most)
		if err != nil {
			return nil, fmt.Errorf("--scenarios: %w", err)
		}
		return p, nil
	case len(c.Vary) == 0 && len(set.Asked) == 0:
		return nil, fmt.Errorf("%s asks for no inputs; there is nothing to vary", c.Worksheet)
	case len(c.Vary) == 0:
		return nil, fmt.Errorf("nothing varies; say what by --vary or --scenarios; swanneck inputs %s lists what can", c.Worksheet)
	case c.Latin != 0:
		p, err := sweep.NewLatin(set, c.Vary, c.Latin, c.Seed, ".", c.Most)
		if err != nil {
			return nil, fmt.Errorf("--latin: %w", err)
		}
		return p, nil
	}
	p, err := sweep.NewGrid(set, c.Vary, ".", c.Most)
	if err != nil {
		return nil, fmt.Errorf("--vary: %w", err)
	}
	return p, nil
}

// tell prints what a sweep has left, and says by its error how it went.
func tell(t *sweep.Table, w sweep.Written) error {
	fmt.Printf("\ntable  %s\n", w.CSV)
	if w.Parquet != "" {
		fmt.Printf("       %s\n", w.Parquet)
	}
	switch {
	case w.Chart != "":
		fmt.Printf("chart  %s: %s\n", w.Chart, w.Shows)
	case errors.Is(w.NoChart, sweep.ErrNothingToDraw):
		fmt.Println(w.NoChart)
	}
	if failed := t.Failed(); len(failed) > 0 {
		return withStatus(exitFailed, fmt.Errorf("%d of %d scenarios %s no results; the first is scenario %d: %s",
			len(failed), len(t.Rows), map[bool]string{true: "has", false: "have"}[len(failed) == 1], failed[0].Scenario, failed[0].Status))
	}
	if w.NoChart != nil && !errors.Is(w.NoChart, sweep.ErrNothingToDraw) {
		return withStatus(exitUsage, fmt.Errorf("--chart: %w; the table is written, and another chart needs no other run", w.NoChart))
	}
	return nil
}

// ownHash returns a hash of this program's file.
func ownHash() (string, error) {
	exe, err := os.Executable()
	if err != nil {
		return "", fmt.Errorf("cannot find this program's file: %w", err)
	}
	f, err := os.Open(exe)
	if err != nil {
		return "", fmt.Errorf("cannot read this program's file: %w", err)
	}
	defer f.Close()
	h := sha256.New()
	if _, err := io.Copy(h, f); err != nil {
		return "", fmt.Errorf("cannot read this program's file: %w", err)
	}
	return fmt.Sprintf("%x", h.Sum(nil)[:16]), nil
}
