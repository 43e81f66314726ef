package sweep

import (
	"context"
	"errors"
	"fmt"
	"maps"
	"slices"
	"sync"

	"swanneck/kernel/engine"
	"swanneck/worksheets/runner"
)

// Job is a sweep to be run.
type Job struct {
	Worksheet string   // name of its file, without ending
	Sources   []string // its code cells
	Plan      *Plan
	Part      Part
	Engine    engine.Options
	Versions  []runner.Version
	Program   string // hash of the program's file: its rows are taken from a journal if they are its own
	Workers   int    // 0 is one
	Folder    string // where the journal and the tables go
	Again     bool   // forget what an earlier run has in its journal
	Chart     ChartChoice

	Progress func(done, total, taken int) // called at the start and after each row, one call at a time; may be nil. taken rows were done by an earlier run
}

// Outcome is what came of a job.
type Outcome struct {
	Table *Table // nil if the job was interrupted
	Written
	Done  int // rows in the journal
	Total int // rows of the job
	Taken int // rows that an earlier run had done
}

// Run runs what the journal does not hold yet, and writes the tables when all is done. The journal stays: for Gather, and
// for another chart. If ctx ends before, the rows that are done are in the journal, and there is no table. Errors of what was handed in wrap ErrInput; others say that something could not be written, or no worker started.
func (j *Job) Run(ctx context.Context) (*Outcome, error) {
	out := &Outcome{Total: j.Part.size(len(j.Plan.Scenarios))}
	out.Files = Names(j.Folder, j.Worksheet, j.Part)
	h := j.head()
	book, kept, err := openJournal(out.Files.Journal, h, j.Again)
	if err != nil {
		return nil, err
	}
	s := &sweeping{job: j, head: h, book: book, rows: kept.rows, files: kept.files, total: out.Total, taken: len(kept.rows)}
	out.Taken = s.taken
	s.tell()
	err = s.run(ctx)
	out.Done = len(s.rows)
	if err != nil || out.Done < out.Total {
		return out, errors.Join(err, book.close())
	}
	out.Table = newTable(h, s.rows)
	out.Written, err = out.Table.write(out.Files, j.Chart)
	return out, errors.Join(err, book.close())
}

// sweeping is a job that runs.
type sweeping struct {
	job          *Job
	head         head
	total, taken int

	mu    sync.Mutex
	book  *journal
	rows  map[int]Row
	files map[string]string
	err   error // the first
}

func (s *sweeping) tell() {
	if s.job.Progress != nil {
		s.job.Progress(len(s.rows), s.total, s.taken)
	}
}

// run runs the scenarios that have no row yet.
func (s *sweeping) run(ctx context.Context) error {
	ctx, cancel := context.WithCancel(ctx)
	defer cancel()
	todo := make(chan int)
	var all sync.WaitGroup
	for range max(1, s.job.Workers) {
		all.Go(func() {
			for k := range todo {
				if err := s.scenario(ctx, k); err != nil {
					s.fail(err)
					cancel()
				}
			}
		})
	}
	done := slices.Collect(maps.Keys(s.rows))
	slices.Sort(done)
give:
	for k := 1; k <= len(s.job.Plan.Scenarios); k++ {
		if _, has := slices.BinarySearch(done, k); has || !s.job.Part.has(k) {
			continue
		}
		select {
		case todo <- k:
		case <-ctx.Done():
			break give
		}
	}
	close(todo)
	all.Wait()
	return s.err
}

func (s *sweeping) fail(err error) {
	s.mu.Lock()
	defer s.mu.Unlock()
	if s.err == nil {
		s.err = err
	}
}

// scenario runs one, and notes its row unless it was interrupted.
func (s *sweeping) scenario(ctx context.Context, k int) error {
	if ctx.Err() != nil {
		return nil
	}
	o := s.job.Engine
	o.Batch = true
	o.Inputs = s.job.Plan.inputs(k - 1)
	results, read, err := runner.Figures(ctx, s.job.Sources, o)
	if crashed(err) && ctx.Err() == nil { // it may have been killed from outside, for want of memory; if it was not, it crashes again
		results, read, err = runner.Figures(ctx, s.job.Sources, o)
	}
	if err != nil && ctx.Err() != nil { // whoever ends the sweep may have ended the workers too
		return nil
	}
	row := Row{Scenario: k, Inputs: s.job.Plan.Scenarios[k-1], Results: figures(results), Status: OK}
	var f *runner.CellFailure
	switch {
	case errors.As(err, &f):
		row.Status = reason(f)
	case err != nil:
		return err
	}
	files := map[string]string{}
	for _, r := range read {
		files[r.Name] = fmt.Sprintf("sha256:%x", r.SHA256)
	}
	s.mu.Lock()
	defer s.mu.Unlock()
	if s.err != nil {
		return nil // nothing more is written behind a line that may be half there
	}
	if err := noteFiles(s.files, files); err != nil {
		return inputError{fmt.Errorf("%w; --again starts anew", err)}
	}
	if err := s.book.write(s.head, row, files); err != nil {
		return err
	}
	s.rows[k] = row
	s.tell()
	return nil
}
