package engine

import (
	"context"
	"crypto/sha256"
	"go/parser"
	"time"

	"swanneck/kernel/cell"
	"swanneck/kernel/display"
)

// Options sets up an engine. The zero value is the usual case.
type Options struct {
	Clock     time.Time     // what time.Now says in cells; unset is DefaultClock
	Seed      int64         // seeds math/rand in cells
	CellTime  time.Duration // the longest a cell may run; 0 is one minute, negative is no limit
	MemoryMiB int           // the most a worker may hold; 0 is 1024
	Grace     time.Duration // how long a cell that is told to stop may take before its worker is killed; 0 is one second
	Folder    string        // whose tables cells may read; empty is none

	Inputs map[string]string // by the input's name: what stands in the place of its default, as a person writes it

	// Batch says that this engine runs one worksheet of many, beside other engines, and is closed at the first failure:
	// its worker keeps to one processor and collects memory less often, and one that is lost by a cell is not replaced.
	Batch bool
}

// DefaultClock is the time in cells where no date is given: the same worksheet gives the same numbers next year.
var DefaultClock = time.Date(2026, 1, 1, 12, 0, 0, 0, time.UTC)

// CellClock returns the time that cells see, in UTC.
func (o Options) CellClock() time.Time {
	if o.Clock.IsZero() {
		return DefaultClock
	}
	return o.Clock.UTC()
}

func (o Options) filled() Options {
	o.Clock = o.CellClock()
	if o.CellTime == 0 {
		o.CellTime = time.Minute
	}
	if o.MemoryMiB == 0 {
		o.MemoryMiB = 1024
	}
	if o.Grace == 0 {
		o.Grace = time.Second
	}
	return o
}

// Engine runs cells, one at a time. It is not safe for use by several goroutines.
type Engine struct {
	opts   Options
	worker *worker
	done   []request                    // what a replay runs: the cells that succeeded, and those that stopped half-way
	read   map[string][sha256.Size]byte // files that cells have read
	cut    []string                     // cells that were told to stop: what they did cannot be replayed
	asked  int                          // questions to the checker
	gone   *Failure                     // how a worker ended between two cells, until it has been said
}

// request is a cell that succeeded, with what a replay needs: the answers it was given, and what its output was.
type request struct {
	name, source string
	answers      []string
	files        map[string][]folderAnswer
	output       [sha256.Size]byte
	stops        bool // it stopped half-way, and what ran of it stays: it is replayed too
	once         bool // an expression: no replay runs it
}

// Start starts an engine and its worker.
func Start(o Options) (*Engine, error) {
	e := &Engine{opts: o.filled()}
	w, err := startSurely(e.opts)
	if err != nil {
		return nil, err
	}
	e.worker = w
	return e, nil
}

// Close ends the worker.
func (e *Engine) Close() error {
	if e.worker == nil {
		return nil
	}
	w := e.worker
	e.worker = nil
	return w.end()
}

// Run runs a cell. name stands in messages for the cell ("cell 3"). A *Failure says that the cell did not succeed; any
// other error that the engine itself cannot go on. After a failure the engine is ready for the next cell: if the worker
// was lost, another one has replayed what had succeeded, and the failure's note says so. If the worker was killed from
// outside while no cell ran, the cell runs in another one, and out is told on "stderr".
func (e *Engine) Run(ctx context.Context, name, source string, out Output) error {
	r := request{name: name, source: source}
	live, f, lost, err := e.runHere(ctx, r, out)
	switch {
	case err != nil:
		return err
	case lost:
		return e.lose(ctx, f, name)
	case f != nil && f.Kind == Refused:
		return f
	}
	r.answers, r.files, r.output, r.stops = live.answers, live.files, live.sum(), f != nil
	switch {
	case f == nil || f.Kind == Stopped:
		e.done = append(e.done, r)
	default:
		e.cut = append(e.cut, name)
	}
	if f != nil {
		return f
	}
	return nil
}

// Evaluate runs an expression and returns what there is to show of its value. It declares nothing, and no replay runs
// it again. What it says besides is dropped. Errors are as those of Run.
func (e *Engine) Evaluate(ctx context.Context, name, expression string) (display.Bundle, error) {
	if _, err := parser.ParseExpr(expression); err != nil { // what is one declares nothing at a cell's top level
		return nil, fail(Refused, 0, 0, "not an expression: %v", err)
	}
	v := &onlyValue{}
	_, f, lost, err := e.runHere(ctx, request{name: name, source: expression, once: true}, v)
	switch {
	case err != nil:
		return nil, err
	case lost:
		return nil, e.lose(ctx, f, name)
	case f != nil:
		return nil, f
	}
	return v.bundle, nil
}

// onlyValue takes the value of an expression and nothing else.
type onlyValue struct{ bundle display.Bundle }

func (*onlyValue) Stream(string, string)    {}
func (*onlyValue) Display(display.Bundle)   {}
func (v *onlyValue) Value(b display.Bundle) { v.bundle = b }

// Complete lists what may stand at a byte offset of a cell, and the stretch of text that it would replace.
func (e *Engine) Complete(ctx context.Context, src string, offset int) (list []cell.Completion, start, end int, err error) {
	m, err := e.askWorker(ctx, message{Type: "complete", Source: src, Offset: offset}, "completions")
	return m.Completions, m.Start, m.End, err
}

// Hover describes the name at a byte offset of a cell; ok is false where there is none.
func (e *Engine) Hover(ctx context.Context, src string, offset int) (h cell.Hover, ok bool, err error) {
	m, err := e.askWorker(ctx, message{Type: "hover", Source: src, Offset: offset}, "described")
	if err != nil || m.Hover == nil {
		return h, false, err
	}
	return *m.Hover, m.Flag, nil
}

// Restore starts a new worker and replays the cells that had succeeded, muted.
func (e *Engine) Restore(ctx context.Context) error {
	if e.worker != nil {
		_ = e.worker.end()
		e.worker = nil
	}
	return e.restore(ctx, nil)
}

// Forget ends the worker and everything the cells declared.
func (e *Engine) Forget() error {
	e.done, e.cut, e.gone = nil, nil, nil
	if e.worker != nil {
		_ = e.worker.end()
	}
	w, err := startSurely(e.opts)
	e.worker = w
	return err
}
