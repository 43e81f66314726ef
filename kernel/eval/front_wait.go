package eval

import (
	"context"
	"sync"
	"time"
)

// waitFronts are functions that wait, so that they can be stopped, and functions that start goroutines, so that a
// panic there is reported and does not end the process.
func (m *Machine) waitFronts() map[string]any {
	return map[string]any{
		"time.Sleep": func(d time.Duration) {
			t := time.NewTimer(d)
			defer t.Stop()
			m.wait(t.C)
		},
		"time.AfterFunc": func(d time.Duration, f func()) *time.Timer {
			return time.AfterFunc(d, func() { m.guard(f) })
		},
		"context.AfterFunc": func(ctx context.Context, f func()) func() bool {
			return context.AfterFunc(ctx, func() { m.guard(f) })
		},
		"sync.WaitGroup.Go": func(wg *sync.WaitGroup, f func()) { wg.Go(func() { m.guard(f) }) },
		"sync.WaitGroup.Wait": func(wg *sync.WaitGroup) {
			done := make(chan time.Time)
			go func() {
				wg.Wait()
				close(done)
			}()
			m.wait(done)
		},
	}
}

// wait receives, or panics when the machine is stopped meanwhile.
func (m *Machine) wait(c <-chan time.Time) {
	select {
	case <-c:
	case <-*m.stopCh.Load():
		panic(m.halted())
	}
}

// guard runs a function as a goroutine of the cells.
func (m *Machine) guard(f func()) {
	done := false
	defer func() {
		if done {
			return
		}
		if r := recover(); r != nil {
			m.lost(asPanic(r, nil))
		}
	}()
	f()
	done = true
}

// lost reports a panic that ended a goroutine.
func (m *Machine) lost(p *Panic) {
	if p != stopped && m.cfg.GoPanic != nil {
		m.cfg.GoPanic(p)
	}
}
