package botanical_test

import (
	"math"
	"testing"

	"swanneck/mathlib/botanical"
	"swanneck/mathlib/still"
)

// passages turns what a run did with the compounds into shares of the cuts, and into courses at so many moments.
func passages(t testing.TB, r still.Run, cuts []still.Cut, moments int) []botanical.Passage {
	t.Helper()
	end := r.Steps[len(r.Steps)-1]
	var out []botanical.Passage
	for _, f := range r.Congeners {
		p := botanical.Passage{Compound: f.Name, Notes: f.Notes}
		for _, c := range cuts {
			p.Shares = append(p.Shares, c.Content(f.Name).MassG/f.ChargeG)
		}
		p.Course = []botanical.Moment{{Left: 1}, {Min: r.Steps[0].Min, Left: 1}}
		for i := 1; i <= moments; i++ {
			s := r.Steps[(len(r.Steps)-1)*i/moments]
			over := f.DistillateG
			if s.CollectedL < end.CollectedL {
				over = r.Cut(still.AtStart(), still.AtVolume(s.CollectedL)).Content(f.Name).MassG
			}
			m := botanical.Moment{Min: s.Min, Left: math.Max(1-over/f.ChargeG, 0)}
			for k, c := range cuts {
				if s.CollectedL >= c.FromL-1e-9 {
					m.Cut = k
				}
			}
			p.Course = append(p.Course, m)
		}
		out = append(out, p)
	}
	return out
}

// A recipe through a still: balances close, early compounds are in the heads, and what comes late is in the tails.
func TestThroughAStill(t *testing.T) {
	a, b := the(botanical.Herb("juniper", 30)), the(botanical.Herb("aniseed", 4))
	r := botanical.Recipe{Name: "trial", Items: []botanical.Botanical{a, b}}
	through := func(r botanical.Recipe) botanical.CarryOver {
		c := the(botanical.NewCharge(r, spirit(20, 40)))
		batch := still.Batch{Pot: c.Pot, Until: abv(20), Heat: still.Heating{PowerKW: 3}}
		for _, x := range c.Traces() {
			batch.Congeners = append(batch.Congeners, still.Congener{Name: x.Compound, MassG: x.MassG})
		}
		run, err := still.Distil(batch)
		if err != nil {
			t.Fatal(err)
		}
		cuts := []still.Cut{run.Cut(still.AtStart(), still.AtVolume(0.3)), run.Cut(still.AtVolume(0.3), still.AtStrength(abv(55))), run.Cut(still.AtStrength(abv(55)), still.AtEnd())}
		var named []botanical.Cut
		for i, name := range []string{"heads", "hearts", "tails"} {
			named = append(named, botanical.Cut{Name: name, Spirit: cuts[i].Spirit})
		}
		return the(botanical.Carry(c, named, passages(t, run, cuts, 200)))
	}
	free := through(r)
	for _, l := range free.Loads {
		for _, x := range []botanical.Account{l.Least, l.Most} {
			if math.Abs(x.ClosureG()) > 1e-9*x.LoadG {
				t.Errorf("%v: out by %g g of %g g", l, x.ClosureG(), x.LoadG)
			}
		}
	}
	in := func(o botanical.CarryOver, cut, name string) float64 { return o.Cut(cut).Content(name).G.High }
	if in(free, "heads", "alpha-pinene") < in(free, "tails", "alpha-pinene") || in(free, "heads", "trans-anethole") > in(free, "hearts", "trans-anethole") {
		t.Errorf("pinene does not come first: %v; %v", free.Cut("heads"), free.Cut("tails"))
	}
	for i := range r.Items {
		r.Items[i].ReleasePerH = botanical.Exactly(0.3)
	}
	late := through(r)
	if in(late, "heads", "alpha-pinene") > 0.5*in(free, "heads", "alpha-pinene") || in(late, "tails", "alpha-pinene") < in(free, "tails", "alpha-pinene") {
		t.Errorf("out of the plant at 0.3 1/h: %v; free: %v", late.Cut("heads"), free.Cut("heads"))
	}
	if late.ClosureG() > 1e-8 {
		t.Errorf("late: out by %g g", late.ClosureG())
	}
}
