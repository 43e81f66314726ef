package engine

import (
	"context"
	"crypto/sha256"
	"errors"
	"fmt"
	"slices"
	"time"

	"swanneck/kernel/cell"
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
}

// request is a cell that succeeded, with what a replay needs: the answers it was given, and what its output was.
type request struct {
	name, source string
	answers      []string
	files        map[string][]folderAnswer
	output       [sha256.Size]byte
	stops        bool // it stopped half-way, and what ran of it stays: it is replayed too
}

// Start starts an engine and its worker.
func Start(o Options) (*Engine, error) {
	e := &Engine{opts: o.filled()}
	w, err := startWorker(e.opts)
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
// was lost, another one has replayed what had succeeded, and the failure's note says so.
func (e *Engine) Run(ctx context.Context, name, source string, out Output) error {
	if e.worker == nil {
		if err := e.restore(ctx, nil); err != nil {
			return err
		}
	}
	r := request{name: name, source: source}
	live := newSession(out, request{})
	f, lost, err := e.runIn(ctx, e.worker, r, live)
	if err != nil {
		return err
	}
	if lost {
		_ = e.worker.end() // it is dead or about to be; there is nothing more to learn from it
		e.worker = nil
		if f.Cell != "" { // a goroutine of an earlier cell did it, and would do it again
			e.done = slices.DeleteFunc(e.done, func(r request) bool { return r.name == f.Cell && r.name != name })
		}
		if err := e.restore(ctx, f); err != nil {
			return errors.Join(f, err)
		}
	} else if f != nil && f.Kind != Refused {
		r.answers, r.files, r.output, r.stops = live.answers, live.files, live.sum(), true
		if f.Kind == Stopped {
			e.done = append(e.done, r)
		} else {
			e.cut = append(e.cut, name)
		}
	}
	if f != nil {
		return f
	}
	r.answers, r.files, r.output = live.answers, live.files, live.sum()
	e.done = append(e.done, r)
	return nil
}

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

// askWorker asks an idle worker a question that the checker answers. What a goroutine of an earlier cell says meanwhile
// is lost to nobody: there is no one to hear it.
func (e *Engine) askWorker(ctx context.Context, question message, answer string) (message, error) {
	if e.worker == nil {
		if err := e.restore(ctx, nil); err != nil {
			return message{}, err
		}
	}
	if err := e.worker.pipe.write(question); err != nil {
		return message{}, fmt.Errorf("engine: the worker does not answer: %w", err)
	}
	for {
		select {
		case <-ctx.Done():
			return message{}, ctx.Err()
		case m, ok := <-e.worker.inbox:
			if !ok {
				_ = e.worker.end() // it is dead; the next cell starts another one
				e.worker = nil
				return message{}, errors.New("engine: the worker ended while it was asked")
			}
			switch m.Type {
			case answer:
				return m, nil
			case "dying":
				_ = e.worker.end()
				e.worker = nil
				return message{}, m.Fail
			}
		}
	}
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
	e.done, e.cut = nil, nil
	if e.worker != nil {
		_ = e.worker.end()
	}
	w, err := startWorker(e.opts)
	e.worker = w
	return err
}

// restore starts a worker and replays. A cell that does not succeed this time is left out from here on; if it takes the
// worker with it, the replay begins again without it. What was done is written into f.
func (e *Engine) restore(ctx context.Context, f *Failure) error {
	ctx = context.WithoutCancel(ctx) // it is the cell that was interrupted
	var lost, changed []string
	for {
		w, err := startWorker(e.opts)
		if err != nil {
			return err
		}
		again, err := e.replay(ctx, w, &lost, &changed)
		if err != nil {
			return errors.Join(err, w.end())
		}
		if !again {
			e.worker = w
			break
		}
		if err := w.end(); err != nil {
			return err
		}
	}
	kept := e.done
	if f != nil {
		switch {
		case len(lost) > 0:
			f.Note = fmt.Sprintf("a new worker was started; %d earlier cells were run again, %v failed this time", len(kept), lost)
		case len(kept) == 1:
			f.Note = "a new worker was started and the earlier cell run again, unseen"
		case len(kept) > 1:
			f.Note = fmt.Sprintf("a new worker was started and the %d earlier cells run again, unseen", len(kept))
		}
		if len(e.cut) > 0 {
			f.Note += fmt.Sprintf("; what %v did before it was stopped is lost", e.cut)
			e.cut = nil
		}
		if len(changed) > 0 {
			f.Note += fmt.Sprintf("; %v said something else than before", changed)
		}
	}
	return nil
}

// replay runs the cells that had succeeded, unseen, with the answers they were given. again says that the worker was
// lost. changed collects the cells whose output was another than before.
func (e *Engine) replay(ctx context.Context, w *worker, lost, changed *[]string) (again bool, err error) {
	*changed = nil
	for i := 0; i < len(e.done); {
		r := e.done[i]
		unseen := newSession(nil, r)
		f, dead, err := e.runIn(ctx, w, r, unseen)
		if err != nil {
			return false, err
		}
		if !dead && (f == nil) == !r.stops {
			if unseen.sum() != r.output {
				*changed = append(*changed, r.name)
			}
			i++
			continue
		}
		*lost = append(*lost, r.name)
		e.done = slices.Delete(e.done, i, i+1)
		if dead {
			return true, nil
		}
	}
	return false, nil
}

// runIn runs a cell in a worker. lost says that the worker cannot be used any more.
func (e *Engine) runIn(ctx context.Context, w *worker, r request, s *session) (f *Failure, lost bool, err error) {
	if err := w.pipe.write(message{Type: "run", Name: r.name, Source: r.source}); err != nil {
		return w.postMortem(), true, nil
	}
	var limit <-chan time.Time
	var timer *time.Timer
	if e.opts.CellTime > 0 {
		timer = time.NewTimer(e.opts.CellTime)
		defer timer.Stop()
		limit = timer.C
	}
	var grace <-chan time.Time
	why := Kind("")
	stop := func(kind Kind) {
		why = kind
		_ = w.pipe.write(message{Type: "stop"}) // a worker that is gone shows itself by its closed pipe
		t := time.NewTimer(e.opts.Grace)
		grace = t.C
	}
	done := ctx.Done()
	var answered chan message
	for {
		select {
		case <-done:
			done = nil
			if why == "" {
				stop(Halted)
			}
		case <-limit:
			if why == "" {
				stop(Time)
			}
		case <-grace:
			w.kill()
			return e.stopped(why, 0, 0), true, nil
		case m := <-answered:
			answered = nil
			if err := w.pipe.write(m); err != nil {
				return w.postMortem(), true, nil
			}
			if timer != nil {
				timer.Reset(e.opts.CellTime)
			}
		case m, ok := <-w.inbox:
			if !ok {
				return w.postMortem(), true, nil
			}
			if s.hear(m) {
				continue
			}
			switch m.Type {
			case "ask":
				if timer != nil {
					timer.Stop() // the person's time is not the cell's
				}
				answered = make(chan message, 1)
				go func() {
					answer, ok := s.ask(m.Text, m.Flag)
					answered <- message{Type: "answer", Text: answer, Flag: ok}
				}()
			case "read":
				a := e.file(s, m.Name)
				if err := w.pipe.write(message{Type: "file", Data: a.data, Text: a.mistake, Flag: a.mistake == ""}); err != nil {
					return w.postMortem(), true, nil
				}
			case "completions", "described": // to a question that was given up
			case "dying":
				w.kill()
				return m.Fail, true, nil
			case "done":
				if why != "" && m.Fail != nil && m.Fail.Kind == Halted {
					p := m.Fail.Items[0]
					return e.stopped(why, p.Line, p.Col), false, nil
				}
				return m.Fail, false, nil
			default:
				w.kill()
				return nil, true, fmt.Errorf("engine: the worker said %q, which is not known", m.Type)
			}
		}
	}
}

func (e *Engine) stopped(why Kind, line, col int) *Failure {
	if why == Time {
		return fail(Time, line, col, "the cell ran longer than %v and was stopped", e.opts.CellTime)
	}
	return fail(Halted, line, col, "interrupted")
}
