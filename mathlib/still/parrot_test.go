package still_test

import (
	"math"
	"testing"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/still"
)

func TestParrotLagsBehind(t *testing.T) {
	b := still.Batch{Pot: litres(50, 0.1), UntilPot: mole(0.01)}
	plain := the(still.Distil(b))
	b.Parrot = still.Parrot{HoldUpL: 0.4, Temp: celsius(20)}
	r := the(still.Distil(b))
	filled := 0
	for i, s := range r.Steps {
		if !s.Parrot.IsSet() {
			filled = i + 1
			continue
		}
		if s.Parrot.ABV() < s.Strength.ABV()-1e-9 {
			t.Fatalf("step %d: the parrot holds %v while %v runs into it: it cannot be ahead", i, s.Parrot, s.Strength)
		}
	}
	if filled == 0 || r.Steps[filled].CollectedL > 0.44 || r.Steps[filled].CollectedL < 0.39 {
		t.Errorf("the parrot of 0.4 L is full when %.3f L are over", r.Steps[filled].CollectedL)
	}
	near(t, "the distillate", r.Distillate.VolumeL, plain.Distillate.VolumeL, 1e-12)
	// The lag is the hold-up over the flow: the parrot shows what ran one hold-up before, as long as that changes evenly.
	i := len(r.Steps) * 3 / 4
	for j := range r.Steps {
		if r.Steps[j].CollectedL >= r.Steps[i].CollectedL-0.4 {
			near(t, "the parrot against what ran a hold-up before", r.Steps[i].Parrot.ABV(), r.Steps[j].Strength.ABV(), 0.3)
			break
		}
	}
	// A cut by strength is made where the parrot is: 0.4 L later than without.
	cut := still.AtStrength(abv(50))
	near(t, "litres until 50 % vol", r.Cut(still.AtStart(), cut).ToL-plain.Cut(still.AtStart(), cut).ToL, 0, 0.05)
	if late := r.Cut(cut, still.AtEnd()).Spirit.VolumeL - plain.Cut(cut, still.AtEnd()).Spirit.VolumeL; late < -0.05 || late > 0.05 {
		t.Errorf("the parrot is emptied into the tails: they differ by %.3f L", late)
	}
}

// What the parrot holds when nothing flows through is what filled it; with a tiny one it is what runs.
func TestParrotLimits(t *testing.T) {
	b := still.Batch{Pot: litres(50, 0.1), UntilPot: mole(0.02), Parrot: still.Parrot{HoldUpL: 1e-6}}
	r := the(still.Distil(b))
	for _, s := range r.Steps[1:] {
		if math.Abs(s.Parrot.ABV()-s.Strength.ABV()) > 0.1 {
			t.Fatalf("a parrot of a microlitre shows %v while %v runs", s.Parrot, s.Strength)
		}
	}
	b.Parrot.HoldUpL = 40
	r = the(still.Distil(b))
	all := r.Cut(still.AtStart(), still.AtEnd())
	near(t, "all that was in the parrot", all.Spirit.VolumeL, r.Distillate.VolumeL, 1e-9)
	near(t, "its strength", all.Spirit.Strength.ABV(), r.Distillate.Strength.ABV(), 1e-9)
}

// The parrot is read at its own temperature: what is shown is not the strength, and TrueStrength leads back.
func TestParrotReading(t *testing.T) {
	b := still.Batch{Pot: litres(50, 0.1), UntilPot: mole(0.02), Parrot: still.Parrot{HoldUpL: 0.1, Temp: celsius(28)}}
	r := the(still.Distil(b))
	s := r.Steps[len(r.Steps)/2]
	if shown := s.ReadingABV(); shown < s.Parrot.ABV()+2 {
		t.Errorf("at 28 °C %v shows %.2f; warm spirit shows more", s.Parrot, shown)
	}
	near(t, "true strength of the reading", the(alcoholometry.TrueStrength(s.ReadingABV(), celsius(28))).ABV(), s.Parrot.ABV(), 1e-6)
}
