package engine_test

import (
	"strings"
	"testing"
	"time"

	"swanneck/kernel/engine"
)

// A worker on one processor hears "stop" all the same, and a lost one is not replaced: nothing is replayed for an engine
// that is about to be closed.
func TestBatch(t *testing.T) {
	o := engine.Options{Batch: true, CellTime: 500 * time.Millisecond, Grace: 200 * time.Millisecond}
	slow := "for t := time.Now().Nanosecond(); t >= 0; t++ { if t%1000 == 999 { break } }\nk := 0\nfor range 200_000 { k++ }"
	for src, kind := range map[string]engine.Kind{
		"for { }":               engine.Time, // stops by itself when told
		"time.Sleep(time.Hour)": engine.Time, // has to be killed
		"go func() { panic(\"lost\") }()\ntime.Sleep(time.Minute)": engine.Crashed,
		"var s []int; s[k]++": engine.Stopped,
	} {
		e := start(t, o)
		if _, f := run(t, e, slow); f != nil {
			t.Fatal(f)
		}
		began := time.Now()
		_, f := run(t, e, src)
		if f == nil || f.Kind != kind {
			t.Errorf("%s: %v; want %s", src, f, kind)
			continue
		}
		if f.Note != "" || strings.Contains(f.Error(), "\n") {
			t.Errorf("%s: %v; want no word of a new worker: there is none", src, f)
		}
		if took := time.Since(began); took > 5*time.Second {
			t.Errorf("%s took %v", src, took)
		}
	}
}
