package engine

import (
	"os"
	"runtime/metrics"
	"time"
)

// watchMemory ends the worker when it holds more than allowed. It looks every few milliseconds; what a cell can take
// between two looks is bounded by limitSelf where the system can.
func (w *workerSide) watchMemory(mib int) {
	sample := []metrics.Sample{{Name: "/memory/classes/total:bytes"}, {Name: "/memory/classes/heap/released:bytes"}}
	limit := uint64(mib) << 20
	for range time.Tick(5 * time.Millisecond) {
		metrics.Read(sample)
		if held := sample[0].Value.Uint64() - sample[1].Value.Uint64(); held > limit {
			w.flush()
			f := fail(Memory, 0, 0, "the cell needed more than the %d MiB of memory it may have, and its worker was ended", mib)
			_ = w.pipe.write(message{Type: "dying", Fail: f}) // if the parent is gone there is nobody to tell
			os.Exit(3)
		}
	}
}
