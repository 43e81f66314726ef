package still_test

import (
	"fmt"
	"testing"

	"swanneck/mathlib/quantity"
	"swanneck/mathlib/still"
)

func bench(b *testing.B, traces, steps int, plates float64, fresh bool) {
	batch := still.Batch{Pot: litres(100, 0.1), Plates: plates, Reflux: 2, UntilPot: mole(0.01), Steps: steps}
	for _, name := range traceNames[:traces] {
		batch.Congeners = append(batch.Congeners, still.Congener{Name: name, MassG: 1})
	}
	b.ReportAllocs()
	p := quantity.Pressure{}.KPa()
	for b.Loop() {
		if fresh { // another pressure each time, so that no table is at hand
			p += 1e-9
			batch.P = kPa(p)
		}
		the(still.Distil(batch))
	}
}

// The task: a run of twelve traces and 1000 steps under 3 ms, with the table of the equilibrium made for it.
func BenchmarkTwelveTraces(b *testing.B) { bench(b, 12, 1000, 4, true) }

func BenchmarkTwelveTracesAgain(b *testing.B) { bench(b, 12, 1000, 4, false) }

func BenchmarkSteps(b *testing.B) {
	for _, n := range []int{500, 1000, 2000, 4000} {
		b.Run(fmt.Sprint(n), func(b *testing.B) { bench(b, 6, n, 4, false) })
	}
}

func BenchmarkTraces(b *testing.B) {
	for _, n := range []int{0, 3, 6, 12} {
		b.Run(fmt.Sprint(n), func(b *testing.B) { bench(b, n, 1000, 4, false) })
	}
}

func BenchmarkPlates(b *testing.B) {
	for _, n := range []float64{0, 1, 4, 20} {
		b.Run(fmt.Sprint(n), func(b *testing.B) { bench(b, 12, 1000, n, false) })
	}
}

func BenchmarkColumnStages(b *testing.B) {
	c := still.Column{Feeds: []still.Feed{{LH: 100, Strength: mole(0.1)}}, Distillate: mole(0.8), RecoveryPct: 98, Reflux: 3, OpenSteam: true}
	for b.Loop() {
		the(still.ColumnStages(c))
	}
}
