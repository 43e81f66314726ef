package engine

import (
	"runtime/debug"
	"runtime/metrics"
	"sync"
	"time"
)

// Rest gives memory back to the system when its process has had nothing to do for a second: what a start or a cell
// leaves behind would otherwise stay with the process until much more is allocated, and a notebook stays open for days.
// Its methods are safe for several goroutines. A NewRest is busy.
type Rest struct {
	timer *time.Timer

	mu   sync.Mutex
	seen uint64 // bytes allocated since the start of the process, when memory was last given back
}

const (
	restAfter = time.Second
	restWorth = 1 << 20 // bytes allocated that are worth a collection
)

// NewRest returns the rest of this process.
func NewRest() *Rest {
	r := &Rest{}
	r.timer = time.AfterFunc(time.Hour, r.release)
	r.timer.Stop()
	return r
}

// Busy says that there is something to do.
func (r *Rest) Busy() { r.timer.Stop() }

// Idle says that there is nothing to do for now.
func (r *Rest) Idle() { r.timer.Reset(restAfter) }

// release collects and gives back, unless hardly anything was allocated since the last time. What a busy process
// allocates meanwhile is not in its way.
func (r *Rest) release() {
	r.mu.Lock()
	defer r.mu.Unlock()
	allocated := []metrics.Sample{{Name: "/gc/heap/allocs:bytes"}}
	metrics.Read(allocated)
	now := allocated[0].Value.Uint64()
	if now-r.seen < restWorth {
		return
	}
	r.seen = now
	debug.FreeOSMemory()
}
