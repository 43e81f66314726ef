package engine

import (
	"runtime"
	"testing"
	"testing/synctest"
	"time"
)

// forced returns how many collections were asked for, and the bytes of the heap that the system has back.
func forced() (collections uint32, returned uint64) {
	var m runtime.MemStats
	runtime.ReadMemStats(&m)
	return m.NumForcedGC, m.HeapReleased
}

var litter [][]byte

func makeLitter(mib int) {
	for range mib {
		litter = append(litter, make([]byte, 1<<20))
	}
	litter = nil
}

// A process that rests gives memory back, once; a busy one does not.
func TestRestGivesBack(t *testing.T) {
	synctest.Test(t, func(t *testing.T) {
		r := NewRest()
		makeLitter(64)
		before, _ := forced()
		time.Sleep(2 * restAfter)
		r.Idle()
		time.Sleep(restAfter / 2)
		r.Busy()
		time.Sleep(2 * restAfter)
		synctest.Wait()
		if n, _ := forced(); n != before {
			t.Errorf("%d collections while busy; want none", n-before)
		}
		r.Idle()
		time.Sleep(2 * restAfter)
		synctest.Wait()
		n, back := forced()
		if n != before+1 || back < 64<<20 {
			t.Errorf("%d collections at rest, %d MiB are with the system; want 1 and 64 MiB or more", n-before, back>>20)
		}
		r.Busy()
		r.Idle()
		time.Sleep(2 * restAfter)
		synctest.Wait()
		if again, _ := forced(); again != n {
			t.Errorf("%d collections with nothing to collect; want none", again-n)
		}
		makeLitter(2)
		r.Busy()
		r.Idle()
		time.Sleep(2 * restAfter)
		synctest.Wait()
		if again, _ := forced(); again != n+1 {
			t.Errorf("%d collections at the second rest; want 1", again-n)
		}
	})
}
