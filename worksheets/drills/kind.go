package drills

import (
	"fmt"
	"strings"
)

// Kind is a kind of problem, by the word that asks for it.
type Kind string

// The kinds of problems.
const (
	TrueStrength Kind = "true strength" // what a reading means
	Reading      Kind = "reading"       // what the instrument will show
	Reduction    Kind = "reduction"     // litres of water by the reduction table
	Water        Kind = "water"         // kilograms of water
	Make         Kind = "make"          // a wanted volume of a wanted strength
	Blend        Kind = "blend"         // two lots put together
	PureAlcohol  Kind = "pure alcohol"  // litres of pure alcohol in a tank
	TrueProof    Kind = "true proof"    // what a reading means, in the United States
	ProofGallons Kind = "proof gallons" // proof gallons in a tank
	Bottles      Kind = "bottles"       // how many bottles a tank fills
)

// kinds are all kinds, in the order in which a course takes them, and how each is drawn.
var kinds = []struct {
	kind  Kind
	title string
	draw  func(chance) draft
}{
	{TrueStrength, "True strength from a reading", drawTrueStrength},
	{Reading, "The reading to expect", drawReading},
	{Reduction, "Reduction by volume", drawReduction},
	{Water, "Water by weight", drawWater},
	{Make, "A volume made to strength", drawMake},
	{Blend, "Two lots blended", drawBlend},
	{PureAlcohol, "Litres of pure alcohol", drawPureAlcohol},
	{TrueProof, "True proof from a reading", drawTrueProof},
	{ProofGallons, "Proof gallons", drawProofGallons},
	{Bottles, "Bottles from a tank", drawBottles},
}

// Kinds lists all kinds, in the order in which a course takes them.
func Kinds() []Kind {
	out := make([]Kind, len(kinds))
	for i, k := range kinds {
		out[i] = k.kind
	}
	return out
}

// Named returns the kind of that name; "any" and "" are "", which stands for any kind. It fails for a name that there is
// not.
func Named(name string) (Kind, error) {
	if name = strings.TrimSpace(name); name == "" || strings.EqualFold(name, "any") {
		return "", nil
	}
	names := make([]string, len(kinds))
	for i, k := range kinds {
		if strings.EqualFold(string(k.kind), name) {
			return k.kind, nil
		}
		names[i] = string(k.kind)
	}
	return "", fmt.Errorf("drills.Named: there is no kind %q; want %s or any", name, strings.Join(names, ", "))
}
