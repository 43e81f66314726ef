package still_test

import (
	"math"
	"strings"
	"testing"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/botanical"
	"swanneck/mathlib/still"
)

// A batch with a recipe is the batch that somebody would put together from the charge by hand.
func TestBotanicals(t *testing.T) {
	herb, err := botanical.Herb("juniper", 30)
	if err != nil {
		t.Fatal(err)
	}
	recipe := botanical.Recipe{Items: []botanical.Botanical{herb}}
	pot := alcoholometry.Spirit{VolumeL: 20, Strength: abv(40)}
	with, err := still.Distil(still.Batch{Pot: pot, Botanicals: recipe, Until: abv(30)})
	if err != nil {
		t.Fatal(err)
	}
	charge, err := botanical.NewCharge(recipe, pot)
	if err != nil {
		t.Fatal(err)
	}
	byHand := still.Batch{Pot: charge.Pot, Until: abv(30)}
	for _, tr := range charge.Traces() {
		byHand.Congeners = append(byHand.Congeners, still.Congener{Name: tr.Compound, MassG: tr.MassG})
	}
	want, err := still.Distil(byHand)
	if err != nil {
		t.Fatal(err)
	}
	if len(want.Congeners) == 0 || len(with.Congeners) != len(want.Congeners) || len(with.Herbs.Items) != 1 {
		t.Fatalf("%d congeners, %d by hand, %d plants", len(with.Congeners), len(want.Congeners), len(with.Herbs.Items))
	}
	for k, f := range with.Congeners {
		if w := want.Congeners[k]; f.Name != w.Name || f.DistillateG != w.DistillateG || math.Abs(f.DistillateG+f.PotG-f.ChargeG) > 1e-9*f.ChargeG {
			t.Errorf("%v; by hand %v", f, w)
		}
	}
	if math.Abs(with.Distillate.PureL()-want.Distillate.PureL()) > 1e-12 || !strings.Contains(strings.Join(with.Notes(), "\n"), "upper bound") {
		t.Errorf("%v; by hand %v; notes %q", with, want, with.Notes())
	}
	recipe.Items[0].GPerL = -1
	if _, err := still.Distil(still.Batch{Pot: pot, Botanicals: recipe, Until: abv(30)}); err == nil || !strings.HasPrefix(err.Error(), "still.Distil: ") {
		t.Errorf("a dose below zero: %v", err)
	}
}
