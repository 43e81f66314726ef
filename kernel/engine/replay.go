package engine

import (
	"context"
	"errors"
	"fmt"
	"slices"
	"strings"
)

// lose deals with the loss of the worker by a cell.
func (e *Engine) lose(ctx context.Context, f *Failure, name string) error {
	_ = e.worker.end() // it is dead or about to be; there is nothing more to learn from it
	e.worker = nil
	if e.opts.Batch {
		return f
	}
	if f.Cell != "" && f.Cell != name { // a goroutine of an earlier cell did it, and would do it again
		e.drop(f.Cell)
	}
	if err := e.restore(ctx, f); err != nil {
		return errors.Join(f, err)
	}
	return f
}

// replace starts a worker in the place of one that ended while no cell ran. The next cell says so.
func (e *Engine) replace(ctx context.Context) error {
	e.gone = e.worker.postMortem()
	e.worker = nil
	if e.gone.Cell == "" {
		e.gone.Items[0].Msg = "between two cells " + strings.Replace(e.gone.Items[0].Msg, "the cell ended its worker process", "the worker process ended", 1)
	}
	e.drop(e.gone.Cell)
	return e.restore(ctx, e.gone)
}

// drop takes the cells of a name out of what is replayed, and says whether there were any.
func (e *Engine) drop(name string) (dropped bool) {
	if name == "" {
		return false
	}
	before := len(e.done)
	e.done = slices.DeleteFunc(e.done, func(r request) bool { return r.name == name })
	return len(e.done) < before
}

// restore starts a worker and replays. A cell that does not succeed this time is left out from here on; if it takes the
// worker with it, the replay begins again: without it, if it does so twice, as the first time may have come from outside.
// What was done is written into f.
func (e *Engine) restore(ctx context.Context, f *Failure) error {
	ctx = context.WithoutCancel(ctx) // it is the cell that was interrupted
	var lost, changed []string
	strikes := map[int]int{} // by place in done: workers that ended there
	for {
		w, err := startSurely(e.opts)
		if err != nil {
			return err
		}
		again, err := e.replay(ctx, w, strikes, &lost, &changed)
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
	if f != nil {
		f.Note = e.restored(lost, changed)
		e.cut = nil
	}
	return nil
}

// restored says what a replay did.
func (e *Engine) restored(lost, changed []string) string {
	var note string
	switch kept := len(e.done); {
	case len(lost) > 0:
		note = fmt.Sprintf("a new worker was started; %d earlier cells were run again, %v failed this time", kept, lost)
	case kept == 0:
		note = "a new worker was started; there was no earlier cell to run again"
	case kept == 1:
		note = "a new worker was started and the earlier cell run again, unseen"
	default:
		note = fmt.Sprintf("a new worker was started and the %d earlier cells run again, unseen", kept)
	}
	if len(e.cut) > 0 {
		note += fmt.Sprintf("; what %v did before it was stopped is lost", e.cut)
	}
	if len(changed) > 0 {
		note += fmt.Sprintf("; %v said something else than before", changed)
	}
	return note
}

// replay runs the cells that had succeeded, unseen, with the answers they were given. again says that the worker was
// lost. changed collects the cells whose output was another than before.
func (e *Engine) replay(ctx context.Context, w *worker, strikes map[int]int, lost, changed *[]string) (again bool, err error) {
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
		if dead && f == nil {
			f = w.postMortem()
		}
		if dead && f.Cell != r.name && e.drop(f.Cell) {
			*lost = append(*lost, f.Cell)
			clear(strikes)
			return true, nil
		}
		if dead && f.Kind != Time && strikes[i] == 0 {
			strikes[i]++
			return true, nil
		}
		*lost = append(*lost, r.name)
		e.done = slices.Delete(e.done, i, i+1)
		if dead {
			clear(strikes)
			return true, nil
		}
	}
	return false, nil
}
