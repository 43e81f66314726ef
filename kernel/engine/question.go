package engine

import (
	"context"
	"errors"
	"strconv"
)

// askWorker asks an idle worker a question that the checker answers; if it has ended, another one. What a goroutine of
// an earlier cell says meanwhile is lost to nobody: there is no one to hear it.
func (e *Engine) askWorker(ctx context.Context, question message, answer string) (message, error) {
	e.asked++
	question.ID = strconv.Itoa(e.asked)
	for range 3 {
		if e.worker == nil {
			if err := e.restore(ctx, e.gone); err != nil {
				return message{}, err
			}
		}
		m, lost, err := e.worker.ask(ctx, question, answer)
		if !lost {
			return m, err
		}
		if err := e.replace(ctx); err != nil {
			return message{}, err
		}
	}
	return message{}, errors.New("engine: the worker ends whenever it is asked: " + e.gone.Items[0].Msg)
}

// ask asks a worker that runs no cell. lost says that it has ended.
func (w *worker) ask(ctx context.Context, question message, answer string) (m message, lost bool, err error) {
	if err := w.pipe.write(question); err != nil {
		return m, true, nil
	}
	for {
		select {
		case <-ctx.Done():
			return m, false, ctx.Err()
		case m, ok := <-w.inbox:
			if !ok {
				return m, true, nil
			}
			switch {
			case m.Type == answer && m.ID == question.ID: // not to one that was given up
				return m, false, nil
			case m.Type == "dying":
				w.last = m.Fail
				return m, true, nil
			}
		}
	}
}
