package still_test

import (
	"errors"
	"fmt"
	"strings"
	"testing"

	"swanneck/mathlib/still"
)

// wine is a run of a wine with what a wine holds, amounts as they are usual (common practice, no source).
func wine() still.Batch {
	return still.Batch{Pot: litres(100, 0.04), Plates: 1, Reflux: 0.5, Until: abv(8), Congeners: []still.Congener{
		{Name: "methanol", Amount: mgL(120)}, {Name: "ethyl acetate", Amount: mgL(60)}, {Name: "acetaldehyde", Amount: mgL(40)},
		{Name: "isoamyl alcohol", Amount: mgL(200)}, {Name: "acetic acid", Amount: mgL(400)}, {Name: "furfural", Amount: mgL(5)}}}
}

func TestCutsLieAtTheirMarks(t *testing.T) {
	r := the(still.Distil(wine()))
	for _, c := range []struct {
		mark still.Mark
		got  func(a, b still.Cut) float64
		want float64
		tol  float64
	}{
		{still.AtVolume(3), func(a, _ still.Cut) float64 { return a.ToL }, 3, 1e-9},
		{still.AtStrength(abv(55)), func(a, _ still.Cut) float64 { return at(r, a.ToL, r.SeriesABV()) }, 55, 0.01},
		{still.AtHead(celsius(90)), func(a, _ still.Cut) float64 { return at(r, a.ToL, r.SeriesHeadC()) }, 90, 0.01},
		{still.UnderLimit("ethyl acetate", mgL(100)), func(a, _ still.Cut) float64 { return at(r, a.ToL, r.SeriesMgL("ethyl acetate")) }, 100, 2},
		{still.OverLimit("acetic acid", mgL(400)), func(a, _ still.Cut) float64 { return at(r, a.ToL, r.SeriesMgL("acetic acid")) }, 400, 2},
	} {
		a, b := r.Cut(still.AtStart(), c.mark), r.Cut(c.mark, still.AtEnd())
		near(t, c.mark.String(), c.got(a, b), c.want, c.tol)
		near(t, c.mark.String()+", where one cut ends and the next begins", a.ToL, b.FromL, 1e-12)
	}
	pot := r.Cut(still.AtStart(), still.AtPotStrength(abv(5)))
	for i, s := range r.Steps {
		if s.CollectedL >= pot.ToL {
			near(t, "the pot at its mark", s.PotStrength.ABV(), 5, 0.02)
			break
		}
		if i == len(r.Steps)-1 {
			t.Error("the pot never comes to 5 % vol")
		}
	}
}

// at returns what a series of a run is where volumeL have been collected.
func at(r still.Run, volumeL float64, series []float64) float64 {
	l := r.SeriesL()
	for i := 1; i < len(l); i++ {
		if l[i] >= volumeL {
			return series[i-1] + (series[i]-series[i-1])*(volumeL-l[i-1])/(l[i]-l[i-1])
		}
	}
	return series[len(series)-1]
}

func TestMarksThatAreNotThere(t *testing.T) {
	r := the(still.Distil(wine()))
	for _, c := range []struct {
		from, to still.Mark
		want     string
	}{
		{still.AtStart(), still.AtStrength(abv(95)), "beyond that already"},
		{still.AtStart(), still.AtStrength(abv(2)), "at the end"},
		{still.AtStart(), still.AtVolume(90), "at the end it is"},
		{still.AtStart(), still.AtHead(celsius(99.9)), "at the end the head is"},
		{still.AtStart(), still.UnderLimit("methanol", mgL(1)), "not beyond that at the end"},
		{still.AtStrength(abv(30)), still.AtStrength(abv(60)), "beyond that already"},
		{still.AtVolume(2), still.AtVolume(1), "nothing comes over between"},
		{still.AtStart(), still.UnderLimit("limonene", mgL(1)), "was not carried along"},
		{still.AtStart(), still.UnderLimit("limonen", mgL(1)), "nearest names"},
		{still.AtStart(), still.Mark{}, "a mark is not set"},
		{still.AtStart(), still.AtVolume(-1), "above 0 L"},
	} {
		_, err := r.CutBetween(c.from, c.to)
		if err == nil || !strings.Contains(err.Error(), c.want) || strings.Contains(err.Error(), "\n") {
			t.Errorf("from %v to %v: %v; want one line with %q", c.from, c.to, err, c.want)
		}
		func() {
			defer func() {
				if e, ok := recover().(error); !ok || e.Error() != err.Error() {
					t.Errorf("Cut panics with %v; CutBetween fails with %v", e, err)
				}
			}()
			r.Cut(c.from, c.to)
		}()
	}
}

// Fusel alcohol and esters can be cut away, methanol cannot (common practice, no source; and the sign of its volatility).
func TestWhatCuttingHelps(t *testing.T) {
	r := the(still.Distil(wine()))
	for name, helps := range map[string]bool{"methanol": false, "ethyl acetate": true, "acetaldehyde": true, "acetic acid": true, "furfural": true} {
		if p := r.CanCut(name); p.Helps != helps {
			t.Errorf("%s: %v; want help: %v", name, p, helps)
		}
	}
	s := the(still.SuggestCuts(r, still.CutLimits{HeadsUnder: []still.CongenerLimit{{Name: "ethyl acetate", Most: mgL(120)}}, TailsAt: abv(45)}))
	text := fmt.Sprint(s, s.Rows())
	for _, want := range []string{"a starting point for the nose, not a rule", "cutting does not help against methanol"} {
		if !strings.Contains(text, want) {
			t.Errorf("the suggestion does not say %q: %s", want, text)
		}
	}
	near(t, "the three cuts together", s.Heads.Spirit.PureL()+s.Hearts.Spirit.PureL()+s.Tails.Spirit.PureL(), r.Distillate.PureL(), 1e-9)
	near(t, "the hearts end at", s.Hearts.ToL, r.Cut(still.AtStart(), still.AtStrength(abv(45))).ToL, 1e-9)
	none := the(still.SuggestCuts(r, still.CutLimits{HeadsUnder: []still.CongenerLimit{{Name: "ethyl acetate", Most: mgL(1e6)}}, TailsOver: []still.CongenerLimit{{Name: "furfural", Most: mgL(1e6)}}}))
	if none.Heads.Spirit.Strength.IsSet() || none.Tails.Spirit.Strength.IsSet() || len(none.Words) < 2 {
		t.Errorf("limits that nothing reaches leave %v", none)
	}
	_, err := still.SuggestCuts(r, still.CutLimits{HeadsUnder: []still.CongenerLimit{{Name: "ethyl acetate", Most: mgL(0.01)}}, TailsAt: abv(70)})
	var input *still.InputError
	var never *still.NeverError
	if !errors.As(err, &input) && !errors.As(err, &never) {
		t.Errorf("tails before the end of the heads: %v", err)
	}
}

func TestJarsOfARun(t *testing.T) {
	r := the(still.Distil(wine()))
	jars := r.Jars(0.5)
	for i, j := range jars {
		if i < len(jars)-1 {
			near(t, j.From, j.Spirit.VolumeL, 0.5, 1e-6)
		}
	}
	if last := jars[len(jars)-1].Spirit.VolumeL; last <= 0 || last > 0.5+1e-6 {
		t.Errorf("the last jar holds %g L", last)
	}
}
