package engine

import (
	"context"
	"errors"
	"fmt"
	"strings"
	"time"
)

// runHere runs a cell in the engine's worker, or in another one if that has ended before.
func (e *Engine) runHere(ctx context.Context, r request, out Output) (live *session, f *Failure, lost bool, err error) {
	for range 3 {
		if e.worker == nil {
			if err := e.restore(ctx, e.gone); err != nil {
				return nil, nil, false, err
			}
		}
		if f := e.gone; f != nil && !r.once {
			e.gone = nil
			if !f.outside { // something that a cell began did it
				return nil, nil, false, f
			}
			out.Stream("stderr", strings.Join(f.Lines(), "; ")+"\n")
		}
		live = newSession(out, request{})
		f, lost, err := e.runIn(ctx, e.worker, r, live)
		if !lost || f != nil || err != nil {
			return live, f, lost, err
		}
		if err := e.replace(ctx); err != nil {
			return nil, nil, false, err
		}
	}
	return nil, nil, false, errors.New("engine: workers end before they can run a cell; the last one so: " + e.gone.Items[0].Msg)
}

// runIn runs a cell in a worker. lost says that the worker cannot be used any more; without a failure, that it had ended
// before the cell began.
func (e *Engine) runIn(ctx context.Context, w *worker, r request, s *session) (f *Failure, lost bool, err error) {
	if err := w.pipe.write(message{Type: "run", Name: r.name, Source: r.source}); err != nil {
		return nil, true, nil
	}
	// From here on, a worker that is gone shows itself by its closed pipe, when all it said has been heard.
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
		_ = w.pipe.write(message{Type: "stop"})
		t := time.NewTimer(e.opts.Grace)
		grace = t.C
	}
	done := ctx.Done()
	var answered chan answer
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
		case a := <-answered:
			answered = nil
			if a.ok {
				s.answers = append(s.answers, a.text)
			}
			_ = w.pipe.write(message{Type: "answer", Text: a.text, Flag: a.ok})
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
				answered = make(chan answer, 1)
				go s.ask(m.Text, m.Flag, answered)
			case "read":
				a := e.file(s, m.Name)
				_ = w.pipe.write(message{Type: "file", Data: a.data, Text: a.mistake, Flag: a.mistake == ""})
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
