package yield

import "fmt"

// Kind says what a stage does. It reads as a name.
type Kind string

// The stages from the wash to the bottle.
const (
	StrippingRun Kind = "stripping run"
	SpiritRun    Kind = "spirit run"
	BotanicalRun Kind = "botanical run" // distilling over herbs, berries, fruit
	Maceration   Kind = "maceration"    // steeping, and drawing off what runs out of the herbs
	Storage      Kind = "storage"
	Reduction    Kind = "reduction"
	Filtration   Kind = "filtration"
	Filling      Kind = "filling"
)

// distils reports whether what comes out may be stronger than what goes in.
func (k Kind) distils() bool { return k == StrippingRun || k == SpiritRun || k == BotanicalRun }

// LossRange is what a stage may be expected to lose.
type LossRange struct {
	Kind     Kind
	LeastPct float64 // of the pure alcohol that goes in, per cent
	MostPct  float64 // likewise
	Source   string
	Note     string // what the loss mostly is
}

const practice = "common practice, no source"

// usual holds the expected losses. Source: none; common practice of small distilleries. Heads and tails that are set aside
// or thrown away are not in them: these are counted on their own.
var usual = []LossRange{
	{StrippingRun, 1, 4, practice, "what is left in the stillage, vapour, rinsing"},
	{SpiritRun, 1, 3, practice, "what is left in the still after the tails, vapour, rinsing"},
	{BotanicalRun, 1, 4, practice, "what is left in the still and in the herbs, vapour"},
	{Maceration, 3, 15, practice, "what the herbs keep back when they are drained and not pressed"},
	{Storage, 0, 0.5, practice, "in closed steel or glass; wood loses several per cent a year"},
	{Reduction, 0.1, 0.5, practice, "what stays in hoses and tanks"},
	{Filtration, 0.3, 2, practice, "what stays in the filter and its first and last runnings"},
	{Filling, 0.5, 2, practice, "overfilling, breakage, samples, what stays in the filler"},
}

// UsualLoss returns what a stage may be expected to lose, in per cent of the pure alcohol that goes in. It fails for a kind
// that is none.
//
// Source: none; common practice.
func UsualLoss(kind Kind) (LossRange, error) {
	for _, u := range usual {
		if u.Kind == kind {
			return u, nil
		}
	}
	return LossRange{}, unknown("yield.UsualLoss", kind)
}

func unknown(function string, kind Kind) error {
	return fmt.Errorf("%s: there is no stage %q; give one of stripping run, spirit run, botanical run, maceration, storage, reduction, filtration, filling", function, kind)
}

// String gives the range in one line.
func (r LossRange) String() string {
	return fmt.Sprintf("%s: %g to %g %% of the pure alcohol (%s): %s", r.Kind, r.LeastPct, r.MostPct, r.Source, r.Note)
}
